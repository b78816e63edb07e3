/**
 * A quote's content as blocks on a page.
 */
import type { RGB } from 'pdf-lib';
import type { PaperRow, PaperSum, QuotePaper } from '../../core/quotes/paper.ts';
import type { Term } from '../../core/quotes/terms.ts';
import type { Faces } from './faces.ts';
import type { Block } from './flow.ts';
import { colours, type Style } from './pen.ts';
import { wrap } from './wrap.ts';

/** Sizes and line heights in points. */
export type Setting = { body: number; line: number; small: number; smallLine: number; row: number; gap: number };
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
const LABEL = 102;
/** Space between two columns, and between a quantity and its unit. */
const APART = 14;
const BESIDE_UNIT = 4;
/** The least room for the name of a line. */
const LEAST_NAME = 130;

/** Every block of the paper below the letterhead, in order; `rule` is the colour of strong rules. */
export function quoteBlocks(content: QuotePaper, faces: Faces, area: Area, setting: Setting, rule: RGB): Block[] {
  const kit = tools(faces, area, setting, rule);
  return [
    kit.facts(content.facts),
    ...kit.listed(content.deliverables.length > 0 ? [{ label: 'To deliver', text: content.deliverables.join('\n') }] : [], 'plain'),
    ...kit.table(content),
    ...kit.sums(content.sums),
    kit.gap(),
    ...kit.listed(content.terms, 'small'),
    ...kit.notes(content.notes),
    kit.sign(content.sign),
  ];
}

function tools(faces: Faces, { left, width }: Area, setting: Setting, rule: RGB) {
  const plain: Style = { size: setting.body, weight: 'plain', colour: colours.ink };
  const strong: Style = { ...plain, weight: 'strong' };
  const quiet: Style = { size: setting.small, weight: 'plain', colour: colours.second };
  const right = left + width;
  const measured = (style: Style) => (text: string) => faces[style.weight].width(text, style.size);
  const lines = (text: string, room: number, style: Style) => wrap(text, room, measured(style));
  const gap = (height = setting.gap): Block => ({ height, draw: () => {}, space: true });

  /** Two columns: whom and what at the left, when and where at the right. */
  function facts(given: QuotePaper['facts']): Block {
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
  function listed(terms: readonly Term[], size: 'plain' | 'small'): Block[] {
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

  /** Lines by section: the section's name in the column of labels, once a page. */
  function table(content: QuotePaper): Block[] {
    const rows = content.sections.flatMap((section) => section.rows);
    const widest = (pick: (row: PaperRow) => string, head = '') =>
      Math.max(faces.plain.width(head, setting.small), ...rows.map((row) => faces.plain.width(pick(row), setting.body)));
    const amount = Math.max(
      60,
      widest((row) => row.amount, content.columns.amount),
    );
    const price = Math.max(
      44,
      widest((row) => row.price, content.columns.price),
    );
    const quantity = Math.max(
      20,
      widest((row) => row.quantity),
    );
    const whatLeft = left + LABEL;
    // Long units are broken rather than the names of lines.
    const shared = width - LABEL - amount - price - quantity - 3 * APART - BESIDE_UNIT;
    const unit = Math.min(
      Math.max(
        20,
        widest((row) => row.unit),
      ),
      Math.max(30, shared - LEAST_NAME),
    );
    const room = shared - unit;
    const priceRight = right - amount - APART;
    const unitRight = priceRight - price - APART;
    const unitLeft = unitRight - unit;
    const quantityRight = unitLeft - BESIDE_UNIT;

    const heads: Block = {
      height: setting.smallLine + 5,
      withNext: true,
      draw(pen, y) {
        const base = y + setting.smallLine - 2;
        pen.text(content.columns.what, whatLeft, base, quiet);
        pen.text(content.columns.quantity, unitRight, base, quiet, 'right');
        pen.text(content.columns.price, priceRight, base, quiet, 'right');
        pen.text(content.columns.amount, right, base, quiet, 'right');
        pen.rule(left, y + setting.smallLine + 4, width, 0.8, rule);
      },
    };
    const sectionHead = (head: string): Block => ({
      height: 0,
      withNext: true,
      draw: (pen, y) => pen.text(head, left, y + setting.row / 2 + setting.line - 3, strong),
    });
    const rowBlock = (row: PaperRow, head: string, last: boolean): Block => {
      const what = lines(row.what, room, plain);
      const units = lines(row.unit, unit, plain);
      const height = Math.max(what.length, units.length) * setting.line + setting.row;
      return {
        height,
        repeated: [heads, sectionHead(head)],
        draw(pen, y) {
          const base = y + setting.row / 2 + setting.line - 3;
          what.forEach((line, index) => pen.text(line, whatLeft, base + index * setting.line, plain));
          pen.text(row.quantity, quantityRight, base, plain, 'right');
          units.forEach((line, index) => pen.text(line, unitLeft, base + index * setting.line, plain));
          pen.text(row.price, priceRight, base, plain, 'right');
          pen.text(row.amount, right, base, plain, 'right');
          pen.rule(last ? left : whatLeft, y + height - 0.4, last ? width : width - LABEL, 0.4, colours.line);
        },
      };
    };
    return [
      heads,
      ...content.sections.flatMap(({ head, rows: own }) => [
        { ...sectionHead(head), repeated: [heads] },
        ...own.map((row, index) => rowBlock(row, head, index === own.length - 1)),
      ]),
    ];
  }

  /** The sum at the right; none of it stands on a page without the rest. */
  function sums(given: readonly PaperSum[]): Block[] {
    const from = left + width * 0.42;
    const blocks = given.map((sum): Block => {
      const total = sum.weight === 'total';
      const style: Style = total ? { ...strong, size: setting.body + 4.5 } : plain;
      const note = sum.note === '' ? [] : lines(sum.note, right - from, quiet);
      const label = lines(sum.label, right - from - measured(style)(sum.amount) - 12, style);
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

  function notes(given: readonly string[]): Block[] {
    return given.flatMap((note) =>
      lines(note, width, quiet).map((line) => ({
        height: setting.smallLine,
        draw: (pen, y) => pen.text(line, left, y + setting.smallLine - 3, quiet),
      })),
    ) satisfies Block[];
  }

  /** A place to sign: a sentence, and a line to write on over each label. */
  function sign(given: QuotePaper['sign']): Block {
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

  return { facts, listed, table, sums, notes, sign, gap };
}
