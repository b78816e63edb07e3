/**
 * How to pay, with the payment code beside it where there is one.
 */
import type { PaperPay } from '../../core/papers/content.ts';
import type { Block } from './flow.ts';
import { paymentSquares } from './payment-squares.ts';
import { colours } from './pen.ts';
import { APART, LABEL, type Sheet } from './setting.ts';

/** Side of a code on paper, points: 27 mm, so that a square of the largest one is wider than a third of a millimetre. */
const SIDE = (27 * 72) / 25.4;
/** Readers need four light squares around a code; this is more, for codes of 21 squares and up. */
const AROUND = 16;

/** One block: the labelled lines at the left, the code at the right. */
export function pay(sheet: Sheet, { head, rows, words, code, caption }: PaperPay): Block {
  const { left, right, width, setting, plain, strong, quiet, lines } = sheet;
  const squares = code === null ? null : paymentSquares(code);
  const room = squares ? width - SIDE - AROUND - APART : width;
  const said = rows.map(({ label, text }) => ({ label, lines: lines(text, room - LABEL, plain) }));
  const below = words.flatMap((text) => lines(text, room, plain));
  const under = squares ? lines(caption, SIDE + AROUND, quiet) : [];
  const top = setting.gap * 0.6;
  const textHeight = setting.line * (1.2 + said.reduce((sum, row) => sum + row.lines.length, 0) + below.length);
  const codeHeight = squares ? SIDE + 10 + under.length * setting.smallLine : 0;
  return {
    height: top + Math.max(textHeight, codeHeight) + setting.gap * 0.6,
    draw(pen, y) {
      let base = y + top + setting.line - 3;
      pen.text(head, left, base, strong);
      base += setting.line * 1.2;
      for (const row of said) {
        pen.text(row.label, left, base, { ...plain, colour: colours.second });
        for (const line of row.lines) {
          pen.text(line, left + LABEL, base, plain);
          base += setting.line;
        }
      }
      for (const line of below) {
        pen.text(line, left, base, plain);
        base += setting.line;
      }
      if (!squares) return;
      pen.squares(squares, right - SIDE, y + top, SIDE, colours.ink);
      under.forEach((line, index) => pen.text(line, right, y + top + SIDE + 10 + (index + 1) * setting.smallLine - 3, quiet, 'right'));
    },
  };
}
