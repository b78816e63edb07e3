/**
 * Packing for a job and coming back: what is to be packed, what was, and what did not come back.
 */
import type { KitItem, PackRow } from '../contract/kit.ts';
import { countInWords } from '../words/amounts.ts';
import { joined } from '../words/lists.ts';

/** What became of a unit, or of the counted rest of a thing (serial empty). */
export type Packed = { item: string; serial: string; out: number; back: number; missing: number };

/**
 * The pack list of a job: each thing that it needs, its units one by one, the counted rest in one row. What was packed without being
 * needed any more stays on it until it is back.
 */
export function packRows(
  needs: readonly { item: string; count: number }[],
  items: readonly KitItem[],
  packed: readonly Packed[],
): PackRow[] {
  const ids = [...new Set([...needs, ...packed].map(({ item }) => item))];
  return ids.flatMap((id) => {
    const item = items.find((one) => one.id === id);
    if (!item) return [];
    const needed = needs.filter((need) => need.item === id).reduce((sum, { count }) => sum + count, 0);
    const of = packed.filter((row) => row.item === id);
    const units = needed > 0 ? item.units.map(({ serial }) => serial) : [];
    const serials = [...new Set([...units, ...of.map(({ serial }) => serial)])].filter((serial) => serial !== '');
    const rest = Math.max(0, needed - serials.length);
    const counted = rest > 0 || of.some(({ serial }) => serial === '') ? [''] : [];
    return [...serials, ...counted].map((serial) => {
      const { out, back, missing } = of.find((row) => row.serial === serial) ?? { out: 0, back: 0, missing: 0 };
      const toPack = serial === '' ? rest : 1;
      const place = item.units.find((unit) => unit.serial === serial)?.place ?? '';
      return { item: id, name: item.name, serial, place, needed, toPack, out, back, missing };
    });
  });
}

/** How many are packed and neither back nor known to be missing. */
export const stillOut = ({ out, back, missing }: Pick<Packed, 'out' | 'back' | 'missing'>): number => out - back - missing;

/** "2 × Camera and 1 × Battery", of what a picker counts of each row; nothing where it counts none. */
export function packInWords(rows: readonly (Packed & { name: string })[], count: (row: Packed) => number): string {
  const byName = Map.groupBy(rows, ({ name }) => name);
  const sums = [...byName].map(([name, of]) => ({ name, sum: of.reduce((sum, row) => sum + count(row), 0) }));
  return joined(sums.flatMap(({ name, sum }) => (sum > 0 ? [`${sum} × ${name}`] : [])));
}

/** What cannot be ticked, in a sentence; nothing where it can. */
export function packTrouble({ serial, out, back, missing }: Packed, name: string): string | null {
  if (serial !== '' && out > 1) return `${name} ${serial} is one unit; ${out} of it cannot be out.`;
  if (back + missing > out) return `${name}: ${countInWords(back + missing, 'piece')} back or missing, but ${out} went out.`;
  return null;
}
