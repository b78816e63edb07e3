/**
 * Which files a calendar is made of, and a stamp of them that changes when one of them does. Read only, on this computer only.
 */
import { readdir, stat } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import type { CalendarTrouble } from '../../core/contract/calendars.ts';
import { damagedPath, goneTrouble, noCalendarIn, tooManyFiles } from './sentences.ts';

type CalendarFile = { path: string; name: string; size: number };
export type Found = { files: CalendarFile[]; stamp: string; isFolder: boolean };
type Listed = CalendarFile & { mark: string };

/** Most files of one folder that are read. */
const MOST_FILES = 5_000;
const ENDINGS = new Set(['.ics', '.ical', '.ifb', '.icalendar']);

/** The files of a calendar by name, or why there are none. */
export async function filesOf(path: string): Promise<Found | CalendarTrouble> {
  try {
    const there = await stat(path);
    if (there.isFile()) return found([await listed(path, basename(path))], false);
    if (!there.isDirectory()) return noCalendarIn('file');
    const names = (await readdir(path)).filter((name) => ENDINGS.has(extname(name).toLowerCase()) && !name.startsWith('.'));
    if (names.length > MOST_FILES) return tooManyFiles(MOST_FILES);
    const files: Listed[] = [];
    for (const name of names.sort()) {
      const file = await listed(join(path, name), name);
      if (file) files.push(file);
    }
    return files.length === 0 ? noCalendarIn('folder') : found(files, true);
  } catch (error) {
    return troubleOf(error);
  }
}

function found(files: readonly (Listed | null)[], isFolder: boolean): Found {
  const there = files.flatMap((file) => file ?? []);
  return {
    files: there.map(({ path, name, size }) => ({ path, name, size })),
    stamp: there.map(({ mark }) => mark).join('\n'),
    isFolder,
  };
}

/** A file that went away meanwhile, or something that is no file, is not there. */
async function listed(path: string, name: string): Promise<Listed | null> {
  try {
    const there = await stat(path);
    const { size, mtimeMs, ino } = there;
    return there.isFile() ? { path, name, size, mark: `${name} ${size} ${mtimeMs} ${ino}` } : null;
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null;
    throw error;
  }
}

export function troubleOf(error: unknown): CalendarTrouble {
  const code = codeOf(error);
  if (code === 'ENOENT' || code === 'ENOTDIR') return goneTrouble();
  if (code !== '') return damagedPath(code);
  throw error;
}

const codeOf = (error: unknown): string => (error instanceof Error && 'code' in error ? String(error.code) : '');
