import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import { blankItem, blankUnit } from '../../core/kit/blank.ts';
import { blankClient, blankHand } from '../../core/people/blank.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';

let empty: TestHost;
let full: TestHost;
let paths: string[];
/** One of each kind of page, where the rest would be seen twice. */
let layouts: string[];
let ink: string;
let thing: string;

const LONG = process.env['KITBOUND_LONG'] !== undefined;

/** As long as people do call themselves and their things. */
const SIXTY = 'Northern lake harbour masters’ and pilots’ yearly gathering';

test.beforeAll(async () => {
  empty = await startHost();
  full = await startHost();
  await setUp(full);
  const { cards } = (await full.call('rates.list')) as { cards: { id: string }[] };
  const jobs = await fill(full);
  ink = jobs.ink.id;
  const contacts = [{ name: SIXTY, email: 'harbour.masters.of.the.northern.lakes@gathering.example', phone: '', what: '' }];
  const { client } = (await full.call('people.saveClient', { fields: { ...blankClient(SIXTY), contacts } })) as { client: { id: string } };
  const rates = [{ role: 'audio', dayRate: '12420.00', currency: 'USD', from: '2026-01-01' }];
  const { hand } = (await full.call('people.saveHand', { fields: { ...blankHand(SIXTY), rates } })) as { hand: { id: string } };
  const fields = { ...blankItem(SIXTY), owned: 2, units: [blankUnit('LL-77'), blankUnit('X'.repeat(40))] };
  const { item } = (await full.call('kit.save', { fields })) as { item: { id: string } };
  thing = item.id;
  const { preset } = (await full.call('kit.savePreset', { fields: { name: SIXTY, needs: [{ item: item.id, count: 1 }] } })) as {
    preset: { id: string };
  };
  await full.call('kit.setForJob', { jobId: ink, needs: [{ item: item.id, count: 2 }] });
  const card = `/rates/${cards[0]?.id}`;
  layouts = ['/', '/road', '/jobs', `/jobs/${jobs.inquiry.id}`, card, '/setup'];
  paths = [
    ...layouts,
    `/jobs/${ink}`,
    `/jobs/${jobs.pencil.id}`,
    `/jobs/${jobs.bare.id}`,
    '/rates',
    '/cannot-come',
    '/rates/new',
    '/people',
    '/people/hands',
    '/people/away',
    '/people/bring',
    '/people/new-client',
    '/people/new-hand',
    `/people/client/${client.id}`,
    `/people/hand/${hand.id}`,
    '/kit',
    '/kit/presets',
    '/kit/bring',
    '/kit/new',
    '/kit/new-preset',
    '/setup/document/new/liability%20insurance',
    `/kit/thing/${thing}`,
    `/kit/preset/${preset.id}`,
  ];
});
test.afterAll(async () => {
  await empty.close();
  await full.close();
});

const sizes = [
  { name: '1280 wide', width: 1280, height: 800 },
  { name: '900 wide', width: 900, height: 700 },
  // Twice the size on a screen of 1280 by 800.
  { name: 'at 200 %', width: 640, height: 400 },
];

async function look(page: Page, path: string, how: 'whole' | 'drawn' = 'whole'): Promise<void> {
  await goTo(page, path);
  await (how === 'whole' ? judge(page, path) : judgeDrawing(page, path));
}

/** What is on the screen now: axe has nothing to say, and it is drawn right. */
async function judge(page: Page, where: string): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  expect(violations.map((each) => `${where}: ${each.id}, ${each.nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`)).toEqual([]);
  await judgeDrawing(page, where);
}

/** One black action at most, nothing sideways, nothing cut off, figures at the right, nothing moves. */
async function judgeDrawing(page: Page, where: string): Promise<void> {
  expect(await page.locator('[data-black]').count(), `black actions at ${where}`).toBeLessThanOrEqual(1);
  expect(await page.evaluate(misdrawn), `drawn wrong at ${where}`).toEqual([]);
}

