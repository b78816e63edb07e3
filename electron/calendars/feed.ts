/**
 * The feed: the written file, and nothing else, for calendar programs on this computer. Off unless it was asked for. The Host header is
 * judged first, on whatever comes; then there is one path that nobody can guess.
 */
import { timingSafeEqual } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { ourHosts } from '../doors/gate.ts';
import { SAFETY_HEADERS } from '../doors/headers.ts';
import { OUT_FILE } from './write-out.ts';

export type Feed = { close(): Promise<void> };

/** The path of the file on the feed. */
export const feedPath = (key: string): string => `/${key}/${OUT_FILE}`;

/** What a request is refused with, or null where it is the one that is served. */
function feedRefusal(request: Pick<IncomingMessage, 'method' | 'url' | 'rawHeaders'>, port: number, key: string): number | null {
  const hosts = request.rawHeaders.filter((_, index, all) => index % 2 === 1 && all[index - 1]?.toLowerCase() === 'host');
  if (hosts.length !== 1 || !ourHosts(port).includes(hosts[0] ?? '')) return 421;
  if (request.method !== 'GET') return 405;
  return isSame(request.url ?? '', feedPath(key)) ? null : 404;
}

function isSame(given: string, wanted: string): boolean {
  const [a, b] = [Buffer.from(given, 'utf8'), Buffer.from(wanted, 'utf8')];
  return a.length === b.length && timingSafeEqual(a, b);
}

/**
 * Serve the file at `path` on 127.0.0.1. Resolves when it listens.
 * @throws the system's error where the port is taken
 */
export function openFeed({ port, key, path }: { port: number; key: string; path: string }): Promise<Feed> {
  const server = createServer(
    { requireHostHeader: false, headersTimeout: 5_000, requestTimeout: 5_000, connectionsCheckingInterval: 1_000, maxHeaderSize: 8_192 },
    (request, response) => {
      const refused = feedRefusal(request, port, key);
      if (refused !== null) return refuse(request, response, refused);
      void serve(path, response);
    },
  );
  server.maxConnections = 16;
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen({ port, host: '127.0.0.1', exclusive: true }, () => resolve({ close: () => closed(server) }));
  });
}

async function serve(path: string, response: ServerResponse): Promise<void> {
  try {
    const bytes = await readFile(path);
    response.writeHead(200, { ...SAFETY_HEADERS, 'content-type': 'text/calendar; charset=utf-8', 'content-length': bytes.length });
    response.end(bytes);
  } catch {
    response.writeHead(503, { ...SAFETY_HEADERS, 'content-length': 0 });
    response.end();
  }
}

/** Without a word: whoever comes here by a wrong address learns nothing. */
function refuse(request: IncomingMessage, response: ServerResponse, status: number): void {
  response.writeHead(status, { ...SAFETY_HEADERS, ...(status === 405 ? { allow: 'GET' } : {}), connection: 'close', 'content-length': 0 });
  response.end();
  request.resume();
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}
