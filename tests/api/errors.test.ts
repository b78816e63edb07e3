import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { asTrouble } from '../../electron/api/clear.ts';
import type { Context } from '../../electron/api/context.ts';
import { fieldPath, fieldSentences } from '../../electron/api/field-sentences.ts';
import type { LogEntry } from '../../electron/api/log.ts';
import { callProcedure } from '../../electron/api/serve.ts';
import type { Store } from '../../db/store.ts';
import { StoreBusy, storeError } from '../../db/trouble.ts';
import { instantOf } from '../../core/time/read.ts';
import { knock, pageHeaders } from '../knock.ts';
import { temporaryStore } from '../store.ts';
import { contextOf, openDoor } from './open-door.ts';
import { DULUTH } from './world.ts';

const SECRET = 'Ingrid Halvorsen owes 4,200';
/** A store that throws something with a secret in it, as a library of SQL would. */
function brokenStore(store: Store): Store {
  const fail = (): never => {
    throw Object.assign(new Error(`select * from jobs where name = '${SECRET}' in /home/ingrid/store`), {
      name: 'SqliteError',
      code: 'SQLITE_ERROR',
    });
  };
  return { ...store, read: fail, write: fail, snapshots: fail };
}

describe('what went wrong inside', () => {
  test('tells neither the page nor the log what it was about', async () => {
    const open = await openDoor({ context: (store): Context => contextOf(brokenStore(store)) });
    const { address, key } = open.door;
    const answer = await knock({
      address,
      path: '/rpc/setup/get',
      method: 'POST',
      headers: pageHeaders(address, key),
      body: '{"json":{}}',
    });
    await open.close();
    expect(answer.status).toBe(503);
    const { json } = JSON.parse(answer.body) as { json: { code: string; data: { what: string } } };
    const id = /\(id ([0-9a-f]{8})\)/.exec(json.data.what)?.[1];
    expect(json).toMatchObject({ code: 'STORE_TROUBLE', defined: true });
    const [logged] = open.logged;
    expect(logged).toMatchObject({
      event: 'wrong inside',
      id,
      procedure: 'setup.get',
      kind: expect.stringContaining('SqliteError SQLITE_ERROR'),
    });
    for (const text of [answer.body, JSON.stringify(open.logged)]) {
      for (const inside of [SECRET, 'select', '/home/', process.cwd()]) expect(text).not.toContain(inside);
    }
    expect(answer.body).not.toMatch(/\bat .*:\d+/);
  });

  test('an error of the store keeps its sentences, through any wrapping', () => {
    const logged: LogEntry[] = [];
    const full = storeError('disk full');
    const wrapped = new Error('outer', { cause: new Error('inner', { cause: full }) });
    expect(asTrouble(wrapped, (entry) => logged.push(entry), 'jobs.add')).toMatchObject({
      code: 'STORE_TROUBLE',
      data: { what: full.what, kept: full.kept, todo: full.todo },
    });
    expect(asTrouble(new StoreBusy(), (entry) => logged.push(entry), 'jobs.add').code).toBe('STORE_TROUBLE');
    expect(logged).toEqual([]);
  });

  test('a wall time that does not exist names its field', () => {
    const input = { facts: { days: [{ call: '2026-03-07T08:00' }, { call: '2026-03-08T02:30' }] } };
    let thrown: unknown;
    try {
      instantOf('2026-03-08T02:30', 'America/Chicago');
    } catch (error) {
      thrown = error;
    }
    const { code, data } = asTrouble(thrown, () => undefined, 'jobs.add', input);
    expect(code).toBe('BAD_INPUT');
    expect(data.fields).toEqual([{ field: 'facts.days[1].call', sentence: expect.stringContaining('does not exist in America/Chicago') }]);
  });

  test('things that are no errors at all are answered too', () => {
    for (const thrown of [undefined, null, 'text', 7, {}]) expect(asTrouble(thrown, () => undefined, 'x').code).toBe('STORE_TROUBLE');
  });
});

describe('input that was refused', () => {
  const refusal = async (name: string, input: unknown) => {
    const store = await temporaryStore();
    return callProcedure(contextOf(store), name, input).then(
      () => expect.unreachable('it went through'),
      (error: unknown) => error as { code: string; data: { what: string; fields: { field: string; sentence: string }[] } },
    );
  };

  test('names every field in words', async () => {
    const { code, data } = await refusal('jobs.add', {
      facts: { title: ' ', place: { name: 'Duluth' }, days: [{ date: '2026-02-30' }], extra: 1 },
      key: 'no',
    });
    expect(code).toBe('BAD_INPUT');
    const said = Object.fromEntries(data.fields.map(({ field, sentence }) => [field, sentence]));
    expect(said).toMatchObject({
      'facts.title': 'is empty; give it a name',
      'facts.place.zone': 'is missing',
      'facts.days[0].date': 'is not a date; write it as 2026-12-12',
      'facts.days[0].kind': 'is missing',
      'facts.extra': 'is not known here; take it out',
      key: 'is not a deed key',
    });
  });

  test('says of too many days how many there can be', async () => {
    const day = { date: '2026-12-12', kind: 'shoot', call: '2026-12-12T08:00', wrap: '2026-12-12T18:00' };
    const candidate = { place: DULUTH, days: Array.from({ length: 400 }, () => day) };
    const { code, data } = await refusal('fit.check', { candidate });
    expect([code, data.what]).toEqual([
      'BAD_INPUT',
      'candidate.days are more than the 366 days that one job can have; make two jobs of them.',
    ]);
  });

  test('that is no object at all is called the input', async () => {
    for (const input of [null, 5, 'text', [], true]) {
      const { code, data } = await refusal('jobs.list', input);
      expect([code, data.fields]).toEqual(['BAD_INPUT', [{ field: 'input', sentence: 'must be a group of fields' }]]);
    }
  });

  test('a procedure that is not there', async () => {
    for (const name of ['jobs.nothing', '__proto__.toString', 'jobs', 'jobs.list.more', ''])
      expect((await refusal(name, {})).code).toBe('BAD_INPUT');
  });

  test('a key of a thousand characters is cut, and one that cannot be seen is shown', () => {
    expect(fieldPath(['a'.repeat(1000)]).length).toBeLessThan(70);
    expect(fieldPath(['a\u202eb\n'])).toBe('a?b?');
  });

  test('the value itself is never repeated', () => {
    const schema = z.strictObject({
      kind: z.enum(['one', 'two']),
      count: z.int().max(3),
      list: z.array(z.string().max(2)),
      either: z.union([z.literal(1), z.object({ deep: z.string() })]),
    });
    const input = { kind: SECRET, count: 12, list: [SECRET], either: { deep: 5 } };
    const parsed = schema.safeParse(input);
    expect(fieldSentences(parsed.error?.issues ?? [], input)).toEqual([
      { field: 'kind', sentence: 'must be one or two' },
      { field: 'count', sentence: 'is too large; the most is 3' },
      { field: 'list[0]', sentence: 'is too long; the most characters are 2' },
      { field: 'either.deep', sentence: 'must be text' },
    ]);
  });
});
