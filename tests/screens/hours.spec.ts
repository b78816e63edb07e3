/**
 * On site and after it: called and wrapped, hours entered, overtime approved, a hand paid; expenses with their receipts.
 */
import { closeSync, ftruncateSync, mkdtempSync, openSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import type { Place } from '../../core/contract/parts.ts';
import { wallInWords } from '../../core/words/dates.ts';
import { startHost, type TestHost } from '../host.ts';
import { goTo, setUp, watch } from './stage.ts';
import { pressEnter } from './keys.ts';

// Each of these drives the whole of a section, with a store of its own.
test.slow();

let host: TestHost;
let job: Job;
const today = Temporal.Now.plainDateISO('America/Chicago');
/** Planned for today, whenever the test runs: a day that is not over yet. */
const isLate = Temporal.Now.plainTimeISO('America/Chicago').hour >= 17;
const before = (days: number): string => today.subtract({ days }).toString();
const [callToday, wrapToday] = isLate ? [`${before(0)}T15:00`, `${before(-1)}T00:00`] : [`${before(0)}T09:00`, `${before(0)}T18:00`];
const inWords = (date: string): string =>
  Temporal.PlainDate.from(date)
    .toLocaleString('en-GB', { weekday: 'short', day: 'numeric', month: 'long', year: 'numeric' })
    .replace(',', '');

test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
  // Whatever day it is today, no public holiday makes it dearer.
  const { cards } = (await host.call('rates.list')) as { cards: { id: string; version: number }[] };
  for (const { id, version, ...fields } of cards)
    await host.call('rates.save', { id, version, fields: { ...fields, holidayPercent: '0' } });
  const { setup } = (await host.call('setup.get')) as { setup: { home: Place } };
  const hand = { email: '', phone: '', home: null, ownKit: '', taxForm: true, insuredUntil: null, payDays: 14, backup: false, notes: '' };
  const rates = [{ role: 'shoot', dayRate: '400', currency: 'USD', from: before(60) }];
  await host.call('people.saveHand', { fields: { ...hand, name: 'Mara Quill', rates } });
  const past = [before(2), before(1)].map((date) => ({ date, kind: 'shoot', call: `${date}T09:00`, wrap: `${date}T18:00` }));
  const days = [...past, { date: before(0), kind: 'shoot', call: callToday, wrap: wrapToday }];
  const facts = { title: 'Clinic opening', organisation: 'Harbour clinic', place: setup.home, days };
  const { job: inquiry } = (await host.call('jobs.add', { facts })) as { job: Job };
  const { job: quoted } = (await host.call('quotes.make', {
    jobId: inquiry.id,
    jobVersion: inquiry.version,
    draftVersion: 0,
    pencil: false,
  })) as { job: Job };
  ({ job } = (await host.call('jobs.ink', { id: quoted.id, version: quoted.version, who: 'Odile Fenn', how: 'mail' })) as { job: Job });
});
test.afterEach(async () => {
  await host.close();
});

async function open(page: Page): Promise<string[]> {
  const complaints = watch(page);
  await page.goto(host.page);
  await goTo(page, `/jobs/${job.id}`);
  return complaints;
}

const hoursOf = (page: Page) => page.getByRole('region', { name: 'Hours' });
const spentOn = (page: Page) => page.getByRole('region', { name: 'Expenses' });

