/**
 * Days that the sender takes back: right behind them, "Sat July 22, oops no, Sunday July 23", or further down, "Correction: Sat 12 and Sun 13",
 * "Sorry, that should be the 16th", "Not this Friday!".
 */
import { OF_ELSE } from './days-among.ts';
import type { DateMention } from './scene.ts';

/** What begins a sentence or a line that puts one thing right: only the days themselves may follow. */
const RIGHT =
  /(?:^|[\n.;!?)(*])[\s*_("-]*(?:correction|corrected|corrigendum|erratum|edit|update|amendment|typo|scratch that|strike that|ignore that|scrap that|oops|whoops|sorry|apologies|my mistake|my bad|korrektur|correctif|corrección|correzione|correctie)\b[\s!:;.,*_–-]*(?:(?:my mistake|sorry|apologies|wrong (?:day|days|date|dates|weekend)|typo)[\s!:;.,–-]+)*(?:(?:it|that|this|they|we|the (?:dates?|days?|weekend))(?:'s| is| are|'re| should| must| has| have| mean| meant)?\s(?:(?:be|read|say|been|to be|mean|meant|now|actually|in fact|moved to|on)\s){0,3})?(?:i (?:mean|meant|should (?:say|have said))\s)?(?:now\s)?(?:for\s|on\s|from\s)?(?:the\s)?$/i;
const LEAD = 120;
/** What is told beside the old days still holds. */
const BESIDES = /\b(?:also|as well|too|in addition|added|adding|another|plus)\b/i;

const ofWork = ({ said, past }: DateMention): boolean => !past && !OF_ELSE.has(said);
const isDay = ({ explicit, sequence: { items } }: DateMention): boolean => explicit || items.some(({ atom }) => atom.day !== undefined);
const lengthOf = ({ readings }: DateMention): number => readings[0]?.length ?? 0;

/** The dates, where those that are put right no longer hold. */
export const takenBack = (text: string, said: readonly DateMention[]): DateMention[] => rightBehind(text, furtherDown(text, said));

function furtherDown(text: string, said: readonly DateMention[]): DateMention[] {
  const gone = new Set<number>();
  const cues = new Map<number, DateMention['said']>();
  for (const [at, mention] of said.entries()) {
    if (notThis(text, mention))
      said.forEach((other, index) => {
        if (index <= at && other.weekdayOnly && ofWork(other) && other.readings.join() === mention.readings.join()) gone.add(index);
      });
    const previous = said[at - 1];
    const lead = text.slice(Math.max(previous?.end ?? 0, mention.start - LEAD), mention.start);
    // "Edit: 16th" is no day of an edit.
    const counts = ofWork(mention) || (mention.said === 'delivery' && /\bedit:\s$/i.test(lead));
    if (!counts || mention.by || !isDay(mention) || !RIGHT.test(lead)) continue;
    const sentence = text.slice(mention.end, mention.end + LEAD).split(/[.!?\n]/)[0] ?? '';
    if (BESIDES.test(sentence)) continue;
    const old = said.findLastIndex(
      (other, index) =>
        index < at && ofWork(other) && !other.by && isDay(other) && !gone.has(index) && lengthOf(other) <= lengthOf(mention),
    );
    if (old < 0) continue;
    const days = said[old]?.readings.join();
    cues.set(at, said[old]?.said);
    said.forEach((other, index) => {
      if (index < at && (index === old || (ofWork(other) && other.readings.join() === days))) gone.add(index);
    });
  }
  return said.map((mention, at) => {
    if (gone.has(at)) return { ...mention, past: true, said: 'past' };
    // What takes its place is said of the same.
    return cues.has(at) && mention.said !== 'event' ? { ...mention, said: cues.get(at) } : mention;
  });
}

/** Words that put a date in the place of the one before it: "Sat July 22, oops no, Sunday July 23"; "sorry for the short notice" is none. */
const SUPERSEDES =
  /\b(?:oops|whoops|jk|actually,? (?:it'?s|it is|that'?s|we(?:'re| are)|make it|on|the)\b|kidding|no wait|wait no|i meant?|make that|correction|scratch that|should (?:be|read|say)|or rather|(?:sorry|apologies)(?!,? (?:for|about|to|if|i forgot)\b)|strike that|typo|my mistake|my bad)\b[^.;?!\n]{0,24}$/i;
/** The same where a sentence of its own takes back, with what was wrong between: "wait no thats grand final day. oct 2", "I must correct myself, I had the wrong calendar: it's the 15th". */
const TAKES_BACK =
  /\b(?:wait,? no|no,? wait|hang on|hold on|correct (?:myself|this|that)|wrong (?:calendar|dates?|day|week|month|year|one)|mixed (?:\w+ )?up|got (?:it|that|the dates?) wrong|scrap (?:that|it)|scratch that|strike that|i misspoke|typed the wrong|ich korrigiere|muss mich korrigieren|falsche[sn]? (?:datum|tag)|me corrijo|je corrige|je me suis trompée?|mi correggo|verkeerde (?:datum|dag))\b/i;
const MORE = /\b(?:also|as well|too|plus|before|until|till)\b/i;
const ALSO = /\b(?:also|as well|too|and|or|plus|by|before|until|till)\b/i;
/** A date is put right within so many characters. */
export const LONGEST_CORRECTION = 160;

function rightBehind(text: string, said: readonly DateMention[]): DateMention[] {
  const ofWork = ({ said: cue, past }: DateMention): boolean => !past && (cue === undefined || cue === 'event' || cue === 'show');
  const goneAt = said.map((mention, index) => {
    const next = said[index + 1];
    if (!next || !ofWork(mention) || !ofWork(next) || next.start - mention.end > LONGEST_CORRECTION) return false;
    if (mention.sequence.items.length > next.sequence.items.length) return false;
    const between = text.slice(mention.end, next.start);
    const found = SUPERSEDES.exec(between);
    return (TAKES_BACK.test(between) && !MORE.test(between)) || (found !== null && !ALSO.test(found[0]));
  });
  return said.map((mention, index) => {
    if (goneAt[index]) return { ...mention, past: true, said: 'past' };
    // What takes its place is said of the same.
    return goneAt[index - 1] && mention.said === undefined ? { ...mention, said: said[index - 1]?.said } : mention;
  });
}

/** "Not this Friday!", "I don't mean this Thursday" */
const notThis = (text: string, { start, end, weekdayOnly }: DateMention): boolean =>
  weekdayOnly && NOT_BEFORE.test(text.slice(Math.max(0, start - SHORT), start)) && /^this\s/i.test(text.slice(start, end));
const NOT_BEFORE = /\b(?:not|don't mean|do not mean|rather than|nicht|pas|no)\s(?:for\s|on\s)?$/i;
const SHORT = 24;
