import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import type { Place } from '../../core/contract/parts.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';
import { pressEnter } from './keys.ts';

let host: TestHost;
let jobs: Record<'ink' | 'pencil' | 'inquiry' | 'bare', Job>;
let camera: { id: string };
test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
  jobs = await fill(host);
  const { setup } = (await host.call('setup.get')) as { setup: { home: Place } };
  await host.call('people.saveHand', {
    fields: {
      name: 'Bo Lind',
      email: '',
      phone: '',
      rates: [{ role: 'shoot', dayRate: '400', currency: 'USD', from: '2025-01-01' }],
      home: setup.home,
      ownKit: '',
      taxForm: false,
      insuredUntil: null,
      payDays: 30,
      backup: true,
      notes: '',
    },
  });
  camera = (
    (await host.call('kit.save', { fields: { name: 'Wide camera', owned: 1, subHire: 'USD 90 a day' } })) as { item: { id: string } }
  ).item;
});
test.afterEach(async () => {
  await host.close();
});

const lift = (page: Page, name: RegExp) => page.getByRole('region', { name: /Free|Not possible/ }).getByRole('button', { name });
async function open(page: Page, job: { id: string }): Promise<void> {
  await page.goto(host.page);
  await goTo(page, `/jobs/${job.id}`);
}
const stored = async (id: string) => ((await host.call('jobs.get', { id })) as { job: Job }).job;

test('lifts are tried on together, nothing is saved, and they are taken back one by one and all', async ({ page }) => {
  const complaints = watch(page);
  await host.call('kit.setForJob', { jobId: jobs.inquiry.id, needs: [{ item: camera.id, count: 2 }] });
  const before = await stored(jobs.inquiry.id);
  await open(page, jobs.inquiry);
  await lift(page, /^Send Wide camera on by courier/).click();
  await expect(page.getByRole('heading', { name: 'Tried on, not saved' })).toBeVisible();
  await lift(page, /^Ask (for the first call at|to begin on)/).click();
  await lift(page, /^Sub-hire 1 Wide camera at USD 90 a day/).click();
  const tried = page.getByRole('list', { name: 'Tried on, not saved' });
  await expect(tried.getByRole('listitem')).toHaveCount(3);
  await expect(page.getByRole('heading', { name: 'Free', exact: true })).toBeVisible();
  await expect(page.getByText(/Wide camera: short by/)).toHaveCount(1);
  expect(await stored(jobs.inquiry.id)).toEqual(before);
  expect(await page.locator('[data-black]').count()).toBeLessThanOrEqual(1);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  await tried.getByRole('button', { name: /^Take back: Sub-hire/ }).click();
  await expect(tried.getByRole('listitem')).toHaveCount(2);
  await expect(page.getByRole('heading', { name: 'Free if …' })).toBeVisible();
  await lift(page, /^Sub-hire 1 Wide camera/).click();
  await page.getByRole('button', { name: 'Take all back' }).click();
  await expect(tried).toBeHidden();
  expect(complaints).toEqual([]);
});

test('a call that was agreed is written into the days, and taken back', async ({ page }) => {
  await open(page, jobs.inquiry);
  await lift(page, /^Ask (for the first call at|to begin on)/)
    .first()
    .click();
  await page.getByRole('button', { name: /^Agreed: write it into the days/ }).click();
  await expect(page.getByText('The days are changed.')).toBeVisible();
  expect((await stored(jobs.inquiry.id)).days[0]?.call).not.toBe(jobs.inquiry.days[0]?.call);
  await expect(page.getByRole('heading', { name: 'Tried on, not saved' })).toBeHidden();
  await page.getByRole('button', { name: 'Take it back' }).click();
  await expect.poll(async () => (await stored(jobs.inquiry.id)).days).toEqual(jobs.inquiry.days);
});

