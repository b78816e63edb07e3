/**
 * Days around the job that are wanted as well, or may be, and those that are not.
 */
import { describe, expect, test } from 'vitest';
import { daysOf, lines } from './reading.ts';

const days = (words: string): string => daysOf(`Could you film our gala on Saturday 12 February in Ripon? ${words}\n\nThanks, Robin`);

describe('asked about', () => {
  test.each(
    lines(`
    The following day we'd like an hour of interviews with the winners too.
    Some pick-up shots on the Monday after would be needed.
    The rehearsal the day before needs capturing as well.
    We'd need you both that Saturday and the one after.
    We want the build on the Friday as a time lapse.
    Same again on the Sunday, please.
    If you can stretch to the Sunday we would love that.
    Possibly also the Sunday, we'll know more in a month.
    We might add the Friday night depending on budget.
    Friday is optional.
    Friday would be a bonus, no worries if not.
    Sunday tbc.
    A second day isn't out of the question.
    Could you quote with and without the Sunday brunch?
    We kick off with speeches on Friday night, and those need filming.
    Whether we do a Friday shoot is still open.
    We haven't decided on the Sunday yet.
    Should funds allow, we'd add the Sunday.
    It repeats on the following two Saturdays and we'd like all three filmed.
    On the eve we light candles, and we want a few minutes of that in the film.
  `),
  )('%s', (words) => expect(days(words)).toBe('ask'));
});

describe('of no matter', () => {
  test.each(
    lines(`
    We want your quote by the Friday before.
    Are you free to talk on Thursday?
    Are you available for a site visit on the Thursday before?
    We'd need the finished film the following Friday.
    We want the recording up the next morning.
    The local TV will cover the Sunday.
    We'd love you to enjoy the barbecue on the Sunday.
    Possibly you remember us from the Sunday school concert.
    We may have to leave early the next morning.
    You wouldn't be needed on the Sunday.
    The hall might be free on the Friday for your gear.
    Sunday is kept free in case of thunderstorms.
    We're not sure who locks up on Sunday.
    The gallery is still open on Sunday.
    We would add your name to the Friday newsletter.
    The last dance is at 5 am the next morning, after that you are free to go.
  `),
  )('%s', (words) => expect(days(words)).toBe('02-12'));
});
