/**
 * What rules found held against weights: stated where they do not speak against it, asked where they plainly do. The weights here are made by hand.
 */
import { describe, expect, test } from 'vitest';
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
  const { fields, questions, spans } = read(ASKED, { ...learned, role: wordOf('fair', 'edit only') });
  expect(fields.role).toBeUndefined();
  expect(questions.find(({ field }) => field === 'role')?.choices.map(({ value }) => value)).toEqual(['shoot', 'edit only']);
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

describe('hours with the weights beside the rules', () => {
  const QUIET =
    'Hi Kit,\nCan you film our fair in Fargo on 11 December? The bell rings at 9:15am and the lamps go out at 4:45pm. $600.\nAnn';
  /** Weights of hours by the words right before them. */
  const hours = (...words: [string, string][]): Learned => {
    const { classes } = learned.time;
    const weigh = (is: string): number[] => classes.map((one) => (one === is ? 20 : 0));
    return {
      ...learned,
      time: {
        classes,
        weights: new Map([['*', weigh('none').map((one) => one / 4)], ...words.map(([word, is]) => [word, weigh(is)] as const)]),
      },
    };
  };
  test('they say what an hour is where no rule does', () => {
    const { fields } = read(QUIET, hours(['b1:ring', 'call'], ['b1:out', 'wrap']));
    expect(fields.firstCall).toBe('2026-12-11T09:15');
    expect(fields.lastWrap).toBe('2026-12-11T16:45');
    expect(read(QUIET, hours()).fields.firstCall).toBeUndefined();
  });
  test('where they are sure an end that rules found is none, and what they found a call is an end', () => {
    const text = QUIET.replace('The bell rings', 'Call').replace('the lamps go out', 'we wrap');
    expect(read(text, hours(['b1:call', 'call'], ['b1:wrap', 'wrap'])).fields.lastWrap).toBe('2026-12-11T16:45');
    expect(read(text, hours(['b1:call', 'call'])).fields.lastWrap).toBeUndefined();
    const turned = read(text.replace('we wrap', 'call'), hours(['earliest:true', 'call'], ['latest:true', 'wrap']));
    expect(turned.fields.lastWrap).toBe('2026-12-11T16:45');
  });
  test('a number that no rule makes an hour is one where they say so', () => {
    const text = QUIET.replace('at 4:45pm', 'around 5');
    expect(read(text, hours(['b1:ring', 'call'])).fields.lastWrap).toBeUndefined();
    const { fields, spans } = read(text, hours(['b1:ring', 'call'], ['number', 'none'], ['b0:around', 'wrap'], ['b1:out', 'wrap']));
    expect(fields.lastWrap).toBe('2026-12-11T17:00');
    expect(spans.filter(({ field }) => field === 'lastWrap').map(({ text: words }) => words)).toEqual(['5']);
  });
});
