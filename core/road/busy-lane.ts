/**
 * The lane of other calendars: what they take, one bar for what overlaps.
 */
import type { BusyBar } from '../contract/road.ts';
import type { ImportedTime } from '../fit/book.ts';
import { instantText } from '../time/read.ts';

const ORDER: readonly ImportedTime['hardness'][] = ['know', 'settle', 'never'];

/** Bars between two instants (epoch ms), by time; each as hard as the hardest in it. @param imported by their start */
export function busyLane(imported: readonly ImportedTime[], from: number, to: number): BusyBar[] {
  const bars: { startAt: number; endAt: number; parts: ImportedTime[] }[] = [];
  for (const time of imported) {
    if (time.startAt >= to || time.endAt <= from) continue;
    const last = bars.at(-1);
    if (last && time.startAt < last.endAt) {
      last.endAt = Math.max(last.endAt, time.endAt);
      last.parts.push(time);
    } else bars.push({ startAt: time.startAt, endAt: time.endAt, parts: [time] });
  }
  return bars.map(({ startAt, endAt, parts }) => ({
    start: instantText(startAt),
    end: instantText(endAt),
    hardness: ORDER[Math.max(...parts.map(({ hardness }) => ORDER.indexOf(hardness)))] ?? 'settle',
    parts: parts.map(({ calendar, title, startAt: start, endAt: end }) => ({
      calendar,
      title,
      start: instantText(start),
      end: instantText(end),
    })),
  }));
}
