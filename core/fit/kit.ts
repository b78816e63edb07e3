/**
 * Part 4 of the check: is every thing that is needed there when it is needed? One person carries the kit from job to job, so a thing
 * is taken from first call to last wrap and then through its reset; service takes it from packing to being home again.
 */
import type { Finding, Lift } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { countInWords, lengthInWords } from '../words/amounts.ts';
import { spanAt } from '../words/moments.ts';
import type { BookJob, KitItem, KitNeed } from './book.ts';
import { concerning, softened } from './findings.ts';
import type { LaneEntry, Standing, StayEntry } from './lane.ts';

const MINUTE = 60_000;
/** Common practice: kit is packed this long before door-out. */
export const PACK_BEFORE = 12 * 60 * MINUTE;

/** The span from packing to home again. */
export type KitSpan = { packAt: number; backAt: number };

type Use = { job: BookJob; standing: Standing; count: number; startAt: number; endAt: number; resetUntil: number };

/** What is short for the candidate, in ink alone first, then with each kind of pencil. */
export function kitFindings(
  candidate: BookJob,
  lane: readonly LaneEntry[],
  items: readonly KitItem[],
  spans: readonly KitSpan[],
  home: Place,
): Finding[] {
  return (candidate.kit ?? [])
    .filter(({ count }) => count > 0)
    .flatMap((need) => {
      const item = items.find(({ id }) => id === need.item);
      return item ? itemFindings(item, need, lane, items, spans, home) : [unknownItem(need)];
    });
}

function itemFindings(
  item: KitItem,
  need: KitNeed,
  lane: readonly LaneEntry[],
  items: readonly KitItem[],
  spans: readonly KitSpan[],
  home: Place,
): Finding[] {
  const uses = lane.filter((entry) => entry.kind === 'stay').flatMap((stay) => useOf(stay, item));
  const own = uses.filter((use) => use.standing === 'own');
  const findings: Finding[] = [];
  let worst = 0;
  const order = ['ink', 'outranks', 'first', 'behind'] as const;
  for (const [index, standing] of order.entries()) {
    const counted = uses.filter((use) => order.slice(0, index + 1).some((upTo) => upTo === use.standing));
    const short = shortage(item, need.count, own, counted, spans);
    // A pencil is told of only for what it takes beyond what is short without it.
    if (short.count <= worst) continue;
    worst = short.count;
    const sent = shortage({ ...item, byCourier: true }, need.count, own, counted, spans);
    findings.push(finding(item, short, standing, items, sent.count < short.count, home));
  }
  return findings;
}

function useOf(stay: StayEntry, item: KitItem): Use[] {
  const count = countOf(stay.job.kit ?? [], item.id);
  if (count === 0) return [];
  const { job, standing, startAt, endAt } = stay;
  return [{ job, standing, count, startAt, endAt, resetUntil: endAt + item.resetMinutes * MINUTE }];
}

type Shortage = { count: number; from: number; to: number; demand: number; inService: number; users: BookJob[]; byReset: boolean };

/** The largest shortage while the candidate has or resets the thing, the earliest of equal ones, and how long it lasts. */
function shortage(item: KitItem, needed: number, own: readonly Use[], others: readonly Use[], spans: readonly KitSpan[]): Shortage {
  const ends = [
    ...spans.flatMap(({ packAt, backAt }) => [packAt, backAt]),
    ...[...own, ...others].flatMap((use) => [use.startAt, use.endAt, use.resetUntil]),
    ...item.services.flatMap((service) => [service.startAt, service.endAt]),
  ];
  const edges = [...new Set(ends)].sort((a, b) => a - b);
  const steps = edges
    .slice(0, -1)
    .map((from, index) => ({ ...shortAt(item, needed, own, others, spans, from), from, to: edges[index + 1] ?? from }));
  const largest = Math.max(0, ...steps.map((step) => step.count));
  const first = steps.findIndex((step) => step.count === largest);
  const step = steps[first];
  if (!step || largest === 0) return { count: 0, from: 0, to: 0, demand: 0, inService: 0, users: [], byReset: false };
  const after = steps.slice(first);
  const end = after.findIndex((later) => later.count < largest);
  return { ...step, to: (end === -1 ? after.at(-1) : after[end - 1])?.to ?? step.to };
}

function shortAt(
  item: KitItem,
  needed: number,
  own: readonly Use[],
  others: readonly Use[],
  spans: readonly KitSpan[],
  at: number,
): Omit<Shortage, 'from' | 'to'> {
  const used = own.some((use) => use.startAt <= at && at < use.endAt);
  const resetting = own.some((use) => use.endAt <= at && at < use.resetUntil);
  const packed = !item.byCourier && spans.some(({ packAt, backAt }) => packAt <= at && at < backAt);
  const inService = item.services
    .filter((service) => service.startAt <= at && at < service.endAt)
    .reduce((sum, { count }) => sum + count, 0);
  // While the candidate's own reset runs, only those count that would use the thing then.
  const taking = others.filter((use) => use.startAt <= at && (resetting && !used ? at < use.endAt : at < use.resetUntil));
  const busy = used || (resetting && taking.length > 0);
  const demand = (busy || packed ? needed : 0) + (busy ? taking.reduce((sum, use) => sum + use.count, 0) : 0);
  const byReset = taking.some((use) => at >= use.endAt) || (resetting && !used);
  return {
    count: busy || packed ? demand - (item.owned - inService) : 0,
    demand,
    inService,
    users: busy ? taking.map((use) => use.job) : [],
    byReset: busy && byReset,
  };
}

