import { useQuery } from '@tanstack/react-query';
import type { Deliverable } from '../../../../core/contract/deliverables.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import type { DeliverableTime, TimeSpent } from '../../../../core/contract/spent.ts';
import { epochOf } from '../../../../core/time/read.ts';
import { dateIn } from '../../../../core/time/wall.ts';
import { countInWords, lengthInWords } from '../../../../core/words/amounts.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { ask } from '../../../ask.ts';
import { deed, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { Fold } from '../../../parts/fold.tsx';
import table from '../../../parts/table.module.css';
import { useOneOpen } from '../../../parts/use-one-open.ts';
import { sayWithUndo } from '../../../undo.ts';
import { EndForm } from './end-form.tsx';
import style from './rounds.module.css';
import { TimeForm } from './time-form.tsx';

type Names = ReadonlyMap<string | null, string>;

/** Time spent on one deliverable by stage, beside what was estimated, and what such edits took before. */
export function Spent({
  job,
  deliverable,
  home,
}: {
  job: Job;
  deliverable: Pick<Deliverable, 'id' | 'name' | 'off' | 'stages'>;
  home: Place;
}) {
  // A clock that runs counts minutes, so it is read again twice a minute.
  const asked = useQuery({ ...ask.spent.of.queryOptions({ input: { deliverableId: deliverable.id } }), refetchInterval: 30_000 });
  const [editing, setEditing, close] = useOneOpen<TimeSpent | 'new' | 'end'>();
  const time = asked.data;
  const locked = deliverable.off || job.state === 'cancelled';
  if (!time || (locked && time.entries.length === 0)) return null;
  const names: Names = new Map<string | null, string>([
    [null, 'other work'],
    ...deliverable.stages.map(({ id, name }) => [id, name] as const),
  ]);
  const title = `spent-${deliverable.id}`;
  const today = dateIn(home.zone, epochOf(time.now));
  const runs = time.running?.deliverableId === deliverable.id;
  const elsewhere = runs ? null : time.running;
  return (
    <section className={style.part} aria-labelledby={title}>
      <div className={style.head}>
        <h4 id={title}>Time spent</h4>
        <span className={style.second}>{`${time.total.sentence}.`}</span>
        {locked || editing ? null : (
          <Button kind="quiet" onPress={() => setEditing('new')} aria-label={`Type hours: ${deliverable.name}`}>
            Type hours
          </Button>
        )}
      </div>
      {elsewhere ? (
        <p className={style.second}>
          {`The clock runs on ${elsewhere.name} of ${elsewhere.title}, ${elsewhere.stage}: ${lengthInWords(elsewhere.minutes)}. Starting it here stops it there.`}
        </p>
      ) : null}
      {editing === 'end' && runs && time.running ? <EndForm running={time.running} zone={home.zone} onDone={close} /> : null}
      {editing && editing !== 'end' ? (
        <TimeForm
          key={editing === 'new' ? 'new' : editing.id}
          deliverableId={deliverable.id}
          stages={time.stages.map((row) => ({ ...row, kind: names.get(row.stageId) ?? row.kind }))}
          today={today}
          onDone={close}
          {...(editing === 'new' ? {} : { stored: editing })}
        />
      ) : null}
      <Fold title="The clock, and hours by stage" open={runs}>
        <StageTable time={time} names={names} deliverable={deliverable} locked={locked} onEnd={() => setEditing('end')} />
      </Fold>
      {time.past && time.past.sentences.length > 0 ? (
        <p className={style.second}>{`Past edits of this template: ${time.past.sentences.join(' ')}`}</p>
      ) : null}
      {time.entries.length > 0 ? (
        <Fold title={countInWords(time.entries.length, 'entry', 'entries')}>
          <ul className={style.rounds}>
            {time.entries.map((entry) => (
              <li key={entry.id}>
                <Entry entry={entry} name={names.get(entry.stageId) ?? 'other work'} locked={locked} onCorrect={() => setEditing(entry)} />
              </li>
            ))}
          </ul>
        </Fold>
      ) : null}
    </section>
  );
}

function StageTable(props: {
  time: DeliverableTime;
  names: Names;
  deliverable: Pick<Deliverable, 'id' | 'name'>;
  locked: boolean;
  onEnd: () => void;
}) {
  const { time, names, deliverable, locked, onEnd } = props;
  const { running: saving } = useDeeds();
  const { running } = time;
  const rows = time.stages.filter(({ minutes, estimate }) => minutes > 0 || estimate > 0);
  const start = (stageId: string | null): void => {
    const input = { deliverableId: deliverable.id, stageId };
    void deed(() => client.spent.start({ ...input, key: crypto.randomUUID() }));
  };
  const stop = ({ id, version }: TimeSpent): void => void deed(() => client.spent.stop({ id, version, key: crypto.randomUUID() }));
  if (rows.length === 0) return null;
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Stage</th>
            <th scope="col" className={table.figures}>
              Spent
            </th>
            <th scope="col" className={table.figures}>
              Estimated
            </th>
            <th scope="col" className={table.figures}>
              Over
            </th>
            <th scope="col">
              <span className="reader">The clock</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ stageId, kind, minutes, estimate, done }) => {
            const name = names.get(stageId) ?? kind;
            const runs = running?.deliverableId === deliverable.id && running.stageId === stageId;
            const over = minutes - estimate;
            return (
              <tr key={stageId ?? 'other'}>
                <th scope="row">
                  {name} <span className={table.second}>{runs ? 'the clock runs' : done ? 'done' : ''}</span>
                </th>
                <td className={table.figures}>{minutes > 0 ? lengthInWords(minutes) : ''}</td>
                <td className={table.figures}>{estimate > 0 ? lengthInWords(estimate) : ''}</td>
                <td className={`${table.figures} ${over > 0 && estimate > 0 ? style.broken : ''}`}>
                  {over > 0 && estimate > 0 ? lengthInWords(over) : ''}
                </td>
                <td className={table.figures}>
                  {locked || (done && !runs) ? null : runs && running ? (
                    <span className={style.clock}>
                      <Button kind="quiet" onPress={onEnd} aria-label={`It ended earlier: ${name} of ${deliverable.name}`}>
                        It ended earlier
                      </Button>
                      <Button
                        isDisabled={saving > 0}
                        onPress={() => stop(running)}
                        aria-label={`Stop the clock: ${name} of ${deliverable.name}`}
                      >
                        Stop the clock
                      </Button>
                    </span>
                  ) : (
                    <Button
                      kind="quiet"
                      isDisabled={saving > 0}
                      onPress={() => start(stageId)}
                      aria-label={`Start the clock: ${name} of ${deliverable.name}`}
                    >
                      Start the clock
                    </Button>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

function Entry({ entry, name, locked, onCorrect }: { entry: TimeSpent; name: string; locked: boolean; onCorrect: () => void }) {
  const { running } = useDeeds();
  const { id, version, deliverableId, stageId, date, minutes, note, endAt } = entry;
  const said = `${dateInWords(date)}, ${name}: ${lengthInWords(minutes)}${endAt === null ? ', running' : ''}`;
  const takeOff = async (): Promise<void> => {
    const gone = await deed(() => client.spent.drop({ id, version, key: crypto.randomUUID() }));
    const back = () => client.spent.type({ deliverableId, stageId, on: date, minutes, note });
    if (gone && minutes > 0) sayWithUndo('The time is off.', 'Put it back', back, 'The time is back.');
  };
  return (
    <div className={style.row}>
      <p>
        {said} <span className={style.second}>{note}</span>
      </p>
      {locked ? null : (
        <span className={style.buttons}>
          {endAt === null ? null : (
            <Button kind="quiet" onPress={onCorrect} aria-label={`Correct ${said}`}>
              Correct
            </Button>
          )}
          <Button kind="quiet" isDisabled={running > 0} onPress={() => void takeOff()} aria-label={`Take off ${said}`}>
            Take off
          </Button>
        </span>
      )}
    </div>
  );
}
