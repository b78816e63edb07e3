import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { StoreError } from '../../db/trouble.ts';
import { checkPapers, keepPaper, readKept } from '../../electron/papers/keep.ts';
import { temporaryFolder } from '../store.ts';

const bytes = new TextEncoder().encode('%PDF-1.7 a paper');
const PDF = 'application/pdf';
// sha256sum of the same 16 bytes.
const HASH = 'be745a9e5b9d2be07ab3bf55149ef20694c2733d1a4eae8c8c4d2109d977f1ff';

test('kept under its hash, once, and read back', () => {
  const folder = temporaryFolder();
  expect(keepPaper(folder, bytes)).toEqual({ hash: HASH, bytes: 16 });
  expect(keepPaper(folder, bytes)).toEqual({ hash: HASH, bytes: 16 });
  expect(readdirSync(folder)).toEqual([`${HASH}.pdf`]);
  expect(readKept(folder, HASH, PDF)).toEqual(bytes);
});

test('a picture is kept under the ending of its type, beside a paper of the same bytes', () => {
  const folder = temporaryFolder();
  keepPaper(folder, bytes);
  expect(keepPaper(folder, bytes, 'image/jpeg')).toEqual({ hash: HASH, bytes: 16 });
  expect(readdirSync(folder).sort()).toEqual([`${HASH}.jpg`, `${HASH}.pdf`]);
  expect(readKept(folder, HASH, 'image/jpeg')).toEqual(bytes);
  expect(readKept(folder, HASH, 'image/png')).toBeNull();
  expect(checkPapers(folder, [{ hash: HASH, type: PDF }])).toMatchObject({ lost: [], orphans: [`${HASH}.jpg`] });
});

test('a changed file is not handed out, and is healed when its paper is kept again', () => {
  const folder = temporaryFolder();
  keepPaper(folder, bytes);
  writeFileSync(join(folder, `${HASH}.pdf`), '%PDF-1.7 a forgery');
  expect(readKept(folder, HASH, PDF)).toBeNull();
  keepPaper(folder, bytes);
  expect(readFileSync(join(folder, `${HASH}.pdf`), 'latin1')).toBe('%PDF-1.7 a paper');
});

test('a missing file is not handed out', () => expect(readKept(temporaryFolder(), HASH, PDF)).toBeNull());

test('whole, lost and orphaned', () => {
  const folder = temporaryFolder();
  keepPaper(folder, bytes);
  writeFileSync(join(folder, 'stray.pdf'), 'x');
  writeFileSync(join(folder, '.left.part'), 'x');
  const [there, gone] = [
    { hash: HASH, type: PDF },
    { hash: 'b'.repeat(64), type: PDF },
  ];
  expect(checkPapers(folder, [there, gone])).toEqual({ whole: [there], lost: [gone], orphans: ['.left.part', 'stray.pdf'] });
});

test("a folder that is not there is the store's trouble, and nothing is left behind", () => {
  const folder = join(temporaryFolder(), 'gone');
  expect(() => keepPaper(folder, bytes)).toThrow(StoreError);
});

test('a folder that cannot be written to keeps nothing', () => {
  // Root may write into a folder whatever its mode; nobody may write under a file.
  const folder = join(temporaryFolder(), 'closed');
  writeFileSync(folder, 'not a folder');
  expect(() => keepPaper(folder, bytes)).toThrow(StoreError);
  expect(readFileSync(folder, 'utf8')).toBe('not a folder');
});
