import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Locator, type Page } from 'playwright/test';
import type { Deliverable } from '../../core/contract/deliverables.ts';
import type { Template } from '../../core/contract/templates.ts';
import { blankTemplate } from '../../core/deliverables/blank.ts';
import type { RateCard } from '../../core/contract/rates.ts';
import { startHost, type TestHost } from '../host.ts';
import { pressEnter } from './keys.ts';
import { fill, goTo, setUp, today, watch } from './stage.ts';

let host: TestHost;
let ink: string;
let edit: string;
let inquiry: string;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  const { cards } = (await host.call('rates.list')) as { cards: RateCard[] };
  for (const { id, version, ...fields } of cards) await host.call('rates.save', { id, version, fields: { ...fields, editHour: '85' } });
  const jobs = await fill(host);
  [ink, inquiry] = [jobs.ink.id, jobs.inquiry.id];
  const fields = {
    name: 'Highlights',
    finishedMinutes: '4',
    editHoursPerMinute: '3',
    ingestHours: '1',
    rounds: 1,
    hoursPerRound: '2',
    windowDays: 3,
    format: { width: 1920, height: 1080, rate: '29.97 drop', codec: '', loudness: '', captions: '', other: '' },
    due: today().add({ days: 40 }).toString(),
  };
  const { deliverable } = (await host.call('deliverables.add', { jobId: ink, fields })) as { deliverable: Deliverable };
  edit = deliverable.id;
});
test.afterAll(async () => {
  await host.close();
});

async function opened(page: Page): Promise<Locator> {
  await page.goto(host.page);
  await goTo(page, `/jobs/${ink}`);
  const sheet = page.getByRole('article', { name: 'Highlights' });
  await sheet.locator('summary', { hasText: 'Stages, notes' }).click();
  await expect(sheet.getByRole('heading', { name: 'Rounds of notes' })).toBeVisible();
  return sheet;
}
const accessible = async (page: Page): Promise<void> =>
  expect((await new AxeBuilder({ page }).include('article[aria-label="Highlights"]').analyze()).violations).toEqual([]);

