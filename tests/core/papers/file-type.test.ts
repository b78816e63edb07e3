import { describe, expect, test } from 'vitest';
import { endingOf, fileType, namedBy } from '../../../core/papers/file-type.ts';

const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

describe('what a file is, by its first bytes', () => {
  test.each([
    ['%PDF-1.7\n', 'application/pdf', 'pdf'],
    ['\u00ff\u00d8\u00ff\u00e0\u0000\u0010JFIF', 'image/jpeg', 'jpg'],
    ['\u0089PNG\r\n\u001a\n\u0000', 'image/png', 'png'],
    ['RIFF\u0024\u0000\u0000\u0000WEBPVP8 ', 'image/webp', 'webp'],
    ['\u0000\u0000\u0000\u0018ftypheic', 'image/heic', 'heic'],
    ['\u0000\u0000\u0000\u0018ftypmif1', 'image/heic', 'heic'],
  ])('%j is %s', (text, type, ending) => {
    expect(fileType(bytes(text))).toEqual({ type, ending });
    expect(endingOf(type)).toBe(ending);
  });

  test.each([
    ['nothing', ''],
    ['text', 'Receipt 12.00'],
    ['a page', '<!doctype html>'],
    ['a program', 'MZ\u0090\u0000'],
    ['an archive', 'PK\u0003\u0004'],
    ['a drawing', '<svg xmlns='],
    ['a film', '\u0000\u0000\u0000\u0018ftypmp42'],
    ['sound', 'RIFF\u0024\u0000\u0000\u0000WAVEfmt '],
    ['half a mark', '\u0089PNG'],
    ['a PDF that begins late', ' %PDF-1.7'],
  ])('%s is none of them', (_, text) => expect(fileType(bytes(text))).toBeNull());
});

test.each([
  ['dock.pdf', 'dock.pdf'],
  ['DOCK.PDF', 'DOCK.PDF'],
  ['dock.exe', 'dock.pdf'],
  ['dock', 'dock.pdf'],
  ['../../etc/dock.pdf', 'dock.pdf'],
  ['C:\\papers\\dock.jpg', 'dock.pdf'],
  ['.pdf', '.pdf.pdf'],
])('a PDF called %s is kept as %s', (given, kept) => expect(namedBy({ type: 'application/pdf', ending: 'pdf' }, given)).toBe(kept));
test('a picture may end in jpeg', () => expect(namedBy({ type: 'image/jpeg', ending: 'jpg' }, 'dock.JPEG')).toBe('dock.JPEG'));
