/**
 * The questions that a reading leaves: what is missing or could be meant in two ways, as a sentence, with the choices as values of the field.
 */
import type { Budget, FactName, InquiryFields, Question } from '../contract/inquiries.ts';
import { datesInWords, deadlineInWords, wallInWords } from '../words/dates.ts';
import type { Calls } from './settle/points.ts';
import type { EventDays } from './settle/scene.ts';

const missing: readonly (readonly [FactName, string])[] = [
  ['firstCall', 'When is the first call or load-in?'],
  ['place', 'Where is it?'],
  ['role', 'What is asked of you?'],
];

/** A question with its choices. */
export function question(field: FactName, ask: string, choices: readonly Question['choices'][number][] = []): Question {
  return { field, ask, choices: [...choices] };
}

/** Whether a name that was found is that of who asks, or of their body. */
export const partyQuestion = (field: FactName, found: string): Question =>
  question(field, field === 'organisation' ? 'For whom do they ask?' : 'Who asks?', [{ label: found, value: found }]);

/** Wall times to choose from, written out. */
export function wallChoices(walls: readonly string[]): Question['choices'] {
  return walls.map((wall) => ({ label: wallInWords(wall), value: wall }));
}

/** Ends of a deadline to choose from. */
export function deadlineChoices(walls: readonly string[], zone: string): Question['choices'] {
  return walls.map((wall) => ({ label: deadlineInWords({ wall, zone, at: '' }), value: wall }));
}

/** Sets of days to choose from; the value is the first (or last) day of each, beside all of them. */
export function dayChoices(sets: readonly (readonly string[])[], which: 'start' | 'end'): Question['choices'] {
  return sets.flatMap((dates) => {
    const value = which === 'start' ? dates[0] : dates.at(-1);
    return value === undefined ? [] : [{ label: datesInWords(dates), value, days: [...dates] }];
  });
}

/** What is asked of days that are not certain: one set that may not be all, or several of which one is meant. */
export function daysAsked({ choices: [only = [], ...others], doubt }: Pick<EventDays, 'choices' | 'doubt'>): string {
  if (doubt === 'weekday') return 'The weekday and the date do not agree. Which day is meant?';
  if (others.length > 0) return 'Which dates are meant?';
  return only.length === 1 ? 'Is it this day, and no other?' : 'Is it these days, and no others?';
}

/** What is asked of a first call that is not certain. */
export function callAsked({ why, walls }: Pick<NonNullable<Calls['callChoices']>, 'why' | 'walls'>): string {
  if (why === 'show') return 'That is when it starts. When is your first call?';
  if (why === 'open') return 'Morning or evening? When is the first call?';
  return `${walls.length > 1 ? 'More than one hour may be it' : 'This hour may be that of something else'}. When is the first call?`;
}

/** Offers to choose from, each once. */
export function budgetChoices(budgets: readonly Budget[]): Question['choices'] {
  const byLabel = new Map(budgets.map((budget) => [budgetLabel(budget), budget]));
  return [...byLabel].map(([label, value]) => ({ label, value }));
}

function budgetLabel(budget: Budget): string {
  return [String(budget.amount), budget.currency, budget.per ? `a ${budget.per}`.replace('a hour', 'an hour') : undefined]
    .filter((part) => part !== undefined)
    .join(' ');
}

/** What every inquiry needs and this one does not say, unless it is asked already. */
export function missingQuestions(fields: InquiryFields, asked: readonly Question[]): Question[] {
  return missing
    .filter(([field]) => fields[field] === undefined && !asked.some((one) => one.field === field))
    .map(([field, ask]) => question(field, ask));
}