test('a cut goes out, its notes come late and move the date, and are ticked off by the keys', async ({ page }) => {
  const complaints = watch(page);
  const sheet = await opened(page);
  await pressEnter(sheet.getByRole('button', { name: 'Send a cut: Highlights' }));
  const send = sheet.getByRole('form', { name: 'A cut goes out' });
  await expect(send.getByLabel('Business days for notes')).toHaveValue('3');
  await send.getByLabel('Sent').fill(`${today().subtract({ days: 14 }).toString()}T10:00`);
  await accessible(page);
  await send.getByRole('button', { name: 'It is sent' }).click();
  await expect(sheet.getByText(/^Rough cut: notes were due on .*, \d+ business days? ago\.$/)).toBeVisible();
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await sheet.getByRole('button', { name: 'Copy the message: rough cut' }).click();
  await expect(page.getByText('Copied. Paste it into your mail.')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('This is the first of 1 round of notes that is included.');

  await sheet.getByRole('button', { name: 'Take the notes in: rough cut' }).click();
  const form = sheet.getByRole('form', { name: 'Notes on the rough cut' });
  await expect(form.getByRole('button', { name: 'It was approved without notes' })).toBeVisible();
  await form.getByLabel('Notes as they came').fill('00:00:12;10 the logo comes too late\n00:01:00;00 fade here\nmusic softer');
  await expect(form.getByText('3 notes, 1 with a time code.')).toBeVisible();
  await expect(form.getByText('Line 2: 00:01:00;00 does not exist: 29.97 drop leaves that label out.')).toBeVisible();
  await form.getByRole('button', { name: 'Take the notes in', exact: true }).click();
  await expect(sheet.getByText(/Delivery moves by as many, from /)).toBeVisible();
  await expect(sheet.getByText(/first promised for /)).toBeVisible();

  const logo = sheet.getByRole('checkbox', { name: /the logo comes too late/ });
  await expect(logo).toBeEnabled();
  await logo.press('Space');
  await expect(sheet.getByText(/3 notes came on .* late; 1 of 3 done\.$/)).toBeVisible();
  await accessible(page);
  expect(complaints).toEqual([]);
});

test('a further round is priced, and declined off the bill', async ({ page }) => {
  const complaints = watch(page);
  const sheet = await opened(page);
  await sheet.getByRole('button', { name: 'Send the next cut: Highlights' }).click();
  await expect(sheet.getByText(/Notes on this cut are a further round at USD 170\.00/)).toBeVisible();
  await sheet.getByRole('button', { name: 'It is sent' }).click();
  await sheet.getByRole('button', { name: 'Take the notes in: fine cut' }).click();
  await sheet.getByLabel('Notes as they came').fill('another closing shot');
  await sheet.getByRole('button', { name: 'Take the notes in', exact: true }).click();
  await expect(
    sheet.getByText('Further round: 2 h at 85.00, USD 170.00. It goes on the next bill; nobody has said yes or no.'),
  ).toBeVisible();
  const { draft } = (await host.call('invoices.draft', { jobId: ink, kind: 'final' })) as { draft: { lines: { what: string }[] } };
  expect(draft.lines.map(({ what }) => what)).toContain('Second round of notes: Highlights');
  await sheet.getByRole('button', { name: 'Note the answer: notes on the fine cut' }).click();
  await sheet.getByLabel('Who answered').fill('Odile Fenn');
  await accessible(page);
  await sheet.getByRole('button', { name: 'They said no' }).click();
  await expect(sheet.getByText(/declined by Odile Fenn.* It is on no bill\.$/)).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(sheet.getByText(/nobody has said yes or no\.$/)).toBeVisible();
  expect(complaints).toEqual([]);
});

test('time is typed, and one clock is started and stopped', async ({ page }) => {
  const complaints = watch(page);
  const sheet = await opened(page);
  await pressEnter(sheet.getByRole('button', { name: 'Type hours: Highlights' }));
  await sheet.getByLabel('How long').fill('soon');
  await sheet.getByRole('button', { name: 'Keep the time' }).click();
  await expect(sheet.getByText(/How long was not read/)).toBeVisible();
  await sheet.getByLabel('How long').fill('2 h 30 min');
  await sheet.getByRole('button', { name: 'Keep the time' }).click();
  await expect(sheet.getByText(/^2 h 30 min of \d+ h/)).toBeVisible();
  await sheet.locator('summary', { hasText: 'The clock, and hours by stage' }).click();
  await pressEnter(sheet.getByRole('button', { name: 'Start the clock: picture lock of Highlights' }));
  await expect(sheet.getByText('the clock runs')).toBeVisible();
  await accessible(page);
  const { running } = (await host.call('spent.running')) as { running: { deliverableId: string } | null };
  expect(running?.deliverableId).toBe(edit);
  // It is seen, and can be stopped, from every place.
  const head = page.getByRole('banner');
  await expect(head.getByRole('link', { name: /^Highlights, picture lock: 0 min$/ })).toBeVisible();
  await expect(head.getByRole('button', { name: 'Stop the clock' })).toBeEnabled();
  await sheet.getByRole('button', { name: 'It ended earlier: picture lock of Highlights' }).click();
  await sheet.getByRole('textbox', { name: 'The work ended' }).fill(`${today().add({ days: 2 }).toString()}T10:00`);
  await sheet.getByRole('button', { name: 'Stop it there' }).click();
  await expect(sheet.getByText(/The end is dated after now/).first()).toBeVisible();
  await accessible(page);
  await sheet.getByRole('button', { name: 'Let it run' }).click();
  await pressEnter(sheet.getByRole('button', { name: 'Stop the clock: picture lock of Highlights' }));
  await expect(sheet.getByText('the clock runs')).toBeHidden();
  await expect(head.getByRole('button', { name: 'Stop the clock' })).toBeHidden();
  await sheet.locator('summary', { hasText: /^\d+ entr/ }).click();
  await sheet.getByRole('button', { name: /^Take off .*2 h 30 min$/ }).click();
  await expect(page.getByText('The time is off.')).toBeVisible();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(sheet.getByText(/^2 h 30 min of \d+ h/)).toBeVisible();
  // The one refusal that was provoked.
  expect(complaints).toEqual([expect.stringContaining('400')]);
});

test('what past edits took stands beside the next quote, and is taken over', async ({ page }) => {
  const complaints = watch(page);
  const fields = { ...blankTemplate(), name: 'Highlight', editHoursPerMinute: '4', ingestHours: '1', rounds: 1, hoursPerRound: '1' };
  const { template } = (await host.call('templates.save', { fields })) as { template: Template };
  const { deliverable } = (await host.call('deliverables.add', {
    jobId: ink,
    templateId: template.id,
    fields: { name: 'Opening film' },
  })) as {
    deliverable: Deliverable;
  };
  const stage = (kind: string) => deliverable.stages.find((each) => each.kind === kind);
  const on = today().toString();
  // Three minutes took six hours: two for each.
  const spent = { deliverableId: deliverable.id, stageId: stage('rough cut')?.id, on, minutes: 360, note: '' };
  await host.call('spent.type', spent);
  const delivered = stage('delivered');
  await host.call('deliverables.stageDone', { id: delivered?.id, version: delivered?.version });
  await page.goto(host.page);
  await goTo(page, `/jobs/${inquiry}`);
  await page.getByRole('button', { name: 'Change To deliver' }).click();
  const thing = page.getByRole('group', { name: 'Thing 1 to deliver' });
  await expect(thing.getByLabel('What')).toHaveValue('a ninety-second highlight');
  await expect(thing.getByText('Editing took 2 h (one edit) for a finished minute.')).toBeVisible();
  // Ninety seconds at four hours a minute, or at two, with an hour of ingest and one of notes.
  await expect(thing.getByText('8 h by the template Highlight.')).toBeVisible();
  await pressEnter(thing.getByRole('button', { name: 'Take it: 5 h as past edits took' }));
  await expect(thing.getByLabel('Edit hours')).toHaveValue('5');
  expect(complaints).toEqual([]);
});
