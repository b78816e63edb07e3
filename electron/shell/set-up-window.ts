/**
 * The window, and the port through which its page asks.
 */
import { BrowserWindow, MessageChannelMain, nativeTheme, type MessagePortMain } from 'electron';
import type { Context } from '../api/context.ts';
import type { Log } from '../api/log.ts';
import { portHandler } from '../api/serve.ts';
import { isTrustedFrame, PAGE } from './addresses.ts';
import { windowOptions } from './window-options.ts';

/**
 * Open the window on our page.
 * @param preload absolute path of the built preload
 */
export async function setUpWindow(context: Context, log: Log, preload: string): Promise<BrowserWindow> {
  const window = new BrowserWindow(windowOptions(preload, nativeTheme.shouldUseDarkColors));
  const handler = portHandler(log);
  let open: MessagePortMain | undefined;
  // A page that is loaded again gets a port of its own; the old one leads nowhere any more.
  window.webContents.on('did-finish-load', () => {
    open?.close();
    const frame = window.webContents.mainFrame;
    if (!isTrustedFrame(frame)) return;
    const { port1, port2 } = new MessageChannelMain();
    handler.upgrade(port1, { context });
    port1.start();
    frame.postMessage('kitbound:port', null, [port2]);
    open = port1;
  });
  window.once('ready-to-show', () => window.show());
  await window.loadURL(PAGE);
  return window;
}

/** Bring the window before the person's eyes. */
export function showWindow(window: BrowserWindow): void {
  if (window.isMinimized()) window.restore();
  window.show();
  window.focus();
}
