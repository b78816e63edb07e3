/**
 * The days of the job held against what the learned weights make of each date: where they differ plainly, both are asked.
 */
import { askedDays, consecutive, MOST_MENTIONS, namedAmong, OF_ELSE, union } from '../settle/days-among.ts';
import { countedSo } from '../settle/days.ts';
import { goesUntil } from '../settle/goes-until.ts';
import { NOT_THE } from '../settle/mark-words.ts';
import type { DateMention, EventDays } from '../settle/scene.ts';
import { areDoubtful, isOtherLength } from '../context/doubtful.ts';
import { dateFeatures, isBrief, type Page } from './features.ts';
import { chancesIn, type Learned } from './models.ts';
import { otherParts } from './part.ts';

/** A date is weighed as a day of the job from this chance on; one that rules did not find needs more. */
const EVENT = 0.5;
const UNFOUND = 0.6;
/** From here on the weights are heard against the rules, and from there on believed alone. */
const HEARD = 0.5;
const BELIEVED = 0.97;
/** From here on a date is one of two of which nobody says yet which. */
const EITHER = 0.4;
/** Below this a date is hardly a day of the job. */
const HARDLY = 0.15;
/** Below these it is asked about in a message that is not brief, also where rules take it for one. */
const UNLIKELY = { date: 0.3, weekday: 0.7 };
/** From these chances on a date of which rules know nothing is no day of the job, or that of an answer: where all are so, the days are open. */
const DOUBTED = { none: 0.4, reply: 0.15 };
/** "It is on 25 November and 4 December, both evenings." */
const BOTH = /, both (?:days|evenings|nights|dates|mornings|afternoons)(?=\s?[.,;!\n]|$)/i;
/** "nothing on the" */
const NOT_REACH = 60;

/**
 * The days that rules found, unless the weights speak plainly for others, for more or for fewer of them: then those, or both are asked.
 * @param endIsOpen the sender says that nobody knows yet how many days follow the first
 */
export function agreedDays(event: EventDays, whole: Page, learned: Learned, endIsOpen: boolean): EventDays {
  if (whole.scene.dates.length > MOST_MENTIONS || event.counted) return event;
  const page = event.dates.length > 1 ? withoutHoursOnly(whole, event.dates) : whole;
  const agreed = likelierDays(event, page, learned, endIsOpen);
  // "For the 3 days", "all together four days": all of them are counted.
  const both = agreed.dates.length === 2 && BOTH.test(page.scene.text);
  if (agreed.dates.length === 0 || both || countedSo(page.scene.text, agreed.dates.length)) return agreed;
  // "12/12, 12/13, 12/15 (dark on the 14th)": a day that is none of theirs was not found either.
  const parts = otherParts(agreed, page, learned).filter((days) => days.join() !== agreed.dates.join());
  if (parts.length > 0) return openDays(agreed, ...parts);
  if (isBrief(page)) return agreed;
  const otherwise = !endIsOpen && isOtherLength(agreed, page, learned);
  return otherwise || areUnlikely(agreed, page, learned) || areDoubtful(agreed, page, learned) ? openDays(agreed) : agreed;
}

