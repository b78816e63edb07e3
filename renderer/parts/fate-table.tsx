import type { ImportRow } from '../../core/contract/people.ts';
import { joined } from '../../core/words/lists.ts';
import style from './fate-table.module.css';
import table from './table.module.css';

/** "12 new, 3 here already and 1 refused". */
export function fatesInWords(rows: readonly ImportRow[]): string {
  const fates = [
    { fate: 'new', words: 'new' },
    { fate: 'same as', words: 'here already' },
    { fate: 'refused', words: 'refused' },
  ].map(({ fate, words }) => ({ count: rows.filter((row) => row.fate === fate).length, words }));
  return joined(fates.filter(({ count }) => count > 0).map(({ count, words }) => `${count} ${words}`)) || 'no row with a name';
}

/** Every row of a file, and what becomes of it. */
export function FateTable({ rows }: { rows: readonly ImportRow[] }) {
  return (
    <div className={table.scroll}>
      <table className={table.table}>
        <thead>
          <tr>
            <th scope="col" className={table.figures}>
              Line
            </th>
            <th scope="col">Name</th>
            <th scope="col">What becomes of it</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={`${row.line} ${row.name}`}>
              <td className={table.figures}>{row.line}</td>
              <th scope="row">{row.name}</th>
              <td className={style.long}>
                <Fate row={row} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Fate({ row }: { row: ImportRow }) {
  if (row.fate === 'new') return <>new</>;
  if (row.fate === 'same as') return <>{`here already as ${row.why}`}</>;
  return <span className={style.broken}>{`refused. ${row.why}`}</span>;
}
