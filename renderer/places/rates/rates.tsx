import { useQuery } from '@tanstack/react-query';
import type { RateCard } from '../../../core/contract/rates.ts';
import { dateIn } from '../../../core/time/wall.ts';
import { formatNumber, formatPrice } from '../../../core/money/format.ts';
import { paperDate } from '../../../core/words/dates.ts';
import { newCard } from '../../actions/new-card.ts';
import { ask } from '../../ask.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Asked } from '../../parts/asked.tsx';
import { Empty } from '../../parts/empty.tsx';
import table from '../../parts/table.module.css';
import { CardSheet } from './card-sheet.tsx';
import { Templates } from './deliver/templates.tsx';
import { FloorNote } from './floor-note.tsx';
import style from '../../parts/sheet.module.css';

/** Rates: what do I charge, and what must I charge? */
export function RatesPlace() {
  const asked = useQuery(ask.rates.list.queryOptions({ input: {} }));
  return <Asked asked={asked}>{({ cards }) => <CardList cards={cards} />}</Asked>;
}

function CardList({ cards }: { cards: readonly RateCard[] }) {
  const mine = useQuery(ask.setup.get.queryOptions({ input: {} })).data?.setup;
  return (
    <div className={style.page}>
      <div className={style.head}>
        <h1 className={style.title}>Rate cards</h1>
        <ActionButton action={newCard} kind={cards.length === 0 ? 'black' : 'plain'} />
      </div>
      <div className={style.lead}>
        <FloorNote mine={mine} />
      </div>
      {cards.length === 0 ? (
        <p>No rate card yet. Make one: a role and the price of a day are enough; the rest is filled with the defaults of the trade.</p>
      ) : (
        <div className={table.scroll}>
          <table className={`${table.table} ${table.named}`}>
            <thead>
              <tr>
                <th scope="col">Card</th>
                <th scope="col">Role</th>
                <th scope="col">Holds</th>
                <th scope="col" className={table.figures}>
                  A day
                </th>
                <th scope="col" className={table.figures}>
                  An edit hour
                </th>
                <th scope="col">Currency</th>
              </tr>
            </thead>
            <tbody>
              {cards.map((card) => (
                <tr key={card.id}>
                  <th scope="row">
                    <a href={`#/rates/${card.id}`}>{card.name}</a>
                  </th>
                  <td>{card.role}</td>
                  <td>{`from ${paperDate(card.validFrom)}${card.validTo ? ` to ${paperDate(card.validTo)}` : ''}`}</td>
                  <td className={table.figures}>
                    {formatPrice(card.dayRate, card.currency)}{' '}
                    <span className={style.second}>{`for ${formatNumber(card.dayHours)} h`}</span>
                  </td>
                  <td className={table.figures}>{formatPrice(card.editHour, card.currency)}</td>
                  <td>{card.currency}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <Templates />
    </div>
  );
}

/** One card by its id, or a new one filled with the defaults of the trade. */
export function CardPlace({ id }: { id: string }) {
  const asked = useQuery(ask.rates.list.queryOptions({ input: {} }));
  if (id === 'new') return <NewCard />;
  return (
    <Asked asked={asked}>
      {({ cards }) => {
        const card = cards.find((each) => each.id === id);
        return card ? (
          <CardSheet key={`${card.id} ${card.version}`} start={card} stored={card} />
        ) : (
          <Empty title="No such rate card">
            Nothing was changed. <a href="#/rates">Open it from the list of rate cards.</a>
          </Empty>
        );
      }}
    </Asked>
  );
}

function NewCard() {
  const setup = useQuery(ask.setup.get.queryOptions({ input: {} }));
  const mine = setup.data?.setup;
  const zone = mine?.home.zone ?? setup.data?.suggestedZone ?? 'UTC';
  const asked = useQuery(
    ask.rates.defaults.queryOptions({
      input: { role: 'shoot', currency: mine?.currency ?? 'USD', validFrom: dateIn(zone, Temporal.Now.instant().epochMilliseconds) },
      enabled: setup.data !== undefined,
      staleTime: Number.POSITIVE_INFINITY,
    }),
  );
  return <Asked asked={asked}>{({ fields }) => <CardSheet start={fields} />}</Asked>;
}
