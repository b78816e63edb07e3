/**
 * The lines of a signature: name, title, organisation, mail, phone.
 */
import { emailIn, phonesIn, withoutEmails } from './reach.ts';
import { mayBeOrganisation, NAME, nameFrom, ORG_WORDS, TITLE_WORDS, type PersonFact } from './words.ts';

export type People = { name?: PersonFact; email?: PersonFact; phone?: PersonFact; organisation?: PersonFact };

const NAME_LINE = new RegExp(`^[-~\\s]{0,4}(${NAME})(?=\\s*(?:$|[,|(/]|\\s[-&+]\\s|\\s\\(?\\+?\\d{3}|[.!]?$|\\sx{1,3}$))`, 'u');
const FAREWELL =
  /^\s*(?:(?:[mM]any |[wW]ith |[kK]ind |[bB]est |[wW]arm |[wW]armest |[sS]o |[aA] big )*(?:[tT]hanks|[tT]hank you|[tT]hankyou|[rR]egards|[wW]ishes|[gG]ratitude|[tT]hx|[tT]a)(?: (?:so much|a lot|a bunch|again|very much|in advance|and [\w ]{0,20}regards|& [rR]egards))?|[gG]roet(?:en|jes)?|[hH]erzlich(?:st)?|(?:[kK]ind |[wW]arm |[nN]ice )?[gG]reetings|[fF]aithfully|[\p{L}]{3,14}ly(?=,)|[pP]eace|[aA]tentamente|[aA]mitiés|[aA]micalement|(?:\p{L}+ )?[gG]r(?:uss|uß|üße|üsse)|[sS]ervus|[hH]älsningar|[hH]ilsen|[tT]erveisin|[bB]ises|[bB]isous|(?:[uU]n )?[aA]brazos?|[bB]eijos|[sS]lán|[hH]wyl|[mM]ahalo|[nN]amaste|[bB]aci|[sS]aluti|[cC]ordialmente|[cC]heers|(?:[wW]ith |[mM]any |[mM]y )?[aA]pologies|[hH]ugs|[bB]lessings|[bB]ye(?: for now)?|[cC]iao|[uU]ntil then|[sS]ee you(?: soon)?|[oO]nwards|[wW]armest|[bB]est|[aA]ll (?:the|my) best|[sS]incerely|[yY]ours(?: \w+)?|[wW]armly|[tT]alk soon|[sS]peak soon|[cC]ordially|[rR]espectfully|[gG]ratefully|[tT]ake care|[lL]ater|[bB][rR]|[kK][rR]|[rR]gds|[xX][xXoO]?|[\p{L} ]{0,20}(?:[gG]rüßen?|[gG]rüsse|[gG]rüße)|MfG|LG|VG|[cC]ordialement|[bB]ien à vous|[mM]erci|[sS]aludos(?: cordiales)?|[uU]n saludo|[gG]racias|[cC]ordiali saluti|[gG]razie|[mM]et vriendelijke groet|[gG]roeten|[aA]tenciosamente|[oO]brigad[oa]|[aA]braços|[mM]vh)\s?[,.!:-]*\s*/u;
/** "Brightwater Communications": a firm by its last word; "Corporate Communications" is a department. */
const FIRM =
  /^(?!(?:corporate|internal|external|marketing|brand|digital|media|public|events?|community|member|sales|strategic|global|group|head|director)(?!\p{L}))\p{Lu}[\p{L}'&-]+(?: (?:& )?\p{Lu}[\p{L}'&-]+)? (?:Communications|Marketing|Relations|Design|Consulting)$/iu;

/** "Contact: ", "Jobs contact.....", "Questions to " before a name. */
const LABEL =
  /^\s*(?:(?:(?:\p{L}{2,12} )?contact(?: \p{L}{3,10})?|name|from|producer|booker|caller|organi[sz]er|coordinator|ask for|who|reply to|responses? to)\s?(?::|=|\?|\.{2,}|\t)\s*|(?:questions|quotes|answers|replies|reply|rsvp|respond|apply) to |(?:contact|call|ring|text|email) )/iu;
