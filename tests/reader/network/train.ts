/**
 * Teaches the network: the labelled messages in an order drawn by a fixed lot, some at a time, a step down the slope after each.
 */
import { SIZE, TABLES, WIDTH, type Network, type TableName } from '../../../core/inquiries/context/network.ts';
import { randomFrom, shuffled } from '../../random.ts';
import { addSlopes, noTables, type Example, type Shares, type Slopes } from './slopes.ts';

type Plan = {
  seed: number;
  /** How often every message is read. */
  rounds: number;
  /** Told after each round: the mean loss. */
  report?: (round: number, loss: number) => void;
};

const AT_ONCE = 24;
/** A word that fewer messages have is unknown. */
const SELDOM = 3;
/** How far a step goes at most and at the end, how many steps it takes to grow to that, and the share by which every number is drawn to nothing. */
const STEP = { most: 2.5e-3, least: 1e-5, warm: 200, drawn: 1e-2 };
/** Slopes longer than this together are cut to it. */
const LONGEST = 1;
const LENGTH_SHARE = 0.5;
/** Adam (Kingma and Ba, 2015, algorithm 1), with the drawing apart from it (Loshchilov and Hutter, Decoupled Weight Decay Regularization, 2019). */
const [FIRST, SECOND, TINY] = [0.9, 0.999, 1e-8];

/** A network that knows nothing: small numbers by lot, the smaller the more of them go into one sum. */
function untaught(words: ReadonlyMap<string, number>, lot: () => number): Network {
  const tables = noTables();
  for (const [name, table] of Object.entries(tables)) {
    const [, columns] = TABLES[name as TableName];
    const wide = columns === 1 ? 0 : 1 / Math.sqrt(name.endsWith('Input') ? SIZE : columns);
    table.forEach((_, at) => (table[at] = (2 * lot() - 1) * wide));
  }
  // The sum of three lots is nearly normal; its deviation is 0.3.
  const rows = new Float32Array((words.size + 1) * WIDTH).map(() => (lot() + lot() + lot() - 1.5) * 0.6);
  return { tables, words, rows };
}

/** The words that enough messages have, each with its row. */
function wordsIn(examples: readonly Example[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { sequence } of examples) for (const word of new Set(sequence.words)) counts.set(word, (counts.get(word) ?? 0) + 1);
  const known = [...counts].flatMap(([word, count]) => (count >= SELDOM ? [word] : [])).toSorted((a, b) => (a < b ? -1 : 1));
  return new Map(known.map((word, at) => [word, at + 1]));
}

/** Adam for one table. */
class Stepper {
  #first: Float32Array;
  #second: Float32Array;
  #values: Float32Array;
  constructor(values: Float32Array) {
    this.#values = values;
    this.#first = new Float32Array(values.length);
    this.#second = new Float32Array(values.length);
  }
  step(slope: Float32Array, from: number, scale: number, rate: number, count: number): void {
    const [a, b] = [1 - FIRST ** count, 1 - SECOND ** count];
    for (let at = 0; at < slope.length; at++) {
      const d = (slope[at] as number) * scale;
      const own = from + at;
      const first = (this.#first[own] = FIRST * (this.#first[own] as number) + (1 - FIRST) * d);
      const second = (this.#second[own] = SECOND * (this.#second[own] as number) + (1 - SECOND) * d * d);
      const value = this.#values[own] as number;
      this.#values[own] = value - rate * (first / a / (Math.sqrt(second / b) + TINY) + STEP.drawn * value);
    }
  }
}

/** The share of each answer, so that every kind counts the same in a step however many there are. */
function sharesOf(examples: readonly Example[]): Shares {
  const counts = { date: 0, time: 0, length: 0 };
  for (const { sequence, is, length } of examples) {
    sequence.mentions.forEach(({ kind }, at) => (counts[kind] += is[at] === undefined ? 0 : 1));
    counts.length += length === undefined ? 0 : 1;
  }
  const share = (count: number): number => 1 / Math.max(1, count);
  return { date: share(counts.date), time: share(counts.time), length: LENGTH_SHARE * share(counts.length) };
}

const squares = (slope: Float32Array): number => slope.reduce((sum, one) => sum + one * one, 0);

/** A network that has learned from the examples; the same plan and the same examples give the same network. */
export function train(examples: readonly Example[], { seed, rounds, report }: Plan): Network {
  const lot = randomFrom(seed);
  const network = untaught(wordsIn(examples), lot);
  const steppers = Object.entries(network.tables).map(([name, table]) => [name as TableName, new Stepper(table)] as const);
  const wordStepper = new Stepper(network.rows);
  const steps = rounds * Math.ceil(examples.length / AT_ONCE);
  let count = 0;
  for (let round = 0; round < rounds; round++) {
    const order = shuffled(examples, lot);
    let loss = 0;
    for (let from = 0; from < order.length; from += AT_ONCE) {
      const some = order.slice(from, from + AT_ONCE);
      const shares = sharesOf(some);
      const slopes: Slopes = { tables: noTables(), rows: new Map() };
      for (const example of some) loss += addSlopes(network, example, shares, slopes, lot);
      count++;
      const rate = STEP.most * Math.min(1, count / STEP.warm) * (1 - count / steps) + STEP.least;
      const long = Math.sqrt([...Object.values(slopes.tables), ...slopes.rows.values()].reduce((sum, slope) => sum + squares(slope), 0));
      const scale = Math.min(1, LONGEST / long);
      for (const [name, stepper] of steppers) stepper.step(slopes.tables[name], 0, scale, rate, count);
      for (const [row, slope] of slopes.rows) wordStepper.step(slope, row * WIDTH, scale, rate, count);
    }
    report?.(round, loss / Math.ceil(order.length / AT_ONCE));
  }
  return network;
}
