/**
 * Account numbers against the registry of their standard.
 * @source SWIFT as registration authority of ISO 13616, IBAN Registry, lengths and examples by country; ISO/IEC 7064, MOD 97-10
 */
import { describe, expect, test } from 'vitest';
import { groupedIban, ibanTrouble } from '../../../core/invoices/iban.ts';

/** The registry's own examples. */
const EXAMPLES = [
  'AD12 0001 2030 2003 5910 0100',
  'AT61 1904 3002 3457 3201',
  'BE68 5390 0754 7034',
  'CH93 0076 2011 6238 5295 7',
  'CY17 0020 0128 0000 0012 0052 7600',
  'CZ65 0800 0000 1920 0014 5399',
  'DE89 3704 0044 0532 0130 00',
  'DK50 0040 0440 1162 43',
  'EE38 2200 2210 2014 5685',
  'ES91 2100 0418 4502 0005 1332',
  'FI21 1234 5600 0007 85',
  'FR14 2004 1010 0505 0001 3M02 606',
  'GR16 0110 1250 0000 0001 2300 695',
  'HR12 1001 0051 8630 0016 0',
  'HU42 1177 3016 1111 1018 0000 0000',
  'IS14 0159 2600 7654 5510 7303 39',
  'IT60 X054 2811 1010 0000 0123 456',
  'LI21 0881 0000 2324 013A A',
  'LU28 0019 4006 4475 0000',
  'NO93 8601 1117 947',
  'PL61 1090 1014 0000 0712 1981 2874',
  'PT50 0002 0123 1234 5678 9015 4',
  'SE45 5000 0000 0583 9825 7466',
  'SI56 2633 0001 2039 086',
  'SK31 1200 0000 1987 4263 7541',
  'SM86 U032 2509 8000 0000 0270 100',
];

describe.each(EXAMPLES)('%s', (iban) => {
  test('is taken, in groups or without, and written in groups of four', () => {
    const plain = iban.replaceAll(' ', '');
    expect(ibanTrouble(iban)).toBeNull();
    expect(ibanTrouble(plain.toLowerCase())).toBeNull();
    expect(groupedIban(plain)).toBe(iban);
  });
  test('any one figure changed is found', () => {
    const plain = iban.replaceAll(' ', '');
    for (let at = 2; at < plain.length; at += 1) {
      if (!/\d/.test(plain[at] ?? '')) continue;
      const changed = plain.slice(0, at) + String((Number(plain[at]) + 1) % 10) + plain.slice(at + 1);
      expect(ibanTrouble(changed), changed).toContain('check figures');
    }
  });
  test('a figure left out is found', () => expect(ibanTrouble(iban.slice(0, -1))).toMatch(/^An IBAN (begins with|of [A-Z]{2} has) /));
});

test.each(['', 'DE', '1234 5678 9012 3456', 'DE89-3704-0044-0532-0130-00', `XX00${'1'.repeat(31)}`])('%j is none', (text) =>
  expect(ibanTrouble(text)).toContain('begins with two letters'),
);
