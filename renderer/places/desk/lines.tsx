import type { DeskLine } from '../../../core/contract/desk.ts';
import { client } from '../../door.ts';
import { deed, say, useDeeds } from '../../deeds.ts';
import { Button } from '../../parts/button.tsx';
import { Fold } from '../../parts/fold.tsx';
import style from './lines.module.css';

/** What happened by itself since one looked last; each line can be put away. */
export function Lines({ lines }: { lines: readonly DeskLine[] }) {
  const of = (kind: string) => lines.filter(({ id }) => id.startsWith(`${kind}:`));
  const [calendars, clocks] = [of('calendar'), of('clock')];
  return (
    <>
      <Told title="Calendars" id="calendars-unread" lines={calendars} />
      <Told title="Clocks changed" id="clocks-changed" lines={clocks} />
      <Told title="Moved up" id="moved-up" lines={of('moved-up')} />
    </>
  );
}

/** So many lines are read at a glance; what goes on about the same is folded. */
const AT_A_GLANCE = 2;

function Told({ title, id, lines }: { title: string; id: string; lines: readonly DeskLine[] }) {
  if (lines.length === 0) return null;
  const more = lines.length > AT_A_GLANCE + 1 ? lines.slice(AT_A_GLANCE) : [];
  return (
    <section aria-labelledby={id} className={style.lines}>
      <h2 id={id}>{title}</h2>
      <LineList lines={lines.slice(0, lines.length - more.length)} />
      {more.length > 0 ? (
        <Fold title={`${more.length} more`}>
          <LineList lines={more} />
        </Fold>
      ) : null}
    </section>
  );
}

function LineList({ lines }: { lines: readonly DeskLine[] }) {
  const { running } = useDeeds();
  return (
    <ul>
      {lines.map((line) => (
        <li key={line.id} className={style.line}>
          <p>
            <a href={hrefOf(line)}>{line.sentence}</a> <span className={style.second}>{line.second}</span>
          </p>
          <Button kind="quiet" isDisabled={running > 0} onPress={() => void putAway(line)} aria-label={`Put away: ${line.sentence}`}>
            Put away
          </Button>
        </li>
      ))}
    </ul>
  );
}

function hrefOf({ id, jobId }: DeskLine): string {
  if (jobId) return `#/jobs/${jobId}`;
  return id.startsWith('calendar:') ? '#/setup' : '#/road';
}

async function putAway({ id, sentence }: DeskLine): Promise<void> {
  const gone = await deed(() => client.desk.putAway({ line: id }));
  if (gone) say(`Put away: ${sentence}`, { label: 'Bring it back', perform: () => deed(() => client.desk.bringBack({ line: id })) });
}
