/**
 * An hour of something else at which I am told to come or to go by a word that points back to it: "the band loads in at 4, please arrive
 * with them", "doors are at 6 and you should come then", "the buses leave at 9, so you could leave then too", "recording stops at five and so
 * does your work".
 */
import { sentenceAround } from '../parts/sentences.ts';
import { comesThen } from './comes-then.ts';
import type { Where } from './scene.ts';

/** What it is to me: before any single word, and so `strong`. */
type Told = { cue: 'call' | 'wrap' | 'other'; strong: true } | undefined;

const REACH = 150;
const LEAD = 110;
/** What points back to the hour. */
const THEN = String.raw`(?:(?:by |from |for )?then|at (?:that|the same) (?:time|hour|point|moment)|(?:for|to|in time for|at) (?:that|it|this)(?! (?!(?:please|pls|plz|too|also|then|and|because|when|since|already)\b)\p{L}{3,})|with (?:him|her|them|us|me|it|that)|(?<=\bjoin )(?:him|her|them|us)|too|as well|also|likewise|alongside)`;
const COMES = String.raw`(?:come|came|arrive|arriving|be (?:there|here|in|present|with us)|(?:are|were|you) (?:there|here|in)|get (?:there|here|in)|got (?:there|here)|turn up|show up|join(?: in)?|appear|have you (?:there|here|in)|attend|set up|meet us|walk in|start(?: work)?|begin(?: work)?|presented? yourself|report|be (?:at|on|in|by) (?:the|our|my) \p{L}+)`;
const GOES = String.raw`(?:done|finished|finish(?:es)?|free|off|home|gone|released|dismissed|at liberty|go|goes|leave|leaves|stop|stops|over|ends?|pack(?:s|ed)? up|head (?:off|out|home)|clear off|knock off|call it a day|get away|be away|wraps?|closes?)`;
const ME = String.raw`(?:you|u|please|pls|plz|kindly)`;
const FILMING = String.raw`(?:the (?:work|job|shoot)|(?:the |our |your )?(?:filming|work|cameras?|coverage|recording|video|shift|day|job|part)|everyone|everybody|we all|all of us)`;

const COME_THEN = new RegExp(
  String.raw`(?:\b${ME}\b[^.;!?\n\d]{0,32}?|(?:^|[.;,!(-]|\b(?:and|so|but|to(?= have you)|(?:love|like|want|need|expect)(?= you (?:there|here|in))))\s?)\b${COMES}\b(?: there| here| in| along| down| over| up)?,? (?:(?:straight|right|along|just|exactly|already) )?${THEN}(?!\p{L})`,
  'iu',
);
/** "it would be nice if you are already there", "please be there already" */
const ALREADY = /\b(?:you|u|please)\b[^.;!?\n\d]{0,24}\b(?:already (?:there|here|in|set up)|(?:there|here) already)\b/i;
/** "and this is when you should arrive", "that would be your arriving too", "that's when Jo lets you in" */
const THAT_IS_WHEN =
  /\b(?:that|this|which)(?:'s|'d be| is| would be| will be| should be| was)(?: also| then| exactly| about)? (?:when|the (?:time|hour|moment)(?: at which| that)?|what time)\b((?:(?!,|\b(?:i|we|he|she|they|it)(?:'ll|'m|'re|'d| will| am| are)? (?!(?:need|want|like|expect|love|would|could|ask|see|have)\b)|\bbut\b)[^.;!?\n\d]){0,48}?)\b(?:you|u|the (?:camera\w*|crew|video\w*|filmer|operator))\b([^.;!?\n\d]{0,32})/i;
