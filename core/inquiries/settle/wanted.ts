/**
 * Which of several days the camera is wanted on: "only the second night", "we want Saturday recorded", "you'd be filming Friday and Saturday", "could you do no. 3?".
 */
import { lineStart, sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { leftOfThem } from './all-but.ts';
import { askedDays, consecutive, MOST_MENTIONS, namedAmong, OF_ELSE } from './days-among.ts';
import { ofLastTime } from './days.ts';
import { daysInPlace } from './in-place.ts';
import { NOT_THE } from './mark-words.ts';
import { numberOf } from './marks.ts';
import { EACH_DAY, onlyThat } from './only-that.ts';
import { theOne } from './the-one.ts';
import type { EventDays, Scene } from './scene.ts';

const NTH = 'first|opening|second|third|fourth|fifth|middle|last|final|closing';
const ONE = '(?:night|day|evening|one|show|date|performance|session)';
const ONLY = new RegExp(
  [
    String.raw`\b(?:only|just|really just|it's just) (?:on |for )?(?:the )?(${NTH})(?: ${ONE}\b|\s?[.;!?](?!\d))`,
    String.raw`\b(?:only|just) (?:[a-z']+ ){1,4}(?:on|for|to) the (${NTH}) ${ONE}\b`,
    String.raw`\b(?:only|just) (?:need|want|require)s? (?:you (?:on |for )?)?(${NTH}) ${ONE}\b`,
    String.raw`\b(?:on|for) the (${NTH}) ${ONE} only\b`,
    String.raw`\b(?:to come|want you|need you|like you|have you|you'd be with us|you're with us) (?:in )?(?:only |just )?(?:on|for) (?:only |just )?the (${NTH}) ${ONE}\b`,
    String.raw`\bthe (${NTH}) ${ONE} (?:should |to |needs? to |must )?(?:be )?(?:filmed|recorded|covered|captured|photographed|streamed|livestreamed)\b`,
  ].join('|'),
  'i',
);
/** "only on the first and last days", "just the first two days", "could you do the opening day and the closing day?" */
const SOME = new RegExp(
  String.raw`\b(?:only|just|wants?|needs?|like you|have you|looking for|after|could you do|can you do)\b[^.;!?\n]{0,24}\bthe (?:(${NTH})(?: ${ONE})? and (?:the |on the )?(${NTH})(?: (?:nights?|days?|evenings?|ones?|dates?|shows?|performances?|sessions?)\b|(?=\s?[.,;!?)\n]))|(first|last|final) (two|three|2|3) (?:nights|days|evenings|dates|shows)\b)`,
  'i',
);
/** The same by a number as a noun: "nur am zweiten", "seulement le deuxième", "solo el segundo". */
const ONLY_ELSEWHERE =
  /(?<!\p{L})(?:nur (?:am|den|der|die)|seulement (?:le|la)|solo (?:el|la|il)|alleen (?:de|op de))\s(ersten?|zweiten?|dritten?|letzten?|premi[eè]re?|deuxième|second[ea]?|dernière?|primer[oa]?|segund[oa]|últim[oa]|tweede|eerste|laatste)(?!\p{L})/iu;
const elsewhere = (word: string): number =>
  /^(?:l|dern|últ|laat)/i.test(word) ? -1 : /^(?:e|prem|prim)/i.test(word) ? 0 : /^(?:dritt)/i.test(word) ? 2 : 1;
/** One of the days is done by somebody else or not wanted. */
const ONE_IS_TAKEN =
  /\b(?:we've|we have) already (?:got|booked|found) (?:someone|somebody|a \w+) for\b|\bthat one (?:is|we've|we have|'s) (?:already )?(?:covered|got|sorted|taken|booked)\b|\b(?:we|i)(?:'ve| have)(?: already)?(?: got| found| booked)? an? (?:guy|chap|lad|bloke|woman|lady|friend|mate|colleague|student|videographer|cameraman|operator) (?:for|on|doing)\b|\bpart two is\b|\bi can only (?:do|make|cover|manage) (?:the|one)\b|\bonly one of (?:them|these|those)\b|\b(?:just|only) the (?:one|other)\b(?! camera| op)/i;

/** "5-16 July (weekdays only)" */
const WEEKDAYS_ONLY =
  /\b(?:weekdays|working days|mon(?:day)?s?(?: to |-| through )fri(?:day)?s?) only\b|\b(?:excluding|except|not|no|without|minus|but not) (?:the |at |on )?weekends?\b/i;

/** "on 11 December in Barrie and again on the 12th in Orillia. Only Barrie needs filming!" */
const ONLY_NAMED = /\b[Oo]nly (\p{Lu}[\p{L}'-]+) (?:needs?|wants?) (?:to be )?(?:film|record|cover|captur|stream)(?:ed|ing)\b/u;
function onlyTown(text: string): boolean {
  const [, town] = ONLY_NAMED.exec(text) ?? [];
  return town !== undefined && new RegExp(String.raw`\bin ${town}(?!\p{L})`, 'u').test(text) && !EACH_DAY.test(text);
}
/** Of several days those that are meant; a question where one is and none is told. */
export function wantedOf(scene: Scene, settled: EventDays): EventDays {
  const { text } = scene;
  if (settled.dates.length < 2) return settled;
  const weekdays = settled.dates.filter((date) => Temporal.PlainDate.from(date).dayOfWeek <= 5);
  if (WEEKDAYS_ONLY.test(text) && weekdays.length > 0 && weekdays.length < settled.dates.length) return narrowed(settled, weekdays);
  const named = ofRow(scene, settled.dates) ?? wantedNamed(scene, settled) ?? onlyThat(scene, settled) ?? theOne(scene, settled);
  if (named) return narrowed(settled, named);
  const found = ONLY.exec(text);
  const word = found?.slice(1).find((one) => one !== undefined);
  const abroad = ONLY_ELSEWHERE.exec(text)?.[1];
  const day = word === undefined ? abroad && settled.dates.at(elsewhere(abroad)) : daysInPlace(word, settled.dates)[0];
  if (day) return narrowed(settled, [day]);
  return ONE_IS_TAKEN.test(text) || onlyTown(text)
    ? askedDays(
        settled.where,
        settled.dates.map((date) => [date]),
      )
    : settled;
}

/** The days that are left, where one of them is left out by its place or the weekend alone is wanted. */
export function allBut({ text }: Scene, settled: EventDays): EventDays | undefined {
  const left = settled.dates.length > 2 ? leftOfThem(text, settled.dates) : undefined;
  return left && left.length < settled.dates.length ? narrowed(settled, left) : undefined;
}

/** The days that are told by their place in the row, two of them or two and three of one end. */
export function inTheirPlace(scene: Scene, settled: EventDays): EventDays | undefined {
  const { text } = scene;
  const { dates } = settled;
  const [, one, other, end, count] = SOME.exec(text) ?? [];
  const number = /^(?:two|2)$/i.test(count ?? '') ? 2 : 3;
  const chosen =
    end === undefined
      ? [one, other].flatMap((word) => daysInPlace(word ?? '', dates))
      : /first/i.test(end)
        ? dates.slice(0, number)
        : dates.slice(-number);
  return chosen.length > 1 && chosen.length < dates.length ? narrowed(settled, chosen) : fromTheRun(scene, settled);
}

/** "three of those:", "on two of the days" */
const COUNT_OF =
  /\b(two|three|four|five|[2-5]) of (?:those|these|them|the (?:\w+ )?(?:days|dates|nights|evenings|mornings|sessions))\b|\bonly (?:be able to )?(?:afford|need|want|pay for|use|run to|stretch to|cover|have (?:the )?(?:money|budget|funds) for)(?: you for)? (two|three|four|five|[2-5])(?= (?:of|days|nights)\b|[.,;:\n])/i;

/** "i.e. the 27th and the 29th" */
const NAMELY = /\b(?:i\.?e\.?|namely|that is|viz\.?),? (?:on )?(?:the )?$/i;

/** "17 to 25 October, you on three of those: Sat 17, Wed 21 and Sun 25", "5 to 9 July, the lectures are on the 5th, 7th and 9th": days of a run that are told one by one, with others between them. */
function fromTheRun({ text, dates: mentions }: Scene, settled: EventDays): EventDays | undefined {
  const { dates } = settled;
  if (dates.length < 3 || !consecutive(dates)) return undefined;
  const told = mentions
    .slice(0, MOST_MENTIONS)
    .filter(({ past, by, said, start }) => !past && !by && !OF_ELSE.has(said) && !NOT_THE.test(text.slice(Math.max(0, start - 60), start)))
    .map((mention) => ({ mention, days: namedAmong(mention, dates) }))
    .filter(({ days }) => days.length > 0 && days.length < dates.length);
  const found = COUNT_OF.exec(text);
  const after = [...new Set(told.flatMap(({ mention, days }) => (mention.start > (found?.index ?? 0) ? days : [])))].toSorted();
  if (found && after.length === numberOf(found[1] ?? found[2] ?? '')) return narrowed(settled, after);
  // "on the Friday at 8, and on Sunday we end at 5" names both ends of the run.
  const lists = told.filter(
    ({ mention, days }) =>
      (days.length > 2 ||
        (days.length === 2 && (mention.explicit || NAMELY.test(text.slice(Math.max(0, mention.start - 14), mention.start))))) &&
      !consecutive(days),
  );
  const [list] = lists;
  return list && new Set(lists.map(({ days }) => days.join())).size === 1 && after.every((day) => list.days.includes(day))
    ? narrowed(settled, list.days)
    : undefined;
}

const narrowed = (settled: EventDays, dates: string[]): EventDays => ({
  ...settled,
  dates,
  dropped: settled.dates.filter((date) => !dates.includes(date)),
});

/** Who wants whom to do what, up to the day: "we want", "we only want you on the", "you'd be filming", "second pair of eyes for the". */
const WANTED_BEFORE = anyOf(
  `
  {who} {want} {whom}? {deed}? | {you} only/just? be? {filming} | you'd/you_would/you'll/you're/you_are only/just? be? with us | {want} {whom} on {what}
  {who} have you {there}? | {who} {want} ... {person} ... | {want} ... {person} ... | a camera ...
`,
  {
    who: `we | i | they | he | she | we'd | i'd | they'd | we'll | client | the client | committee`,
    want: `want | wants | need | needs | like | love | only want | only need | just want | just need | would like | would love | 'd like | 'd love | really want | really need | require`,
    whom: `you | u | only you | someone | somebody | you only | you just`,
    deed: `filming | recording | covered | coverage | film | record | photographed | to film | to record | to cover | to shoot | to photograph | there | in | with us | along | to come`,
    you: `you'd | you would | you'll | you will | you're | you are | you`,
    filming: `filming | recording | shooting | covering | photographing | needed | wanted | working | film | shoot | cover`,
    person: `person | operator | videographer | cameraman | photographer | eyes on camera | pair of eyes | camera | shooter | camera op`,
    there: `there | along | in | come | with us`,
    what: `camera | cam | audio | sound | stream`,
  },
);
const WANTED_TO = new RegExp(`${WANTED_BEFORE.source}\\s?(?:only\\s|just\\s)?(?:on\\s|for\\s)?(?:only\\s|just\\s)?(?:the\\s)?$`, 'i');
const WANTED_AFTER =
  /^(?: (?:nights?|evenings?|mornings?|afternoons?|one|performance|show|matinee))?,? (?:(?:should|to|needs? to|must|will) be |be )?(?:recorded|filmed|covered|captured|videoed|photographed|livestreamed|streamed|is right\b|is correct\b|is the right one\b)/i;

const RUN = /\b(?:to|through|thru|until|till|til|bis|au|al|tot)\b|[-\u2013]/i;

/** Days that are named once more with words of wanting the camera on them; nothing where another day of the run is named in the same breath. */
function wantedNamed(scene: Scene, { dates, where }: EventDays): string[] | undefined {
  const { text } = scene;
  for (const mention of scene.dates.slice(0, MOST_MENTIONS)) {
    const { start, end } = mention;
    if (mention.past || mention.by || where.some((one) => one.start === start) || ofLastTime(text, start)) continue;
    // "Sunday to Thursday" names all of them.
    if (RUN.test(text.slice(start, end)) || mention.readings.some((reading) => dates.every((date) => reading.includes(date)))) continue;
    const sentence = sentenceAround(text, start, end);
    const lead = text.slice(Math.max(sentence.start, start - 80), start);
    // "Saturday's covered" tells that somebody else is there.
    const after = text.slice(start, end).endsWith("'s") ? '' : text.slice(end, Math.min(end + 44, text.length));
    if (!WANTED_TO.test(lead) && !WANTED_AFTER.test(after)) continue;
    const chosen = namedAmong(mention, dates);
    const others = scene.dates.some(
      (other) =>
        other.start !== start &&
        other.start >= sentence.start &&
        other.end <= sentence.end &&
        !inBrackets(text.slice(end, other.start)) &&
        !dates.every((date) => namedAmong(other, dates).includes(date)) &&
        namedAmong(other, dates).some((date) => !chosen.includes(date)) &&
        !where.some((one) => one.start === other.start),
    );
    if (!others && chosen.length > 0 && chosen.length < dates.length) return chosen;
  }
  return undefined;
}

/** "the Saturday and the Monday filmed (Sunday's church)": what is only said in brackets behind. */
const inBrackets = (between: string): boolean => between.lastIndexOf('(') > between.lastIndexOf(')');

const ASKED_ROW =
  /\b(?:do|take|cover|make|film|shoot|record|photograph|about|interested in|it's|is) (?:no\.?|number|nr\.?|#|job|option|item) ?(\d{1,2})\b/i;

/** "Could you do no. 3?": the one row of a list that is asked about. */
function ofRow({ text, dates: mentions }: Scene, dates: readonly string[]): string[] | undefined {
  const number = ASKED_ROW.exec(text)?.[1];
  if (number === undefined) return undefined;
  const begins = new RegExp(`^\\s*[(#]?${number}[.):]?\\s`);
  const rows = mentions.slice(0, MOST_MENTIONS).filter(({ start, end }) => begins.test(text.slice(lineStart(text, start), end)));
  const chosen = [...new Set(rows.flatMap((mention) => namedAmong(mention, dates)))];
  return chosen.length > 0 && chosen.length < dates.length ? chosen : undefined;
}
