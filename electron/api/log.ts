/**
 * The local log: what went wrong inside, when, and how long slow calls took. It never holds what a person typed: no input,
 * no message of an error, no address, no key.
 */
import { appendFileSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export type LogEntry = { event: 'wrong inside' | 'slow' | 'started' | 'stopped'; [detail: string]: string | number | undefined };
export type Log = (entry: LogEntry) => void;

/** At this size the log becomes `kitbound.old.log`, and a new one is begun. */
const LARGEST_LOG = 1_000_000;

/** A log that keeps nothing. */
export const noLog: Log = () => undefined;

/** A log of one JSON object a line in the data folder; a log that cannot be written never stops the program. */
export function fileLog(folder: string, now: () => number): Log {
  const file = join(folder, 'kitbound.log');
  return (entry) => {
    try {
      if ((statSync(file, { throwIfNoEntry: false })?.size ?? 0) > LARGEST_LOG) renameSync(file, join(folder, 'kitbound.old.log'));
      const at = Temporal.Instant.fromEpochMilliseconds(now()).toString();
      appendFileSync(file, `${JSON.stringify({ at, ...entry })}\n`, { mode: 0o600 });
    } catch {
      // Nothing better can be done about a log that cannot be written.
    }
  };
}

/** The places in the program that an error went through, without its message, which may quote data, and without folders. */
export function framesOf(error: unknown): string {
  const stack = error instanceof Error ? (error.stack ?? '') : '';
  const frames = stack.split('\n').filter((line) => /^\s+at /.test(line));
  return frames
    .slice(0, 12)
    .map((line) => line.trim().replaceAll('file://', '').replaceAll(PROGRAM, '').replace(OTHER_FOLDER, ''))
    .join(' < ');
}

const PROGRAM = fileURLToPath(new URL('../..', import.meta.url));
const OTHER_FOLDER = /(?:[A-Za-z]:)?[\\/].*[\\/]/;
