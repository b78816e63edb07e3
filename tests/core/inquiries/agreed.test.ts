/**
 * Messages that ask nothing and still tell a job: my price is taken, the work is given to me, an hour of mine is moved. And letters that name days and cameras
 * and are for everybody.
 */
import { describe, expect, test } from 'vitest';
import { readAt } from './reading.ts';

const received = '2027-05-03T09:12:00+01:00[Europe/London]';
const isInquiry = (text: string): boolean => readAt(text, received, 'leeds').isInquiry;

describe('a job of mine is told', () => {
  test.each([
    'Hi Kit, that price is fine by us. Please book us in for Saturday 19 June, 2pm till 8pm in Ripon. Thanks, Moira',
    'Kit, £1,400 works. Let us lock it in: Thursday 17 June, Skipton, load-in 7 a.m., done by 5 p.m. Andre',
    'Great news, the trustees have agreed your quote of £620. So Friday 2 July at Skipton town hall it is, please be there for 4.30pm. Janet Oldroyd',
    "You're hired for 19 June in Hull. £700 for the day. Show up at 10.",
    'Dear Kit, your charges are acceptable to our management. Kindly proceed for 12th June at Harrogate. Reporting time 9 AM. Regards, Anjali',
    'Hallo Kit, Ihr Angebot über 900 Euro passt. Wir buchen Sie für Samstag, 19. Juni in Potsdam, bitte um 9 Uhr da sein. Grüße, Heike Brandt',
    'Bonjour Kit, devis accepté, 650 €. On vous attend le samedi 12 juin à Reims à 14h. Cordialement, Solène',
    'Approved. You are on B cam 12 and 13 June, Hull, call 7am both days. £350 a day. Invoice after. Dom',
    'Small change for Saturday 12 June: be there for 9.30 instead of 11, they moved the sound check. Come to the stage door. Priya',
    'Crew list for Saturday 12 June, Hull.\nCamera 1 (Ines): 06.30\nCamera 2 (you): 07.15\nSound (Tom): 07.00',
  ])('%s', (text) => expect(isInquiry(text)).toBe(true));
});

describe('nothing is told to me', () => {
  test.each([
    'PRESS INVITATION. The launch of the flood scheme takes place on Thursday 17 June at 11am in Otley. Photo and filming opportunities with the minister from 11.30. Camera crews please register by Tuesday.',
    'Media advisory: Monday 14 June, 10.00, Hull. The mayor will open the new lifeboat station. Interview opportunities and b-roll available. Please RSVP to the press office by noon on Friday.',
    "COMMUNIQUÉ DE PRESSE. La ville présente son festival le jeudi 17 juin à 11h. Les équipes de tournage sont priées de s'accréditer avant le 14 juin.",
    'Einladung zum Pressegespräch: Dienstag, 15. Juni, 10 Uhr, Potsdam. Film- und Fotoaufnahmen sind ab 11 Uhr möglich. Bitte melden Sie sich bis 11. Juni an. Pressestelle',
    "You're invited to our summer party on 12 June at 7pm. Come as a guest and leave the camera at home!",
    'Minutes of the hall committee, 4 May. Present: five. The curtain fund stands at £400. The video of the fete was shown. Next meeting 8 June at 7pm.',
    'Your appointment with the dentist has been moved to 12 June at 9.30 instead of 11.',
    'As agreed: 12 June, 9.30, Hull. No reply needed, see you there.',
  ])('%s', (text) => expect(isInquiry(text)).toBe(false));
});

describe('who asks stays heard beside the words of the others', () => {
  test.each([
    "We're getting married on 12 June in Hull and have no camera person yet. What would you charge to film it, 2pm to 9pm?",
    'The press conference on 14 June at 10am in Hull should be filmed for our own site. Could you do that? Media RSVP is running already.',
    'Minutes of the club, 4 May: it was agreed to engage Kit to film the gala on 12 June from 6pm. Are you free?',
  ])('%s', (text) => expect(isInquiry(text)).toBe(true));
});
