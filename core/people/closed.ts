/**
 * A client's own holidays: runs of dates on which nobody is there, both ends counted. They come on top of weekends and public holidays.
 */
import type { Closed } from '../contract/people.ts';
import { isDate } from '../time/read.ts';
import { dateLater } from '../time/wall.ts';
import { dateInWords, datesInWords } from '../words/dates.ts';
import { joined } from '../words/lists.ts';

/** Every date of those runs, YYYY-MM-DD. */
export function closedDates(closed: readonly Closed[]): ReadonlySet<string> {
  const dates = new Set<string>();
  for (const { from, to } of closed) for (let date = from; date <= to; date = dateLater(date, 1)) dates.add(date);
  return dates;
}

/** The runs that touch the dates from `first` to `last`, in order; what has nothing to do with them is left out. */
export function closedBetween(closed: readonly Closed[], first: string, last: string): Closed[] {
  return inOrder(closed.filter(({ from, to }) => from <= last && to >= first));
}

/** Two lists as one: a run that both have stands once, with the first name that is said of it. */
export function closedTogether(one: readonly Closed[], other: readonly Closed[]): Closed[] {
  const known = new Map<string, Closed>();
  for (const run of [...one, ...other]) {
    const key = `${run.from} ${run.to}`;
    const before = known.get(key);
    if (!before || before.name === '') known.set(key, run);
  }
  return inOrder([...known.values()]);
}

/** "Summer break (Mon 6 to Fri 17 July 2026) and Fri 31 July 2026". */
export function closedInWords(closed: readonly Closed[]): string {
  return joined(closed.map(({ from, to, name }) => (name === '' ? runInWords(from, to) : `${name} (${runInWords(from, to)})`)));
}

function runInWords(from: string, to: string): string {
  const days = Temporal.PlainDate.from(from).until(to).days;
  return days < 2 ? datesInWords([from, to]) : `${dateInWords(from)} to ${dateInWords(to)}`;
}

const RUN = /^(\d{4}-\d\d-\d\d)(?:\s*(?:\/|to|until|–)\s*(\d{4}-\d\d-\d\d))?(?:[\s,:]+(.*))?$/;

/**
 * Own holidays as a file writes them, one after another with semicolons or on lines of their own: "2026-07-06 to 2026-07-17 Summer break; 2026-07-31".
 * @returns the runs, or a sentence that names the first that cannot be read
 */
export function readClosed(text: string): Closed[] | string {
  const runs: Closed[] = [];
  for (const part of text.split(/[;\n]/)) {
    const typed = part.trim();
    if (typed === '') continue;
    const [, from = '', to = from, name = ''] = RUN.exec(typed) ?? [];
    if (!isDate(from) || !isDate(to)) return `"${typed.slice(0, 80)}" is not a holiday; write it as 2026-07-06 to 2026-07-17 Summer break.`;
    if (to < from) return `"${typed.slice(0, 80)}" ends before it begins.`;
    runs.push({ from, to, name: name.trim() });
  }
  return closedTogether(runs, []);
}

function inOrder(closed: readonly Closed[]): Closed[] {
  return closed.toSorted((a, b) => a.from.localeCompare(b.from) || a.to.localeCompare(b.to));
}
