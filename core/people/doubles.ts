/**
 * Who looks like whom: found by what identifies (mail address, phone, tax id) and by a name that is the same but for its writing.
 */
import { foldName } from '../places/fold.ts';

export type Somebody = { id: string; name: string; emails: readonly string[]; phones: readonly string[]; taxId: string };

/** Legal forms and small words say nothing about who it is. */
const FORMS = new Set([
  'inc',
  'llc',
  'ltd',
  'limited',
  'gmbh',
  'ag',
  'sa',
  'sarl',
  'bv',
  'oy',
  'ab',
  'as',
  'co',
  'corp',
  'company',
  'plc',
  'the',
  'and',
]);
/** Fewer digits are an extension, not a number of one's own. */
const PHONE_DIGITS = 7;

/** Keys under which two entries are the same, each with the words for why. */
export function marksOf(one: Omit<Somebody, 'id'>): { key: string; why: string }[] {
  const marks = one.emails
    .filter(Boolean)
    .map((email) => ({ key: `mail ${email.trim().toLowerCase()}`, why: `the same mail address, ${email.trim()}` }));
  for (const phone of one.phones) {
    const digits = phone.replace(/\D/g, '');
    // The last ten digits: with and without the country's prefix are the same line.
    if (digits.length >= PHONE_DIGITS) marks.push({ key: `phone ${digits.slice(-10)}`, why: `the same phone, ${phone.trim()}` });
  }
  const taxId = one.taxId.replace(/[^A-Za-z0-9]/g, '').toUpperCase();
  if (taxId) marks.push({ key: `tax ${taxId}`, why: `the same tax id, ${one.taxId.trim()}` });
  const name = plainName(one.name);
  if (name) marks.push({ key: `name ${name}`, why: 'the same name but for its writing' });
  return marks;
}

/** A name without case, accents, marks, order of words and legal form. */
export function plainName(name: string): string {
  const words = foldName(name)
    .split(' ')
    .filter((word) => word && !FORMS.has(word));
  return words.sort().join(' ');
}

/** Every pair once, in the order of the list, with the first reason found. */
export function doublesIn(all: readonly Somebody[]): { a: Somebody; b: Somebody; why: string }[] {
  const first = new Map<string, Somebody>();
  const pairs = new Map<string, { a: Somebody; b: Somebody; why: string }>();
  for (const one of all) {
    for (const { key, why } of marksOf(one)) {
      const other = first.get(key);
      if (other === undefined) first.set(key, one);
      else if (other.id !== one.id && !pairs.has(`${other.id} ${one.id}`)) pairs.set(`${other.id} ${one.id}`, { a: other, b: one, why });
    }
  }
  return [...pairs.values()];
}
