import { readFileSync } from 'node:fs';
import { expect, test } from 'playwright/test';
import { startHost, type TestHost } from '../host.ts';
import { ordinaryMessage, setUp, watch } from './stage.ts';

let empty: TestHost;
let host: TestHost;
test.beforeAll(async () => {
  empty = await startHost();
  host = await startHost();
  await setUp(host);
});
test.afterAll(async () => {
  await empty.close();
  await host.close();
});

test('from an empty store to a PDF: set up, paste, answer, quote, ink', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(empty.page);
  await expect(page).toHaveURL(/#\/$/);

  await page.getByLabel('Name on your papers').fill('Slate & Tally Pictures');
  await page.getByLabel('Home, where trips begin and end').pressSequentially('Dulu');
  await page.getByRole('option', { name: /^Duluth Minnesota/ }).click();
  await expect(page.getByText('Clock of America/Chicago')).toBeVisible();
  await page.getByRole('button', { name: 'Next: what a day costs' }).click();
  await page.getByLabel('A day', { exact: true }).fill('1.2k');
  await page.getByRole('button', { name: 'Open the Desk' }).click();

  let clicks = 0;
  const click = async (name: string): Promise<void> => {
    clicks += 1;
    await page.getByRole('button', { name, exact: true }).click();
  };
  await page.getByLabel('Inquiry as it came').fill(ordinaryMessage());
  await click('Read it');
  await expect(page.getByRole('heading', { name: 'Free', exact: true })).toBeVisible();
  await expect(page.locator('mark', { hasText: 'Fargo' })).toBeVisible();
  await expect(page.getByText('Fargo, North Dakota, US')).toBeVisible();
  await click('Make the quote, pencil it');
  await expect(page.getByRole('heading', { name: /Version 1 is made/ })).toBeVisible();
  const saving = page.waitForEvent('download');
  await click('Save the PDF');
  const saved = await saving;
  expect(saved.suggestedFilename()).toMatch(/\.pdf$/);
  expect(
    readFileSync(await saved.path())
      .subarray(0, 5)
      .toString(),
  ).toBe('%PDF-');
  expect(clicks).toBeLessThanOrEqual(6);

  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByRole('button', { name: 'Copy the reply' }).click();
  await expect(page.getByText('Copied. Paste it into your mail')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('Ilse');

  await page.getByLabel('Who').fill('Ilse Marrow');
  await page.getByRole('button', { name: 'Ink it' }).click();
  await expect(page.getByText('Ilse Marrow said yes by mail.')).toBeVisible();
  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  await expect(page.getByRole('row', { name: /Fargo/ })).toContainText('inked');
  expect(complaints).toEqual([]);
});

test('a polite no is one click, and can be taken back', async ({ page }) => {
  await page.goto(host.page);
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByLabel('Inquiry as it came').fill(ordinaryMessage().replace('Ilse', 'Anouk'));
  await page.keyboard.press('Control+Enter');
  await page.getByRole('button', { name: 'Decline kindly' }).click();
  await expect(page.getByText(/Declined\. A kind reply is on the clipboard/)).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/Anouk/);
  await page.getByRole('button', { name: 'Take it back' }).click();
  await expect(page.getByRole('button', { name: 'Decline kindly' })).toBeVisible();
});
