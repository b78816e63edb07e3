/**
 * Whether a name means a town where the job is: by the words around it.
 */
import type { Token } from '../parts/tokens.ts';
import { monthWord, weekdayWord } from '../words.ts';
import { isAtOurs, isElsewhere } from './elsewhere.ts';
import { isOnlyMentioned } from './mentioned.ts';
import { isHeldThere, isOnTheWay } from './of-the-job.ts';
import { isOrigin, isTakenBack } from './origin.ts';
import { isActing, isUnled } from './unled.ts';

type Tokens = readonly Token[];

export const near =
  /^(?:in|near|nr|behind|beyond|above|outside|around|to|at|into|for|from|over|across|downtown|central|greater|north|south|east|west|just|à|en|près|bei|nach|nahe|em|aan|te)$/;
const label = /^(?:location|venue|base|where|city|place|town|ort|lieu|lugar|luogo|plaats)$/;
/** "3. Location: parade ground, Wagga Wagga" */
const LABELLED_LINE =
  /(?:^|\n|[.!?;] )[^\S\n]*(?:\d{1,2}[.)]\s)?(?:location|loc|venue|where|city|place|town|site|ort|veranstaltungsort|lieu|lugar|luogo|plaats|locatie|sted|plats)\s?[:=][^\n:]{1,60},\s$/i;
