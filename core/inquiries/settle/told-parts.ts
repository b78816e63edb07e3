/**
 * Of a run of days those that are wanted, told clause by clause: "for the last two days", "the Friday and the Saturday filmed, not the other two",
 * "Saturday is the family day and that's the one we'd want footage of", "On the first day we wish nothing".
 * Each clause that names some of the days says that they are wanted, that they are not, or neither. They are stated where nothing is left open:
 * where the others are told not to be wanted, or words say that these are all.
 */
import { lineStart, sentenceAround } from '../parts/sentences.ts';
import { consecutive, MOST_MENTIONS, namedAmong, union } from './days-among.ts';
import { daysSaid } from './days.ts';
import { daysInPlace } from './in-place.ts';
import { NOT_THE, PART_OF_DAY } from './mark-words.ts';
import { numberOf } from './marks.ts';
import type { EventDays, Scene, Where } from './scene.ts';

/** A longer run is a season. */
const MOST_DAYS = 14;
const LOOKED_THROUGH = 6000;
const LEAD = 110;
const TAIL = 110;

type Named = Where & { days: string[]; placed: boolean };

/** The days, where clauses tell which of them are wanted and leave no other open. */
export function toldParts(scene: Scene, settled: EventDays): EventDays | undefined {
  const { dates } = settled;
  if (dates.length < 2 || dates.length > MOST_DAYS || settled.dropped || !consecutive(dates)) return undefined;
  const { text } = scene;
  const front = text.slice(0, LOOKED_THROUGH);
  const names = namesIn(scene, settled);
  if (names.length === 0) return undefined;
  const notAll = NOT_ALL.test(front);
  const [wanted, refused, others] = [new Set<string>(), new Set<string>(), new Set<string>()];
  let [only, pointed, placed] = [notAll, false, true];
  let theirs = false;
  for (const [at, name] of names.entries()) {
    const clause = clauseOf(text, name, names[at - 1], names[at + 1]);
    // "My colleague can do Saturday, but not the first day": the day that he cannot do is mine.
    const turned = theirs && BUT_NOT.test(clause.lead);
    theirs = THEIRS.test(clause.lead) || THEIRS_AFTER.test(clause.tail);
    const fragment = notAll && /^\W*$/.test(clause.lead) && /^\W*$/.test(clause.tail);
    const wish = turned || fragment || wants(clause) || wantsBoth(text, name, names[at + 1], clause);
    const said = !turned && (theirs || refuses(clause)) ? refused : wish ? wanted : others;
    for (const day of name.days) said.add(day);
    if (said !== wanted) continue;
    placed &&= name.placed;
    pointed ||= POINTED.test(clause.tail);
    only ||= ONLY_BEFORE.test(clause.lead) || ONLY_BEHIND.test(clause.tail) || filmed(clause);
  }
  const rest = dates.filter((day) => !wanted.has(day));
  const left = dates.filter((day) => !refused.has(day));
  if ([...wanted].some((day) => refused.has(day)) || rest.length === 0) return undefined;
  const counts = countsIn(front);
  // "On the first day we wish nothing. On the second the awards are given", "no play on 1 January ... each of the four days"
  if (wanted.size === 0)
    return refused.size > 0 &&
      scene.dates.filter((date) => date.explicit && beginsLine(text, date)).length < 2 &&
      left.length > 0 &&
      (left.every((day) => others.has(day)) || counts.has(left.length))
      ? { ...partOf(settled, left), counted: true }
      : undefined;
  // Where every day of the run is told to be mine or not, nothing learned is held against it.
  if (rest.every((day) => refused.has(day))) return { ...partOf(settled, [...wanted].toSorted()), counted: true };
  if (pointed) return partOf(settled, [...wanted].toSorted());
  const sure = only || placed || counts.has(wanted.size);
  return sure && !rest.some((day) => others.has(day)) && (notAll || !counts.has(dates.length) || placed)
    ? partOf(settled, [...wanted].toSorted())
    : undefined;
}

/** Days of a table are weighed row by row elsewhere. */
const beginsLine = (text: string, { start }: Where): boolean =>
  /^[\s*\u2022+-]*(?:\p{L}{2,9}[.,]? )?$/u.test(text.slice(lineStart(text, start), start));

const partOf = (settled: EventDays, days: string[]): EventDays => ({
  dates: days,
  where: settled.where,
  choices: [],
  dropped: settled.dates.filter((day) => !days.includes(day)),
});

