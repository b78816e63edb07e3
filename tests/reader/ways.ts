/**
 * Ways of saying one thing, a line each: they teach the reader, and the tests try every one of them.
 */
import { readFileSync } from 'node:fs';
import { homeOf, type Message } from './corpus.ts';

type Ways = 'calls' | 'no-calls' | 'wraps' | 'replies' | 'no-replies' | 'asks' | 'none' | 'beside' | 'beside-hours' | 'lengths';

export function waysOf(name: Ways): string[] {
  return readFileSync(new URL(`ways/${name}.txt`, import.meta.url), 'utf8')
    .trim()
    .split('\n');
}

const ASKED = 'Hi Kit,\nCan you film our annual gala on Saturday 12 December in Fargo?';

/** A message in which something is said of one gala. */
export const said = (way: string): string => `${ASKED} ${way}\nThanks,\nAnn Leverett`;

/** Hours of mine beside which something else is said, as no sentence says them. */
const [CALL, WRAP] = ['2:20pm', '10:50pm'];
/** Messages about a day in which something beside the work is said, with hours of mine. */
const BESIDE: readonly ((way: string) => string)[] = [
  (way) =>
    `We have our anniversary in Fargo on Saturday 12 December and would like it filmed. ${way} Be there at ${CALL}, done by ${WRAP}.`,
  (way) => `Dear Kit, would you record our choir's concert, Saturday 12 December, Fargo? You would work from ${CALL} to ${WRAP}. ${way}`,
  (way) => `Our wedding is on Saturday 12 December in Fargo. Call is ${CALL}. ${way} You can go at ${WRAP}. Could you film it?`,
  (way) => `Could you film our fair in Fargo on Saturday 12 December? Load-in ${CALL}, wrap ${WRAP}. ${way}`,
];
/** The messages in which something beside the work is said, each with the hours of mine that it tells. */
export const saidBeside = (way: string): { text: string; firstCall: string; lastWrap: string }[] =>
  BESIDE.map((message) => ({
    text: `${message(way)}\nThanks,\nAnn Leverett`,
    firstCall: '2026-12-12T14:20',
    lastWrap: '2026-12-12T22:50',
  }));

/** The same Saturday, as people write it. */
const SATURDAY = ['Saturday 12 December', 'Sat 12 Dec', 'Saturday the 12th of December', '12 December (a Saturday)'];
/** Messages of which one sentence says whether one day is asked for or more. */
const ASKED_FOR: readonly ((way: string) => string)[] = [
  (way) => `Hi Kit, we are a choir in Fargo and would like you to film us. ${way} We can pay $600. Let me know by Friday.`,
  (way) =>
    `Dear Kit, ${way} Could you film it for us? It is in Moorhead, in the hall behind the church, and you would be there from 2pm to 9pm.`,
  (way) => `Hello, I run a small club in Fargo and we have never had a film of what we do. ${way} Are you free, and what would it cost?`,
  (way) => `Hi there! ${way} We need somebody with a camera, in Fargo, call is 9am. $450 a day. My number is 701-555-0142.`,
];
/** One of the messages that say how many days are asked for: `more` or `one`, and the sentence with its date. */
export function saidLength(line: string, at: number): { text: string; more: boolean } {
  const [is, way = ''] = line.split('\t');
  const sentence = way.replaceAll('{D}', SATURDAY[at % SATURDAY.length] as string);
  return { text: `${(ASKED_FOR[at % ASKED_FOR.length] as (way: string) => string)(sentence)}\nThanks,\nAnn Leverett`, more: is === 'more' };
}

const message = (text: string, isInquiry: boolean, fields: Message['fields']): Message => {
  const homePlace = homeOf('duluth');
  const receivedAt = '2026-11-25T09:12:00-06:00[America/Chicago]';
  return { id: 'way', half: 'tuned', text, receivedAt, homeZone: homePlace.zone, homePlace, isInquiry, fields, open: new Set(), asked: [] };
};

const ofGala = (names: readonly Ways[], before: string, more: Message['fields']): Message[] =>
  names.flatMap(waysOf).map((way) => message(said(`${before}${way}`), true, { start: '2026-12-12', end: '2026-12-12', days: 1, ...more }));

/** The ways as messages: those that say something of the gala, and those of which only the kind is known. */
export function taught(): { gala: Message[]; kinds: Message[]; lengths: Message[] } {
  const beside = waysOf('beside-hours').flatMap((way, at) => saidBeside(way)[at % BESIDE.length] ?? []);
  return {
    gala: [
      ...ofGala(['calls'], '', { firstCall: '2026-12-12T07:30', lastWrap: '2026-12-12T17:00' }),
      ...ofGala(['wraps'], 'Call 9am. ', { firstCall: '2026-12-12T09:00', lastWrap: '2026-12-12T17:00' }),
      ...ofGala(['replies'], '', { replyBy: '2026-12-01T23:59' }),
      ...ofGala(['no-calls', 'no-replies', 'beside'], '', {}),
      ...beside.map(({ text, ...hours }) => message(text, true, { start: '2026-12-12', end: '2026-12-12', days: 1, ...hours })),
    ],
    lengths: waysOf('lengths').flatMap((line, index) =>
      ASKED_FOR.map((_, frame) => saidLength(line, index + frame)).map(({ text, more }) =>
        message(text, true, { start: '2026-12-12', end: more ? '2026-12-13' : '2026-12-12', days: more ? 2 : 1 }),
      ),
    ),
    kinds: [...waysOf('asks').map((text) => message(text, true, {})), ...waysOf('none').map((text) => message(text, false, {}))],
  };
}

/** Where the words that are the same in every message about the gala end. */
export const SAME = ASKED.length;
