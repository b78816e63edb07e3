/**
 * Who asks, as the mail that they answer below says it: who signs "Colleen" now signed "Colleen Yazzie, Mesa Verde Bikes, 970-555-0181" before.
 */
import { foldName } from '../../places/fold.ts';
import { HEADER, linesOf, short, type Part } from '../parts/lines.ts';
import { only, split } from '../parts/split.ts';
import { peopleIn } from './find.ts';
import type { People } from './signature.ts';

/** A line that says who wrote what stands below it. */
const HEAD =
  /^[> \t]{0,12}(?:(?:on|am|le|el|op|il|em)\b[^\n]{4,160}\b(?:wrote|schrieb|schreef|[ée]crit|escribió|scritto|escreveu)(?!\p{L})[^\n]{0,90}|(?:from|von|de|van|da)\s?:[^\n]{2,160})$/gimu;
const MARKS = /^[ \t]{0,3}>[> \t]*/gm;
/** So many mails of a thread are read, from the newest. */
const MOST_MAILS = 4;

/** "Gwen" and "Gwendolyn Tran-Murphy", "Colleen Yazzie" and "Colleen"; of two surnames both must be one. */
export function isSamePerson(written: string, other: string): boolean {
  const [less, more] = [foldName(written).split(' '), foldName(other).split(' ')];
  const [a = '', b = ''] = [less[0], more[0]];
  const [short_, long] = a.length < b.length ? [a, b] : [b, a];
  if (short_.length < 3 || !long.startsWith(short_)) return false;
  return less.length < 2 || more.length < 2 || less.at(-1) === more.at(-1);
}

/** What the last mail below of the same writer says of them; nothing where none is of them. */
export function earlierOf(below: string, asker: string, isTown: (name: string) => boolean): People {
  const text = below.replace(MARKS, (marks) => ' '.repeat(marks.length));
  const heads = new Set([...text.matchAll(HEAD)].map(({ index }) => index));
  const from = beginsOf(below, heads);
  for (const [at, start] of from.slice(0, MOST_MAILS).entries()) {
    const mail = text.slice(start, from[at + 1]);
    const head = heads.has(start) ? mail.slice(0, mail.indexOf('\n')) : undefined;
    if (head !== undefined && !head.split(/[^\p{L}'-]+/u).some((word) => isSamePerson(asker, word))) continue;
    const people = mailFrom(mail, isTown);
    if (people.name && isSamePerson(asker, people.name.value)) return moved(people, start);
  }
  return {};
}

/** Where mails begin: at their heads, and where the marks of quoting grow more or fewer. */
function beginsOf(below: string, heads: ReadonlySet<number>): number[] {
  const begins = [0];
  let depth = -1;
  let underHead = false;
  for (const { text, start } of linesOf(below)) {
    if (text.trim() === '') continue;
    const marks = (/^[> \t]{0,12}/.exec(text)?.[0] ?? '').replace(/[^>]/g, '').length;
    const head = heads.has(start);
    if (start > 0 && (head || (depth >= 0 && marks !== depth && !underHead))) begins.push(start);
    underHead = head || (underHead && HEADER.test(text));
    depth = marks;
  }
  return begins;
}

/** Who wrote one mail: by its head and by what stands below it. */
function mailFrom(mail: string, isTown: (name: string) => boolean): People {
  const lines = linesOf(mail);
  let at = lines.findIndex((line) => line.text.trim() !== '');
  const first = at;
  while (
    at >= 0 &&
    at < lines.length &&
    ((at === first && /^[ \t]*\w+\b[^\n]*:\s*$/.test(lines[at]?.text ?? '')) || HEADER.test(short(lines[at])))
  )
    at++;
  const begin = lines[at]?.start ?? 0;
  const blank = (length: number): string => mail.slice(0, length).replace(/[^\n]/g, ' ');
  const body = blank(begin) + mail.slice(begin);
  const parts: readonly Part[] = split(body);
  return peopleIn(
    { body: only(body, parts, 'own'), signature: only(body, parts, 'signature'), header: mail.slice(0, begin), stamp: '' },
    isTown,
  );
}

const moved = (people: People, by: number): People =>
  Object.fromEntries(Object.entries(people).map(([what, fact]) => [what, { ...fact, start: fact.start + by, end: fact.end + by }]));
