/**
 * Reading a request's body within a limit. What is over the limit is read and thrown away, so that the sender hears the answer.
 */
import type { IncomingMessage } from 'node:http';

/** The largest body that is read, bytes. */
export const LARGEST_BODY = 2_000_000;
/** The same for a procedure that takes a file: what 8 MB come to in base64, and room for JSON. */
export const LARGEST_FILE_BODY = 12_000_000;
/** The longest that a too large body is listened to, milliseconds. */
const DRAIN_MS = 2000;

/** The body as text, or null when it is too large. Rejects when the sender goes away. */
export function readBody(request: IncomingMessage, limit = LARGEST_BODY): Promise<string | null> {
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    let size = 0;
    let drain: NodeJS.Timeout | undefined;
    const tooLarge = () => {
      clearTimeout(drain);
      resolve(null);
    };
    request.on('data', (chunk: Buffer) => {
      size += chunk.length;
      if (size <= limit) chunks.push(chunk);
      else drain ??= setTimeout(tooLarge, DRAIN_MS);
    });
    request.on('end', () => (size > limit ? tooLarge() : resolve(Buffer.concat(chunks).toString('utf8'))));
    request.on('error', reject);
    request.on('aborted', () => reject(new Error('the sender went away')));
  });
}
