/**
 * What happens to a bill on the job's sheet: changed by hand, refused without an order number, overpaid, disputed, reminded of, credited, paid back.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import type { InvoiceRow } from '../../core/contract/invoices.ts';
import { startHost, type TestHost } from '../host.ts';
import { goTo, setUp, today, watch } from './stage.ts';

let host: TestHost;
let job: Job;

/** A day of yesterday at 1,000.00, agreed on without a deposit, for a client that pays only with an order number. */
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  const date = today().subtract({ days: 1 }).toString();
  const { setup } = (await host.call('setup.get')) as { setup: { home: object } };
  const days = [{ date, kind: 'shoot', call: `${date}T09:00`, wrap: `${date}T19:00` }];
  const received = Temporal.Now.instant()
    .subtract({ hours: 30 * 24 })
    .toString();
  const facts = { title: 'Clinic opening', organisation: 'Harbour Clinic', role: 'shoot', place: setup.home, days };
  const added = (await host.call('jobs.add', { facts, received })) as { job: Job };
  const { id } = added.job;
  // Whatever day yesterday was, no public holiday makes it dearer.
  const changes = [
    { op: 'terms', terms: { depositPercent: '0' } },
    { op: 'holidays', dates: [] },
  ];
  await host.call('quotes.change', { jobId: id, draftVersion: 0, changes });
  const made = (await host.call('quotes.make', { jobId: id, jobVersion: added.job.version, draftVersion: 1, pencil: false })) as {
    job: Job;
  };
  const inked = (await host.call('jobs.ink', { id, version: made.job.version, who: 'Ilse Marrow', how: 'mail' })) as { job: Job };
  const knows = { ...inked.job.knows, purchaseOrder: { required: true, number: '' } };
  ({ job } = (await host.call('jobs.saveKnows', { id, version: inked.job.version, knows })) as { job: Job });
});
test.afterAll(async () => {
  await host.close();
});

const rows = async (): Promise<InvoiceRow[]> =>
  ((await host.call('invoices.list', { jobId: job.id })) as { invoices: InvoiceRow[] }).invoices;

test('a bill is changed, issued with a reason, overpaid, disputed, reminded of, credited and paid back', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const complaints = watch(page);
  await page.goto(host.page);
  await goTo(page, `/jobs/${job.id}`);
  const bill = page.getByRole('region', { name: 'Bill', exact: true });
  await expect(bill.getByText('To pay USD')).toBeVisible();
  const issue = bill.getByRole('button', { name: 'Issue the bill' });

  await bill.getByRole('button', { name: 'Add a line to the bill' }).click();
  const line = bill.getByRole('form', { name: 'Add a line' });
  await line.getByLabel('What', { exact: true }).fill('Parking');
  await line.getByLabel('Unit price').fill('18.50');
  await line.getByRole('button', { name: 'Add' }).click();
  await expect(bill.getByText('1,018.50').last()).toBeVisible();
  await bill.getByRole('button', { name: 'Take back the last change' }).click();
  await expect(bill.getByText('1,000.00').last()).toBeVisible();

  // Without an order number only with a reason.
  await expect(issue).toBeDisabled();
  await bill.getByLabel('Without their purchase-order number, because').fill('It follows by mail');
  await issue.click();
  const year = today().year;
  await expect(bill.getByText(`${year}-001 is this bill. To change it, credit it and issue it anew.`)).toBeVisible();
  await bill.getByText(`${year}-001`, { exact: true }).click();

  await bill.getByRole('button', { name: `They dispute it: ${year}-001` }).click();
  await bill.getByLabel('What they dispute').fill('Two hours');
  await bill.getByRole('button', { name: 'Note the dispute' }).click();
  await expect(bill.getByText('Disputed: Two hours.')).toBeVisible();
  await bill.getByRole('button', { name: `It is settled: ${year}-001` }).click();
  await bill.getByRole('form', { name: 'It is settled' }).getByRole('button', { name: 'It is settled' }).click();
  await expect(bill.getByText('Disputed: Two hours.')).toBeHidden();

  await bill.getByRole('button', { name: `Remind them: ${year}-001` }).click();
  await expect(bill.getByText('USD 1,000.00 is open and is due on', { exact: false })).toBeVisible();
  await bill.getByRole('button', { name: 'Copy the reminder' }).click();
  await expect(bill.getByText(/^Reminded .* \(kind\)\.$/)).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain(`invoice ${year}-001`);

  // 1,100.00 for 1,000.00: what is over is asked about. This job names no client, so it stays with nobody, and that is refused.
  await bill.getByRole('button', { name: `Record a payment: ${year}-001` }).click();
  const payment = bill.getByRole('form', { name: `Record a payment for ${year}-001` });
  await payment.getByLabel('What came').fill('1,100');
  await expect(payment.getByText('Keep USD 100.00 as credit of the client')).toBeVisible();
  await payment.getByRole('button', { name: 'Record it' }).click();
  await expect(payment.getByText('USD 100.00 is over. Keep it as credit of the client, or correct the amount.')).toBeVisible();
  await payment.getByText('Keep USD 100.00 as credit of the client').click();
  await payment.getByRole('button', { name: 'Record it' }).click();
  await expect(payment.getByText("What is over would be nobody's credit.")).toBeVisible();
  await payment.getByLabel('What came').fill('1,000');
  await payment.getByRole('button', { name: 'Record it' }).click();
  await expect(bill.getByText('1,000.00 paid.')).toBeVisible();
  const [paid] = await rows();
  expect(paid).toMatchObject({ state: 'paid', open: { minor: 0 } });

  await bill.getByRole('button', { name: `Credit it: ${year}-001` }).click();
  const credit = bill.getByRole('form', { name: 'Credit it' });
  await credit.getByText('a part').click();
  await credit.getByLabel('Shooting').fill('1000.01');
  await credit.getByLabel('Why, printed on it').fill('An hour less');
  await credit.getByRole('button', { name: 'Issue the credit note' }).click();
  await expect(credit.getByText('Shooting: 1,000.00 is left to credit, not 1,000.01.')).toBeVisible();
  await credit.getByLabel('Shooting').fill('100');
  await credit.getByRole('button', { name: 'Issue the credit note' }).click();
  await expect(bill.getByText(`${year}-002`, { exact: true })).toBeVisible();

  await bill.getByRole('button', { name: `Pay back what is over: ${year}-001` }).click();
  await bill.getByRole('button', { name: 'It was paid back' }).click();
  await expect(bill.getByText(`refund, transfer, ${year}-001`)).toBeVisible();
  expect((await rows()).map(({ number, over, credited }) => [number, over.minor, credited.minor])).toEqual([
    [`${year}-002`, 0, 0],
    [`${year}-001`, 0, 10_000],
  ]);
  const axe = await new AxeBuilder({ page }).include('section[aria-labelledby="billing"]').analyze();
  expect(axe.violations).toEqual([]);
  expect(complaints.filter((text) => !text.includes('422'))).toEqual([]);
});
