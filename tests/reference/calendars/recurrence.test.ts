/**
 * @source Internet Engineering Task Force, RFC 5545 "Internet Calendaring and Scheduling Core Object Specification (iCalendar)",
 * 3.8.5.3 Recurrence Rule, all of its examples (clock of the eastern United States), 2009
 */
import { expect, test } from 'vitest';
import { begins, calendarOf, eventOf, readText } from '../../calendar-text.ts';

const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** "1997 Sep 2-11 Oct 3,5" as dates. */
function dates(words: string): string[] {
  let [year, month] = ['', ''];
  return words.split(/\s+/).flatMap((word) => {
    if (/^\d{4}$/.test(word)) year = word;
    else if (MONTHS.includes(word)) month = String(MONTHS.indexOf(word) + 1).padStart(2, '0');
    else
      return word.split(',').flatMap((part) => {
        const [from = 0, to = from] = part.split('-').map(Number);
        return Array.from({ length: to - from + 1 }, (_, index) => `${year}-${month}-${String(from + index).padStart(2, '0')}`);
      });
    return [];
  });
}
const nine = (words: string): string[] => dates(words).map((date) => `${date}T09:00`);
const on = (date: string, times: string): string[] => times.split(' ').map((time) => `${date}T${time}`);

type Example = [name: string, start: string, rules: string[], expected: string[], more?: string];
const FIVE_WEEKS = nine('1997 Sep 2,4,9,11,16,18,23,25,30 Oct 2');
const JANUARIES = nine('1998 Jan 1-31 1999 Jan 1-31 2000 Jan 1-31');
const TWENTIES = ['09', '10', '11', '12', '13', '14', '15', '16'].flatMap((hour) => [`${hour}:00`, `${hour}:20`, `${hour}:40`]).join(' ');

