/**
 * Days of which fewer are to be filmed than are named, and I may choose: "one of them should be filmed, you choose", "any of these would do", "whichever suits
 * you", "two evenings would be enough". Which they are is asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays } from './days-among.ts';
import { FILM } from './day-of-run.ts';
import { numberOf } from './marks.ts';
import type { EventDays, Scene } from './scene.ts';

const THEM = String.raw`(?: of (?:them|these|those|the (?:two|three|four|five|days|dates|nights|evenings|shows|performances|concerts|sessions)(?: (?:days|dates|nights|evenings|shows|performances|concerts|sessions))?))`;
const UNIT = String.raw`(?:days?|nights?|evenings?|shows?|performances?|concerts?|recordings?|sessions?|matinees?|dates?|matches|services?)`;
/** How many, before a word of filming or of being enough, or behind one. */
const SOME = String.raw`(one|any|either|two|three|a single one|any one|whichever)`;
const ENOUGH = String.raw`(?:(?:is|are|would be|will be|['’]d be|['’]s) (?:quite |more than )?(?:enough|plenty|sufficient|all (?:that )?(?:we|i) (?:need|want)|fine|ok|okay|good|great|perfect)|(?:would|will|['’]ll|['’]d) (?:do|suffice|suit|work)|works|suits|do(?:es)?(?= fine| nicely|\s?[.,;!)\n]))`;
const ENDS = String.raw`(?=\s?(?:[.;,!?)\n]|$))`;
const FEWER = [
  new RegExp(String.raw`\b${SOME}${THEM} (?:(?:should|must|is to|has to|needs to|shall|will|could|can)(?: be)? ${FILM}|${ENOUGH})`, 'iu'),
  new RegExp(String.raw`\b(?:${FILM}|make|do|manage|come to|attend|take|get|have) (?:just |only |at least )?${SOME}${THEM}`, 'iu'),
  new RegExp(String.raw`\b${FILM} (?:just |only |at least )?(one|either|any)${ENDS}`, 'iu'),
  new RegExp(
    String.raw`\b(?:film|video|recording|footage) of (?:just |only )?(one|either|any|the (?:better|best|fuller|livelier|other))(?: one|${THEM})?${ENDS}`,
    'iu',
  ),
  new RegExp(String.raw`\bonly (one|two) (?:is|are|has|needs?|will|should|must)(?: to)?(?: be)? ${FILM}`, 'iu'),
  new RegExp(String.raw`\b(one|a single|two|three|either|any) ${UNIT} ${ENOUGH}(?: for (?:us|you|me|it))?${ENDS}`, 'iu'),
  new RegExp(String.raw`\b(one|two|three)${THEM},? (?:please|only)\b`, 'iu'),
];
const WHICH = String.raw`which(?:ever)?(?:${THEM}| (?:one|ones)\b| ${UNIT}\b| you (?:film|cover|record|come to)\b|${ENDS})`;
/** Which of them is left to me. */
const CHOOSE = new RegExp(
  [
    String.raw`\byou (?:can |may |could |get to )?(?:choose|pick|decide) ${WHICH}`,
    String.raw`\b(?:does not|doesn['’]t|won['’]t) matter(?: to us)? ${WHICH}`,
    String.raw`\b(?:do not|don['’]t|can['’]t|cannot|not)(?: yet)? (?:know|say|sure|decided|certain|clear)(?: yet)? ${WHICH}`,
    String.raw`\bwhich(?:${THEM}| day| night| evening| show) (?:(?:would|do|could) you (?:rather|prefer|like)|you (?:film|come|prefer|choose|take|do)\b|to film\b)`,
    String.raw`\b(?:know|tell you|let you know|decide|say|confirm|see|hear)(?: (?:by|in|on|at) (?:the )?\w+(?: of \w+)?| later| soon| then| nearer the time)? which(?: (?:one|ones|of (?:them|the two|these|those)|day|date))?(?: (?:it|that) (?:is|will be))?${ENDS}`,
  ].join('|'),
  'iu',
);
/** The same in words that may be about anything: right behind the days alone. */
const BESIDE = new RegExp(
  String.raw`^(?:[.!] |[,;:]? (?:and |but |so )?)(?:take your pick|(?:your|the) (?:choice|pick) is yours|whichever (?:suits|you (?:like|prefer))|pick (?:one|whichever|either)|which would you (?:rather|prefer)|(?:one|either|any) ${ENOUGH})${ENDS.replace('(?=', '(?: you| us| best| better| do| for us)*(?=')}`,
  'iu',
);
const OF_ELSE =
  /\b(?:package|option|price|quote|rate|camera|cameras|lens|format|music|song|hotel|room|angle|style|parking|meal|menu|gate|entrance|seat|hour|time|payment|invoice|files?)s?\b/i;
const ALL = /\b(?:all|both|each|every|whole|entire)\b/i;
const LOOKED_THROUGH = 6000;

/** The days, or each of them as a question where fewer are wanted. */
export function heldAgainstOneOfThem({ text }: Scene, event: EventDays): EventDays {
  if (event.dates.length < 2 || event.dropped || event.counted) return event;
  const front = text.slice(0, LOOKED_THROUGH);
  const each = event.dates.map((day) => [day]);
  for (const words of FEWER) {
    const found = words.exec(front);
    if (!found || speaksOfElse(front, found)) continue;
    const count = numberOf(found[1] ?? '');
    if (count < event.dates.length) return { ...askedDays(event.where, each, 'open'), ...(count > 0 ? { count } : {}) };
  }
  const found = CHOOSE.exec(front);
  const beside = BESIDE.test(text.slice(event.where.at(-1)?.end ?? text.length));
  return beside || (found && !speaksOfElse(front, found)) ? askedDays(event.where, each, 'open') : event;
}

function speaksOfElse(text: string, { index, 0: words }: RegExpExecArray): boolean {
  const { start, end } = sentenceAround(text, index, index + words.length);
  const sentence = text.slice(start, end);
  return OF_ELSE.test(sentence) || ALL.test(sentence);
}
