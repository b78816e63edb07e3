/**
 * The way in for other processes of the same user on this computer: while the program holds the store, the command line and a
 * second start hand their call to it here. One JSON line in, one JSON line out.
 */
import { randomBytes, timingSafeEqual } from 'node:crypto';
import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { createConnection, createServer, type Server, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Announcement, readAnnouncement } from '../../db/lock.ts';
import { LARGEST_FILE_BODY } from './body.ts';

/** What is asked of the program that runs: a call of a procedure, or to show itself. */
export type Ask = { ask: 'call'; name: string; input: unknown } | { ask: 'show' };
export type Answerer = (ask: Ask) => Promise<unknown>;
export type InnerSocket = { readonly announcement: Announcement; close(): Promise<void> };

/** A line longer than this is not listened to, bytes: the loopback door's limit for a file and room for JSON. */
const LONGEST_LINE = LARGEST_FILE_BODY + 2_000_000;
/** A socket's path may not be longer than this on every system (sockaddr_un holds 104 bytes on macOS, 108 on Linux). */
const LONGEST_PATH = 100;
const isWindows = process.platform === 'win32';

/** Listen for other processes; what to leave word of is in the result. */
export async function openInnerSocket(folder: string, answer: Answerer): Promise<InnerSocket> {
  const path = socketPath(folder);
  const token = randomBytes(32).toString('hex');
  const server = createServer((socket) => serve(socket, token, answer));
  // Whoever made this file held the store before us and is gone.
  if (!isWindows) rmSync(path, { force: true });
  await new Promise<void>((resolve, reject) => server.once('error', reject).listen(path, resolve));
  if (!isWindows) chmodSync(path, 0o600);
  return { announcement: { pid: process.pid, socket: path, token }, close: () => closeServer(server) };
}

/**
 * Ask the program that holds a data folder.
 * @returns its answer, or null when nobody answers there
 */
export async function askRunning(folder: string, ask: Ask): Promise<{ answer: unknown } | null> {
  const word = readAnnouncement(folder);
  if (!word || typeof word['socket'] !== 'string' || typeof word['token'] !== 'string') return null;
  const line = await exchange(word['socket'], JSON.stringify({ token: word['token'], ...ask }));
  return line === null ? null : { answer: JSON.parse(line) };
}

/** Beside the store where that fits; else at a name that nobody can have taken before us. */
function socketPath(folder: string): string {
  if (isWindows) return `\\\\.\\pipe\\kitbound-${randomBytes(16).toString('hex')}`;
  const beside = join(folder, 'running.sock');
  return Buffer.byteLength(beside) <= LONGEST_PATH ? beside : join(mkdtempSync(join(tmpdir(), 'kitbound-')), 's');
}

function serve(socket: Socket, token: string, answer: Answerer): void {
  socket.on('error', () => socket.destroy());
  void readLine(socket).then(async (line) => {
    const asked = line === null ? null : askOf(line, token);
    if (asked) socket.end(`${JSON.stringify((await answer(asked)) ?? null)}\n`);
    else socket.destroy();
    return asked;
  });
}

function askOf(line: string, token: string): Ask | null {
  try {
    const { token: given, ...ask } = JSON.parse(line) as { token?: unknown } & Ask;
    return typeof given === 'string' && given.length === token.length && timingSafeEqual(Buffer.from(given), Buffer.from(token))
      ? ask
      : null;
  } catch {
    return null;
  }
}

function exchange(path: string, line: string): Promise<string | null> {
  return new Promise((resolve) => {
    const socket = createConnection(path, () => socket.write(`${line}\n`));
    socket.on('error', () => resolve(null));
    void readLine(socket, Number.POSITIVE_INFINITY).then(resolve);
  });
}

/** The first line that comes, or null when the other side goes away before it is whole, or never ends it. */
function readLine(socket: Socket, longest = LONGEST_LINE): Promise<string | null> {
  return new Promise((resolve) => {
    const chunks: Buffer[] = [];
    let size = 0;
    socket.on('data', (chunk: Buffer) => {
      size += chunk.length;
      if (size > longest) return resolve(null);
      const end = chunk.indexOf(10);
      chunks.push(end < 0 ? chunk : chunk.subarray(0, end));
      if (end >= 0) resolve(Buffer.concat(chunks).toString('utf8'));
    });
    socket.on('close', () => resolve(null));
  });
}

function closeServer(server: Server): Promise<void> {
  return new Promise((resolve) => void server.close(() => resolve()));
}
