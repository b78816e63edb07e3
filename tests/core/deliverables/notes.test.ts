import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { noteTime, readNotes } from '../../../core/deliverables/notes.ts';
import { frameRates, labelOf, type FrameRate } from '../../../core/deliverables/timecode.ts';
import { tried } from '../laws.ts';

const rate = (name: string): FrameRate => frameRates.find((one) => one.name === name) as FrameRate;
const drop = rate('29.97 drop');
const shown = (text: string, at = rate('25')) => readNotes(text, at).notes.map((note) => [noteTime(note, at), note.text]);

test('each line is a note; bullets and numbers before it are none of it', () => {
  const text = [
    '1. 00:00:10:05 - The logo comes too late',
    '',
    '* 01:02 cut earlier',
    '2) Music is too loud',
    '[00:03:00:00 – 00:03:04:12] blur the badge',
  ];
  expect(shown(text.join('\n'))).toEqual([
    ['00:00:10:05', 'The logo comes too late'],
    ['00:01:02:00', 'cut earlier'],
    ['', 'Music is too loud'],
    ['00:03:00:00 to 00:03:04:12', 'blur the badge'],
  ]);
});
test.each([
  ['at 1:02 the logo comes too late', '00:01:02:00', 'the logo comes too late'],
  ['TC: 00:01:02:10 – blur the badge', '00:01:02:10', 'blur the badge'],
  ['@0:45 cut', '00:00:45:00', 'cut'],
  ['From 01:10 to 01:20: music softer', '00:01:10:00 to 00:01:20:00', 'music softer'],
  ['75:10 applause is cut off', '01:15:10:00', 'applause is cut off'],
  ['1:02:03 title misspelt', '01:02:03:00', 'title misspelt'],
  ['00:01:02.500 flash frame', '00:01:02:12', 'flash frame'],
  ['00:01:02,980\tflash frame', '00:01:02:24', 'flash frame'],
  ['Attendance at the door is fine', '', 'Attendance at the door is fine'],
  ['At the end 16:9 please', '', 'At the end 16:9 please'],
])('%s', (line, time, text) => expect(shown(line)).toEqual([[time, text]]));
test('drop-frame labels are read by their rate', () => {
  expect(readNotes('00:01:00;02 fade', drop).notes[0]).toMatchObject({ from: 1800, to: 1800, text: 'fade' });
});
test('a time code that cannot be is said, and the note is kept', () => {
  const { notes, troubles } = readNotes('00:01:00;00 fade\n00:00:02:00 - 00:00:01:00 swap', drop);
  expect(troubles.map(({ sentence }) => sentence)).toEqual([
    'Line 1: 00:01:00;00 does not exist: 29.97 drop leaves that label out. The note is kept without a time.',
    'Line 2: 00:00:01:00 comes before 00:00:02:00. The note is kept without a time.',
  ]);
  expect(notes.map(({ from, text }) => [from, text])).toEqual([
    [null, '00:01:00;00 fade'],
    [null, '00:00:02:00 - 00:00:01:00 swap'],
  ]);
});
test('a time alone, or a word with a colon, is a note as it stands', () => {
  expect(shown('00:10\nNote: louder\nat 2:1 please')).toEqual([
    ['', '00:10'],
    ['', 'Note: louder'],
    ['', 'at 2:1 please'],
  ]);
});
test('law: no line that holds something is lost, and a label leads back to its frame', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(1_000_000), fc.stringMatching(/^[a-z]{1,12}( [a-z]{1,9}){0,3}$/)), { maxLength: 8 }), (given) => {
      const text = given.map(([frame, words]) => `${labelOf(frame, drop)} ${words}`).join('\n');
      expect(readNotes(text, drop).notes.map(({ from, text: words }) => [from, words])).toEqual(
        given.map(([frame, words]) => [frame, words]),
      );
    }),
    tried,
  );
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
      const lines = text.split(/\r\n?|\n/).filter((line) => line.replace(/^\s*(?:[-*•–]\s+|\d{1,3}[.)]\s+)?/, '').trim() !== '');
      expect(readNotes(text, drop).notes).toHaveLength(lines.length);
    }),
    tried,
  );
});
