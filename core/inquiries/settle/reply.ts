/**
 * By when an answer is wanted: wall time in the home zone. Midnight after a day is 00:00 of the next date; a day alone lasts to 23:59.
 */
import type { DateMention, ReplyBy, SaidTime, Scene, Where } from './scene.ts';
import { sentenceAround } from '../parts/sentences.ts';
import { dayOfHour, thenMeant } from './by-then.ts';
import { earlierThan } from './days-earlier.ts';
import { inMonthOf } from './days-among.ts';
import { UNKNOWN_ZONE } from '../times/zones.ts';
import { softHour } from './soft-hours.ts';
import { wallOf } from './walls.ts';
import { later, OFFICE_CLOSES, withinOf } from './within.ts';

function converted(scene: Scene, wall: string, zone: string | undefined): string {
  const home = scene.received.timeZoneId;
  if (zone === undefined || zone === home) return wall;
  return Temporal.PlainDateTime.from(wall).toZonedDateTime(zone).withTimeZone(home).toPlainDateTime().toString({ smallestUnit: 'minute' });
}

/** British Columbia calls its time Pacific and keeps it all year (IANA time zone database, 2026): either may be meant. */
const SAME_NAME: Readonly<Record<string, string>> = { 'America/Vancouver': 'America/Los_Angeles' };

/** The home wall times that an hour said in a zone may be. */
const wallsOf = (scene: Scene, wall: string, zone: string | undefined): string[] => [
  converted(scene, wall, zone),
  ...(zone !== undefined && SAME_NAME[scene.received.timeZoneId] === zone ? [wall] : []),
];

/** "by the 24th": the next one, whatever month another sentence names. */
function nextOf(scene: Scene, { start, end }: Where): string | undefined {
  const day = Number(/^(?:the )?(\d{1,2})(?:st|nd|rd|th)\.?$/i.exec(scene.text.slice(start, end))?.[1] ?? 0);
  const today = scene.received.toPlainDate();
  return [today, today.add({ months: 1 })]
    .map((month) => inMonthOf(month.toString(), day))
    .find((on) => on !== undefined && on > today.toString());
}

const CLOSE = /\b(?:cob|close of (?:business|play)|eob|end of business|end of (?:the )?working day)\b/i;

/** The one of these that is still to come; asked about where more are or none is. */
function stated(scene: Scene, where: Where[], walls: readonly string[]): ReplyBy {
  const now = later(scene, 0);
  const ahead = [...new Set(walls)].filter((wall) => wall > now);
  return ahead.length === 1 ? { wall: ahead[0] as string, where, choices: [] } : { where, choices: ahead };
}

/** The home wall times that an hour on a day may be. */
const hoursAt = (scene: Scene, time: SaidTime, on: string): string[] =>
  hoursOf(time, scene.text).flatMap((minutes) => wallsOf(scene, wallOf(Temporal.PlainDate.from(on), minutes), time.zone));

const PART_REACH = 16;
const PART_AFTER = /^(?: in the)? (morning|afternoon|arvo|evening|night)\b/i;

/** A time without morning or evening: the one that is still to come on that day; both where both are. */
function hoursOf(time: SaidTime, text: string): number[] {
  const { minutes, open, bare } = time.from;
  const lead = text.slice(Math.max(0, Math.min(time.date?.start ?? time.start, time.start - PART_REACH)), time.start);
  const after = Math.max(time.end, time.date?.end ?? 0);
  // "by 10 tomorrow morning"
  const part =
    /\b(?:morning|afternoon|arvo|evening|night|tonight)\b/i.exec(lead)?.[0] ?? PART_AFTER.exec(text.slice(after, after + PART_REACH))?.[1];
  if (open && part !== undefined && minutes < 720) return [/morning/i.test(part) ? minutes : minutes + 720];
  // "by 10:00" is written as clocks show it; "by 10" may be either.
  if (!open || (!bare && minutes >= 7 * 60 && minutes % 60 === 0)) return [minutes];
  if (minutes >= 60 && minutes < 7 * 60) return [minutes + 720];
  return minutes === 720 ? [720] : [minutes, minutes + 720];
}

