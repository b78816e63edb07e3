/**
 * Other calendars on the screen: added in Setup, read, seen on the Road and in the answer, told on the Desk where one cannot be read; one's
 * own dates written and served.
 */
import { mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'playwright/test';
import { calendarOf, eventOf } from '../calendar-text.ts';
import { startHost, type TestHost } from '../host.ts';
import { pressEnter } from './keys.ts';
import { fill, goTo, setUp, today, watch } from './stage.ts';

let host: TestHost;
let folder: string;
let jobs: Awaited<ReturnType<typeof fill>>;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  jobs = await fill(host);
  folder = mkdtempSync(join(tmpdir(), 'kitbound-calendars-'));
});
test.afterAll(async () => {
  await host.close();
  rmSync(folder, { recursive: true, force: true });
});

const stamp = (date: string) => date.replaceAll('-', '');

test('a calendar is added, counts in the answer and on the Road, is changed, told when it is gone, taken off and put back', async ({
  page,
}) => {
  const said = watch(page);
  const path = join(folder, 'family.ics');
  const [day] = jobs.inquiry.days;
  const date = stamp(day?.date ?? '');
  const choir = eventOf('UID:choir', 'SUMMARY:Choir practice', `DTSTART;TZID=America/Chicago:${date}T100000`, 'DURATION:PT2H');
  const birthday = eventOf('UID:free', 'SUMMARY:Birthday', 'TRANSP:TRANSPARENT', `DTSTART;VALUE=DATE:${date}`);
  writeFileSync(path, calendarOf(choir, birthday));
  await page.goto(host.page);
  await goTo(page, '/setup');
  const calendars = page.getByRole('region', { name: 'Calendars' });
  await calendars.getByRole('button', { name: 'Add a calendar' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Family');
  await page.getByLabel('File or folder').fill('family.ics');
  await page.getByRole('button', { name: 'Keep and read it' }).click();
  await expect(page.getByText('File or folder is half a path.', { exact: false })).toBeVisible();
  await page.getByLabel('File or folder').fill(path);
  await pressEnter(page.getByRole('button', { name: 'Keep and read it' }));
  await expect(calendars.getByText('1 busy time from a year ago', { exact: false })).toBeVisible();
  await calendars.getByText('What does not count, or only in part').click();
  await expect(calendars.getByText('1 event marked as free')).toBeVisible();

  await goTo(page, `/jobs/${jobs.inquiry.id}`);
  await expect(page.getByText(/Choir practice stands in the calendar Family on .* your days take 2 h of it/)).toBeVisible();
  await goTo(page, '/road');
  await page.getByText('The same as a table').click();
  await expect(page.getByRole('cell', { name: 'Choir practice' })).toBeVisible();

  await goTo(page, '/setup');
  await calendars.getByRole('button', { name: 'Change Family' }).click();
  await page.getByText('is never given up', { exact: true }).click();
  await page.getByRole('button', { name: 'Keep and read it' }).click();
  await expect(calendars.getByText('is never given up')).toBeVisible();
  await goTo(page, `/jobs/${jobs.inquiry.id}`);
  await expect(page.getByText(/never to be given up/)).toBeVisible();

  renameSync(path, `${path}.away`);
  await goTo(page, '/setup');
  await calendars.getByRole('button', { name: 'Read Family again' }).click();
  await expect(calendars.getByText('There is no file or folder at its path.')).toBeVisible();
  await goTo(page, '/');
  await expect(page.getByRole('link', { name: 'The calendar Family cannot be read.' })).toBeVisible();
  await page.getByRole('button', { name: 'Put away: The calendar Family cannot be read.' }).click();
  await expect(page.getByRole('link', { name: 'The calendar Family cannot be read.' })).toBeHidden();
  renameSync(`${path}.away`, path);

  await goTo(page, '/setup');
  await calendars.getByRole('button', { name: 'Take off Family' }).click();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(calendars.getByText('1 busy time from a year ago', { exact: false })).toBeVisible();
  // The browser notes by itself that the half path was refused.
  expect(said.filter((line) => !line.includes('400 (Bad Request)'))).toEqual([]);
});

test('my own dates are written where I say, and served until I close it', async ({ page }) => {
  const out = join(folder, 'out');
  mkdirSync(out);
  await page.goto(host.page);
  await goTo(page, '/setup');
  await page.getByLabel('Folder', { exact: true }).fill(join(folder, 'nowhere'));
  await page.getByRole('button', { name: 'Write my dates' }).click();
  await expect(page.getByText('Folder is not a folder on this computer.', { exact: false }).first()).toBeVisible();
  await page.getByLabel('Folder', { exact: true }).fill(out);
  await page.getByRole('button', { name: 'Write my dates' }).click();
  await expect(page.getByText(/events?, written today/)).toBeVisible();
  const text = readFileSync(join(out, 'kitbound.ics'), 'utf8');
  expect(text).toContain('STATUS:CONFIRMED');
  expect(text).toContain('STATUS:TENTATIVE');
  await page.getByRole('button', { name: 'Serve it on this computer too' }).click();
  const address = (await page.getByText(/^http:\/\/127\.0\.0\.1:/).textContent()) ?? '';
  await expect.poll(async () => (await fetch(address).catch(() => null))?.status).toBe(200);
  expect(await (await fetch(address)).text()).toBe(text);
  await page.getByRole('button', { name: 'Close it' }).click();
  await expect(page.getByRole('button', { name: 'Serve it on this computer too' })).toBeVisible();
  await expect.poll(async () => (await fetch(address).catch(() => null))?.status ?? 'nobody').toBe('nobody');
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`Setup with calendars and the Road with their lane, ${colorScheme}, in three sizes`, async ({ browser }) => {
    const path = join(folder, `many-${colorScheme}.ics`);
    const from = stamp(today().toString());
    writeFileSync(
      path,
      calendarOf(eventOf('UID:w', 'SUMMARY:Rowing', `DTSTART;TZID=America/Chicago:${from}T180000`, 'DURATION:PT2H', 'RRULE:FREQ=DAILY')),
    );
    const fields = { name: `Club ${colorScheme}`, path, zone: 'America/Chicago', hardness: 'never', isOn: true };
    await host.call('calendars.save', { fields });
    await host.call('calendars.save', {
      fields: { ...fields, name: 'Northern lake harbour masters’ and pilots’ yearly gathering', path: `${path}.gone` },
    });
    const page = await (await browser.newContext({ colorScheme, reducedMotion: 'reduce' })).newPage();
    await page.goto(host.page);
    for (const viewport of [
      { width: 1280, height: 800 },
      { width: 900, height: 700 },
      { width: 640, height: 400 },
    ]) {
      await page.setViewportSize(viewport);
      for (const place of ['/setup', '/road', '/']) {
        await goTo(page, place);
        const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag22aa', 'best-practice']).analyze();
        expect(violations.map(({ id, nodes }) => `${place}: ${id}, ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
        expect(wide, `${place} at ${viewport.width} pixels`).toBe(0);
      }
    }
  });
