import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { HandDue } from '../../../core/contract/hours.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import { exponentOf } from '../../../core/money/currencies.ts';
import { fixedText } from '../../../core/money/exact.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { amountOf, majorOf, negate } from '../../../core/money/money.ts';
import { parseAmount } from '../../../core/money/parse.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import table from '../../parts/table.module.css';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { useOneOpen } from '../../parts/use-one-open.ts';
import { fieldTrouble } from '../../trouble.ts';
import { sayWithUndo } from '../../undo.ts';
import style from './hours.module.css';

/** What hands are owed for the job, and what was paid. @param today date at home */
export function HoursOwed({ job, owed, today }: { job: Job; owed: readonly HandDue[]; today: string }) {
  const [paying, setPaying, close] = useOneOpen<string>();
  if (owed.length === 0) return null;
  return (
    <div>
      <h3>Hands</h3>
      <div className={table.scroll}>
        <table className={`${table.table} ${style.table}`}>
          <thead>
            <tr>
              <th scope="col">Who</th>
              <th scope="col" className={table.figures}>
                For their days
              </th>
              <th scope="col" className={table.figures}>
                Paid
              </th>
              <th scope="col" className={table.figures}>
                Open
              </th>
              <th scope="col">Due</th>
              <th scope="col">
                <span className="reader">What can be done</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {owed.map((due) => (
              <tr key={`${due.handId} ${due.amount.currency}`}>
                <th scope="row">
                  {due.name} <span className={table.second}>{[due.reason, ...due.cautions].join(' ')}</span>
                </th>
                <td className={table.figures}>{formatMoney(due.amount, { code: true })}</td>
                <td className={table.figures}>{formatMoney(due.paid)}</td>
                <td className={table.figures}>{formatMoney(due.open)}</td>
                <td className={style.date}>{due.open.minor === 0 ? 'nothing open' : due.due ? dateInWords(due.due) : ''}</td>
                <td>
                  <span className={style.buttons}>
                    <Button kind="quiet" onPress={() => setPaying(due.handId)} aria-label={`Note a payment to ${due.name}`}>
                      Note a payment
                    </Button>
                  </span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {owed
        .filter(({ handId }) => handId === paying)
        .slice(0, 1)
        .map((due) => (
          <PaidForm key={due.handId} jobId={job.id} due={due} today={today} onDone={close} />
        ))}
    </div>
  );
}

function PaidForm({ jobId, due, today, onDone }: { jobId: string; due: HandDue; today: string; onDone: () => void }) {
  const { currency } = due.open;
  const [amount, setAmount] = useState(due.open.minor > 0 ? fixedText(majorOf(due.open), exponentOf(currency)) : '');
  const [on, setOn] = useState(today);
  const [how, setHow] = useState('transfer');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const { handId, name } = due;
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const read = reader.take('amount', parseAmount(amount, exponentOf(currency)));
    if (reader.trouble || read === undefined) return setTrouble(reader.trouble);
    const paid = amountOf(read, currency);
    const pay = (part: typeof paid) => client.hours.handPaid({ jobId, handId, amount: part, on, how, key: crypto.randomUUID() });
    if (!(await deed(() => pay(paid), setTrouble))) return;
    onDone();
    sayWithUndo(`${formatMoney(paid, { code: true })} paid to ${name}.`, 'Undo', () => pay(negate(paid)), 'The payment is taken back.');
  };
  return (
    <EditorForm label={`Payment to ${name}`} className={style.fields} onKeep={() => void keep()} onLeave={onDone}>
      <Field
        label={`Amount, ${currency}`}
        figures
        inputMode="decimal"
        value={amount}
        onChange={setAmount}
        error={fieldTrouble(trouble, 'amount')}
      />
      <Field label="Paid on" type="date" value={on} onChange={setOn} error={fieldTrouble(trouble, 'on')} />
      <Field label="How" value={how} onChange={setHow} error={fieldTrouble(trouble, 'how')} />
      <Button type="submit">Keep the payment</Button>
      <Button kind="quiet" onPress={onDone}>
        Leave it
      </Button>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
    </EditorForm>
  );
}
