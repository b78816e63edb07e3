/**
 * Days that are all of the job because they are counted, and days that are beside it: past ones, closing dates, what is counted on a bill.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines, readAt } from './reading.ts';

describe('two single days that are counted, the 9th and the 12th of December', () => {
  const ways = lines(`
    Could you film two talks for us in Fargo? On Wednesday 9 December the mayor speaks at 10am in the library. Then on Saturday 12 December there is the poet, same place.
    My boss wants two things filmed in Fargo. On 9 December we open the new depot. On 12 December it is the apprentices' graduation, 1pm.
    We need a videographer for both keynotes in Fargo, Wednesday 9 December in the big hall, and Saturday 12 December in the old theatre.
    Are you free for two shows in Fargo? Our opening is on 9 December; the choir sings on 12 December. Both filmed, one camera.
  `);
  test.each(ways)('%s', (way) => expect(facts(way)).toMatchObject({ start: '2026-12-09', end: '2026-12-12', days: 2 }));
});

describe('of two days that are named only the 12th is meant, or it is asked', () => {
  const ways = lines(`
    Can you film one of two talks in Fargo? They are on 9 December in the library and on 12 December in the hall.
    Two jobs going in Fargo. The 9 December one I've sorted. The 12 December one I haven't, can you film it?
  `);
  test.each(ways)('%s', (way) => expect(['2026-12-12', undefined]).toContain(facts(way).start));
});

describe('one day, whatever else is counted or over', () => {
  const ways = lines(`
    Can you film our conference on Saturday 12 December in Fargo? You filmed the one on 12 June last year.
    Can you film our conference on Saturday 12 December in Fargo? $900, 30 days from invoice.
    Can you film our conference on Saturday 12 December in Fargo? Last year it was three days, and $900.
    Can you film our conference on Saturday 12 December in Fargo? A two-minute film by 18 December and the talks by the 23rd.
    Can you film our concert in Fargo, moved AGAIN, from Friday 4th to Saturday 12th December?
    Can you film our conference before an invited audience on 12 December in Fargo?
    We're streaming out of Fargo on Saturday 12 December only, can you do the stream?
    My cousin films the day, but on Saturday 12 December in Fargo the ceremony is taken care of and I'd like you to film the party.
    Quote request: livestream of a bull sale, Saturday, December 12, near Fargo. What would you charge?
  `);
  test.each(ways)('%s', (way) => expect(facts(way)).toMatchObject({ start: '2026-12-12', end: '2026-12-12', days: 1 }));
});

describe('a run that goes into the next month', () => {
  const ways = lines(`
    Can you film our rally in Fargo on the 29th April til Sat 1st, all three days?
    Can you film our rally in Fargo, Thurs 29 April to Sat the 1st?
    Can you film our rally in Fargo, 29 April - 1 May, three days?
  `);
  test.each(ways)('%s', (way) => expect(facts(way)).toMatchObject({ start: '2027-04-29', end: '2027-05-01', days: 3 }));
});

test('a weekday and a number tell their own month', () => {
  const message =
    'Can you film our panel in Fargo the week of June 7, on the Wednesday and Thursday (the 9th and 10th)? Reply by Friday the 4th.';
  expect(facts(message)).toMatchObject({ start: '2027-06-09', end: '2027-06-10', replyBy: '2026-12-04T23:59' });
});

test('the end of the last day is no day by itself', () => {
  const message =
    'Hi Kit, festival in Fargo, 30 Dec to 2 Jan inclusive, second camera. Arrive Wednesday by 11am, last set ends 11pm on the Saturday and that is you.';
  expect(facts(message)).toMatchObject({ start: '2026-12-30', end: '2027-01-02', days: 4 });
});

describe('the days beside the one that has a month, where they are counted: the 10th to the 12th of December', () => {
  const ways = lines(`
    My brother's wedding is on 12th December in Fargo, the mehndi on the 10th and the sangeet on the 11th. We'd like video coverage of all three days.
    Both evenings and the day: the wedding is on 12 December in Fargo, our supper on the 10th and the rehearsal party on the 11th, three days filmed please.
  `);
  test.each(ways)('%s', (way) => expect(facts(way)).toMatchObject({ start: '2026-12-10', end: '2026-12-12', days: 3 }));
});

test('where nobody counts them, they are asked about', () => {
  const message = `My brother's wedding is on 12th December in Fargo, the mehndi on the 10th and the sangeet on the 11th. What would you charge to film?`;
  expect(facts(message).start).toBeUndefined();
});

describe('the day before or after that is counted in', () => {
  test.each([
    [
      'The awards are on Friday 11 December in Fargo and there is a brunch the day after. Just the two days for you as videographer.',
      '2026-12-11',
    ],
    [
      'The ceremony is on Saturday 12 December in Fargo, with a dinner the night before. Both evenings filmed please, so two days.',
      '2026-12-11',
    ],
    [
      'Both days please! Fri 11 December is the rehearsal (you on site 2pm) and Sat 12 December is the awards itself, in Fargo, camera op.',
      '2026-12-11',
    ],
  ])('%s', (message, start) => expect(facts(message)).toMatchObject({ start, end: '2026-12-12', days: 2 }));
});

describe('some days of a run from the 10th to the 13th of December', () => {
  test.each([
    [
      `The show in Fargo runs 10 to 13 December. It's just the closing day we'd want you for as camera op.`,
      ['2026-12-13', '2026-12-13', 1],
    ],
    [
      `The show in Fargo is Saturday 12 and Sunday 13 December. Saturday's covered. Sunday isn't. Roving camera, $280.`,
      ['2026-12-13', '2026-12-13', 1],
    ],
    [`Trade show in Fargo, December 10-13. We need a camera op for the first and last days.`, ['2026-12-10', '2026-12-13', 2]],
    [`The show in Fargo runs 10 to 13 December. I'm only short on the Saturday. Camera op, $280.`, ['2026-12-12', '2026-12-12', 1]],
    [
      'Our festival in Fargo is 10 to 13 December. We hope to engage you as cameraman for the opening night and the finale, i.e. the 10th and the 13th.',
      ['2026-12-10', '2026-12-13', 2],
    ],
  ])('%s', (message, days) => {
    const { start, end, days: count } = facts(message);
    expect([start, end, count]).toEqual(days);
  });
});

test('a quote that is sent to me asks for nothing', () => {
  const message =
    'Good morning Kit, please find attached our quotation for hire of 2 radio mics, Friday 11 December to Monday 14 December, $286.';
  expect(readAt(message).isInquiry).toBe(false);
});
