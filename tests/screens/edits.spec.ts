import { expect, test } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import type { RateCard } from '../../core/contract/rates.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';

let host: TestHost;
let inquiry: Job;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  const { cards } = (await host.call('rates.list')) as { cards: RateCard[] };
  for (const { id, version, ...fields } of cards) await host.call('rates.save', { id, version, fields: { ...fields, editHour: '60' } });
  ({ inquiry } = await fill(host));
});
test.afterAll(async () => {
  await host.close();
});

test('a due date and edit hours are typed beside what is to be delivered, and the quote prices them with their rush', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  await goTo(page, `/jobs/${inquiry.id}`);
  await page.getByRole('button', { name: 'Change To deliver' }).click();
  const cell = (column: string) => page.getByRole('group', { name: 'Thing 1 to deliver' }).getByLabel(column);
  await expect(cell('What')).toHaveValue('a ninety-second highlight');
  await cell('Edit hours').fill('soon');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(page.getByText(/Edit hours was not read/)).toBeVisible();
  await cell('Edit hours').fill('6h30');
  await cell('Due').fill(Temporal.Now.plainDateISO('America/Chicago').add({ days: 1 }).toString());
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await expect(page.getByText(/6\.5 h of editing/)).toBeVisible();
  await expect(page.getByText('Editing: a ninety-second highlight')).toBeVisible();
  await expect(page.getByText(/Rush, under 72 h, 25 % of a ninety-second highlight/)).toBeVisible();
  const { job } = (await host.call('jobs.get', { id: inquiry.id })) as { job: Job };
  expect(job.edits).toMatchObject([{ what: 'a ninety-second highlight', hours: '6.5' }]);
  expect(complaints).toEqual([]);
});
