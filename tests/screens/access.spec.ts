import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';

let empty: TestHost;
let full: TestHost;
let paths: string[];
/** One of each kind of page, for the narrower windows. */
let layouts: string[];
test.beforeAll(async () => {
  empty = await startHost();
  full = await startHost();
  await setUp(full);
  const { cards } = (await full.call('rates.list')) as { cards: { id: string }[] };
  const jobs = await fill(full);
  const card = `/rates/${cards[0]?.id}`;
  layouts = ['/', '/road', '/jobs', `/jobs/${jobs.inquiry.id}`, card, '/setup'];
  paths = [
    ...layouts,
    `/jobs/${jobs.ink.id}`,
    `/jobs/${jobs.pencil.id}`,
    `/jobs/${jobs.bare.id}`,
    '/rates',
    '/rates/new',
    '/people',
    '/people/bring',
    '/kit',
  ];
});
test.afterAll(async () => {
  await empty.close();
  await full.close();
});

const sizes = [
  { name: '1280 wide', width: 1280, height: 800, whole: true },
  { name: '900 wide', width: 900, height: 700, whole: false },
  // Twice the size on a screen of 1280 by 800.
  { name: 'at 200 %', width: 640, height: 400, whole: false },
];

async function look(page: Page, path: string): Promise<void> {
  await goTo(page, path);
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  expect(violations.map((each) => `${path}: ${each.id}, ${each.nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`)).toEqual([]);
  expect(await page.locator('[data-black]').count(), `black actions at ${path}`).toBeLessThanOrEqual(1);
  const wide = await page.evaluate(
    () =>
      document.documentElement.scrollWidth -
      document.documentElement.clientWidth +
      Math.max(0, ...[...document.querySelectorAll('main')].map((main) => main.scrollWidth - main.clientWidth)),
  );
  expect(wide, `sideways scroll at ${path}`).toBeLessThanOrEqual(1);
}

for (const colorScheme of ['light', 'dark'] as const) {
  for (const { name, whole, ...viewport } of sizes) {
    test(`every place, full, ${colorScheme}, ${name}`, async ({ browser }) => {
      const page = await (await browser.newContext({ viewport, colorScheme, reducedMotion: 'reduce' })).newPage();
      const complaints = watch(page);
      await page.goto(full.page);
      for (const path of whole ? paths : layouts) await look(page, path);
      expect(complaints).toEqual([]);
    });
  }
  test(`the first start, ${colorScheme}`, async ({ browser }) => {
    const page = await (await browser.newContext({ colorScheme })).newPage();
    const complaints = watch(page);
    await page.goto(empty.page);
    for (const path of ['/', '/road', '/jobs', '/rates', '/setup', '/nowhere']) await look(page, path);
    expect(complaints).toEqual([]);
  });
}

test('the Desk stands on 1280 by 800 without scrolling', async ({ page }) => {
  await page.goto(full.page);
  await page.getByRole('heading', { name: 'What bites next' }).waitFor();
  expect(await page.locator('main').evaluate((main) => main.scrollHeight - main.clientHeight)).toBeLessThanOrEqual(0);
});

test('everything can be pressed: targets are at least 24 pixels high or stand in a sentence', async ({ page }) => {
  await page.goto(full.page);
  for (const path of paths) {
    await goTo(page, path);
    // Found and measured in one step: a button that is drawn anew in between would have no height.
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('main button')]
        .filter((button) => button.checkVisibility() && button.getBoundingClientRect().height < 23.5)
        .map((button) => button.textContent),
    );
    expect(small, path).toEqual([]);
  }
});

test('with forced colours the black action and the blocks stay visible', async ({ browser }) => {
  const page = await (await browser.newContext({ forcedColors: 'active' })).newPage();
  await page.goto(full.page);
  const [ground, action] = await page
    .locator('[data-black]')
    .first()
    .evaluate((button) => [getComputedStyle(document.body).backgroundColor, getComputedStyle(button).backgroundColor]);
  expect(action).not.toBe(ground);
});
