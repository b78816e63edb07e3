/**
 * The lines of a signature: name, title, organisation, mail, phone.
 */
import { DEPARTMENT, FIRM, FIRM_IN_TITLE, isSoleBody, KIN, OFFICE, PART_OF, TWO_PEOPLE, WHOLLY_PART } from './bodies.ts';
import { farewellAt, onlyBids } from './farewells.ts';
import { bestPhone, isHouseOf, partnersIn, withExtension } from './houses.ts';
import { withForm, withoutForms } from './legal-forms.ts';
import { withoutOffice } from './offices.ts';
import { emailIn, phonesIn, withoutEmails, withoutReach } from './reach.ts';
import { FORM, IN_BRACKETS } from './ranks.ts';
import { foldName } from '../../places/fold.ts';
import { KIND } from './spoken-for.ts';
import {
  mayBeOrganisation,
  NAME,
  nameFrom,
  NUMBERED_BODY,
  ORG_FOR_CERTAIN,
  ORG_OF,
  ORG_WORDS,
  TITLE_WORDS,
  type PersonFact,
} from './words.ts';

export type People = { name?: PersonFact; email?: PersonFact; phone?: PersonFact; organisation?: PersonFact };

const NAME_LINE = new RegExp(
  `^(?:\\\\m/|[-–—~*\\s\\p{Extended_Pictographic}\\ufe0f]){0,5}(${NAME})(?=\\s*(?:$|[,|(/·]|(?:jun|sen|jr|sr|Jr|Sr)\\.?\\s*$|\\s[-&+]\\s(?!Cie|Co(?![\\p{L}])|Sons|Söhne|Fils|Partner)|\\s@\\s|\\s(?:from|at|for|on behalf of|für|voor|pour|namens)\\s|\\s\\(?\\+?\\d|[.!)]?$|\\sx{1,3}$))`,
  'u',
);
const FAREWELL =
  /^\s*(?:(?:[mM]any |[wW]ith |[kK]ind |[bB]est |[wW]arm |[wW]armest |[sS]o |[aA] big )*(?:[tT]hanks|[tT]hank you|[tT]hankyou|[rR]egards|[wW]ishes|[gG]ratitude|[tT]hx|[tT]x|[tT]a)(?: (?:so much|a lot|a bunch|again|very much|in advance|and [\w ]{0,20}regards|& [rR]egards))?|[gG]roet(?:en|jes)?|[hH]erzlich(?:st)?|(?:[kK]ind |[wW]arm |[nN]ice )?[gG]reetings|[fF]aithfully|[\p{L}]{3,14}ly(?=,)|[pP]eace|[aA]tentamente|[aA]mitiés|[aA]micalement|(?:\p{L}+ )?[gG]r(?:uss|uß|üße|üsse)|[sS]ervus|[hH]älsningar|[hH]ilsen|[tT]erveisin|[bB]ises|[bB]isous|(?:[uU]n )?[aA]brazos?|[bB]eijos|[sS]lán|[hH]wyl|[mM]ahalo|[nN]amaste|[bB]aci|[sS]aluti|[cC]ordialmente|[cC]heers|(?:[wW]ith |[mM]any |[mM]y )?[aA]pologies|[hH]ugs|[bB]lessings|[bB]ye(?: for now)?|[cC]iao|[uU]ntil then|[sS]ee you(?: soon)?|[oO]nwards|[wW]armest|[bB]est|[aA]ll (?:the|my) best|[sS]incerely|[yY]ours(?: \w+)?|[wW]armly|[tT]alk soon|[sS]peak soon|[cC]ordially|[rR]espectfully|[gG]ratefully|[tT]ake care|[lL]ater|[bB][rR]|[kK][rR]|[rR]gds|[xX][xXoO]?|[\p{L} ]{0,20}(?:[gG]rüßen?|[gG]rüsse|[gG]rüße)|MfG|LG|VG|[cC]ordialement|[bB]ien à vous|[mM]erci|[sS]aludos(?: cordiales)?|[uU]n saludo|[gG]racias|[cC]ordiali saluti|[gG]razie|[mM]et vriendelijke groet|[gG]roeten|[aA]tenciosamente|[oO]brigad[oa]|[aA]braços|[mM]vh)\s?[,.!:-]*\s*/u;
