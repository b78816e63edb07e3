import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Payment } from '../../../../core/contract/payments.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { deed, say } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import quote from '../quote.module.css';
import style from './billing.module.css';

/** Money that came and went for the job, newest first; a mistake is turned by a reversal. */
export function Payments({ payments }: { payments: readonly Payment[] }) {
  const [turning, setTurning] = useState<string | null>(null);
  if (payments.length === 0) return null;
  return (
    <>
      <h3>Payments</h3>
      <ul className={style.payments}>
        {payments.map((payment) => (
          <li key={payment.id}>
            <span>
              {dateInWords(payment.on)} <span className={style.second}>{wordsOf(payment)}</span>
            </span>
            <span className={style.amount}>
              {payment.reversed ? <s>{formatMoney(payment.amount, { code: true })}</s> : formatMoney(payment.amount, { code: true })}
            </span>
            {payment.kind === 'reversal' || payment.reversed ? null : (
              <Button kind="quiet" onPress={() => setTurning(payment.id)} aria-label={`Reverse the payment of ${dateInWords(payment.on)}`}>
                Reverse
              </Button>
            )}
            {turning === payment.id ? <ReverseForm payment={payment} onClose={() => setTurning(null)} /> : null}
          </li>
        ))}
      </ul>
    </>
  );
}

function wordsOf({ kind, how, note, parts, gain, reversed }: Payment): string {
  const numbers = [...new Set(parts.map(({ number }) => number).filter((number) => number !== ''))].join(', ');
  const rate =
    gain && gain.minor !== 0
      ? `${gain.minor > 0 ? 'gained' : 'lost'} ${formatMoney(gain, { code: true }).replace('-', '')} by the rate`
      : '';
  return [kind === 'payment' ? '' : kind, how, numbers, rate, note, reversed ? 'reversed' : ''].filter((word) => word !== '').join(', ');
}

function ReverseForm({ payment, onClose }: { payment: Payment; onClose: () => void }) {
  const [reason, setReason] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const done = await deed(() => client.payments.reverse({ id: payment.id, reason, key: crypto.randomUUID() }), setTrouble);
    if (!done) return;
    say('Reversed. The payment stays, and its reversal beside it.');
    onClose();
  };
  return (
    <EditorForm label="Reverse the payment" className={quote.inside} onKeep={() => void keep()} onLeave={onClose}>
      <Field label="Why it is turned" value={reason} onChange={setReason} />
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={quote.buttons}>
        <Button type="submit" isDisabled={reason.trim() === ''}>
          Reverse it
        </Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}
