/**
 * What rules found held against weights: stated where they do not speak against it, asked where they plainly do. The weights here are made by hand.
 */
import { expect, test } from 'vitest';
import type { Learned, Model, ModelName } from '../../../core/inquiries/learned/models.ts';
import { readInquiry } from '../../../core/inquiries/read.ts';
import { gazetteer, homeOf, learned, readAt } from './reading.ts';

/** The shipped weights, one model replaced by one that always speaks for one class. */
const always = (name: ModelName, is: string): Learned => {
  const { classes } = learned[name];
  const model: Model = { classes, weights: new Map([['*', classes.map((one) => (one === is ? 20 : 0))]]) };
  return { ...learned, [name]: model };
};
const homePlace = homeOf('duluth');
const read = (text: string, weights: Learned) =>
  readInquiry({
    text,
    receivedAt: '2026-11-25T09:12:00-06:00[America/Chicago]',
    homeZone: homePlace.zone,
    homePlace,
    gazetteer,
    learned: weights,
  });
const ASKED =
  'Hi Kit,\nCan you film our fair in Fargo on 11 and 12 December? Call 9am, wrap 5pm. $600 a day. Saturday is the big one.\nThanks,\nAnn Leverett';

test('the shipped weights let stand what is plain', () => {
  const { fields } = readAt(ASKED);
  expect(fields).toMatchObject({
    start: '2026-12-11',
    end: '2026-12-12',
    role: 'shoot',
    budget: { amount: 600, currency: 'USD', per: 'day' },
  });
  expect(fields.firstCall).toBe('2026-12-11T09:00');
  expect(fields.lastWrap).toBe('2026-12-12T17:00');
});

test('another role is asked beside the one that rules found', () => {
  const { fields, questions, spans } = read(ASKED, { ...learned, role: wordOf('fair', 'photo') });
  expect(fields.role).toBeUndefined();
  expect(questions.find(({ field }) => field === 'role')?.choices.map(({ value }) => value)).toEqual(['shoot', 'photo']);
  expect(spans.filter(({ field }) => field === 'role').map(({ text }) => text)).toContain('fair');
});
/** A model of roles in which one word of the message speaks for one role. */
function wordOf(word: string, is: string): Model {
  const { classes } = learned.role;
  return { classes, weights: new Map([[word, classes.map((one) => (one === is ? 20 : 0))]]) };
}

test('another unit of the offer is asked', () => {
  const { fields, questions } = read(ASKED, always('pay', 'job'));
  expect(fields.budget).toBeUndefined();
  expect(questions.find(({ field }) => field === 'budget')?.choices.map(({ value }) => value)).toEqual([
    { amount: 600, currency: 'USD', per: 'day' },
    { amount: 600, currency: 'USD', per: 'job' },
  ]);
});

test('fewer days are asked', () => {
  const { fields, questions } = read(ASKED, always('part', 'mine'));
  expect(fields.start).toBeUndefined();
  expect(questions.find(({ field }) => field === 'start')?.choices.map(({ value }) => value)).toContain('2026-12-12');
});

test('hours that are hardly a call or a wrap are asked', () => {
  const { fields, questions } = read(ASKED.replace('Call 9am, wrap 5pm', 'Hours 9am to 5pm'), always('time', 'none'));
  expect(fields.firstCall).toBeUndefined();
  expect(fields.lastWrap).toBeUndefined();
  expect(questions.map(({ field }) => field)).toEqual(expect.arrayContaining(['firstCall', 'lastWrap']));
});
