/**
 * A table by section: the section's name in the column of labels, once a page.
 */
import type { PaperRow, PaperTable } from '../../core/papers/content.ts';
import type { Block } from './flow.ts';
import { colours } from './pen.ts';
import { APART, LABEL, type Sheet } from './setting.ts';

/** Space between a quantity and its unit. */
const BESIDE_UNIT = 4;
/** The least room for the name of a line. */
const LEAST_NAME = 130;
/** The most room for the taxes of a line; more are broken. */
const MOST_TAX = 66;

/** The widths of columns of figures; 0 for a column that is not there. */
function widths({ plain, quiet, widthOf }: Sheet, { columns, sections }: PaperTable) {
  const rows = sections.flatMap((section) => section.rows);
  const widest = (pick: (row: PaperRow) => string) => Math.max(...rows.map((row) => widthOf(pick(row), plain)));
  const column = (head: string, least: number, pick: (row: PaperRow) => string) =>
    head === '' ? 0 : Math.max(least, widthOf(head, quiet), widest(pick));
  return {
    amount: column(columns.amount, 60, (row) => row.amount),
    tax: Math.min(
      MOST_TAX,
      column(columns.tax ?? '', 0, (row) => row.tax ?? ''),
    ),
    price: column(columns.price, 44, (row) => row.price),
    // Its head stands over quantity and unit together.
    quantity:
      columns.quantity === ''
        ? 0
        : Math.max(
            20,
            widest((row) => row.quantity),
          ),
  };
}

/** A column with the space beside it. */
function besides(column: number): number {
  return column === 0 ? 0 : column + APART;
}

/** Every row of a table, with its heads again at the top of each page. */
export function table(sheet: Sheet, { columns, sections }: PaperTable): Block[] {
  const { left, right, width, setting, rule, plain, strong, quiet, lines, widthOf } = sheet;
  const rows = sections.flatMap((section) => section.rows);
  const { amount, tax, price, quantity } = widths(sheet, { columns, sections });
  const whatLeft = left + LABEL;
  // Long units are broken rather than the names of lines.
  const shared = width - LABEL - amount - besides(tax) - besides(price) - besides(quantity) - APART;
  const widest = Math.max(20, ...rows.map((row) => widthOf(row.unit, plain)));
  const unit = quantity === 0 ? 0 : Math.min(widest, Math.max(30, shared - BESIDE_UNIT - LEAST_NAME));
  const room = shared - (quantity === 0 ? 0 : unit + BESIDE_UNIT);
  const taxRight = right - amount - APART;
  const priceRight = taxRight - besides(tax);
  const unitRight = priceRight - besides(price);
  const unitLeft = unitRight - unit;
  const quantityRight = unitLeft - BESIDE_UNIT;

  const heads: Block = {
    height: setting.smallLine + 5,
    withNext: true,
    draw(pen, y) {
      const base = y + setting.smallLine - 2;
      pen.text(columns.what, whatLeft, base, quiet);
      pen.text(columns.quantity, unitRight, base, quiet, 'right');
      pen.text(columns.price, priceRight, base, quiet, 'right');
      pen.text(columns.tax ?? '', taxRight, base, quiet, 'right');
      pen.text(columns.amount, right, base, quiet, 'right');
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
    const note = row.note === undefined ? [] : lines(row.note, room, quiet);
    const units = lines(row.unit, unit, plain);
    const taxes = tax === 0 ? [] : lines(row.tax ?? '', tax, plain);
    const tall = Math.max(
      what.length * setting.line + note.length * setting.smallLine,
      Math.max(units.length, taxes.length) * setting.line,
    );
    const height = tall + setting.row;
    return {
      height,
      repeated: [heads, sectionHead(head)],
      draw(pen, y) {
        const base = y + setting.row / 2 + setting.line - 3;
        what.forEach((line, index) => pen.text(line, whatLeft, base + index * setting.line, plain));
        pen.text(row.quantity, quantityRight, base, plain, 'right');
        units.forEach((line, index) => pen.text(line, unitLeft, base + index * setting.line, plain));
        pen.text(row.price, priceRight, base, plain, 'right');
        taxes.forEach((line, index) => pen.text(line, taxRight, base + index * setting.line, plain, 'right'));
        pen.text(row.amount, right, base, plain, 'right');
        note.forEach((line, index) =>
          pen.text(line, whatLeft, base + (what.length - 1) * setting.line + (index + 1) * setting.smallLine, quiet),
        );
        pen.rule(last ? left : whatLeft, y + height - 0.4, last ? width : width - LABEL, 0.4, colours.line);
      },
    };
  };
  return [
    heads,
    ...sections.flatMap(({ head, rows: own }) => [
      { ...sectionHead(head), repeated: [heads] },
      ...own.map((row, index) => rowBlock(row, head, index === own.length - 1)),
    ]),
  ];
}
