/**
 * The window of duty and the hours of a week at which we begin to caution are no looser than what commercial drivers are held to.
 * A car is usually outside that rule: it is a yardstick, never permission.
 * @source United States Code of Federal Regulations, title 49, section 395.3, property-carrying drivers: 14 h window, 60 h in 7 days
 */
import { expect, test } from 'vitest';
import { checkFit } from '../../../core/fit/check.ts';
import { duluth } from '../../core/trips/places.ts';
import { inputOf, type Situation } from '../../situations/shape.ts';

const kinds = (booked: string[], candidate: string) => {
  const situation: Situation = {
    name: '',
    home: duluth,
    booked: booked.length === 0 ? [] : [{ title: 'Series', place: duluth, days: booked }],
    candidate: { place: duluth, days: [candidate] },
    answer: 'free',
    findings: [],
  };
  return checkFit(inputOf(situation)).findings.map(({ kind }) => kind);
};

test('a minute past the fourteenth hour is cautioned, the fourteenth is not', () => {
  expect(kinds([], '2026-06-06 08:00-22:00')).not.toContain('duty');
  expect(kinds([], '2026-06-06 08:00-22:01')).toContain('duty');
});

test('a minute past the sixtieth hour in seven days is cautioned, the sixtieth is not', () => {
  const fifty = [1, 2, 3, 4, 5].map((day) => `2026-06-0${day} 08:00-18:00`);
  expect(kinds(fifty, '2026-06-06 08:00-18:00')).not.toContain('sixty hours');
  expect(kinds(fifty, '2026-06-06 08:00-18:01')).toContain('sixty hours');
});
