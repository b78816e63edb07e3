/**
 * Days that are named for a feast, a holiday or their place before one, beside which a weekday is not the next one; lists and runs as they are told by those who say "at" or name no month.
 */
import { expect, test } from 'vitest';
import { daysOf, lines, type WayOfDays } from './reading.ts';

// 25 November 2026 is a Wednesday.
const AT = '2026-11-25T15:12';

const open = lines(`
  We need a videographer for Labor Day weekend in Leeds, Saturday and Sunday only.
  We want a videographer over Presidents' Day weekend in Leeds, Friday to Sunday.
  Can you film at the Pride weekend in Leeds, Saturday only?
  Our fun run is at Easter in Leeds, on the Saturday. Could you film it?
  Our show is in Freshers' Week in Leeds, on the Thursday. Could you film it?
  Can you film the Father's Day car show in Leeds? It's on the Sunday.
  The conference is in Leeds the week before Easter, on the Tuesday. Can you film it?
  Our party in Leeds is on the second Friday before Christmas. Could you film it?
  Our party in Leeds is on the penultimate Friday before Christmas. Could you film it?
  Could you film a wedding in Leeds in July 28?
  are you free labour day monday? tractor pull in leeds to film, 9a to 4p
  Can you film our Memorial Day Monday parade in Leeds?
`);
test.each(open)('is not the coming weekday: %s', (text) => {
  expect(daysOf(text, 'leeds', AT)).toBe('ask');
});

const told: WayOfDays[] = [
  ['02-14', 'r u free valentines day its a sunday, gig in leeds to film'],
  ['03-04', "Could you film a song about Valentine's Day in Leeds on 4 March?"],
  ['03-04', 'Our play, about Bonfire Night, is in Leeds on 4 March. Could you film it?'],
  ['11-28', 'Happy Thanksgiving! Can you film our meet in Leeds on Saturday?'],
  ['11-28', 'Could you film our gig in Leeds on Saturday? We loved your Easter film.'],
  ['11-28', 'Could you film our Family Day in Leeds on Saturday?'],
  ['06-12', 'Could you film our family day in Leeds? Family day Saturday 12 June.'],
  ['06-20', "The Father's Day car show is on 20 June in Leeds; film it please."],
  ['12-18', 'Our party in Leeds is on the last Friday before Christmas. Could you film it?'],
  ['01-23', 'Our party in Leeds is on the penultimate Saturday of January. Could you film it?'],
  ['01-23', 'Our party in Leeds is on the last but one Saturday of January. Could you film it?'],
  ['02-28', 'Can you film a fashion show in Leeds on the final day of February?'],
  ['12-29..12-31', 'From the 29th to the 31st in Leeds we have our fair to be filmed.'],
  ['11-30..12-02', 'Could you film our fair in Leeds from the 30th to the 2nd?'],
  ['03-08..03-09', 'We do a congress in Leeds at 8 and 9 of March and want it filmed, please.'],
  ['03-08..03-10', 'Our fair in Leeds will be at 8-10 March, please film it.'],
  ['06-12', 'Our wedding in Leeds is in June 27, we got the 12th. Would you film it?'],
];
test.each(told)('%s: %s', (days, text, home = 'leeds', at = AT) => {
  expect(daysOf(text, home, at)).toBe(days);
});
