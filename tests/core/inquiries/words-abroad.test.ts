/**
 * Words as they are used in one country: a day's rate in Austria, a zone named after a country, a form with a line under its labels.
 */
import { expect, test } from 'vitest';
import { facts } from './reading.ts';

test.each(['Tagsatz 400 €', 'Tagessatz: 400 €', 'Taggage 400 Euro'])('%s is for a day', (rate) => {
  const text = `Kannst du am 12. und 13. September beim Kongress in Innsbruck filmen? ${rate}. Bitte um Antwort bis Freitag.`;
  expect(facts(text, '2028-07-31T10:10:00+02:00[Europe/Vienna]', 'vienna').budget).toEqual({ amount: 400, currency: 'EUR', per: 'day' });
});

test('an hour in South African time is converted', () => {
  const text = 'Could you film our reunion in Wollongong on 27 December, 12 to 20h? Please answer by 2 November, 17h00 South African time.';
  expect(facts(text, '2026-10-26T11:29:00+11:00[Australia/Sydney]', 'sydney').replyBy).toBe('2026-11-03T02:00');
});

test('"first_name" and "last_name" are one name', () => {
  const text =
    'Could you film our dance festival in Ripon on 24 October, 9 to 17?\n\nfirst_name: Dimitra\nlast_name: Vale\nemail: d.vale@hall.example';
  expect(facts(text, '2026-08-11T09:05:00+01:00[Europe/London]', 'leeds').contactName).toBe('Dimitra Vale');
});

test('a wedding is no part of Berlin for who is at home in Cape Town', () => {
  const text =
    "Morning Casey. 2nd shooter needed. Wedding, Tulbagh, 11 Dec. Bride's prep 09h00 (that's your start), I'm with the groom. Finish 22h30. R3 800 for the day, petrol extra. Say by tonight 20h00, otherwise I ask somebody else. Hanlie, 082 555 0108";
  expect(facts(text, '2027-11-23T07:40:00+02:00[Africa/Johannesburg]', 'capetown').place).not.toBe('Wedding');
});

test('a week from a Saturday that is named by its date is that date', () => {
  const text =
    'Would you shoot the ribbon cutting of our bakery in Two Harbors, a week from Saturday, Oct 10? 8 to 11 in the morning. $300.';
  expect(facts(text, '2026-10-01T18:50:00-05:00[America/Chicago]')).toMatchObject({ start: '2026-10-10', end: '2026-10-10' });
});
