/**
 * At opening: where the rules of clocks changed since the instants were built, those to come are built anew, and the Desk says what moved.
 */
import { changeInWords, rebuilt, type Built, type Resolve } from '../../core/time/clock-rules.ts';
import { instantOf } from '../../core/time/read.ts';
import {
  addClockNote,
  jobsToCome,
  movePencil,
  movePersonal,
  moveReply,
  pencilsToCome,
  personalToCome,
  repliesToCome,
  setZoneDataVersion,
  zoneDataVersion,
} from '../../db/clock-rules.ts';
import { daysOf, replaceDays } from '../../db/job-days.ts';
import { writeHistory } from '../../db/keeping.ts';
import type { Store, WritableDb } from '../../db/store.ts';

/** The zone data of the running engine, such as "2026b". */
const engineZoneData = (): string => process.versions['tz'] ?? process.version;
const byEngine: Resolve = (wall, zone) => instantOf(wall, zone).epochMilliseconds;

/**
 * Bring instants to the zone data of this engine. Past hours and legs are left alone. Does nothing where the data are those of last time.
 * @param now epoch milliseconds
 * @returns what moved, in sentences
 */
export function keepToClockRules(store: Store, now: number, version = engineZoneData(), resolve: Resolve = byEngine): string[] {
  if (store.read(zoneDataVersion) === version) return [];
  return store.write((db) => {
    const said = [...days(db, resolve, now), ...others(db, resolve, now)];
    for (const { jobId, sentence } of said) {
      addClockNote(db, { at: now, jobId, sentence });
      if (jobId) writeHistory(db, { at: now, subject: 'job', subjectId: jobId, deed: 'clock rules', sentence });
    }
    setZoneDataVersion(db, version, now);
    return said.map(({ sentence }) => sentence);
  });
}

type Said = { jobId: string | null; sentence: string };

/** Calls and wraps. A day whose call is over has begun by the old clock, and stays. */
function days(db: WritableDb, resolve: Resolve, now: number): Said[] {
  return jobsToCome(db, now).flatMap(({ id, title, zone }) => {
    const said: Said[] = [];
    const before = daysOf(db, id);
    const after = before.map((day) => {
      if (day.callAt <= now) return day;
      const [call, wrap] = [built(day.call, zone, day.callAt), built(day.wrap, zone, day.wrapAt)];
      const [newCall, newWrap] = [rebuilt(call, resolve, now), rebuilt(wrap, resolve, now)];
      const sentences = [changeInWords(`call of ${title}`, call, newCall), changeInWords(`wrap of ${title}`, wrap, newWrap)];
      said.push(...sentences.flatMap((sentence) => (sentence ? [{ jobId: id, sentence }] : [])));
      return newWrap.at > newCall.at ? { ...day, callAt: newCall.at, wrapAt: newWrap.at } : day;
    });
    if (said.length > 0) replaceDays(db, id, after, zone);
    return said;
  });
}

/** Ends of pencils, replies to be given, and time of my own. */
function others(db: WritableDb, resolve: Resolve, now: number): Said[] {
  const said: Said[] = [];
  const move = (what: string, jobId: string | null, before: Built): number => {
    const after = rebuilt(before, resolve, now);
    const sentence = changeInWords(what, before, after);
    if (sentence) said.push({ jobId, sentence });
    return after.at;
  };
  for (const pencil of pencilsToCome(db, now)) {
    const at = move(`the end of the pencil of ${pencil.title}`, pencil.jobId, pencil);
    if (at !== pencil.at) movePencil(db, pencil.id, at);
  }
  for (const reply of repliesToCome(db, now)) {
    const at = move(`the reply to ${reply.title}`, reply.jobId, reply);
    if (at !== reply.at) moveReply(db, reply.jobId, at);
  }
  for (const { id, title, fromWall, toWall, zone, startAt, endAt } of personalToCome(db, now)) {
    const from = move(`the beginning of ${title}`, null, built(fromWall, zone, startAt));
    const to = move(`the end of ${title}`, null, built(toWall, zone, endAt));
    if ((from !== startAt || to !== endAt) && to > from) movePersonal(db, id, { startAt: from, endAt: to });
  }
  return said;
}

const built = (wall: string, zone: string, at: number): Built => ({ wall, zone, at });
