/**
 * From a template to "the originals may go", on the screens alone; and the plan on the Road with changes tried on.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import type { Deliverable } from '../../core/contract/deliverables.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, today, watch } from './stage.ts';

let host: TestHost;
let ink: Job;
let inquiry: Job;
let folder: string;
test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
  ({ ink, inquiry } = await fill(host));
  folder = mkdtempSync(join(tmpdir(), 'kitbound-final-'));
  writeFileSync(join(folder, 'highlights.mp4'), 'pictures');
});
test.afterEach(async () => {
  await host.close();
  rmSync(folder, { recursive: true, force: true });
});
const promised = async () => ((await host.call('deliverables.of', { jobId: ink.id })) as { deliverables: Deliverable[] }).deliverables;
const violations = async (page: Page) => (await new AxeBuilder({ page }).analyze()).violations;

test('a template is made, an edit is promised from it, worked on, handed over, approved, and its originals go', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  await goTo(page, '/rates');
  await page.getByRole('link', { name: 'New template' }).click();
  await page.getByLabel('Name').fill('Highlights');
  await page.getByLabel('Finished length').fill('two');
  await page.getByRole('button', { name: 'Save the template' }).click();
  await expect(page.getByText(/Finished length was not read/)).toBeVisible();
  await page.getByLabel('Finished length').fill('2');
  await expect(page.getByText('2 min, 13 h in all.')).toBeVisible();
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Save the template' }).click();
  await expect(page.getByRole('link', { name: 'Highlights' })).toBeVisible();

  await goTo(page, `/jobs/${ink.id}`);
  const edits = page.getByRole('region', { name: 'Edits' });
  await edits.getByRole('button', { name: /^Promise (something|one more)$/ }).click();
  await edits.getByLabel('Due').fill(today().add({ days: 60 }).toString());
  await edits.getByRole('button', { name: 'Promise it' }).click();
  const sheet = edits.getByRole('article', { name: 'Highlights' });
  await expect(sheet.getByText('13 h of editing')).toBeVisible();
  await expect(sheet.getByText(/^Planned to be done .* Begin by /)).toBeVisible();
  const summary = sheet.locator('summary', { hasText: 'Stages, notes' });
  if (!(await sheet.getByRole('button', { name: 'Done: Ingest of Highlights' }).isVisible())) await summary.click();
  await sheet.getByRole('button', { name: 'Set aside: Ingest of Highlights' }).click();
  const aside = today().add({ days: 40 }).toString();
  await sheet.getByLabel('Ingest from').fill(`${aside}T10:00`);
  await sheet.getByLabel('To').fill(`${aside}T09:00`);
  await sheet.getByRole('button', { name: 'Set it aside' }).click();
  await expect(sheet.getByText('To is not after the start.')).toBeVisible();
  await sheet.getByLabel('To').fill(`${aside}T11:00`);
  await sheet.getByRole('button', { name: 'Set it aside' }).click();
  await expect(sheet.getByText(/^set aside: /)).toBeVisible();
  await sheet.getByRole('button', { name: 'Let go: set aside for Ingest' }).click();
  await expect(sheet.getByText(/^set aside: /)).toBeHidden();
  await sheet.getByRole('button', { name: 'Done: Picture lock of Highlights' }).click();
  await expect(sheet.getByRole('button', { name: 'Open again: Ingest of Highlights' })).toBeVisible();
  expect(await violations(page)).toEqual([]);

  await sheet.getByRole('button', { name: 'Hand it over: Highlights' }).click();
  await sheet.getByLabel('Files or folders, one on each line').fill(join(folder, 'nothing there'));
  await sheet.getByRole('button', { name: 'Read them' }).click();
  await expect(sheet.getByText(/^Path 1 leads to nothing/)).toBeVisible();
  await sheet.getByLabel('Files or folders, one on each line').fill(folder);
  await sheet.getByRole('button', { name: /^Read them/ }).click();
  await expect(sheet.getByText('highlights.mp4')).toBeVisible();
  await sheet.getByLabel('Link', { exact: true }).fill('https://files.example/h');
  await sheet.getByRole('button', { name: 'Hand over and write the note' }).click();
  await expect(sheet.getByRole('button', { name: 'Save the delivery note of Highlights' })).toBeVisible();
  await sheet.getByRole('button', { name: 'They approved it: Highlights' }).click();
  await expect(sheet.getByText('approved', { exact: true })).toBeVisible();
  expect((await promised()).find(({ name }) => name === 'Highlights')?.state).toBe('approved');

  await sheet.getByRole('button', { name: 'They were deleted: the originals of Highlights' }).click();
  const gone = sheet.getByRole('form', { name: 'The originals were deleted' });
  await gone.getByRole('textbox').fill('They asked for it in writing');
  await gone.getByRole('button').first().click();
  await expect(sheet.getByRole('button', { name: 'They are there after all' })).toBeVisible();
  expect(await violations(page)).toEqual([]);
  // The two refusals above are answers that the browser notes too.
  expect(complaints.filter((line) => !/status of (400|422)/.test(line))).toEqual([]);
});

test('the Road lists every edit, and a change is tried on without being saved', async ({ page }) => {
  const complaints = watch(page);
  const wrap = today().add({ days: 20 });
  const fields = { name: 'Whole talks', finishedMinutes: '20', editHoursPerMinute: '4', due: wrap.add({ days: 5 }).toString() };
  await host.call('deliverables.add', { jobId: ink.id, fields });
  const before = await promised();
  await page.goto(host.page);
  await goTo(page, '/road');
  const part = page.getByRole('region', { name: 'Edits' });
  await expect(part.getByRole('row', { name: /Whole talks/ })).toContainText(/business days late/);
  await part.getByLabel('One edit').click();
  await page.getByRole('option', { name: /^Whole talks/ }).click();
  await part.getByText('somebody is hired for it').click();
  await expect(part.getByText(/^As if, not saved: /)).toBeVisible();
  await expect(part.getByRole('row', { name: /Whole talks/ })).not.toContainText(/business days late/);
  expect(await violations(page)).toEqual([]);
  await part.getByRole('button', { name: 'Take all back' }).click();
  await expect(part.getByRole('row', { name: /Whole talks/ })).toContainText(/business days late/);
  expect(await promised()).toEqual(before);
  expect(complaints).toEqual([]);
});

test('the answer names the edit that a job would make late; another date is tried on, agreed, and taken back', async ({ page }) => {
  const complaints = watch(page);
  const due = today().add({ days: 14 }).toString();
  const fields = { name: 'Whole talks', finishedMinutes: '5', editHoursPerMinute: '4', ingestHours: '0', rounds: 0, due };
  await host.call('deliverables.add', { jobId: ink.id, fields });
  await page.goto(host.page);
  await goTo(page, `/jobs/${inquiry.id}`);
  const answer = page.getByRole('region', { name: /Free|Not possible/ });
  await expect(answer.getByText(/With this job Whole talks of .* business days? late/)).toBeVisible();
  const lift = answer.getByRole('button', { name: /^Ask for Whole talks on / });
  await lift.click();
  await expect(page.getByRole('heading', { name: 'Tried on, not saved' })).toBeVisible();
  await expect(answer.getByText(/With this job Whole talks of .* business days? late/)).toHaveCount(0);
  await answer.getByRole('button', { name: /^Agreed: write the new date/ }).click();
  await expect(page.getByText(/^Whole talks is due /)).toBeVisible();
  const dueNow = async () => (await promised()).find(({ name }) => name === 'Whole talks')?.due;
  expect(await dueNow()).not.toBe(due);
  await page.getByRole('button', { name: 'Take it back', exact: true }).click();
  await expect(page.getByText('Whole talks is due as before.')).toBeVisible();
  expect(await dueNow()).toBe(due);
  expect(complaints).toEqual([]);
});
