/**
 * Addresses from vCard files, versions 2.1 (as far as it has no binary parts), 3.0 (RFC 2426) and 4.0 (RFC 6350).
 */
import ICAL from 'ical.js';
import type { AddressCard } from './card.ts';

/** Thrown for a file that holds no card that can be read. */
export class CardError extends Error {}

type Property = [name: string, parameters: Record<string, unknown>, type: string, ...values: unknown[]];

/**
 * Read every card of a file. A card that cannot be read is left with an empty name, so that the list says so and the others still come.
 * @throws CardError when the file holds no card
 */
export function cardsFromVcard(text: string): AddressCard[] {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const cards: AddressCard[] = [];
  let from = -1;
  lines.forEach((line, index) => {
    if (/^BEGIN:VCARD\s*$/i.test(line)) from = index;
    else if (/^END:VCARD\s*$/i.test(line) && from >= 0) {
      cards.push(cardOf(lines.slice(from, index + 1), from + 1));
      from = -1;
    }
  });
  if (cards.length === 0) throw new CardError('This file holds no vCard. A card begins with BEGIN:VCARD and ends with END:VCARD.');
  return cards;
}

function cardOf(lines: string[], line: number): AddressCard {
  const properties = read(lines);
  const first = (name: string) => properties.find((property) => property[0] === name);
  const text = (name: string) => flat(first(name)?.[3]);
  const parts = (name: string) => {
    const value = first(name)?.[3];
    return Array.isArray(value) ? value.map(flat) : [flat(value)];
  };
  const [family = '', given = ''] = parts('n');
  return {
    line,
    name: text('fn') || [given, family].filter(Boolean).join(' '),
    organisation: parts('org')[0] ?? '',
    email: text('email'),
    phone: text('tel').replace(/^tel:/i, ''),
    address: addressOf(parts('adr')),
    taxId: '',
    closed: '',
    notes: text('note'),
  };
}

/** RFC 6350 6.3.1: box, extended, street, locality, region, code, country; written as on an envelope, street before town. */
function addressOf(parts: string[]): string {
  const [box = '', extended = '', street = '', locality = '', region = '', code = '', country = ''] = parts;
  return [box, extended, street, [code, locality, region].filter(Boolean).join(' '), country].filter(Boolean).join('\n');
}

function read(lines: string[]): Property[] {
  try {
    // Groups ("item1.EMAIL") and version 2.1's bare types ("TEL;WORK:") are not of the grammar that the library reads.
    const plain = lines.map((line) =>
      line
        .replace(/^[A-Za-z0-9-]{1,40}\.(?=[A-Za-z-]+[;:])/, '')
        .replace(
          /^([A-Za-z-]{1,40})((?:;[A-Za-z0-9-]{1,40}){1,8}):/,
          (_whole, name: string, types: string) => `${name};TYPE=${types.slice(1).replaceAll(';', ',')}:`,
        ),
    );
    const parsed = ICAL.parse(plain.join('\r\n')) as unknown as [string, Property[]] | [string, Property[]][];
    const card = typeof parsed[0] === 'string' ? (parsed as [string, Property[]]) : (parsed as [string, Property[]][])[0];
    return card?.[1] ?? [];
  } catch {
    return [];
  }
}

function flat(value: unknown): string {
  return (Array.isArray(value) ? value.map(flat).join(' ') : typeof value === 'string' ? value : '').trim();
}