/** How many days are said to be mine: "both nights", "those two", "for the 2 days". */
function countsIn(text: string): Set<number> {
  const counts = [...text.matchAll(COUNT)].map(([, word]) => (word === undefined ? 2 : numberOf(word)));
  return new Set([...counts, ...daysSaid(text).map(({ days }) => days)]);
}
const COUNT =
  /\b(?:both (?:days|nights|evenings|dates|of (?:them|those))|(?:the|those|these|all) (two|three|four|[2-4])(?: (?:days|nights|evenings|dates|shows))?(?![\p{L}\d]))/giu;

const NTH = '1st|2nd|3rd|4th|first|second|third|fourth|last|final|opening|closing|middle|intervening';
const UNIT = '(?:(?:[a-z]{3,8}) )?(?:days?|nights?|evenings?|performances?|shows?|dates?|sessions?|mornings?|afternoons?)';
const PLACED = new RegExp(
  String.raw`\b(${NTH})(?: (two|three|four|[234]))?(?: ${UNIT})?(?:(?: and| &|,)(?: the| on the)? (${NTH}))?(?: ${UNIT})\b(?! of (?:the |this |next )?(?:month|year|term|week|january|february|march|april|may|june|july|august|september|october|november|december)\b)(?! (?:that )?we(?:'ve| have) (?:done|had|held|put|run|played))`,
  'gi',
);

/** "for 7 & 8 only", "6th is travel": days by their numbers alone, where no date was read. */
const NUMBERED =
  /(?<=\b(?:on|for|the) )\d{1,2}(?:st|nd|rd|th)?(?: ?(?:&|\+|,|and) ?(?:the )?\d{1,2}(?:st|nd|rd|th)?){0,3}(?= (?:only|alone)\b)|(?<![\d.:/\u2013-])\b\d{1,2}(?:st|nd|rd|th)\b(?! (?:nights?|days?|evenings?|birthday|anniversary|floor|grade|year|edition|annual|of)\b)/gi;

/** Every place that names some of the days, in order. */
function namesIn(scene: Scene, { dates, where }: EventDays): Named[] {
  const { text } = scene;
  const byDate = scene.dates
    .slice(0, MOST_MENTIONS)
    .filter(
      ({ start, by, said, past, explicit }) =>
        !by && said !== 'reply' && !(past && explicit && said === 'past') && !where.some((one) => one.start === start),
    )
    .map((mention) => ({ start: mention.start, end: mention.end, days: namedAmong(mention, dates), placed: false }));
  const byNumber = [...text.slice(0, LOOKED_THROUGH).matchAll(NUMBERED)].slice(0, MOST_MENTIONS).map(({ index, 0: words }) => {
    const numbers = new Set((words.match(/\d+/g) ?? []).map(Number));
    const days = dates.filter((day) => numbers.has(Number(day.slice(8))));
    return { start: index, end: index + words.length, days: days.length === numbers.size ? days : [], placed: false };
  });
  const byPlace = [...text.slice(0, LOOKED_THROUGH).matchAll(PLACED)]
    .slice(0, MOST_MENTIONS)
    // "both closing nights": more than one, and not told how many.
    .filter(({ 0: words, 2: count, 3: other }) => count !== undefined || other !== undefined || !words.endsWith('s'))
    .map(({ index, 0: words, 1: one = '', 2: count, 3: other }) => ({
      start: index,
      end: index + words.length,
      days: union(daysInPlace(one, dates, count ? numberOf(count) : 1), other ? daysInPlace(other, dates) : []),
      placed: true,
    }));
  const inDates = (one: Where): boolean => scene.dates.some(({ start, end }) => one.start < end && start < one.end);
  const names: Named[] = [...byDate, ...[...byNumber, ...byPlace].filter((one) => !inDates(one))]
    .filter(({ days }) => days.length > 0 && days.length < dates.length)
    .toSorted((a, b) => a.start - b.start);
  // "4th and 5th are travel": what is said behind the second is said of both.
  return names.reduce<Named[]>((joined, name) => {
    const last = joined.at(-1);
    const both = last !== undefined && last.end <= name.start && AND.test(text.slice(last.end, name.start));
    return both
      ? [
          ...joined.slice(0, -1),
          { start: last.start, end: name.end, days: union(last.days, name.days), placed: last.placed && name.placed },
        ]
      : [...joined, name];
  }, []);
}

const AND = /^ ?(?:and|&|\+) ?(?:on )?(?:the )?$/i;

type Clause = { lead: string; tail: string };

