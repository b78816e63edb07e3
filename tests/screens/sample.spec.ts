import { expect, test } from 'playwright/test';
import { startHost, type TestHost } from '../host.ts';
import { watch } from './stage.ts';

let host: TestHost;
test.beforeAll(async () => {
  host = await startHost();
});
test.afterAll(() => host.close());

test('from an empty store to the loaded Desk, to the inquiry that collides, and out again', async ({ page }) => {
  test.setTimeout(120_000);
  page.setDefaultTimeout(20_000);
  const complaints = watch(page);
  await page.goto(host.page);
  await page.getByRole('button', { name: 'Load the sample year' }).click();
  await expect(page.getByRole('status').filter({ hasText: /\d+ of \d+ steps/ })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'This is the sample year' })).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('Everybody and every business in it is invented.')).toBeVisible();
  await expect(page.locator('[data-black]')).toHaveCount(1);

  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  await page.getByRole('link', { name: 'Curling championship' }).click();
  await expect(page.getByText(/^(Free if …|Not possible)$/)).toBeVisible();
  await expect(page.getByText(/You wrap in Milwaukee on /).first()).toBeVisible();

  await page.getByRole('link', { name: 'Desk', exact: true }).click();
  await page.getByRole('button', { name: 'Leave the sample …' }).click();
  await expect(page.getByText('Everything is taken out of the store, also what you added.')).toBeVisible();
  await page.getByRole('button', { name: 'Keep it' }).click();
  await page.getByRole('button', { name: 'Leave the sample …' }).click();
  await page.getByRole('button', { name: 'Leave the sample and start anew' }).click();
  await expect(page.getByRole('heading', { name: 'Who sends the quotes, and where is home?' })).toBeVisible();
  await expect(page.getByText(/The store is empty\. What was in it is kept: npm start -- --use-snapshot \S+\.sqlite/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Load the sample year' })).toBeVisible();
  expect(complaints).toEqual([]);
});
