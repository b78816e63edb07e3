/**
 * Days told as they are in other countries: by their place in a month, in points with spaces, year first, with a run's words of their language; weekdays and numbers apart.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

/** A Wednesday. */
const RECEIVED = '2027-02-10T18:12:00+01:00[Europe/Berlin]';

const ways: [first: string, last: string, text: string][] = [
  // By their place in a month.
  ['2027-06-05', '2027-06-05', 'Hallo, kannst du am ersten Samstag im Juni eine Hochzeit in Kassel filmen? 600 Euro.'],
  ['2027-06-26', '2027-06-27', 'Hallo, kannst du am letzten Wochenende im Juni ein Fest in Kassel filmen? 600 Euro.'],
  ['2027-02-26', '2027-02-26', 'Hallo, kannst du am letzten Freitag des Monats eine Feier in Kassel filmen? 600 Euro.'],
  ['2027-06-05', '2027-06-05', 'Bonjour, pouvez-vous filmer notre fête le premier samedi de juin à Lyon ? 500 €.'],
  ['2027-08-28', '2027-08-29', "Bonjour, pouvez-vous filmer notre festival le dernier week-end d'août à Lyon ? 500 €."],
  ['2027-06-26', '2027-06-27', 'Hola, ¿puedes grabar nuestra fiesta el último fin de semana de junio en Toledo? 500 €.'],
  ['2027-06-05', '2027-06-05', 'Ciao, puoi filmare la festa il primo sabato di giugno a Lugano? 500 franchi.'],
  ['2027-06-05', '2027-06-05', 'Hoi, kun je ons feest filmen op de eerste zaterdag van juni in Zwolle? 500 euro.'],
  ['2027-02-27', '2027-02-28', 'can you film our do the last weekend of the month, sat + sun, in Ripon? £200 a day'],
  ['2027-03-05', '2027-03-05', 'can you film our do first friday of next month in Ripon? £200'],
  // In points and spaces, and with the year first.
  ['2027-09-04', '2027-09-04', 'We need one camera person for a gala in Budapest, date is 2027. szeptember 4. (Saturday). 160 000 HUF.'],
  ['2027-09-04', '2027-09-04', 'We need one camera person for a gala in Budapest on 2027. 09. 04. from six. 160 000 HUF.'],
  ['2027-09-04', '2027-09-04', 'We need one camera person for a gala in Krakow on 4 września 2027. 1600 PLN.'],
  ['2027-09-03', '2027-09-05', 'We need one camera person for a cup in Brno, 3.–5. 9. (Fri–Sun). 6000 CZK per day.'],
  ['2027-09-04', '2027-09-12', 'We need one camera person in Ljubljana from Saturday 4. 9. to Sunday 12. 9. 2027. 250 € per day.'],
  ['2027-02-27', '2027-02-27', 'Hoi, kun jij zaterdag 27-2 filmen op een feest in Zwolle? 300 euro.'],
  // Runs.
  [
    '2027-04-19',
    '2027-04-23',
    'Ciao, serve un operatore per un documentario a Napoli, da lunedì 19 a venerdì 23 aprile. 320 euro al giorno.',
  ],
  ['2027-04-19', '2027-04-23', 'Ciao, serve un operatore a Como da lunedì 19 fino a venerdì 23 aprile. 320 euro al giorno.'],
  ['2027-04-19', '2027-04-23', 'Hola, buscamos operador para un rodaje en Toledo, de lunes 19 a viernes 23 de abril. 320 euros al día.'],
  ['2027-04-19', '2027-04-23', 'Hola, buscamos operador en Toledo desde el lunes 19 hasta el viernes 23 de abril. 320 euros al día.'],
  ['2027-04-19', '2027-04-23', 'Bonjour, cherche cadreur à Nice, de lundi 19 à vendredi 23 avril. 320 euros par jour.'],
  ['2027-04-19', '2027-04-23', "Bonjour, cherche cadreur à Nice du lundi 19 jusqu'au vendredi 23 avril. 320 euros par jour."],
  ['2027-04-19', '2027-04-23', 'Hoi, we zoeken een cameraman in Arnhem van maandag 19 tot en met vrijdag 23 april. 320 euro per dag.'],
  ['2027-04-19', '2027-04-23', 'Hallo, Kamera gesucht in Jena von Montag 19. bis einschließlich Freitag 23. April. 320 Euro am Tag.'],
  // Weekdays first and their numbers behind them.
  ['2027-02-20', '2027-02-21', 'Regatta sat + sun the 20/21 up in Kelowna needs filming. $1,100 for both days'],
  ['2027-02-20', '2027-02-21', 'Regatta sat and sun, 20 + 21, up in Kelowna needs filming. $1,100 for both days'],
  ['2027-03-12', '2027-03-12', 'lohei lunch shoot 12 mar fri 12-3, come 1115. sgd 500. boss asking so pls reply today. Doris'],
];

describe('days as they are told in other countries', () => {
  test.each(ways)('%s to %s: %s', (start, end, text) => expect(facts(text, RECEIVED, 'berlin')).toMatchObject({ start, end }));
});
