import { useState } from 'react';
import type { Deliverable, EditPlan, EditStage } from '../../../../core/contract/deliverables.ts';
import type { Place } from '../../../../core/contract/parts.ts';
import { hoursOf } from '../../../../core/deliverables/edit-words.ts';
import { epochOf, wallAt } from '../../../../core/time/read.ts';
import { spanAt } from '../../../../core/words/moments.ts';
import { dateInWords, wallInWords, withoutYear } from '../../../../core/words/dates.ts';
import { deed, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import table from '../../../parts/table.module.css';
import { useOneOpen } from '../../../parts/use-one-open.ts';
import { sayWithUndo } from '../../../undo.ts';
import { StageForm } from './stage-form.tsx';
import { PinForm } from './pin-form.tsx';
import style from './edits.module.css';

type Props = { deliverable: Deliverable; plan: EditPlan | undefined; home: Place; locked: boolean };
type Open = { stage: EditStage; what: 'change' | 'pin' };

/** The stages of an edit in order: hours, when they are planned, and what is done. */
export function Stages({ deliverable, plan, home, locked }: Props) {
  const [open, setOpen, close] = useOneOpen<Open>();
  const next = deliverable.stages.find(({ doneAt }) => doneAt === null);
  return (
    <>
      <div className={table.scroll}>
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">Stage</th>
              <th scope="col" className={table.figures}>
                Hours
              </th>
              <th scope="col">Planned</th>
              <th scope="col">
                <span className="reader">What can be done</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {deliverable.stages.map((stage) => (
              <Row
                key={stage.id}
                deliverable={deliverable}
                stage={stage}
                plan={plan}
                home={home}
                locked={locked}
                next={stage === next}
                onOpen={(what) => setOpen({ stage, what })}
              />
            ))}
          </tbody>
        </table>
      </div>
      {open?.what === 'change' ? <StageForm key={open.stage.id} stage={open.stage} onDone={close} /> : null}
      {open?.what === 'pin' ? <PinForm key={open.stage.id} stage={open.stage} home={home} onDone={close} /> : null}
    </>
  );
}

type RowProps = Props & { stage: EditStage; next: boolean; onOpen: (what: Open['what']) => void };

function Row({ deliverable, stage, plan, home, locked, next, onOpen }: RowProps) {
  const { running } = useDeeds();
  const [asked, setAsked] = useState(false);
  const named = `${stage.name} of ${deliverable.name}`;
  const done = stage.doneAt !== null;
  const settle = async (): Promise<void> => {
    const which = { id: stage.id, version: stage.version, key: crypto.randomUUID() };
    setAsked(true);
    const kept = await deed(() => (done ? client.deliverables.stageOpen(which) : client.deliverables.stageDone(which)));
    setAsked(false);
    const now = kept?.deliverable.stages.find(({ id }) => id === stage.id);
    if (!now) return;
    const back = { id: stage.id, version: now.version, key: crypto.randomUUID() };
    const undo = () => (done ? client.deliverables.stageDone(back) : client.deliverables.stageOpen(back));
    sayWithUndo(`${named} is ${done ? 'open again' : 'done'}.`, 'Undo', undo, `${named} is ${done ? 'done' : 'open again'}.`);
  };
  return (
    <tr className={done ? style.done : undefined}>
      <th scope="row">
        {stage.name}
        {next && !locked ? <span className={style.second}> next</span> : null}
      </th>
      <td className={table.figures}>{stage.halfHours === 0 ? '' : hoursOf(stage.halfHours)}</td>
      <td>
        <Planned stage={stage} plan={plan} home={home} locked={locked} />
      </td>
      <td>
        {locked ? null : (
          <span className={style.buttons}>
            <Button
              kind="quiet"
              isDisabled={running > 0 || asked}
              onPress={() => void settle()}
              aria-label={`${done ? 'Open again' : 'Done'}: ${named}`}
            >
              {done ? 'Open again' : 'Done'}
            </Button>
            {done || stage.halfHours === 0 ? null : (
              <>
                <Button kind="quiet" onPress={() => onOpen('change')} aria-label={`Hours: ${named}`}>
                  Hours
                </Button>
                <Button kind="quiet" onPress={() => onOpen('pin')} aria-label={`Set aside: ${named}`}>
                  Set aside
                </Button>
              </>
            )}
          </span>
        )}
      </td>
    </tr>
  );
}

/** When it was done, or from when to when it is planned, with what was set aside for it. */
function Planned({ stage, plan, home, locked }: Pick<RowProps, 'stage' | 'plan' | 'home' | 'locked'>) {
  const { running } = useDeeds();
  if (stage.doneAt !== null) return <>{`done ${wallInWords(wallAt(epochOf(stage.doneAt), home.zone))}`}</>;
  const blocks = plan?.blocks.filter(({ stageId, pinned }) => stageId === stage.id && !pinned) ?? [];
  const [first, last] = [blocks[0], blocks.at(-1)];
  const unpin = async (id: string, start: string, end: string): Promise<void> => {
    const gone = await deed(() => client.deliverables.unpin({ id, key: crypto.randomUUID() }));
    const wall = (instant: string): string => wallAt(epochOf(instant), home.zone);
    const back = () => client.deliverables.pin({ stageId: stage.id, start: wall(start), end: wall(end), key: crypto.randomUUID() });
    if (gone) sayWithUndo('It is not set aside any more.', 'Put it back', back, 'It is set aside again.');
  };
  return (
    <>
      {first && last ? <div>{spanAt(epochOf(first.start), epochOf(last.end), home, home)}</div> : null}
      {stage.releaseDate ? <div className={style.second}>{`not before ${withoutYear(dateInWords(stage.releaseDate))}`}</div> : null}
      {stage.pins.map(({ id, start, end }) => (
        <div key={id} className={style.buttons}>
          <span>{`set aside: ${spanAt(epochOf(start), epochOf(end), home, home)}`}</span>
          {locked ? null : (
            <Button
              kind="quiet"
              isDisabled={running > 0}
              onPress={() => void unpin(id, start, end)}
              aria-label={`Let go: set aside for ${stage.name}`}
            >
              Let go
            </Button>
          )}
        </div>
      ))}
    </>
  );
}
