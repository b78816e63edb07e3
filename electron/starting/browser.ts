/**
 * Opening the address in the person's browser, where there is a display to open it on.
 */
import { spawn } from 'node:child_process';

/** True where this system can show a page. */
export function hasDisplay(platform: NodeJS.Platform, env: Readonly<Record<string, string | undefined>>): boolean {
  if (platform === 'darwin' || platform === 'win32') return true;
  return Boolean(env['DISPLAY'] || env['WAYLAND_DISPLAY']);
}

/** Ask the system to open an address of ours. A system that cannot is no trouble: the address is printed. */
export function openBrowser(address: string): void {
  if (!hasDisplay(process.platform, process.env)) return;
  const opener = openers[process.platform] ?? ['xdg-open'];
  const [command = '', ...before] = opener;
  const child = spawn(command, [...before, address], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}

const openers: Partial<Record<NodeJS.Platform, string[]>> = {
  darwin: ['open'],
  // `start` would read the & and # of an address; the URL handler takes it whole.
  win32: ['rundll32', 'url.dll,FileProtocolHandler'],
};
