/**
 * The customs list of what a job takes along: a line for each unit with a serial, one for so many of a counted thing. What customs asks
 * for and is not known is said; nothing is made up.
 */
import type { CustomsList, CustomsRow, ListRate } from '../contract/documents.ts';
import type { KitItem } from '../contract/kit.ts';
import { stillOut, type Packed } from '../kit/pack.ts';
import { exchanged } from '../money/exchange.ts';
import { lineAmount, majorOf, sum, type Money } from '../money/money.ts';
import { sumsByCurrency } from '../money/sums.ts';
import { countInWords } from '../words/amounts.ts';
import { joined } from '../words/lists.ts';

type Given = {
  needs: readonly { item: string; count: number }[];
  items: readonly KitItem[];
  /** What was ticked out for the job. */
  packed: readonly Packed[];
  /** What one unit of another currency is worth in that of home, with its date. */
  rates: readonly ListRate[];
  currency: string;
};

/** The list with its totals: by currency, and in all where there is one currency or a dated rate for each other one. */
export function customsList({ needs, items, packed, rates, currency }: Given): CustomsList {
  const lines = needs.flatMap(({ item: id, count }) => {
    const item = items.find((one) => one.id === id);
    return item ? linesOf(item, count, packed) : [];
  });
  const rows = lines.map(({ row }, at): CustomsRow => ({ number: at + 1, ...row }));
  const values = sumsByCurrency(rows.flatMap(({ value }) => value ?? []));
  const used = rates.filter((rate) => rate.currency !== currency && values.some((value) => value.currency === rate.currency));
  return {
    rows,
    pieces: rows.reduce((total, { count }) => total + count, 0),
    grams: rows.reduce((total, { grams }) => total + (grams ?? 0), 0),
    values,
    total: inAll(values, used, currency),
    rates: used,
    missing: missingInWords(rows),
    packed: lines.length > 0 && lines.every((line) => line.packed),
  };
}

type Line = { row: Omit<CustomsRow, 'number'>; packed: boolean };

/** The units that were ticked out where all that is needed was; else the first on the kit list, and the rest as counted. */
function linesOf(item: KitItem, count: number, packed: readonly Packed[]): Line[] {
  const ticked = packed.filter((row) => row.item === item.id && stillOut(row) > 0);
  const isPacked = ticked.reduce((total, row) => total + stillOut(row), 0) >= count;
  const serials = isPacked
    ? ticked.filter(({ serial }) => serial !== '').map(({ serial }) => serial)
    : item.units.slice(0, count).map(({ serial }) => serial);
  const rest = isPacked
    ? ticked.filter(({ serial }) => serial === '').reduce((total, row) => total + stillOut(row), 0)
    : count - serials.length;
  return [...serials.map((serial) => lineOf(item, serial, 1)), ...(rest > 0 ? [lineOf(item, '', rest)] : [])].map((row) => ({
    row,
    packed: isPacked,
  }));
}

function lineOf(item: KitItem, serial: string, count: number): Line['row'] {
  const one = item.units.find((unit) => unit.serial === serial && serial !== '')?.value ?? item.value;
  const line = {
    name: item.name,
    serial,
    count,
    grams: item.grams === null ? null : item.grams * count,
    origin: item.origin,
    value: one && lineAmount(count, majorOf(one), one.currency),
  };
  const missing = [
    ...(serial === '' ? (['serial'] as const) : []),
    ...(line.grams === null ? (['weight'] as const) : []),
    ...(line.origin === null ? (['origin'] as const) : []),
    ...(line.value === null ? (['value'] as const) : []),
  ];
  return { ...line, missing };
}

function inAll(values: readonly Money[], rates: readonly ListRate[], currency: string): Money | null {
  const [only, ...more] = values;
  if (!only) return null;
  if (more.length === 0 && (only.currency === currency || rates.length === 0)) return only;
  const each = values.map((value) => {
    if (value.currency === currency) return value;
    const rate = rates.find((one) => one.currency === value.currency);
    return rate ? exchanged(value, { from: value.currency, to: currency, rate: rate.rate, date: rate.date }) : null;
  });
  return each.includes(null)
    ? null
    : sum(
        currency,
        each.filter((value) => value !== null),
      );
}

const MISSING_WORDS = { serial: 'serial', weight: 'weight', origin: 'country of origin', value: 'value' };
/** So many are named; more are counted. */
const NAMED = 4;

/** One sentence for all things that lack the same. */
function missingInWords(rows: readonly CustomsRow[]): string[] {
  const byLack = Map.groupBy(
    rows.filter(({ missing }) => missing.length > 0),
    ({ missing }) =>
      joined(
        missing.map((what) => MISSING_WORDS[what]),
        'or',
      ),
  );
  return [...byLack].map(([lack, of]) => {
    const names = [...new Set(of.map(({ name }) => name))];
    const who = names.length > NAMED ? countInWords(names.length, 'thing') : joined(names);
    return `${who} ${names.length === 1 ? 'has' : 'have'} no ${lack} on the kit list.`;
  });
}
