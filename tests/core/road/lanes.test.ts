import { describe, expect, test } from 'vitest';
import type { Place } from '../../../core/contract/parts.ts';
import type { Book, BookDay, BookJob, KitItem } from '../../../core/fit/book.ts';
import { movedBy } from '../../../core/fit/moved.ts';
import { datesTaken, editLane, editPieces } from '../../../core/road/edit-lane.ts';
import { kitLane, rowsOf } from '../../../core/road/kit-lane.ts';
import { linesOf } from '../../../core/road/lines.ts';
import { epochOf, instantOf } from '../../../core/time/read.ts';
import { CASES, DAY, generatedYear, HOUR, YEAR_START } from '../fit/generated.ts';

const place = (name: string, zone: string, lat: number, lon: number): Place => ({
  key: name,
  name,
  region: '',
  country: 'US',
  lat,
  lon,
  zone,
});
const DULUTH = place('Duluth', 'America/Chicago', 46.78, -92.1);
const MILWAUKEE = place('Milwaukee', 'America/Chicago', 43.04, -87.91);
const THUNDER_BAY = place('Thunder Bay', 'America/Toronto', 48.38, -89.25);
const day = (where: Place, call: string, wrap: string, kind: BookDay['kind'] = 'shoot'): BookDay => ({
  date: call.slice(0, 10),
  kind,
  call,
  wrap,
  callAt: instantOf(call, where.zone).epochMilliseconds,
  wrapAt: instantOf(wrap, where.zone).epochMilliseconds,
});
const job = (title: string, where: Place, days: BookDay[], part: Partial<BookJob> = {}): BookJob => ({
  id: title,
  title,
  firmness: 'ink',
  pencilledAt: null,
  expiresAt: null,
  place: where,
  days,
  ...part,
});
const thing = (id: string, name: string, owned: number): KitItem => ({
  id,
  name,
  owned,
  resetMinutes: 0,
  resetOnRoad: true,
  does: '',
  subHire: '',
  services: [],
});
const KIT = [thing('set', 'Camera set', 1), thing('mics', 'Transmitter', 4), thing('lights', 'Light', 3)];
const WAYS = [
  { fromKey: 'Duluth', toKey: 'Milwaukee', mode: 'drive' as const, minutes: 415 },
  { fromKey: 'Duluth', toKey: 'Thunder Bay', mode: 'drive' as const, minutes: 225 },
];
const at = (wall: string) => instantOf(wall, 'America/Chicago').epochMilliseconds;
const [FROM, TO] = [at('2026-11-30T00:00'), at('2026-12-21T00:00')];
const bakers = job(
  'Bakers',
  MILWAUKEE,
  ['01', '02', '03', '04'].map((date) => day(MILWAUKEE, `2026-12-${date}T09:00`, `2026-12-${date}T22:30`)),
  {
    kit: [
      { item: 'set', count: 1 },
      { item: 'mics', count: 4 },
      { item: 'lights', count: 3 },
    ],
  },
);
const curling = job('Curling', THUNDER_BAY, [day(THUNDER_BAY, '2026-12-06T08:00', '2026-12-06T18:00')], {
  firmness: 'candidate',
  kit: [
    { item: 'set', count: 1 },
    { item: 'mics', count: 2 },
  ],
});
const book = (jobs: BookJob[]): Book => ({ home: DULUTH, jobs, ways: WAYS, restMinutes: 480, kit: KIT });
const drawn = (jobs: BookJob[], candidate: BookJob | null) =>
  kitLane(book(jobs), candidate, linesOf({ book: book(jobs), candidate }), FROM, TO);

