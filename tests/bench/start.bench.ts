/**
 * From starting the browser to a Desk that can be used, against a blank page of the same host in the same Chromium with the
 * same fresh profile. And the host itself, until it serves, against a bare Node.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright';
import { openStore } from '../../db/open.ts';
import { contextOn } from '../context.ts';
import { noLog } from '../../electron/api/log.ts';
import { callProcedure } from '../../electron/api/serve.ts';
import { openLoopback } from '../../electron/doors/loopback.ts';
import { pageFiles } from '../../electron/doors/page-files.ts';
import { chromiumPath } from '../chromium.ts';
import { strewn, withTexts } from '../db/years.ts';
import { startHost } from '../host.ts';
import { pair, report } from './harness.ts';

const BUILT = fileURLToPath(new URL('../../build/renderer', import.meta.url));
const BLANK = {
  bytes: Buffer.from('<!doctype html><html lang="en"><title>Blank</title><main>Blank</main></html>'),
  type: 'text/html; charset=utf-8',
};

const folder = mkdtempSync(join(tmpdir(), 'kitbound-bench-'));
const now = (): number => Date.now();
const store = await openStore({ folder, now });
const context = contextOn(store, now);
await fill();
const built = pageFiles(BUILT);
const pages = { find: (path: string) => (path === '/blank.html' ? BLANK : built.find(path)) };
const door = await openLoopback({ context, pages, log: noLog, port: 0 });

const page = await pair({
  name: 'start of the browser to a usable Desk',
  against: 'a blank page of the same host in the same Chromium',
  aim: 1.25,
  rounds: 8,
  ours: () => openTo(`/#key=${door.key}`, (desk) => desk.getByRole('textbox').first().waitFor()),
  theirs: () => openTo('/blank.html', (blank) => blank.getByText('Blank').waitFor()),
});
store.write((db) => {
  strewn(db, { years: 10, until: now() + 60 * 86_400_000 });
  withTexts(db);
});
const years = await pair({
  name: 'start of the browser to a usable Desk with ten years on the books',
  against: 'a blank page of the same host in the same Chromium',
  aim: 1.25,
  rounds: 8,
  ours: () => openTo(`/#key=${door.key}`, (desk) => desk.getByRole('heading', { name: 'What bites next' }).waitFor()),
  theirs: () => openTo('/blank.html', (blank) => blank.getByText('Blank').waitFor()),
});
await door.close();
store.close();
rmSync(folder, { recursive: true, force: true });

const data = mkdtempSync(join(tmpdir(), 'kitbound-bench-'));
const host = await pair({
  name: 'start of the host until it serves, and its end',
  against: 'a bare Node that starts and ends',
  aim: 2,
  rounds: 5,
  ours: async () => (await startHost({ data, page: false })).close(),
  theirs: () => new Promise((resolve) => spawn(process.execPath, ['-e', '0']).on('exit', resolve)),
});
rmSync(data, { recursive: true, force: true });

report(page, years, host);

type Page = Awaited<ReturnType<Awaited<ReturnType<typeof chromium.launch>>['newPage']>>;

async function openTo(path: string, ready: (page: Page) => Promise<void>): Promise<void> {
  const browser = await chromium.launch({ executablePath: chromiumPath() });
  const opened = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await opened.goto(`${door.address}${path}`, { waitUntil: 'commit' });
  await ready(opened);
  await browser.close();
}

/** My details and one rate card, so that the Desk is the one of every day. */
async function fill(): Promise<void> {
  const home = context.gazetteer().find((place) => place.name === 'Duluth');
  if (!home) throw new Error('the list of places has no Duluth');
  const { kind: _kind, people: _people, ...place } = home;
  await callProcedure(context, 'setup.save', {
    fields: {
      name: 'Lakeline Pictures',
      address: '12 Harbor Street',
      email: '',
      phone: '',
      home: place,
      currency: 'USD',
      paper: 'Letter',
      distance: 'mi',
      registered: false,
      taxId: '',
      tax: null,
      restHours: '8',
      year: null,
    },
  });
  const { fields } = (await callProcedure(context, 'rates.defaults', { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' })) as {
    fields: object;
  };
  await callProcedure(context, 'rates.save', { fields: { ...fields, dayRate: '1200.00' } });
}
