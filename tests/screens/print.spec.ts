import { PDFDocument } from 'pdf-lib';
import { expect, test, type Locator, type Page } from 'playwright/test';
import type { Job } from '../../core/contract/jobs.ts';
import { startHost, type TestHost } from '../host.ts';
import { fill, goTo, setUp } from './stage.ts';

let host: TestHost;
let jobs: { ink: Job; inquiry: Job };
test.beforeAll(async () => {
  host = await startHost();
  await setUp(host);
  jobs = await fill(host);
});
test.afterAll(async () => {
  await host.close();
});

async function onPaper(page: Page, job: Job): Promise<Locator> {
  await page.goto(host.page);
  await goTo(page, `/jobs/${job.id}`);
  await page
    .getByRole('region', { name: 'Kit', exact: true })
    .or(page.getByRole('heading', { name: 'Kit', exact: true }))
    .first()
    .waitFor();
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  // The width of the lower sheet between its margins.
  await page.setViewportSize({ width: 680, height: 960 });
  return page.getByRole('main');
}

test('the job’s sheet on paper: the sender on top, the job in one column, nothing that can only be pressed', async ({ page }) => {
  const sheet = await onPaper(page, jobs.ink);
  await expect(sheet.getByText('Slate & Tally Pictures', { exact: true })).toBeVisible();
  await expect(sheet.getByText('12 Harbor Lane, Duluth, Minnesota · hello@slate.example · +1 218 555 0142')).toBeVisible();
  await expect(sheet.getByText('Milwaukee, Wisconsin, US')).toBeVisible();
  await expect(page.getByRole('navigation')).toBeHidden();
  const controls = await sheet.locator('button, input, textarea, select').filter({ visible: true }).allTextContents();
  expect(controls).toEqual([]);
  expect(await sheet.evaluate((main) => main.scrollWidth - main.clientWidth)).toBeLessThanOrEqual(1);
  // White paper and dark ink, though the screen is dark.
  expect(
    await page.evaluate(() => [getComputedStyle(document.documentElement).backgroundColor, getComputedStyle(document.body).color]),
  ).toEqual(['rgb(255, 255, 255)', 'rgb(29, 26, 21)']);
});

test('Print is an action of a job, and its paper has few pages of the size that is asked for', async ({ page }) => {
  await page.goto(host.page);
  await goTo(page, `/jobs/${jobs.inquiry.id}`);
  await page.evaluate(() => {
    Object.assign(window, { printed: 0, print: () => (window as unknown as { printed: number }).printed++ });
  });
  await page.getByRole('button', { name: 'Print the sheet' }).click();
  expect(await page.evaluate(() => (window as unknown as { printed: number }).printed)).toBe(1);
  for (const [format, width, height] of [
    ['A4', 595, 842],
    ['Letter', 612, 792],
  ] as const) {
    const pdf = await PDFDocument.load(await page.pdf({ format }));
    const [first] = pdf.getPages();
    expect(first?.getWidth()).toBeCloseTo(width, -0.5);
    expect(first?.getHeight()).toBeCloseTo(height, -0.5);
    expect(pdf.getPageCount()).toBeLessThanOrEqual(5);
  }
});
