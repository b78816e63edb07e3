import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { frameOf, frameRates, labelOf, type FrameRate } from '../../../core/deliverables/timecode.ts';
import { tried } from '../laws.ts';

const rate = (name: string): FrameRate => frameRates.find((one) => one.name === name) as FrameRate;

test.each([
  ['25:00:00:00', '25', '25:00:00:00 is past the 24 hours that a time code can count.'],
  ['00:00:60:00', '25', '"00:00:60:00" is not a time code; write it as 00:01:02:03.'],
  ['00:00:00:25', '25', '00:00:00:25 has no frame 25: at 25 a second has 25.'],
  ['noon', '25', '"noon" is not a time code; write it as 00:01:02:03.'],
])('%s at %s is refused', (label, name, trouble) => {
  expect(frameOf(label, rate(name))).toEqual({ trouble });
});
test('without frames the first that there is in the second', () => {
  expect(frameOf('0:01:00', rate('29.97 drop'))).toEqual({ frame: 1800 });
  expect(frameOf('00:00:10', rate('25'))).toEqual({ frame: 250 });
});
test('law: every frame of a day has a label of its own, and the label leads back', () => {
  fc.assert(
    fc.property(fc.constantFrom(...frameRates), fc.nat(2_000_000), (one, frame) => {
      expect(frameOf(labelOf(frame, one), one)).toEqual({ frame });
    }),
    tried,
  );
});
