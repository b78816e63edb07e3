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
  // Tried on it stands in the answer, and nothing is on the trip yet; kept from there it is ticketed.
  await pressEnter(read.nth(0).getByRole('button', { name: /^Try it on: flight ZQ 412/ }));
  await expect(page.getByRole('heading', { name: 'Tried on, not saved' })).toBeVisible();
  expect(((await host.call('trips.legs', { jobId: pencil.id })) as { legs: unknown[] }).legs).toEqual([]);
  await page.getByRole('button', { name: /^Keep it on the trip: As if ticketed/ }).click();
  await expect(page.getByText('The flight is on the trip.')).toBeVisible();
  await expect(read.nth(0)).toContainText('It is on the trip.');
  await page.getByRole('button', { name: 'Take it back', exact: true }).click();
  await expect(read.nth(0)).not.toContainText('It is on the trip.');
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

  // Moved past the first call it goes to the Desk, until it goes as ticketed after all.
  await pressEnter(trip.getByRole('button', { name: /^Late or cancelled: flight Duluth/ }));
  await page.getByLabel(/^Now leaves/).fill(`${first}T14:15`);
  await page.getByLabel(/^Now arrives/).fill(`${first}T13:20`);
  await page.getByRole('button', { name: 'Note the new times' }).click();
  await expect(page.getByText(/arrives before it leaves/).first()).toBeVisible();
  await page.getByLabel(/^Now arrives/).fill(`${first}T15:20`);
  await page.getByRole('button', { name: 'Note the new times' }).click();
  await expect(trip.getByText(/now leaves on .* instead of .*14:15\./)).toBeVisible();
  await goTo(page, '/');
  const clock = page.getByRole('listitem').filter({ hasText: 'now leaves on' });
  await expect(clock).toContainText('Robotics league final');
  await clock.getByRole('button', { name: /^Open the trip/ }).click();
  await pressEnter(trip.getByRole('button', { name: /^Late or cancelled: flight Duluth/ }));
  await page.getByRole('button', { name: 'It goes as ticketed' }).click();
  await expect(trip.getByText(/now leaves on/)).toBeHidden();
  await goTo(page, '/');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(clock).toHaveCount(0);
  // The first save of the new times was refused on purpose.
  expect(complaints.filter((line) => !line.includes('400'))).toEqual([]);
});
