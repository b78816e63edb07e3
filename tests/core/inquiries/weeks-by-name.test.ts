/**
 * Days told by their week: "Saturday wk", "nächste Woche Samstag", "jeudi en quinze", "KW 24, Tuesday to Thursday", "this wknd".
 */
import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

/** A Wednesday. */
const GERMANY = '2027-02-10T18:12:00+01:00[Europe/Berlin]';

describe('one day by its week', () => {
  const ways: [day: string, text: string][] = [
    ['2027-02-20', 'can you film our do sat wk in Ripon? £200'],
    ['2027-02-20', 'can you film our do a week on saturday in Ripon? £200'],
    ['2027-02-20', 'can you film our do a wk saturday in Ripon? £200'],
    ['2027-02-27', 'can you film our do two weeks saturday in Ripon? £200'],
    ['2027-02-27', 'can you film our do Saturday in two weeks, Ripon? £200'],
    ['2027-02-18', 'can you film our do tomorrow week in Ripon? £200'],
    ['2027-02-18', 'can you film our do 2moro wk in Ripon? £200'],
    ['2027-02-24', 'can you film our do today fortnight in Ripon? £200'],
    ['2027-02-16', 'can you film our do next wk tues in Ripon? £200'],
    ['2027-02-27', 'Hoi, kun jij zaterdag over twee weken filmen op een feest in Zwolle? 300 euro.'],
    ['2027-02-20', 'Hoi, kun jij volgende week zaterdag een feest filmen in Zwolle? 300 euro.'],
    ['2027-02-12', 'Hoi, kun jij overmorgen een feest filmen in Zwolle? 300 euro.'],
    ['2027-02-27', 'Hallo, kannst du Samstag in zwei Wochen eine Feier in Leipzig filmen? 300 Euro.'],
    ['2027-02-20', 'Hallo, kannst du nächste Woche Samstag eine Feier in Leipzig filmen? 300 Euro.'],
    ['2027-02-16', 'Hallo, kannst du am Dienstag nächster Woche eine Feier in Leipzig filmen? 300 Euro.'],
    ['2027-06-16', 'Hallo, Kamera gesucht, Mittwoch der KW 24, Imagefilm in München, 500 Euro'],
    ['2027-02-25', 'Salut, tu peux filmer un cocktail jeudi en quinze à Lyon ? 300 euros.'],
    ['2027-02-20', 'Salut, tu peux filmer un cocktail samedi de la semaine prochaine à Lyon ? 300 euros.'],
    ['2027-02-18', 'Hola, ¿puedes grabar una cena el jueves de la semana que viene en Toledo? 300 euros.'],
    ['2027-02-12', 'Hola, ¿puedes grabar una cena pasado mañana en Toledo? 300 euros.'],
    ['2027-02-20', 'Ciao, puoi filmare una festa sabato della prossima settimana a Lugano? 300 franchi.'],
    // A week that is counted by something else.
    ['2027-05-04', "We need you to film week 3 of our course, it's Tuesday 4 May in Hull."],
  ];
  test.each(ways)('%s: %s', (day, text) => expect(facts(text, GERMANY, 'berlin')).toMatchObject({ start: day, end: day }));
});

describe('a number beside "next" and a weekday tells which', () => {
  const ways: [day: string, text: string][] = [
    ['2027-02-16', 'can you film our do next tuesday 16th in Ripon? £200'],
    ['2027-02-23', 'can you film our do nxt tues 23rd in Ripon? £200'],
    ['2027-02-20', 'can you film our do the coming saturday 20th in Ripon? £200'],
    ['2027-02-13', 'can you film our do this sat 13th in Ripon? £200'],
    ['2027-02-16', 'can you film our do next Tuesday the 16th in Ripon? £200'],
    // "wed" is no day here.
    ['2027-06-19', 'me and jo are getting wed 19th june in Ripon, can you film it? £200'],
    ['2027-06-19', 'we get wed 19 June in Ripon, can you film it? £200'],
    ['2027-06-16', 'we marry wed 16th june in Ripon, can you film it? £200'],
  ];
  test.each(ways)('%s: %s', (day, text) => expect(facts(text, GERMANY, 'leeds')).toMatchObject({ start: day, end: day }));
});

describe('days in a row by their week', () => {
  const ways: [first: string, last: string, text: string][] = [
    ['2027-06-15', '2027-06-17', 'Hi, are you free in KW 24, Tuesday to Thursday? Film shoot, Munich.'],
    ['2027-06-15', '2027-06-17', 'Hi, are you free Tue-Thu in KW24? Film shoot, Munich.'],
    ['2027-06-15', '2027-06-17', 'Hi, we need a videographer in calendar week 24 (Tuesday to Thursday) in Munich'],
    ['2027-02-16', '2027-02-18', 'can you film our do tuesday to thursday next week in Ripon? £200 a day'],
    ['2027-02-13', '2027-02-14', 'can you film our do this wknd in Ripon? £200 a day, both days'],
  ];
  test.each(ways)('%s to %s: %s', (start, end, text) => expect(facts(text, GERMANY, 'berlin')).toMatchObject({ start, end }));
});

test('a week alone is asked about, without calling it a slip', () => {
  const { fields, questions } = readAt('Hiya, any day next week free for filming our jams in Hamilton?', GERMANY, 'berlin');
  expect(fields.start).toBeUndefined();
  expect(questions.find(({ field }) => field === 'start')?.ask).not.toContain('no such date');
});

test('in two weeks of which either may be meant both are offered', () => {
  const { fields, questions } = readAt('Can you film our do Monday in two weeks, Ripon? £200', GERMANY, 'berlin');
  expect(fields.start).toBeUndefined();
  expect(questions.find(({ field }) => field === 'start')?.choices.map(({ value }) => value)).toEqual(['2027-02-22', '2027-03-01']);
});
