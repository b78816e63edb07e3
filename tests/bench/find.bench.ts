/**
 * Typing into the find box with ten years on the books: from the key until the letter is painted, against what a screen of 60 Hz allows
 * a frame, and from the key until what was found for it is painted, against a tenth of a second, which is felt as at once.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright';
import { openStore } from '../../db/open.ts';
import { saveSetup } from '../../db/setup.ts';
import { SETUP } from '../api/world.ts';
import { chromiumPath } from '../chromium.ts';
import { strewn, withTexts } from '../db/years.ts';
import { startHost } from '../host.ts';
import { report, within } from './harness.ts';

const DAY = 86_400_000;
const FRAME_MS = 16.7;
const AT_ONCE_MS = 100;
const ROUNDS = 7;
const TYPED = ['fargo', 'bakers', 'vision mixer', 'job 731', 'robtoics'];

const data = mkdtempSync(join(tmpdir(), 'kitbound-bench-'));
const now = Date.now();
const store = await openStore({ folder: data, now: () => now });
store.write((db) => {
  saveSetup(db, SETUP, now);
  strewn(db, { years: 10, until: now + 60 * DAY });
  withTexts(db);
});
store.close();

const host = await startHost({ data });
const browser = await chromium.launch({ executablePath: chromiumPath(), args: ['--no-sandbox'] });
const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, timezoneId: 'America/Chicago' });
await watchKeys(page);
await page.goto(host.page);

const keys: number[][] = [];
const answers: number[][] = [];
for (let round = -1; round < ROUNDS; round += 1) {
  const of = { painted: [] as number[], found: [] as number[] };
  // A page that remembers no answer.
  await page.reload();
  await page.getByRole('heading', { level: 1 }).first().waitFor({ state: 'attached' });
  await page.waitForLoadState('networkidle');
  for (const text of TYPED) {
    await page.keyboard.press('/');
    for (const letter of text) {
      const { painted, found } = await timeOf(page, letter);
      of.painted.push(painted);
      of.found.push(found);
    }
    await page.keyboard.press('Escape');
    await page.locator('main').focus();
  }
  if (round < 0) continue;
  keys.push(of.painted);
  answers.push(of.found);
}
await browser.close();
await host.close();
rmSync(data, { recursive: true, force: true });

report(
  within(FRAME_MS, keys, {
    name: 'the find box, 10 years: 95 of 100 keys until their letter is painted',
    against: 'what a screen of 60 Hz allows a frame',
  }),
  within(AT_ONCE_MS, answers, {
    name: 'the find box, 10 years: 95 of 100 keys until what was found is painted',
    against: 'a tenth of a second, which is felt as at once',
  }),
);

/** Keep, for the last key, when it came, when its letter was painted, and when the answer of the store was. */
async function watchKeys(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const seen = { began: 0, painted: 0, found: 0 };
    Object.assign(window, { lastKey: seen });
    const afterPaint = (then: (at: number) => void): void => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.addEventListener('message', () => then(performance.now()));
        port1.start();
        port2.postMessage(null);
      });
    };
    window.addEventListener(
      'beforeinput',
      () => {
        Object.assign(seen, { began: performance.now(), painted: 0, found: 0 });
        afterPaint((at) => (seen.painted = at - seen.began));
      },
      { capture: true },
    );
    const asked = window.fetch;
    window.fetch = async (...args) => {
      const answer = await asked(...args);
      const request = args[0] instanceof Request ? args[0].url : String(args[0]);
      if (/find\W+search/.test(request)) afterPaint((at) => (seen.found = at - seen.began));
      return answer;
    };
  });
}

async function timeOf(page: Page, letter: string): Promise<{ painted: number; found: number }> {
  await page.keyboard.insertText(letter);
  const seen = await page.waitForFunction(() => {
    const { lastKey } = window as unknown as { lastKey: { painted: number; found: number } };
    return lastKey.painted > 0 && lastKey.found > 0 ? { ...lastKey } : undefined;
  });
  return (await seen.jsonValue()) as { painted: number; found: number };
}
