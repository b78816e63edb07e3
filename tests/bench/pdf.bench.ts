/**
 * A quote's paper of 1, 40 and 400 lines, and 200 invoices with their payment codes, against an open Chromium that prints the same words
 * (and the same squares) from HTML in the same typeface. Both sides are warm. Papers are read back first: the same words, the same amounts as often.
 */
import { readFileSync } from 'node:fs';
import { chromium, type Page } from 'playwright';
import type { InvoiceContent } from '../../core/contract/invoices.ts';
import { invoicePaperContent, type InvoicePaper } from '../../core/invoices/paper.ts';
import { quotePaperContent, type QuotePaper } from '../../core/quotes/paper.ts';
import { invoicePaper } from '../../electron/papers/invoice.ts';
import { paymentSquares } from '../../electron/papers/payment-squares.ts';
import { quotePaper } from '../../electron/papers/quote.ts';
import { chromiumPath } from '../chromium.ts';
import { bill, billed, vat } from '../papers/invoice-sample.ts';
import { pagesOfText } from '../papers/read-text.ts';
import { longQuote } from '../papers/sample.ts';
import { pair, report, type Row } from './harness.ts';

const LOOK = `body { font: 9.5pt/13pt Plex; margin: 0 } h1 { font-size: 21pt } table { width: 100%; border-collapse: collapse }
  td, th { border-bottom: 0.4pt solid #c7bfb0; text-align: right; font-weight: 400 } tr > :nth-child(-n + 2) { text-align: left }`;

const browser = await chromium.launch({ executablePath: chromiumPath() });
const page = await browser.newPage();
await page.setContent(`<!doctype html><html lang="en"><style>${typefaces()}${LOOK}</style><body></body></html>`);
// Of an empty page no typeface is asked for yet: a first paper printed without it breaks its words elsewhere.
await page.evaluate('Promise.all([...document.fonts].map((face) => face.load()))');

const rows: Row[] = [];
for (const lines of [1, 40, 400]) {
  const input = longQuote(lines);
  rows.push(
    await pair({
      name: `paper of a quote with ${lines} ${lines === 1 ? 'line' : 'lines'}`,
      against: 'the open Chromium printing the same words from HTML',
      aim: 0.2,
      rounds: lines === 400 ? 8 : 20,
      ours: () => quotePaper(input),
      theirs: () => printed(page, htmlOfQuote(quotePaperContent(input))),
      prove: async () => sameWords(await quotePaper(input), await printed(page, htmlOfQuote(quotePaperContent(input)))),
    }),
  );
}
const invoices = Array.from({ length: 200 }, (_, index) => invoiceOf(index + 1));
rows.push(
  await pair({
    name: '200 invoices of 3 to 12 lines, each with its payment code',
    against: 'the open Chromium printing the same words and squares from HTML, one after the other',
    aim: 0.2,
    rounds: 3,
    ours: async () => {
      for (const content of invoices) await invoicePaper(content);
    },
    theirs: async () => {
      for (const content of invoices) await printed(page, htmlOfInvoice(invoicePaperContent(content)));
    },
    prove: async () => {
      for (const content of invoices.slice(0, 10))
        await sameWords(await invoicePaper(content), await printed(page, htmlOfInvoice(invoicePaperContent(content))));
    },
  }),
);
await browser.close();
report(...rows);

/** A bill unlike its neighbours. */
function invoiceOf(number: number): InvoiceContent {
  return bill({
    number: `2026-${String(number).padStart(3, '0')}`,
    lines: Array.from({ length: 3 + (number % 10) }, (_, index) =>
      billed('days', `Filming of part ${index + 1}`, String(1 + (index % 4)), 'days', `${400 + number}.${10 + index}`, [
        vat(index % 3 === 0 ? '5.5' : '20'),
      ]),
    ),
  });
}

async function sameWords(ourPaper: Uint8Array, theirPaper: Uint8Array): Promise<void> {
  const ours = wordsOf(await pagesOfText(ourPaper));
  const theirs = wordsOf(await pagesOfText(theirPaper));
  const amounts = (words: string[]) => words.filter((word) => /\d\.\d\d$/.test(word)).sort();
  const [onlyOurs, onlyTheirs] = [without(ours, theirs), without(theirs, ours)];
  if (onlyOurs + onlyTheirs !== '') throw new Error(`the two papers do not say the same: ours "${onlyOurs}", theirs "${onlyTheirs}"`);
  if (JSON.stringify(amounts(ours)) !== JSON.stringify(amounts(theirs))) throw new Error('the two papers do not add up to the same');
}

