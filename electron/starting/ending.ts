/**
 * A clean end: what was begun is finished, the store is closed, and the process leaves.
 */

/** Close on the signals that ask a program to end; a second one does not interrupt the closing. */
export function endWith(close: () => Promise<void>): void {
  let ending: Promise<void> | undefined;
  const end = (): void => {
    ending ??= close().then(
      () => process.exit(0),
      () => process.exit(1),
    );
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, end);
}
