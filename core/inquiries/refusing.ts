/**
 * What a message says that asks nobody to film, although it has dates and words of the trade in it. Each list holds one idea.
 */
import { anyOf } from './phrases.ts';

/** A word for somebody else is asked of me. */
const RECOMMENDS = anyOf(`
  could/can/would you recommend/suggest | what/which ... camera/lens/drone/mic/microphone/gimbal/tripod/software/gear ... you/u use/used/using/shoot/recommend/suggest | do you know someone/anyone/somebody/anybody/of/who/how/where/if | know of a/any/someone/anyone/a_good | any recommendations | recommend a/any/someone/somebody | can you point me | who would you recommend | happen to know
`);
/** Other people's trades are wanted. */
const OTHER_TRADES = anyOf(
  `{want} ... {trade} | {trade} needed/wanted/required/sought | casting call | open call | job alert | full-time | part-time | permanent role/position | salary/salaried | cleaning/catering/security/printing/accounting/translation/moving/courier/delivery services`,
  {
    want: `need | needs | looking for | recruiting | recruit | seeking | want | wanted | hiring | calling all | sign up as | short of | after`,
    trade: `dj | djs | florist | florists | chef | chefs | cook | plumber | plumbers | electrician | electricians | translator | interpreter | dog-sitter | house-sitter | bartenders | bartender | tutor | stewards | steward | extras | extra | ushers | makers | traders | crafters | stalls | bakers | volunteers | volunteer | helpers | actors | models | singers | altos | sopranos | tenors | basses | dancers | musicians | stallholders | vendors | exhibitors | babysitter | nanny | cleaner | cleaners | caterer | caterers | waiters | bar staff | marshals | judges | referees | tutors | drivers | players | members | trustees | sponsors | speakers | contributors | venue | a venue | hall to rent | flat | room to rent | flatmate | lift | ride`,
  },
);
/** An invitation to come as a guest, a member or a buyer. */
const INVITES = anyOf(`
  stall fee | apply online | applications close/for/are | sign up | sign-up sheet | sign up on | want to join | join us | come join | per person | per head | mailing list | in the app | bring a chair/friend/dish/bottle | bring the kids | all events free | free entry | admission free | free admission | all welcome | everyone welcome | spots are limited | seats are limited | limited places
  tickets are/at/from/on | are you coming | will you be coming | you are invited | you're invited | wrap party | birthday party at ours | dinner at ours | have a free slot | has a free slot | free slots | book your slot | reserve your
  what's on | community calendar | parents may film | no filming allowed | filming is not allowed | will be closed | is closed from | road closed/closure | will close | residents should | check-in now | is out now | watch our | watch the | subscribe | our new video | our channel
`);
/** Seeing each other, with or without talk of cameras. */
const MEETS = anyOf(`
  my treat | grab a/some | over a? coffee/beer/lunch/tea/drink/pint | for a coffee/beer/drink/pint/bite/chat | for coffee/lunch/dinner/tea/drinks | pick your brain | catch up | quick call | hop on a | zoom | to chat | meet up | interview you | a chat
`);
/** "My gran watches over Zoom": nobody meets me there. */
const WATCHED = /\b(?:watch|join|follow|attend|listen|tune)\w{0,3}(?: \w+){0,3} (?:over|on|via|by|through) zoom\b/giu;
/** What is asked of a guest, a neighbour or a member, or of whoever has a thing to lend. */
const FAVOURS = anyOf(`
  spare ticket/tickets | see a film/show/match/play | come to the/our/my show/match/play/party/game/concert/quiz | come along! | bbq at ours | drinks at ours | premiere of our/my/the | our/my short? film screens | pub quiz | film night
  borrow ... | rent/hire/buy/lend your ... | for rent | selling my/our/a | are you still? selling | would/will you sell | sell me your | buy your ... | you're/you_are invited to | would you like/love to come to our/my | fancy coming to our/my | i have a spare | pick up the kids | babysit | house-sit | help us/me/them move | move house | work/run the bar | mind the stall | take mum/dad/gran/grandma to | goalkeeper | band practice | practice/rehearsal is/moved/at/on | can you play | you play/playing on/for
  can/to attend | your attendance | give a talk | speak at our | talk at our | use a/your/one_of_your/some_of_your/the/any_of_your clip/clips/footage/film/video/photos/pictures/images | sponsor our/the/us/this | take/buy/book/sponsor a table | our/my podcast | would you buy | do you use
`);
/** What is asked about a job that is done: a change, a file, a bill. */
const AFTERCARE = anyOf(`
 we/i/bit/little/very/rather/really disappointed with/by/in/but/about/that/the | were/was a? bit/little/very/rather/really? disappointed | fix it/this/that/the | drops out | out of sync | send/resend it/them/the_link/that again | has expired | get/have/see the photos/pictures/edit/film/video/footage/files/link by/before/soon/please/yet | keeps asking | one more change/thing | any news on/about the | any sign of | when can i/we expect | still waiting for the
`);
/** A paper, a parcel or a thing that is on its way or is to be filled in. */
const PAPERS = anyOf(`
  your parcel/package/order/delivery | your flight/train/seat/ticket/room/table/appointment/reservation/permit/policy/premium/membership/subscription/licence/license/registration/application/entry/hold/session/talk/slot/stall/stand/shift/slides/headshot/bio | supplier form | vendor form | complete the attached | fill in the attached | tax form | insurance certificate
  insurance for your | the insurance for | due for renewal | expires on | has been granted | has been approved | hold on ... expires
`);
/** Where an earlier offer or job of mine stands. */
const STANDS = anyOf(`
  releasing you/your/the ... hold | releasing you from | hold is released | hold has been released | your library hold | keeping it/the_date/those_dates open for us | interest in our ... festival | entry fee/fees is/are | city's channel | council's channel | street sweeping/cleaning/works | move vehicles/your_car/cars | job board | storm watch/warning | weather warning/alert | road cameras | resend ... link | have/we've/'ve received your quote/offer/proposal/bid/tender | got your quote/offer/proposal | your quote/offer/proposal/bid is/was/has | thanks/thank you for your quote/offer/proposal/bid/tender | i'll/we'll let you know after/when/once/by/as_soon | i/we will let you know | come back to you after/when/once | still waiting for/on the/our | been put on hold | shoot/event/job/gig/booking/show/it/everything is off | been shelved | is postponed | been postponed | been scrapped | pulled the plug | pulled the budget | fell apart
  what a night | what a day | what a show | had ... viewers | is online now | was a highlight | were a highlight | was wonderful | were wonderful | is thrilled | are thrilled | loved it | your ... last night/week/friday/saturday/sunday | re-export | title card | swap the music | high-res files | hi-res files | raw files | one tiny change | one small change | small changes to | bring back the | return the
`);
/** Something that is settled. */
const SETTLED = anyOf(`
  reminder | see you on set | see you there | see you saturday/sunday/friday/thursday | call sheet | contract attached | sign and return | moved to ... same parking | all set for | still on for
`);
/** A paper that is read by many. */
const PAPER = anyOf(
  `notice to members/all/residents/parents | public notice | order forms | minutes of the | order of the day | house rules | what to bring | please bring your`,
);
/** A letter to one of many: "Dear speaker". */
const TO_MANY =
  /^\s*(?:dear|hello|hi|good (?:morning|afternoon|evening)),? (?:all|everyone|everybody|members?|speakers?|contributors?|exhibitors?|presenters?|panellists?|delegates?|guests?|participants?|entrants?|parents?|patrons?|supporters?|subscribers?|customers?|residents?|neighbou?rs?|colleagues?|friends?|volunteers?|stallholders?|traders?|players?|team|applicants?|shareholders?|tenants?|alumni)\b/i;

