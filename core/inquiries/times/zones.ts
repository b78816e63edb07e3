/**
 * The zone that is named after an hour: "ET", "Toronto time", "heure de Montréal", "UTC-8".
 */
import type { Token } from '../parts/tokens.ts';

type Tokens = readonly Token[];

/** Zones as people write them after a time; a summer and a winter name stand for the same clock on the wall. IANA time zone database. */
const zoneWords = new Map<string, string>([
  ['et', 'America/New_York'],
  ['est', 'America/New_York'],
  ['edt', 'America/New_York'],
  ['eastern', 'America/New_York'],
  ['ct', 'America/Chicago'],
  ['cdt', 'America/Chicago'],
  ['central', 'America/Chicago'],
  ['cst', 'America/Chicago'],
  ['mt', 'America/Denver'],
  ['mst', 'America/Denver'],
  ['mdt', 'America/Denver'],
  ['mountain', 'America/Denver'],
  ['pt', 'America/Los_Angeles'],
  ['pst', 'America/Los_Angeles'],
  ['pdt', 'America/Los_Angeles'],
  ['pacific', 'America/Los_Angeles'],
  ['gmt', 'UTC'],
  ['utc', 'UTC'],
  ['bst', 'Europe/London'],
  ['cet', 'Europe/Paris'],
  ['cest', 'Europe/Paris'],
  ['eet', 'Europe/Athens'],
  ['akst', 'America/Anchorage'],
  ['hst', 'Pacific/Honolulu'],
  ['ast', 'America/Halifax'],
  ['nst', 'America/St_Johns'],
  ['aest', 'Australia/Brisbane'],
  ['aedt', 'Australia/Sydney'],
  ['awst', 'Australia/Perth'],
  ['nzst', 'Pacific/Auckland'],
  ['nzdt', 'Pacific/Auckland'],
  ['jst', 'Asia/Tokyo'],
  ['sgt', 'Asia/Singapore'],
  ['hkt', 'Asia/Hong_Kong'],
  ['sast', 'Africa/Johannesburg'],
  ['pht', 'Asia/Manila'],
  ['wib', 'Asia/Jakarta'],
  ['brt', 'America/Sao_Paulo'],
]);

/** Zones of countries and regions before "time". IANA time zone database. */
const areaZones = new Map<string, string>([
  ['uk', 'Europe/London'],
  ['british', 'Europe/London'],
  ['irish', 'Europe/Dublin'],
  ['german', 'Europe/Berlin'],
  ['french', 'Europe/Paris'],
  ['spanish', 'Europe/Madrid'],
  ['spain', 'Europe/Madrid'],
  ['central european', 'Europe/Paris'],
  ['newfoundland', 'America/St_Johns'],
  ['atlantic', 'America/Halifax'],
  ['alaska', 'America/Anchorage'],
  ['hawaii', 'Pacific/Honolulu'],
  ['arizona', 'America/Phoenix'],
  ['indian', 'Asia/Kolkata'],
  ['india', 'Asia/Kolkata'],
  ['japan', 'Asia/Tokyo'],
  ['gulf', 'Asia/Dubai'],
  ['south african', 'Africa/Johannesburg'],
  ['south africa', 'Africa/Johannesburg'],
  ['nz', 'Pacific/Auckland'],
  ...(
    [
      ['Asia/Kathmandu', 'nepal nepali'],
      ['America/Jamaica', 'jamaica jamaican'],
      ['Europe/Tallinn', 'estonia estonian'],
      ['Europe/Helsinki', 'finland finnish'],
      ['Europe/Lisbon', 'portugal portuguese'],
      ['Europe/Dublin', 'ireland'],
      ['Europe/Berlin', 'germany'],
      ['Europe/Paris', 'france'],
      ['Europe/Rome', 'italy italian'],
      ['Europe/Amsterdam', 'dutch netherlands'],
      ['Europe/Brussels', 'belgian belgium'],
      ['Europe/Zurich', 'swiss switzerland'],
      ['Europe/Vienna', 'austria austrian'],
      ['Europe/Warsaw', 'poland polish'],
      ['Europe/Oslo', 'norway norwegian'],
      ['Europe/Stockholm', 'sweden swedish'],
      ['Europe/Copenhagen', 'denmark danish'],
      ['Europe/Athens', 'greece greek'],
      ['Europe/Istanbul', 'turkey turkish'],
      ['Atlantic/Reykjavik', 'iceland icelandic'],
      ['Africa/Nairobi', 'kenya kenyan'],
      ['Africa/Lagos', 'nigeria nigerian'],
      ['Asia/Karachi', 'pakistan'],
      ['Asia/Bangkok', 'thai thailand'],
      ['Asia/Manila', 'philippine philippines'],
      ['Asia/Tokyo', 'japanese'],
      ['Asia/Seoul', 'korea korean'],
      ['Asia/Shanghai', 'china chinese'],
      ['Asia/Singapore', 'sg'],
      ['Australia/Brisbane', 'queensland'],
    ] as const
  ).flatMap(([zone, names]) => names.split(' ').map((name) => [name, zone] as const)),
]);

