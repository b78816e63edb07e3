/**
 * Messages are read in a thread of their own, so that no text keeps the screen waiting, however it is made. The thread stays: what it built for one
 * message serves the next.
 */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Reading } from '../../core/contract/inquiries.ts';
import type { ToRead } from '../../core/inquiries/read.ts';
import { refused } from '../api/trouble.ts';
import type { Answer } from './worker.ts';

const SECONDS = 20;
const HEAP_MB = 512;
const SHORTER = 'Paste the part that asks for dates.';
/** The thread is begun so long after the program, milliseconds: the first screen goes before it. */
const AFTER_START = 1500;

export type ReadsAside = {
  /** Read a message; those that are asked for meanwhile wait their turn. Refused where it needs more time or memory than a message may. */
  read: (message: ToRead) => Promise<Reading>;
  /** Have the thread ready before the first message comes. */
  makeReady: () => void;
  close: () => Promise<void>;
};

/** The thread's program: beside the bundle, or beside this source where it was not bundled. */
function program(): string {
  const bundled = join(import.meta.dirname, 'message-reader.mjs');
  return existsSync(bundled) ? bundled : join(import.meta.dirname, 'worker.ts');
}

/** @param seconds longest that one message may take */
export function readsAside(seconds = SECONDS): ReadsAside {
  let kept: Worker | undefined;
  let last: Promise<unknown> = Promise.resolve();

  const begun = (): Worker => {
    const thread = new Worker(program(), { resourceLimits: { maxOldGenerationSizeMb: HEAP_MB } });
    // A program that is being closed does not wait for what the thread reads for itself.
    thread.unref();
    thread.once('error', forget).once('exit', forget);
    function forget(): void {
      if (kept === thread) kept = undefined;
    }
    return thread;
  };
  const thread = (): Worker => (kept ??= begun());

  const one = (message: ToRead): Promise<Reading> =>
    new Promise((resolve, reject) => {
      const reader = thread();
      const ended = (): void => {
        clearTimeout(timer);
        reader.off('message', answered).off('error', failed).off('exit', gone).unref();
      };
      const answered = (answer: Answer): void => {
        ended();
        if ('reading' in answer) resolve(answer.reading);
        else reject(answer.error);
      };
      const failed = (error: Error & { code?: string }): void => {
        ended();
        reject(
          error.code === 'ERR_WORKER_OUT_OF_MEMORY' ? refused('Reading this message needed more memory than it may take.', SHORTER) : error,
        );
      };
      const gone = (): void => failed(refused('Reading this message was broken off.', 'Paste it again.'));
      const timer = setTimeout(() => {
        kept = undefined;
        void reader.terminate();
        failed(refused(`Reading this message took more than ${seconds} seconds and was stopped.`, SHORTER));
      }, seconds * 1000);
      reader.on('message', answered).on('error', failed).on('exit', gone).ref();
      // oxlint-disable-next-line unicorn/require-post-message-target-origin -- it is no window
      reader.postMessage(message);
    });

  return {
    read: (message) => {
      const next = last.then(() => one(message));
      last = next.catch(() => undefined);
      return next;
    },
    makeReady: () => void setTimeout(thread, AFTER_START).unref(),
    close: async () => void (await kept?.terminate()),
  };
}
