/**
 * What other calendars take, against the candidate: sentences with their numbers, hardness by calendar, and the slow twin.
 */
import { describe, expect, test } from 'vitest';
import type { TryOn } from '../../../core/contract/try-on.ts';
import { assess, checkFit } from '../../../core/fit/check.ts';
import { combined } from '../../../core/fit/combined.ts';
import type { Book, BookJob, ImportedTime } from '../../../core/fit/book.ts';
import { duluth as DULUTH, thunderBay as THUNDER_BAY } from '../trips/places.ts';
import { randomFrom } from '../../random.ts';
import { CASES, DAY, generatedYear, YEAR_START } from './generated.ts';
import { twinAnswer } from './twin.ts';

const at = (wall: string, zone = 'America/Chicago'): number => Temporal.PlainDateTime.from(wall).toZonedDateTime(zone).epochMilliseconds;
const time = (from: string, to: string, more: Partial<ImportedTime> = {}): ImportedTime => ({
  calendarId: 'family',
  calendar: 'Family',
  title: 'Choir',
  startAt: at(from),
  endAt: at(to),
  allDay: false,
  hardness: 'settle',
  ...more,
});
const day = (date: string, call = '09:00', wrap = '19:00') => ({
  date,
  kind: 'shoot' as const,
  call: `${date}T${call}`,
  wrap: `${date}T${wrap}`,
  callAt: at(`${date}T${call}`),
  wrapAt: at(`${date}T${wrap}`),
});
const candidate = (days: BookJob['days'], place = DULUTH): BookJob => ({
  id: null,
  title: 'Curling',
  firmness: 'candidate',
  pencilledAt: null,
  expiresAt: null,
  place,
  days,
});
const bookWith = (...imported: ImportedTime[]): Book => ({ home: DULUTH, jobs: [], ways: [], restMinutes: 480, imported });
const now = at('2026-12-01T09:00');
const findings = (book: Book, job: BookJob) =>
  assess({ book, candidate: job, now, replyBy: null }).findings.filter(({ kind }) => kind === 'imported time');

describe('one event', () => {
  test('over a day must be settled, and names the calendar, the event and the hours', () => {
    const book = bookWith(time('2026-12-12T18:00', '2026-12-12T20:00'));
    expect(findings(book, candidate([day('2026-12-12')]))).toMatchObject([
      {
        hardness: 'settle',
        numbers: { overlap: 60, times: 1, calendar: 'Family' },
        sentence: 'Choir stands in the calendar Family on Saturday 12 December 18:00 to 20:00; your days take 1 h of it.',
      },
    ]);
  });

  test('of a calendar that is never given up blocks', () => {
    const book = bookWith(time('2026-12-12T18:00', '2026-12-12T20:00', { hardness: 'never' }));
    const result = checkFit({ book, candidate: candidate([day('2026-12-12')]), now, replyBy: null });
    expect(result.answer).toBe('not possible');
    expect(result.findings[0]?.sentence).toContain('never to be given up');
    expect(result.findings[0]?.lifts.map(({ kind }) => kind)).toEqual(['other dates']);
  });

  test('that is tentative is good to know', () => {
    const book = bookWith(time('2026-12-12T18:00', '2026-12-12T20:00', { hardness: 'know' }));
    expect(findings(book, candidate([day('2026-12-12')]))).toMatchObject([
      { hardness: 'know', sentence: expect.stringContaining('not yet for certain') },
    ]);
    expect(assess({ book, candidate: candidate([day('2026-12-12')]), now, replyBy: null }).answer).toBe('free');
  });

  test('that touches the call does not overlap it', () => {
    expect(findings(bookWith(time('2026-12-12T07:00', '2026-12-12T09:00')), candidate([day('2026-12-12')]))).toEqual([]);
    expect(findings(bookWith(time('2026-12-12T19:00', '2026-12-12T20:00')), candidate([day('2026-12-12')]))).toEqual([]);
  });

  test('on the way as it is planned is good to know', () => {
    const book = bookWith(time('2026-12-12T04:00', '2026-12-12T04:30'));
    const there = { ...day('2026-12-12', '12:00'), callAt: at('2026-12-12T13:00', 'America/Toronto') };
    expect(findings(book, candidate([there], THUNDER_BAY))).toMatchObject([]);
    const onTheRoad = bookWith(time('2026-12-12T08:00', '2026-12-12T08:30', { hardness: 'never' }));
    expect(findings(onTheRoad, candidate([there], THUNDER_BAY))).toMatchObject([
      { hardness: 'know', sentence: expect.stringContaining('the way as it is planned takes') },
    ]);
  });
});

