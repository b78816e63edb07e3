/**
 * The first three moments of a job, once by the mouse and once by the keys alone: an inquiry lands, the client says yes, the night before.
 * What a person presses is counted in the page; how much is the most that each may take stands beside it. Text that is pasted is one press.
 */
import { expect, test, type Page } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, ordinaryMessage, setUp, watch } from './stage.ts';

let host: TestHost;
test.beforeEach(async ({ page }) => {
  host = await startHost();
  await setUp(host);
  await page.addInitScript(() => {
    const counted = { clicks: 0, keys: 0 };
    Object.assign(window, { counted });
    window.addEventListener('click', ({ detail, isTrusted }) => (counted.clicks += isTrusted && detail > 0 ? 1 : 0), true);
    window.addEventListener('keydown', ({ key }) => (counted.keys += /^(Control|Alt|Shift|Meta)$/.test(key) ? 0 : 1), true);
  });
});
test.afterEach(async () => {
  await host.close();
});

type Counted = { clicks: number; keys: number };
const counted = (page: Page): Promise<Counted> => page.evaluate(() => (window as unknown as { counted: Counted }).counted);

/** Press Tab until something of this name has the focus: what the keys do not reach is not there for whoever has only them. */
async function reach(page: Page, name: RegExp): Promise<void> {
  for (let steps = 0; steps < 120; steps += 1) {
    const here = await page.evaluate(() => {
      const at = document.activeElement;
      return (at instanceof HTMLInputElement ? at.labels?.[0]?.textContent : at?.textContent) ?? '';
    });
    if (name.test(here.trim())) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`${String(name)} is not reached by the keys`);
}

/** An action by the find box. */
async function act(page: Page, words: string, label: RegExp): Promise<void> {
  await page.keyboard.press('Escape');
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await page.keyboard.press('/');
  await page.keyboard.type(words);
  await expect(page.getByRole('option', { name: label }).first()).toBeVisible();
  await page.keyboard.press('Enter');
}

async function withKit(): Promise<Job> {
  const { ink } = await fill(host);
  const { item } = (await host.call('kit.save', { fields: { name: 'Small battery', owned: 8 } })) as { item: { id: string } };
  await host.call('kit.setForJob', { jobId: ink.id, needs: [{ item: item.id, count: 6 }] });
  return ink;
}

test.describe('an inquiry lands', () => {
  test('by the mouse: read, quoted and on paper in 3 clicks', async ({ page }) => {
    const complaints = watch(page);
    await page.goto(host.page);
    await page.getByLabel('Inquiry as it came').fill(ordinaryMessage());
    await page.getByRole('button', { name: 'Read it' }).click();
    await page.getByRole('button', { name: 'Make the quote, pencil it' }).click();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the PDF' }).click();
    expect((await saving).suggestedFilename()).toMatch(/\.pdf$/);
    expect((await counted(page)).clicks).toBe(3);
    expect(complaints).toEqual([]);
  });
  test('by the keys', async ({ page }) => {
    await page.goto(host.page);
    await page.getByLabel('Inquiry as it came').focus();
    await page.keyboard.insertText(ordinaryMessage());
    await page.keyboard.press('Control+Enter');
    await expect(page.getByRole('heading', { name: 'Free', exact: true })).toBeVisible();
    await act(page, 'make', /Make the quote, pencil it/);
    await expect(page.getByRole('heading', { name: /Version 1 is made/ })).toBeVisible();
    const saving = page.waitForEvent('download');
    await act(page, 'save the', /Save the PDF/);
    expect((await saving).suggestedFilename()).toMatch(/\.pdf$/);
    const { keys, clicks } = await counted(page);
    expect(clicks).toBe(0);
    expect(keys).toBeLessThanOrEqual(25);
  });
});

test.describe('the client says yes', () => {
  test('by the mouse: inked in one click', async ({ page }) => {
    const { pencil } = await fill(host);
    await page.goto(host.page);
    await goTo(page, `/jobs/${pencil.id}`);
    await page.getByLabel('Who', { exact: true }).fill('Odile Fenn');
    await page.getByRole('button', { name: 'Ink it' }).click();
    await expect(page.getByText(/Odile Fenn said yes by mail/)).toBeVisible();
    expect((await counted(page)).clicks).toBe(1);
  });
  test('by the keys', async ({ page }) => {
    const { pencil } = await fill(host);
    await page.goto(host.page);
    await goTo(page, `/jobs/${pencil.id}`);
    await reach(page, /^Who$/);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('Odile Fenn');
    await reach(page, /^Ink it$/);
    await page.keyboard.press('Enter');
    await expect(page.getByText(/Odile Fenn said yes by mail/)).toBeVisible();
    expect((await counted(page)).clicks).toBe(0);
  });
});

test.describe('the night before', () => {
  test('by the mouse: all of it is packed in 2 clicks, one thing taken out again in a third', async ({ page }) => {
    const ink = await withKit();
    await page.goto(host.page);
    await goTo(page, `/jobs/${ink.id}`);
    const pack = page.getByRole('region', { name: 'Pack list' });
    await pack.getByText('Pack list: nothing is packed yet').click();
    await pack.getByRole('button', { name: 'All of it is packed' }).click();
    await expect(pack.getByText('Pack list: 6 × Small battery out')).toBeVisible();
    await pack.getByText('Small battery is out').click();
    await expect(pack.getByText('Pack list: nothing is packed yet')).toBeVisible();
    expect((await counted(page)).clicks).toBeLessThanOrEqual(4);
  });
  test('by the keys', async ({ page }) => {
    const ink = await withKit();
    await page.goto(host.page);
    await goTo(page, `/jobs/${ink.id}`);
    const pack = page.getByRole('region', { name: 'Pack list' });
    await reach(page, /^Pack list: nothing is packed yet/);
    await page.keyboard.press('Enter');
    await reach(page, /^All of it is packed$/);
    await page.keyboard.press('Enter');
    await expect(pack.getByText('Pack list: 6 × Small battery out')).toBeVisible();
    await reach(page, /^Small battery is out$/);
    await page.keyboard.press('Space');
    await expect(pack.getByText('Pack list: nothing is packed yet')).toBeVisible();
    expect((await counted(page)).clicks).toBe(0);
  });
});
