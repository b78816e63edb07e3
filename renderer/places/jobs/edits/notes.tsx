import type { Round } from '../../../../core/contract/rounds.ts';
import { deed, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Tick } from '../../../parts/tick.tsx';
import style from './rounds.module.css';

/** The notes of a round, each with its time code, to tick off as the work goes on. */
export function Notes({ round, locked }: { round: Round; locked: boolean }) {
  const { running } = useDeeds();
  const codes = round.items.map(({ timecode }) => timecode).filter((code) => code !== '');
  const wide = codes.some((code) => code.includes(' to ')) ? style.ranges : style.labels;
  return (
    <ul className={`${style.notes} ${codes.length > 0 ? wide : ''}`} aria-label={`Notes on the ${round.what}`}>
      {round.items.map(({ id, timecode, text, doneAt }) => (
        <li key={id}>
          <Tick
            checked={doneAt !== null}
            disabled={locked || running > 0}
            onChange={(done) => void deed(() => client.rounds.tick({ note: id, done, key: crypto.randomUUID() }))}
          >
            <span className={style.note}>
              {codes.length > 0 ? <span className={style.code}>{timecode}</span> : null}
              <span className={doneAt === null ? undefined : style.done}>{text}</span>
            </span>
          </Tick>
        </li>
      ))}
    </ul>
  );
}
