import { expect, test } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';

let host: TestHost;
let jobs: Record<'ink' | 'pencil' | 'inquiry' | 'bare', Job>;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  jobs = await fill(host);
});
test.afterAll(async () => {
  await host.close();
});

test('a lift is tried on, taken off, and a typed drive changes the answer', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  await goTo(page, `/jobs/${jobs.inquiry.id}`);
  await expect(page.getByRole('heading', { name: 'Free if …' })).toBeVisible();
  await page.getByRole('button', { name: /^Ask (for the first call at|to begin on)/ }).click();
  await expect(page.getByText(/^Tried on, not saved/)).toBeVisible();
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect(page.getByText(/^Tried on, not saved/)).toBeHidden();

  await page.getByRole('button', { name: /^Type the real time from Milwaukee to Thunder Bay/ }).click();
  await page.getByRole('textbox', { name: 'Takes' }).fill('never');
  await page.getByRole('button', { name: 'Remember it' }).click();
  await expect(page.getByText(/is not a length of time/)).toBeVisible();
  await page.getByRole('textbox', { name: 'Takes' }).fill('30 min');
  await page.getByRole('button', { name: 'Remember it' }).click();
  await expect(page.getByText('The drive is remembered')).toBeVisible();
  await expect(page.getByRole('button', { name: /^Ask (for the first call at|to begin on)/ })).toBeHidden();
  expect(complaints).toEqual([]);
});

test('a line opens to its reason, is changed, restored, dropped; another is added', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, `/jobs/${jobs.inquiry.id}`);
  const line = page.locator('details', { has: page.locator('summary', { hasText: '5 days × 1,000.00' }) });
  await line.locator('summary').click();
  await expect(line.getByText(/1,000\.00/).last()).toBeVisible();
  await line.getByLabel('Unit price').fill('1.1k');
  await line.getByRole('button', { name: 'Change', exact: true }).click();
  const changed = page.locator('details', { has: page.locator('summary', { hasText: '5 days × 1,100.00' }) });
  await expect(changed).toContainText('changed by hand');
  await changed.getByRole('button', { name: 'As the card says' }).click();
  await expect(line).toBeVisible();

  await page.getByRole('button', { name: 'Add a line' }).click();
  const form = page.getByRole('form', { name: 'Add a line' });
  await form.getByRole('button', { name: 'Add', exact: true }).click();
  await expect(form.getByText('What is empty; say what it is for.')).toBeVisible();
  await form.getByLabel('What').fill('Music licence');
  await form.getByLabel('Unit price').fill('80');
  await form.getByRole('button', { name: 'Add', exact: true }).click();
  await expect(page.locator('summary', { hasText: 'Music licence' })).toContainText('80.00');
  await page.getByRole('button', { name: 'Take back the last change' }).click();
  await expect(page.locator('summary', { hasText: 'Music licence' })).toBeHidden();
});

test('facts are changed in place; what cannot be is said beside the input', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, `/jobs/${jobs.bare.id}`);
  await expect(page.getByRole('heading', { name: 'Not known yet' })).toBeVisible();
  await expect(page.getByRole('button', { name: /^Make the quote/ })).toBeDisabled();

  await page.getByRole('button', { name: 'Change Place' }).click();
  await page.getByRole('combobox', { name: 'Place' }).pressSequentially('Fargo');
  await page.getByRole('option', { name: /^Fargo North Dakota/ }).click();
  await page.getByRole('button', { name: 'Keep' }).click();
  await expect(page.getByText('Fargo, North Dakota, US')).toBeVisible();

  await page.getByRole('button', { name: 'Change Days' }).click();
  await page.getByLabel('Day 1: call').fill('lunch');
  await page.getByRole('button', { name: 'Keep' }).click();
  await expect(page.getByText('Day 1: call is not a time; write it as 14:00.')).toBeVisible();
  await page.getByLabel('Day 1: call').fill('8pm');
  await page.getByLabel('Day 1: wrap').fill('02:00');
  await page.getByRole('button', { name: 'One more day' }).click();
  await page.getByRole('button', { name: 'Take out day 2' }).click();
  await page.getByRole('button', { name: 'Keep' }).click();
  await expect(page.getByText('shoot 20:00 to 02:00')).toBeVisible();

  await page.getByRole('button', { name: 'Change Budget' }).click();
  await page.getByLabel('Amount, empty for none').fill('lots');
  await page.getByRole('button', { name: 'Keep' }).click();
  await expect(page.getByText(/is not a number/)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: /^Make the quote/ })).toBeEnabled();
});

test('a fact that was corrected once for a sender says so the next time, and is forgotten on request', async ({ page }) => {
  const message = (date: string) =>
    `Hi, are you free to film our supplier day in Fargo on ${date}, call 9am, wrap 5pm? We pay 900 a day.\n\nThanks,\nOdile Farrow\nodile@lane.example`;
  const take = async (date: string) => {
    const { jobId } = (await host.call('inquiries.take', { text: message(date) })) as { jobId: string };
    return ((await host.call('jobs.get', { id: jobId })) as { job: Job }).job;
  };
  const first = await take('14 January 2032');
  await host.call('jobs.change', { id: first.id, version: first.version, changes: { role: 'second camera' } });
  const second = await take('21 January 2032');
  expect(second.role).toBe('second camera');

  await page.goto(host.page);
  await goTo(page, `/jobs/${second.id}`);
  await expect(page.getByText(/^role as you corrected it for them on/)).toBeVisible();
  await page.getByRole('button', { name: 'Forget it: role as you corrected it' }).click();
  await expect(page.getByText(/as you corrected it for them/)).toBeHidden();
  expect((await take('28 January 2032')).role).toBe('shoot');
});

test('a pencil is let go and taken back', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, `/jobs/${jobs.pencil.id}`);
  await page.getByRole('button', { name: 'Let it go' }).click();
  await expect(page.getByText('Let go. The dates are free')).toBeVisible();
  await page.getByRole('button', { name: 'Take it back' }).click();
  await expect(page.getByText('Open again.')).toBeVisible();
  await page.getByText('What was done').click();
  await expect(
    page
      .getByRole('listitem')
      .filter({ hasText: /let go/i })
      .first(),
  ).toBeVisible();
});

test('what another window changed meanwhile is not overwritten in silence', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, `/jobs/${jobs.ink.id}`);
  await page.getByRole('button', { name: 'Rename' }).click();
  const { job } = (await host.call('jobs.get', { id: jobs.ink.id })) as { job: Job };
  await host.call('jobs.change', { id: job.id, version: job.version, changes: { notes: 'dock at the back' } });
  await page.getByLabel('Title of the job').fill('Bakers’ congress, renamed');
  await page.getByRole('button', { name: 'Keep' }).click();
  await expect(page.getByRole('alert')).toContainText('changed elsewhere meanwhile');
  await expect(page.getByText('the last step was not saved')).toBeVisible();
});
