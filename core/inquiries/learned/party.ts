/**
 * Whether a name is that of who asks, of their body or of neither, as the learned weights make it of the words, the lines and
 * the signs around it: a name or a body that rules found and that hardly is one is asked about, and a name that no rule finds is taken where it is sure.
 */
import { foldName } from '../../places/fold.ts';
import type { Sight } from '../look.ts';
import { FIRST_PAGES, type Part } from '../parts/lines.ts';
import { DEPARTMENT, OFFICE } from '../people/bodies.ts';
import type { People } from '../people/signature.ts';
import type { PersonFact } from '../people/words.ts';
import type { Where } from '../settle/scene.ts';
import { around, pageOf, type Page } from './features.ts';
import { chancesIn, type Learned } from './models.ts';

/** Below this a name that rules found is hardly of who asks: in a brief message, and in any other. */
const HARDLY = { brief: { name: 0.015, organisation: 0.04 }, long: { name: 0.15, organisation: 0.45 } };
/** From this chance on a name that no rule found is taken. */
const SURE = 0.93;
const [LONGEST_NAME, MOST_NAMES] = [60, 150];
const SHORT_LINE = 30;
/** "Protocol Section": nobody's own name. */
const BODY = /\b(?:section|team|desk|unit|branch|crew|department|group|choir|club|band|school)\b/i;
const EMAIL = /[\w.+-]{1,64}@[\w.-]{1,80}/g;

/** Words with a capital in a row, and small ones between them. */
const RUN =
  /\p{Lu}[\p{L}\p{M}\d'.-]*(?:(?: & | \+ | and | of the | of | for | the | de | de la | la | von | van | van de | der | den | du | del |, | )\p{Lu}[\p{L}\p{M}\d'.-]*)*/gu;

