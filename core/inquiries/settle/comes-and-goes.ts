/**
 * An hour at which I am told to come or to go in whatever words: "you on the quay for 9", "you can load up at 6", "speeches at 9, after that you're
 * off duty". Who comes or goes then is me, whatever else the hour is of.
 */
import { cuesIn } from '../said/cues.ts';
import { COMING, NOT_COMING } from '../said/coming.ts';
import { LEAVING } from '../said/leaving.ts';

/** So far behind an hour it is still pointed at; nothing with an hour of its own stands between. */
const REACH = 110;
const THAT_IS = String.raw`(?:that's|thats|that is|this is|which is|that would be|that'd be|it is|it's)(?: also| about| exactly| just| then)? (?:when|the time|the hour|the moment|what time)(?: that| when| at which| for you to)?`;
const THEN = String.raw`(?:then|right then|after (?:that|it|this|which|them)|afterwards?|thereafter|whereupon|at (?:which|that|this) (?:point|time|moment|stage|hour)|by (?:then|which time)|from (?:then|there)(?: on)?|once (?:that|it|they|all that|everything)(?:'s| is|'re| are|'ve| has| have)? [\w\u00c0-\u024f ]{2,16}|when (?:that|it|they)(?:'s| is|'re| are|'ve| has| have|  )? ?[\w\u00c0-\u024f]{2,10}|(?:so |and )?${THAT_IS})`;
/** "half ten and you're on the bus home", "at 5 I'm putting you in a taxi": an end only behind an hour, as one may be on a bus at nine to come. */
const SENT = String.raw`(?<![\w\u00c0-\u024f'])(?:(?:you|u)(?:'re|r| are|'ll be|'d be) (?:back )?(?:in (?:the|your|a) (?:car|van|taxi|cab|truck|pub|bath)|in bed|asleep|on (?:the|your|a) (?:(?:last|next|night) )?(?:bus|train|tram|coach|motorway|road|way|plane|sleeper))|(?:i|we)(?:'m|'re|'ll| am| are| will)? (?:put|putting|bundle|bundling|pour|pouring|send|sending) (?:you|u) (?:in|into|on|onto|home|back|off)|(?:away|off|home)(?: home)? (?:with you|you go)|(?:bye[ -]?bye|ciao|tschüss|adiós|that's it|that is it|finito|basta))(?![\w\u00c0-\u024f])`;
const GOING = new RegExp(`${LEAVING}|${SENT}`, 'gi');
const THEN_BEFORE = new RegExp(String.raw`(?:^|[\s,;:.&–-])${THEN}[, ]+(?:it would be |it's )?$`, 'i');
const THEN_BEHIND = new RegExp(String.raw`^(?: [\w'-]+){0,2}? ${THEN}(?![\w\u00c0-\u024f])`, 'i');
/** "... and you're off the clock." */
const NEXT_BEFORE =
  /^(?:ish)?[^.?!,;\d\n(]{0,24}(?:[,;–]| -)? ?(?:and|&|so|\+) $|^,? $|^,? (?:after (?:that|this|which)|afterwards|then|by then)\b[^.?!;\d\n(]{0,40} (?:and|&|so) $/i;
const NEXT_BEHIND =
  /^(?: (?:home|away|off|too|as well|there|with (?:it|that|them)|for the (?:day|night)|(?:the|a|your) (?:taxi|cab|train|bus|coach|tram|boat)))?\s?(?:[.,;:!?)\n]|$|[–-])/i;

/** "get there when the gates open at 11", "you on the quay for 9", "you're due at 10" */
const COMES_AT = new RegExp(
  String.raw`(?:${COMING}(?: [\w\u00c0-\u024f'-]+){0,3}? (?:when|as soon as|once|as|with|alongside) [^.;:,!?\d\n]{2,40}|(?<![\w\u00c0-\u024f'])(?:you|u)(?:'re| are|'d be|'ll be| should be| must be| would be| will be|r| be|'d|'ll| will| would)?(?: (?:standing|stand|waiting|wait|placed|posted|set up))? (?:on|at|in|by|inside|outside|behind|beside|near|up|down|with) (?!(?:risk|fault|least|touch|charge|luck|time|mind|demand|fact|any|all|no|some|this|that)\b)(?:(?:the|our|my|their|a) )?[\w\u00c0-\u024f'-]+(?: [\w\u00c0-\u024f'-]+){0,3}?|(?<![\w\u00c0-\u024f'])(?:you(?:'re| are) due|present yourself|(?:find|look for) me[^.;:,!?\d\n]{0,30}|your (?:duty|duties|work|job|shift|day|part|stint)(?: there| here| with us)? (?:begins?|starts?)|(?:you(?:'re| are)|it's you) there|(?:we|i)(?:'d| would|'ll| will)? (?:await|expect|have) (?:you|u)[^.;:,!?\d\n]{0,24}|(?:need|want|like|have|expect)(?: [\w\u00c0-\u024f']+){0,3} (?:videographer|camera ?(?:man|person|operator)|operator|someone|somebody|crew|him|her|them)(?: [\w\u00c0-\u024f']+){0,2}? (?:there|here|(?:on|at|in|by) (?:the |our |my )?[\w\u00c0-\u024f' -]{2,30})|reach (?:the|our|my) [^.;:,!?\d\n]{2,30}|you we (?:await|expect|need|want)[^.;:,!?\d\n]{0,16}|(?<=(?:^|[.;\n]\s?)(?:[-*•–] )?)(?:you|u|yours|video|camera|kit|videographer)\s?[:–-] [^.;:!?\d\n]{2,32}?|eyes on [^.;:,!?\d\n]{2,24}))(?:,? (?:at|for|by|from|around|about|just after|before|which is|which would be|that's|and that's|that is|and that is|i\.e\.))+ ?$`,
  'i',
);
/** "you can load up at 6", "we say goodbye at 19:00" */
const GOES_AT = new RegExp(
  String.raw`(?:(?<!\b(?:are|r|if|whether|would|will|can|could|have|get|see) )${LEAVING}[^.;:,!?\d\n]{0,24}?|(?:^|[.;:,\n]\s?)(?:liberated|released|dismissed|dispensed|relieved|set free|let go))(?:,? (?:at|by|from|around|about|before|after))+ ?$`,
  'i',
);
/** "need u on the jetty 1.30", "You: at the church hall 06h30" */
const WANTED_AT =
  /(?:(?<![\w\u00c0-\u024f'])(?:need|want|like|have|expect) (?:you|u|ya)|(?<=(?:^|[.;\n]\s?)(?:[-*•–] )?)(?:you|video|cameras?|crew|kit|videographer)\s?[:–-])(?: to be)? (?:there|here|(?:up |down |over |out )?(?:on|at|in|by|inside|outside) (?:the |our |my )?[\w\u00c0-\u024f' -]{2,30})(?<!\b(?:day|cam|camera|court|stage|rink|room|hall|gate|pitch|field|table|lane|platform|floor|level|mat|ring|track|studio|screen|unit|team|row|bay|hole|mile|leg|number|no)),? $/i;
/** "9:30 would be ideal for you to be there", "9.15 is ideal to set up" */
const IDEAL =
  /^(?:ish)?(?:'d| would| will| should| might|'ll)?(?:'s| is| be| do| suit)?(?: about| just| absolutely)? (?:ideal|perfect|great|fine|good|best|lovely|plenty|enough|early enough|time enough|soon enough|right|about right)(?: time)? (?:for (?:you|your (?:arrival|set-?up|call))|to (?:arrive|come|be (?:there|here|in)|get (?:there|here|in)|set up|turn up|start|begin|rig)|for (?:set-?up|set up|your gear|rigging)|as (?:a |your )?(?:call|arrival))\b/i;
/** "If you're in the house by 12:30 the stage manager will walk you through it" */
const IF_YOU_COME =
  /\bif (?:you|u)(?:'re|r| are| were| could be| can be| got| get| came| come| could come| could get| arrived?| turned up| turn up| showed up| reached| can get)(?: [\w\u00c0-\u024f']+){0,5}? (?:at|by|for|from|around|about)(?: about| around)? $/i;
const THEN_FINE =
  /^(?:ish)?(?: or so)?,?(?: then)? (?:(?:i|we|they|he|she|someone|somebody|(?:the|our|my) [\w\u00c0-\u024f]+(?: [\w\u00c0-\u024f]+)?)(?:'d|'ll| would| will| can| could) (?:be|let|walk|show|meet|take|help|have|open|give)|(?:that|it)(?:'d|'ll| would| will| should)? (?:be|do|suit|work|give|leave))\b/i;
/** "I'd expect you clear by 4": to go, not to come. */
const OFF = /\b(?:clear|out|away|done|gone|off|finished|home|released|free|packed|way|road)\b/i;

/** A word for an hour of its own. */
const HOUR =
  /\d|(?<![\w\u00c0-\u024f])(?:noon|midday|midnight|half past|half (?=[a-z])|quarter (?:to|past)|(?:at|by|until|till|til|from|around|about) (?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve))(?![\w\u00c0-\u024f])/i;
/** "then you're free until the doors": a break. */
const BREAK =
  /^[^.;!?\n]{0,24}(?<![\w\u00c0-\u024f])(?:until|till|til|for (?:an? |the )?(?:hour|bit|break|lunch|afternoon|rest of the)|before the|between)(?![\w\u00c0-\u024f])|^,? (?:at|by|around|about|from|after|when|once)(?![\w\u00c0-\u024f])|^ ?#/i;
const CALLED = /(?<![\w\u00c0-\u024f])(?:want|need|like|love|have|expect) (?:you|u)(?: [\w\u00c0-\u024f']+){0,3} ?$/i;
const CURTAIN_CALL = /\b(?:curtain|roll|last) calls?\b/gi;

/** Where what is read behind an hour was cut because another hour stands there. */
const CUT = '#';
const NAMES_ME = /(?<![\w\u00c0-\u024f])(?:you|u|ur|your|you're|yourself|me|kit|video)(?![\w\u00c0-\u024f])/i;

/** An hour follows. */
const LEADS = /(?:^|\s)(?:at|for|by|from|around|about|before|after|is|which would be|that's)\s?$/i;
/** A clause that is looked at is no longer. */
const LONGEST = 80;

/** What an hour is to me by the words right before it, in its sentence, or behind it; `named` where they name me and not everybody. */
export function comesOrGoes(lead: string, tail: string): { cue: 'call' | 'wrap'; named: boolean } | undefined {
  if (LEADS.test(lead)) return beforeIt(lead) ?? behindIt(lead, tail);
  const placed = WANTED_AT.exec(lead);
  if (placed && !NOT_COMING.test(lead.slice(0, placed.index)) && !OFF.test(placed[0])) return { cue: 'call', named: true };
  return IDEAL.test(tail) || (IF_YOU_COME.test(lead) && THEN_FINE.test(tail)) ? { cue: 'call', named: true } : behindIt(lead, tail);
}

function beforeIt(lead: string): ReturnType<typeof comesOrGoes> {
  const go = GOES_AT.exec(lead);
  if (go && !NOT_COMING.test(lead.slice(0, go.index))) return { cue: 'wrap', named: NAMES_ME.test(go[0]) };
  const come = COMES_AT.exec(lead);
  return come && !NOT_COMING.test(lead.slice(0, come.index)) && !NOT_COMING.test(come[0]) && !OFF.test(come[0])
    ? { cue: 'call', named: true }
    : undefined;
}

function behindIt(lead: string, tail: string): ReturnType<typeof comesOrGoes> {
  const line = tail.slice(0, REACH).split('\n')[0] ?? '';
  const cut = HOUR.exec(line)?.index;
  const after = cut === undefined ? line : `${line.slice(0, cut)}${CUT}`;
  for (const hit of after.matchAll(GOING)) {
    const [before, behind] = [after.slice(0, hit.index), after.slice(hit.index + hit[0].length)];
    if (before.length > LONGEST || before.includes('(') || (before.match(/[.?!]/g)?.length ?? 0) > 1) return undefined;
    const points = THEN_BEFORE.test(before) || THEN_BEHIND.test(behind) || (NEXT_BEFORE.test(before) && NEXT_BEHIND.test(behind));
    if (!points || BREAK.test(behind.replace(THEN_BEHIND, '')) || NOT_COMING.test(before)) continue;
    // "Be there at 4, set up, and then you're free", "we'd like you for 6": the hour is that of the call.
    const called = cuesIn(lead.replace(CURTAIN_CALL, 'curtain'), 0, lead.length, true)[0]?.cue === 'call' || CALLED.test(lead);
    return called ? undefined : { cue: 'wrap', named: NAMES_ME.test(hit[0]) };
  }
  return undefined;
}
