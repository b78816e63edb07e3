import { expect, test } from 'vitest';
import { ranksInWords, standingInWords } from '../../../core/words/ranks.ts';

const clinic = { jobId: 'a', title: 'Clinic' };
const fair = { jobId: 'b', title: 'Fair' };
const on = (date: string, rank: number, before = [clinic].slice(1), behind = [clinic].slice(1)) => ({ date, rank, before, behind });

test('dates of one rank are said together, the better rank first', () => {
  expect(ranksInWords([on('2026-12-12', 2), on('2026-12-13', 1), on('2026-12-14', 1)])).toBe(
    'first pencil on Sun 13 and Mon 14 December 2026 and second pencil on Sat 12 December 2026',
  );
  expect(ranksInWords([on('2026-12-12', 11)])).toBe('number 11 pencil on Sat 12 December 2026');
});

test('who stands before and behind is said once, and nothing of a pencil that is alone', () => {
  expect(standingInWords([on('2026-12-12', 1)])).toBe('');
  expect(standingInWords([on('2026-12-12', 2, [clinic], [fair]), on('2026-12-13', 2, [clinic])])).toBe(
    'Second pencil on Sat 12 and Sun 13 December 2026; behind Clinic; Fair waits behind it.',
  );
});
