import { expect, test } from 'vitest';
import { kitClock } from '../../../core/desk/kit-clock.ts';
import { blankItem, blankUnit } from '../../../core/kit/blank.ts';
import { packInWords, packRows, packTrouble, stillOut } from '../../../core/kit/pack.ts';

const camera = { ...blankItem('Camera'), id: 'c', version: 1, owned: 3, units: [{ ...blankUnit('A1'), place: 'van' }, blankUnit('A2')] };
const battery = { ...blankItem('Battery'), id: 'b', version: 1, owned: 8 };
const packed = (item: string, serial: string, out: number, back = 0, missing = 0) => ({ item, serial, out, back, missing });
const short = (rows: ReturnType<typeof packRows>) => rows.map(({ item, serial, toPack, out }) => [item, serial, toPack, out]);

test('units are packed one by one, the counted rest in one row', () => {
  const rows = packRows(
    [
      { item: 'c', count: 3 },
      { item: 'b', count: 6 },
    ],
    [camera, battery],
    [packed('b', '', 6)],
  );
  expect(short(rows)).toEqual([
    ['c', 'A1', 1, 0],
    ['c', 'A2', 1, 0],
    ['c', '', 1, 0],
    ['b', '', 6, 6],
  ]);
  expect(rows[0]).toMatchObject({ name: 'Camera', place: 'van', needed: 3 });
});

test('of more units than are needed each can be chosen; what is out stays on the list when it is needed no more', () => {
  expect(short(packRows([{ item: 'c', count: 1 }], [camera], []))).toEqual([
    ['c', 'A1', 1, 0],
    ['c', 'A2', 1, 0],
  ]);
  expect(short(packRows([], [camera, battery], [packed('b', '', 2), packed('c', 'old', 1)]))).toEqual([
    ['b', '', 0, 2],
    ['c', 'old', 1, 1],
  ]);
});

test('what cannot be ticked is said', () => {
  expect(packTrouble(packed('c', 'A1', 2), 'Camera')).toBe('Camera A1 is one unit; 2 of it cannot be out.');
  expect(packTrouble(packed('b', '', 6, 5, 2), 'Battery')).toBe('Battery: 7 pieces back or missing, but 6 went out.');
  expect(packTrouble(packed('b', '', 6, 4, 2), 'Battery')).toBeNull();
});

test('the clock runs from the return until all is back or known to be missing', () => {
  const homeAt = Temporal.Instant.from('2026-12-13T00:00:00Z').epochMilliseconds;
  const job = { id: 'j', version: 2, title: 'Fair' };
  const rows = [
    { ...packed('c', 'A1', 1), name: 'Camera' },
    { ...packed('b', '', 6, 3, 1), name: 'Battery' },
  ];
  expect(packInWords(rows, stillOut)).toBe('1 × Camera and 2 × Battery');
  expect(kitClock({ job, homeAt, rows }, homeAt - 1, 'America/Chicago')).toBeNull();
  expect(kitClock({ job, homeAt, rows }, homeAt, 'America/Chicago')).toMatchObject({
    at: '2026-12-13T00:00:00Z',
    late: true,
    sentence: 'Fair: 1 × Camera and 2 × Battery not ticked back',
    second: 'home again 18:00; tick them back, or say what did not come back',
  });
  const back = rows.map((row) => ({ ...row, back: row.out - row.missing }));
  expect(kitClock({ job, homeAt, rows: back }, homeAt, 'America/Chicago')).toBeNull();
});
