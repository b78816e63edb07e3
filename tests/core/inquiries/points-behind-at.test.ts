/** Two numbers with points: a day and a month, or behind "at", "high water" and the like an hour that closes its sentence. */
import { expect, test } from 'vitest';
import { daysOf, facts, readAt } from './reading.ts';

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

test.each(['high water 13.10. Please', 'curtain 12.10. Please'])('"%s" is an hour that closes its sentence, and no day', (words) => {
  const { fields, questions } = readAt(
    `Hi Kit, could you do this for us? The restored boat goes back in the water at Whitby on Saturday 25 March, ${words} find somebody to film it. We have £390 for it.\n\nRhona Vane`,
    '2027-10-05T09:00:00+01:00[Europe/London]',
    'leeds',
  );
  const days = questions.find(({ field }) => field === 'start')?.choices.map(({ label }) => label);
  expect([fields.start ?? days]).toEqual([['Sat 25 March 2028']]);
});

test('a dinner on 12.11. is on that day', () =>
  expect(
    facts('Kit, we need a cameraman in Berlin: client dinner 12.11. Call 17:00, wrap 23:00, 600 EUR. Mia', AT, 'berlin'),
  ).toMatchObject({ start: '2026-11-12', firstCall: '2026-11-12T17:00' }));
