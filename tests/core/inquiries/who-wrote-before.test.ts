/**
 * Who asks where the mail below says more of them: who answers their own mail signs with less; the mail of another says nothing of them. And whose number is
 * told, who rang, and what else stands where a name or a body would.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const read = (text: string) => facts(text, '2027-01-20T10:00:00+00:00[Europe/London]', 'leeds');
const ASKED = 'Can you film our tea dance in Otley on Saturday 6 March, 2pm to 5pm? £300.';
const SIGNED = 'Rosa Quillfeather\nAmber Hall Social Club\n07700 900345';
const quoted = (text: string) => text.replace(/^/gm, '> ');

describe('the mail below', () => {
  const all = ['Rosa Quillfeather', 'Amber Hall Social Club', '07700 900345'];
  test.each([
    [
      all,
      `${ASKED}\n\nRosa\n\nFrom: Rosa Quillfeather\nSent: 12 January 2027 09:00\nTo: Kit\nSubject: Tea dance\n\nAre you free?\n\n${SIGNED}`,
    ],
    [all, `${ASKED}\n\nCheers,\nRosa\n\nOn 12 Jan 2027, at 4:18 pm, Rosa Quillfeather wrote:\n\nAre you free?\n\n${SIGNED}`],
    [all, `${ASKED}\n\nRosa\n\n${quoted(`From: Rosa Quillfeather\nSent: 12 January 2027\n\nAre you free?\n${SIGNED}`)}`],
    [
      all,
      `${ASKED}\n\nRosa\n\n${quoted(`Hi Rosa, which day?\nKit Marsh\nMarsh Films, 07700 900111\n\n${quoted(`Are you free?\n${SIGNED}`)}`)}`,
    ],
    [all, `${ASKED}\n\nGroeten, Rosa\n\nOp 10 januari 2027 schreef Rosa Quillfeather:\n${quoted(`Hallo, are you free?\n${SIGNED}`)}`],
    // Of another, or of one with another surname.
    [['Gemma Flint', undefined, undefined], `${ASKED}\n\nGemma Flint\n\n${quoted(`From: Rosa Quillfeather\n\nWe need one.\n${SIGNED}`)}`],
    [['Rosa Pike', undefined, undefined], `${ASKED}\n\nRosa Pike\n\n${quoted(`From: Rosa Quillfeather\n\nWe need one.\n${SIGNED}`)}`],
    [
      ['Rosa', undefined, undefined],
      `${ASKED}\n\nRosa\n\nOn 12 Jan 2027, Kit Marsh wrote:\n${quoted('Which day?\nKit Marsh\nMarsh Films, 07700 900111')}`,
    ],
  ])('%j', (expected, text) => {
    const { contactName, organisation, contactPhone } = read(text);
    expect([contactName, organisation, contactPhone]).toEqual(expected);
  });

  test('the address in its head is of whom it names', () => {
    const from = (head: string) =>
      read(`${ASKED}\n\nJo Pike\n\nFrom: ${head}\nSent: 11 January 2027 10:00\nTo: Kit\nSubject: Re: dance\n\nHi`).contactEmail;
    expect([from('Kit Marsh <kit@marsh.example>'), from('Jo Pike <jo@pike.example>'), from('Joanna <jpike@post.example>')]).toEqual([
      undefined,
      'jo@pike.example',
      'jpike@post.example',
    ]);
  });
});

describe('who is to be answered', () => {
  const below =
    'From: Leon Marsh <leon@marsh.example>\nSent: 11 January 2027\nTo: Ann Tully <ann@tully.example>\nSubject: fair\n\nAnn, who films our fair on 6 March in Otley, £300? Leon';
  test.each([
    ['Ann Tully', `Kit, see below. Please get back to me rather than him.\n\nAnn Tully\n\n${below}`],
    ['Ann Tully', `Kit, could you? Reply to me and I'll tell them.\n\nAnn Tully\n\n${below}`],
    ['Leon Marsh', `Kit, one for you? No need to reply to me.\n\nAnn Tully\n\n${below}`],
    ['Greta Pell', `${ASKED} She is the one to ask for, please: Greta Pell, 01632 960145.\n\nWallace Mead`],
  ])('%s', (name, text) => expect(read(text).contactName).toBe(name));
});

describe('who rang', () => {
  const wanted = 'wants the fair filmed on Saturday 6 March in Otley. £300.';
  test.each([
    ['Loretta Pell', `Voicemail, 2:14p, Loretta Pell (sp?), 01632 960148. Fair on Saturday 6 March in Otley, wants it filmed.`],
    ['Clem Ruther', `Voicemail, Mon, 6.05pm, from 01632 960145\nBloke, Clem Ruther, sounds about 70, ${wanted}`],
    ['Joost Terveer', `Voicemail, 8:43, from a Mr Joost Terveer (01632 960118), ${wanted}`],
    ['Archie Dunn', `Voicemail, 14:10. Mr Archie Dunn, he's the secretary of a club, ${wanted}`],
    ['Yola Bright', `VM from Sunday 4:15p. Woman, Yola Bright (bright like the sun), ${wanted}`],
    ['Gwen Paster', `Missed call, 3:48. Lady named Gwen Paster, ${wanted}`],
    [undefined, `Missed call, 2:14p. Harbour Light Chapel, ${wanted}`],
    [undefined, `Voicemail: Man, Grand Hotel reception, ${wanted}`],
  ])('%s', (name, text) => expect(read(text).contactName).toBe(name));
});

describe('whose number', () => {
  test.each([
    ['07700 900222', `${ASKED} My husband's mobile is 07700 900111 but ring me on 07700 900222. Ann Tully`],
    ['07700 900222', `${ASKED} Her cell is 07700 900111 but text me instead: 07700 900222. Ann Tully`],
    ['07700 900733', `${ASKED} My mobile is best: 07700 900733.\n\nAnn Tully\nOtley Museum\nSwitchboard 020 7946 0500`],
    ['020 7946 0500', `${ASKED} On the day call the keeper on 07700 900555.\n\nAnn Tully\nOtley Museum\nSwitchboard 020 7946 0500`],
    ['07700 900123', `${ASKED}\n\nAnn Tully\nTully Bakers\nABN 12 345 678 901\n07700 900123`],
    ['655 501 22 0', `${ASKED}\n\nUn saludo,\nNuria\n655 501 22 0`],
    ['9555 0168', `${ASKED} Interested pls text Hafiz 9555 0168 by tmr 3pm`],
    ['0664 555 01 09', `${ASKED} Rückruf bitte bis Sonntag an 0664 555 01 09.\n\nLG Rosi Ennser`],
    [undefined, `${ASKED} Parking with code 4455 6677. Ann Tully`],
    [undefined, `${ASKED} Call Leon 01632 960123 on the day. Ann Tully`],
  ])('%s', (phone, text) => expect(read(text).contactPhone).toBe(phone));
});

describe('name and body', () => {
  test.each([
    ['Gavin Oldroyd', undefined, 'Gav (Gavin Oldroyd)'],
    ['Bree', 'Copper Lantern', 'Bree (Copper Lantern)'],
    ['Gesine Wolken', undefined, 'Heartily\nGesine Wolken'],
    ['Kimberly', 'Ember Hollow', 'Kimberly\nEmber Hollow'],
    ['Maik Lüder', undefined, 'Greets, Maik Lüder'],
    ['A. Tuin-de Wit', 'Stichting Wielband', 'Hoogachtend,\nmr. A. Tuin-de Wit\nStichting Wielband'],
    ['Roswitha Enn', undefined, "Vergelt's Gott, Roswitha Enn"],
    ['Burkhard Amt', undefined, 'Pfarrer Burkhard Amt'],
    ['Ann Tully', 'Bramble & Bell Morris', 'Ann Tully, Squire\nBramble & Bell Morris'],
    ['Ann Tully', 'Harbour Light Chapel', 'Ann Tully\nMedia Ministry, Harbour Light Chapel'],
    ['Ann Tully', 'Sandbar A/V', 'Ann Tully\nTechnical Director\nSandbar A/V'],
    [
      'Ann Tully',
      'Brightkeel Live, Inc.',
      'Ann Tully | Crew Coordinator\nBrightkeel Live, Inc.\n400 Ferris Ave, Suite 1210, Stamford, CT 06901',
    ],
    ['Ann Tully', 'Harbour Lights Trust', 'Ann Tully on behalf of Harbour Lights Trust\nann@tully.example'],
    ['Ann Tully', 'Ruderclub Blaubach 1893', 'Greetings\nAnn Tully\nRuderclub Blaubach 1893'],
    ['Ann', 'Plumstone', 'Ann @ Plumstone 07700 900204'],
    ['Henning', 'Krachwerft Booking', '🤘 Henning\nKrachwerft Booking'],
  ])('%s, %s', (name, body, foot) => {
    const { contactName, organisation } = read(`${ASKED}\n\n${foot}`);
    expect([contactName, organisation]).toEqual([name, body]);
  });
  test('two who sign are no body', () => expect(read(`${ASKED}\n\nLove\nNina & Joel`).organisation).toBeUndefined());
});
