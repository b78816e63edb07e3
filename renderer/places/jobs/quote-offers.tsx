import type { Offer } from '../../../core/contract/quotes.ts';
import { formatMoney } from '../../../core/money/format.ts';
import type { ChangeDraft } from '../../drafts.ts';
import { Segments } from '../../parts/segments.tsx';
import { Tick } from '../../parts/tick.tsx';
import style from './quote.module.css';

type Props = {
  offers: readonly Offer[];
  shown: Offer;
  onShow: (number: number) => void;
  alone: boolean;
  onAlone: (alone: boolean) => void;
  change: ChangeDraft;
  locked: boolean;
};

/** Which of the offers is shown and changed, and which one the client took. */
export function QuoteOffers({ offers, shown, onShow, alone, onAlone, change, locked }: Props) {
  return (
    <div className={style.offers}>
      <Segments
        label="Offer shown"
        value={String(shown.number)}
        options={offers.map((offer) => ({
          value: String(offer.number),
          label: `${offer.name}, ${formatMoney(offer.totals.gross)}${offer.ticked ? ', taken' : ''}`,
        }))}
        onChange={(number) => onShow(Number(number))}
      />
      {locked ? null : (
        <>
          <Segments
            label="A change to lines or discount holds in"
            value={alone ? 'alone' : 'all'}
            options={[
              { value: 'alone', label: 'this offer' },
              { value: 'all', label: 'all offers' },
            ]}
            onChange={(value) => onAlone(value === 'alone')}
          />
          <Tick checked={shown.ticked} onChange={(on) => void change([{ op: 'tick', offer: on ? shown.number : null }])}>
            {`The client takes "${shown.name}": it counts`}
          </Tick>
        </>
      )}
    </div>
  );
}
