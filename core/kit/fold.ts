/**
 * What becomes of each row of a file: things of one name are one thing with as many units; what is on the list already stays as it is.
 */
import type { KitItemFields, KitUnit } from '../contract/kit.ts';
import type { ImportRow } from '../contract/people.ts';
import type { KitRow } from './csv.ts';

/** The fate of every row, and the new things that come out of them. */
export function foldedIn(rows: readonly KitRow[], listed: readonly { name: string }[]): { rows: ImportRow[]; fresh: KitItemFields[] } {
  const here = new Map(listed.map(({ name }) => [plain(name), name]));
  const fresh = new Map<string, { line: number; fields: KitItemFields }>();
  const fates = rows.map(({ line, name, read }): ImportRow => {
    const row = { line, name: name.slice(0, 120) || '(no name)' };
    if ('trouble' in read) return { ...row, fate: 'refused', why: read.trouble };
    const key = plain(name);
    const listedAs = here.get(key);
    if (listedAs !== undefined) return { ...row, fate: 'same as', why: `${listedAs}, on the list` };
    const before = fresh.get(key);
    if (!before) {
      fresh.set(key, { line, fields: read.fields });
      return { ...row, fate: 'new', why: '' };
    }
    const serials = new Set(before.fields.units.map(({ serial }) => serial.toLowerCase()));
    const twice = read.fields.units.find(({ serial }) => serials.has(serial.toLowerCase()));
    if (twice) return { ...row, fate: 'refused', why: `Serial ${twice.serial} stands in the file before.` };
    const owned = before.fields.owned + read.fields.owned;
    const { units, services } = before.fields;
    const more = read.fields.units.map((unit) => asUnlike(unit, read.fields, before.fields));
    fresh.set(key, {
      ...before,
      fields: { ...before.fields, owned, units: [...units, ...more], services: [...services, ...read.fields.services] },
    });
    return { ...row, fate: 'same as', why: `line ${before.line}, and counted with it` };
  });
  return { rows: fates, fresh: [...fresh.values()].map(({ fields }) => fields) };
}

/** A unit of a later line says itself what that line said otherwise than the first. */
function asUnlike(unit: KitUnit, line: KitItemFields, thing: KitItemFields): KitUnit {
  const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
  return {
    ...unit,
    owner: same(line.owner, thing.owner) ? null : line.owner,
    bought: same(line.bought, thing.bought) ? null : line.bought,
    value: same(line.value, thing.value) ? null : line.value,
    note: line.note === thing.note ? '' : line.note.slice(0, 120),
  };
}

const plain = (name: string): string => name.trim().toLowerCase().replace(/\s+/g, ' ');
