/**
 * For whom somebody asks, as the running text says it: "I look after events for the Veterinary Nurses", "the Fiddle Circle wonders whether", a form's label.
 */
import { DEPARTMENT, OFFICE, PART_OF, WHOLLY_PART } from './bodies.ts';
import {
  CAPITALISED,
  mayBeOrganisation,
  namesArea,
  ORG_FOR_CERTAIN,
  ORG_NAME,
  ORG_OF,
  ORG_WORDS,
  TITLE_WORDS,
  trimmed,
  type PersonFact,
} from './words.ts';
import { isOwnBody, isToldOf } from './own-body.ts';
import { FORM, RANK } from './ranks.ts';

/** "We are Kestrel Adventure Playground" */
const THREE = /^(?:[Tt]he )?\p{Lu}\p{Ll}[\p{L}'-]+(?: \p{Lu}\p{Ll}[\p{L}'-]+){2,4}$/u;
/** Two names and nothing that makes them a body's: "Ottoline Marsh", and not "Straitsward Lines". */
const PERSONAL = /^\p{Lu}\p{Ll}+ \p{Lu}\p{Ll}+(?<!s)$/u;
/** Two capitalised words and more on one line. */
const ORG = ORG_NAME.replaceAll(String.raw`\s`, ' ');
const LABEL_ORG =
  /^[^\S\n]*(?:\d{1,2}[.)]\s)?(?:your )?(?:company|group|club|society|association|choir|team|parish|council|agency|organi[sz]ation|client|organi[sz]er|company name|prod(?:uction)? co(?:mpany|\.)?|business|issued by|authority|buyer|purchaser|requested by|hirer|host|municipality|institution|firma|firm|org|entreprise|société|organisme|empresa|azienda|ditta|bedrijf|organisatie|verein|school|charity)(?:[^\S\n]?[/&][^\S\n]?\p{L}{3,14})?(?:[^\S\n]?\([^()\n:]{2,30}\))?[^\S\n]?:[^\S\n]*([^\n]{2,90})$/gimu;
