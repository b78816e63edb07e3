import { homedir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { typedPath } from '../../electron/files/typed-path.ts';

test.each([
  ['/films/a b.mov', '/films/a b.mov'],
  ['  "/films/a b.mov" ', '/films/a b.mov'],
  ["'/films/a.mov'", '/films/a.mov'],
  ['file:///films/a%20b.mov', '/films/a b.mov'],
  ['/films/../films/a.mov', '/films/a.mov'],
  ['~/films', join(homedir(), 'films')],
  ['~', homedir()],
])('%j is understood', (typed, path) => expect(typedPath(typed)).toEqual({ path }));

test.each([
  ['', /^is empty/],
  ['""', /^is empty/],
  ['films/a.mov', /^is no whole path/],
  ['file://elsewhere/films/a.mov', /^is no address of a file on this computer/],
])('%j is not, and the sentence says why', (typed, sentence) =>
  expect(typedPath(typed)).toEqual({ trouble: expect.stringMatching(sentence) }),
);
