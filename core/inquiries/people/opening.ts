/**
 * Who says who they are in their first words without a verb: "Kit, Terry Osland over at Osland Agri.", "Hi Kit - Lachie, Wombat & Wire.", "Noor again."
 */
import { OCCASION } from '../occasions.ts';
import { numberWord } from '../words.ts';
import { bodyIn } from './bodies.ts';
import type { Closing } from './closing.ts';
import { NAME, nameFrom, namesArea, ORG_WORDS, TITLE_WORDS } from './words.ts';

const BEGINS = /(?<=^\s*["']?|[\n,.!?;"]\s{0,3}|\s-{1,2}\s|\]\s)(?=\p{Lu})/gu;
/** How far in somebody still says who they are; with a comma alone only right behind whom they greet. */
const REACH = 160;
const GREETED = 60;
const STRETCH = new RegExp(
  String.raw`^(${NAME.replaceAll(String.raw`\s`, ' ')})(?= |[,(]|$)((?:[^.!?;\n\p{Extended_Pictographic}-]|\.(?=\S)|(?<=\b(?:St|Dr|Mt))\.|-(?=\S)|(?<=\S)-){0,100})`,
  'u',
);
/** A clause of its own begins. */
const CLAUSE =
  /,\s(?:and |but |so )?(?:we|i|it|they|he|she|there|can|could|are|is|do|does|would|will|any|have|just|looking|need|needing|wanting|wondering|hoping|after|who|you|u|got|a|an|quick|one|re|about|how|what|if|could|for|on|in|at|hope)(?:'\p{L}+)?\s.*$/isu;
/** Who has a verb or speaks of somebody else does not say who they are. */
const SPEAKS =
  /(?<!\p{L})(?:you|your|u|ur|me|us|my|i|is|are|was|were|has|have|had|says?|said|gave|told|will|would|can|could|needs?|wants?|asked|does|did|recommended|mentioned|suggested|called|rang|plays?|runs?)(?!\p{L})|\d/iu;
const HERE = /^ (?:here|again|speaking|calling|typing|this side)(?!\p{L})/u;
const LEADS = /^,? (?:over at|out at|from|at|with|of|w\/|off|fae|frae|(?:in|on)(?= the ))\s(?=\S)/u;
const BESIDE = /^(?:, ?| ?\(| - | ?\/ ?)(?=\S)/u;
/** Capitals that ask for something are nobody. */
const NOBODY =
  /^(?:me|now|sometime|details|set-up|forwarding|student|nye|job|gig|work|booking|availability|request|query|cover|help|second|operator|shooter|option|hold|dates?|crew|cameras?|streaming|live|main|day|part|big|last|next|first|old|same|this|more|yeah|oh|okay|hope|found|got|saw|greetings|congrat\p{L}*|welcome|head|chair|secretary|director|producer|pta|attach\p{L}*|volunteer|mayor|rehearsals?)(?: |$)/iu;

/** The one who begins so, and for whom. */
export function openingOf(body: string, isTown: (name: string) => boolean): Closing | undefined {
  const begin = body.length - body.trimStart().length;
  const head = body.slice(0, begin + REACH);
  for (const { index } of head.matchAll(BEGINS)) {
    const found = STRETCH.exec(body.slice(index, index + REACH));
    const name = found?.[1] ? nameFrom(found[1], index) : undefined;
    if (!found || !name || namesArea(name.value) || NOBODY.test(name.value) || OCCASION.test(name.value)) continue;
    if (
      TITLE_WORDS.test(name.value) ||
      ORG_WORDS.test(name.value) ||
      /'s$|^\p{Lu}+$/u.test(name.value) ||
      numberWord(name.value.toLowerCase()) !== undefined
    )
      continue;
    const here = HERE.exec(found[2] ?? '')?.[0] ?? '';
    // A person who bears a town's name says so.
    if (isTown(name.value) && !/^ (?:here|speaking|calling|typing|this side|from the)(?!\p{L})/u.test(found[2] ?? '')) continue;
    const tail = (found[2] ?? '').slice(here.length).replace(CLAUSE, '');
    const lead = LEADS.exec(tail)?.[0];
    const mark = BESIDE.exec(tail)?.[0];
    const rest = tail.slice((lead ?? mark ?? '').length);
    if (SPEAKS.test(rest)) continue;
    const organisation = bodyIn(rest, index + (found[1] ?? '').length + here.length + (lead ?? mark ?? '').length, isTown);
    const alone = lead !== undefined && !organisation?.value.includes(' ');
    const said = here !== '' || lead !== undefined;
    const beside = mark !== undefined && index > begin && index < begin + GREETED && (organisation !== undefined || TITLE_WORDS.test(rest));
    if (said || beside)
      return { name, ...(organisation && !alone && !OCCASION.test(organisation.value.replace(/^.* of /, '')) ? { organisation } : {}) };
  }
  return undefined;
}
