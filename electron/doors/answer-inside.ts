/**
 * What the program that holds the store answers to other processes at its inner socket.
 */
import { asTrouble } from '../api/clear.ts';
import type { Trouble, TroubleCode } from '../../core/contract/base.ts';
import type { Context } from '../api/context.ts';
import type { Log } from '../api/log.ts';
import { callProcedure } from '../api/serve.ts';
import type { Answerer } from './inner-socket.ts';

/** The outcome of a call as it goes through a pipe. */
export type Outcome = { done: true; output: unknown } | { done: false; trouble: { code: TroubleCode } & Trouble };

/** Call a procedure and pack whatever comes of it. */
export async function outcomeOf(context: Context, name: string, input: unknown, log: Log): Promise<Outcome> {
  try {
    return { done: true, output: await callProcedure(context, name, input, log) };
  } catch (error) {
    const { code, data } = asTrouble(error, log, name, input);
    return { done: false, trouble: { code, ...data } };
  }
}

/**
 * The answerer of a program that holds the store.
 * @param show bring the program before the person's eyes; what it returns is told to the second start
 */
export function answererOf(context: Context, log: Log, show: () => unknown): Answerer {
  return async (asked) => (asked.ask === 'call' ? outcomeOf(context, asked.name, asked.input, log) : show());
}
