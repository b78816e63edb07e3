/**
 * An hour of somebody else at which I am asked to come by words that stand behind it: "it's for then that we expect you", "at which time you
 * should set up", "you'd set up while he does", "candidates come at 6.15 ... I'd want you there with the candidates".
 */
import { COMING, NOT_COMING } from '../said/coming.ts';

const ME = String.raw`(?:you|u)(?:'d|'ll|'re| would| will| should| must| can| could| may| might| are| need| have)?(?: to| also| please| then| already){0,2}`;
const COME = String.raw`(?:come|arrive|set up|rig(?: up)?|start|begin|appear|report|enter|get (?:in|there|here)|be (?:there|here|in|with us|ready|inside|needed|expected|wanted))`;
/** "it's then that I want you there" */
const IT_IS_THEN =
  /\bthen (?:that|when|is when) (?:we|i|they|he|she)(?:'d| would|'ll| will)?(?: also| really| already)? (?:want|need|expect|like|love|await|ask|count on|hope for) (?:for )?(?:you|u)\b/i;
/** "at which time you should set up by the window" */
const AT_WHICH = new RegExp(String.raw`\b(?:at|by|from|for) which(?: (?:time|hour|point|moment))?,? ${ME} ${COME}\b`, 'i');
/** "and you'd set up while he does" */
const WHILE = new RegExp(
  String.raw`\b${ME} ${COME},? (?:while|as|when|once) (?:he|she|they|it|that) (?:does?|is|are|do|has|have|happens?|starts?|comes?|arrives?)\b`,
  'i',
);
/** "there with the candidates", "please come with the crane", "you be there when catering is" */
const WITH_THEM = new RegExp(
  String.raw`${COMING}(?: (?:there|here|in|along|together|over|down)){0,2} (?:with|alongside|at the same time as|when|as) (?:(?:the|our|my|all the) )?([\w\u00c0-\u024f'-]{3,20})(?: (?:is|are|does|do|comes?|arrives?|gets? (?:there|here|in)|turns? up))?(?=\s?(?:[.,;:!?)\n]|$|(?:please|so|and|because|too)\b))`,
  'gi',
);
/** Whom nobody takes for a part of the day. */
const NOBODY = /^(?:you|your|them|him|her|that|this|it|us|me|the|camera\w*|kit|gear|equipment|tripod\w*|everything|love|thanks|regards)$/i;
/** What ends then does not begin then. */
const LEAVES = /\b(?:leaves?|ends?|go|goes|gone|finish\w*|stops?|closes?|over|done|out|home|last|until|till)\b/i;
const REACH = 320;
const CLAUSE = 90;

const asked = (text: string, found: RegExpExecArray | RegExpMatchArray | null): boolean =>
  found !== null && !NOT_COMING.test(text.slice(0, found.index));

/** True where I am asked to come at an hour by what stands behind it; `tail` ends before the next hour. */
export function comesThen(text: string, { start, end }: { start: number; end: number }, tail: string): boolean {
  const clause =
    text
      .slice(Math.max(0, start - CLAUSE), start)
      .split(/[.;:!?\n]|,\s/)
      .at(-1) ?? '';
  if (LEAVES.test(clause)) return false;
  if ([IT_IS_THEN, AT_WHICH, WHILE].some((pattern) => asked(tail, pattern.exec(tail)))) return true;
  const rest = text.slice(end, end + REACH).split(/\n\s?\n/)[0] ?? '';
  return [...rest.matchAll(WITH_THEM)].some((found) => {
    const whom = found[1] ?? '';
    return !NOBODY.test(whom) && asked(rest, found) && named(clause, whom);
  });
}

/** The clause is of them: "The crane arrives at". */
const named = (clause: string, whom: string): boolean => {
  const stem = whom.toLowerCase().replace(/(?:'s|s)$/, '');
  return clause
    .toLowerCase()
    .split(/[^\w\u00c0-\u024f'-]+/)
    .some((word) => word === stem || word === `${stem}s` || word === `${stem}es`);
};
