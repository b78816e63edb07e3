/**
 * Zooming and dragging the Road with ten years on the books, by real wheel turns and a real pointer, against what a screen of 60 Hz
 * allows a frame. A frame's time runs from its first input event until style, layout and paint are done.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright';
import { openStore } from '../../db/open.ts';
import { saveSetup } from '../../db/setup.ts';
import { SETUP } from '../api/world.ts';
import { chromiumPath } from '../chromium.ts';
import { strewn } from '../db/years.ts';
import { startHost } from '../host.ts';
import { report, within } from './harness.ts';

const DAY = 86_400_000;
const FRAME_MS = 16.7;
const ROUNDS = 7;
const TURNS = 40;

const data = mkdtempSync(join(tmpdir(), 'kitbound-bench-'));
const now = Date.now();
const store = await openStore({ folder: data, now: () => now });
store.write((db) => {
  saveSetup(db, SETUP, now);
  strewn(db, { years: 10, until: now + 60 * DAY });
});
store.close();

const host = await startHost({ data });
const browser = await chromium.launch({ executablePath: chromiumPath(), args: ['--no-sandbox'] });
const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, timezoneId: 'America/Chicago' });
await page.goto(host.page);
await page.evaluate(() => {
  location.hash = '/road';
});
const drawing = page.getByRole('img', { name: /^Stringline/ });
await drawing.waitFor();
const box = (await drawing.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
await page.mouse.move(box.x + box.width * 0.6, box.y + 90);
await watchFrames(page);

const zooming: number[][] = [];
const dragging: number[][] = [];
for (let round = -1; round < ROUNDS; round += 1) {
  const zoomed = [...(await frames(page, () => turns(60))), ...(await frames(page, () => turns(-60)))];
  await page.getByText('year', { exact: true }).click();
  const dragged = await frames(page, drag);
  await page.getByText('fortnight', { exact: true }).click();
  await page.mouse.move(box.x + box.width * 0.6, box.y + 90);
  if (round < 0) continue;
  zooming.push(zoomed);
  dragging.push(dragged);
}
await browser.close();
await host.close();
rmSync(data, { recursive: true, force: true });

const against = 'what a screen of 60 Hz allows a frame';
report(
  within(FRAME_MS, zooming, { name: 'the Road, 10 years: 95 of 100 frames of a zoom from a fortnight to a year and back', against }),
  within(FRAME_MS, dragging, { name: 'the Road, 10 years: 95 of 100 frames of dragging a year', against }),
);

async function turns(by: number): Promise<void> {
  await page.keyboard.down('Control');
  for (let turn = 0; turn < TURNS; turn += 1) await page.mouse.wheel(0, by / 4);
  await page.keyboard.up('Control');
}

async function drag(): Promise<void> {
  await page.mouse.move(box.x + 900, box.y + 90);
  await page.mouse.down();
  await page.mouse.move(box.x + 300, box.y + 90, { steps: TURNS });
  await page.mouse.move(box.x + 900, box.y + 90, { steps: TURNS });
  await page.mouse.up();
}

/** Keep the time of every frame in which something was moved. */
async function watchFrames(page: Page): Promise<void> {
  await page.evaluate(() => {
    const times: number[] = [];
    Object.assign(window, { frameTimes: times });
    const painted = new MessageChannel();
    let began = 0;
    painted.port1.addEventListener('message', () => {
      times.push(performance.now() - began);
      began = 0;
    });
    painted.port1.start();
    const onInput = (): void => {
      if (began !== 0) return;
      began = performance.now();
      requestAnimationFrame(() => painted.port2.postMessage(null));
    };
    window.addEventListener('wheel', onInput, { capture: true, passive: true });
    window.addEventListener('pointermove', onInput, { capture: true });
  });
}

/** The frames' times while something is done, milliseconds. */
async function frames(page: Page, act: () => Promise<void>): Promise<number[]> {
  await page.waitForTimeout(400);
  await page.evaluate(() => (window as unknown as { frameTimes: number[] }).frameTimes.splice(0));
  await act();
  const times = await page.evaluate(() => (window as unknown as { frameTimes: number[] }).frameTimes.splice(0));
  if (times.length < TURNS / 2) throw new Error(`only ${times.length} frames were seen; nothing was measured`);
  return times;
}
