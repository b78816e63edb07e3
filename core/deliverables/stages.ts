/**
 * Stages of edit work as the schedule takes them, with what precedence makes of their release and their due date.
 */

/** One piece of edit work. Instants are epoch milliseconds. */
export type Stage = {
  id: string;
  /** Half hours that are still to be done. */
  halfHours: number;
  /** It cannot be begun before: the camera files are there, the notes are in. */
  releaseAt: number;
  dueAt: number;
  /** Stages that must be done before it. */
  after: readonly string[];
};

/** A stage with release r' = the latest of its own and its predecessors', due d' = the earliest of its own and its successors'. */
export type Ordered = Stage & {
  /** r' and d', epoch milliseconds. */
  from: number;
  by: number;
  /** Place in an order in which each comes behind its predecessors. */
  rank: number;
};

/** Thrown where stages wait for one another in a circle; `circle` names them in order. */
export class CircleError extends Error {
  readonly circle: readonly string[];
  constructor(circle: readonly string[]) {
    super('Some stages wait for one another in a circle.');
    this.circle = circle;
  }
}

/**
 * Stages with their r' and d', in an order that keeps precedence. A predecessor that is not among the stages is done already.
 * @throws CircleError when stages wait for one another
 */
export function orderedStages(stages: readonly Stage[]): Ordered[] {
  const byId = new Map(stages.map((stage) => [stage.id, stage]));
  const order: Stage[] = [];
  const state = new Map<string, 'open' | 'done'>();
  const path: string[] = [];
  const visit = (stage: Stage): void => {
    if (state.get(stage.id) === 'done') return;
    if (state.get(stage.id) === 'open') throw new CircleError(path.slice(path.indexOf(stage.id)));
    state.set(stage.id, 'open');
    path.push(stage.id);
    for (const id of stage.after) {
      const before = byId.get(id);
      if (before) visit(before);
    }
    path.pop();
    state.set(stage.id, 'done');
    order.push(stage);
  };
  for (const stage of stages) visit(stage);

  const from = new Map<string, number>();
  for (const { id, releaseAt, after } of order) from.set(id, Math.max(releaseAt, ...after.map((before) => from.get(before) ?? -Infinity)));
  const by = new Map(order.map(({ id, dueAt }) => [id, dueAt]));
  for (const { id, after } of order.toReversed())
    for (const before of after) by.set(before, Math.min(by.get(before) ?? Infinity, by.get(id) ?? Infinity));
  return order.map((stage, rank) => ({ ...stage, from: from.get(stage.id) ?? stage.releaseAt, by: by.get(stage.id) ?? stage.dueAt, rank }));
}
