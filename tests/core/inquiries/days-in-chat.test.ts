/**
 * Days as they are told in a hurry: a weekday that only the call stands beside, one that is taken back, the name of a day beside its weekdays, numbers behind "end of the month";
 * the one day of a run that is pointed at, and days on which others decide.
 */
import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

/** A Tuesday. */
const RECEIVED = '2027-01-19T07:15:00+00:00[Europe/London]';

describe('the days that are meant', () => {
  const ways: [first: string, last: string, text: string][] = [
    // A weekday beside the call alone.
    ['2027-01-21', '2027-01-21', 'Kit - thurs, Perth, 1 op 1 cam, arrive 1500, clear by 2300, £380, y/n?'],
    ['2027-01-22', '2027-01-22', 'You free fri? Call 4pm, wrap 10pm, Hull, £300'],
    ['2027-01-23', '2027-01-23', 'want the quiz on video. sat, Ripon, be on the pier 5am, back in at noon. £40/hr. bring rain gear!!'],
    // How somebody comes, not till when.
    [
      '2027-02-11',
      '2027-02-11',
      'Hi Kit, santa is arriving by boat in Kinvara on the 11th at 4. Would you film him coming in? Be on the pier for half 3',
    ],
    // Taken back.
    ['2027-10-02', '2027-10-02', 'can you quote for filming the footy club awards? sept 25?? wait no thats grand final day. oct 2. Hull'],
    [
      '2027-05-15',
      '2027-05-15',
      'We spoke about the festival on Friday 14 May. I must correct myself, I had the wrong calendar: it is Saturday the 15th of May. You film the four choirs in Hull. £500.',
    ],
    ['2027-05-15', '2027-05-15', 'Can you film our gala 14 may.. scrap that, 15 may. Hull. £500.'],
    // Around a day with a name.
    ['2027-05-06', '2027-05-09', 'hey kit, himmelfahrt, thu-sun, open air near Cottbus, can you film? 1600€'],
    ['2027-03-26', '2027-03-29', 'Easter Sunday, Fri to Mon, camp in Hull, can you film all four days? £450 a day.'],
    // In a month that is told.
    [
      '2027-01-27',
      '2027-01-29',
      'got a fringe show end of the month, 27 28 29, want all 3 nights filmed from the back in Leith. 80 quid a night.',
    ],
    ['2027-02-10', '2027-02-11', 'show next month, the 10th and 11th, can you film both nights in Leith? 80 quid a night.'],
    // One of a run.
    ['2027-05-08', '2027-05-08', "The tour is in Hull 5-9 May, gala on Saturday 8 May; we'd only want the gala filmed. £300"],
    // Of others.
    [
      '2027-05-08',
      '2027-05-08',
      'Wir suchen eine Kamera für unser Jubiläum am 8. Mai in Kassel. Der Vorstand entscheidet am 2. Februar über Ihr Angebot.',
    ],
  ];
  test.each(ways)('%s to %s: %s', (start, end, text) => expect(facts(text, RECEIVED, 'leeds')).toMatchObject({ start, end }));
});

test('a long weekend is not the coming one', () => {
  const { fields } = readAt('Retirement do, Ripon, may long wknd, the saturday. doors 5, want you filming. £275 ok?', RECEIVED, 'leeds');
  expect(fields.start).toBeUndefined();
});
