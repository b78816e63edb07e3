/**
 * What an old mail says beside the words with which its writer takes it up again: the new words go before the old ones, fact by fact.
 */
import type { FactName, InquiryFields, Question, Reading, Span } from '../contract/inquiries.ts';
import { clean } from './parts/clean.ts';
import { aboveQuoted, threadOf, type Thread } from './parts/thread.ts';
import { dayWritten } from './parts/written.ts';
import { isSamePerson } from './people/earlier.ts';
import { MONTH, monthWord } from './words.ts';
import { dayChoices, missingQuestions, question } from './questions.ts';

/** How a text is read again: as one that asks for work whatever its words, with days that are known, or another text. */
export type Again = { text?: string; receivedAt?: string; asks?: boolean; chosenDays?: readonly string[] };

const nextDay = (day: string): string => Temporal.PlainDate.from(day).add({ days: 1 }).toString();

/** The days of a reading, each. */
function daysIn({ fields: { start, end }, datesFound }: Reading): string[] {
  if (datesFound) return datesFound;
  if (start === undefined || end === undefined) return [];
  const days: string[] = [];
  for (let day = start; day <= end && days.length < MOST_DAYS; day = nextDay(day)) days.push(day);
  return days;
}
const MOST_DAYS = 60;
/** Of most mails below only the day is known. */
const NOON = '12:00';

/** An hour told for one day, on the day to which that was moved. */
function movedTo(wall: string | undefined, from: string | undefined, to: string | undefined): string | undefined {
  if (wall === undefined || from === undefined || to === undefined) return undefined;
  const by = Temporal.PlainDate.from(from).until(to, { largestUnit: 'days' });
  return Temporal.PlainDateTime.from(wall).add(by).toString({ smallestUnit: 'minute' });
}

/**
 * The reading of a message with what an old mail below it says, where that mail is of the same job.
 * @param text the message as it came
 * @param received when it came, in the zone of home
 * @param now the reading of what was written now
 * @param read reads again
 */
export function withEarlierMail(text: string, received: Temporal.ZonedDateTime, now: Reading, read: (again: Again) => Reading): Reading {
  if (!/^[ \t]{0,3}[>|]|:[ \t]*$|^(?:from|von|de|van|da)\s?:/im.test(text)) return now;
  const plain = clean(text);
  const thread = threadOf(plain.text);
  if (!thread && isOfQuoted(now, plain.text, received.toPlainDate())) return withoutDays(now, [daysIn(now)]);
  if (!thread || !(now.isInquiry || thread.takenUp)) return now;
  const today = received.toPlainDate().toString();
  const written = dayWritten(thread.mail, received.toPlainDate());
  if (written === 'old') return now;
  const before = read({
    text: thread.mail,
    ...(written ? { receivedAt: written.toZonedDateTime({ timeZone: received.timeZoneId, plainTime: NOON }).toString() } : {}),
  });
  const then = daysIn(before);
  if (!before.isInquiry || (before.fields.end ?? today) < today || isAnother(now, before, thread)) return now;
  const later = read({ asks: true });
  const at = (offset: number): number => plain.from(offset + thread.at);
  const join = (reading: Reading, days = then): Reading => joined(reading, before, days, thread, at);
  const stated = daysIn(later);
  const apart = then.length > 0 && later.fields.start !== undefined && !stated.some((day) => then.includes(day));
  if (apart && ADDS.test(thread.words)) return join(withoutDays(later, []), []);
  if (then.length === 0 || (later.fields.start !== undefined && stated.length === 0)) return join(later);
  const days = daysMeant(later, then, thread);
  if (!days) return join(withoutDays(later, stated.length > 0 ? [stated, then] : [then]), []);
  return join(days.join() === stated.join() ? later : read({ asks: true, chosenDays: days }));
}

/**
 * "Could you also do the 14th?" above an answer of somebody else that names days of another month to come: a number or a weekday alone is hardly of the month that is
 * nearest, and is asked about.
 */
