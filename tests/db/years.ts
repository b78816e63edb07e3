/**
 * Years of jobs written straight into a store: 150 a year, of one to three days, in ink, in live pencil, in pencil that ran out, or let go.
 * Counted back from an instant, so that the newest years are the same however many there are.
 */
import { replaceDays } from '../../db/job-days.ts';
import { insertJob, setInk, setStage } from '../../db/jobs.ts';
import { holdPencil } from '../../db/pencils.ts';
import type { WritableDb } from '../../db/store.ts';
import { jobs } from '../../db/schema/jobs.ts';
import { eq } from 'drizzle-orm';
import { wallAt, instantText } from '../../core/time/read.ts';
import { newFacts } from '../../core/jobs/facts.ts';
import { DULUTH, FARGO, THUNDER_BAY } from '../api/world.ts';
import { dayBetween, HOUR } from '../core/fit/generated.ts';
import { randomFrom } from '../random.ts';

const DAY = 86_400_000;
const EVERY = Math.round((365 * DAY) / 150 / HOUR) * HOUR;
const PLACES = [DULUTH, FARGO, THUNDER_BAY];

export function strewn(db: WritableDb, { years, until }: { years: number; until: number }): void {
  for (let index = 0; index < years * 150; index += 1) {
    const random = randomFrom(index + 1);
    const place = PLACES[Math.floor(random() * PLACES.length)] ?? DULUTH;
    const start = until - (index + 1) * EVERY;
    const days = Array.from({ length: 1 + Math.floor(random() * 2) }, (_, day) =>
      dayBetween(start + day * DAY, start + day * DAY + (4 + Math.floor(random() * 8)) * HOUR),
    );
    const id = `00000000-0000-7000-8000-${String(index).padStart(12, '0')}`;
    const facts = { ...newFacts({ title: `Job ${index}` }), place };
    const made = insertJob(db, {
      facts,
      placed: { days: [], zone: place.zone },
      message: null,
      questions: [],
      spans: [],
      receivedAt: start - 20 * DAY,
      receivedZone: 'America/Chicago',
      now: start - 20 * DAY,
    });
    db.update(jobs).set({ id }).where(eq(jobs.id, made)).run();
    replaceDays(db, id, days, place.zone);
    const standing = random();
    if (standing < 0.6) setInk(db, id, { who: 'Ada Byrd', how: 'mail', at: start - 10 * DAY, quote: 1, offer: null }, start - 10 * DAY);
    else if (standing < 0.8) pencilled(db, id, start - 10 * DAY, start - HOUR);
    else setStage(db, id, 'let go', start - 10 * DAY);
  }
}

function pencilled(db: WritableDb, jobId: string, pencilledAt: number, expiresAt: number): void {
  setStage(db, jobId, 'pencilled', pencilledAt);
  const expires = { wall: wallAt(expiresAt, 'America/Chicago'), zone: 'America/Chicago', at: instantText(expiresAt) };
  holdPencil(db, { jobId, pencilledAt, expires }, pencilledAt);
}

const WORDS =
  'camera stage vision mixer robotics league final bakers congress curling hall evening awards operator cable light loading dock network podium panel speaker supper river harbour guild clinic opening highlight minutes second third stream recording budget quote dates travel hotel badge access power circuit'.split(
    ' ',
  );

/** Give every job the texts that years leave behind: an organisation, a contact, and a message of two hundred words. */
export function withTexts(db: WritableDb): void {
  const ids = db.select({ id: jobs.id }).from(jobs).orderBy(jobs.id).all();
  for (const [index, { id }] of ids.entries()) {
    const random = randomFrom(index + 7);
    const words = (count: number): string =>
      Array.from({ length: count }, () => WORDS[Math.floor(random() * WORDS.length)] ?? '').join(' ');
    const change = { organisation: `Guild of ${words(2)}`, contactName: `Ada ${words(1)}`, message: words(200), notes: words(20) };
    db.update(jobs).set(change).where(eq(jobs.id, id)).run();
  }
}
