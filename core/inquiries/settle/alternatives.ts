/**
 * Days of which only some are wanted and nobody says yet which: "one of the two nights, whichever suits you", "the first Friday, or if the hall is taken, then the Saturday".
 * They are asked about, never stated.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { askedDays, inMonthOf, MOST_MENTIONS, namedAmong } from './days-among.ts';
import { runFrom } from './run.ts';
import { someOfRun } from './some-of-run.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const lists = {
  nights: `nights | days | evenings | dates | shows | performances | sessions | afternoons | mornings | weekends | concerts | weeks`,
  count: `two | three | four | five | 2 | 3 | 4`,
};
/** One of several will do, and a choice is left. */
const ONE_OF = anyOf(
  `
  one/a_single night/evening/day/performance/show/afternoon/session filmed/recorded/covered/on_film/captured | any day/night/evening/morning/afternoon/one you/that/will/of_the_week/suits | on one day | come/pick/choose on? any day/night/evening/afternoon/one | any one | any? one of the/those/these/our/my {count}? {nights} | one of {count} {nights} | any one of {them} | just_one/only_one/want_one/need_one/film_one/two of {them} | one or two of which/them/these | either of {them} | either day/night/evening/date suits/works/is/will/would
  an einem/einer der beiden/zwei/drei/vier tage/tagen/abende/abenden/termine/terminen | an einem von beiden | l'un/une des deux/trois jours/dates/soirées/soirs | un/une des deux | uno/una de los/las dos/tres | een van de twee/drie/beide | uno dei due
`,
  { ...lists, them: `them | these | those | the {nights} | the {count}` },
);
const UNDECIDED = anyOf(
  `
  whichever is/you/suits/works/is/fits/they/one/day/night/evening/date/of | whichever | which one/day/night/evening/date/of_them/of_the_two/of_these ever? suits/works/you_prefer/would_you_prefer/you'd_prefer/you_like | up to you which | tell/tells me/us which | decide/deciding which | choose/pick which/one | mind/minds which | easy which | no_matter which | don't care which | which of them/these/those/the_two/the_dates/both/either are/is/would/could/can/do/works/suits/might ... | yet to decide which | not decided which | haven't decided which
  what/which nights/days/dates/night/day/date would/do/can you prefer/like/suit/suits | would suit you better | suits you better/best | {count} {nights} out of ... | {count} {nights} somewhere/sometime in/between/within ... | welcher tag | egal welcher/welchen/welches | quel jour | qué día
`,
  lists,
);
/** "it will be one of the two", "12/13 November, one of the two" */
const ONE_OF_THEM =
  /\b(?:will|would|'ll|to|may|might|could|can) be (?:just |only )?one of (?:the (?:two|three|four)|them|these|those)\b|[,;(] ?one of the (?:two|three|four)(?=\s?[.,;!?)\n]|$)/i;
/** "or if the hall cannot move the banquet, then the Saturday", "or failing that the 25th" */
const OR_ELSE =
  /\b(?:or|otherwise|failing that|alternatively|if not|unless)\b[^.;!?\n]{0,70}\b(?:then|instead|failing that|alternatively|otherwise|if not|if not that|possibly|else)[,\s]+(?:on )?(?:the )?$/i;
const FAILING =
  /\b(?:failing that|alternatively|if not(?: that| then)?|or else|or possibly|or maybe|or perhaps|or even)[,\s]+(?:on )?(?:the )?$/i;
/** "sometime between" */
const SOMETIME =
  /\b(?:some ?time|at some point|any ?time|any day|half a day|an afternoon|an evening|a morning)\b[^.;!?\n]{0,24}\b(?:between|from|in|within|during)\s(?:the )?$/i;
const WEATHER = /\b(?:rain|rains|wet|weather|wind|windy|storm|pours|snow|backup|back-up|reserve|postponed|called off)\b/i;
/** "20 o 27 de noviembre", "the 6th or 13th of May" */
const NUMBER_OR =
  /(?<!\p{L}|[\d.:])(?:[1-9]|[12]\d|3[01])(?:st|nd|rd|th|\.)?,? (?:or|oder|ou|o|of|eller)(?: (?:the|am|den|le|el|il|op|no))? ?$/iu;
/** "one of 2028-05-18 / 2028-05-25", "can't choose between", "don't agree on the date", "equally happy with" */
const BETWEEN =
  /\b(?:one of(?! (?:our|my|their|his|her|your|its|us|them|you|the \p{L}+s'?)\b(?! (?:dates?|days|nights|evenings|weekends)\b))|(?:choose|choosing|decide|deciding|torn|toss-?up|wavering|pick|choice) between|(?:don't|do not|can't|cannot) agree on (?:the|a) (?:date|day|night|evening)|equally (?:happy|good|fine)(?: with| on| for)?|just as (?:happy|good|fine) with|(?:hésit\p{L}+|dud\p{L}+|schwanken|twijfel\p{L}+|indecis\p{L}+)(?: encore| noch| nog| ancora| todavía| aún)? (?:entre|zwischen|tussen|tra|fra))(?!\p{L})[^.;!?\n]{0,60}$/iu;
/** "on hold for Saturday the 10th and Saturday the 17th and will choose this week" */
const CHOSEN_LATER =
  /^,? (?:and|but) (?:(?:we|i|they|she|he)(?:'ll)? )?(?:will |must |have to |need to |still need to |should )?(?:choose|pick|decide|know which)(?![^.!?\n]{0,50}\b(?:who|whom|you|gets|videographers?|suppliers?|crew|quotes?|offers?)\b)(?: (?:between them|one|which|soon|today|tomorrow|this|next|by|on|in)\b|[.,;!?\n])/i;
const BOTH_PAID =
  /\b(?:film|cover|record|shoot|quote|price|cost|charge|fee|rate)\w*\b[^.;!?\n]{0,24}\bboth\b|\bboth (?:days|dates|nights)\b/i;
const LATER = 100;
const EITHER_OR = /(?<!\p{L})(?:soit(?= le| la| au)|entweder|o bien|ofwel)(?!\p{L})[^.;!?\n]{0,40}$/iu;

/** The same days as a question, where words leave open which of them. */
export function leftOpen(
  scene: Scene,
  settled: EventDays,
  main: readonly DateMention[],
  candidates: readonly DateMention[],
): EventDays | undefined {
  const { text } = scene;
  const known = [...new Set([...settled.dates, ...main.flatMap(({ readings }) => readings[0] ?? [])])].sort();
  const open = (count?: number): EventDays => ({
    ...askedDays(settled.where, settled.choices.length > 1 ? settled.choices : known.map((day) => [day]), 'open'),
    ...(count === undefined ? {} : { count }),
  });
  const best = known.length > 1 && ONE_OF.test(text) ? bestOf(scene, known) : undefined;
  if (best !== undefined) return { dates: [best], where: settled.where, choices: [], dropped: known.filter((date) => date !== best) };
  const some = someOfRun(scene, settled, main);
  if (some) return some;
  if (known.length > 1 && (ONE_OF.test(text) || UNDECIDED.test(text)))
    return open(ONE_OF.test(text) && !/\btwo of\b/i.test(text) ? 1 : undefined);
  if (known.length > 1 && ONE_OF_THEM.test(text)) return open(1);
  if (known.length > 1 && !BOTH_PAID.test(text) && main.some(({ end }) => CHOSEN_LATER.test(text.slice(end, end + LATER)))) return open(1);
  for (const mention of scene.dates.slice(0, MOST_MENTIONS)) {
    const ends =
      mention.past || mention.by ? undefined : endsOpen(settled, mention, text.slice(Math.max(0, mention.start - 40), mention.start));
    if (ends) return ends;
  }
  for (const mention of candidates.slice(0, MOST_MENTIONS)) {
    const sentence = sentenceAround(text, mention.start, mention.end);
    const lead = text.slice(Math.max(sentence.start, mention.start - 110), mention.start);
    if (WEATHER.test(lead)) continue;
    if (SOMETIME.test(lead) && (mention.readings[0]?.length ?? 0) > 1) return open();
    if (
      OR_ELSE.test(lead) ||
      FAILING.test(lead) ||
      NUMBER_OR.test(lead) ||
      (BETWEEN.test(lead) && known.length + candidates.length > 2) ||
      (EITHER_OR.test(lead) && candidates.length > 1)
    )
      return open();
  }
  return undefined;
}

/** "It leaves on Friday 9 April and comes back either that Sunday or the Monday": the runs that it may be. */
function endsOpen({ dates, where }: EventDays, { explicit, sequence: { items } }: DateMention, lead: string): EventDays | undefined {
  const [first] = dates;
  if (dates.length !== 1 || first === undefined || explicit || !items.some(({ join }) => join === 'or') || !ENDS_EITHER.test(lead))
    return undefined;
  const start = Temporal.PlainDate.from(first);
  const runs = items.flatMap(({ atom }) => {
    const last =
      atom.day === undefined
        ? start.add({ days: ((atom.weekday ?? 0) - start.dayOfWeek + 7) % 7 || 7 })
        : Temporal.PlainDate.from(inMonthOf(first, atom.day) ?? first);
    const length = start.until(last).days + 1;
    return length > 1 ? [runFrom(first, length)] : [];
  });
  return runs.length > 1 ? askedDays(where, runs) : undefined;
}
const ENDS_EITHER =
  /\b(?:ends?|ending|finish(?:es|ing)?|clos(?:es|ing)|until|till|through|lasts|runs|back|returns?|returning|home|wraps?|stay(?:ing)?)\b[^.;!?\n]{0,16}$/i;

/** "I'd like one night filmed. Friday would be best": the one of them that is named as the best. */
function bestOf({ text, dates }: Scene, known: readonly string[]): string | undefined {
  const best = dates
    .filter(
      ({ start, end }) => BEST.test(text.slice(end, end + BEST_REACH)) || SAY.test(text.slice(Math.max(0, start - BEST_REACH), start)),
    )
    .flatMap((mention) => namedAmong(mention, known));
  return new Set(best).size === 1 ? best[0] : undefined;
}
const BEST =
  /^ ?(?:night|evening|one|show)? ?(?:would be|'d be|is|being) (?:the )?(?:best|ideal|perfect|favourite|our (?:favourite|preference|first choice))\b/i;
/** "Let's say Wednesday", "ideally the 5th" */
const SAY = /\b(?:let's say|ideally|preferably|for preference|make it|let's go for|we'd prefer|i'd prefer|best) (?:on )?(?:the )?$/i;
const BEST_REACH = 50;
