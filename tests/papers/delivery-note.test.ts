/**
 * Delivery notes: how they look, and what is read back from them.
 */
import { describe, expect, test } from 'vitest';
import type { DeliveryNoteInput } from '../../core/handovers/note.ts';
import { byteFigures } from '../../core/words/bytes.ts';
import { deliveryNote } from '../../electron/papers/delivery-note.ts';
import { delivery, handedFiles } from './delivery-sample.ts';
import { expectSamePixels, expectWellSet } from './looks.ts';
import { pagesOfText } from './read-text.ts';

describe.each([
  ['one file', delivery({}, handedFiles(1))],
  ['40 files', delivery({}, handedFiles(40))],
])('%s', (_, input) => {
  test.each(['A4', 'Letter'] as const)('is well set on %s', async (paper) =>
    expectWellSet(await deliveryNote({ ...input, sender: { ...input.sender, paper } }), paper),
  );
  test('the subset draws what the whole typeface draws, to the pixel', async () =>
    expectSamePixels(await deliveryNote(input), await deliveryNote(input, { subset: false })));
  test('the same bytes for the same content', async () =>
    expect(Buffer.compare(await deliveryNote(input), await deliveryNote(structuredClone(input)))).toBe(0));
});

const pagesOf = async (input: DeliveryNoteInput) => pagesOfText(await deliveryNote(input));
const textOf = async (input: DeliveryNoteInput) => (await pagesOf(input)).join(' ');

test('what, for whom, how, each file with bytes and checksum, and the sum', async () => {
  const files = handedFiles(3);
  const text = await textOf(delivery());
  expect(text).toContain('For Lakehead Curling Association Ilse Marrow What Highlight film');
  expect(text.replaceAll(' ', '')).toContain('https://files.lakeline.example/curling-2026/highlight?key=5d1c-88ab-90ef-17aa-c3d2-4b6f');
  expect(text).toContain('File Checksum, XXH128 Bytes');
  for (const { name, hash, bytes } of files) expect(text).toContain(`${name} ${hash} ${byteFigures(bytes)}`);
  expect(text).toContain('3 files, 41.2 GB 41,208,441,127');
});

test('format, the date that late notes moved, originals, and what a checksum shows', async () => {
  const text = await textOf(delivery());
  expect(text).toContain('1920 x 1080, frame rate 29.97 drop, H.264, 20 Mb/s, −16 LUFS, true peak −1 dBTP, captions: English');
  expect(text).toContain(
    'Promised for 18 December 2026, delivered on 22 December 2026. Notes on the rough cut were due on Fri 11 December 2026',
  );
  expect(text).toContain('Delivery moves by as many, from Fri 18 December 2026 to Wed 23 December 2026.');
  expect(text).toContain('kept until 22 March 2027. After that date they may be deleted');
  expect(text).toContain('it is no proof against files altered on purpose');
  expect(text).toContain('Whoever has the link can have the files');
});

test('a disk is named by its label, and originals that are not kept are said', async () => {
  const { handOver } = delivery();
  const text = await textOf(
    delivery({
      handOver: {
        ...handOver,
        how: 'disk',
        where: 'Curling, disk 2 of 2',
        originals: { kind: 'handed over', until: null },
        note: 'By courier.',
      },
      moves: [],
    }),
  );
  expect(text).toContain('On the disk labelled Curling, disk 2 of 2');
  expect(text).toContain('are handed over with this delivery; I keep none');
  expect(text).toContain('Remark By courier.');
  expect(text).toContain('The date that holds is 23 December 2026');
  expect(text).toContain('A disk can fail or be lost');
});

test('400 files are all there in their order, over pages with heads', async () => {
  const files = handedFiles(400);
  const pages = await pagesOf(delivery({}, files));
  expect(pages.length).toBeGreaterThan(5);
  for (const page of pages.filter((text) => /[0-9a-f]{32}/.test(text))) expect(page).toContain('File Checksum, XXH128 Bytes');
  expect(pages.join(' ').match(/\b[0-9a-f]{32}\b/g)).toEqual(files.map(({ hash }) => hash));
  expect(pages.at(-1)).toContain('400 files');
});

test('a name in letters without a shape is drawn with their numbers, and the paper says so', async () => {
  const text = await textOf(delivery({}, [{ name: '映画 1.mov', bytes: 5, hash: 'a'.repeat(32) }]));
  expect(text).toContain('[U+6620][U+753B] 1.mov');
  expect(text).toContain('A letter that this typeface does not have stands as its number');
  expect(await textOf(delivery())).not.toContain('stands as its number');
});

test('a very long name is broken, with its checksum beside the first line', async () => {
  const name = `${'Interviews with everybody who was there/'.repeat(4)}${'x'.repeat(120)}.mov`;
  const bytes = await deliveryNote(delivery({}, [{ name, bytes: 5, hash: 'b'.repeat(32) }]));
  expectWellSet(bytes, 'A4');
});

test('a letter that cannot be drawn elsewhere is refused with its field', async () =>
  expect(deliveryNote(delivery({ client: { name: 'ليلى', contact: '' } }))).rejects.toMatchObject({ field: "the client's name" }));
