import { expect, test } from 'vitest';
import { OCTOBER, readAt } from './reading.ts';

const daysOf = (text: string): (string | undefined)[] => {
  const { start, end } = readAt(text, OCTOBER).fields;
  return [start, end];
};

test.each([
  "hey! getting married!!! (yes on valentines we got engaged haha). it's gonna be fall 2028, fargo. whats your price? we want a short film",
  'He proposed on 14 February and we are getting married in Fargo, in summer 2028. Would you film it?',
  "We got engaged on New Year's Eve! The wedding is in Fargo in autumn 2027. Could you film it?",
  "On Valentine's day we said yes. The wedding will be next summer in Fargo. Could you film it?",
  'On 14 February she popped the question. We marry in Fargo some time in 2028; could you film that?',
])('the day of an engagement is no wedding day: %s', (text) => expect(daysOf(text)).toEqual([undefined, undefined]));

test.each([
  ['We got engaged in May and the wedding is on 12 June 2027 in Fargo. Could you film it?', '2027-06-12'],
  ["We're engaged! The wedding is on 12 June 2027 in Fargo. Could you film it?", '2027-06-12'],
  ['He proposed on 14 February, we marry on 12 June 2027 in Fargo. Could you film it?', '2027-06-12'],
  ['Our engagement party is on 12 June 2027 in Fargo. Could you film it?', '2027-06-12'],
])('the wedding beside it is: %s', (text, day) => expect(daysOf(text)).toEqual([day, day]));
