import type { QuoteCost } from '../../../core/contract/quotes.ts';
import { formatMoney } from '../../../core/money/format.ts';
import type { ChangeDraft } from '../../drafts.ts';
import { Button } from '../../parts/button.tsx';
import style from './quote.module.css';

type Props = { costs: readonly QuoteCost[]; change: ChangeDraft; locked: boolean };

/** What the job costs me: hands, sub-hire, wear. Each opens to its reason; none of it is printed. */
export function QuoteCosts({ costs, change, locked }: Props) {
  if (costs.length === 0) return null;
  return (
    <section aria-label="Costs to me">
      <h3 className={style.second}>Costs to me, never printed</h3>
      {costs.map((cost) => (
        <details key={cost.id} className={style.line}>
          <summary>
            <span className={style.what}>{cost.what}</span>
            <span className={style.amount}>{formatMoney(cost.amount)}</span>
          </summary>
          <div className={style.inside}>
            <p className={style.reason}>{cost.reason}</p>
            {locked || cost.kind === 'wear' ? null : (
              <div className={style.buttons}>
                <Button
                  kind="quiet"
                  onPress={() =>
                    void change([
                      cost.kind === 'hand'
                        ? { op: 'hand', handId: cost.id.slice('hand/'.length), days: '0' }
                        : { op: 'sub-hire', what: cost.what, cost: '0' },
                    ])
                  }
                  aria-label={`Take off ${cost.what}`}
                >
                  Take it off
                </Button>
              </div>
            )}
          </div>
        </details>
      ))}
    </section>
  );
}
