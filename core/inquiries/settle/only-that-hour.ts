/**
 * The hour of the one part of the occasion that is wanted: "we only need the speeches, which start at 4", "just the auction from 4 to 5",
 * "only the parade needs filming; it leaves at 11", "the bit we want filmed is the prize-giving at 3". What is filmed begins then.
 */
import type { Where } from './scene.ts';

const WANT = String.raw`(?:need|want|like|require|would need|would want|would like|'d need|'d want|'d like|are after|'re after)`;
const FILM = String.raw`(?:film(?:ed|ing)?|record(?:ed|ing)?|cover(?:ed|ing|age)?|shot|captur(?:ed|ing)|on (?:film|camera|video))`;
/** What is meant, in a few words; a negation or a second thing is not. */
const NO_NAME = String.raw`(?:not|and|or|but|before|after|until|if|while|from|at|is|are|was|were|will|would|can|could|may|has|have|had|must|arrives?|comes?|opens?|closes?|gets?|goes|needs?|meets?|works?|speaks?|plays?|stays?|of us|of you|of them)`;
const PART = String.raw`(?:the|our|my|his|her|their|this) (?!(?:first|last|other|same|one|two|three|four|few)\b)[\p{L}'-]+(?: (?!${NO_NAME}\b)[\p{L}'-]+){0,3}?`;
const ONLY = new RegExp(
  [
    // "we only need (you for) the speeches", "we'd want just the speeches", "we need you for the speeches only"
    String.raw`\b(?:we|i)(?: would|'d)? (?:only|just|really only) ${WANT}(?: you)?(?: to film| to record| to cover| for| there for)? ${PART}`,
    String.raw`\b(?:we|i)(?: only| just)?(?: would|'d)? ${WANT}(?: you)?(?: to film| to record| to cover| for| there for)? (?:only|just) ${PART}`,
    String.raw`\b(?:we|i)(?: would|'d)? ${WANT} you(?: to film| to record| to cover| for| there for) ${PART} (?:only|alone)`,
    String.raw`(?:^|[.;:!?\n]\s*|,\s|\b(?:and|so|but)\s)(?:it's |it is |it would be )?(?:only|just) ${PART}(?: (?:needs|need|wants|is|are|has|have)(?: to be)? ${FILM}| is (?:needed|wanted))?`,
    String.raw`\b(?:the (?:only )?(?:bit|part|thing|moment)s?|what|all)(?: that| which)? (?:we|i)(?: would|'d)?(?: really| actually| most)? ${WANT}(?: to be)?(?: ${FILM})? (?:is|are|would be) (?:just |only )?${PART}`,
    // "could you film just the raffle", "you'd film the raffle only", "the raffle is the only thing we need filmed"
    String.raw`\b(?:film|record|cover|capture)(?:ing)? (?:only |just )${PART}`,
    String.raw`\b(?:you|u)(?:'d| would|'ll| will)? (?:only |just )?(?:film|record|cover|capture) ${PART}(?: only| alone)`,
    String.raw`\b${PART} is the only (?:thing|bit|part|moment)(?: that)? (?:we|i)(?: would|'d)? ${WANT}(?: to be)?(?: ${FILM})?`,
    String.raw`\b(?:only|just) ${PART}(?: that)? (?:we|i)(?: would|'d)? ${WANT}(?: to be)?(?: ${FILM})?`,
    String.raw`\bnothing (?:else )?(?:but|except|other than|apart from) ${PART}(?: (?:needs|need|is|are)(?: to be)? ${FILM})?`,
  ].join('|'),
  'giu',
);
/** Between it and its hour. */
const TO_HOUR = new RegExp(
  String.raw`^(?: ${FILM}| to be ${FILM})?(?:, (?:please|pls))?[,;.?(]?\s?\(?(?:(?:which|that|it|they|these|this)(?:'s|'ll| is| are| will| would)? ?)?(?:(?:be|starts?|starting|begins?|beginning|leaves?|sets? off|goes|takes place|kicks? off|runs?|is on|are on|going) )?(?:(?:at|from|around|about|between) ?){0,2}$`,
  'iu',
);
const NAMED = new RegExp(String.raw`^(?: (?!${NO_NAME}\b)[\p{L}'-]+){1,3}?(?=[\s,;.(])`, 'iu');
/** "the raffle at 4 is all we need" */
const ALL_WE_NEED = new RegExp(
  String.raw`^[,)]{0,2} (?:is|are|would be) (?:all|everything|the only (?:thing|bit|part|moment)s?)(?: that)? (?:we|i)(?: would|'d)?(?: really)? ${WANT}(?! to (?:know|hear))`,
  'i',
);
/** "just her solo (around 2.40) and the finale": what has an hour of its own, a price or a place is no other part. */
const AND_MORE =
  /^(?: ?[ap]\.?m\.?)?\)?,? (?:and|plus|&) (?:the|our|her|his|their|a) (?!(?:rest|hours?|others?|guests|doors|fee|budget|price|pay|venue|address|few|copy|link)\b|[\p{L}' ]{1,30} (?:is|are|was|will)\b|[\p{L}' ]{1,30} (?:at|around|about|from) \d)/iu;
const REACH = 130;

/** True for the hour that stands behind the one part that is wanted, with nothing else between. */
export function onlyThatHour(text: string, { start, end }: Where): boolean {
  const behind = text.slice(end, end + REACH);
  if (ALL_WE_NEED.test(behind)) return true;
  if (AND_MORE.test(behind)) return false;
  const lead = text.slice(Math.max(0, start - REACH), start);
  for (const { index, 0: words } of lead.matchAll(ONLY)) {
    const rest = lead.slice(index + words.length);
    if (TO_HOUR.test(rest)) return true;
    // The part is named in as few words as may be: the rest of its name stands before its hour.
    const named = NAMED.exec(rest);
    if (named && TO_HOUR.test(rest.slice(named[0].length))) return true;
  }
  return false;
}