function finding(
  item: KitItem,
  short: Shortage,
  standing: Standing,
  items: readonly KitItem[],
  courierHelps: boolean,
  home: Place,
): Finding {
  const users = short.users.length > 0 ? ` beside ${[...new Set(short.users.map((job) => job.title))].join(' and ')}` : '';
  const service = short.inService > 0 ? `, ${short.inService} in service` : '';
  const reset = short.byReset ? ' while the last are made ready again' : '';
  return {
    kind: 'kit',
    hardness: softened('settle', standing),
    concerns: concerning(...short.users),
    numbers: {
      short: short.count,
      demand: short.demand,
      owned: item.owned,
      inService: short.inService,
      lasts: Math.ceil((short.to - short.from) / MINUTE),
      item: item.name,
    },
    sentence: `${item.name}: short by ${short.count} from ${spanAt(short.from, short.to, home, home)} (${lengthInWords(Math.ceil((short.to - short.from) / MINUTE))})${reset}. ${short.demand} asked for${users}, ${item.owned} owned${service}.`,
    lifts: liftsOf(item, short.count, items, courierHelps),
  };
}

function liftsOf(item: KitItem, short: number, items: readonly KitItem[], courierHelps: boolean): Lift[] {
  const others = items.filter((other) => other.id !== item.id && item.does !== '' && other.does === item.does);
  return [
    ...others.map((other): Lift => ({
      kind: 'other unit',
      label: `Take ${other.name} instead`,
      tryOn: { kitInstead: [{ item: item.id, other: other.id, count: short }] },
    })),
    hireLift(item, short),
    ...(courierHelps ? [courierLift(item)] : []),
  ];
}

function hireLift({ id, name, subHire }: KitItem, count: number): Lift {
  const price = subHire === '' ? '' : ` at ${subHire}`;
  return { kind: 'sub-hire', label: `Sub-hire ${countInWords(count, name, name)}${price}`, tryOn: { kitExtra: [{ item: id, count }] } };
}

/** What is sent to the first call and fetched after the last wrap is needed for neither packing nor the way home. */
function courierLift({ id, name }: KitItem): Lift {
  return { kind: 'courier', label: `Send ${name} on by courier`, tryOn: { couriers: [id] } };
}

function unknownItem({ item, count }: KitNeed): Finding {
  return {
    kind: 'kit',
    hardness: 'settle',
    concerns: [],
    numbers: { short: count, demand: count, owned: 0, item },
    sentence: `${item}: ${count} asked for, and none is on your kit list.`,
    lifts: [{ kind: 'sub-hire', label: `Sub-hire ${item}`, tryOn: { kitExtra: [{ item, count }] } }],
  };
}

/** What would lift it that one goes home for things: each hired where it is needed, or sent on where it lies at home. */
export function fetchLifts(carried: readonly KitNeed[], after: BookJob, items: readonly KitItem[], gapMinutes: number): Lift[] {
  return missingOnTheRoad(carried, after, items, gapMinutes).flatMap(({ item, count, atHome }) => [
    hireLift(item, count),
    ...(atHome ? [courierLift(item)] : []),
  ]);
}

/** How many of one thing stand in a list of needs. */
export function countOf(needs: readonly KitNeed[], item: string): number {
  return needs.filter((need) => need.item === item).reduce((sum, { count }) => sum + count, 0);
}

/** Must one go home between two stays for the kit? */
export function mustGoHomeForKit(carried: readonly KitNeed[], after: BookJob, items: readonly KitItem[], gapMinutes: number): boolean {
  return missingOnTheRoad(carried, after, items, gapMinutes).length > 0;
}

type Missing = { item: KitItem; count: number; atHome: boolean };

/** What is needed and not with me, or is with me but cannot be made ready again on the road in time. */
function missingOnTheRoad(carried: readonly KitNeed[], after: BookJob, items: readonly KitItem[], gapMinutes: number): Missing[] {
  return (after.kit ?? []).flatMap((need): Missing[] => {
    const item = items.find(({ id }) => id === need.item);
    if (!item || item.byCourier) return [];
    const count = need.count - (item.hired ?? 0);
    const withMe = countOf(carried, item.id);
    const resetFits = item.resetMinutes === 0 || (item.resetOnRoad && item.resetMinutes <= gapMinutes);
    if (count <= 0 || (count <= withMe && resetFits)) return [];
    return [{ item, count: resetFits ? count - withMe : count, atHome: withMe < count }];
  });
}
