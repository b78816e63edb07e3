import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import { ExpenseCategory, type Expense } from '../../../core/contract/expenses.ts';
import { queries } from '../../ask.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { DroppedFile, type GivenFile } from '../../parts/dropped-file.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { Tick } from '../../parts/tick.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import { sayWithUndo } from '../../undo.ts';
import style from './trip.module.css';
import { expenseFields, readExpense, type TypedExpense } from './typed-expense.ts';

const categories = ExpenseCategory.options.map((category) => ({ value: category, label: category }));

type Props = {
  jobId: string;
  /** Of the job: what is paid in another needs a rate to be charged on. */
  currency: string;
  /** Whether I charge taxes at all. */
  taxes: boolean;
  start: TypedExpense;
  stored?: Expense;
  onDone: () => void;
};

/** One expense with its receipt; without a stored one a new one. */
export function ExpenseForm({ jobId, currency, taxes, start, stored, onDone }: Props) {
  const [typed, setTyped] = useState(start);
  const [file, setFile] = useState<GivenFile | null>(null);
  // What was saved before its receipt was refused is changed by the next try, not saved again.
  const [kept, setKept] = useState(stored);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const change = (part: Partial<TypedExpense>): void => setTyped({ ...typed, ...part });
  const theirs = typed.currency.trim().toUpperCase();
  const foreign = theirs !== currency;

  const keep = async (): Promise<void> => {
    const read = readExpense(typed, jobId, currency);
    if ('trouble' in read) return setTrouble(read.trouble);
    const of = kept ? { id: kept.id, version: kept.version } : {};
    // One deed, so that nothing on the screen moves between the expense and its receipt.
    const whole = await deed(async () => {
      const { expense } = await client.expenses.save({ ...of, fields: read.fields, key: crypto.randomUUID() });
      setKept(expense);
      return file ? withReceipt(expense, file) : expense;
    }, setTrouble);
    if (!whole) return;
    onDone();
    sayExpense(whole, stored);
  };
  return (
    <EditorForm label={stored ? 'Change the expense' : 'New expense'} className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      <div className={style.grid}>
        <Field label="What" value={typed.what} onChange={(what) => change({ what })} error={fieldTrouble(trouble, 'what')} />
        <Field
          label="Amount paid"
          figures
          inputMode="decimal"
          value={typed.amount}
          onChange={(amount) => change({ amount })}
          error={fieldTrouble(trouble, 'amount') ?? fieldTrouble(trouble, 'amount.minor')}
        />
        <Field
          label="Currency"
          value={typed.currency}
          onChange={(code) => change({ currency: code })}
          error={fieldTrouble(trouble, 'currency')}
        />
        <Field label="Paid on" type="date" value={typed.on} onChange={(on) => change({ on })} error={fieldTrouble(trouble, 'on')} />
        <Choice label="For" value={typed.category} options={categories} onChange={(category) => change({ category })} />
        {foreign ? (
          <>
            <Field
              label={`${currency} for one ${theirs || 'unit'}`}
              figures
              inputMode="decimal"
              value={typed.rate}
              onChange={(rate) => change({ rate })}
              placeholder="not known yet"
              error={fieldTrouble(trouble, 'rate') ?? fieldTrouble(trouble, 'rate.rate')}
            />
            <Field
              label="Rate of"
              type="date"
              value={typed.rateDate}
              onChange={(rateDate) => change({ rateDate })}
              error={fieldTrouble(trouble, 'rateDate')}
            />
          </>
        ) : null}
        {typed.billed ? (
          <Field
            label="Mark-up"
            figures
            inputMode="decimal"
            unit="%"
            value={typed.markUp}
            onChange={(markUp) => change({ markUp })}
            placeholder="none"
            error={fieldTrouble(trouble, 'markUp') ?? fieldTrouble(trouble, 'markUpPercent')}
          />
        ) : null}
        {typed.billed && taxes && !typed.taxed ? (
          <Field
            label="Why no tax"
            value={typed.untaxed}
            onChange={(untaxed) => change({ untaxed })}
            placeholder="paid in your name"
            error={fieldTrouble(trouble, 'untaxed')}
          />
        ) : null}
      </div>
      <div className={style.kind}>
        <Tick checked={typed.billed} onChange={(billed) => change({ billed })}>
          charged on to the client
        </Tick>
        {typed.billed && taxes ? (
          <Tick checked={typed.taxed} onChange={(taxed) => change({ taxed })}>
            with my taxes on it
          </Tick>
        ) : null}
      </div>
      <DroppedFile label={stored?.receipt ? 'Another receipt' : 'Receipt'} given={file} onGive={setFile} />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">Keep the expense</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave as it was
        </Button>
      </div>
    </EditorForm>
  );
}

/** Puts a receipt with an expense that is saved; where it is refused, the expense without it is shown. */
async function withReceipt({ id, version }: Expense, { name, base64 }: GivenFile): Promise<Expense> {
  try {
    return (await client.expenses.attach({ id, version, name, base64: await base64(), key: crypto.randomUUID() })).expense;
  } catch (error) {
    await queries.invalidateQueries();
    throw error;
  }
}

/** Says what was kept, with the way back: a change is undone with its receipt, a new one is taken off again. */
function sayExpense({ id, version, what }: Expense, before: Expense | undefined): void {
  if (!before) {
    sayWithUndo(`${what} is in.`, 'Undo', () => client.expenses.drop({ id, version }), `${what} is off again.`);
    return;
  }
  const undo = async (): Promise<void> => {
    const { expense } = await client.expenses.save({ id, version, fields: expenseFields(before) });
    if (expense.receipt?.id !== before.receipt?.id)
      await client.expenses.putReceipt({ id, version: expense.version, receiptId: before.receipt?.id ?? null });
  };
  sayWithUndo(`${what} is changed.`, 'Undo', undo, 'It is as it was.');
}
