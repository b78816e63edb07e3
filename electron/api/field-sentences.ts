/**
 * What the contract's schemas refuse, in words: one sentence for each field, never the value itself.
 */
import type { z } from 'zod';
import type { FieldTrouble } from '../../core/contract/base.ts';

export type FieldSentence = z.infer<typeof FieldTrouble>;
type Issue = z.core.$ZodIssue;

/** More than this many fields at once help nobody. */
const MOST_FIELDS = 40;
const KINDS: Record<string, string> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a group of fields',
  record: 'a group of fields',
  null: 'null',
};
/** A length says what it is counted in by standing in a list or a text; everything else is a number. */
const OVER: Record<string, string> = { array: 'has too many entries; the most is', string: 'is too long; the most characters are' };
const UNDER: Record<string, string> = { array: 'has too few entries; the least is', string: 'is too short; the least characters are' };

/** Where a field lies, as a person writes it: `changes.days[0].call`. The input as a whole is `input`. */
export function fieldPath(path: readonly PropertyKey[]): string {
  const text = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${shortName(String(step))}`)).join('');
  return text.replace(/^\./, '') || 'input';
}

/** One sentence for each thing that a schema refused in `input`. */
export function fieldSentences(issues: readonly Issue[], input: unknown): FieldSentence[] {
  return issues.flatMap((issue) => sentencesOf(issue, input, [])).slice(0, MOST_FIELDS);
}

/** The path of the first value in `input` that is exactly `wanted`, or null. */
export function pathOfValue(input: unknown, wanted: string, path: PropertyKey[] = []): PropertyKey[] | null {
  if (input === wanted) return path;
  if (typeof input !== 'object' || input === null) return null;
  for (const [key, value] of Object.entries(input)) {
    const found = pathOfValue(value, wanted, [...path, Array.isArray(input) ? Number(key) : key]);
    if (found) return found;
  }
  return null;
}

function sentencesOf(issue: Issue, input: unknown, above: readonly PropertyKey[]): FieldSentence[] {
  const path = [...above, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({ field: fieldPath([...path, key]), sentence: 'is not known here; take it out' }));
  }
  if (issue.code === 'invalid_union') {
    const nearest = [...issue.errors].sort((a, b) => deepest(b) - deepest(a))[0];
    if (nearest?.length) return nearest.flatMap((inner) => sentencesOf(inner, input, path));
  }
  return [{ field: fieldPath(path), sentence: sentence(issue, valueAt(input, path)) }];
}

function sentence(issue: Issue, value: unknown): string {
  if (value === undefined) return 'is missing';
  // The contract's own sentences begin in lower case; the schema library's do not.
  if (/^[a-z]/.test(issue.message)) return issue.message;
  switch (issue.code) {
    case 'invalid_type':
      return `must be ${KINDS[issue.expected] ?? issue.expected}`;
    case 'invalid_value':
      return `must be ${issue.values.map(String).join(' or ')}`;
    case 'too_small':
      return `${UNDER[issue.origin] ?? 'is too small; the least is'} ${issue.minimum}`;
    case 'too_big':
      return `${OVER[issue.origin] ?? 'is too large; the most is'} ${issue.maximum}`;
    default:
      return 'is not of the expected form';
  }
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  let value = input;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}

const deepest = (issues: readonly Issue[]): number => Math.max(0, ...issues.map((issue) => issue.path.length));

/** A key that came from outside is named, but no longer than a name is and without characters that cannot be seen. */
function shortName(key: string): string {
  const seen = key.replace(/[^\p{L}\p{N}\p{P}\p{S} ]/gu, '?');
  return seen.length > 60 ? `${seen.slice(0, 59)}…` : seen;
}
