import type { Question } from '../../../core/contract/inquiries.ts';
import { chosenChanges, daysBehind } from '../../../core/inquiries/chosen.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { datesInWords } from '../../../core/words/dates.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { sayWithUndo } from '../../undo.ts';
import { newestJob, type FactProps } from './change-job.ts';
import style from './facts.module.css';

/** What was unclear about a fact, with the choices as buttons. Changing the fact itself settles it too. */
export function Questions({ job, save, home, questions }: FactProps & { questions: readonly Question[] }) {
  const { running } = useDeeds();
  if (questions.length === 0) return null;
  const now = () => ({ id: job.id, version: newestJob(job).version, key: crypto.randomUUID() });
  const choose = async (days: string[]): Promise<void> => {
    const chosen = await deed(() => client.jobs.chooseDays({ ...now(), days }));
    if (chosen) sayWithUndo(`${datesInWords(days)}: chosen.`, 'Undo', () => client.jobs.openDays(now()), 'The days are open again.');
  };
  /** What pressing a choice does; undefined where it must be typed by hand. */
  const answer = ({ field }: Question, value: unknown): (() => Promise<unknown>) | undefined => {
    const days = field === 'start' && job.days.length === 0 ? daysBehind(value) : undefined;
    if (days) return () => choose(days);
    const changes = chosenChanges(job, field, value, home.zone);
    return changes ? () => save(changes, { settled: [field] }) : undefined;
  };
  return (
    <ul className={style.questions}>
      {questions.map((question) => (
        <li key={`${question.field} ${question.ask}`}>
          <strong>{question.ask}</strong>
          <div className={style.choices}>
            {question.choices.map(({ label, value }) => {
              const perform = answer(question, value);
              return perform ? (
                <Button key={label} isDisabled={running > 0} onPress={() => void perform()}>
                  {label}
                </Button>
              ) : null;
            })}
            {stands(job, question.field) && (
              <span className={style.stands}>
                <Button
                  kind="quiet"
                  isDisabled={running > 0}
                  onPress={() => void save({}, { settled: [question.field] })}
                  aria-label={`As it stands: ${question.ask}`}
                >
                  As it stands
                </Button>
              </span>
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
