/**
 * For whom somebody says they are where they say their name: "Camille from Northlight again", "zara from wattle & wren weddings.", "Big Dave, Fenland
 * Powerlifting."
 */
import { OCCASION } from '../occasions.ts';
import { bodyIn, isSoleBody, KIN, OFFICE, WHOLLY_PART } from './bodies.ts';
import { NO_ORG, TWO } from './organisation.ts';
import { mayBeOrganisation, namesArea, ORG_WORDS, TITLE_WORDS, type PersonFact } from './words.ts';

/** How far in somebody still says who they are. */
const REACH = 140;
const HERE = String.raw`(?:,? (?:here|again|her|hier|speaking|calling)(?!\p{L}))?`;
const LED = String.raw`(?:(?:,? (?:over |out )?(?:(?<at>from|at|with|w\/|van|vom|de chez|chez|fra|bij|tm for|on)) (?:the )?| ?@ ?))`;
const WORD = String.raw`[\p{Lu}][\p{L}'’&-]*`;
const KIND = String.raw`(?: (?:(?:tennis|football|rugby|cricket|rowing|running|bowls|golf|fish|sailing) )?(?:club|choir|school|society|band|mart|market|library|theatre))?`;
const BODY = String.raw`(?<body>${WORD}(?: (?:(?:of|the|and|de|du|des|for|von|van) ){0,2}(?:${WORD}|[&+]))*${KIND}(?: e\. ?V\.)?)`;
const SMALL = String.raw`(?<small>\p{Ll}[\p{Ll}'-]*(?: (?:&|\+|[\p{Ll}'-]+)){1,3})`;
const ENDS = String.raw`(?=[.,!;:]|\s?\(|\s?-(?:\s|$)|\s?\p{Extended_Pictographic}|\s?:\)|\s(?:here|again|hier|her|speaking|calling|desk)(?!\p{L})|\n|$)`;
const FROM = [
  new RegExp(String.raw`^${HERE}${LED}${BODY}${ENDS}`, 'u'),
  new RegExp(String.raw`^${HERE}${LED}${SMALL}${ENDS}`, 'u'),
  // "Flurina here, Bergfilm-Kollektiv.", "Big Dave, Fenland Powerlifting."
  new RegExp(String.raw`^(?:,? (?:here|again|hier))?(?:,| -|:)? ${BODY}(?=\.(?:\s|$)|\n)`, 'u'),
];
/** "the Ashdown Arms", "Ashdown Road": where somebody is, and no body. */
const WHERE = /\s(?:road|street|lane|avenue|square|park|hall|hotel|arms|inn|pub|terrace|close|hill|farm|north|south|east|west)$/i;

/** "referral from Jonah" */
const NOBODY = /^(?:refer\p{L}*|recommend\p{L}*|greetings?|messages?|notes?|enquir\p{L}*|inquir\p{L}*|requests?|calls?|news|regards)$/iu;

/** "Caller: Ines Okafor, Larkmoor County Archive, 715-...", "Requester: Office of Convocation, Hills University": a form's or a note's line. */
const LABELLED =
  /^[^\S\n]*(?:(?:\d{1,2}[.)]|[-•*]) ?)?(?:caller|request[eo]r|requested by|who(?:'s| is) asking|officer|booker|enquirer|contact)[^\S\n]?:[^\S\n]*(?<first>[^\n,]{2,50}),[^\S\n]*(?<rest>[^\n]{3,90})$/gimu;

/** The body that a label's line names behind who it is or behind a part of the house. */
export function labelledFor(body: string, isTown: (name: string) => boolean): PersonFact | undefined {
  for (const found of body.matchAll(LABELLED)) {
    const rest = found.groups?.['rest'] ?? '';
    const fact = bodyIn(rest, found.index + found[0].length - rest.length, isTown);
    if (fact && fact.value.includes(' ') && !NO_ORG.test(fact.value) && !WHOLLY_PART.test(fact.value)) return fact;
  }
  return undefined;
}

/** The body behind the name that stands in the first words. */
export function saysFor(body: string, name: PersonFact | undefined, isTown: (name: string) => boolean): PersonFact | undefined {
  const begin = body.length - body.trimStart().length;
  if (!name || name.start > begin + REACH || NOBODY.test(name.value)) return undefined;
  const after = body.slice(name.end, name.end + REACH);
  for (const pattern of FROM) {
    const found = pattern.exec(after);
    const small = found?.groups?.['small'];
    const value = small ?? found?.groups?.['body'] ?? '';
    if (!found || value === '' || isTown(value) || namesArea(value) || NO_ORG.test(value) || TWO.test(value) || KIN.test(value)) continue;
    if (WHOLLY_PART.test(value) || OFFICE.test(value) || WHERE.test(value)) continue;
    const known = ORG_WORDS.test(value);
    // "Cody from the curling league" is of one that is not named.
    const generic = found[0].slice(0, found[0].lastIndexOf(value)).endsWith(' the ') || /^(?:the|my|your|our|an?) /.test(value);
    if (small !== undefined && (generic || !(known || value.includes('&')))) continue;
    if (!known && (TITLE_WORDS.test(value) || OCCASION.test(value.split(' ').at(-1) ?? ''))) continue;
    const led = found.groups?.['at'] !== undefined;
    // A single word behind a comma may be anything.
    if (!value.includes(' ') && !(led || isSoleBody(value))) continue;
    if (small === undefined && value.includes(' ') && !known && !mayBeOrganisation(value)) continue;
    const start = name.end + found[0].lastIndexOf(value);
    return { value, start, end: start + value.length };
  }
  return undefined;
}
