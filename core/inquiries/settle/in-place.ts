/**
 * Days that a word tells by their place in a row of days: "the first", "the closing one", "the last two", "the middle one".
 */

const PLACES = ['first', 'second', 'third', 'fourth', 'fifth'];

/** So many days from that place on, or up to the end; none where there is no such place, as in the middle of two. */
export function daysInPlace(word: string, dates: readonly string[], count = 1): string[] {
  const place = word.toLowerCase();
  if (/^(?:last|final|closing)$/.test(place)) return dates.slice(-count);
  if (/^(?:middle|intervening)$/.test(place))
    return dates.length % 2 === 1 ? dates.slice((dates.length - 1) / 2, (dates.length + 1) / 2) : [];
  if (/^(?:former|latter)$/.test(place)) return dates.length === 2 ? dates.slice(place === 'latter' ? 1 : 0).slice(0, 1) : [];
  const at = place === 'opening' ? 0 : /^\d/.test(place) ? Number(place[0]) - 1 : PLACES.indexOf(place);
  return at < 0 ? [] : dates.slice(at, at + count);
}
