/**
 * Hours that look like a call: when a message came, what is struck out further on, an hour of the wrong half of an evening's day, what a bracket parts.
 */
import { expect, it } from 'vitest';
import { callOf, facts, lines, readAt } from './reading.ts';

/** The call of a message as it stands, `-` where none is stated. */
const call = (text: string): string => facts(text, '2027-06-29T20:00:00+01:00[Europe/London]', 'leeds').firstCall?.slice(5) ?? '-';

it.each(
  lines(`
    Missed call 7:52 PM (719) 555-0122
    Voice message from 218-555-0159, 4:41 PM:
    Voicemail, Tuesday 4:41 PM, 0:48
    [Voicemail transcript, 9:05am]
    Text message 8.15am:`),
)('no hour of the job is when a message came: %s', (head) => {
  expect(call(`${head}\n"Kit, this is Wes Orton in Whitby. The pageant is July thirtieth, and they asked me to find a camera guy."`)).toBe(
    '-',
  );
});

it('an hour behind the words for a message is a call where it says so', () => {
  expect(call('Voicemail: Kit, we need you at 7:30 am on 30 July in Whitby to film our pageant.')).toBe('07-30T07:30');
});

const GAMES = 'Could you film our games in Whitby on 12 September? Please report to the tent at 8';

it.each([
  ["o'clock. Prizes are at five.\n\nPS Disregard eight o'clock, the park isn't unlocked before nine. Nine it is.", '09-12T09:00'],
  [" am. Ignore 8 am, make it 9 o'clock.", '09-12T09:00'],
  [' am. Forget the 8 am start, I will ring you.', '-'],
  [' am. Forget about parking at 10.', '09-12T08:00'],
])('what is struck out further on does not hold: %s', (words, expected) => {
  expect(call(`${GAMES}${words}`)).toBe(expected);
});

it.each([
  [
    "his surprise 40th on Friday week? It's in Naas, upstairs in the rugby club. Be there for half seven, he comes at half eight, and you can leave at eleven.",
    '07-09T19:30',
  ],
  ['our wedding on Friday week? It is in Naas. Be there for half seven, the vows are at half eight, leave at eleven.', '07-09T07:30'],
])('no party begins with a day of work: %s', (words, expected) => {
  expect(call(`Hiya, could you film ${words}`)).toBe(expected);
});

it('which half of New Year’s Eve is asked about where nothing else tells it', () => {
  expect(call('new years eve in whitby. set up from 7, band on at 9, done half 12. wanting it filmed.')).toBe('-');
});

it('a bracket between two hours does not part them', () => {
  const { firstCall, lastWrap } = facts(
    'Could you film our open-air cinema in Whitby from Wed 15 till Sun 19 September? Each evening from 19:00 (then please be there) to approximately 23:30.',
    '2027-06-29T20:00:00+01:00[Europe/London]',
    'leeds',
  );
  expect([firstCall, lastWrap]).toEqual(['2027-09-15T19:00', '2027-09-19T23:30']);
});

it.each([
  ['Sound sets up the evening before but the cameras go in on the morning, 4.15am.', '04:15'],
  ['Access: caretaker from 12.00, decoration 13.00.', '-'],
  ['Pōwhiri 10am, lunch at noon.', '-'],
])('what is told of others or of another day: %s', (words, expected) => {
  expect(callOf(words)).toBe(expected);
});

const ON = 'Could you film our fair on Saturday 10 July in Leeds? ';

it.each([
  [`${ON}Your call time is 8am and we wrap at 4pm. Please don't forget the 8am call.`, '07-10T08:00'],
  [`${ON}Call is 8am, wrap 8pm. PS scrap the 8pm, make it 10pm.`, '07-10T08:00'],
  [`${ON}Call time 8am. Ignore the 8am on the poster, that's for exhibitors.`, '07-10T08:00'],
  [
    'The countdown is on for our charity 10k! We need a videographer in Leeds on Sunday 18 July. Be there at 7, race starts at 9, wrap at 1pm.',
    '07-18T07:00',
  ],
  ['Please film our village fete in Ilkley on Saturday 10 July. Be there at 9, brass band on the green.', '07-10T09:00'],
  [
    'Can you film our conference awards in Leeds on 15 July? Be there at 7.30, opening at 8.45, awards dinner from 7pm and you can go at 10pm.',
    '07-15T07:30',
  ],
  [
    "Can you film our New Year's Eve wedding in Harrogate, 31 December? Be there at 9 for bridal prep, ceremony at 1, you can go at 10pm.",
    '12-31T09:00',
  ],
  ['Promo in Leeds on 10 July, we need video. 9am to 4pm with local people only, no actors.', '07-10T09:00'],
])('hours beside such words stay calls: %s', (text, expected) => {
  expect(call(text)).toBe(expected);
});

it('which half of the day it is may be asked of a crew that starts with the sun, and not stated as the evening', () => {
  const { fields, questions } = readAt(
    "Kit,\n\nWe're raising a barn near Whitby on Saturday, 17 July and I'd like it on film. Crew starts at sunup, be here at 5:30. You're through when my wife rings the supper bell, and she rings it at six.\n\n£800.\n\nArne Vane",
    '2027-06-29T20:00:00+01:00[Europe/London]',
    'leeds',
  );
  const choices = questions.find(({ field }) => field === 'firstCall')?.choices.map(({ value }) => value) ?? [];
  expect([fields.firstCall, ...choices]).toContain('2027-07-17T05:30');
  expect(fields.firstCall).not.toBe('2027-07-17T17:30');
});

it.each([
  [
    'our harvest supper in Whitby on Saturday 25 September? The farm is going from dawn but we need you from 6.30 for the supper and dance until 11. £300.',
    '09-25T18:30',
  ],
  [
    'our choir concert in Whitby on Saturday 18 September, there at 6 please, concert 7.30 to 9.30. My brother starts at dawn the next day so no late finish.',
    '09-18T18:00',
  ],
])("another's dawn makes no morning of an evening: %s", (words, expected) =>
  expect(call(`Hi Kit, could you film ${words} Robin`)).toBe(expected),
);
