/**
 * A body that the first sentence speaks of and that is "we" right after: "The Rossaig Fiddlers have members on eleven islands, and we ...",
 * "Kowhai Lane School turns 75 this year and we're marking it".
 */
import { OCCASION } from '../occasions.ts';
import { WHOLLY_PART } from './bodies.ts';
import { BEGINS, NO_ORG, TWO } from './organisation.ts';
import { isOwnBody } from './own-body.ts';
import { CAPITALISED, mayBeOrganisation, ORG_WORDS, TITLE_WORDS, type PersonFact } from './words.ts';

const ARTICLE = String.raw`(?:(?:[Tt]he|[Dd]ie|[Dd]er|[Dd]as|[Ll]a|[Ll]e|[Ee]l|[Hh]et|[Dd]e) |[Ll]')`;
const KIND = String.raw`(?:association|asociación|associazione|associação|chorale|compagnie|école|société|troupe|vereniging|stichting)`;
/** What a body does or is, whoever writes for it. */
const DOES = String.raw`(?:turns?|ends|trains?|runs|opens|races?|plays?|sings?|has|have|had|does|do|(?:is|are|was|were|will)(?! (?:happening|on|in|at|taking|held|being|be|take|this|next|coming|back|from|\d))|would|wants?|needs?|seeks?|holds?|hosts?|meets?|filmed|celebrates?|marks?|organi[sz]es?|organise|tiendra|tient|fête|célèbre|cherche|propose|prépare|veranstaltet|feiert|sucht|hält|lädt|hat|spielt|singt|plant|organiza|celebra|busca|cumple|organizza|festeggia|cerca|zoekt|viert|houdt|bestaat)`;
const SUBJECT = new RegExp(
  String.raw`(?:^|\n|[.!?,:]\s)\s{0,3}(?:${ARTICLE}(?:${KIND} )?)?(?<body>${CAPITALISED.replaceAll(String.raw`\s`, ' ')})(?: \((?:that's |that is |yes, )?(?:we|us|I'm|I am|we're)[^()\n]{0,70}\))?(?= ${DOES}(?!\p{L}))`,
  'gu',
);
/** Somebody speaks for it. */
const WE =
  /(?<!\p{L})(?:we|our|us|we'd|we're|we've|I'm|my|I|nous|notre|nos|on|wir|uns|unser\p{L}*|nosotros|nuestr[ao]s?|noi|nostr[aoie]|wij|ons|onze)(?!\p{L})/iu;
const NEXT = 220;
/** The first sentence begins no later. */
const REACH = 240;
/** What a town has is no body: it is where the job is. */
const HOUSE = /(?<!\p{L})(?:hotel|hall|park|inn|arms|arena|stadium|pavilion|airport|square|street|road|hills?|valley|river|bay)$/iu;

export function firstSubject(body: string, isTown: (name: string) => boolean): PersonFact | undefined {
  const begin = body.length - body.trimStart().length;
  for (const found of body.slice(0, begin + REACH).matchAll(SUBJECT)) {
    const written = found.groups?.['body'] ?? '';
    const lead = BEGINS.exec(written)?.[0].length ?? 0;
    const value = written.slice(lead);
    const start = found.index + found[0].indexOf(written) + lead;
    const end = start + value.length;
    const last = value.split(' ').at(-1) ?? '';
    const known = ORG_WORDS.test(value);
    // "Naomi Marsh Hale is my boss": without an article only those who are many are a body.
    const led = lead > 0 || new RegExp(`${ARTICLE}$`, 'u').test(body.slice(Math.max(0, start - 4), start));
    const many = /[^s']s$/.test(last);
    if (value.split(' ').length < (known || (led && many) ? 2 : 3) || !(known || ((led || many) && mayBeOrganisation(value)))) continue;
    if (value.endsWith("'s") || isTown(value) || NO_ORG.test(value) || TWO.test(value) || WHOLLY_PART.test(value) || HOUSE.test(value))
      continue;
    if (!known && (TITLE_WORDS.test(value) || OCCASION.test(value))) continue;
    if (known && OCCASION.test(last) && !/(?:choir|club|league|orchestra)$/i.test(last)) continue;
    // "The Burns Supper Committee met": of what house, is told elsewhere.
    if (/^committee$/i.test(last)) continue;
    if (!isOwnBody(body, start, end) || !WE.test(body.slice(end, end + NEXT))) continue;
    return { value, start, end };
  }
  return undefined;
}
