import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { InvoiceDraft } from '../../../../core/contract/invoices.ts';
import { exponentOf } from '../../../../core/money/currencies.ts';
import { parseAmount, parseNumber } from '../../../../core/money/parse.ts';
import type { ChangeBill } from '../../../bills.ts';
import { Button } from '../../../parts/button.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import quote from '../quote.module.css';

/** How much a deposit or instalment asks for: an amount, or per cent of what is left to bill. */
export function AskForm({ draft, change }: { draft: InvoiceDraft; change: ChangeBill }) {
  const [typed, setTyped] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const percent = /%\s*$/.test(typed);
    const read = reader.take('ask', percent ? parseNumber(typed) : parseAmount(typed, exponentOf(draft.currency)));
    setTrouble(reader.trouble);
    if (read !== undefined) await change([{ op: 'ask', ...(percent ? { percent: read } : { amount: read }) }], setTrouble);
  };
  return (
    <form
      className={quote.edit}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <Field
        label={draft.lines.length > 0 ? 'Ask for another amount' : 'Ask for'}
        unit={draft.currency}
        figures
        placeholder="amount, or 30 %"
        value={typed}
        onChange={setTyped}
        error={fieldTrouble(trouble, 'ask')}
      />
      <div className={quote.buttons} style={{ gridColumn: 'auto', alignSelf: 'end' }}>
        <Button type="submit" isDisabled={typed.trim() === ''}>
          Ask for it
        </Button>
      </div>
      {trouble && !fieldTrouble(trouble, 'ask') ? <TroubleNote trouble={trouble} /> : null}
    </form>
  );
}
