/**
 * Amounts that another amount sets aside: a rate that was put right, the rows of other people in a table, parts of a sum, a quoted older mail.
 */
import type { Amount } from '../money/units.ts';
import { anyOf } from '../phrases.ts';

/** What amounts tell of one of them: it stands aside, it is the one that is meant, it is what the others come to. */
type Standing = 'aside' | 'meant' | 'sum' | undefined;

/** "photographer $500, videographer $600" */
const OF_VIDEO = /\b(?:video(?:grapher|graphy)?|filming|camera(?:man| op\w*)?|livestream\w*)\s?(?:[:=–-]|is)?\s?$/i;
/** "OLD: two days, £1,000", "Before:" at the beginning of a line. */
const OLD_LINE =
  /(?:^|\n)[\s>*•-]{0,4}(?:old|before|was|previous(?:ly)?|original(?:ly)?|first version|superseded|cancelled)\b[^\n]{0,160}$/i;
/** "from £400 to", "it was 900, I got it up to", "£400 should have read" */
const LED_OLD = /\b(?:from|not|instead of|rather than|was|were|had been|used to be|told (?:you|me)|said)[:,]?(?: \w+){0,2}\s?$/i;
const THEN_NEW =
  /^[^?!;\n]{0,60}?(?:\b(?:to|now|is now|it's now|up to|down to|read|make (?:it|that)|call it|they said|(?:is|was|been|went|gone|moved|got it|raised|bumped|put) (?:up|down) to|but (?:[\w']+ ){0,4}(?:it's|it is|we can do|now|i can do))|(?:correct(?:ion|ed)|sorry|actually|rather|no)[,:]?(?: (?:it's|that's|make it))?)\s(?:about |around )?$/i;
/** "We had said $1,700. For one day it's", "your rate of 20,000 is high; we can offer": the next one holds. */
const PLANNED =
  /(?:\b(?:had|have)|'d) (?:\w+ )?(?:budgeted|promised|said|agreed|planned|pencilled|thought)\b[^.?!;\n]{0,40}$|\byour (?:usual |normal |day )?(?:rate|quote|price|fee|quotation)(?: of| is| was)?\s$/i;
const REPLACED = /\b(?:now|can't|cannot|but|instead|it's|it is|so|we can|we could|offer|would you|is possible)\b[^.?!;\n]{0,30}$/i;
const MISWRITTEN =
  /^[^.?!;\n]{0,40}?\b(?:should (?:have )?(?:read|been|be|say|said)|is wrong|was wrong|was a typo|(?:that|which|it) (?:was|is) (?:last year's|the old|an old|the wrong|our old|outdated))\b|^ (?:was|is) (?:last year's|the old|an old|the wrong|our old|outdated)\b/i;
/** "…, so £250!": what follows from the amounts before it. */
const CONCLUDES =
  /(?:\bso|\bdus|\balso|\bdonc|\bhence|\bcall it|\blet's say|\bmaking|\bmakes|\bthat's|\bi\.e\.|=|\btotal(?:ling)?:?|\bin total:?|\baltogether:?)\s(?:(?:it's|it is|that's|just|only|the|we're at)\s){0,2}$/i;
/** "that leaves £400 for film" */
const LEAVES =
  /\b(?:leaves|leaving|left with)(?: us| me| you)?(?: with)?(?: about| around| only| just)?\s$|\b(?:of|out of|from) (?:which|that|this|it),? (?:[\w']+ ){0,3}(?:you|give|offer|pay|spare)(?: (?:you|is|gets?))?\s$/i;
/** "of which $900 is for the camera": a part of a larger sum, and mine. */
export const OUT_OF = /\b(?:of|out of|from) (?:which|that|this|it),?\s$/i;
const FOR_ME = /^[^.?!;,\d]{0,30}\b(?:for (?:the |our |a )?(?:video\w*|film\w*|camera\w*|stream\w*)|for you|yours)\b/i;
/** "For video I could set", "for your work there are": what it is for comes first. */
const FOR_VIDEO_LED =
  /(?:^|[.!?;:,(\n]\s?|\b(?:and|but) )for (?:(?:the |our )?(?:video\w*|film(?:ing)?|camera\w*)|your (?:work|time|services|trouble|efforts?))(?: side| part| work)?[,:]? (?!(?:costs?|was|were|used|paid|bill)\b)(?:(?!(?:last|paid|spent|was|were|had|hire|hired|rent|need|use|want|buy|bought|booked|costs?) )[\p{L}']{1,14} ){0,6}$/iu;
/** "30 quid each", "£40 a head" */
const EACH = /^\s?(?:each|apiece|pp|p\.p\.|(?:a|per) (?:head|person|family|couple|member|team)|from each)\b/i;
/** "$225 an evening", "two hundred a go": a price of one of several, beside their sum. A day's pay is told by itself. */
const ONE_OF_MANY = /\d\S*\s(?:an?|per|each) (?!day\b)\p{L}{2,12}\b|(?:hundred|fifty|thousand) (?:an?|per|each) (?!day\b)\p{L}{2,12}\b/iu;
const SOLD = /\b(?:tickets?|entry|entries|raffle|seats?|plates?|sold|sells?|raised)\b/i;
/** "Final answer is": it holds, whatever was said before. */
const FINAL =
  /\b(?:final|definitive|agreed) (?:answer|offer|figure|number|rate|amount|word|price)(?: is|:| stands at| now)?(?: now)?:?\s$/i;
const SETTLES = /\b(?:so|call) it(?:'s| is)?\s$/i;
const SUM_SAID =
  /^[^.?!;\n]{0,24}?\b(?:altogether|in total|total|in all|samen|zusammen|ensemble|en tout|all told|together|overall|for (?:both|all|everything|the lot))\b/i;
/** "It cost 900 euros then, this time it may be 1,300": a number behind an amount is money, too. */
const THIS_TIME =
  /\b(?:now|this (?:time|year)|diesmal|jetzt|heuer|dieses jahr|cette (?:fois|année)|esta vez|este año|stavolta|quest'anno|dit (?:keer|jaar)|nu)\b[^.?!;\d]{0,40}$/i;
/** "this time, last year's was": what follows is another time's again. */
const THEN_AGAIN = /\b(?:last (?:year|time)|previous\w*|letztes jahr|l'an dernier|el año pasado|l'anno scorso|vorig jaar)(?:'s)?\b/i;
const ALL_SAID = /^\s*(?:[.,;!?)]|$|(?:sein|zahlen|bieten|ausgeben|geben|anbieten|drin|möglich|payer|betalen)\b)/i;
/** "$550, plus $200 for holding": what comes on top of the offer. */
const ON_TOP =
  /(?:\b(?:plus|and (?:another|a further|up to)|with (?:another|a further)|another|a further|an extra)|\+)\s(?:up to |about |around )?$/i;
/** "They're paying me $3,200, you take": what the one who passes it on gets, beside what is mine. */
const PAYS_ME = /\b(?:pa(?:y|ys|ying|id) (?:me|us)|client(?:'s| is)? pay(?:s|ing))(?: about| around)?\s$/i;
const MY_SHARE =
  /\b(?:you(?:'ll|'d| would| will| can)? (?:get|take|keep|have|pocket)|you(?:'re| are) (?:on|getting|looking at)|pay you|your (?:share|cut) (?:is|would be))\b[^.;!?]{0,20}\d/i;
/** "a half day at $300", "paid at half, $400": beside the pay of a whole day. */
const HALF = /\bhalf(?:[- ]?days?| rates?| pay)?\b[^.;!?\d]{0,14}$/i;
const FULL = /\bfull\b/i;
/** "ignore the £450", "not £450 as I wrote" */
const IGNORED =
  /\b(?:ignore|forget|disregard|scrap|scratch)\s(?:about )?(?:the |that |my )?(?:\w+ ){0,2}$|(?:^|[.!?;:,(]\s?)not (?:the )?$/i;
/** "$2,700 rather than $2,000" */
const INSTEAD_OF =
  /\b(?:rather than|instead of|and not|not|up from|down from|compared (?:to|with)|as against|in place of)\s(?:the (?:\w+ )?)?$/i;
/** The row or line that is mine: by me, by a gap in it, by its work. */
const MY_ROW = [
  /(?<!\p{L})(?:you|yours?|kit(?! (?:fee|hire|rental|allowance|money|charge)))(?!\p{L})/iu,
  anyOf(`open | vacant | tbc | tba | to be confirmed | unfilled | not yet filled | needed | wanted`),
  anyOf(`video* | camera | cameraman | filming | film | kamera | vidéo | vídeo | vidéaste | filmer`),
];
const FEWEST_ROWS = 3;
const LONGEST_ROW = 160;
const REACH = 110;
const NEAR = 24;

type Line = { text: string; quoted: boolean };

const isThisTime = (words: string): boolean => {
  const told = THIS_TIME.exec(words)?.[0];
  return told !== undefined && !THEN_AGAIN.test(told);
};

/** "£20,000 for the whole fair", beside what is for the film. */
const WHOLE_EVENT =
  /\d[^\d]{0,12}? for (?:the |our )?(?:whole|entire) (?!day|job|thing|time|night|evening|weekend|shoot|lot|film|video)\p{L}+/iu;
const isForVideo = (text: string, { start, mark }: Amount): boolean =>
  mark !== undefined && FOR_VIDEO_LED.test(text.slice(Math.max(0, start - REACH), start));

function lineOf(text: string, { start, end }: Amount): Line {
  const before = text.slice(Math.max(0, start - LONGEST_ROW), start);
  const behind = text.slice(end, end + LONGEST_ROW);
  const lead = before.slice(before.lastIndexOf('\n') + 1);
  const next = behind.indexOf('\n');
  const line = lead + text.slice(start, end) + (next < 0 ? behind : behind.slice(0, next));
  return { text: line, quoted: /^\s?>/.test(lead) };
}

const isRow = (line: string): boolean =>
  line.length <= LONGEST_ROW && (/[|\t]|\s{2,}\S|\s\/\s|:\s|\s[–-]\s/.test(line.trim()) || /^\s*[*•-]\s/.test(line));

/** The rows of a table or a list with an amount each, of which one is mine. */
function rowStandings(lines: readonly Line[], amounts: readonly Amount[]): Standing[] {
  const rows = new Set(lines.filter(({ text }, index) => isRow(text) && amounts[index]?.mark !== undefined).map(({ text }) => text));
  const mine = MY_ROW.map((mark) => [...rows].filter((row) => mark.test(row))).find((found) => found.length > 0);
  if (rows.size < FEWEST_ROWS || mine?.length !== 1) return lines.map(() => undefined);
  return lines.map(({ text }) => (text === mine[0] ? 'meant' : rows.has(text) ? 'aside' : undefined));
}

/**
 * How each of several amounts stands to the others.
 * @param amounts in the order of the text
 */
export function standings(text: string, amounts: readonly Amount[]): Standing[] {
  if (amounts.length < 2 || amounts.length > MOST_AMOUNTS) return amounts.map(() => undefined);
  const lines = amounts.map((amount) => lineOf(text, amount));
  const rows = rowStandings(lines, amounts);
  const someNew = lines.some(({ quoted }, index) => !quoted && amounts[index]?.mark !== undefined);
  const found = amounts.map((amount, index): Standing => {
    const lead = text.slice(Math.max(0, amount.start - REACH), amount.start);
    const [before, after] = [amounts[index - 1], amounts[index + 1]];
    const between = after === undefined ? '' : text.slice(amount.end, Math.min(after.start, amount.end + REACH));
    if (rows[index] !== undefined) return rows[index];
    if (PAYS_ME.test(lead.slice(-NEAR)) && MY_SHARE.test(text.slice(amount.end, amount.end + REACH))) return 'aside';
    if (
      HALF.test(lead.slice(-NEAR)) &&
      amount.per !== 'day' &&
      !FULL.test(lead + text.slice(amount.end, amount.end + REACH)) &&
      amounts.some((other) => other.mark !== undefined && other.amount === amount.amount * 2)
    )
      return 'aside';
    if (IGNORED.test(lead.slice(-NEAR * 2))) return 'aside';
    // "$18,000 for the day, and of that $525 is for you"
    if (after !== undefined && OUT_OF.test(between) && FOR_ME.test(text.slice(after.end, after.end + REACH))) return 'aside';
    if (OLD_LINE.test(text.slice(Math.max(0, amount.start - LONGEST_ROW), amount.start))) return 'aside';
    if (
      after !== undefined &&
      ((LED_OLD.test(lead) && THEN_NEW.test(between)) || MISWRITTEN.test(between) || (PLANNED.test(lead) && REPLACED.test(between)))
    )
      return 'aside';
    if (amount.mark !== undefined && FOR_VIDEO_LED.test(lead)) return 'meant';
    if (WHOLE_EVENT.test(text.slice(amount.start, amount.end + NEAR)) && amounts.some((other) => isForVideo(text, other))) return 'aside';
    if (before !== undefined && before.end > amount.start - REACH) {
      const earlier = amounts.slice(Math.max(0, index - MOST_PARTS), index);
      const [near, behind] = [lead.slice(-NEAR), text.slice(amount.end, amount.end + 40)];
      const [one, two] = [earlier.at(-1)?.amount ?? 0, earlier.at(-2)?.amount ?? 0];
      // "90 per talk, so 990 for all"
      const each = before.per === 'other' || EACH.test(text.slice(before.end, before.end + NEAR));
      const many =
        (each || ONE_OF_MANY.test(text.slice(before.start, before.end + NEAR))) &&
        !SOLD.test(lead) &&
        one > 0 &&
        amount.amount > one &&
        amount.amount % one === 0;
      if (many && CONCLUDES.test(near)) return 'sum';
      if (two > 0 && one + two === amount.amount && (CONCLUDES.test(near) || SUM_SAID.test(behind) || amount.per === 'job')) return 'sum';
      const bare = amount.mark === undefined && amount.per === undefined;
      if (bare && before.mark !== undefined && isThisTime(lead.slice(before.end - amount.start)) && ALL_SAID.test(behind)) return 'meant';
      if (OF_VIDEO.test(near) || SETTLES.test(near) || LEAVES.test(near) || FINAL.test(near)) return 'meant';
      if (OUT_OF.test(near) && FOR_ME.test(behind)) return 'meant';
      if (CONCLUDES.test(near) && earlier.some((part) => part.amount === amount.amount && part.per === undefined)) return 'meant';
      if (INSTEAD_OF.test(near) && before.end > amount.start - NEAR * 2) return 'aside';
      if (ON_TOP.test(near) && !SUM_SAID.test(behind)) return 'aside';
    }
    return lines[index]?.quoted && someNew ? 'aside' : undefined;
  });
  // The price of one of them, where what all come to follows.
  return found.map((standing, index) =>
    standing === undefined && found[index + 1] === 'sum' && amounts[index]?.per !== 'day' ? 'aside' : standing,
  );
}

/** More amounts than this are a price list. */
const MOST_AMOUNTS = 300;
/** A sum has this many parts at most. */
const MOST_PARTS = 3;
