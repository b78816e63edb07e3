/**
 * What a worked day costs: its base, overtime by tier, uplifts. Hours are measured between instants, so a changed clock is no matter.
 */
import type { RateCardFields } from '../contract/rates.ts';
import type { DayKind } from '../contract/parts.ts';
import { exact, decimalText, type Exact } from '../money/exact.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import { lineAmount, type Money } from '../money/money.ts';
import { lengthInWords } from '../words/amounts.ts';

/** The part of a rate card that prices days. */
export type DayTerms = Pick<
  RateCardFields,
  | 'currency'
  | 'dayRate'
  | 'dayHours'
  | 'halfUpToHours'
  | 'halfPercent'
  | 'graceMinutes'
  | 'halfGraceMinutes'
  | 'overtime'
  | 'prepPercent'
  | 'standbyPercent'
  | 'travelPercent'
  | 'weekendPercent'
  | 'holidayPercent'
  | 'nightPercent'
  | 'turnaroundHours'
  | 'forcedTimes'
>;

/** One paid date of one client as it was, or is to be, worked. Instants are epoch milliseconds. */
export type WorkedDay = {
  date: string;
  kind: Exclude<DayKind, 'edit'>;
  callAt: number;
  wrapAt: number;
  unpaidBreakMinutes: number;
  zone: string;
  holiday: boolean;
};

/** One line's worth of pay. `key` is the same for all days whose price comes about in the same way. */
export type PayPart = {
  key: string;
  sort: 'base' | 'overtime' | 'uplift';
  what: string;
  quantity: Exact;
  unit: 'day' | 'hour';
  unitPrice: Exact;
  amount: Money;
  reason: string;
};

const HALF_HOUR = 30 * 60_000;
/** Night work: wall clock at the place, from and up to these hours. */
const NIGHT_FROM = 22;
const NIGHT_TO = 6;

/** Price of one hour inside the day: day rate / day length. Not rounded. */
export function hourlyBase(terms: Pick<DayTerms, 'dayRate' | 'dayHours'>): Exact {
  return exact(terms.dayRate).div(exact(terms.dayHours));
}

/** Elapsed time less unpaid breaks, in milliseconds. */
export function workedMs(day: Pick<WorkedDay, 'callAt' | 'wrapAt' | 'unpaidBreakMinutes'>): number {
  return Math.max(0, day.wrapAt - day.callAt - day.unpaidBreakMinutes * 60_000);
}

/**
 * The kind that a date is billed as: a half day sold that overruns its limit and grace becomes a full day; a day sold stays one, however short.
 */
export function billedKind(day: WorkedDay, terms: DayTerms): WorkedDay['kind'] {
  if (day.kind !== 'half') return day.kind;
  const limit = hoursMs(terms.halfUpToHours) + terms.halfGraceMinutes * 60_000;
  return workedMs(day) > limit ? 'shoot' : 'half';
}

/** What share of the day rate a kind costs, in per cent. */
export function percentOfKind(kind: WorkedDay['kind'], terms: DayTerms): string {
  const percents = {
    shoot: '100',
    half: terms.halfPercent,
    prep: terms.prepPercent,
    standby: terms.standbyPercent,
    travel: terms.travelPercent,
  };
  return percents[kind];
}

/** Started half hours of overtime for each tier, in the order of the tiers; what lies in no tier is not charged. */
function overtimeHalfHours(day: WorkedDay, terms: DayTerms): { times: string; from: string; to: string | null; halfHours: number }[] {
  const over = workedMs(day) - hoursMs(terms.dayHours);
  const started = over > terms.graceMinutes * 60_000 ? Math.ceil(over / HALF_HOUR) : 0;
  const starts = Array.from({ length: started }, (_, count) => count * HALF_HOUR);
  return terms.overtime.map(({ fromHours, toHours, times }) => {
    const [begin, end] = [hoursMs(fromHours), toHours === null ? Infinity : hoursMs(toHours)];
    return { times, from: fromHours, to: toHours, halfHours: starts.filter((start) => begin <= start && start < end).length };
  });
}

/**
 * What one date costs, as lines with their reasons. Travel days bear no overtime; prep and standby bear it at their share of the hourly base.
 * Weekend, holiday and night uplifts add on the day's base, never on overtime and never on each other.
 */
export function payOfDay(day: WorkedDay, terms: DayTerms): PayPart[] {
  const kind = billedKind(day, terms);
  const share = exact(percentOfKind(kind, terms)).div(100n);
  const base = exact(terms.dayRate).mul(share);
  const parts = [basePart(day, kind, base, terms), ...overtimeParts(day, kind, share, terms), ...upliftParts(day, kind, base, terms)];
  return parts.filter((part) => part.sort === 'base' || part.quantity.n > 0n);
}

const hoursMs = (hours: string): number => Math.round(exact(hours).mul(3_600_000n).valueOf());
const minutesOf = (ms: number): number => Math.floor(ms / 60_000);
const percent = (text: string): string => `${formatNumber(text)} %`;

