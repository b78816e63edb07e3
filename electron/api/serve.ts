/**
 * The one registration point: every door serves the same router through the same interceptor, which turns whatever is thrown
 * into one of the contract's errors and notes slow calls.
 */
import { createProcedureClient, isProcedure, ORPCError } from '@orpc/server';
import { RPCHandler as PortHandler } from '@orpc/server/message-port';
import { StandardRPCHandler } from '@orpc/server/standard';
import { asTrouble, noSuchProcedure } from './clear.ts';
import type { Context } from './context.ts';
import { type Log, noLog } from './log.ts';
import { router } from './router.ts';
import { badInput } from './trouble.ts';

/** A call that takes longer than this is noted, milliseconds. */
const SLOW_MS = 200;

type Around = { path: readonly string[]; input: unknown; next: () => Promise<unknown> };

function watched(log: Log) {
  return async ({ path, input, next }: Around): Promise<unknown> => {
    const began = performance.now();
    const procedure = path.join('.');
    try {
      return await next();
    } catch (error) {
      throw asTrouble(error, log, procedure, input);
    } finally {
      const took = Math.round(performance.now() - began);
      if (took > SLOW_MS) log({ event: 'slow', procedure, ms: took });
    }
  };
}

/** What a handler of a transport is made with: errors of the procedures, and those of reading the request itself. */
function handlerOptions(log: Log) {
  return {
    clientInterceptors: [watched(log)],
    interceptors: [
      async <T>({ next }: { next: () => Promise<T> }): Promise<T> => {
        try {
          return await next();
        } catch (error) {
          // Procedures throw nothing else; what remains is a request that could not be read.
          throw error instanceof ORPCError ? error : badInput([{ field: 'input', sentence: 'could not be read; it must be JSON' }]);
        }
      },
    ],
  };
}

/**
 * Call one procedure by its name, as the command line and the inner socket do.
 * @param name `subject.procedure`, as in `jobs.list`
 * @throws one of the contract's errors, its data being a `Trouble`
 */
export async function callProcedure(context: Context, name: string, input: unknown, log: Log = noLog): Promise<unknown> {
  const procedure = procedureNamed(name);
  if (!procedure) throw noSuchProcedure(name);
  const call = createProcedureClient(procedure, { context, path: name.split('.'), interceptors: [watched(log)] });
  return call(input);
}

/** The handler of the loopback door: a request that was let in and whose body was read, in; a response, out. */
export function loopbackHandler(log: Log): StandardRPCHandler<Context> {
  return new StandardRPCHandler(router, handlerOptions(log));
}

/** The handler of the window's message port. */
export function portHandler(log: Log): PortHandler<Context> {
  return new PortHandler(router, handlerOptions(log));
}

function procedureNamed(name: string) {
  const [subject = '', procedure = '', more] = name.split('.');
  const ofSubject = more === undefined ? own(router, subject) : undefined;
  const found = own(ofSubject, procedure);
  return isProcedure(found) ? found : null;
}

/** A property of an object itself, never of what it inherits from. */
function own(object: unknown, key: string): unknown {
  return typeof object === 'object' && object !== null && Object.hasOwn(object, key) ? Reflect.get(object, key) : undefined;
}