/** A plain request to work, which stands against a word that elsewhere means none. */
const DEED = `can/could/would/will/might you/u ... film/shoot/record/stream/livestream/cover/photograph/operate/edit/run/mix/switch/do/make/take_it/take_this/take_one/step_in/fill_in/jump_in`;
const WANTED = `another/extra/second pair of hands/eyes with/behind/on a/the? camera | new/website enquiry/inquiry/lead via/from/through ... website/site/form/page | need/needs/looking_for/want/wants/seeking/after/require/requires ... videographer/cameraman/camera/cameras/operator/op/shooter/switcher/streamer/livestream/filming/coverage/photographer/recordist/filmed/recorded/streamed/editor/crew | book you | hire you | can/could/may i/we pencil you | like you to | have you ... film/shoot/record/back/again`;
const ASKS_DEED = anyOf(`${DEED} | ${WANTED}`);
const ASKS_PLAINLY = anyOf(`
  ${DEED} | ${WANTED} | are you ... free/available/around/open/able/booked | you free/available/avail
  your rate/rates/price/availability | quote for | videographer/cameraman/camera/operator/photographer/filmmaker needed/wanted/required/sought | request for proposals/quotation | rfq | rfp
`);

/** What is wanted: "looking for an officiant", "suchen wir zwei Dolmetscher". */
const WANTED_THING =
  /(?<!\p{L})(?:needs?|wants?|after|looking for|looking to (?:hire|rent|book)|seeking|requires?|in search of|hire|rent|quote us|do you have|have you got|suchen?|sucht|brauchen?|cherch(?:e|ons|ent)|recherchons|zoek(?:en|t)?|busc(?:o|amos|an)|necesit(?:o|amos|an)|cerc(?:o|hiamo))\s(?:(?:wir|ich|noch|wij|we|dringend|us|some|only|just)\s)?(?:an?|one|two|three|four|five|six|the|eine?n?|zwei|drei|une?|deux|trois|una|dos|een|twee|due|\d{1,2})\s((?:[\p{L}\d'-]{1,20}\s?){1,3})/giu;
/** Words for me, for what I do and for what is said of any work: no other trade is wanted with them. */
const ANY_WORK =
  /(?<!\p{L})(?:someone|somebody|person|people|hand|hands|pair|body|pro|professional|freelancer|replacement|stand-?in|crew|team|ops?|operator|cam|shooter|price|prices|quote|date|dates|days?|hours?|evening|weekend|week|answer|reply|decision|number|figure|estimate|idea|rate|word|name|yes|confirmation|list|slot|gap|job|gig|shift|look|hold|second|third|angebot|kosten\p{L}*|devis|prix|antwort|moment|minute|favou?r|chat|call|bit|few|couple|lot|record|recording|clip|reel|copy|version|cut|link|stream|show|angle|mixer|switcher|boom|sound|free|day|morning|afternoon|know|be|get|see|talk)(?!\p{L})/iu;
/** What else one may be asked to do. */
const OTHER_DEED = anyOf(`
  can/could/would/will you/u ... play/drive/bake/cook/cater/sing/babysit/deliver/print/clean/paint/translate/interpret/officiate/host/dj/teach/coach/speak/perform/decorate | available/free to play/perform/sing/drive/cater/host/speak/dj | you/u do a/the cake/cakes/hair/make-up/makeup/flowers/nails/catering | do hair | hair and make-up | als dj | as dj | still babysit | do you babysit
`);
/** Wares, studios, courses and posts that are offered, visits that are due and bookings that stand: whatever else is said, nobody is asked to film. */
const FIRM = anyOf(`
  back in stock | book early | first come first served and | shall i hold it | missing out on | i help ... videographers/photographers/filmmakers | show you around | free at short notice | our ... package | private hire
  course/workshop/class ... register/sign_up/seats/places | appointments in/on/at | would love to show you | full-time | vacature | stellenangebot | accepting applications | summer cohort | stipend | hours a week | casting call | extras wanted | applications with cv | helpers | noch helfer
  register by | seats left | for beginners course | trade stands | the survey | tell us about it
  your/ihr ... appointment/termin/check-up | your mot | we have slots | debriefing sessions | awarded to another | factura | facture | rechnung | uw bestelling | tu próximo pedido | ihre bestellung
  thanks for locking in | recap of the booking | nothing to do until | danke für die zusage | vertrag ist unterwegs | merci pour votre confirmation | re-upload | still have the recording/video/film/footage | usb sticks | de download | won't open | sure thing | thanks all, sorted | klar mach ich | ya no hay que
  please find attached/enclosed our/the/your? quote/quotation/estimate | attached is our/the/your quote/quotation/estimate | your quote/quotation q-* | quotes/quotation/quote are/is valid for | here's/here_is/attached_is your/our/the quote/quotation/estimate for | hire desk |
  can/could/would you use me | reel attached |
  film/video/edit/version/file that/which/you ... cuts/cut off | cuts off before/after/halfway | you're a guest | bring yourself and | buy in | don't bring work | at mine in
`);
/** "Ich bin Kameramann", "I'm a sound recordist based in": somebody of the trade who looks for work. */
const OF_THE_TRADE =
  /(?<!\p{L})(?:(?:i'm|i am) an? (?:\p{L}+ ){0,2}|(?:ich bin|je suis|soy|sono|ik ben) (?:un |une |een |eine? )?(?:\p{L}+ )?)(?:student\p{L}*|videogra\p{L}+|vidéaste|camera\p{L}*|kamera\p{L}*|cadreu\p{L}+|monteu\p{L}+|operador\p{L}*|operatore|sound recordist|editor|cutter\p{L}*|colou?rist)(?!\p{L})(?! (?:short|down|light|missing)\b)|(?<!\p{L})student (?:videographer|filmmaker|editor)(?!\p{L})/iu;
/** True for what asks nobody to film, however it is put. */
export const firmlyNot = (body: string): boolean => FIRM.test(body) || (OF_THE_TRADE.test(body) && !ASKS_DEED.test(body));

/** Somebody of another trade is wanted. */
export const wantsOthers = (body: string): boolean => OTHER_TRADES.test(body);

/** Where no word of filming stands in a message: a thing or a deed of another trade is asked. */
export function asksAnotherTrade(body: string): boolean {
  if (OTHER_DEED.test(body)) return true;
  for (const [, thing = ''] of body.matchAll(WANTED_THING)) if (!ANY_WORK.test(thing)) return true;
  return false;
}

/** Somebody offers work or wares to me. */
const OFFERS = anyOf(`
  are you hiring/recruiting | years of experience | years' experience | years experience | i'm/i_am/we're/we_are selling/available/looking_for_work | for sale | my rate/rates/day-rate is/are/starts/start | reel in bio | any work going | i can edit your | we manufacture | our/attached/new price list | insurance for videographers/photographers/filmmakers | get a quote today/now | working together | yes i'm/i_am/i_can | what time do you need me | available ... for camera/video work | my portfolio/showreel/reel/cv/resume | cv/resume attached | looking for work | available ... for your clients | offering ... services | our services | outsourc* | do you need anyone | do you need a second/an assistant | need anyone | i'm free if you | keep me in mind | on your books/roster
  i'm/i_am a/an ... colorist/colourist/editor/videographer/photographer/filmmaker/freelancer/operator/animator/developer/designer/student ... with | i'm/i_am ... open to work | work with you as | freelance editor here | we rank | boost your | are you still looking for a/an/someone/help | do you rent | do you need a/an second/extra/third/assistant ... | i edit ... for | to borrow | viewed your | followers
`);
/** They have somebody else. */
const FOUND = anyOf(`
  found/booked/hired/chosen/picked someone/somebody/another/a_local/a_different | gone/going/went with another videographer/photographer/company/crew/person/one/firm/team/supplier/option/operator | gone/going/went with someone/a_different/somebody | gone/went to another company/crew/firm/team | pulled the ... shoot/job/booking/gig | filled the/that/this slot/date/position/role | sorted for the/that | no longer need/needed/needs/require/required | all sorted now | covered now | thanks/thank_you for offering | thanks anyway
`);
/** True for wares and work that are offered, and for a place that is taken. */
export const offersOrDeclines = (body: string): boolean =>
  OFFERS.test(body) ||
  (FOUND.test(body) &&
    !/\b(?:instead|replacement|pulled out|dropped out|cancelled|fell through|another date|still need|and need|looking for)\b/i.test(body));

/** "Need a second shooter? We have 200 of them": who sells asks whether I want it; "fill in our survey" is no standing in. */
const NO_REQUEST =
  /(?:^|[.!?\n])[ \t]{0,3}(?:are you |do you )?(?:need(?:ing)?|looking for|want|searching for|short of|in need of) [^.,;:!?\n\d]{1,50}\?(?=\s)|\bfill (?:in|out) (?:our|the|this|an?|my|your)\b/giu;
/** Somebody is asked in plain words to film, or a person of the trade is wanted. */
export const asksPlainly = (body: string): boolean => ASKS_DEED.test(body.replace(NO_REQUEST, ' '));

/** True when a message has dates and words of the trade, and something that tells that nobody is asked to film; a plain request outweighs most of it. */
export function asksForNothing(body: string): boolean {
  if (
    RECOMMENDS.test(body) &&
    !/\bwho(?:'d| can| could| might| would| does| is free)\b/i.test(body) &&
    !/\b(?:or|if not|otherwise)\b[^.?!]{0,40}\byou\b/i.test(body)
  )
    return true;
  if (OTHER_TRADES.test(body) || INVITES.test(body) || PAPERS.test(body) || SETTLED.test(body) || TO_MANY.test(body) || PAPER.test(body))
    return !ASKS_PLAINLY.test(body);
  if (STANDS.test(body) || MEETS.test(body.replace(WATCHED, ' ')) || FAVOURS.test(body) || AFTERCARE.test(body))
    return !ASKS_DEED.test(body);
  return false;
}
