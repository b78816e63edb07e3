/**
 * What a stretch of text is said of: the word for a call, a wrap, an answer that stands nearest to it.
 */
import { cuesIn, type Cue } from '../said/cues.ts';
import type { Where } from './scene.ts';

const CONNECTS = /^[\s,(:@-]*(?:(?:on|at|from|by|is|for|of|the|are|will be|around|round|about|approx|in|~)\s*){0,3}$/i;
/** A thing has a due date only with a word for it; what is delivered or published may also be "on" a day. */
const DUE = /\b(?:by|before|due|within|until|deadline|no later|ready|latest|wants?|needed)\b/i;
const DUE_OR_ON = /\b(?:by|before|due|within|until|deadline|no later|end of|on|is|ready|live|latest)\b/i;
const DELIVERS = /^(?:deliver|publish|upload|post|go|premier|air)/i;
const CALLED_AFTER =
  /^[\s(]*(?:(?:(?:is|was|will be|would be) )?(?:(?:your|the|our|a) )?(?:crew )?calls?\b(?!\s(?:me|you|us|him|her|back)))/i;
/** "9:15 am for you", "5:30 pm crew", "1:15, that's when you should arrive" */
const MINE_AFTER =
  /^[\s(]*(?:for (?:you|crew|the crew|us)\b(?!\sto)|(?:crew|in)\b(?=\s?(?:[,.;)]|$))|(?:mit|für) (?:dem|den) aufbau|,? ?(?:(?:local(?: time)?|sharp|prompt),? ?)?(?:\(|, |- )?(?:(?:so |and )?that's|(?:so |and )?that is|which is) (?:(?:when|the time|what time) (?:you(?!'re (?:done|free|off|finished|released)| are (?:done|free|finished)|(?:'d|'ll| would| will| can| could)? (?:stop|finish|leave|go|be (?:done|free|finished|off))\b)|we'd (?:need|want|like)|we (?:need|want)|i'd (?:need|want|ask|suggest|expect)|we'd (?:ask|suggest|expect)|the (?:camera|crew|videographer))|your (?:call|time|start|slot|cue))\b)/i;
/** "6.15am start": a working day begins in the morning; "7:30pm start" is the doors of a show. */
const START_AFTER = /^[\s(]*starts?\b(?=\s?(?:[,.;)]|$|on\b|(?:mon|tue|wed|thu|fri|sat|sun)))/i;
/** "3.30pm start, midnight finish": both ends of a day. */
const START_AND_END = /^[\s(]*starts?,? (?:and )?[\d:.]{0,5}\s?(?:[ap]m?|midnight|noon|hrs)?,? (?:finish|end|out|wrap|done|close)\b/i;
const FOR_WHAT = /^,? (?:for|to (?:do|have|go on|join)) /i;
const LATE_HOUR = /p\.?m|\b(?:1[2-9]|2[0-3])[:.h]?\d\d|noon|\bhalf\b/i;
/** "2am out", "9pm done" */
const OUT_AFTER =
  /^ (?:(?:ist|sind wir|is het|is|bist du|sind sie|vous êtes|tu es) )?(?:(?:bist du|sind sie|seid ihr)(?: dann| wieder)? (?:frei|fertig)|kannst du gehen|können sie gehen|you can go|you're free|you are free|you're done|libre|libérée?|ende|abbau|out|done|finish|stops?|end|over|release|home(?: time)?|gehen|durch|fertig|schluss|feierabend|drehschluss|klaar|afgelopen|vorbei|fini|terminé)\b(?!\s?[:=]|\s(?:of (?!(?:de-?rig|strike|load-?out|get-?out|day|shift|work)\b)|by|at|\d))/i;
/** "1 pm and that's when you're done", "um 13 Uhr ist alles vorbei" */
const DONE_THEN =
  /^(?:,? (?:and |so )?(?:(?:then )?(?:you're|you are|ur|u r|you'll be) |(?:that's|that is|which is) (?:when (?:you|it|we)(?:'re|'d|'ll| are| would| will| can| could|'s| is)? (?:be )?|you ))(?:done|free|off|finished|released|stop|finish|leave|go|over|wrap|wrapped|ends)\b(?!,? (?:at|by|around|about|from|for|in|after|once|when|as soon as|no later)\b|,? \d)|,? (?:ist|sind|wäre[nt]?) (?:dann )?(?:alles|das ganze|es) (?:vorbei|fertig|aus|zu ende|abgebaut)\b)/i;
/** "our December 20 shoot has to move" */
const MOVES_AFTER =
  /^,?[^.;?!,]{0,60}\b(?:(?:has|have|needs?|had) (?:to )?(?:be )?(?:moved?|changed?|shift(?:ed)?|postponed?)|is off|won't work|(?:does not|doesn't|no longer) works?|fell through|got moved|is (?:filled|taken(?! care)|gone|full|cancelled|canceled)|nvm|never ?mind)\b/i;
/** "29 April and our usual person is off": the person, not the date. */
const SOMEBODY_ELSE = /\b(?:and|but|as|because|since) (?:our|my|his|her|their|the|one of (?:our|my|the))\b.*$/is;
/** "would you have the 24th free", "is the 5th free": asked, not told. */
const ASKED_FREE = /\b(?:have|got|is|are|keep|kept|hold|you)\b[^.;?!\n]{0,30}$/i;
/** "May 13 is a travel day", "Thursday (set-up)" */
const DAY_IS =
  /^\s?(?:is|=|:|-|,)\s?(?:(?:an?|the|our|your|for|just|paid|half) )*(travel|prep|rest|day off|off|recce|site visit|free|set-?up|rig|build|load-?in|de-?rig|strike|pack-?down|get-?out)(?:\/\w+)?(?: day)?\b(?=\s?(?:[.,;)\n]|$|(?:and|so|but|with|from|at)\b))|^\s?\((travel|prep|rest|off|recce|set-?up|rig|build|load-?in|de-?rig|strike)(?: day)?\)|^\s(dark|off|rest day|travel day|day off|free)\b(?=\s?[.,;)\n]|$)/i;
/** "June 3, Fresno, audio - FILLED", "on 5 June: all good, Bex is shooting that one", "January 11 I'm shooting myself" */
const TAKEN_AFTER =
  /^[^.;?!\n]{0,50}?(?:\b(?:we've|we have|i've|i have|there's|there is) (?:already )?(?:got |booked |found |hired )?(?:someone|somebody|cover|an? (?:\p{L}+ )?(?:videographer|photographer|cameraman|camera ?person|operator|crew|person|team|freelancer)) (?:already|sorted|booked|lined up|for (?:that|it|this)(?: one)?)\b|\b(?:please )?(?:don't|do not|no need to|needn't) (?:worry|bother|think) (?:about|with) (?:that|it|this)\b|\.\s(?:that (?:one|date|day)(?:'s| is) |it's |it is |this one(?:'s| is) )?(?:already |now )?(?:filled|crewed|staffed|covered|taken|gone|sorted)\b|\b(?:filled|crewed|staffed|already (?:covered|sorted|booked|staffed|taken)|all good|all set|nothing for you|(?:is|'s|are) (?:covered|sorted|staffed|crewed|taken(?! care))|ignore|fyi only|ohne film|sans film|without (?:film|filming|video)|no (?:film|filming|video|camera) needed|confirmed with|not (?:you|yours))\b|\b(?:our|their|the) (?:in-house|own|usual|regular)\b[^.\n]{0,20}\b(?:films?|shoots?|covers?|does|do|handles?)\b|\bhas (?:since )?gone to\b|\bwould be filmed by\b|\byou said yes\b|\bu said yes\b|\b\w+ doing\b(?! (?:a|the|it|that|this|their|our|his|her)\b)|^\s?[-:=]\s?(?:me|mine)\b(?=\s*(?:[.,;\n]|$))|\bi(?:'m| am) (?:shooting|doing|covering|taking|filming)\b|\b(?:is|'s|will be) (?:shooting|doing|covering|filming|taking) (?:that|it|this)\b)/iu;
/** "08:00 Uhr Aufbau" */
const SET_UP_AFTER =
  /^ (?:aufbauen|anfangen|beginnen|loslegen|da sein|dabei sein|vor ort sein|eintreffen|einrichten|kommen|hinein|rein|aufbau|opbouw|treffpunkt|ankunft|einrichten|montaje|montage du)\b/i;
const SPOKE_AFTER = /^,?\s(?:we|i) (?:spoke|talked|met|saw|chatted)\b/i;
const CHAT_AFTER =
  /^[^.;?!,]{0,20}\b(?:to (?:chat|talk|speak|discuss)|for a (?:quick |short )?(?:call|chat|zoom)|by phone|on the phone)\b/i;
/** "bis zum 15. Februar, 17 Uhr Bescheid" */
const ANSWER_AFTER =
  /^(?:, \d{1,2}(?:[:.]\d\d)? uhr,?)?[^.;?!,]{0,12}\b(?:bescheid|rückmeldung|antwort\w*|zu antworten|répon\w*|laten weten|wissen|zusagen|me dire|savoir)/i;
/** "25 May is our cut-off", "Thursday is when I have to tell them", "the 12th at the very latest" */
const DEADLINE_AFTER =
  /^,? (?:is|being|would be|will be|=) (?:(?:(?:our|my|the|your|client's) )?(?:\p{L}+ )?(?:cut-?off|deadline|closing date|latest|last (?:day|date|moment))\b|(?:when|the day|the date) (?:i|we|they) (?:have|need|must|had|want|will|'ll|decide|choose|pick)\b)|^,? (?:at|as) (?:the )?(?:very |absolute )?(?:latest|outside|deadline|cut-?off)\b/iu;
/** "By Friday noon please." */
const BY_ALONE = /^\s*(?:by|before)\s(?:the\s)?$/i;
const PLEASE_BY = /(?:^|[.,;(?]\s?)(?:please|pls|plz|bitte|svp|por favor),?\s(?:by|before|bis|avant|antes del?)\s(?:the\s)?$/i;
const PLEASE_AFTER = /^[^.;?!]{0,24}(?:\.m\.)?[^.;?!]{0,12}\b(?:please|pls|plz|if (?:you can|(?:at all )?possible)|latest)\b/i;
const NOT_IT =
  /(?<!\p{L})(?:was|were|not|isn't|is not|isnt|aren't|wasn't|weren't|(?:i|we) (?:wrote|said|had|gave)|originally|instead of|rather than|except|excluding|unless|nicht|niet|pas|n'est plus|plus(?= le)|no (?:es|será)|non è|gave (?:it|the date) as|date as)[\s,]{1,2}(?:on\s|for\s|am\s|der\s|den\s|dem\s|le\s|el\s|il\s|op\s|de\s)?(?:the\s)?$/iu;
/** "we have someone for", "I'm filming a wedding on", "as you can't do": days of somebody else or of nobody. */
const NOT_MINE =
  /\b(?:(?:we|i)(?:'ve| have)? (?:already )?(?:got|have|booked|found|hired) (?:someone|somebody|cover|crew|an? (?:videographer|cameraman|camera|shooter|photographer|operator|op|person|guy|lad|woman|team|editor|streamer)) (?:for|on)|(?:i'm|i am) (?:already )?(?:filming|shooting|covering|doing|working|booked|on)\b[^.;,]{0,30} (?:on|for)|(?<!\bif )(?:you|u)(?:'re| are|r)? (?:can't|cant|cannot|couldn't|not (?:free|available|able to do|around)|said you (?:can't|couldn't|were busy)|already booked)(?: (?:do|make|manage|on|for))?)\s(?:on\s)?(?:the\s)?$/iu;
/** "we have Bob for" */
const HAS_NAMED = /\b(?:[Ww]e|I)(?:'ve| have)? (?:already )?(?:got|have|booked|found|hired) \p{Lu}\p{Ll}+ (?:for|on)\s(?:the\s)?$/u;
/** "we have 12 interviews, filmed 10 and 11 January", "the footage we shot on" */
const FILMED_THEN =
  /\b(?:we|i|they)(?:'ve| have) (?:already )?(?:filmed|shot|recorded|taped) (?:\p{L}+ ){0,3}(?:on |over )?(?:the )?$|\b(?:have|'ve got|footage|rushes|material|tapes?|interviews|histories|hours)\b[^.;!?]{0,50}(?:,|\(|\b(?:was|were|we|i|they)) ?(?:all )?(?:filmed|shot|recorded|taped) (?:on |over )?(?:the )?$/iu;
const EVENT_NOUN = /^\s(?:shoot|event|conference|wedding|gig|job|show|festival|summit|gala|date|dates)\b/i;
const ASKS_NOW = /\b(?:need|want|looking|would like|this year|hoping|plan|now)\b/i;

/** Words between a cue and a bare number that keep it a time: "call at 8", "wrap by about 6", "load-in Friday at 2". */
export const TO_NUMBER =
  /^[\s:=,(-]*(?:(?:is|are|at|by|from|for|of|on|will be|would be|around|round|about|approx|approximately|no later than|time|times|the|this|next|coming|day|before|evening|morning|early|starts?|starting|complete|completed|done|finished|over|\d{1,2}(?:st|nd|rd|th)?|\p{L}{3,9}day|mon|tue|wed|thu|fri|sat|sun|each|every|both|days|ab|um|ca|gegen|à|a las|las|alle|om|dès|vers|verso|le|partir|de|da|dalle|kan|possible|circa|etwa|ongeveer|sobre|\p{L}{2,9}(?:enica|ingo|ado|ato)|night|afternoon|arvo|lunchtime|tues|weds|thurs?|tonight|today|tomorrow|=|@|~|:|,|-)[\s:,]*){0,6}$/iu;

/** An hour and a comma between a cue and another hour: "get in two pm, on air seven". */
const OTHER_HOUR =
  /\b(?:\d{1,2}(?:[:.]\d\d)?\s?[ap]m|(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?:\s[ap]m)?|noon)\s?,/i;
/** "for the Leeds job is" */
const FOR_EVENT = /^ (?:for|on|at) (?:the|our|this|that|your) [^.,;:!?\d]{1,30} (?:is|will be|would be|at|=|:)(?: at)?\s$/i;
const AFTER_REACH = 40;
/** A date this far from a word for an end is not the day of that end. */
const FAR = 40;
const DEADLINE_REACH = 60;

/** What a stretch of text is said of, by the nearest cue; dates need the cue for a delivery or a past event to be close and plain. */
export function nearest(
  text: string,
  piece: Where,
  tail: Where & { shared?: boolean },
  isDate: boolean,
  nextDate = Infinity,
): { cue: Cue | undefined; end: number; after: boolean; weak?: boolean } {
  const before = text.slice(piece.start, piece.end);
  const after = text.slice(tail.start, tail.end);
  const cues = cuesIn(text, piece.start, piece.end, !isDate);
  // "call for the Leeds job is 1 PM": the occasion tells nothing of an hour where the call is named before it.
  const called = isDate || cues[0]?.cue !== 'event' ? undefined : cues.find(({ cue }) => cue !== 'event');
  const last = called?.cue === 'call' && FOR_EVENT.test(before.slice(called.end)) ? called : cues[0];
  const gap = last ? before.slice(last.end) : '';
  const tight = last !== undefined && CONNECTS.test(gap);
  const follows = cuesIn(text, tail.start, tail.end).toSorted((a, b) => a.start - b.start)[0];
  const lead = follows ? after.slice(0, follows.start) : '';
  const close =
    follows !== undefined &&
    /^[\s(]*(?:(?:is|for|the|as|our|a|crew|will be|are|to|=|(?:mon|tues?|wed|thu|thurs?|fri|sat|sun)(?:day)?)\s+){0,3}$/i.test(lead);
  const owned =
    follows !== undefined &&
    lead.trim() === '' &&
    /^\s*(?:[,;.)\n]|$)/.test(text.slice(tail.start + follows.end, tail.start + follows.end + 3));
  // "start 14h30 finish 21h00": a word that has an hour of its own.
  const others =
    !isDate && follows?.cue === 'wrap' && /^\s?[:=]?\s?\d/.test(text.slice(tail.start + follows.end, tail.start + follows.end + 3));
  const mine = close && !others && follows && ['call', 'wrap', 'reply', 'delivery', 'show', 'other'].includes(follows.cue);
  if (CALLED_AFTER.test(after) && (!tight || (!isDate && last.cue === 'show')))
    return { cue: 'call', end: CALLED_AFTER.exec(after)?.[0].length ?? 0, after: true };
  const following = text.slice(tail.start, tail.start + AFTER_REACH);
  const starts = START_AFTER.test(following) && !LATE_HOUR.test(text.slice(piece.end, tail.start));
  if (
    !isDate &&
    !/\bfor an?\s$/i.test(before) &&
    (starts || START_AND_END.test(following) || (MINE_AFTER.test(following) && last?.cue !== 'wrap'))
  )
    return { cue: 'call', end: 0, after: false };
  if (!isDate && SET_UP_AFTER.test(following)) return { cue: 'call', end: 0, after: false };
  if (
    isDate &&
    (ANSWER_AFTER.test(text.slice(tail.start, tail.start + AFTER_REACH)) ||
      DEADLINE_AFTER.test(text.slice(tail.start, tail.start + DEADLINE_REACH)))
  )
    return { cue: 'reply', end: 0, after: false };
  if (isDate && PLEASE_BY.test(before)) return { cue: 'reply', end: 0, after: false };
  if (isDate && BY_ALONE.test(before) && PLEASE_AFTER.test(after)) return { cue: 'reply', end: 0, after: false };
  if (isDate && (NOT_MINE.test(before) || HAS_NAMED.test(before))) return { cue: 'other', end: 0, after: false };
  if (isDate && FILMED_THEN.test(before)) return { cue: 'past', end: 0, after: false };
  if (isDate && NOT_IT.test(before)) return { cue: 'past', end: 0, after: false };
  if (CHAT_AFTER.test(after)) return { cue: 'other', end: 0, after: false };
  if (isDate && MOVES_AFTER.test(after.replace(SOMEBODY_ELSE, ''))) return { cue: 'past', end: 0, after: false };
  const rest = text.slice(tail.start, Math.min(tail.start + 90, nextDate));
  if (isDate && TAKEN_AFTER.test(rest)) return { cue: 'other', end: 0, after: false };
  const told = isDate ? DAY_IS.exec(following) : null;
  const kind = (told?.[1] ?? told?.[2] ?? told?.[3])?.toLowerCase();
  if (kind !== undefined && !tight && !(kind === 'free' && ASKED_FREE.test(before)))
    return {
      cue: /^(?:set|rig|build|load)/.test(kind) ? 'call' : /^(?:de|strike|pack|get)/.test(kind) ? 'wrap' : 'other',
      end: 0,
      after: false,
    };
  if (isDate && SPOKE_AFTER.test(after)) return { cue: 'past', end: 0, after: false };
  if (isDate && close && follows?.cue === 'event' && !(tight && last?.cue === 'reply') && EVENT_NOUN.test(after))
    return { cue: 'event', end: 0, after: false };
  if (!isDate && DONE_THEN.test(following)) return { cue: 'wrap', end: 0, after: false };
  const bracketed = (!isDate || tail.shared === true) && lead.includes('(');
  const fromAfter = { cue: follows?.cue, end: follows?.end ?? 0, after: true };
  const plainLead = !tight || last?.cue === 'show' || last?.cue === 'event' || last?.cue === 'call';
  if (OUT_AFTER.test(text.slice(tail.start, tail.start + AFTER_REACH)) && !isDate && plainLead && !/\b(?:at|by|is|from)\s$/i.test(gap))
    return { cue: 'wrap', end: 5, after: true };
  // "party, 4pm setup, 11pm done"
  const mineAlone = owned && !isDate && (follows.cue === 'call' || follows.cue === 'wrap') && /^[\s,]*$/.test(gap);
  // "Be on site by 2 for the walk-through", "arrive on the Thursday at 7.30 for coffee": what I come for leaves it my call.
  if (!isDate && last?.cue === 'call' && follows?.cue === 'other' && FOR_WHAT.test(lead)) return { cue: 'call', end: 0, after: false };
  if (mine && (!tight || mineAlone) && !bracketed) return fromAfter;
  if (
    mine &&
    isDate &&
    last &&
    (last.cue === 'event' || last.cue === 'show') &&
    (follows.cue === 'call' || follows.cue === 'reply') &&
    /\bis\b|\bfor\b|\(/.test(lead)
  )
    return fromAfter;
  if (last) {
    // "for the other end: Launceston, Tassie, Thursday 10": the end of something else.
    if (isDate && last.cue === 'wrap' && (gap.length > FAR || /[:,].*[:,]/.test(gap))) return { cue: undefined, end: 0, after: false };
    const labelled = /^\s?(?:date|on)?\s?:\s?$/i.test(gap);
    if (last.cue === 'delivery' && !labelled && !(DELIVERS.test(before.slice(last.start)) ? DUE_OR_ON : DUE).test(before.slice(last.start)))
      return { cue: undefined, end: 0, after: false, weak: true };
    if (last.cue === 'past' && ASKS_NOW.test(gap)) return { cue: 'event', end: 0, after: false };
    if (last.cue === 'show' && !isDate && !TO_NUMBER.test(gap)) return { cue: undefined, end: 0, after: false };
    // "be at the dock by 8, back around 1pm": the cue belongs to the first hour.
    if (!isDate && (/\b(?:by|at|from)\s\d/.test(gap) || OTHER_HOUR.test(gap))) return { cue: undefined, end: 0, after: false };
    if (last.cue === 'other' && (gap.length > 45 || gap.includes(')'))) return { cue: undefined, end: 0, after: false };
    return { cue: last.cue, end: 0, after: false };
  }
  return mine && !bracketed ? fromAfter : { cue: undefined, end: 0, after: false };
}

/** What follows up to the next comma. */
export function tailOf(text: string, start: number, to: number): Where {
  // A point that ends a short month may end the sentence as well.
  if (text[start - 1] === '.' && /^\s+\p{Lu}/u.test(text.slice(start, start + 4))) return { start, end: start };
  const end = Math.max(start, to);
  const comma = text.slice(start, end).search(/[,;]/);
  return { start, end: comma < 0 ? end : start + comma };
}
