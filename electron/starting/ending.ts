/**
 * A clean end: what was begun is finished, the store is closed, and the process leaves.
 */
import { framesOf, type Log } from '../api/log.ts';

/**
 * Close on the signals that ask a program to end, and after an error that nothing else caught.
 * A second signal does not interrupt the closing.
 */
export function endWith(log: Log, close: () => Promise<void>): void {
  let ending: Promise<void> | undefined;
  const end = (status: number): void => {
    ending ??= close().then(
      () => process.exit(status),
      () => process.exit(1),
    );
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => end(0));
  for (const event of ['uncaughtException', 'unhandledRejection'] as const) {
    process.on(event, (error: unknown) => {
      log({ event: 'wrong inside', procedure: event, frames: framesOf(error) });
      process.stderr.write(
        'Kitbound met an error that it does not know, and closed. What was saved is kept; kitbound.log in the data folder has the place.\n',
      );
      end(1);
    });
  }
}
