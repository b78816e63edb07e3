import type { QuoteLine } from '../../../core/contract/quotes.ts';
import { formatMoney, formatNumber, formatPrice } from '../../../core/money/format.ts';
import { isOwnLine } from '../../../core/quotes/line.ts';
import type { ChangeDraft, Shown } from '../../drafts.ts';
import { Button } from '../../parts/button.tsx';
import { LineForm, type Places } from './line-form.tsx';
import style from './quote.module.css';

type Props = { shown: Shown; currency: string; change: ChangeDraft; taxes: readonly string[]; locked: boolean };

/** The lines as they are priced now; each opens to its reason and can be changed there. Those taken off can be put back. */
export function QuoteLines({ shown, currency, change, taxes, locked }: Props) {
  return (
    <div>
      {shown.lines.map((line) => (
        <details key={line.id} className={style.line}>
          <summary>
            <span className={style.what}>
              {line.what}
              <span className={style.second}>{marksOf(line, currency, taxes)}</span>
            </span>
            <span className={style.amount}>{formatMoney(line.amount)}</span>
          </summary>
          <div className={style.inside}>
            <p className={style.reason}>{line.reason}</p>
            {locked ? null : (
              <LineForm
                key={JSON.stringify([line.what, line.section, line.quantity, line.unitPrice, line.cost, line.bears])}
                line={line}
                change={change}
                taxes={taxes}
                places={placesOf(line, shown.lines)}
              />
            )}
          </div>
        </details>
      ))}
      {shown.dropped.map((line) => (
        <p key={line.id} className={style.dropped}>
          <span>
            <s>{line.what}</s> <span className={style.second}>taken off</span>
          </span>
          {locked ? null : (
            <Button kind="quiet" onPress={() => void change([{ op: 'restore', id: line.id }])} aria-label={`Put back ${line.what}`}>
              Put back
            </Button>
          )}
        </p>
      ))}
    </div>
  );
}

/** Where a line of one's own can go within its section. */
function placesOf(line: QuoteLine, lines: readonly QuoteLine[]): Places {
  if (!isOwnLine(line.id)) return {};
  const beside = lines.filter((each) => each.section === line.section);
  const at = beside.indexOf(line);
  const above = beside[at - 1];
  return {
    ...(above ? { up: above.id } : {}),
    ...(at < beside.length - 1 ? { down: beside[at + 2]?.id ?? null } : {}),
  };
}

/** Quantity and price, and what is special about a line. */
function marksOf(line: QuoteLine, currency: string, taxes: readonly string[]): string {
  const counted =
    formatNumber(line.quantity) === '1' ? '' : `${formatNumber(line.quantity)} ${line.unit} × ${formatPrice(line.unitPrice, currency)}`;
  const cost = line.cost && line.cost.minor > 0 ? `costs me ${formatMoney(line.cost)}` : '';
  const untaxed = taxes.length > 0 && !line.taxed ? (line.bears?.state ?? 'not taxed') : '';
  return [
    counted,
    line.estimated ? 'estimated' : '',
    line.changed ? (isOwnLine(line.id) ? 'added by hand' : 'changed by hand') : '',
    cost,
    untaxed,
  ]
    .filter((words) => words !== '')
    .map((words) => ` ${words}`)
    .join('');
}
