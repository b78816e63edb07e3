/**
 * Hours that no word right before them tells: by the build of the sentence, by the day or the name that heads a line, by another hour.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

const message = (way: string): string => `Hi Kit,\nCan you film our fair on Saturday 12 December in Fargo? ${way}\nThanks,\nAnn Leverett`;

describe('from two in the afternoon until seven', () => {
  const ways = lines(`
    Be there at 2pm, prizes at 7pm and then you're free.
    Come at 2pm and stay until the last lorry leaves at 7pm.
    Please arrive by 2pm. The music stops at 6pm, so let's say 7pm.
    Crew on the green at 2pm, all packed up by 7pm.
    We don't need anybody to roll until 2pm; at 7pm all is over.
    Get yourself there for 2pm, we shut at 6pm and give you an hour to pack up.
    Access to the hall from 14.00. Vacate by 19.00.
    Meet us at 2pm at the gate, the show ends at 6:30pm and you're finished half an hour later.
    The show runs 4pm to 7pm, then you're done; please be set up by 2pm.
    There's a crew briefing at 2pm, please be there for that. You can head home at 7pm.
    The hall's open from 2pm for crew, and we turn the lights out at 7pm.
  `);
  test.each(ways)('%s', (way) =>
    expect(facts(message(way))).toMatchObject({ firstCall: '2026-12-12T14:00', lastWrap: '2026-12-12T19:00' }),
  );
});

test('an hour in the small hours is an end and no call', () => {
  expect(facts(message('Be there at 19:00, first song 22:00, last one around 02:00 and home.'))).toMatchObject({
    firstCall: '2026-12-12T19:00',
    lastWrap: '2026-12-13T02:00',
  });
  expect(facts(message('Come at 6pm; it all ends at half past midnight.')).lastWrap).toBe('2026-12-13T00:30');
});

test('hours stand under the day that heads them', () => {
  const text = `Hi Kit,\nCould you film two days in Fargo?\n\nSaturday 12 December: be there at 09:00, finish 17:00.\nSunday 13 December: be there at 10:00, finish 15:30.\n\nThanks,\nAnn Leverett`;
  expect(facts(text)).toMatchObject({ firstCall: '2026-12-12T09:00', lastWrap: '2026-12-13T15:30' });
});

test('of the rows of a table or a list those that name me are mine', () => {
  const list = '\n08:00 stage crew\n09:30 videographer\n11:00 speeches\n13:30 videographer finishes\n15:00 photographer finishes\n';
  expect(facts(message(list))).toMatchObject({ firstCall: '2026-12-12T09:30', lastWrap: '2026-12-12T13:30' });
  const table = '\nWho | Role | On | Off\nAnn | producer | 06:30 | 20:00\nYou | camera | 09:00 | 17:00\n';
  expect(facts(message(table))).toMatchObject({ firstCall: '2026-12-12T09:00', lastWrap: '2026-12-12T17:00' });
  const form = '\nAV: 08:00 to 23:00\nVideo: 15:00 to 22:30\nPhotographer: 17:30 to 23:00\n';
  expect(facts(message(form))).toMatchObject({ firstCall: '2026-12-12T15:00', lastWrap: '2026-12-12T22:30' });
});

test('an hour of a day is in the evening where its end in the small hours would come too late for the morning', () =>
  expect(facts(message('Be there from 8, and we wrap at 1am.'))).toMatchObject({
    firstCall: '2026-12-12T20:00',
    lastWrap: '2026-12-13T01:00',
  }));

test('what stands in a bracket right after a day is of that day', () =>
  expect(
    facts('Hi Kit,\nCan you film our fair in Fargo on Fri 11 Dec (opening, 10:00 call) and Sat 12 Dec (talks, 09:00 call)?\nAnn').firstCall,
  ).toBe('2026-12-11T10:00'));

test('hours of the programme are no call', () => {
  for (const way of ['Doors 2pm, music 2.30pm till 4.30pm.', 'Bands 4:00-9:30 PM.', 'The choirs sing 7pm to 9pm (not filmed).'])
    expect(facts(message(way)).firstCall).toBeUndefined();
});
