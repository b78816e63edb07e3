import { useState } from 'react';
import type { Trouble } from '../../../../core/contract/base.ts';
import type { Round } from '../../../../core/contract/rounds.ts';
import { formatMoney, formatNumber, formatPrice } from '../../../../core/money/format.ts';
import { parseAmount, parseQuantity } from '../../../../core/money/parse.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { deed, useDeeds } from '../../../deeds.ts';
import { client } from '../../../door.ts';
import { Button } from '../../../parts/button.tsx';
import { EditorForm } from '../../../parts/editor-form.tsx';
import { Field } from '../../../parts/field.tsx';
import { Reader } from '../../../parts/reader.ts';
import { TroubleNote } from '../../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import { sayWithUndo } from '../../../undo.ts';
import style from './rounds.module.css';

/** What a further round costs, and what was said to it. */
export function RoundPrice({ round, locked }: { round: Round; locked: boolean }) {
  const [open, setOpen] = useState<'answer' | 'price' | null>(null);
  const { running } = useDeeds();
  const { id, version, price, what } = round;
  const close = () => setOpen(null);
  const takeBack = (): void => void deed(() => client.rounds.openPrice({ id, version, key: crypto.randomUUID() }));
  return (
    <>
      <div className={style.row}>
        <p className={price ? undefined : style.broken}>
          {price ? saidOf(price) : 'A further round without a price: the card has none for an edit hour.'}
        </p>
        {locked || open !== null ? null : (
          <span className={style.buttons}>
            {price?.state === 'asked' ? (
              <Button kind="quiet" onPress={() => setOpen('answer')} aria-label={`Note the answer: notes on the ${what}`}>
                Note the answer
              </Button>
            ) : null}
            {price && price.state !== 'asked' ? (
              <Button kind="quiet" isDisabled={running > 0} onPress={takeBack} aria-label={`Take the answer back: notes on the ${what}`}>
                Take the answer back
              </Button>
            ) : (
              <Button
                kind="quiet"
                onPress={() => setOpen('price')}
                aria-label={`${price ? 'Another price' : 'Say its price'}: notes on the ${what}`}
              >
                {price ? 'Another price' : 'Say its price'}
              </Button>
            )}
          </span>
        )}
      </div>
      {open === 'answer' ? <AnswerForm round={round} onDone={close} /> : null}
      {open === 'price' ? <PriceForm round={round} onDone={close} /> : null}
    </>
  );
}

type Price = NonNullable<Round['price']>;

function saidOf({ hours, editHour, currency, amount, state, who, at, how }: Price): string {
  const figures = `Further round: ${formatNumber(hours)} h at ${formatPrice(editHour, currency)}, ${formatMoney(amount, { code: true })}`;
  if (state === 'asked') return `${figures}. It goes on the next bill; nobody has said yes or no.`;
  const said = `${state} by ${who}${at === null ? '' : ` on ${dateInWords(at.slice(0, 10))}`}${how === '' ? '' : `, ${how}`}`;
  return `${figures}, ${said}. ${state === 'agreed' ? 'It goes on the next bill.' : 'It is on no bill.'}`;
}

function AnswerForm({ round, onDone }: { round: Round; onDone: () => void }) {
  const { id, version, what } = round;
  const [who, setWho] = useState('');
  const [how, setHow] = useState('mail');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const settle = async (agreed: boolean): Promise<void> => {
    const kept = await deed(() => client.rounds.settlePrice({ id, version, agreed, who, how, key: crypto.randomUUID() }), setTrouble);
    if (!kept) return;
    onDone();
    const undo = () => client.rounds.openPrice({ id, version: kept.round.version });
    sayWithUndo(`${who} said ${agreed ? 'yes' : 'no'} to notes on the ${what}.`, 'Undo', undo, 'The price is open again.');
  };
  return (
    <EditorForm
      label={`The answer to the price of notes on the ${what}`}
      className={style.form}
      onKeep={() => void settle(true)}
      onLeave={onDone}
    >
      <div className={style.fields}>
        <Field label="Who answered" value={who} onChange={setWho} error={fieldTrouble(trouble, 'who')} />
        <Field label="How" value={how} onChange={setHow} error={fieldTrouble(trouble, 'how')} />
      </div>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">They said yes</Button>
        <Button onPress={() => void settle(false)}>They said no</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}

function PriceForm({ round, onDone }: { round: Round; onDone: () => void }) {
  const { id, version, what, price } = round;
  const [hours, setHours] = useState(price?.hours ?? '');
  const [editHour, setEditHour] = useState(price?.editHour ?? '');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const read = { hours: reader.take('hours', parseQuantity(hours, 'hours')), editHour: reader.take('editHour', parseAmount(editHour)) };
    if (reader.trouble || read.hours === undefined || read.editHour === undefined) return setTrouble(reader.trouble);
    const fields = { hours: read.hours, editHour: read.editHour };
    const kept = await deed(() => client.rounds.setPrice({ id, version, ...fields, key: crypto.randomUUID() }), setTrouble);
    if (kept) onDone();
  };
  return (
    <EditorForm label={`The price of notes on the ${what}`} className={style.form} onKeep={() => void keep()} onLeave={onDone}>
      <div className={style.fields}>
        <Field label="Edit hours" value={hours} onChange={setHours} figures error={fieldTrouble(trouble, 'hours')} />
        <Field label="Price of an edit hour" value={editHour} onChange={setEditHour} figures error={fieldTrouble(trouble, 'editHour')} />
      </div>
      {trouble ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">Keep the price</Button>
        <Button kind="quiet" onPress={onDone}>
          Leave as it was
        </Button>
      </div>
    </EditorForm>
  );
}
