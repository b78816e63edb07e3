/**
 * Names of towns that nothing beside them tells: whether they stand for a town, a person or a part of a longer name.
 */
import { distanceKm, type Position } from '../../places/distance.ts';
import type { GazetteerPlace } from '../../places/gazetteer.ts';
import type { Token } from '../parts/tokens.ts';
import type { PlaceHit } from './hits.ts';
import type { Setting } from './setting.ts';

type Tokens = readonly Token[];

/** A number to ring follows: it was a person. */
export const PHONE_NEXT = /^[,\s]{1,3}(?:\+\d|\(?\d{3}[-. )]+\d{3}|0\d{3,4}\s?\d)/;
/** "Hi Casey", "Cheers, Arno": people who bear the name of a town. */
const ADDRESS =
  /(?:^|\b(?:hi|hello|hey|dear|morning|afternoon|evening|g'day|yo|oi|ora|cheers|thanks|thank you|ta|regards|best|wishes|love|from|this is|i'm|name is|ask for|mr|mrs|ms|dr|miss),?\s+)$/i;
export const addressed = (text: string, tokens: Tokens, index: number): boolean => {
  const start = tokens[index]?.start ?? 0;
  return ADDRESS.test(text.slice(Math.max(0, start - 14), start)) && (start > 0 || /^[,!.:-]/.test(tokens[index + 1]?.text ?? ''));
};

/** Words that make a name before them the name of an occasion: "Daylesford Spud Festival". */
const OCCASION_NAME =
  /^(?:\p{Lu}[\p{L}'&-]*\s){0,3}(?:abbey|castle|minster|cathedral|town hall|civic|racecourse|showgrounds?|arena|spa|pier|harbour|high school|university|state|hospital|rugby|cricket|football|golf|rotary|festival|show|fair|games|cup|carnival|regatta|museum|open|marathon|expo|rodeo|races|market|gala|ball|championships?)\b/iu;
const LEAST_LETTERS = 6;
const LEAST_PEOPLE = 10_000;

/** True where a name is no part of a longer one, and typed small is no everyday word. */
export function standsAlone(text: string, tokens: Tokens, next: number, setting: Setting, capital: boolean, best: GazetteerPlace): boolean {
  if (!capital)
    return (
      (setting.openAfter ? 1 : 2) * LEAST_PEOPLE <= (best.people ?? 0) && best.name.length >= LEAST_LETTERS && best.name !== 'Superior'
    );
  const after = tokens[next]?.start ?? text.length;
  return !setting.beforeCapital || OCCASION_NAME.test(text.slice(after, after + 60));
}

/** "Moira: there's £650", "Me: she is right": who says what. */
const SPEAKERS = /(?:^|\n)(?:me|kit|you|i):\s/i;
const LOOKED_THROUGH = 4000;
/** A city so large is meant from afar, too; a name so small is a house's own, "at the Grange Hotel". */
const CITY = 500_000;
const VILLAGE = 20_000;

/**
 * True where a name stands for somebody who speaks in a row of others; for a town far away, also where it stands as a name behind what somebody
 * does ("audio only, Sandy"), as a greeting at the very beginning ("Morena.") or in the name of a house.
 */
export function isSomebody(
  text: string,
  tokens: Tokens,
  index: number,
  next: number,
  setting: Setting,
  nearHome: boolean,
  best: GazetteerPlace,
): boolean {
  const after = tokens[next]?.text ?? '';
  const head = text.slice(0, LOOKED_THROUGH);
  if (SPEAKERS.test(head) && head.includes(`\n${tokens[index]?.text.replace(/['’]s$/, '')}:`)) return true;
  const people = best.people ?? 0;
  if (nearHome || setting.labelled) return false;
  if (setting.housed) return people < VILLAGE;
  const stray = (tokens[index - 1]?.text === ',' && after === ')') || (index === 0 && /^[.!,]$/.test(after));
  return stray && !setting.strongly && people < CITY;
}

/** A longer name of which this is the end. */
const NAMED_AFTER =
  /(?<!\p{L})(?:Cidade|Ciudad|Città|Ilha|Isla|Costa|Porto|Puerto|Playa|Praia|Serra|Sierra) (?:d[aeo]s?|del|della|de la) $/u;
export const isNamedAfter = (lead: string): boolean => NAMED_AFTER.test(lead);
/** As near as that a town is home. */
const AT_HOME_KM = 15;
export const isHome = (place: GazetteerPlace, home: Position | undefined): boolean =>
  home !== undefined && distanceKm(home, place) <= AT_HOME_KM;

/** Typed small, "in silly hats" is none, nor is "in the village": who writes without capitals, or ends there, may mean a town. */
export const isTypedSo = (name: string, { openAfter }: Setting, casual: boolean, after = ''): boolean =>
  !/^(?:the|la|le|los|las|el|die|der|das|het) \p{Ll}/u.test(name) &&
  (casual || openAfter || /^(?:on|for|from|at|with|and|or|this|next|is|are|we|it|i|btw|fyi|tho|though|then|now|again)$/.test(after));

/** How much larger a town is than a part of it that the list has, too. */
const LARGER = 10;
const liesIn = (part: GazetteerPlace | undefined, town: GazetteerPlace | undefined): boolean =>
  part !== undefined && town !== undefined && distanceKm(part, town) <= WITHIN_KM;
const WITHIN_KM = 30;
/** "Canary Wharf, London": a part and its town, each as likely by its words. */
export const isPartOf = (part: PlaceHit, town: PlaceHit, between: string): boolean =>
  /^,\s$/.test(between) &&
  part.score <= town.score &&
  liesIn(part.candidates[0], town.candidates[0]) &&
  (town.candidates[0]?.people ?? 0) > LARGER * (part.candidates[0]?.people ?? Infinity);
