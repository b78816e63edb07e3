/**
 * Times of day, and by how many days an arrival is later than its date says.
 */

export type TimeMark = {
  start: number;
  end: number;
  /** Minutes from midnight; where it is open, those of the morning. */
  minutes: number;
  /** It can be read in the morning or in the evening. */
  open: boolean;
  /** A sign that the text counts to 24: "06:15", "18:40". */
  full: boolean;
  /** "+1", "next day"; null where nothing is said. */
  daysLater: number | null;
};

const TIME =
  /(?<![\d:.,/+]|(?:GMT|UTC)\s?-)(?<h>\d{1,2})(?:(?<mark>[:.h])(?<m>[0-5]\d))?(?!\d|[:.]\d)(?:\s?(?<half>[ap])(?:\.?\s?m\b\.?|\b(?![\p{L}'])))?(?<unit>\s?(?:uhr|hrs|hours|h)\b)?/giu;
const LATER =
  /^[^\S\n]{0,2}(?:local(?: time)?)?[^\S\n]{0,2}[([]?\s?(?:\+\s?(?<days>[1-3])(?![\d.])(?!\s?[(\d-])(?:\s?d(?:ay)?s?\b)?|(?<next>(?:the )?(?:next|following) day\b)|(?<same>same day\b))\s?[)\]]?/iu;
/** "0615" counts as a time only behind a word for it, or in "0615-0740". */
const PLAIN = /(?<![\d:.,/+-])(?:[01]\d|2[0-3])[0-5]\d(?![\d:.,/])/g;
const PLAIN_PAIR = /(?<![\d:.,/+-])((?:[01]\d|2[0-3])[0-5]\d)\s?-\s?((?:[01]\d|2[0-3])[0-5]\d)(?![\d:.,/-])/g;
const BEFORE_PLAIN = /(?:dep(?:arts?|arture|\.)?|arr(?:ives?|ival|\.)?|at|leaves|lands)\s?:?\s*$/i;

/** Times of a unit, in order. */
export function timesIn(text: string): TimeMark[] {
  const found: TimeMark[] = [];
  for (const match of text.matchAll(TIME)) {
    const { h = '', m, mark, half, unit } = match.groups ?? {};
    if (m === undefined && half === undefined) continue;
    const hour = Number(h);
    // "06.15" is a time only where something says so; "1h25" is a length, "06h15" a time.
    if (mark === '.' && half === undefined && !unit && !BEFORE_PLAIN.test(text.slice(0, match.index))) continue;
    if (mark === 'h' && (h.length === 1 || /^\s?m/i.test(text.slice(match.index + match[0].length)))) continue;
    if (hour > (half === undefined ? 23 : 12) || (half !== undefined && hour === 0)) continue;
    const end = match.index + match[0].trimEnd().length;
    const later = LATER.exec(text.slice(end));
    // "10h15" and "9:05 Uhr" count to 24.
    const counts = mark === 'h' || unit !== undefined;
    const within = half === undefined ? hour : (hour % 12) + (half.toLowerCase() === 'p' ? 12 : 0);
    found.push({
      start: match.index,
      end: end + (later?.[0].length ?? 0),
      minutes: within * 60 + Number(m ?? 0),
      open: half === undefined && hour >= 1 && hour <= 12 && !h.startsWith('0') && !counts,
      full: half === undefined && (hour > 12 || h.startsWith('0') || counts),
      daysLater: daysOf(later),
    });
  }
  const plain = [...text.matchAll(PLAIN)].filter(({ index }) => BEFORE_PLAIN.test(text.slice(0, index)));
  const pairs = [...text.matchAll(PLAIN_PAIR)].flatMap((pair) => {
    const second = pair.index + pair[0].length - 4;
    return [
      { index: pair.index, text: pair[1] ?? '' },
      { index: second, text: pair[2] ?? '' },
    ];
  });
  for (const each of [...plain.map((match) => ({ index: match.index, text: match[0] })), ...pairs]) {
    if (found.some(({ start, end }) => start <= each.index && end > each.index)) continue;
    const later = LATER.exec(text.slice(each.index + 4));
    const minutes = Number(each.text.slice(0, 2)) * 60 + Number(each.text.slice(2));
    const end = each.index + 4 + (later?.[0].length ?? 0);
    found.push({ start: each.index, end, minutes, open: false, full: true, daysLater: daysOf(later) });
  }
  return found.toSorted((a, b) => a.start - b.start);
}

function daysOf(later: RegExpExecArray | null): number | null {
  if (!later) return null;
  if (later.groups?.['same']) return 0;
  return later.groups?.['next'] ? 1 : Number(later.groups?.['days']);
}
