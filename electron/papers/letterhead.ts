/**
 * The top of a paper's first page: who sends it, large, and what it is.
 */
import type { PDFImage, RGB } from 'pdf-lib';
import type { PaperFrame } from '../../core/papers/content.ts';
import type { Faces } from './faces.ts';
import type { Block } from './flow.ts';
import { colours, type Style } from './pen.ts';
import type { Area } from './setting.ts';
import { PaperError } from './trouble.ts';
import { wrap } from './wrap.ts';

/** The most room that a logo takes, points. */
const LOGO = { width: 170, height: 48 };
const NAME_SIZES = [21, 17, 14];
/** More lines than these under the name are no letterhead any more. */
const MOST_LINES = 10;

/** What a paper wears: the sender's picture and the colour of strong rules. */
export type Dress = { logo: PDFImage | null; strong: RGB };

/** @throws PaperError when address and reach take more lines than a letterhead has */
export function letterhead({ sender, head, about }: PaperFrame, faces: Faces, { left, width }: Area, { logo, strong }: Dress): Block {
  const small: Style = { size: 8.5, weight: 'plain', colour: colours.second };
  const rightRoom = Math.max(...about.map((line) => faces.plain.width(line, small.size)), 80);
  const room = width - rightRoom - 28;
  const nameLines = (size: number) => wrap(sender.name, room, (text) => faces.strong.width(text, size));
  const size = NAME_SIZES.find((candidate) => nameLines(candidate).length <= 2) ?? 14;
  const name = nameLines(size);
  const lines = sender.lines.flatMap((line) => wrap(line, room, (text) => faces.plain.width(text, small.size)));
  if (lines.length > MOST_LINES)
    throw new PaperError(
      `Your address takes ${lines.length} lines on paper; a letterhead has ${MOST_LINES}.`,
      'Shorten your address, then make the paper again.',
      'your address',
    );
  const picture = logo && logo.scaleToFit(LOGO.width, LOGO.height);
  const nameTop = picture ? picture.height + 12 : 0;
  const nameHeight = nameTop + name.length * size * 1.15;
  const below = Math.max(lines.length, about.length) * 11.5;
  return {
    height: nameHeight + below + 34,
    draw(pen, y) {
      if (logo && picture) pen.picture(logo, left, y, picture.width, picture.height);
      name.forEach((line, index) =>
        pen.text(line, left, y + nameTop + size * 0.8 + index * size * 1.15, { size, weight: 'strong', colour: colours.ink }),
      );
      lines.forEach((line, index) => pen.text(line, left, y + nameHeight + 10 + index * 11.5, small));
      pen.text(head, left + width, y + nameTop + size * 0.8, { size: 21, weight: 'plain', colour: colours.ink }, 'right');
      about.forEach((line, index) => pen.text(line, left + width, y + nameHeight + 10 + index * 11.5, small, 'right'));
      pen.rule(left, y + nameHeight + below + 10, width, 1.4, strong);
    },
  };
}
