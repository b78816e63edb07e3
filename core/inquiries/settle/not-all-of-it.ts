/**
 * A run of which words say that not all of it is wanted: "filming is only on one of those days", "we don't need all of it", "come on the Friday or the Sunday", or its
 * two ends alone: "opening day and the closing Monday, nothing in between". The ends are stated where nothing between them is wanted; all else is asked.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, consecutive, MOST_MENTIONS, namedAmong, OF_ELSE, union } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const WEEKDAY = String.raw`(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day)`;
const DAY = String.raw`(?:day|night|evening|${WEEKDAY})`;
const FILMS = String.raw`(?:film(?:ing|ed)?|shoot(?:ing)?|record(?:ing|ed)?|cover(?:age|ing|ed)?|you(?:'d| would|'ll| will|'re| are)?|come)`;
/** "opening day (Thursday the 4th) and the closing Monday", "the first and the last day" */
const ENDS = new RegExp(
  String.raw`\b(?:first|opening)(?: ${DAY})?(?: \([^()\n]{1,24}\))?,? (?:and|&|\+|plus)(?: on)?(?: the)? (?:last|closing|final)\b(?: (?:${DAY}s?|one)\b|(?=\s?[.,;:!?)\n]))(?! (?:and|to|of|night's|hour|song|act))`,
  'iu',
);
/** Nothing else is wanted. */
const NO_MORE =
  /\b(?:nothing|not(?: needed)?|no one|nobody|no filming|none|never) in[- ]?between\b|\b(?:do not|don't|does not|doesn't|won't|will not) need (?:all of (?:it|them)|(?:it|them) all|the (?:rest|others|whole (?:thing|run|week)|days (?:in )?between))\b|\bonly (?:(?:need|want|film|come|be needed)\w* )?(?:you )?(?:on |for )?the (?:first|opening)\b|\b(?:last|closing|final)(?: \w+)? only\b/i;
const FILMED = new RegExp(String.raw`\b${FILMS}\b`, 'iu');
const NOT_FOR_ME =
  /\b(?:parking|bar|tickets?|doors?|busy|busiest|free entry|ferry|lunch|open (?:until|till|late)|guests?|fireworks|crowded|rain)\b/i;
const OPEN = [
  /\b(?:only|just) (?:on )?(?:one|a single one) of (?:those|these|the|them|its)(?: (?:two|three|four|five))?(?: (?:days|dates|nights|evenings))?\b/i,
  /\b(?:do not|don't|won't|will not|would not|wouldn't|needn't)(?: \p{L}+)? (?:need|want|film|require|cover|have to be there for|be there|be there for|be needed for|be needed on|stay for) (?:you (?:for |there )?)?(?:all (?:of (?:it|them)(?! to be)|(?:two|three|four|five|[2-5]) (?:days|dates|evenings))|(?:it|them) all|every day|each day|the whole (?:thing|run|weekend|week))\b/iu,
  new RegExp(String.raw`\bnot all of (?:it|them|the days)\b[^.;!?\n]{0,24}\b${FILMS}\b`, 'iu'),
  new RegExp(
    String.raw`\b${FILMS}(?: \p{L}+)?(?: on| for)?(?: either)?(?: on)? the (?:${DAY}|first|opening)(?: ${DAY})? or (?:on )?(?:the )?(?:${DAY}|last|closing|second|third)\b(?! (?:night|evening|morning)? ?(?:until|till|at))`,
    'iu',
  ),
  new RegExp(
    String.raw`\bthe (?:${DAY}|first|opening)(?: ${DAY})? or (?:the )?(?:${DAY}|last|closing|second|third)(?: ${DAY})? (?:is|are|will be|would be|should be|has to be|needs to be)(?: to be)? (?:filmed|recorded|covered|captured|enough)\b`,
    'iu',
  ),
  // "The demos are all on the Saturday so come just that day", "you would come for that day only"
  new RegExp(
    String.raw`\b(?:(?:you|we|i)(?:'d| would|'ll| will)?(?: only| just)? (?:come|be|film|shoot|record|cover|need|want|like)|(?:so|please)(?: only| just)? (?:come|film|shoot|record|cover))(?: (?:come|film|be|you|us|it|there|here|for|on|in|filming)){0,4} (?:(?:just|only)(?: for| on)? (?:that|this)(?: one)? day|(?:just )?(?:that|this)(?: one)? day (?:only|alone))\b`,
    'iu',
  ),
];
const FILMING_ON = /\bfilming(?: is| will be| would be| takes place)?(?: only| just)?:?(?: only)?(?: on)?(?: the)?(?: opening| first)? $/iu;
const LOOKED_THROUGH = 6000;

/** The run, its two ends, or these and the run as a question. */
export function heldAgainstSomeOfIt({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const all = union(event.dates, event.dropped ?? []);
  const [first, last] = [all[0], all.at(-1)];
  if (event.dates.length === 0 || all.length < 2 || event.counted || first === undefined || last === undefined || !consecutive(all))
    return event;
  const front = text.slice(0, LOOKED_THROUGH);
  const found = all.length > 2 ? ENDS.exec(front) : null;
  if (found) {
    const { start, end } = sentenceAround(text, found.index, found.index + found[0].length);
    const said = text.slice(start, end);
    const before = text.slice(Math.max(0, start - NEAR), start);
    if (NOT_FOR_ME.test(said)) return event.dropped ? askedDays(event.where, [event.dates, all], 'open') : event;
    if (NO_MORE.test(said) && !/\b(?:or|either|if)\b/i.test(said)) return { ...event, dates: [first, last], dropped: all.slice(1, -1) };
    if (FILMED.test(said) || NO_MORE.test(before)) return askedDays(event.where, [[first, last], all], 'open');
  }
  // Where one of them is told, that is the one.
  const chosen = event.dropped !== undefined && event.dates.length === 1;
  if (!chosen && OPEN.some((words) => words.test(front))) return askedDays(event.where, [all, ...all.map((day) => [day])], 'open');
  if (event.dropped) return event;
  const named = mentions.slice(0, MOST_MENTIONS).find((mention) => {
    if (mention.past || mention.by || OF_ELSE.has(mention.said) || mention.sequence.items.length < 2) return false;
    const days = namedAmong(mention, all);
    return days.length > 1 && days.length < all.length && FILMING_ON.test(text.slice(Math.max(0, mention.start - NEAR), mention.start));
  });
  return named ? askedDays(event.where, [namedAmong(named, all), all], 'open') : event;
}
const NEAR = 60;