/** "from 12 to 15 November, with the parade on the 13th": what is on one of the days takes none of the others away. */
const WITH_ONE_ON = /,? (?:with|including|incl\.) (?:the|an?|our|its|their) (?:[\p{L}'-]+ ){1,3}on (?:the )?$/iu;
const FILMED = /film|video|crew|shoot|camera|record|interview|stream/i;
function withOneOn({ text }: Page['scene'], { start, readings }: DateMention, days: readonly string[]): boolean {
  const [told] = WITH_ONE_ON.exec(text.slice(Math.max(0, start - NOT_REACH), start)) ?? [];
  return told !== undefined && !FILMED.test(told) && readings[0]?.length === 1 && days.includes(readings[0][0] ?? '');
}

/** Without weekdays of which only hours of something else are told, and days of the run that only one thing in it has. */
const withoutHoursOnly = (page: Page, days: readonly string[]): Page => {
  const dates = page.scene.dates.filter((date) => !goesUntil(page.scene.text, date) && !withOneOn(page.scene, date, days));
  return { ...page, scene: { ...page.scene, dates } };
};

/** Days of which a date or a weekday is hardly one of the job. */
function areUnlikely(agreed: EventDays, page: Page, learned: Learned): boolean {
  const { dates } = page.scene;
  const theirs = (date: DateMention): boolean => agreed.where.some(({ start }) => start === date.start);
  // "On Saturday only" of days that are named by their dates: rules know which it is.
  const onWeekdays = dates.every((date) => date.weekdayOnly || !theirs(date));
  return dates.some(
    (date) =>
      theirs(date) &&
      (date.explicit || (date.weekdayOnly && onWeekdays)) &&
      (chancesIn(learned.date, dateFeatures(page, date))['event'] ?? 0) < (date.weekdayOnly ? UNLIKELY.weekday : UNLIKELY.date),
  );
}

function likelierDays(event: EventDays, page: Page, learned: Learned, endIsOpen: boolean): EventDays {
  const { scene } = page;
  const today = scene.received.toPlainDate().toString();
  const ahead = scene.dates.filter(
    ({ past, said, readings, by, weak, start }) =>
      // What has words of a delivery counts where rules take it.
      !(weak && event.dates.length > 0 && !event.where.some((one) => one.start === start)) &&
      !past &&
      !(by && said !== 'event') &&
      !OF_ELSE.has(said) &&
      !NOT_THE.test(scene.text.slice(Math.max(0, start - NOT_REACH), start)) &&
      readings.some((reading) => (reading.at(-1) ?? '') >= today),
  );
  const weighed = ahead.map((mention) => {
    // "Sat and Sun the 9th and 10th": weekdays of the days that were found say them again.
    const again = mention.weekdayOnly ? namedAmong(mention, event.dates) : [];
    const date = again.length > 0 ? { ...mention, readings: [again] } : mention;
    const { event: chance = 0, either = 0, none = 0, reply = 0 } = chancesIn(learned.date, dateFeatures(page, mention));
    return { date, chance, either, doubted: date.said === undefined && (none > DOUBTED.none || reply > DOUBTED.reply) };
  });
  const isFound = ({ start }: DateMention): boolean => event.where.some((one) => one.start === start);
  const likely = weighed.filter(({ date, chance }) => chance > (isFound(date) ? EVENT : UNFOUND));
  const sure = Math.min(...likely.map(({ chance }) => chance));
  // A number or a weekday that rules have put into the run is not of its own month.
  const placed = (date: DateMention): boolean => !date.explicit && isFound(date);
  const theirs = [
    ...new Set(
      likely.flatMap(({ date }) =>
        date.readings.length === 1 ? (date.readings[0] ?? []).filter((day) => !placed(date) || event.dates.includes(day)) : [],
      ),
    ),
  ].toSorted();
  const where = likely.map(({ date: { start, end } }) => ({ start, end }));
  const [first] = event.dates;
  const believed: EventDays | undefined =
    sure >= BELIEVED && consecutive(theirs) && weighed.every(({ chance }) => chance < HARDLY || chance >= BELIEVED)
      ? { dates: theirs, where, choices: [] }
      : undefined;
  // A date that is no date, or not on its weekday, is asked about whatever the words say.
  if (first === undefined)
    return (event.doubt === undefined || event.doubt === 'several') &&
      theirs.length > 0 &&
      !eveTold(weighed, theirs) &&
      !besideNamed(event.choices, new Set(weighed.flatMap(({ date }) => date.readings.flat()))) &&
      !besideThem(event.choices, theirs)
      ? (believed ?? event)
      : event;
  // Where only some days of a run are wanted, the rules know which.
  if (event.dropped) return event;
  const open = weighed
    .filter(({ either }) => either >= EITHER)
    .flatMap(({ date: { readings } }) => readings)
    .filter((reading) => reading.length === 1 || reading.join() !== event.dates.join());
  // Which days follow is asked about as the end.
  if (open.length > 0 && !endIsOpen) return openDays(event, ...open.slice(0, 3));
  const found = weighed.filter(({ date }) => isFound(date));
  if (found.length > 0 && found.every(({ doubted }) => doubted)) return openDays(event, ...(theirs.length > 0 ? [theirs] : []));
  if (theirs.length === 0) return weighed.length > 0 && weighed.every(({ chance }) => chance < HARDLY) ? openDays(event) : event;
  const within = theirs[0] === first && theirs.every((date) => event.dates.includes(date));
  if (within || sure < HEARD) return event;
  return believed ?? openDays(event, theirs);
}

/** "You would be needed to film from six on Friday 8 January" beside Saturday the 9th: an eve that rules take for a day of the work is not passed over. */
const eveTold = (weighed: readonly { date: DateMention; chance: number }[], [first]: readonly string[]): boolean =>
  first !== undefined &&
  weighed.some(
    ({ date: { said, explicit, readings }, chance }) =>
      said === 'event' &&
      explicit &&
      chance < UNFOUND &&
      readings[0]?.join() === Temporal.PlainDate.from(first).subtract({ days: 1 }).toString(),
  );

/** "The wedding, or the dinner of the evening before as well?": of a day that no date names the weights know nothing. */
const besideNamed = (choices: readonly string[][], named: ReadonlySet<string>): boolean => choices.flat().some((date) => !named.has(date));

/** "The wedding is on the 12th, the mehndi on the 10th and the sangeet on the 11th": days in a row, of which each may be mine. */
function besideThem(choices: readonly string[][], theirs: readonly string[]): boolean {
  const all = union(...choices, theirs);
  return all.length > Math.max(2, theirs.length) && consecutive(all);
}

/** Days that are asked about, with others that they might be. */
export const openDays = (event: EventDays, ...others: string[][]): EventDays =>
  askedDays(event.where, [...(event.dates.length > 0 ? [event.dates] : event.choices), ...others], event.doubt);
