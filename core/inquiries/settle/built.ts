/**
 * What an hour is told to be by the build of its sentence, where no word right before it says so: "until they blow the horn at 3",
 * "prizes at 4 and then you're free", "you could pack up then; say 11", "the bus leaves at 10, so half nine for you".
 */
import { cuesIn, type Cue } from '../said/cues.ts';
import { builtAbroad } from './built-abroad.ts';
import type { TimeMention } from '../times/find.ts';
import { comesOrGoes } from './comes-and-goes.ts';
import { filmedThen } from './filmed-then.ts';
import { answersForm } from './form-answers.ts';
import { goesAbroad } from './goes-abroad.ts';
import { hourOfTheirs } from './hours-of-theirs.ts';
import { ofOthersThen } from './others-then.ts';
import type { Where } from './scene.ts';
import { isThereThen } from './there-then.ts';

const LEAD = 110;
const [TAIL, COMES_TAIL] = [90, 120];
const CLOSES = String.raw`(?:done|free|finished|over|off|out|released|dismissed|relieved|excused|right to go|good to go|home|gone|through)`;
const YOU = String.raw`(?:you|u|ur|we|everyone|everybody)(?:'re|'ll|'d|'ve|r|re| are| will| would| can| could| may| may as well)?(?: be)?(?: also| all| both)?`;

