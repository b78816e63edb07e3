/**
 * Who may come in at the loopback door. Pure: headers in, a refusal or null out. The order is the point: the Host header is
 * judged before anything else, because a foreign name that resolves to this computer makes a foreign page "same origin".
 */
import { timingSafeEqual } from 'node:crypto';

export type Refusal = { status: number; what: string; todo: string; allow?: string };
export type Knock = {
  method: string;
  /** The request target as it came. */
  target: string;
  /** Every Host header that came. */
  hosts: readonly string[];
  origin: string | undefined;
  fetchSite: string | undefined;
  contentType: string | undefined;
  key: string | undefined;
};

/** Where the procedures are. */
export const RPC_PREFIX = '/rpc/';
export const KEY_HEADER = 'x-kitbound-key';
const AGAIN = 'Open the address that the program printed.';

/** The exact values that a Host header may have for a server on this port of 127.0.0.1. */
export function ourHosts(port: number): readonly string[] {
  return [`127.0.0.1:${port}`, `localhost:${port}`];
}

/** The path of a request target, without its query; null where the target is not a path of ours. */
export function pathOf(target: string): string | null {
  if (!/^\/(?!\/)[\x21-\x7e]*$/.test(target)) return null;
  return target.split('?', 1)[0] ?? null;
}

/** What is wrong with a request before its body is read, or null. */
export function refusalOf(knock: Knock, hosts: readonly string[], key: Buffer): Refusal | null {
  const [host] = knock.hosts;
  if (knock.hosts.length !== 1 || host === undefined || !hosts.includes(host)) {
    return { status: 421, what: 'This address does not belong to Kitbound.', todo: AGAIN };
  }
  if (!['GET', 'HEAD', 'POST'].includes(knock.method)) return wrongMethod('GET, HEAD, POST');
  const path = pathOf(knock.target);
  if (path === null) return { status: 400, what: 'The address asked for cannot be read.', todo: AGAIN };
  const isRpc = path.startsWith(RPC_PREFIX);
  if (isRpc !== (knock.method === 'POST')) return wrongMethod(isRpc ? 'POST' : 'GET, HEAD');
  return isRpc ? rpcRefusal(knock, host, key) : null;
}

function rpcRefusal(knock: Knock, host: string, key: Buffer): Refusal | null {
  if (!isKey(knock.key, key)) return { status: 401, what: 'The key of this page is not the one of the running program.', todo: AGAIN };
  if (knock.origin !== `http://${host}`) return { status: 403, what: 'The request comes from another page.', todo: AGAIN };
  // A missing Sec-Fetch-Site proves nothing either way; a present one must be ours.
  if (knock.fetchSite !== undefined && !['same-origin', 'none'].includes(knock.fetchSite)) {
    return { status: 403, what: 'The request comes from another site.', todo: AGAIN };
  }
  if (!/^application\/json(\s*;\s*charset=utf-8)?$/i.test(knock.contentType ?? '')) {
    return { status: 415, what: 'The request is not JSON.', todo: 'Send it as application/json.' };
  }
  return null;
}

function isKey(given: string | undefined, key: Buffer): boolean {
  const bytes = Buffer.from(given ?? '', 'utf8');
  const wanted = Buffer.from(key.toString('hex'), 'utf8');
  return bytes.length === wanted.length && timingSafeEqual(bytes, wanted);
}

function wrongMethod(allow: string): Refusal {
  return { status: 405, what: 'This method is not served here.', todo: `Use ${allow.replaceAll(', ', ' or ')}.`, allow };
}
