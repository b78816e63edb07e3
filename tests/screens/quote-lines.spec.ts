import { expect, test, type Page } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import { blankHand } from '../../core/people/blank.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp, watch } from './stage.ts';

let host: TestHost;
let inquiry: Job;
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  ({ inquiry } = await fill(host));
  const rates = [{ role: 'shoot', dayRate: '300', currency: 'USD', from: '2026-01-01' }];
  await host.call('people.saveHand', { fields: { ...blankHand('Ana Berg'), rates } });
});
test.afterAll(async () => {
  await host.close();
});

const lineOf = (page: Page, text: string) => page.locator('details', { has: page.locator('summary', { hasText: text }) });
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).click();
const extras = (page: Page) => page.locator('summary', { hasText: /^(Crane|Permit|Runner)/ }).allTextContents();

async function addLine(page: Page, what: string, price: string): Promise<void> {
  await press(page, 'Add a line');
  const form = page.getByRole('form', { name: 'Add a line' });
  await form.getByLabel('What').fill(what);
  await form.getByLabel('Unit price').fill(price);
  await form.getByRole('button', { name: 'Add', exact: true }).click();
  await expect(lineOf(page, what)).toBeVisible();
}

test('a line is renamed, lines of one’s own are moved, an offer in the middle is taken out', async ({ page }) => {
  const complaints = watch(page);
  await page.goto(host.page);
  await goTo(page, `/jobs/${inquiry.id}`);

  await test.step('a line of the card in other words, and back', async () => {
    const shooting = lineOf(page, 'Shooting').first();
    await shooting.locator('summary').click();
    await shooting.getByLabel('What').fill('');
    await shooting.getByRole('button', { name: 'Change', exact: true }).click();
    await expect(shooting.getByText(/is empty; say what it is for/)).toBeVisible();
    await shooting.getByLabel('What').fill('Filming the matches');
    await shooting.getByRole('button', { name: 'Change', exact: true }).click();
    const renamed = lineOf(page, 'Filming the matches');
    await expect(renamed.locator('summary')).toContainText('changed by hand');
    await expect(renamed.getByText(/^Changed by hand: called "Filming the matches" instead of "Shooting"/)).toBeVisible();
    await page.reload();
    await expect(renamed).toBeVisible();
    await press(page, 'Take back the last change');
    await expect(lineOf(page, 'Shooting').first()).toBeVisible();
  });

  await test.step('own lines go up, down and into another section', async () => {
    for (const what of ['Crane', 'Permit', 'Runner']) await addLine(page, what, '50');
    await lineOf(page, 'Runner').locator('summary').click();
    await press(page, 'Move up Runner');
    await expect.poll(async () => (await extras(page)).map((text) => text.split(' ')[0]?.slice(0, 5))).toEqual(['Crane', 'Runne', 'Permi']);
    await press(page, 'Move down Runner');
    await expect.poll(async () => (await extras(page)).map((text) => text.slice(0, 5))).toEqual(['Crane', 'Permi', 'Runne']);
    await expect(page.getByRole('button', { name: 'Move down Runner' })).toBeHidden();
    await lineOf(page, 'Runner')
      .getByRole('button', { name: /Section$/ })
      .click();
    await page.getByRole('option', { name: 'kit' }).click();
    await lineOf(page, 'Runner').getByRole('button', { name: 'Change', exact: true }).click();
    await expect.poll(async () => (await extras(page)).map((text) => text.slice(0, 5))).toEqual(['Runne', 'Crane', 'Permi']);
    await expect(page.getByRole('button', { name: 'Move up Shooting' })).toHaveCount(0);
  });

  await test.step('a hand and a sub-hire are counted, opened and taken off', async () => {
    await press(page, 'Costs to me');
    const form = page.getByRole('form', { name: 'Costs to me, never printed' });
    await form.getByRole('button', { name: 'Count them' }).click();
    await expect(form.getByText(/is empty; name a hand or what is rented/)).toBeVisible();
    await form.getByRole('button', { name: /Hand$/ }).click();
    await page.getByRole('option', { name: 'Ana Berg' }).click();
    await form.getByLabel('Sub-hire of').fill('Long lens');
    await form.getByLabel('Costs', { exact: true }).fill('120');
    await form.getByRole('button', { name: 'Count them' }).click();
    await expect(lineOf(page, 'Ana Berg').locator('summary')).toContainText('1,500.00');
    await lineOf(page, 'Ana Berg').locator('summary').click();
    await expect(page.getByText(/^5 days at 300\.00, the rate of Ana Berg for shoot/)).toBeVisible();
    await lineOf(page, 'Long lens').locator('summary').click();
    await press(page, 'Take off Long lens');
    await expect(lineOf(page, 'Long lens')).toHaveCount(0);
  });

  await test.step('of three offers the second is taken out; the third keeps its line', async () => {
    await press(page, 'Offers');
    await page.getByRole('textbox', { name: 'Offer 3' }).fill('With a lift');
    await press(page, 'Set the offers');
    await page.locator('label', { has: page.getByRole('radio', { name: /^With a lift/ }) }).click();
    await addLine(page, 'Scissor lift', '300');
    await press(page, 'Offers');
    await page.getByRole('textbox', { name: 'Offer 2' }).fill('');
    await press(page, 'Set the offers');
    await expect(page.getByRole('radio', { name: /^Two cameras/ })).toHaveCount(0);
    await page.locator('label', { has: page.getByRole('radio', { name: /^With a lift/ }) }).click();
    await expect(lineOf(page, 'Scissor lift')).toBeVisible();
    await press(page, 'Take back the last change');
    await expect(page.getByRole('radio', { name: /^Two cameras/ })).toHaveCount(1);
  });

  await test.step('the yes names the offer, and the sheet says which', async () => {
    await press(page, /^Make the quote/);
    await expect(page.getByRole('heading', { name: /^Version 1 is made/ })).toBeVisible();
    await expect(page.getByRole('button', { name: 'Ink it' })).toBeDisabled();
    await page.getByRole('button', { name: /To which offer$/ }).click();
    const option = page.getByRole('option', { name: /^3\. With a lift/ });
    const amount = /USD ([\d,.]+)/.exec((await option.textContent()) ?? '')?.[1] ?? 'no amount';
    await option.click();
    await press(page, 'Ink it');
    await expect(page.getByText(/said yes by mail to version 1, offer 3 "With a lift": USD [\d,.]+\./)).toBeVisible();
    await expect(page.getByText(/^Total USD/).locator('..')).toContainText(amount);
  });
  expect(complaints).toEqual([]);
});
