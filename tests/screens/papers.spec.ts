/**
 * Documents in Setup, and the papers of a job over the border: what must be settled, the certificate, the customs list.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import { startHost, type TestHost } from '../host.ts';
import { pressEnter } from './keys.ts';
import { goTo, setUp, today, watch } from './stage.ts';

let host: TestHost;
let job: Job;
test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
  const { places } = (await host.call('places.search', { text: 'Thunder Bay', country: 'CA', limit: 1 })) as {
    places: Record<string, unknown>[];
  };
  const { kind: _kind, people: _people, ...place } = places[0] ?? {};
  const date = today().add({ days: 20 }).toString();
  const days = [{ date, kind: 'shoot', call: `${date}T12:00`, wrap: `${date}T18:00` }];
  ({ job } = (await host.call('jobs.add', { facts: { title: 'Curling championship', place, days } })) as { job: Job });
});
test.afterEach(async () => {
  await host.close();
});
const put = async (fields: object): Promise<string> => ((await host.call('kit.save', { fields })) as { item: { id: string } }).item.id;
const answer = (page: import('playwright/test').Page) => page.getByRole('region', { name: /^(Free|Not possible)/ });

test('a passport is tried on, noted by the keys, and the answer follows; its scan is put with it', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  await goTo(page, `/jobs/${job.id}`);
  await expect(page.getByRole('heading', { name: 'Free if …' })).toBeVisible();
  await expect(answer(page).getByText(/no passport is on file/)).toBeVisible();
  await answer(page).getByRole('button', { name: 'Note the passport' }).click();
  await expect(answer(page).getByText('As if the passport were at hand, and good for these days.')).toBeVisible();
  await pressEnter(page.getByRole('button', { name: 'Note it in Setup' }).first());

  await expect(page.getByRole('heading', { name: 'New passport' })).toBeVisible();
  await page.getByLabel('Issued in').fill('Atlantis');
  await page.getByLabel('Last day').fill('2034-05-06');
  await pressEnter(page.getByRole('button', { name: 'Save the document' }));
  await expect(page.getByText(/"Atlantis" is no country/)).toBeVisible();
  await page.getByLabel('Issued in').fill('united states');
  await pressEnter(page.getByRole('button', { name: 'Save the document' }));
  await expect(page.getByRole('link', { name: 'Passport' })).toBeVisible();
  await expect(page.getByRole('cell', { name: '6 May 2034' })).toBeVisible();

  await page.getByRole('link', { name: 'Passport' }).click();
  // By its label: the page that is left has a field for files too.
  await page
    .getByLabel(/^Scan: drop it here/)
    .setInputFiles({ name: 'passport.pdf', mimeType: 'application/pdf', buffer: Buffer.from('%PDF-1.7 scan') });
  await page.getByRole('button', { name: 'Keep the scan' }).click();
  await expect(page.getByText('The scan is with Passport.')).toBeVisible();
  await page.getByRole('button', { name: 'Take it off', exact: true }).click();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(page.getByRole('button', { name: 'Save the scan passport.pdf' })).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  await page.getByRole('button', { name: 'Take off the list: Passport' }).click();
  await expect(page.getByText(/^Nothing on file\./)).toBeVisible();
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(page.getByText('with a scan')).toBeVisible();
  await goTo(page, `/jobs/${job.id}`);
  await expect(answer(page).getByText(/no right to work there is on file/)).toBeVisible();
  await expect(answer(page).getByText(/no passport is on file/)).toHaveCount(0);
  expect(complaints).toEqual([]);
});

test('the customs list says what is missing, takes a dated rate, and is put on paper', async ({ page }) => {
  const complaints = watch(page);
  const camera = await put({
    name: 'Camera',
    owned: 1,
    units: [{ serial: 'A1' }],
    grams: 1240,
    origin: 'JP',
    value: { minor: 300_000, currency: 'USD' },
  });
  const light = await put({ name: 'Light', owned: 1, units: [{ serial: 'L1' }], origin: 'DE', value: { minor: 50_000, currency: 'EUR' } });
  await host.call('kit.setForJob', { jobId: job.id, needs: [camera, light].map((item) => ({ item, count: 1 })) });
  await page.goto(host.page);
  await goTo(page, `/jobs/${job.id}`);
  const papers = page.getByRole('region', { name: 'Papers to take' });
  await expect(papers.getByText('Light has no weight on the kit list.')).toBeVisible();
  await expect(papers.getByText(/EUR 500\.00 and USD 3,000\.00/)).toBeVisible();
  await papers.getByLabel('USD for one EUR').fill('1.1');
  await pressEnter(papers.getByRole('button', { name: 'Use the rate' }));
  await expect(papers.getByText(/USD 3,550\.00 \(1 EUR = 1\.1 on/)).toBeVisible();
  await expect(papers.getByText(/a fee of USD 255\.00, and USD 1,420\.00 as security/)).toBeVisible();
  const saved = page.waitForEvent('download');
  await pressEnter(papers.getByRole('button', { name: 'Put the customs list on paper' }));
  expect((await saved).suggestedFilename()).toMatch(/^Customs list .*Curling championship\.pdf$/);
  await expect(papers.getByRole('button', { name: /^Save Customs list/ })).toHaveCount(2);
  await expect(answer(page).getByText(/the customs list is made\. Whether it is enough: ask/)).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  expect(complaints).toEqual([]);
});

test('a certificate is asked of the insurer and noted as sent, each with its way back', async ({ page }) => {
  const complaints = watch(page);
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(host.page);
  await goTo(page, `/jobs/${job.id}`);
  await page.getByRole('button', { name: 'Fill in what the job knows' }).click();
  const form = page.getByRole('form', { name: 'What the job knows' });
  await form.getByText('Insurance certificate is asked for').click();
  await form.getByLabel('Names', { exact: true }).fill('Northern Ice Hall');
  await form.getByLabel('Limit at least, whole units').fill('2,000,000');
  await form.getByText('remote pilot licence').click();
  await pressEnter(form.getByRole('button', { name: 'Keep what the job knows' }));
  const papers = page.getByRole('region', { name: 'Papers to take' });
  await expect(papers.getByText('USD 2,000,000.00')).toBeVisible();
  await expect(papers.getByText(/^No liability insurance is on file/)).toBeVisible();
  await expect(answer(page).getByText(/asks for the remote pilot licence, and none is on file/)).toBeVisible();

  await papers.getByRole('button', { name: 'Copy a message to the insurer' }).click();
  await expect(page.getByText('Copied. Paste it into a mail to your insurer.')).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('To be named: Northern Ice Hall');
  await expect(papers.getByText(/^asked /)).toBeVisible();
  await pressEnter(papers.getByRole('button', { name: 'It is sent to the client' }));
  await expect(papers.getByText(/^sent /)).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(papers.getByText('not sent yet')).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  expect(complaints).toEqual([]);
});
