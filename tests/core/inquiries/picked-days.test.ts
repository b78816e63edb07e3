/**
 * Of several days those that I may choose, that were picked, or that I am wanted on, told by their place or by the name of a day: which they are is asked about.
 * Where all of them are meant they stay stated.
 */
import { describe, expect, test } from 'vitest';
import { aFair, daysOf, lines } from './reading.ts';

const fair = (sentence: string): string => daysOf(aFair(sentence));

describe('one or some of them, for me to choose', () => {
  test.each(
    lines(`
    We perform on 12, 13 and 14 November; one of them should be filmed, you choose which.
    We perform on 12, 13 and 14 November; it doesn't matter which you film.
    We perform on 12, 13 and 14 November; any of these would do.
    We perform on 12, 13 and 14 November; could you make one of those?
    We perform on 12, 13 and 14 November; which would you rather do?
    We perform on 12, 13 and 14 November; two evenings would be enough for us.
    We perform on 12, 13 and 14 November; take your pick.
    We perform on 12, 13 and 14 November; it is enough if you film one.
    We perform on 12 and 13 November and only one is to be filmed.
    We perform on 12 and 13 November; either would be fine.
    Please pencil in 12 and 13 November, we'll know by October which.
    It is two out of 4, 5 and 6 November.
  `),
  )('asked: %s', (sentence) => expect(fair(sentence)).toBe('ask'));
});

describe('picked, called off or held back', () => {
  test.each(
    lines(`
    Of the two dates, 13 and 20 November, the first has been chosen.
    Of the two dates, 13 and 20 November, the committee went for the second.
    The hall gave us 13 and 20 November and we took the later one.
    Two dates were possible, 13 and 20 November. The first date won.
    You said you were free on 13 and 20 November; both would suit us.
    You said you were free on 13, 14 and 20 November; we'd take the first two.
    It is on 13 and 14 November, the second being a reserve.
    It is on 13 and 14 November, one of them being a reserve.
    It runs on five Saturdays from 30 October, and you'd film the third.
    We have two concerts, 12 and 13 November, the first of them without cameras.
    We have two concerts, 12 and 13 November, and it's the second that matters.
    We have two concerts, 12 and 13 November, and want a film of one.
  `),
  )('asked: %s', (sentence) => expect(fair(sentence)).toBe('ask'));
  test('a day that is only for rain', () => expect(fair('13 November (if wet, 14 November).')).toBe('11-13'));
});

describe('wanted on one of them', () => {
  test.each(
    lines(`
    The shows are on 11, 12 and 13 November. We want the opening night.
    The shows are on 11, 12 and 13 November and we need the closing one on film.
    The shows are on 11, 12 and 13 November, with filming on the second.
    The shows are on 11, 12 and 13 November; our regular man does the first two.
    The shows are on 11, 12 and 13 November. Our regular man can do all but the last, so that is where you come in.
    It is from 12 to 14 November; you'd join us on the second day.
    It is from 12 to 14 November; you'd leave on Saturday night.
    It is from 12 to 14 November; we need you until Saturday lunch.
    It is from 12 to 14 November, your part is the closing ceremony.
    It is from 12 to 14 November; the medals on Sunday are what we want.
    It is from 12 to 14 November. The paper films Friday; you would do the rest.
    It is from 12 to 14 November. We are thinking of a two-day shoot.
    Our holiday club runs 25 to 29 October and you'd film the show on the last day.
    Our holiday club runs 25 to 29 October and ends with a show, which is the bit you'd film.
    The show is on Saturday 13 November but it's the dress rehearsal on Thursday 11 November that we want filmed.
  `),
  )('asked: %s', (sentence) => expect(fair(sentence)).toBe('ask'));

  test('two that are named for me', () =>
    expect(fair("It is from 12 to 14 November, and you'd be there on the Friday and the Sunday.")).toBe('11-12,11-14'));
});

describe('all of them', () => {
  test.each(
    lines(`
    It is from 12 to 14 November, all of it to be filmed, especially the closing night.
    It is from 12 to 14 November. We need the first draft of the film by Christmas.
    It is from 12 to 14 November. Take your pick of the seats.
    It is from 12 to 14 November. One camera is enough.
    It is from 12 to 14 November. Any of our volunteers can help you.
    It is from 12 to 14 November. We are thinking of a three-day shoot.
  `),
  )('%s', (sentence) => expect(fair(sentence)).toBe('11-12..11-14'));
});

describe('what is picked, spare or enough is something else', () => {
  test.each(
    lines(`
    Our committee would like to have one (a film). Our festival is on 12 and 13 November 2027.
    Our festival is on 12 and 13 November 2027. There are leaflets at the door, please take one.
    Our festival is on 12 and 13 November 2027. A video of about three minutes would be lovely, one is enough.
    Our festival is on 12 and 13 November 2027. Phone or mail: either is fine for a chat.
    Our festival is on 12 and 13 November 2027. It doesn't matter which microphone you bring.
    Our festival is on 12 and 13 November 2027. We have two stages; take your pick.
    Our festival is on 12 and 13 November 2027. One session is fine for interviews.
    Our festival is on 12 and 13 November 2027. You'd do the opening, the talks and the closing dinner.
    Our festival is on 12 and 13 November 2027. The opening was chosen by the members.
    Our festival is on 12 and 13 November 2027. Our choir took second last year.
    Our festival is on 12 and 13 November 2027. It is our third festival. The first was cancelled because of Covid.
    Our matches are on 12 and 13 November 2027. The first is a warm-up match.
    Our festival is on 12 and 13 November 2027. Please bring two memory cards, one as backup.
    Our festival is on 12 and 13 November 2027. Your site says a one-day shoot costs 900.
    Our festival is on 12 and 13 November 2027. When we pack up, we carry the gear, you take the rest.
    Our festival is on 12 and 13 November 2027. We pay half now, and you have the rest after.
  `),
  )('%s', (sentence) => expect(fair(sentence)).toBe('11-12..11-13'));
  test.each(
    lines(`
    Our festival is on 12, 13 and 14 November 2027. Is there a discount on a two-day booking?
    Our festival is from Friday 12 to Sunday 14 November 2027. You'd be done on Saturday by 4 and on Sunday by 2.
    Our festival is on 12, 13 and 14 November 2027. We want the opening ceremony covered, the matches and of course the final.
    Our festival is on 12, 13 and 14 November 2027. Saturday is the day we want the most footage.
  `),
  )('%s', (sentence) => expect(fair(sentence)).toBe('11-12..11-14'));
  test('one day on which I am free', () =>
    expect(
      fair('You told us you were free on 13 November 2027. That is our wedding day, we would like to go ahead, from 11 am to 9 pm.'),
    ).toBe('11-13'));
  test('a second day that is told by itself', () =>
    expect(
      fair(
        "Our festival is on 12 and 13 November 2027. You'd cover the opening. After that you film the stalls and on the second day the parade.",
      ),
    ).toBe('ask'));
});
