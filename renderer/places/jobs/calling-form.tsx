import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { Cancellation } from '../../../core/contract/quotes.ts';
import { formatMoney } from '../../../core/money/format.ts';
import { zoneInWords } from '../../../core/words/dates.ts';
import { ask } from '../../ask.ts';
import { deed, say } from '../../deeds.ts';
import { client } from '../../door.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Field } from '../../parts/field.tsx';
import { Segments } from '../../parts/segments.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { useSettled } from '../../parts/use-settled.ts';
import { fieldTrouble } from '../../trouble.ts';
import { type TypedCalling, callingOf } from './typed-calling.ts';
import style from './quote.module.css';

const blank: TypedCalling = { how: 'cancel', to: '', told: '', bound: '', depositPaid: '' };

/** Cancel a job in ink or postpone it: what it owes is shown with its reason before anything is saved. */
export function CallingForm(props: { job: Job; home: Place; currency: string; onClose: () => void }) {
  const { job, home, currency, onClose } = props;
  const [typed, setTyped] = useState(blank);
  const [refused, setRefused] = useState<Trouble | null>(null);
  const settled = useSettled(typed);
  const read = useMemo(() => callingOf(settled, home.zone, currency), [settled, home.zone, currency]);
  const { postponeTo: _to, told, ...amounts } = read.asked;
  const { data } = useQuery(
    ask.quotes.cancellation.queryOptions({
      input: { jobId: job.id, ...amounts, ...(told ? { at: told } : {}), postponed: settled.how === 'postpone' },
      placeholderData: keepPreviousData,
      refetchInterval: 60_000,
    }),
  );
  const trouble = read.trouble ?? refused;
  const set = (part: Partial<TypedCalling>): void => {
    setRefused(null);
    setTyped({ ...typed, ...part });
  };
  const keep = async (): Promise<void> => {
    const { asked, trouble: unread, missing } = callingOf(typed, home.zone, currency);
    if (unread ?? missing) return setRefused(unread ?? missing);
    const done = await deed(
      () => client.callings.off({ id: job.id, version: job.version, ...asked, key: crypto.randomUUID() }),
      setRefused,
    );
    if (!done) return;
    say(typed.how === 'cancel' ? 'Cancelled. The dates are free.' : 'Postponed. Tickets and rooms keep their old dates: look at the trip.');
    onClose();
  };
  return (
    <EditorForm label="Cancel or postpone" className={style.inside} onKeep={() => void keep()} onLeave={onClose}>
      <h3>Cancel or postpone</h3>
      <Segments
        bare
        label="What was agreed"
        value={typed.how}
        options={[
          { value: 'cancel', label: 'cancel' },
          { value: 'postpone', label: 'postpone to a date' },
        ]}
        onChange={(how) => set({ how })}
      />
      <div className={style.edit}>
        {typed.how === 'postpone' ? (
          <Field
            label="New first date"
            type="date"
            value={typed.to}
            onChange={(to) => set({ to })}
            error={fieldTrouble(trouble, 'postponeTo')}
            hint="The other dates follow at the same distance."
          />
        ) : null}
        <Field
          label="Notice given"
          type="datetime-local"
          value={typed.told}
          onChange={(next) => set({ told: next })}
          error={fieldTrouble(trouble, 'told')}
          hint={`By the clock of ${zoneInWords(home.zone)}; empty: now.`}
        />
        <Field
          label="Costs already bound"
          unit={currency}
          figures
          inputMode="decimal"
          placeholder="none"
          value={typed.bound}
          onChange={(bound) => set({ bound })}
          error={fieldTrouble(trouble, 'bound')}
          hint="Rooms, tickets, sub-hire: owed in full."
        />
        <Field
          label="Deposit already paid"
          unit={currency}
          figures
          inputMode="decimal"
          placeholder={data ? formatMoney(data.cancellation.deposit) : ''}
          value={typed.depositPaid}
          onChange={(depositPaid) => set({ depositPaid })}
          error={fieldTrouble(trouble, 'depositPaid')}
          hint="Set against what is owed. Empty: what the books say was paid."
        />
      </div>
      {data && !read.trouble ? <Owes {...data.cancellation} /> : null}
      {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">{typed.how === 'cancel' ? 'Cancel the job' : 'Postpone the job'}</Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

/** The sum that is owed, line by line, with its reason. */
function Owes({ percent, base, fee, bound, total, deposit, owed, paidBack, reason, caution }: Cancellation) {
  const left = paidBack.minor > 0 ? { label: 'To pay back', amount: paidBack } : { label: 'Still owed', amount: owed };
  const lines = [
    { label: `${percent} % of ${formatMoney(base)}`, amount: fee },
    { label: 'Costs already bound', amount: bound },
    { label: 'Owed in all', amount: total },
    { label: 'Deposit already paid', amount: deposit },
  ];
  return (
    <div aria-live="polite">
      <dl className={style.figures}>
        {lines.map(({ label, amount }) => (
          <Line key={label} label={label} text={formatMoney(amount)} />
        ))}
        <Line label={`${left.label} ${left.amount.currency}`} text={formatMoney(left.amount)} strong />
      </dl>
      <p className={style.second}>{reason}</p>
      <p className={style.second}>{caution}</p>
    </div>
  );
}

function Line({ label, text, strong = false }: { label: string; text: string; strong?: boolean }) {
  const weight = strong ? style.strong : undefined;
  return (
    <>
      <dt className={weight}>{label}</dt>
      <dd className={weight}>{text}</dd>
    </>
  );
}
