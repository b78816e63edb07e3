/**
 * Two sides timed in one run, interleaved A B B A, so that whatever slows the machine slows both. What counts is the median of
 * the paired ratios; milliseconds are told only to give an idea.
 */
export type Row = {
  name: string;
  /** Median time of our side and of the other, in `unit`. */
  ours: number;
  theirs: number;
  unit: 'ms';
  ratio: number;
  /** The ratios' first and ninth decile. */
  spread: [number, number];
  /** The ratio that we aim at; nothing passes or fails by it. */
  aim: number;
  /** What the other side is, and what it does not do that ours does. */
  against: string;
};
export type Pairing = {
  name: string;
  against: string;
  aim: number;
  rounds: number;
  ours: () => unknown;
  theirs: () => unknown;
  /** Throws when the two sides do not come to the same; a run that is not proven is void. */
  prove?: () => unknown;
};

/** Time the two sides and make a row of it. One round before the first is not counted. */
export async function pair({ name, against, aim, rounds, ours, theirs, prove }: Pairing): Promise<Row> {
  await prove?.();
  const ourTimes: number[] = [];
  const theirTimes: number[] = [];
  const ratios: number[] = [];
  for (let round = -1; round < rounds; round += 1) {
    const a = await timed(ours);
    const b = (await timed(theirs)) + (await timed(theirs));
    const both = a + (await timed(ours));
    if (round < 0) continue;
    ourTimes.push(both / 2);
    theirTimes.push(b / 2);
    ratios.push(both / b);
  }
  return {
    name,
    ours: rounded(quantile(ourTimes, 0.5)),
    theirs: rounded(quantile(theirTimes, 0.5)),
    unit: 'ms',
    ratio: rounded(quantile(ratios, 0.5)),
    spread: [rounded(quantile(ratios, 0.1)), rounded(quantile(ratios, 0.9))],
    aim,
    against,
  };
}

/**
 * A row against a fixed limit in milliseconds, such as what a screen allows a frame: of every round the value that 95 of 100 stay under.
 * @param rounds the times of each round
 */
export function within(limit: number, rounds: readonly (readonly number[])[], row: Pick<Row, 'name' | 'against'>): Row {
  const ratios = rounds.map((times) => quantile(times, 0.95) / limit);
  const ratio = quantile(ratios, 0.5);
  return {
    ...row,
    ours: rounded(ratio * limit),
    theirs: limit,
    unit: 'ms',
    ratio: rounded(ratio),
    spread: [rounded(quantile(ratios, 0.1)), rounded(quantile(ratios, 0.9))],
    aim: 1,
  };
}

/** Hand rows to `npm run bench`, which started this process. */
export function report(...rows: readonly Row[]): void {
  process.stdout.write(`${JSON.stringify(rows)}\n`);
}

/** Milliseconds from the beginning of an act until its end. */
export async function timed(act: () => unknown): Promise<number> {
  const began = performance.now();
  await act();
  return performance.now() - began;
}

function quantile(values: readonly number[], q: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(q * sorted.length))] ?? Number.NaN;
}

const rounded = (value: number): number => Number(value.toPrecision(3));
