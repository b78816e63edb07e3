/**
 * Who signs with the last words of running text: a name, what its bearer is, and how to reach them: "- Dorothea Pym, Unit 14B, 720-555-0121",
 * "Vinny D / Vinny D Studios 914-555-0141", "Sorry again, Lotte Hale, +49 ...".
 */
import { OCCASION } from '../occasions.ts';
import { bodyIn } from './bodies.ts';
import type { Closing } from './closing.ts';
import { farewellAt } from './farewells.ts';
import { KIN_WORDS, NAME, namesArea, nameFrom, ORG_WORDS, TITLE_WORDS, type PersonFact } from './words.ts';

/** How far back a name with all that is beside it reaches. */
const REACH = 140;
/** A number to ring or an address at the end, with its label and the marks around it. */
const NUMBER =
  /[\s,|·/(-]*(?:(?<=[\s,|·/(-])(?:tel|tél|ph|phone|mob|mobile|cell|whatsapp|handy|on|or|m|t|e)[.:]{0,2}\s?)?(?:[(+]?\d[\d\s().-]{6,18}|[\w.+-]{1,60}@[\w.-]{3,80})[.)!]{0,2}$/iu;
const MOST_NUMBERS = 3;
const MARKS = /(?:\sx{1,3}|[\s.!)]|\p{Extended_Pictographic}|\ufe0f)+$/u;
/** A sentence or a line ends, or a dash leads on; a letter with a full stop is part of a name. */
const BOUNDARY =
  /(?<!(?:^|[\s,.])(?:\p{Lu}|St|Dr|Mr|Mrs|Ms|Rev|Prof|Mt|Hon|approx|incl|excl))[.!?)\]]["']?\s+|\n\s*|\s-{1,2}\s?|(?:\p{Extended_Pictographic}\ufe0f?)\s*|[:;]-?[)D]\s+/gu;
const WHOLE = new RegExp(String.raw`^${NAME.replaceAll(String.raw`\s`, ' ')}\.?$`, 'u');
/** "Sorry for the long message": words before a name that name nothing themselves. */
const LEAD = /^\p{L}[\p{Ll}'’]*(?: \p{Ll}[\p{Ll}'’-]*){0,6}$/u;
/** "club mom", "Sib's agent" */
const BEARER = new RegExp(String.raw`(?<!\p{L})(?:${KIN_WORDS})$`, 'iu');
/** What else stands before a number. */
const NOBODY =
  /^(?:reception|office|venue|hall|box office|front desk|stage door|caf[eé]|church|school|club|pub|gate|emergency|security|switchboard|number|deposit|total|ref|reference|po|order|job|account|sort code)(?!\p{L})/iu;
const SPEAKS =
  /(?<!\p{L})(?:you|your|we|i|i'm|is|are|was|has|have|will|would|can|could|need|needs|please|if|but|when|at|in|by|from \d)(?!\p{L})/iu;

type Piece = { text: string; start: number };

function piecesOf(text: string, start: number): Piece[] {
  const pieces: Piece[] = [];
  let at = start;
  for (const part of text.split(/(\s*[,|·(]\s*|\s\/\s)/)) {
    if (/[\p{L}\d]/u.test(part)) pieces.push({ text: part.trim(), start: at + part.length - part.trimStart().length });
    at += part.length;
  }
  return pieces;
}

/** The one who signs so, and for whom. */
export function lastWordsOf(body: string, isTown: (name: string) => boolean): Closing | undefined {
  const whole = body.trimEnd();
  const from = Math.max(0, whole.length - REACH);
  let foot = whole.slice(from).replace(MARKS, '');
  let numbers = 0;
  for (let found = NUMBER.exec(foot); found && numbers < MOST_NUMBERS; found = NUMBER.exec(foot)) {
    foot = foot.slice(0, found.index);
    numbers++;
  }
  foot = foot.replace(MARKS, '');
  const boundary = [...foot.matchAll(BOUNDARY)].at(-1);
  if (boundary === undefined) return undefined;
  const end = boundary.index + boundary[0].length;
  const dash = /^-{1,2}\s?/.exec(foot.slice(end))?.[0].length ?? 0;
  const dashed = dash > 0 || /-/.test(boundary[0]);
  const begin = end + dash;
  const bye = farewellAt(foot.slice(begin));
  const pieces = piecesOf(foot.slice(begin + bye), from + begin + bye);
  const at = pieces[0] && WHOLE.test(pieces[0].text) && nameFrom(pieces[0].text, 0) ? 0 : 1;
  const [piece, before] = [pieces[at], pieces[at - 1]];
  const name = piece && WHOLE.test(piece.text) ? nameFrom(piece.text, piece.start) : undefined;
  const rest = pieces.slice(at + 1);
  if (!piece || !name || (before && !LEAD.test(before.text)) || rest.length > 2 || rest.some(({ text }) => SPEAKS.test(text)))
    return undefined;
  const said = rest.some(({ text }) => BEARER.test(text) || TITLE_WORDS.test(text));
  if (numbers === 0 && !((dashed || bye > 0 || before) && said)) return undefined;
  if (before && numbers === 0 && !said) return undefined;
  if (isNobody(name, isTown) || (isTown(name.value) && (before !== undefined || numbers === 0))) return undefined;
  const organisation = rest
    .map(
      ({ text, start }) =>
        bodyIn(text, start, isTown) ??
        (ORG_WORDS.test(text) && /^\p{Lu}.* /u.test(text) ? { value: text, start, end: start + text.length } : undefined),
    )
    .find((fact) => fact !== undefined);
  return { name, ...(organisation ? { organisation } : {}) };
}

const isNobody = ({ value }: PersonFact, isTown: (name: string) => boolean): boolean =>
  NOBODY.test(value) ||
  /^\p{Lu}{1,3}$/u.test(value) ||
  TITLE_WORDS.test(value) ||
  namesArea(value) ||
  OCCASION.test(value) ||
  (value.includes(' ') && isTown(value));
