/**
 * Ends of the work that are told by the build of the message: by words behind the hour, by hours of the occasion beside a call, on the last of several
 * days, and in which half of the day; and hours that only look like one.
 */
import { describe, expect, it } from 'vitest';
import { facts, lines } from './reading.ts';

const read = (text: string): ReturnType<typeof facts> => facts(text, '2027-01-20T10:00+00:00[Europe/London]', 'leeds');
const short = (wall: string | undefined): string => wall?.slice(8).replace('T', ' ') ?? '-';

/** Call and wrap of a job on Friday 12 March. */
function hours(told: string): string {
  const { firstCall, lastWrap } = read(`Hi Kit,\n\nPlease film our open day in Leeds on Friday 12 March. ${told}\n\nThanks,\nRobin`);
  return `${short(firstCall)} > ${short(lastWrap)}`;
}
/** The wrap of a job on Friday 12 and Saturday 13 March. */
const ofTwo = (told: string, what = 'conference'): string =>
  short(read(`Hi Kit,\n\nPlease film our ${what} in Leeds on 12 and 13 March 2027. ${told}\n\nThanks,\nRobin`).lastWrap);

const oneDay: [hours: string, ways: string][] = [
  // What stands behind the hour says that it is over.
  [
    '12 11:00 > 12 19:00',
    `
    Crew access at 11:00; at 19:00 everything has to be out.
    Access from 11:00. By 19:00 we must all be gone.
    Be here at 11:00. By 19:00 we've packed up and the pub is open.
    Be here at 11:00. The caretaker wants the hall back at 19:00, so out by then.
    Be here at 11:00. The roads open again at 19:00, at which time the crews are dismissed.
    Be here at 11:00. The last boats are in at 19:00, which ends things.
    Be here at 11:00. The hall shuts at 20:00, so 19:00 is your end.
    Be here at 11:00. The hall needs us gone at 7.
    Be here at 11:00. We're off the field by 7pm.
    Be here at 11:00. Stand down 1900.
    Be here at 11:00. It's all over bar the shouting by 7.
    Be here at 11:00. The chairman says it'll all be wound up by 7.
    Be here at 11:00. We'll feed you and cut you loose at 7.
    Be here at 11:00. The gates shut at 6 and video can go at 7.
    Be here at 11:00. You're right to go 7pm.
    If you came at 11:00 and left at 7 that would be plenty.
    You come aboard at 11:00 and the boat is back at the quay at 19:00.`,
  ],
  [
    '12 11:00 > -',
    `
    Be here at 11:00. At 19:00 we have to leave for the church.
    Be here at 11:00. The sound man has to be out by 19:00.
    Be here at 11:00. I'm off on Monday by 7pm, so ring me before.
    Be here at 11:00. Please say yes by 7pm on Monday.
    Be here at 11:00. Bids by 7pm on Monday please.
    Be here at 11:00. Last year you came at 8 and left at 7.`,
  ],
  // Hours of the occasion beside a call.
  [
    '12 13:00 > 12 16:45',
    `
    The open day is 2 o'clock to 4.45pm. You can get in from 1pm.
    The prize-giving runs 2pm to 4:45pm. Be there at 1pm please.
    Racing 2pm till about 4.45pm, so get there at 1pm.
    Sessions 2pm-4:45pm. Your load-in would be at 1pm.
    Presence is required between 1pm and 4.45pm.
    We'd want it filmed btw 1pm and 4:45pm.`,
  ],
  [
    '12 13:00 > -',
    `
    Be there at 1pm. Registration from 2pm to 3pm.
    Be there at 1pm. The bar is open from 2pm to 11pm.
    Be there at 1pm. Road closures are from 6am to 9pm.
    Be there at 1pm. The priest only has an hour, from 2pm to 3pm.
    Be there at 1pm. The choir sings from 2pm to 3pm, then dancing.
    Be there at 1pm, show 2pm to 3pm.`,
  ],
  // An hour or two, or a day and a night.
  [
    '12 09:15 > 12 10:45',
    `
    Be there 9.15, done 10.45.
    You'd want to be set up by 9.15 and could be on your way by 10.45.`,
  ],
  ['12 10:00 > 12 23:00', `Call's 10 AM, dinner 6-9, out by 11.`],
  ['12 10:00 > 12 11:30', `Call 10am, speeches 10.30-11, you're away by 11.30.`],
];
describe('one day', () => {
  for (const [want, ways] of oneDay) it.each(lines(ways))(`${want} | %s`, (told) => expect(hours(told)).toBe(want));
});

const lastDay: [wrap: string, ways: string][] = [
  [
    '13 14:00',
    `
    Call is 8am Friday, Saturday we're out by 2.
    Come in at seven thirty in the morning on the Friday, and on the Saturday we quit at two.
    First call 6am Friday. On Saturday it's all packed up by 2.
    Call 8am each day, done 5pm (2pm on the last day).
    Call 8am each day, wrap 5pm, but 2pm on Saturday.
    Your hours: 8:00 AM - 6:00 PM on Friday; 8:30 AM - 2:00 PM on Saturday
    Friday 8am to 7pm for setup and speaker checks, Saturday 8am to 2pm for the show.
    Crew call 0630 on day one, out by 1400 on day two.
    Call: 12 March, 8:00 AM
Out: 13 March, 2:00 PM
Rate: £500 a day
    You come on Friday 10 AM and the band night on Saturday will finish at 2 PM.
    Set-up is Friday from 9am. Sessions run from 9.30am to 2pm on both days.
    Be there 8am Friday, we're out Saturday 2pm latest.`,
  ],
  [
    '-',
    `
    Call is 8am Friday, there is a party on Saturday and we're out by 2.
    Call is 8am Friday. The lunch on Friday is from 12pm to 2pm.
    Call is 8am Friday. Old dates: 5 and 6 March. Replies by 2pm.`,
  ],
];
describe('the last of two days', () => {
  for (const [want, ways] of lastDay)
    it.each(lines(ways.replaceAll(/\n(?=Out:|Rate:)/g, String.raw`\n`)))(`${want} | %s`, (told) =>
      expect(ofTwo(told.replaceAll(String.raw`\n`, '\n'))).toBe(want),
    );
});

it('is what a form asks for', () => {
  const { firstCall } = read(
    'Name: Nerys Vaughan\nDate: 12 March 2027\nWhat time should we be there? 11am\nWhat time does it end? 7pm\nWe want our wedding in Leeds filmed.',
  );
  expect(short(firstCall)).toBe('12 11:00');
});

it('is asked where a festival may go on at night', () => {
  expect(ofTwo("Call is 8am Friday, Saturday we're out by 2.", 'music festival')).toBe('-');
});

it('is that of the sessions of several days that are told alike', () => {
  const { firstCall, lastWrap } = read(
    'Please film our market in Leeds on three Saturdays: 6, 13 and 20 March 2027. Each one is 7 a.m. to noon, £300 per day.',
  );
  expect(`${short(firstCall)} > ${short(lastWrap)}`).toBe('06 07:00 > 20 12:00');
});
