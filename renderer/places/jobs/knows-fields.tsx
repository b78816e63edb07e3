import { useQuery } from '@tanstack/react-query';
import type { z } from 'zod';
import type { Trouble } from '../../../core/contract/base.ts';
import type { AskedPaper, Knows } from '../../../core/contract/knows.ts';
import { documentInWords } from '../../../core/documents/words.ts';
import { limitOf, wholeUnits } from '../../../core/documents/limits.ts';
import { currencyCodes } from '../../../core/money/currencies.ts';
import { ask } from '../../ask.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Rows } from '../../parts/rows.tsx';
import { Segments } from '../../parts/segments.tsx';
import sheet from '../../parts/sheet.module.css';
import { Tick } from '../../parts/tick.tsx';
import { fieldTrouble } from '../../trouble.ts';
import style from './knows.module.css';

const currencies = currencyCodes.map((code) => ({ value: code, label: code }));

export type KnowsPart = { knows: Knows; change: (part: Partial<Knows>) => void; trouble: Trouble | null };

type TextKey = { [K in keyof Knows]: Knows[K] extends string ? K : never }[keyof Knows];

function Text({ of: { knows, change, trouble }, name, label, rows }: { of: KnowsPart; name: TextKey; label: string; rows?: number }) {
  return (
    <Field
      label={label}
      value={knows[name]}
      onChange={(text) => change({ [name]: text })}
      error={fieldTrouble(trouble, `knows.${name}`)}
      {...(rows ? { rows } : {})}
    />
  );
}

export function PaysAndPapers(of: KnowsPart) {
  const { knows, change, trouble } = of;
  const { purchaseOrder, confidentiality } = knows;
  return (
    <>
      <div className={sheet.texts}>
        <Text of={of} name="payer" label="Who pays, if not the client" />
        <Field
          label="Purchase-order number"
          value={purchaseOrder.number}
          onChange={(number) => change({ purchaseOrder: { ...purchaseOrder, number } })}
          error={fieldTrouble(trouble, 'purchaseOrder.number')}
        />
        <Text of={of} name="billingAddress" label="Billing address" rows={2} />
        <div className={style.ticked}>
          <Tick checked={purchaseOrder.required} onChange={(required) => change({ purchaseOrder: { ...purchaseOrder, required } })}>
            a purchase-order number is required
          </Tick>
        </div>
      </div>
      <PaperFields of={of} name="taxForm" label="Tax form" detail="Which form, or the id it asks for" />
      <PaperFields of={of} name="insurance" label="Insurance certificate" detail="What else it must say" />
      {knows.insurance.asked ? <InsuranceFields of={of} /> : null}
      <NeededDocuments of={of} />
      <div className={style.paper}>
        <Segments
          label="Confidentiality"
          value={confidentiality.mayShow === null ? 'open' : confidentiality.mayShow ? 'yes' : 'no'}
          options={[
            { value: 'open', label: 'not agreed' },
            { value: 'yes', label: 'may be shown' },
            { value: 'no', label: 'may not be shown' },
          ]}
          onChange={(said) => change({ confidentiality: { ...confidentiality, mayShow: said === 'open' ? null : said === 'yes' } })}
        />
        <Field
          label="Until"
          type="date"
          value={confidentiality.until ?? ''}
          onChange={(until) => change({ confidentiality: { ...confidentiality, until: until || null } })}
          error={fieldTrouble(trouble, 'confidentiality.until')}
        />
        <Field
          label="What was agreed"
          value={confidentiality.detail}
          onChange={(detail) => change({ confidentiality: { ...confidentiality, detail } })}
          error={fieldTrouble(trouble, 'confidentiality.detail')}
        />
      </div>
    </>
  );
}

/** A paper that they ask for: asked, due, sent, and what it must say. */
function PaperFields(props: { of: KnowsPart; name: 'taxForm' | 'insurance'; label: string; detail: string }) {
  const { of, name, label } = props;
  const paper = of.knows[name];
  const set = (part: Partial<z.infer<typeof AskedPaper>>): void => of.change({ [name]: { ...paper, ...part } });
  return (
    <div className={style.paper} role="group" aria-label={label}>
      <div className={style.ticked}>
        <Tick checked={paper.asked} onChange={(asked) => set({ asked })}>
          {`${label} is asked for`}
        </Tick>
      </div>
      <Field
        label="Due"
        type="date"
        value={paper.due ?? ''}
        onChange={(due) => set({ due: due || null })}
        error={fieldTrouble(of.trouble, `${name}.due`)}
      />
      <Field
        label="Sent on"
        type="date"
        value={paper.sentOn ?? ''}
        onChange={(sentOn) => set({ sentOn: sentOn || null })}
        error={fieldTrouble(of.trouble, `${name}.sentOn`)}
      />
      <Field
        label={props.detail}
        value={paper.detail}
        onChange={(detail) => set({ detail })}
        error={fieldTrouble(of.trouble, `${name}.detail`)}
      />
    </div>
  );
}

