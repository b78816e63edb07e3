/**
 * Who speaks in a row of messages that was copied with the names before them: "Devon: got a sec?", "Tasha Brand — 9:38 AM".
 */
import { NAME, nameFrom, type PersonFact } from './words.ts';

const SPEAKS = new RegExp(
  String.raw`^[^\S\n]{0,3}(${NAME.replaceAll(String.raw`\s`, ' ')})(?:: (?=\S)| [—–-] \d{1,2}[:.]\d\d(?: ?[aApP][mM])?[^\S\n]*$)`,
  'gimu',
);
/** The one who is asked. */
const ASKED = /^(?:Me|You|Kit|Kit .*|I|Ich|Ik|Moi|Yo)$/u;
/** More labels than one speaker make a form. */
const LEAST_LINES = 2;

/** The only one who speaks besides the one who is asked. */
export function speakerIn(text: string): PersonFact | undefined {
  const found = [...text.matchAll(SPEAKS)];
  const others = found.filter(({ 1: name = '' }) => !ASKED.test(name));
  const [first] = others;
  if (!first?.[1] || found.length < LEAST_LINES || others.some(({ 1: name }) => name !== first[1])) return undefined;
  if (others.length < LEAST_LINES && found.length === others.length) return undefined;
  return nameFrom(first[1], first.index + first[0].indexOf(first[1]));
}
