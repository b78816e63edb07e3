import type { Stringline } from '../../../core/contract/road.ts';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { wallInWords, zoneInWords } from '../../../core/words/dates.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import table from '../../parts/table.module.css';

type Row = { key: string; start: number; end: number; job: string; note: string; what: string };

/** The stringline as a table, for those who read instead of look. Times are those of home. */
export function RoadTable({ data }: { data: Stringline }) {
  const nameOf = new Map(data.places.map(({ place }) => [place.key, place.name]));
  const name = (key: string): string => nameOf.get(key) ?? key;
  const rows: Row[] = data.jobs
    .flatMap((job) => {
      const about = { job: job.title, note: job.note };
      return [
        ...job.blocks.map((each) => ({
          ...about,
          key: `${job.jobId} ${each.start} block`,
          start: epochOf(each.start),
          end: epochOf(each.end),
          what: `${each.kind} in ${name(each.placeKey)}`,
        })),
        ...job.moves.map((each) => ({
          ...about,
          key: `${job.jobId} ${each.start} ${each.fromKey}`,
          start: epochOf(each.start),
          end: epochOf(each.end),
          what: `${each.mode} ${name(each.fromKey)} to ${name(each.toKey)}, ${each.source}`,
        })),
        ...job.rests.map((each) => ({
          ...about,
          key: `${job.jobId} ${each.start} rest`,
          start: epochOf(each.start),
          end: epochOf(each.end),
          what: `rest in ${name(each.placeKey)}`,
        })),
      ];
    })
    .sort((a, b) => a.start - b.start);
  return (
    <section className={table.scroll} aria-label="The road as a table">
      <table className={table.table}>
        <caption className="reader">{`What is on the road, with the clock of ${zoneInWords(data.zone)}`}</caption>
        <thead>
          <tr>
            <th scope="col">From</th>
            <th scope="col">To</th>
            <th scope="col" className={table.figures}>
              Length
            </th>
            <th scope="col">What</th>
            <th scope="col">Job</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              <td>{wallInWords(wallAt(row.start, data.zone))}</td>
              <td>{wallInWords(wallAt(row.end, data.zone))}</td>
              <td className={table.figures}>{lengthInWords(Math.round((row.end - row.start) / 60_000))}</td>
              <td>{row.what}</td>
              <td>{`${row.job}, ${row.note}`}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
