/**
 * Questions are put so that their choices answer them.
 */
import { expect, test } from 'vitest';
import { daysAsked } from '../../../core/inquiries/questions.ts';

const SATURDAY = ['2027-06-12'];
const WEEKEND = ['2027-06-12', '2027-06-13'];

test.each([
  ['Is it this day, and no other?', [SATURDAY], 'several'],
  ['Is it these days, and no others?', [WEEKEND], 'several'],
  ['Which dates are meant?', [SATURDAY, WEEKEND], 'several'],
  ['The weekday and the date do not agree. Which day is meant?', [SATURDAY], 'weekday'],
] as const)('%s', (ask, choices, doubt) => expect(daysAsked({ choices: choices.map((days) => [...days]), doubt })).toBe(ask));