/** A farewell of any words and a name on one line: "Solidarity, Desmond". */
const ANY_FAREWELL = new RegExp(`^\\s*(?:Solidarity|\\p{L}[\\p{Ll}']{1,15}(?: [\\p{Ll}'-]{1,15}){1,4}),\\s(?=${NAME}[.!]?\\s*$)`, 'u');
const LINK_LINE = /^\s*(?:tel|phone|mob|cell|www|http|m|t|p|e|w|o|c)\b[\s.:]|www\.|https?:/i;
/** A longer foot is no signature. */
const MOST_LINES = 14;

type Line = { text: string; start: number };

function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  let start = 0;
  for (const line of text.split('\n')) {
    if (line.trim() !== '' && line.length <= 200) lines.push({ text: line, start });
    start += line.length + 1;
  }
  return lines.slice(0, MOST_LINES);
}

/** The organisation in a line such as "Events Manager, Northgate Bakers' Guild | Leeds"; `known` says what counts as one. */
function organisationIn(line: string, start: number, known: (words: string) => boolean): PersonFact | undefined {
  let at = 0;
  for (const piece of line.split(/(\s*[|,/]\s*|\s-\s|\bat\b)/)) {
    const from = at;
    at += piece.length;
    const words = piece.trim().replace(/^[(\s-]+|[)\s.]+$/g, '');
    if (
      words.length < 2 ||
      words.length > 60 ||
      /[@\d?!:]/.test(words) ||
      !/^\p{Lu}|^the /u.test(words) ||
      !words.includes(' ') ||
      /\s\p{Ll}{4,}$/u.test(words) ||
      !known(words)
    )
      continue;
    if (
      TITLE_WORDS.test(words) &&
      !/\b(?:ltd|llc|inc|gmbh|group|agency|association|society|foundation|university|alliance|guild|e\.v)\b/i.test(words) &&
      !FIRM.test(words)
    )
      continue;
    const lead = piece.indexOf(words);
    return { value: words, start: start + from + lead, end: start + from + lead + words.length };
  }
  return undefined;
}

/**
 * What a signature says; all but it is blanked in the text.
 * @param isTown true for a name that is a town's
 */
export function fromSignature(signature: string, isTown: (name: string) => boolean): People {
  const people: People = {};
  /** A phrase right beside or below the name that no word tells to be an organisation. */
  let likely: PersonFact | undefined;
  let named = -1;
  /** Whether a line below the name says what somebody is, and not where. */
  let titled = false;
  const likelyOne = (words: string): boolean => mayBeOrganisation(words) && !isTown(words);
  for (const [index, line] of linesOf(signature).entries()) {
    const farewell = people.name === undefined ? FAREWELL.exec(line.text) : null;
    const labelled = LABEL.exec(line.text);
    const skip = labelled
      ? labelled[0].length
      : farewell && /^\s*(?:$|\p{Lu})/u.test(line.text.slice(farewell[0].length))
        ? farewell[0].length
        : people.name === undefined
          ? (ANY_FAREWELL.exec(line.text)?.[0].length ?? 0)
          : 0;
    const text = line.text.slice(skip);
    const start = line.start + skip;
    if (text.trim() === '') continue;
    // "Catherine" and below it "Catherine Dunmore-Hale": the same with more of the name.
    const fuller = people.name && index === named + 1 && text.trim().startsWith(`${people.name.value} `) && !ORG_WORDS.test(text);
    let rest = 0;
    if ((!people.name || fuller) && !/@/.test(text.split(/[,|(\d]/)[0] ?? '') && !/^\s*\d/.test(text)) {
      const match = NAME_LINE.exec(text);
      const found = match?.[1] ? nameFrom(match[1], start + (match[0].length - match[1].length)) : undefined;
      if (match && found && !TITLE_WORDS.test(found.value)) {
        people.name = found;
        rest = match[0].length;
        named = index;
      }
    }
    if (people.organisation || LINK_LINE.test(text) || (rest === 0 && withoutEmails(text) !== text)) continue;
    const organisation = organisationIn(text.slice(rest), start + rest, (words) => ORG_WORDS.test(words));
    if (organisation) people.organisation = organisation;
    else if (named >= 0 && index - named <= (titled ? 2 : 1)) likely ??= organisationIn(text.slice(rest), start + rest, likelyOne);
    if (named >= 0 && index > named && TITLE_WORDS.test(text)) titled = true;
  }
  if (!people.organisation && likely) people.organisation = likely;
  const email = emailIn(signature);
  if (email) people.email = email;
  const phone = phonesIn(signature, false)[0];
  if (phone) people.phone = phone;
  return people;
}