/** The zone of a town's clocks; undefined for a name that is no town. */
export type ZoneOf = (town: string) => string | undefined;
/** A time in a zone that cannot be told: "my time". */
export const UNKNOWN_ZONE = 'unknown';
const LONGEST_TOWN = 3;

/** "local time", "call time" and the like name no zone. */
const NO_ZONE =
  /^(?:local|call|start|end|show|wrap|set|load|full|first|part|this|same|the|your|that|lunch|dinner|break|half|each|home|doors?|arrival|finish|standard|what|which)$/i;

/** "Toronto time", "London time", "my time" after a time; a name that is in no list tells that it is another zone. */
function zoneNamed(tokens: Tokens, index: number, zoneOf: ZoneOf): { zone: string; next: number } | undefined {
  for (let length = 1; length <= LONGEST_TOWN; length++) {
    const after = tokens[index + length];
    if (after?.lower !== 'time' || after.breaks > 0) continue;
    const words = tokens.slice(index, index + length);
    const name = words.map((token) => token.text).join(' ');
    const area = areaZones.get(name.toLowerCase());
    if (area !== undefined) return { zone: area, next: index + length + 1 };
    if (/^(?:my|our)$/i.test(name)) {
      // "our time (SAST)", "our time (Berlin, where our office is)"
      const inside = tokens[index + length + 1]?.text === '(' ? tokens[index + length + 2] : undefined;
      const town = /^\p{Lu}/u.test(inside?.text ?? '') ? (inside?.text ?? '') : undefined;
      const said =
        inside && (zoneWords.get(inside.lower) ?? areaZones.get(inside.lower) ?? (town === undefined ? undefined : zoneOf(town)));
      return said === undefined ? { zone: UNKNOWN_ZONE, next: index + length + 1 } : { zone: said, next: index + length + 3 };
    }
    const zone = words.every((token) => /^\p{Lu}/u.test(token.text)) ? zoneOf(name) : undefined;
    if (zone !== undefined) return { zone, next: index + length + 1 };
    // "1pm\nWhat time does it end": a name of which nothing is known stands in the same line.
    if (
      length === 1 &&
      tokens[index]?.breaks === 0 &&
      /^\p{Lu}\p{Ll}{3,}$/u.test(name) &&
      !NO_ZONE.test(name) &&
      !zoneWords.has(name.toLowerCase())
    )
      return { zone: UNKNOWN_ZONE, next: index + 2 };
  }
  return undefined;
}

