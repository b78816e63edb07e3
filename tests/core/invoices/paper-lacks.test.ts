import { expect, test } from 'vitest';
import { paperLacks } from '../../../core/invoices/paper-lacks.ts';
import { bill, billed, halfOfTwoGroups, reversed } from '../../papers/invoice-sample.ts';

const mine = { address: '3 Quay Lane', registered: true, taxId: 'ATU1', payTo: bill().payTo };
const bare = { name: 'Fair', address: ' ', taxId: '', country: null, order: '' };

test('nothing is lacking where all is known', () => expect(paperLacks(bill(), mine)).toEqual([]));

test('a registered sender is told of every name, address and tax id that a tax invoice has', () =>
  expect(
    paperLacks(bill({ billTo: bare, lines: [billed('days', 'Filming', '1', 'day', '1.00', [reversed])] }), {
      ...mine,
      address: '',
      taxId: ' ',
    }),
  ).toEqual([
    'You are registered for tax, and Setup has no tax id: a tax invoice names it.',
    'Setup has no address: a tax invoice names yours.',
    'No billing address is known: a tax invoice names theirs. Write it on the client or the job.',
    "The client's tax id is not known: where they account for the tax, the invoice names it.",
  ]));

test('one who is not registered needs none of them', () =>
  expect(paperLacks(bill({ billTo: bare }), { ...mine, address: '', taxId: '', registered: false })).toEqual([]));

test('how to pay is asked for only where something is to pay', () => {
  const without = { name: 'Me', iban: '', bic: '', words: '' };
  const sentence = 'It will not say how to pay: Setup has neither an account nor words on it.';
  expect(paperLacks(bill(), { ...mine, payTo: undefined })).toEqual([sentence]);
  expect(paperLacks(bill(), { ...mine, payTo: without })).toEqual([sentence]);
  expect(paperLacks(bill(), { ...mine, payTo: { ...without, words: 'In cash.' } })).toEqual([]);
  const less = bill({ lines: [billed('cancellation', 'Fee', '1', '', '10.00')], deposits: [halfOfTwoGroups] });
  expect(paperLacks(less, { ...mine, payTo: without })).toEqual([]);
});
