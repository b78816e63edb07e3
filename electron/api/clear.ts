/**
 * Whatever was thrown, as one of the contract's errors. Nothing of the inside goes out: no stack, path or SQL.
 */
import { randomBytes } from 'node:crypto';
import { ORPCError } from '@orpc/server';
import { ValidationError } from '@orpc/contract';
import type { z } from 'zod';
import type { Trouble, TroubleCode } from '../../core/contract/base.ts';
import { troubleCodes } from '../../core/contract/base.ts';
import { WallTimeError } from '../../core/time/read.ts';
import { StoreError } from '../../db/trouble.ts';
import { fieldPath, fieldSentences, pathOfValue } from './field-sentences.ts';
import { framesOf, type Log } from './log.ts';
import { badInput, trouble } from './trouble.ts';

export type TroubleError = ORPCError<TroubleCode, Trouble>;

/**
 * The contract's error for whatever a procedure or the transport threw.
 * @param procedure name for the log
 * @param input what was asked, used only to say which field is meant
 */
export function asTrouble(error: unknown, log: Log, procedure: string, input?: unknown): TroubleError {
  for (const cause of causesOf(error)) {
    if (isTrouble(cause)) return cause;
    if (cause instanceof StoreError) return trouble('STORE_TROUBLE', { what: cause.what, kept: cause.kept, todo: cause.todo });
    if (cause instanceof WallTimeError) return wallTrouble(cause, input);
    if (cause instanceof ORPCError && cause.code === 'BAD_REQUEST') return badRequest(cause, input);
    if (cause instanceof ORPCError && cause.code === 'NOT_FOUND') return noSuchProcedure(procedure);
  }
  return wrongInside(error, log, procedure);
}

/** The name asked for is not in the contract. */
export function noSuchProcedure(name: string): TroubleError {
  return trouble('BAD_INPUT', {
    what: `There is no procedure ${fieldPath([name]).slice(0, 80)}.`,
    kept: 'Nothing was changed.',
    todo: 'Look at the list: npm run --silent call -- list',
  });
}

function isTrouble(error: unknown): error is TroubleError {
  return error instanceof ORPCError && (troubleCodes as readonly string[]).includes(error.code) && isTroubleData(error.data);
}

function isTroubleData(data: unknown): boolean {
  return typeof data === 'object' && data !== null && 'what' in data && 'kept' in data && 'todo' in data;
}

function badRequest(error: ORPCError<string, unknown>, input: unknown): TroubleError {
  if (!(error.cause instanceof ValidationError)) return badInput([{ field: 'input', sentence: 'could not be read; it must be JSON' }]);
  return badInput(fieldSentences(error.cause.issues as unknown as z.core.$ZodIssue[], input));
}

function wallTrouble(error: WallTimeError, input: unknown): TroubleError {
  const path = pathOfValue(input, error.wall);
  const field = path ? fieldPath(path) : 'time';
  return trouble('BAD_INPUT', {
    what: error.message,
    kept: 'Nothing was changed.',
    todo: 'Give another time and try again.',
    fields: [{ field, sentence: error.message }],
  });
}

function wrongInside(error: unknown, log: Log, procedure: string): TroubleError {
  const id = randomBytes(4).toString('hex');
  log({ event: 'wrong inside', id, procedure, kind: kindsOf(error), frames: framesOf(error) });
  return trouble('STORE_TROUBLE', {
    what: `Something went wrong inside (id ${id}).`,
    kept: 'What was saved before is kept.',
    todo: 'Try again. If it happens again, kitbound.log in the data folder has the place under this id.',
  });
}

/** An error and everything that it says it was caused by, outermost first. */
function causesOf(error: unknown): unknown[] {
  const causes: unknown[] = [];
  for (let next = error; next !== undefined && causes.length < 8; next = next instanceof Error ? next.cause : undefined) causes.push(next);
  return causes;
}

function kindsOf(error: unknown): string {
  const kinds = causesOf(error).map((cause) => {
    if (!(cause instanceof Error)) return typeof cause;
    const code = 'code' in cause && typeof cause.code === 'string' && /^[A-Z_]{1,40}$/.test(cause.code) ? ` ${cause.code}` : '';
    return `${cause.name}${code}`;
  });
  return kinds.join(' < ');
}
