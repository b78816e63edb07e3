/**
 * What the hours of a message are with the weights beside the rules: they speak where rules are silent, and against the rules where they are sure.
 */
import { ofOthers, othersAreThere } from '../said/subject.ts';
import { beginsContest } from '../settle/contest.ts';
import { MOST_MENTIONS, OF_ELSE } from '../settle/days-among.ts';
import { earlierCall } from '../settle/earlier.ts';
import type { SaidTime, Where } from '../settle/scene.ts';
import { CALL } from './call.ts';
import { NUMBER, timeFeatures, type Page } from './features.ts';
import { DIAL } from './halves.ts';
import { chancesIn, type Learned } from './models.ts';

/**
 * From these chances on the weights are believed: of an hour of which rules say nothing, of a number that no rule makes an hour, against
 * the rules, and of an hour of the occasion.
 */
const SURE = { hour: 0.9, number: 0.9, against: 0.95, show: 0.97 };
/**
 * An end is told in so many words that rules take it for something else more often than the weights do: it is believed sooner, beside another
 * end and against the occasion or a call.
 */
const SURE_WRAP = { told: 0.9, against: 0.9, show: 0.95 };
/** Where no rule finds a call: an hour as likely one as this, beside which every other is so many times less likely. */
const ALONE = { chance: 0.85, others: 5 };
/** "400" is rather money than an hour. */
const AMOUNT = /\d{3}/;
/** "Doors 7pm", "kick-off at 3": what begins then is no end, whatever its words go with elsewhere. */
const BEGINS = /\b(?:doors|curtain(?: up)?|kick-?off|starts?|begins?|opens?|first (?:act|talk|game))(?: (?:are|is|at|from|for)){0,2}:?\s$/i;
/** "Il concerto è alle", "le concert est à" */
const IS_AT =
  /(?:^|[.?!,;\n]\s?)(?:il|lo|la|el|le|der|die|das|het|de|o|a|l')\s?(?!fin|end|schlu|sluit|cl[oô]tur|cier|t[eé]rmin|uscit|salida|sortie)\p{L}{4,} (?:è|es|est|ist|is|é) (?:alle|a las|à|um|om|às) $/iu;
const JUST_BEFORE = 24;
/** "The priest only has an hour, from 2pm to 3pm": whose hours they are stands before the comma. */
const BEFORE_COMMA = /,(?: that's| that is)? (?:from )?$/i;
function ofOthersToo(text: string, { start, to }: SaidTime): boolean {
  const lead = BEFORE_COMMA.exec(text.slice(Math.max(0, start - JUST_BEFORE), start))?.[0].length ?? 0;
  return to !== undefined && (ofOthers(text, start - lead) || othersAreThere(text, start - lead));
}
/** "At 7pm he sends everyone out with a balloon": what another does then ends no work of mine, if it does not say so. */
const ANOTHER_DOES = /^,? (?:s?he|they) (?![^.!?\n]{0,80}\b(?:you|u|we|us)\b)/i;
/** "about 4 p.m. They have": the point ends the sentence as well. */
const SENTENCE_ENDS = /^\. \p{Lu}/u;
const JUST_AFTER = 90;
/** What stands around an hour tells of another, or that the occasion is then. */
export const isNoEnd = (text: string, { start, end }: Where): boolean =>
  IS_AT.test(text.slice(Math.max(0, start - JUST_AFTER), start)) ||
  (ANOTHER_DOES.test(text.slice(end, end + JUST_AFTER)) && !SENTENCE_ENDS.test(text.slice(end - 1, end + 2)));
/** An earlier hour that is as likely the call as this leaves a later one open. */
const RIVAL = 0.5;
const LONGEST_SET_UP = 300;
/** What rules say of an hour without deciding whether it is mine. */
const UNDECIDED = new Set<SaidTime['said']>([undefined, 'event', 'show']);

const cueOf: Record<string, 'call' | 'wrap' | 'reply'> = { call: 'call', both: 'call', wrap: 'wrap', reply: 'reply' };

type Weighed = { time: SaidTime; is: string; chance: number; call: number };

/** The times of a page, and of its numbers those that the weights make one, in their order. */
export function hoursOf(page: Page, learned: Learned): SaidTime[] {
  const { times, numbers, dates, text } = page.scene;
  // Of several days each has its own hours.
  const oneDay = dates.filter(({ past, said: of }) => !past && !OF_ELSE.has(of)).length < 2;
  const weigh = (time: SaidTime): Weighed => {
    const chances = chancesIn(learned.time, timeFeatures(page, time));
    const [is = '', chance = 0] = Object.entries(chances).toSorted(([, a], [, b]) => b - a)[0] ?? [];
    return { time, is, chance, call: (chances['call'] ?? 0) + (chances['both'] ?? 0) };
  };
  const ofContest = (time: SaidTime): SaidTime =>
    time.said === undefined && beginsContest(text, time.start) ? { ...time, said: 'show' } : time;
  // "call on set is 9 am"
  const isNamed = ({ start, said: of }: SaidTime): boolean =>
    of === 'call' && CALL.test(text.slice(Math.max(0, start - JUST_BEFORE), start));
  const hours = times.map(weigh).map((one) => {
    const time = ofContest(one.time);
    return { ...one, time: isNamed(time) ? time : corrected({ ...one, time }, oneDay) };
  });
  // Weights that were learned without numbers know nothing of them.
  const bare = numbers.length > MOST_MENTIONS || !learned.time.weights.has(NUMBER) ? [] : numbers.map(weigh);
  const told = new Set(hours.map(({ time }) => time.said));
  const rivalled = (mine: Weighed): boolean =>
    [...hours, ...bare].some(
      ({ time, call }) => call >= RIVAL && !OF_ELSE.has(time.said) && time.said !== 'call' && isAhead(time, mine.time),
    );
  const dialled = bare.filter(({ time: { start, end } }) => !AMOUNT.test(text.slice(start, end)));
  // "Load-in 3 hours prior to doors (7pm)": the call is told from another hour.
  const alone = told.has('call') || earlierCall(page.scene) ? undefined : standsOut([...hours, ...dialled]);
  const isElse = ({ said: of, start, end }: SaidTime): boolean =>
    isNoEnd(text, { start, end }) || (of === 'show' && BEGINS.test(text.slice(Math.max(0, start - JUST_BEFORE), start)));
  const cued = (one: Weighed, sure: number): SaidTime | undefined => {
    const cue = cueOf[one.is];
    const least = cue === 'wrap' ? SURE_WRAP : { told: SURE.against, show: SURE.show };
    if ((cue === 'wrap' && isElse(one.time)) || (cue !== 'reply' && ofOthersToo(text, one.time))) return undefined;
    if (cue !== 'reply' && beginsContest(text, one.time.start)) return undefined;
    const enough = one.time.said === 'show' ? least.show : told.has(cue) ? least.told : sure;
    if (!cue || (one.chance < enough && one !== alone)) return undefined;
    return cue === 'call' && (rivalled(one) || ofOthers(text, one.time.start)) ? undefined : said(one, cue);
  };
  const wholly = ({ time, is, chance }: Weighed): SaidTime | undefined =>
    time.said === 'wrap' && time.to && time.until && !told.has('call') && is === 'both' && chance >= BOTH
      ? { ...time, said: 'call', until: false }
      : undefined;
  return [
    ...hours.map((one) => wholly(one) ?? ((UNDECIDED.has(one.time.said) && cued(one, SURE.hour)) || one.time)),
    ...bare.flatMap((one) => cued(one, SURE.number) ?? []),
  ].toSorted((a, b) => a.start - b.start);
}

/** The one hour that may be the call, where no other comes near it; hours from and to are rather those of the occasion. */
function standsOut(all: readonly Weighed[]): Weighed | undefined {
  const [best, ...others] = all.filter(({ time }) => !OF_ELSE.has(time.said)).toSorted((a, b) => b.call - a.call);
  // "The hairdresser's there from 8, so 8 it is"
  const next = others.find(({ time }) => time.to || time.from.minutes !== best?.time.from.minutes);
  return best && !best.time.to && cueOf[best.is] === 'call' && best.call >= ALONE.chance && (next?.call ?? 0) * ALONE.others <= best.call
    ? best
    : undefined;
}

/** From this chance on hours from and to are mine at both ends, whatever is told of their end: "8am to 5pm on the floor, then you're off". */
const BOTH = 0.8;

/** A range that is told for its end only is no call. */
const said = ({ time, is }: Weighed, cue: SaidTime['said']): SaidTime => ({
  ...time,
  said: cue,
  until: time.until || (is === 'wrap' && time.to !== undefined),
});

/** A call or an end as rules say, unless the weights are sure that it is the other or neither. */
function corrected(one: Weighed, oneDay: boolean): SaidTime {
  const { time, is, chance } = one;
  const cue = cueOf[is];
  const least = cue === 'wrap' ? SURE_WRAP.against : SURE.against;
  if ((time.said !== 'call' && time.said !== 'wrap') || time.to || time.said === cue || cue === 'reply' || chance < least) return time;
  return cue ? said(one, cue) : oneDay ? { ...time, said: 'show' } : time;
}

/** A few hours before another: on the dial, where one of them does not say in which half of the day it is. */
function isAhead({ from }: SaidTime, other: SaidTime): boolean {
  const around = from.open || other.from.open ? DIAL : 2 * DIAL;
  const minutes = (other.from.minutes - from.minutes + 2 * DIAL) % around;
  return minutes > 0 && minutes <= LONGEST_SET_UP;
}
