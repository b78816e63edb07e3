/**
 * First calls that any person would take for one: where to be, who lets me in, what a form asks, hours of every day of a row; and hours that look
 * like them and are of somebody else.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

const HOME = 'leeds';
const NOW = '2027-01-20T10:00+00:00[Europe/London]';
const ONE_DAY = 'Please film our open day on Friday 12 March in Leeds.';
const call = (text: string): string => facts(text.replaceAll('//', '\n'), NOW, HOME).firstCall?.slice(5).replace('T', ' ') ?? '-';

const stated: [called: string, ways: string][] = [
  [
    '03-12 09:00',
    `
    The service is at 10.30, so in the hall by 9 please.
    Doors are at noon, so please in the foyer for 9am.
    Doors at noon but I need bums on seats at 9.
    Doors at noon but we want boots on the ground by 9.
    The supplier shall be present no later than 9 a.m.
    The contractor must be present from 9.00.
    You would be admitted at 9h00.
    Technicians are let into the hall at 9.00.
    Vendors are let onto the square from 9am.
    The chapel opens for suppliers at 9.00; at 18.00 everything has to be out.
    Access for contractors is from 9am.
    The time for you is 9.00, when we are all in costume.
    No need for you till 9.00, prizes at half two.
    We'd ask for everyone in the marquee by 9am.
    The hall's people want the camera person there at 9.00.`,
  ],
  [
    '03-12 08:30',
    `
    8.30am weigh-ins (be there), finals at 6pm.
    8.30am safety talk, be there please.
    Volunteers arrive from 8.30am and I think that would be a good time for you too.
    The first talk is at 10am; I'll be there from 8.30 to let you in.
    My sister is at the hall from 8.30am and can let you in.
    The porter comes at 8.30am and will unlock for you.
    Be on site by 8.30am for the walk-through.
    Arrive at 8.30am for coffee, doors are at ten.
    You need to be at the bandstand at 8.30am because the road closes at nine.
    So you'd be on the bank from 8.30; the boats are on the water at 9.
    The gates are opened for you at 08h30.
    The call's 8.30am because they want the lift first.
    The gym would be yours from 8.30am.
    Doors 10:00. 8.30am is enough for set up.
    The call has moved: 8.30am now, not 9.15am.
    You're wanted at 8.30 now, not 9.15.`,
  ],
  ['03-12 13:00', `What time should we be there? 1pm//What time does it end? 11pm//From what time does the bar open? 6pm`],
  ['03-12 09:30', `What time do you need us from? 9.30am//Until what time? 5pm`],
  ['03-12 09:30', `When does filming start?//9.30am//When should the crew leave?//5pm`],
  ['03-12 10:00', `IN: Fri 12/3 10:00//Doors: 12:00`],
  ['03-12 06:30', `3. Call - 06h30 crew breakfast//4. Doors - 09h00`],
];

describe('a first call that is plainly told', () => {
  test.each(stated.flatMap(([called, ways]) => lines(ways).map((way) => [called, way] as const)))('%s: %s', (called, way) =>
    expect(call(`${ONE_DAY} ${way}`)).toBe(called),
  );
});

const days: [called: string, ways: string][] = [
  [
    '03-11 16:00',
    `
    Please film our congress in Leeds on Friday 12 and Saturday 13 March. Set-up is on Thursday 11 March from 4pm, doors are at 9am on Friday and we end at 6pm on Saturday.
    Camera op for our congress in Leeds, 12-13 March 2027.//Load-in: Thu 11 March, 4pm//Show: 9am//Strike complete: Sat 9pm`,
  ],
  [
    '03-12 15:00',
    `
    can you TD our conference in leeds fri-sat 12-13 march 2027? fri 3pm-10pm sat 8am-4pm. 500/day.
    One camera op in Leeds please.//12/3/2027 Fri 3pm-9pm//13/3/2027 Sat 7am-7pm//14/3/2027 Sun 7am-11pm//Rate 68/hr`,
  ],
];

describe('a first call of several days', () => {
  test.each(days.flatMap(([called, ways]) => lines(ways).map((way) => [called, way] as const)))('%s: %s', (called, way) =>
    expect(facts(way.replaceAll('//', '\n'), NOW, HOME).firstCall?.slice(5).replace('T', ' ')).toBe(called),
  );
});

test('hours of the shows on each of the days are not mine before those of the rigging', () =>
  expect(
    facts(
      'Please film our festival in Leeds on 12 and 13 March. The hall is free for rigging from 1pm on the Friday. Shows: Friday 7.30 to 9.45pm; Saturday 7 to 9.30pm.',
      NOW,
      HOME,
    ).firstCall,
  ).not.toBe('2027-03-12T19:30'));

test('where a set-up is told and then when I may come, it is asked', () =>
  expect(call(`${ONE_DAY} Set-up from 9, judging at noon, you can show up at 11.`)).toBe('-'));

describe('an hour that only looks like a first call', () => {
  test.each(
    lines(`
    The mayor will be present at 9am.
    The judges must be present by 9am.
    What time do guests arrive? 9am
    What time should the guests be there? 9am
    What time does the café open? 9am
    The caterers are at the hall from 9am and the bride lets them in.
    I'll be there from 9am to set out the chairs.
    Load-in for sound and lights is 9am.
    The café opens for visitors at 9.00.
    Volunteers are let into the hall at 9.00.
    Guests are let into the hall at 9.00.`),
  )('%s', (way) => expect(call(`${ONE_DAY} ${way}`)).toBe('-'));
});
