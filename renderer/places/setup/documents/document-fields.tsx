import { DocumentKind } from '../../../../core/contract/document-kind.ts';
import type { Hand } from '../../../../core/contract/people.ts';
import { documentInWords } from '../../../../core/documents/words.ts';
import { currencyCodes } from '../../../../core/money/currencies.ts';
import { Choice } from '../../../parts/choice.tsx';
import { Field } from '../../../parts/field.tsx';
import sheet from '../../../parts/sheet.module.css';
import { Tick } from '../../../parts/tick.tsx';
import { fieldTrouble } from '../../../trouble.ts';
import style from '../setup.module.css';
import { hasLimit, type DocumentForm } from './typed-document.ts';

const kinds = DocumentKind.options.map((kind) => ({ value: kind, label: documentInWords(kind, null) }));
const currencies = currencyCodes.map((code) => ({ value: code, label: code }));

export function WhoseAndWhat({ form, hands }: { form: DocumentForm; hands: readonly Hand[] }) {
  const { typed, change, trouble } = form;
  return (
    <div className={sheet.grid}>
      <Choice label="Kind" value={typed.kind} options={kinds} onChange={(kind) => change({ kind })} />
      <Choice
        label="Whose"
        value={typed.handId}
        options={[{ value: '', label: 'mine' }, ...hands.map(({ id, name }) => ({ value: id, label: name }))]}
        onChange={(handId) => change({ handId })}
        error={fieldTrouble(trouble, 'handId')}
      />
      <Field
        label="Name"
        value={typed.title}
        onChange={(title) => change({ title })}
        error={fieldTrouble(trouble, 'title')}
        hint="Only where there are several of a kind."
      />
      <Field
        label="Issued by"
        value={typed.issuedBy}
        onChange={(issuedBy) => change({ issuedBy })}
        error={fieldTrouble(trouble, 'issuedBy')}
      />
      <Field
        label="Issued in"
        value={typed.country}
        placeholder="country"
        onChange={(country) => change({ country })}
        error={fieldTrouble(trouble, 'country')}
        hint={typed.kind === 'passport' ? 'What a country asks depends on it.' : undefined}
      />
      <Field
        label="Number"
        value={typed.number}
        placeholder="need not be kept"
        onChange={(number) => change({ number })}
        error={fieldTrouble(trouble, 'number')}
        hint="Sensitive. It stays on this computer, in no history and no log."
      />
    </div>
  );
}

export function WhenAndWhere({ form }: { form: DocumentForm }) {
  const { typed, change, trouble } = form;
  const limited = typed.kind !== 'passport' && typed.kind !== 'identity card';
  return (
    <>
      <div className={sheet.grid}>
        <Field
          label={typed.kind === 'passport' ? 'Issued on' : 'From'}
          type="date"
          value={typed.from}
          onChange={(from) => change({ from })}
          error={fieldTrouble(trouble, 'fields.from')}
        />
        <Field
          label="Last day"
          type="date"
          value={typed.until}
          onChange={(until) => change({ until })}
          error={fieldTrouble(trouble, 'fields.until')}
          hint="It still holds on that day."
        />
        <Field
          label="A new one takes"
          unit="business days"
          figures
          inputMode="numeric"
          value={typed.leadDays}
          onChange={(leadDays) => change({ leadDays })}
          error={fieldTrouble(trouble, 'leadDays')}
          hint="As you were told; else what is on file counts."
        />
      </div>
      {limited ? (
        <div className={sheet.texts}>
          <Field
            label={typed.kind === 'right to work' || typed.kind === 'carnet' ? 'For' : 'Holds in'}
            value={typed.countries}
            placeholder="Canada, Mexico"
            onChange={(countries) => change({ countries })}
            error={fieldTrouble(trouble, 'fields.countries') ?? fieldTrouble(trouble, 'countries')}
            hint={typed.worldwide ? undefined : 'Nothing here: at home only.'}
            isDisabled={typed.worldwide}
          />
          <div className={style.beside}>
            <Tick checked={typed.worldwide} onChange={(worldwide) => change({ worldwide })}>
              everywhere
            </Tick>
          </div>
        </div>
      ) : null}
      {hasLimit(typed.kind) ? (
        <div className={sheet.grid}>
          <Field
            label="Limit"
            figures
            inputMode="decimal"
            value={typed.limit}
            onChange={(limit) => change({ limit })}
            error={fieldTrouble(trouble, 'limit')}
          />
          <Choice
            label="Currency"
            value={typed.currency}
            options={currencies}
            onChange={(currency) => change({ currency })}
            error={fieldTrouble(trouble, 'currency')}
          />
        </div>
      ) : null}
      <div className={sheet.texts}>
        <Field
          label="Note"
          rows={2}
          value={typed.note}
          onChange={(note) => change({ note })}
          error={fieldTrouble(trouble, 'fields.note')}
        />
      </div>
    </>
  );
}
