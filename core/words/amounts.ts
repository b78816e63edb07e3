/**
 * Lengths of time and counts as words. Money and exact decimals are written by `core/money`.
 */

/** "10 h 40 min", "8 h", "45 min", "0 min"; a negative length keeps its sign in front. Minutes must be whole. */
export function lengthInWords(minutes: number): string {
  if (!Number.isInteger(minutes)) throw new RangeError(`${minutes} is not a whole number of minutes`);
  const hours = Math.floor(Math.abs(minutes) / 60);
  const rest = Math.abs(minutes) % 60;
  const parts = [hours > 0 ? `${hours} h` : '', rest > 0 || hours === 0 ? `${rest} min` : ''].filter((part) => part !== '');
  return (minutes < 0 ? '−' : '') + parts.join(' ');
}

/** "1 day", "2 days", "no days": the noun in its plural where the count asks for it. */
export function countInWords(count: number, one: string, many = `${one}s`): string {
  return count === 0 ? `no ${many}` : `${count} ${count === 1 ? one : many}`;
}

/** Hours before an event as people say them: whole days from three days on ("14 days" for 336), hours below ("48 hours"). */
export function noticeInWords(hours: number): string {
  return hours % 24 === 0 && hours >= 72 ? countInWords(hours / 24, 'day') : countInWords(hours, 'hour');
}

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];

/** "first" to "tenth", then in figures: "number 11". Counted from one. */
export function ordinalInWords(place: number): string {
  return ORDINALS[place - 1] ?? `number ${place}`;
}
