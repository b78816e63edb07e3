import type { Money } from '../../../core/contract/parts.ts';
import type { Sum } from '../../../core/ledger/sums.ts';
import { formatMoney } from '../../../core/money/format.ts';
import style from './ledger.module.css';

/** A sum as it is read: one currency by itself, of several each with its code, and all of it at home below. */
export function SumText({ sum: { by, home }, currency }: { sum: Sum; currency: string }) {
  const [only] = by;
  if (!only) return <>{formatMoney({ minor: 0, currency })}</>;
  if (by.length === 1 && only.currency === currency) return <>{formatMoney(only)}</>;
  return (
    <>
      {by.map((amount) => (
        <span key={amount.currency} className={style.nowrap}>
          {formatMoney(amount, { code: true })}
          <br />
        </span>
      ))}
      <span className={style.of}>{home ? `${formatMoney(home, { code: true })} by stored rates` : 'not all with a rate'}</span>
    </>
  );
}

/** The same in one line of words. */
export function sumInWords({ by, home }: Sum, currency: string): string {
  if (by.length === 0) return formatMoney({ minor: 0, currency }, { code: true });
  const each = by.map((amount) => formatMoney(amount, { code: true })).join(' and ');
  return by.length > 1 && home ? `${each}, ${formatMoney(home, { code: true })} by stored rates` : each;
}

/** One amount, with its code where it is not the home currency. */
export const amountText = (amount: Money, home: string): string => formatMoney(amount, { code: amount.currency !== home });

type Look = 'solid' | 'outlined' | 'broken';

/** A bar of a chart; its figure stands beside it in the same row. */
export function Bar({ percent, look = 'solid' }: { percent: number; look?: Look }) {
  const inset = look === 'outlined' ? 1 : 0;
  return (
    <svg aria-hidden>
      {percent > 0 ? (
        <rect
          className={style[look]}
          x={inset}
          y={inset}
          height={10 - 2 * inset}
          style={{ width: `max(${percent}% - ${2 * inset}px, 1px)` }}
        />
      ) : null}
    </svg>
  );
}

/** What a bar of a chart means. */
export function Key({ look }: { look: Look }) {
  return (
    <svg aria-hidden>
      <rect className={style[look]} x="1" y="1" width="20" height="8" />
    </svg>
  );
}