const BEHALF = new RegExp(
  String.raw`\b(?:[Oo]n behalf of|I work (?:for|at|with)|I represent|I run|I manage|[Ww]e are|[Ww]e're|I do events (?:for|at)|I'm with|I am with|I(?:'m| am) (?:the |an? )?[\p{L} ]{3,40}? (?:for|at|with))\s(${ORG_NAME})`,
  'gu',
);
/** What the writer does and for whom: "I chair the spring clinic of the", "reaching out from", "We at the", "secretary at". */
const DOES_FOR = new RegExp(
  String.raw`(?<!\p{L})(?:(?:(?:[Ii]|[Ww]e|[Ss]he|[Hh]e)(?:'m|'re| am| are)? (?:also )?(?:look(?:ing)? after|coordinat(?:e|ing)|run(?:ning)?|manag(?:e|ing)|chair(?:ing)?|produc(?:e|ing)|work(?:ing)?|organi[sz](?:e|ing)|do(?:ing)?|handl(?:e|ing)|writ(?:e|ing)|contact(?:ing)?|messag(?:e|ing)|reaching out|calling|emailing|getting in touch|plan(?:ning)?|book(?:ing)?|teach(?:ing)?|volunteer(?:ing)?|with|help(?:ing)?|represent(?:ing)?|act(?:ing)?)(?: [\p{Ll}\p{N}'-]{1,16}){0,5}|(?:secretary|treasurer|chair|manager|director|coordinator|producer|planner|organi[sz]er|president|teacher|officer|assistant|bursar|chairman|chairwoman|convenor|committee|clerk|registrar|principal|librarian|sekretariat|secretariaat)) (?:of|van het|van de|du|des|der|for|at|from|with|to)|[Ii](?:'m| am) (?:the |an? )?(?:\p{Lu}[\p{L}'-]{1,16} |(?:of|to|the|and) ){1,8}(?:of|for|at|to)|(?:[Ii]'m|[Ii] am|[Ww]e're|[Ww]e are) (?:with|from|at|of)|(?:[Mm]y|[Oo]ur) (?:(?:[\p{Ll}-]{3,14} )?(?:society|club|choir|school|charity|group|company|firm|band|team|association|organi[sz]ation|church|agency|ngo|NGO|league|troupe|foundation)|[Nn]otre (?:club|association|chorale|école|troupe)|[Uu]nser (?:Verein|Chor)|(?:for|at|of) an? (?:[\p{Ll}-]{3,16} ){0,2}(?:charity|agency|company|society|club|school|firm|trust)),|[Oo]ffice (?:of|at)|(?:[Gg]reetings|[Hh]ello|[Hh]i|[Gg]ood (?:morning|afternoon|evening|day)) from|[Ww]e,|[Ww]e at|[Ss]ent by [\p{Ll} ]{2,30} at|[Tt]eam at|de parte de(?: la| el| los)?|(?:[Pp]ressestelle|[Vv]orstand|[Bb]üro|[Tt]eam) (?:der|des|vom|von)) ((?:[Tt]he )?${ORG})(?=[,.;:!?\n]|\s(?:in|and|is|are|has|have|who|which|to|on|we)\s|\s?\(|$)`,
  'gu',
);
/** A body that wants, holds or plans something: "the Fiddle Circle wonders whether". */
const ACTS = new RegExp(
  String.raw`(?:^|[,.!?\n-]\s{0,3}|\b(?:confirm|say|write|that)\s(?=the\s))(?:[Tt]he |[Dd]ie |[Dd]er |[Dd]as |[Oo]ur )?((?:St\.? )?${ORG})(?: \([^()\n]{2,40}\))? (?:wonders?|requires?|needs?|seeks?|invites?|is (?:hosting|putting|holding|organi[sz]ing|looking|planning|seeking|running|staging|inviting|after)|are (?:hosting|putting|holding|organi[sz]ing|looking|planning|seeking|running|staging|after)|would like|'d like|has asked|have asked|wants?|wishes|plans? to|has its|have their|has (?:a|an) (?:gap|vacancy|opening)|will (?:hold|host|celebrate|play|perform|sing|meet|gather|mark|open)|are (?:doing(?! (?:the|our|all the|your) (?:\p{L}+ )?(?:live ?streams?|streaming|photos?|photography|stills|lights?|lighting|sound|audio|catering|food|drinks?|bar|music|flowers|decor|security|parking|stewarding|pa|stage|staging|rigging|screens|cakes?)(?!\p{L}))|gathering|meeting|performing|having|playing)|meets|gathers|performs|(?:is|are) (?:presenting|throwing|hiring|making|having|singing|celebrating|opening|launching)|holds?|marks|celebrates|invites|hereby|returns|feiert|sucht|plant|lädt|organise|cherche|recherche|organiza|busca|here)(?!\p{L})`,
  'gmu',
);
const CERTAIN = new RegExp(
  String.raw`(?:\b(?:for|from|at|with|of|by|our)\s|^|(?<!\b(?:St|Mt|Dr|Mr|Ms|Mrs))[.!?\n]\s?)([Tt]he\s)?((?:St\.? |Mt\.? )?\p{Lu}[\p{L}'&-]{1,30}(?: (?:(?:of|and|&|for|the) ){0,2}\p{Lu}[\p{L}'&-]{1,30}){1,5})`,
  'gmu',
);
const HOUSE = new RegExp(String.raw`^(?:,| here| team)?(?: at| of|,)? (?:the )?(${CAPITALISED})(?=[,.;:!?\n)]|\s\p{Ll}|$)`, 'u');
/** The house whose part is named before it: "the Faculty of Veterinary Nursing, Kelso Cross College". */
export function houseOf(body: string, part: PersonFact, isTown: (name: string) => boolean): PersonFact {
  if (![DEPARTMENT, PART_OF, WHOLLY_PART].some((pattern) => pattern.test(part.value)) || ORG_FOR_CERTAIN.test(part.value)) return part;
  const found = HOUSE.exec(body.slice(part.end, part.end + 90));
  const value = found?.[1] ?? '';
  if (!found || !mayBeOrganisation(value) || isTown(value) || NO_ORG.test(value)) return part;
  const start = part.end + found[0].lastIndexOf(value);
  return { value, start, end: start + value.length };
}

