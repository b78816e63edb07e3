/**
 * By when an answer is wanted where it is told from another day, within so many days, or put right; and what others are promised, which is none.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

const message = (way: string): string => `Hi Kit,\nCan you film our conference on Saturday 8 May in Fargo? ${way}\nThanks,\nAnn Leverett`;

describe('by 10 December', () => {
  const ways = lines(`
    The board meets on Friday 11 December, so we'd want your answer the day before.
    I print on 12 December and need to hear from you two days earlier.
    We decide on 17 December; please let me know a week before.
    I see the treasurer on Tuesday 15 December. Please let me know by the Thursday before.
    The client needs a name by 12 December, so get back to me on the 10th.
    Could you get back to me by the 10th? The client wants a name by the 12th.
    Please answer within 15 days.
    Gimme a yell by 10 December.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).replyBy).toBe('2026-12-10T23:59'));
});

describe('to the hour', () => {
  const ways = lines(`
    I see the printers on 11 December and would like your answer the day before, by noon.
    The client needs a name by 11 December, 12 noon, so get back to me on the 10th, same time.
    Call me by Thursday 10 December. Well, say noon.
    If I've not heard by 12 noon on 10 December I'll ask my nephew.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).replyBy).toBe('2026-12-10T12:00'));
});

describe('no answer is wanted by then', () => {
  const ways = lines(`
    We need two short films by the end of May.
    I told the caterers they would have numbers by 3 May.
    The hall needs to know by 1 May how many chairs.
    Our regular chap said he'd let me know by Friday but he has broken his arm.
    The talks go online on Monday 31 May so I'd want them by the Friday before.
    Invoices are paid within 14 days.
    Guests RSVP by 10 December and we'll have a headcount then.
    Laat je het voor 10 december weten?
    Merci de me répondre avant le 10 décembre.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).replyBy).toBeUndefined());
});