/** Everything in a text that looks like a name: whole runs, their pieces between commas, and runs without their first word. */
export function namesIn(text: string): PersonFact[] {
  const found: PersonFact[] = [];
  const add = (value: string, start: number): void => {
    const name = value.trim().replace(/[.,'-]+$/, '');
    const from = start + value.length - value.trimStart().length;
    if (name.length > 1 && name.length <= LONGEST_NAME) found.push({ value: name, start: from, end: from + name.length });
  };
  for (const { 0: run, index } of text.slice(0, FIRST_PAGES).matchAll(RUN)) {
    add(run, index);
    let at = index;
    const pieces = run.split(',');
    for (const piece of pieces) {
      if (pieces.length > 1) add(piece, at);
      at += piece.length + 1;
    }
    const first = /^\S+ (?=\p{Lu})/u.exec(run);
    if (first) add(run.slice(first[0].length), index + first[0].length);
    if (found.length > MOST_NAMES) break;
  }
  return found;
}

/** The whole message, its signature and heads too, with its addresses. */
export type Letter = { page: Page; parts: readonly Part[]; emails: readonly string[] };

/** A letter as it is seen here. */
export function letterOf({ plain, parts, scene, phones }: Pick<Sight, 'plain' | 'parts' | 'scene' | 'phones'>): Letter {
  const text = plain.text.slice(0, FIRST_PAGES);
  return { page: pageOf({ ...scene, text }, phones, ''), parts, emails: text.match(EMAIL) ?? [] };
}

const shapeOf = (line: string): string => {
  if (line === '') return 'blank';
  if (line.includes('@')) return 'mail';
  if (/\d[\d ()+.-]{6,}/.test(line)) return 'phone';
  if (/[.?!]$/.test(line)) return 'sentence';
  return line.length < SHORT_LINE ? 'short' : 'long';
};
const letterCase = (word: string): string =>
  /^\p{Lu}+$/u.test(word) ? 'all' : /^\p{Lu}\p{Ll}+$/u.test(word) ? 'first' : /^\p{Ll}/u.test(word) ? 'none' : 'mixed';
const written = (lines: readonly string[], most: number): number => Math.min(most, lines.filter((line) => line.trim() !== '').length);

/** Of one name: the words around it and of it, its line and those beside, in which part and how near the end it stands, and the addresses. */
export function partyFeatures({ page, parts, emails }: Letter, { start, end }: Where): Set<string> {
  const { text } = page.scene;
  const value = text.slice(start, end);
  const words = value.split(/\s+/);
  const [above, below] = [text.slice(0, start).split('\n'), text.slice(end).split('\n')];
  const [led, follows] = [above.pop() ?? '', below.shift() ?? ''];
  const part = parts.find((one) => one.start <= start && start < one.end)?.kind ?? 'none';
  const alone = led.trim() === '' && follows.trim() === '';
  const [top, last] = [written(above, 4), written(below, 6)];
  const first = foldName(words[0] ?? '');
  const joined = foldName(value).replace(/[^a-z]/g, '');
  const boxes = emails.map((email) => email.toLowerCase().split('@'));
  const inBox = boxes.some(([box = '']) => first.length > 2 && box.includes(first));
  const inHost = boxes.some(
    ([, host = '']) => joined.length > 3 && host.replace(/[^a-z]/g, '').includes(first.length > 3 ? first : joined),
  );
  return new Set([
    ...around(page, { start, end }),
    `part:${part}`,
    `part:${part}:end:${Math.min(last, 4)}`,
    `part:${part}:top:${Math.min(top, 3)}`,
    `words:${Math.min(words.length, 5)}`,
    `end:${last}`,
    `top:${top}`,
    alone ? 'alone' : led.trim() === '' ? 'begins' : follows.trim() === '' ? 'ends' : 'within',
    `prev:${alone}:${shapeOf(above.at(-1)?.trim() ?? '')}`,
    `next:${alone}:${shapeOf(below[0]?.trim() ?? '')}`,
    `alone:${alone}:end:${Math.min(last, 4)}`,
    `c:${led.at(-1) ?? '^'}`,
    `d:${follows[0] ?? '$'}`,
    `cd:${led.at(-1) ?? '^'}${follows[0] ?? '$'}`,
    `cc:${led.slice(-2)}`,
    `dd:${follows.slice(0, 2)}`,
    `w0:${words[0]?.toLowerCase()}`,
    `wz:${words.at(-1)?.toLowerCase()}`,
    ...words.flatMap((word) => [
      `w:${word.toLowerCase().replace(/[.,]/g, '')}`,
      `s:${word.slice(-3).toLowerCase()}`,
      `case:${letterCase(word)}`,
    ]),
    boxes.length === 0 ? 'no mail' : inBox ? 'in box' : 'not in box',
    inHost ? 'in host' : 'not in host',
    `again:${Math.min(3, text.split(value).length - 1)}`,
  ]);
}

/**
 * Who asks, without what is doubted, and what is.
 * @param brief whether the sender's own words are few
 */
export function agreedParty(
  people: People,
  letter: Letter,
  brief: boolean,
  learned: Learned,
): { people: People; doubted: Pick<People, 'name' | 'organisation'> } {
  const chance = (where: Where, is: string): number => chancesIn(learned.party, partyFeatures(letter, where))[is] ?? 0;
  const { name, organisation, ...rest } = people;
  const hardly = HARDLY[brief ? 'brief' : 'long'];
  const agreed: People = { ...rest };
  const doubted: Pick<People, 'name' | 'organisation'> = {};
  if (name) (chance(name, 'name') < hardly.name ? doubted : agreed).name = name;
  else {
    const [best] = namesIn(letter.page.scene.text)
      .filter(({ value }) => !DEPARTMENT.test(value) && !OFFICE.test(value) && !BODY.test(value))
      .map((one) => ({ one, chance: chance(one, 'name') }))
      .toSorted((a, b) => b.chance - a.chance);
    if (best && best.chance >= SURE) agreed.name = best.one;
  }
  if (organisation) (chance(organisation, 'organisation') < hardly.organisation ? doubted : agreed).organisation = organisation;
  return { people: agreed, doubted };
}
