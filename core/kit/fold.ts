/**
 * What becomes of each row of a file: things of one name are one thing with as many units; what is on the list already stays as it is.
 */
import type { KitItemFields } from '../contract/kit.ts';
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
    const twice = read.fields.serials.find((serial) => before.fields.serials.includes(serial));
    if (twice !== undefined) return { ...row, fate: 'refused', why: `Serial ${twice} stands in the file before.` };
    const owned = before.fields.owned + read.fields.owned;
    fresh.set(key, { ...before, fields: { ...before.fields, owned, serials: [...before.fields.serials, ...read.fields.serials] } });
    return { ...row, fate: 'same as', why: `line ${before.line}, and counted with it` };
  });
  return { rows: fates, fresh: [...fresh.values()].map(({ fields }) => fields) };
}

const plain = (name: string): string => name.trim().toLowerCase().replace(/\s+/g, ' ');
