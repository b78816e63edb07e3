/**
 * Whose hours a sentence tells that begins with who or what it speaks of: "the drone pilot has a slot from 12 to 1", "road closures are from 6 to 4".
 */
import { sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';

/** Who or what has the hours, at the beginning of a sentence, and that it does something of its own then. */
const TELLS_OF =
  /(?:^|[.;!?\n])\s{0,2}(?:(?:and|but|so|also) )?(?:(?:the|our|my|their|his|her|its|an?|all|some|most|another|any|every|no) ){0,2}((?:[\p{L}'’&-]+ ){0,3}?[\p{L}’&-]+)(?:'s|'ll| (?:(?:only|also|usually|normally|always|just|still|then) ){0,2}(?:is|are|was|were|has|have|had|comes?|will|would|can|could|may|must|should|shall|gets?|goes|works?|plays?|serves|sits?|stands?|rehearses?|needs?|takes?))(?!\p{L})[^.;!?\n]*$/iu;
/** Who films, what is wanted of me, and who may come in with me: "vehicles may come onto the field from 7". */
const OF_ME =
  /(?<!\p{L})(?:you|u|yours?|shoot\w*|film\w*|video\w*|camera\w*|photographer|recordist|technicians?|cover\w*|operator|needs? (?!to\b)|wants?|likes?|looking|book|hire|stream\w*|come|enter|attend|arrive|access|load|set up|unload|park)(?!\p{L})/iu;
/** Of what the hours are mine although another word than one for me tells of them. */
const OWN = anyOf(`
  we | i | it | this | that | there | these | those | they | he | she | who | which | what | where | when | how | everything | everyone | all | both | each | one | either | presence | attendance | yes | no | hours | hour | day | days | time | times | timing | timings | shift | shifts | job | gig | event | events | date | dates
  schedule | plan | booking | session | sessions | slot | call | wrap | work | part | rest | crew | kit | contract | assignment | duty | stint | window | main | evening | night | morning | afternoon | thing | idea | friday | saturday | sunday | monday | tuesday | wednesday | thursday
`);

/** Who or what a sentence begins with before an hour: somebody or something whose hours are not mine, where it names nobody who films. */
function headOf(text: string, at: number): string | undefined {
  const { start } = sentenceAround(text, at, at);
  const [lead, told] = (at - start > REACH ? undefined : TELLS_OF.exec(text.slice(start, at))) ?? [];
  const head = told?.split(' ').at(-1);
  return lead === undefined || head === undefined || OWN.test(head) || OF_ME.test(lead) ? undefined : head.toLowerCase();
}
const REACH = 70;

/** True where the sentence of an hour begins with somebody or something whose hours are not mine. */
export const tellsOfElse = (text: string, at: number): boolean => headOf(text, at) !== undefined;

/** True where it is none of what the message speaks of elsewhere, as it does of the occasion: "could you film our fete? ... the fete is on until 4". */
export function tellsOfAside(text: string, at: number): boolean {
  const head = headOf(text, at);
  return head !== undefined && text.toLowerCase().split(head).length < 3;
}
