/**
 * Two amounts of which one will hold: "$500, or $800 if the sponsor helps", "$500 without the edit, $800 with it".
 */
import type { Amount } from '../money/units.ts';

/** So far apart two amounts are told in one breath. */
const REACH = 120;
const OR =
  /^[^?!\n]{0,100}?\b(?:or|otherwise|else|maybe|perhaps|possibly|rather|prefer|depending|if|versus|vs|at a (?:push|stretch|pinch)|oder|ou|sonst|sinon|evtl|vielleicht|eventuell|peut-être|quizás|o bien|forse|misschien|anders)\b[^?!\n\d]{0,60}$/i;
/** A condition behind the second: "$800 if you edit it". */
const IF = /^[^.?!;\d]{0,20}?\b(?:if|when|with(?:out)?|depending|wenn|falls|mit|ohne|si|avec|sans|con|sin|als|met|zonder)\b/i;
/** "$500 for one camera, $900 for two": the same kind of word leads what each is for. */
const WHAT_FOR =
  /^ (?<lead>for(?= (?:one|a single|just|only|1)\b)|with(?:out)?|if|as)\b [^,;.\n\d]{2,40}(?:[,;]| and| but)\s(?:it's |then |about |maybe )?$/i;

/** "$1,500 or $75 an hour": nothing but "or" stands between them. */
export function isOr(text: string, first: Amount, second: Amount): boolean {
  const [one, two] = first.start < second.start ? [first, second] : [second, first];
  const either = /\beither\b[^.?!;]*$/i.test(text.slice(Math.max(0, one.start - REACH), one.start));
  const between = text.slice(one.end, Math.min(two.start, one.end + REACH));
  return (
    (either ? /^[^.?!;]*\sor\s(?:maybe )?$/i : /^,?\s?(?:or|oder|ou|o|of)\s(?:maybe )?$/i).test(between) &&
    (two.mark !== undefined || IF.test(text.slice(two.end, two.end + REACH)))
  );
}

/** Whether the words between and around two amounts say that one of them will hold. */
export function isEither(text: string, first: Amount, second: Amount): boolean {
  const [one, two] = first.start < second.start ? [first, second] : [second, first];
  if (one === two || one.amount === two.amount || two.start - one.end > REACH) return false;
  const between = text.slice(one.end, two.start);
  const behind = text.slice(two.end, two.end + REACH);
  if ([...between.matchAll(/[.?!;]\s/g)].length > 1) return false;
  if (OR.test(between)) return true;
  const lead = WHAT_FOR.exec(between)?.groups?.['lead']?.toLowerCase().slice(0, 4);
  return (lead !== undefined && behind.toLowerCase().startsWith(` ${lead}`)) || (/^[,;]? (?:and |but )?$/.test(between) && IF.test(behind));
}
