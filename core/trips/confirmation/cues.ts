/**
 * The words beside a time, a date or a name that say what it is: a departure, an arrival, or neither.
 */

export type Cue = 'depart' | 'arrive' | 'other';

/** Words in the order in which they are looked for; the last one before a time counts. */
const cues: readonly (readonly [Cue, string])[] = [
  [
    'other',
    'check[- ]?in|boarding(?! pass)|board by|boards?|gate|bag(?:gage)? drop|closes?|latest|opens?|doors|booked|booking date|date of booking|issued|issue date|ordered|purchased|paid|payment|invoice|created|printed|sent|received|valid|expires?|duration|travel time|journey time|flying time|crossing time|flight time|layover|connection|via|stop in|change time|wait|stopover|born|birth|hours|office|phone|call us|tel|fax|refund|cancel(?:lation)?|passengers?|travell?ers?|guests?|name|contact|billed|address|card|receipt|fare|price|total|cost|meal|served|until|be at|arrive at the (?:airport|station|port|terminal)',
  ],
  [
    'depart',
    'dep|departs?|departure|departing|leaves?|leaving|takes? off|take-off|sails?|sailing|starts?|from|origin|ab|abfahrt|abflug|départ|salida|partenza|vertrek',
  ],
  [
    'arrive',
    'arr|arrives?|arrival|arriving|lands?|landing|reaches|gets in|docks?|into|to|destination|ankunft|arrivée|llegada|arrivo|aankomst',
  ],
];
const WORDS = new RegExp(`(?<![\\p{L}])(?:${cues.map(([, words], order) => `(?<c${order}>${words})`).join('|')})(?![\\p{L}])`, 'giu');

type Found = { cue: Cue; start: number; end: number };

function cuesIn(text: string): Found[] {
  return [...text.matchAll(WORDS)].map(({ groups, index, 0: { length } }) => {
    const order = cues.findIndex((_, each) => groups?.[`c${each}`] !== undefined);
    return { cue: cues[order]?.[0] ?? 'other', start: index, end: index + length };
  });
}

/** Words after a time or date, as in "06:15 departure", are looked for so far. */
const AFTER = 18;
/** A label that stands alone on its line: a few words. */
const LABEL = /^\s*[\p{L}/.-]+(?: [\p{L}/.-]+){0,3}\s?:?\s*$/u;

/**
 * What the words before a mark say, else those right after it, else a label that stands alone on the line above.
 * @param above the line before, where it has no mark of its own
 */
export function cueAt(text: string, start: number, end: number, above: string | null): Cue | null {
  const here = cuesIn(text);
  const before = here.filter((each) => each.end <= start).at(-1);
  if (before) return before.cue;
  const label = above !== null && LABEL.test(above) ? cuesIn(above).at(-1)?.cue : undefined;
  if (label) return label;
  const after = here.find((each) => each.start >= end && each.start - end <= AFTER && !/\d/.test(text.slice(end, each.start)));
  return after && !/^(?:to|from)$/i.test(text.slice(after.start, after.end)) ? after.cue : null;
}
