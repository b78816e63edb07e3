/**
 * The same question as an integer program, in the solver's text (CPLEX LP): can every stage be done no later than so much after its due
 * date? Between two neighbouring releases and due dates nothing changes, so work is given out by such stretches: how much of a stage lies in
 * a stretch is a number, whether a stage may have begun by a stretch is a yes or no that asks for its predecessors' whole work by then.
 */
import highsLoader from 'highs';
import type { Slot } from '../../../core/deliverables/schedule.ts';
import type { Stage } from '../../../core/deliverables/stages.ts';

const solver = await highsLoader();

/** Half-open, in places of the half hours in their order. */
type Stretch = { from: number; to: number };
type Window = Stretch & { stage: Stage; within: number[] };

/**
 * Whether any schedule, by halves or wholes, keeps every stage's lateness within the limit.
 * @param stages each behind those that it waits for
 * @param slots half hours, none overlapping another
 * @param limit milliseconds; below zero asks for earlier than due
 * @param order false leaves the yes-or-no out, which only lets more pass: what is impossible then is impossible
 * @throws where the solver comes to no answer
 */
export function canKeep(stages: readonly Stage[], slots: readonly Slot[], limit: number, order = true): boolean {
  const placed = stages.map((stage) => ({
    stage,
    from: placeOf(slots, ({ start }) => start >= stage.releaseAt),
    to: placeOf(slots, ({ end }) => end > stage.dueAt + limit),
  }));
  const stretches = stretchesOf(placed, slots.length);
  const windows = windowsOf(placed, stretches);
  if (windows.some(({ within }) => within.length === 0)) return false;
  const { Status } = solver.solve(program(windows, stretches, order), { output_flag: false });
  if (Status !== 'Optimal' && Status !== 'Infeasible') throw new Error(`the solver came to no answer: ${Status}`);
  return Status === 'Optimal';
}

/** The first place of which something holds that holds of all behind it; their number where it holds of none. */
function placeOf(slots: readonly Slot[], holds: (slot: Slot) => boolean): number {
  let [low, high] = [0, slots.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(slots[middle] as Slot)) high = middle;
    else low = middle + 1;
  }
  return low;
}

function stretchesOf(placed: readonly Stretch[], all: number): Stretch[] {
  const marks = [...new Set([0, all, ...placed.flatMap(({ from, to }) => [from, to])])].toSorted((a, b) => a - b);
  return marks.slice(1).map((to, order) => ({ from: marks[order] ?? 0, to }));
}

/** Where a stage can lie at all: behind the work of what it waits for, before the work of what waits for it. */
function windowsOf(placed: readonly (Stretch & { stage: Stage })[], stretches: readonly Stretch[]): Window[] {
  const works = new Map(placed.map(({ stage }) => [stage.id, stage.halfHours]));
  const [from, to] = [new Map<string, number>(), new Map(placed.map((each) => [each.stage.id, each.to]))];
  for (const { stage, ...own } of placed)
    from.set(stage.id, Math.max(own.from, ...stage.after.map((before) => (from.get(before) ?? 0) + (works.get(before) ?? 0))));
  for (const { stage } of placed.toReversed())
    for (const before of stage.after) to.set(before, Math.min(to.get(before) ?? 0, (to.get(stage.id) ?? 0) - stage.halfHours));
  return placed.map(({ stage }) => {
    const window = { from: from.get(stage.id) ?? 0, to: to.get(stage.id) ?? 0 };
    const fits = window.to - window.from >= stage.halfHours;
    const within = fits ? stretches.flatMap((stretch, order) => (stretch.to > window.from && stretch.from < window.to ? [order] : [])) : [];
    return { stage, ...window, within };
  });
}

const roomOf = (stretch?: Stretch): number => (stretch ? stretch.to - stretch.from : 0);

function program(windows: readonly Window[], stretches: readonly Stretch[], order: boolean): string {
  const rows: string[] = [];
  const bounds: string[] = [];
  const yesNo: string[] = [];
  const numbers = new Map(windows.map(({ stage }, number) => [stage.id, number]));
  const sum = (terms: readonly string[]): string => chunked(terms).join('\n + ');
  const inStretch = new Map<number, string[]>();
  windows.forEach(({ stage, within }, number) => {
    rows.push(`${sum(within.map((at) => `x${number}_${at}`))} = ${stage.halfHours}`);
    for (const at of within) {
      bounds.push(`x${number}_${at} <= ${Math.min(stage.halfHours, roomOf(stretches[at]))}`);
      inStretch.set(at, [...(inStretch.get(at) ?? []), `x${number}_${at}`]);
    }
  });
  for (const [at, terms] of inStretch) rows.push(`${sum(terms)} <= ${roomOf(stretches[at])}`);
  if (order)
    windows.forEach(({ stage, within }, number) => {
      for (const at of stage.after.length > 0 ? within : []) {
        const begun = `z${number}_${at}`;
        yesNo.push(begun);
        rows.push(`x${number}_${at} - ${Math.min(stage.halfHours, roomOf(stretches[at]))} ${begun} <= 0`);
        for (const id of stage.after) {
          const before = numbers.get(id) ?? 0;
          const done = (windows[before]?.within ?? []).filter((other) => other <= at).map((other) => `x${before}_${other}`);
          rows.push(`${done.length > 0 ? `${sum(done)} ` : ''}- ${windows[before]?.stage.halfHours ?? 0} ${begun} >= 0`);
        }
      }
    });
  return [
    `Minimize\n o: ${windows.length > 0 ? `x0_${windows[0]?.within[0] ?? 0}` : '0'}`,
    `Subject To\n${rows.map((row, number) => ` r${number}: ${row}`).join('\n')}`,
    `Bounds\n${bounds.map((bound) => ` ${bound}`).join('\n')}`,
    yesNo.length > 0 ? `Binary\n ${chunked(yesNo, ' ').join('\n ')}` : '',
    'End\n',
  ].join('\n');
}

/** Lines of a length that the text's reader takes. */
function chunked(terms: readonly string[], between = ' + '): string[] {
  return Array.from({ length: Math.ceil(terms.length / 20) }, (_, line) => terms.slice(line * 20, line * 20 + 20).join(between));
}
