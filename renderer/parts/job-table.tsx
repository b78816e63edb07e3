import type { JobRow } from '../../core/contract/jobs.ts';
import { formatMoney } from '../../core/money/format.ts';
import { wallInWords } from '../../core/words/dates.ts';
import { StateMark } from './state-mark.tsx';
import table from './table.module.css';

/** Jobs as rows: what, when, where, how it stands, what was quoted. */
export function JobTable({ jobs }: { jobs: readonly JobRow[] }) {
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col">Job</th>
            <th scope="col">First call</th>
            <th scope="col">Place</th>
            <th scope="col">Stands</th>
            <th scope="col" className={table.figures}>
              Quoted
            </th>
          </tr>
        </thead>
        <tbody>
          {jobs.map((job) => (
            <tr key={job.id}>
              <th scope="row">
                <a href={`#/jobs/${job.id}`}>{job.title}</a>
                {job.organisation ? <span className={table.second}> {job.organisation}</span> : null}
              </th>
              <td>{job.firstCall ? wallInWords(job.firstCall.wall) : <span className={table.second}>no dates yet</span>}</td>
              <td>{job.place ?? <span className={table.second}>not known</span>}</td>
              <td>
                <StateMark state={job.state} />
              </td>
              <td className={table.figures}>{job.total ? formatMoney(job.total, { code: true }) : ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
