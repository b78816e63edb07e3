/**
 * Days that are told from another one, by their week or by their edge of a month; days on which nothing happens; a first day of which nobody knows how many follow.
 */
import { describe, expect, it } from 'vitest';
import { daysOf, facts, type WayOfDays } from './reading.ts';

// 1 September 2027 is a Wednesday.
const ways: WayOfDays[] = [
  ['09-11', 'Can you film our fair in York? Not this Saturday but the one after, £300.'],
  ['09-11', "Our bake-off isn't this Saturday but the next one; we need a videographer in York, £300."],
  ['09-10', 'not this but next friday we open our shop in York, can you film it? £200'],
  ['09-10', 'We need a camera in York not this coming Friday but the following one. £500.'],
  ['09-11..09-12', 'We need a camera in York not this weekend but the one after. £500 in total.'],
  ['09-18', 'Video of a wedding in York, two weeks from this Saturday, £500.'],
  ['09-10', 'Our gala is a week from this Friday and we need a videographer in York. £500.'],
  ['10-15', 'Our night of lanterns in York is on Friday, 15.X.2027, camera wanted. £400.'],
  ['11-03', 'The concert in York is on 3.XI. and we want it filmed. £400.'],
  ['10-30..10-31', 'We film on the last two days of October in York and need a second camera. £300 a day.'],
  ['11-01..11-03', 'We need a camera for the first three days of November in York. £300 a day.'],
  ['09-30', "We're eloping on the 30th (this month!) in York and want you to film. £500."],
  ['10-11..10-13', 'Hearings in York, Monday to Wednesday, week commencing 11 October: we need a livestream technician, £300 a day.'],
  [
    '10-12..10-14',
    'Can you pencil in the week commencing Monday 11 October? We only need you Tuesday to Thursday, filming in York. £300 a day.',
  ],
  ['10-14', 'Are you free the week of 11 October? The talk in York to film is on the Thursday. £400.'],
  ['10-12..10-14', 'The class in York begins on 12 October and takes also the two following days. We need a camera. £200 a day.'],
  ['10-12..10-14', 'Our course in York opens on 12 October, and the next two days as well, and we would like a camera on it. £200 a day.'],
  ['10-17,10-24', 'Her henna night in York is on the 17th of October and the wedding on the 24th. Can you film both? £900 together.'],
  ['10-16..10-17', 'We need a videographer in York on 16.10. u. 17.10. £300 a day.'],
  [
    '09-14..09-16',
    'Are you around Tuesday to Thursday of the week after next? Crafts fair in York, we want it filmed. 7am on the Tuesday. £900.',
  ],
  ['10-02..10-03', 'Teams coming from all over for 2/3 October in York and we want it filmed. Meet us at 10 on the Saturday. £500.'],
  ['10-16', 'Please forget the 9th of October. Our open day is now on Saturday 16 October in York, can you film it? £300.'],
  ['10-14', 'Forget the old date below: it becomes Thursday 14 October, film the opening in York. £300.'],
  [
    '10-13',
    'The open day in York is Wednesday 13 October. We had a student film the last one (14 November). We want a videographer, £300.',
  ],
  ['10-28..10-29', 'One of our clients holds a seminar in York on the 28 and 29 October and asks for a cameraman, £450 per day.'],
  [
    '10-27..10-29',
    'The brokers are in York from Wednesday 27 to Friday 29 October and we need a vision mixer. The last session on Friday ends at one. £300 a day.',
  ],
  [
    '10-23..10-25',
    '23 October 2027: load-in from 14:00\n24 October 2027: show\n25 October 2027: show\nWe need you as camera operator in York, all three dates. £300 a day.',
  ],
  [
    '10-02,10-09,10-16',
    'Concert on 2 October, dinner on 9 October and talk on 16 October in York. One videographer for all three? £900 in total.',
  ],
  [
    '10-09..10-11',
    'Our race in York is 9 to 11 October and you film all of it. The crew meeting is the evening before the start, 8 October at 6pm. £300 a day.',
  ],
  ['10-08', 'Film our open day in York on Friday 8 October. We build up on the evening before, so Thursday, 7 October, at 18:30. £400.'],
  // Alike, and not so.
  ['10-13', "Not this Saturday please, I'm away. Can you film our dinner in York on 13 October instead? £300."],
  ['10-13', "It's not this Saturday but 13 October in York, a wedding to film. £300."],
  ['ask', 'Can you film our dinner in about three weeks in York? £400.'],
  ['10-03', 'The gala in York is on 3 October, one camera, £400. Let me know over the next two days.'],
  ['10-03', 'The gala in York is on 3 October, and the two days after you edit. One camera. £400.'],
  ['10-03', 'Henry V. plays in York on 3 October, film it, £400.'],
  ['10-30', 'Film our market in York on the last Saturday of October. £400.'],
  ['10-03', 'In the week of 11 October we choose. Reply by Friday. The dinner to film in York is on 3 October. £400.'],
  ['09-02', "Week commencing 11 October we're all away. Can you film our dinner in York on Thursday? £400."],
  ['10-08', "Please don't forget the 8th of October in York, our gala, you film. £400."],
  ['10-09..10-10', 'Film our fair in York on 9 and 10 October. Monday 11 we are off to Spain. £300 a day.'],
];

describe('days that are told apart', () => {
  it.each(ways)('%s: %s', (days, text, home, at) => {
    expect(daysOf(text, home, at)).toBe(days);
  });

  const open = [
    "Our trench opens at York on Monday 11 October and we'd like a videographer. How many days we don't know; it depends on the weather. £160 a day.",
    "The camp in York starts Monday, 11 October, and you'd film from that day on, but how many days depends on the wind. £300 a day.",
    "Filming in York from 11 October, we're not sure yet how many days. £300 a day.",
  ];
  it.each(open)('only the first day: %s', (text) => {
    const { start, end, days } = facts(text, '2027-09-01T10:00+01:00[Europe/London]', 'leeds');
    expect({ start, end, days }).toEqual({ start: '2027-10-11', end: undefined, days: undefined });
  });

  const sure = [
    'We need a camera in York on 11 October. How many days the edit takes depends on you. £400.',
    "We need a camera in York on 11 October. We don't know how many people will come. £400.",
    "We need a camera in York on 11 October. I don't know how long it lasts, perhaps until ten. £400.",
  ];
  it.each(sure)('one day: %s', (text) => {
    expect(facts(text, '2027-09-01T10:00+01:00[Europe/London]', 'leeds').days).toBe(1);
  });
});
