import type { Job } from '../../../core/contract/jobs.ts';
import type { QuoteDraft } from '../../../core/contract/quotes.ts';
import { fixedText } from '../../../core/money/exact.ts';
import { formatMoney, formatNumber } from '../../../core/money/format.ts';
import { deadlineInWords } from '../../../core/words/dates.ts';
import { decline } from '../../actions/decline.ts';
import { makeQuote } from '../../actions/make-quote.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Fold } from '../../parts/fold.tsx';
import { Tick } from '../../parts/tick.tsx';
import { QuoteLines, type ChangeDraft } from './quote-lines.tsx';
import style from './quote.module.css';
import { Scale } from './scale.tsx';
import { ask, queries } from '../../ask.ts';

const newestOf = (draft: QuoteDraft): QuoteDraft =>
  queries.getQueryData(ask.quotes.draft.queryKey({ input: { jobId: draft.jobId } }))?.draft ?? draft;

/** Take back the last change that was made to the draft by hand. */
const undo = (draft: QuoteDraft): Promise<unknown> =>
  deed(() => client.quotes.undo({ jobId: draft.jobId, draftVersion: newestOf(draft).draftVersion }));

/** Changes lines of the newest draft on screen. */
function draftChanger(draft: QuoteDraft): ChangeDraft {
  return async (changes, onTrouble) => {
    const changed = await deed(
      () => client.quotes.change({ jobId: draft.jobId, draftVersion: newestOf(draft).draftVersion, changes }),
      onTrouble,
    );
    return changed !== undefined;
  };
}

type Props = { job: Job; draft: QuoteDraft; pencil: boolean; onPencil: (pencil: boolean) => void; black: boolean };

/** The quote as it stands: lines, totals, the scale, and the one action that makes it. */
export function Quote({ job, draft, pencil, onPencil, black }: Props) {
  const closed = ['let go', 'declined', 'cancelled'].includes(job.state);
  const holds = ['inquiry', 'quoted', 'pencilled', 'ran out'].includes(job.state);
  return (
    <section className={style.quote} aria-labelledby="quote">
      <h2 id="quote">
        Quote <span className={style.second}>{`by ${draft.cardName}`}</span>
      </h2>
      <QuoteLines draft={draft} change={draftChanger(draft)} undo={() => void undo(draft)} locked={closed} />
      <Totals draft={draft} />
      {draft.lines.length > 0 ? (
        <>
          <Scale scale={draft.scale} />
          <dl className={style.figures}>
            <dt>{`Kept per hour away (${fixedText(draft.scale.hoursAway, 0)} h)`}</dt>
            <dd className={style.strong}>{formatMoney(draft.scale.keptPerHourAway)}</dd>
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

function Totals({ draft }: { draft: QuoteDraft }) {
  const { totals } = draft;
  return (
    <>
      {totals.taxes.length > 0 ? (
        <dl className={style.figures}>
          <dt>Net</dt>
          <dd>{formatMoney(totals.net)}</dd>
          {totals.taxes.map((tax) => (
            <TaxRow
              key={`${tax.name} ${tax.percent}`}
              label={`${tax.name} ${formatNumber(tax.percent)} % of ${formatMoney(tax.net)}`}
              note={tax.note}
              amount={formatMoney(tax.tax)}
            />
          ))}
        </dl>
      ) : null}
      <p className={style.total}>
        <span>{`Total ${draft.currency}`}</span> <span>{formatMoney(totals.gross)}</span>
      </p>
      {draft.deposit ? (
        <dl className={style.figures}>
          <dt>{`Deposit, ${draft.deposit.due}`}</dt>
          <dd>{formatMoney(draft.deposit.amount)}</dd>
        </dl>
      ) : null}
    </>
  );
}

function TaxRow({ label, note, amount }: { label: string; note: string; amount: string }) {
  return (
    <>
      <dt>
        {label} {note ? <span className={style.second}>{note}</span> : null}
      </dt>
      <dd>{amount}</dd>
    </>
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
