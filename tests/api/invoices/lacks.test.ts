/**
 * A draft bill says what its paper will lack, until Setup and the client have it.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { invoices } from '../../../electron/api/invoices.ts';
import { agreedJob, TAXED } from './agreed-job.ts';

const PAY = 'It will not say how to pay: Setup has neither an account nor words on it.';
const ADDRESS = 'No billing address is known: a tax invoice names theirs. Write it on the client or the job.';

const cautionsOf = async (of: Parameters<typeof agreedJob>[0]): Promise<string[]> => {
  const { at, job } = await agreedJob(of);
  return (await call(invoices.draft, { jobId: job.id, kind: 'deposit' }, { context: at.context })).draft.cautions;
};

test('without them', async () => expect(await cautionsOf({ setup: TAXED })).toEqual([ADDRESS, PAY]));
test('with them', async () =>
  expect(
    await cautionsOf({
      setup: { ...TAXED, payTo: { name: '', iban: '', bic: '', words: 'In cash on the day.' } },
      client: { billing: { name: '', address: '3 Quay Street\nDuluth', email: '' } },
    }),
  ).toEqual([]));
