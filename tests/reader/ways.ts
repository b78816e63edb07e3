/**
 * Ways of saying one thing, a line each: they teach the reader, and the tests try every one of them.
 */
import { readFileSync } from 'node:fs';
import { homeOf, type Message } from './corpus.ts';

type Ways = 'calls' | 'no-calls' | 'wraps' | 'replies' | 'no-replies' | 'asks' | 'none' | 'beside' | 'beside-hours';

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

const message = (text: string, isInquiry: boolean, fields: Message['fields']): Message => {
  const homePlace = homeOf('duluth');
  const receivedAt = '2026-11-25T09:12:00-06:00[America/Chicago]';
  return { id: 'way', half: 'tuned', text, receivedAt, homeZone: homePlace.zone, homePlace, isInquiry, fields, open: new Set(), asked: [] };
};

const ofGala = (names: readonly Ways[], before: string, more: Message['fields']): Message[] =>
  names.flatMap(waysOf).map((way) => message(said(`${before}${way}`), true, { start: '2026-12-12', end: '2026-12-12', days: 1, ...more }));

/** The ways as messages: those that say something of the gala, and those of which only the kind is known. */
export function taught(): { gala: Message[]; kinds: Message[] } {
  const beside = waysOf('beside-hours').flatMap((way, at) => saidBeside(way)[at % BESIDE.length] ?? []);
  return {
    gala: [
      ...ofGala(['calls'], '', { firstCall: '2026-12-12T07:30', lastWrap: '2026-12-12T17:00' }),
      ...ofGala(['wraps'], 'Call 9am. ', { firstCall: '2026-12-12T09:00', lastWrap: '2026-12-12T17:00' }),
      ...ofGala(['replies'], '', { replyBy: '2026-12-01T23:59' }),
      ...ofGala(['no-calls', 'no-replies', 'beside'], '', {}),
      ...beside.map(({ text, ...hours }) => message(text, true, { start: '2026-12-12', end: '2026-12-12', days: 1, ...hours })),
    ],
    kinds: [...waysOf('asks').map((text) => message(text, true, {})), ...waysOf('none').map((text) => message(text, false, {}))],
  };
}

/** Where the words that are the same in every message about the gala end. */
export const SAME = ASKED.length;
