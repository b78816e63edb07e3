import type { Hand } from '../../../core/contract/people.ts';
import { formatPrice } from '../../../core/money/format.ts';
import { ratesOn } from '../../../core/people/hand-rates.ts';
import { paperDate } from '../../../core/words/dates.ts';
import { placeInWords } from '../../parts/place-field.tsx';
import table from '../../parts/table.module.css';
import { listInWords } from './in-words.ts';
import look from '../../parts/list.module.css';
import style from './people.module.css';

/** Hands with what they cost today. */
export function HandTable({ hands }: { hands: readonly Hand[] }) {
  const today = Temporal.Now.plainDateISO().toString();
  return (
    <div className={table.scroll}>
      <table className={`${table.table} ${table.named}`}>
        <thead>
          <tr>
            <th scope="col">Hand</th>
            <th scope="col">Reach</th>
            <th scope="col">A day</th>
            <th scope="col">Home</th>
            <th scope="col">On file</th>
          </tr>
        </thead>
        <tbody>
          {hands.map((hand) => (
            <tr key={hand.id}>
              <th scope="row">
                <a href={`#/people/hand/${hand.id}`}>{hand.name}</a>
                {hand.backup ? <span className={table.second}> backup</span> : null}
              </th>
              <td className={style.long}>{hand.phone || hand.email}</td>
              <td>
                {ratesOn(hand.rates, today).map((rate) => (
                  <div key={rate.role}>{`${rate.role} ${rate.currency} ${formatPrice(rate.dayRate, rate.currency)}`}</div>
                ))}
              </td>
              <td>{hand.home ? placeInWords(hand.home) : ''}</td>
              <td>
                <OnFile hand={hand} today={today} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function OnFile({ hand, today }: { hand: Hand; today: string }) {
  const { insuredUntil, taxForm } = hand;
  if (insuredUntil !== null && insuredUntil < today)
    return (
      <>
        <span className={look.broken}>{`insurance ran out on ${paperDate(insuredUntil)}`}</span>
        {taxForm ? ', tax form' : ''}
      </>
    );
  return <>{listInWords(insuredUntil ? `insured until ${paperDate(insuredUntil)}` : '', taxForm ? 'tax form' : '') || 'nothing'}</>;
}
