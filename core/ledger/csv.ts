/**
 * Tables as CSV (RFC 4180) that a spreadsheet opens without running anything: no cell can be taken for a formula.
 */
import Papa from 'papaparse';

type Cell = string | number | null;
export type Table = { heads: readonly string[]; rows: readonly (readonly Cell[])[] };

/** A plain decimal, as amounts and quantities are written: never a formula, even below zero. */
const NUMBER = /^-?\d+(\.\d+)?$/;
/** What begins a formula in some spreadsheet, also in its full-width form and behind spaces or marks that are not seen. */
const FORMULA = /^[\s\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]*[=+\-@|%＝＋－＠]/u;
const TAB_OR_RETURN = /^[\t\r\n]/;

/**
 * The text of a table: comma, double quotes, CRLF, a byte-order mark so that names in any script are read as UTF-8.
 * A text that could begin a formula gets an apostrophe before it.
 */
export function csvText({ heads, rows }: Table): string {
  const cells = [heads, ...rows].map((row) => row.map(safe));
  return `\ufeff${Papa.unparse(cells, { newline: '\r\n' })}\r\n`;
}

function safe(cell: Cell): string {
  if (cell === null) return '';
  const text = String(cell);
  if (NUMBER.test(text)) return text;
  return FORMULA.test(text) || TAB_OR_RETURN.test(text) ? `'${text}` : text;
}
