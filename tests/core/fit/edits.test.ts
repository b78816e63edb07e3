/**
 * Part 6 of the check against its slow plain twin, which walks through every half hour by itself and knows nothing of the schedule.
 */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { EDIT_SETTINGS, type EditGround } from '../../../core/deliverables/ground.ts';
import type { BookDay } from '../../../core/fit/book.ts';
import { assess, checkFit, type FitInput } from '../../../core/fit/check.ts';
import { combined } from '../../../core/fit/combined.ts';
import { edit, stage } from '../deliverables/ground.ts';
import { tried } from '../laws.ts';
import { utcTown } from '../trips/places.ts';

const HALF = 30 * 60_000;
const at = (wall: string): number => Temporal.Instant.from(`${wall}Z`).epochMilliseconds;
const date = (day: number): string => `2026-12-${String(day).padStart(2, '0')}`;
const NOW = at('2026-12-07T08:00');

type Asked = { due: number; halves: number; files: number };

/** Ends of all edits, by walking every half hour of every working day: of those whose files are there the one that is due first goes on. */
function ends(edits: readonly Asked[], taken: ReadonlySet<string>): number[] {
  const left = edits.map(({ halves }) => halves);
  const finished = edits.map(() => -1);
  const begun = new Set<number>();
  for (let day = 7; left.some((count) => count > 0); day += 1) {
    const today = Temporal.PlainDate.from('2026-12-01').add({ days: day - 1 });
    if (today.dayOfWeek > 5 || taken.has(today.toString())) continue;
    for (let half = 0; half < 12; half += 1) {
      const now = at(`${today.toString()}T09:00`) + half * HALF;
      let best = -1;
      edits.forEach(({ due, files }, index) => {
        if ((left[index] ?? 0) === 0 || at(`${date(files)}T18:00`) > now) return;
        const other = edits[best];
        const earlier = !other || due < other.due || (due === other.due && begun.has(index) && !begun.has(best));
        if (earlier) best = index;
      });
      if (best < 0) continue;
      begun.add(best);
      left[best] = (left[best] ?? 0) - 1;
      if (left[best] === 0) finished[best] = now + HALF;
    }
  }
  return finished;
}

/** Weekdays after the due date up to the date of the end. */
function lateDays(due: number, end: number): number {
  const last = Temporal.Instant.fromEpochMilliseconds(end - 1)
    .toZonedDateTimeISO('UTC')
    .toPlainDate();
  let late = 0;
  for (
    let day = Temporal.PlainDate.from(date(due)).add({ days: 1 });
    Temporal.PlainDate.compare(day, last) <= 0;
    day = day.add({ days: 1 })
  )
    if (day.dayOfWeek <= 5) late += 1;
  return late;
}

const shoot = (day: number): BookDay => {
  const [call, wrap] = [`${date(day)}T08:00`, `${date(day)}T18:00`];
  return { date: date(day), kind: 'shoot', call, wrap, callAt: at(call), wrapAt: at(wrap) };
};
const inputOf = (edits: readonly Asked[], ink: readonly number[], days: readonly number[]): FitInput => {
  const ground: EditGround = {
    now: NOW,
    zone: 'Atlantic/Reykjavik',
    settings: EDIT_SETTINGS,
    holidays: new Set(),
    edits: edits.map(({ due, halves, files }, index) =>
      edit(`e${index}`, date(due), 0, { filesAt: at(`${date(files)}T18:00`), stages: [stage(`e${index}`, halves / 2)] }),
    ),
    dates: ink.map((day) => ({ date: date(day), jobId: 'ink', title: 'Ink', how: 'shoot' as const })),
    times: [],
    pins: [],
    previous: [],
  };
  const candidate = {
    id: null,
    title: 'Asked',
    firmness: 'candidate' as const,
    pencilledAt: null,
    expiresAt: null,
    place: utcTown,
    days: days.map(shoot),
  };
  return { book: { home: utcTown, jobs: [], ways: [], restMinutes: 480, edits: ground }, candidate, now: NOW, replyBy: null };
};

const asked = fc.array(
  fc.record({ due: fc.integer({ min: 7, max: 24 }), halves: fc.integer({ min: 1, max: 30 }), files: fc.integer({ min: 1, max: 12 }) }),
  { minLength: 1, maxLength: 5 },
);
const dates = (most: number) =>
  fc.uniqueArray(fc.integer({ min: 8, max: 18 }), { minLength: 1, maxLength: most }).map((all) => all.toSorted((a, b) => a - b));

test('the edits that become late, and by how many business days, are those of the twin', () => {
  fc.assert(
    fc.property(asked, dates(4), dates(5), (edits, ink, days) => {
      const taken = new Set(ink.map(date));
      const before = ends(edits, taken);
      const after = ends(edits, new Set([...taken, ...days.map(date)]));
      const expected = edits.flatMap(({ due }, index) => {
        const [was, is] = [lateDays(due, before[index] ?? 0), lateDays(due, after[index] ?? 0)];
        return is > was ? [[`Film e${index}`, was, is]] : [];
      });
      const found = assess(inputOf(edits, ink, days)).findings.filter(({ kind }) => kind === 'edit late');
      const shown = found.map(({ sentence, numbers }) => [/Film e\d/.exec(sentence)?.[0], numbers['lateDaysBefore'], numbers['lateDays']]);
      expect(shown).toEqual(expected);
    }),
    tried,
  );
});

test('every lift that is offered for an edit makes it less late, and hiring or a later date settles it', () => {
  fc.assert(
    fc.property(asked, dates(4), (edits, days) => {
      const input = inputOf(edits, [], days);
      for (const { kind, sentence, lifts, numbers } of checkFit(input).findings) {
        if (kind !== 'edit late') continue;
        const film = /Film e\d/.exec(sentence)?.[0] ?? '';
        for (const lift of lifts) {
          const after = assess({ ...input, tryOn: lift.tryOn }).findings.find((other) => other.sentence.includes(film));
          if (lift.kind === 'hire editor' || lift.kind === 'later date') expect(after).toBeUndefined();
          else expect(after?.numbers['lateDays'] ?? 0).toBeLessThan(Number(numbers['lateDays']));
        }
      }
    }),
    { ...tried, numRuns: Math.min(tried.numRuns, 500) },
  );
}, 60_000);

test('edits that are tried on together: the later date, the longer day, everybody who is hired', () => {
  const a = { edits: { moved: [{ deliverableId: 'b', due: '2026-12-20' }], hired: ['x'], hoursADay: 8, closedWeekdays: [6, 7] } };
  const b = {
    edits: {
      moved: [
        { deliverableId: 'b', due: '2026-12-18' },
        { deliverableId: 'a', due: '2026-12-19' },
      ],
      hired: ['w'],
      hoursADay: 10,
      onTravelDays: true,
      closedWeekdays: [7],
    },
  };
  const both = {
    edits: {
      hired: ['w', 'x'],
      moved: [
        { deliverableId: 'a', due: '2026-12-19' },
        { deliverableId: 'b', due: '2026-12-20' },
      ],
      hoursADay: 10,
      onTravelDays: true,
      closedWeekdays: [7],
    },
  };
  expect([combined([a, b]), combined([b, a])]).toEqual([both, both]);
});
