import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import type { Setup } from '../../core/contract/setup.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';

let host: TestHost;
let jobs: Record<'ink' | 'pencil' | 'inquiry', Job>;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  const { setup } = (await host.call('setup.get')) as { setup: Setup };
  const { version, ...fields } = setup;
  const tax = (name: string, percent: string) => ({ name, percent, included: false });
  const taxes = { registered: true, tax: tax('State tax', '5'), moreTaxes: [tax('City tax', '1')] };
  await host.call('setup.save', { version, fields: { ...fields, ...taxes } });
  jobs = await fill(host);
});
test.afterAll(async () => {
  await host.close();
});

async function axe(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze();
  expect(violations.map((each) => `${each.id}: ${each.nodes.map((node) => node.html.slice(0, 160)).join(' | ')}`)).toEqual([]);
}

const lineOf = (page: Page, text: string) => page.locator('details', { has: page.locator('summary', { hasText: text }) });
const total = (page: Page) => page.getByText(/^Total USD/).locator('..');
const change = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
/** The box itself is drawn by its label: that is what a hand presses. */
const press = (page: Page, role: 'radio' | 'checkbox', name: string | RegExp) =>
  page.locator('label', { has: page.getByRole(role, { name, ...(typeof name === 'string' ? { exact: true } : {}) }) }).click();

test('offers, a discount, costs, taxes and terms; every step is taken back', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  await goTo(page, `/jobs/${jobs.inquiry.id}`);
  const quote = page.getByRole('region', { name: /^Quote/ });

  await test.step('two offers, of which one has a second camera', async () => {
    await change(page, 'Offers');
    await page.getByRole('textbox', { name: 'Offer 1' }).fill('');
    await change(page, 'Set the offers');
    await expect(page.getByText(/^Offer 1 is empty; a paper with offers has two or three/)).toBeVisible();
    await page.getByRole('textbox', { name: 'Offer 1' }).fill('One camera');
    await change(page, 'Set the offers');
    await press(page, 'radio', /^Two cameras/);
    await change(page, 'Add a line');
    const form = page.getByRole('form', { name: 'Add a line' });
    await form.getByLabel('What').fill('Second camera');
    await form.getByLabel('Unit', { exact: true }).fill('hours');
    await form.getByLabel('Quantity').fill('6h30');
    await form.getByLabel('Unit price').fill('0.1k');
    await form.getByLabel('Costs me').fill('400');
    await form.getByRole('button', { name: 'Add', exact: true }).click();
    await expect(lineOf(page, 'Second camera').locator('summary')).toContainText('6.5 hours × 100.00');
    await expect(lineOf(page, 'Second camera').locator('summary')).toContainText('costs me 400.00');
    await axe(page);
    await press(page, 'radio', /^One camera/);
    await expect(lineOf(page, 'Second camera')).toBeHidden();
    await press(page, 'radio', /^Two cameras/);
    await press(page, 'checkbox', /^The client takes "Two cameras"/);
    await expect(page.getByRole('radio', { name: /^Two cameras, .*, taken$/ })).toBeVisible();
  });

  await test.step('a discount over ticked sections', async () => {
    await change(page, 'Discount');
    await axe(page);
    await page.getByLabel('Per cent, worked out first').fill('10');
    for (const section of ['kit', 'editing', 'extras', 'rush']) await press(page, 'checkbox', section);
    await change(page, 'Take it off');
    await expect(lineOf(page, 'Discount 10 %').locator('summary')).toContainText(/-[1-9]/);
    await change(page, 'Discount');
    await expect(page.getByRole('checkbox', { name: 'kit' })).not.toBeChecked();
    await change(page, 'Leave it');
  });

  await test.step('the keys take it back, but not in a field', async () => {
    await lineOf(page, 'Second camera').locator('summary').click();
    await page.getByLabel('Costs me').last().press('Control+z');
    await expect(lineOf(page, 'Discount 10 %')).toBeVisible();
    await page.locator('main').focus();
    await page.keyboard.press('Control+z');
    await expect(lineOf(page, 'Discount 10 %')).toBeHidden();
  });

  await test.step('one tax only, then none, with its reason', async () => {
    const line = lineOf(page, 'Second camera');
    await line.getByRole('button', { name: /Tax$/ }).click();
    await page.getByRole('option', { name: 'exempt' }).click();
    await line.getByLabel('Why, printed').fill('Training, exempt here.');
    await change(page, 'Change');
    await expect(line.locator('summary')).toContainText('exempt');
    await expect(quote.getByText('Training, exempt here.').first()).toBeVisible();
    await axe(page);
  });

  await test.step('a line is dropped and put back', async () => {
    const before = await total(page).textContent();
    await page.getByRole('button', { name: 'Drop Second camera' }).click();
    await expect(total(page)).not.toHaveText(before ?? '');
    await page.getByRole('button', { name: 'Put back Second camera' }).click();
    await expect(lineOf(page, 'Second camera')).toBeVisible();
  });

  await test.step('a holiday, and terms from a preset', async () => {
    await change(page, 'Public holidays');
    await page.getByRole('group', { name: 'Dates of the job' }).locator('label').first().click();
    await change(page, 'Price them so');
    await expect(page.locator('summary', { hasText: /holiday/i }).first()).toBeVisible();
    await change(page, 'Terms');
    await change(page, 'Company that pays late');
    await expect(page.getByLabel('Deposit', { exact: true })).toHaveValue('0');
    await axe(page);
    await change(page, 'Keep these terms');
    await expect(quote.getByText(/^Deposit, /)).toBeHidden();
    await change(page, 'Take back the last change');
    await expect(quote.getByText(/^Deposit, /)).toBeVisible();
  });
  expect(complaints).toEqual([]);
});

