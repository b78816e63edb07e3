/**
 * Moments of the work on their days, and what is settled of the first and the last of them.
 */
import type { Where } from './scene.ts';
import type { Day } from './walls.ts';

export type Moment = { wall: string; where: Where[] };
/** Hours of which one is meant; `weighed` where rules had stated one and the weights speak for its other half of the day. */
type Choices = { walls: string[]; where: Where; why: 'open' | 'show' | 'day'; weighed?: true };
export type Calls = {
  firstCall?: Moment;
  lastWrap?: Moment;
  /** Readings of which one is meant. */
  callChoices?: Choices;
  wrapChoices?: Choices;
};

export type Point = { date: Day; minutes: number; where: Where[] };
/** By day and hour. */
export const compare = (a: Point, b: Point): number => Temporal.PlainDate.compare(a.date, b.date) || a.minutes - b.minutes;
