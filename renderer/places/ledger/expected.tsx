import type { LedgerSeen } from '../../../core/contract/ledger.ts';
import { barsOf } from '../../../core/ledger/bars.ts';
import { paperDate } from '../../../core/words/dates.ts';
import { Fold } from '../../parts/fold.tsx';
import table from '../../parts/table.module.css';
import { amountText, Bar, SumText } from './amounts.tsx';
import style from './ledger.module.css';

type Week = LedgerSeen['expected'][number];
const kinds: Record<Week['parts'][number]['kind'], string> = {
  due: 'falls due',
  disputed: 'disputed, not counted',
  deposit: 'deposit, not billed yet',
  'to bill': 'not billed yet',
};

function weekWords({ from, to }: Week): string {
  if (from === null) return 'late already';
  return to === null ? `after ${paperDate(from)}` : `week of ${paperDate(from)}`;
}

/** Money that is expected, by week; what each week is made of stands in a fold. */
export function Expected({ seen: { expected, home } }: { seen: LedgerSeen }) {
  const bars = barsOf(expected.map(({ sum }) => sum));
  return (
    <section className={style.part} aria-labelledby="expected">
      <h2 id="expected">Expected by week</h2>
      {expected.length === 0 ? (
        <p className={style.second}>Nothing is expected: no bill is open, and no job in ink waits for one.</p>
      ) : (
        <>
          <div className={table.scroll}>
            <table className={table.table} aria-labelledby="expected">
              <thead>
                <tr>
                  <th scope="col">When</th>
                  <td aria-hidden />
                  <th scope="col" className={table.figures}>
                    Expected
                  </th>
                </tr>
              </thead>
              <tbody>
                {expected.map((week, index) => (
                  <tr key={week.from ?? 'late'}>
                    <th scope="row">{weekWords(week)}</th>
                    <td className={style.bar} aria-hidden>
                      <Bar percent={bars[index] ?? 0} look={week.from === null ? 'broken' : 'outlined'} />
                    </td>
                    <td className={table.figures}>
                      <SumText sum={week.sum} currency={home} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          <Fold title="What each week is made of">{() => <Parts weeks={expected} home={home} />}</Fold>
        </>
      )}
    </section>
  );
}

function Parts({ weeks, home }: { weeks: readonly Week[]; home: string }) {
  return (
    <div className={table.scroll}>
      <table className={table.table} aria-label="What is expected, one by one">
        <thead>
          <tr>
            <th scope="col">On</th>
            <th scope="col">What</th>
            <th scope="col" className={table.figures}>
              Amount
            </th>
          </tr>
        </thead>
        <tbody>
          {weeks
            .flatMap(({ parts }) => parts)
            .map(({ kind, on, what, jobId, amount }) => (
              <tr key={`${kind} ${what} ${on}`}>
                <td className={style.nowrap}>{paperDate(on)}</td>
                <th scope="row">
                  {jobId ? <a href={`#/jobs/${jobId}`}>{what}</a> : what}
                  <span className={style.of}>{kinds[kind]}</span>
                </th>
                <td className={table.figures}>{amountText(amount, home)}</td>
              </tr>
            ))}
        </tbody>
      </table>
    </div>
  );
}
