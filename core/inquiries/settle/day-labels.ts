/**
 * Days that head what follows: "Saturday: you in at 8, out at 16:30", "B) Thursday 18 March, Wakefield. Arrive 07:00", a date alone on its line.
 */
import type { DateMention, Where } from './scene.ts';

/** What may stand before a day that heads: "- ", "B) ", "2. ", "Day 1, " */
const HEAD =
  /(?:^|\n|[.;!?)]\s|,\s(?=\p{Lu}))[\s*\u2022\u00b7|-]*(?:\(?(?:\d{1,2}|\p{L})[).:]\s*)?(?:(?:shoot |event )?(?:day|tag|jour|día|giorno|dag) (?:\d|one|two|three|four)[\s:,(-]*)?(?:on |am |le |el |op )?$/iu;
const AT_LINE =
  /(?:^|\n)[^\p{L}\n>]*(?:(?:\p{L}|(?:shoot |event )?(?:day|tag|jour|día|giorno|dag) (?:\d|one|two|three|four))[).:,\s(-]+)?(?:on )?$/iu;
/** A mark after it that makes it a head. */
const MARKED = /^\s?(?:\([^()\n]{0,24}\)\s?)?(?::|\u2013|\s-\s|-\s|\||\n|$)/u;
const PARTED = /^\s?(?:,|\s)\s?\S/;
const HEAD_REACH = 40;
const LONGEST_UNDER = 1000;

/** The heads of a text in their order; none where there are fewer than two of them. */
export function headsOf(text: string, dates: readonly DateMention[]): DateMention[] {
  const heads = dates.filter((date) => {
    if (date.said === 'reply' || date.said === 'delivery' || date.said === 'past') return false;
    const before = text.slice(Math.max(0, date.start - HEAD_REACH), date.start);
    const after = text.slice(date.end, date.end + 30);
    return (HEAD.test(before) && MARKED.test(after)) || (AT_LINE.test(before) && date.explicit && PARTED.test(after));
  });
  return heads.length > 1 ? heads : [];
}

/** The day under whose head an hour stands: what comes after it up to the next head or an empty line. */
export function dayUnder(text: string, { start }: Where, heads: readonly DateMention[]): DateMention | undefined {
  const head = heads.findLast(({ end }) => end <= start);
  return head && start - head.end < LONGEST_UNDER && !/\S[^\S\n]*\n\s*\n/.test(text.slice(head.end, start)) ? head : undefined;
}
