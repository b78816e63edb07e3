/**
 * What stands right behind a name and tells of whom its bearer is: "here from the Tay Rowing Club", ", head of outreach, Marsh End College", "(Thimble & Thread)".
 */
import { OCCASION } from '../occasions.ts';
import { bodyIn } from './bodies.ts';
import { ORG_WORDS, type PersonFact } from './words.ts';

const STRETCH =
  /^(?:[^.!?;\n\p{Extended_Pictographic}-]|\.(?=\S)|(?<=\b(?:St|Dr|Mt|Asst|Dept|Hon|Mgr))\.|-(?=\S)|(?<=\S)-|(?<= )-(?= \p{Lu}))*/u;
const REACH = 110;
/** A clause of its own begins. */
const CLAUSE =
  /(?:,\s(?:and |but |so )?(?:we|i|it|they|he|she|there|can|could|are|is|do|does|would|will|any|have|just|looking|need|needing|wanting|wondering|hoping|after|who|you|u|got|a|an|quick|one|re|about|how|what|if|for|on|in|at|hope)(?:'\p{L}+)?)\s.*$/isu;
const GOES_ON = /\s(?:and|but|so|because|who|which|that|to|about|regarding|re)\s\p{Ll}.*$/su;
/** Who has a verb or speaks of somebody else does not say who they are. */
const SPEAKS =
  /(?<!\p{L})(?:you|your|u|ur|me|us|my|I|i|is|are|was|were|has|have|had|says?|said|gave|told|will|would|can|could|needs?|wants?|asked|does|did|recommended|mentioned|suggested|called|rang|plays|runs)(?!\p{L})|\d/u;
/** "off Ward 12", "from Year 9 netball": a room or a form by its number. */
const NUMBERED =
  /(?<=(?:Ward|Year|Grade|Room|Class|Form|Unit|Floor|Level|Block|Gate|Bay|Studio|Stage|Lodge|Local|Platoon|Troop|Squad|Watch|Team|Station) )\d{1,4}\p{L}?(?= |[.,!)]|$)|(?<=(?<!\p{L})\p{Lu}\p{Ll}+ \p{Lu}\p{Ll}+ )\d{1,4}(?= \()/gu;
const HERE =
  /^(?: \((?:she|he|they)\/\p{L}+\)(?= (?:from|at|of|with|here)(?!\p{L}))|,? (?:here|hier(?= ?(?:[,!]|$))|again|speaking|calling|typing|writing|this side|à l'appareil|al (?:habla|aparato)|am Apparat)(?!\p{L}))/u;
const LEADS =
  /^,? ?@ ?(?=\p{Lu})|^,? (?:over at|out at|from|at|with|of(?! an? )|for|w\/|off|fae|frae|(?:in|on)(?= (?:the(?= \p{Ll})|crew|bookings?|production|events|accounts|operations|ops) )|in(?= (?:\p{Lu}\p{L}+ ){1,2}(?:Media|Productions?|Events|Films?|Studios?|Agency|Group|Communications|Pictures)(?!\p{L})))\s(?=\S)/u;
/** "Torben von der Brandwache Medien.", "Maëlle de Studio Corail.": words that lead to much else, so only to a body in full. */
const LEADS_ABROAD = /^ (?:vo[nm] de[rm]|vo[nm]|van (?:de|het)|van|bij|bei|chez|de la|de l(?=')|de|du|del|della|di)[ '](?=\S)/u;
const ENDS = /^(?: hier)?(?:[.,!;)]|$)/u;
/** ":) The client was happy" */
const SMILE = /\s[:;]-?[)D(].*$/su;
/** How to reach somebody follows. */
const REACHED = /,?\s(?:\(?\+?\d[\d\s().-]{6,}|\S+@\S+).*$/su;
const MARK = /^(?:, ?| ?\(| - | ?\/ ?)(?=\S)/u;

type Beside = {
  /** "here", "again" */
  here: string;
  /** "from", "at"; "for" tells nothing of who it is. */
  led: boolean;
  /** A comma, a bracket or a dash. */
  marked: boolean;
  rest: string;
  organisation?: PersonFact;
};

/** What stands behind a name that ends there; nothing where it is a sentence about somebody. */
export function besideName(text: string, end: number, isTown: (name: string) => boolean): Beside | undefined {
  const whole = STRETCH.exec(text.slice(end, end + REACH))?.[0] ?? '';
  const here = HERE.exec(whole)?.[0] ?? '';
  const tail = whole.slice(here.length).replace(REACHED, '').replace(CLAUSE, '').replace(GOES_ON, '').replace(SMILE, '');
  const abroad = LEADS_ABROAD.exec(tail)?.[0];
  const lead = LEADS.exec(tail)?.[0] ?? abroad;
  const joint = lead ?? MARK.exec(tail)?.[0];
  const said = tail.slice((joint ?? '').length);
  // "Gemma at Stanhope Ceramics, product launch on 12 June": what speaks behind a comma is another clause.
  const clauses = said.split(/(?<=,) /);
  const from = clauses.findIndex((clause) => SPEAKS.test(clause.replace(NUMBERED, '')));
  const rest = lead !== undefined && from > 0 ? clauses.slice(0, from).join(' ').replace(/,$/, '') : said;
  if (from === 0 || (from > 0 && rest === said))
    return here !== '' && MARK.test(tail) ? { here, led: false, marked: false, rest: '' } : undefined;
  const found = joint === undefined ? undefined : bodyIn(rest, end + here.length + joint.length, isTown);
  // "Lana from Doringkloof": one word may be where somebody is from; "Danny at Fernhollow" works there.
  const worksAt = found && /(?:\bat (?:the )?|@ ?)$/.test(text.slice(end, found.start));
  const sure =
    found &&
    (abroad === undefined || ENDS.test(text.slice(found.end, found.end + 6))) &&
    (lead === undefined
      ? ORG_WORDS.test(found.value) || found.value.includes('&') || !OCCASION.test(found.value.replace(/^.* of /, ''))
      : worksAt || found.value.includes(' '));
  if (from > 0 && !sure) return undefined;
  return {
    here,
    led: lead !== undefined && !lead.endsWith('for ') && (abroad === undefined || sure === true || tail.endsWith(' hier')),
    marked: lead === undefined && joint !== undefined,
    rest,
    ...(sure ? { organisation: found } : {}),
  };
}
