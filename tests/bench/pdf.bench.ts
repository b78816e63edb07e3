/**
 * A quote's paper of 1, 40 and 400 lines, against an open Chromium that prints the same words from HTML in the same typeface. Both sides
 * are warm. Both papers are read back first: the same words, the same amounts as often.
 */
import { readFileSync } from 'node:fs';
import { chromium, type Page } from 'playwright';
import { quotePaperContent, type QuotePaper, type QuotePaperInput } from '../../core/quotes/paper.ts';
import { quotePaper } from '../../electron/papers/quote.ts';
import { chromiumPath } from '../chromium.ts';
import { pagesOfText } from '../papers/read-text.ts';
import { longQuote } from '../papers/sample.ts';
import { pair, report, type Row } from './harness.ts';

const LOOK = `body { font: 9.5pt/13pt Plex; margin: 0 } h1 { font-size: 21pt } table { width: 100%; border-collapse: collapse }
  td, th { border-bottom: 0.4pt solid #c7bfb0; text-align: right; font-weight: 400 } tr > :nth-child(-n + 2) { text-align: left }`;

const browser = await chromium.launch({ executablePath: chromiumPath() });
const page = await browser.newPage();
await page.setContent(`<!doctype html><html lang="en"><style>${typefaces()}${LOOK}</style><body></body></html>`);
await page.evaluate('document.fonts.ready');

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
      theirs: () => printed(page, input),
      prove: () => sameWords(input),
    }),
  );
}
await browser.close();
report(...rows);

async function sameWords(input: QuotePaperInput): Promise<void> {
  const ours = wordsOf(await pagesOfText(await quotePaper(input)));
  const theirs = wordsOf(await pagesOfText(await printed(page, input)));
  const amounts = (words: string[]) => words.filter((word) => /\d\.\d\d$/.test(word)).sort();
  if (JSON.stringify([...new Set(ours)].sort()) !== JSON.stringify([...new Set(theirs)].sort()))
    throw new Error('the two papers do not say the same');
  if (JSON.stringify(amounts(ours)) !== JSON.stringify(amounts(theirs))) throw new Error('the two papers do not add up to the same');
}

/** Words without the page numbers, which differ where one paper is denser. */
function wordsOf(pages: readonly string[]): string[] {
  return pages.flatMap((text) => text.replace(/page \d+ of \d+/g, '').split(' ')).filter((word) => word !== '');
}

async function printed(on: Page, input: QuotePaperInput): Promise<Uint8Array> {
  const content = quotePaperContent(input);
  await on.evaluate((html) => {
    document.body.innerHTML = html;
  }, htmlOf(content));
  return on.pdf({
    format: 'A4',
    margin: { top: '22mm', bottom: '22mm', left: '22mm', right: '22mm' },
    displayHeaderFooter: true,
    headerTemplate: '<span></span>',
    footerTemplate: `<div style="font-size:8px;width:100%;margin:0 22mm;display:flex;justify-content:space-between"><span>${escaped(content.foot)}</span>
      <span>page <span class="pageNumber"></span> of <span class="totalPages"></span></span></div>`,
  });
}

function htmlOf(content: QuotePaper): string {
  const { sender, columns, sign } = content;
  const paragraphs = (lines: readonly string[], tag = 'p') => lines.map((text) => `<${tag}>${escaped(text)}</${tag}>`).join('');
  const facts = [...content.facts.left, ...content.facts.right].map(({ label, lines }) => paragraphs([label], 'small') + paragraphs(lines));
  const row = (cells: readonly string[], tag = 'td') => `<tr>${paragraphs(cells, tag)}</tr>`;
  const table = content.sections.flatMap(({ head, rows: own }) =>
    own.map(({ what, quantity, unit, price, amount }, index) => row([index === 0 ? head : '', what, `${quantity} ${unit}`, price, amount])),
  );
  return [
    paragraphs([sender.name, content.head], 'h1'),
    paragraphs([...sender.lines, ...content.about]),
    ...facts,
    paragraphs(['To deliver', ...content.deliverables]),
    `<table><thead>${row(['', columns.what, columns.quantity, columns.price, columns.amount], 'th')}</thead><tbody>${table.join('')}</tbody></table>`,
    `<table>${content.sums.map(({ label, amount, note }) => row([`${label} ${note}`, amount])).join('')}</table>`,
    `<table>${content.terms.map(({ label, text }) => row([label, text])).join('')}</table>`,
    paragraphs(content.notes),
    paragraphs([sign.head, sign.sentence, ...sign.fields]),
  ].join('');
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
