import { describe, expect, test } from 'vitest';
import { TryOn } from '../../core/contract/try-on.ts';
import { checkFit } from '../../core/fit/check.ts';
import { everySituation } from './every.ts';
import { inputOf } from './shape.ts';

test('there are at least forty, each with a name of its own', () => {
  const names = everySituation.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(names.length).toBeGreaterThanOrEqual(40);
});

describe.each(everySituation.map((situation) => [situation.name, situation] as const))('%s', (_, situation) => {
  const result = checkFit(inputOf(situation));
  const called = ({ kind, hardness }: { kind: string; hardness: string }) => `${kind}: ${hardness}`;
  const hard = ({ hardness }: { hardness: string }) => hardness !== 'know';

  test(`is ${situation.answer}`, () => {
    expect(result.findings.filter(hard).map(called)).toEqual(situation.findings.filter(hard).map(called));
    expect(result.findings.map(called)).toEqual(expect.arrayContaining(situation.findings.map(called)));
    expect(result.findings.filter(({ kind }) => situation.silent?.includes(kind))).toEqual([]);
    expect(result.answer).toBe(situation.answer);
    const tryable = result.findings.flatMap(({ lifts }) => lifts.filter(({ tryOn }) => tryOn)).map(({ label }) => label);
    expect(tryable).toEqual(expect.arrayContaining([...(situation.offers ?? [])]));
    // What is offered can be sent through every door; ids are names here.
    for (const { tryOn = {}, label } of result.findings.flatMap(({ lifts }) => lifts)) {
      const wrong = TryOn.safeParse(tryOn).error?.issues.filter((issue) => !('format' in issue && issue.format === 'uuid')) ?? [];
      expect([label, ...wrong]).toEqual([label]);
    }
    for (const expected of situation.findings) {
      const found = result.findings.find(
        (finding) =>
          called(finding) === called(expected) && (!expected.with || finding.concerns.some(({ title }) => title === expected.with)),
      );
      expect(found?.numbers).toMatchObject(expected.numbers ?? {});
      expect(found?.sentence).toContain(expected.says ?? '');
      expect(found?.sentence).toMatch(/\.$/);
    }
  });
});
