/**
 * Who says who they are in their first words without a verb: "Kit, Terry Osland over at Osland Agri.", "Hi Kit - Lachie, Wombat & Wire.", "Noor again."
 */
import { OCCASION } from '../occasions.ts';
import { numberWord } from '../words.ts';
import { besideName } from './beside.ts';
import type { Closing } from './closing.ts';
import { NAME, nameFrom, namesArea, ORG_WORDS, TITLE_WORDS } from './words.ts';

const BEGINS = /(?<=^\s*["']?|[\n,.!?;"]\s{0,3}|\s-{1,2}\s|\]\s)(?=\p{Lu})/gu;
/** How far in somebody still says who they are; with a comma alone only right behind whom they greet. */
const REACH = 160;
const GREETED = 60;
const LONGEST_NAME = 90;
const FIRST = new RegExp(String.raw`^(${NAME.replaceAll(String.raw`\s`, ' ')})(?=[\s,(/]|$)`, 'u');
/** Capitals that ask for something are nobody. */
const NOBODY =
  /^(?:change|starts?|begins?|ends?|runs?|opens?|kicks?|finish\p{L}*|arriv\p{L}*|me|now|sometime|details|set-up|forwarding|student|nye|job|gig|work|booking|availability|request|query|cover|help|second|operator|shooter|option|hold|dates?|crew|cameras?|streaming|live|main|day|part|big|last|next|first|old|same|this|more|yeah|oh|okay|hope|found|got|saw|greetings|congrat\p{L}*|welcome|head|chair|secretary|director|producer|pta|attach\p{L}*|volunteer|mayor|rehearsals?)(?: |$)/iu;

/** The one who begins so, and for whom. */
export function openingOf(body: string, isTown: (name: string) => boolean): Closing | undefined {
  const begin = body.length - body.trimStart().length;
  const head = body.slice(0, begin + REACH);
  for (const { index } of head.matchAll(BEGINS)) {
    const written = FIRST.exec(body.slice(index, index + LONGEST_NAME))?.[1];
    const name = written ? nameFrom(written, index) : undefined;
    if (!written || !name || namesArea(name.value) || NOBODY.test(name.value) || OCCASION.test(name.value)) continue;
    if (
      TITLE_WORDS.test(name.value) ||
      ORG_WORDS.test(name.value) ||
      /'s$|^\p{Lu}+$/u.test(name.value) ||
      numberWord(name.value.toLowerCase()) !== undefined
    )
      continue;
    const end = index + written.length;
    // A person who bears a town's name says so.
    if (isTown(name.value) && !/^ (?:here|speaking|calling|typing|this side|from the)(?!\p{L})/u.test(body.slice(end, end + 12))) continue;
    const beside = besideName(body, end, isTown);
    if (!beside) continue;
    const { here, led, marked, rest, organisation } = beside;
    const greets = index > begin && index < begin + GREETED;
    if (here !== '' || led || (marked && greets && (organisation !== undefined || TITLE_WORDS.test(rest))))
      return { name, ...(organisation ? { organisation } : {}) };
  }
  return undefined;
}
