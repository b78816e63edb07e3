/**
 * Which of the days that a message names are those of the job: days of which one is to be chosen or that may come to them, days that are left out of a run, days of
 * others, and the days of an answer above a quoted mail.
 */
import { describe, expect, it } from 'vitest';
import { daysOf, facts, lines } from './reading.ts';

// 1 September 2027 is a Wednesday, 12 November a Friday.
const about = (sentence: string): string =>
  `Hi Kit,\n\nI am writing on behalf of the Larkfield Community Fair in York. We would like somebody to film it for us, one person with a camera, and to give us a short film afterwards. ${sentence} Please let me know what you would charge and whether you are free.\n\nThanks,\nRobin Vane`;

const MAY_BE = `
  It's on 12 November, possibly also the 13th.
  It's on the 12th and possibly also the 13th of November.
  It's on 12 November and maybe the 13th too.
  It's on 12 November, with the option of the 13th.
  It's on 12 and (optionally) 13 November.
  It's on 12 November (and the 13th?).
  It's on 12 November and potentially on 13 November.
  It's on 12 November, though we are thinking of adding the Saturday.
  It's from 12 November to the 14th, perhaps the 15th.
  It could be 12 November.
  The fair is from 12 to 15 November, with a single filming day on the 13th.
  We have the hall on hold for 12 November and 19 November and will choose this week.
  It might be 12 November.
  It's on or about 12 November.
  It's the 12th, but the month is not decided.
`;
const CHOICE = `
  Possible dates: 5 November, 12 November.
  Possible dates: 5 Nov / 12 Nov / 19 Nov.
  Suggested dates: 5 November, 12 November.
  Our options are 5 November and 12 November.
  Any of these works for us: 5, 12, 19 November.
  Are you free on any of 5, 12 and 19 November?
  The committee is voting on 5 November versus 12 November.
  We have not chosen between 5 and 12 November.
  We are choosing from 5, 12 and 19 November.
  It's somewhere between 8 and 12 November.
  It's a day between 8 and 12 November.
`;
const SOME_OF_THEM = `
  12 to 15 November, though you'd have the Sunday off.
  12 to 15 November, with the Sunday off.
  12 to 15 November. You are needed until the 14th.
  The festival is on from 12 to 15 November and we play on the 13th.
  The games are from 12 to 15 November and our team plays on the 13th.
  The conference is on from 12 to 15 November and our panel is on day three.
  The show runs 12 to 15 November; one performance is enough.
  The show runs 12 to 15 November; please come any day.
  The fair is on 12 and 13 November, but the second day is not for filming.
  The fair is on 12 and 13 November, and the first day is all we need.
  The fair is on from Friday 12 to Sunday 14 November; forget the Sunday.
  The fair is on from Friday 12 to Sunday 14 November; we can afford two days.
  The heats are on 12 November and the final on 13 November. The heats needn't be filmed.
  The fair is on 12 November in Fargo and on 19 November in Moorhead; we need you in Moorhead.
  The camp is from 8 to 12 November and ends with a show that we want filmed.
  We looked at 5 November and 12 November and chose 12 November.
  It was to be 12 November only; now we have added the 13th.
`;
const OF_OTHERS = `
  I am away from 2 to 9 October.
  The hall is shut on 3 October.
  Our office is closed on 3 October.
  Rehearsals start on 4 October.
  Booking opens on 4 October.
  Entries close on 4 October.
  The posters go up on 4 October.
  In 2026 it took place on 13 November.
  The film will be shown on 20 December.
  We could meet at the hall on 4 October.
  Can we talk on 20 September?
  Our next meeting is on 20 September.
  The judges arrive on 10 November.
  School starts on 6 September.
  The ferry does not run on 1 November.
  We move into the new hall on 1 December.
`;
const STATED = [
  ['11-13..11-14', '12 to 15 November; we need you on days two and three.'],
  ['11-12,11-13,11-15', '12 to 15 November, but only days 1, 2 and 4 need filming.'],
  ['11-13..11-15', '12 to 15 November; we need you on days 2 to 4.'],
  ['11-12..11-14', '12 to 15 November, all but the last day.'],
  ['11-13..11-15', '12 to 15 November, every day except the first.'],
  ['11-13..11-14', "12 to 15 November, though you'd only be needed for the weekend."],
  // Days of others beside that of the job.
  ['11-12', 'The fair is on 12 November. I am away from 11 December.'],
  ['11-12', 'The fair is on 12 November. The hall is shut on 3 October.'],
  ['11-12', 'The fair is on 12 November. Booking opens on 4 October.'],
  ['11-12', 'The fair is on 12 November. Can we talk on 20 September?'],
  ['11-12', 'The fair is on 12 November. The judges arrive on 10 November.'],
  // What is alike and means the days.
  ['11-12..11-13', "It's on 12 and 13 November, both days from 9 to 5."],
  ['11-12..11-13', 'The dates are 12 and 13 November.'],
  ['11-12..11-15', 'The fair is from 12 to 15 November and we want all of it.'],
  ['11-12..11-15', 'The fair is from 12 to 15 November, with the parade on the 13th.'],
  ['11-12..11-15', 'The fair is from 12 to 15 November, including the big auction on the 14th.'],
  ['11-12..11-15', "The fair is from 12 to 15 November; you'd be needed each day."],
  ['11-12', 'It is most likely to be busy, on 12 November.'],
  ['11-12', 'The next one is on 12 November.'],
] as const;

describe('the days of the job', () => {
  it.each(lines(`${MAY_BE}${CHOICE}${SOME_OF_THEM}${OF_OTHERS}`))('%s is asked about', (sentence) => {
    expect(daysOf(about(sentence))).toBe('ask');
  });
  it.each(STATED)('%s: %s', (days, sentence) => {
    expect(daysOf(about(sentence))).toBe(days);
  });

  it.each(['It starts on 12 November; the end is open.', 'From 12 November until we are done.'])('%s has no last day yet', (sentence) => {
    const { start, end } = facts(about(sentence), '2027-09-01T10:00:00+01:00[Europe/London]', 'leeds');
    expect([start, end]).toEqual(['2027-11-12', undefined]);
  });

  it.each(['Could you also do the 14th?', 'Could you do the Sunday too?', "The 12th won't work any more. Is the 19th possible?"])(
    'a number or a weekday above a quoted mail of other days is asked about: %s',
    (sentence) => {
      const text = `Hi Kit,\n\n${sentence}\n\nThanks,\nRobin Vane\n\nOn Tue, 24 Aug 2027 at 10:02, Kit Marlow wrote:\n> Thanks for asking. I could film your fair in York on 12 and 13 November for £900. Shall I pencil it in?`;
      expect(daysOf(text)).toBe('ask');
    },
  );
});
