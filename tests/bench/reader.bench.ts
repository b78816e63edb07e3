/**
 * Reading 200,000 characters that nobody writes, against the second that an answer may take: the first long text of a run, for which
 * the patterns are built, and after it the slowest of many.
 */
import { everyMessageAtOnce, ONE_PIECE_OVER_AND_OVER } from '../core/inquiries/long-texts.ts';
import { readAt } from '../core/inquiries/reading.ts';
import { report, timed, within } from './harness.ts';

const SECOND_MS = 1000;
const ROUNDS = 3;
const against = 'a second, within which an answer is to come';

const atOnce = everyMessageAtOnce();
const first = await timed(() => readAt(atOnce[0]));
const texts = [...atOnce, ...ONE_PIECE_OVER_AND_OVER.map(([, text]) => text)];
const slowest: number[][] = [];
for (let round = 0; round < ROUNDS; round += 1) {
  let most = 0;
  for (const text of texts) most = Math.max(most, await timed(() => readAt(text)));
  slowest.push([most]);
}

report(
  within(SECOND_MS, [[first]], { name: 'a message of 200,000 characters, the first of a run', against }),
  within(SECOND_MS, slowest, { name: `the slowest of ${texts.length} messages of 200,000 characters`, against }),
);
