import { readFileSync } from 'node:fs';
import { fc, test } from '@fast-check/vitest';
import * as fontkit from 'fontkit';
import { expect } from 'vitest';
import { shaperOf } from '../../electron/papers/shaping.ts';

const font = fontkit.create(readFileSync(new URL('../../assets/fonts/plex-sans-400.ttf', import.meta.url))) as fontkit.Font;
const { shape, advance: advanceOf } = shaperOf(font);

/** What the engine says of a text whose letters are there, whole or in parts. */
function byEngine(text: string) {
  const letters = Array.from(text, (one) => (font.hasGlyphForCodePoint(one.codePointAt(0) ?? 0) ? one : one.normalize('NFD')));
  const { glyphs, positions } = font.layout(letters.join(''));
  return glyphs.map(({ id }, index) => [id, positions[index]?.xAdvance, positions[index]?.xOffset, positions[index]?.yOffset]);
}

const shaped = (text: string) => shape(text).map(({ glyph, advance, dx, dy }) => [glyph.id, advance, dx, dy]);

/** Letters by script, with those that kern, join and carry marks in plenty; the engine takes the script of a word's first letter for all of it. */
const scripts = {
  Latin: 'AVWTYLPFfijltroaecẾệđơưăÅßŁžŞğĦ',
  Greek: 'ΑΒΓΔΩΤΥάέήίόύώϊςλο',
  Cyrillic: 'АБГТУЖЇЄҐйёщюяоа',
};
const COMMON = '.,-·−()/&0123456789€№«»—…½\u0301\u0323';
const word = fc
  .constantFrom(...Object.values(scripts))
  .chain((letters) =>
    fc
      .tuple(fc.constantFrom(...Array.from(letters)), fc.array(fc.constantFrom(...Array.from(letters + COMMON)), { maxLength: 12 }))
      .map(([first, more]) => [first, ...more].join('').normalize('NFC')),
  );

test.prop([fc.array(word, { minLength: 1, maxLength: 6 })], { seed: 7, numRuns: 200 })(
  'each word comes to the same as by the layout of the engine',
  (words) => {
    const space = byEngine(' ');
    const text = words.join(' ');
    expect(advanceOf(text)).toBe(shape(text).reduce((sum, { advance }) => sum + advance, 0));
    expect(shaped(text)).toEqual(words.flatMap((one, index) => (index === 0 ? byEngine(one) : [...space, ...byEngine(one)])));
  },
);

test('ligatures, kerned capitals and stacked marks', () => {
  for (const text of [
    'Office fjord fluffy file',
    'AVATAR Tofu WAVE LT',
    'Ọ\u0300ṣ Ẹ\u0300kọ\u0301'.normalize('NFC').replace('ṣ', 's\u0323'),
    '',
  ])
    expect(shaped(text)).toEqual(byEngine(text));
});
