/**
 * Reading 200,000 characters that nobody writes, against the second that an answer may take: as the first message of a run, by the thread
 * that made itself ready meanwhile; the same where it could not; and after that the slowest of many.
 */
import { setTimeout as wait } from 'node:timers/promises';
import { readsAside } from '../../electron/reading/aside.ts';
import { everyMessageAtOnce, ONE_PIECE_OVER_AND_OVER } from '../core/inquiries/long-texts.ts';
import { readAt } from '../core/inquiries/reading.ts';
import { report, timed, within } from './harness.ts';

const SECOND_MS = 1000;
const ROUNDS = 3;
const against = 'a second, within which an answer is to come';

const atOnce = everyMessageAtOnce();
const firstOfARun = async (secondsOpen: number): Promise<number> => {
  const { read, makeReady, close } = readsAside();
  makeReady();
  await wait(secondsOpen * 1000);
  const took = await timed(() =>
    read({ text: atOnce[0], receivedAt: '2026-11-25T09:12:00-06:00[America/Chicago]', homeZone: 'America/Chicago' }),
  );
  await close();
  return took;
};
const [atOnceAsked, askedLater] = [await firstOfARun(0), await firstOfARun(10)];
readAt(atOnce[0]);
const texts = [...atOnce, ...ONE_PIECE_OVER_AND_OVER.map(([, text]) => text)];
const slowest: number[][] = [];
for (let round = 0; round < ROUNDS; round += 1) {
  let most = 0;
  for (const text of texts) most = Math.max(most, await timed(() => readAt(text)));
  slowest.push([most]);
}

report(
  within(SECOND_MS, [[askedLater]], { name: 'a message of 200,000 characters, the first of a run, ten seconds after its start', against }),
  within(SECOND_MS, [[atOnceAsked]], { name: 'the same, asked for together with the start', against }),
  within(SECOND_MS, slowest, { name: `the slowest of ${texts.length} messages of 200,000 characters`, against }),
);
