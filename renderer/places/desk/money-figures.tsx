import type { Money } from '../../../core/contract/parts.ts';
import type { Sum } from '../../../core/ledger/sums.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import style from './desk.module.css';

type Figures = { inked: Money; owed: { open: Sum; late: Sum }; perHour: { jobs: number; perHour: Money } | null };

/** What is owed to me, of which late, and what the last jobs kept per hour away. */
export function MoneyFigures({ inked: { currency }, owed: { open, late }, perHour }: Figures) {
  return (
    <>
      <dt>
        <a href="#/ledger">Owed to you</a>, of which late
      </dt>
      <dd>
        {inWords(open, currency)}
        {late.by.length > 0 ? <span className={style.late}>{`${inWords(late, currency)} late`}</span> : ', nothing late'}
      </dd>
      {perHour ? (
        <>
          <dt>{`Kept per hour away, last ${perHour.jobs === 1 ? 'job' : countInWords(perHour.jobs, 'job')}`}</dt>
          <dd>{formatMoney(perHour.perHour, { code: true })}</dd>
        </>
      ) : null}
    </>
  );
}

/** Each currency by itself. */
function inWords({ by }: Sum, currency: string): string {
  const amounts = by.length > 0 ? by : [{ minor: 0, currency }];
  return amounts.map((amount) => formatMoney(amount, { code: true })).join(' + ');
}