function isOfQuoted({ isInquiry, fields }: Reading, text: string, today: Temporal.PlainDate): boolean {
  const { start } = fields;
  // Who tells a place and an hour besides tells of a job itself.
  const own = OF_A_JOB.filter((fact) => fields[fact] !== undefined && !OF_DAYS.has(fact));
  if (!isInquiry || start === undefined || own.length > FEWEST_OWN) return false;
  const { above, below } = aboveQuoted(text);
  if (below === '' || !TAKES_UP.test(above) || EXACT.test(above) || IN_MONTH.test(above) || !(NUMBERED.test(above) || WEEKDAY.test(above)))
    return false;
  const months = [...below.matchAll(DATED)].flatMap(
    ({ groups }) => monthWord((groups?.['before'] ?? groups?.['behind'] ?? '').toLowerCase()) ?? [],
  );
  const ahead = months.filter((month) => (month - today.month + MONTHS) % MONTHS < FAR);
  return ahead.length > 0 && !ahead.includes(Temporal.PlainDate.from(start).month);
}
/** Words that go on from what was said before. */
const TAKES_UP =
  /(?<!\p{L})(?:also|too|now|then|instead|as well|both|still|another|moved?|dropped|change[ds]?|the other|rather|either|works?|fine|ok|okay|after all)(?!\p{L})/iu;
const MONTHS = 12;
const FAR = 10;

/** What a message of its own tells. */
const OF_A_JOB = ['place', 'role', 'start', 'days', 'firstCall', 'budget', 'deliverables'] as const;
const FEWEST_OWN = 2;
const OF_DAYS: ReadonlySet<FactName> = new Set(['start', 'days']);

/** A message that tells of a job itself: the old mail is of another where they are for two towns, or where nothing takes it up. */
function isAnother({ isInquiry, fields, questions }: Reading, before: Reading, { takenUp, holds, words }: Thread): boolean {
  if (!isInquiry) return false;
  const dated = fields.start !== undefined || questions.some(({ field, choices }) => field === 'start' && choices.length > 0);
  if (dated && fields.place !== undefined && fields.place !== before.fields.place) return true;
  // "It's the 27th and 28th now": a number alone is a day of the month that the old mail tells.
  const own = OF_A_JOB.filter((fact) => fields[fact] !== undefined && !(OF_DAYS.has(fact) && !EXACT.test(words)));
  return !takenUp && !holds && own.length >= FEWEST_OWN;
}

