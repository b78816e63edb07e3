/**
 * What the learned weights say where the rules are silent: whether a message asks for work at all, and what a date or a time is said of.
 */
import type { Ruled } from '../kind.ts';
import { dueOfOthers } from '../settle/answer-by.ts';
import { MOST_MENTIONS } from '../settle/days-among.ts';
import { atDawn } from '../settle/at-dawn.ts';
import { endsAtNight, goesOverMidnight, isTonight } from '../settle/half-of-call.ts';
import { ofMorning } from '../settle/of-morning.ts';
import { endsLate, LONGEST_SHIFT } from '../settle/ends-late.ts';
import type { SaidTime, Scene } from '../settle/scene.ts';
import { DIAL, halfFeatures, openEnds } from './halves.ts';
import { dateFeatures, messageFeatures, type Page } from './features.ts';
import { hoursOf } from './hours.ts';
import { chancesIn, likeliest, type Learned } from './models.ts';

/** From these chances on the weights are believed where no rule speaks, and against the rules: found by leaving out one writer's messages at a time. */
const SURE = { date: 0.85, half: 0.9 };
/** The chance from which a message asks for work, by what the rules say of it: between the inquiries and the rest of six sets that had taught nothing. */
const ASKS: Record<Ruled, number> = { certain: 0, plain: 0.1, note: 0.2, request: 0.5, none: 0.8, refused: 0.9, never: Infinity };

/** Say of dates and times what the weights say, where no rule does and they are sure enough. */
export function weighed(page: Page, learned: Learned): Scene {
  const { scene } = page;
  // A programme: only rules read it.
  if (scene.times.length + scene.dates.length > MOST_MENTIONS) return scene;
  const times = hoursOf(page, learned);
  const dates = scene.dates.map((date) => {
    if (date.said !== undefined || date.past) return date;
    const { is, chance } = likeliest(learned.date, dateFeatures(page, date));
    return chance >= SURE.date && is === 'reply' && !dueOfOthers(scene.text, date.start) ? { ...date, said: 'reply' as const } : date;
  });
  const moved = new Map(scene.dates.map((date, index) => [date, dates[index]]));
  const seen = { ...scene, dates, times: times.map((time) => (time.date ? { ...time, date: moved.get(time.date) ?? time.date } : time)) };
  return { ...seen, times: halved({ ...page, scene: seen }, learned) };
}

/** So many minutes after the call nobody is done where hours of something else are told as well. */
const SHORTEST = 90;
/** Hours from and to that are not between two others of the same half of the day. */
const isOutside = ({ from, to }: SaidTime, first: number, last: number): boolean =>
  to !== undefined && (from.minutes % DIAL < first % DIAL || to.minutes % DIAL > last % DIAL);

/** Hours that were said without morning or evening, in the half of the day that the weights are sure of. */
function halved(page: Page, learned: Learned): SaidTime[] {
  // One hour alone, beside nothing that it must come before or after: rules tell it, or it is asked.
  if (page.scene.times.length < 2) return [...page.scene.times];
  // "The evening before at 5" says its half.
  const ends = openEnds(page.scene).filter(({ time }) => !(time.dayBefore && time.evening));
  const called = page.scene.times.find(({ said, from, to }) => said === 'call' && !to && !from.open)?.from.minutes;
  const night = endsAtNight(page.scene);
  return page.scene.times.map((time) => {
    // "club night 10 til 4"
    if (night && time.to) return time;
    const settled = ends
      .filter((one) => one.time === time)
      .flatMap(({ end, minutes }) => {
        const { is, chance } = likeliest(learned.half, halfFeatures(page, time, end));
        const tooLong =
          time.said === 'call' &&
          is === 'am' &&
          (endsLate(minutes % 720, page.scene, LONGEST_SHIFT) || isTonight(page.scene) || goesOverMidnight(page.scene) || night);
        // "set up 20:00 and be done 4ish": no end of the day before its call.
        const before = time.said === 'wrap' && is === 'pm' && !time.date && called !== undefined && called > (minutes % 720) + 720;
        // "sunrise at 6:55 ... you're excused at 9"
        const dawn = time.said === 'wrap' && is === 'pm' && atDawn(page.scene.text);
        // "Call's 10 AM, dinner 6-9, out by 11": what is told between has no room in an hour.
        const stay = (minutes % 720) - (called ?? 720);
        const short =
          time.said === 'wrap' &&
          stay > 0 &&
          stay <= SHORTEST &&
          page.scene.times.some((other) => other !== time && isOutside(other, called ?? 0, minutes));
        if (short) return [[end, { ...time[end], minutes: (minutes % 720) + 720, open: false }] as const];
        const morning = is === 'pm' && !time.to ? ofMorning(time, minutes, page.scene) : undefined;
        if (morning === 'sure') return [[end, { ...time[end], minutes: minutes % 720, open: false }] as const];
        return chance >= SURE.half && !tooLong && !before && !dawn && morning === undefined
          ? [[end, { ...time[end], minutes: (minutes % 720) + (is === 'pm' ? 720 : 0), open: false }] as const]
          : [];
      });
    return settled.length === 0 ? time : { ...time, ...Object.fromEntries(settled) };
  });
}

/** Whether a message asks for work: as the rules say, unless its words speak strongly against them. */
export function asks(page: Page, learned: Learned, ruled: Ruled): boolean {
  const chance = chancesIn(learned.kind, messageFeatures(page))['inquiry'] ?? 0;
  return chance >= ASKS[ruled];
}
