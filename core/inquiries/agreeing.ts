/**
 * Who takes up my offer, or moves an hour of a job that is mine already. Nothing is asked in such a message, but it says when I am to be there:
 * the day, the hour and the price of a job.
 */
import { anyOf } from './phrases.ts';

const AMOUNT = String.raw`(?:(?:[a-z]{1,3} ?)?[$£€] ?\d[\d,.']{0,8}k?|(?:rs|chf|sgd|usd|eur|gbp|inr|nzd|aud|cad|r)\.? ?\d[\d,.' ]{1,8}|\d[\d,.']{1,8} ?(?:€|euros?|quid|bucks|dollars|pounds|francs|franken|rand|chf|sgd|usd|eur))(?: (?:flat|cash|all in|total|a day|for the day))?`;
const PRICE = String.raw`(?:your|the|that|this|ihr|dein|votre|ton|le|su|tu|el|je|uw|jouw|het|il suo|la sua|de)e?n? (?:quote|quotation|price|number|figure|day rate|rate|fee|charges?|estimate|offer(?! on\b)|proposal|bid|terms|angebot|honorar|preis|offerte|devis|tarif|prix|presupuesto|precio|preventivo|prezzo|prijs)`;
const OF_AMOUNT = String.raw`(?: (?:of|for|over|über|von|de|di|van|por) ${AMOUNT}|,? \(?${AMOUNT}\)?)?`;
const WELL = String.raw`(?:fine|ok|okay|good|great|grand|perfect|lovely|accept(?:ed|able)|approved|agreed|in order|doable|all ?right|spot on|fair|reasonable|in ordnung|angenommen|accepté|bien|aceptado|akkoord|goed)`;
/** "$875 works for us", "your quotation is in order", "£480 it is", "devis accepté". */
const PRICE_IS_WELL = new RegExp(
  String.raw`(?:(?<![\w$£€])${AMOUNT}|\b${PRICE}${OF_AMOUNT}),? (?:(?:(?:is|are|sounds|looks|seems|has been|have been|was|were)|which [\w ]{1,20} says is) (?:[\w']+ ){0,2}?${WELL}\b|(?:still )?(?:works|suits|will do|does it)\b|it is\b|passt\b|convient\b|(?:nos|me|le) parece bien\b)|(?<![\w$£€])${AMOUNT}'s (?:\w+ )?${WELL}\b|\b(?:devis|offerte|quote|quotation|price|rate|fee|presupuesto) (?:accepted|approved|agreed|accepté|aceptado|akkoord)\b|\bnos parece bien (?:el|tu|su) (?:precio|presupuesto)\b`,
  'iu',
);
/** "Happy with your price", "the trustees have agreed your quote", "nehmen wir Ihr Angebot". */
const ACCEPTS_PRICE = new RegExp(
  String.raw`\b(?:accept(?:s|ed)?|approved?|agreed?|ok'?d|signed off on|(?:happy|good|fine|okay|ok|cool|content) with|nehmen(?: wir)?|nehme ich|akzeptieren|aceptamos|acceptons|accettiamo|akkoord met|einverstanden mit)(?: gerne?)? (?:${PRICE}|(?:the )?${AMOUNT})|\bwe accept(?=[.,!;]|$)`,
  'iu',
);
/** The work is mine: "you're hired", "please proceed", "consider this the green light". */
const TAKEN_ON = anyOf(`
  you're/you_are/your hired | you've/you_have got the job/gig | the job/gig/date is/'s yours | job's/gig's yours | you're our/my/the man/woman/guy/girl/person/one | you're on for/a/b/cam/camera/sound
  like to go with you | go/going with you please | moving/going forward/ahead with you | like to go ahead | glad/happy to go ahead | book it | book us/this/that in | lock us/it/this/that/you in | locking you in | green light | please/pls/kindly/do/yes go ahead | it's/it_is a go/yes | a go for | please/pls/kindly proceed
  let's do it/this | let's go for it | let's make it official | we'll/i'll take it/you | consider this/yourself your/a/the? confirmation/green_light/booking/booked/hired/confirmed
  put/get us/me/this/that/it in the/your diary/calendar/book | pls/please diarise/diarize | committee/board/client/boss/trustees/council/wife/husband/everyone said/says/voted yes | band/board/committee/council voted/met | yes please | all agreed at | sounds good/fine/great/perfect to us/me | sounds good/fine/great/perfect we'll/i'll ... | you win
  wir buchen sie/dich | sie sind/du bist gebucht/engagiert | auftrag erteilt | vorstand hat zugestimmt | on vous/te attend | nous vous attendons | contamos con_usted/contigo/con_vosotros | le/te esperamos | je bent geboekt | dan zien we je/u | la/ti aspettiamo
`);
/** When I am to be there: "be there at six", "come for noon", "9h30 pour toi", "finish an hour later". */
const HOUR_OF_MINE = anyOf(`
  be there/here/set/ready/in/with_us/on_site # | be at ... # | come/arrive/arriving/arrival/get_there/get_here/show_up/turn_up/start # | need/want you # | need/want you in/there/here/set/ready/on_site # | you start/come/arrive/finish/leave # | your start/call/call-time/finish/wrap # | your new call/start/wrap/finish | you'd/you'll/you_would/you_will ... start/finish/arrive/come/need/be | for you at | for you
  sie/du müssten/müsstest/sollten/solltest/müssen/musst | für sie/dich | da sein | vor ort | pour toi/vous | que tu sois/vous_soyez | para ti/usted | te/le necesitamos | voor jou/u | per te/lei
`);
/** Something of it has been moved: "an hour earlier", "9 instead of 11", "vorverlegt". */
const MOVED = anyOf(`
  change/changes/changed/update/updated | instead of | rather than | moved/pushed/brought/shifted/put ... forward/back/up/earlier/later/to/by | now # | is/are/starts/begins/need/needs now | now need/start/starts/begin/begins/at/from/is/ends/runs | an hour earlier/later | half an hour earlier/later | earlier/later than | earlier | stretched | not # | is/was/are/were brought/pushed/moved forward/back/up
  änderung | statt | vorverlegt | verschoben | früher | changement | au lieu de | décalé* | avancé* | plus tôt/tard | cambio | cambiado | en vez/lugar de | adelant* | retras* | in plaats van | eerder | verplaatst | vervroegd | cambiamento | invece di | spostato | anticipato
`);
/** "Slight change of plan for your shoot with us on Saturday": a job that is mine, of which something is moved. */
const CHANGES_MINE = anyOf(`
  change/changes/changed/update ... for/to/about/on your/our ... shoot/booking/filming/job/gig/film_day | change of plan/plans/venue/place/town for your/the/saturday's/sunday's/friday's/next_week's ... shoot/booking/filming/job/gig
`);
/** Whereto it is moved. */
const MOVED_ON =
  /\b(?:shifted|moved|switched|relocated|now in|now at|new (?:venue|place|hall|date|time)|instead|brought forward|pushed back|earlier|later)\b/i;
