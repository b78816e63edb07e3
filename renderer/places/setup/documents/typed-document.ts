/**
 * A document as typed: text in every input, turned into the contract's fields when it is saved.
 */
import type { Trouble } from '../../../../core/contract/base.ts';
import type { DocumentKind } from '../../../../core/contract/document-kind.ts';
import { Document, type DocumentFields } from '../../../../core/contract/documents.ts';
import { titleOf } from '../../../../core/documents/words.ts';
import { exponentOf, isCurrency } from '../../../../core/money/currencies.ts';
import { fixedText } from '../../../../core/money/exact.ts';
import { formatMoney } from '../../../../core/money/format.ts';
import { amountOf, majorOf } from '../../../../core/money/money.ts';
import { parseAmount, parseNumber } from '../../../../core/money/parse.ts';
import { countryCode, countryInWords } from '../../../../core/words/countries.ts';
import { dateInWords } from '../../../../core/words/dates.ts';
import { client } from '../../../door.ts';
import type { Said } from '../../../parts/clash-note.tsx';
import { Reader } from '../../../parts/reader.ts';
import type { KeptForm, KeptKind } from '../../../parts/use-kept-form.ts';

export type TypedDocument = Pick<DocumentFields, 'kind' | 'title' | 'number' | 'issuedBy' | 'worldwide' | 'note'> & {
  /** Empty for mine. */
  handId: string;
  country: string;
  from: string;
  until: string;
  countries: string;
  limit: string;
  currency: string;
  leadDays: string;
};
/** As lists and sheets name it. */
export type NamedDocument = Document & { name: string };
export type DocumentForm = KeptForm<TypedDocument, DocumentFields, NamedDocument>;

export const named = (document: Document): NamedDocument => ({ ...document, name: titleOf(document) });

export const fieldsOf = ({ id: _id, version: _version, scan: _scan, name: _name, ...fields }: NamedDocument): DocumentFields => fields;

/** @param currency of a limit that is still to be typed */
export const documentKind = (currency: string): KeptKind<TypedDocument, DocumentFields, NamedDocument> => ({
  typedFrom: (fields) => typedFrom(fields, currency),
  fieldsFrom,
  keep: async (fields, stored) =>
    named((await client.documents.save({ fields, ...(stored ? { id: stored.id, version: stored.version } : {}) })).document),
  storedIn: (current) => {
    const document = Document.safeParse(current).data;
    return document && named(document);
  },
});

function typedFrom(fields: DocumentFields, currency: string): TypedDocument {
  const { kind, title, number, issuedBy, worldwide, note, limit } = fields;
  return {
    kind,
    title,
    number,
    issuedBy,
    worldwide,
    note,
    handId: fields.handId ?? '',
    country: fields.country ? countryInWords(fields.country) : '',
    from: fields.from ?? '',
    until: fields.until ?? '',
    countries: fields.countries.map(countryInWords).join(', '),
    limit: limit ? fixedText(majorOf(limit), exponentOf(limit.currency)) : '',
    currency: limit?.currency ?? currency,
    leadDays: fields.leadDays === null ? '' : String(fields.leadDays),
  };
}

/** Two kinds say what they are insured for. */
export const hasLimit = (kind: DocumentKind): boolean => kind === 'liability insurance' || kind === 'equipment insurance';

function fieldsFrom(typed: TypedDocument): { fields: DocumentFields } | { trouble: Trouble } {
  const reader = new Reader();
  const countryOf = (field: string, text: string): string | null => {
    const code = countryCode(text);
    if (code === null) reader.refuse(field, `was not read: "${text}" is no country; write it as Canada or CA`);
    return code;
  };
  const { kind, title, number, issuedBy, worldwide, note } = typed;
  const currency = typed.currency.trim().toUpperCase();
  const isKnown = isCurrency(currency);
  if (hasLimit(kind) && typed.limit.trim() !== '' && !isKnown) reader.refuse('currency', 'is not an ISO 4217 currency; write it as USD');
  const limit =
    hasLimit(kind) && typed.limit.trim() !== '' && isKnown
      ? reader.take('limit', parseAmount(typed.limit, exponentOf(currency)))
      : undefined;
  const lead = typed.leadDays.trim() === '' ? undefined : reader.take('leadDays', parseNumber(typed.leadDays));
  const fields: DocumentFields = {
    kind,
    title,
    number,
    issuedBy,
    worldwide,
    note,
    handId: typed.handId || null,
    country: typed.country.trim() === '' ? null : countryOf('country', typed.country),
    from: typed.from || null,
    until: typed.until || null,
    countries: typed.countries
      .split(/[,;]/)
      .filter((part) => part.trim() !== '')
      .flatMap((part) => countryOf('countries', part) ?? []),
    limit: limit === undefined ? null : amountOf(limit, currency),
    leadDays: lead === undefined ? null : Number(lead),
  };
  return reader.trouble ? { trouble: reader.trouble } : { fields };
}

/** Everything that is kept of it as words; its number only as kept or not. */
export function documentInLabels(of: DocumentFields): Said[] {
  return [
    { label: 'Kind', text: of.kind },
    { label: 'Name', text: of.title },
    { label: 'Number', text: of.number === '' ? 'not kept' : 'kept' },
    { label: 'Issued by', text: [of.issuedBy, of.country ? countryInWords(of.country) : ''].filter((part) => part !== '').join(', ') },
    { label: 'From', text: of.from ? dateInWords(of.from) : '' },
    { label: 'Last day', text: of.until ? dateInWords(of.until) : 'not noted' },
    { label: 'Holds in', text: holdsInWords(of) },
    { label: 'Limit', text: of.limit ? formatMoney(of.limit, { code: true }) : '' },
    { label: 'A new one takes', text: of.leadDays === null ? '' : `${of.leadDays} business days` },
    { label: 'Note', text: of.note },
  ];
}

/** "everywhere", "Canada, Mexico", or nothing where it is not said. */
export const holdsInWords = ({ worldwide, countries }: Pick<DocumentFields, 'worldwide' | 'countries'>): string =>
  worldwide ? 'everywhere' : countries.map(countryInWords).join(', ');