function without(words: readonly string[], others: readonly string[]): string {
  return words.filter((word) => !others.includes(word)).join(' ');
}

/** Words without the page numbers, which differ where one paper is denser. */
function wordsOf(pages: readonly string[]): string[] {
  return pages.flatMap((text) => text.replace(/page \d+ of \d+/g, '').split(' ')).filter((word) => word !== '');
}

type Printed = { foot: string; html: string };

async function printed(on: Page, { foot, html }: Printed): Promise<Uint8Array> {
  await on.evaluate((body) => {
    document.body.innerHTML = body;
  }, html);
  return on.pdf({
    format: 'A4',
    margin: { top: '22mm', bottom: '22mm', left: '22mm', right: '22mm' },
    displayHeaderFooter: true,
    headerTemplate: '<span></span>',
    footerTemplate: `<div style="font-size:8px;width:100%;margin:0 22mm;display:flex;justify-content:space-between"><span>${escaped(foot)}</span>
      <span>page <span class="pageNumber"></span> of <span class="totalPages"></span></span></div>`,
  });
}

function paragraphs(lines: readonly string[], tag = 'p'): string {
  return lines.map((text) => `<${tag}>${escaped(text)}</${tag}>`).join('');
}

function row(cells: readonly string[], tag = 'td'): string {
  return `<tr>${paragraphs(cells, tag)}</tr>`;
}

/** What a quote and an invoice have in common: head, facts, table, sums; `between` stands before the table. */
function htmlOf(content: QuotePaper | InvoicePaper, between = ''): string {
  const { sender, columns } = content;
  const facts = [...content.facts.left, ...content.facts.right].map(({ label, lines }) => paragraphs([label], 'small') + paragraphs(lines));
  const taxed = (tax: string | undefined) => (columns.tax === undefined ? [] : [tax ?? '']);
  const table = content.sections.flatMap(({ head, rows: own }) =>
    own.map(({ what, quantity, unit, price, tax, amount }, index) =>
      row([index === 0 ? head : '', what, `${quantity} ${unit}`, price, ...taxed(tax), amount]),
    ),
  );
  const heads = row(['', columns.what, columns.quantity, columns.price, ...taxed(columns.tax), columns.amount], 'th');
  return [
    paragraphs([sender.name, content.head], 'h1'),
    paragraphs([...sender.lines, ...content.about]),
    ...facts,
    between,
    `<table><thead>${heads}</thead><tbody>${table.join('')}</tbody></table>`,
    `<table>${content.sums.map(({ label, amount, note }) => row([`${label} ${note}`, amount])).join('')}</table>`,
  ].join('');
}

function htmlOfQuote(content: QuotePaper): Printed {
  const { sign } = content;
  const html = [
    htmlOf(content, paragraphs(['To deliver', ...content.deliverables])),
    `<table>${content.terms.map(({ label, text }) => row([label, text])).join('')}</table>`,
    paragraphs(content.notes),
    paragraphs([sign.head, sign.sentence, ...sign.fields]),
  ].join('');
  return { foot: content.foot, html };
}

function htmlOfInvoice(content: InvoicePaper): Printed {
  const { pay } = content;
  const html = [
    htmlOf(content),
    pay
      ? `${paragraphs([pay.head])}<table>${pay.rows.map(({ label, text }) => row([label, text])).join('')}</table>${squares(pay.code)}`
      : '',
    pay?.code ? paragraphs([pay.caption]) : '',
    paragraphs(content.notes),
  ].join('');
  return { foot: content.foot, html };
}

function squares(code: string | null): string {
  if (code === null) return '';
  const grid = paymentSquares(code);
  const path = grid.flatMap((line, y) => line.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : ''))).join('');
  return `<svg width="27mm" height="27mm" viewBox="0 0 ${grid.length} ${grid.length}"><path d="${path}"/></svg>`;
}

function typefaces(): string {
  return [
    [400, 'plex-sans-400'],
    [600, 'plex-sans-600'],
  ]
    .map(([weight, name]) => {
      const bytes = readFileSync(new URL(`../../assets/fonts/${name}.ttf`, import.meta.url)).toString('base64');
      return `@font-face { font-family: Plex; font-weight: ${weight}; src: url(data:font/ttf;base64,${bytes}); }`;
    })
    .join('');
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}
