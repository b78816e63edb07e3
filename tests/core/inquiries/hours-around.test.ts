/** Hours of what goes on around the work: they are no call and no end of mine, and take nothing from those that are told. */
import { expect, it } from 'vitest';
import { facts, lines } from './reading.ts';

const hours = (words: string): string => {
  const { firstCall = 'none', lastWrap = 'none' } = facts(
    `Hi Kit,\n\nCould you film our gala in Fargo on 12 December? ${words}\n\nThanks,\nRobin Farley`,
  );
  return [firstCall, lastWrap].map((wall) => (wall === 'none' ? '-' : wall.slice(5))).join(' ');
};

it.each(
  lines(`
    Road closures are from 6am to 4pm.
    The drone pilot has a slot from 12 to 1.
    Afternoon tea is 3 till 4.30.
    The face painter is with us from 1pm to 3pm.
    The balloon artist has from 1pm to 3pm.
    The priest only has an hour, from 2pm to 3pm.
    The kids have to be in bed by 8.
    All the teachers have to be in by 8.15.
    The hall is booked from 9am.
    The venue is ours until 1 in the morning.
    Our receptionist is in until 4.30.
    The disco goes on until midnight.
  `),
)('states no hour of the work: %s', (words) => {
  expect(hours(words)).toBe('- -');
});

it.each(
  lines(`
    Carriages are at half past twelve.
    The disco goes on until midnight.
    Last orders are at 11.20pm.
    The venue is ours until 1 in the morning.
    The caretaker opens up at 8am.
    We get the keys at 9am.
  `),
)('states no other hour than the one that is told: %s', (words) => {
  // An end that is told may still be asked about beside another.
  expect(hours(`You would be there at 4pm and wrap at 11pm. ${words}`)).toMatch(/^12-12T16:00 (?:12-12T23:00|-)$/);
});

it.each([
  ['12-12T10:00 12-12T16:00', 'The work is 10am to 4pm.'],
  ['12-12T10:00 12-12T16:00', 'The shoot is from 10am to 4pm.'],
  ['12-12T07:00 -', 'Vehicles may come onto the field from 7am.'],
  ['12-12T09:00 -', 'You have to be in the chapel by 9am.'],
  ['12-12T16:00 -', 'You would be with us from 4pm.'],
  ['- 12-12T22:00', 'The gala is on until 10pm and then you can go.'],
])('states the hours of the work: %s, %s', (told, words) => {
  expect(hours(words)).toBe(told);
});
