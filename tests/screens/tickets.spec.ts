/**
 * A pasted confirmation becomes legs of a trip: what is clear is kept by one press, what is not is asked.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'playwright/test';
import { startHost, type TestHost } from '../host.ts';
import { pressEnter } from './keys.ts';
import { fill, goTo, setUp, watch } from './stage.ts';

let host: TestHost;
test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
});
test.afterEach(async () => {
  await host.close();
});

test('a confirmation is pasted, its legs stand beside its words, one is kept and one is filled in', async ({ page }) => {
  const complaints = watch(page);
  const { pencil } = await fill(host);
  const first = pencil.days[0]?.date ?? '';
  const last = pencil.days.at(-1)?.date ?? '';
  const day = Temporal.PlainDate.from(first).subtract({ days: 1 });
  const words = `Your booking is confirmed\nPassenger: ROBIN AAS\n\nFlight ZQ 412, ${day.toLocaleString('en-GB', { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' })}\nDuluth (DLH) 14:15\nFargo (FAR) 15:20\n\nFlight ZQ 415\nFargo (FAR) 20:05\nDuluth (DLH) 21:10\n\nTotal paid: USD 212.60`;
  await page.goto(host.page);
  await goTo(page, `/jobs/${pencil.id}`);
  const trip = page.getByRole('region', { name: 'Trip' });
  await expect(trip).toContainText('Duluth to Fargo is estimated');
  await trip.getByRole('button', { name: 'Paste a confirmation' }).click();
  await trip.getByLabel('Confirmation as it came').fill(' ');
  await trip.getByRole('button', { name: 'Read it' }).click();
  await expect(trip.getByText('Nothing is pasted.')).toBeVisible();
  await trip.getByLabel('Confirmation as it came').fill(words);
  await trip.getByRole('button', { name: 'Read it' }).click();
  await expect(trip.getByText('2 legs were read. 1 of them asks something.')).toBeVisible();
  await expect(trip.locator('mark', { hasText: 'ZQ 412' })).toHaveAttribute('title', 'read as number');
  const { violations } = await new AxeBuilder({ page }).include('[aria-labelledby="trip"]').analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);

  const read = trip.getByRole('list', { name: 'Legs that were read' }).getByRole('listitem');
  await read
    .nth(0)
    .getByRole('button', { name: /^Keep as ticketed: flight ZQ 412/ })
    .click();
  await expect(read.nth(0)).toContainText('It is on the trip.');
  await expect(read.nth(1)).toContainText('On which day does it leave?');
  await expect(read.nth(1).getByRole('button', { name: /^Keep/ })).toHaveCount(0);
  await pressEnter(read.nth(1).getByRole('button', { name: /^Fill it in: flight ZQ 415/ }));
  await page.getByLabel(/^Leaves/).fill(`${last}T20:05`);
  await page.getByLabel(/^Arrives/).fill(`${last}T21:10`);
  await page.getByRole('button', { name: 'Keep the leg' }).click();
  await expect(read.nth(1)).toContainText('It is on the trip.');
  await trip.getByRole('button', { name: 'Done' }).click();

  // A ticket stands in the place of the estimate: what is left is the way between airport and town.
  await expect(trip).not.toContainText('Duluth to Fargo is estimated');
  await expect(trip).toContainText('ZQ 412');
  const { legs } = (await host.call('trips.legs', { jobId: pencil.id })) as { legs: { depart: string; source: string; note: string }[] };
  expect(legs.map(({ depart, source, note }) => `${depart} ${source} ${note}`)).toEqual([
    `${day.toString()}T14:15 ticketed ZQ 412`,
    `${last}T20:05 ticketed ZQ 415`,
  ]);
  expect(complaints).toEqual([]);
});
