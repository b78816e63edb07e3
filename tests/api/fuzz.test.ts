import { fc, test } from '@fast-check/vitest';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { troubleCodes } from '../../core/contract/base.ts';
import { listProcedures } from '../../electron/doors/described.ts';
import { dump } from '../dump.ts';
import { knock, pageHeaders } from '../knock.ts';
import { openDoor, type OpenDoor } from './open-door.ts';

const SEED = 20_261_125;
const CASES = process.env['KITBOUND_LONG'] ? 10_000 : 200;

let open: OpenDoor;
beforeAll(async () => {
  open = await openDoor();
});
afterAll(() => open.close());

/** Values that have broken programs before, beside whatever JSON there is. */
const nasty = fc.constantFrom<unknown>(
  '__proto__',
  '\u0000',
  '\u202e',
  '2026-02-30',
  '9'.repeat(400),
  1e308,
  -0,
  { ['__proto__']: { admin: true } },
  { constructor: { prototype: {} } },
);
const anything = fc.oneof(fc.jsonValue({ maxDepth: 4 }), fc.dictionary(fc.string(), fc.oneof(fc.jsonValue({ maxDepth: 2 }), nasty)), nasty);
const procedure = fc.constantFrom(...listProcedures());

describe('random input', () => {
  test.prop([procedure, anything], { seed: SEED, numRuns: CASES })(
    'gets a typed error or an answer, and a refusal changes nothing',
    async ({ name }, input) => {
      const { address, key } = open.door;
      const before = stored();
      const path = `/rpc/${name.replace('.', '/')}`;
      const answer = await knock({
        address,
        path,
        method: 'POST',
        headers: pageHeaders(address, key),
        body: JSON.stringify({ json: input }),
      });
      const { json } = JSON.parse(answer.body) as { json: { code: string; data: object } };
      if (answer.status !== 200) {
        expect(troubleCodes).toContain(json.code);
        expect(json.data).toMatchObject({ what: expect.any(String), kept: expect.any(String), todo: expect.any(String) });
        expect(stored()).toEqual(before);
      }
      expect(open.logged.filter((entry) => entry.event === 'wrong inside')).toEqual([]);
      expect(({} as Record<string, unknown>)['admin']).toBeUndefined();
    },
  );

  test.prop([fc.string({ unit: 'binary', maxLength: 300 }), procedure], { seed: SEED, numRuns: CASES })(
    'that is no JSON is refused as bad input',
    async (text, { name }) => {
      const { address, key } = open.door;
      const answer = await knock({
        address,
        path: `/rpc/${name.replace('.', '/')}`,
        method: 'POST',
        headers: pageHeaders(address, key),
        body: `{${text}`,
      });
      expect([200, 400, 422]).toContain(answer.status);
      expect(() => JSON.parse(answer.body) as unknown).not.toThrow();
    },
  );
});

const stored = () => open.store.read((db) => dump(db.$client));
