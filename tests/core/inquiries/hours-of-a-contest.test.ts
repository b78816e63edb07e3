/**
 * Hours at which a part of a contest begins are no call; those at which I am told to be there are.
 */
import { describe, expect, it, test } from 'vitest';
import { beginsContest } from '../../../core/inquiries/settle/contest.ts';
import { facts, OCTOBER, readAt } from './reading.ts';

const call = (text: string): string => facts(text, OCTOBER).firstCall?.slice(5) ?? '-';

describe('a contest', () => {
  it.each([
    'Coach Vane here, Hollow Fork wrestling. State duals are in Fargo on Feb 19 & 20. Need somebody to stream mat 1 both days. Weigh-ins 7am, wrestling 9am. Boosters pay $450/day.\nGrady Vane',
    'Hi there, Tammy from the Knoll Curling Club in Fargo. Our bonspiel is the second weekend of January, the 9th and 10th, and the kids asked if we could have it streamed. First draw is 8:30 Saturday morning, final Sunday around 2. Budget is $1,100 for the whole weekend. Tammy Lind',
  ])('begins without a word of when I am wanted: %s', (text) => {
    expect(facts(text, OCTOBER).start).toBeDefined();
    expect(call(text)).toBe('-');
    expect(readAt(text, OCTOBER).questions.map(({ field }) => field)).toContain('firstCall');
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
