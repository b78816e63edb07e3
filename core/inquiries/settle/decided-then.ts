/**
 * A day on which the date of the job will be known or decided, and which is none of its own: "we only get our date in two weeks", "the fixtures come out
 * on 5 November", "the council meets on 5 November, then we'll know". Where no other day is told, the days are asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays } from './days-among.ts';
import type { EventDays, Scene, Where } from './scene.ts';

const DATE = String.raw`(?:date|day|dates|days|(?:fixture|match)(?: list|s)?|fixtures|schedule|timetable|time ?slot|slot|rota)`;
const THE = String.raw`(?:the|our|a|any|an?|which|what|its|his|her|their|your)(?: exact| final| actual| new| firm)?`;
/** Who decides or tells says on which day, not which day: "on", "by", "in two weeks", "at our meeting on". */
const ON = String.raw`(?:(?:,? (?:only|again|then|there|from me|from us|from them|to us|for (?:it|us|you)|it is|it will be|we get|we have|it can be))* ?(?:at (?:our|the|its|their|a) (?:[\p{L}'-]+ ){1,3})?(?:(?:on|by|in|after|until|till|before|from|within|come|around) (?:the )?)?(?:\p{L}+day,? (?:the )?)?)$`;
const to = (words: string): RegExp => new RegExp(String.raw`(?<!\p{L})(?:${words})${ON}`, 'iu');

