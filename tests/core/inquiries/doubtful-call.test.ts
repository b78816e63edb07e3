import { describe, expect, test } from 'vitest';
import { OCTOBER, readAt } from './reading.ts';

const read = (text: string) => readAt(text, OCTOBER);
const callAsked = (text: string): string[] =>
  read(text)
    .questions.filter(({ field }) => field === 'firstCall')
    .flatMap(({ choices }) => choices.map(({ value }) => String(value)));

describe('a first call that is doubtful by the words as they follow each other', () => {
  test('is asked about with its rival', () => {
    const text =
      'Can you do the camera at our gala in Fargo on Saturday 12 June 2027? 8:30AM pick up at hotel lobby, please be there ~ 5:00PM back to hotel, finish. Robin';
    expect(read(text).fields).toMatchObject({ start: '2027-06-12' });
    expect(read(text).fields.firstCall).toBeUndefined();
    expect(callAsked(text)).toEqual(['2027-06-12T08:30', '2027-06-12T17:00']);
  });

  test('is asked about where the show begins then', () => {
    const text =
      'Nous cherchons un vidéaste pour filmer notre tournoi à Gatineau le vendredi 19 mars. Premier match à 8h00 le vendredi, finale à 15h00. Merci, Sylvie';
    expect(read(text).fields.start).toBe('2027-03-19');
    expect(read(text).fields.firstCall).toBeUndefined();
    expect(callAsked(text)).toEqual(['2027-03-19T08:00']);
  });

  test('is asked about where nothing takes it for a call but a word of another', () => {
    const text =
      'Two days in Fargo, 18 and 19 July 2027, both vision mixing.\n\nSun 18 July 2027, rehearsal, call 1000\nMon 19 July 2027, show day, live 0930-1700, released by 1900\n\nGraphics op is Shaz, her call is 0800, ignore that line on the sheet. Can you do it for $1,500?\n\nMarcus';
    expect(read(text).fields).toMatchObject({ start: '2027-07-18', end: '2027-07-19', lastWrap: '2027-07-19T19:00' });
    expect(read(text).fields.firstCall).toBeUndefined();
    expect(callAsked(text)).toEqual(['2027-07-18T08:00']);
  });

  test.each([
    ['Call is 7 AM, wrapped by 11:30 AM. We start filming at 9 AM.', '07:00'],
    ['Start time 9 am, end time 5 pm.', '09:00'],
    ['It runs 9 to 4. Be there for 11.', '11:00'],
    ['Please come at 10. Sorry, make that 11.', '11:00'],
    ['The band loads in at 2 pm, you come at 4 pm.', '16:00'],
  ])('is stated where nothing speaks against it: %s', (told, call) =>
    expect(
      read(`Hi Kit,\n\nCould you film our gala in Fargo on Saturday 12 June 2027? ${told}\nLet me know what you charge.\n\nRobin`).fields
        .firstCall,
    ).toBe(`2027-06-12T${call}`),
  );
});
