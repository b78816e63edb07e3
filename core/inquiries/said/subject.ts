/**
 * Whose doing a word tells: "you arrive", "arrive" and "crew can get in" are mine, "the florist loads in" and "exhibitors may set up" are not.
 */
import { clauseBefore } from '../parts/sentences.ts';
import { anyOf, phrases } from '../phrases.ts';
import { occasionBegins, othersCome } from './others-come.ts';
import { tellsOfElse } from './tells-of.ts';

/** What may stand between who does it and what is done. */
const BETWEEN = new RegExp(
  String.raw`(?:^|\s|(?<='))(?:${phrases(`
    will | 'll | would | 'd | can | could | should | shall | may | might | must | to | be | is | are | am | was | were | get | gets | do | does | has | have | need | needs
    go | goes | going | gone | start | starts | begin | begins | want | wants | like | plan | plans | aim | hope | help | please | just | also | then | first | usually | normally | ideally
    already | only | all | both | each | able | allowed | welcome | expected | free | asked | due | going | kindly | generally | always | typically | now | probably | likely
  `)}),?\s*$`,
  'i',
);
/** The last word before what is done, with what belongs to it. */
const SUBJECT = /(?<![\d\p{L}'&])([\p{L}'&]+)\s*$/u;
const MINE = anyOf(`
  you | u | ya | ye | we | us | crew | crews | crew's | operator | operators | op | ops | camera | cameras | cam | cams | videographer | videographers | cameraman | cameramen
  cameraperson | shooter | shooters | filmmaker | streamer | mixer | switcher | kit | one | contractor | contractors | supplier | suppliers | technician | technicians | tech | techs
  freelancer | freelancers | everyone | y'all | yous | yourself | yourselves | gear | equipment | rig | day | shift | your | our | someone | somebody | anyone | person | video | filming | both
`);
/** A crew of something else. */
export const OTHER_CREW = anyOf(`{whose} {who}`, {
  whose: `boat | own | house | in-house | venue | stage | av | a/v | sound | audio | lighting | light | lights | other | their | his | her | kitchen | rigging | catering | bar | event | events | tv | broadcast | security | ground | cleaning
            set | decor | production | marketing | film's | band's | hotel's | hall's | local | medical | first-aid | photo | photography | podium | timing | course | set-up | marquee | tent`,
  who: `guy | man | woman | person | op | crew | crews | team | teams | guys | company | people | lot | folks | staff | firm | gang | boys | girls | techs | technicians`,
});
/** People and things that come and go by hours of their own. */
const one = (words: string): string =>
  words
    .trim()
    .split(/\s+/)
    .map((word) => `${word} | ${word}s`)
    .join(' | ');
const PEOPLE = anyOf(`${one(`
  guest delegate attendee folk kid bride groom couple speaker visitor fan player team runner rider walker athlete competitor artist customer vip punter owner boat car horse cyclist swimmer rower lorry truck
  student pupil parent caterer florist dj band musician choir orchestra dancer performer exhibitor trader stallholder sponsor volunteer judge bus mayor minister president chairman chair ceo director client
  treasurer secretary registrar photobooth painter magician clown decorator builder marquee photographer soloist quartet panellist panelist presenter moderator host compère mc referee umpire official marshal steward usher coach bishop vicar priest officiant
  patient member neighbour neighbor resident teacher lecturer chef barman bartender waiter cleaner gardener dealer breeder contestant candidate dignitary ambassador model actor extra chorister lodger tenant
  skipper sailor pilot passenger worshipper mourner bidder buyer seller farmer smith cadet scout guide ranger keeper caretaker janitor porter receptionist warden manager landlord councillor politician journalist
  audience crowd door gate float procession wagon van marcher piper drummer brass teenager child boy girl lady gentleman graduate veteran entrant angler archer gymnast skater skier curler bowler
`)} | people | children | men | women | ladies | gentlemen | everyone | everybody | family | families | public | they | he | she | who | press | media | attorney | cast | staff | coaches | buses | lorries | photo booth | lighting | stage | sound | av
  bridal party | wedding party | groomsmen | bridesmaid | bridesmaids | usher | ushers | the march | the rest | the others | others | dignitaries | judges panel | emcee | talent | hair and make-up | make-up | makeup | hmu | congregation | faculty | board | trustees | committee | council`);
