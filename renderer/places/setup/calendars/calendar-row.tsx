import type { Calendar } from '../../../../core/contract/calendars.ts';
import { leftOutInWords } from '../../../../core/calendars/left-out.ts';
import { countInWords } from '../../../../core/words/amounts.ts';
import { zoneInWords } from '../../../../core/words/dates.ts';
import { deed, say, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { snapshotInWords } from '../../../foot.tsx';
import { Button } from '../../../parts/button.tsx';
import { Fold } from '../../../parts/fold.tsx';
import { sayWithUndo } from '../../../undo.ts';
import style from './calendars.module.css';

const hardnessWords = {
  settle: 'must be settled',
  never: 'is never given up',
  'ignore all-day': 'must be settled, whole days left aside',
};

/** One calendar: what it is, what it takes, when it was read and what of it does not count. */
export function CalendarRow({ calendar, onChange }: { calendar: Calendar; onChange: () => void }) {
  const { running } = useDeeds();
  const { id, name, path, zone, hardness, isOn, trouble, leftOut } = calendar;
  const readAgain = async (): Promise<void> => {
    const read = await deed(() => client.calendars.readAgain({ id }));
    if (read && !read.calendar.trouble) say(`${name} was read: ${countInWords(read.calendar.busy, 'busy time')}.`);
  };
  return (
    <>
      <div className={style.head}>
        <strong>{name}</strong>
        <span className={style.second}>{isOn ? `what stands in it ${hardnessWords[hardness]}` : 'does not count'}</span>
      </div>
      <p className={style.path}>{path}</p>
      {trouble && isOn ? (
        <p className={style.wrong}>
          <strong>{trouble.what}</strong> {trouble.kept} {trouble.todo}
        </p>
      ) : null}
      <p className={style.second}>{`${stateInWords(calendar)} Whole days on the clock of ${zoneInWords(zone)}.`}</p>
      {leftOut.length > 0 ? (
        <Fold title={<span className={style.second}>What does not count, or only in part</span>}>
          <ul className={style.left}>
            {leftOut.map((left) => (
              <li key={left.why}>{leftOutInWords(left)}</li>
            ))}
          </ul>
        </Fold>
      ) : null}
      <div className={style.head}>
        <Button kind="quiet" onPress={onChange} aria-label={`Change ${name}`}>
          Change
        </Button>
        {isOn ? (
          <Button kind="quiet" isDisabled={running > 0} onPress={() => void readAgain()} aria-label={`Read ${name} again`}>
            Read again
          </Button>
        ) : null}
        <Button kind="quiet" isDisabled={running > 0} onPress={() => void takeOff(calendar)} aria-label={`Take off ${name}`}>
          Take off
        </Button>
      </div>
    </>
  );
}

/** "12 busy times from a year ago to three years ahead, read today 09:12." */
function stateInWords({ isOn, busy, readAt }: Calendar): string {
  if (!isOn) return 'Nothing of it counts until that is ticked under Change.';
  if (readAt === null) return 'It has not been read yet.';
  return `${countInWords(busy, 'busy time')} from a year ago to three years ahead, read ${snapshotInWords(readAt)}.`;
}

async function takeOff({ id, version, name, path, zone, hardness, isOn }: Calendar): Promise<void> {
  const fields = { name, path, zone, hardness, isOn };
  const gone = await deed(() => client.calendars.drop({ id, version }));
  if (gone)
    sayWithUndo(
      `${name} was taken off; its file is left alone.`,
      'Put it back',
      () => client.calendars.save({ fields }),
      `${name} counts again.`,
    );
}