test('what one event takes several times is told once, with the hours of all', () => {
  const daily = ['12', '13', '14'].map((date) => time(`2026-12-${date}T17:00`, `2026-12-${date}T19:30`));
  const days = [day('2026-12-12'), day('2026-12-13'), day('2026-12-14')];
  expect(findings(bookWith(...daily), candidate(days))).toMatchObject([
    {
      numbers: { overlap: 7 * 60, times: 3 },
      sentence: 'Choir stands in the calendar Family on Saturday 12 December 17:00 to 19:30 and 2 more times; your days take 7 h of it.',
    },
  ]);
});

test('the same title in two calendars is two findings', () => {
  const twice = [
    time('2026-12-12T10:00', '2026-12-12T11:00'),
    time('2026-12-12T10:00', '2026-12-12T11:00', { calendarId: 'club', calendar: 'Club' }),
  ];
  expect(findings(bookWith(...twice), candidate([day('2026-12-12')]))).toHaveLength(2);
});

test('moving it lifts it, as far as it is tried on', () => {
  const book = bookWith(time('2026-12-12T18:00', '2026-12-12T20:00'));
  const job = candidate([day('2026-12-12')]);
  const lift = checkFit({ book, candidate: job, now, replyBy: null })
    .findings.flatMap(({ lifts }) => lifts)
    .find(({ kind }) => kind === 'move imported');
  expect(lift?.label).toBe('Move Choir in the calendar Family');
  expect(assess({ book, candidate: job, tryOn: lift?.tryOn, now, replyBy: null }).answer).toBe('free');
});

describe('against the slow twin', () => {
  const MINUTE = 60_000;
  const LONG_BEFORE = YEAR_START - 400 * DAY;
  const RANK = ['free', 'free if', 'not possible'] as const;

  /** Every minute of every stay is looked up in every calendar. */
  function twinWithImported(book: Book, job: BookJob): (typeof RANK)[number] {
    let worst: number = RANK.indexOf(twinAnswer(book, job));
    for (const run of runsOf(job))
      for (let minute = run.from; minute < run.to; minute += 15 * MINUTE)
        for (const { startAt, endAt, hardness } of book.imported ?? [])
          if (startAt < minute + 15 * MINUTE && minute < endAt) worst = Math.max(worst, { know: 0, settle: 1, never: 2 }[hardness]);
    return RANK[worst as 0 | 1 | 2];
  }

  /** Consecutive dates are one stay, nights included. */
  function runsOf({ days }: BookJob): { from: number; to: number }[] {
    const runs: { from: number; to: number; date: string }[] = [];
    for (const each of days.toSorted((a, b) => a.callAt - b.callAt)) {
      const last = runs.at(-1);
      if (last && Temporal.PlainDate.from(last.date).until(each.date).days <= 1)
        Object.assign(last, { to: Math.max(last.to, each.wrapAt), date: each.date });
      else runs.push({ from: each.callAt, to: each.wrapAt, date: each.date });
    }
    return runs;
  }

  test(`the answer is the same in ${CASES} generated years`, () => {
    const counts = { free: 0, 'free if': 0, 'not possible': 0 };
    for (let seed = 1; seed <= CASES; seed += 1) {
      const { book, candidate: job } = generatedYear(seed);
      const random = randomFrom(seed + 7);
      const hardness = ['never', 'settle', 'know'] as const;
      const imported = Array.from({ length: Math.floor(random() * 30) }, (_, index): ImportedTime => {
        const startAt = YEAR_START + Math.floor(random() * 40 * 96) * 15 * MINUTE;
        const endAt = startAt + (1 + Math.floor(random() * 24)) * 15 * MINUTE;
        return {
          calendarId: `${index % 4}`,
          calendar: 'C',
          title: `${index % 9}`,
          startAt,
          endAt,
          allDay: false,
          hardness: hardness[Math.floor(random() * 6)] ?? 'know',
        };
      });
      const whole = { ...book, imported };
      const { answer } = assess({ book: whole, candidate: job, now: LONG_BEFORE, replyBy: null });
      expect(`${seed}: ${answer}`).toBe(`${seed}: ${twinWithImported(whole, job)}`);
      counts[answer] += 1;
    }
    for (const count of Object.values(counts)) expect(count).toBeGreaterThan(CASES / 20);
  });
});

test('several that are moved are tried on together', () => {
  const book = bookWith(
    time('2026-12-12T18:00', '2026-12-12T20:00'),
    time('2026-12-12T10:00', '2026-12-12T11:00', { title: 'Dentist', calendarId: 'club', calendar: 'Club' }),
  );
  const job = candidate([day('2026-12-12')]);
  const lifts = checkFit({ book, candidate: job, now, replyBy: null }).findings.flatMap((finding) => finding.lifts);
  const moved = lifts.flatMap(({ kind, tryOn }) => (kind === 'move imported' && tryOn ? [tryOn] : []));
  expect(moved).toHaveLength(2);
  const answerWith = (tryOn: TryOn) => assess({ book, candidate: job, tryOn, now, replyBy: null }).answer;
  expect(moved.map(answerWith)).toEqual(['free if', 'free if']);
  expect(answerWith(combined(moved))).toBe('free');
});
