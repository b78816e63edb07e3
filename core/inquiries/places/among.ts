/**
 * How several towns of a message stand to each other: two of which nobody says yet which, one that is picked out, one in a quoted older mail,
 * one where the sender is at home.
 */
import { lineStart } from '../parts/sentences.ts';
import type { Token } from '../parts/tokens.ts';
import type { PlaceHit } from './hits.ts';

const BEHIND = 130;
/** How near "or" stands to the second of two. */
const OR_NEAR = 8;
/** How far before a town its other one can stand. */
const AHEAD = 110;
const NAME = String.raw`\p{Lu}[\p{L}'’-]+(?: \p{Lu}[\p{L}'’-]+){0,2}`;
/** "or we hire a hall in", "oder, falls es regnet, in", "or in": what leads from one town to the other; no figure stands in it. */
const LINK = String.raw`(?:\s?\([^()\d]{1,40}\))?[\s,.?–-]{1,3}(?:or|oder|ou|of(?! (?:the|our|a|this|that)\b)|o|bzw\.?|versus|vs\.?)(?: else| maybe| possibly| perhaps| even)?(?:,\s[^.?!;\n\d]{2,60}?,\s|,?\s(?:\(?[A-D1-4]\)\s)?)(?:(?:[^.?!;\n\d]{0,60}?[\s,])?(?:in|at|to|near|à|bei|nach|te)\s)?`;
const MIGHT = String.raw`[\s,]{1,3}(?:or )?(?:(?:it |we )?(?:could|might|may|can)(?: also| well| just as well)? (?:be|go)|maybe|perhaps|possibly|vielleicht|peut-être|misschien)(?: in| at| to)?\s`;
const AFTER = new RegExp(`^(?:${LINK}|${MIGHT})(?:the )?(?<name>${NAME})`, 'u');
const BEFORE = new RegExp(String.raw`(?<![\p{L}'’-])(?<name>${NAME})${LINK}$`, 'u');
/** "split between Moncton and Charlottetown", "cannot agree between Marbella and the Algarve" */
const UNDECIDED = String.raw`(?:\b(?:split|torn|choos\w*|choice|decid\w*|undecided|toss[- ]?up|vot\w*|agree\w*|hesit\w*|hésit\w*|either|pick\w*|wavering|hovering|in two minds|schwank\w*|dud\w*|twijfel\w*)(?:[ ,][\w']+){0,3} (?:between|entre|zwischen|tussen|tra) (?:doing it |having it )?(?:in )?|\bshortlist\w*[,:]? |\bone of (?:the )?(?:two|2)(?: \w+)?[:,] )`;
const OF_TWO = new RegExp(`${UNDECIDED}$`, 'iu');
const AND = String.raw` (?:and|&|or|et|und|y|en|e) (?:in )?(?:the )?`;
const AND_THE_OTHER = new RegExp(`^${AND}(?<name>${NAME})`, 'u');
const THE_OTHER_AND = new RegExp(`${UNDECIDED}(?<name>${NAME})${AND}$`, 'u');
/** "Option A: Monday, Guildford", "B) Sarnia" */
const OPTION =
  /(?:\b(?:option|choice|plan|scenario|variante?|possibility)\s(?=[A-D1-4]\b)|(?:^|\n)\s?\(?(?=[A-D][).:])|(?<![\w(])\(?(?=[A-D]\)))(?<mark>\w)/gi;

/** "otley. or ilkley if the hall is booked" */
const OR_IF =
  /^[\s,.?(]{1,3}or (?:maybe |possibly |else )?(?:in |at )?(?!(?:ring|call|text|e?mail|phone|reply|message|shout|later|earlier|whatever|even|less|more|maybe|nothing|another|after|before|both|none)\b)(?<name>\p{L}{4,20}) if (?:the|it|we|they|he|she|not|wet|that|there)\b/iu;
/** "either oceanside or", "either" */
const EITHER_OR = /\beither (?:in |at )?(?:(?:the )?[\p{L}'’-]{3,25}(?: [\p{L}'’-]{3,25})? or (?:in |at )?)?$/iu;

/** A town that another is named beside, as the one of two that it may be. */
export type Either = {
  town: PlaceHit;
  name: string;
  at: number;
  /** Its words say that nobody has chosen, whatever the other name is. */
  open: boolean;
};

/** What stands for a day where the days of several towns are looked past. */
const DAY = '\uE000';
const ON = '(?:(?:on|am|le|the|den|op|el|this|next) ){0,2}';
const ITS_DAY = `[ ,(]{0,2}${ON}${DAY}+\\)?`;
/** "Dunedin on 18 dec or Nelson on 19 dec", "am 12. Juni in Potsdam oder am 13. Juni in Cottbus": each with a day of its own. */
const OR_ANOTHER = String.raw`,? (?:or|oder|ou|of|o)(?: else| maybe| possibly| perhaps)? `;
const IN = '(?:in |at |à |te |en )?';
const OTHER_DAY_AFTER = [
  `^${ITS_DAY}${OR_ANOTHER}${IN}(?<name>${NAME})(?=${ITS_DAY})`,
  `^(?:${ITS_DAY})?${OR_ANOTHER}${ON}${DAY}+,? ${IN}(?<name>${NAME})`,
].map((pattern) => new RegExp(pattern, 'u'));
const OTHER_DAY_BEFORE = new RegExp(String.raw`(?<![\p{L}'’-])(?<name>${NAME})${ITS_DAY}${OR_ANOTHER}(?:${ON}${DAY}+,? )?${IN}$`, 'u');
function onOtherDay(masked: string, { start, end }: PlaceHit): { name: string; at: number } | undefined {
  const ahead = masked.slice(end, end + BEHIND);
  const [after] = OTHER_DAY_AFTER.map((pattern) => pattern.exec(ahead)).filter((match) => match !== null);
  const from = Math.max(0, start - AHEAD);
  const before = after ? null : OTHER_DAY_BEFORE.exec(masked.slice(from, start));
  const name = (after ?? before)?.groups?.['name'];
  if (name === undefined) return undefined;
  return { name, at: after ? end + after[0].lastIndexOf(name) : from + (before?.index ?? 0) };
}

/** The text with its days made alike. */
export function withoutDays(text: string, tokens: readonly Token[], taken: (index: number) => boolean): string {
  const parts: string[] = [];
  let at = 0;
  tokens.forEach(({ start, end }, index) => {
    if (!taken(index)) return;
    const from = index > 0 && taken(index - 1) ? at : start;
    parts.push(text.slice(at, from), DAY.repeat(end - from));
    at = end;
  });
  return parts.join('') + text.slice(at);
}

/**
 * Names beside a town that it stands against.
 * @param masked the text as `withoutDays` gives it
 */
export function eitherOf(text: string, masked: string, towns: readonly PlaceHit[]): Either[] {
  return towns.flatMap((town) => {
    const [from, ahead] = [Math.max(0, town.start - AHEAD), text.slice(town.end, town.end + BEHIND)];
    const lead = text.slice(from, town.start);
    const other = onOtherDay(masked, town);
    if (other) return [{ town, ...other, open: true }];
    const orIf = OR_IF.exec(ahead);
    const both = (OF_TWO.test(lead) ? AND_THE_OTHER.exec(ahead) : null) ?? THE_OTHER_AND.exec(lead);
    const [after, before] = [
      AFTER.exec(ahead) ?? orIf ?? (both && OF_TWO.test(lead) ? both : null),
      BEFORE.exec(lead) ?? THE_OTHER_AND.exec(lead),
    ];
    if (EITHER_OR.test(lead) && !after && !before && (/\bor\b/i.test(lead.slice(-OR_NEAR)) || /^ or\b/i.test(ahead)))
      return [{ town, name: '', at: -1, open: true }];
    const named = [after, before].map((match, side) => {
      const name = match?.groups?.['name'];
      if (!match || name === undefined) return undefined;
      return {
        town,
        name,
        at: side === 0 ? town.end + match[0].length - name.length : from + match.index + match[0].indexOf(name),
        open: both !== null || orIf !== null,
      };
    });
    return named.filter((one) => one !== undefined);
  });
}

/** Towns of which each belongs to another of several options. */
function inOptions(text: string, towns: readonly PlaceHit[]): boolean {
  const marks = [...text.slice(0, FIRST_PAGE).matchAll(OPTION)];
  if (marks.length < 2 || new Set(marks.map(({ groups }) => groups?.['mark']?.toLowerCase())).size < 2) return false;
  const options = towns.map(({ start }) => marks.findLastIndex(({ index }) => index <= start));
  return options.every((option) => option >= 0) && new Set(options).size > 1;
}
const FIRST_PAGE = 6000;

/** "Either the 30th or we move it to Penticton" */
const MOVES =
  /\bor (?:else )?(?:we|they|it)(?:'d|'ll)? (?:(?:could|may|might|would|will|can) )?(?:moves?|shifts?|goes|go|relocates?|switch(?:es)?|takes?|holds?|have|has|do|does|run|runs)(?: it| the \w+)?(?: over| across| up| down)? (?:to|in|at) $/i;

/** "The final may shift to Haridwar" */
const MAY_MOVE = /\b(?:may|might|could)(?: yet| still| also)? (?:be )?(?:shift|mov|switch|swap|relocat)\w*(?: \w+){0,2}? to $/i;

/** How far a town falls behind that is only in a quoted mail, or where only the sender is; and how surely the other must be led. */
const BEHIND_OTHERS = 4;
const BEHIND_OWN = 1.5;
const LED = 2;

/** Towns with their scores moved by how they stand to each other. */
export function amongTowns(text: string, towns: readonly PlaceHit[]): PlaceHit[] {
  if (new Set(towns.map(({ name }) => name.toLowerCase())).size < 2) return [...towns];
  const quoted = towns.map(({ start }) => /^\s?>/.test(text.slice(lineStart(text, start), start)));
  const elsewhere = towns.some(({ atHome, score }) => !atHome && score >= LED);
  const own = towns.some(({ score }, index) => !quoted[index] && score >= LED);
  const moved = towns.map((town, index) => {
    const less = elsewhere && town.atHome ? BEHIND_OTHERS : own && quoted[index] ? BEHIND_OWN : 0;
    return { ...town, score: town.score - less };
  });
  const best = Math.max(...moved.map(({ score }) => score));
  if (inOptions(text, towns)) return moved.map((town) => ({ ...town, score: best, option: true as const }));
  const moves = towns.map(({ start }) => [MOVES, MAY_MOVE].some((words) => words.test(text.slice(Math.max(0, start - AHEAD), start))));
  if (!moves.includes(true)) return moved;
  return moved.map((town, index) => (moves[index] || town.score === best ? { ...town, score: best, open: true } : town));
}
