/**
 * The same question as an integer program, in the solver's text (CPLEX LP): can every stage be done no later than so much after its due
 * date? Between two neighbouring releases and due dates nothing changes, so work is given out by such stretches: how much of a stage lies in
 * a stretch is a number, whether a stage may have begun by a stretch is a yes or no that asks for its predecessors' whole work by then.
 */
import highsLoader from 'highs';
import type { Slot } from '../../../core/deliverables/schedule.ts';
import type { Stage } from '../../../core/deliverables/stages.ts';

const solver = await highsLoader();

type Stretch = { from: number; to: number; room: number };
type Window = { stage: Stage; from: number; to: number; within: number[] };

/**
 * Whether any schedule, by halves or wholes, keeps every stage's lateness within the limit.
 * @param stages each behind those that it waits for
 * @param slots half hours, none overlapping another
 * @param limit milliseconds; below zero asks for earlier than due
 * @param order false leaves the yes-or-no out, so that only the stretches of precedence are kept: what is impossible then is impossible
 * @throws where the solver comes to no answer, or where a release or a due date cuts a half hour in two
 */
export function canKeep(stages: readonly Stage[], slots: readonly Slot[], limit: number, order = true): boolean {
  const stretches = stretchesOf(stages, slots, limit);
  const windows = windowsOf(stages, slots, limit, stretches);
  if (windows.some(({ within }) => within.length === 0)) return false;
  const { Status } = solver.solve(program(windows, stretches, order), { output_flag: false });
  if (Status !== 'Optimal' && Status !== 'Infeasible') throw new Error(`the solver came to no answer: ${Status}`);
  return Status === 'Optimal';
}

function stretchesOf(stages: readonly Stage[], slots: readonly Slot[], limit: number): Stretch[] {
  const [first, last] = [slots[0]?.start ?? 0, slots.at(-1)?.end ?? 0];
  const marks = [first, last, ...stages.flatMap(({ releaseAt, dueAt }) => [releaseAt, dueAt + limit])]
    .filter((at) => at >= first && at <= last)
    .toSorted((a, b) => a - b);
  const stretches: Stretch[] = [];
  let [next, rooms] = [0, 0];
  for (const [order, to] of marks.entries()) {
    const from = marks[order - 1] ?? first;
    let room = 0;
    for (; next < slots.length && (slots[next]?.end ?? Infinity) <= to; next += 1) if ((slots[next]?.start ?? 0) >= from) room += 1;
    if (room > 0) stretches.push({ from, to, room });
    rooms += room;
  }
  if (rooms !== slots.length) throw new Error('a release or a due date cuts a half hour in two');
  return stretches;
}

/** Where a stage can lie at all: behind the work of what it waits for, before the work of what waits for it. */
function windowsOf(stages: readonly Stage[], slots: readonly Slot[], limit: number, stretches: readonly Stretch[]): Window[] {
  const byId = new Map(stages.map((stage) => [stage.id, stage]));
  const from = new Map<string, number>();
  const to = new Map(stages.map(({ id, dueAt }) => [id, dueAt + limit]));
  for (const { id, releaseAt, after } of stages)
    from.set(
      id,
      Math.max(releaseAt, ...after.map((before) => endOf(slots, from.get(before) ?? Infinity, byId.get(before)?.halfHours ?? 0))),
    );
  for (const { id, halfHours, after } of stages.toReversed()) {
    const begin = startOf(slots, to.get(id) ?? -Infinity, halfHours);
    for (const before of after) to.set(before, Math.min(to.get(before) ?? Infinity, begin));
  }
  return stages.map((stage) => {
    const window = { from: from.get(stage.id) ?? Infinity, to: to.get(stage.id) ?? -Infinity };
    const within = stretches.flatMap((stretch, order) => (stretch.to > window.from && stretch.from < window.to ? [order] : []));
    const room = within.reduce((sum, order) => sum + (stretches[order]?.room ?? 0), 0);
    return { stage, ...window, within: room < stage.halfHours ? [] : within };
  });
}

/** The instant by which some half hours have passed from another on, and the one from which they fit before another. */
function endOf(slots: readonly Slot[], from: number, halfHours: number): number {
  return slots[slots.findIndex(({ start }) => start >= from) + halfHours - 1]?.end ?? Infinity;
}
function startOf(slots: readonly Slot[], to: number, halfHours: number): number {
  return slots[slots.findLastIndex(({ end }) => end <= to) - halfHours + 1]?.start ?? -Infinity;
}

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
      bounds.push(`x${number}_${at} <= ${Math.min(stage.halfHours, stretches[at]?.room ?? 0)}`);
      inStretch.set(at, [...(inStretch.get(at) ?? []), `x${number}_${at}`]);
    }
  });
  for (const [at, terms] of inStretch) rows.push(`${sum(terms)} <= ${stretches[at]?.room ?? 0}`);
  if (order)
    windows.forEach(({ stage, within }, number) => {
      for (const at of stage.after.length > 0 ? within : []) {
        const begun = `z${number}_${at}`;
        yesNo.push(begun);
        rows.push(`x${number}_${at} - ${Math.min(stage.halfHours, stretches[at]?.room ?? 0)} ${begun} <= 0`);
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