describe('kit lane', () => {
  test('from twelve hours before the door until home again, and what is out of how many', () => {
    const [bar] = drawn([bakers], null);
    expect(bar).toMatchObject({
      title: 'Bakers',
      firmness: 'ink',
      words: 'Camera set, 4 of 4 Transmitter, 3 of 3 Light',
      row: 0,
      short: [],
    });
    const [line] = linesOf({ book: book([bakers]), candidate: null }).lines;
    expect(epochOf(bar?.start ?? '')).toBe((line?.moves[0]?.start ?? 0) - 12 * HOUR);
    expect(epochOf(bar?.end ?? '')).toBe(line?.moves.at(-1)?.end);
  });

  test('what is home less than the time of packing goes straight on, in the same row', () => {
    const [first, second] = drawn([bakers], curling);
    expect(second).toMatchObject({ firmness: 'candidate', row: 0, words: 'goes straight on: Camera set, 2 of 4 Transmitter' });
    expect(second?.start).toBe(first?.end);
    const later = movedBy(curling, 5);
    expect(drawn([bakers], later)[1]?.words).toBe('Camera set, 2 of 4 Transmitter');
  });

  test('what is not there is said with the figures of the check, and a thing that is on no list by its name', () => {
    const clinic = job('Clinic', DULUTH, [day(DULUTH, '2026-12-06T09:00', '2026-12-06T12:00')], {
      kit: [
        { item: 'mics', count: 3 },
        { item: 'crane', count: 1 },
      ],
    });
    const bars = drawn([clinic], curling);
    expect(bars.map(({ row }) => row)).toEqual([0, 1]);
    expect(bars.find(({ title }) => title === 'Clinic')?.words).toBe('3 of 4 Transmitter, 1 crane, not on the list');
    expect(bars.find(({ title }) => title === 'Curling')?.short).toEqual([
      {
        words: 'Transmitter short by 1',
        sentence: expect.stringMatching(/^Transmitter: short by 1 .*5 asked for beside Clinic, 4 owned\.$/),
      },
    ]);
  });

  test('in generated years: every job with kit is there, around all its paid time; bars of one row never touch; handing on meets an end', () => {
    for (let seed = 1; seed <= Math.min(CASES, 100); seed += 1) {
      const { book, candidate } = generatedYear(seed, { kit: true });
      const bars = kitLane(book, candidate, linesOf({ book, candidate }), YEAR_START - 60 * DAY, YEAR_START + 200 * DAY);
      for (const { id, title, days, kit } of [...book.jobs, candidate]) {
        const own = bars.filter((bar) => bar.title === title);
        expect(own.length > 0, `${seed} ${title}`).toBe((kit ?? []).length > 0);
        if (own.length === 0) continue;
        for (const { callAt, wrapAt } of days)
          expect(
            own.some(({ start, end }) => epochOf(start) <= callAt && wrapAt <= epochOf(end)),
            `${seed} ${id}`,
          ).toBe(true);
      }
      for (const [index, bar] of bars.entries()) {
        expect(bars.slice(0, index).filter(({ row, end }) => row === bar.row && end > bar.start)).toEqual([]);
        if (bar.words.startsWith('goes straight on')) expect(bars.some(({ end }) => end === bar.start)).toBe(true);
      }
    }
  });

  test('rows are as few as the spans that overlap at once', () => {
    expect(
      rowsOf([
        { start: 0, end: 4 },
        { start: 1, end: 2 },
        { start: 2, end: 6 },
        { start: 4, end: 5 },
      ]),
    ).toEqual([0, 1, 1, 0]);
  });
});

describe('edit lane', () => {
  const film = job('Film', DULUTH, [
    day(DULUTH, '2026-12-07T09:00', '2026-12-07T15:10', 'edit'),
    day(DULUTH, '2026-12-08T09:00', '2026-12-08T13:00', 'edit'),
  ]);
  const second = job('Second film', DULUTH, [day(DULUTH, '2026-12-07T16:00', '2026-12-07T20:00', 'edit')]);

  test('hours by started half hour, over the day or within it', () => {
    const lane = editLane([film, second].flatMap(editPieces), 10, [], 'America/Chicago');
    expect(lane).toMatchObject({ ceiling: 10, lost: '' });
    expect(lane.days.map(({ date, hours, over, lost }) => [date, hours, over, lost])).toEqual([
      ['2026-12-07', 10.5, true, false],
      ['2026-12-08', 4, false, false],
    ]);
    expect(lane.days[0]).toMatchObject({ start: '2026-12-07T06:00:00Z', end: '2026-12-08T06:00:00Z' });
    expect(lane.days[0]?.parts.map(({ title, hours }) => [title, hours])).toEqual([
      ['Film', 6.5],
      ['Second film', 4],
    ]);
  });

  test('without a card nothing is over', () => {
    expect(editLane([film].flatMap(editPieces), null, [], 'America/Chicago').days.every(({ over }) => !over)).toBe(true);
  });

  test('days on which the candidate works or travels lose their hours; its own editing takes none', () => {
    const away = job('Away', THUNDER_BAY, [
      day(THUNDER_BAY, '2026-12-07T14:00', '2026-12-07T22:00'),
      day(THUNDER_BAY, '2026-12-10T09:00', '2026-12-10T12:00', 'edit'),
    ]);
    const candidate = { ...away, firmness: 'candidate' as const };
    const line = linesOf({ book: book([film]), candidate }).lines.find(({ job }) => job === candidate);
    const taken = line ? datesTaken(line, 'America/Chicago') : [];
    expect(taken).toEqual(['2026-12-07', '2026-12-08']);
    const lane = editLane([film, candidate].flatMap(editPieces), 10, taken, 'America/Chicago');
    expect(lane.lost).toBe('10.5 h of editing lose their days: Mon 7 and Tue 8 December 2026.');
    expect(lane.days.map(({ lost }) => lost)).toEqual([true, true, false]);
  });
});

test('moved days keep their wall times over a clock change; a time that does not exist there is not taken', () => {
  const early = job('Early', DULUTH, [day(DULUTH, '2026-03-07T02:30', '2026-03-07T12:00')]);
  expect(movedBy(early, 1)).toBeNull();
  expect(movedBy(early, 2)?.days[0]).toMatchObject({ date: '2026-03-09', call: '2026-03-09T02:30', wrap: '2026-03-09T12:00' });
  const noon = job('Noon', DULUTH, [day(DULUTH, '2026-03-07T12:00', '2026-03-07T18:00')]);
  expect((movedBy(noon, 1)?.days[0]?.callAt ?? 0) - (noon.days[0]?.callAt ?? 0)).toBe(23 * HOUR);
});
