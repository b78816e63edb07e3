/**
 * What an amount is paid for: a day, an hour or the whole job. Where its words do not tell, it is for the job of one day and open for more.
 */
import type { Amount } from '../money/units.ts';
import { lineStart, sentenceAround } from '../parts/sentences.ts';

const JOB_WORDS =
  /\b(?:pauschal|forfait|total|flat|buy-?out|all[- ]in|fee|lump(?:[ -]?sum)?|whole|honorarium|cachet|allocated|set aside|put aside|for (?:all|both|the) (?:of )?(?:the |these |those )?(?:two|three|four|five|six|both|[2-6])?\s?(?:days|evenings|nights|shifts) (?:is|comes to|we have))\b/i;
/** "All in, including the edit, we've got" */
const JOB_LED =
  /(?:^\s?|[.!?]\s)(?:all[- ](?:in|up)|all told|in total|altogether|for everything|for the (?:lot|whole (?:thing|job)))\b[^.!?;]{0,70}$/i;
/** "Liverpool, two days, £1,060" */
const DAYS_THEN = /(?:[,:(–-]\s|^\s?)(?:two|three|four|five|[2-5]) days(?: (?:in all|total))?[,:=–-]{1,2}\s?$/i;
const JOB_AFTER =
  /^(?:\/-)?(?:\s?\([^()]{0,60}\))?(?:[^.;?!]|(?<=\b(?:excl?|incl?|inkl|exkl|zzgl|ca))\.){0,30}?\b(?:overall|in sum|all in all|that's (?:it|everything)|not (?:per|a) day|pour l'ensemble|por todo el (?:trabajo|evento|encargo)|per tutto il (?:lavoro|servizio)|für (?:den ganzen|das ganze|die ganze) \p{L}+|voor (?:de|het) hele \p{L}+|(?:for )?the whole (?:night|day|thing|weekend|event|job)|for the (?:festival|conference|congress|retreat|summit|tournament|camp|tour|run)|total|flat|buy-?out|all[- ]in|in all|all up|inclusive|altogether|honorarium|fee|set aside|as a whole|for the week|package|zusammen|insgesamt|for (?:the )?(?:whole|entire|complete|lot|job|edit|morning|afternoon|evening|night|weekend|set|pair|series|two|three|four|both)|(?:for|over|across|between|cover(?:s|ing)?) (?:all|both|the|these|those) (?:\w+ )?(?:days|shifts|nights|evenings|attendances|sessions|concerts|performances|dates|weekend)|(?:for|cover(?:s|ing)?) (?:both|everything|the lot|all (?:two|three|four|five))|for (?:shooting|filming|the shoot) and (?:the )?edit(?:ing)?|(?:für|voor|pour|por|per) (?:alle|beide|die|de|les|los|las|tutt[ie]|i|le|ambos|todos?)(?: \p{L}+){0,2} (?:tage|dagen|jours|días|giorni|abende|avonden|noches)|(?:für|voor|pour|por|per) (?:zwei|drei|vier|twee|drie|vier|deux|trois|quatre|dos|tres|cuatro|due|tre|quattro|\d) (?:tage|dagen|jours|días|giorni|abende|avonden|noches)|for (?:full|the full \w+))\b|^,? (?:for )?(?:the |a )?(?:pair|lot|both|job)\b|^[.,]\s(?:for both|in total|total|all in|flat|all told|altogether)[.,;!]/iu;
/** "$1,400? That's flat": what the next sentence says of the amount. */
const JOB_NEXT =
  /^\s?[.,?!]\s(?:and )?(?:(?:that|this|it)(?:'s| is|s)|das ist) (?:a )?(?:flat|total|the total|all[- ]in|pauschal|for (?:everything|both|all|the (?:lot|whole|job|two|three|weekend)))\b/i;
const RATE_WORDS =
  /(?<!half[- ])\b(?:\d{1,2}[- ]?h(?:ou)?r (?:day )?rate|(?:day|daily)[- ]?(?:rate|fee|allowance|money|pay)|(?:rate|fee|pay) (?:per|a) day|tag(?:es)?(?:satz|gage|pauschale|honorar)|tarif (?:journalier|jour)|tarifa diaria|dag(?:tarief|vergoeding|prijs)|tariffa giornaliera|(?:pay|paid|paying|charge|charged|billed) by the day|(?:10|12|8|9|11|ten|twelve|eight)[- ]hour day)\b|\bdaily:? ?$|\bfor (?:one|the|a|that|a single) day,? (?:it's|it is|that's|we'd|we can|i can)\b/i;
const DAY_AFTER =
  /^\s(?:(?!(?:half|with|plus|and|within|take|takes|including|for)(?!\p{L}))\p{L}[\p{L}-]{2,11} ){1,2}(?:an?|per|each|every|pr\.?|pro|par|por|al) (?:day|tag|jour|dag|d[ií]a|giorno)\b|^\s(?:as (?:a|the|your|our) )?(?:day|daily) (?:rate|fee)|^,? for each (?:day|of the)\b|^[^.;?!]{0,60}?\bfor (?:the|that|this|your|our|one|a)(?: (?!half)\p{L}+)? day\b|^[^.;?!]{0,42}?\b(?:por el día|pour la journée|für den tag|voor de dag)\b|^\s?\)?[\s.,]{0,2}[[(]\s?per day\b|^[^.;?!]{0,20}\(?(?:standard |normal |usual )?\d{1,2}[- ]h(?:ou)?r day\b/iu;
/** "Per day we can give", "pro Tag zahlen wir": the day comes first. */
const LED_BY_DAY =
  /(?<!\p{L})(?:(?:per|for each|for every|each|every) (?:shoot(?:ing)? |working |show )?day|pro (?:dreh|arbeits|veranstaltungs)?tag|par jour(?:née)?|por (?:día|dia)|al giorno|per (?:dag|giorno)|pr\.? dag)(?!\p{L})[,:]? (?!of )[^.,;?!\d]{0,40}$/iu;
/** "Pro Abend gibt es", "per evening we pay": the evening comes first. */
const LED_BY_NIGHT =
  /(?<!\p{L})(?:(?:per|for each|for every|each|every) (?:evening|night|shift)|pro (?:abend|nacht|schicht)|par (?:soir|soirée|nuit)|por noche|(?:a|per) (?:sera|serata)|per (?:avond|nacht))(?!\p{L})[,:]? (?!of )[^.,;?!\d]{0,40}$/iu;
/** "For the two days our parents propose", "für beide Tage haben wir": what follows is for all of them. */
const LED_BY_DAYS =
  /(?<!\p{L})(?:for|für|pour|por|per|voor) (?:all|both|the|these|those|our|alle|beide|die|les|los|las|i|le|de)(?: of)?(?: (?:the|these|our))?(?: (?:two|three|four|five|six|[2-6]|zwei|drei|vier|deux|trois|quatre|dos|tres|cuatro|due|tre|quattro|twee|drie))? (?:days|nights|evenings|shifts|sessions|dates|sittings|weekend|week|tage|abende|jours|soirs|soirées|días|noches|giorni|serate|dagen|avonden)(?!\p{L})[^.;?!\d]{0,60}$/iu;
/** "£300 for the 2", "850 € the two days", "$5,000 for filming the two days" */
const DAYS_BEHIND =
  /^,? (?:(?:is |are |goes )?for (?:the )?(?:\p{L}+ ){0,3})?(?:over |across )?(?:for |the |all |both |these ){1,2}(?:of the )?(?:(?:two|three|four|five|six|[2-6])(?=\s?(?:[.,;!?)\n]|$)| (?:days|nights|evenings|shifts|dates|sessions|of them)\b)|(?<=both )(?:days|nights|evenings|dates)\b)|^ (?:is |are )?for (?:the )?(?:\p{L}+ ){1,3}?\p{L}+, (?:all|both|the) (?:two |three |four |five |six |[2-6] )?(?:days|nights|evenings|dates)\b/iu;
/** "€1,500 and that's for the both days", "$300. for the 2", "AED 3,500 lumpsum both days", "$ 1,300 incl. both days", "$2,400 for your three days" */
const ALL_DAYS = String.raw`(?:(?:the |your |our |all |these |those |of ){0,3}(?:both|two|three|four|five|six|seven|[2-7])(?: of)?(?: (?:the|these|those|your|our))?(?: (?:days?|nights?|evenings?|nites|shifts|dates|sessions|shows|weekends|of (?:them|it|us)|together)\b|(?=\s?(?:[.,;!?)\n]|$)))|(?:the |it |them )?(?:lot\b|block\b)|it all\b)`;
const FOR_ALL_DAYS = new RegExp(
  String.raw`^[^.;?!\d]{0,50}?\b(?:that's|that is|this is|it's|it is|thats|its|which is) (?:for|covers?|good for) ${ALL_DAYS}|^[\s.,!?…-]{1,5}(?:and |in total )?(?:lump[ -]?sum |flat |fee |total |all[- ]in |cash )?(?:incl(?:\.|udes?|uding|usive of)? |for |covers? |covering |across |over )${ALL_DAYS}|^[\s,]{1,2}(?:lump[ -]?sum|flat|fee|total|all[- ]in)[\s,]{1,2}(?:for )?${ALL_DAYS}|^ in it for your (?:two|three|four|five|six|[2-6]) (?:days|nights|evenings)|^ the block\b`,
  'i',
);
/** "$900 for the film": one thing that is made, however many days it takes. */
const FOR_ONE_FILM =
  /^ for (?:the|a|this|our) (?:\p{L}+ )?(?:film|video|recording)\b(?! (?:crew|team|days?|side|person|coverage|work|shoot|part|guy|man|operator))/iu;
/** "for the day plus the edit": more than a day's work. */
const DAY_AND_EDIT =
  /^[^.;?!]{0,60}?\bday,? (?:plus|and|including|incl\.?|with|\+|&) (?:the |a |an |your |some )?(?:edit\w*|cut\w*|post\b)/i;
/** "The day is paid", "each day is worth" */
const DAY_IS = /\b(?:the|a|each|every|one) (?:\w+ )?day (?:is|'s|gets?|will be|would be) (?:paid|worth|at|valued at)?(?: at| with)?\s?$/i;
/** "Show days £425", "£650 for shoot days": each of them. */
const DAYS_OF_WORK = String.raw`(?:show|shoot(?:ing)?|event|work(?:ing)?|film(?:ing)?|rehearsal|build|rig|camera|dreh|einsatz)[- ]?(?:days|tage)`;
const DAYS_BEFORE = new RegExp(String.raw`\b${DAYS_OF_WORK}(?: are| at| @| is|:| -| paid(?: at)?)?\s?$`, 'i');
const DAYS_AFTER = new RegExp(String.raw`^,? (?:for|on) (?:the |each of the )?${DAYS_OF_WORK}\b`, 'i');
const FOR_THE_WEEKDAY =
  /^[^.;?!]{0,20}?\bfor (?:(?:the|that|this|your) )?(?:mon|tues|wednes|thurs|fri|satur|sun)day\b(?! (?:and|night|evening|morning|afternoon)|s)/i;
/** A column of a table is headed "Fee/day". */
const DAY_COLUMN = /[|\t]\s?(?:day )?(?:fee|rate|pay|gage)\s?(?:\/|\(?per |a )\s?(?:day|tag)\b|[|\t]\s?day[- ]rate\b/i;
const FOR_THE_JOB = /^[^.;?!]{0,42}?\bfor the (?:whole )?(?:job|gig)\b/i;
const HOUR_WORDS =
  /\b(?:hourly(?: rate)?|hour[- ]?(?:tariff|rate|fee|wage|price)|by the hour|stunden(?:satz|lohn|honorar|tarif)|(?:taux|tarif) (?:horaire|à l'heure)|tarifa (?:horaria|por hora)|tariffa oraria|uur(?:tarief|loon|prijs)|(?:pay|paid|paying) by the hour|(?:hours|hrs?|\d ?h|stunden|std\.?|heures|horas|ore|uur) (?:at|@|x|zu|à|a|de|van))\b/i;
/** "2 days at", "3 x"; and after the amount "x 2 days" */
export const TIMES_DAYS =
  /(?:\b(?:zwei|drei|vier|fünf)mal|\b(?:two|three|four|five|2|3|4|5) times|\b(?:deux|trois|quatre) fois|\b(?:days|nights|shifts|evenings)\s?(?:@|at|x|×|of)|\b\d\s?[x×])\s?$/i;
const DAYS_TIMES = /^\s?[x×]\s?(?:\d(?!\d)|two|three|four|five)(?:\s(?:days|nights|shifts|evenings))?\b/i;
const SEVERAL_NIGHTS =
  /\b(?:both|all|two|three|four|five|six|2|3|4|5|6|each|every) (?:of the |the )?(?:nights?|nites?|evenings?|shifts?|times?|shows?|gigs?|performances?|concerts?|(?:mon|tues|wednes|thurs|fri|satur|sun)days?)\b|\b(?:mon|tues|wednes|thurs|fri|satur|sun)day (?:and|&) (?:mon|tues|wednes|thurs|fri|satur|sun)day (?:nights?|evenings?)\b/i;
const BEFORE = 60;
const LED = 140;
const AFTER = 80;
/** How a message is to be read for the number of nights. */
const LOOKED_THROUGH = 4000;

/** "Two concerts ... £320 per concert" on two days: as many of them are named as there are days. */
function isOneADay(text: string, { start, end }: Amount, days: number | undefined): boolean {
  const unit = /\p{L}+$/u.exec(text.slice(start, end))?.[0];
  if (unit === undefined || days === undefined) return false;
  const named = new RegExp(`(?<![\\p{L}\\d])(?:${days}|${COUNTS[days] ?? days}) (?:\\p{L}+ ){0,2}${unit}(?:e?s)(?!\\p{L})`, 'iu');
  return named.test(text.slice(0, LOOKED_THROUGH));
}
const COUNTS: Readonly<Record<number, string>> = { 2: 'two|both|both the', 3: 'three', 4: 'four', 5: 'five', 6: 'six' };

/** The unit of time; nothing where it is open. */
export function paidPer(text: string, amount: Amount, days: number | undefined): 'day' | 'job' | 'hour' | undefined {
  const sentence = sentenceAround(text, amount.start, amount.end);
  const led = text.slice(Math.max(sentence.start, amount.start - LED), amount.start);
  const around = led.slice(-BEFORE);
  const next = text.slice(amount.end, amount.end + AFTER);
  const after = next.slice(0, Math.max(0, sentence.end - amount.end));
  if (amount.per === 'night' || (amount.per === undefined && LED_BY_NIGHT.test(led))) {
    if (days !== undefined) return days === 1 ? 'job' : 'day';
    return SEVERAL_NIGHTS.test(text.slice(0, LOOKED_THROUGH)) ? 'day' : undefined;
  }
  if (amount.per === 'event') return days === 1 ? 'job' : isOneADay(text, amount, days) ? 'day' : undefined;
  if (amount.per === 'day' || amount.per === 'job' || amount.per === 'hour') return amount.per;
  if (days !== 1 && /^\seach\b/i.test(after) && !DAYS_BEFORE.test(around) && !TIMES_DAYS.test(around)) return undefined;
  if (TIMES_DAYS.test(around) || DAYS_TIMES.test(after) || DAY_IS.test(around)) return 'day';
  if (DAY_AND_EDIT.test(after)) return 'job';
  if (FOR_THE_JOB.test(after)) return 'job';
  if (
    DAYS_BEFORE.test(around) ||
    DAYS_AFTER.test(after) ||
    RATE_WORDS.test(around) ||
    LED_BY_DAY.test(led) ||
    DAY_AFTER.test(next) ||
    FOR_THE_WEEKDAY.test(after)
  )
    return 'day';
  if (HOUR_WORDS.test(around)) return 'hour';
  const line = lineStart(text, amount.start);
  if (/[|\t]\s?$/.test(text.slice(line, amount.start)) && DAY_COLUMN.test(text.slice(Math.max(0, line - LOOKED_THROUGH), line)))
    return 'day';
  return JOB_WORDS.test(around) ||
    DAYS_THEN.test(around) ||
    JOB_LED.test(led) ||
    LED_BY_DAYS.test(led) ||
    DAYS_BEHIND.test(after) ||
    FOR_ALL_DAYS.test(next) ||
    FOR_ONE_FILM.test(after) ||
    JOB_AFTER.test(after) ||
    JOB_NEXT.test(next) ||
    days === 1
    ? 'job'
    : undefined;
}
