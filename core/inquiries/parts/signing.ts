/**
 * Who signs without a word of farewell: last lines of a name, an office, a house, an address or a number.
 */
import { LETTERS_AFTER, mayBeOrganisation, NUMBERED_BODY, ORG_WORDS, TITLE_WORDS } from '../people/words.ts';
import { FORM } from '../people/ranks.ts';
import { blank, reaches, short, type Line, type PartKind } from './lines.ts';

/** "Brightkeel Live, Inc.": no sentence ends there. */
const LEGAL_END = /,? (?:Inc|Ltd|Co|Corp|e\.\s?V|S\.\s?[AL]|B\.V)\.$/u;
/** "Head of People", "Production Coordinator | Fable & Crane Productions": a line that says who somebody is. */
const isCredential = (words: string): boolean =>
  words.length <= 70 &&
  !/[?!.:]$|\d(?!\d{0,3} \p{Lu})/u.test(words.replace(LEGAL_END, '')) &&
  /^[(]?\p{Lu}/u.test(words) &&
  (TITLE_WORDS.test(words) || ORG_WORDS.test(words)) &&
  !SENTENCE.test(words);
/** A street with its number, a postal code behind a town. */
const ADDRESS =
  /^\d{1,5}[a-z]?\s.{3,60}\b(?:st|street|ave|avenue|rd|road|blvd|lane|ln|drive|dr|way|suite|square|court|ct|place|highway|hwy)\b|\b[A-Z]{2}\.?,?\s\d{5}(?:-\d{4})?$|\b[A-Z]{1,2}\d[\dA-Z]?\s\d[A-Z]{2}$|\b[A-Z]\d[A-Z]\s?\d[A-Z]\d$|^p\.?o\.? box/i;
const SENTENCE =
  /\b(?:is|are|was|we|i|you|need|needs|have|has|will|would|can|could|please|film|shoot|looking|starts?|call|wrap|load-in|doors|budget)\b/i;
const NAME_AND_MORE = /^[-\s]{0,3}(?:\p{Lu}[\p{L}'.-]{0,28}\s?){1,4}(?:,|\s[|/-]|\s\()\s?(.{2,60})$/u;
export const NAME_ONLY =
  /^[-–—\s]{0,3}(?:(?:[dlDL]['’])?\p{Lu}[\p{L}'.-]{0,28}\s?(?:(?:[&+]|[ds]\/o|a\/[lp]|bte?|binti?|ibn|and|et|und|y|e|en|ap|ab|van|von|de|du|der|den|da|di|del|della|dos|la|le|bin|al|el|ter|ten|af|av|zu|zum)\s){0,2}){1,4}[,.]?(?:\s?x{1,3})?$/u;
/** "Colm Gallen, Assistant Secretary": a name and what its bearer is. */
export function isTitled(words: string): boolean {
  const beside = NAME_AND_MORE.exec(words)?.[1]
    ?.replace(/\)$/, '')
    .replace(/^\d{1,2}(?:st|nd|rd|th) /, '')
    .replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());
  return beside !== undefined && (isCredential(beside) || mayBeOrganisation(beside));
}
/** Words with capitals and little ones between them, no sentence: whom or what somebody is of. */
const CALLED_SO =
  /^[(]?(?:\p{Lu}[\p{L}\p{N}'&.-]*[,)]?|&|[+@/|–-]|\p{Ll}['’]\p{Lu}[\p{L}'-]*|\p{Ll}{1,4})(?:\s(?:A\/V|\p{Lu}[\p{L}\p{N}'’&.-]*[,)]?|&|[+@/|–-]|\p{Ll}['’]\p{Lu}[\p{L}'-]*|\p{Ll}{1,4}|e\.\s?V\.))*$/u;

/** A line below a name that tells of whom somebody is in any words: no sentence, no figures. */
const isOfWhom = (words: string): boolean =>
  /^\p{Lu}[^.!?:@\d]{2,60}$/u.test(words) && words.split(/\s+/).length <= 7 && !SENTENCE.test(words);
/** "xo Marguerite", "Ngā mihi nui, Andrea Fitt": a farewell in a few words and who bids it. */
const PARTING_NAME =
  /^(?:[xX][xoX]*|[\p{L}'-]{2,14}(?: [\p{Ll}'-]{1,12}){1,4},|(?:[tT]hanks|[cC]heers|[lL]ove|[rR]egards|[bB]est|[gG]r(?:oet|uß|uss)),?)\s\p{Lu}[\p{L}'-]{1,20}(?: \p{Lu}[\p{L}'-]{1,20}){0,2}$/u;
