import { describe, expect, test } from 'vitest';
import type { LegFields } from '../../../core/contract/trips.ts';
import { logRates, mileageLog } from '../../../core/expenses/mileage-log.ts';
import { awayOf, perDiemLog, type Away } from '../../../core/expenses/per-diem-log.ts';
import { mileageLines } from '../../../core/quotes/travel.ts';
import type { QuotedTrip } from '../../../core/quotes/trip.ts';
import { decimalText } from '../../../core/money/exact.ts';
import { drivenLegs, stillPlanned } from '../../../core/trips/driven.ts';
import { legAt } from '../../../core/trips/legs.ts';
import { at, card, day, drive, duluth, fargo } from '../quotes/facts.ts';

const days = [day('2026-12-12', '09:00', '18:00'), day('2026-12-13', '09:00', '18:00')];
const leg = (given: Partial<LegFields>, depart: string) =>
  legAt(
    {
      mode: 'drive',
      from: duluth,
      to: fargo,
      depart,
      arrive: depart,
      source: 'typed',
      before: null,
      after: null,
      berth: false,
      cost: '',
      note: '',
      ...given,
    },
    null,
    { departAt: at(depart), arriveAt: at(depart) + 4 * 3_600_000 },
  );

describe('drives as they were driven', () => {
  const out = leg({ distance: '251.4' }, '2026-12-11T16:00');
  const back = leg({ from: fargo, to: duluth, distance: '249.9' }, '2026-12-13T18:30');
  const there = leg({ from: fargo, to: fargo, distance: '12' }, '2026-12-12T20:00');

  test('are those drives whose distance was typed, each with its half of the trip', () => {
    const flight = leg({ mode: 'flight', distance: '300' }, '2026-12-11T16:00');
    const driven = drivenLegs([out, flight, leg({}, '2026-12-11T16:00'), there, back], fargo, days, 'mi');
    expect(driven.map(({ half, date, distance }) => [half, date, distance])).toEqual([
      ['out', '2026-12-11', '251.4'],
      ['local', '2026-12-12', '12'],
      ['back', '2026-12-13', '249.9'],
    ]);
  });

  test('a drive to an airport is of the way out, one from it of the way back', () => {
    const airport = { ...duluth, key: 'own:airport', name: 'Airport' };
    const driven = drivenLegs(
      [leg({ to: airport, distance: '9' }, '2026-12-11T10:00'), leg({ from: airport, to: duluth, distance: '9' }, '2026-12-14T10:00')],
      fargo,
      days,
      'mi',
    );
    expect(driven.map(({ half }) => half)).toEqual(['out', 'back']);
  });

  test('where one is home every night each date stands for itself', () => {
    const ways = ['2026-12-12', '2026-12-13'].flatMap((date) => [
      { name: 'out' as const, date },
      { name: 'back' as const, date },
    ]);
    const [first] = drivenLegs([leg({ distance: '20' }, '2026-12-12T08:00')], fargo, days, 'mi');
    expect(stillPlanned(ways, first ? [first] : []).map(({ name, date }) => `${name} ${date.slice(8)}`)).toEqual([
      'back 12',
      'out 13',
      'back 13',
    ]);
    expect(stillPlanned(ways.slice(0, 2), first ? [{ ...first, date: '2026-12-11' }] : []).map(({ name }) => name)).toEqual(['back']);
  });

  // 251.4 + 249.9 + 12 = 513.3 mi.
  test('are charged in place of the ways that they stand for', () => {
    const trip: QuotedTrip = { ...drive, driven: drivenLegs([out, there, back], fargo, days, 'mi') };
    const { lines } = mileageLines(trip, { ...card, mileage: [{ from: '2026-01-01', rate: '0.725' }], mileageUnit: 'mi' });
    expect(lines.map(({ quantity, estimated }) => [decimalText(quantity), estimated])).toEqual([['513.3', false]]);
    expect(lines[0]?.reason).toContain(
      '251.4 mi Duluth to Fargo, as driven; 12 mi Fargo to Fargo, as driven; 249.9 mi Fargo to Duluth, as driven at 0.725',
    );
    const half = mileageLines(
      { ...drive, oneWayKm: 400, roadKnown: false, driven: drivenLegs([out], fargo, days, 'mi') },
      { ...card, mileage: [{ from: '2026-01-01', rate: '0.725' }], mileageUnit: 'mi' },
    );
    // 400 km are 248.5 mi, whole where they are estimated.
    expect(half.lines.map(({ quantity, estimated }) => [decimalText(quantity), estimated])).toEqual([['500.4', true]]);
    const km = mileageLines(trip, { ...card, mileage: [{ from: '2026-01-01', rate: '0.5' }], mileageUnit: 'km' });
    // To a tenth each: 404.6 + 19.3 + 402.2.
    expect(km.lines.map(({ quantity }) => decimalText(quantity))).toEqual(['826.1']);
  });

  test('the log has each drive with the published rate of its date', () => {
    const rates = logRates(duluth, undefined);
    const job = { id: '01890000-0000-7000-8000-0000000000c1', title: 'Fair', place: fargo };
    const trip: QuotedTrip = {
      ...drive,
      oneWayKm: 402.336,
      roadKnown: true,
      driven: drivenLegs([out], fargo, days, 'mi'),
      legs: [
        { name: 'out', date: '2026-12-11' },
        { name: 'back', date: '2027-01-02' },
      ],
    };
    const rows = mileageLog(job, trip, duluth, 'mi', rates);
    expect(rows.map(({ date, distance, rate, amount, source }) => [date, distance, rate, amount?.minor, source])).toEqual([
      ['2026-12-11', '251.4', '0.725', 18_227, 'actual'],
      ['2027-01-02', '250', '0.725', 18_125, 'estimate'],
    ]);
    expect(rows[1]?.reason).toContain('It is that of 2026; ask whether there is a newer one.');
    expect(mileageLog(job, trip, duluth, 'mi', null)[0]).toMatchObject({
      rate: null,
      amount: null,
      reason: 'As driven; no rate is known for 2026-12-11.',
    });
  });
});

