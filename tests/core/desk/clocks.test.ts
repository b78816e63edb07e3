import { describe, expect, test } from 'vitest';
import { clocksOf, type DeskJob } from '../../../core/desk/clocks.ts';
import { monthOf } from '../../../core/desk/month.ts';
import { whenWords } from '../../../core/desk/when.ts';
import { readDays } from '../../../core/jobs/days.ts';

const at = (instant: string) => Temporal.Instant.from(instant).epochMilliseconds;
const HOME = 'America/Chicago';
/** Thu 3 December 2026, 21:10 at home. */
const NOW = at('2026-12-04T03:10:00Z');
const THUNDER_BAY = {
  key: 'geonames:6166142',
  name: 'Thunder Bay',
  region: 'Ontario',
  country: 'CA',
  lat: 48.38,
  lon: -89.25,
  zone: 'America/Toronto',
};

const daysIn = (zone: string, ...dates: string[]) =>
  readDays(
    dates.map((date) => ({ date, kind: 'shoot' as const, call: `${date}T08:00`, wrap: `${date}T18:00` })),
    zone,
  ).days;

const job = (facts: Partial<DeskJob>): DeskJob => ({
  id: 'a',
  version: 3,
  title: 'Curling championship',
  stage: 'inquiry',
  place: THUNDER_BAY,
  days: daysIn('America/Toronto', '2026-12-06', '2026-12-07'),
  questions: [],
  receivedAt: at('2026-12-04T02:52:00Z'),
  replyByAt: at('2026-12-04T06:00:00Z'),
  heldUntil: null,
  challengedUntil: null,
  among: null,
  quoteValidUntil: null,
  total: null,
  answer: null,
  ...facts,
});
const clocks = (...jobs: DeskJob[]) => clocksOf(jobs, NOW, HOME);

const usd = (minor: number) => ({ minor, currency: 'USD' });
const held = (heldUntil: string) => clocks(job({ stage: 'pencilled', heldUntil: at(heldUntil), total: usd(984_000) }))[0];