const FULL_NAME = /^(?:\p{Lu}[\p{L}'.-]*\s)+(?:\p{Ll}{1,3}\s){0,2}(?:\p{Ll}')?\p{Lu}/u;

/** Last lines of a name and below it whom somebody is of, and how to reach them: a paragraph of their own, or after a finished sentence. */
function signedBlock(lines: readonly Line[], kinds: readonly PartKind[], flow: PartKind, last: number): number | undefined {
  const fits = (words: string): boolean =>
    words.length <= 80 &&
    (isCredential(words) ||
      (ADDRESS.test(words) && !words.includes(':') && !SENTENCE.test(words)) ||
      CALLED_SO.test(words) ||
      (reaches(words) && words.split(/\s+/).length <= 9));
  let top = last;
  while (top > 0 && last - top < MOST_SIGNED && kinds[top - 1] === flow && !blank(lines[top - 1])) top--;
  for (let first = Math.max(top, 1); first < last; first++) {
    const name = bareName(short(lines[first]));
    const apart = kinds[first - 1] !== flow || blank(lines[first - 1]);
    const ended = apart || /[.!?),]\s*$/.test((lines[first - 1]?.text ?? '').slice(-4));
    const named = (NAME_ONLY.test(name) && !ORG_WORDS.test(name) && (apart || FULL_NAME.test(name))) || isTitled(name);
    const below = lines.slice(first + 1, last + 1).map((line) => short(line).replace(NUMBERED_BODY, ''));
    if (
      ended &&
      name.length <= 40 &&
      (named || PARTING_NAME.test(name)) &&
      (below.every((words, at) => fits(bareBody(words)) || (at === 0 && isOfWhom(words))) ||
        (apart && FULL_NAME.test(name) && endsIn(below)))
    )
      return first;
  }
  return undefined;
}
const MOST_SIGNED = 6;
/** "Verein Seeblick (gegr. 1901)" */
const bareBody = (words: string): string => words.replace(/ \([^()]{2,40}\)$/u, '');
const MOST_BELOW = 3;
/** Below a name that begins a paragraph: any few lines that end in how to reach somebody, or what somebody is in small letters: "director / set / tea". */
const endsIn = (below: readonly string[]): boolean =>
  below.length <= MOST_BELOW &&
  ((below.length > 1 && isReach(below.at(-1) ?? '') && below.every((words) => words.length <= 80 && !/[?!]$/.test(words))) ||
    (below.length === 1 &&
      below.every((words) => /^\p{Ll}[^.!?:@\d]{2,40}$/u.test(words) && words.split(/\s+/).length <= 6 && !SENTENCE.test(words))));
/** Nothing but a number or an address. */
const isReach = (words: string): boolean => reaches(words) && words.split(/\s+/).length <= 6 && !/\p{L}{4,} \p{L}{2,}/u.test(words);
/** A name without its rank, its degrees and what stands in brackets behind it: "Sqn Ldr (retd) Derek Haworth", "Gan Siew Ling (Ms)". */
export const bareName = (words: string): string =>
  words
    .replace(/^(?:\\m\/|[\p{Extended_Pictographic}\ufe0f~*])\s?/u, '')
    .replace(/^\((\p{L}{2,5}\.?)\)(?= )/u, '$1')
    .replace(/^\(([^()]+)\)$/u, '$1')
    .replace(FORM, '')
    .replace(/,? (?:jun|sen|jr|sr|jnr|snr)\.?$/iu, '')
    .replace(/(?<=\p{L}) \([\p{L}'’ ./&-]{2,30}\)$/u, '')
    .replace(LETTERS_AFTER, '');

/** Last lines that only name, phone or link are a signature also without a word of farewell. */
export function signUnannounced(lines: readonly Line[], kinds: PartKind[]): void {
  for (const flow of ['own', 'forwarded'] as const) {
    const last = kinds.findLastIndex((kind, line) => kind === flow && !blank(lines[line]));
    const block = signedBlock(lines, kinds, flow, last);
    if (block !== undefined && lines.slice(0, block).some((line, index) => kinds[index] === flow && !blank(line))) {
      kinds.fill('signature', block, last + 1);
      continue;
    }
    let at = last;
    let contacts = 0;
    let anchored = false;
    let from = at + 1;
    while (at > 0 && kinds[at] === flow) {
      const words = short(lines[at]);
      // A line too long for `short` is prose.
      if (words === '' && !blank(lines[at])) break;
      if (words === '') {
        if (contacts > 0 || from <= last) {
          if (from <= at + 1) break;
        }
        at--;
        continue;
      }
      const contact =
        words.length <= 80 &&
        reaches(words) &&
        !/[?]/.test(words) &&
        words.split(/\s+/).length <= 9 &&
        !/\b(?:call|email|mail|reach|text|ring)\b/i.test(words);
      const name = NAME_ONLY.test(words) && words.length <= 40 && words.split(/\s+/).length <= 4;
      const address = ADDRESS.test(words) && words.length <= 80 && !words.includes(':') && !SENTENCE.test(words);
      if (!contact && !name && !isTitled(words) && !isCredential(words) && !address && !(contacts > 0 && mayBeOrganisation(words))) break;
      if (!address) anchored = true;
      if (contact) contacts++;
      from = at;
      at--;
    }
    const first = lines.slice(0, from).some((line, index) => kinds[index] === flow && !blank(line));
    if (first && anchored) for (let line = from; line <= last; line++) if (kinds[line] === flow) kinds[line] = 'signature';
  }
}
