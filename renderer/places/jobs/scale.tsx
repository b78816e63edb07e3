import type { Scale as Data } from '../../../core/contract/quotes.ts';
import type { Money } from '../../../core/contract/parts.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { useWidth } from '../../parts/use-width.ts';
import style from './quote.module.css';

/** Amounts on the scale are read, not paid: the cents are left out where they are nothing. */
const short = (amount: Money): string => formatMoney(amount).replace(/\.0+$/, '');

type Mark = { key: 'budget' | 'job' | 'floor'; amount: Money; words: string };

/** Floor, budget and this job, a day each, on one line. */
export function Scale({ scale }: { scale: Data }) {
  const [box, width] = useWidth();
  const marks: Mark[] = [
    ...(scale.budget ? [{ key: 'budget' as const, amount: scale.budget, words: `their budget ${short(scale.budget)}` }] : []),
    { key: 'job', amount: scale.thisJob, words: `this job ${short(scale.thisJob)} a day` },
    ...(scale.floor ? [{ key: 'floor' as const, amount: scale.floor, words: `your floor ${short(scale.floor)} a day` }] : []),
  ];
  if (marks.length === 1) return <p className={style.one}>{marks[0]?.words}</p>;
  const values = marks.map((mark) => mark.amount.minor);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const margin = Math.max((most - least) * 0.6, most * 0.08, 1);
  const x = (minor: number): number => ((minor - least + margin) / (most - least + 2 * margin)) * width;
  return (
    <div ref={box}>
      {width > 0 ? (
        <svg
          className={style.scale}
          role="img"
          aria-label={`A day: ${marks.map((mark) => mark.words).join(', ')}.`}
          width={width}
          height={74}
        >
          <line className={style.axis} x1="0" x2={width} y1="44" y2="44" />
          {marks.map((mark) => {
            const at = x(mark.amount.minor);
            const half = mark.words.length * 3.1;
            const middle = Math.min(Math.max(at, half), width - half);
            return (
              <g key={mark.key} className={style[mark.key]}>
                {mark.key === 'job' ? (
                  <rect x={at - 4} y={36} width="9" height="16" />
                ) : (
                  <line x1={at} x2={at} y1={mark.key === 'floor' ? 34 : 37} y2={mark.key === 'floor' ? 54 : 51} />
                )}
                <text x={middle} y={{ budget: 12, job: 27, floor: 69 }[mark.key]} textAnchor="middle">
                  {mark.words}
                </text>
              </g>
            );
          })}
        </svg>
      ) : null}
    </div>
  );
}
