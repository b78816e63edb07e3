import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ReadLeg } from '../../../core/contract/trips.ts';
import { readConfirmation } from '../../../core/trips/confirmation/read.ts';
import { gazetteerFrom } from '../../../electron/api/gazetteer.ts';
import { tried } from '../laws.ts';
import { air } from './confirmations/air.ts';
import { landAndSea } from './confirmations/land-and-sea.ts';
import { later } from './confirmations/later.ts';
import { unclear } from './confirmations/unclear.ts';

const gazetteer = gazetteerFrom()();
const all = [...air, ...landAndSea, ...unclear, ...later];
const read = (text: string, known: Parameters<typeof readConfirmation>[1]['known'] = []) =>
  readConfirmation(text, { gazetteer, known, today: '2026-11-26' });
const end = (place: ReadLeg['from']) => (place === null ? '?' : place.key.startsWith('iata:') ? place.key.slice(5) : place.name);
const said = ({ mode, number, from, to, depart, arrive, berth, asks }: ReadLeg) =>
  [
    [mode ?? '?', ...(number === null ? [] : [number])].join(' '),
    `${end(from)} > ${end(to)}`,
    `${depart ?? '?'} > ${arrive ?? '?'}`,
    [...(berth ? ['berth'] : []), ...asks.map(({ field }) => field)].join(' '),
  ]
    .filter((part) => part !== '')
    .join(' | ');

describe('confirmations', () => {
  test.each(all)('$name', ({ text, legs, total }) => {
    const found = read(text);
    expect(found.legs.map(said)).toEqual(legs);
    expect(found.total ? `${found.total.currency} ${found.total.minor}` : undefined).toBe(total);
    for (const { start, end: to } of found.spans) expect(text.slice(start, to).trim()).not.toBe('');
  });
  test('there are enough of them', () => expect(all.length).toBeGreaterThanOrEqual(30));
  test('the words stand where the spans say, in the text as it was pasted', () => {
    const text = 'Flight\u00a0ZQ\u200b 412\r\n14 Dec 2026\r\nDLH 06:15\r\nORD 07:40';
    const [leg] = read(text).legs;
    expect(leg?.spans.map(({ start, end: to, meaning }) => `${meaning}: ${text.slice(start, to)}`)).toEqual([
      'number: ZQ\u200b 412',
      'from: DLH',
      'to: ORD',
      'departure: 06:15',
      'arrival: 07:40',
      'date: 14 Dec 2026',
    ]);
  });
  test('a name that is a place of the job means that place', () => {
    const springfield = gazetteer.find(({ name, region }) => name === 'Springfield' && region === 'Vermont');
    if (!springfield) throw new Error('no Springfield in Vermont');
    const { kind: _kind, people: _people, ...place } = springfield;
    const [leg] = read('Train from Boston to Springfield, 14 December 2026, dep. 16:00, arr. 18:25', [place]).legs;
    expect([leg?.to?.region, leg?.asks]).toEqual(['Vermont', []]);
  });
});

describe('bad input', () => {
  test.each([
    ['a megabyte of one letter', 'a'.repeat(1_000_000)],
    ['a megabyte of numbers', '12:34 '.repeat(170_000)],
    ['capitals without an end', 'ABC '.repeat(200_000)],
    ['lines of names', 'Duluth to Chicago\n'.repeat(50_000)],
    ['control characters', '\u0000\u0007Flight\u001b[31m ZQ 412\u202e'],
    ['dates that are none', '31/31/2026 99:99 45 Foo 20266 +1 +1 (+1)'],
  ])('%s is read without trouble, and soon', (_, text) => {
    const began = performance.now();
    const { legs } = read(text);
    expect(legs.every((leg) => leg.asks.length > 0)).toBe(true);
    expect(performance.now() - began).toBeLessThan(20_000);
  });
});

describe('laws', () => {
  test('any text gives legs whose spans lie in it, and a leg that asks nothing is whole', () => {
    const words = fc.constantFrom(
      'Flight',
      'ZQ 412',
      'DLH',
      'ORD',
      '06:15',
      '7:40 pm',
      '+1',
      '14 Dec 2026',
      '\n',
      '\n\n',
      'arrives',
      'from',
      'to',
      'Train',
      'Chicago',
      '-',
      ',',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(words, { maxLength: 40 }).map((list) => list.join(' ')),
        ),
        (text) => {
          const { legs, spans } = read(text);
          for (const { start, end: to } of spans) expect(0 <= start && start < to && to <= text.length).toBe(true);
          for (const { asks, mode, from, to, depart, arrive } of legs)
            if (asks.length === 0) expect([mode, from, to, depart, arrive].every((part) => part !== null)).toBe(true);
        },
      ),
      tried,
    );
  });
});
