import { useState } from 'react';
import type { DraftChange, QuoteDraft, QuoteLine } from '../../../core/contract/quotes.ts';
import { Section as Sections } from '../../../core/contract/quotes.ts';
import { formatMoney, formatNumber, formatPrice } from '../../../core/money/format.ts';
import { parseAmount, parseNumber } from '../../../core/money/parse.ts';
import type { Trouble } from '../../../core/contract/base.ts';
import { Button } from '../../parts/button.tsx';
import { EditorForm } from '../../parts/editor-form.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import style from './quote.module.css';

export type ChangeDraft = (changes: DraftChange[], onTrouble?: (trouble: Trouble) => void) => Promise<boolean>;
type Section = QuoteLine['section'];

type Props = { draft: QuoteDraft; change: ChangeDraft; undo: () => void; locked: boolean };

/** The lines of the draft; each opens to its reason and can be changed there. */
export function QuoteLines({ draft, change, undo, locked }: Props) {
  const [adding, setAdding] = useState(false);
  return (
    <div>
      {draft.lines.map((line) => (
        <details key={line.id} className={style.line}>
          <summary>
            <span className={style.what}>
              {line.what}
              <span className={style.second}>
                {formatNumber(line.quantity) === '1'
                  ? ''
                  : ` ${formatNumber(line.quantity)} ${line.unit} × ${formatPrice(line.unitPrice, draft.currency)}`}
                {line.estimated ? ' estimated' : ''}
                {line.changed ? ' changed by hand' : ''}
              </span>
            </span>
            <span className={style.amount}>{formatMoney(line.amount)}</span>
          </summary>
          <LineInside key={`${line.quantity} ${line.unitPrice}`} line={line} change={change} locked={locked} />
        </details>
      ))}
      {locked ? null : adding ? (
        <AddLine change={change} onClose={() => setAdding(false)} />
      ) : (
        <p className={style.foot}>
          <Button kind="quiet" onPress={() => setAdding(true)}>
            Add a line
          </Button>
          {draft.draftVersion > 0 ? (
            <Button kind="quiet" onPress={undo}>
              Take back the last change
            </Button>
          ) : (
            <span className={style.second}>Open a line to see how it came about.</span>
          )}
        </p>
      )}
    </div>
  );
}

function LineInside({ line, change, locked }: { line: QuoteLine; change: ChangeDraft; locked: boolean }) {
  const [quantity, setQuantity] = useState(formatNumber(line.quantity));
  const [price, setPrice] = useState(line.unitPrice);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const keep = async (): Promise<void> => {
    const reader = new Reader();
    const read = { quantity: reader.take('quantity', parseNumber(quantity)), unitPrice: reader.take('unitPrice', parseAmount(price, 9)) };
    if (read.quantity === undefined || read.unitPrice === undefined) {
      setTrouble(reader.trouble);
      return;
    }
    await change([{ op: 'set', id: line.id, quantity: read.quantity, unitPrice: read.unitPrice }], setTrouble);
  };
  return (
    <div className={style.inside}>
      <p className={style.reason}>{line.reason}</p>
      {locked ? null : (
        <form
          className={style.edit}
          onSubmit={(event) => {
            event.preventDefault();
            void keep();
          }}
        >
          <Field
            label="Quantity"
            figures
            inputMode="decimal"
            unit={line.unit}
            value={quantity}
            onChange={setQuantity}
            error={fieldTrouble(trouble, 'quantity')}
          />
          <Field
            label="Unit price"
            figures
            inputMode="decimal"
            value={price}
            onChange={setPrice}
            error={fieldTrouble(trouble, 'unitPrice')}
          />
          {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
          <div className={style.buttons}>
            <Button type="submit">Change</Button>
            {line.changed ? <Button onPress={() => void change([{ op: 'restore', id: line.id }])}>As the card says</Button> : null}
            <Button kind="quiet" onPress={() => void change([{ op: 'drop', id: line.id }])} aria-label={`Drop ${line.what}`}>
              Drop
            </Button>
          </div>
        </form>
      )}
    </div>
  );
}

const sectionOptions = Sections.options.map((section) => ({ value: section, label: section }));

function AddLine({ change, onClose }: { change: ChangeDraft; onClose: () => void }) {
  const [what, setWhat] = useState('');
  const [section, setSection] = useState<Section>('extras');
  const [quantity, setQuantity] = useState('1');
  const [unitPrice, setUnitPrice] = useState('');
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const add = async (): Promise<void> => {
    const reader = new Reader();
    if (what.trim() === '') reader.refuse('what', 'is empty; say what it is for');
    const read = {
      quantity: reader.take('quantity', parseNumber(quantity)),
      unitPrice: reader.take('unitPrice', parseAmount(unitPrice, 9)),
    };
    if (reader.trouble || read.quantity === undefined || read.unitPrice === undefined) {
      setTrouble(reader.trouble);
      return;
    }
    if (await change([{ op: 'add', section, what, quantity: read.quantity, unit: '', unitPrice: read.unitPrice }], setTrouble)) onClose();
  };
  return (
    <EditorForm label="Add a line" className={style.inside} onKeep={() => void add()} onLeave={onClose}>
      <div className={style.edit}>
        <Field label="What" value={what} onChange={setWhat} error={fieldTrouble(trouble, 'what')} />
        <Choice label="Section" value={section} options={sectionOptions} onChange={setSection} />
        <Field
          label="Quantity"
          figures
          inputMode="decimal"
          value={quantity}
          onChange={setQuantity}
          error={fieldTrouble(trouble, 'quantity')}
        />
        <Field
          label="Unit price"
          figures
          inputMode="decimal"
          value={unitPrice}
          onChange={setUnitPrice}
          error={fieldTrouble(trouble, 'unitPrice')}
        />
      </div>
      {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">Add</Button>
        <Button kind="quiet" onPress={onClose}>
          Leave it
        </Button>
      </div>
    </EditorForm>
  );
}
