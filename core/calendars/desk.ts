/**
 * Calendars that cannot be read, and a file of one's own dates that cannot be written, as the Desk tells them until they are put away.
 */
import type { DeskLine } from '../contract/desk.ts';
import type { CalendarTrouble } from '../contract/calendars.ts';
import { instantText } from '../time/read.ts';

/** `at` in epoch milliseconds: since when. */
export type Unread = { id: string; name: string; trouble: CalendarTrouble; at: number };

/** Newest first. @param out trouble of one's own file, since when */
export function calendarLines(unread: readonly Unread[], out: { trouble: CalendarTrouble; at: number } | null): DeskLine[] {
  const told = [
    ...unread.map(({ id, name, trouble, at }) => ({ key: id, said: `The calendar ${name} cannot be read.`, trouble, at })),
    ...(out ? [{ key: 'out', said: 'Your dates for other programs cannot be written.', ...out }] : []),
  ];
  return told
    .sort((a, b) => b.at - a.at)
    .map(({ key, said, trouble: { what, kept, todo }, at }) => ({
      // A later trouble is another line, also where the one before was put away.
      id: `calendar:${key}:${at}`,
      at: instantText(at),
      jobId: null,
      sentence: said,
      second: `${what} ${kept} ${todo}`,
    }));
}
