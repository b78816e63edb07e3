import type { ReactNode } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import type { QuoteDraft } from '../../../core/contract/quotes.ts';
import { undoQuote } from '../../actions/undo-quote.ts';
import type { ChangeDraft, Shown } from '../../drafts.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Button } from '../../parts/button.tsx';
import { useOneOpen } from '../../parts/use-one-open.ts';
import { AddLineForm } from './add-line-form.tsx';
import { CostForm } from './cost-form.tsx';
import { DiscountForm } from './discount-form.tsx';
import { HolidaysForm } from './holidays-form.tsx';
import { OffersForm } from './offers-form.tsx';
import style from './quote.module.css';
import { TaxForm } from './tax-form.tsx';
import { TermsForm } from './terms-form.tsx';

type Props = {
  job: Job;
  draft: QuoteDraft;
  shown: Shown;
  /** Changes what is shown only. */
  change: ChangeDraft;
  /** Changes the whole quote. */
  changeAll: ChangeDraft;
  taxes: readonly string[];
};

const named = {
  line: 'Add a line',
  costs: 'Costs to me',
  discount: 'Discount',
  offers: 'Offers',
  tax: 'Tax',
  holidays: 'Public holidays',
  terms: 'Terms',
} as const;
type Named = keyof typeof named;

/** What can be changed about the quote beside its lines: one form at a time, under the words that open it. */
export function QuoteChanges({ job, draft, shown, change, changeAll, taxes }: Props) {
  const [open, setOpen, onClose] = useOneOpen<Named>();
  const close = { onClose };
  const dates = [...new Set(job.days.map((day) => day.date))];
  const forms: Record<Named, ReactNode> = {
    line: <AddLineForm change={change} {...close} />,
    costs: <CostForm change={change} currency={draft.currency} {...close} />,
    discount: <DiscountForm change={change} shown={shown} currency={draft.currency} {...close} />,
    offers: <OffersForm change={changeAll} offers={draft.offers} {...close} />,
    tax: taxes.length > 0 ? <TaxForm change={changeAll} taxes={taxes} {...close} /> : null,
    holidays:
      dates.length > 0 ? (
        <HolidaysForm change={changeAll} dates={dates} now={draft.holidays ?? []} listed={draft.publicHolidays ?? []} {...close} />
      ) : null,
    terms: <TermsForm change={changeAll} terms={draft.terms} {...close} />,
  };
  const offered = (Object.keys(named) as Named[]).filter((name) => forms[name] !== null);
  return (
    <>
      {open ? forms[open] : null}
      <div className={style.foot}>
        {offered
          .filter((name) => name !== open)
          .map((name) => (
            <Button key={name} kind="quiet" onPress={() => setOpen(name)}>
              {named[name]}
            </Button>
          ))}
        {undoable(draft) ? <ActionButton action={undoQuote} kind="quiet" /> : null}
      </div>
      {undoable(draft) || open ? null : <p className={style.second}>Open a line to see how it came about.</p>}
    </>
  );
}

const undoable = (draft: QuoteDraft): boolean => (draft.undoable ?? 0) > 0;
