/**
 * Towns that no list has: known by the region written after them, or by "in" before and a date beside them.
 */
import { foldName } from '../../places/fold.ts';
import type { Token } from '../parts/tokens.ts';
import { countryNamed } from './countries.ts';
import type { PlaceHit } from './hits.ts';
import { areaNamed, commonWords } from './names.ts';
import { isMentionedAt } from './mentioned.ts';
import { isHeldThere } from './of-the-job.ts';
import { australian, qualifierAt, REGION } from './qualifiers.ts';
import { isDateWord, NOT_THE_JOB, properName, settingOf, VENUE } from './setting.ts';

type Tokens = readonly Token[];
type Taken = (index: number) => boolean;

/** The rest of a name with hyphens: "-on-the-Water". */
export const HYPHENED = /^(?:[-\u2010](?:on|in|by|le|la|de|the|upon|under|next|super|sur|sous|am|an|der)){1,2}[-\u2010]\p{Lu}[\p{L}'’]+/u;

/** A town that the list does not have, known by its region: "Bayfield, WI", "Lutsen MN". */
export function unlistedAt(
  text: string,
  tokens: Tokens,
  index: number,
  taken: Taken,
  homeCountry?: string,
): { hit: PlaceHit; next: number } | undefined {
  const first = tokens[index] as Token;
  // "From Split, Croatia"
  if (/^(?:from|in|at|near|to|for|over|across)$/.test(first.lower)) return undefined;
  for (let length = 3; length >= 1; length--) {
    const words = tokens.slice(index, index + length);
    const last = words.at(-1);
    if (
      !last ||
      words.length < length ||
      words.some((token, at) => !/^\p{Lu}\p{Ll}/u.test(token.text) || isDateWord(token) || (at > 0 && token.breaks > 0))
    )
      continue;
    const written = text.slice(first.start, last.end);
    if (INSTITUTION.test(last.text) || REGION.test(last.text) || areaNamed(foldName(written), written) !== undefined) return undefined;
    const qualifier = qualifierAt(text, tokens, index + length);
    // "at Casa Luna, Oaxaca, Mexico" is a house; "in Ubud, Bali, Indonesia" is a town.
    if (qualifier?.beyond && !/^(?:in|near|à|en)$/.test(tokens[index - 1]?.lower ?? '')) continue;
    // "Kambalda, WA" is Western Australia there.
    const country =
      homeCountry === 'AU' && qualifier?.code !== undefined && qualifier.code in australian
        ? 'AU'
        : (qualifier?.regionCountry ?? qualifier?.country);
    if (!qualifier || country === undefined || !(qualifier.comma || qualifier.coded)) continue;
    // "Sentosa, Singapore" is Singapore; "Grenverk AB" is a firm where nobody writes of Alberta.
    if (CITY_STATES.has(country) && qualifier.region === undefined) return undefined;
    if (!qualifier.comma && FIRMS.test(qualifier.code ?? '') && homeCountry !== 'US' && homeCountry !== 'CA') return undefined;
    const setting = settingOf(text, tokens, index, qualifier.next, taken);
    // "Ewan Pattullo (IA)": what somebody may write behind a name.
    if (qualifier.coded && tokens[index + length]?.text === '(' && !setting.led && !setting.labelled) return undefined;
    if (
      setting.away ||
      VENUE.test(last.lower) ||
      NO_TOWN.test(first.text) ||
      commonWords.has(foldName(first.text)) ||
      !(setting.led || setting.labelled || setting.slot)
    )
      return undefined;
    return {
      hit: {
        start: first.start,
        end: last.end,
        name: written,
        candidates: [],
        sure: true,
        countrySure: true,
        country,
        score: setting.strongly ? 5 : 4,
      },
      next: qualifier.next,
    };
  }
  return besideDate(text, tokens, index, taken);
}

/** States that are one town. */
const CITY_STATES: ReadonlySet<string> = new Set(['SG', 'MC', 'HK']);
/** Codes of states that are also what a firm is by law. */
const FIRMS = /^(?:AB|NV|SA|CO)$/;

const INSTITUTION =
  /^(?:academy|school|college|university|institute|trust|society|club|association|council|foundation|group|ltd|inc|gmbh|bv)$/i;
const NO_TOWN =
  /^(?:(?:that|this|it|here|there|what|who|where)['’]?s?|st|saint|sankt|san|santa|still|now|again|both|all|english|spanish|french|german|italian|person|studio|room|hall|hd|uhd|the|total|advance|addition|case|general|particular|private|public|quarter|week|spring|summer|autumn|fall|winter|morning|afternoon|evening|town|part|full|pension|rente|urlaub|kürze|zukunft|ruhe|ordnung|form|höhe|richtung|bezug|absprache|elternzeit|euros?|dollars?|pounds?|sterling|francs?|franken|rand|rupees|cash)$/i;

/** "believe in Harriet": not where anything is. */
const TRUSTING = /^(?:believ|invest|speciali[sz]|interest|trust|confid|faith|rope|fill|copy|copied|call)(?:e|es|ed|ing|ence|s)?$/;

/** "in a village called Grewelthorpe" */
const CALLED = /\b(?:village|town|hamlet|place|spot|townland|suburb|somewhere),? called $|\b(?:nearest|closest) (?:town|village) is $/i;
/** "at Burnsall village hall", "at Hutton-le-Hole" */
const AT_ITS =
  /^(?: \p{Lu}\p{Ll}+)?(?: (?:village|town|parish|community|church|memorial) (?:hall|green|show)\b|[-\u2010](?:on|in|by|le|la|the|upon|under|next|sur|sous)[-\u2010])/u;

/** "in Mr. Hakala's class", "in Th" */
const NO_NAME = /^(?:Mr|Ms|Dr|Mrs|Miss|Prof|Rev|Herr|Frau|Mme|Señora?|Sister|Father|Pastor|Coach|Auntie|Uncle|Aunt)$/u;

/** "in Ilkley on 17 July": a name that no list has, led by "in" and next to a date; without one it is faint. */
function besideDate(text: string, tokens: Tokens, index: number, taken: Taken): { hit: PlaceHit; next: number } | undefined {
  const [before, first] = [tokens[index - 1], tokens[index] as Token];
  const lead = text.slice(Math.max(0, first.start - 60), first.start);
  if (
    !(
      /^(?:in|near|à|en)$/.test(before?.lower ?? '') ||
      CALLED.test(lead) ||
      (before?.lower === 'at' && AT_ITS.test(text.slice(first.end, first.end + 60)))
    ) ||
    TRUSTING.test(tokens[index - 2]?.lower ?? '') ||
    NO_NAME.test(first.text) ||
    // "Load-in Th 16/9"
    text[(before?.start ?? 0) - 1] === '-' ||
    NOT_THE_JOB.test(lead)
  )
    return undefined;
  let next = index;
  while (next - index < 3 && properName(tokens[next]) && (next === index || tokens[next]?.breaks === 0)) next++;
  // "Bourton-on-the-Water"
  const rest = next > index ? HYPHENED.exec(text.slice(tokens[next - 1]?.end ?? 0, (tokens[next - 1]?.end ?? 0) + 40)) : null;
  const end = (tokens[next - 1]?.end ?? 0) + (rest?.[0].length ?? 0);
  if (rest) while ((tokens[next]?.end ?? Infinity) <= end) next++;
  const last = tokens[next - 1];
  // "in Howie's note"
  if (last && /['’]s$/.test(last.text) && /^\p{Ll}/u.test(tokens[next]?.text ?? '')) return undefined;
  if (
    next === index ||
    !last ||
    (next - index === 1 && first.text.length < 3) ||
    NO_TOWN.test(first.text) ||
    commonWords.has(foldName(first.text)) ||
    VENUE.test(last.lower)
  )
    return undefined;
  const dateAfter = taken(next) || (/^(?:on|from|,|\(|this|next)$/.test(tokens[next]?.lower ?? '') && taken(next + 1));
  const dateBefore = taken(index - 2) || (/^[),]$/.test(tokens[index - 2]?.text ?? '') && taken(index - 3));
  // "Our finals are in Swellendam this year"
  const dated = dateAfter || dateBefore || isHeldThere(lead);
  const name = text.slice(first.start, last.end);
  const folded = foldName(name);
  if (isMentionedAt(text, first.start, last.end)) return undefined;
  if ((countryNamed(folded) ?? areaNamed(folded, name)) !== undefined) return undefined;
  if (
    !dated &&
    (settingOf(text, tokens, index, next, taken).atHome ||
      !/^[.,;:?!)(]|^(?:and|for|at|with|we|is|are|has|have|wants?|needs?|takes?|happens?|will|would|runs?|starts?|begins?|on|that|this|next|which|who|where|village|parish)$/.test(
        tokens[next]?.lower ?? '.',
      ))
  )
    return undefined;
  return {
    hit: {
      start: first.start,
      end: last.end,
      name,
      candidates: [],
      sure: false,
      countrySure: false,
      score: 3,
      ...(dated || rest ? {} : { faint: true as const }),
    },
    next,
  };
}
