/**
 * Dates whose sentence is about something that is no part of the job: "half term is from 24 May", "my birthday is on 29 June", "we moved here on 1 February".
 */
import { OCCASION } from '../occasions.ts';
import { sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { namedAmong } from './days-among.ts';
import type { DateMention, Where } from './scene.ts';

/** "half term is", "the posters go", "our other videographer has been": who or what, and what it does, at the end of what stands before a date. */
const STATED =
  /^[\s"'(-]*(?:(?:and|but|so|also|by the way|btw|note that|fyi|ps|p\.s\.)[\s,:]+)*((?:[\p{L}'&-]+\s){1,6}?)(?:is|are|was|were|will be|has been|have been|'s|goes|go|comes|come|falls|fall|starts|start|opens|open|ends|end|closes|close|runs|run|begins|begin|leaves|leave|expires|went|came|turns|turn|returns|return|takes|take|moves|move)\s(?:[\p{L}'-]+\s){0,5}$/iu;
/** "we moved into this office on": what somebody did. */
const DID = anyOf(`
  we/i/they/he/she broke/hurt/moved/opened/founded/started/began/bought/sold/joined/left/retired/graduated/married/met/spoke/talked/saw/wrote/sent/signed/got/received/visited/lost/won/built/published/posted/released/uploaded/launched/celebrated/turned/finished/completed ...
  we/committee/board/council/trustees/governors/pcc/chapter/directors meet/meets/sit/sits/vote/votes/decide/decides/deciding again?
`);
const DID_ON = new RegExp(`${DID.source}\\s?(?:on|in|at|since)\\s(?:the\\s)?$`, 'i');
/** Words that make it the job after all. */
const OF_JOB = anyOf(`
  ours | mine | yours | performance | performances | shows | concerts | matches | heats | finals | screenings | hearings | they | it | this | that | these | those | which | what | when | where | we | we're | u | ur | r | are | is | you | you're | i | i'm | there | here | date | dates | day | days | night | evening | weekend | week | shoot | shoots | filming | job | work | call | crew | gig | booking | session | sessions | first | second | last | main | big | next | only | other | new | proposed | provisional | likely | planned
  venue | location | place | hall | film | video | livestream | stream | recording | camera | cameras | rehearsal | run-through | set-up | load-in | one | ones | both | everything | all | visit | tour | trip | walk | day one | project | campaign | season
`);

/** "third, are you free": whatever stands before it, I am asked about the date. */
const ASKS_ME = /\b(?:are|r|can|could|would|will|do|is|have|got) (?:you|u|ya|your)\b/i;

const IS_ON =
  /^[\s"'(-]*(?:(?:and|but|so|also)[\s,:]+)*(?:the|our|it's our)\s(?:\p{L}+\s){1,3}(?:is|are|will be|takes place)\s(?:on\s)?(?:the\s)?$/iu;
const NO_OCCASION =
  /\b(?:deadline|term|holiday|holidays|birthday|closing|cut-?off|due|payment|invoice|meeting|decision|committee|board|office|leave|hike|anniversary|exams?|posters?|tickets?|photographer|videographer|builders?|school)\b/i;

/** True for a date that is told of something that is neither the occasion nor the work. */
export function ofSomethingElse(text: string, { start, end }: Where): boolean {
  const sentence = sentenceAround(text, start, end);
  const lead = text.slice(sentence.start, start);
  if (lead.length > 90) return false;
  if (DID_ON.test(lead)) return true;
  if (ASKS_ME.test(lead)) return false;
  // "The induction is Friday": what is on a day may be the job; a deadline is not.
  if (IS_ON.test(lead) && !NO_OCCASION.test(lead)) return false;
  const subject = STATED.exec(lead)?.[1];
  if (subject === undefined) return false;
  if (/^(?:my|his|her)\b.*\b(?:birthday|anniversary|holidays?|leave)\s$/i.test(subject)) return true;
  const capitals = subject
    .trim()
    .split(/\s+/)
    .slice(1)
    .some((word) => /^\p{Lu}/u.test(word));
  return !capitals && !OF_JOB.test(subject) && !OCCASION.test(subject);
}

/** "The brokers are in Durban from Wednesday 23 to Friday 25 June ... the session on Friday closes at one": a run whose weekdays or numbers are told for the work is its own. */
export const withoutOwners = (loose: readonly DateMention[], all: readonly DateMention[]): DateMention[] =>
  loose.filter(
    (run) =>
      (run.readings[0]?.length ?? 0) < 2 ||
      !all.some((day) => !day.explicit && !loose.includes(day) && namedAmong(day, run.readings[0] ?? []).length > 0),
  );

/** "I'm turning 50 on 30 October and would like it before that", "Party's June 26, so a week ahead of that": the day before which it is wanted. */
export function boundsIt(text: string, { start, end }: Where): boolean {
  const after = text.slice(end, end + BOUND_REACH);
  return (TURNS.test(text.slice(Math.max(0, start - BOUND_REACH), start)) ? BEFORE_IT : WEEKS_BEFORE).test(after);
}
const BOUND_REACH = 80;
const TURNS = /\b(?:turns?|turning) (?:\d{1,3}|the big \S+) (?:on )?(?:the )?$/i;
const BEFORE_IT = /^[^.;!?\n]{0,60}\b(?:before|ahead of) (?:that|then|it)\b/i;
const WEEKS_BEFORE =
  /^[^.;!?\n]{0,40}\b(?:a|one|two|some|few|couple of) (?:weeks?|fortnight|months?) (?:before|ahead of) (?:that|then|it)\b/i;
