/**
 * The network that reads a whole message in its order: words become numbers, two gated recurrent units carry what was read from the front and from
 * the back, and at each date and hour, and of the whole message, it answers with chances. What it answers is what the linear weights answer too, but
 * it knows in which order words stand and what was said far away.
 */
import { addProduct, runGru, type Course, type Gru } from './gru.ts';
import { TRAITS, type Mention, type Sequence } from './sequence.ts';

/** What a date, an hour and a message may be, in the order of the answers. */
export const CLASSES = {
  date: ['event', 'wider', 'call', 'reply', 'none', 'either'],
  time: ['call', 'wrap', 'both', 'reply', 'none'],
  length: ['one', 'more', 'open'],
} as const;

/** Numbers a word has, numbers a unit carries, and numbers between a mention and its answer. */
export const WIDTH = 48;
export const SIZE = 64;
export const BETWEEN = 96;
/** Both units beside each other. */
export const BOTH = 2 * SIZE;
/** What is known at a mention: both units there, the most of both in the message, and its own traits. */
export const KNOWN = 2 * BOTH + WIDTH;

/** Each table of numbers: rows and columns, in the order in which they are kept. The words stand last: there are more or fewer of them. */
export const TABLES = {
  dateTraits: [WIDTH, TRAITS.date + 1],
  timeTraits: [WIDTH, TRAITS.time + 1],
  frontInput: [3 * SIZE, WIDTH],
  frontCarried: [3 * SIZE, SIZE],
  frontInputBias: [3 * SIZE, 1],
  frontCarriedBias: [3 * SIZE, 1],
  backInput: [3 * SIZE, WIDTH],
  backCarried: [3 * SIZE, SIZE],
  backInputBias: [3 * SIZE, 1],
  backCarriedBias: [3 * SIZE, 1],
  dateBetween: [BETWEEN, KNOWN],
  dateBetweenBias: [BETWEEN, 1],
  date: [CLASSES.date.length, BETWEEN],
  dateBias: [CLASSES.date.length, 1],
  timeBetween: [BETWEEN, KNOWN],
  timeBetweenBias: [BETWEEN, 1],
  time: [CLASSES.time.length, BETWEEN],
  timeBias: [CLASSES.time.length, 1],
  length: [CLASSES.length.length, 2 * BOTH],
  lengthBias: [CLASSES.length.length, 1],
} as const;
export type TableName = keyof typeof TABLES;
export type Tables = Record<TableName, Float32Array>;

/** The network: its tables and its words, each with its row; the first row is that of a word it does not know. */
export type Network = { tables: Tables; words: ReadonlyMap<string, number>; rows: Float32Array };

export const front = (tables: Tables): Gru => ({
  input: tables.frontInput,
  carried: tables.frontCarried,
  inputBias: tables.frontInputBias,
  carriedBias: tables.frontCarriedBias,
});
export const back = (tables: Tables): Gru => ({
  input: tables.backInput,
  carried: tables.backCarried,
  inputBias: tables.backInputBias,
  carriedBias: tables.backCarriedBias,
});

/** The traits of a mention as numbers of a word. */
export function traitsOf(tables: Tables, { kind, traits }: Pick<Mention, 'kind' | 'traits'>): Float32Array {
  const out = new Float32Array(WIDTH);
  const given = Float32Array.from([...traits, 1]);
  addProduct(out, 0, tables[`${kind}Traits`], WIDTH, given.length, given, 0);
  return out;
}

/** The numbers of each word, one after the other, with the traits of the mentions added. */
export function inputOf({ tables, words, rows }: Network, { words: spoken, mentions }: Sequence): Float32Array {
  const input = new Float32Array(spoken.length * WIDTH);
  spoken.forEach((word, at) => {
    const row = words.get(word) ?? 0;
    input.set(rows.subarray(row * WIDTH, (row + 1) * WIDTH), at * WIDTH);
  });
  for (const mention of mentions)
    traitsOf(tables, mention).forEach(
      (one, unit) => (input[mention.at * WIDTH + unit] = (input[mention.at * WIDTH + unit] as number) + one),
    );
  return input;
}

