/**
 * Kit, trips, lifts and own time on the screen: typed, brought in, put on a job, found short; a leg, other dates, a day off.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import type { Place } from '../../core/contract/parts.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';

let host: TestHost;
test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
});
test.afterEach(async () => {
  await host.close();
});

const FILE =
  'Name,Does,Count,Weight,Wh,Battery,Value\nLong lens camera,camera,2,1.9 kg,,,4200\nBig battery,,6,900 g,190,spare,\nSmall battery,,8,310 g,49,spare,\nOddity,,many,,,,\n';

async function open(page: Page, path: string): Promise<void> {
  await page.goto(host.page);
  await goTo(page, path);
}

async function bringIn(): Promise<{ id: string; name: string }[]> {
  await host.call('kit.bring', { text: FILE, try: false });
  return ((await host.call('kit.list')) as { items: { id: string; name: string }[] }).items;
}

test('a file is tried, brought in and listed with what flies; a thing is changed, taken off and put back', async ({ page }) => {
  const complaints = watch(page);
  await open(page, '/kit');
  await expect(page.getByText('Nothing on the list yet.')).toBeVisible();
  await page.getByRole('button', { name: 'Bring in a file of kit' }).click();
  await page.getByLabel('File, CSV').setInputFiles({ name: 'kit.csv', mimeType: 'text/csv', buffer: Buffer.from(FILE) });
  await expect(page.getByText('3 new and 1 refused')).toBeVisible();
  await expect(page.getByRole('row', { name: /Oddity/ })).toContainText('The count was not read');
  await page.getByRole('button', { name: 'Bring in 3' }).click();
  await page.getByRole('link', { name: 'Look at the list.' }).click();
  await expect(page.getByRole('row', { name: /Big battery/ })).toContainText('not as baggage');
  await expect(page.getByRole('row', { name: /Long lens camera/ })).toContainText('2 at home');

  await page.getByRole('link', { name: 'Long lens camera' }).click();
  await page.getByLabel('Weight of one').fill('heavy');
  await page.getByRole('button', { name: 'Save the thing' }).click();
  await expect(page.getByText(/Weight of one was not read/)).toBeVisible();
  await page.getByLabel('Weight of one').fill('2.1 kg');
  await page.getByRole('button', { name: 'Save the thing' }).click();
  await expect(page.getByText('Long lens camera is saved.')).toBeVisible();
  await page.getByRole('button', { name: 'Take off the list: Long lens camera' }).click();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(page.getByRole('row', { name: /Long lens camera/ })).toContainText('2.1 kg');
  expect(complaints).toEqual([]);
});

test('units have their own place and service; a change of the thing is undone', async ({ page }) => {
  const complaints = watch(page);
  const items = await bringIn();
  const camera = items.find(({ name }) => name === 'Long lens camera');
  await open(page, `/kit/thing/${camera?.id}`);
  await page.getByRole('button', { name: 'Add a unit' }).click();
  await page.getByLabel('Serial', { exact: true }).fill('LL-1041');
  await page.getByLabel('Kept at or held by').fill('the van');
  await page.getByRole('button', { name: 'Close the unit' }).click();
  await page.getByRole('button', { name: 'One more unit' }).click();
  await page.getByLabel('Serial', { exact: true }).fill('ll-1041');
  await page.getByRole('button', { name: 'Add a service', exact: true }).first().click();
  await page.getByRole('button', { name: 'Save the thing' }).click();
  await expect(page.getByText('Serial stands twice.')).toBeVisible();
  await page.getByLabel('Serial', { exact: true }).fill('LL-1042');
  const today = Temporal.Now.plainDateISO('America/Chicago');
  await page.getByLabel(/LL-1042 in service.*: From/).fill(today.toString());
  await page.getByLabel(/LL-1042 in service.*: To/).fill(today.add({ days: 3 }).toString());
  await page.getByRole('button', { name: 'Save the thing' }).click();
  await expect(page.getByRole('row', { name: /LL-1041/ })).toContainText('the van');
  await expect(page.getByText(/1 at home; 1 in service to/)).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.getByText('None is told apart by a serial.', { exact: false })).toBeVisible();
  expect(complaints).toEqual([]);
});

test('a preset is put on a job, what is short is said there, and lifts are tried on and taken off', async ({ page }) => {
  const items = await bringIn();
  const { inquiry } = await fill(host);
  const camera = items.find(({ name }) => name === 'Long lens camera');
  await host.call('kit.savePreset', { fields: { name: 'Two cameras', needs: [{ item: camera?.id, count: 2 }] } });
  await open(page, `/jobs/${inquiry.id}`);
  await page.getByRole('button', { name: 'Say what it needs of the kit' }).click();
  await page.getByRole('button', { name: 'Put in Two cameras' }).click();
  await page.getByLabel('Things, row 1: How many').fill('3');
  await page.getByRole('button', { name: 'Keep the kit' }).click();
  await expect(page.getByText(/Long lens camera: short by 1/).first()).toBeVisible();
  const lift = page.getByRole('button', { name: /^Sub-hire 1 Long lens camera/ });
  await lift.click();
  await expect(page.getByText('Tried on, not saved')).toBeVisible();
  await expect(page.getByText(/Long lens camera: short by 1/)).toHaveCount(1);
  await page.getByRole('button', { name: /^Take back: Sub-hire/ }).click();
  await expect(lift).toBeVisible();
});

test('kit is ticked out and back, what is missing is marked and found again', async ({ page }) => {
  const complaints = watch(page);
  const { ink } = await fill(host);
  const fields = { name: 'Long lens camera', owned: 2, units: [{ serial: 'LL-1041', place: 'the van' }, { serial: 'LL-1042' }] };
  const { item: camera } = (await host.call('kit.save', { fields })) as { item: { id: string } };
  const { item: battery } = (await host.call('kit.save', { fields: { name: 'Small battery', owned: 8 } })) as { item: { id: string } };
  const needs = [
    { item: camera.id, count: 2 },
    { item: battery.id, count: 6 },
  ];
  await host.call('kit.setForJob', { jobId: ink.id, needs });
  await open(page, `/jobs/${ink.id}`);
  const pack = page.getByRole('region', { name: 'Pack list' });
  await pack.getByText('Pack list: nothing is packed yet').click();
  await pack.getByRole('button', { name: 'All of it is packed' }).click();
  await expect(pack.getByText('Pack list: 2 × Long lens camera and 6 × Small battery out')).toBeVisible();
  await pack.getByText('Long lens camera LL-1041 is back').click();
  await pack.getByRole('button', { name: 'Small battery did not come back' }).click();
  await pack.getByLabel('Missing, of 6').fill('7');
  await expect(pack.getByText('Missing, of 6 is not between 1 and 6.')).toBeVisible();
  await pack.getByLabel('Missing, of 6').fill('2');
  await pack.getByRole('button', { name: 'The rest is back' }).click();
  await expect(pack.getByText('Pack list: 1 × Long lens camera out; 2 × Small battery did not come back')).toBeVisible();
  await goTo(page, '/kit');
  await expect(page.getByRole('row', { name: /Small battery/ })).toContainText('2 did not come back from');
  await goTo(page, `/jobs/${ink.id}`);
  await pack.getByText(/^Pack list:/).click();
  await pack.getByRole('button', { name: 'Small battery was found' }).click();
  await pack.getByRole('button', { name: 'All of it is back' }).click();
  await expect(pack.getByText('Pack list: everything is back')).toBeVisible();
  expect(complaints).toEqual([]);
});

test('a leg is typed, refused while it arrives before it leaves, taken out and put back', async ({ page }) => {
  const { pencil } = await fill(host);
  await open(page, `/jobs/${pencil.id}`);
  await expect(page.getByText(/Duluth to Fargo is estimated/).first()).toBeVisible();
  await page.getByRole('button', { name: 'Add a leg' }).click();
  const [first] = pencil.days;
  await page.getByLabel(/^Leaves/).fill(`${first?.date}T05:00`);
  await page.getByLabel(/^Arrives/).fill(`${first?.date}T04:00`);
  await page.getByRole('button', { name: 'Keep the leg' }).click();
  await expect(page.getByText(/arrives before it leaves/).first()).toBeVisible();
  await page.getByLabel(/^Arrives/).fill(`${first?.date}T06:00`);
  await page.getByRole('button', { name: 'Keep the leg' }).click();
  await page.getByRole('button', { name: 'Take out the flight Duluth to Fargo' }).click();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(page.getByText('flight Duluth to Fargo', { exact: true })).toBeVisible();
});

test('a leg keeps its fare and baggage, a change is undone, and what does not hang together stands beside its leg', async ({ page }) => {
  const { pencil } = await fill(host);
  const { place: fargo } = pencil;
  const { setup } = (await host.call('setup.get')) as { setup: { home: Place } };
  const [first] = pencil.days;
  const leg = { mode: 'flight', from: setup.home, to: fargo, depart: `${first?.date}T05:00`, arrive: `${first?.date}T06:00` };
  await host.call('trips.setLeg', { jobId: pencil.id, fields: leg });
  await host.call('trips.setWay', { fields: { from: setup.home, to: fargo, mode: 'drive', minutes: 250, distance: null, note: '' } });
  await open(page, `/jobs/${pencil.id}`);
  await page.getByRole('button', { name: 'Change the flight Duluth to Fargo' }).click();
  await page.getByLabel('Fare, USD').fill('189,5');
  await page.getByLabel('Baggage it carries').fill('one bag of 23 kg');
  await page.getByRole('button', { name: 'Keep the leg' }).click();
  const trip = page.getByRole('region', { name: 'Trip' });
  await expect(trip).toContainText('USD 189.50, one bag of 23 kg');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(trip).not.toContainText('one bag of 23 kg');

  await host.call('trips.setLeg', {
    jobId: pencil.id,
    fields: { ...leg, mode: 'rail', from: setup.home, depart: `${first?.date}T07:00`, arrive: `${first?.date}T08:00` },
  });
  await page.reload();
  await expect(trip.getByRole('listitem').filter({ hasText: 'rail Duluth to Fargo' })).toContainText(
    'The flight Duluth to Fargo ends in Fargo, but the rail Duluth to Fargo begins in Duluth.',
  );
  await trip.getByText('Remembered ways, 1').click();
  await trip.getByRole('button', { name: 'Forget the drive Duluth to Fargo' }).click();
  await page.getByRole('button', { name: 'Remember it' }).click();
  await expect(trip.getByText('Remembered ways, 1')).toBeVisible();
});

test('other dates are shown for days that are taken, and pressing one changes the days', async ({ page }) => {
  const { ink } = await fill(host);
  const facts = { title: 'Clinic opening', place: ink.place, days: ink.days.slice(0, 1), role: 'shoot' };
  const { job } = (await host.call('jobs.add', { facts })) as { job: { id: string } };
  await open(page, `/jobs/${job.id}`);
  await expect(page.getByRole('heading', { name: 'Not possible' })).toBeVisible();
  await page.getByRole('button', { name: 'Look for the nearest dates that work' }).click();
  const dates = page.getByRole('region', { name: 'Nearest dates that work' });
  await dates.getByRole('listitem').first().getByRole('button').click();
  await expect(page.getByRole('heading', { name: 'Not possible' })).toBeHidden();
});

test('time of my own is kept by whole days, taken off and put back', async ({ page }) => {
  await open(page, '/road');
  await page.getByRole('button', { name: 'Keep time for myself' }).click();
  await page.getByLabel('What it is').fill('Family');
  await page.getByLabel('First day').fill('2026-12-24');
  await page.getByRole('button', { name: 'Keep it' }).click();
  await expect(page.getByText('24 December 2026', { exact: false }).first()).toBeVisible();
  await page.getByRole('button', { name: 'Take off Family' }).click();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(page.getByRole('button', { name: 'Take off Family' })).toBeVisible();
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`Kit and its sheets, ${colorScheme}, in three sizes`, async ({ browser }) => {
    const [item] = await bringIn();
    await host.call('kit.savePreset', { fields: { name: 'All of it', needs: [{ item: item?.id, count: 1 }] } });
    const page = await (await browser.newContext({ colorScheme, reducedMotion: 'reduce' })).newPage();
    await page.goto(host.page);
    for (const viewport of [
      { width: 1280, height: 800 },
      { width: 900, height: 700 },
      { width: 640, height: 400 },
    ]) {
      await page.setViewportSize(viewport);
      for (const path of ['/kit', '/kit/presets', '/kit/bring', '/kit/new-preset', `/kit/thing/${item?.id}`, '/road']) {
        await goTo(page, path);
        const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag22aa', 'best-practice']).analyze();
        expect(violations.map(({ id, nodes }) => `${path}: ${id}, ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
        expect(wide, `sideways scroll at ${path}`).toBeLessThanOrEqual(1);
      }
    }
  });