/** A day, a place in the house, a greeting or a trade with capitals is no body of people. */
export const NO_ORG =
  /(?<!\p{L})(?:Monday|Tuesday|Wednesday|Thursday|Friday|Saturday|Sunday|January|February|March|April|June|July|August|September|October|November|December|Hi|Hello|Dear|Hey|Good|Thanks|Kind|Regards|Desk|Confidential|I|All|Who|What|When|Where|Christmas|Easter|New Year|Grade|Day|Week|Weekend|(?:Year|Grade|Class|Form|Room) (?:\p{Lu}\p{Ll}+|\d+))(?!\p{L})/u;

/** "It's the", "Rector of the", "Rabbi Lena Sorkin of" before a name. */
const BEFORE = new RegExp(
  String.raw`^(?:(?:[Ii]t|[Tt]hat|[Tt]his|[Hh]ere)(?:'s| is)\s)?(?:[Tt]he\s)?(?:(?:(?:Rector|Court|Senate|Dean|Head|Principal|Provost|Trustees|Governors)|${RANK}+\p{Lu}[\p{L}'-]+(?: \p{Lu}[\p{L}'-]+){0,2}) (?:of|at|from)\s(?:the\s)?(?=\p{Lu}))?`,
  'u',
);

/** The name without its article, its full stop and a sentence that begins after it. */
export function organisation(written: string, at: number): PersonFact | undefined {
  const before = BEFORE.exec(written)?.[0] ?? '';
  let plain = written
    .slice(before.length)
    .replace(/(?<!\b(?:St|Dr|Mt))\.\s(?!(?:Ltd|Inc|Limited)(?!\p{L})).*$/su, '')
    .replace(/\s(?:and|&) I\b.*$/, '')
    .replace(/(?<=\p{L}{2})\s(?:I|We|It|You|They)(?:'\p{L}{1,2})?(?:\s.*)?$/su, '')
    .replace(/[.,']+$/, '')
    .replace(/(?<=\sof\s.*)'s$/, '');
  const lead = before.length;
  // "the Bog Snorkel Federation's European", "the Quilters' Guild's": what follows is its event.
  const owner = /^.{2,60}?(?='s(?:\s|$))/u.exec(plain)?.[0];
  if (owner && ORG_WORDS.test(owner.split(' ').at(-1) ?? '')) plain = owner;
  return plain.length < 2 ? undefined : { value: plain, start: at + lead, end: at + lead + plain.length };
}

const isTitled = (name: string): boolean => !ORG_WORDS.test(name) && FORM.test(name);
/** "on behalf of Judge Ottoline Marsh": whoever it is, no body. */
export const isPerson = (name: string, after: string): boolean =>
  isTitled(name) || (!ORG_WORDS.test(name) && (PERSONAL.test(name) || /^,? who(?!\p{L})/u.test(after)));

/** What is written where there is none. */
const NONE = /^(?:yes|no|none|not applicable|n\/?a|same(?: as.*)?|as above|private|self|tb[acd])\s*$/i;
/** The body that a line of a form names: "Organisation: Finch Tools". */
export function labelledBody(body: string): PersonFact | undefined {
  for (const found of body.matchAll(LABEL_ORG)) {
    const written = found[1] ?? '';
    if (/^\p{Lu}/u.test(written) && (!NO_ORG.test(written) || ORG_WORDS.test(written)) && !NONE.test(written))
      return trimmed(written.replace(/\s?\(.*$|,.*$/, ''), found.index + found[0].length - written.length);
  }
  return undefined;
}

/** The organisation that a label, a clause of what its writer does or its own name states. */
export function organisationSaid(body: string, isTown: (name: string) => boolean): PersonFact | undefined {
  const labelled = labelledBody(body);
  if (labelled) return labelled;
  for (const found of body.matchAll(BEHALF)) {
    const written = found[1] ?? '';
    if (isPerson(written, body.slice(found.index + found[0].length))) continue;
    const long = /\b[Ww]e(?: are|'re)\b/.test(found[0]) && THREE.test(written);
    if (!long && !ORG_WORDS.test(written) && !/behalf|represent|\bI(?:'m| am) (?:the|an?)\b/.test(found[0])) continue;
    return organisation(written, found.index + found[0].length - written.length);
  }
  for (const pattern of [DOES_FOR, ACTS])
    for (const found of body.slice(0, LONGEST_SAID).matchAll(pattern)) {
      const fact = organisation(found[1] ?? '', found.index + found[0].indexOf(found[1] ?? ''));
      if (!fact || !fact.value.includes(' ') || NO_ORG.test(fact.value) || isTown(fact.value) || namesArea(fact.value)) continue;
      if (OFFICE.test(fact.value)) continue;
      if (BESIDE_US.test(found[0]) || isToldOf(body, found.index)) continue;
      if (/behalf/i.test(found[0]) ? isPerson(fact.value, body.slice(found.index + found[0].length)) : isTitled(fact.value)) continue;
      // "Anneliese & Rob here"
      if (found[0].endsWith(' here') && TWO.test(fact.value)) continue;
      if (TITLE_WORDS.test(fact.value) && !ORG_WORDS.test(fact.value)) continue;
      // Two names are a person's unless something makes them a body's.
      if (!ORG_WORDS.test(fact.value) && !BODY.test(found[0])) continue;
      return fact;
    }
  for (const found of body.matchAll(CERTAIN)) {
    const written = found[2] ?? '';
    if (!ORG_FOR_CERTAIN.test(written) && !ORG_OF.test(written)) continue;
    const begins = BEGINS.exec(written)?.[0].length ?? 0;
    const name = written.slice(begins);
    const at = found.index + found[0].length - name.length;
    // "The Society", "In September the Council": which one it is, is told elsewhere.
    if (!name.includes(' ') || TOLD_BY.test(body.slice(Math.max(0, at - 70), at))) continue;
    if (!isOwnBody(body, at, at + name.length)) continue;
    return organisation(name, at);
  }
  return undefined;
}
/** "We are doing it together with": the other one. */
const BESIDE_US = /(?<!\p{L})(?:together|partner\p{L}*|jointly|along|sharing|competing) with (?:the )?\p{Lu}/u;
/** Words that begin a sentence and stand before a name: "Every February the", "It's for the". */
export const BEGINS =
  /^(?:(?:The|In|Every|Each|For|As|At|On|By|With|From|Our|This|When|While|Since|Last|Next|Unsere?|Gala|It's|That's)\s(?:\p{Lu}\p{Ll}+\s(?=the\s))?(?:for\s)?(?:the\s)?)/u;
/** Two that are named in one breath. */
export const TWO = /^\p{Lu}\p{Ll}+ (?:e|y|et|und|and|&|en|i) \p{Lu}\p{Ll}+$/u;
/** "Got your name from the", "recommended by": who told of me is not who asks. */
const TOLD_BY =
  /(?<!\p{L})(?:your (?:name|number|details|contact|card|email)|recommended|referred|passed on|heard (?:of|about) you|(?:found|met|saw) you|put (?:me|us) (?:on|in touch)|(?:your|the) (?:film|video|work))(?: \p{L}+){0,5} (?:from|by|through|via|at|of|for|with) (?:\p{L}+ (?:at|from|of) )?(?:[Tt]he )?$/u;
/** An article, a joining word, three capitals or "at" and "from" before it. */
const BODY =
  /(?<!\p{L})(?:[Tt]he|[Dd]ie|[Dd]er|[Dd]as|[Oo]ur|at|from|[Ww]e,)\s(?:\p{Lu}|the)|(?:\s(?:of|and|&)\s\p{Lu})|\p{Lu}[\p{L}'-]+ \p{Lu}[\p{L}'-]+ \p{Lu}\p{L}+/u;
/** Who asks is said at the beginning or not in such words. */
const LONGEST_SAID = 2000;
