/**
 * Who signs without a word of farewell: last lines of a name, an office, a house, an address or a number.
 */
import { mayBeOrganisation, ORG_WORDS, TITLE_WORDS } from '../people/words.ts';
import { blank, reaches, short, type Line, type PartKind } from './lines.ts';

/** "Head of People", "Production Coordinator | Fable & Crane Productions": a line that says who somebody is. */
const isCredential = (words: string): boolean =>
  words.length <= 70 &&
  !/[?!.:]$|\d/.test(words) &&
  /^[(]?\p{Lu}/u.test(words) &&
  (TITLE_WORDS.test(words) || ORG_WORDS.test(words)) &&
  !SENTENCE.test(words);
/** A street with its number, a postal code behind a town. */
const ADDRESS =
  /^\d{1,5}[a-z]?\s.{3,60}\b(?:st|street|ave|avenue|rd|road|blvd|lane|ln|drive|dr|way|suite|square|court|ct|place|highway|hwy)\b|\b[A-Z]{2}\.?,?\s\d{5}(?:-\d{4})?$|\b[A-Z]{1,2}\d[\dA-Z]?\s\d[A-Z]{2}$|\b[A-Z]\d[A-Z]\s?\d[A-Z]\d$|^p\.?o\.? box/i;
const SENTENCE =
  /\b(?:is|are|was|we|i|you|need|needs|have|has|will|would|can|could|please|film|shoot|looking|starts?|call|wrap|load-in|doors|budget)\b/i;
const NAME_AND_MORE = /^[-\s]{0,3}(?:\p{Lu}[\p{L}'.-]{0,20}\s?){1,4}(?:,|\s[|/-]|\s\()\s?(.{2,60})$/u;
export const NAME_ONLY =
  /^[-–—\s]{0,3}(?:\p{Lu}[\p{L}'.-]{0,20}\s?(?:(?:[&+]|and|et|und|y|e|en|van|von|de|du|der|den|da|di|del|della|dos|la|le|bin|al|el|ter|ten|af|av|zu|zum)\s){0,2}){1,4}[,.]?(?:\s?x{1,3})?$/u;
/** Words with capitals and little ones between them, no sentence: whom or what somebody is of. */
const CALLED_SO =
  /^[(]?(?:\p{Lu}[\p{L}\p{N}'&.-]*[,)]?|&|[+@/|–-]|\p{Ll}['’]\p{Lu}[\p{L}'-]*|\p{Ll}{1,4})(?:\s(?:\p{Lu}[\p{L}\p{N}'’&.-]*[,)]?|&|[+@/|–-]|\p{Ll}['’]\p{Lu}[\p{L}'-]*|\p{Ll}{1,4}|e\.\s?V\.))*$/u;

/** A last paragraph of a name and below it whom somebody is of, and how to reach them. */
function signedBlock(lines: readonly Line[], kinds: readonly PartKind[], flow: PartKind, last: number): number | undefined {
  let first = last;
  while (first > 0 && kinds[first - 1] === flow && !blank(lines[first - 1])) first--;
  const block = lines.slice(first, last + 1).map(short);
  const [name = '', ...rest] = block;
  if (first === 0 || block.length < 2 || block.length > 6 || !NAME_ONLY.test(name) || name.length > 40 || ORG_WORDS.test(name))
    return undefined;
  const fits = (words: string): boolean =>
    words.length <= 80 && (isCredential(words) || CALLED_SO.test(words) || (reaches(words) && words.split(/\s+/).length <= 9));
  return rest.every(fits) ? first : undefined;
}

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
      const more = NAME_AND_MORE.exec(words)?.[1];
      const beside = more?.replace(/\)$/, '').replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());
      const titled = beside !== undefined && (isCredential(beside) || mayBeOrganisation(beside));
      const address = ADDRESS.test(words) && words.length <= 80 && !words.includes(':') && !SENTENCE.test(words);
      if (!contact && !name && !titled && !isCredential(words) && !address && !(contacts > 0 && mayBeOrganisation(words))) break;
      if (!address) anchored = true;
      if (contact) contacts++;
      from = at;
      at--;
    }
    const first = lines.slice(0, from).some((line, index) => kinds[index] === flow && !blank(line));
    if (first && anchored) for (let line = from; line <= last; line++) if (kinds[line] === flow) kinds[line] = 'signature';
  }
}
