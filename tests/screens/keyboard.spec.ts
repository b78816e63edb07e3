import { expect, test } from 'playwright/test';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, ordinaryMessage, setUp } from './stage.ts';
import { pressEnter } from './keys.ts';

let host: TestHost;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  await fill(host);
});
test.afterAll(async () => {
  await host.close();
});

test('the find box opens a job and does an action', async ({ page }) => {
  await page.goto(host.page);
  await page.getByRole('heading', { name: 'What bites next' }).waitFor();
  await page.keyboard.press('/');
  await page.keyboard.type('robot');
  await page
    .getByRole('option', { name: /Robotics league final/ })
    .first()
    .waitFor();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Robotics league final', level: 1 })).toBeVisible();

  await page.getByLabel(/^Find a job/).focus();
  await page.keyboard.type('snapshot');
  await page.getByRole('option', { name: /Snapshot now/ }).waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page.getByText(/Snapshot .* is written and checked/)).toBeVisible();
});

test('places by Alt and a figure; a key in a text box types', async ({ page }) => {
  await page.goto(host.page);
  const links = page.getByRole('navigation', { name: 'Places' }).getByRole('link');
  await links.first().waitFor();
  for (const [index, title] of (await links.allTextContents()).entries()) {
    await page.keyboard.press(`Alt+${index + 1}`);
    await expect(page).toHaveTitle(`${title} · Kitbound`);
  }
  await page.keyboard.press('Alt+1');
  await page.getByLabel('Inquiry as it came').focus();
  await page.keyboard.type('a/b');
  await expect(page.getByLabel('Inquiry as it came')).toHaveValue('a/b');
});

test('the single key can be switched off', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, '/setup');
  await page.getByText(/^Single keys work/).click();
  await page.locator('h2', { hasText: 'Cautions' }).click();
  await page.keyboard.press('/');
  await expect(page.getByLabel(/^Find a job/)).not.toBeFocused();
});

test('the skip link leads into the page', async ({ page }) => {
  await page.goto(host.page);
  await page.getByRole('heading', { name: 'What bites next' }).waitFor();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the page' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('main')).toBeFocused();
});

test('the road moves and zooms by its keys', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, '/road');
  await page.getByText('Height is distance from home').waitFor();
  const before = await page.getByRole('heading', { level: 1 }).textContent();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('heading', { level: 1 })).not.toHaveText(before ?? '');
  await page.keyboard.press('+');
  await expect(page.getByRole('radio', { name: 'week' })).toBeChecked();
  await page.keyboard.press('Home');
  await expect(page.getByRole('button', { name: 'Today' })).toBeDisabled();
});

test('paste to PDF without a mouse', async ({ page }) => {
  await page.goto(host.page);
  await page.getByLabel('Inquiry as it came').focus();
  await page.keyboard.insertText(ordinaryMessage());
  await page.keyboard.press('Control+Enter');
  await pressEnter(page.getByRole('button', { name: 'Make the quote, pencil it' }));
  await expect(page.getByRole('heading', { name: /Version 1 is made/ })).toBeVisible();
  const saving = page.waitForEvent('download');
  await pressEnter(page.getByRole('button', { name: 'Save the PDF' }));
  expect((await saving).suggestedFilename()).toMatch(/\.pdf$/);
});
