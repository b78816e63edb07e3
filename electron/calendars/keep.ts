/**
 * While the program runs: calendars are read when their files change and as days go by, one's own dates are written after every deed, and
 * the feed is open while it is wanted. What the system does not tell is looked for once a minute.
 */
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import type { CalendarTrouble } from '../../core/contract/calendars.ts';
import { outRow } from '../../db/calendar-out.ts';
import { calendarReadStates, type CalendarReadState } from '../../db/calendars.ts';
import type { Context } from '../api/context.ts';
import { framesOf, type Log } from '../api/log.ts';
import { filesOf, type Found } from './files.ts';
import { KeptFeed } from './kept-feed.ts';
import { BACK } from './read-path.ts';
import { readCalendar } from './read.ts';
import { Watching } from './watching.ts';
import { OUT_FILE, writeOut } from './write-out.ts';

export type KeptCalendars = { close(): Promise<void> };

const MINUTE = 60_000;
/** Whoever saves a file writes it in several steps; so does a row of deeds. */
const SETTLED = 400;
/** The window of years that is read moves on by days. */
const READ_ANEW = 86_400_000;
/** How long the end waits for a look that is under way, milliseconds. */
const PATIENCE = 500;

/** Begin to keep them. @param every how often it is looked for what nobody told, milliseconds */
export function keepCalendars(context: Context, log: Log, every = MINUTE): KeptCalendars {
  const { store } = context;
  const watching = new Watching(() => lookSoon(false));
  const feed = new KeptFeed(store);
  /** What each calendar was read from last in this run: what could not be read is not tried again until it changes. */
  const tried = new Map<string, string>();
  let isClosed = false;
  let isOutDue = true;
  let soon: NodeJS.Timeout | undefined;
  let looking: Promise<unknown> = Promise.resolve();

  const look = (): void => {
    looking = looking.then(lookOnce);
  };
  function lookSoon(isOut: boolean): void {
    if (isClosed) return;
    isOutDue ||= isOut;
    clearTimeout(soon);
    soon = setTimeout(look, SETTLED);
  }

  async function lookOnce(): Promise<void> {
    try {
      if (isOutDue && !isClosed) {
        isOutDue = false;
        writeOut(context);
        feed.follow(store.read(feedWanted));
      }
      await readWhatChanged();
    } catch (error) {
      // The next look finds it as it is then; nothing of the store was lost by it.
      if (!isClosed) log({ event: 'wrong inside', procedure: 'calendars', frames: framesOf(error) });
    }
  }

  async function readWhatChanged(): Promise<void> {
    if (isClosed) return;
    const states = store.read(calendarReadStates).filter(({ calendar }) => calendar.isOn);
    watching.follow(states.map(({ calendar }) => calendar.path));
    for (const state of states) {
      const { id, path, version, trouble } = state.calendar;
      const found = await filesOf(path);
      if (isClosed) return;
      const from = markOf(version, found);
      if (!isStale(state, found, context.now()) || (trouble && tried.get(id) === from)) continue;
      await readCalendar(context, id);
      // What changed meanwhile was not what was read.
      if (markOf(version, await filesOf(path)) === from) tried.set(id, from);
      else tried.delete(id);
    }
  }

  const stop = store.onWritten(() => lookSoon(true));
  const timer = setInterval(() => {
    isOutDue = true;
    look();
  }, every);
  timer.unref();
  look();
  return {
    async close() {
      isClosed = true;
      stop();
      clearInterval(timer);
      clearTimeout(soon);
      watching.close();
      // A reading that is under way is nothing to wait for: what was read before is kept.
      await Promise.race([looking, wait(PATIENCE, undefined, { ref: false })]);
      await feed.close();
    },
  };
}

/** Never read, changed since, or read so long ago that the years that count have moved on. */
function isStale({ calendar, stamp, readFrom }: CalendarReadState, found: Found | CalendarTrouble, now: number): boolean {
  if ('what' in found) return calendar.trouble?.what !== found.what;
  return stamp !== found.stamp || readFrom === null || calendar.trouble !== null || now - BACK - readFrom >= READ_ANEW;
}

const markOf = (version: number, found: Found | CalendarTrouble): string => `${version} ${'what' in found ? found.what : found.stamp}`;

function feedWanted(db: Parameters<typeof outRow>[0]): { key: string; port: number; path: string } | null {
  const { isOn = false, feedKey: key = null, feedPort: port = null, folder = '' } = outRow(db) ?? {};
  return isOn && key !== null && port !== null ? { key, port, path: join(folder, OUT_FILE) } : null;
}
