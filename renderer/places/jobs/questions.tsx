import type { Question } from '../../../core/contract/inquiries.ts';
import { chosenChanges } from '../../../core/inquiries/chosen.ts';
import { useDeeds } from '../../deeds.ts';
import { Button } from '../../parts/button.tsx';
import type { FactProps } from './change-job.ts';
import style from './facts.module.css';

/** What was unclear about a fact, with the choices as buttons. Changing the fact itself settles it too. */
export function Questions({ job, save, home, questions }: FactProps & { questions: readonly Question[] }) {
  const { running } = useDeeds();
  const changes = (question: Question, value: unknown) => chosenChanges(job, question.field, value, home.zone);
  if (questions.length === 0) return null;
  return (
    <ul className={style.questions}>
      {questions.map((question) => (
        <li key={`${question.field} ${question.ask}`}>
          <strong>{question.ask}</strong>
          <div className={style.choices}>
            {question.choices.map((choice) => {
              const changed = changes(question, choice.value);
              return changed ? (
                <Button key={choice.label} isDisabled={running > 0} onPress={() => void save(changed, { settled: [question.field] })}>
                  {choice.label}
                </Button>
              ) : null;
            })}
            {stands(job, question.field) && (
              <Button
                kind="quiet"
                isDisabled={running > 0}
                onPress={() => void save({}, { settled: [question.field] })}
                aria-label={`As it stands: ${question.ask}`}
              >
                As it stands
              </Button>
            )}
          </div>
        </li>
      ))}
    </ul>
  );
}

/** Is there anything that could be left as it stands? Days and a place that are not known must be given. */
function stands(job: FactProps['job'], field: Question['field']): boolean {
  if (field === 'place' || field === 'country') return job.place !== null;
  if (field === 'start' || field === 'end' || field === 'days' || field === 'firstCall' || field === 'lastWrap') return job.days.length > 0;
  return true;
}
