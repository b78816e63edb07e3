/**
 * Multinomial logistic regression with an L2 penalty, fitted by limited-memory BFGS
 * (Nocedal and Wright, Numerical Optimization, 2nd edition, algorithms 7.4 and 7.5, 2006). Nothing in it is drawn by lot.
 */
import { ALWAYS, type Model } from '../../core/inquiries/learned/models.ts';

export type Case = { features: ReadonlySet<string>; is: string };
type Options = {
  /** How much a case weighs against the penalty. */
  trust: number;
  /** Give every class the same weight, however rare. */
  balanced: boolean;
  /** A feature in fewer cases than this is left out. */
  seldom: number;
};

const STEPS = 120;
const REMEMBERED = 8;
/** Features whose weights are all smaller than this are left out: without them the figures stay as they are. */
const SMALLEST = 0.1;

const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, value, at) => sum + value * (b[at] as number), 0);

/** The smallest value of a smooth function from `start`; `look` answers its value and writes its slope. */
function lowest(start: Float64Array, look: (at: Float64Array, slope: Float64Array) => number): Float64Array {
  let point = start;
  let slope = new Float64Array(point.length);
  let value = look(point, slope);
  const past: { step: Float64Array; change: Float64Array; scale: number }[] = [];
  for (let round = 0; round < STEPS; round++) {
    const way = slope.map((one) => -one);
    const shares = past.toReversed().map(({ step, change, scale }) => {
      const share = scale * dot(step, way);
      way.forEach((one, at) => (way[at] = one - share * (change[at] as number)));
      return share;
    });
    const last = past.at(-1);
    const size = last ? 1 / (last.scale * dot(last.change, last.change)) : 1 / Math.max(1, Math.sqrt(dot(slope, slope)));
    way.forEach((one, at) => (way[at] = one * size));
    past.forEach(({ step, change, scale }, index) => {
      const share = (shares[past.length - 1 - index] as number) - scale * dot(change, way);
      way.forEach((one, at) => (way[at] = one + share * (step[at] as number)));
    });
    const fall = dot(slope, way);
    let length = 1;
    let next = point;
    let nextSlope = slope;
    let nextValue = value;
    for (; length > 1e-8; length /= 2) {
      next = point.map((one, at) => one + length * (way[at] as number));
      nextSlope = new Float64Array(point.length);
      nextValue = look(next, nextSlope);
      if (nextValue <= value + 1e-4 * length * fall) break;
    }
    if (!(nextValue < value)) break;
    const step = next.map((one, at) => one - (point[at] as number));
    const change = nextSlope.map((one, at) => one - (slope[at] as number));
    const bend = dot(step, change);
    if (bend > 1e-12) past.push({ step, change, scale: 1 / bend });
    if (past.length > REMEMBERED) past.shift();
    const done = value - nextValue < 1e-6 * Math.abs(value);
    [point, slope, value] = [next, nextSlope, nextValue];
    if (done) break;
  }
  return point;
}

/** The weights under which these cases are likeliest, rounded to hundredths. */
export function fit(cases: readonly Case[], { trust, balanced, seldom }: Options): Model {
  const seen = new Map<string, number>();
  for (const { features } of cases) for (const feature of features) seen.set(feature, (seen.get(feature) ?? 0) + 1);
  const names = [ALWAYS, ...[...seen].filter(([, count]) => count >= seldom).map(([name]) => name)];
  const place = new Map(names.map((name, at) => [name, at]));
  const classes = [...new Set(cases.map(({ is }) => is))].toSorted();
  const width = classes.length;
  const rows = cases.map(({ features, is }) => {
    const known = [...features].flatMap((name) => place.get(name) ?? []);
    return { known, is: classes.indexOf(is), value: 1 / Math.sqrt(Math.max(1, known.length)) };
  });
  const counts = classes.map((_, at) => rows.filter((row) => row.is === at).length);
  const weight = counts.map((count) => trust * (balanced ? rows.length / (width * count) : 1));
  const found = lowest(new Float64Array(names.length * width), (at, slope) => {
    let loss = 0;
    for (let index = width; index < at.length; index++) {
      loss += ((at[index] as number) * (at[index] as number)) / 2;
      slope[index] = at[index] as number;
    }
    const sums = new Float64Array(width);
    for (const { known, is, value } of rows) {
      for (let one = 0; one < width; one++) sums[one] = at[one] as number;
      for (const feature of known) for (let one = 0; one < width; one++) sums[one]! += (at[feature * width + one] as number) * value;
      const most = Math.max(...sums);
      let total = 0;
      for (let one = 0; one < width; one++) total += sums[one] = Math.exp((sums[one] as number) - most);
      const share = weight[is] as number;
      loss -= share * Math.log((sums[is] as number) / total);
      for (let one = 0; one < width; one++) {
        const push = share * ((sums[one] as number) / total - (one === is ? 1 : 0));
        slope[one]! += push;
        for (const feature of known) slope[feature * width + one]! += push * value;
      }
    }
    return loss;
  });
  const weights = new Map<string, number[]>();
  for (const [at, name] of names.entries()) {
    const row = [...found.subarray(at * width, at * width + width)].map((one) => Math.round(one * 100) / 100);
    if (name === ALWAYS || row.some((one) => Math.abs(one) >= SMALLEST)) weights.set(name, row);
  }
  return { classes, weights };
}
