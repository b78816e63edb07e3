import type { Question } from '../../../core/contract/inquiries.ts';
import { chosenChanges } from '../../../core/inquiries/chosen.ts';
import { useDeeds } from '../../deeds.ts';
import { Button } from '../../parts/button.tsx';
import type { FactProps } from './facts.tsx';
import style from './facts.module.css';

/** What was unclear or missing, with the choices as buttons. Changing the fact itself settles it too. */
export function Questions({ job, save, homeZone }: Omit<FactProps, 'locked'> & { homeZone: string }) {
  const { running } = useDeeds();
  if (job.questions.length === 0) return null;
  const answer = (question: Question, value: unknown): void => {
    const changes = chosenChanges(job, question.field, value, homeZone);
    if (changes) void save(changes, { settled: [question.field] });
  };
  return (
    <section aria-labelledby="asked">
      <h2 id="asked">To ask or settle</h2>
      <ul className={style.questions}>
        {job.questions.map((question) => (
          <li key={`${question.field} ${question.ask}`}>
            <strong>{question.ask}</strong>
            <div className={style.choices}>
              {question.choices
                .filter((choice) => chosenChanges(job, question.field, choice.value, homeZone) !== null)
                .map((choice) => (
                  <Button key={choice.label} isDisabled={running > 0} onPress={() => answer(question, choice.value)}>
                    {choice.label}
                  </Button>
                ))}
              <Button kind="quiet" isDisabled={running > 0} onPress={() => void save({}, { settled: [question.field] })} aria-label={`As it stands: ${question.ask}`}>
                It is right as it stands
              </Button>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
