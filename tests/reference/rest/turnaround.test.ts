/**
 * Rest between two jobs is a setting, and as many hours as an agreement asks for can be asked for.
 * @source Common practice: crew terms seen 2026 ask for 8 to 12 h between wrap and call
 */
import { expect, test } from 'vitest';
import { checkFit } from '../../../core/fit/check.ts';
import { duluth } from '../../core/trips/places.ts';
import { inputOf } from '../../situations/shape.ts';

test.each([8, 10, 11, 12])('%i h to the minute are enough, a minute less is not', (restHours) => {
  const answer = (wrap: string) =>
    checkFit(
      inputOf({
        name: '',
        home: duluth,
        restHours,
        booked: [{ title: 'Gala', place: duluth, days: [`2026-06-05 12:00-${wrap}`] }],
        candidate: { place: duluth, days: [`2026-06-06 ${String(restHours - 2).padStart(2, '0')}:00-14:00`] },
        answer: 'free',
        findings: [],
      }),
    ).answer;
  expect(answer('22:00')).toBe('free');
  expect(answer('22:01')).toBe('free if');
});
