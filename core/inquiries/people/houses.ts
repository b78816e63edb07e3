/**
 * Lines of a signature that are a house by how they are built: partners in a row, or words that the mail address is made of.
 */
import { foldName } from '../../places/fold.ts';
import { TITLE_WORDS, type PersonFact } from './words.ts';

/** "Finkelmeyer, Roe & Dunstable LLP", "Ash, Birch and Cole" */
const PARTNERS =
  /^\s*(\p{Lu}[\p{L}'-]{1,20}(?:, \p{Lu}[\p{L}'-]{1,20}){1,3},? (?:&|and) \p{Lu}[\p{L}'-]{1,20}(?: (?:LLP|LLC|PC|P\.C\.|Ltd|Solicitors|Architects|Partners|Associates|PLLC))?)\s*$/u;

/** Partners in a row. */
export function partnersIn(line: string, start: number): PersonFact | undefined {
  const written = PARTNERS.exec(line)?.[1];
  // "Producer, Slate & Cedar"
  if (written === undefined || TITLE_WORDS.test(written.split(',')[0] ?? '')) return undefined;
  const from = start + line.indexOf(written);
  return { value: written, start: from, end: from + written.length };
}

/** "Nine Palms Multicam" of lupe@ninepalms.example: a house, where the box before the sign is no part of it. */
export function isHouseOf(name: string, box: string, host: string): boolean {
  const words = foldName(name).split(/[^a-z0-9]+/);
  const domain = foldName(host).replace(/[^a-z0-9]/g, '');
  const [first = '', second = ''] = words;
  const own = foldName(box).split(/[^a-z]+/);
  return (
    words.length > 2 &&
    domain.startsWith(first + second) &&
    own.some((part) => part.length > 2) &&
    !words.some((word) => own.some((part) => part.length > 2 && (word.startsWith(part) || part.startsWith(word))))
  );
}

/** "Mobile, use this one: 027 ..." of several numbers. */
const PREFERRED = /\b(?:use this|this one|best (?:number|one|on)|preferred|try this|reach me (?:here|on)|direct line|my own)\b/i;
/** "(answerphone, nobody listens)", "fax" */
const NOT_THIS =
  /\b(?:fax|answerphone|answering machine|nobody (?:listens|answers|picks up)|not this|switchboard|emergenc\w+)\b|^\s*F[.: ]/i;

/** "Switchboard 020 ...": only where no other number is told. */
export const isLastResort = (text: string, phone: PersonFact): boolean =>
  NOT_THIS.test(text.slice(text.lastIndexOf('\n', phone.start) + 1, phone.start));

/** The number by which somebody wants to be reached, of several in a signature. */
export function bestPhone(text: string, phones: readonly PersonFact[]): PersonFact | undefined {
  const line = ({ start, end }: PersonFact): string => {
    const next = text.indexOf('\n', end);
    return text.slice(text.lastIndexOf('\n', start) + 1, next < 0 ? text.length : next);
  };
  return phones.find((phone) => PREFERRED.test(line(phone))) ?? phones.find((phone) => !NOT_THIS.test(line(phone))) ?? phones[0];
}

/** "ext. 22" belongs to the number. */
const EXTENSION = /^,? ?(?:ext|extn|extension|x|Durchwahl|DW|poste)\.? ?\d{1,5}(?!\d)/i;
export function withExtension(text: string, phone: PersonFact): PersonFact {
  const more = EXTENSION.exec(text.slice(phone.end, phone.end + 16))?.[0] ?? '';
  return more === '' ? phone : { value: phone.value + more, start: phone.start, end: phone.end + more.length };
}
