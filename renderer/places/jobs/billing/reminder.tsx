import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Invoice, ReminderTone } from '../../../../core/contract/invoices.ts';
import { ask } from '../../../ask.ts';
import { deed, say } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Asked } from '../../../parts/asked.tsx';
import { Button } from '../../../parts/button.tsx';
import { copyText } from '../../../parts/copy.ts';
import { Segments } from '../../../parts/segments.tsx';
import quote from '../quote.module.css';

/** Firmer with each that went out. */
const TONES: readonly ReminderTone[] = ['kind', 'plain', 'firm'];

/** A reminder to copy; copying notes that it went out. */
export function Reminder({ invoice, onClose }: { invoice: Invoice; onClose: () => void }) {
  const [tone, setTone] = useState<ReminderTone>(TONES[Math.min(invoice.reminders.length, TONES.length - 1)] ?? 'kind');
  const asked = useQuery(ask.invoices.reminder.queryOptions({ input: { id: invoice.id, tone } }));
  const copy = (text: string): Promise<unknown> =>
    deed(async () => {
      if (!(await copyText(text))) {
        say('The clipboard refused. Mark the reminder and copy it by hand.');
        return;
      }
      await client.invoices.reminded({ id: invoice.id, tone, key: crypto.randomUUID() });
      say('Copied, and noted as sent today. Paste it into your mail.');
      onClose();
    });
  return (
    <div className={quote.inside}>
      <h3>{`Remind them of ${invoice.number}`}</h3>
      <Segments bare label="Tone" value={tone} options={TONES.map((value) => ({ value, label: value }))} onChange={setTone} />
      <Asked asked={asked}>
        {({ subject, text }) => (
          <>
            <p className={quote.second}>{`Subject: ${subject}`}</p>
            <pre className={quote.reply}>{text}</pre>
            <div className={quote.buttons}>
              <Button onPress={() => void copy(text)}>Copy the reminder</Button>
              <Button kind="quiet" onPress={onClose}>
                Leave it
              </Button>
            </div>
          </>
        )}
      </Asked>
    </div>
  );
}
