/** The Road by mouse, by touch and by keys alone, and on paper. */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';
import { pressEnter } from './keys.ts';

let host: TestHost;
let inquiry: Job;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  const jobs = await fill(host);
  inquiry = jobs.inquiry;
  const item = async (name: string, owned: number): Promise<string> =>
    ((await host.call('kit.save', { fields: { name, owned } })) as { item: { id: string } }).item.id;
  const [set, mics] = [await item('Camera set', 1), await item('Transmitter', 4)];
  const needs = (count: number) => [
    { item: set, count: 1 },
    { item: mics, count },
  ];
  await host.call('kit.setForJob', { jobId: jobs.ink.id, needs: needs(4) });
  await host.call('kit.setForJob', { jobId: inquiry.id, needs: needs(2) });
  const day = Temporal.Now.plainDateISO('America/Chicago').add({ days: 11 }).toString();
  const { setup } = (await host.call('setup.get')) as { setup: { home: object } };
  const days = [{ date: day, kind: 'edit', call: `${day}T09:00`, wrap: `${day}T15:00` }];
  const { job } = (await host.call('jobs.add', { facts: { title: 'Harbour film', place: setup.home, days } })) as { job: Job };
  await host.call('jobs.pencil', { id: job.id, version: job.version });
});
test.afterAll(async () => {
  await host.close();
});

const storedDays = async (): Promise<string[]> =>
  ((await host.call('jobs.get', { id: inquiry.id })) as { job: Job }).job.days.map(({ date }) => date);
const drawing = (page: Page) => page.getByRole('img', { name: /^Stringline/ });
const findings = (page: Page) => page.getByRole('list', { name: 'What the answer says' });
const title = (page: Page) => page.getByRole('heading', { level: 1 });

async function openRoad(page: Page): Promise<void> {
  await page.goto(host.page);
  await goTo(page, '/road');
  await drawing(page).waitFor();
}

async function layOn(page: Page): Promise<void> {
  await page.getByRole('button', { name: /Lay an inquiry on/ }).click();
  await page.getByRole('option', { name: 'Laid on: Curling championship' }).click();
  await page.getByRole('region', { name: 'Laid on' }).waitFor();
  await expect(page.locator('[data-laid]')).toHaveCount(5);
}

test('kit and edit hours stand below, with what they are of, and in the tables', async ({ page }) => {
  await openRoad(page);
  await expect(drawing(page).getByText('Camera set, 4 of 4 Transmitter', { exact: true })).toBeVisible();
  await expect(drawing(page).getByText('of 10 a day')).toBeVisible();
  await page.getByText('The same as a table').click();
  await expect(page.getByRole('table', { name: /^Kit out/ }).getByRole('row', { name: /Camera set, 4 of 4 Transmitter/ })).toBeVisible();
  await expect(page.getByRole('table', { name: 'Edit hours, of 10 a day' }).getByRole('row', { name: /Harbour film 6 h/ })).toBeVisible();
});

test('the wheel moves; with Ctrl it zooms about the pointer; dragging the ground moves', async ({ page }) => {
  await openRoad(page);
  const before = await title(page).textContent();
  const box = (await drawing(page).boundingBox())!;
  await page.mouse.move(box.x + 200, box.y + 200);
  await page.mouse.wheel(0, 400);
  await expect(title(page)).not.toHaveText(before ?? '');
  await expect(page.getByRole('radio', { name: 'fortnight' })).toBeChecked();

  const moved = await title(page).textContent();
  await page.mouse.down();
  await page.mouse.move(box.x + 600, box.y + 210, { steps: 5 });
  await page.mouse.up();
  await expect(title(page)).not.toHaveText(moved ?? '');

  await page.keyboard.down('Control');
  for (let turn = 0; turn < 4; turn += 1) await page.mouse.wheel(0, -100);
  await page.keyboard.up('Control');
  await expect(page.getByRole('radio', { checked: true })).toHaveCount(0);
  // Closer than three days the hours are written.
  for (let turn = 0; turn < 8; turn += 1) await page.keyboard.press('+');
  await expect(
    drawing(page)
      .getByText(/^(09|12|15):00$/)
      .first(),
  ).toBeVisible();
  await page.getByText('year', { exact: true }).click();
  await expect(page.getByRole('radio', { name: 'year' })).toBeChecked();
});

