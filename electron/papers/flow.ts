/**
 * Blocks laid one under the other over as many pages as they need.
 */
import type { Pen } from './pen.ts';

/** A piece of a paper that is never cut: how tall it is, in points, and how it is drawn with its top at `y`. */
export type Block = {
  height: number;
  draw(pen: Pen, y: number): void;
  /** Stays on one page with the block that follows. */
  withNext?: boolean;
  /** Drawn again at the top of a page that begins with this block, such as the heads of a table. */
  repeated?: Block[];
  /** Empty space that is not carried over to the top of a page. */
  space?: boolean;
};

/** A block with the place of its top on its page. */
export type Placed = { block: Block; y: number };

/**
 * Share blocks out over pages.
 * @param top where the first block of a page begins, in points
 * @param bottom the lowest point that a block may reach
 */
export function flow(blocks: readonly Block[], top: number, bottom: number): Placed[][] {
  const pages: Placed[][] = [[]];
  let y = top;
  const fresh = () => y === top;
  const place = (block: Block) => {
    pages.at(-1)?.push({ block, y });
    y += block.height;
  };
  for (const group of groupsOf(blocks)) {
    const height = group.reduce((sum, block) => sum + block.height, 0);
    if (y + height > bottom && !fresh()) {
      pages.push([]);
      y = top;
      for (const head of group.find((block) => !block.space)?.repeated ?? []) place(head);
    }
    for (const block of group) if (!(block.space && fresh())) place(block);
  }
  return pages;
}

/** Blocks that stay together, in order. */
function groupsOf(blocks: readonly Block[]): Block[][] {
  const groups: Block[][] = [];
  let open = false;
  for (const block of blocks) {
    if (open) groups.at(-1)?.push(block);
    else groups.push([block]);
    open = block.withNext === true;
  }
  return groups;
}
