/**
 * A reading in a thread of its own, with bounds on its time and its memory.
 */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { ReadOrder, ReadOutcome } from './read-path.ts';
import { tookTooLong, tooMuch } from './sentences.ts';

const SECONDS = 30;
const HEAP_MB = 512;

/** The thread's program: beside the bundle, or beside this source where it was not bundled. */
function program(): string {
  const bundled = join(import.meta.dirname, 'calendar-reader.mjs');
  return existsSync(bundled) ? bundled : join(import.meta.dirname, 'read-worker.ts');
}

/**
 * Read a calendar aside. Bounds of time and memory are told as trouble, as is whatever the disk says.
 * @param seconds longest that it may take
 */
export function readAside(order: ReadOrder, seconds = SECONDS): Promise<ReadOutcome> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(program(), {
      workerData: order,
      // The first is what a hostile file is bounded by; the second is for what is young, which a large honest file makes much of.
      resourceLimits: { maxOldGenerationSizeMb: HEAP_MB, maxYoungGenerationSizeMb: 64 },
    });
    const done = (outcome: ReadOutcome): void => {
      clearTimeout(timer);
      resolve(outcome);
      void worker.terminate();
    };
    const timer = setTimeout(() => done({ trouble: tookTooLong(seconds) }), seconds * 1000);
    worker.once('message', done);
    worker.once('error', (error: Error & { code?: string }) => {
      if (error.code === 'ERR_WORKER_OUT_OF_MEMORY') return done({ trouble: tooMuch() });
      clearTimeout(timer);
      reject(error);
    });
    // A program that is being closed does not wait for a reading.
    worker.unref();
  });
}