/** The most that each unit carried anywhere in the message, and at which word. */
export function mostOf({ state: a }: Course, { state: b }: Course): { most: Float32Array; at: Int32Array } {
  const most = new Float32Array(BOTH).fill(-Infinity);
  const at = new Int32Array(BOTH);
  for (let word = 0; word < a.length / SIZE; word++)
    for (let unit = 0; unit < BOTH; unit++) {
      const value = (unit < SIZE ? a[word * SIZE + unit] : b[word * SIZE + unit - SIZE]) as number;
      if (value > (most[unit] as number)) {
        most[unit] = value;
        at[unit] = word;
      }
    }
  return { most, at };
}

/** Chances from sums: each power of e over all of them together. */
export function softmax(sums: Float32Array): number[] {
  const most = Math.max(...sums);
  const powers = Array.from(sums, (sum) => Math.exp(sum - most));
  const total = powers.reduce((sum, power) => sum + power, 0);
  return powers.map((power) => power / total);
}

/** What is known at a mention: the units at its word, the most of the message, and its traits where they are above nothing. */
export function knownAt({ tables }: Pick<Network, 'tables'>, a: Course, b: Course, most: Float32Array, mention: Mention): Float32Array {
  const known = new Float32Array(KNOWN);
  known.set(a.state.subarray(mention.at * SIZE, (mention.at + 1) * SIZE));
  known.set(b.state.subarray(mention.at * SIZE, (mention.at + 1) * SIZE), SIZE);
  known.set(most, BOTH);
  known.set(
    traitsOf(tables, mention).map((one) => Math.max(0, one)),
    2 * BOTH,
  );
  return known;
}

/** The numbers between what is known at a mention and its answer. */
export function betweenOf(tables: Tables, kind: Mention['kind'], known: Float32Array): Float32Array {
  const between = Float32Array.from(tables[`${kind}BetweenBias`]);
  addProduct(between, 0, tables[`${kind}Between`], BETWEEN, KNOWN, known, 0);
  return between.map((one) => Math.max(0, one));
}

/** The sums of the classes of an answer. */
export function sumsOf(tables: Tables, kind: keyof typeof CLASSES, from: Float32Array): Float32Array {
  const sums = Float32Array.from(tables[`${kind}Bias`]);
  addProduct(sums, 0, tables[kind], sums.length, from.length, from, 0);
  return sums;
}

/** The most and the mean of both units over the message. */
export function wholeOf(a: Course, b: Course, most: Float32Array): Float32Array {
  const whole = new Float32Array(2 * BOTH);
  whole.set(most);
  const count = a.state.length / SIZE;
  for (let word = 0; word < count; word++)
    for (let unit = 0; unit < SIZE; unit++) {
      whole[BOTH + unit] = (whole[BOTH + unit] as number) + (a.state[word * SIZE + unit] as number) / count;
      whole[BOTH + SIZE + unit] = (whole[BOTH + SIZE + unit] as number) + (b.state[word * SIZE + unit] as number) / count;
    }
  return whole;
}

/** What the network makes of a message: chances by class, of each date and time by where it begins, and of how many days are asked for. */
export type Context = {
  dates: ReadonlyMap<number, readonly number[]>;
  times: ReadonlyMap<number, readonly number[]>;
  length: readonly number[];
};

/** Let the network read a message. */
export function readContext(network: Network, sequence: Sequence): Context {
  const { tables } = network;
  if (sequence.words.length === 0) return { dates: new Map(), times: new Map(), length: [] };
  const input = inputOf(network, sequence);
  const a = runGru(front(tables), input, WIDTH, SIZE, false);
  const b = runGru(back(tables), input, WIDTH, SIZE, true);
  const { most } = mostOf(a, b);
  const chances = (of: Mention['kind']): Map<number, number[]> =>
    new Map(
      sequence.mentions
        .filter(({ kind }) => kind === of)
        .map((mention) => [mention.start, softmax(sumsOf(tables, of, betweenOf(tables, of, knownAt(network, a, b, most, mention))))]),
    );
  return { dates: chances('date'), times: chances('time'), length: softmax(sumsOf(tables, 'length', wholeOf(a, b, most))) };
}