function basePart(day: WorkedDay, kind: WorkedDay['kind'], base: Exact, terms: DayTerms): PayPart {
  const rate = formatPrice(terms.dayRate, terms.currency);
  const long = lengthInWords(minutesOf(workedMs(day)));
  const names = { shoot: 'day', half: 'half day', prep: 'prep day', standby: 'standby day', travel: 'travel day' };
  const why = {
    shoot:
      day.kind === 'half'
        ? `A half day ends at ${formatNumber(terms.halfUpToHours)} h and ${terms.halfGraceMinutes} min of grace; ${long} is a full day at ${rate}.`
        : `The day rate ${rate} covers ${formatNumber(terms.dayHours)} h from call to wrap.`,
    half: `Up to ${formatNumber(terms.halfUpToHours)} h cost ${percent(terms.halfPercent)} of the day rate ${rate}; ${long} from call to wrap.`,
    prep: `A prep day costs ${percent(terms.prepPercent)} of the day rate ${rate}.`,
    standby: `A standby day costs ${percent(terms.standbyPercent)} of the day rate ${rate}.`,
    travel: `A travel day costs ${percent(terms.travelPercent)} of the day rate ${rate}.`,
  };
  return part(terms, { key: kind, sort: 'base', what: names[kind], quantity: exact(1), unit: 'day', unitPrice: base, reason: why[kind] });
}

function overtimeParts(day: WorkedDay, kind: WorkedDay['kind'], share: Exact, terms: DayTerms): PayPart[] {
  if (kind === 'half' || kind === 'travel') return [];
  const hourly = hourlyBase(terms).mul(share);
  const worked = workedMs(day);
  const halves = Math.ceil(worked / HALF_HOUR);
  const lessBreaks = day.unpaidBreakMinutes > 0 ? ` after ${lengthInWords(day.unpaidBreakMinutes)} of unpaid breaks` : '';
  return overtimeHalfHours(day, terms).map((tier) => {
    const hours = exact(tier.halfHours).div(2n);
    const ends =
      tier.to === null ? `beyond ${formatNumber(tier.from)} h` : `from ${formatNumber(tier.from)} h to ${formatNumber(tier.to)} h`;
    return part(terms, {
      key: `overtime ${kind} ${decimalText(tier.times)}`,
      sort: 'overtime',
      what: `overtime at ${formatNumber(tier.times)} times`,
      quantity: hours,
      unit: 'hour',
      unitPrice: hourly.mul(exact(tier.times)),
      reason: `${lengthInWords(minutesOf(worked))}${lessBreaks}, billed in started half hours as ${formatNumber(exact(halves).div(2n))} h: ${formatNumber(hours)} h lie ${ends} past the ${formatNumber(terms.dayHours)} h day, at ${formatNumber(tier.times)} x ${formatPrice(hourly, terms.currency)}.`,
    });
  });
}

function upliftParts(day: WorkedDay, kind: WorkedDay['kind'], base: Exact, terms: DayTerms): PayPart[] {
  const weekday = Temporal.PlainDate.from(day.date).dayOfWeek;
  const onBase = (name: string, rate: string, applies: boolean): PayPart =>
    part(terms, {
      key: `${name} uplift`,
      sort: 'uplift',
      what: `${name} uplift, ${percent(rate)}`,
      quantity: exact(applies && exact(rate).n > 0n ? 1 : 0),
      unit: 'day',
      unitPrice: base.mul(exact(rate)).div(100n),
      reason: `The call is on a ${name}: ${percent(rate)} on the day's base ${formatPrice(base, terms.currency)}.`,
    });
  const paidHours = kind === 'half' ? terms.halfUpToHours : terms.dayHours;
  const night = exact(nightHalfHours(day, paidHours)).div(2n);
  const hourly = base.div(exact(paidHours));
  return [
    onBase('weekend', terms.weekendPercent, weekday > 5),
    onBase('holiday', terms.holidayPercent, day.holiday),
    part(terms, {
      key: 'night uplift',
      sort: 'uplift',
      what: `night uplift, ${percent(terms.nightPercent)}`,
      quantity: exact(terms.nightPercent).n > 0n ? night : exact(0),
      unit: 'hour',
      unitPrice: hourly.mul(exact(terms.nightPercent)).div(100n),
      reason: `${formatNumber(night)} h of the day lie between 22:00 and 06:00 at the place: ${percent(terms.nightPercent)} on ${formatPrice(hourly, terms.currency)} an hour.`,
    }),
  ];
}

/** Half hours, counted from the call, that begin at night at the place and are paid by the day's base (not overtime). */
function nightHalfHours(day: WorkedDay, paidHours: string): number {
  const end = Math.min(day.wrapAt, day.callAt + hoursMs(paidHours));
  let count = 0;
  for (let start = day.callAt; start < end; start += HALF_HOUR) {
    const { hour } = Temporal.Instant.fromEpochMilliseconds(start).toZonedDateTimeISO(day.zone);
    if (hour >= NIGHT_FROM || hour < NIGHT_TO) count += 1;
  }
  return count;
}

function part(terms: DayTerms, fields: Omit<PayPart, 'amount'>): PayPart {
  return { ...fields, amount: lineAmount(fields.quantity, fields.unitPrice, terms.currency) };
}
