/**
 * A list of files: name, checksum in full, bytes. Its heads stand again on every page.
 */
import type { DeliveryNote } from '../../core/handovers/note.ts';
import type { Block } from './flow.ts';
import { colours, type Style } from './pen.ts';
import { APART, type Sheet } from './setting.ts';

/** A row for each file; a long name is broken, its checksum and bytes stand beside its first line. */
export function fileTable(sheet: Sheet, { columns, files }: Pick<DeliveryNote, 'columns' | 'files'>): Block[] {
  const { left, right, width, setting, rule, plain, quiet, lines, widthOf } = sheet;
  const sum: Style = { ...quiet, colour: colours.ink };
  const bytes = Math.max(widthOf(columns.bytes, quiet), ...files.map((file) => widthOf(file.bytes, plain)));
  // Digits and letters differ in width, so that every checksum is asked.
  const hash = Math.max(widthOf(columns.hash, quiet), ...files.map((file) => widthOf(file.hash, sum)));
  const hashLeft = right - bytes - APART - hash;
  const room = hashLeft - APART - left;

  const heads: Block = {
    height: setting.smallLine + 5,
    withNext: true,
    draw(pen, y) {
      const base = y + setting.smallLine - 2;
      pen.text(columns.name, left, base, quiet);
      pen.text(columns.hash, hashLeft, base, quiet);
      pen.text(columns.bytes, right, base, quiet, 'right');
      pen.rule(left, y + setting.smallLine + 4, width, 0.8, rule);
    },
  };
  const rows = files.map((file, index): Block => {
    const name = lines(file.name, room, plain);
    const height = name.length * setting.line + setting.row;
    return {
      height,
      repeated: [heads],
      // The last file stands with the sum.
      withNext: index === files.length - 1,
      draw(pen, y) {
        const base = y + setting.row / 2 + setting.line - 3;
        name.forEach((line, at) => pen.text(line, left, base + at * setting.line, plain));
        pen.text(file.hash, hashLeft, base, sum);
        pen.text(file.bytes, right, base, plain, 'right');
        pen.rule(left, y + height - 0.4, width, 0.4, colours.line);
      },
    };
  });
  return [heads, ...rows];
}