/** "Contact: ", "Jobs contact.....", "Questions to " before a name. */
const LABEL =
  /^\s*(?:(?:(?:the|le|la|das|die|de|het) )?(?:secretary|secretariat|secrétariat|secrétaire|sekretariat|secretariaat)[,:]\s(?=\p{Lu})|(?:p\.?\s?p\.?|i\.\s?[AV]\.)\s(?=\p{Lu})|(?:(?:\p{L}{2,12} )?contact(?: \p{L}{3,10})?|name|from|producer|booker|caller|organi[sz]er|coordinator|ask for|who|reply to|responses? to|enquiries|inquiries|queries|questions|rückfragen|kontakt|contacto|contatto|ansprechpartner(?:in)?)\s?(?::|=|\?|\.{2,}|\t)\s*|(?:questions|queries|enquiries|inquiries|quotes|answers|replies|reply|rsvp|respond|apply) to |(?:contact|call|ring|text|email) )/iu;
/** A farewell of any words and a name on one line: "Solidarity, Desmond". */
const ANY_FAREWELL = new RegExp(
  `^\\s*(?:Solidarity|\\p{L}[\\p{Ll}']{1,15}(?: [\\p{Ll}'-]{1,15}){1,4}|\\p{Lu}\\p{Ll}{2,13}(?:ly|ty|ment|ings?)(?=,\\s\\p{Lu}[\\p{L}'-]+\\s\\p{L})),\\s(?=${NAME}[.!]?\\s*$)`,
  'u',
);
const LINK = /www\.|https?:/i;
const REACH_LINE = /^\s*(?:tel|phone|mob|cell|m|t|p|e|w|o|c)\b[\s.:]|^\P{L}*\d{3}\P{L}*$/iu;
/** "Ruben @ Foxglove Crewing 213-555-0136" */
const ENDING_PHONE = /(?<=\p{L}),? \(?\+?\d[\d\s().-]{6,18}$/u;
/** A longer foot is no signature. */
const MOST_LINES = 14;

/** Whether a mail box or a name begins as a name does: "cat@" and "Catriona Nicolson". */
const isOf = (where: string, name: string): boolean =>
  foldName(name)
    .split(/[^a-z]+/)
    .some((word) => word.length > 2 && foldName(where).includes(word.slice(0, 3)));

/** "Heartily", "Musically" */
const LY = /^\s*(?!(?:Beverly|Kimberly|Waverly|Connolly|Connelly|Donnelly|Kennelly))\p{Lu}\p{Ll}{4,12}ly\s*[,.!]?\s*$/u;
/** "Sincèrement," "Kh": a farewell in any language, told by the name of somebody below it. */
const leaves = (text: string, below: string | undefined, mail: string): boolean =>
  below !== undefined &&
  /^\s*\P{N}{1,40}$/u.test(text) &&
  !/[@|:]/.test(text) &&
  /^\s*\p{Lu}[\p{L}'-]+\s+\p{L}/u.test(below) &&
  NAME_LINE.test(below) &&
  !ORG_WORDS.test(below) &&
  ((LY.test(text) && !below.trim().startsWith(text.trim())) ||
    (isOf(mail, below) && !text.trim().includes(' ') && !isOf(mail, text) && !isOf(below, text)) ||
    /^\s*(?:\p{L}{1,3}[,.!]|[^aeiouyäöüáéíóúà\P{L}]{1,3}|[\p{L}'-]+[,!]|[\p{L}'-]+(?:\s\p{Ll}[\p{L}'-]*)+[,.!]?)\s*$/u.test(text));

const afterComma = (text: string): string => text.slice(text.indexOf(',') + 1).trim();

type Line = { text: string; start: number };

function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  let start = 0;
  for (const line of text.split('\n')) {
    if (/[\p{L}\p{N}]/u.test(line) && line.length <= 200) lines.push({ text: line, start });
    start += line.length + 1;
  }
  return lines.slice(0, MOST_LINES);
}

/** The longer words, as a domain may hold them. */
const wordsOf = (words: string): string[] =>
  foldName(words)
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 4);

/** "pour la Jeunesse" */
const ON_BEHALF =
  /^(?:pour|für|voor|por|per|pel|namens|im Auftrag) (?:(?:la|les?|die|den|das|der|de[rs]?|het|el|los|las|il|lo|gli) |l')?(?=\p{Lu})/u;
/** "basisschool De Linde" is called so. */
const SMALL_KIND = new RegExp(String.raw`^${KIND} (?:(?:de|la|le|les|het|el|los) )?\p{Lu}`, 'u');
const BEGINS = new RegExp(String.raw`^\p{Lu}|^the |${SMALL_KIND.source}`, 'u');
/** "au capital de 2 450 000 €" */
const CAPITAL_STOCK = /,?\s+au capital .*$/u;
/** The name of a house is not longer than so many words. */
const MOST_HOUSED = 6;
/** "For ", "D. MacAskill for ", "Rector of " before a body's name. */
const FOR =
  /^(?:For(?: and on behalf of)?|\p{Lu}[\p{L}. ]{1,30} (?:for|from)|(?:Rector|Court|Office|Dean|Head) of|Geschäftsstelle|Sekretariat|Secretariaat|Redaktion|Redactie|Büro|Vorstand|Bestuur|Pressestelle|Orgateam)(?: the)? (?=\p{Lu})/u;
/** "Planning Polderstream" of polderstream.example: the part of the house before its name. */
const PART_BEFORE = /^(?:planning|bookings?|events?|crewing|team|production|accounts|press|office) (?=\p{Lu}\S{5,}$)/iu;

/** "L.P." and below it "Lorraine Petrovic" */
const spells = (initials: string, line: string): boolean =>
  /^(?:\p{Lu}\.?){2,3}$/u.test(initials) &&
  (NAME_LINE.exec(line)?.[1] ?? '')
    .split(' ')
    .map((word) => word.charAt(0))
    .join('') === initials.replaceAll('.', '');

/** "Macca" and below it "(Lachlan Purcell, Rusty Hinge Pictures)" */
function isCalledInFull(name: string, line: string, isTown: (name: string) => boolean): boolean {
  const of = /^\s*\(\p{Lu}[\p{L}'-]+(?: \p{Ll}{1,3}){0,2} \p{Lu}[\p{L}'-]+, ([^()]{3,60})\)/u.exec(line)?.[1];
  return of !== undefined && !name.includes(' ') && !isTown(of) && (mayBeOrganisation(of) || TITLE_WORDS.test(of));
}

/** "Referat Öffentlichkeitsarbeit", "Departamento de Eventos": the house stands below. */
const isPart = (text: string): boolean => [DEPARTMENT, PART_OF, WHOLLY_PART].some((pattern) => pattern.test(text.trim()));

/** "Ruderclub Blaudorn 1893" */
const FOUNDED = /(?<=\p{L}) (?:1[5-9]|20)\d\d$/u;
/** "The trophies were donated by Hallam Jewellers Ltd." */
const SENTENCE = /\s(?:is|are|was|were|goes|go|has|have|will)\s/;
type Found = { fact: PersonFact; known: boolean };

/** What can be an organisation in a line such as "Events Manager, Northgate Bakers' Guild | Leeds". */
function organisationsIn(line: string, start: number, isTown: (name: string) => boolean, domain: string): Found[] {
  const partners = partnersIn(line, start);
  if (partners) return [{ fact: partners, known: true }];
  const found: Found[] = [];
  let at = 0;
  // "Paws at Peace" of pawsatpeace.example
  const named = /\p{Lu}[\p{L}'-]+ at \p{Lu}[\p{L}'-]+/u.exec(line);
  if (named && domain.includes(foldName(named[0]).replace(/[^\p{L}]/gu, ''))) {
    const from = start + named.index;
    return [{ fact: { value: named[0], start: from, end: from + named[0].length }, known: true }];
  }
  for (const piece of withoutForms(line).split(/(\s*(?:[|,·]|(?<!\bA)\/)\s*|\s[-–—@]\s|\bat\b|\s\()/u)) {
    const from = at;
    at += piece.length;
    const written = piece
      .trim()
      .replace(/^[(\s-]+|[)\s.]+$/g, '')
      .replace(ON_BEHALF, '')
      .replace(CAPITAL_STOCK, '')
      .trimEnd();
    const head = FOR.exec(written)?.[0] ?? '';
    const whole =
      !ORG_WORDS.test(head) &&
      // "Head of Events"
      !WHOLLY_PART.test(written.slice(head.length)) &&
      (ORG_WORDS.test(written) || /behalf/.test(head) || /^\p{L}{5,}$/u.test(head.trim()))
        ? written.slice(head.length)
        : written;
    const part = PART_BEFORE.exec(whole)?.[0] ?? '';
    const housed = domain.startsWith(foldName(whole.slice(part.length))) ? whole.slice(part.length) : whole;
    const last = from + piece.indexOf(housed) + housed.length;
    const formed = withForm(line, { value: '', start: last, end: last }).value !== '';
    const words = withoutOffice(housed, formed);
    if (
      (/^\p{L}+ (?:of|to|for) the \p{L}+$/u.test(words) && TITLE_WORDS.test(words)) ||
      KIN.test(words) ||
      SENTENCE.test(words) ||
      (TWO_PEOPLE.test(words) &&
        !ORG_WORDS.test(words) &&
        !/director|president|secretary|chair|manager|coordinator/i.test(line.slice(0, from)))
    )
      continue;
    if (
      words.length < 2 ||
      words.length > 60 ||
      /[@\d?!:]/.test(words.replace(NUMBERED_BODY, '').replace(FOUNDED, '')) ||
      !(formed ? /^\p{L}/u : BEGINS).test(words) ||
      isTown(words)
    )
      continue;
    const known =
      SMALL_KIND.test(words) || ((ORG_WORDS.test(words) || ORG_OF.test(words)) && words.includes(' ') && !/\s\p{Ll}{4,}$/u.test(words));
    // "Chess federation Raven Square" of ravensquare.example
    const housedThere =
      words.includes(' ') && words.split(' ').length <= MOST_HOUSED && wordsOf(words).some((word) => domain.includes(word));
    const single =
      housedThere ||
      (!words.includes(' ') &&
        ((isSoleBody(words) && !/\)\s*$/.test(line.slice(0, from))) || wordsOf(words).some((word) => domain.includes(word))));
    const firm = FIRM_IN_TITLE.test(words) || FIRM.test(words);
    const lead = piece.lastIndexOf(words);
    const fact = withForm(line, { value: words, start: from + lead, end: from + lead + words.length });
    if (!known && !single && !firm && !formed && !mayBeOrganisation(words.replace(NUMBERED_BODY, ''))) continue;
    if (TITLE_WORDS.test(words) && !ORG_FOR_CERTAIN.test(words) && !firm && !formed) continue;
    found.push({ fact: { ...fact, start: start + fact.start, end: start + fact.end }, known: known || formed });
  }
  // "Early Careers, Wessex Rail Signalling": of names that nothing tells for certain the last is the house.
  const unsure = found.every(({ known, fact }) => !known && fact.value.includes(' ') && !fact.value.includes('&'));
  const houses = found.filter(({ fact }) => !DEPARTMENT.test(fact.value));
  return unsure ? (houses.length > 0 ? houses : found).slice(-1) : found;
}

/**
 * What a signature says; all but it is blanked in the text.
 * @param isTown true for a name that is a town's
 */
export function fromSignature(signature: string, isTown: (name: string) => boolean): People {
  const people: People = {};
  const found: Found[] = [];
  let named = -1;
  /** How many lines below the name say what somebody is, and not where. */
  let titled = 0;
  /** How many say how to reach somebody. */
  let reaching = 0;
  /** Whether an office stands where a name is expected. */
  let headed = false;
  const [mail = '', host = ''] = (emailIn(signature)?.value ?? '').split('@');
  const domain = foldName(host);
  const lines = linesOf(signature);
  for (const [index, line] of lines.entries()) {
    if (people.name === undefined && line.text.split(' / ', 3).some((half) => half.trim() === FAREWELL.exec(half)?.[0].trim())) continue;
    if (people.name === undefined && onlyBids(line.text)) continue;
    if (people.name === undefined && leaves(line.text, lines[index + 1]?.text.replace(FORM, ''), mail)) continue;
    const farewell = people.name === undefined ? FAREWELL.exec(line.text) : null;
    const labelled = LABEL.exec(line.text);
    const skip = labelled
      ? labelled[0].length
      : farewell && /^\s*(?:$|\p{Lu})/u.test(line.text.slice(farewell[0].length))
        ? farewell[0].length
        : people.name === undefined && farewellAt(line.text) > 0
          ? farewellAt(line.text)
          : people.name === undefined && !isTown(afterComma(line.text)) && !TITLE_WORDS.test(afterComma(line.text))
            ? (ANY_FAREWELL.exec(line.text)?.[0].length ?? 0)
            : 0;
    // "Don Valley Rowing Club" below a name: what a rank may be before a name is a word of a body's.
    const isBody = people.name !== undefined && ORG_WORDS.test(line.text) && !/,/.test(line.text);
    const rank = isBody ? 0 : ((FORM.exec(line.text.slice(skip)) ?? IN_BRACKETS.exec(line.text.slice(skip)))?.[0].length ?? 0);
    const text = line.text.slice(skip + rank);
    const start = line.start + skip + rank;
    if (text.trim() === '') continue;
    // "Catherine" and below it "Catherine Dunmore-Hale": the same with more of the name.
    const fuller =
      people.name &&
      index === named + 1 &&
      (text.trim().startsWith(`${people.name.value} `) ||
        spells(people.name.value, text) ||
        isCalledInFull(people.name.value, line.text, isTown)) &&
      !ORG_WORDS.test(text.split(/[|,(/@]/)[0] ?? '');
    let rest = 0;
    if (
      (!people.name || fuller) &&
      !/\S@\S/.test(text.split(/[,|(\d]/)[0] ?? '') &&
      !/^\s*\d/.test(text) &&
      !WHOLLY_PART.test(text.trim())
    ) {
      const match = NAME_LINE.exec(text);
      const name = match?.[1] ? nameFrom(match[1], start + (match[0].length - match[1].length)) : undefined;
      // "Under Secretary (Programmes)" and below it a house: no name stands between.
      const house = headed && rank === 0 && name !== undefined && name.value.split(' ').length > 2;
      if (match && name && !house && !partnersIn(text, start) && !isHouseOf(name.value, mail, host) && !TITLE_WORDS.test(name.value)) {
        people.name = name;
        rest =
          match[0].length + (/^\s(?:from|at|for|on behalf of|für|voor|pour|namens)\s/.exec(text.slice(match[0].length))?.[0].length ?? 0);
        named = index;
      }
    }
    headed ||= people.name === undefined && farewell === null && TITLE_WORDS.test(text) && !text.includes(',');
    const said = rest > 0 ? text : withoutReach(text);
    if (said === text && (LINK.test(text) || (rest === 0 && (REACH_LINE.test(text) || withoutEmails(text) !== text)))) {
      if (named >= 0) reaching++;
      continue;
    }
    const near = named >= 0 && index - named <= 1 + Math.min(titled, 2);
    // Below a number may as well stand where somebody lives.
    const below = named >= 0 && index - named - reaching <= 1 + Math.min(titled, 2);
    found.push(
      ...organisationsIn(rest > 0 ? text.slice(rest).replace(ENDING_PHONE, '') : said, start + rest, isTown, domain).filter(
        ({ known, fact }) =>
          known || near || (below && (fact.value.split(' ').length > 2 || wordsOf(fact.value).some((word) => domain.includes(word)))),
      ),
    );
    if (named >= 0 && index > named && (TITLE_WORDS.test(text) || /^\s*\S+\s*$/.test(text) || isPart(text))) titled++;
  }
  const houses = found.filter(
    ({ fact }) => !DEPARTMENT.test(fact.value) && !PART_OF.test(fact.value) && !fact.value.startsWith(`${people.name?.value} `),
  );
  const best =
    houses.find(({ known }) => known) ??
    houses.find(({ fact }) => fact.value.includes(' ')) ??
    houses[0] ??
    found.find(({ fact }) => PART_OF.test(fact.value)) ??
    // "Staff Engagement" alone is a part of some house, "Low Tide Press" a firm.
    found.find(
      ({ fact }) =>
        (!OFFICE.test(fact.value) && !WHOLLY_PART.test(fact.value) && fact.value.split(' ')[0] !== people.name?.value) ||
        wordsOf(fact.value).some((word) => domain.includes(word)),
    );
  if (best) people.organisation = best.fact;
  const email = emailIn(signature);
  if (email) people.email = email;
  const phone = bestPhone(signature, phonesIn(signature, false));
  if (phone) people.phone = withExtension(signature, phone);
  return people;
}
