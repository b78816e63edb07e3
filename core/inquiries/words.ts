/**
 * The words for numbers, months and weekdays that the finders know.
 */

const numberWords =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );
const ordinalWords =
  'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth twenty-first twenty-second twenty-third twenty-fourth twenty-fifth twenty-sixth twenty-seventh twenty-eighth twenty-ninth thirtieth thirty-first'.split(
    ' ',
  );

const numbers = new Map(numberWords.map((word, value) => [word, value]));
for (const [word, value] of [
  ['thirty', 30],
  ['forty', 40],
  ['fifty', 50],
  ['sixty', 60],
  ['seventy', 70],
  ['eighty', 80],
  ['ninety', 90],
  ['a', 1],
  ['an', 1],
  ['couple', 2],
] as const)
  numbers.set(word, value);
const ordinals = new Map(ordinalWords.map((word, index) => [word, index + 1]));

/** 5 for "five"; nothing for a word that is no number. */
export function numberWord(lower: string): number | undefined {
  return numbers.get(lower);
}

/** 12 for "twelfth", 22 for "twenty-second". */
export function ordinalWord(lower: string): number | undefined {
  return ordinals.get(lower);
}

const monthWords = [
  'january jan jänner',
  'february feb febr feber',
  'march mar',
  'april apr',
  'may',
  'june jun',
  'july jul',
  'august aug',
  'september sep sept',
  'october oct okt',
  'november nov',
  'december dec dez',
];
const weekdayWords = [
  'monday mon',
  'tuesday tue tues',
  'wednesday wed weds',
  'thursday thu thur thurs',
  'friday fri',
  'saturday sat',
  'sunday sun',
];
const table = (lists: readonly string[]) =>
  new Map(lists.flatMap((list, index) => list.split(' ').map((word) => [word, index + 1] as const)));
const months = table(monthWords);
const weekdays = table(weekdayWords);

/** Languages whose month and weekday names are known besides English; the names come from Unicode CLDR, which ships with the engine. */
const otherLanguages = ['de', 'fr', 'es', 'it', 'nl', 'pt', 'da', 'nb', 'sv', 'hu', 'pl', 'cs', 'sk', 'sl', 'fi'] as const;
for (const language of otherLanguages) {
  const name = (options: Intl.DateTimeFormatOptions, month: number, day: number): string =>
    new Intl.DateTimeFormat(language, { ...options, timeZone: 'UTC' })
      .formatToParts(Temporal.PlainDate.from({ year: 2024, month, day }).toZonedDateTime('UTC').epochMilliseconds)
      .find((part) => part.type === 'month' || part.type === 'weekday')
      ?.value.toLowerCase()
      .replace(/\.$/, '') ?? '';
  for (let month = 1; month <= 12; month++) {
    // Only whole names: "ago", "set" and "out" are short months elsewhere and plain words in English.
    const word = name({ day: 'numeric', month: 'long' }, month, 1);
    if (word.length >= 3 && /^\p{L}+$/u.test(word) && !months.has(word)) months.set(word, month);
  }
  // 1 January 2024 was a Monday.
  for (let day = 1; day <= 7; day++) {
    const word = name({ weekday: 'long' }, 1, day);
    if (/^\p{L}+$/u.test(word) && !weekdays.has(word)) weekdays.set(word, day);
  }
}

/** Weekday names that are also other words or names. */
export const doubtfulWeekdays: ReadonlySet<string> = new Set(['sun', 'sat', 'wed', 'mon', 'mardi']);

/** 1 for "January", "jan" and "Januar". */
export function monthWord(lower: string): number | undefined {
  return months.get(lower);
}

/** "Freitagabend", "woensdagavond": a weekday with the part of it in one word. */
const PART_OF_DAY = /(?<=tag|mittwoch|dag)(?:abend|morgen|vormittag|nachmittag|mittag|früh|nacht|avond|ochtend|middag)$/;
/** 1 for Monday to 7 for Sunday, as ISO 8601 counts. */
export function weekdayWord(lower: string): number | undefined {
  return weekdays.get(lower.replace(/'s$/, '')) ?? weekdays.get(lower.replace(PART_OF_DAY, ''));
}

/** The name of a month, short or whole, in English and most languages of western Europe: for a pattern with the flags i and u. */
export const MONTH = String.raw`(?:jan|feb|m[aä]r|apr|ma[iy]|jun|jul|aug|sep|o[ck]t|nov|de[cz])\p{L}{0,6}`;
