/** A film that is wished now asks for work, whatever is told beside it of what was good before; minutes, votes and films by others do not. */
import { expect, test } from 'vitest';
import { readAt } from './reading.ts';

test.each([
  'We would like our gala filmed on Saturday 12 December in Fargo. Your vision mixing at the derby was superb.',
  'You were superb last year. We would like to have our concert filmed on Saturday 12 December in Fargo.',
])('asks: %s', (text) =>
  expect(readAt(`Hi Kit,\n\n${text}\n\nRobin Farley`)).toMatchObject({ isInquiry: true, fields: { start: '2026-12-12' } }),
);

test.each([
  'The board meeting was adjourned to Saturday 12 December. I would like my apologies recorded as I cannot come.',
  "The hall is booked. They'd like it recorded that the hall is shut on Saturday 12 December.",
  "We're all set. We would love the concert on Saturday 12 December to be filmed by the students, so they bring a phone.",
  'You were great. We would like the children whose parents said no not to be filmed on Saturday 12 December.',
])('asks for nothing: %s', (text) => expect(readAt(`Hi Kit,\n\n${text}\n\nRegards, Ann`).isInquiry).toBe(false));