const NAMED_SO =
  /(?:\bthe one(?: (?:for you|(?:that |which )?(?:i|we|you|they|he|she|the client)(?:'d|'re|'ll)? [^.,;:!?\n]{2,24}?))? is(?: in| at)?|\b(?:the|this year's|our) (?:town|place|location|city|village|venue) (?:is|will be|would be|'s)|\b(?:in the end|now|finally|actually|instead|so|but)(?: now)?,? (?:it's|it is|it'll be|it will be)(?: now)?(?: in| at)?|\bjetzt (?:ist es|wird es|doch)(?: in)?|(?:->|=>|→)|[,;(] ?(?:that's|that is|namely|i\.e\.)) ?$/i;
/** "We only need you in Hamburg", "it's the Amherst one" */
const ONLY_THERE = /\b(?:only|just) (?:(?:need|want|require|book|hire|film|record|filming|after)\w* )(?:\w+ ){0,2}(?:in|at|for) $/i;
const THAT_ONE = /\b(?:it's|it is|only|just|that's|mean|want|need|for|cover|do|film|shoot|take) (?:only |just )?the $/i;
/** Towns after these words are where people live or work, or where another job is. */
export const NOT_THE_JOB =
  /\b(?:i(?: have|'ve)(?: got)? (?:an?|another)(?: [\w-]+)? (?:shoot|job|gig|booking) in|(?:produc|operat|work|film|shoot)\w*(?: [\w-]+){0,4} out of|(?:i|we) (?:was|were|came|went) (?:over |up |down )?(?:at|in|to)(?: the| your)?|(?:i'm|i am|we're|we are|i'll be|we'll be|they're) (?:shooting|filming|working|away|on a job|busy|booked|stuck|tied up)(?: \w+)? in|erst hieß es|(?:not|rather than) in|(?:mov|go|chang|shift|switch|relocat|transfer)\w*(?: \w+){0,2} from|(?:i'm|i am|he's|she's|he is|she is|they're|they've|has|have|is|are|who) (?:\w+ )?(?:off|gone|went|emigrated|retired|going|flown|flying|headed|heading) (?:back |over |away )?to|(?:he|she|who|they|chap|lad|lady|gentleman|fellow)(?:'s|'ve| has| have)? (?:since |now )?moved to|met (?:\w+ ){0,3}in|(?:walking|skiing|hiking|on holiday|on leave|holidaying|sailing|touring) in|(?:flights?|trains?|ferry|bus|drive|coach) from|(?:flights?|trains?|ferry|(?:mini)?bus|coach|drive|drives|ride|lift|taxi|head(?:ing)?|get(?:ting)?|travel|fly|flying|i'm|you) (?:back|home) to|(?:man|woman|buyer|bidder|stranger) in|(?:recommended|someone|somebody|cousin|contact|guy|fella|fellow|bloke|chap|another one) in|(?:producing|calling|ringing|working|operating|emailing|mailing|running this) (?:\w+ )?from|(?:choir|band|group|team|he|she|they|client|speaker) (?:is|are|comes?) from|tell|due (?:back )?in|no longer in|instead of in|in place of|in lieu of|(?:thinks|thought) (?:it's|it is|it was|its) (?:in|at)|(?:i|we|she|he|they) lands? (?:in|at)|(?:planner|producer|coordinator|agency|company) (?:out of|here in|over in|from)|based (?:in|near|out of)|(?:live|living|headquartered) (?:in|near)|(?:i'm|we're|i am|we are|team|crew|people|guests|delegates|speakers|attendees|clients?|colleagues?|flying|fly|coming|driving|travel(?:l?ing)?|usually|normally|originally|us|friend|hails?|down|up) (?:(?:in|over|up|down|out|all the way) )?from|(?:was|were) (?:originally )?(?:meant|supposed|going|due|planned|scheduled|booked|pencilled)(?: in)?(?: to (?:be|happen|go|take place))?(?: in| at| for)?|(?:was|were|had been) (?:originally |first )?to (?:be (?:held |hosted |played |staged )?|have been (?:held |played )?|happen |take place )(?:in|at)|last (?:year|time|month)(?:'s)? (?:\w+ )?(?:in|at)|university of|(?:bank|city|port|state|college|museum|friends|chamber) of|used to|(?:lads|(?<!\bof (?!our|my|their|the|your)[\w-]+ |\b(?:needs?|wants?|after|for|with) (?:\w+ )?(?:one|two|three|four|\d) )(?:people|parents)|folks|family|relatives|cousins?|nephews?|nieces?|in-laws|friends|members|viewers|staff|mum|mom|dad|brothers?|sisters?|boss|daughters?|sons?) (?:watching |back |over |away )?in|(?:because|cos|as|since|while) (?!it|this|that|they|every)\w+(?:'s| is| are) (?:away |off |stuck |working |over |on \w+ )?in|(?:client|boss|planner|agency|producer|organiser|organizer|director|customer)s?(?: of (?:ours|mine))?(?:'s| is| are|,?) (?:(?:is|are|sits?|lives?|works?|based|over) )(?:over |here )?in|(?:client|customer)(?:'s| is| are) in|(?:boss|planner|agency|producer|organiser|organizer|director)(?:'s|s'?| is| are)?(?: of (?:ours|mine))? in|nicht(?: in| nach)?|pas (?:à|en)|no en|non a|niet in|not (?:in|to)|rather than|instead of|not(?: the)?|no es en|n'est (?:pas|plus) (?:à|en)|(?:forget|scrap|scratch|ditch|bin|drop|cancel|ignore|never mind)(?: about)?|\bcob|(?:our|their|the) (?:\w+ )?(?:office|branch|team|hq|headquarters) is in|head office is in|fresh from|back from|takk for sist i|tack för senast i|tak for sidst i|(?:tu avais|vous aviez|vous avez|tu as) (?:fait|filmé|tourné|couvert) (?:[\p{L}'’]+ ){0,6}à|straight from|en route to|before (?:going|heading) to|your .{0,20} (?:film|video|work) (?:in|for)|(?:saw|seen|spotted|found|got|picked up) your (?:\w+ ){1,4}(?:in|at)|heard .{0,30} from|(?:you|kit|he|she|they) (?:did|shot|filmed|covered) (?:\w+ ){0,5}(?:in|at))\s?$/iu;

/** Where the sender is at home: where the job is, unless another town is named. */
const AT_HOME =
  /\b(?:(?:wir sind|ich leite|ich bin|ich führe|nous sommes|je suis|je dirige|soy|somos|sono|siamo)(?:,? [\p{L}'’-]+){0,9},? (?:in|aus|von|de|à|di)|(?:(?:we(?:'re| are)|i(?:'m| am)|(?:i|we) (?:run|own|manage|work (?:at|for|with)))(?: just)? (?:an?|the) (?:[\w'-]+ ){1,4}|(?:planner|producer|coordinator|agency|company|office|branch|team|hq|headquarters|firm|clients?(?: of (?:ours|mine))?|customer) )(?:in|near|at)|\blives (?:in|near)|(?:gran\p{L}*|nan\p{L}*|mum|mom|dad|mother|father|parents|uncle|aunt\p{L}*|cousins?|sister|brother|son|daughter|grand\p{L}+|famil(?:y|ies)|folks?|lads|friends?|relatives?|guy|bloke|nephews?|nieces?|he|she|they|i|we|client|couple|speakers?|care home|head office)(?:'s|'re|'m| is| are| am)?(?: (?:still|back|over|out|away|up|down|now|currently|all|coming))? (?:in|from)|(?:train|bus|ferry|flight|fly|coach|land|ferry)(?:s|ing)?(?: \w+)? (?:in|up|down|over|across)?(?:to|in|at))\s?$/iu;
/** "I write to you from", "Greetings from", "Aloha from Hilo!" */
export const WRITTEN_FROM =
  /(?<!\p{L})(?:(?:i|we)(?:'m|'re| am| are)? (?:write|writing|contacting|get(?:ting)? in touch|reach(?:ing)? out)(?: (?:to|with))?(?: you)?(?: all the way| today)?|writing|greetings|regards|hello|hi|hallo|grüße|saludos|saluti|groeten) (?:to you |you )?from\s$/iu;
const GREETING = /(?:^|\n|[.!?,] )\p{Lu}[\p{L}'’]*(?: \p{L}+){0,2} from\s$/u;

/** What somebody does where he lives: "does a tractor pull", "is getting married". */
const HOSTS =
  /^(?:'s| is| are)? (?:getting married|marrying|turning|opening|launching|(?:having|holding|throwing|hosting|running|doing|putting on|has|have|holds?|hosts?|throws?|runs?|does|do|puts? on) (?:an?|his|her|their|its|our|some) )/;

/** "in Bristol last year", "in Ardmore, no, wait" */
const AFTERWARDS =
  /^(?: away\b(?! from)|(?: [\w'’]+){0,2} (?:fell|has fallen|have fallen|'s fallen) through\b|(?:'s| is| are) (?:off|no good|out|dead|cancelled|canceled)\b|[\s,.\u2026-]{1,5}(?:no(?=[,;:!–-]|\.\.| (?:wait|sorry|hang|hold|it|its|it's|make|scratch|i|that|that's|actually|not|tell|we|they)\b)|actually|scratch|scrap|make that|i mean|correction|tell a lie|sorry,? (?:it's|its|i mean|make))|,?\s(?:last (?:year|month|week|time|spring|summer|autumn|fall|winter|christmas|easter|(?:jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec)(?:\p{L}*)?)|(?:(?:\w+|a few|a couple of) )?(?:years?|months?) (?:ago|back)|back in|in 20\d\d\b(?=.{0,3}$))|(?: on [^.,;\n]{3,20}?)?,? (?:that |which )?(?:you can (?:forget|ignore)|is (?:off|cancelled|sorted|covered|done)\b))/iu;

/** What stands around a name, as far as it tells whether a town is meant. */
export type Setting = {
  led: boolean;
  /** "at the Bismarck library" */
  housed: boolean;
  strongly: boolean;
  labelled: boolean;
  slot: boolean;
  /** A mark, a date or the end of the line follows. */
  openAfter: boolean;
  /** Next to a date: "7 June, Hull.", "Methven, 11 December" */
  afterDate: boolean;
  beforeDate: boolean;
  /** Between two commas of a list, behind something else and beside a figure: "second camera, York, 7 June". */
  listed: boolean;
  /** Its clause says that the job is there: "the party's in Lewes". */
  held: boolean;
  away: boolean;
  atHome: boolean;
  /** It says whose somebody is: "a Boston publisher". */
  origin: boolean;
  /** Somebody is picked up there, or it is on the way. */
  onTheWay: boolean;
  /** Something lies so near it that nothing nearer is named. */
  beside: boolean;
  afterCapital: boolean;
  /** That word is "The", "Our", "Still". */
  afterSmall: boolean;
  beforeCapital: boolean;
  sentenceStart: boolean;
};

/** "family in Toronto and ": the next town is where the one before it is. */
const ALSO_THERE = /(?:\p{Lu}[\p{L}'-]+(?: \p{Lu}[\p{L}'-]+)?(?:,|,? and| &| und| et| y) )+$/u;
const COMES_TO =
  /\b(?:comes?|coming|drive|driving|travel|travelling|get|fly|heads?|heading|make it|flying (?:everybody|everyone|us|you|people|the)|trip|tours?|touring|returns?|bring\w*|tak(?:e|es|ing)|up|down|out|over|(?:we|i)(?:'ll|'re going| will| all)? (?:go|travel|sail|fly|cycle|walk|march)) (?:\w+ ){0,6}to\s$|\b(?:coming|come|comes|go|going) (?:back|home|over|up|down),? to\s$/i;
/** "twenty minutes from", "not far from", "the nearest town is": where something lies; where people live so is not. */
const BESIDE =
  /(?<!\b(?:i|we|you|he|she|they|who)(?:'m|'re|'s| am| are| is| live| lives)? (?:[\w-]+ ){0,4})(?:\b(?:[1-3]?\d|an?|ten|fifteen|twenty|thirty|few|couple of|five|two|three|four|forty|short)[\s-](?:min(?:ute)?s?|miles?|km|kilomet(?:er|re)s?|stone's throw|drive|walk|bus ride|taxi ride)(?:'s?)?(?: (?:drive|walk|ride|away|out|by \w+))?|\bnot (?:too |very )?far(?: away)?|\ba short (?:\w+ )?(?:drive|walk|hop|ride)) (?:from|out of)\s$|(?<!\b(?:the|in) )\b(?:north|south|east|west) of\s$|\b(?:nearest|closest) (?:proper |bigger |large )?(?:town|city|village|place)(?: is|'s| would be|:) $/i;
const AT_STATION = /^ (?:[\w-]+ )?(?:station|airport|exit|junction|bypass)\b/i;
/** "a hotel in the centre of", "the streets of" */
const PART_OF =
  /\b(?:cent(?:re|er)|heart|middle|outskirts|edge|(?:north|south|east|west)(?:ern)? (?:side|end)|suburbs|village|hamlet) of\s$/i;
/** "Reading is where it happens" */
const IS_WHERE = /^(?:'s| is| will be) (?:where (?:it|we|you|everything|all|the)|the (?:place|town|venue|location|village))\b/;
/** "they've swapped to", "it's been moved to", "we are moving the shoot to" */
const CHANGED_TO =
  /\b(?:(?<!\b(?:who|people|families|staff|may|might|could) )(?:swap|switch|shift|relocat)\w*|(?:it|that|this|now|been|has|is|was|venue|event|do|show|party|shoot|wedding|final|all|everything)(?:'s|'ll be)?(?: now| been)* mov(?:ed|ing)|mov(?:ed|ing) (?:it|this|that|everything|things|the [\w-]+))(?: \w+){0,3}? to\s$/i;
/** "from Aberdeen to Elgin" */
const MOVED_TO = /\bfrom \p{Lu}[\p{L}'-]+(?: \p{Lu}[\p{L}'-]+)? (?:over |across )?to\s$/u;
/** "at our Duluth warehouse", "at the Bismarck library" */
export const VENUE =
  /^(?:office|offices|warehouse|plant|factory|hall|studio|campus|hotel|headquarters|hq|location|site|store|shop|library|arena|church|museum|school|theatre|theater|rink|stadium|gym|club|clinic|hospital|venue|branch|showroom|centre|center|showgrounds?|fairgrounds?|pavilion|racecourse|ground|grounds|ballroom|lodge|marina|harbou?r|airport|depot|college|high|town|civic|community|convention|auditorium|convention)$/;
export const isDateWord = (token: Token | undefined): boolean =>
  token !== undefined && (token.num !== undefined || monthWord(token.lower) !== undefined || weekdayWord(token.lower) !== undefined);
export const properName = (token: Token | undefined): boolean =>
  token !== undefined && /^\p{Lu}\p{Ll}/u.test(token.text) && !isDateWord(token);

/** "70 people in Segovia on Saturday 3 July": who is there on the day is where the job is, though people also live somewhere. */
const PEOPLE_THERE =
  /\b(?:lads|people|parents|folks|family|relatives|friends|members|staff|guests|mum|mom|dad|brothers?|sisters?|daughters?|sons?) (?:over |back )?in\s$/i;

/** "our camera op's car died in": where something went wrong. */
const WENT_WRONG = /\b(?:died|broke down|broken down|crashed|stranded|stuck|stolen|seized up|gave out) (?:\w+ )?in\s$/i;

/** "I got your name from the venue in": what is done there is not said by who told of me. */
const AT_VENUE = /\b(?:venue|hall|hotel|theatre|theater|church|club|(?:community|conference|arts) cent(?:re|er))\s(?:in|at)\s$/i;

/** Words that begin a sentence and no name. */
const NO_NAME =
  /^(?:the|our|your|this|that|these|a|an|my|his|her|their|its|still|same|is|are|was|will|would|can|could|and|but|so|or|then|now|again|only|also|both|yes|no|ok|okay|re|when|if|do|does|it's|that's|i'm|we're|not|either|maybe|perhaps|probably|possibly|just)$/;

/** How far before a name its clause tells what is there. */
const CLAUSE = 120;

export function settingOf(text: string, tokens: Tokens, index: number, next: number, taken: (index: number) => boolean): Setting {
  const [before, first, after] = [tokens[index - 1], tokens[index] as Token, tokens[next]];
  const lead = text.slice(Math.max(0, first.start - 60), first.start);
  const clause = text.slice(Math.max(0, first.start - CLAUSE), first.start);
  const behind = text.slice(tokens[next - 1]?.end ?? first.end, (tokens[next - 1]?.end ?? first.end) + 100);
  const outOf = before?.lower === 'of' && tokens[index - 2]?.lower === 'out';
  const beside = BESIDE.test(lead) && !AT_STATION.test(behind);
  const led = before !== undefined && (near.test(before.lower) || outOf || beside || PART_OF.test(lead)) && before.breaks <= 1;
  const written = WRITTEN_FROM.test(lead) || (GREETING.test(lead) && behind.startsWith('!'));
  const housed =
    before !== undefined &&
    /^(?:our|the)$/.test(before.lower) &&
    /^(?:at|in)$/.test(tokens[index - 2]?.lower ?? '') &&
    VENUE.test(after?.lower ?? '');
  const strongly =
    housed ||
    written ||
    beside ||
    (led &&
      (!/^(?:for|from|over|to|across|just)$/.test(before.lower) || COMES_TO.test(lead) || CHANGED_TO.test(lead) || MOVED_TO.test(lead)));
  const openBefore =
    before === undefined || first.breaks > 0 || /^[,.(:;/?!-]$|^still$/.test(before.lower) || taken(index - 1) || before.num !== undefined;
  const openAfter =
    after === undefined ||
    after.breaks > 0 ||
    /^[,.):;?!/-]$|^(?:again|as|like|please|pls)$/.test(after.lower) ||
    taken(next) ||
    after.num !== undefined;
  const held = isHeldThere(lead);
  const onTheWay = isOnTheWay(lead);
  const origin = !held && !written && !beside && isOrigin(lead, behind, taken(next) || taken(next + 1));
  // "my nephew in Hibbing does a tractor pull"
  const hosts = before?.lower === 'in' && HOSTS.test(behind);
  // "Lewes is Thursday 8 July", "and Amherst on Friday, July 23"
  const onDay =
    /^(?:is|on)$/.test(after?.lower ?? '') &&
    (taken(next + 1) || taken(next + 2)) &&
    (openBefore || led || /^(?:and|then|or|play|plays|playing|doing|visit|visiting)$/.test(before.lower));
  const beforeDate = onDay || (openAfter && (taken(next) || taken(next + 1)));
  const there = beforeDate && PEOPLE_THERE.test(lead);
  const labelled =
    (/^[:–—-]$/.test(before?.text ?? '') &&
      label.test(tokens[index - 2]?.lower ?? '') &&
      (before?.text === ':' || index === 2 || (tokens[index - 2]?.breaks ?? 0) > 0)) ||
    (/^(?:location|venue)$/.test(before?.lower ?? '') && first.breaks === 0) ||
    NAMED_SO.test(lead) ||
    IS_WHERE.test(behind) ||
    (openAfter && LABELLED_LINE.test(clause)) ||
    ONLY_THERE.test(lead) ||
    (THAT_ONE.test(lead) && /^\p{Lu}/u.test(first.text) && /^ (?:one|date|leg|show|night|stop)\b/.test(behind));
  return {
    led,
    housed,
    strongly,
    labelled,
    afterDate: openBefore && (taken(index - 1) || taken(index - 2)),
    beforeDate,
    slot: onDay || (openBefore && openAfter),
    openAfter,
    listed:
      before?.text === ',' &&
      first.breaks === 0 &&
      /^\p{Ll}/u.test(tokens[index - 2]?.text ?? '') &&
      after?.text === ',' &&
      (taken(next + 1) || isDateWord(tokens[next + 1])),
    held,
    away:
      (!held && !hosts && !there && !beside && NOT_THE_JOB.test(lead.replace(ALSO_THERE, '')) && !AT_VENUE.test(lead)) ||
      WENT_WRONG.test(lead) ||
      AFTERWARDS.test(behind.slice(0, 48)) ||
      /^ (?:standard |daylight |local )?time\b/.test(behind) ||
      isTakenBack(lead, behind) ||
      (!there && !AT_VENUE.test(lead) && isOnlyMentioned(clause, behind)) ||
      (!led && !housed && !labelled && !onDay && properName(first) && (isUnled(lead, behind) || isActing(lead, behind))),
    atHome:
      !held && !there && !isAtOurs(lead) && (AT_HOME.test(lead) || written || outOf || onTheWay || origin || beside || isElsewhere(clause)),
    onTheWay,
    beside,
    origin,
    afterCapital: before !== undefined && first.breaks === 0 && properName(before) && !near.test(before.lower),
    afterSmall: before !== undefined && NO_NAME.test(before.lower),
    beforeCapital: after !== undefined && after.breaks === 0 && properName(after),
    sentenceStart: before === undefined || /^[.!?:]$/.test(before.text) || first.breaks > 0,
  };
}

/** A town so large is known by its name far away. */
const LARGE_CITY = 200_000;

/** How surely a town is meant by a name in its setting; below `ENOUGH` it is not taken. */
export function scoreOf(
  setting: Setting,
  name: {
    single: boolean;
    common: boolean;
    capital: boolean;
    people: number;
    nearHome: boolean;
    qualified: boolean;
  },
): number {
  const { led, strongly, labelled, slot } = setting;
  // "in Hull", "at Bath": a large town near home, led as towns are.
  const large = (strongly || setting.listed || (led && setting.beforeDate)) && name.capital && name.nearHome && name.people >= 50_000;
  let score = strongly ? 3 : led ? 1 : 0;
  if (labelled) score += 4;
  if (setting.held) score += 1.5;
  if (name.qualified) score += 4;
  if (!led && !labelled && !name.qualified) {
    score += name.people >= 100_000 ? 0.5 : name.people >= 20_000 ? 0 : -0.5;
    if (slot) score += name.nearHome ? 1.5 : name.people >= 50_000 ? 1 : 0;
    if (slot && name.capital && (setting.afterDate || ((setting.beforeDate || setting.listed) && (!name.common || large)))) score += 1.5;
    if (setting.sentenceStart && name.single && !slot) score -= 0.5;
  }
  if (!name.capital) score -= name.common || (name.people < 20_000 && !name.nearHome) ? 3 : 0.5;
  // "in Welsh": a village far away that bears a word is not meant at all.
  const plausible = name.nearHome || name.people >= 20_000;
  if (name.common && !name.qualified) score -= large ? 0.5 : plausible ? 2.5 : 3;
  if (!name.qualified)
    score -=
      (setting.afterCapital && !(setting.afterSmall && (name.nearHome || name.people >= LARGE_CITY)) ? 2 : 0) +
      (setting.beforeCapital ? (led ? 1 : 2) : 0);
  return score - (setting.away ? 6 : setting.onTheWay ? 2 : setting.atHome ? 1 : 0);
}
