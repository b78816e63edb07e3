/**
 * Days that the sender puts right further down, and days as a voice or a hurried hand tells them.
 */
import { describe, expect, test } from 'vitest';
import { daysOf, type WayOfDays } from './reading.ts';

describe('days that are put right', () => {
  const ways: WayOfDays[] = [
    ['10-09', 'Could you film our gala in Leeds on 9 October? Sorry for the short notice, the 16th is our committee meeting. £400.'],
    ['10-09', 'In May we met at the fair. The date in October is the 9th, in Leeds. Could you film? £300.'],
    [
      '02-12..02-13',
      "Regatta in Dubbo\nFri 11 Feb + Sat 12 Feb\ncamera at the start line please, $600 a day\ncorrection!! Sat 12 and Sun 13, Friday's only for practice\nCheers, Ann",
      'sydney',
      '2028-01-24T12:11',
    ],
    [
      '10-10..10-11',
      'Could you film our fair in Leeds on Saturday 9 and Sunday 10 October? £300 a day. CORRECTION: it is Sunday 10 and Monday 11.',
    ],
    ['10-16..10-17', 'Could you film our fair in Leeds 9-10 October? £300 a day. Sorry, that should be 16-17 October.'],
    ['10-10', "Could you film our fair in Leeds on Saturday 9 October? £300. Oops, I got the date wrong, it's the Sunday, the 10th."],
    ['ask', 'Could you film our fair in Leeds on Friday? £300. Not this Friday, the 17th.'],
    ['09-17', 'we want to film a q&a in Leeds on friday\nNot this friday! 17th\n£200'],
    ['ask', 'Can you film a gig in Leeds Friday, £200? Not this one, next Friday (10th).'],
    ['09-11', "Film our do in Leeds on Saturday? I don't mean this Saturday but the one after, the 11th. £200"],
    [
      '10-08',
      "Hi, it's about Sat 9 October. Sorry, I should say Friday 8 October! We've a tree-planting in Leeds and want a videographer, £200",
    ],
    [
      '09-09',
      "Hi, filming in Leeds on Thursday please, £150. I don't mean this Thursday, that's the polling day, but Thursday of next week.",
    ],
    [
      '10-16',
      "Could you film our party in Leeds on Saturday 9 October? £200. PS: Scrap that, the hall's double booked. We've gone for Saturday 16 October instead.",
    ],
    ['ask', 'Could you film our party in Leeds on Saturday 9 October? £200. Edit: 16th not 9th, sorry.'],
    ['10-09..10-10', 'Could you film the wedding in Leeds on Sat 9 Oct and the brunch on Sun 10 Oct? £900 for both days.'],
    [
      '06-20',
      "[voicemail] My parents' anniversary, it's on a Sunday, the, um, twentieth... of June. In Ballarat, can you film it? Eight hundred dollars.",
      'sydney',
      '2027-05-11T17:17',
    ],
    ['10-09', "[voicemail] we'd like you to film a lunch in Leeds, it's the, er, ninth... of October, £300"],
    ['ask', '[voicemail] could you film a christening in Leeds on the, let me see, tenth, of October, £300'],
    [
      '05-01',
      'hi, the answer to when is the bank holiday monday in may, the 1st. its in Kinsale, filming the regatta, be there at 8. 750 is grand',
      'dublin',
      '2028-03-14T15:00',
    ],
    ['10-09', "I've an interview in Leeds on 8 October\nsorry, 9th. 8th is the ferry\none subject, call 10, we'd wrap by 2, £300"],
    ['10-09', 'Gord: filming a gig in Leeds on 8 October?\nGord: oops, 9th\nGord: £300'],
    ['10-09', 'can you film our gig in Leeds on 8 October, £300? wait no, 9th'],
    ['10-09', 'Could you film our gig in Leeds on 8 October, £300? I mean 9th. Sorry, 1st time I do this'],
    ['10-08', 'Could you film our gig in Leeds on 8 October, £300? Sorry, 1st time I do this. Actually 2nd camera only.'],
    ['10-16', "It's a Saturday in October, the 16th. Filming a ceilidh in Leeds, £300"],
  ];
  test.each(ways)('%s: %s', (days, text, home, at) => expect(daysOf(text, home, at)).toBe(days));
});
