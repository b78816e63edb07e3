/**
 * Where a person's data lie, by the convention of each system.
 */
import { mkdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join, resolve } from 'node:path';

type Surroundings = { platform: NodeJS.Platform; env: Readonly<Record<string, string | undefined>>; home: string };

/**
 * The conventional data folder. On Linux by the XDG Base Directory Specification 0.8, "Environment variables": a relative
 * XDG_DATA_HOME is to be ignored.
 */
export function conventionalFolder({ platform, env, home }: Surroundings): string {
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Kitbound');
  if (platform === 'win32') return join(env['APPDATA'] ?? join(home, 'AppData', 'Roaming'), 'Kitbound');
  const data = env['XDG_DATA_HOME'];
  return join(data?.startsWith('/') ? data : join(home, '.local', 'share'), 'kitbound');
}

/** The folder that was asked for, or the conventional one, whose parent is made where a fresh system has none. */
export function dataFolder(asked: string | undefined): string {
  if (asked !== undefined) return resolve(asked);
  const folder = conventionalFolder({ platform: process.platform, env: process.env, home: homedir() });
  mkdirSync(dirname(folder), { recursive: true });
  return folder;
}
