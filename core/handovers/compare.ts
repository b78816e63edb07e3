/**
 * A copy held against the list that was handed over.
 */
import type { HandedFile } from '../contract/handovers.ts';
import { countInWords } from '../words/amounts.ts';
import { joined } from '../words/lists.ts';

/** Names, each in one list: `moved` has the same bytes under another name, `from` being the one on the list. */
export type Compared = {
  equal: string[];
  changed: string[];
  missing: string[];
  extra: string[];
  moved: { from: string; to: string }[];
};

/** One name may be written with a letter and its mark as one or as two signs, by the system that holds the files. */
const same = (name: string): string => name.normalize('NFC');
const contentOf = ({ hash, bytes }: HandedFile): string => `${hash}:${bytes}`;

/** Every file of both lists, once. A file that is missing where another name holds its very bytes was moved. */
export function compareLists(kept: readonly HandedFile[], found: readonly HandedFile[]): Compared {
  const there = new Map(found.map((file) => [same(file.name), file]));
  const known = new Set(kept.map(({ name }) => same(name)));
  const compared: Compared = { equal: [], changed: [], missing: [], extra: [], moved: [] };
  const strangers = Map.groupBy(
    found.filter(({ name }) => !known.has(same(name))),
    contentOf,
  );
  for (const file of kept) {
    const copy = there.get(same(file.name));
    if (copy) {
      (contentOf(copy) === contentOf(file) ? compared.equal : compared.changed).push(file.name);
      continue;
    }
    const moved = strangers.get(contentOf(file))?.shift();
    if (moved) compared.moved.push({ from: file.name, to: moved.name });
    else compared.missing.push(file.name);
  }
  compared.extra = [...strangers.values()].flatMap((files) => files.map(({ name }) => name)).sort();
  return compared;
}

/** True for a copy that holds everything that was handed over, whatever else lies there. */
export function isWhole({ changed, missing }: Compared): boolean {
  return changed.length === 0 && missing.length === 0;
}

/** "The copy is whole: 40 files are equal." or what is wrong with it, in numbers. */
export function comparedInWords(compared: Compared): string {
  const { equal, changed, missing, extra, moved } = compared;
  const parts = [
    { count: equal.length, words: 'equal' },
    { count: moved.length, words: 'equal under another name' },
    { count: changed.length, words: 'changed' },
    { count: missing.length, words: 'missing' },
    { count: extra.length, words: 'not on the list' },
  ]
    .filter(({ count }) => count > 0)
    .map(({ count, words }, at) => `${at === 0 ? countInWords(count, 'file') : count} ${words}`);
  return `${isWhole(compared) ? 'The copy is whole' : 'The copy is not whole'}: ${joined(parts)}.`;
}
