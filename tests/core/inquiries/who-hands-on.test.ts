/**
 * Who asks where several are named: who passes a mail on and asks for the answer, who steps aside, whose form it is; whom somebody speaks for is no body where
 * it is a person, and a part of a house is not the house.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const read = (text: string) => facts(text, '2027-04-12T09:12:00+01:00[Europe/London]', 'leeds');
const mail =
  'From: Olga Petrova\nSent: 10 April 2027 10:00\nTo: Neil Tranter\nSubject: Filming\n\nNeil, film our fair on 14 May, £250. Olga';

describe('name', () => {
  test.each([
    ['Neil Tranter', `Hi Kit\n\nSee Olga's note below. Can you send a price?\n\nBest,\nNeil Tranter\nProducer, Tranter Talent\n\n${mail}`],
    ['Olga Petrova', `Hi Kit\n\nSee the request below, please reply to Olga (she's the client).\n\nBest,\nNeil Tranter\n\n${mail}`],
    ['Olga Petrova', `Over to you, Kit, I'm in Norway.\n\nNeil\n\n${mail}`],
    [
      'Lupita Novak',
      'Kit, this came in through our form. Take it up with her.\n\nYour name: Lupita Novak\nE-mail: lupita@sft.example\nWhat: film our show, 14 May, £250\n\nRegards,\nAnders Holt\nCrew Exchange',
    ],
    [
      'Giselle Comeau',
      '---------- Forwarded message ---------\nFrom: Giselle Comeau <giselle@acadie.example>\nDate: Tue, Apr 6, 2027 at 6:50 PM\nSubject: Fwd: video\nTo: Kit\n\nKit, forwarding this for the hours. I want you there to film, £480.\n\nGiselle\n\n> From: Rentals, Riverside Hall\n> Subject: your booking\n>\n> You are confirmed for 14 May. Doors 10:00.',
    ],
    ['Beat Aeschlimann', 'Can you film our day on 14 May? £250.\n\nCheers, Beat\n---\nBeat Aeschlimann | Head of Events | Firnlicht'],
    ['Lou Ferrante', '[8:52 AM] Lou Ferrante: can you film 14 May?\n[8:53 AM] Lou Ferrante: 250. yes by 5 or I call Deb'],
    ['Yaz', 'can you film a panel on 14 may? £280. ring me asap Yaz 07700 900871'],
    ['doug whitteker', 'hi its doug again can you film our reunion 14 may £250 ok doug whitteker'],
    ['Rachel', "Hi Kit, it's Tom Baines' PA. Tom would like the golf day filmed on 14 May, £250. Thanks, Rachel"],
    ['Sabine Wrobel', 'Kannst du am 14. Mai filmen? 250 Euro.\n\nMit freundlichen Grüßen\ni.A. Sabine Wrobel\nRheinpegel Messebau GmbH'],
    ['Lorraine Petrovic', 'Can you film our gala on 14 May? £250.\n\nL.P.\nLorraine Petrovic | Wellington Food Share'],
    [undefined, 'The Embassy of Norland wants its day of 14 May filmed, £250. Contact: Protocol Section, protocol@norland.example'],
    ['Winona Blackstock', 'From: Winona Blackstock\nRe: Re: Pueblo\n\nKit, can you film on 14 May? £250.\n\nWB'],
  ])('%s', (name, text) => expect(read(text).contactName).toBe(name));

  test('the address in the head of the mail below is not the writer’s', () => {
    const { contactName, contactEmail } = read(
      `Hi Kit\n\nOur committee's note is below. We'd like you for it.\n\nBest,\nNeil Tranter\n\n${mail.replace('Petrova', 'Petrova <olga@sleet.example>')}`,
    );
    expect([contactName, contactEmail]).toEqual(['Neil Tranter', undefined]);
  });
});

describe('organisation', () => {
  test.each([
    [undefined, 'I write on behalf of Judge Ottoline Marsh, whose dinner on 14 May we want filmed. £250.\n\nPercival Quade'],
    [undefined, 'I write on behalf of Ottoline Marsh. Film her dinner on 14 May, £250.\n\nPercival Quade'],
    ['Straitsward Lines', 'I write on behalf of Straitsward Lines. Film our dinner on 14 May, £250.\n\nPercival Quade'],
    [
      'Kelso Cross College',
      'On behalf of the Faculty of Nursing, Kelso Cross College, can you film our day on 14 May? £250.\n\nAnn Rattray',
    ],
    ['Straitsview Logistics Ltd', 'Can you film our AGM on 14 May? £250. Jeremy Toh, Corporate Secretarial, Straitsview Logistics Ltd'],
    ['Oriole Foods Sdn. Bhd.', 'Hi, Tan Wei Ling from Oriole Foods Sdn. Bhd. here. Can you film on 14 May? £250.'],
    ['Kestrel Adventure Playground', 'We are Kestrel Adventure Playground. Our fun day on 14 May needs filming, £250. Joyce'],
    ['Rye & Shine', 'I run a small bakery called Rye & Shine, can you film us on 14 May? £250. Hattie'],
    ['Studio Nacre', 'Hi Kit, Sam Ferreira (she/her) from Studio Nacre. Can you film on 14 May? £250.'],
    ['Goldfields Banjo Muster', 'We run the Goldfields Banjo Muster and want the concert of 14 May filmed, £250. Merv'],
    ['South Shore Fibre Fair', "I'm Winnie Zwicker, chair (and treasurer) of the South Shore Fibre Fair. Film us on 14 May? £250."],
    ['Leeds squash club', 'Hey Kit, its Lou from the Leeds squash club. Can you film our finals on 14 May? £250.'],
    ['leeds junior gymnastics club', 'hi im the treasurer of the leeds junior gymnastics club can u film our comp 14 may? £250. Kaylene'],
    ['De Lekke Band', 'Ha Kit, Joke Terpstra hier van fietsclub De Lekke Band. Kun je op 14 mei filmen? € 250.'],
    [undefined, 'Kit, can you film the dinner at the rugby club on 14 May? £250. Lou'],
    [undefined, 'Kit, can you film our party at the Leeds rugby club hall on 14 May? £250. Lou'],
    [undefined, 'Can you film our do on 14 May? £250. Ravi Kale, Manager'],
  ])('%s', (organisation, text) => expect(read(text).organisation).toBe(organisation));
});

describe('role', () => {
  test.each([
    [undefined, 'Photo and video of our staff party on 14 May, 8pm till 1am. What do you charge?'],
    [undefined, 'Two slots at a summit on 14 May: second camera and switching the show. You can have either. £650.'],
    ['second camera', 'Need a second camera on 14 May. £250 or £40 an hour, whichever you prefer.'],
  ])('%s', (role, text) => expect(read(text).role).toBe(role));
});

test('words of hiring are a request in however formal a letter', () => {
  expect(
    read('Dear Ms Maddox,\n\nWe request your quotation for livestreaming our synod on 14 May.\n\nAmos Tull\nDiocese of Wharfe').role,
  ).toBe('livestream');
});
