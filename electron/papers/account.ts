/**
 * The body of a paper that says what is owed: whom and what for, the table, the sums, how to pay, remarks.
 */
import type { PaperPay } from '../../core/papers/content.ts';
import { facts, notes, sums } from './blocks.ts';
import type { Block } from './flow.ts';
import { pay } from './pay.ts';
import type { Sheet } from './setting.ts';
import { table } from './table.ts';

type Account = {
  facts: Parameters<typeof facts>[1];
  sums: Parameters<typeof sums>[1];
  pay: PaperPay | null;
  notes: Parameters<typeof notes>[1];
} & Parameters<typeof table>[1];

/** Blocks from top to bottom; where there is nothing to pay only room is left. */
export function account(sheet: Sheet, paper: Account): Block[] {
  return [
    facts(sheet, paper.facts),
    ...table(sheet, paper),
    ...sums(sheet, paper.sums),
    paper.pay ? pay(sheet, paper.pay) : sheet.gap(),
    ...notes(sheet, paper.notes),
  ];
}
