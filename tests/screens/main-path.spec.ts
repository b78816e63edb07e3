import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'playwright/test';
import { startHost, type TestHost } from '../host.ts';
import { ordinaryMessage, setUp, watch } from './stage.ts';

// A folder that outlives the program, since it is started twice on it.
const folder = mkdtempSync(join(tmpdir(), 'kitbound-test-'));
let empty: TestHost;
let host: TestHost;
test.beforeAll(async () => {
  empty = await startHost({ data: folder });
  host = await startHost();
  await setUp(host);
});
test.afterAll(async () => {
  await empty.close();
  await host.close();
  rmSync(folder, { recursive: true, force: true });
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
  expect(clicks).toBeLessThanOrEqual(6);
  const paper = await saved.path();
  const total = await page
    .getByText(/^Total/)
    .first()
    .locator('..')
    .textContent();
  const text = execFileSync('pdftotext', ['-layout', paper, '-'], { encoding: 'utf8' });
  expect(text).toContain('Slate & Tally Pictures');
  expect(text).toContain('Fargo');
  expect(text).toContain(/[\d,]+\.\d\d/.exec(total ?? '')?.[0] ?? 'no total on the screen');
  // Text that is read back proves nothing about what is drawn: a page of this kind has between 1 and 20 % of ink.
  const grey = execFileSync('pdftoppm', ['-gray', '-r', '50', '-singlefile', paper], { maxBuffer: 1e7 });
  const inked = grey.subarray(-400 * 500).filter((value) => value < 200).length / (400 * 500);
  expect(inked).toBeGreaterThan(0.01);
  expect(inked).toBeLessThan(0.2);

  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByRole('button', { name: 'Copy the reply' }).click();
  await expect(page.getByText('Copied. Paste it into your mail')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('Ilse');

  await page.getByLabel('Who').fill('Ilse Marrow');
  await page.getByRole('button', { name: 'Ink it' }).click();
  await expect(page.getByText(/Ilse Marrow said yes by mail to version 1: USD/)).toBeVisible();
  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  await expect(page.getByRole('row', { name: /Fargo/ })).toContainText('inked');
  expect(complaints).toEqual([]);

  // Started anew on the same folder, everything is there.
  await empty.close();
  empty = await startHost({ data: folder });
  await page.goto(empty.page);
  await page.getByRole('link', { name: 'Jobs', exact: true }).click();
  await page.getByRole('link', { name: /Fargo/ }).click();
  await expect(page.getByText(/Ilse Marrow said yes by mail to version 1: USD/)).toBeVisible();
  await expect(page.getByRole('heading', { name: /Version 1/ })).toBeVisible();
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
