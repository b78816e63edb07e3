/**
 * Days that are told as those that it was going to be, where another day stands behind them that takes their place: "the hall couldn't do 6 March so
 * we're going with the 13th", "the 5th is off, would the 12th work?", "it was the sixth of March but we've had to put it back a week, so the thirteenth".
 */
import { LONGEST_CORRECTION } from './taken-back.ts';
import { OF_ELSE } from './days-among.ts';
import type { DateMention } from './scene.ts';

const LEAD = 60;
/** Who cannot on that day. */
export const CANNOT =
  /\b(?:can't|cant|cannot|can not|can no longer|couldn't|couldnt|could not|unable to|not able to|won't be able to|(?:isn't|wasn't|not|no longer) (?:free|available|possible|going to be|on|happening))(?: (?:do|make|manage|host|have us|take us|offer(?: us)?|give us|get|be))?(?: on| for)?(?: the)? $/i;
const SHAME = /\b(?:no worries|no problem|never mind|shame|pity|too bad|sorry) about (?:the )?$/i;
const IS_OFF =
  /^,? (?:is|was|'s|has been|had been|turned out to be|proved) (?:now |sadly |unfortunately )?(?:off(?! limits)|taken|gone|no good|cancelled|out|a no-go|not possible|impossible|moved|put back|pushed back|postponed|unavailable|double-booked)\b/i;
/** What was going to be then is put on another day. */
const PUT_ELSEWHERE =
  /^[.,;!]? (?:but |and |um |so |sorry,? |however,? ){0,4}(?:(?:it|we|they|that|the [\p{L}-]+)(?: ?'ve| ?'s|ve| have| has| had)?|has|had|have)(?: now| sadly| just| unfortunately)? (?:had to (?:be )?|been |to )?(?:put|move|push|postpone|bump|shift|shove)(?:e?d|shed)?(?: (?:it|this|that|things))?\b/iu;
/** "so it'll be a week later, the 13th" */
const IS_LATER =
  /\b(?:it'll|it will|it has to|it's|that's|we'll|we'd|now) [^.;!?\n\d]{0,24}\b(?:a|an|one|two|three|a whole) (?:days?|weeks?|fortnight|months?) (?:later|earlier|after|before|on)\b/i;
/** The day behind takes the place of it. */
const TAKES_PLACE =
  /\b(?:instead|rather|now|so|going with|go with|gone (?:with|for)|went (?:with|for)|settled|moved|works?|suits?|how about|what about|(?:could|can|would) (?:you|we) (?:do|make|manage)|it's|its|that's|thats|it'll be|it will be|has to be|have to be)\b/i;
/** Who hands a day on that is not free then says no other for it. */
const PLAINLY = /\b(?:instead|how about|what about)\b/i;
const MYSELF = /\bi(?:'m| am)?(?: \p{L}+)? (?:can't|cant|cannot|can not|couldn't|could not|unable|not)\b/iu;
const JOINS = /^,? ?(?:or|nor|and|&)? ?(?:the )?$/i;
const BESIDES = /\b(?:also|as well|too|besides|in addition|plus)\b/i;
const BEHIND = 40;

const ofWork = ({ said, past, by }: DateMention): boolean => !past && !by && !OF_ELSE.has(said);
const numberIn = ({ sequence: { items } }: DateMention): number | undefined => (items.length === 1 ? items[0]?.atom.day : undefined);

/** The dates, where those in whose place another is told no longer hold. */
export function noLonger(text: string, said: readonly DateMention[]): DateMention[] {
  const gone = new Map<number, DateMention>();
  said.forEach((mention, at) => {
    if (!(ofWork(mention) || mention.said === 'past') || numberIn(mention) === undefined || !isGone(text, said, at)) return;
    // "Subject: 12 June? - No worries about the 12th": the same day, told by its number alone.
    const named = mention.explicit
      ? mention
      : said.slice(0, at).findLast((one) => one.explicit && ofWork(one) && numberIn(one) === numberIn(mention));
    const { readings, explicit } = named ?? mention;
    gone.set(at, { ...mention, readings, explicit, past: true, said: 'past' });
    said.forEach((other, index) => {
      if (index < at && ofWork(other) && other.explicit && other.readings.join() === readings.join())
        gone.set(index, { ...other, past: true, said: 'past' });
    });
  });
  return said.map((mention, at) => gone.get(at) ?? mention);
}

function isGone(text: string, said: readonly DateMention[], at: number): boolean {
  const mention = said[at] as DateMention;
  const lead = text.slice(Math.max(said[at - 1]?.end ?? 0, mention.start - LEAD), mention.start);
  const next = said.findIndex(
    (other, index) => index > at && ofWork(other) && !JOINS.test(text.slice(said[index - 1]?.end ?? 0, other.start)),
  );
  const other = said[next];
  if (!other || other.start - mention.end > LONGEST_CORRECTION || numberIn(other) === undefined || numberIn(other) === numberIn(mention))
    return false;
  const between = text.slice(mention.end, other.start);
  const told = `${between}${text.slice(other.end, other.end + BEHIND).split(/[.;!?\n]/)[0] ?? ''}`;
  if (BESIDES.test(told)) return false;
  if (MYSELF.test(lead) && !PLAINLY.test(told)) return false;
  const off = CANNOT.test(lead) || SHAME.test(lead) || IS_OFF.test(between) || PUT_ELSEWHERE.test(between) || IS_LATER.test(between);
  return off && TAKES_PLACE.test(told);
}
