/**
 * A client's statement on their sheet: what is open, every entry, and the paper that goes out.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'playwright/test';
import type { Invoice } from '../../core/contract/invoices.ts';
import type { Job } from '../../core/contract/jobs.ts';
import type { Client } from '../../core/contract/people.ts';
import { blankClient } from '../../core/people/blank.ts';
import { startHost, type TestHost } from '../host.ts';
import { goTo, setUp, today, watch } from './stage.ts';
import { pressEnter } from './keys.ts';

let host: TestHost;
test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
});
test.afterEach(async () => {
  await host.close();
});

/** A client with a deposit invoice of 500.00 for a day at 1,000.00, of which 200.00 came. */
async function billed(): Promise<Client> {
  const fields = { ...blankClient('US'), name: 'Guild of Lakeside Bakers' };
  const { client } = (await host.call('people.saveClient', { fields })) as { client: Client };
  const { setup } = (await host.call('setup.get')) as { setup: { home: object } };
  const date = today().add({ days: 40 }).toString();
  const days = [{ date, kind: 'shoot', call: `${date}T09:00`, wrap: `${date}T19:00` }];
  const added = (await host.call('jobs.add', { facts: { title: 'Tasting', role: 'shoot', place: setup.home, days } })) as { job: Job };
  const own = (await host.call('jobs.setClient', { id: added.job.id, version: added.job.version, clientId: client.id })) as { job: Job };
  const made = (await host.call('quotes.make', { jobId: own.job.id, jobVersion: own.job.version, draftVersion: 0, pencil: false })) as {
    job: Job;
  };
  await host.call('jobs.ink', { id: own.job.id, version: made.job.version, who: 'Odile Fenn', how: 'mail' });
  const { invoice } = (await host.call('invoices.issue', { jobId: own.job.id, kind: 'deposit', draftVersion: 0 })) as { invoice: Invoice };
  const amount = { minor: 20_000, currency: 'USD' };
  const parts = [{ invoiceId: invoice.id, amount }];
  await host.call('payments.record', { on: today().toString(), how: 'transfer', note: '', amount, parts, toCredit: false });
  return client;
}

test('it says what is open, shows every entry with its balance, and is put on paper by the keys', async ({ page }) => {
  const complaints = watch(page);
  const client = await billed();
  await page.goto(host.page);
  await goTo(page, `/people/client/${client.id}`);
  await expect(page.getByText(/^USD 300\.00 is open on /)).toBeVisible();
  await page.getByText('2 entries in USD').focus();
  await page.keyboard.press('Enter');
  const year = today().year;
  const rows = page.getByRole('table').filter({ hasText: 'Balance' }).getByRole('row');
  await expect(rows.nth(1)).toContainText(`Invoice ${year}-001`);
  await expect(rows.nth(1)).toContainText('500.00500.00');
  await expect(rows.nth(2)).toContainText(`Payment, transfer, ${year}-001`);
  await expect(rows.nth(2)).toContainText('-200.00300.00');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  const download = page.waitForEvent('download');
  await pressEnter(page.getByRole('button', { name: 'Put the statement in USD on paper' }));
  const name = `Statement ${today().toString()} USD, Guild of Lakeside Bakers.pdf`;
  expect((await download).suggestedFilename()).toBe(name);
  await expect(page.getByText(`${name} is made.`)).toBeVisible();
  expect(complaints).toEqual([]);
});

test('a client without a bill has no statement', async ({ page }) => {
  const fields = { ...blankClient('US'), name: 'Harbour Choir' };
  const { client } = (await host.call('people.saveClient', { fields })) as { client: Client };
  await page.goto(host.page);
  await goTo(page, `/people/client/${client.id}`);
  await expect(page.getByRole('heading', { name: 'Who they are' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Statement' })).toHaveCount(0);
});
