/**
 * Answers that are asked for without a plain "by": before an end, on a feast, in a piece of a sentence, with a loose hour; and days that are for something else.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const WEDNESDAY = '2027-02-03T09:12:00-06:00[America/Chicago]';
const reply = (words: string): string =>
  facts(`Could you film our gala in Fargo on Saturday 16 October, 2pm to 9pm? ${words}\n\nThanks, Robin`, WEDNESDAY).replyBy ?? 'none';

describe('to the day', () => {
  test.each([
    ['A word from you until Feb. 22 would be kind.', '2027-02-22'],
    ['My answer date is not fixed, but your reply I need until 22 February.', '2027-02-22'],
    ['Acceptance may be sent up to 20.02.2027.', '2027-02-20'],
    ['Still need your yes. Friday latest.', '2027-02-05'],
    ['The invitations are printed on 23 February, so until the 20th please.', '2027-02-20'],
    ['Ring her, not me. By the 15th if you would.', '2027-02-15'],
    ['Please tell us before the end of February.', '2027-02-28'],
    ['Vous pouvez me dire d’ici la fin du mois ?'.replace('’', "'"), '2027-02-28'],
    ['Mi dia una risposta entro fine marzo.', '2027-03-31'],
    ['Bitte sag bis Ende Februar Bescheid.', '2027-02-28'],
    ['May I have a yes by month-end?', '2027-02-28'],
    ['Your answer should reach us by the close of September.', '2027-09-30'],
    ["Can you let me have your thoughts by St David's Day?", '2027-03-01'],
    ['Holler back by Labor Day if you can.', '2027-09-06'],
    ['Tell me before the 15th of February or, better: on the 14th.', '2027-02-14'],
    ['Can I have your answer before we close on 15 February, so on the 14th latest?', '2027-02-14'],
    ['The board sits on the 20th so tell me by then.', '2027-02-20'],
    ['The board meets on 22 February, I wish to have your answer on that day.', '2027-02-22'],
    ['They want it settled on Friday.', '2027-02-05'],
    ['lmk thurs', '2027-02-04'],
    ['ring back sat latest', '2027-02-06'],
    ['The job is yours till Friday.', '2027-02-05'],
    ['Our deadline is 12 February.', '2027-02-12'],
    ['The client decides by 12 March. Confirm by 9 March please.', '2027-03-09'],
  ])('%s', (words, on) => expect(reply(words)).toBe(`${on}T23:59`));
});

describe('to the hour', () => {
  test.each([
    ['Flick me a text by Friday arvo, 3ish at the latest.', '2027-02-05T15:00'],
    ['Let us know by Friday teatime (5ish).', '2027-02-05T17:00'],
    ["Can you tell me by tomorrow teatime... 5 o'clock say", '2027-02-04T17:00'],
    ['Please answer me before Friday lunchtime, like by twelve.', '2027-02-05T12:00'],
    ['First refusal is yours until noon on Thursday.', '2027-02-04T12:00'],
    ['Melde dich bis Freitagabend 20 Uhr, bitte.', '2027-02-05T20:00'],
    ['Offers arriving after noon on 12 February are not looked at.', '2027-02-12T12:00'],
    ['Availability check, closes Friday 3pm.', '2027-02-05T15:00'],
    ['The plan is due Friday at noon, so before that pls.', '2027-02-05T12:00'],
    ["There's a meeting on 27 February at 8pm and we'd like your answer before it.", '2027-02-27T20:00'],
    ['txt back before 5 or I ring the next one.', '2027-02-03T17:00'],
    ['need to know in the next hour sorry', '2027-02-03T10:12'],
    ['Your reply is awaited before Friday 12 February at 3 pm Gulf time.', '2027-02-12T05:00'],
    ['Her agency wants your name by Thursday 12 noon German time.', '2027-02-04T05:00'],
    ['Let me know before Saturday. Friday 6pm would be ideal.', '2027-02-05T18:00'],
  ])('%s', (words, at) => expect(reply(words)).toBe(at));
});

describe('no answer is wanted by then', () => {
  test.each([
    "I'll let you know by Friday.",
    "We'll tell you by 20 February.",
    'Let me know if Friday 12 February suits for a call.',
    'Please confirm Saturday 16 October.',
    'Thanks for your reply of Monday.',
    'Our estimate for Friday was too low.',
    'Entries close on 20 February.',
    'The deadline for entries is 20 February.',
    'Rushes on a drive, by 20 November please.',
    'Can we talk on Friday at 10?',
    "Tell me by the day before the jubilee, 5 o'clock.",
  ])('%s', (words) => expect(reply(words)).toBe('none'));
});

const OF_JOB = 'Could you film our gala in York on 20 March, 2pm to 9pm?';
const answerTo = (words: string): string | undefined =>
  facts(`${OF_JOB} ${words}`, '2027-01-20T10:00:00+00:00[Europe/London]', 'leeds').replyBy;
test.each([
  ['2027-02-12T23:59', 'I have to report who I hired by 12 February.'],
  ['2027-01-26T23:59', 'Call me back, would ya, by, oh, Tuesday.'],
  ['2027-02-12T06:15', 'Please send your consent up to 12 noon Nepal time, Friday 12 February.'],
  ['2027-01-25T23:59', 'Confirm by 25th, then I am offline.'],
  ['2027-01-25T23:59', 'Quote by 25th latest'],
  ['2027-02-12T23:59', '¿Nos contestas el 12 de febrero como muy tarde?'],
  ['2027-01-22T23:59', 'Laat je het uiterlijk vrijdag weten?'],
  ['2027-01-29T14:00', 'Necesitamos su conformidad antes de las 14:00 del viernes 29 de enero.'],
  ['2027-01-20T23:59', 'pls say something still today.'],
  ['2027-02-12T23:59', 'Thank you to answer for the 12 February.'],
  ['2027-02-12T23:59', 'May we have your answer for 12 February the latest?'],
  ['2027-02-12T23:59', 'We need to know it on 12 February.'],
  ['2027-02-12T23:59', 'Are you in? I must tell them on 12 February.'],
  ['2027-01-22T23:59', 'I need it black on white until Friday.'],
  ['2027-01-28T23:59', 'The rest I share once you confirm, latest by Thursday 28 January.'],
  ['2027-01-31T23:59', 'You have until the end of the month to think.'],
  ['2027-01-29T23:59', 'Tell me by the end of next week if you like it? I mean Friday the 29th.'],
  ['2027-01-20T17:00', 'Please phone before we close at 5 today.'],
  ['2027-01-29T17:00', 'I would need your yes or no by Friday 29 January, 18:00 our time (Berlin, where our office is).'],
])('answer %s: %s', (wall, words) => expect(answerTo(words)).toBe(wall));

test.each([
  'You have until 6 March to pay the deposit.',
  'We must tell the caterers by 6 March how many eat.',
  "We'll tell them on 6 March who plays.",
  'I need to know on 6 March how long the film will be.',
  'Early-bird price until 6 March: £20 a ticket.',
  'Spring offer: 20% off till 6 March.',
  'The parents gave their consent until 6 March.',
  'Thank you for the reply of 12 January.',
  'It was built by 21st century standards.',
  'Speeches come before 3rd course.',
])('no answer: %s', (words) => expect(answerTo(words)).toBeUndefined());