const whole: Example[] = [
  ['daily for 10 occurrences', '19970902', ['FREQ=DAILY;COUNT=10'], nine('1997 Sep 2-11')],
  [
    'daily until 24 December 1997, over the end of summer time',
    '19970902',
    ['FREQ=DAILY;UNTIL=19971224T000000Z'],
    nine('1997 Sep 2-30 Oct 1-31 Nov 1-30 Dec 1-23'),
  ],
  ['every 10 days, 5 occurrences', '19970902', ['FREQ=DAILY;INTERVAL=10;COUNT=5'], nine('1997 Sep 2,12,22 Oct 2,12')],
  [
    'every day in January, for 3 years',
    '19980101',
    ['FREQ=YEARLY;UNTIL=20000131T140000Z;BYMONTH=1;BYDAY=SU,MO,TU,WE,TH,FR,SA', 'FREQ=DAILY;UNTIL=20000131T140000Z;BYMONTH=1'],
    JANUARIES,
  ],
  ['weekly for 10 occurrences', '19970902', ['FREQ=WEEKLY;COUNT=10'], nine('1997 Sep 2,9,16,23,30 Oct 7,14,21,28 Nov 4')],
  [
    'weekly until 24 December 1997',
    '19970902',
    ['FREQ=WEEKLY;UNTIL=19971224T000000Z'],
    nine('1997 Sep 2,9,16,23,30 Oct 7,14,21,28 Nov 4,11,18,25 Dec 2,9,16,23'),
  ],
  [
    'weekly on Tuesday and Thursday for five weeks',
    '19970902',
    ['FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH', 'FREQ=WEEKLY;COUNT=10;WKST=SU;BYDAY=TU,TH'],
    FIVE_WEEKS,
  ],
  [
    'every other week on Monday, Wednesday and Friday',
    '19970901',
    ['FREQ=WEEKLY;INTERVAL=2;UNTIL=19971224T000000Z;WKST=SU;BYDAY=MO,WE,FR'],
    nine('1997 Sep 1,3,5,15,17,19,29 Oct 1,3,13,15,17,27,29,31 Nov 10,12,14,24,26,28 Dec 8,10,12,22'),
  ],
  [
    'every other week on Tuesday and Thursday, for 8 occurrences',
    '19970902',
    ['FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH'],
    nine('1997 Sep 2,4,16,18,30 Oct 2,14,16'),
  ],
  [
    'monthly on the first Friday for 10 occurrences',
    '19970905',
    ['FREQ=MONTHLY;COUNT=10;BYDAY=1FR'],
    nine('1997 Sep 5 Oct 3 Nov 7 Dec 5 1998 Jan 2 Feb 6 Mar 6 Apr 3 May 1 Jun 5'),
  ],
  [
    'monthly on the first Friday until 24 December 1997',
    '19970905',
    ['FREQ=MONTHLY;UNTIL=19971224T000000Z;BYDAY=1FR'],
    nine('1997 Sep 5 Oct 3 Nov 7 Dec 5'),
  ],
  [
    'every other month on the first and last Sunday',
    '19970907',
    ['FREQ=MONTHLY;INTERVAL=2;COUNT=10;BYDAY=1SU,-1SU'],
    nine('1997 Sep 7,28 Nov 2,30 1998 Jan 4,25 Mar 1,29 May 3,31'),
  ],
  [
    'monthly on the second-to-last Monday for 6 months',
    '19970922',
    ['FREQ=MONTHLY;COUNT=6;BYDAY=-2MO'],
    nine('1997 Sep 22 Oct 20 Nov 17 Dec 22 1998 Jan 19 Feb 16'),
  ],
  [
    'monthly on the 2nd and 15th',
    '19970902',
    ['FREQ=MONTHLY;COUNT=10;BYMONTHDAY=2,15'],
    nine('1997 Sep 2,15 Oct 2,15 Nov 2,15 Dec 2,15 1998 Jan 2,15'),
  ],
  [
    'monthly on the first and last day',
    '19970930',
    ['FREQ=MONTHLY;COUNT=10;BYMONTHDAY=1,-1'],
    nine('1997 Sep 30 Oct 1,31 Nov 1,30 Dec 1,31 1998 Jan 1,31 Feb 1'),
  ],
  [
    'every 18 months on the 10th to 15th',
    '19970910',
    ['FREQ=MONTHLY;INTERVAL=18;COUNT=10;BYMONTHDAY=10,11,12,13,14,15'],
    nine('1997 Sep 10-15 1999 Mar 10-13'),
  ],
  [
    'yearly in June and July',
    '19970610',
    ['FREQ=YEARLY;COUNT=10;BYMONTH=6,7'],
    nine('1997 Jun 10 Jul 10 1998 Jun 10 Jul 10 1999 Jun 10 Jul 10 2000 Jun 10 Jul 10 2001 Jun 10 Jul 10'),
  ],
  [
    'every other year in January, February and March',
    '19970310',
    ['FREQ=YEARLY;INTERVAL=2;COUNT=10;BYMONTH=1,2,3'],
    nine('1997 Mar 10 1999 Jan 10 Feb 10 Mar 10 2001 Jan 10 Feb 10 Mar 10 2003 Jan 10 Feb 10 Mar 10'),
  ],
  [
    'every third year on the 1st, 100th and 200th day',
    '19970101',
    ['FREQ=YEARLY;INTERVAL=3;COUNT=10;BYYEARDAY=1,100,200'],
    nine('1997 Jan 1 Apr 10 Jul 19 2000 Jan 1 Apr 9 Jul 18 2003 Jan 1 Apr 10 Jul 19 2006 Jan 1'),
  ],
  [
    'the third instance of one of Tuesday, Wednesday or Thursday, for 3 months',
    '19970904',
    ['FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3'],
    nine('1997 Sep 4 Oct 7 Nov 6'),
  ],
  // The document lists 15:00 too, which is after its own end at 17:00 UTC, 13:00 on this clock: a known slip.
  ['every 3 hours until 17:00 UTC', '19970902', ['FREQ=HOURLY;INTERVAL=3;UNTIL=19970902T170000Z'], on('1997-09-02', '09:00 12:00')],
  [
    'every 15 minutes for 6 occurrences',
    '19970902',
    ['FREQ=MINUTELY;INTERVAL=15;COUNT=6'],
    on('1997-09-02', '09:00 09:15 09:30 09:45 10:00 10:15'),
  ],
  [
    'every hour and a half for 4 occurrences',
    '19970902',
    ['FREQ=MINUTELY;INTERVAL=90;COUNT=4'],
    on('1997-09-02', '09:00 10:30 12:00 13:30'),
  ],
  ['a week that begins on Monday', '19970805', ['FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO'], nine('1997 Aug 5,10,19,24')],
  ['a week that begins on Sunday', '19970805', ['FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU'], nine('1997 Aug 5,17,19,31')],
  ['a date that does not exist is ignored', '20070115', ['FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5'], nine('2007 Jan 15,30 Feb 15 Mar 15,30')],
];

