/**
 * How the loss of the network changes with each of its numbers, for one message: what reading it forwards kept is gone through backwards
 * (Rumelhart, Hinton and Williams, Learning representations by back-propagating errors, Nature 323, 1986).
 */
import { runGru, type Course, type Gru } from '../../../core/inquiries/context/gru.ts';
import {
  back,
  BETWEEN,
  betweenOf,
  BOTH,
  CLASSES,
  front,
  inputOf,
  KNOWN,
  knownAt,
  mostOf,
  SIZE,
  softmax,
  sumsOf,
  TABLES,
  traitsOf,
  wholeOf,
  WIDTH,
  type Network,
  type TableName,
  type Tables,
} from '../../../core/inquiries/context/network.ts';
import type { Mention, Sequence } from '../../../core/inquiries/context/sequence.ts';

/** A message and what its mentions and it are, as indexes of the classes; undefined where nothing is known. */
export type Example = { sequence: Sequence; is: readonly (number | undefined)[]; length: number | undefined };
/** The slopes of every table, and of the rows of the words that were read. */
export type Slopes = { tables: Tables; rows: Map<number, Float32Array> };
/** How much each kind of answer counts: one over how many there are in the whole step. */
export type Shares = Record<keyof typeof CLASSES, number>;

/** Shares of the numbers that are left out by lot while learning (Srivastava et al., Dropout, 2014), and of words taken for unknown. */
const LEFT_OUT = { word: 0.12, input: 0.4, known: 0.4, between: 0.3 };

/** A chance of nothing still has a logarithm. */
const TINY = 1e-12;

export const noTables = (): Tables =>
  Object.fromEntries(Object.entries(TABLES).map(([name, [rows, columns]]) => [name, new Float32Array(rows * columns)])) as Record<
    TableName,
    Float32Array
  >;

/** `out += value * row`, from here in the one and from there in the other. */
function addRow(out: Float32Array, to: number, value: number, row: Float32Array, from: number, columns: number): void {
  if (value === 0) return;
  let column = 0;
  for (; column + 3 < columns; column += 4, to += 4, from += 4) {
    out[to] = (out[to] as number) + value * (row[from] as number);
    out[to + 1] = (out[to + 1] as number) + value * (row[from + 1] as number);
    out[to + 2] = (out[to + 2] as number) + value * (row[from + 2] as number);
    out[to + 3] = (out[to + 3] as number) + value * (row[from + 3] as number);
  }
  for (; column < columns; column++, to++, from++) out[to] = (out[to] as number) + value * (row[from] as number);
}

/** The slopes of a table: what came out of it times what went in. */
function addOuter(out: Float32Array, left: Float32Array, right: Float32Array, from: number, columns: number): void {
  left.forEach((value, row) => addRow(out, row * columns, value, right, from, columns));
}

/** The slopes of what went into a table. */
function addTurned(out: Float32Array, to: number, matrix: Float32Array, left: Float32Array, columns: number): void {
  left.forEach((value, row) => addRow(out, to, value, matrix, row * columns, columns));
}

function addTo(out: Float32Array, more: Float32Array, from = 0): void {
  for (let at = 0; at < out.length; at++) out[at] = (out[at] as number) + (more[from + at] as number);
}

/** Backwards along a row of words; answers the slopes of what came in. */
function gruSlopes(gru: Gru, slopes: Gru, course: Course, dState: Float32Array, words: Float32Array, backwards: boolean): Float32Array {
  const count = words.length / WIDTH;
  const dWords = new Float32Array(words.length);
  const [dIn, dKept] = [new Float32Array(3 * SIZE), new Float32Array(3 * SIZE)];
  let carried = new Float32Array(SIZE);
  for (let step = count - 1; step >= 0; step--) {
    const word = backwards ? count - 1 - step : step;
    const own = word * SIZE;
    const last = (backwards ? word + 1 : word - 1) * SIZE;
    const dLast = new Float32Array(SIZE);
    for (let unit = 0; unit < SIZE; unit++) {
      const [r, z, n, q] = [course.reset, course.update, course.fresh, course.inner].map((one) => one[own + unit]) as [
        number,
        number,
        number,
        number,
      ];
      const before = step > 0 ? (course.state[last + unit] as number) : 0;
      const d = (dState[own + unit] as number) + (carried[unit] as number);
      const dNew = d * (1 - z) * (1 - n * n);
      dIn[unit] = dKept[unit] = dNew * q * r * (1 - r);
      dIn[SIZE + unit] = dKept[SIZE + unit] = d * (before - n) * z * (1 - z);
      dIn[2 * SIZE + unit] = dNew;
      dKept[2 * SIZE + unit] = dNew * r;
      dLast[unit] = d * z;
    }
    addOuter(slopes.input, dIn, words, word * WIDTH, WIDTH);
    addTo(slopes.inputBias, dIn);
    addTo(slopes.carriedBias, dKept);
    addTurned(dWords, word * WIDTH, gru.input, dIn, WIDTH);
    if (step > 0) {
      addOuter(slopes.carried, dKept, course.state, last, SIZE);
      addTurned(dLast, 0, gru.carried, dKept, SIZE);
    }
    carried = dLast;
  }
  return dWords;
}

/** Numbers left out by lot, the others made larger by as much; without a lot nothing is left out. */
function mask(length: number, share: number, lot: (() => number) | undefined): Float32Array {
  const all = new Float32Array(length).fill(1);
  return lot ? all.map(() => (lot() < share ? 0 : 1 / (1 - share))) : all;
}
function multiply(out: Float32Array, by: Float32Array): void {
  for (let at = 0; at < by.length; at++) out[at] = (out[at] as number) * (by[at] as number);
}

