/**
 * Pencils on the screen: asked for a yes or no from the answer and from the sheet, moved up when one before them is let go.
 */
import { expect, test, type Page } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
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

async function open(page: Page, path: string): Promise<void> {
  await page.goto(host.page);
  await goTo(page, path);
}

/** A second pencil on the dates of the first. */
async function behind({ place, days }: Job): Promise<Job> {
  const { job } = (await host.call('jobs.add', { facts: { title: 'Clinic opening', place, days, role: 'shoot' } })) as { job: Job };
  return ((await host.call('jobs.pencil', { id: job.id, version: job.version })) as { job: Job }).job;
}

test('the holder is asked from the answer of the one behind; the clock runs on the Desk and letting go is offered', async ({ page }) => {
  const complaints = watch(page);
  const { pencil } = await fill(host);
  const second = await behind(pencil);
  await open(page, `/jobs/${second.id}`);
  await expect(page.getByText(/^Second pencil on .*; behind Robotics league final\.$/)).toBeVisible();
  await page.getByRole('button', { name: 'Ask Robotics league final for a yes or no within 24 h', exact: true }).click();
  await page.getByRole('button', { name: /^Ask them now/ }).click();
  await expect(page.getByText(/^Tell them: a yes or no by/)).toBeVisible();
  await goTo(page, '/');
  const clock = page.getByRole('listitem').filter({ hasText: 'Robotics league final: asked for a yes or no by' });
  await clock.getByRole('button', { name: /^Ask or let go/ }).click();
  await expect(page.getByText(/Asked for a yes or no by .*\d\d:\d\d/)).toBeVisible();
  await page.getByRole('button', { name: 'Let it go' }).click();

  await goTo(page, '/');
  const moved = page.getByRole('region', { name: 'Moved up' });
  await expect(moved).toContainText(/Clinic opening moved up: first pencil on .*Robotics league final was let go/);
  await moved.getByRole('button', { name: /^Put away/ }).click();
  await expect(moved).toBeHidden();
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(moved).toBeVisible();
  expect(complaints).toEqual([]);
});

test('the holder is asked from the sheet of the pencil itself', async ({ page }) => {
  const { pencil } = await fill(host);
  await open(page, `/jobs/${pencil.id}`);
  await page.getByRole('button', { name: 'Ask for a yes or no' }).click();
  await expect(page.getByText(/^Asked for a yes or no by/)).toBeVisible();
});
