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

test.each(['high water 13.10. Please', 'lunch 12.10. Please'])('"%s" is an hour that closes its sentence, and no day', (words) => {
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
