/**
 * Who says who they are in a language other than English: "hier ist Jörg von der Agentur Blauwinkel", "soy Nerea, de Estudio Marea".
 */
import type { People } from './signature.ts';
import { isSoleBody } from './bodies.ts';
import { nameFrom, ORG_NAME, ORG_WORDS } from './words.ts';

const word = String.raw`\p{Lu}[\p{L}'-]{1,20}`;
const INTRODUCED = new RegExp(
  String.raw`(?:^|[\s,.!?(¡¿-])(?:[Hh]ier(?: ist| spricht)?|[Ii]ci|[Qq]ui(?: è)?|[Mm]ein Name ist|[Ii]ch (?:bin|heiße)|[Jj]e (?:suis|m'appelle)|[Mm]oi c'est|[Cc]'est|[Ss]oy(?: (?:la|el))?|[Mm]e llamo|[Mm]i nombre es|[Ss]ono(?: (?:la|il))?|[Ee]k(?:'s| is)|[Jj]eg er|[Jj]ag heter|[Mm]i chiamo|[Ii]k ben|[Mm]ijn naam is|[Hh]et is|[Aa]qui é [ao]|[Ss]ou [ao]|[Ll]es? (?:escribe|saluda|habla)|[Tt]e (?:escribe|saluda|habla)|(?<=, )met|(?<=^(?:[Hh]oi|[Hh]a|[Hh]allo|[Hh]é|[Dd]ag|[Bb]este)? ?\p{Lu}\p{Ll}+,)(?= \p{Lu}\p{L}+(?: \p{Lu}\p{L}+)? hier )) (${word}(?: ${word}){0,2})(?: hier)?(?:,? (?:von der|von dem|von|vom|aus|de la|de l'|de|du|des|del|della|dello|dell'|di|van de|van het|van|bei|de chez|chez|bij)(?: (?:club|fietsclub|agence|collectif|studio|verein|band|fanfare))? ?(${ORG_NAME}))?(?=$|[\s,.;!?)-])`,
  'u',
);

/** The name and the organisation that a first sentence states; an organisation only where its words can be one's. */
export function introducedAbroad(body: string): Pick<People, 'name' | 'organisation'> | undefined {
  const found = INTRODUCED.exec(body);
  const name = found?.[1] ? nameFrom(found[1], found.index + found[0].indexOf(found[1])) : undefined;
  if (!found || !name) return undefined;
  const written = found[2]?.trim().replace(/\.(?:\s.*)?$/s, '');
  if (written === undefined || !(ORG_WORDS.test(written) || written.includes(' ') || isSoleBody(written))) return { name };
  const start = found.index + found[0].lastIndexOf(written);
  return { name, organisation: { value: written, start, end: start + written.length } };
}