/** "We'll only know the date on", "You will get the date from me on", "We hope to know more in" */
const LEARNT = [
  to(
    String.raw`(?:(?:will|'ll|won't|don't|do not|only|should|hope to|expect to|can|could|may|might|going to|must)\s(?:only |not |then |also |first )*)(?:get|know|have|hear|learn|tell (?:you|us)|give (?:you|us)|let (?:you|us) know|be told|be given|find out|receive|say|see|confirm|fix|set|choose|pick|decide|agree|settle)(?: (?:about|on|of))? ${THE} ${DATE}`,
  ),
  to(
    String.raw`(?:will|'ll|won't|only|should|hope to|expect to|can|could|may|might)\s(?:only |not |then )*(?:know|hear|have|tell you|say|find out|let you know|get)(?: (?:more|for sure|for certain|definitely|exactly))?(?: (?:when(?: it is)?|more|which it is))`,
  ),
  // "We find out our date in", "I get told the date on"
  to(
    String.raw`(?:finds?|found|finding) out ${THE} ${DATE}|(?:learns?|(?:get|gets|am|'m|are|'re|is) told) ${THE} ${DATE}|(?:get|gets) (?:the|our) (?:date|dates|slot)`,
  ),
  to(String.raw`(?:expects?|awaits?|awaiting|expecting|waiting for|are (?:given|told|promised)|gets?) (?:the|our) ${DATE}`),
  /\b(?:don't|do not|won't|will not|can't|cannot) know (?:the|our) (?:day |date )?$/iu,
  // "the league tells us on", "the hall gives out dates on"
  to(String.raw`(?:tells|tell|informs|inform|lets|let|notifies|notify) us(?: know)?(?: ${THE} ${DATE})?`),
  to(String.raw`(?:gives|give|hands?|giving|sends?)(?: us| out)? (?:(?:the|our|a|out) )?(?:dates?|fixtures?|slots?)`),
];
/** "The date gets fixed on", "The fixtures come out on", "The draw takes place on", "Date to be confirmed on" */
const DECIDED = [
  to(
    String.raw`(?:the |our |exact |final |^|[.;:!?\n] ?)${DATE}(?: (?:of|for) (?:the |our |it)?(?:[\p{L}-]+)?)? (?:is|are|gets?|will be|will get|is being|are being|is to be|are to be|'s)(?: only)? (?:fixed|decided|set|settled|drawn|chosen|picked|announced|agreed|published|released|made public|confirmed|known|out|issued|given out|handed out|allott?ed|allocated|assigned|awarded|voted on|finalised|finalized)`,
  ),
  to(
    String.raw`(?:the|a|any) decision(?: (?:on|about|over|as to) ${THE} ${DATE})?(?: for (?:it|this))? (?:falls|comes|is|will be|gets|will come|will fall)(?: (?:made|taken|due|reached))?`,
  ),
  to(String.raw`${DATE} (?:comes?|goes|is|are|will be|will come) (?:out|public|up)`),
  to(
    String.raw`(?<!\b(?:prize|raffle|lucky|lottery) )(?:the|our) draw (?:for (?:[\p{L}'-]+ ){1,4}?)?(?:is|takes place|happens|will be|will take place|is held|is made)`,
  ),
  to(String.raw`${DATE}:? (?:to (?:follow|come|be (?:confirmed|announced|fixed|decided|agreed|set))|t\.?b\.?[acd]\.?)`),
  to(
    String.raw`(?:poll|vote|voting|doodle|survey|ballot) (?:for|on|about) ${THE} ${DATE} (?:closes|ends|runs|is open|is|stays open|finishes)`,
  ),
];
/** "The board picks the day on", "Our committee will agree a date at its meeting on" */
const DECIDES = [
  to(
    String.raw`(?<!\b(?:you|u|please|and|to) )(?:announces?|confirms?|allocates?|allots?|hands? out|gives? out|publish(?:es)?|releases?|draws?|decides?|deciding|votes?|voting|picks?|picking|chooses?|choosing|agrees?|agreeing|sets?|fix(?:es)?|settles?|will (?:decide|vote|pick|choose|agree|set|fix|settle)|meets? to (?:set|fix|agree|choose|pick|decide))(?: on| about| over)? ${THE} ${DATE}(?: (?:it (?:is|will be)|for (?:it|this)))?`,
  ),
  new RegExp(String.raw`\b${DATE},? (?:is up to|depends on|hangs on|rests with|lies with|hinges on)\b[^.;!?\n]*$`, 'iu'),
  new RegExp(
    String.raw`(?<!\b(?:can't|cannot|can hardly|hardly) )\b(?:waiting (?:for|on)|wait for)\b[^.;!?\n]*\b(?:${DATE}|league|council|hall|venue|organi[sz]ers?|committee)\b[^.;!?\n]*$`,
    'iu',
  ),
];
/** "Which day it is will be decided on", "When exactly it is we'll know on" */
const WHICH =
  /^[\s"'(-]*(?:when|which (?:day|date)|what (?:day|date))(?: exactly)? (?:it|that|this|we)\b[^.;!?\n]*\b(?:decid|know|fix|tell|up to|depend|settl|announc|choos|chosen|agree|hear|learn|clear)\p{L}*\b[^.;!?\n]*$/iu;
/** Behind the day: "then we'll know", "and decides on the date", "for the date", "before we have a date" */
const BEHIND = new RegExp(
  String.raw`^[^.;!?\n]{0,40}?(?:\b(?:then|after (?:that|which)|afterwards)\b[^.;!?\n]{0,24}\b(?<!let (?:me|us) )(?:know|knows|have|hear|tell you|fix|set|choose|decide|agree|pick)\b(?: (?:more\b|(?:the|a|our|which|what|when)\b[^.;!?\n]{0,12}(?:${DATE}\b|when\b|it is)|for (?:sure|certain)|\s?$)|\s?$|\s?(?=[.;!?\n]))|\b(?:and|to|which|who|it) (?:will |'ll |then |shall )*(?:decides?|sets?|fix(?:es)?|agrees?|chooses?|picks?|votes?|tells? us|lets? us know)(?: on| about| over)? ${THE} ${DATE}|\bbefore (?:we|i) (?:have|know|get|can (?:fix|set|name|tell you|give you)) ${THE} ${DATE})|^,? (?:for|about|with) (?:the|our|a) (?:exact )?date\b|^ which (?:day|date) (?:it|that|this)\b|^ when (?:it|that|this) (?:is|will)\b`,
  'iu',
);
/** "On 5 November we fix the date", "Once the council has met on 5 November I can give you the date" */
const THE_DATE = String.raw`(?:date|day|dates|fixtures)`;
const THEN = new RegExp(
  String.raw`^[^.;!?\n]{0,24}\b(?:we|i|they|you|he|she|\p{L}{4,})(?:'ll| will| can| should| shall| do| don't| won't| hope to| expect to| then| only| finally)* (?:know|get|gets|fix|set|choose|pick|decide|decides|agree|learn|learns|hear|find out|announce|(?<=(?:'ll|will|should|can) )have|(?:give|tell|send) you)(?: on)? (?:${THE} ${THE_DATE}\b|when (?:it|we|that|this)\b)|^ (?:where|at which|in which|when) (?:the|our|a) ${THE_DATE} (?:is|gets|will be) (?:fixed|decided|set|agreed|chosen|settled)\b`,
  'iu',
);
/** The next sentence: "Then we'll know", "I'll send you the date afterwards" */
const NEXT = new RegExp(
  String.raw`^[.;!,]\s+(?:(?:then|after that|afterwards)\b[^.;!?\n]{0,30}\b(?:know|have|tell you|fixed|decided|set|date)\b|(?:we|i)(?:'ll| will| can| should) (?:know|send you|tell you|give you|have|let you have) ${THE} (?:date|day)\b|the (?:date|day) (?:comes out|will|is then|then|depends))`,
  'iu',
);
/** "It is on" tells the day, whatever is known then. */
const IT_IS_ON = /\b(?:it(?:'s| is|'ll be| will be)|(?:takes|will take) place|happens) (?:on )?(?:the )?(?:\p{L}+day,? (?:the )?)?$/iu;

/** Said of the day itself, or right before its sentence. */
const NO_DATE = new RegExp(
  String.raw`\b(?:there is|there's|there are|we have|have|still|as yet)? ?\b(?:(?:no|not a) (?:fixed |firm |exact )?(?:date|day|dates)(?: (?:yet|so far|fixed|set|is set|is fixed|has been (?:set|fixed|chosen)|for it yet|at the moment|for now)))|\b(?:the|our) (?:exact )?(?:date|day) (?:is|has|was)(?: ?n't| not)(?: been)?(?: yet)? (?:fixed|set|settled|decided|known|chosen|agreed|there)\b|\b(?:haven't|have not|hasn't|don't have|do not have)(?: yet)?(?: got)?(?: yet)? (?:a|any|the|our) (?:date|day)\b|\b(?:date|day) (?:is )?(?:still |left )?open\b`,
  'iu',
);
/** What happens then, and is only how the day comes about. */
const MEETS =
  /\b(?:meets?|meeting|sits?|votes?|vote|happens|will be done|is done|decid\p{L}*|decision|comes out|draw|announc\p{L}*)\b[^.;!?\n]*$/iu;
const FILMED = /\b(?:film|record|cover|shoot|captur|stream|video)(?:ed|ing|s|e)?\b/iu;
const REACH = 130;

/** The days, or as a question where they are those on which the date will be known. */
export function heldAgainstDecision({ text }: Scene, event: EventDays): EventDays {
  if (event.dates.length === 0 || event.where.length === 0) return event;
  return event.where.every((where) => isDecision(text, where)) ? askedDays(event.where, [event.dates], 'open') : event;
}

function isDecision(text: string, { start, end }: Where): boolean {
  const sentence = sentenceAround(text, start, end);
  const lead = text.slice(Math.max(sentence.start, start - REACH), start);
  const rest = text.slice(end, Math.min(sentence.end, end + REACH));
  if (FILMED.test(lead) || FILMED.test(rest)) return false;
  if (!IT_IS_ON.test(lead) && (WHICH.test(text.slice(sentence.start, start)) || THEN.test(rest))) return true;
  if (MEETS.test(lead) && NEXT.test(text.slice(sentence.end, sentence.end + REACH))) return true;
  if ([...LEARNT, ...DECIDED, ...DECIDES].some((words) => words.test(lead)) || BEHIND.test(rest)) return true;
  // "There is no date yet; there is a meeting on 5 November."
  const before = text
    .slice(Math.max(0, sentence.start - REACH), sentence.start)
    .trimEnd()
    .slice(0, -1);
  return NO_DATE.test(lead) || (NO_DATE.test(before.split(/[.;!?\n]/).at(-1) ?? '') && MEETS.test(lead));
}
