/**
 * The file of one's own dates: what changed is noted with its sequence first, then the file is written anew and renamed into its place,
 * so that whoever reads it finds the old or the new one, never half of one.
 */
import { createHash, randomUUID } from 'node:crypto';
import { closeSync, existsSync, openSync, readSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { outChanges, outEvents, stillWritten, WRITTEN_FOR } from '../../core/calendars/out.ts';
import { calendarText } from '../../core/calendars/write.ts';
import type { CalendarTrouble } from '../../core/contract/calendars.ts';
import { exportedAll, heldDays, keepExported, outRow, promisedEdits, setOutState } from '../../db/calendar-out.ts';
import { syncFolder } from '../../db/durable.ts';
import type { Context } from '../api/context.ts';
import { folderGone, folderRefused, notOurs } from './sentences.ts';

/** The name of the file in the folder that was picked. */
export const OUT_FILE = 'kitbound.ics';
/** What a file of this program begins with. */
const OURS = /^BEGIN:VCALENDAR\r\nVERSION:2\.0\r\nPRODID:-\/\/Kitbound\/\//;

/** Bring the file up to date, where it is wanted. Cheap where nothing changed. What a disk refuses is kept as trouble, not thrown. */
export function writeOut({ store, now }: Pick<Context, 'store' | 'now'>): void {
  const at = now();
  const { row, before, wanted } = store.read((db) => ({
    row: outRow(db),
    before: exportedAll(db),
    wanted: outEvents(heldDays(db, { since: at - WRITTEN_FOR, now: at }), promisedEdits(db, at)),
  }));
  if (!row?.isOn) return;
  const changes = outChanges(before, wanted, at);
  if (changes.length > 0) store.write((db) => keepExported(db, changes));
  const events = new Map([...before, ...changes].map((event) => [event.uid, event]));
  const text = calendarText([...events.values()].filter((event) => stillWritten(event, at)));
  const hash = createHash('sha256').update(text).digest('hex');
  const path = join(row.folder, OUT_FILE);
  if (hash === row.writtenHash && row.trouble === null && isThere(path, text)) return;
  const trouble = written(row.folder, path, text);
  if (trouble && trouble.what === row.trouble?.what) return;
  store.write((db) => setOutState(db, trouble ? { trouble, updatedAt: at } : { trouble: null, writtenAt: at, writtenHash: hash }));
}

function isThere(path: string, text: string): boolean {
  try {
    return statSync(path).size === Buffer.byteLength(text);
  } catch {
    return false;
  }
}

function written(folder: string, path: string, text: string): CalendarTrouble | null {
  const part = join(folder, `.${randomUUID()}.part`);
  try {
    if (!statSync(folder).isDirectory()) return folderGone();
    if (existsSync(path) && !OURS.test(beginningOf(path))) return notOurs(OUT_FILE);
    writeFileSync(part, text, { mode: 0o600, flush: true });
    renameSync(part, path);
    syncFolder(folder);
    return null;
  } catch (error) {
    rmSync(part, { force: true });
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (code === '') throw error;
    return code === 'ENOENT' || code === 'ENOTDIR' ? folderGone() : folderRefused(code);
  }
}

function beginningOf(path: string): string {
  const file = openSync(path, 'r');
  try {
    const bytes = Buffer.alloc(100);
    return bytes.toString('latin1', 0, readSync(file, bytes));
  } finally {
    closeSync(file);
  }
}
