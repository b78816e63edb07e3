/**
 * Who says who they are in their first words without a verb: "Kit, Terry Osland over at Osland Agri.", "Hi Kit - Lachie, Wombat & Wire.", "Noor again."
 */
import { OCCASION } from '../occasions.ts';
import { numberWord } from '../words.ts';
import { besideName } from './beside.ts';
import { isSoleBody } from './bodies.ts';
import type { Closing } from './closing.ts';
import { RANK } from './ranks.ts';
import { NAME, nameFrom, namesArea, ORG_WORDS, TITLE_WORDS, withoutBody } from './words.ts';

const BEGINS = /(?<=^\s*["']?|[\n,.!?;"]\s{0,3}|\s-{1,2}\s|\]\s)(?=\p{Lu})/gu;
/** How far in somebody still says who they are; with a comma alone only right behind whom they greet. */
const REACH = 160;
const GREETED = 60;
const LONGEST_NAME = 90;
const FIRST = new RegExp(String.raw`^(${NAME.replaceAll(String.raw`\s`, ' ')})(?=[\s,(/.!]|$)`, 'u');
/** Capitals that ask for something are nobody. */
const NOBODY =
  /^(?:change|starts?|begins?|ends?|runs?|opens?|kicks?|finish\p{L}*|arriv\p{L}*|me|now|sometime|details|set-up|forwarding|student|nye|job|gig|work|booking|availability|request|query|cover|help|second|operator|shooter|option|hold|dates?|crew|cameras?|streaming|live|main|day|part|big|last|next|first|old|same|this|more|yeah|oh|okay|hope|found|got|saw|greetings|congrat\p{L}*|welcome|head|chair|secretary|director|producer|pta|attach\p{L}*|volunteer|mayor|rehearsals?|marvel\p{L}+|brilliant|fantastic|perfect|wonderful|lovely|really|finally|disaster|emergency|drama|trouble|favou?r|question|cheeky|random|curveball|plot|panic|listen|look|guess|true|agreed|confirmed|noted|understood|superb|legend|bingo|hoo?ra[yh]|phew|ugh|argh|aye|ye[ap]h?|yup|nope|nah|bit|tiny|small|wee|mad|daft|weird|odd|strange|\p{L}{3,}(?:ing|ous|ful|able|ible|tions?|ments?|less|ness))(?: |$)/iu;
/** Somebody says no more than who they are: "Kit, Fergal. Mad question.", "Naomi (Jonah's mum).", "Marguerite, the wound nurses." */
const BY_NAME_ALONE =
  /^(?:[.](?=\s)|!(?=\s*$)|\s?\([^()\d\n]{2,40}\)[.,!:;]?(?=\s|$)| x{1,3}[.,!](?=\s)|,? the \p{Ll}+(?: \p{Ll}+)?[.,!](?=\s)| (?:out|up|down|over|back|beyond) (?:of|in|at|by) (?:the )?\p{Lu}| (?:de la|de l'|du|del|della|de|vom|von der|van de|van het) ?\p{Ll}{3,}[.,!](?=\s)|, (?:the|your|that) \p{Ll}[\p{L}'’ -]{2,40}[.!](?=\s))/u;
/** "Wanda from church", "Moira off Ward 12": people, whatever towns are called so. */
const SAYS_SO =
  /^ (?:here|speaking|calling|typing|this side|off \p{L}|from (?!(?:noon|mid\p{L}+|about|around|approx|half|quarter|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|early|late|lunch|morning|dawn|sun\p{L}+|now|then|when|to|until|start)(?!\p{L}))\p{Ll})/u;
/** "Marguerite Hale, I plan weddings": who has two names and then says what they do. */
const DOES =
  /^,? (?:and )?(?:I|we) (?:am|are|run|plan|do|work|look|manage|own|teach|organi[sz]e|coordinate|produce|handle|book|chair|help|head|lead)(?!\p{L})/u;
/** "Grace and peace. Deacon Barlow-Hale. Our picnic": a rank and a name for a sentence. */
const RANKED = new RegExp(
  String.raw`(?<=^\s*|[.!?]\s{1,3})(?!(?:Mr|Mrs|Ms|Miss|Dr|Sir|Madam|Herr|Frau|Prof)\b)${RANK}(\p{Lu}[\p{L}'-]+(?: \p{Lu}[\p{L}'-]+){0,2})\.(?=\s+\p{Lu})`,
  'u',
);
/** "Dana / Thunder here" */
const TWO_NAMES = /^\s*(?:[\p{L}]+[ ,!]{1,2}){0,3}(\p{Lu}\p{Ll}+) \/ \p{Lu}[\p{L} ]{1,24} here(?!\p{L})/u;
/** Whom they greet stands right before them, and a comma or a dash. */
const GREETING = /^\s*(?:[\p{L}'’]+[ ,!\n]{1,3}){1,4}(?:(?<=,) |(?<=! )|- )?$/u;

/** The one who begins so, and for whom. */
export function openingOf(body: string, isTown: (name: string) => boolean): Closing | undefined {
  const begin = body.length - body.trimStart().length;
  const head = body.slice(0, begin + REACH);
  for (const { index } of head.matchAll(BEGINS)) {
    const written = withoutBody(FIRST.exec(body.slice(index, index + LONGEST_NAME))?.[1] ?? '');
    const name = nameFrom(written, index);
    if (!name || namesArea(name.value) || NOBODY.test(name.value) || OCCASION.test(name.value)) continue;
    if (
      TITLE_WORDS.test(name.value) ||
      ORG_WORDS.test(name.value) ||
      /'s$|^\p{Lu}+$/u.test(name.value) ||
      numberWord(name.value.toLowerCase()) !== undefined
    )
      continue;
    const end = index + written.length;
    // "Sjoerd van Polderstream.": a surname or where Sjoerd works.
    if (/^\p{Lu}\p{Ll}+ van \p{Lu}\p{Ll}{7,}$/u.test(name.value)) continue;
    // A person who bears a town's name says so.
    if (isTown(name.value) && !SAYS_SO.test(body.slice(end, end + 20))) continue;
    const beside = besideName(body, end, isTown);
    // "Gideon, Nightheron.": of whom Gideon is, as likely.
    if (isSoleBody(written) && /^\s*\p{Lu}[\p{L}]+, $/u.test(body.slice(begin, index)) && /^\.\s/.test(body.slice(end, end + 2))) continue;
    if (
      index > begin &&
      (written.includes(' ') || /^, I (?!am|are)/.test(body.slice(end, end + 8))) &&
      GREETING.test(body.slice(begin, index)) &&
      DOES.test(body.slice(end, end + GREETED))
    )
      return { name };
    const alone = index > begin && GREETING.test(body.slice(begin, index)) && BY_NAME_ALONE.test(body.slice(end, end + GREETED));
    if (!beside && alone) return { name };
    if (!beside) continue;
    const { here, led, marked, rest, organisation } = beside;
    const greets = index > begin && index < begin + GREETED;
    if (alone || here !== '' || led || (marked && greets && (organisation !== undefined || TITLE_WORDS.test(rest))))
      return { name, ...(organisation ? { organisation } : {}) };
  }
  const found = TWO_NAMES.exec(head) ?? RANKED.exec(head);
  const name = found?.[1] ? nameFrom(found[1], found.index + found[0].indexOf(found[1])) : undefined;
  return name && !isTown(name.value) ? { name } : undefined;
}
