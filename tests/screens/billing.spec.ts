/**
 * From the written yes to the last payment on a job's sheet: by the mouse, then by the keys alone. A day of ten hours at 1,000.00.
 */
import { expect, test, type Page } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import { startHost, type TestHost } from '../host.ts';
import { goTo, setUp, today, watch } from './stage.ts';

const PNG = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==', 'base64');

let host: TestHost;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
});
test.afterAll(async () => {
  await host.close();
});

/** A job at home some days ago that was asked for a month ago, with its quote of 1,000.00 made. */
async function quoted(title: string, daysAgo: number): Promise<Job> {
  const date = today().subtract({ days: daysAgo }).toString();
  const { setup } = (await host.call('setup.get')) as { setup: { home: object } };
  const facts = {
    title,
    organisation: 'Guild of Lakeside Bakers',
    contact: { name: 'Odile Fenn', email: '', phone: '' },
    role: 'shoot',
    place: setup.home,
    days: [{ date, kind: 'shoot', call: `${date}T09:00`, wrap: `${date}T19:00` }],
  };
  const received = Temporal.Now.instant()
    .subtract({ hours: 30 * 24 })
    .toString();
  const { job } = (await host.call('jobs.add', { facts, received })) as { job: Job };
  // Whatever day the trial runs on is priced as an ordinary one.
  await host.call('quotes.change', { jobId: job.id, draftVersion: 0, changes: [{ op: 'holidays', dates: [] }] });
  const made = await host.call('quotes.make', { jobId: job.id, jobVersion: job.version, draftVersion: 1, pencil: false });
  return (made as { job: Job }).job;
}

const billing = (page: Page) => page.getByRole('region', { name: 'Bill', exact: true });
const issuedRow = (page: Page, number: string) => billing(page).locator('details', { hasText: number });

