import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createORPCClient } from '@orpc/client';
import { RPCLink } from '@orpc/client/message-port';
import type { ContractRouterClient } from '@orpc/contract';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import type { Contract } from '../../core/contract/index.ts';
import { PAGE } from '../../electron/shell/addresses.ts';
import { windowOptions } from '../../electron/shell/window-options.ts';
import { askRunning } from '../../electron/doors/inner-socket.ts';
import { app, asked, askedFor, type BrowserWindow, type PageHandler, WebContents } from './stand-in.ts';

vi.mock('electron', () => import('./stand-in.ts'));

const folder = mkdtempSync(join(tmpdir(), 'kitbound-shell-'));
let window: BrowserWindow;

beforeAll(async () => {
  process.argv.push('--data', folder);
  await import('../../electron/shell/main.ts');
  window = askedFor('new BrowserWindow')[0]?.with[1] as BrowserWindow;
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const event = (url: string, isMainFrame = true) => ({ url, isMainFrame, preventDefault: vi.fn() });
const portOfPage = () => (askedFor('mainFrame.postMessage').at(-1)!.with[2] as [MessagePort])[0];

describe('the window', () => {
  test('opens last, after everything that holds it was set up', () => {
    const order = asked.map((each) => each.what);
    const inOrder = [
      'app.setPath',
      'protocol.registerSchemesAsPrivileged',
      'app.requestSingleInstanceLock',
      'app.whenReady',
      'setPermissionRequestHandler',
      'protocol.handle',
      'new BrowserWindow',
      'loadURL',
    ];
    const places = inOrder.map((what) => order.indexOf(what));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places).not.toContain(-1);
    expect(askedFor('loadURL')[0]?.with).toEqual([PAGE]);
  });

  test('keeps what its engine writes inside the data folder', () => {
    expect(askedFor('app.setPath')[0]?.with).toEqual(['userData', join(folder, 'window')]);
  });

  test('has exactly these options', () => {
    expect(askedFor('new BrowserWindow')[0]?.with[0]).toEqual(
      windowOptions(expect.stringMatching(/preload\.cjs$/) as unknown as string, true),
    );
    expect(windowOptions('/preload.cjs', false).webPreferences).toEqual({
      preload: '/preload.cjs',
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
      safeDialogs: true,
    });
  });

  test('serves the page under its own scheme, with its policy and nothing else', async () => {
    const [scheme, handle] = askedFor('protocol.handle')[0]!.with as [string, PageHandler];
    expect(scheme).toBe('kitbound');
    const statusOf = (url: string, method = 'GET') => handle({ url, method }).status;
    expect(statusOf('kitbound://evil/index.html')).toBe(404);
    expect(statusOf('kitbound://app/..%2f..%2fpackage.json')).toBe(404);
    expect(statusOf(PAGE, 'POST')).toBe(405);
    const refused = handle({ url: 'kitbound://app/nothing', method: 'GET' });
    expect(refused.headers.get('content-security-policy')).toMatch(/^default-src 'none'.*connect-src 'none'/);
    expect(refused.headers.get('x-content-type-options')).toBe('nosniff');
  });
});

describe('the port', () => {
  const client = (port: MessagePort): ContractRouterClient<Contract> => {
    port.start();
    return createORPCClient(new RPCLink({ port }));
  };

  test('goes to our page and answers as every other door', async () => {
    const ask = client(portOfPage());
    expect(await ask.setup.get({})).toMatchObject({ setup: null });
    await expect(ask.jobs.list({ text: 5 } as never)).rejects.toMatchObject({
      code: 'BAD_INPUT',
      defined: true,
      data: { fields: [{ field: 'text', sentence: 'must be text' }] },
    });
  });

  test('is given to no other page and no frame inside one', () => {
    const before = askedFor('mainFrame.postMessage').length;
    const { mainFrame } = window.webContents;
    for (const [url, parent] of [
      ['https://evil.example/', null],
      ['', null],
      [PAGE, {}],
    ] as const) {
      Object.assign(mainFrame, { url, parent });
      window.webContents.emit('did-finish-load');
    }
    expect(askedFor('mainFrame.postMessage').length).toBe(before);
    Object.assign(mainFrame, { url: PAGE, parent: null });
  });

  test('is a new one when the page is loaded again', async () => {
    window.webContents.emit('did-finish-load');
    expect(await client(portOfPage()).setup.get({})).toMatchObject({ setup: null });
  });
});

describe('borders', () => {
  test('no permission but the clipboard of our page', () => {
    const request = askedFor('setPermissionRequestHandler')[0]?.with[0] as (
      contents: WebContents,
      permission: string,
      answer: (yes: boolean) => void,
    ) => void;
    const check = askedFor('setPermissionCheckHandler')[0]?.with[0] as (contents: WebContents | null, permission: string) => boolean;
    const device = askedFor('setDevicePermissionHandler')[0]?.with[0] as () => boolean;
    const elsewhere = new WebContents();
    elsewhere.mainFrame.url = 'https://evil.example/';
    const names = [
      'media',
      'geolocation',
      'notifications',
      'midi',
      'pointerLock',
      'fullscreen',
      'openExternal',
      'clipboard-read',
      'display-capture',
      'hid',
      'serial',
      'usb',
      'unknown',
    ];
    for (const name of names) {
      const answer = vi.fn();
      request(window.webContents, name, answer);
      expect([name, answer.mock.calls]).toEqual([name, [[false]]]);
      expect(check(window.webContents, name)).toBe(false);
    }
    expect(check(window.webContents, 'clipboard-sanitized-write')).toBe(true);
    expect(check(elsewhere, 'clipboard-sanitized-write')).toBe(false);
    expect(check(null, 'clipboard-sanitized-write')).toBe(false);
    expect(device()).toBe(false);
  });

  test('no way out of the page', () => {
    const contents = window.webContents;
    const away = event('https://evil.example/');
    contents.emit('will-navigate', away);
    const within = event(`${PAGE}#/jobs`);
    contents.emit('will-navigate', within);
    const framed = event('https://evil.example/', false);
    contents.emit('will-frame-navigate', framed);
    const paper = event('blob:kitbound://app/0190', false);
    contents.emit('will-frame-navigate', paper);
    const redirected = event(PAGE);
    contents.emit('will-redirect', redirected);
    const webview = event('');
    contents.emit('will-attach-webview', webview);
    const prevented = [away, within, framed, paper, redirected, webview].map((each) => each.preventDefault.mock.calls.length);
    expect(prevented).toEqual([1, 0, 1, 0, 1, 1]);
  });

  test('no new window; safe links go to the system', () => {
    const { openHandler } = window.webContents;
    for (const url of ['https://example.org/', 'file:///etc/passwd', 'javascript:1', 'mailto:ada@example.org'])
      expect(openHandler({ url })).toEqual({ action: 'deny' });
    expect(askedFor('shell.openExternal').map((each) => each.with[0])).toEqual(['https://example.org/', 'mailto:ada@example.org']);
  });

  test('the menu opens no tools of the engine', () => {
    expect(JSON.stringify(askedFor('Menu.setApplicationMenu'))).not.toMatch(/toggleDevTools|reload/i);
  });
});

describe('one program for each data folder', () => {
  test('a second start brings the window up', async () => {
    expect(await askRunning(folder, { ask: 'show' })).toEqual({ answer: 'its window' });
    app.emit('second-instance');
    expect(askedFor('focus').length).toBe(2);
    expect(askedFor('restore').length).toBe(2);
  });

  test('the command line is served while the window is open', async () => {
    expect(await askRunning(folder, { ask: 'call', name: 'setup.get', input: {} })).toMatchObject({
      answer: { done: true, output: { setup: null } },
    });
  });

  test('closing the last window closes the store', () => {
    app.emit('window-all-closed');
    expect(askedFor('app.quit').length).toBe(1);
    expect(existsSync(join(folder, 'kitbound.sqlite-wal'))).toBe(false);
    expect(existsSync(join(folder, 'running.json'))).toBe(false);
  });
});
