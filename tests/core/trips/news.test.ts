import { expect, test } from 'vitest';
import { asTicketed, newsInWords } from '../../../core/trips/news.ts';
import { legClock } from '../../../core/desk/leg-clock.ts';
import type { Leg } from '../../../core/contract/trips.ts';
import { duluth, milwaukee } from './places.ts';

const leg: Leg = {
  id: '0196f000-0000-7000-8000-000000000001',
  jobId: '0196f000-0000-7000-8000-000000000002',
  version: 2,
  mode: 'flight',
  from: duluth,
  to: milwaukee,
  depart: '2026-12-14T09:05',
  arrive: '2026-12-14T10:20',
  source: 'ticketed',
  before: null,
  after: null,
  berth: false,
  cost: '',
  note: 'ZQ 412',
  news: { kind: 'moved', at: '2026-12-13T20:00:00Z', was: { depart: '2026-12-14T06:15', arrive: '2026-12-14T07:40' } },
};
const news = (part: Partial<Leg>) => {
  const told = { ...leg, ...part };
  return newsInWords(told, told.news ?? { kind: 'cancelled', was: { depart: '', arrive: '' } });
};

test('a leg as it was ticketed has the times of its ticket and no news', () => {
  expect(asTicketed(leg)).toMatchObject({ depart: '2026-12-14T06:15', arrive: '2026-12-14T07:40', note: 'ZQ 412' });
  expect(Object.keys(asTicketed(leg))).not.toContain('news');
});
test.each([
  [{}, 'The flight ZQ 412 Duluth to Milwaukee now leaves on Mon 14 December 2026, 09:05 instead of 06:15'],
  [
    { depart: '2026-12-15T06:15', note: '' },
    'The flight Duluth to Milwaukee now leaves on Tue 15 December 2026, 06:15 instead of Mon 14 December 2026, 06:15',
  ],
  [{ depart: '2026-12-14T06:15' }, 'The flight ZQ 412 Duluth to Milwaukee now arrives on Mon 14 December 2026, 10:20 instead of 07:40'],
  [
    { news: { kind: 'cancelled', at: '2026-12-13T20:00:00Z', was: { depart: leg.depart, arrive: leg.arrive } } },
    'The flight ZQ 412 Duluth to Milwaukee is cancelled',
  ],
] as [Partial<Leg>, string][])('news in words %#', (part, words) => expect(news(part)).toBe(words));
test('the clock tells the first that is broken and how many more; without any there is none', () => {
  const job = { id: leg.jobId, version: 1, title: 'Congress' };
  const at = Date.parse('2026-12-14T15:05:00Z');
  expect(legClock({ leg, job, broken: [], leavesAt: at, now: at - 1 })).toBeNull();
  expect(legClock({ leg, job, broken: ['One.', 'Two.', 'Three.'], leavesAt: at, now: at - 1 })).toMatchObject({
    id: `leg:${leg.id}`,
    at: '2026-12-14T15:05:00Z',
    late: false,
    second: 'One. And 2 more. Congress',
  });
});
