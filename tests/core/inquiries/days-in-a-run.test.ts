/**
 * Runs that end in brackets or with the month, journeys beside the work, days apart that are counted, days of which only some are mine.
 */
import { describe, expect, test } from 'vitest';
import { daysOf, type WayOfDays } from './reading.ts';

describe('runs, journeys and days that are counted', () => {
  const ways: WayOfDays[] = [
    ['10-09,10-16', 'Home Saturday 9 October, away Saturday 16 October. Could you film both matches in Leeds? £300 each.'],
    ['10-09', 'Our tour: Return Saturday 9 October to Leeds for the final show. Could you film that show? £400.'],
    [
      '10-08..10-09',
      "Our wedding in Leeds is on Saturday 9 October. There's a dinner the night before and we'd want that filmed too. £900 for both days.",
    ],
    ['ask', "Our wedding in Leeds is on Saturday 9 October. There's a dinner the night before and we'd want that filmed too. £900."],
    [
      '10-09..10-10',
      "Our wedding in Leeds is on Saturday 9 October, with a brunch the day after that we'd also like filmed; £900 for the two days.",
    ],
    ['10-09', 'The concert in Leeds is on Saturday 9 October, rehearsal the evening before. Please film the concert. £400'],
    [
      '10-06..10-08',
      'Sales conference in Leeds from Wednesday (6th) till Friday (8th) October. Call Wed 06h45, wrap Fri 15h00. £400 p/day for video.',
    ],
    [
      '09-29..09-30',
      'Sales conference in Leeds from Wednesday (29th) till the end of the month, Thursday. Looking for a videographer. £400 p/day.',
      'leeds',
      '2027-09-27T08:00',
    ],
    [
      '09-28..09-30',
      'Filming a trade fair in Leeds from Tuesday the 28th to the end of the month. £400 p/day.',
      'leeds',
      '2027-09-20T08:00',
    ],
    ['09-28..09-30', 'Filming a trade fair in Leeds, 28 September until month end. £400 p/day.', 'leeds', '2027-09-20T08:00'],
    [
      '07-08..07-10',
      'Olá Kit, o festival de Aveiro acontece de 8 a 10 de julho (quinta a sábado). Precisamos de alguém para filmar. O valor é de 280 €/dia.',
      'madrid',
      '2027-05-05T16:02',
    ],
    [
      '07-08..07-09',
      'Olá Kit, o congresso em Braga é nos dias 8 e 9 de julho. Precisamos de alguém para filmar. 280 €/dia.',
      'madrid',
      '2027-05-05T16:02',
    ],
    [
      '07-08..07-10',
      'Olá Kit, a feira em Braga decorre entre 8 e 10 de julho. Precisamos de um operador de câmara. 280 €/dia.',
      'madrid',
      '2027-05-05T16:02',
    ],
    ['07-08..07-10', 'Hola Kit, el festival de Teruel es del 8 al 10 de julio. Buscamos cámara. 280 €/día.', 'madrid', '2027-05-05T16:02'],
    [
      '07-08..07-10',
      "Ciao Kit, il festival di Lucca è dall'8 al 10 luglio. Cerchiamo un operatore video. 280 €/giorno.",
      'madrid',
      '2027-05-05T16:02',
    ],
    [
      '07-08..07-10',
      'Olá Kit, festival em Braga de 8 até 10 de julho. Precisamos de alguém para filmar. 280 €/dia.',
      'madrid',
      '2027-05-05T16:02',
    ],
    [
      '07-08..07-10',
      'Olá Kit, festival em Braga de quinta 8 a sábado 10 de julho. Precisamos de alguém para filmar. 280 €/dia.',
      'madrid',
      '2027-05-05T16:02',
    ],
    [
      '10-06',
      "We're filming the dance on one date in Leeds. Travel: Tuesday 5 October, train 14:06. Work: Wednesday 6 October, at the theatre at 10:00, show 20:30. Release 23:00. Return the 7 October. £420",
    ],
    ['ask', 'Travel out Tue 5 October, shoot Wed 6 October in Leeds from 9am, home Thu 7 October. £420 for the shoot day, camera op.'],
    ['10-06', 'You fly on 5 October, film the launch in Leeds on 6 October and fly back on 7 October. £420'],
    ['10-06', 'We need a cameraman in Leeds on 6 October. Return 7 October by train. £420'],
    ['10-05..10-07', 'We sail on 5 October and return on 7 October, film it all. £300 a day, Hull'],
    [
      '10-04,10-05,10-31',
      "We'd love these three days on film in Wetherby: the bells go back up on Monday 4 and Tuesday 5 October and are rung first on Sunday, 31 October. £240 a day",
    ],
    [
      '10-04,10-05,10-31',
      'The bells in Wetherby go up on Monday 4 and Tuesday 5 October and are rung again on 31 October. We should love the three days on film. £240 a day',
    ],
    ['10-04,10-05,10-31', 'Filming 4 and 5 October in Leeds and again on 31 October, three days in all. £240 a day'],
    [
      'ask',
      'We run five evenings in Leeds, 4 to 8 October. I need a vision mixer on two of them and will tell you which next week. £300 a night',
    ],
    [
      'ask',
      'We are a family from Nantes and my brother marries in Saratoga Springs, the 04/06/2027. We want a video, 2000 dollars. Thank you to answer before the 15 february.',
      'nyc',
      '2027-02-01T16:46',
    ],
    [
      '04-06',
      'Can you film our wedding in Saratoga Springs on 04/06/2027? $2000. Please answer by February 15.',
      'nyc',
      '2027-02-01T16:46',
    ],
    ['ask', 'Can you film our wedding in Saratoga Springs on 04/06/2027? $2000. Please answer by 15 February.', 'nyc', '2027-02-01T16:46'],
  ];
  test.each(ways)('%s: %s', (days, text, home, at) => expect(daysOf(text, home, at)).toBe(days));
});
