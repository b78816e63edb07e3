/**
 * Hours that are none of mine beside one that is, before and after it: those of friends and of my second, of what I need not come to, of stills
 * beside film, of a break and of a part that ends; and hours that are told from such an hour.
 */
import { expect, it } from 'vitest';
import { facts, lines } from './reading.ts';

/** Call and wrap of a gala on 12 June, `-` where none is stated. */
function hours(told: string): string {
  const { firstCall, lastWrap } = facts(`Hi Kit,\n\nCould you film our gala in Fargo on Saturday 12 June? ${told}\n\nThanks,\nRobin`);
  return [firstCall, lastWrap].map((wall) => wall?.replace('2027-06-12T', '') ?? '-').join(' > ');
}

const told: [hours: string, ways: string][] = [
  [
    '17:45 > -',
    `
    We'd like you in place 45 minutes ahead of the first speech, which is at 6.30pm.
    The band soundchecks at 4pm and you join us at 5.45pm.
    Our mum will be there from noon and you should come at 5.45pm.
    The call is 6pm on the sheet, ignore that, 5.45pm is right.
    Press call is at 6.30pm, you come at 5.45pm.`,
  ],
  [
    '- > 23:30',
    `
    Stay for half an hour after the band's last song at 11pm.`,
  ],
  [
    '15:00 > 22:00',
    `
    Timeline: 15:00 you arrive, 16:00 test, 18:00 guests, 22:00 you leave.
    Times: 3pm (you), 7pm (guests), 8pm (dinner), 10pm (you finish), 1am (close).
    You and your assistant should arrive at 3pm. The hall shuts at 11.30pm, you can go when the raffle is over, 10pm.`,
  ],
  // a part of the occasion ends, or nothing is filmed for a while
  [
    '14:00 > 22:00',
    `
    Your break is from 6pm to 7pm, your hours are 2pm to 10pm.
    2pm to 10pm, with a break 6pm to 7pm.
    We need you without a break from 2pm to 10pm.
    Come at 2pm, I can't be there before 3pm. The rehearsal finishes at 5pm, you're off at 10pm.
    I'm there from noon, come at 2pm. Dinner ends at 10pm and then you're free.`,
  ],
  [
    '- > -',
    `
    The ceremony should be over by 3pm.
    Dinner ends around 9.30pm, then there's dancing.
    Speeches will be finished by 9pm.
    The rehearsal ends at 5pm.
    Load-in has to be finished by 5pm.
    The photographer finishes at 9pm.
    You get a break from 8pm to 9pm.
    Nothing happens from 5pm to 6pm.
    From 5pm to 6pm is a break.
    I won't be there before 5pm myself.
    I shall be at the hall from 3pm.`,
  ],
  // asked about
  [
    '- > -',
    `
    My mum will be at the hall from 8am if anything is needed.
    Your assistant can join at 6pm.
    The rehearsal is the night before at 7pm but you don't have to be there.
    There's a rehearsal on the Friday at 7pm which is not to be filmed.
    Your call will not be before 2pm.
    Stills from 1pm, film from 3pm.
    Photo call 1pm, video call 3pm.`,
  ],
];
for (const [want, ways] of told) it.each(lines(ways))(`${want}: %s`, (way) => expect(hours(way)).toBe(want));

it('takes "our call 5" among hours of a show for mine, and a talk on the telephone for none', () => {
  expect(hours('Doors 7pm, our call 5pm.')).toBe('17:00 > -');
  expect(hours('On our call at 3pm you said that you could do it.')).toBe('- > -');
});

const PAIR = 'Hi Kit, can you film our conference in Fargo on 8 and 9 June?';
/** First and last day, call and wrap of a conference of two days. */
const pair = (told: string): string => {
  const { start, end, firstCall, lastWrap } = facts(`${PAIR} ${told}\n\nRobin`);
  return [start, end, firstCall, lastWrap].map((one) => one?.replace('2027-06-', '') ?? '-').join(' ');
};

it.each([
  ['08 09 08T07:00 -', 'Day one is 7am for you, day two only 9.30.'],
  ['08 09 - 09T17:00', 'Early call on day two only: 6.30am. Done by 5pm both days.'],
  ['08 09 08T09:00 -', '9am call both days except the second, which is 7am.'],
  ['08 09 08T09:00 -', "9am call except on the Wednesday when it's 7am."],
  ['09 09 09T08:00 -', 'Film day two only, call 8am.'],
  ['08 08 - -', 'We need you on both days except the second.'],
  ['08 09 08T08:00 09T16:00', "We'd need you at 8am on day 1, 9am on day 2. Finish 6pm on day 1, 4pm on day 2."],
  ['08 09 - -', 'We wrap at 5 on day 1 and noon on day 2.'],
  ['08 09 - 09T16:00', "You're done by 6pm on day 1 and 4pm on day 2."],
])('hours that differ by the day leave both days: %s of %s', (want, told) => expect(pair(told)).toBe(want));

it('leaves the hours of a closed road alone', () => {
  expect(hours('Road closed 10am to 8pm.')).toBe('- > -');
});