async function clean(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`)).toEqual([]);
  expect(await page.locator('[data-black]').count()).toBeLessThanOrEqual(1);
}

test('on site: one large thing to press, called and wrapped on the clock of the place', async ({ page }) => {
  const complaints = await open(page);
  const sign = page.getByRole('button', { name: 'Call now' });
  const box = await sign.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(80);
  expect(box?.width).toBeGreaterThanOrEqual(190);
  // The wrap below is to come in the minute of the call: one that is nearly over is waited out.
  const left = 60_000 - (Date.now() % 60_000);
  if (left < 20_000) await page.waitForTimeout(left);
  await sign.click();
  await expect(page.getByText(/^On the clock since \d\d:\d\d, 0 min$/)).toBeVisible();
  await expect(page.getByText(`Wrap planned at ${isLate ? wallInWords(wrapToday) : '18:00'}.`)).toBeVisible();
  await page.getByRole('button', { name: 'Wrap now' }).click();
  await expect(page.getByText('The call began this very minute.')).toBeVisible();

  // It began at midnight, as it turns out.
  await page.getByRole('button', { name: `Correct the hours of me on ${inWords(today.toString())}` }).click();
  const form = page.getByRole('form', { name: 'Correct the hours' });
  await form.getByLabel('Call', { exact: true }).fill('0:00');
  await form.getByRole('button', { name: 'Keep the hours' }).click();
  await expect(page.getByText(/^On the clock since 00:00/)).toBeVisible();
  await clean(page);
  await page.getByRole('button', { name: 'Wrap now' }).click();
  await expect(page.getByText(/^Wrapped at \d\d:\d\d\.$/)).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.getByText('The clock runs on.')).toBeVisible();
  await page.getByRole('button', { name: 'Wrap now' }).click();
  await expect(page.getByRole('button', { name: 'Wrap now' })).toHaveCount(0);
  expect(complaints.filter((said) => !said.includes('422'))).toEqual([]);
});

test('afterwards: hours entered and corrected, overtime approved, what it comes to, a hand paid', async ({ page }) => {
  const complaints = await open(page);
  const first = inWords(before(2));
  await page.getByRole('button', { name: `Enter the hours of ${first}` }).click();
  const form = page.getByRole('form', { name: 'Hours worked' });
  await expect(form.getByLabel('Call', { exact: true })).toHaveValue('09:00');
  await form.getByLabel('Call', { exact: true }).fill('7:00');
  await form.getByLabel('Wrap', { exact: true }).fill('late');
  await form.getByRole('button', { name: 'Keep the hours' }).click();
  await expect(form.getByText('Wrap is not a time; write it as 14:00.')).toBeVisible();
  await form.getByLabel('Wrap', { exact: true }).fill('22:40');
  await form.getByLabel('Unpaid breaks').fill('20 h');
  await form.getByRole('button', { name: 'Keep the hours' }).click();
  await expect(form.getByRole('alert')).toContainText('leave nothing of the 15 h 40 min from call to wrap');
  await form.getByLabel('Unpaid breaks').fill('1 h');
  await form.getByRole('button', { name: 'Keep the hours' }).click();
  await expect(page.getByRole('row', { name: new RegExp(first) })).toContainText('22:40');
  // 14 h 40 -> 15 h of 10: 1,000.00 + 4 x 150.00 + 1 x 200.00.
  await page.getByText('So far USD 1,800.00, before rush, discount and tax').click();
  await expect(hoursOf(page).getByRole('row', { name: 'Together 1,800.00' })).toBeVisible();
  await expect(hoursOf(page).getByText(/4 h 40 min not approved: ask before billing/)).toBeVisible();

  await page.getByRole('button', { name: 'Note that it was asked for' }).click();
  await page.getByLabel('How long').fill('4 h 40 min');
  await page.getByRole('button', { name: 'Keep the ask' }).click();
  await page.getByRole('button', { name: `Note the answer to 4 h 40 min on ${first}` }).click();
  await page.getByLabel('Who answered').fill('Odile Fenn');
  await page.getByRole('button', { name: 'They said yes' }).click();
  await expect(hoursOf(page).getByRole('listitem').filter({ hasText: '4 h 40 min approved by Odile Fenn' })).toBeVisible();
  await expect(hoursOf(page).getByText(/not approved/)).toHaveCount(0);

  await page.getByRole('button', { name: 'Add hours' }).click();
  await form.getByLabel('Date of the call').fill(before(1));
  await form.getByLabel('Call', { exact: true }).fill('09:00');
  await form.getByLabel('Wrap', { exact: true }).fill('2:30');
  await form.getByRole('button', { name: /Who/ }).click();
  await page.getByRole('option', { name: 'Mara Quill' }).click();
  await form.getByRole('button', { name: 'Keep the hours' }).click();
  // A wrap before the call is on the next date; today that may still be to come.
  const kept = (await host.call('hours.of', { jobId: job.id })) as { days: { handName: string; wrap: string | null }[] };
  if (kept.days.some(({ handName }) => handName === 'Mara Quill')) {
    await expect(hoursOf(page).getByText(/Mara Quill: 17 h 30 min from call to wrap\. Over 14 h, nobody should be driving/)).toBeVisible();
  } else {
    await expect(form.getByRole('alert')).toContainText('is still to come');
    await form.getByLabel('Wrap', { exact: true }).fill('18:00');
    await form.getByRole('button', { name: 'Keep the hours' }).click();
  }
  await page.getByRole('button', { name: 'Note a payment to Mara Quill' }).click();
  const paid = page.getByRole('form', { name: 'Payment to Mara Quill' });
  await expect(paid.getByLabel('Amount, USD')).toHaveValue('400.00');
  await paid.getByLabel('Amount, USD').fill('150');
  await paid.getByRole('button', { name: 'Keep the payment' }).click();
  await expect(page.getByRole('row', { name: /Mara Quill .*150\.00 250\.00/ })).toBeVisible();
  await clean(page);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(page.getByRole('row', { name: /Mara Quill .*0\.00 400\.00/ })).toBeVisible();

  await page.getByRole('button', { name: `Take off the hours of me on ${first}` }).click();
  await page.getByRole('button', { name: 'Put them back' }).click();
  await expect(page.getByRole('row', { name: new RegExp(`${first} me shoot`) })).toContainText('07:00');
  expect(complaints.filter((said) => !/4(00|22)/.test(said))).toEqual([]);
});

test('expenses: a receipt chosen or dropped, another currency, what is too large or of another kind; taken off and put back', async ({
  page,
}) => {
  const complaints = await open(page);
  await page.getByRole('button', { name: 'Add an expense' }).click();
  const form = page.getByRole('form', { name: 'New expense' });
  await form.getByRole('button', { name: 'Keep the expense' }).click();
  await expect(form.getByText('What is empty; say what it was.')).toBeVisible();
  await form.getByLabel('What', { exact: true }).fill('Parking at the dock');
  await form.getByLabel('Amount paid').fill('12');
  await form.getByLabel('Mark-up').fill('12.5');

  const receipt = form.getByLabel('Receipt: drop it here, or choose it');
  await receipt.setInputFiles({ name: 'dock.pdf', mimeType: 'application/pdf', buffer: Buffer.from('Parking 12.00') });
  await expect(form.getByText(/^dock\.pdf is no PDF and no JPEG/)).toBeVisible();
  const folder = mkdtempSync(join(tmpdir(), 'kitbound-'));
  const large = join(folder, 'long.pdf');
  const handle = openSync(large, 'w');
  ftruncateSync(handle, 200_000_000);
  closeSync(handle);
  await receipt.setInputFiles(large);
  await expect(form.getByText(/^long\.pdf is larger than 8 MB/)).toBeVisible();
  rmSync(folder, { recursive: true });
  await receipt.setInputFiles({ name: 'dock.pdf', mimeType: 'application/pdf', buffer: Buffer.from('%PDF-1.7 a receipt') });
  await expect(form.getByText('dock.pdf is ready.')).toBeVisible();
  await form.getByRole('button', { name: 'Keep the expense' }).click();
  await expect(spentOn(page).getByRole('row', { name: /Parking at the dock/ })).toContainText('13.50');

  await page.getByRole('button', { name: 'One more expense' }).click();
  await form.getByLabel('What', { exact: true }).fill('Cable');
  await form.getByLabel('Amount paid').fill('30');
  await form.getByLabel('Currency').fill('cad');
  await expect(form.getByLabel('USD for one CAD')).toBeVisible();
  const dropped = await page.evaluateHandle(() => {
    const data = new DataTransfer();
    data.items.add(new File([new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 16])], 'cable.jpeg'));
    return data;
  });
  await form.getByRole('group', { name: 'Receipt' }).dispatchEvent('drop', { dataTransfer: dropped });
  await expect(form.getByText('cable.jpeg is ready.')).toBeVisible();
  await clean(page);
  await form.getByRole('button', { name: 'Keep the expense' }).click();
  await expect(
    spentOn(page).getByText(/"Cable" of .* is in CAD and this job in USD: it is not charged on until its rate is typed/),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Change Cable' }).click();
  const change = page.getByRole('form', { name: 'Change the expense' });
  await change.getByLabel('USD for one CAD').fill('0.715');
  await change.getByRole('button', { name: 'Keep the expense' }).click();
  await expect(spentOn(page).getByRole('row', { name: /Together/ })).toContainText('34.95');

  await page.getByRole('button', { name: 'Take off Parking at the dock' }).click();
  await page.getByRole('button', { name: 'Put it back' }).click();
  const row = spentOn(page).getByRole('row', { name: /Parking at the dock/ });
  const saving = page.waitForEvent('download');
  await row.getByRole('button', { name: 'Save the receipt dock.pdf' }).click();
  expect((await saving).suggestedFilename()).toBe('dock.pdf');
  expect(complaints).toEqual([]);
});

test('all of it by keyboard: call, an expense begun and left, hours kept with Enter', async ({ page }) => {
  const complaints = await open(page);
  await pressEnter(page.getByRole('button', { name: 'Call now' }));
  await expect(page.getByRole('button', { name: 'Wrap now' })).toBeVisible();
  await pressEnter(page.getByRole('button', { name: 'Add an expense' }));
  await expect(page.getByRole('form', { name: 'New expense' }).getByLabel('What', { exact: true })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('form', { name: 'New expense' })).toHaveCount(0);
  await pressEnter(page.getByRole('button', { name: `Enter the hours of ${inWords(before(1))}` }));
  await expect(page.getByLabel('Date of the call')).toBeFocused();
  await page.getByLabel('Wrap', { exact: true }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByText(`The hours of ${inWords(before(1))} are in.`)).toBeVisible();
  expect(complaints).toEqual([]);
});