test('what is laid on is dragged, the answer follows, nothing is saved before it is kept, and it can be taken back', async ({ page }) => {
  const complaints = watch(page);
  await openRoad(page);
  const asked = await storedDays();
  await layOn(page);
  const part = page.getByRole('region', { name: 'Laid on' });
  await expect(part).toContainText('as asked for');
  await expect(findings(page)).toContainText('You wrap in Milwaukee');
  await expect(drawing(page).getByText(/of editing lose their day/)).toBeVisible();

  const hold = (await page.locator('[data-laid]').first().boundingBox())!;
  const next = (await page.locator('[data-laid]').nth(1).boundingBox())!;
  await page.mouse.move(hold.x + hold.width / 2, hold.y + 6);
  await page.mouse.down();
  await page.mouse.move(hold.x + hold.width / 2 + 15 * (next.x - hold.x), hold.y + 6, { steps: 12 });
  await page.mouse.up();
  await expect(part).toContainText('15 days later, not saved');
  await expect(findings(page)).not.toContainText('You wrap in Milwaukee');
  expect(await storedDays()).toEqual(asked);

  await page.getByRole('button', { name: 'Put back' }).click();
  await expect(part).toContainText('as asked for');
  await expect(findings(page)).toContainText('You wrap in Milwaukee');

  await page.getByRole('button', { name: 'A day later' }).click();
  await expect(part).toContainText('1 day later, not saved');
  await page.getByRole('button', { name: 'Keep these days' }).click();
  await expect(page.getByText(/^Curling championship is now on/)).toBeVisible();
  await expect(part).toContainText('as asked for');
  expect(await storedDays()).toEqual(asked.map((date) => Temporal.PlainDate.from(date).add({ days: 1 }).toString()));
  await page.getByRole('button', { name: 'Back to the days before' }).click();
  await expect.poll(storedDays).toEqual(asked);
  expect(complaints).toEqual([]);
});

test('the same by keys alone', async ({ page }) => {
  await openRoad(page);
  const asked = await storedDays();
  await pressEnter(page.getByRole('button', { name: /Lay an inquiry on/ }));
  await page.getByRole('option', { name: 'Laid on: Curling championship' }).waitFor();
  await page.keyboard.type('Laid on: Curl');
  await page.keyboard.press('Enter');
  const part = page.getByRole('region', { name: 'Laid on' });
  await part.waitFor();
  for (const key of ['Alt+ArrowRight', 'Alt+ArrowRight', 'Alt+ArrowLeft', 'Alt+ArrowLeft', 'Alt+ArrowLeft']) await page.keyboard.press(key);
  await expect(part).toContainText('1 day earlier, not saved');
  // Far away it stays in sight.
  for (let day = 0; day < 12; day += 1) await page.keyboard.press('Alt+ArrowRight');
  await expect(page.locator('[data-laid]').first()).toBeInViewport();
  for (let day = 0; day < 12; day += 1) await page.keyboard.press('Alt+ArrowLeft');
  await expect(part).toContainText('1 day earlier, not saved');
  await pressEnter(page.getByRole('button', { name: 'Keep these days' }));
  await expect(page.getByText(/^Curling championship is now on/)).toBeVisible();
  await page.keyboard.press('Alt+ArrowRight');
  await page.getByRole('button', { name: 'Keep these days' }).press('Enter');
  await expect.poll(storedDays).toEqual(asked);
});

test('days that cannot be are refused in words; what was drawn stays, and a day further is taken', async ({ page }) => {
  const { setup } = (await host.call('setup.get')) as { setup: { home: object } };
  // The clock in Chicago jumps over 02:00 to 03:00 on 14 March 2027.
  const days = [{ date: '2027-03-13', kind: 'shoot', call: '2027-03-13T02:30', wrap: '2027-03-13T09:00' }];
  await host.call('jobs.add', { facts: { title: 'Before dawn', place: setup.home, days } });
  await openRoad(page);
  await page.getByRole('button', { name: /Lay an inquiry on/ }).click();
  await page.getByRole('option', { name: 'Laid on: Before dawn' }).click();
  await page.locator('[data-laid]').waitFor();
  await page.keyboard.press('Alt+ArrowRight');
  await expect(page.getByText(/skips or shows twice/)).toBeVisible();
  await expect(page.locator('[data-laid]')).toBeVisible();
  await page.keyboard.press('Alt+ArrowRight');
  await expect(page.getByText(/skips or shows twice/)).toHaveCount(0);
  await expect(page.getByRole('region', { name: 'Laid on' })).toContainText('2 days later, not saved');
});

test('two fingers zoom, one moves', async ({ browser }) => {
  const page = await (await browser.newContext({ hasTouch: true, viewport: { width: 900, height: 700 } })).newPage();
  await openRoad(page);
  const box = (await drawing(page).boundingBox())!;
  const devtools = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...xs: number[]) =>
    devtools.send('Input.dispatchTouchEvent', { type, touchPoints: xs.map((x, id) => ({ x: box.x + x, y: box.y + 150, id })) });
  const before = await title(page).textContent();
  await touch('touchStart', 500);
  for (const x of [480, 440, 380, 300]) await touch('touchMove', x);
  await touch('touchEnd');
  await expect(title(page)).not.toHaveText(before ?? '');
  await expect(page.getByRole('radio', { name: 'fortnight' })).toBeChecked();
  await touch('touchStart', 300, 400);
  for (const spread of [20, 60, 120]) await touch('touchMove', 300 - spread, 400 + spread);
  await touch('touchEnd');
  await expect(page.getByRole('radio', { checked: true })).toHaveCount(0);

  // A finger on what is laid on tries other days instead.
  await layOn(page);
  const holds = page.locator('[data-laid]');
  const [first, second] = [(await holds.nth(0).boundingBox())!, (await holds.nth(1).boundingBox())!];
  const finger = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...days: number[]) =>
    devtools.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: days.map((day) => ({ x: first.x + first.width / 2 + day * (second.x - first.x), y: first.y + 14 })),
    });
  await finger('touchStart', 0);
  for (const day of [0.4, 1.2, 2]) await finger('touchMove', day);
  await finger('touchEnd');
  await expect(page.getByRole('region', { name: 'Laid on' })).toContainText('2 days later, not saved');
});

