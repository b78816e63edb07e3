/**
 * A pasted text made plain: one kind of dash, quote and space, nothing invisible. Every character remembers where it stood.
 */
import { withoutBars } from './bars.ts';

export type Clean = {
  text: string;
  /** The offset in the pasted text of a character of the plain one. */
  from: (offset: number) => number;
};

const dashes = '\u2010\u2011\u2012\u2013\u2014\u2015\u2212\ufe58\uff0d';
const quotes = '\u2018\u2019\u201a\u201b\u2032\u00b4\u0060\u02bc';
const doubleQuotes = '\u201c\u201d\u201e\u201f\u2033\u00ab\u00bb';
const bullets = '\u2022\u25cf\u25aa\u25e6\u2023\u2043*\t';

const plain = new Map<string, string>();
for (const [marks, as] of [
  [dashes, '-'],
  [quotes, "'"],
  [doubleQuotes, '"'],
  [bullets, ' '],
] as const)
  for (const mark of marks) plain.set(mark, as);

/** Marks of direction, joiners, soft hyphens and control characters: nothing that is read as part of a word. */
const INVISIBLE =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u00ad\u061c\u200b-\u200f\u202a-\u202e\u2060-\u206f\ufeff]|[\ufe00-\ufe0f]/u;
const SPACE = /[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/;
const FULL_WIDTH = /[\uff01-\uff5e]/;

/** Replace what only looks different. One character stands for one; what cannot be seen is dropped. */
export function clean(pasted: string): Clean {
  const kept: string[] = [];
  const offsets: number[] = [];
  for (let at = 0; at < pasted.length; at++) {
    const mark = pasted[at] ?? '';
    if (mark === '\r') {
      if (pasted[at + 1] === '\n') continue;
      kept.push('\n');
    } else if (INVISIBLE.test(mark)) continue;
    else if (mark === '\u2028' || mark === '\u2029' || mark === '\u0085') kept.push('\n');
    else if (SPACE.test(mark)) kept.push(' ');
    else if (FULL_WIDTH.test(mark)) kept.push(String.fromCharCode(mark.charCodeAt(0) - 0xfee0));
    else kept.push(plain.get(mark) ?? mark);
    offsets.push(at);
  }
  offsets.push(pasted.length);
  return { text: withoutBars(kept.join('')), from: (offset) => offsets[offset] ?? pasted.length };
}
