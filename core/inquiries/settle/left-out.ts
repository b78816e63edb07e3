/**
 * A day of a run that words beside it take out of the job, or that alone is ours of somebody else's run: "you'd have the Sunday off", "forget the Sunday", "the 13th
 * has been dropped", "the second day is not for filming", "you are needed until the 14th", "the festival is on from the 12th to the 15th and we play on the 13th".
 * It is asked whether the whole run is meant.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, consecutive, MOST_MENTIONS, namedAmong, OF_ELSE } from './days-among.ts';
import { daysInPlace } from './in-place.ts';
import { numberOf } from './marks.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const LEAD = 60;
const BEHIND = 60;
/** "forget the", "12 to 14 November, minus the" */
const TAKES_OUT =
  /(?<!\b(?:don't|do not|not|never|can't) (?:let us |let's )?)\b(?:(?:forget|skip(?:ping|ped)?|leav(?:e|ing) out|minus|less|not counting)(?: about)? (?:on )?(?:the )?|(?:drop(?:ping|ped)?|losing|lost|cut(?:ting)?|scrap(?:ping|ped)?|cancel(?:l?ed|l?ing)?|pull(?:ed|ing)? out of|take off|taken off) the )$/i;
const HAVE_OFF = /\b(?:you|with|have|having|get|got|gives? you)(?: \p{L}+)? (?:the )?$/iu;
const OFF =
  /^(?: (?:one|date|evening|show|night|part|leg))?,?\s?(?:(?:now )?(?:has|have|had|'s|'ve|is|was|are|were) (?:now |since |sadly |just )?(?:been )?(?:dropped|cancell?ed|cut|scrapped|called off|axed|taken (?:out|off)|struck off|removed|left out)|(?:is|'s) (?:now |sadly )?(?:off|out|gone|no longer (?:on|happening|needed|part of it|ours))\b(?! (?:limits|to|of|for|at|by|around|about)\b)|falls away|drops out|(?:is|'s) (?:your|a) (?:day off|free day))/i;
const BY_PLACE =
  /\bthe (first|opening|second|third|middle|last|final|closing) (?:day|night|evening|show) (?:(?:is|will be)(?:n't| not)|needn't|need not|won't|has been (?:dropped|cancell?ed|cut|scrapped|called off)|is (?:off|cancell?ed|out))\b(?! (?:be )?(?:fixed|decided|known|clear|confirmed|full|long|as|so|the|a|an|over|until|before|till|finish|end|start)\b)/i;
const ALL_WE_NEED =
  /\bthe (first|opening|second|third|middle|last|final|closing) (?:day|night|evening|one|show) (?:is|would be|will be) (?:all (?:that )?(?:we|i|you)\b|(?:quite )?(?:enough|plenty|sufficient))/i;
/** "you are needed until the 14th", "you'd join us from Saturday" */
const NEEDED_TILL =
  /\b(?:you(?:'d|'re|'ll| would| are| will)?(?: only| just)? (?:be )?(?:needed|wanted|required|there|here|filming|film|come|join us|start|begin|with us|on site|stay)|(?:need|want|like|have) you(?: there| here| with us)?|filming (?:is|runs|goes on))(?: only| just)? (?:(from|as of|as from)|until|til|till|up to|up until|through)(?: and including)? (?:the )?$/i;
/** "we play on the", "our choir sings on" */
const WE_ARE_ON =
  /\b(?:(?:we|i)(?:'re|'m|'ve|'ll|'d)? |(?:our|my) (?:\p{L}+ ){1,2}?)(?:only |will |would |are |am |is |get to |be |have been asked to )*(?:play|perform|sing|danc|compet|rac|row|speak|present|fight|swim|headlin|appear|exhibit|talk|read|lectur|box|skat|rid|demonstrat)(?:e|es|s|ing|us)?(?: (?:there|too|again|in it))? (?:on )?(?:the )?$/iu;
const ON_DAY =
  /\b(?:(?:our|my) (?:\p{L}+ ){1,2}?is|we(?:'re| are| play| perform| sing| speak| dance)|i(?:'m| am| speak)) (?:up )?on (?:the )?(?:day (one|two|three|four|five|[1-5])|(first|opening|second|third|middle|last|final|closing) (?:day|night|evening))\b/iu;
const WHOLE = /\b(?:all|each|every|both|whole|entire|throughout|also|as well|too|especially|including)\b/i;
const AN_HOUR =
  /^,? (?:at |from |till |until )?(?:\d{1,2}(?:[:.]\d\d)? ?(?:[ap]\.?m\b|h\b|o'clock)|\d{1,2}[:.]\d\d|noon|midday|midnight|lunch|midday)/i;

/** The run, or the days of it that are left beside the whole as a question. */
export function heldAgainstLeftOut({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  const { dates } = event;
  if (dates.length < 2 || event.dropped || event.counted) return event;
  const asked = (days: readonly string[]): EventDays | undefined =>
    days.length > 0 && days.length < dates.length ? askedDays(event.where, [[...days], dates], 'open') : undefined;
  const place = BY_PLACE.exec(text)?.[1];
  const alone = ALL_WE_NEED.exec(text)?.[1];
  const [, number, nth] = (consecutive(dates) && ON_DAY.exec(text)) || [];
  const told =
    (place === undefined ? undefined : asked(without(dates, daysInPlace(place, dates)))) ??
    (alone === undefined ? undefined : asked(daysInPlace(alone, dates))) ??
    asked(number === undefined ? daysInPlace(nth ?? '', dates) : dates.slice(numberOf(number) - 1, numberOf(number)));
  if (told) return told;
  for (const mention of mentions.slice(0, MOST_MENTIONS)) {
    if (mention.by || mention.sequence.items.length > 1) continue;
    const days = namedAmong(mention, dates);
    const [day] = days;
    const left = days.length === 1 && day !== undefined ? daysLeft(text, mention, event, day) : undefined;
    const open = left && asked(left);
    if (open) return open;
  }
  return event;
}

const without = (dates: readonly string[], out: readonly string[]): string[] => dates.filter((day) => !out.includes(day));

/** The days of the job that are left by what is said beside one of them. */
function daysLeft(text: string, { start, end, said }: DateMention, { dates, where }: EventDays, day: string): string[] | undefined {
  const sentence = sentenceAround(text, start, end);
  const from = Math.max(sentence.start, start - LEAD, ...where.filter((one) => one.end <= start).map((one) => one.end));
  const [lead, rest] = [text.slice(from, start), text.slice(end, Math.min(sentence.end, end + BEHIND))];
  if (TAKES_OUT.test(lead) || OFF.test(rest) || (HAVE_OFF.test(lead) && /^ off\b(?! (?:to|at|limits))/i.test(rest)))
    return without(dates, [day]);
  if (OF_ELSE.has(said) || where.some((one) => one.start <= start && one.end >= end) || WHOLE.test(lead) || WHOLE.test(rest))
    return undefined;
  const needed = NEEDED_TILL.exec(lead);
  if (needed && !AN_HOUR.test(rest)) return dates.filter((other) => (needed[1] === undefined ? other <= day : other >= day));
  return WE_ARE_ON.test(lead) ? [day] : undefined;
}
