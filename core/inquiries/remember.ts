/**
 * What a person corrected in a reading, remembered for its sender: words that were read wrong once are read as they were corrected when the
 * same sender writes them again and they would be read the same wrong way. Dates and times are never remembered; they are new each time.
 */
import type { FactName, InquiryFields, Question, Reading, Remembered, RememberedFact } from '../contract/inquiries.ts';
import { Budget } from '../contract/inquiries.ts';
import { Place } from '../contract/parts.ts';
import type { Facts } from '../jobs/facts.ts';
import { amountsIn } from './money/find.ts';
import { budgetChoices } from './questions.ts';

/** A fact of a reading that can be remembered: the words it came from, folded, and how they were read ("" for not at all). */
export type Point = { fact: RememberedFact; words: string; read: string };
/** A point and what it should have been: a whole place, else the word that a fact takes. */
export type Correction = Point & { chosen: unknown };
/** @property at UTC instant of the correction */
export type KeptCorrection = Correction & { id: string; at: string };

/** Which fact of a reading each of them belongs to. */
export const factBehind: Record<RememberedFact, FactName> = {
  place: 'place',
  role: 'role',
  currency: 'budget',
  per: 'budget',
  organisation: 'organisation',
  contactName: 'contactName',
};

/** Remembered facts as words, for sentences. */
export const rememberedWords: Record<RememberedFact, string> = {
  place: 'place',
  role: 'role',
  currency: 'currency',
  per: 'day, hour or job',
  organisation: 'organisation',
  contactName: 'name',
};

const fold = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();

/**
 * Who wrote, as far as one sender can be told from another: the mail address, else the phone, else name and organisation together.
 * Null where none of these was read; nothing is remembered for such a one.
 */
export function senderOf({ fields }: Reading): string | null {
  if (fields.contactEmail) return `mail ${fold(fields.contactEmail)}`;
  if (fields.contactPhone) return `phone ${fields.contactPhone.replace(/\D/g, '')}`;
  if (fields.contactName && fields.organisation) return `name ${fold(fields.contactName)}, ${fold(fields.organisation)}`;
  return null;
}

/** What of a reading can be remembered when it is corrected. */
function pointsOf(reading: Reading): Point[] {
  const { fields, placeFound } = reading;
  const said = (field: FactName): string =>
    [...new Set(reading.spans.filter((span) => span.field === field).map(({ text }) => fold(text)))].join(', ');
  const named = (['place', 'role', 'organisation', 'contactName'] as const)
    .map((fact) => ({ fact, words: said(fact), read: fact === 'place' ? (placeFound?.key ?? '') : (fields[fact] ?? '') }))
    .filter(({ words }) => words !== '');
  return fields.budget ? [...named, ...budgetPoints(fields.budget, said('budget'))] : named;
}

/** Sign and unit of an offer without its number, which is another each time. An amount without a sign has the words "". */
function budgetPoints(budget: Budget, words: string): Point[] {
  return [
    { fact: 'currency', words: amountsIn(words)[0]?.mark ?? '', read: budget.currency ?? '' },
    { fact: 'per', words: words.replace(/[\d.,\s]+/g, ' ').trim(), read: budget.per ?? '' },
  ];
}

/** What stands in the facts of a job for each fact that can be remembered; null where nothing was chosen. */
const chosenIn: Record<RememberedFact, (facts: Facts) => unknown> = {
  place: ({ place }) => place,
  role: ({ role }) => role,
  currency: ({ budget }) => budget?.currency ?? null,
  per: ({ budget }) => budget?.per ?? null,
  organisation: ({ organisation }) => organisation,
  contactName: ({ contact }) => contact.name,
};

/** How a chosen value would have been read. */
const asRead = (chosen: unknown): string => {
  const place = Place.safeParse(chosen);
  return place.success ? place.data.key : String(chosen);
};

/**
 * What a change of a job's facts teaches about its reading.
 * @param reading of the job's message, without memory
 * @returns corrections to keep, and points whose correction was taken back
 */
export function learned(reading: Reading, before: Facts, after: Facts): { keep: Correction[]; drop: Point[] } {
  // Another amount is another offer, not another reading of this one.
  const sameOffer = before.budget !== null && before.budget.amount === after.budget?.amount;
  const taught = pointsOf(reading).flatMap((point): Correction[] => {
    if (factBehind[point.fact] === 'budget' && !sameOffer) return [];
    const chosen = chosenIn[point.fact](after);
    return chosen === null || !changed(before, after, point.fact) ? [] : [{ ...point, chosen }];
  });
  return {
    keep: taught.filter(({ read, chosen }) => asRead(chosen) !== read),
    drop: taught.filter(({ read, chosen }) => asRead(chosen) === read),
  };
}

/** The notes whose fact still stands as it was remembered, after a change. */
export function stillRemembered(notes: readonly Remembered[], before: Facts, after: Facts): Remembered[] {
  return notes.filter(({ fact }) => !changed(before, after, fact));
}

const changed = (before: Facts, after: Facts, fact: RememberedFact): boolean =>
  JSON.stringify(chosenIn[fact](before)) !== JSON.stringify(chosenIn[fact](after));

/** A reading as a person corrected it before: every correction whose words are in it and were read the same way. */
export function withMemory(reading: Reading, kept: readonly KeptCorrection[]): Reading {
  const points = pointsOf(reading);
  const known = kept.filter((one) => points.some(({ fact, words, read }) => fact === one.fact && words === one.words && read === one.read));
  if (known.length === 0) return reading;
  return {
    ...known.reduce(corrected, reading),
    remembered: known.map(({ id, fact, at }) => ({ id, fact, at })),
  };
}

function corrected(reading: Reading, { fact, chosen }: KeptCorrection): Reading {
  if (fact === 'place') return atPlace(reading, Place.parse(chosen));
  if (fact === 'currency' || fact === 'per') return withBudget(reading, { [fact]: chosen });
  const { [fact]: _wrong, ...others } = reading.fields;
  const fields: InquiryFields = chosen === '' ? others : { ...others, [fact]: chosen };
  return { ...reading, fields, questions: reading.questions.filter(({ field }) => field !== fact) };
}

function atPlace(reading: Reading, place: Place): Reading {
  return {
    ...reading,
    fields: { ...reading.fields, place: place.name, country: place.country },
    questions: reading.questions.filter(({ field }) => field !== 'place' && field !== 'country'),
    placeFound: place,
  };
}

/** The offer in that currency or for that unit; so are the choices of what is asked about it, and one choice is no question. */
function withBudget(reading: Reading, part: object): Reading {
  const told = (value: unknown): Budget => Budget.parse({ ...Budget.parse(value), ...part });
  const questions = reading.questions.flatMap((question): Question[] => {
    if (question.field !== 'budget') return [question];
    const choices = budgetChoices(question.choices.map(({ value }) => told(value)));
    return choices.length === 1 ? [] : [{ ...question, choices }];
  });
  return { ...reading, fields: { ...reading.fields, budget: told(reading.fields.budget) }, questions };
}
