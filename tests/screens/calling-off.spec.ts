import { expect, test } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';

let host: TestHost;
let ink: Job;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  ({ ink } = await fill(host));
});
test.afterAll(async () => {
  await host.close();
});
const stored = async (): Promise<Job> => ((await host.call('jobs.get', { id: ink.id })) as { job: Job }).job;

test('what a calling off owes is shown before it is saved; it is done, and taken back', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  await goTo(page, `/jobs/${ink.id}`);
  await page.getByRole('button', { name: 'Cancel or postpone' }).click();
  const form = page.getByRole('form', { name: 'Cancel or postpone' });
  const figure = (name: RegExp) => form.locator('dt', { hasText: name }).locator('xpath=following-sibling::dd[1]');
  // Five days before first call half of what the frozen version has as its base is owed.
  const base = ((await host.call('quotes.versions', { jobId: ink.id })) as { versions: { draft: { cancelBase: { minor: number } } }[] })
    .versions[0]?.draft.cancelBase.minor;
  const inText = (minor: number): string => (minor / 100).toLocaleString('en-US', { minimumFractionDigits: 2 });
  expect(base).toBeGreaterThan(0);
  await expect(figure(/50 % of/)).toHaveText(inText((base ?? 0) / 2));

  await form.getByLabel('Costs already bound').fill('120.50');
  await form.getByLabel('Deposit already paid').fill('500');
  await expect(figure(/Still owed USD/)).toHaveText(inText((base ?? 0) / 2 + 12_050 - 50_000));
  await expect(form.getByText('Whether tax is due on it is for your tax adviser to say.')).toBeVisible();
  expect((await stored()).state).toBe('inked');

  await form.getByLabel('Costs already bound').fill('much');
  await expect(form.getByText(/Costs already bound was not read/)).toBeVisible();
  await form.getByLabel('Costs already bound').fill('');

  await form.getByText('postpone to a date').click();
  await expect(figure(/25 % of/)).toHaveText(inText((base ?? 0) / 4));
  await form.getByRole('button', { name: 'Postpone the job' }).click();
  await expect(form.getByText(/New first date is missing/)).toBeVisible();
  expect((await stored()).days).toEqual(ink.days);

  const to = Temporal.Now.plainDateISO('America/Chicago').add({ days: 60 }).toString();
  await form.getByLabel('New first date').fill(to);
  await form.getByRole('button', { name: 'Postpone the job' }).click();
  await expect(page.getByRole('strong').filter({ hasText: /Postponed from .* It owes USD/ })).toBeVisible();
  expect((await stored()).days[0]?.date).toBe(to);
  await page.getByRole('button', { name: 'Take the postponement back' }).click();
  await expect.poll(async () => (await stored()).days).toEqual(ink.days);

  await page.getByRole('button', { name: 'Cancel or postpone' }).click();
  await form.getByRole('button', { name: 'Cancel the job' }).click();
  await expect(page.getByRole('strong').filter({ hasText: /Cancelled, first call was on .* It owes USD/ })).toBeVisible();
  expect((await stored()).state).toBe('cancelled');
  await page.getByRole('button', { name: 'Take the cancellation back' }).click();
  await expect.poll(async () => (await stored()).state).toBe('inked');
  expect(complaints).toEqual([]);
});
