/**
 * The network that reads a message in its order: what it sees, how it is kept on file, and that it learns.
 */
import { describe, expect, test } from 'vitest';
import { networkLines, readNetwork } from '../../../core/inquiries/context/file.ts';
import { readContext, WIDTH, type Network, type TableName } from '../../../core/inquiries/context/network.ts';
import { sequenceOf, TRAITS, type Sequence } from '../../../core/inquiries/context/sequence.ts';
import { lookAt } from '../../../core/inquiries/look.ts';
import { gazetteer, homeOf } from '../../reader/corpus.ts';
import { addSlopes, noTables, type Example } from '../../reader/network/slopes.ts';
import { train } from '../../reader/network/train.ts';
import { randomFrom, shuffled } from '../../random.ts';

const seen = (text: string): Sequence => {
  const homePlace = homeOf('duluth');
  const { scene, phones } = lookAt({
    text,
    receivedAt: '2026-11-25T09:12:00-06:00[America/Chicago]',
    homeZone: homePlace.zone,
    homePlace,
    gazetteer,
  });
  return sequenceOf(scene, phones);
};

describe('what it sees', () => {
  test('words as they stand, lines among them, and each date, hour, price and number as one', () => {
    const { words, mentions } = seen('Hi Kit,\n\nCan you film us on 12 December, 2pm to 6pm, Room 204?\n$400.');
    expect(words.join(' ')).toBe('hi kit , <paragraph> can you film us on <date> , <time> , room #3 ? <line> <money> .');
    expect(mentions.map(({ kind, at, start }) => [kind, at, start])).toEqual([
      ['date', 9, 28],
      ['time', 11, 41],
    ]);
  });
  test('a date and an hour have as many traits as there is room for', () => {
    const { mentions } = seen('Film us on Saturday or on 19 December at noon? We open at 5.');
    expect(mentions.length).toBeGreaterThan(2);
    for (const { kind, traits } of mentions) expect(traits).toHaveLength(TRAITS[kind]);
  });
  test('of a long message it reads the beginning', () => {
    const { words } = seen('very '.repeat(3000));
    expect(words).toHaveLength(600);
  });
});

/** Sentences in which only the order of the words says whether a date is that of the job. */
const lot = randomFrom(5);
const traits = (kind: 'date' | 'time'): number[] => Array.from({ length: TRAITS[kind] }, () => Math.round(lot()));
const example = (words: string, is: number): Example => {
  const all = words.split(' ');
  const at = all.indexOf('<date>');
  return {
    sequence: { words: all, mentions: [{ kind: 'date', at, start: at, traits: Array(TRAITS.date).fill(0) }] },
    is: [is],
    length: undefined,
  };
};
const taught = Array.from({ length: 8 }, (_, at) =>
  at % 2 === 0 ? example('film us not pay us on <date>', 0) : example('pay us not film us on <date>', 4),
);

describe('how it learns', () => {
  test('the slopes are how the loss changes: each table against small steps', () => {
    const mixed: Example = {
      sequence: {
        words: ['film', 'us', '<date>', 'at', '<time>', 'or', '<date>'],
        mentions: [
          { kind: 'date', at: 2, start: 1, traits: traits('date') },
          { kind: 'time', at: 4, start: 2, traits: traits('time') },
          { kind: 'date', at: 6, start: 3, traits: traits('date') },
        ],
      },
      is: [0, 1, 4],
      length: 1,
    };
    const network = train([mixed, mixed, mixed], { seed: 1, rounds: 2 });
    const shares = { date: 0.5, time: 1, length: 0.5 };
    const slopes = { tables: noTables(), rows: new Map<number, Float32Array>() };
    addSlopes(network, mixed, shares, slopes);
    const loss = (): number => addSlopes(network, mixed, shares, { tables: noTables(), rows: new Map() });
    const STEP = 5e-4;
    const rows = [...slopes.rows].map(([row, slope]) => ({ name: `row ${row}`, table: network.rows.subarray(row * WIDTH), slope }));
    const tables = Object.entries(network.tables).map(([name, table]) => ({ name, table, slope: slopes.tables[name as TableName] }));
    expect(rows.length).toBeGreaterThan(3);
    for (const { name, table, slope } of [...tables, ...rows]) {
      // Where it is steepest, and so does not change its course within the step.
      const at = slope.reduce((best, one, index) => (Math.abs(one) > Math.abs(slope[best] as number) ? index : best), 0);
      const value = table[at] as number;
      table[at] = value + STEP;
      const above = loss();
      table[at] = value - STEP;
      const below = loss();
      table[at] = value;
      expect((above - below) / (2 * STEP) / (slope[at] as number), name).toBeCloseTo(1, 1);
    }
  });
  test('what only the order of the words says', () => {
    const network = train(taught, { seed: 1, rounds: 250 });
    const chance = (words: string): number => readContext(network, example(words, 0).sequence).dates.values().next().value?.[0] ?? 0;
    expect(chance('film us not pay us on <date>')).toBeGreaterThan(0.8);
    expect(chance('pay us not film us on <date>')).toBeLessThan(0.2);
  });
  test('the same lot gives the same network', () =>
    expect(networkLines(train(taught, { seed: 3, rounds: 1 }))).toEqual(networkLines(train(taught, { seed: 3, rounds: 1 }))));
});

describe('the list of its numbers', () => {
  const network: Network = train(taught, { seed: 2, rounds: 1 });
  const list = networkLines(network);
  test('it is read as it was written', () => {
    const again = readNetwork(list.join('\n'));
    expect(again.words).toEqual(network.words);
    again.rows.forEach((one, at) => expect(one).toBeCloseTo(network.rows[at] as number, 3));
    expect(networkLines(again)).toEqual(list);
  });
  test.each([
    ['numbers that are cut off', list.with(3, `${list[3]?.slice(0, -8)}`), 'line 4 of the learned network is not whole'],
    ['letters that are none', list.with(list.length - 1, 'word\t****'), `line ${list.length} of the learned network is not whole`],
    ['a table of another name', list.with(0, (list[0] ?? '').replace('dateTraits', 'dates')), 'line 1 of the learned network is not whole'],
    ['a table too few', list.slice(1), 'the learned network has no dateTraits'],
  ])('%s: the line is named', (_, lines, error) => expect(() => readNetwork(lines.join('\n'))).toThrow(error));
});

test('the lot is the one by which the network on file was learned', () => {
  const random = randomFrom(1);
  expect(shuffled([0, 1, 2, 3, 4, 5, 6, 7], random)).toEqual([5, 0, 4, 7, 6, 1, 3, 2]);
  expect(Math.floor(random() * 1e9)).toBe(425_796_952);
});
