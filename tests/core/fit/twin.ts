/**
 * The check done slowly and plainly: whoever reads the rules would do it like this with a pencil and a lot of time.
 * Every minute at which one could leave is tried.
 */
import type { Place } from '../../../core/contract/parts.ts';
import type { Book, BookDay, BookJob } from '../../../core/fit/book.ts';
import { distanceKm } from '../../../core/places/distance.ts';

const MINUTE = 60_000;
type Run = { job: BookJob; own: boolean; days: BookDay[]; from: number; to: number };
type Length = { short: number; long: number; known: boolean };
export type TwinAnswer = 'free' | 'free if' | 'not possible';

/** The answer for a candidate without tickets, kit and own time; `now` long before. */
export function twinAnswer(book: Book, candidate: BookJob): TwinAnswer {
  const runs = [candidate, ...book.jobs].flatMap((job) => runsOf(job, job === candidate));
  const own = runs.filter((run) => run.own);
  let answer: TwinAnswer = 'free';
  const worse = (to: TwinAnswer) => {
    if (to === 'not possible' || answer === 'free') answer = answer === 'not possible' ? answer : to;
  };
  for (const mine of own) {
    for (const other of runs)
      if (!other.own && mine.from < other.to && other.from < mine.to) worse(other.job.firmness === 'ink' ? 'not possible' : 'free if');
    for (const other of runs) {
      if (other.own || (mine.from < other.to && other.from < mine.to)) continue;
      const [first, second] = other.to <= mine.from ? [other, mine] : [mine, other];
      // Whatever stands between the two for certain is what counts instead.
      const inTheWay = runs.some(
        (run) => run !== first && run !== second && (run.own || run.job.firmness === 'ink') && blocksView(run, first, second, mine),
      );
      if (inTheWay) continue;
      const verdict = gap(book, first, second);
      if (verdict === 'fits') continue;
      worse(verdict === 'never' && other.job.firmness === 'ink' ? 'not possible' : 'free if');
    }
  }
  return answer;
}

/** The same where hands do some of its days: each of us by what is on our own books, and the worst of it. */
export function twinWithHands(book: Book, candidate: BookJob): TwinAnswer {
  const covered = new Set((candidate.covers ?? []).flatMap(({ dates }) => dates));
  const mine = candidate.days.filter(({ date }) => !covered.has(date));
  const answers = (candidate.covers ?? []).map(({ handId, dates }) => {
    const hand = book.hands?.find(({ id }) => id === handId);
    const theirs = { home: hand?.home ?? book.home, jobs: [...(hand?.jobs ?? [])], ways: book.ways, restMinutes: book.restMinutes };
    return twinAnswer(theirs, { ...candidate, days: candidate.days.filter(({ date }) => dates.includes(date)) });
  });
  if (mine.length > 0) answers.push(twinAnswer(book, { ...candidate, days: mine }));
  return (['not possible', 'free if'] as const).find((answer) => answers.includes(answer)) ?? 'free';
}

/** Stands wholly beyond `mine` and nearer to it than the other. */
function blocksView(run: Run, first: Run, second: Run, mine: Run): boolean {
  if (mine === second) return run.to <= mine.from && (run.to > first.to || (run.to === first.to && sortsAfter(run, first, 'to')));
  return run.from >= mine.to && (run.from < second.from || (run.from === second.from && sortsAfter(second, run, 'from')));
}

/** Two stays that end or begin at the same minute: the order of the lane decides, by start, end, then id. */
function sortsAfter(a: Run, b: Run, side: 'from' | 'to'): boolean {
  if (side === 'to') return a.from < b.from || (a.from === b.from && name(a) < name(b));
  return a.to > b.to || (a.to === b.to && name(a) > name(b));
}
const name = (run: Run) => run.job.id ?? '';

function runsOf(job: BookJob, own: boolean): Run[] {
  const sorted = [...job.days].sort((a, b) => a.callAt - b.callAt);
  const runs: Run[] = [];
  for (const day of sorted) {
    const last = runs.at(-1);
    const previous = last?.days.at(-1);
    const follows = previous && Temporal.PlainDate.from(previous.date).until(day.date).days <= 1;
    if (last && follows) {
      last.days.push(day);
      last.to = Math.max(last.to, day.wrapAt);
    } else runs.push({ job, own, days: [day], from: day.callAt, to: day.wrapAt });
  }
  return runs;
}

