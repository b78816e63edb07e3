/**
 * What is filmed before breakfast ends in the morning: "sunrise service on the hill ... we'll be finished by half seven".
 */
const DAWN =
  /(?<!\p{L})(?:sun-?rise|dawn(?!s? on)|day-?break|first light|sun(?:'s| is| comes) up|at sun-?up|sonnenaufgang|morgengrauen|lever d[eu] (?:soleil|jour)|amanecer|alba(?! \p{Lu})|zonsopgang|solopgang|soluppgång|soloppgang)(?!\p{L})/iu;
const EVENING = /(?<!\p{L})(?:evening|tonight|sun-?set|dusk|afternoon|all day)(?!\p{L})/iu;

/** True where a message tells of the first light and of no later part of the day. */
export const atDawn = (text: string): boolean => DAWN.test(text) && !EVENING.test(text);