/** What is said of a day: in its sentence, up to the days before and after it. */
function clauseOf(text: string, { start, end }: Named, previous: Named | undefined, next: Named | undefined): Clause {
  const sentence = sentenceAround(text, start, end);
  const from = Math.max(sentence.start, start - LEAD, previous?.end ?? 0);
  const to = Math.min(sentence.end, end + TAIL, next?.start ?? text.length);
  const tail = text.slice(text[end - 1] === '.' ? to : text.slice(start, end).endsWith("'s") ? end - 2 : end, to);
  return { lead: text.slice(from, start).replace(CUT_BEFORE, ''), tail: tail.replace(CUT_BEHIND, '') };
}
/** What ends one clause and begins another. */
const CUT_BEFORE = /^.*(?:[;:(\u2013]|,\s(?:and|so|while|whereas|then)\s)/isu;
const CUT_BEHIND = /(?:[;(\u2013]|,\s(?:but|so|while|whereas|then|not)\s).*$/isu;

/** Nobody films, or somebody else does. */
const NOBODY_AFTER =
  /^\)?,? ?(?:(?:is|are|will be|'s) (?:already |all |just |only |a |an |the |for )*(?:covered|sorted|taken|staffed|private|closed|off(?! (?:limits|at|by|around|about|the)\b)|free|rest|travel\w*|dark|internal|nothing|family only)\b|(?:we|i|they)(?:'ve| have)? ?(?:already )?(?:got|have|booked|found) (?:already )?(?:an?|my|our|some)\b[^.;!?\n]{0,20}\b(?:guy|man|woman|lad|person|one|body|camera\p{L}*|videographer|shooter|operator|op|crew|team)\b)/iu;
const NOBODY =
  /\b(?:(?:wish|want|need|require|there(?:'s| is)) (?:for )?(?:nothing|nobody|no one|no (?:video|cameras?|filming|recording|you))|no (?:cameras?|filming|video(?:ing)?|recording|play|need)\b|(?:not|needn't|need not|never) (?:be )?(?:needed|required|wanted|filmed|recorded)|(?:need not|needn't|don't need to|do not need to|don't have to) (?:attend|come|film|record|be)|(?:don't|do not|won't) (?:need|want|require) (?:you|anyone|anybody|anything|it|that|filming|video|a camera)\b|without cameras?|skip(?:ping)?|take rest|at rest|(?:you|we)(?:'ll|'re| may| can| could)? (?:rest|be off|have off)|(?:is|are|'s) (?:just|only) (?:the |for )?(?:family|staff|members|internal))\b/i;
/** "but not the first day" */
const NOT_BEFORE = /\b(?:not|nothing|nobody|except|excluding|apart from|skip(?:ping)?|without|minus)(?: on| for)?(?: the)? $/i;
const BUT_NOT = /\b(?:but|and) (?:not|can't|cannot)(?: do| make| on| for)?(?: the)? $/i;
/** Somebody else is there. */
const WHO = String.raw`(?:dp|camera\p{L}*|op|operator|videographer|shooter|brother|sister|son|daughter|nephew|friend|mate|colleague|partner)`;
const THEIRS = new RegExp(
  String.raw`\b(?:my|our|the|his|her|their) (?:usual |other |own |regular )?${WHO} (?:(?:can|will|is|does|has|could) |(?:can |will |is )?(?:do|doing|cover|covering|take|taking|film|filming|shoot|shooting|make|making)s? )[^.;!?\n]{0,20}$`,
  'iu',
);
const THEIRS_AFTER = new RegExp(
  String.raw`^,? (?:is |are |will be )?(?:covered|filmed|done|handled|taken|shot|recorded) by (?:an?|the|our|my|their|his|her|some\p{L}*|another|staff)\b`,
  'iu',
);

const refuses = ({ lead, tail }: Clause): boolean =>
  !FILMED_BEHIND.test(tail) &&
  (NOT_THE.test(lead) ||
    NOT_BEFORE.test(lead) ||
    NOBODY_AFTER.test(tail) ||
    NOBODY.test(tail) ||
    /\bno [a-z]{3,12} on (?:the )?$/i.test(lead)) &&
  !PART_OF_DAY.test(tail);

/** What is done with a camera. */
const FILM = String.raw`film\p{L}*|record\p{L}*|cover\p{L}*|shoot\p{L}*|camera\p{L}*|videographer|operator|coverage|footage|stream\p{L}*|photograph\p{L}*`;
/** Who asks for whom or for what, before the day. */
const WANTED_BEFORE = new RegExp(
  [
    String.raw`\b(?:want|need|like|love|glad|wish|looking|after|require|seek|hire|book)\p{L}*\b[^.;!?\n]{0,60}\b(?:you|somebody|someone|video|${FILM})\b[^.;!?\n]{0,50}$`,
    String.raw`\b(?:coverage|video|filming|recording|camera|videographer) (?:is |are |would be )?(?:sought|wanted|needed|required)\b[^.;!?\n]{0,30}$`,
    String.raw`\breq(?:uirement|mt|\.)? is\b[^.;!?\n]{0,40}$`,
    String.raw`\byou(?:'d|'ll|'re| would| will| are) (?:only |just )?(?:be )?(?:with us|needed|wanted|filming|recording|covering|shooting)\b[^.;!?\n]{0,30}$`,
    String.raw`\b(?:are|would|will) you (?:be )?(?:free|available|around)(?: on| for)?(?: the)? $`,
    String.raw`\b(?:can|could|would|will) you (?:${FILM})\b[^.;!?\n]{0,40}$`,
    String.raw`(?:^|\b(?:so|really|and)\b)[^\p{L}]{0,3}(?:it|that)(?:'d| would|'s| is)(?: be)?(?: really)?(?: just| only)? (?:on |for )?(?:the )?$`,
    String.raw`(?:^|\breally )\s?(?:really )?(?:just|only) (?:on |for )?(?:the )?$`,
  ].join('|'),
  'iu',
);
/** The beginning of a run is no part of it: "from Friday". */
const FROM = /\b(?:from|since|starting|until|till|til|to|by|before|after|arriv\w+|land\w*|fly\w*|travel\w*)(?: on)?(?: the)? $/i;
const WANTED_BEHIND = new RegExp(
  String.raw`^\)?,? ?(?:(?:nights?|evenings?|one|show|performance|matinee|both) )?(?:please )?(?:to be |be |being )?(?:filmed|recorded|covered|captured|videoed|photographed|streamed|livestreamed)\b(?! by (?!you))|^[^.;!?\n]{0,60}\b(?:we|i)(?:'d| would)? (?:be )?(?:wish|want|need|like|love)(?:ing)?\b(?! (?:nothing|nobody|no))[^.;!?\n]{0,30}\b(?:you|somebody|someone|video|${FILM})\b`,
  'iu',
);
/** "that's the one", "is what I'm writing about" */
const POINTED =
  /^[^.;!?\n]{0,80}\b(?:(?:that|this|it)(?:'s| is) the (?:one|day|night) (?:we|i|you|that|where)|is the (?:one|day|night) (?:we|i) |is (?:what|where|why) (?:i'm|we're|i am|we are|you|i|we)\b)/i;
/** "on the Friday at 8" is when I come, not what is wanted. */
const HOUR_BEHIND = /^,? (?:at|from|by|for|@)? ?\d{1,2}(?:[:.h]\d\d)?\b/i;

const wants = ({ lead, tail }: Clause): boolean =>
  !FROM.test(lead) && ((WANTED_BEFORE.test(lead) && !HOUR_BEHIND.test(tail)) || WANTED_BEHIND.test(tail) || POINTED.test(tail));

/** "We'd like the rehearsals on Saturday and the concert on Sunday recorded": what is said of both behind the second. */
const wantsBoth = (text: string, name: Named, next: Named | undefined, { lead }: Clause): boolean =>
  next !== undefined &&
  /\b(?:want|need|like|love|wish)\p{L}*\b[^.;!?\n]{0,40}$/iu.test(lead) &&
  /^,? (?:and|&|plus|as well as) [^.;:!?\n]{0,40}$/i.test(text.slice(name.end, next.start)) &&
  WANTED_BEHIND.test(text.slice(next.end, next.end + TAIL));

/** Told with the word for what is done with a camera: that is no hour to come at. */
const filmed = ({ lead, tail }: Clause): boolean => FILMED_BEFORE.test(lead) || FILMED_BEHIND.test(tail);
const FILMED_BEFORE = /\b(?:film|record|cover|shoot|photograph|stream|livestream)(?:ing)? (?:[\p{L}'-]+ ){0,5}on (?:the )?$/iu;
const FILMED_BEHIND =
  /^,? (?:(?:nights?|evenings?|one|show|performance|matinee|both) )?(?:please )?(?:to be |be )?(?:filmed|recorded|covered|captured|videoed|photographed|streamed|livestreamed)\b/i;

/** These and no others. */
const ONLY_BEFORE = /\b(?:only|just|solely|nur|seulement|solo)\b[^.;:!?\n]{0,30}$/i;
const ONLY_BEHIND = /^(?: nights?| days?| evenings?)?,? (?:only|alone)\b/i;
const NOT_ALL =
  /\bnot (?:for )?(?:all of|all (?:of )?(?:it|them|three|four|five|the days)|every (?:day|night)|the (?:whole|entire|full|other|others|rest)\b)|\b(?:can't|cannot|couldn't|can not|don't) (?:stretch to|afford|run to|need|pay for|want) (?:you for )?(?:all|the (?:whole|lot|rest|other)|every)\b/i;
