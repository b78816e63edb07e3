/**
 * What the labelled messages teach: of each message whether it asks for work, of each time and date in it what it is said of.
 */
import { lookAt, type Sight } from '../../core/inquiries/look.ts';
import { dateFeatures, messageFeatures, pageOf, timeFeatures, wordsFeatures, type Page } from '../../core/inquiries/learned/features.ts';
import { halfFeatures, openEnds } from '../../core/inquiries/learned/halves.ts';
import { lengthFeatures } from '../../core/inquiries/learned/length.ts';
import { NO_UNIT, payFeatures } from '../../core/inquiries/learned/pay.ts';
import { letterOf, namesIn, partyFeatures } from '../../core/inquiries/learned/party.ts';
import { partFeatures, partsIn } from '../../core/inquiries/learned/part.ts';
import { townFeatures, townsNamed } from '../../core/inquiries/learned/town.ts';
import type { ModelName } from '../../core/inquiries/learned/models.ts';
import { askerOf } from '../../core/inquiries/people/asker.ts';
import { knownTown } from '../../core/inquiries/places/home.ts';
import type { GazetteerPlace } from '../../core/places/gazetteer.ts';
import { placesNamed } from '../../core/places/search.ts';
import type { DateMention, SaidTime, Where } from '../../core/inquiries/settle/scene.ts';
import { lower } from './compared.ts';
import { gazetteer, type Message } from './corpus.ts';
import type { Case } from './fit.ts';

const minutesOf = (wall: string | undefined): number | undefined =>
  wall === undefined ? undefined : Number(wall.slice(11, 13)) * 60 + Number(wall.slice(14, 16));

const isHour = ({ minutes, open }: SaidTime['from'], wall: number | undefined): boolean =>
  wall !== undefined && (minutes % 1440 === wall || (open && minutes % 720 === wall % 720));

/** What a time is, told from the labelled facts; undefined where the label leaves it open. */
export function timeIs({ fields, open }: Message, { from, to }: SaidTime, first: boolean): string | undefined {
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
export function dateIs({ fields: { start, end, firstCall, replyBy }, asked }: Message, { readings }: DateMention): string | undefined {
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

/** Whether a message asks for one day or for more, or leaves its days open. */
export function lengthIs({ fields: { start, days }, open }: Message): string | undefined {
  if (start === undefined) return open.has('start') ? undefined : 'open';
  return days === undefined ? undefined : days === 1 ? 'one' : 'more';
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

/** Of names that are nobody's every so many-th teaches: there are more than enough. */
const SPARED = 3;

/** What each name in a message is, those that rules take for who asks among them. */
function partyCases({ fields, open, homePlace }: Message, sight: Sight, within: (where: Where) => boolean): Case[] {
  const letter = letterOf(sight);
  const isTown = (name: string): boolean => placesNamed(gazetteer, name).some((found) => knownTown(found, homePlace));
  const { name, organisation } = askerOf(sight.plain.text, sight.parts, isTown);
  const ruled = [...(name && !open.has('contactName') ? [name] : []), ...(organisation && !open.has('organisation') ? [organisation] : [])];
  const others = namesIn(letter.page.scene.text).filter((one) => !ruled.some(({ start, end }) => start === one.start && end === one.end));
  let spare = 0;
  return [...ruled, ...others].flatMap((one, index) => {
    if (!within(one)) return [];
    const value = lower(one.value);
    const is = value === lower(fields.contactName) ? 'name' : value === lower(fields.organisation) ? 'organisation' : 'none';
    if (is === 'none' && index >= ruled.length && spare++ % SPARED !== 0) return [];
    return [{ features: partyFeatures(letter, one), is }];
  });
}

/** What each name of a town in a message is. */
function townCases(
  { fields, open, homePlace }: Message,
  own: { page: Page; parts: Sight['parts'] },
  within: (where: Where) => boolean,
): Case[] {
  if (open.has('place')) return [];
  const find = (name: string): readonly GazetteerPlace[] => placesNamed(gazetteer, name);
  return townsNamed(own, find)
    .filter(within)
    .map((town) => ({
      features: townFeatures(own, town, homePlace, find),
      is: lower(town.value) === lower(fields.place) ? 'place' : 'none',
    }));
}

/**
 * The cases of each model in these messages.
 * @param from what stands before this offset teaches nothing
 */
export function casesIn(messages: readonly Message[], from = 0): Record<ModelName, Case[]> {
  const cases: Record<ModelName, Case[]> = {
    kind: [],
    time: [],
    date: [],
    part: [],
    half: [],
    role: [],
    pay: [],
    offer: [],
    party: [],
    length: [],
    town: [],
  };
  for (const message of messages) {
    const { text, receivedAt, homeZone, homePlace } = message;
    const within = ({ start }: Where): boolean => start >= from;
    const sight = lookAt({ text, receivedAt, homeZone, homePlace, gazetteer });
    const { scene, phones, head } = sight;
    const page = pageOf(scene, phones, head);
    cases.kind.push({ features: messageFeatures(page), is: message.isInquiry ? 'inquiry' : 'none' });
    if (!message.isInquiry) continue;
    cases.party.push(...partyCases(message, sight, within));
    cases.town.push(...townCases(message, { page, parts: sight.parts }, within));
    const length = lengthIs(message);
    if (length !== undefined) cases.length.push({ features: lengthFeatures(scene), is: length });
    if (message.fields.role !== undefined) cases.role.push({ features: wordsFeatures(page), is: message.fields.role });
    for (const time of [...scene.times, ...scene.numbers]) {
      const is = timeIs(message, time, time === scene.times[0]);
      if (is !== undefined && within(time)) cases.time.push({ features: timeFeatures(page, time), is });
    }
    const { budget } = message.fields;
    if (budget || !message.open.has('budget'))
      for (const amount of scene.amounts)
        if (within(amount))
          cases.offer.push({ features: payFeatures(page, amount), is: amount.amount === budget?.amount ? 'offer' : 'none' });
    const offer = budget && scene.amounts.find(({ amount }) => amount === budget.amount);
    if (offer && within(offer)) cases.pay.push({ features: payFeatures(page, offer), is: budget.per ?? NO_UNIT });
    const parts = partsIn(scene);
    for (const one of parts?.named ?? []) {
      const is = partIs(message, parts?.known ?? [], one.days);
      if (parts && is !== undefined && within(one.mention)) cases.part.push({ features: partFeatures(page, parts, one), is });
    }
    for (const { time, end, minutes } of openEnds(scene)) {
      const is = halfIs(message, minutes);
      if (is !== undefined && within(time)) cases.half.push({ features: halfFeatures(page, time, end), is });
    }
    for (const date of scene.dates) {
      const is = dateIs(message, date);
      if (is !== undefined && within(date)) cases.date.push({ features: dateFeatures(page, date), is });
    }
  }
  return cases;
}
