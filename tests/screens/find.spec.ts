import { expect, test, type Page } from 'playwright/test';
import { AxeBuilder } from '@axe-core/playwright';
import { blankItem, blankUnit } from '../../core/kit/blank.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, setUp, watch } from './stage.ts';

let host: TestHost;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  await fill(host);
  await host.call('kit.save', { fields: { ...blankItem('Long lens'), units: [blankUnit('LL-77')] } });
});
test.afterAll(async () => {
  await host.close();
});

async function typed(page: Page, text: string): Promise<void> {
  await page.keyboard.press('/');
  await page.keyboard.insertText(text);
}

test('a slip of the fingers still finds the job; the words that were met are marked', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  await page.getByRole('heading', { name: 'What bites next' }).waitFor();
  await typed(page, 'robtoics');
  const option = page.getByRole('option', { name: /Robotics league final/ });
  await expect(option.first().locator('mark').first()).toHaveText('Robotics');
  // While the list is open the rest of the page is taken from screen readers, which is what the list is looked at by itself for.
  const { violations } = await new AxeBuilder({ page })
    .include('[role=listbox]')
    .include('[role=combobox]')
    .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
    .analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'Robotics league final' })).toBeVisible();
  expect(complaints).toEqual([]);
});

test('a serial opens its thing; Enter right after the last letter opens what belongs to the whole word', async ({ page }) => {
  await page.goto(host.page);
  await page.getByRole('heading', { name: 'What bites next' }).waitFor();
  await page.keyboard.press('/');
  await page.keyboard.type('ll-77');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/#\/kit\/thing\//);
  await expect(page.getByRole('heading', { level: 1, name: 'Long lens' })).toBeVisible();
});

test('Escape leaves nothing typed; what nothing holds says so; signs are only signs', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  await page.getByRole('heading', { name: 'What bites next' }).waitFor();
  for (const text of ['zzzzqq', '"; * NEAR(', 'x'.repeat(10_000)]) {
    await typed(page, text);
    await expect(page.getByText('Nothing holds these words')).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(page.getByRole('listbox')).toHaveCount(0);
    await expect(page.getByLabel(/^Find a job/)).toHaveValue('');
    await page.locator('main').focus();
  }
  expect(complaints).toEqual([]);
});