describe('clocks', () => {
  test('an inquiry runs to its reply-by and says what the check says', () => {
    const question = { field: 'firstCall' as const, ask: 'When is the call?', choices: [] };
    expect(clocks(job({ answer: 'free if', questions: [question] }))).toEqual([
      {
        id: 'reply-by:a',
        kind: 'reply-by',
        at: '2026-12-04T06:00:00Z',
        late: false,
        jobId: 'a',
        jobVersion: 3,
        sentence: 'Curling championship: reply by midnight',
        second: 'Free if …; Sun 6 and Mon 7 December 2026; Thunder Bay; 1 question open',
        action: 'answer',
      },
    ]);
  });

  test('a pencil says who waits behind it; one that was asked runs to the answer', () => {
    const among = { before: [], behind: ['Fair'] };
    const pencil = { stage: 'pencilled' as const, heldUntil: at('2026-12-05T18:00:00Z'), among };
    expect(clocks(job(pencil))[0]).toMatchObject({ kind: 'pencil', second: expect.stringMatching(/^Fair waits behind it; /) });
    const asked = clocks(job({ ...pencil, challengedUntil: at('2026-12-04T15:00:00Z') }))[0];
    expect(asked).toMatchObject({ kind: 'challenge', late: false, sentence: expect.stringContaining('asked for a yes or no by') });
    const late = clocks(job({ ...pencil, challengedUntil: at('2026-12-04T03:00:00Z') }))[0];
    expect(late).toMatchObject({ kind: 'challenge', late: true, sentence: expect.stringContaining('it may be let go') });
  });

  test('one that names no reply-by is given a day, at most to its first call', () => {
    expect(clocks(job({ replyByAt: null }))[0]).toMatchObject({
      kind: 'question',
      at: '2026-12-05T02:52:00Z',
      sentence: 'Curling championship: not answered, came 20:52',
    });
    expect(clocks(job({ replyByAt: null, days: daysIn(HOME, '2026-12-04') }))[0]?.at).toBe('2026-12-04T14:00:00Z');
  });

  test('a pencil runs out, and then has run out for fourteen days', () => {
    expect(held('2026-12-05T18:00:00Z')).toMatchObject({
      kind: 'pencil',
      late: false,
      sentence: 'Curling championship: pencil runs out Sat 12:00',
      second: 'Sun 6 and Mon 7 December 2026; Thunder Bay; USD 9,840.00',
      action: 'ask-or-let-go',
    });
    expect(held('2026-12-04T03:10:00Z')).toMatchObject({
      kind: 'ran out',
      late: true,
      sentence: 'Curling championship: pencil ran out 21:10',
      action: 'renew',
    });
    expect(held('2026-11-20T03:10:00.001Z')).toMatchObject({ kind: 'ran out' });
    expect(held('2026-11-20T03:10:00Z')).toBeUndefined();
  });

  test('a quote without an answer runs to the end of its validity, and says that it holds nothing', () => {
    const quoted = (until: string) => clocks(job({ stage: 'quoted', quoteValidUntil: at(until), total: usd(984_000) }))[0];
    expect(quoted('2026-12-11T05:59:00Z')).toMatchObject({
      kind: 'quote',
      late: false,
      sentence: 'Curling championship: quote valid until the end of Thu 10 Dec',
      second: 'Sun 6 and Mon 7 December 2026; Thunder Bay; USD 9,840.00; no dates held',
      action: 'open',
    });
    expect(quoted('2026-12-04T03:10:00Z')).toMatchObject({ late: true, sentence: 'Curling championship: quote was valid until 21:10' });
  });

  test('ink shows its next call in the clock of the place, with the one at home', () => {
    expect(clocks(job({ stage: 'inked' }))[0]).toMatchObject({
      kind: 'call',
      sentence: 'Call Sun 08:00 (07:00 at home), Curling championship, day 1 of 2',
      second: 'Thunder Bay; wrap 18:00',
    });
    const atHome = job({ stage: 'inked', place: { ...THUNDER_BAY, zone: HOME }, days: daysIn(HOME, '2026-12-03', '2026-12-04') });
    expect(clocks(atHome)[0]?.sentence).toBe('Call Fri 08:00, Curling championship, day 2 of 2');
    expect(clocks(job({ stage: 'inked', days: daysIn(HOME, '2026-12-20') }))).toEqual([]);
  });

  test('of its days only those on site are counted; a day of travel or editing says what it is', () => {
    const days = daysIn(HOME, '2026-12-04', '2026-12-05', '2026-12-06', '2026-12-07').map((day, index) => ({
      ...day,
      kind: (['travel', 'shoot', 'shoot', 'edit'] as const)[index] ?? 'shoot',
    }));
    const shown = (now: string) => clocksOf([job({ stage: 'inked', days })], at(now), HOME)[0]?.sentence.replace(/^.*champ/, 'champ');
    expect(shown('2026-12-04T03:10:00Z')).toBe('championship, travel day');
    expect(shown('2026-12-04T20:00:00Z')).toBe('championship, day 1 of 2');
    expect(shown('2026-12-05T20:00:00Z')).toBe('championship, day 2 of 2');
    expect(shown('2026-12-06T20:00:00Z')).toBe('championship, edit day');
  });

  test('late first, then by instant; what is closed has none', () => {
    const titles = clocks(
      job({ id: 'c', title: 'C', replyByAt: at('2026-12-05T00:00:00Z') }),
      job({ id: 'a', title: 'A', replyByAt: at('2026-12-04T00:00:00Z') }),
      job({ id: 'b', title: 'B', replyByAt: at('2026-12-04T03:10:00Z') }),
      job({ id: 'd', stage: 'declined' }),
      job({ id: 'e', stage: 'let go' }),
      job({ id: 'f', stage: 'quoted' }),
    ).map(({ jobId, late }) => [jobId, late]);
    expect(titles).toEqual([
      ['a', true],
      ['b', true],
      ['c', false],
    ]);
  });
});

test.each([
  ['2026-12-04T03:00:00Z', '21:00'],
  ['2026-12-04T05:59:00Z', 'midnight'],
  ['2026-12-04T06:00:00Z', 'midnight'],
  ['2026-12-05T06:00:00Z', 'the end of Fri'],
  ['2026-12-09T18:00:00Z', 'Wed 12:00'],
  ['2026-12-10T18:00:00Z', 'Thu 10 Dec 12:00'],
  ['2027-01-10T18:00:00Z', 'Sun 10 Jan 2027 12:00'],
])('%s is said as %s', (instant, words) => expect(whenWords(at(instant), HOME, NOW)).toBe(words));

test('the month counts ink and live pencil with first call in it, in the home currency only', () => {
  const month = monthOf(
    [
      job({ stage: 'inked', total: usd(1_000_00) }),
      job({ stage: 'inked', total: usd(500_00), days: daysIn(HOME, '2026-11-30', '2026-12-01') }),
      job({ stage: 'pencilled', total: usd(700_00), heldUntil: NOW + 1 }),
      job({ stage: 'pencilled', total: usd(9_00), heldUntil: NOW }),
      job({ stage: 'inked', total: { minor: 5, currency: 'CAD' } }),
      job({ stage: 'quoted', total: usd(1) }),
    ],
    NOW,
    { zone: HOME, currency: 'USD' },
  );
  expect(month).toEqual({ label: 'December 2026, 1 job in other currencies left out', inked: usd(1_000_00), pencilled: usd(700_00) });
});
