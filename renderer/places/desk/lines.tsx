import type { DeskLine } from '../../../core/contract/desk.ts';
import { client } from '../../door.ts';
import { deed, say, useDeeds } from '../../deeds.ts';
import { Button } from '../../parts/button.tsx';
import style from './lines.module.css';

/** What happened by itself since one looked last; each line can be put away. */
export function Lines({ lines }: { lines: readonly DeskLine[] }) {
  const clocks = lines.filter(({ id }) => id.startsWith('clock:'));
  return (
    <>
      <Told title="Clocks changed" id="clocks-changed" lines={clocks} />
      <Told title="Moved up" id="moved-up" lines={lines.filter((line) => !clocks.includes(line))} />
    </>
  );
}

function Told({ title, id, lines }: { title: string; id: string; lines: readonly DeskLine[] }) {
  const { running } = useDeeds();
  if (lines.length === 0) return null;
  return (
    <section aria-labelledby={id} className={style.lines}>
      <h2 id={id}>{title}</h2>
      <ul>
        {lines.map((line) => (
          <li key={line.id} className={style.line}>
            <p>
              <a href={line.jobId ? `#/jobs/${line.jobId}` : '#/road'}>{line.sentence}</a>{' '}
              <span className={style.second}>{line.second}</span>
            </p>
            <Button kind="quiet" isDisabled={running > 0} onPress={() => void putAway(line)} aria-label={`Put away: ${line.sentence}`}>
              Put away
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}

async function putAway({ id, sentence }: DeskLine): Promise<void> {
  const gone = await deed(() => client.desk.putAway({ line: id }));
  if (gone) say(`Put away: ${sentence}`, { label: 'Bring it back', perform: () => deed(() => client.desk.bringBack({ line: id })) });
}
