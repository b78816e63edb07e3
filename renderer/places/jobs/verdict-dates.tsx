import { useQuery } from '@tanstack/react-query';
import type { Lift } from '../../../core/contract/fit.ts';
import type { TryOn } from '../../../core/contract/try-on.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { datesInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { Asked } from '../../parts/asked.tsx';
import { Button } from '../../parts/button.tsx';
import style from './verdict.module.css';

const answers = { free: 'free', 'free if': 'free if …' };

/** The nearest dates that work; pressing one tries it on. */
export function NearestDates(props: { jobId: string; tryOn: TryOn; locked: boolean; onTry: (lift: Lift) => void; onClose: () => void }) {
  const { jobId, tryOn, locked, onTry, onClose } = props;
  const asked = useQuery(ask.fit.nearest.queryOptions({ input: { jobId, tryOn, limit: 5 } }));
  return (
    <section className={style.nearest} aria-labelledby="nearest-dates">
      <div className={style.nearestHead}>
        <h3 id="nearest-dates">Nearest dates that work</h3>
        <Button kind="quiet" onPress={onClose}>
          Close
        </Button>
      </div>
      <Asked asked={asked}>
        {({ nearest }) =>
          nearest.length === 0 ? (
            <p>None within four weeks on either side.</p>
          ) : (
            <ul>
              {nearest.map(({ shiftDays, days, answer, reason }) => (
                <li key={shiftDays}>
                  <Button
                    isDisabled={locked}
                    onPress={() => {
                      const dates = datesInWords(days.map(({ date }) => date));
                      onTry({ kind: 'other dates', label: `Offer ${dates}`, tryOn: { shiftDays } });
                      onClose();
                    }}
                  >
                    {datesInWords(days.map(({ date }) => date))}
                  </Button>{' '}
                  {`${countInWords(Math.abs(shiftDays), 'day')} ${shiftDays > 0 ? 'later' : 'earlier'}, ${answers[answer]}`}
                  {answer === 'free if' ? <span className={style.or}>{` ${reason}`}</span> : null}
                </li>
              ))}
            </ul>
          )
        }
      </Asked>
    </section>
  );
}
