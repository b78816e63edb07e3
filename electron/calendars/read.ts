/**
 * A calendar of the store read now, and what came of it kept.
 */
import { calendarReadStates, setCalendarRead, setCalendarTrouble, type CalendarReadState } from '../../db/calendars.ts';
import type { Store } from '../../db/store.ts';
import type { Context } from '../api/context.ts';
import { readAside } from './read-aside.ts';

/** Readings that are under way, so that nobody reads a calendar twice at once. */
const underWay = new WeakMap<Store, Map<string, Promise<void>>>();

/**
 * Read one calendar and keep what it takes, or why it cannot be read. Nothing is done where it is not there or switched off.
 */
export function readCalendar(context: Pick<Context, 'store' | 'now'>, id: string): Promise<void> {
  const { store } = context;
  const running = underWay.get(store) ?? new Map<string, Promise<void>>();
  underWay.set(store, running);
  const before = running.get(id) ?? Promise.resolve();
  const reading = before.catch(() => undefined).then(() => readNow(context, id));
  const told = reading.finally(() => {
    if (running.get(id) === told) running.delete(id);
  });
  running.set(id, told);
  return told;
}

async function readNow({ store, now }: Pick<Context, 'store' | 'now'>, id: string): Promise<void> {
  const state = stateOf(store, id);
  if (!state?.calendar.isOn) return;
  const { path, zone, version } = state.calendar;
  const outcome = await readAside({ path, zone, now: now() });
  store.write((db) => {
    const [current] = calendarReadStates(db).filter(({ calendar }) => calendar.id === id);
    // It was changed or taken off meanwhile: what was read may be of another file.
    if (current?.calendar.version !== version) return;
    if ('read' in outcome) setCalendarRead(db, id, outcome.read, now());
    else if (current.calendar.trouble?.what !== outcome.trouble.what) {
      const kept = current.readAt === null ? 'Nothing of it counts yet.' : outcome.trouble.kept;
      setCalendarTrouble(db, id, { ...outcome.trouble, kept }, now());
    }
  });
}

const stateOf = (store: Store, id: string): CalendarReadState | undefined =>
  store.read(calendarReadStates).find(({ calendar }) => calendar.id === id);
