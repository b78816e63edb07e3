/**
 * What the hours of a message are with the weights beside the rules: they speak where rules are silent, and against the rules where they are sure.
 */
import { ofOthers } from '../said/subject.ts';
import { MOST_MENTIONS, OF_ELSE } from '../settle/days-among.ts';
import type { SaidTime } from '../settle/scene.ts';
import { NUMBER, timeFeatures, type Page } from './features.ts';
import { DIAL } from './halves.ts';
import { chancesIn, type Learned } from './models.ts';

/**
 * From these chances on the weights are believed: of an hour of which rules say nothing, of a number that no rule makes an hour, against
 * the rules, and of an hour of the occasion.
 */
const SURE = { hour: 0.9, number: 0.9, against: 0.95, show: 0.97 };
/** An earlier hour that is as likely the call as this leaves a later one open. */
const RIVAL = 0.5;
const LONGEST_SET_UP = 300;
/** What rules say of an hour without deciding whether it is mine. */
const UNDECIDED = new Set<SaidTime['said']>([undefined, 'event', 'show']);

const cueOf: Record<string, 'call' | 'wrap' | 'reply'> = { call: 'call', both: 'call', wrap: 'wrap', reply: 'reply' };

type Weighed = { time: SaidTime; is: string; chance: number; call: number };

/** The times of a page, and of its numbers those that the weights make one, in their order. */
export function hoursOf(page: Page, learned: Learned): SaidTime[] {
  const { times, numbers, dates } = page.scene;
  // Of several days each has its own hours.
  const oneDay = dates.filter(({ past, said: of }) => !past && !OF_ELSE.has(of)).length < 2;
  const weigh = (time: SaidTime): Weighed => {
    const chances = chancesIn(learned.time, timeFeatures(page, time));
    const [is = '', chance = 0] = Object.entries(chances).toSorted(([, a], [, b]) => b - a)[0] ?? [];
    return { time, is, chance, call: (chances['call'] ?? 0) + (chances['both'] ?? 0) };
  };
  const hours = times.map(weigh).map((one) => ({ ...one, time: corrected(one, oneDay) }));
  // Weights that were learned without numbers know nothing of them.
  const bare = numbers.length > MOST_MENTIONS || !learned.time.weights.has(NUMBER) ? [] : numbers.map(weigh);
  const told = new Set(hours.map(({ time }) => time.said));
  const rivalled = (mine: Weighed): boolean =>
    [...hours, ...bare].some(
      ({ time, call }) => call >= RIVAL && !OF_ELSE.has(time.said) && time.said !== 'call' && isAhead(time, mine.time),
    );
  const cued = (one: Weighed, sure: number): SaidTime | undefined => {
    const cue = cueOf[one.is];
    if (!cue || one.chance < (one.time.said === 'show' ? SURE.show : told.has(cue) ? SURE.against : sure)) return undefined;
    return cue === 'call' && (rivalled(one) || ofOthers(page.scene.text, one.time.start)) ? undefined : said(one, cue);
  };
  return [
    ...hours.map((one) => (UNDECIDED.has(one.time.said) && cued(one, SURE.hour)) || one.time),
    ...bare.flatMap((one) => cued(one, SURE.number) ?? []),
  ].toSorted((a, b) => a.start - b.start);
}

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
  if ((time.said !== 'call' && time.said !== 'wrap') || time.to || time.said === cue || cue === 'reply' || chance < SURE.against)
    return time;
  return cue ? said(one, cue) : oneDay ? { ...time, said: 'show' } : time;
}

/** A few hours before another: on the dial, where one of them does not say in which half of the day it is. */
function isAhead({ from }: SaidTime, other: SaidTime): boolean {
  const around = from.open || other.from.open ? DIAL : 2 * DIAL;
  const minutes = (other.from.minutes - from.minutes + 2 * DIAL) % around;
  return minutes > 0 && minutes <= LONGEST_SET_UP;
}
