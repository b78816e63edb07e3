/**
 * How a paper is set: the area that is written on, sizes, and styles.
 */
import type { RGB } from 'pdf-lib';
import type { Faces } from './faces.ts';
import type { Block } from './flow.ts';
import { colours, type Style } from './pen.ts';
import { wrap } from './wrap.ts';

/** Sizes and line heights in points. */
type Setting = { body: number; line: number; small: number; smallLine: number; row: number; gap: number };
const easy: Setting = { body: 9.5, line: 13, small: 8.25, smallLine: 11, row: 5.5, gap: 20 };
const tight: Setting = { body: 8.75, line: 11, small: 7.5, smallLine: 9.5, row: 3, gap: 9 };

/** A setting between the easy one (0) and the tight one (1). */
export function settingAt(tightness: number): Setting {
  const between = (part: keyof Setting) => easy[part] + (tight[part] - easy[part]) * tightness;
  return {
    body: between('body'),
    line: between('line'),
    small: between('small'),
    smallLine: between('smallLine'),
    row: between('row'),
    gap: between('gap'),
  };
}

/** The area that is written on, in points from the page's top left corner. */
export type Area = { left: number; width: number };

/** Width of the column of labels at the left; the longest head of a section fits it. */
export const LABEL = 102;
/** Space between two columns. */
export const APART = 14;

/** All that blocks need to know of the paper they stand on; `rule` is the colour of strong rules. */
export type Sheet = {
  left: number;
  right: number;
  width: number;
  setting: Setting;
  rule: RGB;
  plain: Style;
  strong: Style;
  quiet: Style;
  /** A text in lines no wider than the room. */
  lines: (text: string, room: number, style: Style) => string[];
  /** Width of a text in points. */
  widthOf: (text: string, style: Style) => number;
  gap: (height?: number) => Block;
};

/** A sheet for an area in a setting. */
export function sheetFor(faces: Faces, { left, width }: Area, setting: Setting, rule: RGB): Sheet {
  const plain: Style = { size: setting.body, weight: 'plain', colour: colours.ink };
  const widthOf = (text: string, style: Style) => faces[style.weight].width(text, style.size);
  return {
    left,
    right: left + width,
    width,
    setting,
    rule,
    plain,
    strong: { ...plain, weight: 'strong' },
    quiet: { size: setting.small, weight: 'plain', colour: colours.second },
    widthOf,
    lines: (text, room, style) => wrap(text, room, (part) => widthOf(part, style)),
    gap: (height = setting.gap) => ({ height, draw: () => {}, space: true }),
  };
}
