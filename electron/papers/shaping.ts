/**
 * Glyphs and their places for a text, word by word and remembered. A full layout by the typeface engine takes longer than all else that
 * a paper needs; between letters of one script that only kern it comes to the same as the kerning of each pair. Neither of our typefaces kerns with a space.
 */
import type { Font, Glyph, GlyphPosition } from 'fontkit';

/** A glyph, and in units of the typeface how far the pen moves after it and where it is set against the pen. */
type Placed = { glyph: Glyph; advance: number; dx: number; dy: number };

export type Shaper = {
  shape: (text: string) => readonly Placed[];
  /** How far the pen moves over a text, in units of the typeface. */
  advance: (text: string) => number;
};

type Word = { letters: readonly Placed[]; advance: number };

/** So many words are remembered before all are forgotten. */
const MOST_WORDS = 20_000;

/** A shaper for a typeface. For words of one script its answers equal those of the engine's own layout. */
export function shaperOf(font: Font): Shaper {
  const letters = new Map<string, Placed | null>();
  const pairs = new Map<string, number | null>();
  const words = new Map<string, Word>();

  /** The glyph of a letter that stands alone; null where it takes several or is moved. */
  function letterOf(letter: string): Placed | null {
    let known = letters.get(letter);
    if (known === undefined) {
      const [only, ...more] = fullLayout(font, letter);
      known = only && more.length === 0 && only.dx === 0 && only.dy === 0 && only.advance > 0 ? only : null;
      letters.set(letter, known);
    }
    return known;
  }

  /** The advance of the first of two letters before the second; null where they do more to each other than kern. */
  function pairOf(first: Placed, second: Placed, text: string): number | null {
    let known = pairs.get(text);
    if (known === undefined) {
      const [one, two, ...more] = fullLayout(font, text);
      const kerned = one && two && more.length === 0 && one.glyph.id === first.glyph.id && two.glyph.id === second.glyph.id;
      known = kerned && one.dx === 0 && one.dy === 0 && two.dx === 0 && two.dy === 0 && two.advance === second.advance ? one.advance : null;
      pairs.set(text, known);
    }
    return known;
  }

  /** A word of letters that do no more than kern; null for any other. */
  function kernedWord(word: string): Placed[] | null {
    const found: Placed[] = [];
    let before: Placed | null = null;
    let beforeText = '';
    for (const letter of word) {
      const glyph = letterOf(letter);
      if (!glyph) return null;
      if (before) {
        const advance = pairOf(before, glyph, beforeText + letter);
        if (advance === null) return null;
        if (advance !== before.advance) found[found.length - 1] = { ...before, advance };
      }
      found.push(glyph);
      before = glyph;
      beforeText = letter;
    }
    return found;
  }

  function wordOf(word: string): Word {
    const known = words.get(word);
    if (known) return known;
    const shaped = kernedWord(word) ?? fullLayout(font, word);
    const found = { letters: shaped, advance: shaped.reduce((sum, { advance }) => sum + advance, 0) };
    if (words.size >= MOST_WORDS) words.clear();
    words.set(word, found);
    return found;
  }

  const space = wordOf(' ');
  return {
    shape: (text) =>
      text.split(' ').flatMap((word, index) => (index === 0 ? wordOf(word).letters : [...space.letters, ...wordOf(word).letters])),
    advance(text) {
      const all = text.split(' ');
      return all.reduce((sum, word) => sum + wordOf(word).advance, (all.length - 1) * space.advance);
    },
  };
}

/** A letter that the typeface does not have whole is built from its base and marks. */
function built(font: Font, word: string): string {
  return Array.from(word, (letter) => (font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0) ? letter : letter.normalize('NFD'))).join('');
}

function fullLayout(font: Font, text: string): Placed[] {
  const { glyphs, positions } = font.layout(built(font, text));
  return glyphs.map((glyph, index) => placed(glyph, positions[index]));
}

function placed(glyph: Glyph, position: GlyphPosition | undefined): Placed {
  return { glyph, advance: position?.xAdvance ?? glyph.advanceWidth, dx: position?.xOffset ?? 0, dy: position?.yOffset ?? 0 };
}
