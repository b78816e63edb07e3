/**
 * What issued papers say, read back from their PDFs.
 */
import { pagesOfText } from '../../papers/read-text.ts';
import type { House } from './house.ts';

/** What a paper asks to be paid, in minor units of a currency with two places; below zero where it goes back. */
export async function toPayOnPaper(bytes: Uint8Array, currency: string): Promise<number> {
  const text = (await pagesOfText(bytes)).join(' ');
  // Where something was set off the sum stands under a name of its own; else the total is what is paid.
  const found = ['To pay', 'Taken off', 'Total credited', 'Total']
    .map((name) => new RegExp(`${name} ${currency} (−?)([\\d,]+)\\.(\\d\\d)`).exec(text))
    .find((match) => match !== null);
  if (!found) throw new Error(`no sum in ${text}`);
  const [, sign, whole = '', cents = ''] = found;
  return (sign === '' ? 1 : -1) * Number(`${whole.replaceAll(',', '')}${cents}`);
}

/** What each of the job's papers asks for, oldest first, with its number. */
export async function onPapers({ invoices, invoice, door }: House): Promise<[string, number][]> {
  const read: [string, number][] = [];
  for (const { id, number, currency } of (await invoices()).toReversed()) {
    const { paper } = await invoice(id);
    read.push([number, await toPayOnPaper(await door.paper(paper.id), currency)]);
  }
  return read;
}
