/**
 * Old mails marked with a bar before each line are read as those marked with ">"; rows of a list or a table with bars stay what they are.
 */
import { describe, expect, it, test } from 'vitest';
import { withoutBars } from '../../../core/inquiries/parts/bars.ts';
import { facts, OCTOBER, readAt } from './reading.ts';

const MOVED = `Hi Kit, the luncheon has moved from May 20 to Thursday, June 3. Everything else in my first mail stands. Tell me by October 27.
Lorna

On Mon, Sep 28, 2026 Lorna Dupree wrote:
| Hello Kit, the Elm Readers would like our author luncheon in Fargo
| filmed on Thursday, May 20, 2027. We'd need you from 10:30 am to 3 pm. We
| can pay $800.`;
const PASSED_ON = `Fwd'ing this to you, can you take it? I'm on a plane all month. Write straight back to Gwen. - Arlo

| From: Gwen Stavros
| To: Arlo
| Our symposium is on Wednesday, March 24, 2027 in Fargo. We'd like someone to film the four talks from 8:00 AM to 1:00 PM, for $1,100.`;
const REMINDED = `Hello Kit. Following up on the below as I've not heard back - are you able to do the degree show?
Ruth Hope

| Sent: 21 September 2026 10:40
| Hi Kit, we'd like to commission a film of the degree show in Fargo on Thursday, May 20, 2027, 5.30pm arrival for you and away by 9pm. Fee $375.
| R.`;

describe('a mail below with bars', () => {
  it.each([MOVED, PASSED_ON, REMINDED])('is read as one with marks of quoting: %s', (text) =>
    expect(readAt(text, OCTOBER).fields).toEqual(readAt(text.replaceAll(/^\|/gm, '>'), OCTOBER).fields),
  );
  it('tells what the new words leave as it was', () =>
    expect(facts(MOVED, OCTOBER)).toMatchObject({
      start: '2027-06-03',
      firstCall: '2027-06-03T10:30',
      lastWrap: '2027-06-03T15:00',
      place: 'Fargo',
      replyBy: '2026-10-27T23:59',
    }));
  it('is read where it is passed on', () =>
    expect(facts(PASSED_ON, OCTOBER)).toMatchObject({ start: '2027-03-24', firstCall: '2027-03-24T08:00', place: 'Fargo' }));
  it('is passed on below "Forwarded" alone', () =>
    expect(
      facts(
        'Kit, see below. Can you shoot this one? Rate is $550/day.\nSuki Vane\nsuki@tallpot.example\n\n-------- Forwarded --------\n|From: Martin Oyel\n|Hi Suki, the summit in Fargo is 4-5 November. Load-in is the evening before (3 Nov) from 18:00.',
        OCTOBER,
      ),
    ).toMatchObject({ contactName: 'Suki Vane', place: 'Fargo' }));
});

const DAY = 'Saturday, May 15, 2027';
test.each([
  `New enquiry from your website\n=====================\n| Name: Ann Brody\n| Email: ann@mill.example\n| Date: ${DAY}\n| Location: Fargo\n| Arrive: 9 am\n| Finish: 5 pm\n| Message: Please film our charity auction.\n=====================`,
  `| Date: ${DAY}\n| Location: Fargo\n| Call: 9 am, wrap 5 pm\n| Budget: $900\n\nHi Kit, could you film our charity auction, details above?\n\nAnn`,
  `| Hello Kit,\n| could you film our charity auction in Fargo on ${DAY}? Call 9 am, wrap 5 pm. $900.\n| Ann Brody`,
  `Hi Kit, my boss wrote:\n\n| Film the auction in Fargo on ${DAY}, arrive 9 am, done by 5 pm, $900.\n\nCan you do that?\nAnn Brody`,
])('what the sender tells behind bars is no old mail: %s', (text) =>
  expect(facts(text, OCTOBER)).toMatchObject({ start: '2027-05-15', firstCall: '2027-05-15T09:00', place: 'Fargo' }),
);

test.each([
  'Three concerts to film:\n\n| Fri 12 May - Fargo - 4pm to 10pm\n| Sat 13 May - Moorhead - 4pm to 10pm',
  '| Day | Call |\n| Fri | 07:00 |',
  'Lorna wrote:\n| Day | Call |',
  'cameras | sound | light',
])('a list and a table keep their bars: %s', (text) => expect(withoutBars(text)).toBe(text));

test('every character stays where it was', () => {
  expect(withoutBars(MOVED)).toHaveLength(MOVED.length);
  expect(withoutBars(MOVED)).toBe(MOVED.replaceAll(/^\|/gm, '>'));
});
