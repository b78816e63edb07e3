/**
 * Hours from and to in a list of what happens when: "Presenters .... 09:30 / On air .... 10:00-11:45 / Derig .... 12:00-14:00". Without a word for who films
 * such a row is of the occasion.
 */
import { lineAround } from '../parts/sentences.ts';
import type { Where } from './scene.ts';

const HOUR = String.raw`\d{1,2}(?:[:.h]\d{2})?\s?(?:[ap]\.?m\.?)?|\d{4}`;
const HOURS = String.raw`(?:${HOUR})(?:\s?(?:-|–|to|until|till)\s?(?:${HOUR}))?`;
const NAMED = String.raw`[^\d\n]{0,3}\p{L}[^\d\n]{1,40}`;
/** A row of a name and an hour, either first. */
const ROW = new RegExp(String.raw`^\s{0,4}(?:(${NAMED}?)[\s.:|\u2026–-]{1,30}${HOURS}|${HOURS}[\s.:|–-]{1,10}(${NAMED}))\s*$`, 'iu');
/** Who films, when that is a day, or hours of the whole. */
const OF_WORK =
  /(?<!\p{L})(?:you|your|kit|crew|shoot\w*|film\w*|video\w*|vision|cam|cameras?|camera\w*|cover\w*|operator|stream\w*|hours|times?|when|duration|event|job|call|wrap|slot|start\w*|day|mon\w*|tue\w*|wed\w*|thu\w*|fri\w*|sat\w*|sun\w*|jan\w*|feb\w*|mar\w*|apr\w*|may|june?|july?|aug\w*|sep\w*|oct\w*|nov\w*|dec\w*)(?!\p{L})/iu;
const LONGEST_ROW = 100;
const LEAST_ROWS = 3;

const nameOf = (row: string): string | undefined => {
  const found = row.length > LONGEST_ROW ? null : ROW.exec(row);
  return found ? (found[1] ?? found[2]) : undefined;
};

/** True for hours of a row that is no work of mine, among others of its kind. */
export function ofRunningOrder(text: string, where: Where): boolean {
  const line = lineAround(text, where);
  const name = nameOf(text.slice(line.start, line.end));
  if (name === undefined || OF_WORK.test(name)) return false;
  const [above, below] = [text.slice(0, Math.max(0, line.start - 1)).split('\n'), text.slice(line.end + 1).split('\n')];
  let rows = 1;
  for (let at = above.length - 1; at >= 0 && nameOf(above[at] ?? '') !== undefined; at--) rows++;
  for (let at = 0; at < below.length && nameOf(below[at] ?? '') !== undefined; at++) rows++;
  return rows >= LEAST_ROWS;
}
