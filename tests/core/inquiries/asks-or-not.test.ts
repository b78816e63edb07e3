/**
 * What is settled, sent by a machine or meant for guests asks for no work, whatever hours and cameras are in it; what is put in the form of these does.
 */
import { expect, test } from 'vitest';
import { readAt } from './reading.ts';

const NONE = [
  'Hi Kit, just for your records: Sat 12 Dec, Ely, call 8am, $400 as agreed. See you then. Moira',
  'Nothing for you to do, all as booked: Saturday December 12 in Ely, load-in 9, wrap 5, $700 for the day. See you there.',
  'Hey, we still on for Saturday? 9 at the barn as planned',
  'All set for Friday? See you at 7 like we agreed. Tom',
  "No decision from the board yet on the film for December 12 so please don't hold the date for us, I'll write when I know.",
  "The client hasn't signed off on the shoot. December 14 and 15 were mentioned, 7am starts. Do not block anything yet. Sue",
  "You've reached the Harbor Hall box office. Our hours are Monday to Saturday 10 to 6. For filming permits press 2. We are closed December 15. Please leave a message after the beep.",
  'Appointment reminder: Thornleigh Eye Clinic, Monday December 7 at 10:40. Please arrive by 10:30. Reply by 5pm Friday to cancel, missed appointments cost $20.',
  'Boletín de invierno. Talleres de vídeo: 6 de diciembre (10 a 14 h, 60 €) y 13 de diciembre. Inscripción hasta el 30 de noviembre. Si no quieres recibir más correos, pulsa aquí.',
  'Rundbrief Dezember: Filmabend am 12. Dezember um 19 Uhr, Kamera-Workshop am 20. Dezember, 45 €. Anmeldung bis 10. Dezember. Newsletter abbestellen: hier.',
  "Bonjour, nous avons bien reçu votre demande d'accréditation pour le 12 décembre, zone B, entrée à 8h. Ceci est un message automatique, merci de ne pas répondre.",
  'Hey, a colleague says you make videos, cool! You coming to the lake Saturday? We grill from 12, leave the camera at home and bring a salad :)',
  'Hey neighbor, water is off Saturday from 9 to noon. About the camera: I sold mine last week for $350, sorry. Bo',
  "It's Doris Vane, love. Ruby wedding. The film came this morning, we've had it on three times already, our Peter rang from Canada in bits. I've popped the cheque in the post second class. That's all. God bless. Bye.",
];
test.each(NONE)('asks for none: %s', (text) => expect(readAt(text).isInquiry).toBe(false));

const ASKS = [
  'Hi Kit, still ok for Friday 11 Dec in Ely? One change, call is now 8 instead of 9. $400 as agreed.',
  'As discussed on the phone, could you film our concert on December 12 in Ely? 2pm to 6pm, $300.',
  "As agreed with Jan I'm writing to book you for Saturday December 12, Ely, film the awards, 5pm to 11pm, $450. Looking forward to it. Sal",
  'New enquiry from your website. Name: Ann Holt. Date: December 12. Message: Are you available to film a wedding in Ely? Budget $1200. This is an automated message, do not reply.',
  'Dear Ms. Anders, we invite you to be part of the crew at our ice hockey tournament, December 5-6. Second camera behind the goal. Accreditation Friday 11:30. Sunday you are off duty at 17:30. Rate $600 per day.',
  'Sue Vane here. Videographer needed for our concert, Fargo, Saturday 12 June 2027, 5pm to 10pm, $300. The video came through at the wrong size last year.',
  'Camera op wanted, Fargo, Saturday 15 May 2027. The footage came through blurry last time so bring a proper tripod. Robin Vane',
  'Job: videographer\nWhere: Fargo\nWhen: Saturday 12 June 2027\nPay: $300, cheque in the post after',
];
test.each(ASKS)('asks for work: %s', (text) => expect(readAt(text).isInquiry).toBe(true));

test('a line of a crew list that is mine is no talk', () => {
  const { fields } = readAt(
    'Hi Kit,\n\nYou: camera and two lights. Friday 11 December in Ely, arrival 05:30, back 13:00. $430. Is that ok for you?\n\nJo',
  );
  expect(fields).toMatchObject({ start: '2026-12-11', firstCall: '2026-12-11T05:30', role: 'shoot' });
});
