/**
 * Calendars of other programs, and where one's own dates are written.
 */
import { randomBytes } from 'node:crypto';
import { statSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import type { Calendar, CalendarOut } from '../../core/contract/calendars.ts';
import { instantText } from '../../core/time/read.ts';
import { exportedCount, outRow, saveOut as keepOut, type OutRow } from '../../db/calendar-out.ts';
import { allCalendars, calendarById, dropCalendar, keepCalendar } from '../../db/calendars.ts';
import { writeHistory } from '../../db/keeping.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { feedPath } from '../calendars/feed.ts';
import { readCalendar } from '../calendars/read.ts';
import { OUT_FILE, writeOut } from '../calendars/write-out.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { os } from './os.ts';
import { badInput, notFound, refused, stale } from './trouble.ts';

const list = os.calendars.list.handler(({ context }) => context.store.read((db) => ({ calendars: allCalendars(db), out: outOf(db) })));

const save = os.calendars.save.handler(async ({ input, context }) => {
  const { id, version, fields: given } = input;
  const fields = { ...given, path: wholePath(given.path, 'fields.path') };
  const kept = deed(context, 'calendars.save', {}, (db) => {
    const before = id === undefined ? undefined : calendarById(db, id);
    if (id !== undefined && !before) throw notFound('This calendar');
    if (before && before.version !== version) throw stale(before.name, before, fields);
    const saved = keepCalendar(db, before, fields, context.now());
    const sentence = before ? `The calendar ${saved.name} was changed.` : `The calendar ${saved.name} counts from now on.`;
    note(db, context, saved, 'calendars.save', sentence, before);
    return saved;
  });
  await readCalendar(context, kept.id);
  return { calendar: stored(context, kept.id) };
});

const drop = os.calendars.drop.handler(({ input, context }) =>
  deed(context, 'calendars.drop', {}, (db) => {
    const before = calendarById(db, input.id);
    if (!before) throw notFound('This calendar');
    if (before.version !== input.version) throw stale(before.name, before, null);
    dropCalendar(db, input.id);
    note(db, context, before, 'calendars.drop', `The calendar ${before.name} was taken off.`, before);
    return {};
  }),
);

const readAgain = os.calendars.readAgain.handler(async ({ input, context }) => {
  const { name, isOn } = stored(context, input.id);
  if (!isOn) throw refused(`${name} is switched off.`, 'Switch it on first; it is read then.');
  await readCalendar(context, input.id);
  return { calendar: stored(context, input.id) };
});

const saveOut = os.calendars.saveOut.handler(({ input, context }) => {
  const folder = wholePath(input.folder, 'folder');
  if (input.isOn && !isFolder(folder))
    throw badInput([{ field: 'folder', sentence: 'is not a folder on this computer. Make it first, or choose another.' }]);
  changeOut(context, 'calendars.saveOut', input.version, { folder, isOn: input.isOn, trouble: null, writtenHash: null });
  writeOut(context);
  return { out: context.store.read(outOf) };
});

const openFeed = os.calendars.openFeed.handler(async ({ input, context }) => {
  const row = context.store.read(outRow);
  if (!row?.isOn) throw refused('No file is written yet that could be served.', 'Choose a folder for it first.');
  // The port stays for good, so that what was told to other programs goes on to hold; it is only chosen anew where it is taken.
  const feedPort = row.feedPort !== null && row.feedTrouble === null ? row.feedPort : await freePort();
  const feedKey = randomBytes(24).toString('base64url');
  changeOut(context, 'calendars.openFeed', input.version, { feedPort, feedKey, feedTrouble: null });
  return { out: context.store.read(outOf) };
});

const closeFeed = os.calendars.closeFeed.handler(({ input, context }) => {
  changeOut(context, 'calendars.closeFeed', input.version, { feedKey: null, feedTrouble: null });
  return { out: context.store.read(outOf) };
});

const outSentences = {
  'calendars.saveOut': 'Where my own dates are written was changed.',
  'calendars.openFeed': 'The feed of my own dates was opened under a new address.',
  'calendars.closeFeed': 'The feed of my own dates was closed; its address is worth nothing now.',
};

/** The history keeps that the feed was opened, never its address. */
function changeOut(context: Context, name: keyof typeof outSentences, version: number, change: Partial<OutRow>): void {
  deed(context, name, {}, (db) => {
    const before = outRow(db);
    if ((before?.version ?? 0) !== version) throw stale('Where my dates are written', outOf(db), null);
    keepOut(db, { ...change, version: version + 1 }, context.now());
    writeHistory(db, { at: context.now(), subject: 'calendars', subjectId: 'out', deed: name, sentence: outSentences[name] });
  });
}

function outOf(db: ReadableDb): CalendarOut {
  const row = outRow(db);
  const { folder, isOn, writtenAt, trouble, feedPort: port, feedKey: key, feedTrouble, version } = row ?? NOTHING;
  return {
    folder,
    file: isOn ? join(folder, OUT_FILE) : null,
    isOn,
    events: exportedCount(db),
    writtenAt: writtenAt === null ? null : instantText(writtenAt),
    trouble,
    feed: key === null || port === null ? null : { address: `http://127.0.0.1:${port}${feedPath(key)}`, port, trouble: feedTrouble },
    version,
  };
}
const NOTHING = { folder: '', isOn: false, writtenAt: null, trouble: null, feedPort: null, feedKey: null, feedTrouble: null, version: 0 };

function stored({ store }: Context, id: string): Calendar {
  const calendar = store.read((db) => calendarById(db, id));
  if (!calendar) throw notFound('This calendar');
  return calendar;
}

function note(db: WritableDb, { now }: Context, { id }: Calendar, name: string, sentence: string, before: Calendar | undefined): void {
  writeHistory(db, { at: now(), subject: 'calendars', subjectId: id, deed: name, sentence, before: before ?? null });
}

/** A path as it was typed, from the root on. @throws BAD_INPUT for an address of the net and for half a path */
function wholePath(typed: string, field: string): string {
  const path = typed.replace(/^~(?=$|[\\/])/, homedir());
  if (/^[a-z][a-z0-9+.-]{2,}:/i.test(path))
    throw badInput([{ field, sentence: 'is an address. Nothing is fetched from the net: save it as a file on this computer.' }]);
  if (!isAbsolute(path)) throw badInput([{ field, sentence: 'is half a path. Type it from the beginning, such as /home/me/family.ics.' }]);
  return path;
}

const isFolder = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

/** A port of 127.0.0.1 that nobody listens at now. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen({ port: 0, host: '127.0.0.1' }, () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });
}

export const calendars = { list, save, drop, readAgain, saveOut, openFeed, closeFeed };
