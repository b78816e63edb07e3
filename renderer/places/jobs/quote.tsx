import { useState } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Offer, QuoteDraft } from '../../../core/contract/quotes.ts';
import { fixedText } from '../../../core/money/exact.ts';
import { formatMoney, formatNumber } from '../../../core/money/format.ts';
import { deadlineInWords } from '../../../core/words/dates.ts';
import { decline } from '../../actions/decline.ts';
import { makeQuote } from '../../actions/make-quote.ts';
import { draftChanger, inOffer } from '../../drafts.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Fold } from '../../parts/fold.tsx';
import { Tick } from '../../parts/tick.tsx';
import { QuoteChanges } from './quote-changes.tsx';
import { QuoteCosts } from './quote-costs.tsx';
import { QuoteLines } from './quote-lines.tsx';
import { QuoteOffers } from './quote-offers.tsx';
import { QuoteTotals } from './quote-totals.tsx';
import style from './quote.module.css';
import { Scale } from './scale.tsx';

type Props = {
  job: Job;
  draft: QuoteDraft;
  /** Names of the taxes that I charge. */
  taxes: readonly string[];
  pencil: boolean;
  onPencil: (pencil: boolean) => void;
  black: boolean;
};

/** The offer that was chosen to look at, else the one that the client took, else the first; none where there are none. */
function shownOffer({ offers }: QuoteDraft, number: number | null): Offer | undefined {
  return offers.find((offer) => offer.number === number) ?? offers.find((offer) => offer.ticked) ?? offers[0];
}

/** The quote as it stands: lines, totals, the scale, and the one action that makes it. */
export function Quote({ job, draft, taxes, pencil, onPencil, black }: Props) {
  const [number, setNumber] = useState<number | null>(null);
  const [alone, setAlone] = useState(true);
  const offer = shownOffer(draft, number);
  const shown = offer ?? draft;
  const changeAll = draftChanger(draft);
  const change = inOffer(changeAll, alone ? offer?.number : undefined);
  const closed = ['let go', 'declined', 'cancelled'].includes(job.state);
  const holds = ['inquiry', 'quoted', 'pencilled', 'ran out'].includes(job.state);
  return (
    <section className={style.quote} aria-labelledby="quote">
      <h2 id="quote">
        Quote <span className={style.second}>{`by ${draft.cardName}`}</span>
      </h2>
      {offer ? (
        <QuoteOffers
          offers={draft.offers}
          shown={offer}
          onShow={setNumber}
          alone={alone}
          onAlone={setAlone}
          change={changeAll}
          locked={closed}
        />
      ) : null}
      <QuoteLines shown={shown} currency={draft.currency} change={change} taxes={taxes} locked={closed} />
      {closed ? null : <QuoteChanges job={job} draft={draft} shown={shown} change={change} changeAll={changeAll} taxes={taxes} />}
      <QuoteTotals shown={shown} currency={draft.currency} />
      {shown.lines.length > 0 ? (
        <>
          <QuoteCosts costs={shown.costs ?? []} change={change} locked={closed} />
          <Scale scale={shown.scale} />
          <dl className={style.figures}>
            <dt>{`Kept per hour away (${fixedText(shown.scale.hoursAway, 0)} h)`}</dt>
            <dd className={style.strong}>{formatMoney(shown.scale.keptPerHourAway)}</dd>
          </dl>
        </>
      ) : null}
      {draft.missing.length > 0 ? (
        <ul className={style.missing}>
          {draft.missing.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : null}
      {closed ? null : (
        <>
          {holds ? (
            <Tick checked={pencil} onChange={onPencil}>
              Pencil the dates with it
            </Tick>
          ) : null}
          <div className={style.buttons}>
            <ActionButton action={makeQuote} kind={black ? 'black' : 'plain'} />
            <ActionButton action={decline} />
          </div>
          <p className={style.second}>
            {`Makes the paper and the reply${pencil && holds && draft.pencilUntil ? `, and a pencil until ${deadlineInWords(draft.pencilUntil)}` : ''}. Valid until ${deadlineInWords(draft.validUntil)}.`}
          </p>
        </>
      )}
      {draft.cautions.length > 0 ? (
        <ul className={style.cautions}>
          {draft.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      ) : null}
      <TermsFold draft={draft} />
    </section>
  );
}

function TermsFold({ draft }: { draft: QuoteDraft }) {
  const { terms } = draft;
  const texts = [terms.overtimeApprover, terms.illness, terms.weather, terms.usage, terms.originals, terms.postponement].filter(
    (text) => text.trim() !== '',
  );
  return (
    <Fold title={<span className={style.second}>Terms that this quote freezes</span>}>
      <ul className={style.terms}>
        <li>{`Pay within ${terms.payDays} days, deposit ${formatNumber(terms.depositPercent)} %, ${terms.rounds} rounds of notes.`}</li>
        {terms.cancellation.map((step) => (
          <li
            key={step.underHours}
          >{`Cancelled under ${step.underHours} h before first call: ${formatNumber(step.percent)} % of days, kit and editing.`}</li>
        ))}
        {texts.map((text) => (
          <li key={text}>{text}</li>
        ))}
        <li>Starting points, not legal or tax advice.</li>
      </ul>
    </Fold>
  );
}