const forever: Example[] = [
  [
    'every other day',
    '19970902',
    ['FREQ=DAILY;INTERVAL=2'],
    nine('1997 Sep 2,4,6,8,10,12,14,16,18,20,22,24,26,28,30 Oct 2,4,6,8,10,12,14,16,18,20,22,24,26,28,30 Nov 1,3,5,7'),
  ],
  [
    'every other week',
    '19970902',
    ['FREQ=WEEKLY;INTERVAL=2;WKST=SU'],
    nine('1997 Sep 2,16,30 Oct 14,28 Nov 11,25 Dec 9,23 1998 Jan 6,20 Feb 3,17'),
  ],
  [
    'the third-to-the-last day of the month',
    '19970928',
    ['FREQ=MONTHLY;BYMONTHDAY=-3'],
    nine('1997 Sep 28 Oct 29 Nov 28 Dec 29 1998 Jan 29 Feb 26'),
  ],
  [
    'every Tuesday, every other month',
    '19970902',
    ['FREQ=MONTHLY;INTERVAL=2;BYDAY=TU'],
    nine('1997 Sep 2,9,16,23,30 Nov 4,11,18,25 1998 Jan 6,13,20,27 Mar 3,10,17,24,31'),
  ],
  ['every 20th Monday of the year', '19970519', ['FREQ=YEARLY;BYDAY=20MO'], nine('1997 May 19 1998 May 18 1999 May 17')],
  ['Monday of week number 20', '19970512', ['FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO'], nine('1997 May 12 1998 May 11 1999 May 17')],
  [
    'every Thursday in March',
    '19970313',
    ['FREQ=YEARLY;BYMONTH=3;BYDAY=TH'],
    nine('1997 Mar 13,20,27 1998 Mar 5,12,19,26 1999 Mar 4,11,18,25'),
  ],
  [
    'every Thursday in June, July and August',
    '19970605',
    ['FREQ=YEARLY;BYDAY=TH;BYMONTH=6,7,8'],
    nine(
      '1997 Jun 5,12,19,26 Jul 3,10,17,24,31 Aug 7,14,21,28 1998 Jun 4,11,18,25 Jul 2,9,16,23,30 Aug 6,13,20,27 1999 Jun 3,10,17,24 Jul 1,8,15,22,29 Aug 5,12,19,26',
    ),
  ],
  [
    'every Friday the 13th, the start excepted',
    '19970902',
    ['FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13'],
    nine('1998 Feb 13 Mar 13 Nov 13 1999 Aug 13 2000 Oct 13'),
    'EXDATE;TZID=America/New_York:19970902T090000',
  ],
  [
    'the first Saturday that follows the first Sunday',
    '19970913',
    ['FREQ=MONTHLY;BYDAY=SA;BYMONTHDAY=7,8,9,10,11,12,13'],
    nine('1997 Sep 13 Oct 11 Nov 8 Dec 13 1998 Jan 10 Feb 7 Mar 7 Apr 11 May 9 Jun 13'),
  ],
  [
    'the first Tuesday after a Monday in November, every 4 years',
    '19961105',
    ['FREQ=YEARLY;INTERVAL=4;BYMONTH=11;BYDAY=TU;BYMONTHDAY=2,3,4,5,6,7,8'],
    nine('1996 Nov 5 2000 Nov 7 2004 Nov 2'),
  ],
  [
    'the second-to-last weekday of the month',
    '19970929',
    ['FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-2'],
    nine('1997 Sep 29 Oct 30 Nov 27 Dec 30 1998 Jan 29 Feb 26 Mar 30'),
  ],
  [
    'every 20 minutes from 9:00 to 16:40',
    '19970902',
    ['FREQ=DAILY;BYHOUR=9,10,11,12,13,14,15,16;BYMINUTE=0,20,40', 'FREQ=MINUTELY;INTERVAL=20;BYHOUR=9,10,11,12,13,14,15,16'],
    [...on('1997-09-02', TWENTIES), ...on('1997-09-03', TWENTIES)],
  ],
];

/** The clock of the document, on which the change of the clock is checked: the offset is part of what is compared. */
const inNewYork = (walls: readonly string[]): string[] =>
  walls.map((wall) =>
    Temporal.PlainDateTime.from(wall).toZonedDateTime('America/New_York').toString({ timeZoneName: 'never', smallestUnit: 'minute' }),
  );

function read(start: string, rule: string, more?: string): string[] {
  const lines = ['UID:1', `DTSTART;TZID=America/New_York:${start}T090000`, 'DURATION:PT10M', `RRULE:${rule}`, ...(more ? [more] : [])];
  return begins(readText(calendarOf(eventOf(...lines))), 'America/New_York');
}

test.each(whole.flatMap(([name, start, rules, expected]) => rules.map((rule) => ({ name, start, rule, expected }))))(
  '$name: $rule',
  ({ start, rule, expected }) => {
    expect(read(start, rule)).toEqual(inNewYork(expected));
  },
);

test.each(forever.flatMap(([name, start, rules, expected, more]) => rules.map((rule) => ({ name, start, rule, expected, more }))))(
  '$name, forever: $rule',
  ({ start, rule, expected, more }) => {
    const found = read(start, rule, more);
    expect(found.slice(0, expected.length)).toEqual(inNewYork(expected));
    expect(found.length).toBeGreaterThan(expected.length);
  },
);