function gap(book: Book, first: Run, second: Run): 'fits' | 'settle' | 'never' {
  const have = (second.from - first.to) / MINUTE;
  const lastCall = first.days.reduce((latest, day) => (day.wrapAt > latest.wrapAt ? day : latest));
  const rest = lastCall.date === second.days[0]?.date ? 0 : book.restMinutes;
  const direct = wayOf(book, first.job.place, second.job.place);
  const there = wayOf(book, first.job.place, book.home);
  const on = wayOf(book, book.home, second.job.place);
  const homeKnown = there.known && on.known;
  const roads = [[direct], ...(direct.known && !homeKnown ? [] : [[there, on]])];
  if (
    roads.some((road) =>
      possible(
        road.map((way) => way.long),
        have,
        rest,
      ),
    )
  )
    return 'fits';
  if (
    roads.some((road) =>
      possible(
        road.map((way) => way.short),
        have,
        0,
      ),
    )
  )
    return 'settle';
  // A way that is only estimated proves nothing.
  return roads.some((road) => road.every((way) => way.known)) && (direct.known || !roads.some((road) => !road.every((way) => way.known)))
    ? 'never'
    : 'settle';
}

/** Is there any plan of leaving times that arrives in time and has one unbroken rest? */
function possible([first = 0, second]: readonly number[], have: number, rest: number): boolean {
  if (have > 4 * 1440) return true;
  for (let leave = 0; leave + first <= have; leave += 1) {
    const arrive = leave + first;
    if (second === undefined) {
      if (leave >= rest || have - arrive >= rest) return true;
    } else
      for (const again of [arrive, have - second])
        if (again >= arrive && again + second <= have && (leave >= rest || again - arrive >= rest || have - again - second >= rest))
          return true;
  }
  return false;
}

function wayOf(book: Book, from: Place, to: Place): Length {
  if (from.key === to.key) return { short: 0, long: 0, known: true };
  const typed = book.ways
    .filter((way) => (way.fromKey === from.key && way.toKey === to.key) || (way.fromKey === to.key && way.toKey === from.key))
    .map((way) => way.minutes);
  if (typed.length > 0) return { short: Math.min(...typed), long: Math.min(...typed), known: true };
  const km = distanceKm(from, to);
  const driving = Math.ceil((km * 1.35 * 60) / 75);
  let breaks = 0;
  for (let driven = 120; driven < (km * 1.35 * 60) / 75; driven += 120) breaks += 1;
  return { short: Math.ceil((km * 1.15 * 60) / 95), long: driving + 15 * breaks, known: false };
}

/** The largest shortage of a thing while the candidate uses or resets it, counted minute by minute. */
export function twinShortage(
  book: Book,
  candidate: BookJob,
  item: { id: string; owned: number; resetMinutes: number },
  ink: boolean,
): number {
  const count = (job: BookJob) => (job.kit ?? []).filter((need) => need.item === item.id).reduce((sum, need) => sum + need.count, 0);
  const needed = count(candidate);
  if (needed === 0) return 0;
  const others = book.jobs
    .filter((job) => !ink || job.firmness === 'ink')
    .flatMap((job) => runsOf(job, false).map((run) => ({ ...run, count: count(job) })));
  let largest = Math.max(0, needed - item.owned);
  for (const mine of runsOf(candidate, true)) {
    for (let at = mine.from; at < mine.to + item.resetMinutes * MINUTE; at += MINUTE) {
      const mineIsUsed = at < mine.to;
      const taken = others
        .filter((run) => run.from <= at && at < run.to + (mineIsUsed ? item.resetMinutes * MINUTE : 0))
        .reduce((sum, run) => sum + run.count, 0);
      if (mineIsUsed || taken > 0) largest = Math.max(largest, needed + taken - item.owned);
    }
  }
  return largest;
}