/** A date with its month, or a day told from today. */
const EXACT = new RegExp(
  String.raw`(?<![\p{L}\d])(?:\d{1,2}\/\d{1,2}(?!\d)|\d{1,2}\.(?:0?[1-9]|1[0-2])\.|\d{1,2}-\d{1,2}-\d\d|\d{1,2}(?:st|nd|rd|th|\.)?,? (?:of )?${MONTH}|${MONTH}\.? \d{1,2}(?!\d)|tomorrow|tonight|today|(?:this|next|coming) (?:mon|tues?|wed|thu|fri|sat|sun)\p{L}*)`,
  'iu',
);
/** "the second Tuesday of January" */
const IN_MONTH = new RegExp(String.raw`(?<!\p{L})(?:of|in) ${MONTH}(?!\p{L})`, 'iu');
const DATED = new RegExp(
  String.raw`(?<![\p{L}\d])(?:\d{1,2}(?:st|nd|rd|th|\.)?,? (?:of )?(?<before>${MONTH})|(?<behind>${MONTH})\.? \d{1,2}(?!\d))`,
  'giu',
);
/** Some of the days of the old mail are taken back: "the 29th is off the table", "it's just the 27th and 28th now", "a day later". */
const FEWER =
  /\b(?:drop(?:s|ped|ping)?|off the table|lost|losing|(?:is|are|has|have) gone|(?:a|one|two) days? (?:less|fewer|later|earlier|longer|shorter)|shorten\w*|down to|cut (?:to|down)|(?:just|only)\b[^.!?\n]{0,40}\b(?:now|after all|in the end)|now (?:just|only)|(?:it's|it is|its) (?:now|just|only))\b/i;
/** Days beside those of the old mail. */
const ADDS = /\b(?:add(?:ed|ing)?|(?:extra|additional|another|second|further) (?:day|date)|both days)\b/i;
const NUMBERED = /\d(?:st|nd|rd|th)\b|\b(?:the|den|le|el|il) \d{1,2}(?![\d:.])/i;
const WEEKDAY = /(?<!\p{L})(?:mon|tues|wednes|thurs|fri|satur|sun)day(?!\p{L})/iu;

/**
 * The days that are meant by the new words: those that they state; those of the old mail, where they name none or only their number or weekday;
 * the one beside those that they take back. Nothing where that stays open.
 */
function daysMeant(later: Reading, then: readonly string[], thread: Thread): readonly string[] | undefined {
  const stated = daysIn(later);
  const choices = later.questions.find(({ field }) => field === 'start')?.choices ?? [];
  const named = stated.length > 0 ? [stated] : choices.flatMap(({ days }) => (days ? [days] : []));
  const replies = later.spans.filter(({ field }) => field === 'replyBy');
  const exact = EXACT.test(replies.reduce((words, { text }) => words.replace(text, ' '), thread.words));
  const pointed = WEEKDAY.test(thread.words) || NUMBERED.test(thread.words);
  if (then.length > 1 && !exact && !thread.mended && pointed && FEWER.test(thread.words)) return undefined;
  if (named.length === 0) return exact && thread.mended ? undefined : then;
  if (stated.length > 0 && (exact || stated.some((day) => then.includes(day)))) return stated;
  if (!exact && !pointed) return then;
  if (!exact) {
    const byWeekday = WEEKDAY.test(thread.words) && !NUMBERED.test(thread.words);
    const alike = then.filter((day) =>
      named.flat().some((other) => (byWeekday ? sameWeekday(day, other) : day.slice(-2) === other.slice(-2))),
    );
    // "Friday's start is 9, not 8": what is mended is the hour of one of them.
    const ofHour = thread.holds && HOUR_OF_DAY.test(thread.words);
    if (alike.length > 0) return thread.mended && !ofHour ? alike : then;
    return undefined;
  }
  // "They have added the Sunday, so 2 and 3 October now"
  const [only] = named;
  if (only && named.length === 1 && only.length > then.length && then.every((day) => only.includes(day))) return only;
  const others = named.filter((days) => !days.some((day) => then.includes(day)));
  if (thread.mended) return others.length === 1 ? others[0] : undefined;
  return others.length < named.length ? then : undefined;
}
const sameWeekday = (one: string, other: string): boolean =>
  Temporal.PlainDate.from(one).dayOfWeek === Temporal.PlainDate.from(other).dayOfWeek;

const HOUR_OF_DAY =
  /\b(?:call|start|arrival|finish|wrap|end|load-?in|set-?up|hours?|times?)\b[^.!?\n]{0,30}\b(?:on (?:the )?)?(?:mon|tues|wednes|thurs|fri|satur|sun)day\b|\b(?:mon|tues|wednes|thurs|fri|satur|sun)day(?:'s)? (?:call|start|arrival|finish|wrap|end|load-?in|set-?up)\b/i;

/** A reading without its days, which are asked for. */
function withoutDays({ fields, questions, datesFound: _open, ...rest }: Reading, choices: readonly (readonly string[])[]): Reading {
  const { start: _start, end: _end, days: _days, firstCall: _call, lastWrap: _wrap, ...kept } = fields;
  const open = questions.some(({ field, choices: known }) => field === 'start' && known.length > 0);
  return {
    ...rest,
    fields: kept,
    questions: open
      ? questions
      : [question('start', 'On which dates is it?', dayChoices(choices, 'start')), ...questions.filter(({ field }) => field !== 'start')],
    spans: rest.spans.filter(({ field }) => (kept as InquiryFields)[field] !== undefined),
  };
}

/** Who wrote a mail, by the line that begins it: "On Sun, Sep 12 Lorne Abernathy <lorne@...> wrote:" */
const WRITER =
  /^[^\n]{0,60}?(?<!\p{L})(?!(?:AM|PM|On|Am)\s)(\p{Lu}[\p{L}'-]+(?:\s\p{Lu}[\p{L}'.-]*){1,3})\s?[<(]([^\s<>()]{1,60}@[^\s<>()]{3,60})[>)]/u;
/** An hour that the new words move without a reading that tells which. */
const HOURS_MOVED =
  /\b(?:hours?|minutes?|mins?|half|bit|little)[^.!?\n]{0,12} (?:earlier|later|sooner)\b|\b(?:rather than|instead of|not|no longer) (?:at )?\d{1,2}(?:[:.h]\d\d)?(?: ?[ap]m| ?h| uhr| o'clock)?(?![\d/-]|\.\d|th|st|nd|rd| ?(?:€|euro|k\b|of|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec))/i;
const DAYS: readonly FactName[] = ['start', 'end', 'days'];
const WHO: ReadonlySet<FactName> = new Set(['contactName', 'contactEmail']);
const PLACE: readonly FactName[] = ['place', 'country'];

function joined(now: Reading, before: Reading, then: readonly string[], thread: Thread, at: (offset: number) => number): Reading {
  const days = daysIn(now);
  // Other days may be those of another job, unless the old mail is mended by them.
  const sameJob = days.length === 0 || then.length === 0 || days.some((day) => then.includes(day)) || thread.mended || thread.holds;
  const old: InquiryFields = {};
  const has = (field: FactName): boolean =>
    now.fields[field] !== undefined || now.questions.some((one) => one.field === field && one.choices.length > 0);
  const take = (...fields: FactName[]): void => {
    for (const field of fields) if (before.fields[field] !== undefined) Object.assign(old, { [field]: before.fields[field] });
  };
  if (now.fields.role === undefined || now.fields.role === 'shoot') take('role');
  if (sameJob) {
    // Without days that are known the old ones are not meant.
    if (!has('start') && then.length > 0) take(...DAYS);
    else if (now.fields.end === undefined && now.fields.start === before.fields.start && !has('end')) take('end', 'days');
    const [start, end] = [now.fields.start ?? old.start, now.fields.end ?? old.end];
    const call = movedTo(before.fields.firstCall, before.fields.start, start);
    const wrap = movedTo(before.fields.lastWrap, before.fields.end, end);
    const moved = HOURS_MOVED.test(thread.words) && now.fields.firstCall === undefined && now.fields.lastWrap === undefined;
    if (!moved && !has('firstCall') && call !== undefined) old.firstCall = call;
    const begins = now.fields.firstCall ?? old.firstCall;
    if (!moved && !has('lastWrap') && wrap !== undefined && (begins === undefined || begins < wrap)) old.lastWrap = wrap;
    if (!has('place')) take(...(now.fields.country === undefined ? PLACE : ['place' as const]));
    if (!has('replyBy')) take('replyBy');
    if (!has('deliverables')) take('deliverables');
    const [name, other] = [now.fields.contactName, before.fields.contactName];
    if (!has('organisation') && name !== undefined && other !== undefined && isSamePerson(name, other)) take('organisation');
    if (now.fields.budget === undefined && !has('budget')) take('budget');
    else if (now.fields.budget && before.fields.budget) old.budget = { ...before.fields.budget, ...now.fields.budget };
  }
  // Who signs nothing is who wrote the mail before.
  const writer = now.fields.contactName === undefined ? WRITER.exec(thread.mail) : null;
  const who = { contactName: writer?.[1], contactEmail: now.fields.contactEmail ?? writer?.[2] };
  if (writer) Object.assign(old, who);
  const spanOf = (field: FactName, { 0: line, index }: RegExpExecArray, words: string): Span => {
    const start = index + line.lastIndexOf(words);
    return { field, start: at(start), end: at(start + words.length - 1) + 1, text: words };
  };
  const fields: InquiryFields = { ...now.fields, ...old };
  const taken = (field: FactName): boolean => old[field] !== undefined && now.fields[field] === undefined;
  const asked = [...now.questions, ...(sameJob ? before.questions : [])].filter(({ choices }) => choices.length > 0);
  const bare = now.questions.filter(({ choices }) => choices.length === 0);
  const questions: Question[] = [];
  for (const one of [...asked, ...bare])
    if (fields[one.field] === undefined && !questions.some(({ field }) => field === one.field)) questions.push(one);
  const spans = [
    ...now.spans,
    ...(writer
      ? [
          spanOf('contactName', writer, writer[1] ?? ''),
          ...(taken('contactEmail') ? [spanOf('contactEmail', writer, writer[2] ?? '')] : []),
        ]
      : []),
    ...before.spans
      .filter(({ field }) => taken(field) && !WHO.has(field))
      .map((span) => ({ ...span, start: at(span.start), end: at(span.end - 1) + 1 })),
  ];
  const datesFound = taken('start') ? before.datesFound : now.datesFound;
  const placeFound = taken('place') ? before.placeFound : now.placeFound;
  return {
    isInquiry: true,
    fields,
    questions: [...questions, ...missingQuestions(fields, questions)],
    spans: spans.toSorted((a, b) => a.start - b.start || a.end - b.end),
    ...(datesFound ? { datesFound } : {}),
    ...(placeFound ? { placeFound } : {}),
  };
}