/** Beside asked, due and sent: whom it names, the limit, and when the insurer was asked. */
function InsuranceFields({ of: { knows, change, trouble } }: { of: KnowsPart }) {
  const { insurance } = knows;
  const set = (part: Partial<Knows['insurance']>): void => change({ insurance: { ...insurance, ...part } });
  const { limit } = insurance;
  const home = useQuery(ask.setup.get.queryOptions({ input: {} })).data?.setup?.currency ?? 'USD';
  return (
    <div className={sheet.grid} role="group" aria-label="What the certificate says">
      <Field label="Names" value={insurance.named} onChange={(named) => set({ named })} error={fieldTrouble(trouble, 'insurance.named')} />
      <Field
        label="Limit at least, whole units"
        figures
        inputMode="numeric"
        value={limit ? wholeUnits(limit) : ''}
        onChange={(text) => set({ limit: text.trim() === '' ? null : (limitOf(text, limit?.currency ?? home) ?? limit) })}
        error={fieldTrouble(trouble, 'insurance.limit')}
      />
      {limit ? (
        <Choice
          label="Currency"
          value={limit.currency}
          options={currencies}
          onChange={(currency) => set({ limit: limitOf(wholeUnits(limit), currency) })}
        />
      ) : null}
      <Field
        label="Insurer asked on"
        type="date"
        value={insurance.askedOn ?? ''}
        onChange={(askedOn) => set({ askedOn: askedOn || null })}
        error={fieldTrouble(trouble, 'insurance.askedOn')}
      />
    </div>
  );
}

/** What a job may need beside what borders and insurers ask for. */
const NEEDED = ['driving licence', 'vehicle', 'remote pilot licence', 'equipment insurance', 'other'] as const;

function NeededDocuments({ of: { knows, change } }: { of: KnowsPart }) {
  return (
    <div className={sheet.row} role="group" aria-label="Documents that this job needs">
      <span className={sheet.second}>This job needs:</span>
      {NEEDED.map((kind) => (
        <Tick
          key={kind}
          checked={knows.needs.includes(kind)}
          onChange={(needed) => change({ needs: [...knows.needs.filter((one) => one !== kind), ...(needed ? [kind] : [])] })}
        >
          {documentInWords(kind, null)}
        </Tick>
      ))}
    </div>
  );
}

export function OnSite(of: KnowsPart) {
  const { knows, change, trouble } = of;
  return (
    <>
      <Rows
        label="People on site"
        columns={[
          { key: 'name', label: 'Name' },
          { key: 'what', label: 'What they do there' },
          { key: 'phone', label: 'Phone' },
        ]}
        rows={knows.onSite}
        onChange={(onSite) => change({ onSite })}
        blank={{ name: '', what: '', phone: '' }}
        add={knows.onSite.length === 0 ? 'Add somebody on site' : 'One more on site'}
        error={(at, key) => fieldTrouble(trouble, `onSite[${at}].${key}`)}
      />
      <div className={sheet.grid}>
        <Text of={of} name="overtimeApprover" label="Approves overtime on site" />
        <Text of={of} name="dress" label="Dress" />
        <Text of={of} name="meals" label="Meals" />
      </div>
    </>
  );
}

export function ThePlace(of: KnowsPart) {
  return (
    <div className={sheet.texts}>
      <Text of={of} name="dock" label="Dock and parking" rows={2} />
      <Text of={of} name="access" label="Access and badges" rows={2} />
      <Text of={of} name="power" label="Power; the venue's electrician decides" rows={2} />
      <Text of={of} name="network" label="Network, wired and wireless" rows={2} />
      <Text of={of} name="wetWeather" label="In wet weather" rows={2} />
    </div>
  );
}

export function ToFilm(of: KnowsPart) {
  return (
    <div className={sheet.texts}>
      <Text of={of} name="sessions" label="Sessions and speakers" rows={3} />
      <Text of={of} name="mustHave" label="Must have" rows={3} />
      <Text of={of} name="names" label="Names to spell" rows={3} />
    </div>
  );
}

export function Rights(of: KnowsPart) {
  return (
    <div className={sheet.texts}>
      <Text of={of} name="usage" label="Usage: where, how long, paid media or not" rows={2} />
      <Text of={of} name="music" label="Music licence" rows={2} />
      <Text of={of} name="originals" label="Originals" rows={2} />
      <Text of={of} name="cutsApprover" label="Approves cuts" />
    </div>
  );
}
