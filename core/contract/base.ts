/**
 * What every procedure of the contract has in common: read or write, and the small closed set of errors.
 */
import { oc } from '@orpc/contract';
import { z } from 'zod';

/** One field that was refused, and why, in words. */
export const FieldTrouble = z.strictObject({ field: z.string(), sentence: z.string() });

/** What a person reads when something did not work: what happened, what was kept, what to do. */
export const Trouble = z.strictObject({
  what: z.string(),
  kept: z.string(),
  todo: z.string(),
  fields: z.array(FieldTrouble).optional(),
  findings: z.array(z.string()).optional().describe('sentences of the rules that refused'),
  current: z.unknown().optional().describe('the state that is stored now, when a save was stale'),
  mine: z.unknown().optional().describe('the state that was to be saved, when it was stale'),
});
export type Trouble = z.infer<typeof Trouble>;

export const troubleCodes = ['NOT_FOUND', 'STALE', 'REFUSED', 'BAD_INPUT', 'STORE_TROUBLE'] as const;
export type TroubleCode = (typeof troubleCodes)[number];

/** HTTP status of each error; the command line maps REFUSED, STALE, NOT_FOUND and STORE_TROUBLE to exit 1, BAD_INPUT to 2. */
export const errorMap = {
  NOT_FOUND: { status: 404, message: 'Not found', data: Trouble },
  STALE: { status: 409, message: 'Changed elsewhere meanwhile', data: Trouble },
  REFUSED: { status: 422, message: 'Refused by a rule', data: Trouble },
  BAD_INPUT: { status: 400, message: 'Bad input', data: Trouble },
  STORE_TROUBLE: { status: 503, message: 'Store trouble', data: Trouble },
};

/** `file`: the input holds the bytes of a file, so that it may be larger than others. */
export type Meta = { kind: 'read' | 'write'; about: string; file?: true };
const base = oc.$meta<Meta>({ kind: 'read', about: '' }).errors(errorMap);

/** A procedure that changes nothing in the store. */
export function reads<I extends z.ZodType, O extends z.ZodType>(about: string, input: I, output: O) {
  return base.meta({ kind: 'read', about }).input(input).output(output);
}

/** A procedure that may change the store; it runs in one immediate transaction. */
export function writes<I extends z.ZodType, O extends z.ZodType>(about: string, input: I, output: O) {
  return base.meta({ kind: 'write', about }).input(input).output(output);
}

/** The same for a procedure whose input holds a file in base64. */
export function writesFile<I extends z.ZodType, O extends z.ZodType>(about: string, input: I, output: O) {
  return base.meta({ kind: 'write', about, file: true }).input(input).output(output);
}