test('the whole chain by the mouse', async ({ page }) => {
  test.setTimeout(120_000);
  const complaints = watch(page);
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  const job = await quoted('Bakers’ tasting', 1);
  const click = (name: string | RegExp): Promise<void> => page.getByRole('button', { name, exact: true }).click();
  await page.goto(host.page);
  await goTo(page, `/jobs/${job.id}`);

  await page.getByLabel('Who', { exact: true }).fill('Odile Fenn');
  await page.getByLabel('When', { exact: true }).fill(`${today().subtract({ days: 5 }).toString()}T10:15`);
  await click('Ink it');
  const agreed = page.getByRole('region', { name: 'Agreed', exact: true });
  await expect(agreed.getByText(/^Inked .*, 10:15\./)).toBeVisible();
  await expect(agreed.getByText(/Deposit USD 500\.00, 50 % of the total, .*not asked for yet/)).toBeVisible();
  const terms = page.waitForEvent('download');
  await click('Put the terms on paper');
  expect((await terms).suggestedFilename()).toBe('Terms 1, Bakers’ tasting.pdf');
  await agreed.getByLabel(/^Signed copy: drop/).setInputFiles({ name: 'signed.png', mimeType: 'image/png', buffer: PNG });
  await click('Keep the signed copy');
  await expect(agreed.getByText('signed.png', { exact: true })).toBeVisible();
  await click('Note a change that was agreed');
  await page.getByLabel('What was agreed').fill('The speeches are filmed too.');
  await click('Note it');
  await expect(agreed.getByText('The speeches are filmed too.')).toBeVisible();

  // The deposit: 500.00, paid at once.
  await billing(page).getByText('deposit', { exact: true }).click();
  await click('Issue the deposit invoice');
  const year = today().year;
  const [first, second] = [`${year}-001`, `${year}-002`];
  await expect(page.getByText(`Invoice ${first} is issued.`)).toBeVisible();
  await expect(agreed.getByText(new RegExp(`Deposit USD 500\\.00: invoice ${first}`))).toBeVisible();
  await issuedRow(page, first).locator('summary').click();
  await click(`Record a payment: ${first}`);
  await expect(page.getByLabel('What came')).toHaveValue('500.00');
  await click('Record it');
  await expect(agreed.getByText(/Deposit USD 500\.00: .*, paid\./)).toBeVisible();

  // 09:00 to 21:00 are 12 h, 2 h over at 100.00 x 1.5: 300.00. Odile said yes.
  await page
    .getByRole('button', { name: /^Enter the hours of/ })
    .first()
    .click();
  const hours = page.getByRole('form', { name: 'Hours worked' });
  await hours.getByLabel('Call', { exact: true }).fill('9:00');
  await hours.getByLabel('Wrap', { exact: true }).fill('21:00');
  await hours.getByRole('button', { name: 'Keep the hours' }).click();
  await click('Note that it was asked for');
  await page.getByLabel('How long').fill('2 h');
  await click('Keep the ask');
  await page.getByRole('button', { name: /^Note the answer to 2 h/ }).click();
  await page.getByLabel('Who answered').fill('Odile Fenn');
  await click('They said yes');

  // Parking 24.00, charged on: 1,000.00 + 300.00 + 24.00 = 1,324.00; less 500.00 leaves 824.00.
  await click('Add an expense');
  const expense = page.getByRole('form', { name: 'New expense' });
  await expense.getByLabel('What', { exact: true }).fill('Parking at the hall');
  await expense.getByLabel('Amount paid').fill('24');
  await expense.getByLabel(/^Receipt: drop/).setInputFiles({ name: 'parking.png', mimeType: 'image/png', buffer: PNG });
  await expense.getByRole('button', { name: 'Keep the expense' }).click();
  await expect(page.getByText('Parking at the hall').first()).toBeVisible();
  const bill = billing(page);
  await bill.getByText('bill at wrap', { exact: true }).click();
  await expect(bill.getByText('1,324.00', { exact: true })).toBeVisible();
  await expect(bill.getByText('824.00', { exact: true })).toBeVisible();
  await click('Issue the bill');
  await expect(page.getByText(`Invoice ${second} is issued.`)).toBeVisible();

  await issuedRow(page, second).locator('summary').click();
  await click(`Record a payment: ${second}`);
  await page.getByLabel('What came').fill('300');
  await click('Record it');
  await expect(issuedRow(page, second)).toContainText('part paid, 524.00 open');
  await click(`Remind them: ${second}`);
  await click('Copy the reminder');
  await expect(page.getByText('Copied, and noted as sent today.')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('524.00');
  await click(`Record a payment: ${second}`);
  await expect(page.getByLabel('What came')).toHaveValue('524.00');
  await click('Record it');
  await expect(issuedRow(page, second).locator('summary')).toContainText('paid');
  await expect(issuedRow(page, second).locator('summary')).not.toContainText('open');
  expect(await host.call('ledger.see')).toMatchObject({ openCount: 0 });
  expect(complaints).toEqual([]);
});

test('ink, deposit, bill and payment by the keys alone', async ({ page }) => {
  test.setTimeout(120_000);
  const job = await quoted('Members’ evening', 2);
  await page.goto(host.page);
  await goTo(page, `/jobs/${job.id}`);
  /** Tab on until something of this name has the focus: nothing is reached that the keys do not reach. */
  const reach = async (name: string): Promise<void> => {
    for (let steps = 0; steps < 250; steps += 1) {
      await page.keyboard.press('Tab');
      const here = await page.evaluate(() => {
        const at = document.activeElement;
        return (
          at?.getAttribute('aria-label') ?? (at instanceof HTMLInputElement ? (at.labels?.[0]?.textContent ?? '') : at?.textContent) ?? ''
        );
      });
      if (here.trim().startsWith(name)) return;
    }
    throw new Error(`${name} is not reached by the keys`);
  };
  const press = async (name: string): Promise<void> => {
    await reach(name);
    await page.keyboard.press('Enter');
  };

  await reach('Who');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('Odile Fenn');
  await press('Ink it');
  await expect(page.getByText(/Odile Fenn said yes by mail to version 1: USD 1,000\.00/)).toBeVisible();
  await reach('bill at wrap');
  await press('Issue the bill');
  const issued = page.getByText(/^Invoice \d{4}-\d{3} is issued\./);
  await expect(issued).toBeVisible();
  const number = /\d{4}-\d{3}/.exec((await issued.textContent()) ?? '')?.[0] ?? '';
  await press(number);
  await press(`Record a payment: ${number}`);
  await expect(page.getByLabel('What came')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByText('USD 1,000.00 is recorded.')).toBeVisible();
  await expect(issuedRow(page, number).locator('summary')).toContainText('paid');
});

test('where money goes and what is signed are set once; what cannot be is refused beside its input', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, '/setup');
  await page.getByLabel('IBAN', { exact: true }).fill('DE89 3704 0044 0532 0130 01');
  await page.getByLabel('Interest on what is paid late, a year').fill('9');
  const terms = page.getByLabel('Terms that a client signs');
  const start = await terms.inputValue();
  await terms.fill(`${start}\n\nTravel\nTravel costs {milage} extra.`);
  const save = page.getByRole('button', { name: 'Save', exact: true });
  await save.click();
  await expect(page.getByText(/IBAN was not kept: The check figures of this IBAN do not fit the rest/)).toBeVisible();
  await expect(page.getByText(/Terms that a client signs has \{milage\}, which nothing fills/)).toBeVisible();
  await page.getByLabel('IBAN', { exact: true }).fill('DE89 3704 0044 0532 0130 00');
  await terms.fill(`${start}\n\nTravel\nTravel is charged as the quote says.`);
  await save.click();
  await expect(page.getByText('Saved. New quotes use it')).toBeVisible();
  await page.reload();
  await expect(terms).toHaveValue(/Travel is charged as the quote says\.$/);
  await expect(page.getByLabel('IBAN', { exact: true })).toHaveValue('DE89 3704 0044 0532 0130 00');
  await page.getByRole('button', { name: 'Back to the starting text' }).click();
  await expect(terms).toHaveValue(start);
});
