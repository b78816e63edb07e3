/**
 * Hours that are taken back, left between two, or told only by how far past the last one they are.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

const message = (way: string): string =>
  `Hi Kit,\nCan you film our conference on Saturday 12 December in Fargo? ${way}\nThanks,\nAnn Leverett`;

describe('of two hours the one that holds, from half past seven until five', () => {
  const ways = lines(`
    Crew call 8. Scratch that, 7:30. Done at 5.
    Get-in at 8am, wait no, 7:30. Off by 5pm.
    Be there 0800. CORRECTION 0730. Release 1700.
    Call time 8am - sorry, 7:30am - and wrap at 5pm.
    You'd be needed from 7:30am until 4pm. Correction: until 5pm.
    We need you from 8am to 4pm - actually 7:30am to 5pm.
    Call time: 7:30 AM (corrected from 8 AM). Wrap 5 PM.
    Call 7:30am (was 8am), wrap 5pm (was 4pm).
    Not 8am but 7:30am is your call, wrap 5pm.
    Access is 7:30am instead of 8am; we wrap 5pm rather than 4pm.
    Old plan had you from 8 until 4, new plan has you from 7:30 AM to 5 PM.
    The old schedule had you in at 8. The new schedule has you from 7:30 am to 5 pm.
    Aufbau um 8 Uhr, Entschuldigung, um 7:30 Uhr. Ende für dich 17 Uhr.
    Arrivée à 8h, pardon, 7h30, et fin à 17h.
  `);
  test.each(ways)('%s', (way) =>
    expect(facts(message(way))).toMatchObject({ firstCall: '2026-12-12T07:30', lastWrap: '2026-12-12T17:00' }),
  );
});

test('a new plan that tells of doors takes no place', () =>
  expect(facts(message('The old schedule had you in from 2pm, the new version has doors at 6pm. Till 10pm.')).firstCall).toBe(
    '2026-12-12T14:00',
  ));

describe('where either hour may be it, neither is stated', () => {
  const ways = lines(`
    Come at 8 or 9, whichever suits; done by 4 or 5pm.
    You'd work 9am to 5pm or 10am to 6pm, whichever you prefer.
    Set-up at 8am if you can, otherwise 10am. Either 4pm or 5pm finish.
    Please arrive between 8 and 8.30am; you'll be done between 4 and 5pm.
  `);
  test.each(ways)('%s', (way) => {
    const { firstCall, lastWrap } = facts(message(way));
    expect([firstCall, lastWrap]).toEqual([undefined, undefined]);
  });
  test('but what happens otherwise is no other hour', () => {
    expect(facts(message("Be at reception for 8.15am or you'll miss the lift, finished 4pm."))).toMatchObject({
      firstCall: '2026-12-12T08:15',
      lastWrap: '2026-12-12T16:00',
    });
  });
});

test('half past is of the hour told last', () => {
  expect(
    facts(message('We start at nine, so be here for half past eight. It all ends at five and you are free at half past.')),
  ).toMatchObject({
    firstCall: '2026-12-12T08:30',
    lastWrap: '2026-12-12T17:30',
  });
});

describe('the half of the day, where it is written apart or in other words', () => {
  test.each([
    ['Be with us at quarter past four (yes, am); over at 9am.', '2026-12-12T04:15', '2026-12-12T09:00'],
    ['Du solltest um 12:30 am Standesamt sein, um 22:00 Uhr ist Feierabend.', '2026-12-12T12:30', '2026-12-12T22:00'],
    ['Have to be set by 5 so get there 3.30am, and you are off by 8.30am.', '2026-12-12T03:30', '2026-12-12T08:30'],
    ['Could you be there at seven-thirty? All out by 1pm.', '2026-12-12T07:30', '2026-12-12T13:00'],
    ['You would be there from 5pm until 1 in the night.', '2026-12-12T17:00', '2026-12-13T01:00'],
  ])('%s', (way, firstCall, lastWrap) => expect(facts(message(way))).toMatchObject({ firstCall, lastWrap }));
});

describe('how I may leave before it is over, and what is given back then', () => {
  const ways = lines(`
    Load-in 3pm, they are kicked out at midnight but you can bail at 10:30 pm.
    Load-in 3pm, guests stay till midnight but you could slip away at 10:30pm.
    Be there at 3pm; we must hand back the hall at 10:30 pm.
    Be there at 3pm; the venue wants the room back by 10:30pm.
    Call 3pm. You needn't stay beyond the raffle, which is at 10:30pm.
    Call 3pm. It's chucking out at midnight but I'd not keep you past 10:30pm.
  `);
  test.each(ways)('%s', (way) =>
    expect(facts(message(way))).toMatchObject({ firstCall: '2026-12-12T15:00', lastWrap: '2026-12-12T22:30' }),
  );
});

test('hours that go on past midnight or begin at dawn are told by what the job is', () => {
  const job = (what: string): string => `Hi Kit,\nCan you film our ${what} on Saturday 12 December in Fargo?\nThanks,\nAnn Leverett`;
  expect(facts(job('club night, 10 till 3,')).firstCall).toBeUndefined();
  expect(facts(message('Call 11pm Saturday, wrap 5am Sunday.'))).toMatchObject({
    firstCall: '2026-12-12T23:00',
    lastWrap: '2026-12-13T05:00',
  });
  expect(facts(message('Hours are 9am to 5pm plus half an hour to rig either side.')).firstCall).toBeUndefined();
  expect(facts(message('Gates open at 8am but nothing happens before 10am!')).firstCall).toBeUndefined();
});
