/**
 * An hour at which I may go by what is said in another language behind it, behind a clause after it, or before it: "kl. 15.30 er du færdig",
 * "de borrel eindigt om 19.00 uur en dan ben jij ook klaar", "te puedes ir a las 18:00".
 */
import { LEAVING_ABROAD } from '../said/leaving-abroad.ts';

/** Small words between the hour and what is said of me. */
const SMALL = String.raw`(?: (?:uhr|uur|h|heures|horas|ore|senast|senest|spätestens|uiterlijk|früh|nachts|dann|dan|da|så|aber|ya|já|ook|auch|også|donc|wieder|usted|vos|vocês?|lei|on|tu|vous|und|en|og|och|et|y|e)){0,4}`;
const BEHIND = new RegExp(String.raw`^\)?,?${SMALL},? ${LEAVING_ABROAD}`, 'i');
/** A clause of its own stands between the two. */
const CLAUSE_BEHIND = new RegExp(
  String.raw`^[^.?!\n\d(]{0,56}?(?:[,;–-]|(?<![\w\u00c0-\u024f])(?:and|und|et|y|e|en|og|och))(?: (?:sedan|så|da|dann|danach|dan|daarna|puis|ensuite|alors|luego|después|entonces|poi|quindi|depois|vous|usted|vos|você|lei|ya|ook|auch|også|und|og|och|en|et|y|e)){0,3} ${LEAVING_ABROAD}`,
  'i',
);
const BEFORE = new RegExp(
  String.raw`${LEAVING_ABROAD},?(?: [^\s.;:!?\d]{1,16}){0,6}?,?(?: [–-])? (?:kl\.?|klokken|klockan|um|gegen|ab|om|rond|tegen|vanaf|à|vers|dès|a las?|sobre las|alle|verso le|dalle|às|pelas|senast|zeg|sagen wir|disons|digamos|diciamo)+ ?$`,
  'i',
);
/** A word that leads to an hour ends what stands before it. */
const LEADS =
  /(?:kl\.?|klokken|klockan|um|gegen|ab|om|rond|tegen|vanaf|à|vers|dès|las?|alle|le|às|pelas|senast|zeg|wir|disons|digamos|diciamo) ?$/i;
/** "bist du um 10 frei?", "nicht", "ikke": asked or denied. */
const ASKED = /^[^.!;\n]{0,40}\?/;
const NOT =
  /(?<![\w\u00c0-\u024f])(?:nicht|kein\w*|niet|geen|pas|no|non|não|inte|ikke|ob|of|si|se|om du|hvis|wenn|als je)(?![\w\u00c0-\u024f])[^.;,!?\n]{0,24}$/i;
/** "um drei legt der Dampfer an und du bist frei": what follows is said of that hour. */
const SPOKEN =
  /(?<![\w\u00c0-\u024f])(?:um|gegen|om|rond|à|vers|las?|alle|kl\.?|klokken|klockan|às|halb|half|halv) (?:halb |half |halv )?(?:eins|zwei|drei|vier|fünf|sechs|sieben|acht|neun|zehn|elf|zwölf|een|twee|drie|vijf|zes|zeven|negen|tien|twaalf|midi|minuit|una|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|once|doce|due|tre|quattro|cinque|sei|sette|otto|nove|dieci|fem|seks|sex|syv|sju|åtte|åtta|otte|ni|nio|ti|tio|elleve|elva|tolv)(?![\w\u00c0-\u024f])/i;
const HOUR_OF_ITS_OWN = /^(?: [^\s.,;!?\d]{1,12}){0,3} ?\d/;

/** True where what stands before an hour in its sentence, or behind it, lets me go then. */
export function goesAbroad(lead: string, tail: string): boolean {
  const before = LEADS.test(lead) ? BEFORE.exec(lead) : null;
  if (before) return !NOT.test(lead.slice(0, before.index)) && !ASKED.test(tail);
  const behind = BEHIND.exec(tail) ?? CLAUSE_BEHIND.exec(tail);
  if (!behind || SPOKEN.test(behind[0])) return false;
  const rest = tail.slice(behind[0].length);
  return !HOUR_OF_ITS_OWN.test(rest) && !ASKED.test(rest);
}
