/**
 * Where the browser for the screens' tests lies. It comes from the system; none is ever downloaded.
 */
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome.exe'];
const PLACES = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** The browser named by KITBOUND_CHROMIUM, or the first of the usual ones on this system; null where there is none. */
export function findChromium(): string | null {
  const named = process.env['KITBOUND_CHROMIUM'];
  const paths = (process.env['PATH'] ?? '').split(delimiter).flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...(named ? [named] : []), ...paths, ...PLACES].find(canRun) ?? null;
}

/** As `findChromium`, for those who cannot go on without. */
export function chromiumPath(): string {
  const found = findChromium();
  if (!found) throw new Error('No Chromium here. Install it (Debian: apt-get install chromium) or name it in KITBOUND_CHROMIUM.');
  return found;
}

function canRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
