/**
 * A way in one sentence.
 */
import { lengthInWords } from '../words/amounts.ts';
import { LONG_ROAD, SHORT_ROAD } from './estimate.ts';
import type { Way } from './ways.ts';

const KM_PER_MILE = 1.609344;

/** How long it takes and where that comes from. @param unit of distances */
export function waySentence(way: Way, unit: 'mi' | 'km'): string {
  const names = `${way.from.name} to ${way.to.name}`;
  if (way.source === 'same place') return `${way.from.name} is where you are: no way.`;
  if (way.source === 'typed') return `${names} takes ${lengthInWords(way.longMinutes)} (${way.mode}), from a way you typed.`;
  const road = [SHORT_ROAD, LONG_ROAD].map((factor) => Math.round((way.km * factor) / (unit === 'mi' ? KM_PER_MILE : 1)));
  return `${names} is estimated at ${lengthInWords(way.shortMinutes)} to ${lengthInWords(way.longMinutes)} of driving, for ${road[0]} to ${road[1]} ${unit} of road. Type the real time once and it is used from then on.`;
}
