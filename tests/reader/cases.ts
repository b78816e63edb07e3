/**
 * What the labelled messages teach: of each message whether it asks for work, of each time and date in it what it is said of.
 */
import { lookAt } from '../../core/inquiries/look.ts';
import { dateFeatures, messageFeatures, pageOf, timeFeatures, wordsFeatures } from '../../core/inquiries/learned/features.ts';
import { halfFeatures, openEnds } from '../../core/inquiries/learned/halves.ts';
import { NO_UNIT, payFeatures } from '../../core/inquiries/learned/pay.ts';
import { partFeatures, partsIn } from '../../core/inquiries/learned/part.ts';
import type { ModelName } from '../../core/inquiries/learned/models.ts';
import type { DateMention, SaidTime } from '../../core/inquiries/settle/scene.ts';
import { gazetteer, type Message } from './corpus.ts';
import type { Case } from './fit.ts';

const minutesOf = (wall: string | undefined): number | undefined =>
  wall === undefined ? undefined : Number(wall.slice(11, 13)) * 60 + Number(wall.slice(14, 16));

const isHour = ({ minutes, open }: SaidTime['from'], wall: number | undefined): boolean =>
  wall !== undefined && (minutes % 1440 === wall || (open && minutes % 720 === wall % 720));

/** What a time is, told from the labelled facts; undefined where the label leaves it open. */
function timeIs({ fields, open }: Message, { from, to }: SaidTime, first: boolean): string | undefined {
  const [call, wrap, reply] = [fields.firstCall, fields.lastWrap, fields.replyBy].map(minutesOf);
  if (to) {
    const [calls, wraps] = [isHour(from, call), isHour(to, wrap)];
    if (calls || wraps) return calls && wraps ? 'both' : calls ? 'call' : 'wrap';
  } else if (isHour(from, call)) return isHour(from, wrap) && !first ? 'wrap' : 'call';
  else if (isHour(from, wrap)) return 'wrap';
  if (isHour(from, reply)) return 'reply';
  const unsure = (open.has('firstCall') && call === undefined) || (open.has('lastWrap') && wrap === undefined);
  return unsure ? undefined : 'none';
}

/** Which half of the day an hour is in, where the label has it once. */
function halfIs({ fields }: Message, minutes: number): string | undefined {
  const halves = [fields.firstCall, fields.lastWrap]
    .map(minutesOf)
    .filter((wall) => wall !== undefined && wall % 720 === minutes % 720)
    .map((wall) => (wall as number) < 720);
  return new Set(halves).size === 1 ? (halves[0] ? 'am' : 'pm') : undefined;
}

/** What a date is: the days of the job, a run of which only some are mine, one of several choices, the day of a call or of an answer. */
function dateIs({ fields: { start, end, firstCall, replyBy }, asked }: Message, { readings }: DateMention): string | undefined {
  const days = readings.flat();
  if (days.length === 0) return 'none';
  if (start !== undefined && end !== undefined) {
    const inside = days.filter((date) => date >= start && date <= end).length;
    if (inside > 0) return inside === days.length || readings.length > 1 ? 'event' : 'wider';
  }
  if (firstCall !== undefined && days.includes(firstCall.slice(0, 10))) return 'call';
  const reply = replyBy === undefined ? undefined : Temporal.PlainDate.from(replyBy.slice(0, 10));
  if (reply && (days.includes(reply.toString()) || days.includes(reply.add({ days: 1 }).toString()))) return 'reply';
  if (start !== undefined) return 'none';
  return asked.includes('start') ? 'either' : undefined;
}

/** What a mention of some of the named days is of: of mine, of none of mine, or of one where all of them are mine. */
function partIs({ fields: { start, end } }: Message, known: readonly string[], days: readonly string[]): string | undefined {
  if (start === undefined || end === undefined) return undefined;
  const mine = known.filter((date) => date >= start && date <= end);
  if (mine.length === 0) return undefined;
  if (mine.length === known.length) return 'all';
  if (days.every((date) => mine.includes(date))) return 'mine';
  return days.some((date) => mine.includes(date)) ? undefined : 'not';
}

/**
 * The cases of each model in these messages.
 * @param from dates and times before this offset teach nothing
 */
export function casesIn(messages: readonly Message[], from = 0): Record<ModelName, Case[]> {
  const cases: Record<ModelName, Case[]> = { kind: [], time: [], date: [], part: [], half: [], role: [], pay: [] };
  for (const message of messages) {
    const { text, receivedAt, homeZone, homePlace } = message;
    const { scene, phones, head } = lookAt({ text, receivedAt, homeZone, homePlace, gazetteer });
    const page = pageOf(scene, phones, head);
    cases.kind.push({ features: messageFeatures(page), is: message.isInquiry ? 'inquiry' : 'none' });
    if (!message.isInquiry) continue;
    if (message.fields.role !== undefined) cases.role.push({ features: wordsFeatures(page), is: message.fields.role });
    for (const time of [...scene.times, ...scene.numbers]) {
      const is = timeIs(message, time, time === scene.times[0]);
      if (is !== undefined && time.start >= from) cases.time.push({ features: timeFeatures(page, time), is });
    }
    const { budget } = message.fields;
    const offer = budget && scene.amounts.find(({ amount }) => amount === budget.amount);
    if (offer && offer.start >= from) cases.pay.push({ features: payFeatures(page, offer), is: budget.per ?? NO_UNIT });
    const parts = partsIn(scene);
    for (const one of parts?.named ?? []) {
      const is = partIs(message, parts?.known ?? [], one.days);
      if (parts && is !== undefined && one.mention.start >= from) cases.part.push({ features: partFeatures(page, parts, one), is });
    }
    for (const { time, end, minutes } of openEnds(scene)) {
      const is = halfIs(message, minutes);
      if (is !== undefined && time.start >= from) cases.half.push({ features: halfFeatures(page, time, end), is });
    }
    for (const date of scene.dates) {
      const is = dateIs(message, date);
      if (is !== undefined && date.start >= from) cases.date.push({ features: dateFeatures(page, date), is });
    }
  }
  return cases;
}
