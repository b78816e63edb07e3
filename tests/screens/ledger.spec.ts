/**
 * The Ledger on the screen: empty and with eight months of books, by the mouse and by the keys alone.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import { startHost, type TestHost } from '../host.ts';
import { fillBooks } from './books.ts';
import { goTo, setUp, watch } from './stage.ts';

const PAGES = ['/ledger', '/ledger/earned', '/ledger/year', '/ledger/logs'];

async function troubleOf(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
}

test.describe('with nothing in it', () => {
  let host: TestHost;
  test.beforeAll(async () => {
    host = await startHost();
    await setUp(host);
  });
  test.afterAll(async () => {
    await host.close();
  });

  test('every page says what will stand there', async ({ page }) => {
    const complaints = watch(page);
    await page.goto(host.page);
    for (const path of PAGES) {
      await goTo(page, path);
      await expect(page.getByRole('heading', { level: 1, name: 'Ledger' })).toBeVisible();
      await page.waitForLoadState('networkidle');
      expect(await troubleOf(page)).toEqual([]);
    }
    await goTo(page, '/ledger');
    await expect(page.getByText(/^Nobody owes you anything/)).toBeVisible();
    expect(complaints).toEqual([]);
  });
});

test.describe('with eight months of books', () => {
  let host: TestHost;
  let data: string;
  test.beforeEach(async () => {
    data = mkdtempSync(join(tmpdir(), 'kitbound-test-'));
    await fillBooks(data);
    host = await startHost({ data });
  });
  test.afterEach(async () => {
    await host.close();
    rmSync(data, { recursive: true, force: true });
  });

  test('from what is late to a payment, by the mouse', async ({ page }) => {
    const complaints = watch(page);
    await page.goto(host.page);
    await goTo(page, '/ledger');
    const invoices = page.getByRole('region', { name: 'Invoices' });
    await expect(invoices.getByRole('row')).toHaveCount(7);
    // 800.00 of the lecture, 4,994.65 in dispute, 1,200.00 of the opening and EUR 700.00 are late.
    await expect(page.getByText('USD 6,994.65')).toBeVisible();
    await expect(page.getByRole('table', { name: 'What is open by age, EUR' })).toContainText('700.00');
    await invoices.getByRole('searchbox').fill('opening');
    await expect(invoices.getByRole('row')).toHaveCount(2);
    await invoices.getByRole('button', { name: /^Remind them/ }).click();
    await expect(page.getByRole('heading', { level: 1, name: /Harbour Dental$/ })).toBeVisible();
    await page.getByRole('button', { name: /^Record a payment/ }).click();
    await page.getByRole('button', { name: 'Record it' }).click();
    await expect(page.getByText('USD 1,200.00 is recorded.')).toBeVisible();
    await page.getByRole('link', { name: 'All invoices' }).click();
    await expect(invoices.getByRole('row')).toHaveCount(6);
    await expect(page.getByText('USD 5,794.65').first()).toBeVisible();
    await invoices.getByLabel('As of').fill('2020-01-01');
    await expect(invoices.getByText(/^Nobody owes you anything/)).toBeVisible();
    expect(complaints).toEqual([]);
  });

  test('by the keys alone to the year and a table on disk; no page has trouble for those who cannot see it', async ({ page }) => {
    const complaints = watch(page);
    await page.goto(host.page);
    await expect(page.getByText(/^Kept per hour away, last 5 jobs$/)).toBeVisible();
    await page.keyboard.press('Alt+7');
    const parts = page.getByRole('radiogroup', { name: 'Part of the ledger' });
    await parts.getByRole('radio', { name: 'owed to me' }).focus();
    await page.keyboard.press('ArrowRight');
    await expect(page.getByText('64.00 of expenses was not charged on.')).toBeVisible();
    await page.keyboard.press('ArrowRight');
    await expect(page.getByRole('region', { name: /^To set aside of/ })).toBeVisible();
    await page.keyboard.press('ArrowRight');
    const save = page.getByRole('button', { name: 'Save invoices as CSV' });
    await save.focus();
    const [file] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
    expect(readFileSync(await file.path(), 'utf8')).toMatch(/^\ufeffNumber,Kind,/);
    for (const path of PAGES) {
      await goTo(page, path);
      await page.waitForLoadState('networkidle');
      expect(await troubleOf(page)).toEqual([]);
    }
    expect(complaints).toEqual([]);
  });
});