test('a sub-hire becomes a line with its cost, and so many fewer of mine are held', async ({ page }) => {
  await host.call('kit.setForJob', { jobId: jobs.inquiry.id, needs: [{ item: camera.id, count: 2 }] });
  await open(page, jobs.inquiry);
  await lift(page, /^Sub-hire 1 Wide camera/).click();
  await page.getByRole('button', { name: /^Keep it, as a cost/ }).click();
  await expect(page.getByText(/The sub-hire is a line of the quote, with its cost/)).toBeVisible();
  const { draft } = (await host.call('quotes.draft', { jobId: jobs.inquiry.id })) as {
    draft: { lines: { what: string; cost?: { minor: number } }[] };
  };
  // Five days at 90.
  expect(draft.lines.find(({ what }) => what.startsWith('Sub-hire'))?.cost?.minor).toBe(45_000);
  await expect(page.getByText(/Wide camera: short by/)).toHaveCount(0);
  await page.getByRole('button', { name: 'Take it back' }).click();
  await expect(page.getByText(/Wide camera: short by/).first()).toBeVisible();
});

test('a hand is asked for by the keyboard alone: their day and cost are said, and a message is copied', async ({ page }) => {
  const facts = { title: 'Clinic opening', place: jobs.ink.place, days: jobs.ink.days.slice(0, 1), role: 'shoot' };
  const { job } = (await host.call('jobs.add', { facts })) as { job: Job };
  await open(page, job);
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await expect(page.getByRole('heading', { name: 'Not possible' })).toBeVisible();
  await expect(lift(page, /^Decline kindly/)).toBeVisible();
  await pressEnter(lift(page, /^Ask Bo Lind to cover the shoot/));
  await expect(page.getByText(/^good to know: As if Bo Lind had said yes .* USD 400\.00\.$/)).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Free', exact: true })).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: /^Copy a message, note the ask/ })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByText(/^Copied\. Paste it into a message to Bo Lind; nothing is booked until they say yes\./)).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(
    /^Hello Bo,\n\ncould you cover the shoot in Milwaukee for me\?/,
  );
  await pressEnter(page.getByRole('button', { name: /^Take back: Ask Bo Lind/ }));
  await expect(page.getByRole('heading', { name: 'Not possible' })).toBeVisible();
});

test('a drive is tried on before it is remembered, and other dates before they are written', async ({ page }) => {
  await open(page, jobs.inquiry);
  await page.getByRole('button', { name: /^Type the real time from Milwaukee to Thunder Bay/ }).click();
  await page.getByRole('textbox', { name: 'Takes' }).fill('30 min');
  await page.getByRole('button', { name: 'Try it on' }).click();
  await expect(page.getByRole('heading', { name: 'Free', exact: true })).toBeVisible();
  expect(((await host.call('trips.ways')) as { ways: unknown[] }).ways).toEqual([]);
  await page.getByRole('button', { name: /^Remember it: Milwaukee to Thunder Bay in 30 min/ }).click();
  await expect(page.getByText('The drive is remembered')).toBeVisible();
  expect(((await host.call('trips.ways')) as { ways: unknown[] }).ways).toHaveLength(1);
});

test('a flight is tried on, kept as a typed leg, and taken back', async ({ page }) => {
  const legs = async () =>
    ((await host.call('trips.legs', { jobId: jobs.inquiry.id })) as { legs: { mode: string; source: string }[] }).legs;
  await open(page, jobs.inquiry);
  await lift(page, /^If a flight lands in Thunder Bay by/).click();
  await expect(page.getByRole('heading', { name: 'Tried on, not saved' })).toBeVisible();
  expect(await legs()).toEqual([]);
  await page.getByRole('button', { name: /^Keep it on the trip/ }).click();
  await expect(page.getByText('The flight is on the trip as typed; put in its real times.')).toBeVisible();
  expect(await legs()).toMatchObject([{ mode: 'flight', source: 'typed' }]);
  await page.getByRole('button', { name: 'Take it back' }).click();
  await expect.poll(legs).toEqual([]);
});