/** Runs in the page: what scrolls sideways, what cuts its words off, what moves by itself, which figures of a table are not at the right. */
function misdrawn(): string[] {
  const wide = [document.documentElement, ...document.querySelectorAll('main')].filter((each) => each.scrollWidth - each.clientWidth > 1);
  const all = [...document.querySelectorAll<HTMLElement>('main *, header *, footer *')].filter((each) => each.checkVisibility());
  const cut = all.filter((each) => {
    const { overflowX, clipPath } = getComputedStyle(each);
    const isCut = (overflowX === 'hidden' || overflowX === 'clip') && each.scrollWidth - each.clientWidth > 1;
    return isCut && clipPath === 'none' && !(each instanceof HTMLInputElement);
  });
  const figures = all.filter((each) => each.tagName === 'TD' && /^[-−]?[\d,]*\d\.\d\d$/.test(each.textContent.trim()));
  const atLeft = figures.filter((each) => !['right', 'end'].includes(getComputedStyle(each).textAlign));
  return [
    ...wide.map((each) => `${each.tagName} scrolls sideways by ${each.scrollWidth - each.clientWidth}`),
    ...cut.map((each) => `cut off: ${each.textContent.slice(0, 80)}`),
    ...atLeft.map((each) => `not at the right: ${each.textContent}`),
    ...document.getAnimations().map((each) => `moves: ${each.id}`),
  ];
}

for (const colorScheme of ['light', 'dark'] as const) {
  for (const { name, ...viewport } of sizes) {
    test(`every place, full, ${colorScheme}, ${name}`, async ({ browser }) => {
      test.setTimeout(300_000);
      const page = await (await browser.newContext({ viewport, colorScheme, reducedMotion: 'reduce' })).newPage();
      const complaints = watch(page);
      await page.goto(full.page);
      // Names, roles and colours do not change with the width: the narrow windows are judged whole for one page of each kind, all of them with LONG.
      for (const path of paths) await look(page, path, LONG || viewport.width === 1280 || layouts.includes(path) ? 'whole' : 'drawn');
      expect(complaints).toEqual([]);
    });
  }
  test(`the first start, ${colorScheme}`, async ({ browser }) => {
    test.setTimeout(120_000);
    const page = await (await browser.newContext({ colorScheme })).newPage();
    const complaints = watch(page);
    await page.goto(empty.page);
    for (const path of [
      '/',
      '/road',
      '/jobs',
      '/people',
      '/people/hands',
      '/people/away',
      '/kit',
      '/kit/presets',
      '/rates',
      '/setup',
      '/nowhere',
    ])
      await look(page, path);
    expect(complaints).toEqual([]);
  });
}

for (const { name, ...viewport } of sizes) {
  test(`forms that open on a sheet, ${name}`, async ({ browser }) => {
    test.setTimeout(180_000);
    const page = await (await browser.newContext({ viewport, reducedMotion: 'reduce' })).newPage();
    const complaints = watch(page);
    await page.goto(full.page);
    for (const opener of ['Cancel or postpone', 'Fill in what the job knows', 'Add a leg']) {
      await goTo(page, `/jobs/${ink}`);
      await page.getByRole('button', { name: opener }).first().click();
      await judge(page, opener);
    }
    await goTo(page, `/jobs/${ink}`);
    await page.getByText(/^Pack list/).click();
    await judge(page, 'the pack list');
    expect(complaints).toEqual([]);
  });
}

test('the Desk stands on 1280 by 800 without scrolling', async ({ page }) => {
  await page.goto(full.page);
  await page.getByRole('heading', { name: 'What bites next' }).waitFor();
  expect(await page.locator('main').evaluate((main) => main.scrollHeight - main.clientHeight)).toBeLessThanOrEqual(0);
});

test('only the part below the places scrolls: the frame stands still, also where the focus is in what only readers see', async ({
  page,
}) => {
  await page.goto(full.page);
  for (const path of paths) {
    await goTo(page, path);
    const tooLong = await page.evaluate(() => {
      for (const input of document.querySelectorAll<HTMLElement>('main input, main textarea')) input.focus();
      return Math.max(window.scrollY, document.documentElement.scrollHeight - window.innerHeight);
    });
    expect(tooLong, path).toBe(0);
  }
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

test('with forced colours the black action and the blocks stay visible at every place', async ({ browser }) => {
  test.setTimeout(120_000);
  const page = await (await browser.newContext({ forcedColors: 'active' })).newPage();
  await page.goto(full.page);
  let met = 0;
  for (const path of paths) {
    await goTo(page, path);
    const grounds = await page
      .locator('[data-black]:not([data-disabled])')
      .evaluateAll((all) => all.map((each) => [getComputedStyle(document.body).backgroundColor, getComputedStyle(each).backgroundColor]));
    for (const [ground, action] of grounds) expect(action, path).not.toBe(ground);
    met += grounds.length;
  }
  expect(met).toBeGreaterThan(2);
});
