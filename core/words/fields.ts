/**
 * Fields as a person reads them on a screen, where the command line names them by their paths.
 */
import type { Trouble } from '../contract/base.ts';
import { ordinalInWords } from './amounts.ts';

/** What merely holds the fields that a person filled in. */
const HOLDERS: readonly string[] = ['fields', 'input', 'facts', 'candidate'];

/** "Day rate" for `fields.dayRate`, "To (closed, first)" for `fields.closed[0].to`, "Legs, second" for `legs.1`. */
export function fieldInWords(path: string): string {
  const steps = path.split(/[.[\]]+/).filter((step) => step !== '');
  const parts = steps.reduce<string[]>(
    (before, step) =>
      /^\d+$/.test(step) && before.length > 0
        ? [...before.slice(0, -1), `${before.at(-1)}, ${ordinalInWords(Number(step) + 1)}`]
        : [...before, step.replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)],
    [],
  );
  const named = parts.length > 1 && HOLDERS.includes(parts[0] ?? '') ? parts.slice(1) : parts;
  const last = named.at(-1) ?? '';
  const around = named.length > 1 ? ` (${named.slice(0, -1).join(', ')})` : '';
  return `${last.charAt(0).toUpperCase()}${last.slice(1)}${around}`;
}

/** A trouble for a screen: where its sentence begins with the path of a field, the words for it stand there instead. */
export function troubleInWords(trouble: Trouble): Trouble {
  const path = trouble.fields?.[0]?.field;
  if (path === undefined || !trouble.what.startsWith(`${path} `)) return trouble;
  return { ...trouble, what: `${fieldInWords(path)}${trouble.what.slice(path.length)}` };
}
