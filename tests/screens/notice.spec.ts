import { expect, test } from 'playwright/test';
import type { RateCard } from '../../core/contract/rates.ts';
import { startHost, type TestHost } from '../host.ts';
import { goTo, setUp, watch } from './stage.ts';

let host: TestHost;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
});
test.afterAll(async () => {
  await host.close();
});

test('a card counts the notice of a cancellation in business days once that is chosen', async ({ page }) => {
  const complaints = watch(page);
  const { cards } = (await host.call('rates.list')) as { cards: RateCard[] };
  await page.goto(host.page);
  await goTo(page, `/rates/${cards[0]?.id}`);
  await page.getByRole('button', { name: /Notice is counted/ }).click();
  await page.getByRole('option', { name: /in business days/ }).click();
  await expect(page.getByRole('button', { name: /Notice is counted/ })).toContainText('in business days');
  await expect(page.getByText('Every 24 hours of a step count as one business day at home.')).toBeVisible();
  await page.getByRole('button', { name: /^Save/ }).first().click();
  await expect.poll(async () => ((await host.call('rates.list')) as { cards: RateCard[] }).cards[0]?.terms.cancelBy).toBe('business days');
  expect(complaints).toEqual([]);
});
