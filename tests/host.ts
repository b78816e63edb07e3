/**
 * A loopback host of our own for a test: the real program in a child process, on a store of its own.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { builtProgram, ensureBuilt } from './built.ts';

export type TestHost = {
  /** `http://127.0.0.1:PORT` */
  readonly address: string;
  /** The key of this launch. */
  readonly key: string;
  /** The address as it is opened in a browser, with the key in its fragment. */
  readonly page: string;
  /** The data folder. */
  readonly data: string;
  readonly pid: number;
  /** Call a procedure through the loopback door; throws its Trouble as JSON text where it was refused. */
  call(name: string, input?: unknown): Promise<unknown>;
  /** End the program as Ctrl+C does; a store made here is removed. Resolves to the exit status. */
  close(): Promise<number | null>;
};

/**
 * Start the program on a data folder.
 * @param options.data the folder; a new temporary one if not given
 * @param options.args further options of a start
 * @param options.page false where no screen is needed, so that the page is not built first
 */
export async function startHost(options: { data?: string; page?: boolean; args?: readonly string[] } = {}): Promise<TestHost> {
  if (options.page !== false) ensureBuilt('page');
  const data = options.data ?? mkdtempSync(join(tmpdir(), 'kitbound-test-'));
  const child = spawn(process.execPath, [builtProgram('host.mjs'), '--no-open', '--data', data, ...(options.args ?? [])], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, TZ: 'America/Chicago' },
  });
  const ended = new Promise<number | null>((resolve) => child.on('exit', (code) => resolve(code)));
  const said: string[] = [];
  const found = await new Promise<RegExpExecArray>((resolve, reject) => {
    const listen = (chunk: Buffer): void => {
      said.push(chunk.toString());
      const address = /(http:\/\/127\.0\.0\.1:\d+)\/#key=([0-9a-f]{64})/.exec(said.join(''));
      if (address) resolve(address);
    };
    child.stdout.on('data', listen);
    child.stderr.on('data', listen);
    void ended.then((code) => reject(new Error(`the host ended with ${code}: ${said.join('')}`)));
  });
  const [page = '', address = '', key = ''] = found;
  return {
    address,
    key,
    page,
    data,
    pid: child.pid ?? 0,
    call: (name, input = {}) => callOver(address, key, name, input),
    async close() {
      child.kill('SIGINT');
      const code = await ended;
      if (options.data === undefined) rmSync(data, { recursive: true, force: true });
      return code;
    },
  };
}

async function callOver(address: string, key: string, name: string, input: unknown): Promise<unknown> {
  const response = await fetch(`${address}/rpc/${name.replace('.', '/')}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: address, 'x-kitbound-key': key },
    body: JSON.stringify({ json: input }),
  });
  const { json } = (await response.json()) as { json: { data?: unknown } };
  if (!response.ok) throw new Error(JSON.stringify(json.data));
  return json;
}
