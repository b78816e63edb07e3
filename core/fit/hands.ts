/**
 * Hands who could cover days of the candidate: who is offered, and the check of those who said yes or are tried on.
 */
import type { Finding, FitAnswer, Lift } from '../contract/fit.ts';
import type { Money } from '../contract/parts.ts';
import { ratesOn } from '../people/hand-rates.ts';
import { formatMoney } from '../money/format.ts';
import { lineAmount, sum } from '../money/money.ts';
import type { WayFinder } from '../trips/ways.ts';
import { countInWords } from '../words/amounts.ts';
import { dateInWords, datesInWords, withoutYear } from '../words/dates.ts';
import { joined } from '../words/lists.ts';
import { rolesInWords } from '../words/roles.ts';
import type { Book, BookHand, BookJob } from './book.ts';
import { findingOf, neighboursOf } from './between.ts';
import { departureFindings } from './clocks.ts';
import { answerOf, concerning, WORSE } from './findings.ts';
import { laneOf } from './lane.ts';
import { loadFindings } from './load.ts';
import { overlapFindings } from './overlap.ts';
import type { Cover } from './try-on.ts';

/** No more than so many are offered under one finding, and one under a caution. */
const OFFERED = 3;

/**
 * Lifts that ask for a hand, one for each who has a rate for the role by then: backups first, then by name. Where nobody has one the lift stays
 * as it is, without anything to try on.
 */
export function withHands(findings: readonly Finding[], { hands = [] }: Book, { role = 'shoot' }: BookJob): Finding[] {
  return findings.map((finding) => {
    const most = finding.hardness === 'know' ? 1 : OFFERED;
    return { ...finding, lifts: finding.lifts.flatMap((lift) => asked(lift, hands, role, most)) };
  });
}

function asked(lift: Lift, hands: readonly BookHand[], role: NonNullable<BookJob['role']>, most: number): Lift[] {
  const { dates = [] } = lift;
  const last = dates.at(-1);
  if (lift.kind !== 'hand' || last === undefined) return [lift];
  const able = ableHands(hands, role, last);
  if (able.length === 0) return [{ ...lift, label: `Add a hand who could cover ${rolesInWords[role]}` }];
  return able.slice(0, most).map(({ id, name }) => ({
    kind: 'hand',
    label: `Ask ${name} to cover ${rolesInWords[role]} on ${withoutYear(datesInWords(dates))}`,
    dates,
    tryOn: { hands: [{ handId: id, dates }] },
  }));
}

/** Hands who have a rate for a role by a date: backups first, then by name. */
function ableHands(hands: readonly BookHand[], role: NonNullable<BookJob['role']>, date: string): BookHand[] {
  return hands
    .filter((hand) => ratesOn(hand.rates, date).some((rate) => rate.role === role))
    .sort((a, b) => Number(b.backup) - Number(a.backup) || (a.name < b.name ? -1 : 1));
}

export type StandInCheck = { hand: BookHand; answer: FitAnswer; cost: Money[]; findings: Finding[] };

/** One hand on all days of a job, as if they had said yes. `now` in epoch ms. */
export function standIn(hand: BookHand, job: BookJob, book: Book, find: WayFinder, now: number): StandInCheck {
  const dates = [...new Set(job.days.map(({ date }) => date))].sort();
  const findings = checkOf(hand, { ...job, firmness: 'candidate', pencilledAt: null, legs: [], kit: [] }, book, find, now);
  return { hand, answer: answerOf(findings), cost: costsOf(hand, job.role ?? 'shoot', dates).costs, findings };
}

/** Whoever could take over these days of a job, each checked: who is free first, among them backups. `now` in epoch ms. */
export function standIns(job: BookJob, book: Book, find: WayFinder, now: number): StandInCheck[] {
  const last = job.days
    .map(({ date }) => date)
    .sort()
    .at(-1);
  if (last === undefined) return [];
  return ableHands(book.hands ?? [], job.role ?? 'shoot', last)
    .map((hand) => standIn(hand, job, book, find, now))
    .sort((a, b) => WORSE[a.answer] - WORSE[b.answer]);
}

