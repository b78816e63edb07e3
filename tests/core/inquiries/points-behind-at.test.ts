/** Two numbers with points behind "at": a day and a month, or an hour that closes its sentence. */
import { expect, test } from 'vitest';
import { daysOf, facts } from './reading.ts';

const AT = '2026-10-25T09:12:00+01:00[Europe/Berlin]';

test.each([
  ['12-10..12-11', 'we need you at 10.12. and 11.12. in Köln, call 9:00, 500 € per day. Can you do it?'],
  ['12-05..12-06', 'are you available at 5.12. and 6.12. for a fair in Köln, 500 € per day?'],
  ['12-05..12-07', 'shooting at 5.12., 6.12. and 7.12. in Köln, call 9:00, 500 € per day. Can you do it?'],
  ['12-12', 'could you film our gala in Köln on 12.12.? The guests have to be seated at 6.10. We can pay 500 €.'],
])('%s: %s', (days, text) => expect(daysOf(`Hello Kit, ${text}\n\nJonas`, 'berlin', AT)).toBe(days));

test('a rehearsal on the day before is not an hour', () =>
  expect(
    facts('Hello Kit, could you film our gala in Köln on Tuesday, 10.11.? Rehearsal at 9.11. at 18:00. 500 €.\n\nJonas', AT, 'berlin')
      .firstCall,
  ).not.toBe('2026-11-10T09:11'));
