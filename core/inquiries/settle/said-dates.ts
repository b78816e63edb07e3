/**
 * What each date of a message is said of.
 */
import type { Resolved } from '../dates/from-today.ts';
import type { Sequence } from '../dates/sequences.ts';
import { CUE_REACH, type Cue } from '../said/cues.ts';
import { lineStart, sentenceAround } from '../parts/sentences.ts';
import { answersAsked } from './answer-asked.ts';
import { dueBy } from './answer-by.ts';
import { inMonthOf } from './days-among.ts';
import { JUST_ASKED } from './within.ts';
import { fromAnother } from './from-another.ts';
import { dayOfJourney } from './journeys.ts';
import { nearest, tailOf } from './nearest.ts';
import { engagedThen } from './engaged-then.ts';
import { firstOfForm, lastOfForm, startsOrEnds } from './form-days.ts';
import { noLonger } from './no-longer.ts';
import { nothingOn } from './off-days.ts';
import { overnight } from './overnight.ts';
import { LONGEST_CORRECTION, takenBack } from './taken-back.ts';
import { theirsToDecide } from './theirs-to-decide.ts';
import { toldBeside } from './told-beside.ts';
import type { DateMention, Where } from './scene.ts';

const BY =
  /\b(?:by(?! (?:any|some) (?:chance|miracle|luck|means|accident)\b)|(?<!\b(?:\p{L}{0,6}day|night|evening|afternoon|morning|eve) )before|b4|until|till|no later than|not later than|due|deadline|within|latest|bis(?: zum)?|spätestens|avant(?: le)?|d'ici(?: le| au)?|au plus tard(?: le)?|antes del?|entro(?: il)?|uiterlijk)\b:?(?:[^,;:)]|:\d){0,28}$/iu;
/** "opened by the Lord Mayor on": who does it, not till when. */
const BY_SOMEBODY =
  /\bbefore an? (?:\p{L}+ ){1,3}on (?:the )?$|\bby (?:the|our|a|an|their|his|her|my) (?!end|close|start|beginning|middle|morning|evening|weekend|time|latest|\d)\p{L}[^,;:\d]{2,24} on (?:the )?$/iu;
/** "arrives by boat on the 11th": how, not till when; "by noon on the 11th" is till when. */
const BY_MEANS =
  /\bby (?!(?:noon|midday|midnight|mid|lunch\w*|close|end|eod|eob|cob|evening|morning|afternoon|night|half|quarter|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|tea\w*|dinner|breakfast|the|latest|no|now|tomorrow|today|tonight|early|late|about|around|then|\p{L}+day|sat|sun|mon|tues?|weds?|thurs?|fri)\b)\p{L}[^,;:\d]{1,26} on (?:the )?$/iu;
const SETTING_UP =
  /\b(?:set-?up|setting up|load(?:ing)?[- ]?in|rig(?:ging)?|build|install\w*|prep\w*|rehears\w*|get-?in|bump-?in|aufbau|montage|montaje|allestimento|opbouw)\b/i;
const REHEARSALS = /\brehears\w*/gi;
/** "Graag voor 1 november een reactie" */
const BEFORE_DATE = /(?<!\p{L})(?:voor|vóór|tegen|avant(?: le)?|antes del?|bis(?: zum)?|prima del?|entro(?: il)?|until|till)\s$/iu;
const ANSWER_AFTER =
  /^[^.;!?\n]{0,24}(?<!\p{L})(?:een reactie|reactie|antwoord(?:en)?|reageren|antworten|répondre|responder|contestar|rispondere|weten|hören|bescheid|rückmeldung|antwort|une réponse|votre réponse|una respuesta|una risposta|een antwoord|laten weten|te horen|an answer|a reply)(?!\p{L})/iu;

/** "the 12th at the very latest" */
const AT_LATEST =
  /^(?:,? at (?:the )?(?:very |absolute )?(?:latest|outside)|(?: at| by)?(?: noon| midday| \d{1,2}(?:[:.]\d\d)?\s?(?:[ap]m)?),? (?:at )?latest)\b/i;
/** "moved from 4 to 11 September": the second date holds. */
const MOVED =
  /\b(?:(?:had|have|has|need|needed|having) to (?:move|postpone|change|shift|reschedule|push|bring|put)|moved|moving|changing|postponing|rescheduling|shifting|gone|slipped|slid|rearranged|deferred|bumped|transferred|delayed|postponed|rescheduled|changed|shifted|pushed(?: back)?|switched|put back|brought forward)(?:,? (?!(?:to|into)\b)\w+){0,5},? from\s*(?:the )?$/i;

/** "We could move it from 4 to 11 September": either of them. */
const MAY_MOVE =
  /\b(?:could|can|might|may|would|happy to|willing to|possible to|able to)(?: also| still)? (?:move|postpone|change|shift|reschedule|switch|push|bring|put)(?:,? (?!(?:to|into)\b)\w+){0,5},? from\s*(?:the )?$/i;

/** "ignore the sheet, it is from the spring edition (14 April)", "the mail of this morning said 22 July": a date that does not hold. */
const VOID =
  /\b(?:ignore|disregard|(?<!\b(?:don't|not|never|won't|can't|didn't|not to) )forget(?: about| the|(?= $))|never ?mind|(?:scrap|scratch)(?! (?:that|it|this)\s?[,.;:!-])|skip|old sheet|spring edition|last edition|previous edition|(?:e-?mail|mail|message|poster|flyer|website|invitation|invite|list|version|calendar|it|that|this|the (?:first|other|second) one|the one at [\d.:]+)[^.;?!]{0,24}\b(?:said|says|stated|had|shows|showed)|i (?:told|gave) you|was told)\b[^.;?!]{0,90}$/i;

/** "WRONG: Sat 11 March", "Used to be: two days, Sept 11-12", "November 25 > no" */
const VOID_ROW =
  /^\s*(?:[-+]\s?)?(?:wrong|old|was|not|before|previously|formerly|used to be|cancelled|first version|out)\b[^:=>\n]{0,12}[:=>-]\s[^\n]{0,40}$/i;
/** "Out: June 13, 4:00 PM": the end of the work, not a day that is struck out. */
const OUT_ROW = /^\s*out\b/i;
const HOUR_BEHIND = /^(?:,| at|,? by)?\s?(?:\d{1,2}(?:[:.h]\d\d|\s?[ap]\.?m|\s?(?:h|uhr)\b)|\d{4}\b|noon|midnight)/i;
/** "it becomes Thursday 16 December": what takes the place of a day that was told before. */
const BECOMES = /\b(?:becomes|is now|it's now|now falls|moves? to|new (?:date|day)(?: is)?:?)\s(?:on\s)?(?:the\s)?$/i;
/** "We had a student film the last one (14 October)" */
const THE_LAST_ONE =
  /\b(?:had|did|filmed|shot|recorded|covered|held|ran|was|were)\b[^.;!?\n]{0,40}\b(?:the|our|your) (?:last|previous) (?:one|edition|time)\s?[(,]\s?(?:on\s)?(?:the\s)?$/i;
/** "your quote of the 11th", "my e-mail dated 3 June": when something was written. */
const WRITTEN_ON =
  /\b(?:your|my|our|his|her|their|the|last) (?:\p{L}+ )?(?:quote|quotation|e-?mail|mail|message|letter|note|enquiry|inquiry|reply|estimate|voicemail) (?:of|dated|sent on) (?:the )?$/iu;
/** "the Saturday before Father's Day so June 17": the date says again which Saturday it is. */
const SAID_AGAIN_BEHIND =
  /^\sbefore\s[^.;!?\n]{2,30}(?:\b(?:so|that's|that is|which is|meaning)\s|[,(–-]\s?)(?:it's\s|that's\s|so\s)?(?:on\s)?(?:the\s)?$/i;
/** Taking down may last some days; a run of days that is told with any other end is that of the occasion. */
const TAKING_DOWN =
  /\b(?:strike|de-?rig\w*|load(?:ing)?[- ]?out|tear(?:ing)?[- ]?down|get-?out|bump-?out|abbau|dismantl\w*|pack(?:ing)?[- ](?:up|down))\b/i;
/** "on 12 June last year" */
const LAST_YEAR = /^,? (?:of )?last (?:year|spring|summer|autumn|fall|winter|season|month)\b(?!')/i;
const VOID_LABEL = /\b(?:wrong|old|used to be|previously)\s?[:=]\s[^.;\n]{0,40}$/i;
const VOID_AFTER =
  /^\s?(?:[>:=-]{1,2})\s?(?:no|not|cancelled|off|taken|gone|filled)\b|^,? (?:you(?:'re| are| will be|'ll be)) (?:released|stood down|off|not needed)\b/i;

/** "|Fri 6 Aug, 2 PM|Ely|rig|": a row whose own cell says that the day is for setting up or taking down. */
const ROW_KIND =
  /(?:[|\t]|,\s|\s-\s|:\s)\s*(?:(rig(?:ging)?|set-?up|load-?in|build|bump-?in|get-?in|install)|de-?rig|strike|load-?out|get-?out|bump-?out|travel|prep|rest|off)(?: day)?\s*(?:[|]\s*)?$/i;
const LONGEST_ROW = 120;

function rowKind(text: string, { start, end }: Where): Cue | undefined {
  const from = lineStart(text, start);
  const to = text.indexOf('\n', end);
  const row = text.slice(end, to < 0 ? text.length : to);
  if (start - from > LONGEST_ROW || row.length > LONGEST_ROW) return undefined;
  const kind = ROW_KIND.exec(row);
  return kind ? (kind[1] ? 'call' : 'other') : undefined;
}

/** Say of every date what it is a date of. */
export function sayDates(
  text: string,
  found: readonly { sequence: Sequence; resolved: Resolved; start: number; end: number }[],
): DateMention[] {
  let consumed = 0;
  const dated = found.filter(({ resolved }) => resolved.explicit && (resolved.readings[0]?.length ?? 0) > 0);
  const said = found.map((item, index): DateMention => {
    const sentence = sentenceAround(text, item.start, item.end);
    const previous = found[index - 1];
    const from = Math.max(sentence.start, item.start - CUE_REACH, consumed, previous?.end ?? 0);
    const before = text.slice(from, item.start);
    const next = found[index + 1];
    const tail = tailOf(text, item.end, Math.min(sentence.end, next?.start ?? text.length, item.end + 60));
    // A cue in brackets that leads on to another date is that one's: "11 December (backup 12 December)".
    const hit = nearest(text, { start: from, end: item.start }, { ...tail, shared: tail.end === next?.start }, true, next?.start);
    if (hit.after) consumed = item.end + hit.end;
    const lead = text.slice(Math.max(sentence.start, item.start - CUE_REACH, previous?.end ?? 0), item.start);
    const row = text.slice(lineStart(text, item.start), item.start);
    const after = text.slice(item.end, item.end + 16);
    const told = VOID.test(lead) && !/\b(?:now|but|instead|to|becomes?|will be|new)\b/i.test(VOID.exec(lead)?.[0] ?? '');
    if (
      told ||
      (VOID_ROW.test(row) && !(OUT_ROW.test(row) && HOUR_BEHIND.test(after))) ||
      VOID_LABEL.test(lead) ||
      VOID_AFTER.test(after) ||
      LAST_YEAR.test(after) ||
      THE_LAST_ONE.test(lead) ||
      // "Last December 4 you filmed our tree lighting"
      (item.resolved.explicit && /(?<!\b(?:the|our|and) )\blast $/i.test(lead)) ||
      WRITTEN_ON.test(lead) ||
      engagedThen(text, item)
    )
      return {
        ...item.resolved,
        past: true,
        start: item.start,
        end: item.end,
        sequence: item.sequence,
        said: 'past',
        weak: false,
        by: false,
        before,
      };
    const toMove = item.sequence.items.length === 2 ? text.slice(Math.max(0, item.start - 50), item.start) : '';
    const [mayMove, moved] = [MAY_MOVE.test(toMove), MOVED.test(toMove)];
    if (mayMove || moved)
      return {
        ...item.resolved,
        readings: item.resolved.readings.flatMap((dates) => (mayMove ? [dates.slice(0, 1), dates.slice(-1)] : [dates.slice(-1)])),
        ...(mayMove ? { doubt: 'choice' } : {}),
        past: false,
        start: item.start,
        end: item.end,
        sequence: item.sequence,
        said: 'event',
        weak: false,
        by: false,
        before,
      };
    const hint = item.resolved.weekdayOnly && A_WEEKDAY.test(lead);
    // "every Tuesday" is no one day.
    if (item.resolved.weekdayOnly && /\b(?:every|each|alternate)\s(?:other\s|second\s|single\s)?$/i.test(before))
      return {
        ...item.resolved,
        readings: [],
        vague: true,
        start: item.start,
        end: item.end,
        sequence: item.sequence,
        said: hit.cue,
        weak: false,
        by: false,
        before,
      };
    const latest = AT_LATEST.test(text.slice(item.end, item.end + 28));
    // A run of whole days is no call, but where it is for setting up; rehearsals beside which no date is told are the job.
    const sets = SETTING_UP.test(dated.length > 1 ? lead : lead.replace(REHEARSALS, ''));
    const runs = item.resolved.explicit && (item.resolved.readings[0]?.length ?? 0) > 1;
    const hitCue = hit.cue === 'past' && BECOMES.test(lead) ? 'event' : hit.cue;
    const ofRun = (hitCue === 'call' && !sets) || (hitCue === 'wrap' && !TAKING_DOWN.test(lead));
    const cue = (runs && ofRun) || startsOrEnds(row) ? 'event' : hitCue;
    const answer = BEFORE_DATE.test(lead) && ANSWER_AFTER.test(text.slice(item.end, item.end + 60));
    const night = overnight(text, item);
    const again = previous?.resolved.weekdayOnly === true && SAID_AGAIN_BEHIND.test(before);
    // "Von: 8.11." and below it "Bis: 12.11."
    const ends = previous !== undefined && lastOfForm(row) && firstOfForm(text.slice(lineStart(text, previous.start), previous.start));
    const by =
      latest || answer || (!again && !ends && BY.test(before) && !BY_SOMEBODY.test(before) && !BY_MEANS.test(before) && hit.cue !== 'call');
    return {
      ...item.resolved,
      ...(night ? { readings: night } : {}),
      start: item.start,
      end: item.end,
      sequence: item.sequence,
      said:
        answer || (latest && (hit.cue === undefined || hit.cue === 'event'))
          ? 'reply'
          : inDays(item, lead)
            ? 'reply'
            : hint
              ? undefined
              : hitCue === undefined && !by && ITS_ON.test(before)
                ? 'event'
                : by
                  ? closing(text, item, hitCue)
                  : (rowKind(text, item) ?? (isElse(text, item, cue) ? 'other' : cue)),
      weak: hit.weak === true,
      by,
      before,
    };
  });
  return toldBeside(
    text,
    answersAsked(text, fromAnother(text, monthOfMoved(noLonger(text, takenBack(text, hinted(text, beside(text, said))))))),
  );
}

/** A day of a journey, one on which others decide, or a weekday on which nothing is. */
const isElse = (text: string, item: Where & { resolved: Resolved }, cue: Cue | undefined): boolean =>
  (item.resolved.weekdayOnly && nothingOn(text, item.start)) ||
  ((cue === undefined || cue === 'show') && theirsToDecide(text, item)) ||
  ((cue === undefined || cue === 'show' || cue === 'event') && item.resolved.readings[0]?.length === 1 && dayOfJourney(text, item));

/** "let me know in two days" */
const inDays = ({ sequence: { items } }: { sequence: Sequence }, lead: string): boolean =>
  items.length === 1 && items[0]?.atom.relative?.kind === 'days' && JUST_ASKED.test(lead);

/** What a closing date is one of, where its clause tells more than the nearest word. */
function closing(text: string, item: Where, cue: Cue | undefined): Cue | undefined {
  if (cue !== undefined && cue !== 'event' && cue !== 'show' && cue !== 'reply') return cue;
  const due = dueBy(text, item);
  return due === 'answer' ? 'reply' : due === 'theirs' && (cue === 'reply' || cue === undefined) ? 'other' : cue;
}

/** "We talked about the 17th of April, but can you do the 24th instead": a number that stands for a day that holds no more is of its month; of that or the next where it goes back. */
function monthOfMoved(said: readonly DateMention[]): DateMention[] {
  return said.map((mention, index) => {
    if (mention.by || mention.said === 'reply') return mention;
    const gone = said[index - 1];
    const [from, told] = [gone?.readings[0]?.[0], mention.readings[0]?.[0]];
    const [item, ...more] = mention.sequence.items;
    const atom = item?.atom;
    if (
      (gone?.said !== 'past' && gone?.said !== 'other') ||
      !gone.explicit ||
      gone.readings.length !== 1 ||
      from === undefined ||
      told === undefined ||
      told >= from
    )
      return mention;
    if (mention.explicit || more.length > 0 || atom?.day === undefined || mention.start - gone.end > LONGEST_CORRECTION) return mention;
    const next = Temporal.PlainDate.from(from).add({ months: 1 }).toString();
    const days = [from, next]
      .flatMap((month) => inMonthOf(month, atom.day ?? 0) ?? [])
      .filter((day) => atom.weekday === undefined || Temporal.PlainDate.from(day).dayOfWeek === atom.weekday);
    const [first] = days;
    if (first === undefined) return mention;
    return first > from ? { ...mention, readings: [[first]] } : { ...mention, readings: days.map((day) => [day]), doubt: 'month' };
  });
}

/** "by next Tuesday, 25 May": a date beside another says the same day again, of the same thing. */
function beside(text: string, said: readonly DateMention[]): DateMention[] {
  const joined: DateMention[] = [];
  for (const mention of said) {
    const before = joined.at(-1);
    const same =
      before?.said !== undefined &&
      before.said !== 'event' &&
      before.said !== 'show' &&
      (mention.said === undefined || mention.said === 'event') &&
      before.sequence.items.length === 1 &&
      (/^(?:\s(?:morning|afternoon|evening|night))?\s?[,(]\s?(?:the\s|i\.?e\.?\s|that's\s|so\s)?$/i.test(
        text.slice(before.end, mention.start),
      ) ||
        (before.said === 'reply' && mention.start - before.end <= SAID_AGAIN && mention.readings.join() === before.readings.join()));
    joined.push(same ? { ...mention, said: before.said, past: mention.past || before.past, by: before.by } : mention);
  }
  return joined;
}

/** "It is this coming Friday", "That would be on": what was spoken of is on that day. */
const ITS_ON =
  /(?:^|[.;!?\n]\s{0,2})(?:so |and |but |well,? )?(?:it|that|the date|the day)(?:'s| is| will be| would be|'ll be|'d be|falls| takes place)(?: (?:all|already|just|probably))?(?: on| for)?(?: the)?\s$/i;
const SAID_AGAIN = 60;
/** "which is a Thursday": what weekday the day is that was named. */
const A_WEEKDAY = /(?:\b(?:which|that|it|this|being|the day)(?:'s| is| will be|)|\(|, (?:also )?) ?an? $/i;

/** "The family comes over for Halloween, so maybe Saturday 28 and Sunday 29 October?": the name of a day only leads to the dates behind it. */
function hinted(text: string, said: readonly DateMention[]): DateMention[] {
  return said.map((mention, index) => {
    const next = said[index + 1];
    const named = mention.said === undefined && mention.explicit && !/\d/.test(text.slice(mention.start, mention.end));
    if (!named || mention.sequence.items.some(({ atom }) => atom.month === undefined) || !next?.explicit || next.by) return mention;
    const leads = FOR_A_DAY.test(text.slice(Math.max(0, mention.start - 40), mention.start));
    const told = next.sequence.items.some(({ atom }) => atom.month !== undefined) && /\d/.test(text.slice(next.start, next.end));
    const other = !next.readings.some((days) => days.includes(mention.readings[0]?.[0] ?? ''));
    return leads && told && other && next.said !== 'reply' && next.start < sentenceAround(text, mention.start, mention.end).end
      ? { ...mention, said: 'other' }
      : mention;
  });
}
const FOR_A_DAY = /\b(?:for|around|near|round|over|at)\s$/i;
