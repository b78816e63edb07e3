import { isProcedure } from '@orpc/server';
import { expect, test } from 'vitest';
import { contract } from '../../core/contract/index.ts';
import { router } from '../../electron/api/router.ts';
import { describeProcedure, listProcedures } from '../../electron/doors/described.ts';

const names = (subjects: Record<string, object>): string[] =>
  Object.entries(subjects)
    .flatMap(([subject, procedures]) => Object.keys(procedures).map((procedure) => `${subject}.${procedure}`))
    .sort();

test('the router has every procedure of the contract and no other', () => {
  expect(names(router)).toEqual(names(contract));
  for (const procedures of Object.values(router))
    for (const procedure of Object.values(procedures)) expect(isProcedure(procedure)).toBe(true);
});

test('the list and the descriptions have every procedure of the contract', () => {
  expect(
    listProcedures()
      .map(({ name }) => name)
      .sort(),
  ).toEqual(names(contract));
  for (const { name, kind, about } of listProcedures()) {
    expect(['read', 'write']).toContain(kind);
    expect(about).toMatch(/^[A-Z].*\.$/s);
    expect(describeProcedure(name)).toMatchObject({ name, input: { type: 'object' }, output: { type: 'object' } });
  }
});

test('a procedure of no name, of half a name, or of an object is none', () => {
  for (const name of ['', '.', 'jobs', 'jobs.', 'jobs.nothing', 'jobs.list.more', '__proto__.toString', 'jobs.constructor']) {
    expect(describeProcedure(name)).toBeNull();
  }
});
