/**
 * A message that leaves its days open, answered by its buttons; and one that asks for no work.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'playwright/test';
import type { JobRow } from '../../core/contract/jobs.ts';
import { startHost, type TestHost } from '../host.ts';
import { setUp, watch } from './stage.ts';

let host: TestHost;
test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
});
test.afterEach(() => host.close());

const listed = async () => ((await host.call('jobs.list', {})) as { jobs: JobRow[] }).jobs;

test('one of two dates is chosen by its button, and the hour that is then open by its own', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  await page
    .getByLabel('Inquiry as it came')
    .fill('Can you shoot our awards dinner in Fargo on the 12th or the 19th of March? We need you from 7. $900');
  await page.getByRole('button', { name: 'Read it', exact: true }).click();
  await expect(page.getByText('Which dates are meant?')).toBeVisible();
  await expect(page.getByText('Which last day is meant?')).toBeHidden();
  await expect(page.getByRole('button', { name: /^\w{3} 12 March \d{4}$/ })).toBeVisible();
  await page.getByRole('button', { name: /^\w{3} 12 March \d{4}$/ }).click();
  await expect(page.getByText('Which dates are meant?')).toBeHidden();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByRole('button', { name: /^\w{3} 19 March \d{4}$/ }).click();
  await expect(page.getByText('Which dates are meant?')).toBeHidden();
  await page.getByRole('button', { name: /^\w{3} 19 March \d{4}, 19:00$/ }).click();
  await expect(page.getByText(/19:00 to 05:00/)).toBeVisible();
  await expect(page.getByText(/^At what time is wrap\?/)).toBeVisible();
  await expect(page.locator('mark', { hasText: /^7$/ })).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  expect(complaints).toEqual([]);
});

test('a message that asks for no work is said to be none, and is only put on the books when that is wanted', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  const before = (await listed()).length;
  const box = page.getByLabel('Inquiry as it came');
  await box.fill('Your weekly digest: five lights that changed how we work. Unsubscribe at any time. Webinar on 12 January at 10:00.');
  await page.getByRole('button', { name: 'Read it', exact: true }).click();
  await expect(page.getByText(/^Nobody asks for work of yours in this/)).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  expect(await listed()).toHaveLength(before);
  // Other words are read again.
  await box.fill('Your weekly digest. Unsubscribe at any time.');
  await expect(page.getByRole('button', { name: 'Read it', exact: true })).toBeVisible();
  await box.press('Control+Enter');
  await page.getByRole('button', { name: 'Put it on the books all the same' }).click();
  await expect(page).toHaveURL(/#\/jobs\//);
  expect(await listed()).toHaveLength(before + 1);
  expect(complaints).toEqual([]);
});
