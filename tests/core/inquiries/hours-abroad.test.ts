/**
 * Hours in German, French, Spanish, Italian and Dutch, in the English of those who think in them, and words after an hour that say whose it is.
 */
import { describe, expect, test } from 'vitest';
import { builtAbroad } from '../../../core/inquiries/settle/built-abroad.ts';
import { tokensOf } from '../../../core/inquiries/parts/tokens.ts';
import { timesOf } from '../../../core/inquiries/times/find.ts';
import { lines, readAt } from './reading.ts';

describe('what follows an hour', () => {
  test.each(
    lines(`
      brauchen wir Sie nicht mehr.
      können Sie heimfahren
      kannst du wieder gehen
      ist für dich Schluss
      c'est plié et vous aussi
      vous êtes libre
      on vous libère
      hemos terminado
      te puedes ir
      ya está usted libre
      abbiamo finito e lei è libero
      può andare
      moet iedereen eruit zijn, jij ook
      mag je naar huis
      is de laatste loop geweest en ben je klaar
      we let you go
      your presence ends
      everything packed and we say goodbye
    `),
  )('ends: %s', (after) => expect(builtAbroad(` ${after}`)).toBe('wrap'));
  test.each(
    lines(`
      dort sein, weil es dann losgeht
      am Eingang stehen
      erwarten wir Sie
      können Sie rein
      on vous attend
      il faudrait être prêt
      te esperamos
      y a esa hora tendría usted que estar
      ti aspetto
      dovrebbe essere lì
      moet je er zijn
      verwachten we je
      and you'd need to be up there at that time already
      & you'd want to be here for that
    `),
  )('calls: %s', (after) => expect(builtAbroad(` ${after}`)).toBe('call'));
  test.each(
    lines(`
      beginnt das Konzert.
      kommen die Gäste
      les invités arrivent
      c'est la cérémonie
      empieza la ceremonia
      comincia la messa
      begint het concert
      bist du frei?
      you are free for lunch
      and you are free at 18:00
      , vous êtes attendu à 8 h 30
      , erwarten wir dich um 9
    `),
  )('neither: %s', (after) => expect(builtAbroad(after.startsWith(',') ? after : ` ${after}`)).toBeUndefined());
});

describe('a number that the word before it makes an hour', () => {
  const found = (text: string): number[] => timesOf(tokensOf(text), () => false).flatMap(({ bare, from }) => (bare ? [] : [from.minutes]));
  test.each([
    ['la aspettiamo per le 13.30, grazie', 810],
    ['alle 17 si torna a casa', 1020],
    ['fino alle 19 abbiamo da fare', 1140],
    ["si spegne all'una di notte", 60],
    ['quedamos a las 9 en la puerta', 540],
    ['ovet aukeavat klo 8.30 ja', 510],
    ['kl. 14 åbner vi', 840],
    ['komm um 9 zum Tor', 540],
    ['at half past six of the afternoon', 1110],
    ['until the 5 of the morning', 300],
    ['um zehn am Abend', 1320],
    ['ci vediamo alle tre davanti al teatro', 180],
  ])('%s', (text, minutes) => expect(found(text)).toContain(minutes));
  test.each([
    'alle 17 Gäste',
    'für alle drei Tage',
    'alle acht Spiele',
    'alle 2 stunden',
    'um 20 Prozent',
    'per le 9 persone',
    'om 9 mensen',
    '1h before the mass',
  ])('%s', (text) => expect(found(text)).toEqual([]));
});

describe('first call and last wrap', () => {
  test.each([
    [
      'Sabato 12 dicembre abbiamo un concerto a Torino e cerchiamo chi lo riprenda. Comincia alle 17.00, la aspettiamo per le 15.30. Alle 19.30 abbiamo finito.',
      '15:30',
      '19:30',
    ],
    [
      'Am Samstag, 12. Dezember 2026, filmen Sie bitte unser Fest in Bern. Um 12.30 Uhr sollten Sie dort sein, ab 22 Uhr brauchen wir Sie nicht mehr.',
      '12:30',
      '22:00',
    ],
    [
      'Samedi 12 décembre 2026, il nous faut un vidéaste à Dijon pour le défilé. Rendez-vous à 13h30 devant la mairie, à 16h30 c’est plié.',
      '13:30',
      '16:30',
    ],
    [
      'Can you film our choir in Gouda on Saturday 12 December 2026? Concert 19:30, it would be good that you are there at 17:00, and at 22:00 we let you go.',
      '17:00',
      '22:00',
    ],
  ])('%s', (text, call, wrap) => {
    const { fields } = readAt(text);
    expect([fields.firstCall, fields.lastWrap]).toEqual([`2026-12-12T${call}`, `2026-12-12T${wrap}`]);
  });
});

describe('an hour that is left open', () => {
  test.each([
    'Film our race on Saturday 12 December in Duluth: on the boat from 8:00 ($500) or only on the shore from 14:00 ($300).',
    'We need a camera on Saturday 12 December in Duluth. We do not know yet if you have to be in the hall at 8:00 or first at 10:00.',
    'Saturday 12 December in Duluth, one camera: or you come at 8:00 with the cooks, or you come at 11:00 with the jury.',
    'Could you film the gallery opening in Duluth on Saturday 12 December? Gallery opening in Duluth, 17:00-20:00.',
  ])('%s', (text) => {
    const { fields, questions } = readAt(text);
    expect(fields.firstCall).toBeUndefined();
    expect(questions.map(({ field }) => field)).toContain('firstCall');
  });
});
