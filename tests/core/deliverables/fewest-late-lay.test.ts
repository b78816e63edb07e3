import { expect, test } from 'vitest';
import { laidFewestLate } from '../../../core/deliverables/fewest-late-lay.ts';
import { laid } from '../../../core/deliverables/lay.ts';
import { edit, ground, stage } from './ground.ts';

const late = ({ edits }: ReturnType<typeof laid>) => edits.filter(({ lateDays }) => lateDays > 0).map(({ edit: { id } }) => id);

// Six hours a day from Monday the 7th: twelve hours by Tuesday, eighteen by Wednesday.
const long = edit('long', '2026-12-08', 12);
const short = edit('short', '2026-12-08', 6);
const third = edit('third', '2026-12-09', 6);

test('by date two are late; the longest put last, only that one is', () => {
  const given = ground([long, short, third]);
  expect(late(laid(given)).length).toBeGreaterThan(1);
  const { lying, proven } = laidFewestLate(given);
  expect([late(lying), proven]).toEqual([['long'], true]);
});
test('where nothing is late it is the ordinary plan', () => {
  const given = ground([edit('a', '2026-12-18', 6), edit('b', '2026-12-11', 12)]);
  expect(laidFewestLate(given)).toEqual({ lying: laid(given), proven: true });
});
test('what waits for notes keeps its windows', () => {
  const waiting = edit('waiting', '2026-12-18', 0, {
    stages: [
      stage('cut', 6),
      stage('round', 2, { kind: 'round', name: 'Round 1' }),
      stage('lock', 1, { kind: 'picture lock', name: 'Picture lock' }),
    ],
  });
  const { lying } = laidFewestLate(ground([long, short, waiting]));
  const start = (id: string) => lying.plan.stages.find((each) => each.id === id);
  expect(start('round')?.start ?? 0).toBeGreaterThan((start('cut')?.finish ?? Infinity) + 2 * 86_400_000);
});
