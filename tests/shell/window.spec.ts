/**
 * The same program in its real window, where the window's binary was fetched.
 */
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { _electron, expect, test } from 'playwright/test';

const root = fileURLToPath(new URL('../..', import.meta.url));
const electron = join(root, 'node_modules', 'electron');
const named = existsSync(join(electron, 'path.txt')) ? readFileSync(join(electron, 'path.txt'), 'utf8').trim() : '';
const binary = join(electron, 'dist', named || 'electron');

test.skip(!existsSync(binary), "the window's binary is not here; npm run window fetches it");
test.skip(
  process.platform === 'linux' && !process.env['DISPLAY'] && !process.env['WAYLAND_DISPLAY'],
  'there is no display to open a window on',
);

test('the window opens on the Desk and asks through its port', async () => {
  const data = mkdtempSync(join(tmpdir(), 'kitbound-window-'));
  const app = await _electron.launch({ executablePath: binary, args: [join(root, 'build', 'program', 'main.mjs'), '--data', data] });
  try {
    const page = await app.firstWindow();
    expect(page.url()).toBe('kitbound://app/index.html');
    await expect(page.getByRole('main')).toBeVisible();
    expect(await page.evaluate(() => typeof (globalThis as { process?: unknown }).process)).toBe('undefined');
  } finally {
    await app.close();
    rmSync(data, { recursive: true, force: true });
  }
});
