/**
 * The command line as a person uses it, arguments in and JSON with an exit status out: each call opens the data folder anew, at the time
 * that the test says it is. That a program of its own does the same is tried elsewhere; here it would only be slow.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { vi } from 'vitest';
import type { Trouble } from '../../../core/contract/base.ts';
import { commandLine } from '../../../electron/doors/command-line.ts';
import { temporaryFolder } from '../../store.ts';

export type Door = {
  /** From here on the clock of the computer stands at this instant. */
  at: (instant: string) => void;
  /** Call what must work; what it answers is taken to be what the test expects. */
  call: <T>(name: string, input?: unknown) => Promise<T>;
  /** Call what must be refused. */
  refused: (name: string, input: unknown) => Promise<Trouble & { code: string }>;
  /** The bytes of a kept paper. */
  paper: (id: string) => Promise<Uint8Array>;
};

/** A door to a new, empty data folder. */
export function commandDoor(instant: string): Door {
  const folder = temporaryFolder();
  const file = join(folder, 'input.json');
  let clock = instant;
  const run = async (name: string, input: unknown): Promise<{ status: number; out: unknown; err: string }> => {
    writeFileSync(file, JSON.stringify(input));
    const written: string[] = [];
    const said: string[] = [];
    const spies = [
      vi.spyOn(Date, 'now').mockReturnValue(Temporal.Instant.from(clock).epochMilliseconds),
      vi.spyOn(process.stdout, 'write').mockImplementation((text, ...more) => {
        written.push(String(text));
        for (const done of more) if (typeof done === 'function') done();
        return true;
      }),
      vi.spyOn(process.stderr, 'write').mockImplementation((text) => said.push(String(text)) > 0),
    ];
    try {
      const status = await commandLine([name, file, '--data', join(folder, 'data')]);
      return { status, out: JSON.parse(written.join('')), err: said.join('') };
    } finally {
      for (const spy of spies) spy.mockRestore();
    }
  };
  const call = async <T>(name: string, input: unknown = {}): Promise<T> => {
    const { status, out, err } = await run(name, input);
    if (status !== 0) throw new Error(`${name} ended with ${status}: ${err}\n${JSON.stringify(out)}`);
    return out as T;
  };
  return {
    at: (later) => {
      clock = later;
    },
    call,
    refused: async (name, input) => {
      const { status, out } = await run(name, input);
      if (status === 0) throw new Error(`${name} was not refused`);
      return out as Trouble & { code: string };
    },
    paper: async (id) => Uint8Array.from(Buffer.from((await call<{ base64: string }>('papers.read', { id })).base64, 'base64')),
  };
}
