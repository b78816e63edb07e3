/**
 * The thread that reads messages. The patterns that it reads with are built at their first use, which takes a second or two; so it reads some
 * messages for itself as soon as it begins, whatever is asked of it coming first.
 */
import { readFileSync } from 'node:fs';
import { parentPort, receiveMessageOnPort } from 'node:worker_threads';
import type { Reading } from '../../core/contract/inquiries.ts';
import type { ToRead } from '../../core/inquiries/read.ts';
import { readsHere } from './here.ts';

/** What the thread answers a message with. */
export type Answer = { reading: Reading } | { error: unknown };

const MESSAGES = new URL('../../assets/reader/first-messages.txt', import.meta.url);
const HOME = { receivedAt: '2028-01-11T09:30:00-06:00[America/Chicago]', homeZone: 'America/Chicago' };

const read = readsHere();
const answerTo = (message: ToRead): Answer => {
  try {
    return { reading: read(message) };
  } catch (error) {
    return { error };
  }
};

const port = parentPort;
if (port) {
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- it is no window
  const answer = (message: ToRead): void => port.postMessage(answerTo(message));
  for (const text of readFileSync(MESSAGES, 'utf8').split(/^=+\n/m))
    // The engine builds a pattern anew for a text with characters beyond Latin-1, and in its quick form when it is used again.
    for (const form of [text, text, `${text} …`, `${text} …`]) {
      for (let asked = receiveMessageOnPort(port); asked; asked = receiveMessageOnPort(port)) answer(asked.message as ToRead);
      read({ ...HOME, text: form });
    }
  port.on('message', answer);
}
