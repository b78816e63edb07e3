/**
 * Days that are told by their place in a run: "8 AM the first day", "6 PM the second", "wrap 6 the first evening".
 */

const NTH =
  /\b(?:day (one|two|three|four|five|1|2|3|4|5)|(first|second|third|fourth|fifth|last|final|opening|closing) (?:day|evening|night|morning|afternoon))\b/i;
const NTH_BEFORE = new RegExp(NTH, 'gi');
const order: Record<string, number> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  last: -1,
  final: -1,
  opening: 1,
  closing: -1,
};
/** So far behind an hour its day is looked for. */
export const NTH_REACH = 16;

/** "6 PM the second" */
export const NTH_AFTER =
  /^,? (?:on )?(?:the (first|second|third|fourth|fifth|last|final)|day (one|two|three|four|five|[1-5]))(?=\s*(?:[.,;)\n]|$|and\b))/i;

/** The number of the day that a clause names; what follows the hour is nearer than what stands before it, and of that the last. */
export function nthIn(before: string, after: string): number | undefined {
  const match = NTH.exec(after) ?? NTH_AFTER.exec(after) ?? [...before.matchAll(NTH_BEFORE)].at(-1);
  const word = match?.[1] ?? match?.[2];
  return word === undefined ? undefined : (order[word.toLowerCase()] ?? Number(word));
}

/** "Last day, Sunday, is an exception: start 10:00, you come at 9:00, all finished 15:00", "Am letzten Tag ist um 15 Uhr Schluss" */
const HEADING =
  /^\s*(?:(?:on|for|but|only|and|am|aan|op|nur|solo|sólo) )*(?:the |der |le |el |il |l'|de )?(first|last|final|opening|closing|ersten?|letzten?|premier|dernier|primer|último|primo|ultimo|eerste|laatste) (?:day|evening|night|morning|tag|abend|jour|soir|día|giorno|dag|avond)(?!\p{L})/iu;
const LAST_WORDS = /^(?:last|final|closing|letzt|dernier|últim|ultim|laatst)/i;
/** Words that lead on to other days. */
const OTHER_DAYS =
  /(?<!\p{L})(?:others?|rest|second|third|next|following|then|every|each|remaining|both|andere[nr]?|übrige[nr]?|autres?|suivants?|otros?|altri|dann|puis|luego|poi)(?!\p{L})/iu;

/** The number of the day that heads a sentence, for the hours in it; `lead` is the sentence up to an hour. */
export function nthHeading(lead: string): number | undefined {
  const match = HEADING.exec(lead);
  if (!match || OTHER_DAYS.test(lead.slice(match[0].length))) return undefined;
  return LAST_WORDS.test(match[1] ?? '') ? -1 : 1;
}
