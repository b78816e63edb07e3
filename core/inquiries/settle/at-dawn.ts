/**
 * What is filmed before breakfast ends in the morning: "sunrise service on the hill ... we'll be finished by half seven".
 */
const DAWN =
  /(?<!\p{L})(?:sun-?rise|dawn(?!s? on)|day-?break|first light|sun(?:'s| is| comes) up|at sun-?up|sonnenaufgang|morgengrauen|lever d[eu] (?:soleil|jour)|amanecer|alba(?! \p{Lu})|zonsopgang|solopgang|soluppgång|soloppgang)(?!\p{L})/giu;
/** "the Sunrise Choir", "Dawn Hartley": a name of somebody. */
const isName = (text: string, { index, 0: word }: RegExpMatchArray): boolean =>
  /^\p{Lu}/u.test(word) && /^['’ ]?\s?(?:s )?\p{Lu}/u.test(text.slice((index ?? 0) + word.length));
const EVENING = /(?<!\p{L})(?:evening|tonight|sun-?set|dusk|afternoon|all day)(?!\p{L})/iu;

/** True where a message tells of the first light and of no later part of the day. */
export const atDawn = (text: string): boolean => [...text.matchAll(DAWN)].some((found) => !isName(text, found)) && !EVENING.test(text);
