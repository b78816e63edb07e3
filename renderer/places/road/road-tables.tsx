import type { Stringline } from '../../../core/contract/road.ts';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { dateInWords, wallInWords, zoneInWords } from '../../../core/words/dates.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import table from '../../parts/table.module.css';
import { timed, type Span } from '../../parts/stringline/strip.ts';
import type { Seen } from './read-road.ts';
import style from './road.module.css';

type Row = Span & { key: string; what: string; job: string };

/** The road as tables, for those who read instead of look. Times are those of home. */
export function RoadTables({ seen: { stringline, kit, hands, busy, edit } }: { seen: Seen }) {
  const { zone } = stringline;
  const clock = `with the clock of ${zoneInWords(zone)}`;
  const kitRows = kit.map((bar, index) => ({
    ...timed(bar),
    key: `${bar.jobId} ${index}`,
    what: [bar.words, ...bar.short.map(({ sentence }) => sentence)].join('. '),
    job: bar.firmness === 'ink' ? bar.title : `${bar.title}, ${bar.firmness}`,
  }));
  const handRows = hands.map((bar, index) => ({
    ...timed(bar),
    key: `${bar.handId} ${index}`,
    what: bar.firmness === 'ink' ? bar.name : `${bar.name}, in pencil`,
    job: bar.title,
  }));
  const busyRows = busy
    .flatMap((bar) => bar.parts)
    .map((part, index) => ({ ...timed(part), key: `${part.calendar} ${index}`, what: part.title, job: part.calendar }));
  return (
    <section className={table.scroll} aria-label="The road as tables">
      <Spans caption={`What is on the road, ${clock}`} rows={lineRows(stringline)} zone={zone} />
      {kitRows.length > 0 ? <Spans caption={`Kit out, ${clock}`} rows={kitRows} zone={zone} /> : null}
      {handRows.length > 0 ? <Spans caption={`Hands, ${clock}`} rows={handRows} zone={zone} /> : null}
      {busyRows.length > 0 ? <Spans caption={`Other calendars, ${clock}`} rows={busyRows} zone={zone} of="Calendar" /> : null}
      {edit.days.length > 0 ? (
        <table className={table.table}>
          <caption className={style.caption}>{`Edit hours${edit.ceiling === null ? '' : `, of ${edit.ceiling} a day`}`}</caption>
          <thead>
            <tr>
              <th scope="col">Date</th>
              <th scope="col" className={table.figures}>
                Hours
              </th>
              <th scope="col">Of which</th>
              <th scope="col">What bites</th>
            </tr>
          </thead>
          <tbody>
            {edit.days.map((day) => (
              <tr key={day.date}>
                <td>{dateInWords(day.date)}</td>
                <td className={table.figures}>{day.hours}</td>
                <td>{day.parts.map(({ title, hours }) => `${title} ${hours} h`).join(', ')}</td>
                <td>{[day.lost ? 'loses its day' : '', day.over ? 'more than a day holds' : ''].filter(Boolean).join(', ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
    </section>
  );
}

function Spans({ caption, rows, zone, of = 'Job' }: { caption: string; rows: readonly Row[]; zone: string; of?: string }) {
  return (
    <table className={table.table}>
      <caption className={style.caption}>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">From</th>
          <th scope="col">To</th>
          <th scope="col" className={table.figures}>
            Length
          </th>
          <th scope="col">What</th>
          <th scope="col">{of}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.key}>
            <td>{wallInWords(wallAt(row.start, zone))}</td>
            <td>{wallInWords(wallAt(row.end, zone))}</td>
            <td className={table.figures}>{lengthInWords(Math.round((row.end - row.start) / 60_000))}</td>
            <td>{row.what}</td>
            <td>{row.job}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function lineRows({ jobs, places }: Stringline): Row[] {
  const nameOf = new Map(places.map(({ place }) => [place.key, place.name]));
  const name = (key: string): string => nameOf.get(key) ?? key;
  return jobs
    .flatMap((job) => [
      ...job.blocks.map((each) => row(job, each, 'block', `${each.kind} in ${name(each.placeKey)}`)),
      ...job.moves.map((each) => row(job, each, each.fromKey, `${each.mode} ${name(each.fromKey)} to ${name(each.toKey)}, ${each.source}`)),
      ...job.rests.map((each) => row(job, each, 'rest', `rest in ${name(each.placeKey)}`)),
    ])
    .sort((a, b) => a.start - b.start);
}

function row(job: Stringline['jobs'][number], each: { start: string; end: string }, part: string, what: string): Row {
  return {
    key: `${job.jobId} ${each.start} ${part}`,
    start: epochOf(each.start),
    end: epochOf(each.end),
    what,
    job: `${job.title}, ${job.note}`,
  };
}