test('a made quote says what calling off owes', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, `/jobs/${jobs.ink.id}`);
  await expect(page.getByText(/^Called off now, it owes USD [\d,.]+\. .* before first call the scale says 50 % of/)).toBeVisible();
});

test('a preset fills the terms of a card; what a change would do is said before it is saved', async ({ page }) => {
  const { cards } = (await host.call('rates.list')) as { cards: { id: string }[] };
  await page.goto(host.page);
  await goTo(page, `/rates/${cards[0]?.id}`);
  await expect(page.getByText(/^Your floor is USD 953\.92 a day/)).toBeVisible();
  await change(page, 'New client, short notice');
  await expect(page.getByLabel('Deposit', { exact: true })).toHaveValue('100');
  await expect(page.getByText('The last 2 quotes would come to the same together.')).toBeVisible();
  await page.getByLabel('A day', { exact: true }).fill('1.1k');
  await expect(page.getByText(/^The last 2 quotes would come to USD [\d,.]+ more together\.$/)).toBeVisible();
  await expect(page.getByRole('rowheader', { name: /^Robotics league final/ })).toBeVisible();
  await axe(page);
  await page.getByRole('button', { name: /Currency$/ }).click();
  await page.getByRole('option', { name: 'EUR', exact: true }).click();
  await expect(page.getByText('None of the last 2 quotes can be compared.')).toBeVisible();
  await expect(page.getByText('It was made in USD, and the card would be in EUR.').first()).toBeVisible();
  await axe(page);
});

test('a picture and a colour for papers, and one more tax', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, '/setup');
  const choose = (name: string, mimeType: string, buffer: Buffer) =>
    page.getByLabel(/PNG or JPEG, at most 220 kB$/).setInputFiles({ name, mimeType, buffer });
  await choose('notes.png', 'image/png', Buffer.from('no picture'));
  await expect(page.getByText(/^notes\.png is neither PNG nor JPEG/)).toBeVisible();
  await choose('large.png', 'image/png', Buffer.alloc(230_000));
  await expect(page.getByText(/^large\.png has 230 kB; at most 220 kB are kept/)).toBeVisible();
  const dot = await page.locator('header').screenshot({ type: 'jpeg', quality: 40 });
  await choose('head.jpg', 'image/jpeg', dot);
  await expect(page.getByRole('img', { name: 'On top of your papers' })).toBeVisible();
  await press(page, 'radio', 'my own');
  await page.getByLabel('My own colour').fill('mauve');
  await change(page, 'Save');
  await expect(page.getByText(/is not a colour/)).toBeVisible();
  await press(page, 'radio', 'wine');
  await change(page, 'One more tax');
  await page.getByLabel('Further taxes on every line, row 2: Name').fill('Quarter tax');
  await page.getByLabel('Further taxes on every line, row 2: Rate, %').fill('0,5');
  await axe(page);
  await change(page, 'Save');
  await expect(page.getByText(/^Saved\. New quotes use it/)).toBeVisible();
  const { setup } = (await host.call('setup.get')) as { setup: Setup };
  expect(setup.accent).toBe('#7a2f4b');
  expect(setup.logo?.type).toBe('image/jpeg');
  expect(setup.moreTaxes?.map(({ name, percent }) => `${name} ${percent}`)).toEqual(['City tax 1', 'Quarter tax 0.5']);
  await change(page, 'Remove the picture');
  await change(page, 'Save');
  await expect(page.getByText(/^Saved\. New quotes use it/)).toBeVisible();
  expect(((await host.call('setup.get')) as { setup: Setup }).setup.logo).toBeUndefined();
});
