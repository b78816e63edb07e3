/**
 * The set-up form as it is typed: text in every input, turned into the contract's fields when it is saved.
 */
import type { Trouble } from '../../../core/contract/base.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { EditSettings, Logo, Setup, SetupFields } from '../../../core/contract/setup.ts';
import { EDIT_SETTINGS } from '../../../core/deliverables/ground.ts';
import { ibanTrouble } from '../../../core/invoices/iban.ts';
import { exponentOf } from '../../../core/money/currencies.ts';
import { fixedText } from '../../../core/money/exact.ts';
import { amountOf, majorOf, money } from '../../../core/money/money.ts';
import { parseAmount, parseNumber } from '../../../core/money/parse.ts';
import { STARTING_TERMS } from '../../../core/papers/terms-default.ts';
import { termsTrouble } from '../../../core/papers/terms-text.ts';
import { Reader } from '../../parts/reader.ts';

type TypedTax = Record<'name' | 'percent' | 'compound', string>;
type Billing = 'series' | 'payTo' | 'lateInterestPercent' | 'termsText';
export type TypedSetup = Omit<SetupFields, 'home' | 'tax' | 'moreTaxes' | 'year' | 'logo' | 'accent' | 'editing' | Billing> & {
  editing: EditSettings;
  editHours: string;
  series: string;
  payName: string;
  iban: string;
  bic: string;
  payWords: string;
  /** Empty for none. */
  lateInterest: string;
  /** The starting text where it was never edited. */
  termsText: string;
  logo: Logo | undefined;
  /** Empty for none. */
  accent: string;
  moreTaxes: TypedTax[];
  home: Place | null;
  taxName: string;
  taxPercent: string;
  taxIncluded: boolean;
  hasYear: boolean;
  costs: string;
  pay: string;
  setAside: string;
  days: string;
};

export const emptySetup: TypedSetup = {
  name: '',
  address: '',
  email: '',
  phone: '',
  home: null,
  currency: 'USD',
  paper: 'Letter',
  distance: 'mi',
  registered: false,
  taxId: '',
  restHours: '8',
  taxName: '',
  taxPercent: '',
  taxIncluded: false,
  moreTaxes: [],
  logo: undefined,
  accent: '',
  series: '',
  payName: '',
  iban: '',
  bic: '',
  payWords: '',
  lateInterest: '',
  termsText: STARTING_TERMS,
  editing: EDIT_SETTINGS,
  editHours: String(EDIT_SETTINGS.hoursADay),
  hasYear: false,
  costs: '',
  pay: '',
  setAside: '28',
  days: '95',
};

export function typedFrom(setup: Setup): TypedSetup {
  const {
    tax,
    moreTaxes = [],
    accent = '',
    series = '',
    year,
    payTo,
    lateInterestPercent,
    termsText,
    editing = EDIT_SETTINGS,
    version: _version,
    ...fields
  } = setup;
  const typedAmount = (minor: number): string => fixedText(majorOf(money(minor, fields.currency)), exponentOf(fields.currency));
  return {
    ...emptySetup,
    ...fields,
    accent,
    series,
    editing,
    editHours: String(editing.hoursADay),
    ...(payTo ? { payName: payTo.name, iban: payTo.iban, bic: payTo.bic, payWords: payTo.words } : {}),
    lateInterest: lateInterestPercent ?? '',
    termsText: termsText ?? STARTING_TERMS,
    ...(tax ? { taxName: tax.name, taxPercent: tax.percent, taxIncluded: tax.included } : {}),
    moreTaxes: moreTaxes.map(({ name, percent, compound }) => ({ name, percent, compound: compound ? 'yes' : 'no' })),
    ...(year
      ? {
          hasYear: true,
          costs: typedAmount(year.costs),
          pay: typedAmount(year.pay),
          setAside: year.setAsidePercent,
          days: String(year.days),
        }
      : {}),
  };
}

