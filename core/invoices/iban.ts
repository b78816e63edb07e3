/**
 * Account numbers by ISO 13616 (IBAN): two letters of the country, two check figures by ISO 7064 MOD 97-10, the account in the country's length.
 */

/** Characters of an IBAN by country, from the registry that ISO 13616 keeps. */
const LENGTHS: Readonly<Record<string, number>> = Object.fromEntries(
  [
    'AD24 AE23 AL28 AT20 AZ28 BA20 BE16 BG22 BH22 BR29 BY28 CH21 CR22 CY28 CZ24 DE22 DK18 DO28 EE20 EG29 ES24 FI18 FO18 FR27 GB22 GE22',
    'GI23 GL18 GR27 GT28 HR21 HU28 IE22 IL23 IQ23 IS26 IT27 JO30 KW30 KZ20 LB28 LC32 LI21 LT20 LU20 LV21 MC27 MD24 ME22 MK19 MR27 MT31',
    'MU30 NL18 NO15 PK24 PL28 PS29 PT25 QA29 RO24 RS22 SA24 SC31 SE24 SI19 SK24 SM27 ST25 SV28 TL23 TN24 TR26 UA29 VA22 VG24 XK20',
  ]
    .join(' ')
    .split(' ')
    .map((entry) => [entry.slice(0, 2), Number(entry.slice(2))]),
);
const SHAPE = /^[A-Z]{2}\d{2}[A-Z0-9]{11,30}$/;

/** Without blanks, in capitals: "DE89370400440532013000". */
export function plainIban(text: string): string {
  return text.replace(/\s+/g, '').toUpperCase();
}

/** In groups of four, as it is read: "DE89 3704 0044 0532 0130 00". */
export function groupedIban(text: string): string {
  return plainIban(text).replace(/(.{4})(?=.)/g, '$1 ');
}

/** Why a text is no IBAN, as a sentence; null where it is one. */
export function ibanTrouble(text: string): string | null {
  const iban = plainIban(text);
  if (!SHAPE.test(iban)) return 'An IBAN begins with two letters and two figures, and has 15 to 34 letters and figures.';
  const country = iban.slice(0, 2);
  const length = LENGTHS[country];
  if (length !== undefined && iban.length !== length) return `An IBAN of ${country} has ${length} characters; this one has ${iban.length}.`;
  return remainder(iban) === 1 ? null : 'The check figures of this IBAN do not fit the rest; a figure is wrong or two have changed places.';
}

/** The number modulo 97 with its first four characters at the end and letters as 10 to 35 (ISO 7064). */
function remainder(iban: string): number {
  let rest = 0;
  for (const letter of iban.slice(4) + iban.slice(0, 4)) {
    const value = Number.parseInt(letter, 36);
    rest = (rest * (value > 9 ? 100 : 10) + value) % 97;
  }
  return rest;
}
