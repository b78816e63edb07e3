/**
 * A run of which fewer days are wanted than it has, and nobody says which: "between 9 and 11 October we need one day of filming", "the fair runs from 9 to 11 October, and we need
 * you for two of the days". How many is known, which of them is asked.
 */
import { numberWord } from '../words.ts';
import { askedDays, MOST_CHOICES, union } from './days-among.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const DAY = String.raw`(?:days?|evenings?|nights?|afternoons?|mornings?)\b'?s?`;
/** What such a count may be followed by; "one evening reception", "one night's hotel", "two days to decide" are none of mine. */
const BEHIND = String.raw`(?=\s?(?:[.,;:!?)\n–-]|$|(?:of )?(?:the |your |good |solid )?(?:it|filming|shooting|coverage|camera|video|work|footage|them|these|those)\b|(?:to (?:film|shoot|cover|record|capture)|filmed|covered|captured|recorded|in|at|on|between|within|over|during|from (?:the )?(?=\d)|only|there|with|and|please|max|some|any|out of)\b))`;
/** What is wanted for so many days. The count of an edit, a journey or a rate is another. */
const WANTED = new RegExp(
  String.raw`\b(?:needs?|wants?|book|hire|(?:'d|would) like|love|looking for|after|come|have you|get|use you|require[sd]?|film|spare|shoot|be there|involves?|afford|pay for|(?:money|budget|funds|enough) for|(?:run|stretch) to)\b[^.;!?\n\d]{0,40}?\b(?:(?<=\bfor )an? (?:single |full |whole )?|an? (?:single |full |whole )?(?=(?:day|evening|night|afternoon|morning)(?:'s)?(?: of)? (?:filming|shooting|camera|video|coverage|work)\b)|(?<count>one|two|three|[1-3])(?: (?:full|whole|single|good))?[ -]?(?:of (?:the|those|these|its) )?)${DAY}${BEHIND}`,
  'iu',
);
/** "A day's filming should do" */
const WILL_DO =
  /\b(?:an?|one|a single) (?:day|evening|night|afternoon|morning|performance|show|session)(?:'s)?(?: of)?(?: (?:filming|shooting|coverage|camera|video|it))? (?:should|would|will|might|is|'ll|'d)(?: be)? (?:do|enough|plenty|suffice|sufficient|all (?:we|i) need)\b/iu;
const LOOKED_THROUGH = 4000;

/** The days as a question where fewer are wanted than the one run has that is told. */
export function someOfRun({ text }: Scene, settled: EventDays, candidates: readonly DateMention[]): EventDays | undefined {
  const told = candidates.filter(({ readings, doubt }) => readings.length === 1 && doubt === undefined);
  const run = union(...told.map(({ readings: [days = []] }) => days));
  const page = text.slice(0, LOOKED_THROUGH);
  const match = WANTED.exec(page) ?? WILL_DO.exec(page);
  if (!match || told.length !== candidates.length || told.some(({ readings }) => (readings[0] ?? []).length < 2)) return undefined;
  const word = (match.groups?.['count'] ?? 'one').toLowerCase();
  const count = numberWord(word) ?? Number(word);
  if (run.length <= count) return undefined;
  const choices = count === 1 && run.length <= MOST_CHOICES ? run.map((day) => [day]) : [run];
  return { ...askedDays(settled.where, choices, 'open'), count };
}