/** Six figures of a colour, or nothing. */
const isColour = (accent: string): boolean => /^(#[0-9a-f]{6})?$/i.test(accent.trim());

/** The fields to save, or the trouble that names what cannot be read. */
export function fieldsFrom(typed: TypedSetup): { fields: SetupFields } | { trouble: Trouble } {
  const reader = new Reader();
  const { home, taxName, taxPercent, taxIncluded, moreTaxes, logo, accent, hasYear, costs, pay, setAside, days, ...more } = typed;
  const { series, payName, iban, bic, payWords, lateInterest, termsText, editing, editHours, ...plain } = more;
  if (plain.name.trim() === '') reader.refuse('name', 'is empty; give it a name');
  if (!home) reader.refuse('home', 'is not known yet; type a town and choose it from the list');
  if (!isColour(accent)) reader.refuse('accent', 'is not a colour; write it as #2f5877');
  const minor = (field: string, text: string): number =>
    amountOf(reader.take(field, parseAmount(text, exponentOf(plain.currency))) ?? '0', plain.currency).minor;
  const fields = {
    ...plain,
    restHours: reader.take('restHours', parseNumber(plain.restHours)) ?? '0',
    tax: plain.registered
      ? { name: taxName, percent: reader.take('percent', parseNumber(taxPercent)) ?? '0', included: taxIncluded }
      : null,
    ...(plain.registered && moreTaxes.length > 0
      ? { moreTaxes: moreTaxes.map((tax, at) => furtherTax(tax, at, taxIncluded, reader)) }
      : {}),
    ...(logo ? { logo } : {}),
    ...billingFrom({ series, payName, iban, bic, payWords, lateInterest, termsText }, reader),
    ...(accent.trim() === '' ? {} : { accent: accent.trim() }),
    editing: { ...editing, hoursADay: Number(reader.take('hoursADay', parseNumber(editHours)) ?? '0') },
    year: hasYear
      ? {
          costs: minor('costs', costs),
          pay: minor('pay', pay),
          setAsidePercent: reader.take('setAsidePercent', parseNumber(setAside)) ?? '0',
          days: Number(days),
        }
      : null,
  };
  if (plain.registered && taxName.trim() === '') reader.refuse('tax.name', 'is empty; write it as it stands on your papers');
  return home && !reader.trouble ? { fields: { ...fields, home } } : { trouble: reader.trouble ?? noHome };
}

/** What invoices and terms say; what was left empty is not kept. */
function billingFrom(
  typed: Pick<TypedSetup, 'series' | 'payName' | 'iban' | 'bic' | 'payWords' | 'lateInterest' | 'termsText'>,
  reader: Reader,
): Pick<SetupFields, Billing> {
  const { series, payName: name, iban, bic, payWords: words, lateInterest, termsText } = typed;
  if (iban.trim() !== '') {
    const wrong = ibanTrouble(iban);
    if (wrong) reader.refuse('payTo.iban', `was not kept: ${wrong}`);
  }
  const wrong = termsTrouble(termsText);
  if (wrong) reader.refuse('termsText', wrong);
  const own = termsText.trim() !== '' && termsText.trim() !== STARTING_TERMS;
  return {
    ...(series.trim() === '' ? {} : { series: series.trim() }),
    ...([name, iban, bic, words].every((text) => text.trim() === '') ? {} : { payTo: { name, iban, bic, words } }),
    ...(lateInterest.trim() === '' ? {} : { lateInterestPercent: reader.take('lateInterestPercent', parseNumber(lateInterest)) ?? '0' }),
    ...(own ? { termsText } : {}),
  };
}

/** A tax beside the first, included in prices where the first is. */
function furtherTax({ name, percent, compound }: TypedTax, at: number, included: boolean, reader: Reader) {
  if (name.trim() === '') reader.refuse(`moreTaxes[${at}].name`, 'is empty; write it as it stands on your papers');
  return {
    name,
    percent: reader.take(`moreTaxes[${at}].percent`, parseNumber(percent)) ?? '0',
    included,
    ...(compound === 'yes' ? { compound: true } : {}),
  };
}

const noHome: Trouble = {
  what: 'Home is not known yet.',
  kept: 'Nothing was saved; what you typed is still here.',
  todo: 'Type a town and choose it from the list.',
};