/** "(no filming, it's nerves)", "(not you)" */
const NOT_FILMED =
  /^\s?[([](?:you(?:'re| are) (?:not (?:needed|wanted|required)|off)|you (?:don't|needn't|won't)|no (?:film\w*|video|camera\w*|coverage|need)|(?:labou?r|stage ?hands|riggers|rigging|local crew|hall crew|house crew|lighting|sound|audio|staging|set) (?:crew )?only|not (?:you|yours|filmed|needed|for you|us|to be filmed)|without (?:film\w*|video|you)|pas besoin de (?:vous|toi)|sans (?:vous|toi)|ohne (?:sie|dich|video|kamera)|sin (?:ti|usted)|(?:our|their|my) time\b)|^,? (?:ohne (?:sie|dich)|without you|not you|no need(?: for you)?|sans (?:vous|toi)|sin ti)\b(?=\s?(?:[.,;:!)\n]|$))|^ (?:ours|our end|over here|for us here)\b/i;
/** "9 to 5 plus half an hour to rig either side": hours that are longer than they are told. */
const EITHER_SIDE =
  /^[^.;\n\d]{0,12}(?:\b(?:plus|with|and|allow)\b|\+)[^.;\n]{0,12}\b(?:hours?|hrs?|min(?:ute)?s?)\b[^.;\n]{0,24}\b(?:either side|each side|either end|each end|both ends|before and after|before & after|rig|de-?rig|set[- ]?up)\b/i;
const GOES = /\b(?:stops?|leaves?|ends?|finish\w*|closes?|quits?|goes|shuts?|departs?|over|done|out)\b/i;
/** What the verb of the clause before is said of, too. */
const YOU_AT =
  /(?:[,;]|\d|[ap]\.?m\.?) (?:and |but |though )?(?:you|u|yours)(?: (?:can|could|may|at the latest))?,? (?:at|by|around|about) $/i;
const COMES = /\b(?:arriv\w+|comes?|starts?|begins?|in|set|rig|there|here|calls?|loads?)\b[^.;]*$/i;
/** "and then you're free", ", then the filming stops", "; you are also relieved", "and that's it", "and home" */
const THEN_DONE = new RegExp(
  String.raw`^(?:ish\b)?[^.?!\d\n(]{0,32}?(?:(?:,|;|\band|-)?\s?(?:then|after that|after which|whereupon|at which point|when)[, ]+(?:${YOU} (?:${CLOSES}|(?:can )?(?:go|leave|stop|pack|thaw|head|tap out)|to go)|(?:the )?(?:film\w*|camera\w*|shoot\w*) (?:stops?|ends?|(?:is|are) (?:over|done))|(?:it's|that's) (?:it|all|over|done)|home\b(?! for)|${CLOSES}\b|(?:ist )?(?:dann )?(?:ist )?schluss)|(?:,|;|\band)\s?(?:${YOU} (?:are |is )?(?:also )?(?:${CLOSES}|can (?:go|leave|stop))\b(?!\s(?:by|at|until|till|from|to|before|about|around|when|after|once|as soon as)\b)|(?:so )?that's (?:it|that|your wrap|all|the end|you (?:done|finished))|(?:so )?home\b(?! for)|so do you|then we're done)|,? (?:and )?(?:which|that) (?:ends|finishes|concludes|wraps up|closes) (?:things|it|the (?:day|job|work|event|whole thing)|everything|your (?:day|work|part|job))\b|, (?:done|finish|finished|home|finito|over|end)\s?(?:[.;!\n]|$))`,
  'i',
);
/** "At 14:00 all is over", "at five we are done", "a las diez hemos terminado", "om vijf uur zijn we klaar" */
const OVER_THEN =
  /^(?:,(?= ist für ))? (?:(?:sharp|latest),? )?(?:(?:it|all|everything|the whole (?:thing|lot)|alles|das ganze|todo|tout|tutto)(?:'s| is| es| est| ist| will be)? (?:all )?(?:over|done|finished|vorbei|aus|fertig|terminé|fini|finito|klaar|afgelopen)|we(?:'ve| have|'re| are|'ll be)? (?:done|finished|stop|rise|wrap|close|finish|end|break(?! for)|strike|vacate|(?:lock|shut|clear|pack)(?: up)?|(?:locked|cleared|packed|wrapped)(?: up| away| out)?)\b|(?:we|you|everyone|everybody|everything|it all|all of it|all the (?:kit|gear)|the (?:kit|gear|stage|hall|room|set)|all)(?:'ve got|'s got)? ?(?:must|has|have|needs?|should|got)(?: to)? (?:all )?(?:leave|vacate|be (?:all )?(?:out|gone|clear(?:ed)?|empty|packed(?: up| away)?|away|off(?: site)?))\b(?! (?:for|to|on|in|at|with)\b)|there(?:'s| is| will be)? (?:is )?(?:nothing|nobody|no[- ]one) left|you (?:go|leave|finish|stop)\b(?! (?:to|into|up))|hemos (?:terminado|acabado)|habr\p{L}+ (?:terminado|acabado)|se acaba|(?:zijn|ben|is) (?:we|je|het|alles) (?:klaar|afgelopen|vrij|gedaan)|(?:kun|kan|mag) je (?:naar huis|weg|gaan)|(?:bist|sind|seid|ist) (?:du|sie|wir|ihr|es)(?: alle)?(?: wieder| dann)? (?:frei|fertig|vorbei|durch)|ist (?:für (?:sie|dich|euch) )?schluss|ist (?:ihre|deine|eure) (?:arbeit|schicht) (?:getan|vorbei|zu ende)|(?:sollte|sollten|müsste|müssten|dürften) (?:wir|sie|alles|es|du)(?: alle)? (?:durch|fertig|vorbei) sein|(?:you|u) (?:can|could|may) (?:go|leave|pack up|head)\b|si (?:chiude|finisce|smonta)|(?:on|tu|vous) (?:a|avez|as|êtes|es|finit|ferme|remballe)(?: \p{L}+)? (?:fini|terminé|libres?)|\(?on (?:ferme|finit|remballe))/iu;
/** "until the vote at", "to the end of the tasting,", "leave after the waltz,", "done when we board at" */
const LONG_UNTIL =
  /\b(?:until|till|til|through to|thru to|to the (?:very )?end of|up to|right through|stay (?:through|for|until|on)|through the|(?:go|leave|off|free|released|finished|done|stop|away|finish|pack up|(?:go|head|get off|drive|run) home|(?:head|get|set|slip|push|clear|shoot) (?:off|away)) (?:when|after|once|with|as)|bis zu[mr]?|jusqu'(?:au|à la|à l')|hasta (?:el|la|los|las))\s(?:[^\s.;:?!]+ ){1,8}?\(?(?:(?:at|around|about|by|say|so|is|which is|call it|um|gegen|à|vers|a las|om) ){0,2}~?$/i;
const LONG_UNTIL_COMMA =
  /\b(?:until|till|til|to the (?:very )?end of|ends? (?:with|after|on)|stay (?:through|for|until)|(?:go|leave|off|free|released|finished|done|stop|finish|(?:go|head|get off|drive|run) home|(?:head|get|set|slip|push|clear|shoot) (?:off|away)) (?:when|after|once))\s(?:[^\s.;:?!,]+ ){0,6}[^\s.;:?!,]+,? \(?(?:(?:at|around|about|by|say|so|is|which is|call it) ){0,3}~?$/i;
const NOT_UNTIL =
  /\b(?:not|nothing|nobody|no[- ]one|never|only|can't|cannot|\p{L}+n't|hold\w*|keep|decide|know|confirm|wait)\b[^.;]{0,40}$/iu;
/** "last tune at", "last bull about", "carriages at" */
const LAST_OF =
  /\b(?:last|final) (?!is |are |at |on |in |post|day|morning|night|evening|year|time|week|month|bus|train|ferry|boat|flight|tram|tube|orders|minute|edition|chance|one is|thing is|session starts|rehears)[\p{L}'’]+(?: [\p{L}'’]+){0,2}?(?: (?:is|are|ends?|finish\w*|off|out|read|done))?,? (?:(?:at|about|around|by|is|till|til|ca|gegen|um|is at) ){0,2}~?$|\bcarriages?:? (?:(?:at|around|about|are|are at) )?$/iu;
/** "we'll have you on the road by" */
const HAVE_GONE =
  /\b(?:have|get|see) you (?:all )?(?:on (?:the |t'|your )?(?:road|way)|home|away|out|off|gone|done|finished|packed)\b[^.;,\d]{0,16}$/i;
/** "you needn't stay beyond the raffle which is at" */
const NO_LONGER =
  /\b(?:not|n't|no need to|needn't|n[o']t have to)\b[^.;\d]{0,24}\b(?:stay|keep you|need you|want you|hang (?:on|around)|be (?:there|here))\b[^.;\d]{0,12}\b(?:beyond|past|after|longer than)\s(?:[^\s.;:?!]+ ){0,7}$/iu;
/** "so", "say", "call it": the hour is that of which the words before it speak. */
const REFINES =
  /(?:^|[\s,;(-])(?:so|say|call it|let's say|let us say|lets say|let's call it|make (?:it|that)|let's put|we'd say|i'd say|zeg|sagen wir|disons|digamos|diciamo)(?: (?:that's|it's|be|maybe|about|around|at|by|for|from))?\s$/i;
/** "curtain down for you at", "Schluss für dich um" */
const YOUR_END =
  /\b(?:down|over|out|done|off|end|finish(?:ed)?|stop|schluss|feierabend|ende|fertig|fini|klaar) (?:for|für|pour|voor) (?:you|u|dich|sie|toi|vous|jou|u)(?: (?:at|by|is|um|à|om|gegen|at about))?\s$/i;
/** "so 22:45 is your end", "9 would be your call" */
const IS_YOURS =
  /^(?: ?(?:h|uhr|uur|o'clock))?(?:'s| is| will be| would be) (?:also )?your (?:(call|start|arrival)|end|finish|wrap|release|exit|out|stop)\b/i;
/** "if you were here for 6 and left at 10" */
const AND_LEFT =
  /\bif (?:you|u) (?:came|come|were|could|got|arrived?|turned up|started)\b[^.;!?\n]{2,60}\b(?:and|then) (?:left|finished|went home|stopped|got away|packed up)(?: (?:at|by|around|about|for))? $/i;
/** "give it half an hour to coil cable, so" */
const DURATION = /\b(?:half an hour|(?:an|one|two) hours?|quarter of an hour|\d{2} min(?:ute)?s?)\b[^.;!?\d]{0,40}$/i;
/** "then you're free, let's say" */
const DONE_BEFORE = new RegExp(
  String.raw`\b${YOU} (?:${CLOSES}|(?:can )?(?:go|leave|stop|pack up|pack down|head off|head home))\b[^.;\d]{0,40}$`,
  'i',
);
const GOES_WITH =
  /\byou(?:'ll| will|'d| would|'re)? (?:board|join|meet|come|travel|ride|going|coming|riding|sail)\b[^.;!?\d]{0,40},? so (?:the |at the )?\p{L}+(?: \p{L}+)? (?:at|by|for|from) $/iu;
const FOR_ME = /^(?:ish)?,? (?:for (?:you|u|video)\b|please\b|pls\b|plz\b|(?:at (?:the )?)?(?:very )?latest for you)/i;
const LAST_ONE = /\b(?:last|final) \p{L}+/iu;
const AT_LATEST_FOR_ME = /^,? at the (?:very )?latest for you\b/i;

/** An hour of its own in what is left of the clause. */
const HOUR_NEXT =
  /^[^.;!?\n]{0,60}(?<!\p{L})(?:\d|twenty|noon|midday|midnight|half|quarter|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)/iu;

const HOUR_SPELLED =
  /\b(?:at|by|till?|until|around|about|from) (?:about |around )?(?:half (?:past )?|quarter (?:to|past) )?(?:noon|midnight|midday|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b/i;

/** "a break from 8 to 9", "you can rest between 5 and 6", "nothing happens from 5 to 6", "my shift is 9 to 5": hours in which nothing is filmed. */
const IDLE =
  /(?<!\b(?:without|no|any)(?: an?)? )\b(?:breaks?|rest|pause|interval|(?:half an hour|an hour|time|hours?) off(?: for (?:you|lunch|dinner|tea|food))?|nothing (?:happens|is (?:on|happening|planned)|to film|going on)|being cleaned|changeover|i work|i'm working|my shift|i(?:'m| am| would be|'d be|'ll be) in the office)(?: (?:is|are|will be))?(?: (?:from|between|at))? $/i;
const IDLE_AFTER =
  /^,? (?:(?:it's|it is|is|that's|there's|there is|will be) (?:an? |the |your )?(?:break|changeover|interval|rest)\b|(?:it's|it is|is) (?:[\p{L}'-]+ ){1,5}?,? ?(?:not you|without you|no filming)(?=\s?[.;)\n]))/iu;

/** "Your call won't be before 2pm": no hour yet. */
const NOT_YET_CALLED =
  /\b(?:call|start|arrival|load-?in|get-?in|set-?up)(?: time)?(?:'s| is| will| would|'ll)?(?: be)? ?(?:not|n't|won't|wouldn't|unlikely to)(?: be)?(?: any)? (?:before|earlier than) $/i;

const tailOfTime = (text: string, { end }: Where): string => text.slice(end, end + TAIL);

/** The nearest word for a call or for an end before an offset, in its sentence. */
function lastTold(text: string, from: number, to: number): Cue | undefined {
  return cuesIn(text, from, to, true).find(({ cue }) => cue === 'call' || cue === 'wrap')?.cue;
}

/** What the sentence makes of an hour; `strong` where that goes before any single word. */
type Built = { cue: 'call' | 'wrap' | 'show' | 'other'; strong: boolean };

/** The build of the sentence around an hour; `from` is where what was said of the hour before it ends. */
export function builtOf(text: string, time: TimeMention, sentence: Where, from: number): Built | undefined {
  const after = tailOfTime(text, time);
  const start = Math.max(sentence.start, time.start - LEAD);
  const lead = text.slice(start, time.start);
  if (
    NOT_FILMED.test(after) ||
    (time.to && EITHER_SIDE.test(after)) ||
    NOT_YET_CALLED.test(lead) ||
    hourOfTheirs(text, time) ||
    (time.to && (IDLE.test(lead) || IDLE_AFTER.test(after)))
  )
    return { cue: 'other', strong: true };
  const others = ofOthersThen(text, time);
  if (others) return { cue: others, strong: true };
  const near = text.slice(Math.max(from, start), time.start);
  const answer = answersForm(text, time);
  if (answer && !time.to) return { cue: answer, strong: true };
  // "Thu 18: you 8.00 am - 5.30 pm"
  if (time.to && /(?:^|[.;:,\n]\s*|\bwant |\bneed )you(?:'re on| are on|'d be on| on|:)?\s$/i.test(lead))
    return { cue: 'call', strong: true };
  // "You will board with us, so jetty at 15h40"
  if (!time.to && GOES_WITH.test(lead)) return { cue: 'call', strong: true };
  const yours = IS_YOURS.exec(after);
  if (yours && !time.to) return { cue: yours[1] ? 'call' : 'wrap', strong: true };
  if (AND_LEFT.test(lead)) return { cue: 'wrap', strong: true };
  const refines = REFINES.exec(lead);
  // "that is what we pay for, so 5pm to 7.30"
  if (refines && time.to) return { cue: 'call', strong: true };
  const say = refines?.[0] ?? '';
  if ((/call it/i.test(say) && /\d/.test(lead)) || (refines && DONE_BEFORE.test(lead.slice(0, refines.index))))
    return { cue: 'wrap', strong: true };
  if (refines || AT_LATEST_FOR_ME.test(after)) {
    const told =
      lastTold(text, start, start + (refines?.index ?? lead.length)) ??
      (refines?.index === 0 || /^\W*$/.test(lead.slice(0, refines?.index ?? 0))
        ? lastTold(text, Math.max(0, start - LEAD), start)
        : undefined) ??
      (DURATION.test(lead.slice(0, refines?.index ?? 0)) ? lastTold(text, Math.max(0, time.start - LEAD), time.start) : undefined);
    const clause =
      lead
        .slice(0, refines?.index ?? lead.length)
        .split(/[,;]/)
        .findLast((one) => one.trim() !== '') ?? '';
    if (/\b(?:stay|until|till|til)\b/i.test(clause) && !NOT_UNTIL.test(clause)) return { cue: 'wrap', strong: true };
    if (FOR_ME.test(after) && (GOES.test(clause) || LAST_ONE.test(clause))) return { cue: 'wrap', strong: true };
    if (told === 'call' || told === 'wrap') return { cue: told, strong: true };
    if (FOR_ME.test(after)) return { cue: GOES.test(lead) || AT_LATEST_FOR_ME.test(after) ? 'wrap' : 'call', strong: true };
  }
  const done = THEN_DONE.exec(after);
  // "soup at one, goodbyes at two, and that's the end"
  if (done && !HOUR_SPELLED.test(done[0]) && !HOUR_NEXT.test(after.slice(done[0].length))) return { cue: 'wrap', strong: true };
  if (OVER_THEN.test(after) && /(?:^|[.;:,!?\n]|\b(?:and|at|by|um|gegen|à|a las|a la|alle|om|y|e|en|und|et))\s*$/i.test(near))
    return { cue: 'wrap', strong: true };
  if (/^,? you(?:,? (?:please|pls|plz)|,? at the|\s?[.,;\n])/i.test(after) || YOUR_END.test(near))
    return { cue: GOES.test(near) || YOUR_END.test(near) ? 'wrap' : 'call', strong: true };
  const abroad = builtAbroad(after);
  if (abroad) return { cue: abroad, strong: true };
  if (!time.to && goesAbroad(near, text.slice(time.end, time.end + COMES_TAIL))) return { cue: 'wrap', strong: true };
  if (isThereThen(after)) return { cue: GOES.test(near) ? 'wrap' : 'call', strong: true };
  const until = LONG_UNTIL.exec(near) ?? LONG_UNTIL_COMMA.exec(near);
  if (
    until &&
    !NOT_UNTIL.test(lead.slice(0, lead.length - near.length + until.index)) &&
    lastTold(text, time.start - near.length + until.index, time.start) !== 'call'
  )
    return { cue: 'wrap', strong: /\d|\b(?:noon|half)\b/.test(lead.slice(0, lead.length - near.length + until.index)) };
  // "she'll leave at 6pm, you at 4pm"
  const mine = YOU_AT.exec(lead);
  if (
    mine &&
    GOES.test(
      lead
        .slice(0, mine.index)
        .split(/[.;]\s/)
        .at(-1) ?? '',
    ) &&
    !COMES.test(lead.slice(0, mine.index))
  )
    return { cue: 'wrap', strong: true };
  if (HAVE_GONE.test(lead) || NO_LONGER.test(near)) return { cue: 'wrap', strong: true };
  if (LAST_OF.test(near)) return { cue: 'wrap', strong: true };
  if (filmedThen(text, time)) return { cue: 'call', strong: true };
  const ofMe = comesOrGoes(near, text.slice(time.end, time.end + COMES_TAIL));
  // "programme from 20.00 to 22.45, after that you can go": of hours from and to only the end.
  return ofMe && (!time.to || ofMe.cue === 'wrap') ? { cue: ofMe.cue, strong: true } : undefined;
}
