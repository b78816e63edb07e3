/**
 * What is written to the press, to members or to guests: it names days, cameras and answers that are waited for, and asks nobody to film for pay.
 */
import { anyOf } from './phrases.ts';

/** What a press office calls its letter. */
const PRESS = anyOf(`
  press/media invitation/release/advisory/alert/call/briefing/preview/notice | media rsvp | rsvp to the press | invitation presse | pressekonferenz | pressegespräch | pressetermin | presseeinladung | pressemitteilung | medieninformation | pressestelle
  communiqué de presse | conférence de presse | point presse | dossier de presse | convocatoria de prensa | nota de prensa | rueda de prensa | comunicato stampa | conferenza stampa | persbericht | persuitnodiging | persconferentie
`);
/** What it offers to every crew that comes. */
const TO_EVERY_CREW = anyOf(`
  crews/cameras/media/press/photographers/videographers/filmmakers ... register/rsvp/welcome/accreditation/set_up/invited | opportunities | accredit* | rsvp | b-roll available | media contact | for media/press enquiries/inquiries
  anmeldung | melden sie sich | sind ... möglich | akkreditier* | laden wir/sie | accrédit* | s'accréditer | convier | confirmar asistencia | se ruega | acredita* | imágenes | a los medios | aanmelden | beeldmakers | zijn welkom | accreditamento | accrediti
`);
/** The first words of a paper that goes round: a record of a meeting, a list of what is on. */
const ROUND = /^[\s\W]*(?:[^\n.:]{0,40}[,:–-] ?)?(?:draft )?(?:minutes|newsletter|what's on|calendar of events|events calendar)\b/i;
/** Somebody in it is asked for by the minutes themselves: a motion to engage me. */
const ASKS_ONE = /\b(?:engage|hire|book|commission|kit|you)\b|\b(?:asked|approached) whether\b/i;
/** I am to come. */
const COME = anyOf(`
  you're/you_are invited | invite you | you're/you_are coming to | come to our/my/the/mum's/dad's/*'s | come along | join us | getting married | please come | would/'d love you to come | are you/u/ya coming/joining | you coming to/along/on/over | come to the | bring something/a_bottle/your_own/salad/cake/beers to? ...
`);
/** And not to work; "off duty at 17:30" is the end of a day's work. */
const IDLE = anyOf(`
  as a/our guest | you're a guest | with/and no camera* | leave the/your camera/cameras/kit/gear ... home/behind | no filming you're | off duty | day off | no gear | camera/cameras/cam/gear/kit can/may/should/must/has_to/stays/stay ... home/away | camera/cameras/gear/kit not needed/required | not working | no work | without the/your camera/cameras/kit
`);
/** "That's the day we'd love you to film": one hour of it is without a camera. */
const FILMS =
  /(?<!\p{L})(?:love|like|want|need|ask|have|asking|hope for) (?:you|u) to (?:film|shoot|record|video|videotape|tape|stream|cover|photograph)(?!\p{L})/iu;
const RELEASED = /(?<!\p{L})off duty (?:at|from|by|around|about|after|until|before|for|again|~?\d)/giu;

/**
 * True for a letter to the press, minutes, a list of events and an invitation to come without a camera.
 * @param asked whether the message asks in plain words for filming
 */
export function goesToMany(body: string, asked: boolean): boolean {
  if (asked) return false;
  return (
    (PRESS.test(body) && TO_EVERY_CREW.test(body)) ||
    (ROUND.test(body.slice(0, 200)) && !ASKS_ONE.test(body)) ||
    (COME.test(body) && !FILMS.test(body) && IDLE.test(body.replace(RELEASED, '')))
  );
}
