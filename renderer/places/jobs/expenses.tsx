import { useQuery } from '@tanstack/react-query';
import type { Expense } from '../../../core/contract/expenses.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Money } from '../../../core/contract/parts.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { dateIn } from '../../../core/time/wall.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { deed, useDeeds } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { savePaper } from '../../parts/paper-file.ts';
import table from '../../parts/table.module.css';
import { useOneOpen } from '../../parts/use-one-open.ts';
import { sayWithUndo } from '../../undo.ts';
import { ExpenseForm } from './expense-form.tsx';
import style from './hours.module.css';
import { blankExpense, expenseFields, typedExpense } from './typed-expense.ts';

type Shown = Expense & { charged: Money | null; reason: string };

/** What was spent for the job, each with its receipt and what of it is charged on. @param taxes whether I charge any */
export function Expenses({ job, zone, taxes }: { job: Job; zone: string; taxes: boolean }) {
  const data = useQuery(ask.expenses.of.queryOptions({ input: { jobId: job.id } })).data;
  const [editing, setEditing, close] = useOneOpen<Expense | 'new'>();
  if (!data || (job.state !== 'inked' && job.state !== 'cancelled' && data.expenses.length === 0)) return null;
  const { expenses, currency, spent, charged, cautions } = data;
  const today = dateIn(zone, Temporal.Now.instant().epochMilliseconds);
  return (
    <section className={style.part} aria-labelledby="expenses">
      <div className={style.head}>
        <h2 id="expenses">Expenses</h2>
        {expenses.length === 0 && editing === null ? <span className={style.second}>Nothing spent yet.</span> : null}
        {editing === null ? (
          <Button kind="quiet" onPress={() => setEditing('new')}>
            {expenses.length === 0 ? 'Add an expense' : 'One more expense'}
          </Button>
        ) : null}
      </div>
      {expenses.length > 0 ? (
        <div className={table.scroll}>
          <table className={`${table.table} ${style.table}`}>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Paid on</th>
                <th scope="col">Receipt</th>
                <th scope="col" className={table.figures}>
                  Paid
                </th>
                <th scope="col" className={table.figures}>
                  {`Charged on, ${currency}`}
                </th>
                <th scope="col">
                  <span className="reader">What can be done</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {expenses.map((expense) => (
                <Row key={expense.id} expense={expense} onChange={() => setEditing(expense)} />
              ))}
            </tbody>
            <tfoot>
              <tr className={style.sum}>
                <th scope="row" colSpan={3}>
                  Together
                </th>
                <td className={table.figures}>
                  {spent.map((sum) => (
                    <div key={sum.currency}>{formatMoney(sum, { code: true })}</div>
                  ))}
                </td>
                <td className={table.figures}>{formatMoney(charged)}</td>
                <td>
                  <span className="reader">nothing to do</span>
                </td>
              </tr>
            </tfoot>
          </table>
        </div>
      ) : null}
      {cautions.map((caution) => (
        <p key={caution} className={style.broken}>
          {caution}
        </p>
      ))}
      {editing === null ? null : editing === 'new' ? (
        <ExpenseForm jobId={job.id} currency={currency} taxes={taxes} start={blankExpense(today, currency)} onDone={close} />
      ) : (
        <ExpenseForm
          key={editing.id}
          jobId={job.id}
          currency={currency}
          taxes={taxes}
          start={typedExpense(editing)}
          stored={editing}
          onDone={close}
        />
      )}
    </section>
  );
}

function Row({ expense, onChange }: { expense: Shown; onChange: () => void }) {
  const { running } = useDeeds();
  const { id, version, what, category, on, amount, charged, reason, receipt } = expense;
  const takeOff = async (): Promise<void> => {
    const gone = await deed(() => client.expenses.drop({ id, version, key: crypto.randomUUID() }));
    const back = async (): Promise<void> => {
      const { expense: again } = await client.expenses.save({ fields: expenseFields(expense) });
      if (receipt) await client.expenses.putReceipt({ id: again.id, version: again.version, receiptId: receipt.id });
    };
    if (gone) sayWithUndo(`${what} is off.`, 'Put it back', back, `${what} is back.`);
  };
  return (
    <tr>
      <th scope="row">
        {what} <span className={table.second}>{charged ? `${category}. ${reason}` : category}</span>
      </th>
      <td className={style.date}>{dateInWords(on)}</td>
      <td>
        {receipt ? (
          <Button kind="quiet" onPress={() => void deed(() => savePaper(receipt.id))} aria-label={`Save the receipt ${receipt.name}`}>
            {receipt.name}
          </Button>
        ) : (
          <span className={table.second}>none</span>
        )}
      </td>
      <td className={table.figures}>{formatMoney(amount, { code: true })}</td>
      <td className={table.figures}>{charged ? formatMoney(charged) : ''}</td>
      <td>
        <span className={style.buttons}>
          <Button kind="quiet" onPress={onChange} aria-label={`Change ${what}`}>
            Change
          </Button>
          <Button kind="quiet" isDisabled={running > 0} onPress={() => void takeOff()} aria-label={`Take off ${what}`}>
            Take off
          </Button>
        </span>
      </td>
    </tr>
  );
}
