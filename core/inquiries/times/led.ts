/**
 * Numbers that the word before them makes an hour in other languages: "alle 17.00", "per le 13", "a las 9", "klo 8.30", "om 9".
 */
import type { Token } from '../parts/tokens.ts';

/** Words that stand before an hour and before nothing else that is told in numbers. */
const CLOCK_BEFORE = /^(?:klo|kello|godz|ore)$/;
/** Words that stand before an hour most of the time: what is counted must not follow. */
const LEADS = /^(?:alle|dalle|um|om|kl)$/;
/** "a las 9", "per le 13", "hasta las 2" */
const ARTICLE = /^(?:las|le)$/;
const BEFORE_ARTICLE = /^(?:a|hasta|desde|sobre|hacia|para|per|verso|entro|dopo)$/;
/** After an hour the sentence ends or goes on with a small word or a verb; nouns of German are written large, and these are counted. */
const COUNTED =
  /^(?:%|€|\$|£|prozent|euros?|franken|francs?|franchi|stunden?|std|tage?n?|wochen|jahren?|minuten?|min|personen|personas|persone|leute|gäste|kinder|kameras|cámaras|camere|telecamere|horas|días|dagen|uren|weken|minuti|minutos|giorni|ospiti|invitados|invitati|bambini|niños|mensen|gasten|kinderen|kilometer|km|m|x|fotos?|vídeos?|video|interviews?|entrevistas|interviste|bands|teams)$/i;

/** True where the number between two tokens is an hour by the word before it. */
export function ledAsHour(tokens: readonly Token[], index: number, next: number): boolean {
  const [two, one, after] = [tokens[index - 2], tokens[index - 1], tokens[next]];
  const number = tokens[index];
  if (!one || !number || number.breaks > 0) return false;
  // "kl. 14", "ore: 9"
  const word = /^[.:]$/.test(one.text) && one.tight && two ? two.lower : one.lower;
  // "per 3 ore 2 camere"
  if (CLOCK_BEFORE.test(word)) return two?.num === undefined;
  const article = ARTICLE.test(word) && two !== undefined && BEFORE_ARTICLE.test(two.lower);
  if (!article && !LEADS.test(word)) return false;
  if (!after || after.breaks > 0 || /^[.,;:!?)(\u2013-]$/.test(after.text)) return true;
  return /^\p{Ll}/u.test(after.text) && !COUNTED.test(after.text);
}
