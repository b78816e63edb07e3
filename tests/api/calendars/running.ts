/**
 * The program as it keeps calendars while it runs, for tests that change files under it.
 */
import { call } from '@orpc/server';
import { onTestFinished, vi } from 'vitest';
import type { CalendarFields } from '../../../core/contract/calendars.ts';
import { calendars } from '../../../electron/api/calendars.ts';
import { noLog } from '../../../electron/api/log.ts';
import { keepCalendars } from '../../../electron/calendars/keep.ts';
import { eventOf } from '../../calendar-text.ts';
import { world } from '../world.ts';

export const NOW = '2026-12-01T15:00:00Z';
export const event = (uid: string, date: string) => eventOf(`UID:${uid}`, `SUMMARY:${uid}`, `DTSTART:${date}T180000Z`, 'DURATION:PT1H');
export const soon = <T>(look: () => T | Promise<T>) => vi.waitFor(look, { timeout: 15_000, interval: 100 });

export async function running(every = 60_000) {
  const { context, at } = await world(NOW);
  const kept = keepCalendars(context, noLog, every);
  onTestFinished(() => kept.close());
  const list = () => call(calendars.list, {}, { context });
  const add = (path: string, more: Partial<CalendarFields> = {}) =>
    call(
      calendars.save,
      { fields: { name: 'Family', path, zone: 'America/Chicago', hardness: 'settle', isOn: true, ...more } },
      { context },
    );
  const busy = async () => (await list()).calendars.map((calendar) => calendar.busy);
  return { context, at, list, add, busy };
}
