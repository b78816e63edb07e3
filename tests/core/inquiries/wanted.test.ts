/**
 * Of several days those on which the camera is wanted, and dates that must not be lost for a weekday beside them.
 */
import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

/** First day, last day and count of a message received on Wednesday 25 November 2026. */
function days(text: string): string {
  const { start, end, days: count } = facts(text);
  return start === undefined ? 'asked' : `${start} ${end ?? 'open'} ${count ?? '-'}`;
}

describe('one of several days', () => {
  // 4 December 2026 is a Friday, 5 December a Saturday.
  test.each([
    [
      'Our play is on 4 and 5 December in Duluth and we are looking for a videographer. We want Saturday recorded.',
      '2026-12-05 2026-12-05 1',
    ],
    ['The play is on 4 and 5 December in Duluth. We would love a camera operator for the Saturday.', '2026-12-05 2026-12-05 1'],
    ['School play in Duluth, 4 and 5 December. Filming Friday night only. Are you free?', '2026-12-04 2026-12-04 1'],
    ['The play is on 4 and 5 December in Duluth. Friday should be filmed. Can you do it?', '2026-12-04 2026-12-04 1'],
    ['Can you film our play? It is on 4 and 5 December in Duluth. I have someone on 1, so just the second.', '2026-12-05 2026-12-05 1'],
    ['We run a three day retreat (4 to 6 December) and need you on the last day to film.', '2026-12-06 2026-12-06 1'],
    ['Could you film no. 2?\n1 Fri 4 Dec, Duluth\n2 Sat 5 Dec, Superior', '2026-12-05 2026-12-05 1'],
    ['We need a camera for two nights in Duluth.\nFri 4 Dec - me\nSat 5 Dec - you?', '2026-12-05 2026-12-05 1'],
    ['Die Gala ist am 4. und 5. Dezember in Duluth, wir suchen nur am zweiten jemand für die Kamera.', '2026-12-05 2026-12-05 1'],
  ])('%s', (text, want) => expect(days(text)).toBe(want));

  test.each([
    'Can you film our conference in Duluth on 4 and 5 December? We need you on Friday at 8am and on Saturday at 9am.',
    'We need a videographer on 4 and 5 December in Duluth, Friday and Saturday.',
    'Are you free to film the weekend of 5 December, i.e. 5 and 6 December, in Duluth?',
  ])('both stay: %s', (text) => expect(facts(text).days).toBe(2));

  test('hours of a day that is not wanted are no call', () => {
    const text =
      'Can you film our expo in Duluth?\nThursday December 3: vendors set up, noon-8 PM\nFriday December 4: expo, 9-5\nSaturday December 5: expo, 9-3\nYou would be filming Friday and Saturday. Friday please come at 8 AM.';
    expect(facts(text)).toMatchObject({ start: '2026-12-04', end: '2026-12-05', days: 2, firstCall: '2026-12-04T08:00' });
  });
});

describe('a date with its month is not lost for a weekday', () => {
  test.each([
    ['Would you have the 24th of March free, it is a Wednesday? We need photos in Duluth.', '2027-03-24 2027-03-24 1'],
    ['Third, are you free March 24? Its a wednesday. Duluth, photos, 4 pm to 9 pm, $400 flat.', '2027-03-24 2027-03-24 1'],
    ['Can you film our trail run in Duluth on Saturday, December 5 and our usual person is off?', '2026-12-05 2026-12-05 1'],
  ])('%s', (text, want) => expect(days(text)).toBe(want));

  test('asked where the date is taken for something else and a weekday is left', () => {
    const reading = readAt('We need a videographer in Duluth. The invoice for December 19 is paid. It would be Saturday, 10am to 4pm.');
    expect(reading.fields.start).toBeUndefined();
    expect(reading.questions.find(({ field }) => field === 'start')?.choices.length).toBeGreaterThan(1);
  });

  test('two occasions on two dates are asked about', () =>
    expect(
      days('My mate has a birthday on the 5th of December and an anniversary party on the 12th of December in Duluth. Can you film one?'),
    ).toBe('asked'));
});

describe('hours of others and closing dates', () => {
  test('a closing date for quotations is a reply date', () =>
    expect(
      facts('RFQ: video coverage\nClosing date for quotations: 4 December 2026 at 11:00\nEvent date: 19 December 2026\nTown: Duluth'),
    ).toMatchObject({ start: '2026-12-19', end: '2026-12-19', replyBy: '2026-12-04T11:00' }));
  test('the hour of another camera is asked about, mine is stated where it is told', () => {
    expect(
      facts('Can you film in Duluth on 5 December? Camera one reports at 05:00 for the sunrise, camera two at 08:00.').firstCall,
    ).not.toBe('2026-12-05T05:00');
    expect(facts('Can you film in Duluth on 5 December? He has "call 6am", that\'s trucks; cameras 9am.').firstCall).not.toBe(
      '2026-12-05T06:00',
    );
    expect(facts('Can you film in Duluth on 5 December? Trucks 6am, cameras 9am.').firstCall).toBe('2026-12-05T09:00');
  });
  test('an early one is no hour before, the number of a row no hour', () => {
    expect(facts("Can you film in Duluth on 5 December? It's an early one: you'd be there at 5:15 AM.").firstCall).toBe('2026-12-05T05:15');
    expect(facts('Can you film on 5 December in Duluth?\n1. Yes, still on.\n2. Camera only.\n3. Arrive 3:30 PM.').firstCall).toBe(
      '2026-12-05T15:30',
    );
  });
  test('rehearsals before a day are no answers before it', () =>
    expect(
      facts('Can you film on 5 December in Duluth? There is a full rehearsal the afternoon before, 1 pm on 4 December.').firstCall,
    ).toBe('2026-12-04T13:00'));
});
