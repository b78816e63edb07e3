/**
 * Handing an edit over on the job sheet: files are read with a bar and a stop, the note and the message are there, and the originals go.
 */
import { closeSync, ftruncateSync, mkdirSync, mkdtempSync, openSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import { startHost, type TestHost } from '../host.ts';
import { pressEnter } from './keys.ts';
import { goTo, setUp, today, watch } from './stage.ts';

let host: TestHost;
let files: string;
test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
  files = mkdtempSync(join(tmpdir(), 'kitbound-files-'));
});
test.afterEach(async () => {
  await host.close();
  rmSync(files, { recursive: true, force: true });
});

/** A job in ink, wrapped twelve days ago, with one edit promised; its part of the sheet on handing over. */
async function promised(page: Page): Promise<Locator> {
  const { setup } = (await host.call('setup.get')) as { setup: { home: object } };
  const date = today().subtract({ days: 12 }).toString();
  const days = [{ date, kind: 'shoot', call: `${date}T09:00`, wrap: `${date}T19:00` }];
  const facts = { title: 'Tasting', role: 'shoot', place: setup.home, days, deliverables: ['Highlights'] };
  const { job } = (await host.call('jobs.add', { facts })) as { job: Job };
  const made = (await host.call('quotes.make', { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false })) as { job: Job };
  await host.call('jobs.ink', { id: job.id, version: made.job.version, who: 'Odile Fenn', how: 'mail' });
  await page.goto(host.page);
  await goTo(page, `/jobs/${job.id}`);
  const part = page.getByRole('region', { name: 'Handing over' });
  await expect(part).toBeVisible();
  return part;
}

test('by the keys: a wrong path stays to be put right, the list is read, and the note, the message and the yes follow', async ({
  page,
}) => {
  const complaints = watch(page);
  const part = await promised(page);
  const folder = join(files, 'final');
  mkdirSync(folder);
  writeFileSync(join(folder, 'Highlights.mov'), 'the film');
  writeFileSync(join(folder, '.DS_Store'), '');

  await pressEnter(part.getByRole('button', { name: 'Hand it over: Highlights' }));
  const paths = part.getByLabel('Files or folders, one on each line');
  await expect(paths).toBeFocused();
  await page.keyboard.type(join(files, 'finl'));
  await pressEnter(part.getByRole('button', { name: 'Read them' }));
  await expect(part.getByRole('alert')).toHaveText(/^Path 1 leads to nothing; check whether the disk is connected/);
  await expect(paths).toHaveValue(join(files, 'finl'));
  await paths.fill(folder);
  await pressEnter(part.getByRole('button', { name: 'Read them again' }));
  await expect(part.getByRole('status')).toHaveText('Read: 1 file, 8 bytes.');
  await expect(part.getByRole('row', { name: /^Highlights\.mov [0-9a-f]{8}… 8$/ })).toBeVisible();
  await expect(part.getByText('.DS_Store is kept there by a system for itself.')).toBeVisible();
  await expect(part.getByText('Whoever has the link can have the files')).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  await part.getByRole('textbox', { name: 'Link' }).fill('https://files.slate.example/tasting');
  await pressEnter(part.getByRole('button', { name: 'Hand over and write the note' }));
  await expect(part.getByText(/^By link on .*: 1 file, 8 bytes\.$/)).toBeVisible();
  const saved = page.waitForEvent('download');
  await pressEnter(part.getByRole('button', { name: 'Save the delivery note' }));
  expect((await saved).suggestedFilename()).toMatch(/^Delivery note \d{4}-\d\d-\d\d, Highlights\.pdf$/);
  await expect(part.getByRole('link', { name: 'Open it as a mail draft' })).toHaveAttribute('href', /^mailto:\?subject=Tasting/);
  writeFileSync(join(folder, 'Highlights.mov'), 'the filn');
  await pressEnter(part.getByRole('button', { name: 'Check a copy' }));
  await page.keyboard.type(folder);
  await pressEnter(part.getByRole('button', { name: 'Check it' }));
  await expect(part.getByRole('status')).toHaveText(/^The copy is not whole: 1 file changed\.Changed: Highlights\.mov\./);
  await pressEnter(part.getByRole('button', { name: 'Close the check' }));

  await pressEnter(part.getByRole('button', { name: 'They approved it' }));
  await expect(part.getByText('Waits for a yes.')).toBeHidden();

  await pressEnter(part.getByRole('button', { name: 'They were deleted' }));
  await expect(part.getByText(/^They are kept until .*: say why they went before\.$/)).toBeVisible();
  await part.getByLabel('Why before').fill('Two copies are with the client.');
  await pressEnter(part.getByRole('button', { name: 'Note that they are gone' }));
  await expect(part.getByText(/^Originals deleted on .*: Two copies are with the client\.$/)).toBeVisible();
  await pressEnter(page.getByRole('button', { name: 'Undo' }));
  await expect(part.getByText(/^Originals are kept until/)).toBeVisible();
  expect(complaints).toEqual([]);
});

test('a long reading is found again after a reload, and stopped: nothing was kept', async ({ page }) => {
  const part = await promised(page);
  const film = join(files, 'long.mov');
  // A hole in a file reads as fast as the program can take it, and takes no room.
  const file = openSync(film, 'w');
  ftruncateSync(file, 400_000_000_000);
  closeSync(file);
  await part.getByRole('button', { name: 'Hand it over: Highlights' }).click();
  await part.getByLabel('Files or folders, one on each line').fill(film);
  await part.getByRole('button', { name: 'Read them' }).click();
  await expect(part.getByText(/^[\d.]+ [MG]B of 400 GB, 0 of 1 file/)).toBeVisible();
  await page.reload();
  await expect(part.getByRole('progressbar', { name: 'Reading the files' })).toBeVisible();
  await part.getByRole('button', { name: 'Stop' }).click();
  await expect(part.getByRole('alert')).toHaveText(/^Stopped after [\d.]+ [MG]B of 400 GB, 0 of 1 file\. Nothing was kept\.$/);
  await part.getByRole('button', { name: 'Leave it' }).click();
  await expect(part.getByText('Not handed over yet.')).toBeVisible();
});
