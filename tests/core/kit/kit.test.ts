import { describe, expect, test } from 'vitest';
import { airOf } from '../../../core/kit/air.ts';
import { blankItem, blankUnit } from '../../../core/kit/blank.ts';
import { kitTroubles } from '../../../core/kit/check.ts';
import { kitFromCsv } from '../../../core/kit/csv.ts';
import { foldedIn } from '../../../core/kit/fold.ts';
import { gramsIn, sizeIn, sizeInWords, weightInWords } from '../../../core/kit/measures.ts';

describe('a table of kit', () => {
  test('a line for each thing, with a byte-order mark and semicolons', () => {
    const [camera, battery] = kitFromCsv(
      '\uFEFFItem;Type;Qty;Serial number;Weight;Wh;Value;Bought\r\nCamera;camera;2;A1, A2;1,2 kg;;€ 3 400;2025-03-01\r\n\r\nBig battery;;4;;640 g;97.7;;\r\n',
      'EUR',
    );
    expect(camera).toMatchObject({
      line: 2,
      read: {
        fields: {
          does: 'camera',
          owned: 2,
          units: [blankUnit('A1'), blankUnit('A2')],
          grams: 1200,
          battery: 'none',
          value: { minor: 340_000, currency: 'EUR' },
        },
      },
    });
    expect(battery).toMatchObject({ line: 4, read: { fields: { owned: 4, wattHours: '97.7', battery: 'spare', bought: null } } });
  });
  test('what cannot be read is refused with what to write', () => {
    const rows = kitFromCsv('Name,Count,Weight,Bought,Serial\nA,two,,,\nB,1,4,,\nC,1,,1 May,\nD,1,,,X;Y\n,1,,,\n', 'USD');
    expect(rows.map(({ read }) => ('trouble' in read ? read.trouble : 'read'))).toEqual([
      'The count was not read: "two" is not a number; write it as 1250.50.',
      'The weight was not read: "4" names no unit; write it as 850 g, 1.2 kg or 3 lb.',
      'The bought is not a date; write it as 2026-12-12.',
      '2 units with a serial for 1 owned: count them all.',
      'The name is empty; give it a name.',
    ]);
  });
  test('a table without a name column says what to do', () => {
    expect(() => kitFromCsv('a,b\n1,2\n', 'USD')).toThrow(/headed Name/);
    expect(() => kitFromCsv('', 'USD')).toThrow(/head line/);
  });
  test('units of one name are one thing; what is listed stays as it is', () => {
    const rows = kitFromCsv('Name,Serial\nCamera,A1\ncamera,A2\nCamera,A1\nTripod,\n', 'USD');
    const { rows: fates, fresh } = foldedIn(rows, [{ name: 'tripod' }]);
    expect(fates.map(({ fate, why }) => `${fate} ${why}`.trim())).toEqual([
      'new',
      'same as line 2, and counted with it',
      'refused Serial A1 stands in the file before.',
      'same as tripod, on the list',
    ]);
    expect(fresh).toEqual([{ ...blankItem('Camera'), owned: 2, units: [blankUnit('A1'), blankUnit('A2')] }]);
  });
});

test('a unit of a file has its own place and service, and says itself what its line says otherwise than the first', () => {
  const rows = kitFromCsv(
    'Name,Serial,Place,Service from,Service to,Bought,Value\nCamera,A1,van,,,2024-05-01,4200\nCamera,A2,,2026-12-03,2026-12-08,2025-06-01,4200\nStand,,shelf,2026-12-01,2026-12-02,,\nLamp,L1,,2026-12-03,,,\n',
    'USD',
  );
  const { rows: fates, fresh } = foldedIn(rows, []);
  expect(fates.map(({ fate }) => fate)).toEqual(['new', 'same as', 'new', 'refused']);
  expect(fates[3]?.why).toBe('The service dates are not whole: "" is no date. Give both, as 2026-12-12.');
  expect(fresh[0]).toMatchObject({ owned: 2, bought: '2024-05-01', services: [] });
  expect(fresh[0]?.units).toEqual([
    { ...blankUnit('A1'), place: 'van' },
    { ...blankUnit('A2'), services: [{ from: '2026-12-03', to: '2026-12-08' }], bought: '2025-06-01' },
  ]);
  expect(fresh[1]).toMatchObject({ note: 'shelf', services: [{ from: '2026-12-01', to: '2026-12-02', count: 1 }] });
});

test('what cannot be of units is named by its field', () => {
  const backwards = { from: '2026-12-08', to: '2026-12-03' };
  const units = [blankUnit('A1'), { ...blankUnit('a1'), services: [backwards] }];
  expect(kitTroubles({ ...blankItem('Camera'), owned: 1, units, services: [{ ...backwards, count: 1 }] })).toEqual([
    { field: 'owned', sentence: '2 units with a serial for 1 owned: count them all.' },
    { field: 'units[1].serial', sentence: 'Serial a1 stands twice.' },
    { field: 'services[0].to', sentence: 'The service ends before it begins.' },
    { field: 'units[1].services[0].to', sentence: 'The service ends before it begins.' },
  ]);
});

test('weights with their units, in whole grams', () => {
  expect(gramsIn('3 lb', '')).toEqual({ ok: true, value: 1361 });
  expect(gramsIn('0.85', 'kg')).toEqual({ ok: true, value: 850 });
  expect([weightInWords(850), weightInWords(1250)]).toEqual(['850 g', '1.25 kg']);
});

test('sizes with their unit, in whole millimetres', () => {
  const size = { length: 400, width: 305, height: 200 };
  expect(sizeIn('40 × 30,5 x 20')).toEqual({ ok: true, value: size });
  expect(sizeIn('10 x 4 x 2 in')).toEqual({ ok: true, value: { length: 254, width: 102, height: 51 } });
  expect(sizeIn('40 x 30').ok).toBe(false);
  expect(sizeInWords(size)).toBe('40 × 30.5 × 20 cm');
});

// The limits: IATA, "Passengers travelling with lithium batteries", 2018; power banks: ICAO Doc 9284 (2025-2026), Addendum No. 1.
test.each([
  ['none', null, ''],
  ['spare', null, 'Wh not known: look on its label'],
  ['in device', '100', 'cabin or hold'],
  ['spare', '100', 'cabin only'],
  ['spare', '100.1', 'cabin only, two a person, if the operator approves'],
  ['in device', '160', 'cabin or hold, if the operator approves'],
  ['power bank', '74', 'cabin only, two a person'],
  ['spare', '160.1', 'not as baggage; as declared cargo only'],
] as const)('%s of %s Wh', (battery, wattHours, words) => {
  expect(airOf({ battery, wattHours }).words).toBe(words);
});