/** "heure de Montréal", "hora de Madrid", "ora di Roma" */
function zoneElsewhere(tokens: Tokens, index: number, zoneOf: ZoneOf): { zone: string; next: number } | undefined {
  const at = tokens[index]?.text === ',' ? index + 1 : index;
  // "12h00 of Lisbon"
  if (/^(?:of|de|di)$/.test(tokens[index]?.lower ?? '') && /^\p{Lu}/u.test(tokens[index + 1]?.text ?? '')) {
    const zone = zoneOf(tokens[index + 1]?.text ?? '');
    const behind = tokens[index + 2];
    if (zone !== undefined && (behind === undefined || behind.breaks > 0 || /^[.,;?!)]$/.test(behind.text)))
      return { zone, next: index + 2 };
  }
  if (!/^(?:heure|hora|ora|hours?)$/.test(tokens[at]?.lower ?? '') || !/^(?:de|di|d'|of)$/.test(tokens[at + 1]?.lower ?? ''))
    return undefined;
  const name = tokens[at + 2]?.text ?? '';
  return /^\p{Lu}/u.test(name) ? { zone: areaZones.get(name.toLowerCase()) ?? zoneOf(name) ?? UNKNOWN_ZONE, next: at + 3 } : undefined;
}

/** "UTC-8", "GMT+5:30": an hour's distance from universal time. */
function offsetAt(tokens: Tokens, index: number): { zone: string; next: number } | undefined {
  const sign = tokens[index + 1];
  const hours = tokens[index + 2];
  if (!/^(?:utc|gmt)$/.test(tokens[index]?.lower ?? '') || !/^[+\u2212-]$/.test(sign?.text ?? '') || hours?.num === undefined)
    return undefined;
  if (!sign?.tight || !hours.tight || hours.num > FURTHEST) return undefined;
  const [colon, minutes] = [tokens[index + 3], tokens[index + 4]];
  const half = colon?.text === ':' && colon.tight && minutes?.tight && /^(?:00|30|45)$/.test(minutes.text) ? minutes.text : undefined;
  return {
    zone: `${sign.text === '+' ? '+' : '-'}${String(hours.num).padStart(2, '0')}:${half ?? '00'}`,
    next: index + (half === undefined ? 3 : 5),
  };
}
const FURTHEST = 14;

/** "ET", "Eastern time", "(CET)" after a time. */
export function zoneAt(tokens: Tokens, index: number, zoneOf: ZoneOf): { zone: string; next: number } | undefined {
  const named = zoneNamed(tokens, index, zoneOf) ?? zoneElsewhere(tokens, index, zoneOf) ?? offsetAt(tokens, index);
  if (named) return named;
  const open = tokens[index]?.text === '(' ? 1 : 0;
  const token = tokens[index + open];
  const zone = token && token.breaks === 0 ? zoneWords.get(token.lower) : undefined;
  if (!token || zone === undefined) return undefined;
  const spelled = /^(?:eastern|central|mountain|pacific)$/.test(token.lower);
  const time = tokens[index + open + 1]?.lower === 'time' || tokens[index + open + 1]?.lower === 'standard';
  const after = tokens[index + open + 1];
  const stops = after === undefined || after.breaks > 0 || /^[.,;)!?]$/.test(after.text);
  const ends = stops || /^(?:\p{Ll}+|\p{L}+day)$/u.test(after.text);
  if (
    spelled
      ? !time && !(/^\p{Lu}/u.test(token.text) ? ends : stops)
      : token.text !== token.text.toUpperCase() && !/^(?:gmt|utc|cet|cest|est|pst|aest)$/.test(token.lower)
  )
    return undefined;
  return { zone, next: index + open + (time ? 2 : 1) + (open && tokens[index + 2]?.text === ')' ? 1 : 0) };
}

/** "5pm on Thursday, London time": behind the day of the hour, in the same breath. */
export function zoneBehind(tokens: Tokens, index: number, zoneOf: ZoneOf): string | undefined {
  for (let at = index; at < index + FAR_BEHIND; at++) {
    const token = tokens[at];
    if (!token || token.breaks > 0 || /^[.;!?]$/.test(token.text)) return undefined;
    if (/^[,(]$/.test(token.text)) {
      const named = zoneNamed(tokens, at + 1, zoneOf);
      if (named) return named.zone;
    }
  }
  return undefined;
}
const FAR_BEHIND = 6;