const milwaukee = { ...fargo, name: 'Milwaukee', region: 'Wisconsin' };
const away = (from: string, to: string, given: Partial<Away> = {}): Away => ({
  jobId: '01890000-0000-7000-8000-0000000000c1',
  title: 'Congress',
  place: milwaukee,
  doorOutAt: at(from),
  doorInAt: at(to),
  ...given,
});
const cents = (trips: Away[]) => perDiemLog(trips, duluth).map(({ date, amount }) => [date.slice(5), amount?.minor ?? null]);

describe('the time away on a job', () => {
  const job = { id: '01890000-0000-7000-8000-0000000000c1', title: 'Congress', place: milwaukee };
  const trip: QuotedTrip = {
    ...drive,
    outMinutes: 40,
    backMinutes: 50,
    doorOutAt: at('2026-12-12T08:20'),
    doorInAt: at('2026-12-13T18:50'),
  };
  test('is one trip from door-out to door-in', () =>
    expect(awayOf(job, days, trip)).toEqual([
      { jobId: job.id, title: 'Congress', place: milwaukee, doorOutAt: trip.doorOutAt, doorInAt: trip.doorInAt },
    ]));
  test('is one for each day where one is home every night: 10 h 30 are allowed nothing', () => {
    const daily = days.flatMap(({ date }) => [
      { name: 'out' as const, date },
      { name: 'back' as const, date },
    ]);
    const each = awayOf(job, days, { ...trip, legs: daily });
    expect(each.map(({ doorOutAt, doorInAt }) => [doorOutAt, doorInAt])).toEqual([
      [at('2026-12-12T08:20'), at('2026-12-12T18:50')],
      [at('2026-12-13T08:20'), at('2026-12-13T18:50')],
    ]);
    expect(perDiemLog(each, duluth)).toEqual([]);
  });
  test('is nothing at home', () => expect(awayOf(job, days, { ...trip, away: false })).toEqual([]));
});

describe('the per-diem log', () => {
  // Milwaukee is of the tier of 80: 60.00 on the first and last date, 80.00 between.
  test('two nights: 60, 80, 60', () =>
    expect(cents([away('2026-04-10T08:00', '2026-04-12T20:00')])).toEqual([
      ['04-10', 6_000],
      ['04-11', 8_000],
      ['04-12', 6_000],
    ]));
  test('12 h without a night are nothing, a minute more is 60 once', () => {
    expect(cents([away('2026-04-10T08:00', '2026-04-10T20:00')])).toEqual([]);
    expect(cents([away('2026-04-10T08:00', '2026-04-10T20:01')])).toEqual([['04-10', 6_000]]);
    expect(cents([away('2026-04-10T12:00', '2026-04-11T01:00')])).toEqual([['04-10', 6_000]]);
  });
  test('two jobs without home in between are one trip, each night at the rate of its place', () => {
    const next = away('2026-04-12T10:00', '2026-04-13T20:00', { place: { ...fargo, name: 'Denver', region: 'Colorado' }, title: 'Gala' });
    const rows = perDiemLog([next, away('2026-04-10T08:00', '2026-04-12T10:00')], duluth);
    expect(rows.map(({ date, place, title, amount }) => [date.slice(5), place, title, amount?.minor])).toEqual([
      ['04-10', 'Milwaukee', 'Congress', 6_000],
      ['04-11', 'Milwaukee', 'Congress', 8_000],
      ['04-12', 'Denver', 'Gala', 9_200],
      ['04-13', 'Denver', 'Gala', 6_900],
    ]);
  });
  test('with home in between they are two', () =>
    expect(
      cents([away('2026-04-10T08:00', '2026-04-11T20:00'), away('2026-04-12T08:00', '2026-04-13T20:00')]).map(([, amount]) => amount),
    ).toEqual([6_000, 6_000, 6_000, 6_000]));
  test('a place without a rate of its own takes the standard rate and says so', () => {
    const [row] = perDiemLog([away('2026-04-10T08:00', '2026-04-11T20:00', { place: fargo })], duluth);
    expect(row).toMatchObject({
      amount: { minor: 5_100 },
      reason: expect.stringContaining('the standard rate; look whether Fargo has one of its own'),
    });
  });
  test('a date past the known rates, and a place of which none are known, have no amount and say so', () => {
    const thunderBay = { ...fargo, name: 'Thunder Bay', region: 'Ontario', country: 'CA' };
    for (const trip of [
      away('2026-12-06T08:00', '2026-12-07T20:00'),
      away('2026-04-10T08:00', '2026-04-11T20:00', { place: thunderBay }),
    ]) {
      const rows = perDiemLog([trip], duluth);
      expect(rows.map(({ amount }) => amount)).toEqual([null, null]);
      expect(rows[0]?.reason).toContain('is known on');
    }
  });
  test('over the night the clock is set ahead a trip has the dates that it has', () =>
    expect(cents([away('2026-03-07T10:00', '2026-03-08T22:00')])).toEqual([
      ['03-07', 6_000],
      ['03-08', 6_000],
    ]));
});
