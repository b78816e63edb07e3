import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

const call = (words: string): string | undefined => facts(`Can you film in Fargo on 12-13 December? ${words}`).firstCall;
const wrap = (words: string): string | undefined => facts(`Can you film in Fargo on 12-13 December? ${words}`).lastWrap;
const reply = (words: string, receivedAt?: string): string | undefined =>
  facts(`Can you film in Fargo on 12-13 December? ${words}`, receivedAt).replyBy;

describe('first call', () => {
  test.each([
    ['Call 8am Saturday.', '2026-12-12T08:00'],
    ['Doors are at 7pm, we need you there an hour before.', '2026-12-12T18:00'],
    ['Treffpunkt um halb acht.', '2026-12-12T07:30'],
    ['Llegada a las ocho y media de la mañana.', '2026-12-12T08:30'],
    ['The caterers arrive at 9am, call 10am.', '2026-12-12T10:00'],
    ['Crew call 0700.', '2026-12-12T07:00'],
    ['Call 6a, wrap 11p.', '2026-12-12T06:00'],
    ['0700 call.', '2026-12-12T07:00'],
    ['Load-in from 14h00.', '2026-12-12T14:00'],
    ['Load-in Friday at 2.', '2026-12-11T14:00'],
    ['Load-in the evening before at 6.', '2026-12-11T18:00'],
    ['Load-in the day before, 4 pm.', '2026-12-11T16:00'],
    ['Be there at half eight in the morning.', '2026-12-12T08:30'],
    ['Saturday morning 5:45 at the start line, you are done at 9 pm.', '2026-12-12T05:45'],
    ['Be there in the morning at 5:45.', '2026-12-12T05:45'],
    ['You start Saturday evening, 6:30, and finish at 11.', '2026-12-12T18:30'],
    ['In the morning 7 speakers talk; call 10am.', '2026-12-12T10:00'],
    ['Nothing in the morning: 2:30 first call, 9:00 wrap.', '2026-12-12T14:30'],
    ['You are free in the morning, from 3:30 till 9:30 you film.', '2026-12-12T15:30'],
    ['Call at noon.', '2026-12-12T12:00'],
    ['On site by quarter to seven.', '2026-12-12T06:45'],
    ['9-5 both days.', '2026-12-12T09:00'],
    ['We film from 6 to 10pm.', '2026-12-12T18:00'],
    ['Day one call 9am, day two 8am.', '2026-12-12T09:00'],
    ['9am Sat to 5pm Sun.', '2026-12-12T09:00'],
    ['Party 2-5pm, be there 130.', '2026-12-12T13:30'],
    ['6.15am start, done by 2pm.', '2026-12-12T06:15'],
    ['6:15am at the dock, out by 2pm.', '2026-12-12T06:15'],
    ['Reporting 7 am, pack-up 10 pm.', '2026-12-12T07:00'],
    ['The party is at 7pm, set-up begins at half past five.', '2026-12-12T17:30'],
    ['Get in two pm, on air seven, off air half ten.', '2026-12-12T14:00'],
    ['Arrivée le 11 à 19h.', '2026-12-11T19:00'],
    ['Aufbau am 11. Dezember ab 16 Uhr.', '2026-12-11T16:00'],
    // A train is nobody's call.
    ['Call 10am. The train gets in at 8:52.', '2026-12-12T10:00'],
  ])('%s', (words, at) => expect(call(words)).toBe(at));

  test.each([
    'Doors at 7pm.',
    'Concert, 7:30pm start.',
    'The show starts at 20:00.',
    'Guests arrive at 6pm and dinner is at 7pm.',
    'The evening gala has a call at 8.',
  ])('%s is asked', (words) => {
    const reading = readAt(`Can you film in Fargo on 12-13 December? ${words}`);
    expect(reading.fields.firstCall).toBeUndefined();
    expect(reading.questions.map(({ field }) => field)).toContain('firstCall');
  });
});

describe('last wrap', () => {
  test.each([
    ['Call 8am, wrap by 11pm.', '2026-12-13T23:00'],
    ['Call 4pm, wrap 1am.', '2026-12-14T01:00'],
    ['Call 4pm, out by midnight.', '2026-12-14T00:00'],
    // The night goes on past midnight.
    ['Call 4pm, out by 12 at night.', '2026-12-14T00:00'],
    ['Llegada a las 17:00, acabamos a la 1:00 de la noche.', '2026-12-14T01:00'],
    ['Llegada a las 17:00, hasta las 11 de la noche.', '2026-12-13T23:00'],
    ['Beginn um 17 Uhr, Ende um 12 Uhr nachts.', '2026-12-14T00:00'],
    ['Call 7am, done by 6.', '2026-12-13T18:00'],
    ['Call 8am Saturday, wrap Sunday 2pm.', '2026-12-13T14:00'],
    ['9am Sat to 5pm Sun.', '2026-12-13T17:00'],
    ['Call 9am, 4pm finish on the Sunday.', '2026-12-13T16:00'],
    ['Start 14h30 finish 21h00.', '2026-12-13T21:00'],
    ['Rig 8am, derigged by 6pm.', '2026-12-13T18:00'],
  ])('%s', (words, at) => {
    expect(wrap(words)).toBe(at);
    expect(facts(`Can you film in Fargo on 12-13 December? ${words}`).end).toBe('2026-12-13');
  });
});

describe('reply by', () => {
  test.each([
    ['Reply by Thursday noon.', '2026-11-26T12:00'],
    ['I need to know by midnight.', '2026-11-26T00:00'],
    ['Let me know by Friday.', '2026-11-27T23:59'],
    ['By Friday noon please.', '2026-11-27T12:00'],
    ['Text Hollis at 906-555-0131 by tomorrow 2pm.', '2026-11-26T14:00'],
    ['Reply by: 27 Nov 1200', '2026-11-27T12:00'],
    ['Answer by Friday 3 pm New York time.', '2026-11-27T14:00'],
    ['Antwort bis morgen 12 Uhr?', '2026-11-26T12:00'],
    ['Let me know by midnight Friday.', '2026-11-28T00:00'],
    ['Please answer by 3pm today.', '2026-11-25T15:00'],
    ['Can you get back to me by 5pm ET tomorrow?', '2026-11-26T16:00'],
    ['Answer needed within 24 hours.', '2026-11-26T09:12'],
    ['Please confirm by 1 December.', '2026-12-01T23:59'],
    ['Let me know by end of day.', '2026-11-25T23:59'],
  ])('%s', (words, at) => expect(reply(words)).toBe(at));

  test.each(['Let me know by close of business Friday.', 'Please answer before Friday.', 'Let me know by Wednesday.'])(
    '%s is asked',
    (words) => {
      const reading = readAt(`Can you film in Fargo on 12-13 December? ${words}`);
      expect(reading.fields.replyBy).toBeUndefined();
      expect(reading.questions.find(({ field }) => field === 'replyBy')?.choices.length).toBeGreaterThan(0);
    },
  );
});
