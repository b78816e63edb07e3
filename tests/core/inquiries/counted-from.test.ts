/**
 * An occasion that is told by how far it is from another one whose date is named: both days are asked about. What only prepares the day that is named, or follows
 * it without a camera, changes nothing.
 */
import { expect, test } from 'vitest';
import { aFair, daysOf, lines } from './reading.ts';

test.each(
  lines(`
  The gala is on 13 November; the workshop you would film is a week later.
  The gala is on 13 November, and the workshop you would film a week later.
  The gala is on 13 November; what we want filmed is the workshop the previous Thursday.
  The conference is on 13 November. You would be filming the day after it, at the tour.
  The conference is on 13 November. Not that day but the next one is when we need you.
  It is exactly a week after our open day on 6 November.
  It takes place the day after the AGM on 12 November.
  The fair is the day before the parade of 14 November.
  The fair is always the weekend before Thanksgiving, which is on 25 November.
  Two weeks after the open day on 30 October we hold our fair.
  One week after the open day on 6 November comes the fair.
  The AGM is on 6 November, the fair one week later.
  The AGM is on 6 November, with the fair a week later.
  The fair follows the AGM of 6 November by a week.
  The exhibition runs from 5 to 30 November, and the opening, for which we need you, is the evening before.
`),
)('asked: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('ask'));

test.each(
  lines(`
  The fair is on 13 November. We need the film two weeks later.
  The fair is on 13 November. We set up the day before.
  The fair is on 13 November. You could come and look at the hall the day before.
  The fair is on 13 November. The hall is ours from the evening before.
  The fair is on 13 November; guests arrive the evening before.
  The fair is on 13 November, and the clean-up is the next day.
  The fair is on 13 November, a week before the parade.
  Set-up is the day before the fair on 13 November.
  Our AGM is on 13 November 2027, the Christmas party a month later.
  Our school play is on 13 November 2027. The school carol concert is a fortnight later, but that is not for you.
  Our fair is on 13 November 2027, with the carol concert a fortnight later, which you need not film.
`),
)('as it was: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('11-13'));

test('a holiday of which everybody knows the day', () =>
  expect(daysOf(aFair('It is the Saturday after Thanksgiving, 27 November 2027.'))).toBe('11-27'));
