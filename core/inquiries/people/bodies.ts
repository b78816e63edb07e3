/**
 * For whom somebody is, in the few words beside a name: "Keel & Co crewing", "Procurement, Straitsward Lines", "Kammertonfilm".
 */
import { KIN_WORDS, mayBeOrganisation, namesArea, ORG_FOR_CERTAIN, ORG_WORDS, TITLE_WORDS, trimmed, type PersonFact } from './words.ts';
import { RANK } from './ranks.ts';

/** "People Team", "Corporate Affairs": a part of a house, its name only where no other stands. */
export const DEPARTMENT =
  /^(?:ressort|bereich|abteilung|service|pôle|direction|cellule|referat|sachgebiet|fachbereich|área|ufficio|servizio|dienst) \p{L}|(?:^|\s|-)(?:teams?|department|dept\.?|events?|comms|communications?|affairs|services|corp\.? comm|publicity|(?:media|music|youth|worship|creative|arts|tech|dance|children's) ministry|development|culture|community|people|office|desk|relations|operations|ops|marketing|administration|secretariat|sekretariat|segretariato|segreteria|secrétariat|secretariaat|activities|geschäftsstelle|education|liaison|partnerships|finance|procurement|chain|purchasing|accounts(?: payable)?|press|media|bookings?|engagement|programmes?|programming|membership|outreach|hospitality|learning|training|growth|(?<=(?:&|and) )dev|arts|info|information|sales|logistics|careers|fundraising|planning|governance|admissions|alumni|recruitment|acquisition|coordination|resourc(?:e|es|ing)|scheduling|staffing|crewing|presse|öffentlichkeit(?:sarbeit)?|kommunikation|verwaltung|vertrieb|einkauf|personal|veranstaltungen|leitung \p{L}+|committee)$/iu;
/** "School of Nursing", "Faculty of Law": a part of a house where another name stands beside it, and its own name where none does. */
export const PART_OF =
  /^(?:faculty|school|department|dept|division|institute|centre|center|section|chair|office|unit|board|lehrstuhl|fakultät|abteilung|département|facultad|departamento|faculteit|afdeling) (?:of|for|für|de|des|voor) /iu;
/** Nothing but words for parts of a house: "Fundraising & Events", "Nursing Education". */
export const WHOLLY_PART =
  /^(?:(?:student|staff|guest|experience|nursing|public|community|corporate|internal|external|customer|member|visitor|research(?:er)?|early|fundraising|events?|marketing|communications?|comms|logistics|education|learning|training|outreach|engagement|careers|development|facilities|operations|planning|people|culture|hr|press|media|pr|alumni|admissions|recruitment|procurement|purchasing|governance|hospitality|catering|bookings?|accounts|finance|programming|partnerships?|volunteering|campaigns?|digital|content|brand|sales|relations|affairs|services|info|information|crew(?:ing)?|labou?r|coordination|resourc(?:e|es|ing)|scheduling|staffing|talent|agency|growth|(?<=(?:&|and) )dev|activities|programs?|organi[sz]ing|social|committee|meetings?|technical|stage|sound|lighting|export|import|teams?|desk|department|dept\.?|office|publicity|corp\.? comms?|(?:media|music|youth|worship|creative|arts|tech|dance|children's) ministry)(?: (?:&|and|\+) |, | |$))+$/iu;
/** A part of a house in two words; a firm does not end so. */
export const OFFICE =
  /^(?:\S+ )?(?:engagement|relations|education|administration|procurement|department|secretariat|sekretariat|office|desk|membership|outreach|liaison)$/iu;
/** One word that says itself what it is: "Literaturhof", "Oranjecomité". */
const HOUSE = /[\p{L}-](?:verein|schule|haus|hof|komitee|comité|werk|stiftung|bund|verband|akademie|kantorei|theater|kirche|zentrum)$/iu;
export const isHouseWord = (word: string): boolean => HOUSE.test(word);
/** One who does something or a part of a house, in any language: "Brautmutter", "Bassist", "Referentin", "Scheduling". */
const DOES =
  /(?:er|[eo]ur|or|ist|ista|ent|ant|in|euse|rice|ière|ier|man|woman|person|frau|mann|ee|ian|[aei]r[ao]|i[ao]|mother|father|mum|dad|ing|tions?|jects|ences?|search|ment|care|ship|büro|amt|rat|leitung|bestuur|vorstand)$/iu;

/** "Kammertonfilm", "PebbleHack": one word beside a name that is long or has a capital within, and is nobody's trade. */
export const isSoleBody = (word: string): boolean =>
  HOUSE.test(word) ||
  /^\p{Lu}\p{Ll}+-(?:e|i|ul|al)-\p{Lu}\p{Ll}+$/u.test(word) ||
  (/^(?:\p{Lu}[\p{Ll}'-]{7,24}|\p{Lu}\p{Ll}{2,12}\p{Lu}[\p{L}]{1,12})$/u.test(word) &&
    !DOES.test(word) &&
    !TITLE_WORDS.test(word) &&
    !WHOLLY_PART.test(word));

/** "Brightwater Communications": a firm by its last word; "Corporate Communications" is a department. */
export const FIRM =
  /^(?!(?:leit(?:er|erin|ung)|responsable|chef|hoofd|corporate|internal|external|marketing|brand|digital|media|public|events?|community|member|sales|strategic|global|group|head|director)(?!\p{L}))\p{Lu}[\p{L}'&-]+(?: (?:& )?\p{Lu}[\p{L}'&-]+){0,2} (?:Communications|Marketing|Relations|Design|Consulting)$/iu;

/** Bodies whose names hold a word of an office. */
export const FIRM_IN_TITLE =
  /(?:^| )(?:group|agency|university|e\.v|a\/v)$|^(?:\S+ ){3,}office$|(?<!\s(?:of|for|de|du|di|del|in|to))\s(?:pictures|films?|productions?|studios?|broadcast|college|hospital|museum)$/i;

/** "Frau Direktor", "Mr Dube": a person. */
const FORMS = new RegExp(`^${RANK}`, 'u');
/** "sister of", "best man to": a person follows. */
export const KIN = new RegExp(
  String.raw`^(?:the )?(?:\p{L}+ )?(?:${KIN_WORDS}) (?:(?:of|to|for|von|vom|de|del|di|van) |d')(?:the |der |la )?\p{L}`,
  'iu',
);
/** "Jia Min's dad": kin of somebody; "Keel & Co's bookings" is of a house. */
const OF_SOMEBODY = new RegExp(
  String.raw`^\p{Lu}\p{Ll}+(?: \p{Lu}\p{Ll}+)?(?:'s|(?<=s)') (?:\p{Ll}+ )?(?:${KIN_WORDS}|teacher|coach)(?!\p{L})`,
  'iu',
);
/** "Zeb and Aisling" beside a name: more of those who sign. */
export const TWO_PEOPLE = /^\p{Lu}\p{Ll}+ (?:and|und|et|y|e|en|i) \p{Lu}\p{Ll}+$/u;
/** "St. Hedwig's", "Mt. Tabor Chapel": a church or a school by its saint or its hill. */
const SAINT = /^(?:St|Ste|Mt)\.? \p{Lu}[\p{L}-]+(?:'s|s')$|^(?:St|Ste|Mt)\.? (?:\p{Lu}[\p{L}'-]+ ){1,3}\p{Lu}[\p{L}-]+$/u;
/** What leads to a body after a name: "de Azahar Bodas", "on behalf of the Fiddlers". */
const LED =
  /^(?:(?:(?:(?:\p{Ll}[\p{L}'-]* ){0,4}(?:of|for|w\/|de|da|do|du|des|del|della|von|vom|van|bei|chez)|(?:[\p{L}'&-]+ ){0,5}(?:at|from|with)) )(?:(?:der|dem|la|las|los|le|les|het|de) )?)?(?:the )?/u;

/** "Nim (Pornnapha S.)": the same one in full. */
const INITIALLED = /^\p{Lu}\p{Ll}+ \p{Lu}\.?$/u;

/** The body among the pieces after a name: a title or a part of the house stands before it or not at all. */
export function bodyIn(rest: string, start: number, isTown: (name: string) => boolean): PersonFact | undefined {
  const found: PersonFact[] = [];
  let at = start;
  for (const piece of rest.split(/(\s*[,|/()]\s*|\s[-@]\s)/)) {
    const fact = trimmed(piece.replace(/(?<!St|Dr|Mt|(?<= )e)\.\s.*$|[.!?]+$/s, ''), at);
    at += piece.length;
    // "Priscilla (Prissy) Vandermark"
    if (
      rest
        .slice(0, fact.start - start)
        .trimEnd()
        .endsWith(')')
    )
      continue;
    if (KIN.test(fact.value) || OF_SOMEBODY.test(fact.value) || TWO_PEOPLE.test(fact.value)) continue;
    // "Keel & Co crewing"
    const words = fact.value
      .replace(LED, '')
      .replace(/(?<!^(?:St|Mt|Ste)\.? \S{3,24})(?:(?<=s)'|'s) \p{Ll}.*$/u, '')
      .replace(/ (?:in|near|here)(?: .*)?$/u, '')
      .replace(/(?<=\p{Lu}\S* (?:& )?\p{Lu}\S*) \p{Ll}+$/u, '');
    const from = fact.start + fact.value.indexOf(words);
    if (INITIALLED.test(words)) continue;
    if (words.length < 3 || /[@\d?!:]/.test(words) || !/^\p{Lu}/u.test(words) || isTown(words) || namesArea(words) || FORMS.test(words))
      continue;
    if (
      mayBeOrganisation(words) ||
      SAINT.test(words) ||
      (isSoleBody(words) && (from <= fact.start + 4 || TITLE_WORDS.test(fact.value.slice(0, from - fact.start)))) ||
      (ORG_WORDS.test(words) &&
        words.includes(' ') &&
        (!TITLE_WORDS.test(words) || ORG_FOR_CERTAIN.test(words)) &&
        !/\s\p{Ll}{5,}/u.test(words))
    )
      found.push({ value: words, start: from, end: from + words.length });
  }
  return (
    found.find(({ value }) => ORG_FOR_CERTAIN.test(value)) ??
    // "Early Careers, Wessex Rail Signalling": of names that nothing tells for certain the last is the house.
    found.findLast(({ value }) => !DEPARTMENT.test(value) && !PART_OF.test(value)) ??
    found.find(({ value }) => !WHOLLY_PART.test(value) && !OFFICE.test(value))
  );
}
