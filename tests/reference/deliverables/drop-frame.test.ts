/**
 * Labels of frames at 29.97 and 59.94 with dropped labels.
 * @source SMPTE ST 12-1:2014, Time and Control Code, drop-frame compensation: two labels (four at 59.94) left out each minute except every tenth
 */
import { describe, expect, test } from 'vitest';
import { frameOf, frameRates, labelOf, type FrameRate } from '../../../core/deliverables/timecode.ts';

const rate = (name: string): FrameRate => frameRates.find((one) => one.name === name) as FrameRate;
const table = [
  ['29.97 drop', 0, '00:00:00;00'],
  ['29.97 drop', 1799, '00:00:59;29'],
  ['29.97 drop', 1800, '00:01:00;02'],
  ['29.97 drop', 3597, '00:01:59;29'],
  ['29.97 drop', 3598, '00:02:00;02'],
  ['29.97 drop', 17_981, '00:09:59;29'],
  ['29.97 drop', 17_982, '00:10:00;00'],
  ['29.97 drop', 107_891, '00:59:59;29'],
  ['29.97 drop', 107_892, '01:00:00;00'],
  ['29.97 drop', 2_589_407, '23:59:59;29'],
  ['59.94 drop', 3599, '00:00:59;59'],
  ['59.94 drop', 3600, '00:01:00;04'],
  ['59.94 drop', 35_964, '00:10:00;00'],
  ['59.94 drop', 215_784, '01:00:00;00'],
] as const;

test.each(table)('%s, frame %i is %s', (name, frame, label) => {
  expect(labelOf(frame, rate(name))).toBe(label);
  expect(frameOf(label, rate(name))).toEqual({ frame });
});
describe('labels that are left out', () => {
  test.each(['00:01:00;00', '00:01:00;01', '00:59:00;01'])('%s does not exist at 29.97 with dropped labels', (label) => {
    expect(frameOf(label, rate('29.97 drop'))).toEqual({ trouble: `${label} does not exist: 29.97 drop leaves that label out.` });
  });
  test('a tenth minute keeps its labels', () => {
    expect(frameOf('00:10:00;00', rate('29.97 drop'))).toEqual({ frame: 17_982 });
  });
  test('an hour has 108 labels less than frames of 30 a second', () => {
    expect(30 * 3600 - 107_892).toBe(108);
    expect(labelOf(108_000, rate('29.97'))).toBe('01:00:00:00');
  });
});
