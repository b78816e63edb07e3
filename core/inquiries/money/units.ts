/**
 * How money and what it is paid for are written: signs and words of currencies, "a day", "per hour", "for the whole job".
 */

/** Countries before a sign of money: "CA$", "GH₵". */
const COUNTRY = 'USD?|CAD?|CDN|C|AUD?|A|NZD?|HKD?|SGD?|S|R|NA?D?|FJD?|NT|MXN?|TTD?|J|BDS?|EC|GH';
export const MARK = String.raw`(?:${COUNTRY})?\p{Sc}|U\.S\.|CDN|USD|CAD|AUD|NZD|HKD|SGD|BRL|NAD|BWP|EUR|GBP|CHF|SEK|NOK|DKK|PLN|CZK|HUF|JPY|CNY|INR|ZAR|MYR|IDR|PHP|KRW|TWD|SAR|QAR|OMR|KWD|BHD|JOD|ISK|RON|RSD|BGN|UAH|PEN|NGN|KES|GHS|UGX|TZS|ZMW|ETB|MUR|XOF|XAF|EGP|VND|PKR|LKR|NPR|BDT|MXN|CLP|JMD|TTD|BBD|AED|ILS|THB|MAD|MZN|GEL|TND|COP|ARS|UYU|CRC|NRs\.?|S\/\.?(?=\s?\d)|DT|Rs\.?|R(?=\s?\d{1,3}[ ,]\d{3}|\s?\d{3}|\d{1,3}(?:[.,]\d)?k\b)|RM(?=\s?\d)|Rp\.?(?=\s?\d)|[NP](?=\d{1,3}(?:[ ,]\d{3}|k\b))|Php\.?(?=\s?\d)|Pula(?=\s?\d)|Dhs?\.?|(?:K|T|U)Shs?\.?|kr\.?(?=\s?\d)|zł|Kč|Euros?(?=\s?(?!20\d\d\b)\d)|(?:US|Canadian|NZ|Australian) dollars?(?=\s\d)|fr\.`;
export const WORD = String.raw`swiss (?:francs?|franken)|(?:canadian|american|australian|aussie)(?: dollars?| bucks)?|us (?:dollars?|bucks)|sing(?:apore)? dollars?|(?:amerikanische|kanadische|australische|us-) ?dollars?|dollars (?:américains|canadiens|australiens)|d[oó]lares(?: (?:estadounidenses|americanos|canadienses|australianos))?|dollari(?: (?:americani|statunitensi|canadesi|australiani))?|sterline|pfund\b|livres\b|libras|balles|baht|(?:danish|norwegian|swedish) (?:kroner?|kronor|crowns)|dollars?|bucks|pounds?(?! of\b)|quid|euros?|eu(?=\s?[+.,;]|\s|$)|francs?|francos|franchi|franken|meticais|lari\b|soles\b|pond\b(?! of\b)|won(?=\s?[.,;:!?()\n]|\s?$| (?:in|for|per|a|total|each|all|net|cash)\b)|kronor|kroner|kr\b\.?|yen|rupees|rand|naira|cedis?|pesos?|dirhams?|riyals?|shillings?|shekels?|nis|z[lł]otys?(?:ch)?|zl|korun[ay]?|rupiah|lei|leu|pavos|lir[ae]|reais|rmb|yuan|dinars?|taka|birr|kwacha|stutz|fränkli|pula|ringgit|ft(?=[.,;!?)]|\s|$)|forint`;
const UNIT = String.raw`day|date|hour|hr|nite|night|evening|shift|service|(?:mon|tues|wednes|thurs|fri|satur|sun)day|soirée|show|person|head|guest|ticket|mile|km|month|week|year|seat|plate|camera|video|clip|minute|photo|table|player|team|member|session|event|job|gig|shoot|talk|concert|performance|match|wedding|ceremony|recital|screening|fixture`;
export const PER = String.raw`(?:(?:for (?!an? (?:video|clip|camera|person|photo|shoot|event|gig|team)\b))?(?:(?:(?:per|a|each|pro|je) (?:person|operator|head|camera|cameraman|op)(?: and|,)?|flat|fixed|all[- ]in) (?=(?:per|a|each|pro|je|\/) ?(?:day|tag)\b))?(?:a|an|per|pr\.?|om(?= dagen\b)|by(?= (?:the )?(?:day|hour)\b)(?: the)?|each|every|par|pro|je|al|por|am|(?:die|la|il|het|de|el|the)(?= (?:stunde|hora|heure|uur|ora|hour|hr)\b))\s(?:(?:shoot(?:ing)?|working|camera|show|event|film(?:ing)?|sitting|lecture|conference|match|race|game|rehearsal|concert|recording|racing|festival|congress|wedding|full|training|production)[ -](?=day|evening|night)|(?<=(?:per|each|every)\s)(?!half)\p{L}{3,12}[ -](?=day\b)|(?:\d{1,2}|eight|nine|ten|eleven|twelve)[- ]?h(?:ou)?rs?[- ])?(?<unit>${UNIT}|(?:veranstaltungs|dreh|arbeits|einsatz|messe)?tag|jour|journée|jornada|giornata|día|dia|giorno|dag(?:en)?|abend|avond|serata|noche|stunde|heure|hora|ora|uur|talk|vortrag|stuk|stück)\b|(?:de |all')?(?:l'|all')?(?<hourly>(?<=l'|all')(?:heure|ora))\b|(?:\/|p\/)\s?(?:\p{L}{3,12}\s(?=day))?(?<slash>${UNIT}|tag|jour|journée|jornada|giornata|día|dia|giorno|dag|stunde|std\b|heure|hora|ora|uur|soirée|abend|avond|d\b|h\b|u\b)|(?<pd>p\.?d\b|per (?:8|9|10|11|12|eight|ten|twelve)[- ]?h(?:(?:ou)?rs?)?\b|\/\s?(?:8|9|10|11|12)(?:\s?h(?:ou)?rs?)?(?![\d\/]))|(?<ph>p\/?h\b)|(?<adverb>daily|hourly)\b|(?<phrase>day rate|(?:for (?:the |t')?|the |t')day\b(?! (?:before|after|of|we|you|i)\b)(?!,? (?:and|plus|incl\p{L}*) (?:the |an? )?(?:edit|cut|post))|flat|all[- ](?:in(?:clusive)?|up)|pauschal|forfait|(?:voor|für|pour|por|per) (?:de (?:hele )?(?:klus|opdracht)|den (?:ganzen )?(?:job|auftrag|einsatz)|die veranstaltung|la mission|la prestation|el trabajo|el evento|il lavoro)|all told|total|totaal|totalt|gesamt|komplett|complessivi|razem|for all(?=\s?[.,;!?)]|$)|in total|(?:as )?a? ?lump sum|fixed|in all\b|the lot\b|insgesamt|in (?:sum|summa)\b|all in all|all(?:es)? (?:drin|inklusive|inbegriffen)|tout (?:inclus|compris)|tutto incluso|in tutto|todo incluido|tutto compreso|alles inbegrepen|alles in allem|(?:für|voor|pour|por) (?:den abend|de avond|la soirée|la noche)|,? everything included|inclusive\b|au total|en tout|für alles|(?:pour|por) tout|en total|in totaal|(?:(?:pour|für|por|per|voor) )?(?:la journée|den tag|el día|la jornada|la giornata|de dag)|tag(?:es)?(?:satz|gage|pauschale|honorar)|dagtarief|for (?:the|this) (?:whole |entire |complete )?(?:job|project|gig|event|lot|thing|shoot|weekend|evening|night|morning|afternoon|edit|set|pair|series|run|season|package|two days|three days|four days|five days|both days|full \w+)(?![ -]days?\b)|for (?:both|all \w+|the whole|(?:two|three|four|five|[2-5])(?!\s?h(?:ou)?rs?\b|\s?h\b)) ?(?:days|thing|job|weekend|lot)?|for everything|for it all|altogether))`;

