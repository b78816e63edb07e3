import type { z } from 'zod';
import type { Budget } from '../../../core/contract/inquiries.ts';
import { currencyCodes } from '../../../core/money/currencies.ts';
import { formatNumber } from '../../../core/money/format.ts';
import { parseAmount } from '../../../core/money/parse.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { fieldTrouble } from '../../trouble.ts';
import { Fact } from './fact.tsx';
import type { FactProps } from './change-job.ts';
import style from './facts.module.css';

const UNKNOWN = 'not known';
const pers = [UNKNOWN, 'day', 'job', 'hour'] as const;
type Typed = { amount: string; currency: string; per: (typeof pers)[number] };
const currencyOptions = [UNKNOWN, ...currencyCodes].map((code) => ({ value: code, label: code }));
const perOptions = pers.map((per) => ({
  value: per,
  label: per === UNKNOWN ? UNKNOWN : `a ${per}`.replace('a hour', 'an hour').replace('a job', 'the job'),
}));

function budgetInWords(budget: z.infer<typeof Budget>): string {
  const per = { day: ' a day', job: ' for the job', hour: ' an hour' };
  return `${budget.currency ? `${budget.currency} ` : ''}${formatNumber(budget.amount)}${budget.per ? per[budget.per] : ''}`;
}

/** What they said they have. */
export function BudgetFact(of: FactProps) {
  const { job } = of;
  return (
    <Fact<Typed>
      label="Budget"
      shown={job.budget ? budgetInWords(job.budget) : <span className={style.unknown}>not said</span>}
      start={() => ({
        amount: job.budget ? String(job.budget.amount) : '',
        currency: job.budget?.currency ?? UNKNOWN,
        per: job.budget?.per ?? UNKNOWN,
      })}
      renderEditor={(typed, change, trouble) => (
        <>
          <Field
            label="Amount, empty for none"
            figures
            inputMode="decimal"
            value={typed.amount}
            onChange={(amount) => change({ ...typed, amount })}
            error={fieldTrouble(trouble, 'budget.amount')}
          />
          <Choice
            label="Currency"
            value={typed.currency}
            options={currencyOptions}
            onChange={(currency) => change({ ...typed, currency })}
          />
          <Choice label="For" value={typed.per} options={perOptions} onChange={(per) => change({ ...typed, per })} />
        </>
      )}
      read={({ amount, currency, per }) => {
        if (amount.trim() === '') return { budget: null };
        const reader = new Reader();
        const read = reader.take('budget.amount', parseAmount(amount, 2));
        if (reader.trouble || read === undefined)
          return {
            trouble: reader.trouble ?? { what: 'The amount cannot be read.', kept: 'Nothing was changed.', todo: 'Write it as 900.' },
          };
        return { budget: { amount: Number(read), ...(currency === UNKNOWN ? {} : { currency }), ...(per === UNKNOWN ? {} : { per }) } };
      }}
      settles={['budget']}
      {...of}
    />
  );
}
