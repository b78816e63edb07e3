/**
 * The public holidays that the program proposes against a list made by others. Where the two differ, the reason stands here; a difference
 * without one fails.
 * @source dr-prodigy and others, python-holidays 0.10.1 (package python3-holidays of Debian 12), 2020: two years of six countries
 */
import { expect, test } from 'vitest';
import { holidaysOf } from '../../../electron/api/holidays.ts';
import { holidayLists } from './holiday-lists.ts';

type Differences = Readonly<Record<string, { ours: readonly string[]; theirs: readonly string[] }>>;

const reasons: Differences = {
  // Juneteenth became law on 17 June 2021, after that list.
  'the United States': { ours: ['2026-06-19', '2027-06-18', '2027-06-19'], theirs: [] },
  // Ours: Easter Monday, kept by the federal public service; Boxing Day on its own date. Theirs: the Civic Holiday in August, which the
  // province's law does not name, and for a holiday on a weekend a weekday of its choice, where the law leaves the day to the employer.
  Ontario: {
    ours: ['2026-04-06', '2026-12-26', '2027-03-29', '2027-12-26'],
    theirs: ['2026-08-03', '2026-12-28', '2027-08-02', '2027-12-24', '2027-12-27', '2027-12-31'],
  },
  // Assumption Day is a holiday only in those municipalities of Bavaria that are mostly Catholic.
  Bavaria: { ours: [], theirs: ['2026-08-15', '2027-08-15'] },
  // Ours: the Monday after an Anzac Day on a weekend, declared for these two years after that list. Theirs: the Bank Holiday in August,
  // which is kept by banks alone.
  'New South Wales': { ours: ['2026-04-27', '2027-04-26'], theirs: ['2026-08-03', '2027-08-02'] },
};

test.each(holidayLists)('$name', ({ name, where, dates }) => {
  const ours = holidaysOf({ ...where, years: [2026, 2027] }).map(({ date }) => date);
  const theirs: readonly string[] = dates;
  expect({
    ours: ours.filter((date) => !theirs.includes(date)),
    theirs: theirs.filter((date) => !ours.includes(date)),
  }).toEqual(reasons[name] ?? { ours: [], theirs: [] });
});
