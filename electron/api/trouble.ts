/**
 * The small closed set of errors, each with what happened, what was kept and what to do. No stack, path or SQL goes in here.
 */
import { ORPCError } from '@orpc/server';
import type { FieldTrouble, Trouble, TroubleCode } from '../../core/contract/base.ts';
import { errorMap } from '../../core/contract/base.ts';
import type { z } from 'zod';

/** An error of the contract, ready to be thrown from a procedure. */
export function trouble(code: TroubleCode, data: Trouble): ORPCError<TroubleCode, Trouble> {
  return new ORPCError(code, { status: errorMap[code].status, message: data.what, data });
}

/** There is no such thing on the books. */
export function notFound(what: string): ORPCError<TroubleCode, Trouble> {
  return trouble('NOT_FOUND', {
    what: `${what} is not on the books.`,
    kept: 'Nothing was changed.',
    todo: 'Go back to the list and open it from there.',
  });
}

/** Somebody saved it meanwhile: both states are handed back, nothing is merged in silence. */
export function stale(what: string, current: unknown, mine: unknown): ORPCError<TroubleCode, Trouble> {
  return trouble('STALE', {
    what: `${what} was changed elsewhere meanwhile.`,
    kept: 'The stored state was kept; yours was not saved.',
    todo: 'Look at the stored state and make your change again.',
    current,
    mine,
  });
}

/** A rule says no. */
export function refused(what: string, todo: string, findings: string[] = []): ORPCError<TroubleCode, Trouble> {
  return trouble('REFUSED', { what, kept: 'Nothing was changed.', todo, findings });
}

/** The input cannot be meant. */
export function badInput(fields: z.infer<typeof FieldTrouble>[]): ORPCError<TroubleCode, Trouble> {
  const first = fields[0];
  return trouble('BAD_INPUT', {
    what: first ? ended(`${first.field} ${first.sentence}`) : 'The input is not of the expected form.',
    kept: 'Nothing was changed.',
    todo: 'Correct it and try again.',
    fields,
  });
}

/** A sentence that others follow ends with a full stop. */
function ended(sentence: string): string {
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}
