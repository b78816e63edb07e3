/**
 * Which of several days is pointed at: by its place, by what happens on it, by an answer; and where others are refused and none is told, it is asked.
 */
import { describe, expect, test } from 'vitest';
import { daysOf, type WayOfDays } from './reading.ts';

describe('the one of several days', () => {
  const ways: WayOfDays[] = [
    ['10-06..10-08', "The festival in Ripon runs from 6 to 8 October. It's the first time we want it filmed. £900 in all."],
    [
      '10-09..10-10',
      "Our fair in Ripon is on 9 and 10 October. It's the first time we have had a videographer, so tell us what you need. £600.",
    ],
    ['10-09,10-16', "We have two concerts in Leeds, 9 and 16 October. That's the last date we could get the hall. Could you film? £400."],
    ['10-07..10-09', "Our play in Ripon is on 7, 8 and 9 October; it's the second show we've done. Could you film it? £700."],
    [
      '10-07',
      'There are three services in Ripon, on Wednesday 6, Thursday 7 and Friday 8 October; parents come to the middle one, so that is the one for the video. £275.',
    ],
    ['10-08', 'We do three concerts in Ripon, 6, 7 and 8 October. The last one is the one to film. £275.'],
    ['10-07', "Three evenings in Ripon, 6, 7 and 8 October. It's the second we'd like on film. £275."],
    ['10-08', "Our play in Ripon runs 6 to 8 October. It's the final night that wants filming. £275."],
    [
      '10-14',
      'On 12 and 13 October our foundation holds its retreat in Leeds, followed on the 14th by the public lecture. Only the lecture shall be filmed. £600.',
    ],
    ['10-14', 'Our conference in Leeds is 12 and 13 October with a gala dinner on the 14th. Only the gala is to be filmed. £600.'],
    ['10-13', 'On 12 October we have the board meeting in Leeds and on 13 October the public debate. Just the debate needs filming. £600.'],
    [
      '10-28',
      "Kit, we're having our wedding twice, once in Spain (21 October, her cousin does that) and once in Whitby, 28 October, and it's for the second that we're looking for a videographer. £900",
    ],
    ['10-21', "We do the show twice, in Leeds on 21 October and in Hull on 28 October, and it's the first we'd like filmed. £900"],
    ['ask', 'The marriage is celebrated twice: 21 October in Leeds, 28 October in Whitby. We need somebody for the second only. £900'],
    [
      'ask',
      "Our play runs in Leeds from Wednesday 13 to Saturday 16 October. You'd film the opening night and the Saturday matinee. Nobody needs filming on the other nights. £700.",
    ],
    ['10-03', 'are you around the first weekend of October?\ndepends! Sat or Sun?\nSunday. party in Leeds, 5 to 10pm, £400 for video'],
    ['10-09', 'Are you free the weekend of 9 October? Only the Saturday though, filming a christening in Leeds, £200'],
    ['10-09..10-10', 'Could you film our two plays in Leeds on 9 and 10 October? Both need filming. £400'],
    ['10-12..10-13', 'We have talks on 12 and 13 October in Leeds. Film both days please; only the keynotes need two angles. £600'],
    ['10-12..10-14', 'We perform in Leeds on 12, 13 and 14 October; the second night is sold out already. Could you film it all? £900'],
    ['10-09..10-10', 'Two nights in Leeds, 9 and 10 October. Only the speeches need to be edited. £600 for filming both'],
    ['10-13', "The conference in Leeds runs 12 to 14 October, the awards being on the 13th. It's just the awards we want filmed. £500"],
    ['10-10', "Our fair in Leeds is on 9 and 10 October. The talent show on the Sunday is the bit we'd like on video. £300"],
  ];
  test.each(ways)('%s: %s', (days, text, home, at) => expect(daysOf(text, home, at)).toBe(days));
});
