/**
 * One calendar read from the disk to the end, octet by octet. What changes while it is read is read again.
 */
import { createReadStream } from 'node:fs';
import { setTimeout as wait } from 'node:timers/promises';
import { CalendarReader } from '../../core/calendars/read.ts';
import type { Busy } from '../../core/calendars/expand.ts';
import type { CalendarTrouble, LeftOut } from '../../core/contract/calendars.ts';
import { filesOf, troubleOf, type Found } from './files.ts';
import { keepsChanging, noCalendarIn, tooLarge } from './sentences.ts';

export type ReadOrder = {
  path: string;
  /** Clock of whole days and floating times; IANA. */
  zone: string;
  /** Epoch milliseconds. */
  now: number;
};
export type ReadOutcome = { read: { busy: Busy[]; leftOut: LeftOut[]; stamp: string; readFrom: number } } | { trouble: CalendarTrouble };

const DAY = 86_400_000;
/** A year back and three ahead are read; as days go by they are read anew. */
export const BACK = 366 * DAY;
const AHEAD = 3 * 366 * DAY;
const MEGABYTES = 200;
/** Working out what repeats may take so long, milliseconds. */
const EXPANDING = 8_000;
const TRIES = 3;
/** Whoever is writing is given so long to end, milliseconds. */
const WRITING = 400;

/** Read all of it, or say why not. Never throws for what a disk or a file does. */
export async function readPath({ path, zone, now }: ReadOrder): Promise<ReadOutcome> {
  for (let left = TRIES; left > 0; left -= 1) {
    const before = await filesOf(path);
    if ('what' in before) return { trouble: before };
    if (before.files.reduce((sum, { size }) => sum + size, 0) > MEGABYTES * 1_000_000) return { trouble: tooLarge(MEGABYTES) };
    const attempt = await readFiles(before, zone, now);
    if ('trouble' in attempt) return attempt;
    const after = await filesOf(path);
    if ('what' in after) return { trouble: after };
    // A file that ends in the middle is still being written, unless it stays so.
    if (after.stamp === before.stamp && (attempt.isWhole || left === 1)) return { read: { ...attempt.read, stamp: before.stamp } };
    if (left > 1) await wait(WRITING);
  }
  return { trouble: keepsChanging() };
}

type Attempt = { read: { busy: Busy[]; leftOut: LeftOut[]; readFrom: number }; isWhole: boolean } | { trouble: CalendarTrouble };

async function readFiles({ files, isFolder }: Found, zone: string, now: number): Promise<Attempt> {
  const window = { from: now - BACK, to: now + AHEAD };
  let until = Infinity;
  const reader = new CalendarReader({
    window,
    today: now - DAY,
    zone,
    decode: (octets) => Buffer.from(octets, 'latin1').toString('utf8'),
    enough: () => performance.now() > until,
  });
  let calendars = 0;
  let isWhole = true;
  for (const { path, name } of files) {
    try {
      for await (const octets of createReadStream(path, { encoding: 'latin1', highWaterMark: 262_144 })) reader.push(octets as string);
    } catch (error) {
      if (!isFolder) return { trouble: troubleOf(error) };
      reader.endFile();
      reader.leaveOut(name);
      continue;
    }
    const facts = reader.endFile();
    if (facts.isCalendar) calendars += 1;
    else if (isFolder) reader.leaveOut(name);
    if (facts.isCalendar && !facts.isWhole) {
      isWhole = false;
      reader.leaveOut(`the end of ${name}`);
    }
  }
  if (calendars === 0) return { trouble: noCalendarIn(isFolder ? 'folder' : 'file') };
  until = performance.now() + EXPANDING;
  return { read: { ...reader.result(), readFrom: window.from }, isWhole };
}
