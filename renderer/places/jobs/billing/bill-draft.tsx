import { useMemo, useState } from 'react';
import type { InvoiceDraft } from '../../../../core/contract/invoices.ts';
import type { Job } from '../../../../core/contract/jobs.ts';
import type { Setup } from '../../../../core/contract/setup.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { issueBill } from '../../../actions/issue-bill.ts';
import { billChanger, takeBillBack } from '../../../bills.ts';
import { ActionButton } from '../../../parts/action-button.tsx';
import { Button } from '../../../parts/button.tsx';
import { Field } from '../../../parts/field.tsx';
import { Fold } from '../../../parts/fold.tsx';
import { useScenePart } from '../../../scene.ts';
import quote from '../quote.module.css';
import { AskForm } from './ask-form.tsx';
import { BillLines } from './bill-lines.tsx';
import { BillMore } from './bill-more.tsx';
import { BillTotals } from './bill-totals.tsx';
import style from './billing.module.css';

type Props = { job: Job; draft: InvoiceDraft; mine: Setup; today: string };

/** The bill as the facts make it now: each line opens to how it came about and can be changed; one action issues it. */
export function BillDraft({ job, draft, mine, today }: Props) {
  const [override, setOverride] = useState('');
  const change = billChanger(draft);
  const { purchaseOrder } = job.knows;
  const orderMissing = purchaseOrder.required && draft.billTo.order.trim() === '';
  useScenePart(
    'bill',
    useMemo(() => ({ draft, orderMissing, override }), [draft, orderMissing, override]),
  );
  const share = draft.kind === 'deposit' || draft.kind === 'instalment';
  const over = (job.days.at(-1)?.date ?? today) < today;
  const black = draft.kind === 'deposit' || draft.kind === 'cancellation' || (draft.kind === 'final' && over);
  return (
    <>
      <p className={style.second}>{`To ${draft.billTo.name || 'nobody yet'}, due ${dateInWords(draft.dueDate)}.`}</p>
      {share ? <AskForm key={draft.draftVersion} draft={draft} change={change} /> : null}
      <BillLines draft={draft} change={change} locked={share} />
      <BillTotals draft={draft} />
      {draft.missing.length > 0 ? (
        <ul className={quote.missing}>
          {draft.missing.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      ) : null}
      {draft.cautions.length > 0 ? (
        <ul className={quote.cautions}>
          {draft.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      ) : null}
      {orderMissing && draft.missing.length === 0 ? (
        <Field
          label="Without their purchase-order number, because"
          value={override}
          onChange={setOverride}
          hint="They pay only with one. Ask for it and put it into the job, or say why it goes without."
        />
      ) : null}
      <div className={quote.buttons}>
        <ActionButton action={issueBill} kind={black && draft.missing.length === 0 ? 'black' : 'plain'} />
        {draft.undoable > 0 ? (
          <Button kind="quiet" onPress={() => void takeBillBack(draft)}>
            Take back the last change
          </Button>
        ) : null}
      </div>
      {draft.differences.length > 0 ? (
        <Fold title="What differs from the quote" open={over}>
          <ul className={quote.terms}>
            {draft.differences.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Fold>
      ) : null}
      <BillMore key={`more ${draft.draftVersion}`} draft={draft} change={change} home={mine.currency} />
    </>
  );
}