/** A line of a crew list that is mine: "Camera 2 (you): 13.00", "B CAM (KIT) 5:30a", "Kit (camera): 7.00am". */
const MY_LINE =
  /(?:^|\n)[^\n]{0,40}(?:\b(?:cam|camera|video\w*|sound|audio|photo\w*|op|operator|vision|switcher|stream\w*)\b[^\n(]{0,20}\((?:you|kit)\b[^)\n]{0,12}\)|\bkit \((?:cam|camera|video\w*|sound|audio|photo\w*|op|operator|vision|switcher|stream\w*)[^)\n]{0,12}\))[^\n]{0,12}\d/i;
/** Bookings, lists and meetings in which nobody films, papers that close a matter, and what is paid or off already. */
const NOT_MINE = anyOf(`
  appointment | dentist | dental | clinic | physio | mot | garage | table for/is | your table/room/space/seat/stall/stand/pitch/slot/flight/train/order/parcel/van/car/application/permit/registration/ticket/tickets | rota | volunteer* | shift | practice | choir practice | netball | training | tenant | landlord | boiler | collect | pitch | campsite | exhibitor | you paid | dear/hi/hello florist/baker/caterer/chef/dj/band/singer/driver/neighbour/neighbor/exhibitors/parents/members | florist/flowers/pedestals/bouquet*/catering/menu/cake ... deposit
  as agreed | as discussed | as arranged | no action/reply/response | no need to reply | nothing more/further/needed/to_do/else | contract attached | sign and return | signed contract | thanks for locking in | you signed | everything's/everything_is unchanged | gone with | went with | going with | been cancelled | is cancelled | called off | more than we
`);

/** What is said of my part in a job that is agreed: the price or the work is taken on, with an hour or with each other; or an hour that is mine is moved. */
export function takesMeOn(body: string, timed: boolean): boolean {
  if (NOT_MINE.test(body)) return false;
  const priced = PRICE_IS_WELL.test(body) || ACCEPTS_PRICE.test(body);
  const taken = TAKEN_ON.test(body);
  return (
    (priced && taken) ||
    ((priced || taken || MOVED.test(body)) && timed && (taken || HOUR_OF_MINE.test(body))) ||
    (timed && MY_LINE.test(body)) ||
    (CHANGES_MINE.test(body) && MOVED_ON.test(body))
  );
}
