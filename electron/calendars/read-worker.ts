/**
 * The thread that reads calendars, so that a large or hostile file keeps nobody waiting. It does one reading and ends.
 */
import { parentPort, workerData } from 'node:worker_threads';
import { readPath, type ReadOrder } from './read-path.ts';

// oxlint-disable-next-line unicorn/require-post-message-target-origin -- it is no window
parentPort?.postMessage(await readPath(workerData as ReadOrder));
