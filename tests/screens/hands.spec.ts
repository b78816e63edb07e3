/**
 * Hands on a job's sheet, and the page for the day on which I cannot come.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'playwright/test';
import type { HandOnJob } from '../../core/contract/hands.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { blankHand } from '../../core/people/blank.ts';
import { startHost, type TestHost } from '../host.ts';
import { pressEnter } from './keys.ts';
import { fill, goTo, setUp, watch } from './stage.ts';

let host: TestHost;
let ink: Job;
test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
  ({ ink } = await fill(host));
  const { setup } = (await host.call('setup.get')) as { setup: { home: object } };
  const rates = ['shoot', 'vision mixing'].map((role) => ({ role, dayRate: '400', currency: 'USD', from: '2025-01-01' }));
  await host.call('people.saveHand', { fields: { ...blankHand('Bo Lind'), home: setup.home, rates, backup: true } });
});
test.afterEach(async () => {
  await host.close();
});
const onJob = async () => ((await host.call('hands.of', { jobId: ink.id })) as { hands: HandOnJob[] }).hands;

test('a hand is asked by the keys, says yes, and the yes is taken back', async ({ page }) => {
  const complaints = watch(page);
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(host.page);
  await goTo(page, `/jobs/${ink.id}`);
  const part = page.getByRole('region', { name: 'Hands' });
  await expect(part.getByText('Nobody was asked; every day is mine.')).toBeVisible();
  await pressEnter(part.getByRole('button', { name: 'Ask a hand' }));
  await pressEnter(part.getByRole('button', { name: 'Copy the message, note the ask' }));
  await expect(page.getByText(/^Copied\. Paste it into a message to Bo Lind/)).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/^Hello Bo,\n\ncould you cover /);
  await expect(part.getByText(/^asked /)).toBeVisible();
  expect((await onJob())[0]?.dates.map(({ state }) => state)).toEqual(ink.days.map(() => 'asked'));

  await part.getByRole('button', { name: /^They said yes: Bo Lind/ }).click();
  await expect(part.getByText(/^said yes /)).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByRole('button', { name: 'Take it back' }).click();
  await expect(part.getByText(/^asked /)).toBeVisible();
  await part.getByRole('button', { name: /^They said no: Bo Lind/ }).click();
  await expect(part.getByText(/^said no /)).toBeVisible();
  expect(complaints).toEqual([]);
});

test('I cannot come: what is held, who could take over, and a message to each', async ({ page }) => {
  const complaints = watch(page);
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(host.page);
  await goTo(page, `/jobs/${ink.id}`);
  await page.getByRole('region', { name: 'Hands' }).getByRole('link', { name: 'I cannot come' }).click();
  const held = page.getByRole('region', { name: ink.title });
  await expect(held.getByText('Bo Lind backup')).toBeVisible();
  await expect(held.getByText(/^Free by what is on file/)).toBeVisible();
  await page.getByRole('button', { name: `Copy the message to the client of ${ink.title}` }).click();
  await expect(page.getByText('Copied. Nothing was sent.')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain(`I cannot come to ${ink.title} on `);
  expect(await onJob()).toEqual([]);
  await held.getByRole('button', { name: /^Copy the message, note the ask: Bo Lind/ }).click();
  await expect(held.getByText(/asked already/)).toBeVisible();
  expect((await onJob())[0]?.dates[0]?.state).toBe('asked');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  await page.getByLabel('Last day').fill('2020-01-01');
  await expect(page.getByText(/is before the first day/)).toBeVisible();
  expect(complaints.filter((line) => !line.includes('400'))).toEqual([]);
});
