/**
 * Who signs in the running text: "Regards, Mei Xuan, Lantern Tree Preschool", "Dr. Harish Rao, Superintendent, Seva Hospital" at its very end.
 */
import { OCCASION } from '../occasions.ts';
import { bodyIn } from './bodies.ts';
import { farewellAt } from './farewells.ts';
import { NAME, namesArea, nameFrom, ORG_WORDS, TITLE_WORDS, type PersonFact } from './words.ts';

/** Farewells of the languages that are read. */
const FAREWELL = new RegExp(
  String.raw`^(?:${[
    'thank(?:s|\\s?you|ing you)(?: (?:so|very) much| a (?:lot|million|bunch|ton|heap|bundle)| heaps| tons| again| in advance| and [\\p{L} ]{2,20})?',
    'thx|tx|ta|cheers|love|kh|gr(?:u|ue|ü)ess(?:li)?|ngā mihi(?: nui)?|(?:with |in )?(?:kind |friendly |warm |best |many )?greetings|respectfully|sincerely|warmly|ciao|servus|l\\.?g\\.?|v\\.?g\\.?|mfg|mvg|mvh|hilsen|br|kr|rgds|x{1,3}|xo',
    '(?:(?:with |kind |kindest |best |warm |warmest |many |all (?:the|my) )+)?(?:regards|wishes|best|thanks)',
    'yours(?: \\p{L}+)?|(?:talk|speak) soon|take care|looking forward(?: to [\\p{L} ]{2,30})?',
    'groete|atentamente|amitiés|amicalement|gruss|grüsse|servus|hilsen|terveisin|bises|bisous|beijos|slán|hwyl|mahalo|namaste|baci|saluti|cordialmente|apologies|hugs|blessings',
    'kindly|is mise(?: le meas)?|nāku(?: noa)?|nā|(?:meilleures |sincères )?salutations(?: distinguées)?|cari saluti|hälsningar|terveisin',
    '(?:un |des |i miei |cordiali |distinti |cari )?salut[io]|grazie(?: mille)?|merci(?: (?:d.avance|beaucoup|bien))?|(?:bien )?cordialement|bien à vous|à bientôt|(?:bonne|belle) journée',
    'herzlich(?:st)?|hochachtungsvoll|ahoi|besos|bussi|busserl|tschüss|lekker|cheerio|toodles|(?:muchas )?gracias|(?:un )?saludos?(?: cordial(?:es)?)?|(?:un )?abrazos?|atentamente',
    '(?:mit |mit den )?(?:vielen? |lieben? |besten? |schönen? |herzlichen? |freundlichen? )*(?:dank|grü(?:ß|ss)en?|gru(?:ß|ss))(?: aus \\p{Lu}\\p{L}+)?|danke(?: und [\\p{L} ]{2,20})?',
    '(?:met )?(?:\\p{Ll}{4,14}e )?groet(?:en|jes)?|(?:alvast )?bedankt|ng[āa] mihi(?: nui)?|le meas|sláinte|obrigad[oa]|abraços?',
  ].join('|')})[\s,.!:-]{1,3}`,
  'iu',
);
/** A sentence or a line ends, a dash leads on to who signs, or a number to ring or a colon does. */
const BOUNDARY =
  /(?<=[.!?)]\s{1,3}|\n\s*|\s-{1,2}\s?|\d{3}[\s-]?\d{3,6},\s|(?<!\p{L})(?:I|I'm|me|my|contact|reply|ask)(?!\p{L})[^.:\n]{0,40}:\s|,\s(?=\p{Lu}[^,]{1,30}(?:,\s|\s?@\s?|\s\(|\s(?:at|from|of|with)\s)\p{Lu}|(?:[LV]G|(?:\p{L}+ )?[Gg]r(?:uß|uss|üße|üsse)|[Tt]hanks|[Tt]hx|[Tt]a|[Cc]heers|[Mm]erci|[Dd]anke|[Gg]roet(?:en|jes)?|[Ss]aludos|[Bb]ises|[Gg]racias|[Gg]razie),? \p{Lu})|^)(?=\S)/gu;
const SIGNER = new RegExp(
  String.raw`^(${NAME.replaceAll(String.raw`\s`, ' ')})(?:(?:\s?[,|/@(]\s?|\s-\s|\s(?:over at|at|from|of|for|with|w\/|von|vom)\s)(.{2,90}?))?(?:\sx{1,3})?[.!)]*$`,
  'u',
);
const SIGNER_OF = new RegExp(String.raw`^${NAME.replaceAll(String.raw`\s`, ' ')}(?:\s?@\s?|\s\(|\s(?:at|from|of|with)\s)\p{Lu}`, 'u');
const REACH = 140;
/** "Pia Moss at Sedge Films said you're good": a sentence about somebody. */
const SPEAKS =
  /^[^,(|/]*(?<!\p{L})(?:said|says|told|gave|recommended|mentioned|suggested|passed|filmed|did|was|is|are|has|have|will|can|would|does|runs?|plays?|brings?|makes?|knows?|pays?|helps?|works?)(?!\p{L})/u;
/** "Sponsors: Vantage Pensions, Kirkby Homes, Dunmore Tyres": names in a row behind what they are. */
const LISTED = /(?:^|[.!?\n])\s*\p{Lu}\p{Ll}+s:\s[^.!?:\n]*,\s$/u;

/** "Ahoi", "Kind regards": words that only bid farewell. */
export const isFarewell = (words: string): boolean => FAREWELL.exec(`${words}, `)?.[0].length === words.length + 2;

export type Closing = { name: PersonFact; organisation?: PersonFact };

/**
 * The one who signs at the end of the text and for whom.
 * @param isTown true for a name that is a town's: a last word may be where the job is
 */
export function closingOf(body: string, isTown: (name: string) => boolean): Closing | undefined {
  const end = body.trimEnd().length;
  const from = Math.max(0, end - REACH);
  const foot = body.slice(from, end);
  for (const { index } of foot.matchAll(BOUNDARY)) {
    if (index === 0 && from > 0) continue;
    const bye = FAREWELL.exec(foot.slice(index))?.[0].length ?? farewellAt(foot.slice(index));
    const begin = index + bye;
    if (begin === 0 && from === 0) continue;
    const found = SIGNER.exec(foot.slice(begin));
    const name = found?.[1] ? nameFrom(found[1], from + begin) : undefined;
    if (!found || !name || (isTown(name.value) && !ORG_WORDS.test(found[2] ?? '')) || namesArea(name.value) || TITLE_WORDS.test(name.value))
      continue;
    const rest = found[2] ?? '';
    // "Book Launch, Blue Door Hall" is what is on and where.
    if (bye === 0 && OCCASION.test(name.value)) continue;
    if (/(?<!(?<!\p{L})(?:Hon|Sec|St|Dr|Mt|Mr|Mrs|Ms|Rev|Prof|Gen|Asst|Dept|\p{Lu}))[.!?]\s+\p{Lu}\p{Ll}+ \p{Lu}/u.test(rest)) continue;
    if (bye === 0 && SPEAKS.test(rest)) continue;
    // "Lekker, Marlon @ Big Screen": a farewell in any word.
    if (!name.value.includes(' ') && SIGNER_OF.test(rest)) continue;
    if (rest === '') {
      if (bye > 0) return { name };
      continue;
    }
    const start = from + begin + found[0].lastIndexOf(rest);
    const organisation = bodyIn(rest, start, isTown);
    const reach = /^[(+]?\d[\d\s().+-]{6,18}$|^\S+@\S+$/.test(rest);
    if (bye === 0 && LISTED.test(foot.slice(0, begin))) continue;
    const comma = bye === 0 && /,\s$/.test(foot.slice(0, begin)) && !SIGNER_OF.test(foot.slice(begin));
    if (comma && (organisation === undefined || !(ORG_WORDS.test(organisation.value) || name.value.includes(' ')))) continue;
    // "Ingrid S, SM"
    const office = TITLE_WORDS.test(rest) || (/^\p{Lu}{2,4}$/u.test(rest) && name.value.includes(' '));
    if (organisation === undefined && bye === 0 && !reach && !office) continue;
    return { name, ...(organisation ? { organisation } : {}) };
  }
  return undefined;
}
