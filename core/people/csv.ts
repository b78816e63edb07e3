/**
 * Addresses from a table with a head line, as spreadsheets and address books write it.
 */
import Papa from 'papaparse';
import type { AddressCard } from './card.ts';

/** Head words that mean a field, folded to small letters and single spaces. */
const heads: Record<keyof Omit<AddressCard, 'line'>, readonly string[]> = {
  name: ['name', 'full name', 'contact', 'contact name', 'person', 'display name'],
  organisation: ['organisation', 'organization', 'company', 'client', 'business', 'org', 'company name', 'employer'],
  email: ['email', 'e-mail', 'mail', 'email address', 'e-mail address', 'e-mail 1 - value', 'email 1'],
  phone: ['phone', 'telephone', 'tel', 'mobile', 'cell', 'phone number', 'mobile phone', 'phone 1 - value', 'phone 1'],
  address: ['address', 'billing address', 'postal address', 'street', 'address 1 - formatted'],
  taxId: ['tax id', 'vat', 'vat number', 'vat id', 'tax number'],
  closed: ['holidays', 'own holidays', 'closed', 'closed on', 'closing days'],
  notes: ['notes', 'note', 'remarks', 'comment', 'comments'],
};
const firstNames = ['first name', 'given name', 'first'];
const lastNames = ['last name', 'family name', 'surname', 'last'];

/** Thrown for a file that is not a table of addresses; the message says what to do. */
export class TableError extends Error {}

/**
 * Read a CSV table. The delimiter is found by itself; unknown columns are left out.
 * @throws TableError when no column names a person or a business
 */
export function cardsFromCsv(text: string): AddressCard[] {
  const { data } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: false });
  const at = data.findIndex((row) => row.some((cell) => cell.trim() !== ''));
  const head = (data[at] ?? []).map(fold);
  const column = (names: readonly string[]) => head.findIndex((word) => names.includes(word));
  const columns = Object.fromEntries(Object.entries(heads).map(([field, names]) => [field, column(names)])) as Record<
    keyof typeof heads,
    number
  >;
  const first = column(firstNames);
  const last = column(lastNames);
  if (columns.name < 0 && columns.organisation < 0 && first < 0 && last < 0)
    throw new TableError(
      'No column of this file is headed Name or Organisation. Give the columns a head line, such as: Name, Organisation, Email, Phone.',
    );
  return data.slice(at + 1).flatMap((row, index) => {
    if (row.every((cell) => cell.trim() === '')) return [];
    const cell = (position: number) => (position < 0 ? '' : (row[position] ?? '').trim());
    const name = cell(columns.name) || [cell(first), cell(last)].filter(Boolean).join(' ');
    return [
      {
        line: at + 2 + index,
        name,
        organisation: cell(columns.organisation),
        email: cell(columns.email),
        phone: cell(columns.phone),
        address: cell(columns.address),
        taxId: cell(columns.taxId),
        closed: cell(columns.closed),
        notes: cell(columns.notes),
      },
    ];
  });
}

function fold(head: string): string {
  return head.trim().toLowerCase().replaceAll('_', ' ').replace(/\s+/g, ' ');
}
