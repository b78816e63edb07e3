import { expect, test } from 'playwright/test';
import { startHost, type TestHost } from '../host.ts';
import { goTo, setUp } from './stage.ts';

let host: TestHost;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
});
test.afterAll(async () => {
  await host.close();
});

test('the first start says what is missing beside its input', async ({ page }) => {
  const bare = await startHost();
  await page.goto(bare.page);
  await page.getByRole('button', { name: 'Next: what a day costs' }).click();
  await expect(page.getByText('Name on your papers is empty; give it a name.')).toBeVisible();
  await expect(page.getByText('Home is not known yet; type a town and choose it from the list.')).toBeVisible();
  await page.getByLabel('Home, where trips begin and end').pressSequentially('Qqqqzz');
  await expect(page.getByText('No town of that name is known.')).toBeVisible();
  await bare.close();
});

test('setup: the tax, the floor from my year, light and dark', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, '/setup');
  // (18,400 + 52,000 / 0.72) / 95, the figure of the rules.
  await expect(page.getByText(/^Your floor is USD 953\.92 a day: costs of/)).toBeVisible();
  await page.getByText('I am registered for sales tax or VAT').click();
  await page.getByLabel('Rate', { exact: true }).fill('seven');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText(/Rate was not read/)).toBeVisible();
  await expect(page.getByText(/Name of the tax is empty/)).toBeVisible();
  await page.getByLabel('Name of the tax').fill('Sales tax');
  await page.getByLabel('Rate', { exact: true }).fill('7.25');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByText('Saved. New quotes use it')).toBeVisible();

  await page.getByText('dark', { exact: true }).click();
  await expect(page.locator('html')).toHaveAttribute('data-look', 'dark');
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('data-look', 'dark');
});

test('a rate card is made, refused where it makes no sense, and kept', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, '/rates');
  await page.getByRole('button', { name: 'New rate card' }).click();
  await page.getByLabel('Name of the card').fill('Livestream, weekends');
  await page.getByLabel('A day', { exact: true }).fill('1 250,50');
  await page.getByLabel('Overtime, in hours past the day, row 1: From hour').fill('9');
  await page.getByRole('button', { name: 'Save the card' }).click();
  await expect(page.getByRole('alert')).toBeVisible();
  await page.getByLabel('Overtime, in hours past the day, row 1: From hour').fill('0');
  await page.getByRole('button', { name: 'Save the card' }).click();
  await expect(page.getByRole('row', { name: /Livestream, weekends/ })).toContainText('1,250.50');
});

test('without its key the page says so and asks for nothing twice', async ({ page }) => {
  await page.goto(host.address);
  await expect(page.getByRole('alert')).toContainText('key');
});

test('when the program is gone, the page says what is safe', async ({ page }) => {
  const gone = await startHost();
  await setUp(gone);
  await page.goto(gone.page);
  await page.getByRole('heading', { name: 'What bites next' }).waitFor();
  await gone.close();
  await page.getByLabel('Inquiry as it came').fill('Can you film on Monday?');
  await page.getByRole('button', { name: 'Read it' }).click();
  await expect(page.getByRole('alert')).toContainText('The program does not answer.');
  await expect(page.getByLabel('Inquiry as it came')).toHaveValue('Can you film on Monday?');
});
