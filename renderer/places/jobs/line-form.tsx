import { useState } from 'react';
import type { Trouble } from '../../../core/contract/base.ts';
import { sections, type QuoteLine, type Section } from '../../../core/contract/quotes.ts';
import { exponentOf } from '../../../core/money/currencies.ts';
import { fixedText } from '../../../core/money/exact.ts';
import { formatNumber } from '../../../core/money/format.ts';
import { majorOf } from '../../../core/money/money.ts';
import { parseAmount, parseQuantity } from '../../../core/money/parse.ts';
import { isOwnLine } from '../../../core/quotes/line.ts';
import type { ChangeDraft } from '../../drafts.ts';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Reader } from '../../parts/reader.ts';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { fieldTrouble } from '../../trouble.ts';
import style from './quote.module.css';
import { TaxFields } from './tax-fields.tsx';
import { taxChange, taxNow, taxOptions } from './tax-of-line.ts';

type Props = { line: QuoteLine; change: ChangeDraft; taxes: readonly string[]; places: Places };
/** What a line of one's own stands before when it goes up or down: an id, null for the end; absent where it cannot. */
export type Places = { up?: string; down?: string | null };

const sectionOptions = sections.map((section) => ({ value: section, label: section }));

function typedFrom(line: QuoteLine) {
  const { cost } = line;
  return {
    what: line.what,
    quantity: formatNumber(line.quantity),
    // A discount is typed as what it takes off.
    unitPrice: line.section === 'discount' ? line.unitPrice.replace(/^-/, '') : line.unitPrice,
    cost: cost && cost.minor > 0 ? fixedText(majorOf(cost), exponentOf(cost.currency)) : '',
  };
}

/** What can be changed on a line: its words, quantity, price, its cost to me and its tax; one's own also moves. A change is one step that can be taken back. */
export function LineForm({ line, change, taxes, places }: Props) {
  const own = isOwnLine(line.id);
  const before = typedFrom(line);
  const [typed, setTyped] = useState(before);
  const [tax, setTax] = useState({ option: taxNow(taxes, line.bears), reason: '' });
  const [section, setSection] = useState<Section>(line.section);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const options = taxOptions(taxes, line.bears);

  const keep = async (): Promise<void> => {
    const reader = new Reader();
    if (typed.what.trim() === '') reader.refuse('what', 'is empty; say what it is for');
    const quantity = reader.take('quantity', parseQuantity(typed.quantity, line.unit));
    const unitPrice = reader.take('unitPrice', parseAmount(typed.unitPrice, 9));
    const cost = typed.cost.trim() === '' ? '0' : reader.take('cost', parseAmount(typed.cost, 9));
    if (reader.trouble || quantity === undefined || unitPrice === undefined || cost === undefined) {
      setTrouble(reader.trouble);
      return;
    }
    const set = {
      ...(typed.what === before.what ? {} : { what: typed.what }),
      ...(typed.quantity === before.quantity ? {} : { quantity }),
      ...(typed.unitPrice === before.unitPrice ? {} : { unitPrice }),
      ...(typed.cost === before.cost ? {} : { cost }),
    };
    const taxed = tax.option !== taxNow(taxes, line.bears) || tax.reason.trim() !== '';
    const changes = [
      ...(Object.keys(set).length > 0 ? [{ op: 'set' as const, id: line.id, ...set }] : []),
      ...(section === line.section ? [] : [{ op: 'move' as const, id: line.id, section, before: null }]),
      ...(taxed
        ? taxChange(
            options.find(({ value }) => value === tax.option),
            tax.reason,
            [line.id],
          )
        : []),
    ];
    setTrouble(null);
    if (changes.length > 0) await change(changes, setTrouble);
  };
  const moveTo = (before: string | null): void => void change([{ op: 'move', id: line.id, section: line.section, before }]);
  const figures = (name: keyof typeof typed, label: string, more: { unit?: string; placeholder?: string } = {}) => (
    <Field
      label={label}
      figures
      inputMode="decimal"
      value={typed[name]}
      onChange={(value) => setTyped({ ...typed, [name]: value })}
      error={fieldTrouble(trouble, name)}
      {...more}
    />
  );
  return (
    <form
      className={style.edit}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <div className={style.wide}>
        <Field label="What" value={typed.what} onChange={(what) => setTyped({ ...typed, what })} error={fieldTrouble(trouble, 'what')} />
      </div>
      {figures('quantity', 'Quantity', line.unit ? { unit: line.unit } : {})}
      {figures('unitPrice', 'Unit price')}
      {figures('cost', 'Costs me, never printed', { placeholder: 'nothing' })}
      {own ? <Choice label="Section" value={section} options={sectionOptions} onChange={setSection} /> : null}
      {taxes.length > 0 ? <TaxFields typed={tax} options={options} onChange={setTax} trouble={trouble} /> : null}
      {trouble && !trouble.fields ? <TroubleNote trouble={trouble} /> : null}
      <div className={style.buttons}>
        <Button type="submit">Change</Button>
        {line.changed && !own ? <Button onPress={() => void change([{ op: 'restore', id: line.id }])}>As the card says</Button> : null}
        {places.up === undefined ? null : (
          <Button onPress={() => moveTo(places.up ?? null)} aria-label={`Move up ${line.what}`}>
            Move up
          </Button>
        )}
        {places.down === undefined ? null : (
          <Button onPress={() => moveTo(places.down ?? null)} aria-label={`Move down ${line.what}`}>
            Move down
          </Button>
        )}
        <Button kind="quiet" onPress={() => void change([{ op: 'drop', id: line.id }])} aria-label={`Drop ${line.what}`}>
          Drop
        </Button>
      </div>
    </form>
  );
}
