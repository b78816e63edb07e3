/**
 * People on the screen: kept, refused beside their inputs, put away and taken out, brought in from a file, folded together; and named on a job.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import type { Client, ClientFields } from '../../core/contract/people.ts';
import { blankClient, blankHand } from '../../core/people/blank.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';
import { pressEnter } from './keys.ts';

const LONG_NAME = 'Northern lake harbour masters’ yearly gathering and supper';

let host: TestHost;
test.beforeEach(async () => {
  host = await startHost();
  await setUp(host);
});
test.afterEach(async () => {
  await host.close();
});

async function keep(fields: ClientFields, stored?: Client): Promise<Client> {
  const of = stored ? { id: stored.id, version: stored.version } : {};
  return ((await host.call('people.saveClient', { ...of, fields })) as { client: Client }).client;
}

async function open(page: Page, path: string): Promise<void> {
  await page.goto(host.page);
  await goTo(page, path);
}

test('a client is typed by keyboard alone, corrected where it was wrong, and listed', async ({ page }) => {
  const complaints = watch(page);
  await open(page, '/people');
  await expect(page.getByText('No client yet.')).toBeVisible();
  await pressEnter(page.getByRole('button', { name: 'New client' }));
  await page.getByLabel('Name', { exact: true }).focus();
  await page.keyboard.type(LONG_NAME);
  await pressEnter(page.getByRole('button', { name: 'Add a contact' }));
  await page.getByLabel('Contacts, the main one first, row 1: Name').focus();
  await page.keyboard.type('Ilse Marrow');
  await page.getByLabel('Country, two letters').focus();
  await page.keyboard.type('usa');
  await page.getByLabel('Pays within').focus();
  await page.keyboard.type('sixty');
  await page.keyboard.press('Enter');
  await expect(page.getByText(/Pays within was not read/)).toBeVisible();
  await page.getByLabel('Pays within').fill('60');
  await page.keyboard.press('Enter');
  await expect(page.getByText(/Country, two letters is not a country; write it as US/)).toBeVisible();
  await page.getByLabel('Country, two letters').fill('us');
  await page.getByRole('button', { name: 'Add a holiday' }).click();
  const holiday = (column: string) => page.getByLabel(`Dates on which nobody is there, both ends counted, row 1: ${column}`);
  await holiday('From').fill('2027-07-06');
  await holiday('To').fill('2027-07-05');
  await holiday('Name').fill('Summer break');
  await holiday('Name').press('Enter');
  await expect(page.getByText(/row 1: To is before its first date/)).toBeVisible();
  await holiday('To').fill('2027-07-16');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: LONG_NAME })).toBeVisible();
  const { clients } = (await host.call('people.clients')) as { clients: Client[] };
  expect(clients[0]?.closed).toEqual([{ from: '2027-07-06', to: '2027-07-16', name: 'Summer break' }]);
  await page.getByRole('link', { name: 'All clients' }).click();
  await expect(page.getByRole('row', { name: /Ilse Marrow/ })).toContainText('pays in 60 days');
  // The refused save is reported by the browser itself.
  expect(complaints.filter((text) => !text.includes('400'))).toEqual([]);
});

test('two who save the same client see both states and choose', async ({ page }) => {
  const first = await keep(blankClient('Quay Hall'));
  await open(page, `/people/client/${first.id}`);
  await page.getByLabel('Tax id').fill('QH 12');
  await keep({ ...blankClient('Quay Hall'), taxId: 'QH 99' }, first);
  await page.getByRole('button', { name: 'Save the client' }).click();
  const row = page.getByRole('row', { name: /Tax id/ });
  await expect(row).toContainText('QH 99');
  await expect(row).toContainText('QH 12');
  await page.getByRole('button', { name: 'Keep what is typed here' }).click();
  await expect(page.getByText('Quay Hall is saved.')).toBeVisible();
  const stored = (await host.call('people.client', { id: first.id })) as { client: Client };
  expect(stored.client.taxId).toBe('QH 12');

  await page.getByLabel('Tax id').fill('QH 13');
  await keep({ ...blankClient('Quay Hall'), taxId: 'QH 77' }, stored.client);
  await page.getByRole('button', { name: 'Save the client' }).click();
  await page.getByRole('button', { name: 'Take what is stored' }).click();
  await expect(page.getByLabel('Tax id')).toHaveValue('QH 77');
});

test('a client is put away, stays open to be taken out again, and is listed with those put away', async ({ page }) => {
  const { id } = await keep(blankClient('Quay Hall'));
  await open(page, `/people/client/${id}`);
  await page.getByRole('button', { name: 'Put away' }).click();
  await expect(page.getByText(/^Put away on/)).toBeVisible();
  await goTo(page, '/people');
  await expect(page.getByText('No client yet.')).toBeVisible();
  await page.getByText('put away', { exact: true }).click();
  await page.getByRole('button', { name: 'Take out again: Quay Hall' }).click();
  await expect(page.getByText('Nobody is put away.')).toBeVisible();
  await page.getByText('clients', { exact: true }).click();
  await expect(page.getByRole('link', { name: 'Quay Hall' })).toBeVisible();
});

test('a file is tried, brought in, and its doubles are folded together', async ({ page }) => {
  await keep(blankClient('Guild of Bakers'));
  await open(page, '/people/bring');
  const file = page.getByLabel('File, CSV or vCard');
  await file.setInputFiles({ name: 'none.csv', mimeType: 'text/csv', buffer: Buffer.from('') });
  await expect(page.getByRole('alert')).toContainText('none.csv is empty.');
  const rows =
    'Name,Organisation,Email\nAda Meer,Pier Nine,ada@pier.example\nBo Ek,,bo@\nOdile F.,"Bakers, Guild of",odile@bakers.example\n';
  await file.setInputFiles({ name: 'contacts.csv', mimeType: 'text/csv', buffer: Buffer.from(rows) });
  await expect(page.getByText('1 new, 1 here already and 1 refused.')).toBeVisible();
  await expect(page.getByRole('row', { name: /Bo Ek/ })).toContainText('is not a mail address');
  await page.getByRole('button', { name: 'Bring in 1' }).click();
  await expect(page.getByText('1 client brought in.')).toBeVisible();

  await keep({ ...blankClient('Pier nine Ltd'), taxId: 'P9' });
  await page.reload();
  await goTo(page, '/people');
  await page.getByText('1 pair looks like the same client').click();
  await page.getByText('the second stays').click();
  await page.getByRole('button', { name: /Pier Nine into Pier nine Ltd$/ }).click();
  await expect(page.getByText('Pier Nine is folded into Pier nine Ltd, and put away.')).toBeVisible();
  // The list is asked anew after the deed; until it answers both rows still stand.
  await expect(page.getByRole('row', { name: /Pier/ })).toHaveCount(1);
  await expect(page.getByRole('row', { name: /Pier/ })).toContainText('ada@pier.example');
});

test('a hand is kept with dated rates, and found in the find box', async ({ page }) => {
  await open(page, '/people/hands');
  await page.getByRole('button', { name: 'New hand' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Cy Ek');
  await page.getByRole('button', { name: 'Add a rate' }).click();
  await page.getByRole('button', { name: /row 1: Role/ }).click();
  await page.getByRole('option', { name: 'audio' }).click();
  await page.getByLabel(/row 1: A day/).fill('420,50');
  await page.getByText('backup: can take over when I am ill').click();
  await page.getByLabel('Insured until').fill('2020-05-01');
  await page.getByRole('button', { name: 'Save the hand' }).click();
  await page.getByRole('heading', { level: 1, name: 'Cy Ek' }).waitFor();
  await page.getByRole('link', { name: 'All hands' }).click();
  const row = page.getByRole('row', { name: /Cy Ek/ });
  await expect(row).toContainText('audio USD 420.50');
  await expect(row).toContainText('insurance ran out on 1 May 2020');
  await page.getByLabel(/^Find a job/).fill('cy');
  await page.getByRole('option', { name: /Cy Ek/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Cy Ek' })).toBeVisible();
});

test('a job gets its client from the inquiry, their terms price it, and what it knows is read as text', async ({ page }) => {
  const { ink, inquiry } = await fill(host);
  await open(page, `/jobs/${ink.id}`);
  await page.getByRole('button', { name: 'New client from this inquiry' }).click();
  await expect(page.getByRole('link', { name: 'Guild of Lakeside Bakers' })).toBeVisible();

  const { clients } = (await host.call('people.clients')) as { clients: (Client & { jobs: number })[] };
  const { id, version, jobs, ...fields } = clients[0]!;
  expect(jobs).toBe(1);
  await keep({ ...fields, depositPercent: '0', asks: { ...fields.asks, purchaseOrder: true } }, { ...fields, id, version });
  await page.reload();
  await goTo(page, `/jobs/${inquiry.id}`);
  await expect(page.getByText(/^Deposit, at first call/)).toBeVisible();
  await page.getByRole('button', { name: 'Change Client' }).click();
  await page.getByRole('combobox', { name: 'Client' }).fill('lakeside');
  await page.getByRole('option', { name: /Guild of Lakeside Bakers/ }).click();
  await expect(page.getByText(/^Deposit, at first call/)).toBeHidden();
  await expect(page.getByText('required, number not known yet')).toBeVisible();

  await page.getByRole('button', { name: 'Change what the job knows' }).click();
  await page.getByLabel('Purchase-order number', { exact: true }).fill('PO 7781');
  await page.getByLabel('Must have').fill('The last stone\nThe handshake');
  await page.getByRole('button', { name: 'Keep what the job knows' }).click();
  await expect(page.getByText('PO 7781')).toBeVisible();
  await expect(page.getByText('The last stone')).toBeVisible();
});

test('every sheet of People can be read by everybody, light and dark, wide and narrow', async ({ browser }) => {
  test.slow();
  const contacts = [
    { name: 'Averylongname Withoutanybreaks', email: 'a.very.long.mail.address@harbourmasters.example', phone: '', what: '' },
  ];
  const { id } = await keep({ ...blankClient(LONG_NAME), contacts, tax: 'exempt' });
  await keep(blankClient(`${LONG_NAME} Ltd`));
  const { hand } = (await host.call('people.saveHand', { fields: { ...blankHand(LONG_NAME), insuredUntil: '2020-01-01' } })) as {
    hand: { id: string };
  };
  const { ink } = await fill(host);
  const paths = [
    '/people',
    '/people/hands',
    '/people/away',
    '/people/bring',
    '/people/new-hand',
    `/people/client/${id}`,
    `/people/hand/${hand.id}`,
  ];
  for (const { colorScheme, ...viewport } of [
    { width: 1280, height: 800, colorScheme: 'light' },
    { width: 900, height: 700, colorScheme: 'dark' },
    { width: 640, height: 400, colorScheme: 'light' },
  ] as const) {
    const page = await (await browser.newContext({ viewport, colorScheme, reducedMotion: 'reduce' })).newPage();
    await open(page, '/people');
    await page.getByText('1 pair looks like the same client').click();
    for (const path of paths) await look(page, path);
    await goTo(page, `/jobs/${ink.id}`);
    await page.getByRole('button', { name: 'Fill in what the job knows' }).click();
    await look(page, `/jobs/${ink.id}`);
    await page.close();
  }
});

async function look(page: Page, path: string): Promise<void> {
  await goTo(page, path);
  await page.getByRole('heading', { level: 1 }).waitFor();
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  expect(violations.map((each) => `${path}: ${each.id}, ${each.nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`)).toEqual([]);
  expect(await page.locator('[data-black]').count(), `black actions at ${path}`).toBeLessThanOrEqual(1);
  const wide = await page.locator('main').evaluate((main) => main.scrollWidth - main.clientWidth);
  expect(wide, `sideways scroll at ${path}`).toBeLessThanOrEqual(1);
}
