/**
 * A rate card as it is typed: text in every input, turned into the contract's fields when it is saved.
 */
import type { Trouble } from '../../../core/contract/base.ts';
import type { RateCardFields, Terms } from '../../../core/contract/rates.ts';
import { parseAmount, parseNumber } from '../../../core/money/parse.ts';
import { Reader } from '../../parts/reader.ts';

/** Prices in currency units. */
const prices = ['dayRate', 'editHour'] as const;
/** Hours, shares and multipliers. */
const numbers = [
  'dayHours',
  'halfUpToHours',
  'halfPercent',
  'prepPercent',
  'standbyPercent',
  'travelPercent',
  'weekendPercent',
  'holidayPercent',
  'nightPercent',
  'turnaroundHours',
  'forcedTimes',
] as const;
const wholes = ['graceMinutes', 'halfGraceMinutes'] as const;
const termWholes = ['validDays', 'payDays', 'rounds'] as const;
export const termTexts = ['overtimeApprover', 'illness', 'weather', 'usage', 'originals', 'postponement'] as const;

type Texts<K extends string> = Record<K, string>;
type Step = { underHours: string; percent: string };
export type TypedTerms = Texts<(typeof termWholes)[number] | (typeof termTexts)[number] | 'depositPercent'> & {
  cancellation: Step[];
  cancelBy: NonNullable<Terms['cancelBy']>;
};
export type TypedCard = Pick<RateCardFields, 'name' | 'role' | 'currency' | 'validFrom' | 'mileageUnit'> &
  Texts<(typeof prices)[number] | (typeof numbers)[number] | (typeof wholes)[number] | 'validTo' | 'allowanceNight'> & {
    overtime: { fromHours: string; toHours: string; times: string }[];
    rush: Step[];
    mileage: { from: string; rate: string }[];
    kit: { name: string; perDay: string }[];
    terms: TypedTerms;
  };

const stepText = (step: { underHours: number; percent: string }): Step => ({ underHours: String(step.underHours), percent: step.percent });

/** Terms as they are typed. */
export function typedTerms(terms: Terms): TypedTerms {
  return {
    ...terms,
    validDays: String(terms.validDays),
    payDays: String(terms.payDays),
    rounds: String(terms.rounds),
    cancellation: terms.cancellation.map(stepText),
    cancelBy: terms.cancelBy ?? 'hours',
  };
}

export function typedFrom(fields: RateCardFields): TypedCard {
  return {
    ...fields,
    dayRate: /^0*(\.0*)?$/.test(fields.dayRate) ? '' : fields.dayRate,
    graceMinutes: String(fields.graceMinutes),
    halfGraceMinutes: String(fields.halfGraceMinutes),
    validTo: fields.validTo ?? '',
    allowanceNight: fields.allowanceNight ?? '',
    overtime: fields.overtime.map((tier) => ({ ...tier, toHours: tier.toHours ?? '' })),
    rush: fields.rush.map(stepText),
    terms: typedTerms(fields.terms),
  };
}

/** Several texts read in the same way, each under its own name. */
function all<K extends string, T>(names: readonly K[], read: (field: string, text: string) => T, from: Texts<K>): Record<K, T> {
  return Object.fromEntries(names.map((name) => [name, read(name, from[name])])) as Record<K, T>;
}

const readNumber = (reader: Reader, field: string, text: string): string => reader.take(field, parseNumber(text)) ?? '0';

function readSteps(reader: Reader, field: string, steps: readonly Step[]) {
  return steps.map((step, at) => ({
    underHours: Number(readNumber(reader, `${field}[${at}].underHours`, step.underHours)),
    percent: readNumber(reader, `${field}[${at}].percent`, step.percent),
  }));
}

/** Typed terms as the contract has them; the reader notes what cannot be read. */
export function termsFrom(terms: TypedTerms, reader: Reader): Terms {
  return {
    ...all(termWholes, (field, text) => Number(readNumber(reader, field, text)), terms),
    depositPercent: readNumber(reader, 'depositPercent', terms.depositPercent),
    cancellation: readSteps(reader, 'cancellation', terms.cancellation),
    cancelBy: terms.cancelBy,
    ...all(termTexts, (_field, text) => text, terms),
  };
}

/** The fields to save, or the trouble that names what cannot be read. */
export function fieldsFrom(typed: TypedCard): { fields: RateCardFields } | { trouble: Trouble } {
  const reader = new Reader();
  const number = (field: string, text: string): string => readNumber(reader, field, text);
  const price = (field: string, text: string): string => reader.take(field, parseAmount(text, 9)) ?? '0';
  const whole = (field: string, text: string): number => Number(number(field, text));
  const fields: RateCardFields = {
    name: typed.name,
    role: typed.role,
    currency: typed.currency,
    validFrom: typed.validFrom,
    validTo: typed.validTo.trim() === '' ? null : typed.validTo,
    mileageUnit: typed.mileageUnit,
    ...all(prices, price, typed),
    ...all(numbers, number, typed),
    ...all(wholes, whole, typed),
    overtime: typed.overtime.map((tier, at) => ({
      fromHours: number(`overtime[${at}].fromHours`, tier.fromHours),
      toHours: tier.toHours.trim() === '' ? null : number(`overtime[${at}].toHours`, tier.toHours),
      times: number(`overtime[${at}].times`, tier.times),
    })),
    rush: readSteps(reader, 'rush', typed.rush),
    mileage: typed.mileage.map((rate, at) => ({ from: rate.from, rate: price(`mileage[${at}].rate`, rate.rate) })),
    allowanceNight: typed.allowanceNight.trim() === '' ? null : price('allowanceNight', typed.allowanceNight),
    kit: typed.kit.map((fee, at) => ({ name: fee.name, perDay: price(`kit[${at}].perDay`, fee.perDay) })),
    terms: termsFrom(typed.terms, reader),
  };
  return reader.trouble ? { trouble: reader.trouble } : { fields };
}
