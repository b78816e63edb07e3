/**
 * The parts that papers are put together from, as blocks on a page.
 */
import type { PaperFacts, PaperSign, PaperSum } from '../../core/papers/content.ts';
import type { Term } from '../../core/quotes/terms.ts';
import type { Block } from './flow.ts';
import { colours, type Style } from './pen.ts';
import { APART, LABEL, type Sheet } from './setting.ts';

/** Two columns: whom and what at the left, when and where at the right. */
export function facts({ left, width, setting, plain, strong, quiet, lines }: Sheet, given: PaperFacts): Block {
  const column = (width - 2 * APART) / 2;
  const columns = [given.left, given.right].map((list) =>
    list.flatMap((fact, index) => [
      { text: fact.label, style: quiet, height: setting.smallLine + 2 + (index > 0 ? setting.line * 0.5 : 0) },
      ...fact.lines.flatMap((line, order) => {
        const style = order === 0 ? strong : plain;
        return lines(line, column, style).map((text) => ({ text, style, height: setting.line }));
      }),
    ]),
  );
  return {
    height: Math.max(...columns.map((list) => list.reduce((sum, line) => sum + line.height, 0))) + setting.gap,
    draw(pen, y) {
      columns.forEach((list, order) => {
        let at = y;
        for (const line of list) {
          at += line.height;
          pen.text(line.text, left + order * (column + 2 * APART), at - 3, line.style);
        }
      });
    },
  };
}

/** Labels at the left, texts beside them, a block for each line so that long terms can run over pages. */
export function listed(
  { left, width, setting, plain, quiet, lines, gap }: Sheet,
  terms: readonly Term[],
  size: 'plain' | 'small',
): Block[] {
  const style: Style = size === 'plain' ? plain : { ...quiet, colour: colours.ink };
  const height = size === 'plain' ? setting.line : setting.smallLine;
  const rows = terms.flatMap(({ label, text }) =>
    lines(text, width - LABEL, style).map((line, index, all): Block => {
      const last = index === all.length - 1;
      return {
        height: height + (last ? 3 : 0),
        // Neither the first line nor the last stands alone on a page.
        withNext: all.length > 1 && (index === 0 || index === all.length - 2),
        draw(pen, y) {
          if (index === 0) pen.text(label, left, y + height - 3, { ...style, colour: colours.second });
          pen.text(line, left + LABEL, y + height - 3, style);
        },
      };
    }),
  );
  return rows.length > 0 ? [...rows, gap(setting.gap * 0.7)] : [];
}

/** The sum at the right; none of it stands on a page without the rest. */
export function sums(
  { right, width, left, setting, rule, plain, strong, quiet, lines, widthOf, gap }: Sheet,
  given: readonly PaperSum[],
): Block[] {
  const from = left + width * 0.42;
  const blocks = given.map((sum): Block => {
    const total = sum.weight === 'total';
    const style: Style = total ? { ...strong, size: setting.body + 4.5 } : plain;
    const note = sum.note === '' ? [] : lines(sum.note, right - from, quiet);
    const label = lines(sum.label, right - from - widthOf(sum.amount, style) - 12, style);
    const line = setting.line + (total ? 8 : 2);
    return {
      height: line + (total ? 3 : 0) + (label.length - 1) * setting.line + note.length * setting.smallLine,
      withNext: true,
      draw(pen, y) {
        if (total) pen.rule(from, y + 2, right - from, 0.8, rule);
        const base = y + line - (total ? 2.5 : 3);
        label.forEach((text, index) => pen.text(text, from, base + index * setting.line, style));
        pen.text(sum.amount, right, base, style, 'right');
        note.forEach((text, index) =>
          pen.text(text, from, base + (label.length - 1) * setting.line + (index + 1) * setting.smallLine, quiet),
        );
      },
    };
  });
  return [{ ...gap(6), space: false, withNext: true }, ...blocks, gap(4)];
}

/** Small sentences over the whole width. */
export function notes({ left, width, setting, quiet, lines }: Sheet, given: readonly string[]): Block[] {
  return given.flatMap((note) =>
    lines(note, width, quiet).map((line): Block => ({
      height: setting.smallLine,
      draw: (pen, y) => pen.text(line, left, y + setting.smallLine - 3, quiet),
    })),
  );
}

/** A place to sign: a sentence, and a line to write on over each label. */
export function sign({ left, width, setting, plain, strong, quiet, lines }: Sheet, given: PaperSign): Block {
  const sentence = lines(given.sentence, width, plain);
  const write = setting.line * 2.4;
  const rows = Math.ceil(given.fields.length / 2);
  const column = (width - 2 * APART) / 2;
  return {
    height: setting.gap + setting.line * (1 + sentence.length) + rows * (write + setting.smallLine),
    draw(pen, y) {
      let at = y + setting.gap + setting.line;
      pen.text(given.head, left, at - 3, strong);
      for (const line of sentence) pen.text(line, left, (at += setting.line) - 3, plain);
      given.fields.forEach((field, index) => {
        const x = left + (index % 2) * (column + 2 * APART);
        const base = at + Math.floor(index / 2) * (write + setting.smallLine) + write;
        pen.rule(x, base, column, 0.6, colours.ink);
        pen.text(field, x, base + setting.smallLine - 1, quiet);
      });
    },
  };
}
