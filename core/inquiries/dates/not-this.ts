/**
 * The one after the coming one: "not this Saturday but the one after", "isn't this weekend but the next", "nicht diesen Samstag, sondern nächsten".
 */
import type { Atom, Tokens } from './pieces.ts';
import { weekdayAt } from './pieces.ts';
import { weekendWordAt } from './weeks.ts';

const NOT = /^(?:not|isn't|isnt|wasn't|ain't|never|nicht|pas|no|non|niet)$/;
const ON = /^(?:on|for|until|till|am|ce|c'est|per|op)$/;
const THIS = /^(?:this|diesen|dieses|diesem|kommenden|ce|cette|este|esta|questo|questa|deze|dit|komende)$/;
const COMING = /^(?:coming|upcoming)$/;
const BUT = /^(?:but|rather|sondern|mais|sino|ma|maar)$/;
const SMALL = /^(?:,|-|on|for|the|den|am|das|erst|le|la|el|il|de|het|celui|celle|quello|quella|die|dat)$/;
/** The next one, as it is said behind "but". */
const AFTER =
  /^(?:(?:one|week|weekend|weekday|day) (?:after|following)|next one|next|following one|following|after|nächsten|nächstes|übernächsten|darauffolgenden|danach|darauf|suivante?|prochaine?|d'après|siguiente|próxim[oa]|prossim[oa]|seguente|dopo|volgende|daarna|daarop|erna)$/;
/** So many small words stand before the next one. */
const MOST_SMALL = 3;

/** "not this Saturday but the one after", also of a weekend; without a name where it is told once, behind: "not this but next Saturday". */
export function notThisAt(tokens: Tokens, index: number): Atom | undefined {
  const word = (at: number): string => tokens[at]?.lower ?? '';
  if (!NOT.test(word(index))) return undefined;
  let at = index + 1;
  if (ON.test(word(at))) at++;
  if (!THIS.test(word(at))) return undefined;
  at++;
  if (COMING.test(word(at))) at++;
  const named = dayOrWeekend(tokens, at);
  at = named?.next ?? at;
  if (word(at) === ',') at++;
  if (!BUT.test(word(at))) return undefined;
  at++;
  for (let small = 0; small < MOST_SMALL && SMALL.test(word(at)); small++) at++;
  const two = AFTER.test(`${word(at)} ${word(at + 1)}`);
  if (!two && !AFTER.test(word(at))) return undefined;
  at += two ? 2 : 1;
  // "but next Saturday", "the one after that"
  const again = dayOrWeekend(tokens, at);
  if (again && named && again.weekday !== named.weekday) return undefined;
  const of = named ?? again;
  if (!of) return undefined;
  const next = again?.next ?? (/^(?:that|this|it)$/.test(word(at)) ? at + 1 : at);
  return of.weekday === undefined
    ? { first: index, next, relative: { kind: 'weekend', which: 'this', weeks: 1 } }
    : { first: index, next, weekday: of.weekday, relative: { kind: 'weekday', weekday: of.weekday, which: 'coming', weeks: 1 } };
}

/** A weekday, or a weekend, which has none. */
function dayOrWeekend(tokens: Tokens, index: number): { weekday: number | undefined; next: number } | undefined {
  const weekday = weekdayAt(tokens, index);
  if (weekday) return { weekday: weekday.weekday, next: weekday.next };
  const next = weekendWordAt(tokens, index);
  return next === undefined ? undefined : { weekday: undefined, next };
}
