/**
 * The loopback door: the page and its procedures on 127.0.0.1, for this computer's browser and nobody else.
 */
import { randomBytes } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import type { Trouble } from '../../core/contract/base.ts';
import { asTrouble, noSuchProcedure } from '../api/clear.ts';
import type { Context } from '../api/context.ts';
import type { Log } from '../api/log.ts';
import { loopbackHandler } from '../api/serve.ts';
import { LARGEST_BODY, LARGEST_FILE_BODY, readBody } from './body.ts';
import { takesFile } from './described.ts';
import { KEY_HEADER, type Knock, ourHosts, pathOf, type Refusal, refusalOf, RPC_PREFIX } from './gate.ts';
import { SAFETY_HEADERS } from './headers.ts';
import type { PageFiles } from './page-files.ts';

export type Loopback = {
  /** `http://127.0.0.1:PORT` */
  readonly address: string;
  /** The key of this launch, hex. It goes to the page in the address's fragment and comes back in a header. */
  readonly key: string;
  /** Finish what was begun, then stop listening. */
  close(): Promise<void>;
};
export type LoopbackOptions = {
  context: Context;
  pages: PageFiles;
  log: Log;
  /** 0: a port that the system gives. */
  port: number;
  /** How long a client may take for its headers and for the whole request, milliseconds. */
  headersMs?: number;
  requestMs?: number;
};

/** Serve on 127.0.0.1. Resolves when it listens. */
export async function openLoopback(options: LoopbackOptions): Promise<Loopback> {
  const key = randomBytes(32);
  const handler = loopbackHandler(options.log);
  let hosts: readonly string[] = [];

  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const refusal = refusalOf(knockOf(request), hosts, key);
    if (refusal) return refuse(request, response, refusal);
    const path = pathOf(request.url ?? '') ?? '/';
    if (!path.startsWith(RPC_PREFIX)) return sendPage(response, options.pages, path);
    const limit = limitOf(path);
    const body = await readBody(request, limit);
    if (body === null) return refuse(request, response, tooLarge(limit));
    const url = new URL(path, 'http://127.0.0.1');
    const result = await handler.handle(
      { method: 'POST', url, headers: {}, body: () => Promise.resolve(body === '' ? undefined : JSON.parse(body)), signal: undefined },
      { prefix: '/rpc', context: options.context },
    );
    if (result.matched) return send(response, result.response.status, result.response.body);
    const missing = noSuchProcedure(procedureAt(path));
    send(response, missing.status, { json: missing.toJSON() });
  };

  const server = createServer(
    {
      // A missing Host header is refused by the gate, with the headers of every other answer.
      requireHostHeader: false,
      headersTimeout: options.headersMs ?? 10_000,
      requestTimeout: options.requestMs ?? 30_000,
      connectionsCheckingInterval: 1000,
      maxHeaderSize: 16_384,
    },
    (request, response) => {
      answer(request, response).catch((error: unknown) => {
        const trouble = asTrouble(error, options.log, 'loopback');
        if (response.headersSent) response.destroy();
        else send(response, trouble.status, { json: trouble.toJSON() });
      });
    },
  );
  server.on('checkContinue', (request: IncomingMessage, response: ServerResponse) => {
    const limit = limitOf(pathOf(request.url ?? '') ?? '/');
    if (!refusalOf(knockOf(request), hosts, key) && Number(request.headers['content-length'] ?? 0) <= limit) response.writeContinue();
    server.emit('request', request, response);
  });
  server.on('checkExpectation', (request: IncomingMessage, response: ServerResponse) => server.emit('request', request, response));
  server.on('clientError', cutOff);

  const port = await listen(server, options.port);
  hosts = ourHosts(port);
  return {
    address: `http://127.0.0.1:${port}`,
    key: key.toString('hex'),
    close: () => closeServer(server),
  };
}

const procedureAt = (path: string): string => path.slice(RPC_PREFIX.length).replaceAll('/', '.');
const limitOf = (path: string): number => (takesFile(procedureAt(path)) ? LARGEST_FILE_BODY : LARGEST_BODY);
const tooLarge = (limit: number): Refusal => ({
  status: 413,
  what: `The request is larger than ${limit / 1_000_000} MB.`,
  todo: limit === LARGEST_FILE_BODY ? 'Make the picture smaller, or save it as a smaller PDF: 8 MB are kept.' : 'Send less at once.',
});

function knockOf(request: IncomingMessage): Knock {
  const hosts = request.rawHeaders.filter((_, index, all) => index % 2 === 1 && all[index - 1]?.toLowerCase() === 'host');
  const one = (name: string): string | undefined => {
    const value = request.headers[name];
    return Array.isArray(value) ? value.join(', ') : value;
  };
  return {
    method: request.method ?? '',
    target: request.url ?? '',
    hosts,
    origin: one('origin'),
    fetchSite: one('sec-fetch-site'),
    contentType: one('content-type'),
    key: one(KEY_HEADER),
  };
}

function sendPage(response: ServerResponse, pages: PageFiles, path: string): void {
  const page = pages.find(path);
  if (!page)
    return send(
      response,
      404,
      refusalBody({ status: 404, what: 'There is nothing at this address.', todo: 'Open the address that the program printed.' }),
    );
  response.writeHead(200, { ...SAFETY_HEADERS, 'content-type': page.type, 'content-length': page.bytes.length });
  response.end(page.bytes);
}

/** A refusal as the page's client reads errors of procedures, so that the screen can show its sentences. */
function refusalBody({ status, what, todo }: Refusal): object {
  const data: Trouble = { what, kept: 'Nothing was changed.', todo };
  return { json: { defined: true, code: status === 413 || status === 415 ? 'BAD_INPUT' : 'REFUSED', status, message: what, data } };
}

function refuse(request: IncomingMessage, response: ServerResponse, refusal: Refusal): void {
  // The rest of a refused request is not worth reading.
  response.setHeader('connection', 'close');
  if (refusal.allow) response.setHeader('allow', refusal.allow);
  send(response, refusal.status, refusalBody(refusal));
  request.resume();
}

function send(response: ServerResponse, status: number, body: unknown): void {
  const bytes = Buffer.from(JSON.stringify(body ?? {}), 'utf8');
  response.writeHead(status, { ...SAFETY_HEADERS, 'content-type': 'application/json; charset=utf-8', 'content-length': bytes.length });
  response.end(response.req.method === 'HEAD' ? undefined : bytes);
}

/** A request that could not be read as HTTP, or that took too long. */
function cutOff(error: NodeJS.ErrnoException, socket: Socket): void {
  if (!socket.writable || error.code === 'ECONNRESET') return void socket.destroy();
  const late = error.code === 'ERR_HTTP_REQUEST_TIMEOUT';
  const status = late ? '408 Request Timeout' : '400 Bad Request';
  const what = late ? 'The request took too long.' : 'The request cannot be read.';
  const body = JSON.stringify(refusalBody({ status: late ? 408 : 400, what, todo: 'Try again.' }));
  const headers = Object.entries({ ...SAFETY_HEADERS, 'content-type': 'application/json; charset=utf-8', connection: 'close' });
  const head = headers.map(([name, value]) => `${name}: ${value}`).join('\r\n');
  socket.end(`HTTP/1.1 ${status}\r\n${head}\r\ncontent-length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen({ port, host: '127.0.0.1', exclusive: true }, () => resolve((server.address() as AddressInfo).port));
  });
}

function closeServer(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeIdleConnections();
    // A page that keeps asking must not keep the program open.
    setTimeout(() => server.closeAllConnections(), 2000).unref();
  });
}
