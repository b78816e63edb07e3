/**
 * Amounts of money as people write them: "$1,200", "900 a day", "1.2k", "3.500 €", "CHF 1'200", "£450 per day".
 */

import { numberWord } from '../words.ts';

export type Amount = {
  start: number;
  end: number;
  amount: number;
  /** The other end of "800 to 900 a day". */
  upTo?: number;
  /** The sign or word as written, folded; undefined where there is none. */
  mark?: string;
  /** A night or a shift is a day of the job, unless a bed is paid for; what an event is depends on how many there are. */
  per?: 'day' | 'job' | 'hour' | 'night' | 'event' | 'other';
};

const MARK = String.raw`US\$|USD|U\.S\.|CA\$|CAD|CDN\$?|C\$|AU\$|AUD|A\$|NZ\$|NZD|HK\$|HKD|S\$|SGD|R\$|BRL|N\$|NAD|FJ\$|FJD|RM(?=\s?\d)|P(?=\d{1,3}[ ,]\d{3})|Pula(?=\s?\d)|BWP|EUR|GBP|CHF|SEK|NOK|DKK|PLN|CZK|HUF|JPY|CNY|INR|Rs\.?|R(?=\s?\d{1,3}[ ,]\d{3}|\s?\d{3}|\d{1,3}k\b)|ZAR|MYR|IDR|PHP|KRW|TWD|SAR|QAR|ISK|RON|BGN|UAH|PEN|NGN|KES|EGP|VND|PKR|LKR|MXN|AED|ILS|THB|kr\.?(?=\s?\d)|\$|£|€|¥|₹|fr\.`;
const WORD = String.raw`(?:canadian|american|australian|aussie)(?: dollars?| bucks)?|us (?:dollars?|bucks)|sing(?:apore)? dollars?|d[oó]lares|dollari|sterline|pfund\b|livres\b|libras|balles|baht|(?:danish|norwegian|swedish) (?:kroner?|kronor|crowns)|dollars?|bucks|pounds?(?! of\b)|quid|euros?|francs?|franchi|franken|kronor|kroner|kr\b\.?|yen|rupees|rand|pula|ringgit|ft(?=[.,;!?)]|\s|$)|forint`;
/** "til 6 400 a day" is an hour and an amount. */
const NO_HOUR = String.raw`(?<!\b(?:til|till|until|to|at|by|from)\s(?=\d{1,2} ))`;
/** "1,20,000" is how lakhs are written. */
const GROUPED = String.raw`${NO_HOUR}\d{1,2}(?:,\d{2}){1,2},\d{3}(?!\d)|${NO_HOUR}\d{1,3}(?:[,. '](?=\d{3}(?!\d))\d{3}){1,3}(?:[.,]\d{1,2}(?!\d))?`;
/** Up to seven digits; of a longer row none is taken, since a part of it is not what was written. */
const NUMBER = String.raw`(?:${GROUPED}|\d{1,7}(?:[.,]\d{1,2})?)(?!\d)`;
const UNIT = String.raw`day|date|hour|hr|nite|night|evening|shift|service|(?:mon|tues|wednes|thurs|fri|satur|sun)day|soirée|show|person|head|guest|ticket|mile|km|month|week|year|seat|plate|camera|video|clip|minute|photo|table|player|team|member|session|event|job|gig|shoot|talk`;
const PER = String.raw`(?:(?:for )?(?:a|an|per|each|every|par|pro|je|al|por|am|(?:die|la|il|het|de|el|the)(?= (?:stunde|hora|heure|uur|ora|hour|hr)\b))\s(?:(?:shoot(?:ing)?|working|camera|show|event|film(?:ing)?|sitting|lecture|conference|match|race|game|rehearsal|concert|recording)[ -](?=day|evening|night)|(?:\d{1,2}|eight|nine|ten|eleven|twelve)[- ]?h(?:ou)?rs?[- ])?(?<unit>${UNIT}|(?:veranstaltungs|dreh|arbeits|einsatz|messe)?tag|jour|journée|jornada|giornata|día|dia|giorno|dag|abend|avond|serata|noche|stunde|heure|hora|ora|uur|talk|vortrag|stuk|stück)\b|(?:de |all')?(?:l'|all')?(?<hourly>(?<=l'|all')(?:heure|ora))\b|(?:\/|p\/)\s?(?:(?:show|event|shoot|shift)\s(?=day))?(?<slash>${UNIT}|tag|jour|journée|jornada|giornata|día|dia|giorno|dag|stunde|std\b|heure|hora|ora|uur|soirée|abend|avond|d\b|h\b|u\b)|(?<pd>p\.?d\b|per (?:8|9|10|11|12|eight|ten|twelve)[- ]?h(?:(?:ou)?rs?)?\b|\/\s?(?:8|9|10|11|12)(?:\s?h(?:ou)?rs?)?(?![\d\/]))|(?<ph>p\/?h\b)|(?<adverb>daily|hourly)\b|(?<phrase>day rate|(?:for )?(?:the |t')day\b(?! (?:before|after|of|we|you|i)\b)|flat|all[- ](?:in(?:clusive)?|up)|pauschal|forfait|(?:voor|für|pour|por|per) (?:de (?:hele )?(?:klus|opdracht)|den (?:ganzen )?(?:job|auftrag|einsatz)|die veranstaltung|la mission|la prestation|el trabajo|el evento|il lavoro)|all told|total|in total|(?:as )?a? ?lump sum|fixed|in all\b|the lot\b|insgesamt|in tutto|todo incluido|tutto compreso|alles inbegrepen|alles in allem|(?:für|voor|pour|por) (?:den abend|de avond|la soirée|la noche)|,? everything included|inclusive\b|au total|en tout|für alles|(?:pour|por) tout|en total|in totaal|(?:(?:pour|für|por|per|voor) )?(?:la journée|den tag|el día|la jornada|la giornata|de dag)|tages(?:satz|gage|pauschale|honorar)|dagtarief|for (?:the|this) (?:whole |entire |complete )?(?:job|project|gig|event|lot|thing|shoot|weekend|evening|night|morning|afternoon|edit|set|pair|series|run|season|package|two days|three days|four days|five days|both days|full \w+)(?![ -]days?\b)|for (?:both|all \w+|the whole|(?:two|three|four|five|[2-5])(?!\s?h(?:ou)?rs?\b|\s?h\b)) ?(?:days|thing|job|weekend|lot)?|for everything|for it all|altogether))`;
const WITH_TAX = String.raw`(?:\.-|\/-|\s?(?:\+|plus|inc\.?|incl\.?|ex\.?|excl\.?|including|excluding)\s?(?:gst|vat|hst|tax|super|ust|ht|mwst)|\s(?:ht|ttc|netto|net|gross|brutto))?`;
const AMOUNT = new RegExp(
  String.raw`(?<![\p{L}\d.,:/])(?<pre>(?:${MARK})(?!\p{L}))?\s?(?<num>${NUMBER})\s?(?<k>k\b|grand\b|lakhs?\b)?(?:\s?(?:-|to|or|and)\s?(?:${MARK})?\s?(?<num2>${NUMBER})(?![.,]\d)\s?(?<k2>k\b)?(?=\s?(?:${MARK}|${WORD}|a |per |an |\/|all|flat|total|for |$|[.,;)\n]))|\s?(?:-|to|or)\s?(?:${MARK})\s?(?<num4>${NUMBER})(?![.,]\d)|(?<=\d)[-–](?<num3>\d{2,6}))?(?:\s?(?<post>(?:${MARK}|US)(?!\p{L})|(?:${WORD})\b))?(?:,- ?(?<late>€|EUR|Euro)?)?${WITH_TAX}(?:\s?(?:,\s?)?(?:ish\s)?-?\s?(?:\()?(?<per>${PER}))?`,
  'giu',
);

