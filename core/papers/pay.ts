/**
 * How a paper says that it is paid.
 */
import { groupedIban, ibanTrouble } from '../invoices/iban.ts';
import { paymentCode, type PayTo } from '../invoices/payment-code.ts';
import type { Money } from '../money/money.ts';
import { paperText, type TypedText } from '../words/letters.ts';
import type { PaperPay } from './content.ts';

/** What is asked for, in words with its date; `reference` is what the payer writes with it, `coded` the same in a payment code. */
type Asked = { what: string; amount: Money; reference: string; coded: string };

/** Null where nothing is known of how to pay. */
export function payOf(payTo: PayTo, { what, amount, reference, coded }: Asked): PaperPay | null {
  const iban = payTo.iban.trim() === '' || ibanTrouble(payTo.iban) !== null ? paperText(payTo.iban) : groupedIban(payTo.iban);
  const account = [
    { label: 'Account of', text: iban === '' ? '' : paperText(payTo.name) },
    { label: 'IBAN', text: iban },
    { label: 'BIC', text: iban === '' ? '' : paperText(payTo.bic).toUpperCase() },
  ].filter(({ text }) => text !== '');
  const words = paperText(payTo.words);
  if (account.length === 0 && words === '') return null;
  return {
    head: 'How to pay',
    rows: [{ label: 'Amount', text: what }, ...account, { label: 'Reference', text: reference }],
    words: words === '' ? [] : words.split('\n'),
    code: paymentCode(payTo, amount, coded),
    caption: 'Payment code for the app of your bank',
  };
}

/** Texts of an account that somebody typed. */
export function typedOfAccount({ name, iban, bic, words }: PayTo): TypedText[] {
  return [
    { field: 'the name of your account', text: name },
    { field: 'your account number', text: `${iban} ${bic}` },
    { field: 'your words on how to pay', text: words },
  ];
}
