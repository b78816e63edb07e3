/**
 * Lines of a bill as rows of its table, each with its taxes.
 */
import type { InvoiceContent } from '../contract/invoices.ts';
import { sections } from '../contract/quotes.ts';
import { exact } from '../money/exact.ts';
import { formatMoney, formatNumber, formatPrice } from '../money/format.ts';
import { majorOf, type Money } from '../money/money.ts';
import { taxLines, type Tax } from '../money/taxes.ts';
import { signed, type PaperSection, type PaperTable } from '../papers/content.ts';
import { isCounted, rowOf, SECTION_HEADS } from '../papers/rows.ts';
import { paperText } from '../words/letters.ts';

type Bill = Pick<InvoiceContent, 'lines' | 'currency' | 'included' | 'sender'>;
type Line = Bill['lines'][number];

/** Lines by section in the order of the bill. There is a column of taxes where a line bears one. */
export function billTable({ lines, currency, included, sender }: Bill): PaperTable {
  const names = [...new Set(lines.flatMap(({ taxes }) => taxes.map(({ name }) => paperText(name))))];
  const taxed = lines.some((line) => taxesInWords(line.taxes) !== '');
  const tax = names.length === 1 ? (names[0] ?? 'Tax') : 'Tax';
  // A tax invoice gives what each line comes to without tax (VAT Regulations 1995 reg. 14(1)(h), Directive 2006/112/EC Art. 226 point 8).
  const nets = included && sender.registered && taxed ? taxLines(currency, lines, true).lineNets : [];
  const rows = lines.map((line, index) => {
    const net = nets[index];
    return {
      section: line.section,
      row: {
        ...rowOf(line),
        ...(taxed ? { tax: taxesInWords(line.taxes) } : {}),
        ...(net && net.minor !== line.amount.minor ? { note: `Without ${tax}: ${netInWords(net, line)}` } : {}),
      },
    };
  });
  const counted = rows.some(({ row }) => row.price !== '');
  return {
    columns: {
      what: 'What',
      ...(counted ? { quantity: 'Quantity', price: 'Price' } : { quantity: '', price: '' }),
      ...(taxed ? { tax } : {}),
      amount: `Amount, ${currency}`,
    },
    sections: [...Map.groupBy(rows, ({ section }) => section)].map(([section, own]): PaperSection => ({
      head: headOf(section),
      rows: own.map(({ row }) => row),
    })),
  };
}

/** "20 %", "5 % + 7 %", "exempt", "reverse charge"; empty where none is charged because the sender is not registered. */
function taxesInWords(taxes: readonly Tax[]): string {
  return taxes
    .filter(({ state }) => state !== 'not registered')
    .map(({ state, percent }) => (state === 'rated' ? `${formatNumber(percent)} %` : state))
    .join(' + ');
}

/** The net of a line, and of one of what it counts. */
function netInWords(net: Money, line: Line): string {
  const whole = signed(formatMoney(net));
  const count = exact(line.quantity);
  return isCounted(line) && !count.equals(0) ? `${signed(formatPrice(majorOf(net).div(count), net.currency))} each, ${whole}` : whole;
}

/** Sections of a price have their own heads; any other ("deposit", "expenses") is its own. */
function headOf(section: string): string {
  const known = sections.find((name) => name === section);
  return known ? SECTION_HEADS[known] : paperText(section).charAt(0).toUpperCase() + paperText(section).slice(1);
}
