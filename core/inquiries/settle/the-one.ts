/**
 * The one of several days that words point at by its place, or that answers a question: "parents come to the middle one, so that is the one for the video",
 * "it's for the second that we're looking", "Sat or Sun?" - "Sunday." And where the others are refused and nothing tells which is left, it is asked.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, MOST_MENTIONS, namedAmong } from './days-among.ts';
import { daysInPlace } from './in-place.ts';
import { numberOf } from './marks.ts';
import type { EventDays, Scene } from './scene.ts';

const UNIT = String.raw`(?: (?:one|night|day|evening|show|date|performance|session|service|concert|wedding|party|match|game|half))?`;
const PLACE = String.raw`the (first|opening|second|third|fourth|middle|last|final|closing|latter|former)${UNIT}`;
/** Who wants it, or what is done with it. */
const WANT = String.raw`(?:(?:that |which )?(?:we|i|you|they)(?:(?:'d|'re|'m|'ll| would| are| am| will)?(?: be)?(?: really| just| only)? (?:like|love|want|need|film|record|cover|stream|shoot|look|book|hire|ask|hop|after\b)\p{L}*)|(?:that |which )?(?:wants?|needs?) (?:filming|recording|covering|to be)|(?:to be |being )?(?:filmed|recorded|covered|streamed)|for (?:the )?(?:video|film|camera|you)|to (?:film|record|cover|stream|shoot))`;
const POINTS = new RegExp(
  [
    String.raw`\b(?:it(?:'s| is| will be|'ll be)|that(?:'s| is)) (?:only |just |really )?(?:for |on |about )?${PLACE}(?: only)?,? ${WANT}`,
    String.raw`\b${PLACE},? (?:so |and )?(?:that|this|it)(?:'s| is|'ll be| will be) (?:the one|the night|the day|what|where) ${WANT}`,
    String.raw`\b${PLACE} (?:is|will|should|needs|has|must)(?: to)?(?: be)? (?:filmed|recorded|covered|streamed|captured)\b`,
    String.raw`(?<!\b(?:we|we'll|our|i|they|will|who|already|us|own|he|she)\s)\b(?:film|record|cover|stream|capture) (?:only |just )?(?:the (first|opening|second|third|fourth|middle|last|final|closing) (?:night|day|evening|show|performance|session)|day (one|two|three|four|five|[1-5]))\b(?!,? (?:and|to|until|till|through|or|&)\b|\s?[-–&])`,
    String.raw`\bfor ${PLACE} only\b(?! (?:have|had|need))`,
  ].join('|'),
  'iu',
);
const OTHERS = String.raw`(?:the|those|any) (?:others?|rest|remaining)\b(?: of (?:the|it|them))?(?: (?:two|three|four))?(?: (?:nights?|days?|evenings?|shows?|dates?|performances?|sessions?|services?|concerts?))?(?! (?:camera|team|end|side|people|guests|hand))`;
/** "Nobody needs filming on the other nights", "the rest doesn't need a camera" */
const NOT_THE_OTHERS = new RegExp(
  String.raw`\b(?:nobody|no one|nothing|no need|no filming|no cameras?|none|never|not|don't|doesn't|won't|needn't)\b[^.;!?\n]{0,36}\b(?:on|for|of|at|film|record|cover) ${OTHERS}|\b${OTHERS} (?:(?:is|are|do|does|will|need|can)(?:n't| not)\b|needn't|won't)[^.;!?\n]{0,20}\b(?:film\p{L}*|record\p{L}*|cover\p{L}*|camera|video|need\p{L}*|want\p{L}*|you)\b`,
  'iu',
);
/** "Only the lecture shall be filmed" */
const ONLY_FILMED =
  /\b(?:only|just) (?:the|our|his|her) (?:[\p{L}'-]+ ){1,3}(?:shall|should|is to|are to|has to|have to|needs? to|will|must|may|can) be (?:filmed|recorded|covered|captured|videoed|on camera|on video)\b|\b(?:only|just) (?:the|our|his|her) (?:[\p{L}'-]+ ){1,3}needs? (?:filming|recording|covering)\b/iu;

/** The days that are pointed at by their place or by an answer. */
export function theOne(scene: Scene, { dates }: EventDays): string[] | undefined {
  const place = POINTS.exec(scene.text)
    ?.slice(1)
    .find((word) => word !== undefined);
  // "day three"
  const number = place === undefined ? 0 : numberOf(place);
  const day = place === undefined ? answered(scene, dates) : daysInPlace(number > 0 ? String(number) : place, dates)[0];
  return day === undefined ? undefined : [day];
}

/** "Sat or Sun?" and right behind it a line or a sentence that begins with one of the two. */
function answered({ text, dates: mentions }: Scene, dates: readonly string[]): string | undefined {
  for (const [at, asked] of mentions.slice(0, MOST_MENTIONS).entries()) {
    const next = mentions[at + 1];
    const either = asked.sequence.items.length === 2 && asked.sequence.items[1]?.join === 'or';
    if (!either || !next || next.sequence.items.length !== 1 || next.start - asked.end > ANSWER_REACH) continue;
    const between = text.slice(asked.end, next.start);
    const [one, ...more] = namedAmong(next, dates);
    const atoms = asked.sequence.items.map(({ atom }) => atom);
    const own = next.sequence.items[0]?.atom;
    const ofThem = atoms.some(({ weekday, day }) => (day === undefined ? weekday === own?.weekday : day === own?.day));
    if (one !== undefined && more.length === 0 && ofThem && ANSWERS.test(between)) return one;
  }
  return undefined;
}
const ANSWER_REACH = 80;
const ANSWERS = /^[^?\n]{0,20}\?[^\n]{0,8}(?:\n[^\n]{0,40}){0,2}\n[^\n]{0,24}$|^[^?\n]{0,12}\? (?:the )?$/;

/** The days, or each of them as a question where others are refused and no word tells which. */
export function heldAgainstOthers({ text }: Scene, event: EventDays): EventDays {
  if (event.dates.length < 2 || event.dropped || event.counted) return event;
  const some = numberOf(SOME_OF.exec(text)?.[1] ?? '');
  if (some > 0 && some < event.dates.length)
    return {
      ...askedDays(
        event.where,
        event.dates.map((day) => [day]),
      ),
      count: some,
    };
  const found = NOT_THE_OTHERS.exec(text) ?? ONLY_FILMED.exec(text);
  if (!found || /\b(?:both|all|each|every)\b/i.test(sentenceOf(text, found.index, found[0].length))) return event;
  const single = event.dates.map((day) => [day]);
  return askedDays(event.where, event.dates.length > 2 ? [[event.dates[0] ?? '', event.dates.at(-1) ?? ''], ...single] : single);
}

/** "I need another to spell her on two; she's choosing which", "we want you for three of them" */
const SOME_OF =
  /\b(?:need|needs|want|wants|book|hire|put|pencil|like|looking for)\b[^.;!?\n]{0,50}\b(?:for|on) (one|two|three|four)(?: of (?:them|these|those|the \p{L}+)\b|(?= ?[.;)!?\n])(?! ?\.\d))/iu;

function sentenceOf(text: string, from: number, length: number): string {
  const { start, end } = sentenceAround(text, from, from + length);
  return text.slice(start, end);
}