const YOUR_COMING =
  /\b(?:that|this|which|it)(?:'s|'d be|'ll be| is| would be| will be| should be)(?: also| then| about)? (?:your|the crew's|the camera's) (?:\p{L}+ )?(arriv\w+|call|start|time|slot|cue|get-?in|entrance|load-?in|end|finish|wrap|exit|release|stop)\b/iu;
/** "that's when your day begins too", "when you stop for the day" */
const YOUR_DAY =
  /\b(?:that|this|which)(?:'s| is| will be|'ll be)(?: also| then| exactly| about)? when your (?:day|work|shift|job|part|time|stint) (?:(?:also )?(begins?|starts?)|(?:also )?(?:ends?|stops?|finish(?:es)?|is (?:done|over)))\b/i;
const WHEN_YOU =
  /^,? when (?:you|u)(?:'ll|'d| will| would| may| can| could| also| both| all){0,2} (?:(start|begin|arrive|come in|set up|report)|stop|finish|leave|go|go home|pack up|knock off|head off)\b(?! (?:the|your|a|an|to|at|by|from|around|about|until|till|after|before|for)\b)/i;
/** "at 13:30 they throw us out of the hall", "at 18 I kick you out", "at 4.30 the shop closes and we all leave" */
const THROWN_OUT =
  /^(?: sharp| on the dot)?,? (?:they|we|i|he|she|it|(?:the |our |my )?\p{L}+) (?:(?:'ll|will|has to|have to|must|can|always|usually) ){0,2}(?:(?:kicks?|throws?|chucks?|turfs?|boots?|shoos?) (?:you|u|us|everyone|everybody|us all|you all|all of us)(?: all)? out|(?:lets?|sends?|turns?|sets?|cuts?) (?:you|u|us) (?:go|home|loose|free|off))(?=\s?(?:[.,;:!?)\n]|$|of (?:the|there|here)\b|(?:and|so|too|as well|again)\b))/iu;
const ALL_LEAVE =
  /^[^.;!?\n\d]{0,48}?(?:,|\band) (?:then )?(?:we all|everybody|everyone|all of us|you and us) (?:leaves?|goes? home|goes? off|packs? up|clears? (?:off|out)|heads? (?:off|home|out))\b(?! (?:at|by|from|around|about|until|till|after|before|for)\b)/i;
/** "you too", "the camera included", "so do you", "same goes for you" */
const ALSO_ME =
  /^[^.;!?\n\d]{0,64}?(?:,|\band|\bso|\bthat|-|\(|(?=\bincluding you\b)(?<=\s))\s?(?:(?:you|yourself|the camera\w*|video)(?: (?:do|are|will|would|should|must|can|come|start))? (?:too|also|as well|likewise|included)\b|(?:that |which )?includ(?:es|ing) (?:you|yourself)\b|including (?:you|yourself|the camera\w*)\b|(?:the )?same (?:goes |applies )?for (?:you|video|the camera\w*)\b|ditto (?:for )?(?:you|video)\b|goes for you\b|so (?:are|do|does|is|will|would|can|should|may|must|need) (?:you|your \p{L}+|the (?:work|filming|camera\w*|shoot|job))\b)/iu;
const GO_THEN = new RegExp(
  String.raw`\b(?:you|u|${FILMING})(?:'re|'ll|'d|'s)?\b(?:(?!\b(?:by|at|until|till|when|before)\b)[^.;!?\n\d]){0,24}?\b${GOES}\b(?: there| up)?,? (?:(?:right|just|with it) )?(?:then|at (?:that|the same) (?:time|hour|point|moment)|with (?:that|it|them|us)|too|as well|likewise)(?!\p{L})`,
  'iu',
);
/** "bell goes at 3.20, so out by then", "the client wants the room back at 19:00, so wrap by then" */
const SO_OUT =
  /(?:,|;|\band|\bso)\s(?:so )?(?:please )?(?:(?:be|we're|we'd be|we have to be|you have to be|you'd have to be) )?(?:wrap(?:ped)?|out|done|off|gone|away|finished|home|clear(?:ed)?|packed)(?: up| away)?(?: of (?:there|here|it))? by then\b/i;
const WHEREUPON = new RegExp(
  String.raw`\b(?:whereupon|(?:at|after|upon) which(?: (?:point|time|moment))?)[, ]+(?:you|u|everyone|everybody|(?:the |all )?(?:media|crews?|press|video\p{L}*|camera\p{L}*|contractors?|suppliers?))(?:'re|'ll|'d)?\b[^.;!?\n\d]{0,16}?\b${GOES}\b`,
  'iu',
);
/** "for you it's done", "and that's the end for you", "a natural end for everyone" */
const OVER_FOR_ME =
  /\bfor (?:you|the camera\w*|everyone|everybody)(?:,| that| it| this| the (?:day|job|work))?(?:'s| is| would be| will be|'ll be)?(?: all| also| then)? (?:done|over|finished|the end|ends|stops)\b(?! (?:by|at|until|till|from)\b)|\b(?:that|it|this)(?:'s|'d be| is| would be| will be)?(?: also| then| all)? (?:done|over|finished|it|all|(?:the|an?|your) (?:\p{L}+ )?(?:end|finish|close|stop|wrap)) (?:for|of) (?:you\b|everyone|everybody|your|the (?:work|filming|job|shoot))/iu;
/** "10.15 would see you out" */
const SEES_OUT =
  /^(?:(?:'ll| will| would| should| ought to)? )(?:sees?|finds?|has|have) you (?:out|off|home|done|away|gone|finished|free|packed|on (?:the|your) (?:road|way))\b/i;
/** "you'd be finished when the lecture is", of hours from and to. */
const WHEN_IT_IS = new RegExp(
  String.raw`\b(?:you|u|${FILMING})(?:'re|'ll|'d|'s)?\b[^.;!?\n\d]{0,24}?\b${GOES}\b,? (?:when|once|as soon as|with|together with|at the end of|after) (?:it|they|that|this|the [\p{L}-]+)(?: (?:is|are|does|do|has|ends?|finish(?:es)?|stops?|closes?))?(?=\s?(?:[.,;!?\n]|$|(?:as|because|since|so|and)\b))`,
  'iu',
);
/** "get there when the gates open at 11" */
const COME_WHEN = new RegExp(
  String.raw`\b${COMES}(?: there| here)? (?:when|once|as soon as|just as|as|for when|in time for|for the (?:start|beginning) of|at the same time as) [^.;!?\n\d]{2,44}?(?:at|from|around|about|by|\(|,)? ?$`,
  'iu',
);
/** "Rehearsal is at 2 but you need not trouble yourself with that", "(dressing at 11, you don't need that)" */
const NOT_THAT =
  /^[^.;!?\n\d]{0,28}\b(?:you|u)(?:'re| are| do| need| will| would| can| could)? ?(?:not|n't|needn't|don't|dont|won't|wouldn't|can skip|can miss|may skip)\b(?![^.;!?\n\d]{0,40}\b(?:before|earlier|until|later)\b)[^.;!?\n\d]{0,32}\b(?:that|then|it|this|part|bit)\b/i;
/** "Tech rehearsal is 11am which you can skip" */
const SKIPPED =
  /^,? \(?(?:which|that|but that|(?:but )?this one)?,? ?(?:you|u) (?:can|could|may|are welcome to|needn't|need not|don't need to|don't have to|do not need to|do not have to|won't need to|won't have to|will not need to) (?:skip|miss|ignore|attend|come to|go to|be at)(?: (?:that|it|this))?\b(?=\s?(?:[.,;:!?)\n]|$))|^,? (?:but|though|and) (?:you|u) (?:needn't|need not|(?:don't|dont|do not|won't|will not) (?:need|have) to) (?:attend|come|go|be (?:there|here|at (?:it|that)))(?=\s?(?:[.,;:!?)\n]|$))|^,? (?:(?:but|though|and) )?(?:which|that|it|this)(?: (?:is|will|should|does|need)(?: not|n't)|n't|'s not)(?: to)?(?: be| need(?: to be)?)? (?:filmed|recorded|on camera|on video|filming|recording)\b/i;
const NEGATED =
  /\b(?:not|no need|never|without|unless|whether)\b|n't\b|(?<!\b(?:nice|good|great|lovely|ideal|best|perfect|helpful|wonderful|happy|glad)) if\b(?!(?<!\b(?:know|say|me|us|ask|see|wonder|sure|unsure|check|hear) if) (?:you|u) (?:could|might|would)\b)/i;
const LEAVES =
  /\b(?:leaves?|stops?|ends?|finish\w*|closes?|closing|shuts?|goes|go|going|gone|depart\w*|over|done|out|home|locks?|cleaned|wraps?|packs?|last)\b/i;
const LEAVES_VERB = new RegExp(String.raw`\b${GOES}\b`, 'iu');
const NOUN = /\bfor (?:the )?([\p{L}][\p{L}-]{2,20})(?![\p{L}-])/iu;
const BE_FOR = new RegExp(String.raw`(?:^|[.;,!(-]|\b(?:and|so|but|please|you))\s?(?:please )?${COMES} for (?:the )?`, 'iu');

/** A word for another hour: what stands behind it is said of that one. */
const OTHER_HOUR =
  /\d|(?<!\p{L})(?:noon|midday|midnight|half past|quarter (?:to|past)|(?:at|by|until|till|til|from|around|about|for) (?:half )?(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?! \p{L}{3,}))(?!\p{L})/iu;

/** Up to the next hour or paragraph: what may point back to this hour, in its own sentence and the next one. */
function tailOf(text: string, end: number): string {
  const tail = text.slice(end, end + REACH);
  const cut = [/\n\s?\n/, OTHER_HOUR].map((pattern) => tail.search(pattern)).filter((at) => at >= 0);
  return tail
    .slice(0, Math.min(tail.length, ...cut))
    .split(/(?<=[.!?])\s+/)
    .slice(0, 2)
    .join(' ');
}

const clauseWith = (text: string, found: RegExpExecArray): string =>
  `${
    text
      .slice(0, found.index)
      .split(/[.;!?\n,]/)
      .at(-1) ?? ''
  }${found[0]}`;
const holds = (text: string, pattern: RegExp): RegExpExecArray | undefined => {
  const found = pattern.exec(text);
  return found && !NEGATED.test(clauseWith(text, found)) ? found : undefined;
};

/** "The band soundchecks at 4 and you join us at 5.30": what points back leads on to the hour behind it. */
const leadsOn = (tail: string, found: RegExpExecArray): boolean => LEADS_ON.test(tail.slice(found.index + found[0].length));
const LEADS_ON = /^(?: [\p{L}']{1,12}){0,3} (?:at|from|for|by|around|about|before|until|till)(?: about| around)? ?$/iu;

/** What points back to this hour and to no later one. */
const pointsBack = (tail: string, pattern: RegExp): boolean => {
  const found = holds(tail, pattern);
  return found !== undefined && !leadsOn(tail, found);
};

const told = (cue: 'call' | 'wrap' | 'other') => ({ cue, strong: true }) as const;
const [CALL, WRAP, OTHER] = [told('call'), told('wrap'), told('other')];

/** What an hour, or hours from and to, are to me by the words that point back to them. */
export function toldThen(text: string, time: Where & { to?: unknown }): Told {
  const tail = tailOf(text, time.end);
  const lead = text.slice(Math.max(sentenceAround(text, time.start, time.start).start, time.start - LEAD), time.start);
  const clause = lead.split(/[.;!?]|,\s(?=\p{L}+ )/u).at(-1) ?? '';
  if (NOT_THAT.test(tail)) return OTHER;
  if (SKIPPED.test(tail)) return OTHER;
  if (!time.to && (holds(tail, THROWN_OUT) || holds(tail, ALL_LEAVE))) return WRAP;
  const when = time.to ? undefined : (holds(tail, YOUR_DAY) ?? holds(tail, WHEN_YOU));
  if (when) return when[1] === undefined ? WRAP : CALL;
  if (SEES_OUT.test(tail) || [OVER_FOR_ME, GO_THEN, SO_OUT, WHEREUPON].some((pattern) => pointsBack(tail, pattern))) return WRAP;
  if (time.to && holds(tail, WHEN_IT_IS)) return WRAP;
  const also = holds(tail, ALSO_ME);
  if (also) return LEAVES.test(`${clause} ${also[0]}`) ? WRAP : time.to ? undefined : CALL;
  if (time.to) return undefined;
  const isWhen = holds(tail, THAT_IS_WHEN);
  if (isWhen) return LEAVES_VERB.test(isWhen[2] ?? '') ? WRAP : CALL;
  if (comesThen(text, time, tail)) return CALL;
  const yours = holds(tail, YOUR_COMING);
  if (yours) return /^(?:end|fin|wrap|exit|rel|stop)/i.test(yours[1] ?? '') ? WRAP : CALL;
  if (pointsBack(tail, COME_THEN) || holds(tail, ALREADY) || holds(lead, COME_WHEN)) return CALL;
  // "Coffee's on at 5, be here for coffee"
  const to = holds(tail, BE_FOR);
  const noun = to && NOUN.exec(tail.slice(to.index))?.[1];
  return noun && clause.toLowerCase().includes(noun.toLowerCase()) ? CALL : undefined;
}
