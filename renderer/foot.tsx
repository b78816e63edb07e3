import { useQuery } from '@tanstack/react-query';
import { ask } from './ask.ts';
import { useDeeds } from './deeds.ts';
import { FindBox } from './find-box.tsx';
import style from './frame.module.css';
import { dateIn } from '../core/time/wall.ts';
import { epochOf, wallAt } from '../core/time/read.ts';
import { dateInWords } from '../core/words/dates.ts';

/** The foot rule: the find box and how the store is. */
export function Foot() {
  const { running, trouble } = useDeeds();
  return (
    <footer className={style.foot}>
      <FindBox />
      <output className={style.state}>
        {running > 0 ? 'saving …' : trouble ? <span className={style.failed}>◆ the last step was not saved</span> : 'all saved'}
        <Snapshot /> · nothing leaves this computer
      </output>
    </footer>
  );
}

function Snapshot() {
  const { data, isError } = useQuery(ask.store.state.queryOptions({ input: {} }));
  if (isError) return <span className={style.failed}> · ◆ the store does not answer</span>;
  if (!data) return null;
  return <> · {data.lastSnapshot ? `last snapshot ${snapshotInWords(data.lastSnapshot.takenAt)}` : 'no snapshot yet'}</>;
}

/** "today 18:02", else "Thu 3 December 2026 18:02", on this computer's clock. */
export function snapshotInWords(takenAt: string): string {
  const zone = Temporal.Now.timeZoneId();
  const wall = wallAt(epochOf(takenAt), zone);
  const date = wall.slice(0, 10);
  return `${date === dateIn(zone, Temporal.Now.instant().epochMilliseconds) ? 'today' : dateInWords(date)} ${wall.slice(11)}`;
}
