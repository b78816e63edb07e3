import Database from 'better-sqlite3';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'playwright/test';
import { layout } from '../../db/folder.ts';
import { startHost } from '../host.ts';
import { fill, setUp, watch } from './stage.ts';

const HOUR = 3_600_000;

test('the sample year stands on the Desk at 1280 by 800 without scrolling: every clock in order, one black action, a clash in words', async ({
  browser,
}) => {
  test.setTimeout(120_000);
  const host = await startHost({ args: ['--sample'] });
  const page = await (await browser.newContext({ viewport: { width: 1280, height: 800 } })).newPage();
  const complaints = watch(page);
  await page.goto(host.page);
  await page.getByRole('heading', { name: 'What bites next' }).waitFor();
  await page.getByRole('link', { name: 'Editing' }).waitFor();
  expect(await page.locator('main').evaluate((main) => main.scrollHeight - main.clientHeight)).toBeLessThanOrEqual(0);
  await expect(page.locator('[data-black]')).toHaveCount(1);
  for (const folded of [/^\d+ more late, the first/, /^\d+ later clocks, the next/]) {
    if (await page.getByText(folded).isVisible()) await page.getByText(folded).click();
  }
  const { clocks } = (await host.call('desk.see')) as { clocks: { at: string; late: boolean; sentence: string }[] };
  const shown = await page
    .getByRole('region', { name: /^What bites next/ })
    .getByRole('listitem')
    .allTextContents();
  expect(shown).toHaveLength(clocks.length);
  for (const [index, { sentence }] of clocks.entries()) expect(shown[index]).toContain(sentence);
  expect(clocks.map(({ at }) => at)).toEqual(clocks.map(({ at }) => at).toSorted((a, b) => Date.parse(a) - Date.parse(b)));
  const next = clocks.find(({ late }) => !late) ?? clocks[0];
  await expect(page.locator('[data-black]')).toHaveAccessibleName(
    new RegExp(`: ${next?.sentence.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)}$`),
  );
  await expect(page.getByRole('listitem').filter({ hasText: 'you reach Thunder Bay' })).toBeVisible();
  expect(complaints).toEqual([]);
  await host.close();
});

test('where clock rules changed, the Desk says what moved, opens its job, and the note is put away and brought back', async ({
  browser,
}) => {
  const data = mkdtempSync(join(tmpdir(), 'kitbound-test-'));
  const before = await startHost({ data });
  await setUp(before);
  const { ink } = await fill(before);
  await before.close();
  // As an older edition of the zone data would have built it: every call of the job an hour off.
  const old = new Database(layout(data).store);
  old.prepare("update zone_data set version = '2020a'").run();
  old.prepare('update job_days set call_at = call_at + ?, wrap_at = wrap_at + ? where job_id = ?').run(HOUR, HOUR, ink.id);
  old.close();

  const host = await startHost({ data });
  const page = await (await browser.newContext({ viewport: { width: 1280, height: 800 } })).newPage();
  await page.goto(host.page);
  const note = page.getByRole('region', { name: 'Clocks changed' });
  await expect(note.getByRole('listitem').first()).toContainText('Bakers’ trade congress');
  // Call and wrap of four days: two at a glance, six folded.
  await expect(note.getByRole('listitem').filter({ visible: true })).toHaveCount(2);
  await note.getByText('6 more').click();
  await expect(note.getByRole('listitem').filter({ visible: true })).toHaveCount(8);
  await expect(note.getByRole('listitem').first()).toContainText('1 h earlier than before');
  await note
    .getByRole('button', { name: /^Put away/ })
    .first()
    .click();
  await expect(note.getByRole('listitem')).toHaveCount(7);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(note.getByRole('listitem')).toHaveCount(8);
  await note.getByRole('link').first().click();
  await expect(page.getByRole('heading', { level: 1, name: /Bakers/ })).toBeVisible();
  await host.close();
  rmSync(data, { recursive: true, force: true });
});
