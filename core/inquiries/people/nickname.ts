/**
 * "Davo (Brendan Davidovic)": what stands behind a short name is the same one in full, and no body.
 */
import { foldName } from '../../places/fold.ts';
import { ORG_WORDS, TITLE_WORDS, type PersonFact } from './words.ts';

const TWO_NAMES = /^\p{Lu}\p{Ll}[\p{L}'-]+ \p{Lu}\p{Ll}[\p{L}'-]+$/u;
/** A short name begins as one of the names in full does. */
const ALIKE = 3;

/** Whether the words in brackets behind a name tell it in full. */
export function inFull(text: string, name: PersonFact, behind: PersonFact): boolean {
  if (name.value.includes(' ') || !TWO_NAMES.test(behind.value) || ORG_WORDS.test(behind.value) || TITLE_WORDS.test(behind.value))
    return false;
  if (!/^ ?\($/.test(text.slice(name.end, behind.start)) || text[behind.end] !== ')') return false;
  const begin = foldName(name.value).slice(0, ALIKE);
  return (
    begin.length === ALIKE &&
    foldName(behind.value)
      .split(' ')
      .some((word) => word.startsWith(begin))
  );
}
