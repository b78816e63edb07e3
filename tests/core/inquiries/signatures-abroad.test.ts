/**
 * Who signs in many countries: ranks and offices before a name, offices right before a body, the forms that firms have by law, branches by their number.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const signed = (foot: string): string => `Could you film our evening on 12 December in Fargo?\n\nBest regards,\n${foot}`;

test.each([
  ['Barr. Ngozi Adewale\nEvents, Lantern Trust', 'Ngozi Adewale', 'Lantern Trust'],
  ['Prof. (Dr.) Meera Kulkarni\nHill Science College', 'Meera Kulkarni', 'Hill Science College'],
  ['mgr inż. Tomasz Zawada\nFundacja Jasny Brzeg', 'Tomasz Zawada', 'Fundacja Jasny Brzeg'],
  ['Thos. Applegarth\nLodge 14, Harbour Players', 'Thos. Applegarth', undefined],
  ['Siti Rahmah bte Osman\nKelab Layar Biru Sdn Bhd', 'Siti Rahmah bte Osman', 'Kelab Layar Biru Sdn Bhd'],
  ['Johan Kelder\nKelderweg Events (Pty) Ltd', 'Johan Kelder', 'Kelderweg Events (Pty) Ltd'],
  ['Nieves Cortázar\nBodegas Cuatro Vientos, S.A.', 'Nieves Cortázar', 'Bodegas Cuatro Vientos, S.A.'],
  ['Reto Caflisch\nPräsident Skiclub Blickhang', 'Reto Caflisch', 'Skiclub Blickhang'],
  ['Dorothy Ackroyd\nSecretary, Otley Bowls Club', 'Dorothy Ackroyd', 'Otley Bowls Club'],
  ['Marco Bassi\nRiva Chiara S.r.l.', 'Marco Bassi', 'Riva Chiara S.r.l.'],
])('%s', (foot, name, organisation) => {
  const { contactName, organisation: body } = facts(signed(foot));
  expect(contactName).toBe(name);
  if (organisation !== undefined) expect(body).toBe(organisation);
});

describe('for whom somebody works is no part of the name', () => {
  test.each([
    ['Malte von Förde Events', 'Malte'],
    ['Malte von Rosenau', 'Malte von Rosenau'],
  ])('%s', (foot, name) => expect(facts(signed(foot)).contactName).toBe(name));
});
