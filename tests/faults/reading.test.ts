/**
 * Messages are read aside: nobody is kept waiting, a message that takes too long is refused, and the next one is read all the same.
 */
import { expect, onTestFinished, test } from 'vitest';
import { readsAside } from '../../electron/reading/aside.ts';
import { readsHere } from '../../electron/reading/here.ts';
import { everyMessageAtOnce } from '../core/inquiries/long-texts.ts';
import { refusal } from '../api/world.ts';

const AT = { receivedAt: '2026-11-25T09:12:00-06:00[America/Chicago]', homeZone: 'America/Chicago' };
const PLAIN = { ...AT, text: 'Could you film our gala in Fargo on Saturday 12 December, 2pm to 9pm?' };
const [long] = everyMessageAtOnce();

function aside(seconds?: number) {
  const reader = readsAside(seconds);
  onTestFinished(reader.close);
  return reader;
}

test('what is read aside is what is read here, in the order in which it is asked for', async () => {
  const { read } = aside();
  const here = readsHere();
  const texts = [PLAIN, { ...AT, text: 'Thanks for last week!' }, { ...PLAIN, chosenDays: ['2026-12-19'] }];
  expect(await Promise.all(texts.map(read))).toEqual(texts.map(here));
});

test('other work goes on while 200,000 characters are read', async () => {
  const { read } = aside();
  let beats = 0;
  const beat = setInterval(() => (beats += 1), 5);
  await read({ ...AT, text: long });
  clearInterval(beat);
  expect(beats).toBeGreaterThan(10);
});

test('a message that takes longer than it may is refused in a sentence, and the one behind it has a thread of its own', async () => {
  const { read } = aside(0.001);
  const stopped = {
    code: 'REFUSED',
    what: 'Reading this message took more than 0.001 seconds and was stopped.',
    kept: 'Nothing was changed.',
    todo: 'Paste the part that asks for dates.',
  };
  expect(await Promise.all([refusal(read({ ...AT, text: long })), refusal(read(PLAIN))])).toMatchObject([stopped, stopped]);
});

test('what cannot be meant is told as it is here, and the thread stays', async () => {
  const { read } = aside();
  const wrong = { ...PLAIN, receivedAt: 'yesterday' };
  await expect(read(wrong)).rejects.toThrow(RangeError);
  expect((await read(PLAIN)).isInquiry).toBe(true);
});

test('what is being read when the program is closed is refused at once', async () => {
  const { read, close } = aside();
  await read(PLAIN);
  const broken = refusal(read({ ...AT, text: long }));
  // The order is on its way to the thread when the thread is ended.
  await new Promise((resolve) => setImmediate(resolve));
  await close();
  expect(await broken).toMatchObject({ code: 'REFUSED', what: 'Reading this message was broken off.', kept: 'Nothing was changed.' });
});
