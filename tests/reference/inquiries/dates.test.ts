/**
 * Dates in plain writing, read by us and by an independent reader. Where that one is known to guess (years, weekday beside a date,
 * days that do not exist) it is no witness and is not asked.
 * @source chrono-node, version 2.10.3, parsers en and en.GB, 2026
 */
import * as chrono from 'chrono-node';
import { describe, expect, test } from 'vitest';
import { facts } from '../../core/inquiries/reading.ts';

const noon = { instant: new Date('2026-11-25T12:00:00Z'), timezone: 0 };
const date = (parts: chrono.ParsedComponents): string =>
  `${parts.get('year')}-${String(parts.get('month')).padStart(2, '0')}-${String(parts.get('day')).padStart(2, '0')}`;

/** First and last day as the other reader has them. */
function witness(written: string, british: boolean): string[] {
  const [found] = (british ? chrono.en.GB : chrono.en.casual).parse(written, noon, { forwardDate: true });
  if (!found) return [];
  return [date(found.start), date(found.end ?? found.start)];
}

const plain = [
  '12 December 2026',
  'December 12, 2026',
  'Dec 12th, 2026',
  '2026-12-12',
  '12-14 December 2026',
  'December 12 - 14, 2026',
  '30 November 2026 to 2 December 2026',
  '5 January 2027',
  'January 5',
  '29 February 2028',
  'tomorrow',
  'in 3 days',
  'in 2 weeks',
  'this Saturday',
];

describe('month names, ISO dates, ranges and plain relative dates', () => {
  test.each(plain)('%s', (written) => {
    const { start, end } = facts(`Can you film our congress in Fargo ${/^\d|^[A-Z]/.test(written) ? 'on ' : ''}${written}?`);
    expect([start, end]).toEqual(witness(written, false));
  });
});

describe('numbers with slashes, by the order of the country', () => {
  test.each(['3/4/2027', '12/11/2027', '29/11/2027', '1/2/2028'])('%s in Leeds', (written) => {
    const { start, end } = facts(`Can you film our congress in Leeds on ${written}?`, '2026-11-25T12:00:00+00:00[Europe/London]', 'leeds');
    expect([start, end]).toEqual(witness(written, true));
  });
  test.each(['3/4/2027', '12/11/2027', '11/29/2027', '1/2/2028'])('%s in Duluth', (written) => {
    const { start, end } = facts(`Can you film our congress in Fargo on ${written}?`);
    expect([start, end]).toEqual(witness(written, false));
  });
});
