/**
 * The body that a mail address is of, where the text names it: "Otway Bushwalkers" and president@otwaybushwalkers.example.
 */
import { foldName } from '../../places/fold.ts';
import { NO_ORG } from './organisation.ts';
import { CAPITALISED, TITLE_WORDS, type PersonFact } from './words.ts';

/** A name ends with its line, or goes on where a line was broken. */
const NAMES = [CAPITALISED.replaceAll(String.raw`\s`, ' '), CAPITALISED].map(
  (name) => new RegExp(String.raw`(?<![\p{L}.@-]|(?<![dlDL])')${name}`, 'gu'),
);
const ARTICLE = /^(?:the|der|die|das|el|la|los|las|le|il|lo|het) (?=\p{L})/iu;
/** What is on once is no body. */
const ONCE = /\b(?:fair|fayre|contest|show|gala|ball|race|derby|day|cup|parade|games|concert)$/i;
/** A word so short may stand in any address. */
const LEAST_LETTERS = 4;
/** Providers of letter boxes, and words of any address. */
const SHARED = /mail|inbox|post|correo|online|family|familia|example/i;

/** The letters of the house of an address, without its country or kind. */
function lettersOf(email: string | undefined): string {
  const host = (email?.split('@')[1] ?? '').split('.').slice(0, -1).join('');
  return foldName(host).replace(/[^a-z0-9]/g, '');
}

const longWords = (name: string): string[] =>
  foldName(name)
    .split(/[^a-z0-9]+/)
    .filter((word) => word.length >= LEAST_LETTERS);

/** "Stage & Technical" and stage@samskritisangam.example: no word of the name stands in the address behind its sign. */
export const isNotOfDomain = (name: string, email: string | undefined): boolean => {
  const domain = lettersOf(email);
  return !longWords(name).some((word) => domain.includes(word));
};

/** The longest name whose words the address is made of; nothing for a person's own. */
export function bodyOfDomain(
  text: string,
  email: string | undefined,
  person: string | undefined,
  isTown: (name: string) => boolean,
): PersonFact | undefined {
  const domain = lettersOf(email);
  if (domain.length < LEAST_LETTERS * 2 || SHARED.test(domain)) return undefined;
  const own = foldName(person ?? '').split(' ');
  let best: PersonFact | undefined;
  for (const found of NAMES.flatMap((pattern) => [...text.matchAll(pattern)])) {
    const article = ARTICLE.exec(found[0])?.[0].length ?? 0;
    const value = found[0].slice(article).replace(/'s?$/, '');
    const words = longWords(value);
    const within = words.filter((word) => domain.includes(word));
    const letters = within.reduce((sum, word) => sum + word.length, 0);
    if (letters < domain.length * 0.6 || words.length - within.length > 1 || within.every((word) => own.includes(word))) continue;
    if (NO_ORG.test(value) || ONCE.test(value) || isTown(value) || (TITLE_WORDS.test(value) && words.length < 2)) continue;
    // "Ceremonies end at four": a word like any other.
    if (words.length < 2 && new RegExp(`(?<![\\p{L}.@-])${value.toLowerCase()}(?!\\p{L})`, 'u').test(text)) continue;
    if (best === undefined || value.length > best.value.length)
      best = { value, start: found.index + article, end: found.index + article + value.length };
  }
  return best;
}