/** What an amount is paid for. A night or a shift is a day of the job, unless a bed is paid for; what an event is depends on how many there are. */
export type Per = 'day' | 'job' | 'hour' | 'night' | 'event' | 'other';

/** An amount as it stands in a text. */
export type Amount = {
  start: number;
  end: number;
  amount: number;
  /** The other end of "800 to 900 a day". */
  upTo?: number;
  /** The sign or word as written, folded; undefined where there is none. */
  mark?: string;
  per?: Per;
  /** Its words say that it is money, though no sign does: "two eighty for it". */
  paid?: true;
};

/** Words for a day and an hour in the languages that are read. */
const DAY = /^(?:day|d|\p{L}*tag|jour|journée|jornada|giornata|día|dia|giorno|dag(?:en)?)$/iu;
const DAY_PHRASE =
  /^(?:day rate|for day|(?:for )?(?:the |t')day|voor de dag|tag(?:es)?(?:satz|gage|pauschale|honorar)|dagtarief|.*\b(?:la journée|den tag|el día|la jornada|la giornata|de dag))$/i;
const HOUR = /^(?:hour|hr|h|stunde|std|heure|hora|ora|uur|u)$/i;
const units = [
  ['day', DAY],
  ['hour', HOUR],
  ['job', /^job$/i],
  ['night', /^(?:nite|date|night|evening|shift|service|(?:mon|tues|wednes|thurs|fri|satur|sun)day|soirée|abend|avond|serata|noche)$/iu],
  ['event', /^(?:event|gig|shoot|show|session|concert|performance|match|wedding|ceremony|recital|screening|fixture)$/i],
] as const;

/** The unit of time that a match of `PER` names. */
export function perOf(groups: Record<string, string | undefined>): Per | undefined {
  const unit = groups['unit'] ?? groups['slash'];
  if (unit !== undefined) return units.find(([, pattern]) => pattern.test(unit))?.[0] ?? 'other';
  if (groups['pd'] !== undefined) return 'day';
  if (groups['ph'] !== undefined || groups['hourly'] !== undefined) return 'hour';
  if (groups['adverb'] !== undefined) return groups['adverb'].toLowerCase() === 'daily' ? 'day' : 'hour';
  if (groups['phrase'] === undefined) return undefined;
  return DAY_PHRASE.test(groups['phrase']) ? 'day' : 'job';
}

/** The currency sign or word of an amount, folded to one writing. */
export const folded = (mark: string | undefined): string | undefined => mark?.toUpperCase().replace(/\.$/, '');