/** The check of every hand who covers days, or would; each sentence names them. */
export function handFindings(covers: readonly Cover[], candidate: BookJob, book: Book, find: WayFinder, now: number): Finding[] {
  return [...Map.groupBy(covers, ({ handId }) => handId)].flatMap(([handId, all]) => {
    const hand = book.hands?.find(({ id }) => id === handId);
    const days = candidate.days.filter((day) => all.some((cover) => cover.days.includes(day)));
    const saidYes = all.every((cover) => cover.saidYes || cover.days.length === 0);
    return hand && days.length > 0
      ? [costOf(hand, { ...candidate, days }, saidYes), ...checkOf(hand, { ...candidate, days, legs: [], kit: [] }, book, find, now)]
      : [];
  });
}

function checkOf(hand: BookHand, job: BookJob, book: Book, find: WayFinder, now: number): Finding[] {
  const last = job.days.at(-1)?.date ?? '';
  const said = (kind: string, sentence: string, numbers: Finding['numbers'] = {}): Finding => ({
    kind,
    hardness: 'know',
    concerns: concerning(job),
    numbers,
    sentence,
    lifts: [],
  });
  const until = hand.insuredUntil;
  const insurance =
    until !== null && until < last
      ? [said('hand insurance', `${hand.name}’s insurance on file ends on ${dateInWords(until)}, before ${dateInWords(last)}.`, { until })]
      : [];
  const home = hand.home ?? book.home;
  const theirs = (hand.jobs ?? []).filter(({ id }) => id !== job.id);
  const lane = laneOf({ home, jobs: [...theirs], ways: [], restMinutes: book.restMinutes }, job);
  const over = overlapFindings(lane, home);
  const ink = theirs.filter(({ firmness }) => firmness === 'ink');
  const ground = { home, find, restMinutes: book.restMinutes };
  const around =
    hand.home === null
      ? [said('hand home', `Where ${hand.name} starts from is not known, so their way was not looked at.`)]
      : forHand(hand, [
          ...neighboursOf(lane, ground).flatMap((pair) => findingOf(pair, home, [])),
          ...departureFindings(lane, home, find, now),
          ...(over.some(({ hardness }) => hardness === 'blocks') ? [] : loadFindings(job, ink, ground)),
        ]);
  return [...insurance, ...forHand(hand, over), ...around];
}

/** What is found for a hand is said of them, and is theirs to lift. */
function forHand({ name }: BookHand, findings: readonly Finding[]): Finding[] {
  const ofThem = (sentence: string): string =>
    sentence
      .replace(/\byou(r?)\b/gi, (word, your: string) => `${word.startsWith('Y') ? 'T' : 't'}he${your === '' ? 'y' : 'ir'}`)
      .replace(/^The(y|ir)\b/, 'the$1');
  return findings.map((finding) => ({ ...finding, sentence: `For ${name}: ${ofThem(finding.sentence)}`, lifts: [] }));
}

/** What they cost, by the rate of each date; days of one hand may be paid in several currencies. */
function costOf(hand: BookHand, { id, title, role = 'shoot', days }: BookJob, saidYes: boolean): Finding {
  const dates = [...new Set(days.map(({ date }) => date))];
  const { costs: sums, unpriced } = costsOf(hand, role, dates);
  const costs = sums.map((money) => formatMoney(money, { code: true }));
  const part = countInWords(unpriced, 'of these days costs', 'of these days cost');
  const unknown = unpriced === 0 ? '' : unpriced === dates.length ? ' What it costs is not known.' : ` What ${part} is not known.`;
  return {
    kind: 'hand cost',
    hardness: 'know',
    concerns: [{ jobId: id, title }],
    numbers: { days: dates.length, unpriced, cost: joined(costs) },
    sentence: `${saidYes ? `${hand.name} said yes` : `As if ${hand.name} had said yes`} for ${datesInWords(dates)}: ${countInWords(dates.length, 'day')}${costs.length > 0 ? `, ${joined(costs)}` : ''}.${unknown}`,
    lifts: [],
  };
}

/** By the rate of each date, a sum for each currency; how many dates have none. */
function costsOf(hand: BookHand, role: NonNullable<BookJob['role']>, dates: readonly string[]): { costs: Money[]; unpriced: number } {
  const rates = dates.flatMap((date) => ratesOn(hand.rates, date).find((rate) => rate.role === role) ?? []);
  const costs = [...Map.groupBy(rates, ({ currency }) => currency)].map(([currency, all]) =>
    sum(
      currency,
      all.map(({ dayRate }) => lineAmount(1, dayRate, currency)),
    ),
  );
  return { costs, unpriced: dates.length - rates.length };
}