const LATEST =
  /^[\s,(]*(?:please|pls|thanks|if (?:you can|possible))?[\s,(]*(?:at (?:the )?)?(?:latest|by|before|no later than)(?: at)?\s$/i;
const LATEST_REACH = 36;
/** "by Friday dark. Well, say 6 PM" */
const SAY_THEN =
  /^[^.;!?\n\d]{0,14}[.,;]? (?:well|or|ok|okay|let's|so|maybe|make (?:it|that)|call it)?,? ?(?:say|make (?:it|that)|call it) $/i;
/** "on the 18th, same time" */
const SAME_TIME = /^,? (?:at )?(?:the )?same (?:time|hour)\b/i;

/** "Tuesday 4 May at 18", "Sunday evening (23 May), 6pm" */
const TO_TIME =
  /^[\s,()]*(?:(?:in the )?(?:morning|afternoon|arvo|evening|night)\b[\s,()]*)?(?:(?:at|by|before|latest|alle|ore|à|a las?|om|um|kl\.?)\s)?$/i;
/** "until noon on Thursday" */
const ON_DAY = /^,? (?:on|of) (?:the )?$/i;
/** "by the day before Thanksgiving, 5 o'clock": a day that nobody has read. */
const OTHER_DAY =
  /\b(?:(?:day|night|evening|eve|morning|weekday|week|week-?end) (?:before|after|of|prior)|(?:veille|vortag|víspera|vigilia))\b[^.?!;\n]{0,40}$/i;
/** "by the 18th, which is today, so let's say the 25th" */
const RATHER =
  /\b(?:let's say|let us say|shall we say|so say|make (?:it|that)|call it|better|i mean|i meant|so|i\.e\.|ie|that is|that's|sorry|ideally|preferably|rather|at the latest|latest)[,:]?\s(?:by |on |before )?(?:the )?$/i;
/** "by the end of next week if you like it? I mean Friday the 9th", "before we print on the 22nd? Let's say by the 20th" */
const THAT_IS =
  /^[^.?!\n]{0,50}[.?!] (?:sorry,? |so,? |well,? )?(?:i mean|i meant|meaning|that is|that's|which is|let's say|let us say|say|rather|better|make (?:it|that)),? (?:by |on |until )?(?:the )?$/i;
/** "before Friday", "before the committee meets, which is Thursday" */
const BEFORE =
  /(?<!\p{L})(?:avant(?: le)?|antes del?(?: día)?|prima del?|voor|vor(?: dem)?)\s+$|(?<!\bon or )\bbefore\s+(?:(?:the|our|my|their|her|his)\s(?!end |close )[\p{L}' ]{2,30}(?:,|,? which is|,? on|,? that's|,? this)\s)?(?:the\s+)?$/iu;
const INCLUSIVE = /^,? ?\(?(?:inclus|includ|compris|einschl|tot en met|or on (?:it|the day)|or that (?:same )?day)/i;
/** "before the end of May": its last day is before its end. */
const AN_END =
  /^(?:the |das |la |le |het )?(?:(?:very )?end|ende|fin|fine|einde?|final|close of|(?:month|year)(?:'s)?[- ](?:end|is))(?!\p{L})/iu;
/** "by the Friday before, 3 December" */
const NAMED_AGAIN = /^(?: before| morning| afternoon| evening| night)?[\s,(–-]{1,3}(?:(?:which|that) is |that's |so )?(?:the |i\.e\. )?$/i;
/** "before Saturday? Friday 18:00 would be good": the day that is wished for. */
const WISHED_AFTER =
  /^[^.?!\n]{0,16}\b(?:would be|is|'d be) (?:even )?(?:better|best|good|great|ideal|perfect|fine|enough|early enough)\b/i;
/** "today or tomorrow": the later of them will do. */
const OR = /^,? (?:or|oder|ou|o|of) $/i;
/** "Friday, before the bank shuts": an hour that nobody has read. */
const EARLIER_THAT_DAY = /^[^.?!;\n]{0,24}\b(?:before|avant|antes de|vor|voor)\s[^.?;\n]{0,30}\d/i;
const SAME_SENTENCE = 160;
/** An hour for an answer stands this near to its day. */
const BESIDE = 80;

/** "by Valentine's, that's the Sunday": the weekday of the day that was named. */
const SAME_DAY = /\b(?:that's|that is|which is) (?:the |a )?$/i;

/** The day that corrects or tells the one by which an answer is wanted. */
function toldBy(scene: Scene, date: DateMention | undefined): DateMention | undefined {
  if (date === undefined) return undefined;
  return scene.dates.find(
    (one) =>
      one.start >= date.end &&
      one.start - date.end <= SAME_SENTENCE &&
      one.readings.length === 1 &&
      !one.past &&
      !(one.weekdayOnly && date.readings.length > 0 && SAME_DAY.test(scene.text.slice(date.end, one.start))) &&
      (OR.test(scene.text.slice(date.end, one.start)) ||
        (one.said === 'reply' &&
          /[.?!]/.test(scene.text.slice(date.end, one.start)) &&
          WISHED_AFTER.test(scene.text.slice(one.end, one.end + 40))) ||
        NAMED_AGAIN.test(scene.text.slice(date.end, one.start)) ||
        THAT_IS.test(scene.text.slice(date.end, one.start)) ||
        (RATHER.test(scene.text.slice(Math.max(date.end, one.start - 30), one.start)) &&
          one.start <= sentenceAround(scene.text, date.start, date.end).end)),
  );
}

/** "I tell the trustees by Sunday, so let me know by Saturday": the one day is theirs, the other is put to me. */
const PUT_TO_ME =
  /\b(?:let (?:me|us) know|(?<=(?:^|[.!?\n]\s?)(?:please )?)(?:confirm|accept|decide)|(?:if |can |could |may )?(?:i|we) (?:can |could |may )?hear|tell (?:me|us)|repl(?:y|ies)|respond|answer|(?:get|come) back to (?:me|us)|(?:like|need|want) to (?:know|hear)|hear (?:back )?from you)\b[^.?!;,\n]{0,24}\b(?:by|before|not? later than|until|latest) (?:(?:noon|midnight|\d{1,2}(?:[.:]\d\d)?\s?(?:[ap]m)?) (?:on )?)?(?:the )?$/i;
const PUT_REACH = 70;
/** "The client needs a name by 19 May, so get back to me on the 18th" */
const SO_PUT =
  /\bso (?:please )?(?:let (?:me|us) know|tell (?:me|us)|repl(?:y|ies)|respond|answer|(?:get|come) back to (?:me|us))\b[^.?!;,\n]{0,24}\bon (?:the )?$/i;
/** "We send the crew list on Friday", "the client decides by 12 March": what somebody else does by then. */
const THEIR_STEP =
  /(?:^|[.!?;:,\n]\s?|\b(?:and|as|because|since|so) )(?:(?:the |my |our )?(?:client|committee|board|team|agency|funder|office|council|organi[sz]ers?|printers?|members|trustees|producer|director|boss|secretary)|they|he|she|we|i)(?:'ll|'d|'m|'re)? (?:\p{L}+ ){0,3}?(?:decides?|deciding|meets?|meeting|releases?|books?|tells?|prints?|reports?|chooses?|announces?|presents?|submits?|puts?|orders?|sends?|closes?|needs?|wants?|sees?|signs?|locks?|hands?)\b(?<rest>[^.;?!,]{0,50})$/iu;
const TO_ME = /\b(?:know|hear|you|your|answer|reply|replies|yes|no|word|response|confirmation)\b/i;
/** "by the 3rd if you can, the 4th at the very latest" */
const AT_LATEST = /^,?\sat the (?:very )?latest\b/i;

/** Decide by when; nothing where no answer is asked for by a time. */
export function replyOf(scene: Scene): ReplyBy {
  const today = scene.received.toPlainDate();
  const nowWall = later(scene, 0);
  const earlier = earlierThan(scene);
  if (earlier) return stated(scene, earlier.where, earlier.time ? hoursAt(scene, earlier.time, earlier.on) : [`${earlier.on}T23:59`]);
  const within = withinOf(scene);
  const said = scene.dates.filter((mention) => mention.said === 'reply' && !mention.past);
  // "I need to know this week. Friday latest.": the day holds.
  const asked = said.some(({ readings }) => readings.length > 0) ? said.filter(({ readings }) => readings.length > 0) : said;
  // "I'm confirming crew on Friday, so let me know by Thursday": the closing date is mine.
  const closing = asked.filter(({ by }) => by);
  const near = closing.length > 0 ? closing : asked;
  const put = asked.filter(({ start, end, by }) => {
    const lead = scene.text.slice(Math.max(0, start - PUT_REACH), start);
    return (by ? PUT_TO_ME : SO_PUT).test(lead) || (by && AT_LATEST.test(scene.text.slice(end, end + 24)));
  });
  const theirs = near.filter(({ start }) => {
    const step = THEIR_STEP.exec(scene.text.slice(Math.max(0, start - PUT_REACH), start));
    return step !== null && !TO_ME.test(step[0]);
  });
  const others = near.filter((mention) => !theirs.includes(mention));
  const mine = new Set(put.map(({ readings }) => readings.join())).size === 1 ? put : others.length > 0 ? others : near;
  // "by next Friday, the 16th": the second says which of two is meant.
  const which = mine.find(
    ({ readings }) => readings.length === 1 && mine[0]?.readings.some((reading) => reading.join() === readings[0]?.join()),
  );
  const first = mine[0] && mine[0].readings.length > 1 ? (which ?? mine[0]) : mine[0];
  const told = toldBy(scene, first);
  const then =
    first || scene.times.some(({ said: of, date: on }) => of === 'reply' && (on === undefined || on.said === 'reply'))
      ? undefined
      : thenMeant(scene);
  const date = told ?? first ?? then?.date;
  // Two days by which somebody answers somebody: one of them is not mine.
  const rivals = mine.filter((mention) => mention.readings.length === 1);
  const days = told ? [] : [...new Set(rivals.map((mention) => mention.readings[0]?.at(-1) ?? ''))];
  if (days.length > 1) return { where: rivals, choices: days.map((on) => `${on}T23:59`) };
  const time =
    then?.time ??
    scene.times.find(
      (one) =>
        (one.said === 'reply' &&
          (date === undefined ||
            one.date !== undefined ||
            (one.end <= date.start
              ? sentenceAround(scene.text, date.start, date.end).start <= one.start && date.start - one.end <= BESIDE
              : one.start - date.end <= BESIDE)) &&
          (one.date === undefined || one.date === date || one.date.said === 'reply')) ||
        (one.date !== undefined &&
          one.date === date &&
          (one.said === undefined ||
            TO_TIME.test(scene.text.slice(date.end, one.start)) ||
            ON_DAY.test(scene.text.slice(one.end, date.start)))) ||
        // "by 31 August please, latest noon"
        (date !== undefined &&
          one.date === undefined &&
          one.start >= date.end &&
          one.start - date.end <= LATEST_REACH &&
          (LATEST.test(scene.text.slice(date.end, one.start)) || SAY_THEN.test(scene.text.slice(date.end, one.start)))),
    ) ??
    (date !== undefined && SAME_TIME.test(scene.text.slice(date.end, date.end + LATEST_REACH))
      ? scene.times.findLast(({ end }) => end <= date.start)
      : undefined);
  if (!date && !time) return within ?? { where: [], choices: [] };
  if (time?.zone === UNKNOWN_ZONE) return { where: [time], choices: [] };
  const around = date ?? time;
  const clause = scene.text.slice(Math.max(0, (around?.start ?? 0) - 70), (around?.end ?? 0) + 30);
  const where = [date, time].filter((one) => one !== undefined).map(({ start, end }) => ({ start, end }));
  if (!date && time) {
    if (time.to || OTHER_DAY.test(scene.text.slice(Math.max(0, time.start - BESIDE), time.start))) return { where, choices: [] };
    const on = Temporal.PlainDate.from(dayOfHour(scene, time)?.readings[0]?.at(-1) ?? today);
    const walls = hoursOf(time, scene.text).flatMap((minutes) => wallsOf(scene, wallOf(on, minutes), time.zone));
    const ahead = [...new Set(walls)].filter((wall) => wall > nowWall);
    if (ahead.length === 1) return { wall: ahead[0] as string, where, choices: [] };
    return {
      where,
      choices:
        ahead.length > 1
          ? ahead
          : walls.map((wall) => Temporal.PlainDateTime.from(wall).add({ days: 1 }).toString({ smallestUnit: 'minute' })),
    };
  }
  if (!date) return { where, choices: [] };
  if (!time && EARLIER_THAT_DAY.test(scene.text.slice(date.end, date.end + 60))) return { where, choices: [] };
  const before =
    BEFORE.test(scene.text.slice(Math.max(0, date.start - 60), date.start)) &&
    !INCLUSIVE.test(scene.text.slice(date.end, date.end + 24)) &&
    !AN_END.test(scene.text.slice(date.start, date.end));
  const walls: string[] = [];
  // "today or tomorrow": the later of them will do.
  const either = /\sor\s/i.test(scene.text.slice(date.start, date.end));
  const next = nextOf(scene, date);
  const sooner = next !== undefined && date.readings.every(([on]) => on !== undefined && next < on) ? [[next]] : [];
  const sentence = sentenceAround(scene.text, date.start, date.end);
  // Only a month that the sentence itself names may be meant instead.
  const alone = !scene.dates.some((one) => one !== date && one.start >= sentence.start && one.end <= sentence.end);
  const open = [...sooner, ...date.readings];
  const coming = alone && next !== undefined && open.some(([on]) => on === next);
  const work = coming ? firstOfWork(scene, date) : undefined;
  // An answer is wanted before the work: of this month's and the next one's, that which is not.
  const inTime = work === undefined ? [[next as string]] : open.filter(([on]) => on !== undefined && on < work);
  const meant = coming && inTime.length > 0 ? inTime : open;
  const that = thatWeekday(scene, date);
  for (const reading of that ? [[that]] : either ? date.readings.slice(-1) : meant) {
    const on = reading.length === 1 ? reading[0] : undefined;
    if (on === undefined) continue;
    const plain = Temporal.PlainDate.from(on);
    const soft = time ? undefined : softHour(scene.text, date.end);
    if (time && !time.to) walls.push(...hoursAt(scene, time, on));
    else if (soft !== undefined) walls.push(wallOf(plain, soft));
    else if (CLOSE.test(clause)) walls.push(wallOf(plain, OFFICE_CLOSES), wallOf(plain, 23 * 60 + 59));
    else if (partOf(scene.text, date.end) !== undefined)
      walls.push(wallOf(plain, partOf(scene.text, date.end) as number), wallOf(plain, 23 * 60 + 59));
    else if (before) walls.push(wallOf(plain.subtract({ days: 1 }), 23 * 60 + 59), wallOf(plain, 23 * 60 + 59));
    else walls.push(wallOf(plain, 23 * 60 + 59));
  }
  const ahead = [...new Set(walls)].filter((wall) => wall > nowWall);
  return ahead.length === 1 ? { wall: ahead[0] as string, where, choices: [] } : { where, choices: ahead };
}

/** The first day that is told of the work itself. */
const firstOfWork = ({ dates }: Scene, reply: DateMention): string | undefined =>
  dates
    .filter((one) => one !== reply && !one.past && one.readings.length === 1 && !/^(?:reply|delivery|other|past)$/.test(one.said ?? ''))
    .map(({ readings }) => readings[0]?.[0] ?? '')
    .toSorted()[0];

/** "I report on Thursday 9 December, so let me know by that Wednesday": the one before the day that was named. */
function thatWeekday({ text, dates }: Scene, { weekdayOnly, sequence: { items }, start }: DateMention): string | undefined {
  const [weekday, named] = [items[0]?.atom.weekday, dates.findLast(({ end }) => end <= start)];
  const on = named?.readings[0]?.[0];
  if (!weekdayOnly || weekday === undefined || items.length > 1 || on === undefined || named?.readings.length !== 1) return undefined;
  if (named.weekdayOnly || named.past || start - named.end > BESIDE || !/\bthat $/i.test(text.slice(Math.max(0, start - 6), start)))
    return undefined;
  const day = Temporal.PlainDate.from(on);
  return day.subtract({ days: (day.dayOfWeek - weekday + 7) % 7 }).toString();
}

/** "Friday morning", "tomorrow afternoon": an end that is not said to the hour. */
function partOf(text: string, end: number): number | undefined {
  const word = /^\s(?:in the )?(morning|lunchtime|lunch|afternoon|arvo)\b/i.exec(text.slice(end, end + 24))?.[1]?.toLowerCase();
  return word === undefined ? undefined : word === 'afternoon' || word === 'arvo' ? 18 * 60 : 12 * 60;
}
