/**
 * What somebody is, right before the name of the body they are it of: "Secretary Otley Bowls Club", "Obmann Musikverein Kampblech", "Segreteria organizzativa
 * Salus Alpina".
 */
import { isSoleBody } from './bodies.ts';
import { ORG_WORDS, TITLE_WORDS } from './words.ts';

/** Offices that clubs have: of whatever it is. */
const OF_CLUB =
  /^(?:(?:Hon(?:orary)?|Vice|Deputy|Acting|Assistant|Asst|Joint|Club|Membership|Social|Fixtures|Publicity|Press|Past|1\.|2\.|Ehren|Vize)\.?[ -]?){0,2}(?:Secretary|Treasurer|President|Chair(?:man|woman|person)?|Convenor|Clerk(?= to )|(?:Vize)?[Pp]räsident(?:in)?|Obmann|Obfrau|Vorsitzende[rn]?|Schriftführer(?:in)?|Kassier(?:er)?(?:in)?|Kassenwart|Kapellmeister(?:in)?|Voorzitter|Secretaris|Penningmeester|President[ae]|Segretari[oa]|Secretari[oa]|Tesorer[oa]|Tesorier[ea]|Président(?:e)?|Secrétaire|Trésori(?:er|ère)|Ordförande|Formand|Kasserer|Setiausaha|Pengurus|Prezes)(?: générale?| general)?(?!\p{L})/u;
/** Offices of firms: a part of the house may follow as well. */
const OF_FIRM =
  /^\p{L}*(?:[Ll]eiter(?:in)?|[Ll]eitung|[Rr]eferent(?:in)?|[Gg]eschäftsführ(?:er|erin|ung)|[Ss]ekretär(?:in)?|[Ss]precher(?:in)?|[Bb]eauftragte[rn]?|[Aa]ssistenz|[Kk]oordinator(?:in)?|verantwoordelijke|[Mm]edewerk(?:er|ster)|[Cc]oördinator|leider|Responsabile|Segreteria|Direttore|Direttrice|Coordinat(?:ore|rice|eur)|Responsable|Chargée?|Directeur|Directrice|Coordinadora?|Directora?|Gerente|Manager|Producer)(?!\p{L})(?: \p{Ll}[\p{L}-]*){0,3}/u;
/** "voorzitter ", "co-founder ", "technical director ": an office in small letters. */
const IN_SMALL = /^(?:\p{Ll}[\p{L}.-]{1,20} (?:\d{1,2}, )?){1,4}(?=\p{Lu})/u;
const JOINT =
  /^ (?:(?:of|to|for|at|der|des|du|del|della|van|de|von|vom) (?:(?:the|la|le|les|l|het|de) |l')?(?:(?:association|asociación|associazione|société|club|chorale|vereniging|stichting|amicale) )?)?(?=\p{Lu})/u;

/**
 * The words without the office that they begin with, where a body is left.
 * @param formed whether a legal form follows
 */
export function withoutOffice(words: string, formed: boolean): string {
  const small = IN_SMALL.exec(words)?.[0] ?? '';
  const named = words.slice(small.length);
  if (small !== '' && TITLE_WORDS.test(small) && (named.includes(' ') || isSoleBody(named))) return named;
  const club = OF_CLUB.exec(words)?.[0].length ?? 0;
  const lead = club || (OF_FIRM.exec(words)?.[0].length ?? 0);
  const joint = lead === 0 ? undefined : JOINT.exec(words.slice(lead))?.[0];
  const rest = joint === undefined ? '' : words.slice(lead + joint.length);
  const body = isSoleBody(rest) || (rest.includes(' ') && (club > 0 || formed || ORG_WORDS.test(rest)));
  return body ? rest : words;
}