/** "Stage door at 6": a way in, nobody. */
const ENTRANCE = /\b(?:stage|artists'?|players'?|press|staff|vendors?'?|traders?'?|judges'?) (?:doors?|gates?|entrance|desk|entry)\b/i;
/** "Riders sign on at": what stands before an hour is said of others from the beginning of its clause. */
export const ofOthers = (text: string, at: number): boolean =>
  beginsWithOthers(text, at) ||
  othersCome(text, at) ||
  occasionBegins(text, at) ||
  (tellsOfElse(text, at) && !MINE.test(clauseBefore(text, at, REACH).replace(ENTRANCE, '')));

/** True where the clause of an hour begins with people who are not me, and names me nowhere. */
export function beginsWithOthers(text: string, at: number): boolean {
  const clause = clauseBefore(text, at, REACH).replace(ENTRANCE, '');
  const found = PEOPLE.exec(clause);
  return found !== null && /^\s*(?:(?:the|our|all|and) )*$/i.test(clause.slice(0, found.index)) && !MINE.test(clause);
}
/** "The face painter is with us": somebody else is there, named with a word before. */
export function othersAreThere(text: string, at: number): boolean {
  const clause = clauseBefore(text, at, REACH);
  const found = PEOPLE.exec(clause);
  const led = found !== null && /^\s*(?:the|our|an?)\s(?:[\p{L}-]+\s)?$/iu.test(clause.slice(0, found.index));
  return led && IS_THERE.test(clause.slice(found.index + found[0].length)) && !ME.test(clause);
}
const IS_THERE = /^(?:'s|'ll| (?:only |just )?(?:is|are|has|have|can|will|comes?|stays?|plays?|performs?|does|do))(?!\p{L})/iu;
const ME = /\b(?:you|u|your|yours|film\p{L}*|video\p{L}*|cameras?|crew)\b/iu;
/** What has hours of its own, which are neither the occasion's nor mine. */
const THINGS = anyOf(`
  bar/bars/kitchen/kitchens/café/cafe/restaurant/pub/buffet/canteen/shop/shops/store/office/offices/reception/desk/pool/gym/spa/lift/lifts/library/post_office/bank/pharmacy/supermarket/garage | car park | parking | box office | phone line/lines | phones
  train/trains/bus/buses/tram/trams/ferry/ferries/shuttle/shuttles/metro/tube/underground/subway/taxi/taxis/flight/flights/plane/coach/coaches/transfer/transfers/boat/boats | hotel | hostel | check-in | check-out | checkout | breakfast | lunch | brunch | tea | road/roads/street/streets/bridge/lane
  school/schools/term | half term | registration | accreditation | enrolment | early bird | sale/sales | ticket/tickets/booking/bookings/voting/entries/submissions/applications | babysitter | guests check | my shift | i work | i teach | i'm teaching | sun | sunset | daylight | tide | noise limit | kids' club | crèche | creche | childcare | warranty
`);
/** True where the clause before an hour is of a thing with hours of its own: "the bar closes at 1", "trains run until 11:40". */
export function ofOwnHours(text: string, at: number): boolean {
  const clause =
    text
      .slice(Math.max(0, at - REACH), at)
      .split(/[.;:!?\n(]|,\s|\s-+\s|(?<!\p{L})(?:and|so|then|but)(?!\p{L})/iu)
      .at(-1) ?? '';
  const found = THINGS.exec(clause);
  if (found === null || AS_PLACE.test(clause.slice(0, found.index))) return false;
  const rest = clause.slice(found.index);
  // "breakfast is over by 8", "the reception ends at 9": of the occasion.
  if (
    /^(?:breakfast|lunch|brunch|tea|reception)\b/i.test(rest) &&
    /\b(?:over|ends?|done|finish\w*|starts?|begins?)\b/i.test(`${rest} ${text.slice(at, at + 16)}`)
  )
    return false;
  // "the boat is back at the quay at 2": the end of a trip, with all who are on it.
  if (/^boats?(?:'s| is| are| will be|'ll be|s are)? $/i.test(rest) && /^back\b/i.test(text.slice(at, at + 5))) return false;
  return !/\b(?:you|yours|ours|u|crew|we|us|everyone|everybody|vendors?|suppliers?|contractors?|cameras?|video\w*)\b/i.test(rest);
}

/** "be at the hotel by 5": a place, not what opens and closes. */
const AS_PLACE = /\b(?:at|to|in|from|of|into|outside|by|near|on|inside|off|behind|with) (?:the |our |your |my |a |that )?(?:\p{L}+ )?$/iu;
/** Words that are no subject: what stands before a deed in a note, a list or after a date. */
const NO_SUBJECT = anyOf(`
  the | a | an | this | that | on | in | at | by | from | for | of | with | until | till | before | after | around | about | no | not | if | when | where | which | what | how | as | so | and | or | but | please | pls | plz
  am | pm | h | hr | hrs | hours | hour | uhr | noon | midday | midnight | today | tomorrow | tonight | *day | mon | tue | tues | wed | thu | thur | thurs | fri | sat | sun | jan* | feb* | mar | march | apr* | may | jun* | jul* | aug* | sep* | oct* | nov* | dec*
  guess | suppose | think | hope | reckon | assume | suggest | perhaps | always | unless | plus | thus | whereas | ours | yours
  there | here | yes | ok | okay | thanks | hi | hello | morning | evening | afternoon | night | early | late | later | time | earliest | latest | ideally | also | then | just | only | because | since | venue | hall | room | place | site | location | date | dates | rate | pay | fee | vendor | vendors
`);
const CLAUSE =
  /[.;:!?\n(]|,\s|\s-+\s|(?<!\p{L})(?:and|so|then|but|because|as|if|when|where|while|until|before|after|that|which)(?!\p{L})/iu;
const REACH = 60;
/** "in at 7": what is done is in the word before it. */
const IN = /^in(?:\s|$)/i;

/** True when what is done is done by others; false for the crew, for nobody named and where it cannot be told. */
export function doneByOthers(text: string, at: number, deed: string): boolean {
  const clause =
    text
      .slice(Math.max(0, at - REACH), at)
      .split(CLAUSE)
      .at(-1) ?? '';
  const verb = IN.test(deed) ? /([\p{L}']+)\s*$/u.exec(clause) : null;
  const word = verb?.[1] ?? '';
  if (verb && (word === '' || whole(MINE, word.replace(SHORTENED, '')) || whole(NO_SUBJECT, word))) return false;
  // "she says come at 8", "whoever does it should turn up at 5"
  if (
    SPOKEN_TO.test(clause) ||
    /\bwhoever\b|\b(?:says?|said|asks?|asked|told|thinks?|reckons?|suggests?|means|meaning)(?: (?:to|you|me|us|that))*\s*$/i.test(clause)
  )
    return false;
  // "lines in at noon"
  if (verb && clause.slice(0, verb.index).trim() === '' && /\p{L}{3}s$/u.test(word)) return true;
  const { subject, lead, modal } = subjectOf(verb ? clause.slice(0, verb.index) : clause);
  // "the room is for the timing crew you can come at 6"
  if (subject !== undefined && /^(?:you|u)$/i.test(subject)) return false;
  if (OTHER_CREW.test(lead.slice(-30))) return true;
  if (subject === undefined || whole(MINE, subject) || OF_MINE.test(lead)) return false;
  // "we want someone on the Saturday ... if they come at 8.30"
  if (/^(?:they|he|she)$/i.test(subject) && SOMEONE.test(text.slice(Math.max(0, at - SOMEONE_REACH), at))) return false;
  if (whole(PEOPLE, subject)) return true;
  if (whole(NO_SUBJECT, subject)) return false;
  // "loads in", "arrives": somebody else does it. "Pupils come in": many do.
  const third = THIRD.test(verb ? word : deed) && !/^(?:access|days?)/i.test(deed);
  return modal || third || /\p{Ll}s$/u.test(subject) || /^(?:i|it)$/i.test(subject);
}

/** "your people", "video people" */
const OF_MINE = /\b(?:your|video|camera) \p{L}+$/iu;
/** You, in French, German, Spanish, Italian and Dutch. */
const SPOKEN_TO = /(?<!\p{L})(?:[Tt]u|[Vv]ous|Sie|ihr|[Uu]sted|[Jj]ij|je|[Dd]u (?:kannst|könntest|solltest|müsstest|darfst))(?!\p{L})/u;
const SOMEONE =
  /\b(?:want|need|find|found|know|knew|get|have|had|looking for|after|asks?) (?:us |me )?(?:someone|somebody|anyone|anybody|(?:an?|the|that|your|our own) (?:\p{L}+ )?(?:videographer|photographer|camera ?\p{L}*|operator|film-?maker|filmer|shooter|video (?:guy|man|person|chap)|(?:man|woman|chap|lad|fellow|person|guy|girl) with (?:a|the|your) camera))\b/iu;
const SOMEONE_REACH = 240;
const SHORTENED = /'(?:ll|d|re|ve|s)?$/i;
const THIRD = /^\p{L}{2,}[^s\P{L}]s(?:\s|$)/u;
const MOST_BETWEEN = 8;

/** The last word of what stands before a deed, without what may stand between them. */
function subjectOf(clause: string): { subject: string | undefined; lead: string; modal: boolean } {
  let lead = clause;
  let modal = false;
  for (let step = 0; step < MOST_BETWEEN; step++) {
    const cut = BETWEEN.exec(lead);
    if (!cut) break;
    lead = lead.slice(0, cut.index);
    modal = true;
  }
  lead = lead.trimEnd().replace(SHORTENED, '');
  // "the stage crew", "the lighting guys", "guests of the club": who they are stands in the words before as well.
  return { subject: SUBJECT.exec(lead)?.[1]?.replace(SHORTENED, ''), lead, modal };
}

const whole = (pattern: RegExp, word: string): boolean => pattern.exec(word)?.[0].length === word.length;
