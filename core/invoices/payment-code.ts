/**
 * What a payment code says: the data of a credit transfer in euro by the guideline EPC069-12, version 2.1, which a bank's app reads from a paper.
 */
import { fixedText } from '../money/exact.ts';
import { majorOf, type Money } from '../money/money.ts';
import { paperText } from '../words/letters.ts';
import { ibanTrouble, plainIban } from './iban.ts';

/** Where money is to go. Empty texts are not known. */
export type PayTo = { name: string; iban: string; bic: string; words: string };

/** Cents: 0.01 to 999,999,999.99. */
const LEAST = 1;
const MOST = 99_999_999_999;
const LONGEST = { name: 70, reference: 140 };
/** A code holds no more bytes than these: version 13 at error level M. */
const MOST_BYTES = 331;

/** The European Economic Area, where an account is found without the code of its bank (Regulation (EU) No 260/2012, Art. 5(7)). */
const AREA = new Set('AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IS IT LI LT LU LV MT NL NO PL PT RO SE SI SK'.split(' '));
/** Outside it, but reached by the same transfers; the bank's code must be given. */
const BEYOND = new Set('AD CH GB GI MC SM VA'.split(' '));
const BIC = /^[A-Z]{6}[A-Z0-9]{2}([A-Z0-9]{3})?$/;

/**
 * The text of the code, or null where there is none: another currency, nothing to pay or too much, no account that such transfers reach.
 * @param reference what the payer writes with the payment, cut to 140 letters
 */
export function paymentCode({ name, iban, bic }: PayTo, amount: Money, reference: string): string | null {
  const holder = cut(name, LONGEST.name);
  const bank = bic.replace(/\s+/g, '').toUpperCase();
  if (amount.currency !== 'EUR' || amount.minor < LEAST || amount.minor > MOST) return null;
  if (holder === '' || ibanTrouble(iban) !== null || (bank !== '' && !BIC.test(bank))) return null;
  const account = plainIban(iban);
  const country = account.slice(0, 2);
  const inArea = AREA.has(country);
  if (!inArea && !(BEYOND.has(country) && bank !== '')) return null;
  const text = [
    'BCD',
    // Version 001 always names the bank, 002 need not.
    inArea ? '002' : '001',
    // 1 is UTF-8.
    '1',
    'SCT',
    bank,
    holder,
    account,
    `EUR${fixedText(majorOf(amount), 2)}`,
    // No purpose, and no reference by ISO 11649: the words follow.
    '',
    '',
    cut(reference, LONGEST.reference),
  ].join('\n');
  return utf8Length(text) <= MOST_BYTES ? text : null;
}

/** One line of so many letters at most. */
function cut(text: string, most: number): string {
  return Array.from(paperText(text).replaceAll('\n', ' ')).slice(0, most).join('').trim();
}

/** Bytes of a text in UTF-8. */
function utf8Length(text: string): number {
  return Array.from(text).reduce((sum, letter) => {
    const point = letter.codePointAt(0) ?? 0;
    return sum + (point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4);
  }, 0);
}
