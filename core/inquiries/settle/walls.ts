/**
 * Wall times at the place, and the day that a date beside an hour means, seen from the event.
 */
import type { DateMention, SaidTime } from './scene.ts';

export type Day = Temporal.PlainDate;
export const day = (date: string): Day => Temporal.PlainDate.from(date);

/** `YYYY-MM-DDTHH:MM`; minutes may reach past midnight. */
export function wallOf(date: Day, minutes: number): string {
  const on = date.add({ days: Math.floor(minutes / 1440) });
  const rest = minutes % 1440;
  return `${on.toString()}T${String(Math.floor(rest / 60)).padStart(2, '0')}:${String(rest % 60).padStart(2, '0')}`;
}

/** The day that a date beside a call means, seen from the event: "Saturday" is the one at or just before its start. */
export function callDay(time: SaidTime, days: readonly string[]): Day | undefined {
  const first = day(days[0] as string);
  const last = day(days.at(-1) as string);
  if (time.dayBefore) return first.subtract({ days: 1 });
  if (time.nthDay !== undefined) {
    const at = time.nthDay < 0 ? days.length - 1 : time.nthDay - 1;
    return days[at] === undefined ? undefined : day(days[at]);
  }
  const date = time.date;
  if (!date) return first;
  return dayBeside(date, first, last, days, 'call');
}

export function dayBeside(date: DateMention, first: Day, last: Day, days: readonly string[], side: 'call' | 'wrap'): Day | undefined {
  // "the 15th, and on the 18th": a list read as one has its end last.
  const atom = date.sequence.items.at(side === 'call' ? 0 : -1)?.atom;
  const weekday = atom?.weekday;
  const weekdays = date.sequence.items.map((item) => item.atom.weekday);
  if (date.weekdayOnly && weekday !== undefined) {
    const inside = days.map(day).filter((one) => weekdays.includes(one.dayOfWeek));
    const chosen = side === 'call' ? inside[0] : inside.at(-1);
    if (chosen) return chosen;
    if (side === 'wrap') return undefined;
    return first.subtract({ days: (first.dayOfWeek - weekday + 7) % 7 });
  }
  if (date.readings.length === 1) {
    const dates = date.readings[0] ?? [];
    const one = side === 'call' ? dates[0] : dates.at(-1);
    if (one === undefined) return undefined;
    const found = day(one);
    // A numbered day without a month is sought beside the event, not beside the message.
    if (!date.explicit && atom?.day !== undefined) {
      const own = days.map(day).filter((one) => one.day === atom.day);
      const ofEvent = side === 'call' ? own[0] : own.at(-1);
      if (ofEvent) return ofEvent;
      const near = [first.with({ day: 1 }), first.with({ day: 1 }).subtract({ months: 1 })]
        .map((month) => month.add({ days: (atom.day ?? 1) - 1 }))
        .find((candidate) => candidate.day === atom.day && Temporal.PlainDate.compare(candidate, last) <= 0);
      return near ?? found;
    }
    return found;
  }
  return undefined;
}
