/**
 * Addresses and numbers of somebody else: "call the hotel on", "invoices go to", "our photographer is Ben Ardley, ben@". How to reach the one who
 * asks stands alone, or beside words of asking and answering, or begins with their name.
 */
import { foldName } from '../../places/fold.ts';
import { emailIn, phonesIn } from './reach.ts';
import type { PersonFact } from './words.ts';

/** What an answer to the inquiry is never about. */
const BESIDE =
  /(?<!\p{L})(?:parking|permits?|access|rooms|a room|booked|hotel|lodge|accommodation|floor ?plans?|plans|invoic\p{L}*|bills?|billing|receipts?|payments?|remittance|accountant|riders?|licen[cs]\p{L}*|files?|footage|rushes|uploads?|tickets?|accreditations?|passes|dietary|allerg\p{L}*|catering|menus?|lost property|emergenc\p{L}*|taxis?|cabs?|trains?|slides|logos?|running order|fax|wi-?fi|rsvps|certificates?|insurers?|links?|meals|(?:the|our) caterers?|copy in|copy (?:my|our)|copied in|plans|cc|cc'd|cc'ing|unsubscribe|complaints|donations?|first aider|caretaker|janitor|(?:site|stage|venue|house|band|tour) manager|stage door|hire cars?|noise|electrician|plumber|on duty|doctor|nurse|raffle|has the keys?|(?:tech|technical) (?:manager|team)|security|reception|box office|front desk|photographer|dj|florist|vicar|registrar|toastmaster|choreographer)(?!\p{L})/iu;
/** What it is about. */
const ASKED =
  /(?<!\p{L})(?:quot\p{L}+|prices?|pricing|rates?|repl(?:y|ies)|respond|response|answers?|availab\p{L}*|interested|proposals?|tenders?|bids?|estimates?|showreel|reel|portfolio|enquir\p{L}+|inquir\p{L}+|(?:any|other|further|more|your|with) questions(?! about)|confirm\p{L}*|ask for|let (?:me|us) know|contact me|reach me|my (?:e-?mail|number|address|mobile|cell|phone))(?!\p{L})/iu;
/** "The hotel's email is", "call the venue on" */
const HOUSE = /(?<!\p{L})(?:hotel|venue|hall|theatre|council|museum|pub|church office|facilities)(?:'s)?(?!\p{L})/iu;
const NAMED = /(?<!\p{L})\p{Lu}\p{Ll}[\p{L}'-]{1,20}/gu;
/** Somebody is told of, and not to be written to: "our photographer is Ben Ardley,". */
const TOLD_OF = /(?<!\p{L})(?:is|are|was|handles?|does|runs?|manages?|deals?|looks? after|arranges?|has|will)(?!\p{L})/iu;
/** "Rhys (tech) is on 07700 900111" */
const IS_ON =
  /(?<!\p{L})(?!(?:She|He|They|It|This|Mine|Me)(?!\p{L}))\p{Lu}\p{Ll}[\p{L}'-]{1,20}(?: \([^()]{1,30}\))?(?:'s| is| can be (?:reached|had|found)) (?:on|at)\s*$/u;
/** "The Lord Mayor's office, 01632 960050, arranges the cars" */
const DOES_ELSE =
  /^,? (?:arranges?|handles?|does|deals?|looks? after|manages?|runs?|sorts?|organi[sz]es?|has|have|keeps?|sends?|books?)(?!\p{L})/u;
/** "Our marketing girl, Steph (steph@", "give my mother a ring on" */
const APPOSED =
  /(?<!\p{L})(?:[Oo]ur|[Mm]y|[Tt]he) (?:[\p{L}-]+ ){0,3}?[\p{L}-]+, \p{Lu}[\p{L}'-]{1,20}(?: \p{Lu}[\p{L}'-]{1,20})?(?:,| \()\s?$/u;
const FAMILY =
  /(?<!\p{L})(?:my|our) (?:\p{L}+ )?(?:mother|father|mum|mom|dad|sister|brother|son|daughter|wife|husband|gran|nan|aunt|uncle|cousin)(?: a (?:ring|call|bell|shout))?,?(?: (?:on|at))?\s*$/iu;
/** "Any press questions go to" */
const ASKED_OF =
  /(?<!\p{L})(?!(?:any|all|your|other|further|more|with|these|those|questions)(?!\p{L}))\p{L}+ (?:questions|queries) (?:go|should|to|please)(?!\p{L})/iu;
const WRITER = /(?<!\p{L})(?:I|me|mine|my|I'm|us|myself)(?!\p{L})/u;
/** How far back the words of an address reach, and those of a number. */
const SENTENCE = 120;
const NUMBER = 60;

/** The sentence before and behind what stands from `start` to `end`. */
function around(text: string, { start, end }: PersonFact, reach: number): [lead: string, tail: string] {
  const lead = text
    .slice(Math.max(0, start - reach), start)
    .split(/(?<!(?<!\p{L})(?:ph|tel|mob|Dr|Mrs?|Ms))[.;!?](?=\s)|\n/iu)
    .at(-1);
  return [lead ?? '', /^[^.;!?\n]*/.exec(text.slice(end, end + reach))?.[0] ?? ''];
}

/** Whether a box is called as its owner: "robin@" or "r.farley@". */
const isCalledAs = (email: string, name: string | undefined): boolean =>
  name !== undefined &&
  foldName(name)
    .split(/[^a-z]+/)
    .some((word) => word.length > 2 && foldName(email.split('@')[0] ?? '').includes(word));

/**
 * Whether an address or a number in running text is somebody else's.
 * @param mine the name of the one who asks
 */
export function isForOthers(text: string, reach: PersonFact, mine: string | undefined): boolean {
  const isMail = reach.value.includes('@');
  if (isMail && isCalledAs(reach.value, mine)) return false;
  const [lead, tail] = around(text, reach, isMail ? SENTENCE : NUMBER);
  const sentence = `${lead}@${tail}`;
  const known = foldName(mine ?? '')
    .split(/[^a-z]+/)
    .filter((word) => word.length > 2);
  const named = [...lead.matchAll(NAMED)].map(([word]) => foldName(word));
  if (FAMILY.test(lead)) return true;
  if (ASKED.test(sentence) || named.some((word) => known.includes(word))) return false;
  if ((isMail && APPOSED.test(lead)) || ASKED_OF.test(lead)) return true;
  if (BESIDE.test(sentence)) return !(WRITER.test(lead) && !isMail);
  if (WRITER.test(lead)) return false;
  if (HOUSE.test(lead) || IS_ON.test(lead) || DOES_ELSE.test(tail)) return true;
  // The first word of a sentence has a capital whatever it is.
  return isMail && mine !== undefined && TOLD_OF.test(lead) && named.length > (/^\s*\p{Lu}/u.test(lead) ? 1 : 0);
}

/** "The stage manager is Fred, 07700 900455." among the last lines: a sentence of so many words and more. */
const TELLS = /(?<!\p{L})(?:is|are|to|from|via|for|if|at|on|by|about)(?!\p{L})/iu;
const MOST_READ = 14;
/** The signature with blanks for sentences above the name that tell how to reach others. */
export function withoutOthersLines(signature: string): string {
  let left = MOST_READ;
  return signature.replace(/[^\n]+/g, (line) => {
    if (!/\p{L}/u.test(line) || left-- <= 0 || line.length > 200 || !TELLS.test(line)) return line;
    const reach = emailIn(line) ?? phonesIn(line, false)[0];
    return reach && isForOthers(line, reach, undefined) ? ' '.repeat(line.length) : line;
  });
}
