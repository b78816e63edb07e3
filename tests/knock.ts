/**
 * Raw requests to a loopback door by node:http, which sends whatever headers it is told to, unlike fetch.
 */
import { request, type OutgoingHttpHeaders } from 'node:http';
import { createConnection } from 'node:net';

export type Answer = { status: number; headers: Record<string, string | string[] | undefined>; body: string };
export type Knock = {
  address: string;
  path: string;
  method?: string;
  headers?: OutgoingHttpHeaders;
  setHost?: boolean;
  body?: string | Buffer;
};

/** Send one request on a connection of its own. */
export function knock({ address, path, method = 'GET', headers = {}, setHost = true, body }: Knock): Promise<Answer> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path, method, headers, setHost, agent: false }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, body: Buffer.concat(chunks).toString('utf8') }),
      );
    });
    sent.on('error', reject);
    sent.end(body);
  });
}

/** The headers of a request that our own page makes. */
export function pageHeaders(address: string, key: string): OutgoingHttpHeaders {
  return { origin: address, 'x-kitbound-key': key, 'content-type': 'application/json', 'sec-fetch-site': 'same-origin' };
}

/** What a door says to bytes written as they are, until it closes the connection. */
export function knockRaw(address: string, bytes: string): Promise<string> {
  return new Promise((resolve) => {
    const heard: string[] = [];
    const socket = createConnection(Number(new URL(address).port), '127.0.0.1', () => socket.write(bytes));
    socket.on('data', (chunk) => heard.push(chunk.toString()));
    socket.on('error', () => resolve(heard.join('')));
    socket.on('close', () => resolve(heard.join('')));
  });
}