/** A number as written, in any country's separators. Undefined where "1.250" could be either. */
function numberOf(written: string): number | undefined {
  const text = written.replace(/[' ]/g, '');
  if (/^\d{1,2}(?:,\d{2})+,\d{3}$/.test(text)) return Number(text.replaceAll(',', ''));
  const groups = /^(\d{1,3})((?:[.,]\d{3})+)([.,]\d{1,2})?$/.exec(text);
  if (groups) {
    const whole = `${groups[1]}${(groups[2] ?? '').replace(/[.,]/g, '')}`;
    return Number(`${whole}${(groups[3] ?? '').replace(',', '.')}`);
  }
  const plain = Number(text.replace(',', '.'));
  return Number.isFinite(plain) ? plain : undefined;
}

/** Words for a day and an hour in the languages that are read. */
const DAY = /^(?:day|d|\p{L}*tag|jour|journée|jornada|giornata|día|dia|giorno|dag)$/iu;
const DAY_PHRASE =
  /^(?:day rate|(?:for )?(?:the |t')day|voor de dag|tages(?:satz|gage|pauschale|honorar)|dagtarief|.*\b(?:la journée|den tag|el día|la jornada|la giornata|de dag))$/i;
const HOUR = /^(?:hour|hr|h|stunde|std|heure|hora|ora|uur|u)$/i;
const units = [
  ['day', DAY],
  ['hour', HOUR],
  ['job', /^job$/i],
  ['night', /^(?:nite|date|night|evening|shift|service|(?:mon|tues|wednes|thurs|fri|satur|sun)day|soirée|abend|avond|serata|noche)$/iu],
  ['event', /^(?:event|gig|shoot|show|session)$/i],
] as const;

function perOf(groups: Record<string, string | undefined>): Amount['per'] | undefined {
  const unit = groups['unit'] ?? groups['slash'];
  if (unit !== undefined) return units.find(([, pattern]) => pattern.test(unit))?.[0] ?? 'other';
  if (groups['pd'] !== undefined) return 'day';
  if (groups['ph'] !== undefined || groups['hourly'] !== undefined) return 'hour';
  if (groups['adverb'] !== undefined) return groups['adverb'].toLowerCase() === 'daily' ? 'day' : 'hour';
  if (groups['phrase'] === undefined) return undefined;
  return DAY_PHRASE.test(groups['phrase']) ? 'day' : 'job';
}

/** "$700 US" and "$850 CAD" say which dollars; "pay $700 us" does not. */
function markOf({ pre, post, late }: Record<string, string | undefined>): string | undefined {
  const after = post === 'us' || post === 'Us' ? undefined : post;
  return folded(pre === '$' ? (after ?? pre) : (pre ?? after ?? late));
}

/** The currency sign or word of an amount, folded to one writing. */
const folded = (mark: string | undefined): string | undefined => mark?.toUpperCase().replace(/\.$/, '');

const TENS_WORD = String.raw`(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:-(?:one|two|three|four|five|six|seven|eight|nine))?`;
/** "seventy-five" */
const tens = (word: string): number =>
  word
    .toLowerCase()
    .split('-')
    .reduce((sum, one) => sum + (numberWord(one) ?? 0), 0);
const SPOKEN = new RegExp(
  String.raw`\b(?:(?<teens>twenty|thirty|forty)[\s-](?=(?:one|two|three|four|five|six|seven|eight|nine) hundred\b))?(?<count>an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty)[\s-](?:(?<size>hundred|thousand|grand)|(?=${TENS_WORD}\b))(?:\s(?:and\s)?(?<more>one|two|three|four|five|six|seven|eight|nine)\shundred)?(?:\s?(?:and\s)?(?<tens>ten|${TENS_WORD})\b)?(?:\s?(?<post>${WORD})\b)?(?:\s?(?<per>${PER}))?`,
  'giu',
);
const sizes: Record<string, number> = { hundred: 100, thousand: 1000, grand: 1000 };

const PAID_FOR = /^\sfor (?:it|you|this|that|the (?:film|video|filming))\b/i;
const TENS = new RegExp(String.raw`\b(?<tens>${TENS_WORD})\s(?<post>${WORD})\b(?:\s?(?<per>${PER}))?`, 'giu');

/** "nine hundred a day", "a grand"; "four fifty" only where a unit or a currency says that it is money. */
function spokenIn(text: string): Amount[] {
  return [...text.matchAll(SPOKEN)].flatMap((match): Amount[] => {
    const groups = match.groups ?? {};
    const per = perOf(groups);
    const mark = folded(groups['post']);
    // "four fifty" alone is an hour.
    if (
      per === undefined &&
      mark === undefined &&
      groups['size'] === undefined &&
      !PAID_FOR.test(text.slice(match.index + match[0].length, match.index + match[0].length + 20))
    )
      return [];
    const amount =
      ((numberWord((groups['count'] ?? '').toLowerCase()) ?? 0) + (groups['teens'] === undefined ? 0 : tens(groups['teens']))) *
        (sizes[(groups['size'] ?? 'hundred').toLowerCase()] ?? 0) +
      (groups['more'] === undefined ? 0 : (numberWord(groups['more'].toLowerCase()) ?? 0) * 100) +
      (groups['tens'] === undefined ? 0 : tens(groups['tens']));
    return [
      { start: match.index, end: match.index + match[0].trimEnd().length, amount, ...(mark ? { mark } : {}), ...(per ? { per } : {}) },
    ];
  });
}

const WEEKDAY = /day$/i;
const FROM = /\bfrom (?:about |around )?$/i;
const MOVED = /\b(?:bump|rais|went|gone|go(?:es)? up|mov|increas|lift|up(?:ped)?|put|push|cut|dropp?|reduc|chang)\w*\b/i;

/** Every number that could be an amount: with a currency, a "k", or a "per" beside it, or standing alone with at least three digits. */
export function amountsIn(text: string): Amount[] {
  const found: Amount[] = [];
  for (const match of text.matchAll(AMOUNT)) {
    const groups = match.groups ?? {};
    const first = numberOf(groups['num'] ?? '');
    if (first === undefined) continue;
    const other = groups['num2'] ?? groups['num3'] ?? groups['num4'];
    const second = other === undefined ? undefined : numberOf(other);
    const thousand = groups['k'] !== undefined || (groups['k2'] !== undefined && first < 100);
    const times = /^l/i.test(groups['k'] ?? '') ? 100_000 : 1000;
    const amount = thousand ? Math.round(first * times) : first;
    const upTo =
      second === undefined ? undefined : groups['k2'] !== undefined || (thousand && second < 100) ? Math.round(second * 1000) : second;
    const mark = markOf(groups);
    const per = perOf(groups);
    // "14 May 2028, a Sunday"
    if (mark === undefined && per === 'night' && WEEKDAY.test(groups['unit'] ?? '')) continue;
    // "0600 daily" is an hour.
    if (mark === undefined && groups['num']?.startsWith('0')) continue;
    if (mark === undefined && !thousand && amount < (per === undefined ? 100 : per === 'hour' ? 15 : 50)) continue;
    const lead = /^\s/.exec(match[0])?.[0].length ?? 0;
    // "cut from $1,500 to $1,100", "bumped from 700 to 800": the second holds.
    const moved =
      upTo !== undefined &&
      FROM.test(text.slice(Math.max(0, match.index - 40), match.index + lead)) &&
      (upTo < amount || MOVED.test(text.slice(Math.max(0, match.index - 40), match.index)));
    found.push({
      start: match.index + lead,
      end: match.index + match[0].trimEnd().length,
      amount: moved ? upTo : amount,
      ...(upTo === undefined || moved ? {} : { upTo }),
      ...(mark === undefined ? {} : { mark }),
      ...(per === undefined ? {} : { per }),
    });
  }
  const spoken = spokenIn(text);
  const small = [...text.matchAll(TENS)].flatMap(({ index, 0: { length }, groups }): Amount[] => {
    const per = perOf(groups ?? {});
    return spoken.some(({ start, end }) => index >= start && index < end)
      ? []
      : [
          {
            start: index,
            end: index + length,
            amount: tens(groups?.['tens'] ?? ''),
            mark: folded(groups?.['post']) ?? '',
            ...(per ? { per } : {}),
          },
        ];
  });
  return [...found, ...spoken, ...small].toSorted((a, b) => a.start - b.start);
}
