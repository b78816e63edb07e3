/**
 * The find box: everything that holds the typed words, and where nothing does, what is like them.
 */
import type { Found } from '../../core/contract/find.ts';
import { byStanding, gradeOf, IN_TEXT, LIKE_IN_TEXT, standingOf, type Standing } from '../../core/find/rank.ts';
import { typedWords, wordsOf } from '../../core/find/words.ts';
import { wallAt } from '../../core/time/read.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { entriesWith, foundCard, foundJob, sharingParts, wordsAround, wordsBeginningWith, type Entry, type Sought } from '../../db/find.ts';
import { itemById, presetById } from '../../db/kit.ts';
import { clientById, handById } from '../../db/people.ts';
import type { ReadableDb } from '../../db/store.ts';
import { homeZone } from './job-facts.ts';
import { os } from './os.ts';

/** So many of the last changed are ranked; older ones with the same words are behind them anyway. */
const LOOKED_AT = 300;
const SHARING = 40;
/** So many words like a typed one are looked for. */
const LIKE = 12;

type Met = { entry: Entry; standing: Standing; sought: Sought };

const search = os.find.search.handler(({ input, context }) => {
  const typed = typedWords(input.text);
  if (typed.length === 0) return { found: [] };
  return context.store.read((db) => {
    const zone = homeZone(db, context);
    const said = typed.map((word) => [word]);
    const exact = met(db, typed, said, IN_TEXT, input.limit);
    const all = exact.length > 0 ? exact : met(db, typed, meant(db, typed), LIKE_IN_TEXT, input.limit);
    return { found: all.map((each) => inWords(db, each, typed, zone)) };
  });
});

/** The best of what holds the sought words; the longer texts are looked into where titles and names have too few. */
function met(db: ReadableDb, typed: readonly string[], sought: Sought, ofText: number, limit: number): Met[] {
  if (sought.some((words) => words.length === 0)) return [];
  const ranked = (entries: readonly Entry[], text: number): Met[] =>
    entries
      .flatMap((entry) => {
        const standing = standingOf(typed, entry, text);
        return standing ? [{ entry, standing, sought }] : [];
      })
      .toSorted((a, b) => byStanding(a.standing, b.standing))
      .slice(0, limit);
  const named = ranked(entriesWith(db, sought, 'names', LOOKED_AT), 0);
  return named.length >= limit ? named : ranked(entriesWith(db, sought, 'anywhere', LOOKED_AT), ofText);
}

/** For each typed word the words of the store that it may have been meant for. */
function meant(db: ReadableDb, typed: readonly string[]): string[][] {
  return typed.map((word) => {
    const near = new Set([
      ...wordsBeginningWith(db, word.slice(0, 1)),
      ...sharingParts(db, word, SHARING).flatMap(({ title, names }) => wordsOf(`${title} ${names}`)),
    ]);
    return [...near]
      .map((like) => ({ like, grade: gradeOf(word, wordsOf(like)[0] ?? '') }))
      .filter(({ grade }) => grade > 0)
      .toSorted((a, b) => b.grade - a.grade)
      .slice(0, LIKE)
      .map(({ like }) => like);
  });
}

function inWords(db: ReadableDb, { entry, standing, sought }: Met, typed: readonly string[], zone: string): Found {
  const { kind, id, jobId, title } = entry;
  const second = secondOf(db, entry, zone);
  const shown = standingOf(typed, { title, names: second, at: 0 }, 0) !== undefined;
  const inNames = standing.words.length === typed.length;
  const why = shown ? '' : wordsAround(db, sought, entry.rowid, inNames ? 1 : 2).trim();
  return { kind, id, jobId, title, second, why, words: [...new Set([...standing.words, ...sought.flat()])], grade: standing.grade };
}

function secondOf(db: ReadableDb, { kind, id, at }: Entry, zone: string): string {
  if (kind === 'paper') return `made ${dateInWords(wallAt(at, zone).slice(0, 10))}`;
  if (kind === 'job') {
    const job = foundJob(db, id);
    return joined(job?.organisation, job?.place?.name, job?.stage);
  }
  if (kind === 'client') {
    const contact = clientById(db, id)?.contacts[0];
    return joined(contact?.name, contact?.email);
  }
  if (kind === 'hand') {
    const hand = handById(db, id);
    return joined(...new Set(hand?.rates.map(({ role }) => role)), hand?.home?.name);
  }
  if (kind === 'thing') {
    const item = itemById(db, id);
    return item ? joined(item.does, `${item.owned} owned`) : '';
  }
  if (kind === 'preset') {
    const things = presetById(db, id)?.needs.length ?? 0;
    return things === 1 ? 'one thing' : `${things} things`;
  }
  const card = foundCard(db, id);
  return card ? joined(card.role, card.currency, `from ${card.validFrom}`) : '';
}

function joined(...parts: (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined && part !== '').join(', ');
}

export const find = { search };
