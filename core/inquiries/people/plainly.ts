/**
 * A body that is told so plainly that no weight of words speaks against it: it stands behind the name of who signs, on the line below, behind
 * words that say for whom somebody writes, or in the line of a form that asks for it.
 */
import { DEPARTMENT, isHouseWord, isSoleBody, OFFICE, WHOLLY_PART } from './bodies.ts';
import { isNotOfDomain } from './domain.ts';
import type { People } from './signature.ts';
import { labelledBody, NO_ORG } from './organisation.ts';
import { mayBeOrganisation, ORG_FOR_CERTAIN, ORG_OF, ORG_WORDS, TITLE_WORDS, type PersonFact } from './words.ts';

/** "Rosa Quill" and at once "Finch Tools": nothing but marks and what she does there stands between. */
const MOST_BETWEEN = 60;
const MARKED = /^\s*(?:[,|·(@/–—-]+|\n)\s*/u;
/** What somebody does, in a line of its own or between commas. */
const PIECE = /[^\n,|·(@/]+/gu;
/** It ends there: with its line, a mark or a number to ring. */
const ENDS = /^[^\S\n]*(?:$|[\n,|·)/!–—-]|\.(?:\s|$)|\(?\+?\d)/u;
/** Another line with capitals below it may as well be the house, and this one a part of it. */
const HOUSE_BELOW = /^[^\n]*\n[^\S\n]*(?:The )?\p{Lu}[\p{L}'&-]+(?: (?:(?:of|the|for|and|&) )*\p{Lu}[\p{L}'&-]+)+[^\S\n]*(?:[\n,|]|$)/u;

/** "on behalf of the", "I'm writing from the": a body follows. */
const LED =
  /(?<!\p{L})(?:on behalf of|(?:I|we|I'm|I am|we're|we are|je|ich|ik)(?: am| are)? (?:writing|calling|mailing|e-?mailing|contacting you|reaching out|getting in touch|write)(?: to you)? (?:from|for|at|on behalf of)|(?:I|we) (?:work|volunteer) (?:for|at|with)|(?:im Namen|im Auftrag) (?:der|des|von)|au nom d(?:e la|e l'|u|e)|(?:je )?travaille (?:pour|chez|(?:aux? \p{L}+ (?:de|du))(?: la)?)|namens(?: de| het)?|(?:in|de) nombre de)(?: (?:the|la|el|le|der|die|das|de|het))?(?: \p{Lu}\p{Ll}+)?(?: (?:choir|chorus|club|band|society|association|charity|ensemble|orchestra|foundation))?\s$/iu;
const LED_REACH = 80;
/** What a body does that asks: "will hold", "needs", "sucht". */
const ASKS =
  /^ (?:(?:will|shall) (?:hold|host|meet|celebrate|mark|gather|stage|perform|sing|play|present|award|confer|open)|needs?|seeks?|wants?|requires?|(?:would|'d) (?:like|love|be glad)|wishes|(?:is|are) (?:looking for|seeking|after|hosting|holding|planning|organi[sz]ing|doing|putting on|staging|inviting)|sucht|suchen|veranstaltet|cherche|recherche|organise|busca|organiza|zoekt)(?!\p{L})/u;

/** Whether the words can be a body's whole name where one is told. */
const isWhole = ({ value }: PersonFact, email: string | undefined): boolean =>
  !WHOLLY_PART.test(value) &&
  !OFFICE.test(value) &&
  !(DEPARTMENT.test(value) && isNotOfDomain(value, email)) &&
  !NO_ORG.test(value) &&
  (!TITLE_WORDS.test(value) || ORG_FOR_CERTAIN.test(value)) &&
  (value.includes(' ')
    ? mayBeOrganisation(value) || ORG_WORDS.test(value) || ORG_OF.test(value)
    : isSoleBody(value) && (/\p{Ll}\p{Lu}/u.test(value) || isHouseWord(value) || !isNotOfDomain(value, email)));

/** Whether it stands behind the name of who signs. */
function isSigned(text: string, name: PersonFact, { value, start, end }: PersonFact): boolean {
  const between = text.slice(name.end, start);
  if (start < name.end || between.length > MOST_BETWEEN || !MARKED.test(between)) return false;
  // "Slammantha (Sam Thorn)": her name at home.
  if (between.includes('(') && !ORG_WORDS.test(value) && /^\p{Lu}\p{Ll}+ \p{Lu}[\p{L}'-]+$/u.test(value)) return false;
  const pieces = between.replace(MARKED, '').match(PIECE) ?? [];
  const told = pieces.every((piece) => piece.trim() === '' || TITLE_WORDS.test(piece) || DEPARTMENT.test(piece.trim()));
  const after = text.slice(end);
  return told && ENDS.test(after) && !HOUSE_BELOW.test(after);
}

/** "The Harbour Singers need", as the first words of a sentence or of the message. */
const BEGINS = /(?:^|[.!?:,]\s+|\n\s*)(?:[Tt]he |[Dd]er |[Dd]ie |[Dd]as |[Ll]a |[Ll]e |[Ll]'|[Ee]l |[Dd]e |[Hh]et )?$/u;

/** Whether a body that the rules found is plainly told to be of who asks. */
function isPlainlyTold(text: string, { name, email, organisation }: People): boolean {
  if (!organisation) return false;
  const { value, start, end } = organisation;
  if (labelledBody(text)?.start === start) return true;
  if (!isWhole(organisation, email?.value)) return false;
  if (name && isSigned(text, name, organisation)) return true;
  const lead = text.slice(Math.max(0, start - LED_REACH), start);
  if (LED.test(lead)) return true;
  const known = ORG_WORDS.test(value) || ORG_OF.test(value) || value.split(' ').length > 2;
  return known && !/committee$/i.test(value) && BEGINS.test(lead) && ASKS.test(text.slice(end, end + LED_REACH));
}

type Agreed = { people: People; doubted: Pick<People, 'name' | 'organisation'> };

/** Who asks as the weights agreed to it, with the body that they doubted where it is plainly told. */
export function withPlainBody(text: string, asker: People, { people, doubted }: Agreed): Agreed {
  const { organisation, ...rest } = doubted;
  return organisation && isPlainlyTold(text, asker) ? { people: { ...people, organisation }, doubted: rest } : { people, doubted };
}