test('no words touch other words, also with long names side by side', async ({ page }) => {
  const places = ['Bemidji', 'Brainerd', 'Rochester', 'Madison', 'Chicago', 'Omaha', 'Dubuque', 'Hibbing', 'Mankato', 'Winnipeg'];
  for (const [index, text] of places.entries()) {
    const found = (await host.call('places.search', { text, limit: 1 })) as { places: Record<string, unknown>[] };
    const { kind: _kind, people: _people, ...place } = found.places[0] ?? {};
    const date = Temporal.Now.plainDateISO('America/Chicago')
      .add({ days: 40 + 2 * index })
      .toString();
    const facts = {
      title: `The sixty letters of a yearly gathering, supper and toast, no ${index}`,
      place,
      days: [{ date, kind: 'shoot', call: `${date}T09:00`, wrap: `${date}T18:00` }],
    };
    const { job } = (await host.call('jobs.add', { facts })) as { job: Job };
    await host.call('jobs.pencil', { id: job.id, version: job.version });
  }
  for (const viewport of [
    { width: 1280, height: 800 },
    { width: 900, height: 700 },
  ]) {
    await page.setViewportSize(viewport);
    await openRoad(page);
    for (let turn = 0; turn < 5; turn += 1) await page.keyboard.press('ArrowRight');
    for (let turn = 0; turn < 2; turn += 1) await page.keyboard.press('-');
    await expect(drawing(page).getByText('Winnipeg')).toBeVisible();
    const { touching, outside, count } = await drawing(page).evaluate((svg) => {
      const whole = svg.getBoundingClientRect();
      const boxes = [...svg.querySelectorAll('text')].map((text) => ({ words: text.textContent, box: text.getBoundingClientRect() }));
      const overlap = (a: DOMRect, b: DOMRect): boolean =>
        Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 4;
      return {
        count: boxes.length,
        touching: boxes.flatMap((a, index) =>
          boxes.slice(index + 1).flatMap((b) => (overlap(a.box, b.box) ? [`${a.words} | ${b.words}`] : [])),
        ),
        outside: boxes.filter(({ box }) => box.left < whole.left - 1 || box.right > whole.right + 1).map(({ words }) => words),
      };
    });
    expect(count).toBeGreaterThan(25);
    expect(touching).toEqual([]);
    expect(outside).toEqual([]);
  }
});

test('a candidate on the road passes axe in light and dark; forced colours leave shapes apart from the ground', async ({ browser }) => {
  for (const colorScheme of ['light', 'dark'] as const) {
    const page = await (
      await browser.newContext({ colorScheme, reducedMotion: 'reduce', viewport: { width: 900, height: 700 } })
    ).newPage();
    await openRoad(page);
    await layOn(page);
    await page.keyboard.press('Alt+ArrowRight');
    await expect(page.locator('[data-black]')).toHaveCount(1);
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
    await page.close();
  }
  const page = await (await browser.newContext({ forcedColors: 'active' })).newPage();
  await openRoad(page);
  const [ground, block] = await drawing(page).evaluate((svg) => [
    getComputedStyle(svg.querySelector('rect')!).fill,
    getComputedStyle([...svg.querySelectorAll('path')].find((path) => path.getAttribute('d')?.includes('z'))!).fill,
  ]);
  expect(ground).toBe('rgba(0, 0, 0, 0)');
  expect(block).not.toBe(ground);
});

for (const format of ['A4', 'Letter'] as const) {
  test(`on paper it is one page of ${format}, white, with dates, legend and clashes, and no buttons`, async ({ browser }) => {
    const page = await (await browser.newContext({ colorScheme: 'dark' })).newPage();
    await openRoad(page);
    await layOn(page);
    const pdf = (await page.pdf({ format, landscape: true, printBackground: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await page.emulateMedia({ media: 'print' });
    await expect(title(page)).toBeVisible();
    await expect(page.getByText(/^Height is distance from home/)).toBeVisible();
    await expect(findings(page)).toContainText('You wrap in Milwaukee');
    await expect(page.getByRole('button')).toHaveCount(0);
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe('rgb(255, 255, 255)');
  });
}

test('the printing is asked for by its button, and an empty Road says what to do first', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'print', { value: () => document.body.setAttribute('data-printed', '') });
  });
  await openRoad(page);
  await page.getByRole('button', { name: 'Print' }).click();
  await expect(page.locator('body')).toHaveAttribute('data-printed', '');
  for (let turn = 0; turn < 12; turn += 1) await page.keyboard.press('ArrowLeft');
  await expect(page.getByText('Nothing is on the road in these days.')).toBeVisible();
  await page.getByRole('link', { name: 'paste an inquiry on the Desk' }).click();
  await expect(page.getByLabel('Inquiry as it came')).toBeVisible();
});