/**
 * Add the slopes of one message.
 * @param lot from 0 to 1; undefined leaves nothing out
 * @returns the loss: minus the logarithm of the chance of what is right, by its share
 */
export function addSlopes(network: Network, example: Example, shares: Shares, slopes: Slopes, lot?: () => number): number {
  const { tables } = network;
  const mentioned = new Set(example.sequence.mentions.map(({ at }) => at));
  // A word that it has never seen is one that it will meet.
  const words = example.sequence.words.map((word, at) => (lot && !mentioned.has(at) && lot() < LEFT_OUT.word ? '' : word));
  const sequence = { words, mentions: example.sequence.mentions };
  if (words.length === 0) return 0;
  const input = inputOf(network, { words, mentions: [] });
  const inputMask = mask(input.length, LEFT_OUT.input, lot);
  multiply(input, inputMask);
  const traits = sequence.mentions.map((mention) => traitsOf(tables, mention));
  sequence.mentions.forEach(({ at }, index) => addTo(input.subarray(at * WIDTH, (at + 1) * WIDTH), traits[index] as Float32Array));
  const a = runGru(front(tables), input, WIDTH, SIZE, false);
  const b = runGru(back(tables), input, WIDTH, SIZE, true);
  const { most, at: where } = mostOf(a, b);
  const [dA, dB, dMost, dTraits] = [
    new Float32Array(a.state.length),
    new Float32Array(b.state.length),
    new Float32Array(BOTH),
    traits.map(() => new Float32Array(WIDTH)),
  ];
  let loss = 0;
  /** Takes the loss of one answer and answers the slopes of what it was made from. */
  const answer = (kind: keyof Shares, from: Float32Array, is: number): Float32Array => {
    const chances = softmax(sumsOf(tables, kind, from));
    loss -= Math.log((chances[is] as number) + TINY) * shares[kind];
    const dSums = Float32Array.from(chances, (chance, at) => (chance - (at === is ? 1 : 0)) * shares[kind]);
    addOuter(slopes.tables[kind], dSums, from, 0, from.length);
    addTo(slopes.tables[`${kind}Bias`], dSums);
    const dFrom = new Float32Array(from.length);
    addTurned(dFrom, 0, tables[kind], dSums, from.length);
    return dFrom;
  };

  sequence.mentions.forEach((mention, index) => {
    const is = example.is[index];
    if (is === undefined) return;
    const known = knownAt(network, a, b, most, mention);
    const knownMask = mask(2 * BOTH, LEFT_OUT.known, lot);
    multiply(known, knownMask);
    const { kind } = mention;
    const between = betweenOf(tables, kind, known);
    const betweenMask = mask(BETWEEN, LEFT_OUT.between, lot);
    multiply(between, betweenMask);
    const dBetween = answer(kind, between, is);
    multiply(dBetween, betweenMask);
    between.forEach((one, at) => one <= 0 && (dBetween[at] = 0));
    addOuter(slopes.tables[`${kind}Between`], dBetween, known, 0, KNOWN);
    addTo(slopes.tables[`${kind}BetweenBias`], dBetween);
    const dKnown = new Float32Array(KNOWN);
    addTurned(dKnown, 0, tables[`${kind}Between`], dBetween, KNOWN);
    multiply(dKnown, knownMask);
    addTo(dA.subarray(mention.at * SIZE, (mention.at + 1) * SIZE), dKnown);
    addTo(dB.subarray(mention.at * SIZE, (mention.at + 1) * SIZE), dKnown, SIZE);
    addTo(dMost, dKnown, BOTH);
    (traits[index] as Float32Array).forEach(
      (one, at) => one > 0 && ((dTraits[index] as Float32Array)[at] = dKnown[2 * BOTH + at] as number),
    );
  });

  if (example.length !== undefined) {
    const whole = wholeOf(a, b, most);
    const wholeMask = mask(whole.length, LEFT_OUT.known, lot);
    multiply(whole, wholeMask);
    const dWhole = answer('length', whole, example.length);
    multiply(dWhole, wholeMask);
    addTo(dMost, dWhole);
    for (let word = 0; word < words.length; word++)
      for (let unit = 0; unit < SIZE; unit++) {
        dA[word * SIZE + unit] = (dA[word * SIZE + unit] as number) + (dWhole[BOTH + unit] as number) / words.length;
        dB[word * SIZE + unit] = (dB[word * SIZE + unit] as number) + (dWhole[BOTH + SIZE + unit] as number) / words.length;
      }
  }

  for (let unit = 0; unit < BOTH; unit++) {
    const [into, own] = unit < SIZE ? [dA, unit] : [dB, unit - SIZE];
    const cell = (where[unit] as number) * SIZE + own;
    into[cell] = (into[cell] as number) + (dMost[unit] as number);
  }
  const dInput = gruSlopes(front(tables), front(slopes.tables), a, dA, input, false);
  addTo(dInput, gruSlopes(back(tables), back(slopes.tables), b, dB, input, true));
  sequence.mentions.forEach((mention, index) => addTraitSlopes(slopes.tables, mention, dTraits[index] as Float32Array, dInput));
  multiply(dInput, inputMask);
  words.forEach((word, at) => {
    const row = network.words.get(word) ?? 0;
    const slope = slopes.rows.get(row) ?? new Float32Array(WIDTH);
    addTo(slope, dInput, at * WIDTH);
    slopes.rows.set(row, slope);
  });
  return loss;
}

/** Traits come in at their word and again at the answer. */
function addTraitSlopes(slopes: Tables, { kind, traits, at }: Mention, dTraits: Float32Array, dInput: Float32Array): void {
  addTo(dTraits, dInput, at * WIDTH);
  const given = Float32Array.from([...traits, 1]);
  addOuter(slopes[`${kind}Traits`], dTraits, given, 0, given.length);
}
