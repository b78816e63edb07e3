/**
 * Another day than the one or the run that is named, told for the film: the day before, a day of the run, one more, one in its place. It is asked about.
 */
import { describe, expect, test } from 'vitest';
import { daysOf, lines } from './reading.ts';

const AT = '2026-11-25T15:12';
const GALA = 'Could you film our gala in Leeds on 10 April?';
const said = (text: string): string => daysOf(text, 'leeds', AT);

describe('what is filmed on another day', () => {
  const ways = lines(`
    The show in Leeds opens on 14 January. Could you film the preview the evening before?
    We open on 14 January in Leeds. We need the dress rehearsal filmed, two days before.
    Could you film our rehearsal dinner in Leeds? It's the evening before the wedding, which is on Saturday 12 June.
    The wedding is on Saturday 12 June in Leeds; we'd like the dinner the night before filmed.
    Could you film the welcome dinner in Leeds? The wedding is on Saturday 12 June and the dinner the evening before.
    Our AGM is on 12 June in Leeds. Please film the dinner on the eve of it.
    Our festival in Leeds runs 3 to 13 March. Please film the gala on the 6th.
    The festival is 3-7 March in Leeds, our set is on the 5th. Can you film our set?
  `);
  test.each(ways)('%s', (text) => expect(said(text)).toBe('ask'));
  const others: [string, string][] = [
    ['06-12', 'Could you film our wedding on 12 June in Leeds? We get the hall the evening before.'],
    ['06-12', 'Could you film our gala in Leeds on 12 June? We would send you the running order the day before.'],
    ['06-12', "Could you film our gala in Leeds on 12 June? Last year's film was online the day after."],
    ['03-03..03-13', 'Could you film our festival in Leeds, 3 to 13 March? The gala on the 6th is our highlight.'],
  ];
  test.each(others)('%s: %s', (days, text) => expect(said(text)).toBe(days));
});

describe('a date beside the one, in a sentence of its own', () => {
  const ways = [
    'If not, the 11th?',
    'We could also do 17 April.',
    'Otherwise 11 April would be fine.',
    'The 16th as well?',
    'We also have one on the 16th.',
  ];
  test.each(ways)('%s', (words) => expect(said(`${GALA} ${words}`)).toBe('ask'));
  const others = [
    'Also, the deposit is due on 1 April.',
    'A call on 2 December would be fine.',
    'Delivery on 1 May would be fine.',
    'If not, please tell me by 15 December.',
  ];
  test.each(others)('%s', (words) => expect(said(`${GALA} ${words}`)).toBe('04-10'));
});

describe('a date that is moved, known roughly or told by its place in the run', () => {
  const ways: [string, string][] = [
    ['05-15', 'We have to postpone from 8 May to 15 May. Would you still film our wedding in Leeds?'],
    ['05-15', "We're changing our date from 8 May to 15 May. Could you film our wedding in Leeds?"],
    ['05-09', "They've rescheduled our fair in Leeds from Saturday 8 May to Sunday 9 May; could you film it?"],
    ['05-08..05-15', 'Our exhibition has moved to York from 8 to 15 May and we want it filmed throughout.'],
    ['ask', 'We could move our gala in Leeds from 6 March to 13 March. Could you film it?'],
    ['ask', 'Could you film our gala in Leeds around 10 March?'],
    ['06-12', 'Are you around 12 June to film in Leeds?'],
    ['02-14..02-16', 'Please block 14-16 Feb for our fair in Leeds, to be filmed.'],
    ['06-15', 'Could you film in Block 14, Leeds, on 15 June?'],
    ['05-08', 'Our musical is on from 4 to 8 May in Leeds, and the last night is to be filmed.'],
    ['05-06', 'Our course in Leeds is 4-8 May; please film day three.'],
    ['05-04..05-08', 'Could you film from the first day to the last day of our fair in Leeds, 4 to 8 May?'],
    ['05-04..05-08', 'Could you film our fair in Leeds, 4 to 8 May? The last day is the busiest.'],
    ['ask', "Our wedding is on 12 June in Leeds but it's the hen party, two weeks earlier, that we'd love filmed."],
  ];
  test.each(ways)('%s: %s', (days, text) => expect(said(text)).toBe(days));
});
