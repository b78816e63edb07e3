/**
 * The command line door: `call -- list | describe NAME | NAME [file.json|-] [--data DIR]`. JSON in, JSON out.
 * Exit status: 0 done, 1 refused, not found, stale or store trouble, 2 bad input.
 */
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { badInput } from '../api/trouble.ts';
import type { Outcome } from './answer-inside.ts';
import { LARGEST_FILE_BODY } from './body.ts';
import { describeProcedure, listProcedures } from './described.ts';

const EXIT_DONE = 0;
const EXIT_REFUSED = 1;
const EXIT_BAD_INPUT = 2;

/** Run one command. Returns the exit status. */
export async function commandLine(args: readonly string[]): Promise<number> {
  const outcome = await outcomeOfCommand(args);
  // One write, waited for: a pipe must have all of it before the process ends.
  await new Promise<void>((resolve) => {
    process.stdout.write(`${JSON.stringify(outcome.done ? (outcome.output ?? {}) : outcome.trouble, null, 2)}\n`, () => resolve());
  });
  if (outcome.done) return EXIT_DONE;
  const { code, what, kept, todo } = outcome.trouble;
  process.stderr.write(`${what} ${kept} ${todo}\n`);
  return code === 'BAD_INPUT' ? EXIT_BAD_INPUT : EXIT_REFUSED;
}

async function outcomeOfCommand(args: readonly string[]): Promise<Outcome> {
  const read = readArgs(args);
  if ('trouble' in read) return { done: false, trouble: read.trouble };
  const { words, data } = read;
  const [name, second] = words;
  if (name === undefined) return bad('procedure', 'is missing; name one, or ask for the list');
  if (name === 'list') return { done: true, output: listProcedures() };
  if (name === 'describe') {
    const described = second === undefined ? null : describeProcedure(second);
    return described
      ? { done: true, output: described }
      : bad('procedure', 'is not one of the list; look at: npm run --silent call -- list');
  }
  if (!describeProcedure(name)) return bad('procedure', 'is not one of the list; look at: npm run --silent call -- list');
  const input = readInput(second);
  if ('trouble' in input) return { done: false, trouble: input.trouble };
  // Loaded only now: the list and the descriptions need no store.
  const { callStore } = await import('./call-store.ts');
  return callStore(data, name, input.input);
}

type BadOutcome = Extract<Outcome, { done: false }>;

function readArgs(args: readonly string[]): { words: string[]; data: string | undefined } | { trouble: BadOutcome['trouble'] } {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options: { data: { type: 'string' } }, allowPositionals: true });
    return positionals.length <= 2 ? { words: positionals, data: values.data } : bad('arguments', 'are too many; give a name and one file');
  } catch {
    return bad('arguments', 'are not understood; give a name, one file or -, and --data DIR if wanted');
  }
}

function readInput(file: string | undefined): { input: unknown } | { trouble: BadOutcome['trouble'] } {
  if (file === undefined) return { input: {} };
  const text = readText(file);
  if (typeof text !== 'string') return text;
  try {
    return { input: JSON.parse(text.replace(/^\uFEFF/, '')) as unknown };
  } catch {
    return bad('input', 'is not JSON');
  }
}

/** The text of a file, or of the standard input; what is larger than any procedure takes is not read to its end. */
function readText(file: string): string | BadOutcome {
  const tooLarge = () => bad('file', `is larger than ${LARGEST_FILE_BODY / 1_000_000} MB`);
  try {
    const handle = file === '-' ? 0 : openSync(file, 'r');
    try {
      if (fstatSync(handle).size > LARGEST_FILE_BODY) return tooLarge();
      const chunks: Buffer[] = [];
      for (let size = 0; ;) {
        const chunk = Buffer.alloc(65_536);
        const read = readSync(handle, chunk);
        if (read === 0) return Buffer.concat(chunks).toString('utf8');
        size += read;
        if (size > LARGEST_FILE_BODY) return tooLarge();
        chunks.push(chunk.subarray(0, read));
      }
    } finally {
      if (handle !== 0) closeSync(handle);
    }
  } catch {
    return bad('file', 'cannot be read');
  }
}

function bad(field: string, sentence: string): BadOutcome {
  const { code, data } = badInput([{ field, sentence }]);
  return { done: false, trouble: { code, ...data } };
}

if (import.meta.main) process.exitCode = await commandLine(process.argv.slice(2));
