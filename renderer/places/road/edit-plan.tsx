import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { EditPlan, EditTryOn, PlannedEdit } from '../../../core/contract/deliverables.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { windowEnds } from '../../../core/deliverables/rounds.ts';
import { dayWords, whenWords } from '../../../core/desk/when.ts';
import { formatNumber } from '../../../core/money/format.ts';
import { epochOf } from '../../../core/time/read.ts';
import { ask } from '../../ask.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import table from '../../parts/table.module.css';
import { Tick } from '../../parts/tick.tsx';
import style from './edit-plan.module.css';

/** Every promised edit in order of its date: when it is planned, by when it must be begun; and what a change would do, tried on before it is agreed. */
export function EditPlanPart({ home }: { home: Place }) {
  const [tried, setTried] = useState<EditTryOn>({});
  const isTried = Object.keys(tried).length > 0;
  const now = useQuery(ask.deliverables.plan.queryOptions({ input: {} })).data?.plan;
  const asIf = useQuery({
    ...ask.deliverables.tryOn.queryOptions({ input: { tryOn: tried }, placeholderData: (before) => before }),
    enabled: isTried,
    retry: false,
  });
  const plan = isTried ? (asIf.data?.plan ?? now) : now;
  if (!plan || !now || (now.edits.length === 0 && now.troubles.length === 0)) return null;
  return (
    <section aria-labelledby="edit-plan" className={style.part}>
      <div className={style.head}>
        <h2 id="edit-plan">Edits</h2>
        <span className={style.second}>{plan.sentence}</span>
      </div>
      {plan.troubles.map((trouble) => (
        <p key={trouble} className={style.broken}>
          {trouble}
        </p>
      ))}
      <TryOn plan={now} tried={tried} onTry={setTried} />
      {isTried && asIf.data ? (
        <div role="status">
          <p className={style.strong}>{`As if, not saved: ${asIf.data.sentence}`}</p>
          <ul>
            {asIf.data.changed.map(({ deliverableId, sentence }) => (
              <li key={deliverableId}>{sentence}</li>
            ))}
          </ul>
        </div>
      ) : null}
      <PlanTable plan={plan} home={home} />
    </section>
  );
}

const NONE = 'none';

/** Changes that are tried on: a longer day, editing on the road, fewest late in place of least late, another date, somebody hired. */
function TryOn({ plan, tried, onTry }: { plan: EditPlan; tried: EditTryOn; onTry: (tried: EditTryOn) => void }) {
  const [chosen, setChosen] = useState(NONE);
  const edits = plan.edits.map(({ deliverableId, name, jobTitle }) => ({ value: deliverableId, label: `${name}, ${jobTitle}` }));
  const hired = tried.hired ?? [];
  const moved = tried.moved?.find(({ deliverableId }) => deliverableId === chosen);
  const edit = plan.edits.find(({ deliverableId }) => deliverableId === chosen);
  const change = (part: EditTryOn): void => onTry(withoutEmpty({ ...tried, ...part }));
  const others = (tried.moved ?? []).filter(({ deliverableId }) => deliverableId !== chosen);
  return (
    <div role="group" aria-label="Try on" className={style.fields}>
      <span className={style.second}>Try on:</span>
      <Field
        label="Hours a day"
        figures
        type="number"
        value={String(tried.hoursADay ?? plan.hoursADay)}
        onChange={(typed) => {
          const hours = Number(typed);
          if (hours >= 0.5 && hours <= 24) change({ hoursADay: hours === plan.hoursADay ? undefined : hours });
        }}
      />
      <Tick checked={tried.onTravelDays ?? false} onChange={(on) => change({ onTravelDays: on || undefined })}>
        edit on travel days
      </Tick>
      <Tick checked={tried.order === 'fewest late'} onChange={(on) => change({ order: on ? 'fewest late' : undefined })}>
        as few late as can be
      </Tick>
      <Choice label="One edit" value={chosen} options={[{ value: NONE, label: 'none' }, ...edits]} onChange={setChosen} />
      {edit ? (
        <>
          <Tick
            checked={hired.includes(chosen)}
            onChange={(on) => change({ hired: on ? [...hired, chosen] : hired.filter((id) => id !== chosen) })}
          >
            somebody is hired for it
          </Tick>
          <Field
            label="Another date"
            type="date"
            value={moved?.due ?? edit.due ?? ''}
            onChange={(due) => change({ moved: due === '' || due === edit.due ? others : [...others, { deliverableId: chosen, due }] })}
          />
        </>
      ) : null}
      {Object.keys(tried).length > 0 ? (
        <Button kind="quiet" onPress={() => onTry({})}>
          Take all back
        </Button>
      ) : null}
    </div>
  );
}

/** What is not tried on stands in no key. */
function withoutEmpty(tried: { [Key in keyof EditTryOn]: EditTryOn[Key] | undefined }): EditTryOn {
  return Object.fromEntries(
    Object.entries(tried).filter(([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0)),
  ) as EditTryOn;
}

function PlanTable({ plan, home }: { plan: EditPlan; home: Place }) {
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Edit</th>
            <th scope="col">Due</th>
            <th scope="col" className={table.figures}>
              Hours left
            </th>
            <th scope="col">Planned to be done</th>
            <th scope="col">Begin by</th>
            <th scope="col" className={table.figures}>
              To spare
            </th>
          </tr>
        </thead>
        <tbody>
          {plan.edits.map((edit) => (
            <Row key={edit.deliverableId} edit={edit} plan={plan} home={home} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Row({ edit, plan, home }: { edit: PlannedEdit; plan: EditPlan; home: Place }) {
  const { jobId, jobTitle, name, due, hoursLeft, finish, latestStart, slackHours, lateDays, unplaced, waits, sentence } = edit;
  const late = lateDays > 0 || unplaced > 0;
  const now = epochOf(plan.at);
  const short = (at: number): string => whenWords(at, home.zone, now);
  return (
    <tr>
      <th scope="row">
        <a href={`#/jobs/${jobId}`}>{name}</a> <span className={table.second}>{jobTitle}</span>
        {late ? <div className={style.broken}>{sentence}</div> : null}
        {waits === '' ? null : <div className={table.second}>{`waits for ${waits}`}</div>}
      </th>
      <td className={style.when}>{due === null ? 'not said' : dayWords(windowEnds(due, home.zone) - 1, home.zone, now) || 'today'}</td>
      <td className={table.figures}>{`${formatNumber(String(hoursLeft))} h`}</td>
      <td className={`${style.when} ${late ? style.late : ''}`}>
        {finish === null ? (hoursLeft === 0 ? 'done' : late ? 'no place' : 'by another hand') : short(epochOf(finish))}
      </td>
      <td className={style.when}>{latestStart === null ? '' : short(epochOf(latestStart))}</td>
      <td className={table.figures}>{slackHours === null ? '' : `${formatNumber(String(slackHours))} h`}</td>
    </tr>
  );
}
