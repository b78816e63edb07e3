import { useQuery } from '@tanstack/react-query';
import type { JobHours, Worked } from '../../../core/contract/hours.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { dateIn } from '../../../core/time/wall.ts';
import { epochOf } from '../../../core/time/read.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import { dateInWords, wallInWords, zoneInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import table from '../../parts/table.module.css';
import { useOneOpen } from '../../parts/use-one-open.ts';
import { sayWithUndo } from '../../undo.ts';
import { HoursForm } from './hours-form.tsx';
import { HoursOwed } from './hours-owed.tsx';
import { HoursPay } from './hours-pay.tsx';
import { SiteSign } from './hours-site.tsx';
import style from './hours.module.css';
import { Overtime } from './overtime.tsx';
import { blankHours, hoursFields, typedHours, type TypedHours } from './typed-hours.ts';

type Editing = { stored: Worked | undefined; start: TypedHours };

/** The hours of a job: the sign for use on site, what was worked, overtime and what was said to it, what it comes to, what hands are owed. */
export function Hours({ job, home }: { job: Job; home: Place }) {
  // The sign counts minutes, so it is read again twice a minute.
  const asked = useQuery({ ...ask.hours.of.queryOptions({ input: { jobId: job.id } }), refetchInterval: 30_000 });
  const [editing, setEditing, close] = useOneOpen<Editing>();
  const hours = asked.data;
  if (!hours || (job.state !== 'inked' && hours.days.length === 0)) return null;
  const open = job.state === 'inked';
  const begin = (date: string): void =>
    setEditing({ stored: undefined, start: blankHours(job.days.find((day) => day.date === date) ?? { date }, hours.zone) });
  const zones = [...new Set([hours.zone, home.zone])];
  return (
    <section className={style.part} aria-labelledby="hours">
      <div className={style.head}>
        <h2 id="hours">Hours</h2>
        {open && editing === null ? (
          <Button kind="quiet" onPress={() => begin(hours.toEnter[0] ?? dateIn(hours.zone, epochOf(hours.now)))}>
            Add hours
          </Button>
        ) : null}
      </div>
      {open ? <SiteSign job={job} hours={hours} /> : null}
      {open && hours.toEnter.length > 0 ? <ToEnter dates={hours.toEnter} onEnter={begin} /> : null}
      {hours.days.length > 0 ? (
        <HoursTable hours={hours} locked={!open} onCorrect={(stored) => setEditing({ stored, start: typedHours(stored) })} />
      ) : hours.toEnter.length === 0 ? (
        <p className={style.second}>Nothing worked yet. Call and wrap are pressed on site, or typed afterwards.</p>
      ) : null}
      {editing ? (
        <HoursForm
          key={editing.stored?.id ?? editing.start.date}
          jobId={job.id}
          start={editing.start}
          zones={zones}
          onDone={close}
          {...(editing.stored ? { stored: editing.stored } : {})}
        />
      ) : null}
      {hours.cautions.map((caution) => (
        <p key={caution} className={style.broken}>
          {caution}
        </p>
      ))}
      <Overtime job={job} hours={hours} locked={!open} />
      <HoursPay hours={hours} />
      <HoursOwed job={job} owed={hours.owed} today={dateIn(home.zone, epochOf(hours.now))} />
    </section>
  );
}

/** Paid dates that are over and have no hours. */
function ToEnter({ dates, onEnter }: { dates: readonly string[]; onEnter: (date: string) => void }) {
  return (
    <p className={style.buttons}>
      <span>Hours still to enter:</span>
      {dates.map((date) => (
        <Button key={date} kind="quiet" onPress={() => onEnter(date)} aria-label={`Enter the hours of ${dateInWords(date)}`}>
          {dateInWords(date)}
        </Button>
      ))}
    </p>
  );
}

function HoursTable({ hours, locked, onCorrect }: { hours: JobHours; locked: boolean; onCorrect: (worked: Worked) => void }) {
  return (
    <div className={table.scroll}>
      <table className={`${table.table} ${style.table}`}>
        <thead>
          <tr>
            <th scope="col">Date</th>
            <th scope="col">Who</th>
            <th scope="col">Kind</th>
            <th scope="col" className={table.figures}>
              Call
            </th>
            <th scope="col" className={table.figures}>
              Wrap
            </th>
            <th scope="col" className={table.figures}>
              Unpaid breaks
            </th>
            <th scope="col">
              <span className="reader">What can be done</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {hours.days.map((worked) => (
            <Row key={worked.id} worked={worked} zone={hours.zone} locked={locked} onCorrect={() => onCorrect(worked)} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Row({ worked, zone, locked, onCorrect }: { worked: Worked; zone: string; locked: boolean; onCorrect: () => void }) {
  const { running } = useDeeds();
  const { id, version, jobId, date, call, wrap, handName, unpaidBreakMinutes } = worked;
  const who = handName === '' ? 'me' : handName;
  const named = `${who} on ${dateInWords(date)}`;
  const takeOff = async (): Promise<void> => {
    const gone = await deed(() => client.hours.drop({ id, version, key: crypto.randomUUID() }));
    const back = () => client.hours.save({ jobId, fields: hoursFields(worked) });
    if (gone) sayWithUndo(`The hours of ${named} are off.`, 'Put them back', back, 'The hours are back.');
  };
  const wrapHand = async (): Promise<void> => {
    const kept = await deed(() => client.hours.wrapNow({ id, version, key: crypto.randomUUID() }));
    const undo = () => client.hours.save({ jobId, id, version: version + 1, fields: hoursFields(worked) });
    if (kept) sayWithUndo(`${handName} wrapped at ${kept.worked.wrap?.slice(11) ?? ''}.`, 'Undo', undo, 'The clock runs on.');
  };
  return (
    <tr>
      <th scope="row">
        {dateInWords(date)} {worked.note ? <span className={table.second}>{worked.note}</span> : null}
      </th>
      <td>{who}</td>
      <td>{worked.kind}</td>
      <td className={table.figures}>
        {call.slice(11)}
        {worked.zone === zone ? null : <span className={table.second}>{` ${zoneInWords(worked.zone)}`}</span>}
      </td>
      <td className={table.figures}>{wrap === null ? 'running' : wrap.slice(0, 10) === date ? wrap.slice(11) : wallInWords(wrap)}</td>
      <td className={table.figures}>{unpaidBreakMinutes > 0 ? lengthInWords(unpaidBreakMinutes) : ''}</td>
      <td>
        {locked ? null : (
          <span className={style.buttons}>
            {wrap === null && handName !== '' ? (
              <Button kind="quiet" isDisabled={running > 0} onPress={() => void wrapHand()} aria-label={`Wrap now: ${named}`}>
                Wrap now
              </Button>
            ) : null}
            <Button kind="quiet" onPress={onCorrect} aria-label={`Correct the hours of ${named}`}>
              Correct
            </Button>
            <Button kind="quiet" isDisabled={running > 0} onPress={() => void takeOff()} aria-label={`Take off the hours of ${named}`}>
              Take off
            </Button>
          </span>
        )}
      </td>
    </tr>
  );
}
