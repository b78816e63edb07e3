/**
 * Which open questions of a job are settled by a change of its facts.
 */
import type { FactName, Question } from '../contract/inquiries.ts';
import type { FactChanges, Facts } from './facts.ts';

const asked: Partial<Record<keyof Facts, readonly FactName[]>> = {
  days: ['start', 'end', 'firstCall', 'lastWrap', 'days'],
  place: ['place', 'country'],
  role: ['role'],
  replyBy: ['replyBy'],
  budget: ['budget'],
  contact: ['contactName', 'contactEmail', 'contactPhone'],
  organisation: ['organisation'],
  deliverables: ['deliverables'],
};

/** True when two facts say the same, whatever the order of their parts. */
function sameFact(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const left = Object.entries(a).filter(([, value]) => value !== undefined);
  const right = new Map(Object.entries(b).filter(([, value]) => value !== undefined));
  return left.length === right.size && left.every(([key, value]) => right.has(key) && sameFact(value, right.get(key)));
}

/** The facts whose value is another than before, by their names. */
export function changedFacts(before: Facts, changes: FactChanges): (keyof Facts)[] {
  return (Object.keys(changes) as (keyof Facts)[]).filter((name) => changes[name] !== undefined && !sameFact(before[name], changes[name]));
}

/**
 * The questions that are still open after these facts changed and these fields were answered. A changed fact settles whatever was asked
 * about it, unless it was changed to answer some of that: a call that is chosen leaves the wrap as open as it was.
 */
export function stillOpen(questions: readonly Question[], changed: readonly (keyof Facts)[], answered: readonly string[] = []): Question[] {
  const about = changed.flatMap((name) => {
    const all = asked[name] ?? [];
    return all.some((field) => answered.includes(field)) ? [] : all;
  });
  const settled = new Set<string>([...answered, ...about]);
  return questions.filter((question) => !settled.has(question.field));
}
