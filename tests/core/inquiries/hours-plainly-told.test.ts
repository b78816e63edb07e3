/**
 * Calls and ends that are plainly told: beside other hours of the same morning or evening, taken back, on days of a list, and by words that point
 * back to an hour; and hours that only look like them.
 */
import { expect, it } from 'vitest';
import { facts, lines } from './reading.ts';

const HOME = 'leeds';
const NOW = '2027-01-20T10:00+00:00[Europe/London]';
const short = (wall: string | undefined): string => wall?.slice(5).replace('T', ' ') ?? '-';
/** Call and wrap of a text, without the year. */
function hours(text: string): string {
  const { firstCall, lastWrap } = facts(text, NOW, HOME);
  return `${short(firstCall)} > ${short(lastWrap)}`;
}

const ONE_DAY = 'Please film our open day in Leeds on Friday 12 March.';
const oneDay: [told: string, ways: string][] = [
  // in which half of the day
  [
    '07:15 > 10:00',
    `
    Doors at 8am so please be there 7.15, done by 10.
    Be there 7.15, doors are at 8am, all done by 10am.`,
  ],
  [
    '05:15 > 11:00',
    `We begin at 6.30 in the morning, but we'd need you there at quarter past five. The hall is paid till 11am, so at 11 you can go.`,
  ],
  // other hours that go out
  [
    '18:00 > 21:00',
    `
    Be there for 6pm, the winners walk out at 7.15pm and you're finished at 9pm.
    Be there for 6pm; they march out of the hall at 6.30pm. You're finished at 9pm.
    Be in position 6pm. Last Post 7pm. Stand down 9pm.`,
  ],
  ['18:00 > -', `Be there for 6pm. At 7pm he sends everyone out with a balloon.`],
  // what begins is no end
  ['07:00 > -', `Get yourself to the quay for 7am. Doors 7pm.`],
  // taken back
  [
    '13:00 > 22:00',
    `
    You'd be in at 2pm and off by 10pm. Sorry, scrap that, I spoke to the venue. It's 1pm not 2.
    You'd be in at 2pm and off by 10pm. Oops, it's 1pm not 2pm.`,
  ],
  ['07:30 > 13:00', `Please come at half 8 (by this I mean 7:30), until 1pm.`],
  ['- > 18:00', `Your arrival: it is 7am if they give us the big hall, 9am if it is the small room. You leave at 6pm.`],
  // minutes before a whole hour
  ['17:00 > 23:50', `Come at 5pm; we hand the keys back at ten to midnight and you go when we do.`],
  // words that point back
  [
    '10:00 > 17:00',
    `
    The doors open at 10am and that's when your day begins too; the shop closes at 5pm, when you stop.
    Check-in is 10am for everybody including you. At 5pm they throw us out of the hall.
    We set the tables out at 10am so if you could be there by then. At 5pm the hall closes and we all leave.
    They start dressing at 10am and we'd love you there from then. At 5pm the caretaker kicks everyone out.
    Crew breakfast and call at 10am. End of your assignment: 5pm.
    Call for technicians is 10am. You'd be right to head off at 5pm.
    Technical rehearsal is 9am which you can skip; please come at 10am. They chuck us out at 5pm.`,
  ],
];

it.each(oneDay.flatMap(([told, ways]) => lines(ways).map((way) => [told, way] as const)))('one day: %s of %s', (told, way) => {
  const dated = hours(`${ONE_DAY} ${way} £300 for you.`).replaceAll('03-12 ', '');
  expect(dated).toBe(told);
});

it.each([
  [
    '02-28 10:00 > 03-01 17:00',
    'We play on 28 February and 1 March in Leeds, film both please. Call 10am on the 28th, done by 5pm on the 1st.',
  ],
  [
    '03-12 09:00 > 03-14 14:00',
    'Our fair in Leeds is from 12 to 14 March, please film it all. Be there 9am on the Friday and you will be wrapped by 2pm on the Sunday since we fly that evening.',
  ],
  [
    '03-12 08:00 > 03-13 17:00',
    "Please film our conference in Leeds on 12 and 13 March. Second camera, I'm on A. Call 08:00 Friday, wrap 17:00 Saturday.",
  ],
  ['01-20 19:00 > 01-20 22:00', 'I need a videographer tonight in Leeds, be there for 7, ends at 10.'],
  ['03-14 09:00 > 03-14 16:00', 'Could you film the last day of our fair in Leeds, Sunday 14 March? Last day: be there 9am, wrap at 4pm.'],
  ['03-12 18:00 > 03-12 20:30', 'Can you film our carol service in Leeds on Friday 12 March? Be in the vestry for 6, done at half eight.'],
])('%s', (told, text) => {
  expect(hours(`${text} £300 for you.`)).toBe(told);
});

it('what they have, told in the next sentence, takes no end away', () =>
  expect(hours('Please film our open day in Leeds on Friday 12 March, from 9 a.m. to about 4 p.m. They have £400 for it.')).toBe(
    '03-12 09:00 > 03-12 16:00',
  ));
