/**
 * Days on which different things happen of which one is asked for, and days that are told by their place in every month.
 */
import { describe, expect, test } from 'vitest';
import { daysOf, lines } from './reading.ts';

describe('asked about', () => {
  test.each(
    lines(`
    Enduro weekend in Ripon, 24/25 June. Saturday is practice. Sunday is race day, and that is when we want the film made.
    Regatta 1 and 2 July in Ripon, heats Saturday and finals Sunday. Could you film the finals?
    Offsite 5-7 June near Ripon: Monday arrive and dinner, Tuesday talks all day, Wednesday home. We want the talks filmed.
    Our AGM is on Tuesday 11 April and the gala dinner on Wednesday 12 April in Ripon. A videographer is needed for the dinner only.
    Can you film our service the first Sunday of each month from February to April?
    We need a videographer for the last Saturday of January, February and March.
    We do a pop-up on the first Saturday in every month; would you film February's?
  `),
  )('%s', (text) => expect(daysOf(text)).toBe('ask'));
});

describe('all of them', () => {
  test.each([
    ['02-12..02-13', 'We want our festival filmed, 12 and 13 February in Ripon. The festival opens on Saturday at noon.'],
    ['02-12..02-13', 'Would you film the wedding on 12 and 13 February in Ripon? Church on Saturday, wedding breakfast on Sunday.'],
    ['02-12..02-13', 'Fair on 12 and 13 February in Ripon. Saturday stalls, Sunday the dog show. Please film the stalls and the dog show.'],
    ['03-04', 'Could you film our market on the first Saturday of March and send me a price?'],
  ])('%s: %s', (want, text) => expect(daysOf(text)).toBe(want));
});
