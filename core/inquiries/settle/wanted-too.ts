/**
 * Days that are wanted beside the one of the job: "our board meets on 16 November and we'd like that filmed as well", "with a rehearsal on the 10th that you
 * film", "PS we also need you on the 20th", "as well as the fair on 13 November we want our dinner on the 19th filmed". Where words say both that it is filmed
 * and that it comes on top, all of them are the days; where they say less, it is asked.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, inMonthOf, MOST_MENTIONS, OF_ELSE, union, within } from './days-among.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

/** It comes on top of something. */
const TOO =
  /\b(?:also|as well(?! as)|too(?! (?:long|much|many|late|early|big|small|far|loud|dark))|in addition|additional(?:ly)?|on top of that|besides|(?:a|one) second|another|one more|two more|three more|plus|extra|follow-?up|pick-?ups?|come back|(?:need|want|have|like) you back|separately|second (?:job|shoot|filming|visit)|followed by|preceded by|(?:before|after) that|beforehand)\b/iu;
const ON_TOP = /^[\s"'(-]*(?:besides|as well as|apart from|in addition to|on top of|beyond|together with|along with)\b|\bboth\b/iu;
/** I am to film it. */
const FILM = String.raw`(?:(?<!\b(?:the|your|our|a|this|that|short|finished|final|whole|edited|of|no) )(?:film|record|cover|captur|video|stream)(?:e|ed|es|s|ing|ings)?|(?<!\b(?:to|we|i) )shoot|filmed|recorded|covered|captured|streamed|on film|on video|on camera)`;
const MINE = new RegExp(
  String.raw`\b(?:${FILM}|(?:need|want|like|book|have|hire|use) you|(?:is|are|be|would be|'s) (?:also |too )?(?:for you|yours)|also for you|for you (?:too|as well)|you (?:come|be there)|you(?:'d| would) (?:come|be)|second job|needs? (?:somebody|someone|filming|covering|recording)|(?:two|three|more|another|other|extra) jobs?)\b`,
  'iu',
);
const FILMED = new RegExp(
  String.raw`\b(?:that|which) (?:you(?:'d|'ll| would| will| should| could)?|we(?:'d| would)? (?:like|want|love|need)(?: you)?(?: to)?) (?:also |too )?(?:be )?(?:film|record|cover|capture|shoot|filming|filmed)\b|\b(?:you(?:'d| would|'ll| will)|like you to|want you to|need you to|please|could you|can you) (?:also |then |first )?(?:film|record|cover|capture|shoot)\b|\b(?:want|like|love|need)(?:ed|s)? (?:it|that|this) (?:filmed|recorded|covered|captured|on film)\b|\b(?:recce|rehearsal|interviews?|set-?up|run-?through) (?:to be |also |being )?(?:filmed|recorded|covered)\b`,
  'iu',
);
const NEEDED =
  /\b(?:need|want|like|book|have|hire) you\b|\b(?:is|are|be|would be|'s) (?:also |too )?(?:for you|yours)\b|\balso for you\b|\b(?:filmed|recorded|covered|captured|on film)\b|\b(?:follow-?up|pick-?up|second|extra|additional|another) (?:shoot|filming|day)\b/iu;
/** Somebody else's, not settled, of the finished film, or no filming. */
const NOT_MINE =
  /\b(?:no|not|never|nothing|nobody|without|don't|doesn't|isn't|won't|needn't|can't|or|either|if(?! you(?:'d| would)? (?:want|like|can|are free))|maybe|perhaps|possibly|might|may(?! \d)|could be|optional\p{L}*|instead|moved?|rather|ourselves|myself|himself|herself|themselves|own|in-house|somebody else|someone else|another (?:firm|crew|company|videographer|camera\p{L}*|operator)|brother|sister|friend|students?|colleague|photographer|stills|photos?|edit\p{L}*|deliver\p{L}*|upload\p{L}*|online|screen(?:ed|ing)?|shown|premiere\p{L}*|ready|reply|answer|quote|invoice|deposit|last (?:year|time)|rain|backup|reserve|alternativ\p{L}*|only|just|already|call me|phone|ring|discuss\p{L}*|permissions?|permits?|tv|television|press|news|another crew|a crew|(?:will|is|are) (?:also |then )?(?:be )?(?:there )?(?:film|record)ing|they|(?:social media|short) (?:videos?|films?|clips?))\b/iu;
const THAT = /\b(?:that|it|this|them|those|one)\b/i;
/** Who only comes to look, to meet or to set up films on no more days. */
const PREPARES =
  /\b(?:recce|meeting|briefing|site visit|walk-?through|set-?up|setting up|rig|load-?in|rehears\p{L}*|run-?through|travel\p{L}*|hotel|arriv\p{L}*)\b/iu;
/** "Before that, on 9 November, we'd like you to film the rehearsal" */
const BEFORE_THAT = /\bbefore that,? on (?:the )?(?:\p{L}+day,? (?:the )?)?$/iu;
const NEAR = 40;
const REACH = 150;
const LONGEST_STATED = 6;
const FAR = 60;
const LOOKED_THROUGH = 6000;
/** "Remember the wedding on the 15th that we split": a job that is settled already may be none of this one. */
const KNOWN_JOB =
  /\b(?:remember|recall|you know about|as booked|that we split|already (?:doing|filming|booked|covering|down|have you|got you|with us))\b/i;

/** The days, with those that are wanted too or these as a question. */
export function heldAgainstWantedToo({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  if (event.counted || (event.dates.length === 0 && event.doubt !== 'several')) return event;
  const told = mentions
    .slice(0, MOST_MENTIONS)
    .filter(
      ({ past, by, start, said, readings, doubt }) =>
        !past &&
        (!by || BEFORE_THAT.test(text.slice(Math.max(0, start - NEAR), start))) &&
        said !== 'reply' &&
        said !== 'past' &&
        said !== 'delivery' &&
        readings.length < 2 &&
        !doubt,
    );
  const first = event.dates[0] ?? told.find(({ explicit, said }) => explicit && !OF_ELSE.has(said))?.readings[0]?.[0];
  if (first === undefined) return event;
  const added = told.flatMap((mention, at) => {
    const days = saidAgain(mention, told, event.dates, first) ? [] : daysOf(mention, first);
    const sure = days.length === 0 || at === 0 ? undefined : isAdded(text, told, at);
    return sure === undefined ? [] : [{ mention, days, sure: sure && !mention.weekdayOnly }];
  });
  if (added.length === 0)
    return event.dates.length > 0 && !event.dropped && undatedToo(text) ? askedDays(event.where, [event.dates], 'open') : event;
  const more = union(...added.map(({ days }) => days));
  if (event.dropped && !within(event.dates, more)) return event;
  const base = basisOf(event, more);
  const all = union(base, more);
  if (base.length === 0 || (event.dates.length > 0 && within(all, event.dates))) return event;
  // Of days that rules cannot choose among, every one has to be told so.
  if (event.dates.length === 0 && !event.choices.every((days) => within(days, all))) return event;
  const where = [...event.where, ...added.map(({ mention: { start, end } }) => ({ start, end }))];
  const span = Temporal.PlainDate.from(all[0] as string).until(all.at(-1) as string).days;
  return !event.dropped &&
    !KNOWN_JOB.test(text.slice(0, LOOKED_THROUGH)) &&
    added.every(({ sure }) => sure) &&
    all.length <= LONGEST_STATED &&
    span <= FAR
    ? { dates: all, where, choices: [], counted: true }
    : askedDays(where, [base, all], 'open');
}

/** The days to which the others come: those that were settled, left out because of them, or left to choose from. */
function basisOf(event: EventDays, more: readonly string[]): string[] {
  const known = [event.dates, event.dropped ?? [], event.choices.flat()].map((days) => days.filter((day) => !more.includes(day)));
  return union(known.find((days) => days.length > 0) ?? []);
}

function daysOf({ explicit, readings, sequence: { items } }: DateMention, first: string): readonly string[] {
  if (explicit) return readings[0] ?? [];
  const [atom] = items.length === 1 ? items.map((item) => item.atom) : [];
  // "with a rehearsal on the Thursday that you film": the one before.
  if (atom?.weekday !== undefined && atom.day === undefined && !atom.relative) {
    const back = (Temporal.PlainDate.from(first).dayOfWeek - atom.weekday + A_WEEK) % A_WEEK;
    return back === 0 ? [] : [Temporal.PlainDate.from(first).subtract({ days: back }).toString()];
  }
  const near = atom?.day === undefined ? undefined : inMonthOf(first, atom.day);
  return near === undefined ? [] : [near];
}

/** "The Sunday prize-giving as well, that's the 13th": the weekday of a day that is told by its number, or a run in which a settled day lies. */
function saidAgain(mention: DateMention, told: readonly DateMention[], settled: readonly string[], first: string): boolean {
  // "Open every day from the 5th to the 16th, could you film the opening on the 5th?"
  if (!mention.weekdayOnly) return daysOf(mention, first).some((day) => settled.includes(day));
  const named = [...settled, ...told.flatMap((other) => (other.weekdayOnly ? [] : daysOf(other, first)))];
  return mention.sequence.items.some(({ atom }) => named.some((day) => Temporal.PlainDate.from(day).dayOfWeek === atom.weekday));
}

/** "A week later is our choir concert, and that is yours too" */
function undatedToo(text: string): boolean {
  const found = UNDATED.exec(text);
  return found !== null && MINE.test(found[0]) && TOO.test(found[0]) && !NOT_MINE.test(found[0]);
}
const UNDATED =
  /\b(?:the (?:day|week|evening|night|morning)|(?:a|one|two|three) (?:days?|weeks?)|a fortnight) (?:later|after(?: that)?|before(?: that)?|earlier),? (?:is|are|comes?|there(?:'s| is| are)|we have|we hold|our|the)\b[^.;!?\n]{4,120}/iu;
const A_WEEK = 7;

/** Whether a day comes on top and is to be filmed: `true` where both is told in so many words, `false` where one of them is to be concluded, nothing where it is neither. */
function isAdded(text: string, told: readonly DateMention[], at: number): boolean | undefined {
  const { start, end } = told[at] as DateMention;
  const sentence = sentenceAround(text, start, end);
  const [before, next] = [told[at - 1], told[at + 1]];
  const from = Math.max(sentence.start, before?.end ?? 0);
  const to = Math.min(sentence.end, next?.start ?? text.length);
  const clause = `${text.slice(from, start)} ${text.slice(end, to)}`;
  const behind = /^[.;!?]\s+([^.;!?\n]{4,90})/.exec(text.slice(sentence.end, sentence.end + REACH))?.[1] ?? '';
  const follows = to === sentence.end && THAT.test(behind) && MINE.test(behind) && (TOO.test(behind) || FILMED.test(behind)) ? behind : '';
  const words = `${clause} ${follows}`;
  if (NOT_MINE.test(words)) return undefined;
  const mine = FILMED.test(words) || (MINE.test(words) && !(PREPARES.test(clause) && !new RegExp(FILM, 'iu').test(words)));
  const onTop = TOO.test(words) || ON_TOP.test(text.slice(sentence.start, start));
  if (!mine) return undefined;
  // That it is filmed has to be told in so many words, or that I am needed: all else is asked.
  const plainly = FILMED.test(words) || NEEDED.test(words);
  return onTop || FILMED.test(words) ? plainly && (onTop || PREPARES.test(clause)) : undefined;
}
