/**
 * Hours at which a part of a contest or of the occasion begins are no call, those at which I am told to be there are; and what else is read beside them:
 * an hour that closes its sentence as a date does, a crew that begins with the day.
 */
import { describe, expect, it, test } from 'vitest';
import { beginsContest } from '../../../core/inquiries/settle/contest.ts';
import { facts, readAt } from './reading.ts';

const AT = '2026-10-05T09:00:00-05:00[America/Chicago]';
const call = (text: string): string => facts(text, AT).firstCall?.slice(5) ?? '-';

describe('a contest', () => {
  it.each([
    'Coach Vane here, Hollow Fork wrestling. State duals are in Fargo on Feb 19 & 20. Need somebody to stream mat 1 both days. Weigh-ins 7am, wrestling 9am. Boosters pay $450/day.\nGrady Vane',
    'Hi there, Tammy from the Knoll Curling Club in Fargo. Our bonspiel is the second weekend of January, the 9th and 10th, and the kids asked if we could have it streamed. First draw is 8:30 Saturday morning, final Sunday around 2. Budget is $1,100 for the whole weekend. Tammy Lind',
  ])('begins without a word of when I am wanted: %s', (text) => {
    expect(facts(text, AT).start).toBeDefined();
    expect(call(text)).toBe('-');
    expect(readAt(text, AT).questions.map(({ field }) => field)).toContain('firstCall');
  });
  it('has an hour at which I am to be there', () =>
    expect(
      call(
        'Could you film our golf day in Fargo on Saturday 12 June 2027? Please be at the first tee at 07.15. You are done by 2 pm. Robin',
      ),
    ).toBe('06-12T07:15'));
  test.each([
    ['. First draw is ', true],
    [' both days. Weigh-ins ', true],
    ['7am, wrestling ', true],
    ['Match starts at ', true],
    ['Please be at the first tee at ', false],
    ['You go out on the first boat at ', false],
    ['the bridesmaids set up the games at ', false],
  ])('"%s": %s', (before, expected) => expect(beginsContest(`${before}8`, before.length)).toBe(expected));
});

describe('the one part that is wanted', () => {
  it('begins at its hour', () =>
    expect(call("My daughter's recital is in Fargo on 12 June 2027, 2 oclock. We just need her solo filmed at 2.40.")).toBe('06-12T14:40'));
  it('has no call where another part is wanted too', () =>
    expect(
      call(
        'hi there my daughters dance recital is on the 12th of june 2027 in fargo, 2 oclock. is it possible to film just her solo (around 2.40) and the finale?? pls quote. Robin',
      ),
    ).toBe('-'));
});

test('a crew that starts with the sun is not called in the evening, whatever is rung at supper', () =>
  expect(
    call(
      "Kit,\n\nWe're raising a barn near Fargo on Saturday, July 17 and I'd like it on film. Crew starts at sunup, be here at 5:30. You're through when my wife rings the supper bell, and she rings it at six.\n\n$800.\n\nArne Vane",
    ),
  ).not.toBe('07-17T17:30'));

test.each(['high water 13.10. Please', 'curtain 12.10. Please'])('"%s" is an hour that closes its sentence, and no day', (words) => {
  const { fields, questions } = readAt(
    `Hi Kit, could you do this for us? The restored boat goes back in the water at Whitby on Saturday 25 March, ${words} find somebody to film it. We have £390 for it.\n\nRhona Vane`,
    '2027-10-05T09:00:00+01:00[Europe/London]',
    'leeds',
  );
  const days = questions.find(({ field }) => field === 'start')?.choices.map(({ label }) => label);
  expect([fields.start ?? days]).toEqual([['Sat 25 March 2028']]);
});

test('whoever has the film asks for nothing', () =>
  expect(
    readAt(
      "It's Doris Vane, love. Ruby wedding. The film came this morning, we've had it on three times already, our Peter rang from Canada in bits. I've popped the cheque in the post second class. That's all. God bless. Bye.",
      AT,
    ).isInquiry,
  ).toBe(false));

test('a dinner on 20.10. is on that day', () =>
  expect(
    facts(
      'Kit, we need a cameraman in Berlin: client dinner 20.10. Call 17:00, wrap 23:00, 600 EUR. Mia',
      '2026-10-05T09:00:00+02:00[Europe/Berlin]',
      'berlin',
    ),
  ).toMatchObject({ start: '2026-10-20', firstCall: '2026-10-20T17:00' }));

test.each([
  [
    'Could you film our harvest supper in Fargo on Saturday 25 September 2027? The farm is going from dawn but we need you from 6.30 for the supper and dance until 11. $300. Robin',
    '09-25T18:30',
  ],
  [
    'Could you film our choir concert in Fargo on Saturday 15 May 2027, there at 6 please, concert 7.30 to 9.30. My brother starts at dawn the next day so no late finish. Robin',
    '05-15T18:00',
  ],
])("another's dawn makes no morning of an evening: %s", (text, expected) => expect(call(text)).toBe(expected));

test.each([
  ['We only want the ceremony filmed at 2pm and the fee is $200.', '14:00'],
  ['We only need her solo filmed, at 2.40 and the venue is the Grand.', '14:40'],
  ['We just want the ceremony filmed at 1pm and then the car leaving.', '13:00'],
])('a price, a place or what follows is no other part: %s', (told, expected) =>
  expect(call(`My sister is getting married in Fargo on 12 June 2027. ${told} Robin`)).toBe(`06-12T${expected}`),
);

test.each([
  'Sue Vane here. Videographer needed for our concert, Fargo, Saturday 12 June 2027, 5pm to 10pm, $300. The video came through at the wrong size last year.',
  'Camera op wanted, Fargo, Saturday 15 May 2027. The footage came through blurry last time so bring a proper tripod. Robin Vane',
  'Job: videographer\nWhere: Fargo\nWhen: Saturday 12 June 2027\nPay: $300, cheque in the post after',
])('what came through last time is no thanks: %s', (text) => expect(readAt(text, AT).isInquiry).toBe(true));
