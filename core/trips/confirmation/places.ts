/**
 * Airports by their IATA codes, and towns by their names where a way begins or ends.
 */
import type { Place } from '../../contract/parts.ts';
import { isCurrency } from '../../money/currencies.ts';
import { monthWord, weekdayWord } from '../../inquiries/words.ts';
import { foldName } from '../../places/fold.ts';
import type { Gazetteer, GazetteerPlace } from '../../places/gazetteer.ts';
import { regionCode } from '../../places/regions.ts';

export type PlaceMark = {
  start: number;
  end: number;
  /** More than one where several towns bear the name. */
  candidates: Place[];
  isCode: boolean;
  text: string;
};

/** Finds places in a unit. */
export type PlaceFinder = (text: string) => PlaceMark[];

type Index = { codes: Map<string, GazetteerPlace>; towns: Map<string, GazetteerPlace[]> };
const indexes = new WeakMap<Gazetteer, Index>();

function indexOf(gazetteer: Gazetteer): Index {
  const known = indexes.get(gazetteer);
  if (known) return known;
  const codes = new Map<string, GazetteerPlace>();
  const towns = new Map<string, GazetteerPlace[]>();
  for (const place of gazetteer) {
    if (place.kind === 'airport') codes.set(place.key.slice(-3), place);
    else {
      // "Washington, D.C." is written without its end.
      const names = new Set([place.name.split(',')[0] ?? place.name, ...(place.others ?? [])].map(foldName));
      for (const name of names) towns.set(name, [...(towns.get(name) ?? []), place]);
    }
  }
  const index = { codes, towns };
  indexes.set(gazetteer, index);
  return index;
}

/** Words in capitals that a confirmation holds and that are codes of airports as well. */
const WORDS = new Set(
  'THE AND FOR NOT ALL YOU ARE VIA BUS CAR BAG BAR VAT TAX FEE REF PNR ADT CHD INF PDF SMS APP WEB WWW COM NET ORG TEL FAX MIN MAX HRS DAY DEP ARR ETA ETD STD STA GMT UTC CET EST PST CST MST BST ROW SEX MRS MSS DOB NON ONE TWO DUE NEW OLD OUT OFF PAY PER PLC LLC LTD INC ECO BIZ PAX PTS KGS LBS PCS ICE TER TGV IRE RER ETC HAS CAN MAY OUR GET ANY SEE USE BOX TAG TRY AIR SEA SKY FLY WAY END TOP LOW BIG RED SUN'.split(
    ' ',
  ),
);
const isWord = (code: string): boolean =>
  WORDS.has(code) || monthWord(code.toLowerCase()) !== undefined || weekdayWord(code.toLowerCase()) !== undefined || isCurrency(code);

const CODE = /(?<![\p{L}\p{N}])[A-Z]{3}(?![\p{L}\p{N}])/gu;
const NAME = /(?<![\p{L}])\p{Lu}[\p{L}'.]*(?:[ -](?:(?:de|la|le|am|an|der|upon|on|sur|of|the|du|del)[ -])?\p{Lu}[\p{L}'.]*){0,5}/gu;
const PLACE_BEFORE =
  /(?:^|[\s(])(?:from|to|into|in|at|for|leav(?:es?|ing)|depart(?:s|ing|ure)?|dep\.?|arriv(?:es?|ing|al)|arr\.?|reach(?:es|ing)|origin|destination|port of|von|nach|ab|an|de|à|vers|station|terminal|sailing|crossing|train|route|journey|outbound|return|inbound)\s?:?\s*(?:the )?$|(?:->|→|–|-|>|\/|:|\|)\s*$|^[\s\d.)-]*$/iu;
const PLACE_AFTER = /^\s*(?:->|→|-|>|\/|\||\(|to\b|nach\b)/u;
/** What may follow a town in the name of a station or port. */
const COMPANY =
  /^(?:rail(?:way|ways|road)?|lines?|air(?:ways|lines?)?|ferr(?:y|ies)|express|travel|tours?|trains?|cruises?|jet|group|company|connect)$/i;
/** Words of a confirmation that are towns as well. */
const NO_TOWN =
  /^(?:zug|bus|train|rail|port|flight|ferry|date|return|price|total|time|seat|gate|class|terminal|platform|reference|booking|check|ticket|cabin|deck|notes?)$/i;
const PERSON =
  /(?<!\p{L})(?:passengers?|travell?ers?|guests?|name|mr|mrs|ms|mx|dr|contact|billed|dear|hello|hi|fahrgast|voyageur|seat|card|payment|operated by|thank)(?!\p{L})/iu;

/** A name that belongs to several towns means the one that is this many times as large as the next, and no village. */
const FAR_LARGER = 15;
const NO_VILLAGE = 50_000;
/** The largest of the towns with one name that are looked at. */
const MOST_CANDIDATES = 30;

/**
 * @param known places that the job has to do with already: a name that is theirs means them
 */
export function placeFinder(gazetteer: Gazetteer, known: readonly Place[]): PlaceFinder {
  const { codes, towns } = indexOf(gazetteer);
  const knownNames = new Map(known.map((place) => [foldName(place.name), place]));
  const townsOf = (name: string, behind: string): Place[] => {
    const folded = foldName(name);
    const mine = knownNames.get(folded);
    if (mine) return [mine];
    const all = towns.get(folded) ?? [];
    const qualifier = /^,?\s\(?(\p{Lu}[\p{L}.]*(?: \p{Lu}[\p{L}.]*){0,2})/u.exec(behind)?.[1];
    const named = qualifier === undefined ? [] : all.filter((place) => isIn(place, qualifier));
    if (named.length > 0) return plain(named.slice(0, 1));
    const [first, second] = all;
    const surely = first && (!second || ((first.people ?? 0) >= NO_VILLAGE && (first.people ?? 0) >= FAR_LARGER * (second.people ?? 0)));
    return plain(surely ? [first] : all.slice(0, MOST_CANDIDATES));
  };
  return (text) => {
    if (PERSON.test(text)) return codesIn(text, codes);
    const found = codesIn(text, codes);
    for (const { index, 0: words } of text.matchAll(NAME)) {
      const mark = townIn(text, index, words, townsOf);
      if (mark && !found.some((each) => each.start < mark.end && each.end > mark.start)) found.push(mark);
    }
    return found.toSorted((a, b) => a.start - b.start);
  };
}

const plain = (places: readonly GazetteerPlace[]): Place[] =>
  places.map(({ kind: _kind, people: _people, others: _others, ...place }) => place);

function codesIn(text: string, codes: Index['codes']): PlaceMark[] {
  return [...text.matchAll(CODE)].flatMap(({ index, 0: code }) => {
    const place = codes.get(code);
    const beside = text.slice(Math.max(0, index - 1), index) + text.slice(index + 3, index + 4);
    // A word that is a code too is one only in brackets or as one end of a pair.
    const pair =
      /[A-Z]{3}\s?(?:-|→|->|>|\/)\s?$/.test(text.slice(0, index)) ||
      /^\s?(?:-|→|->|>|\/)\s?[A-Z]{3}(?![\p{L}\p{N}])/u.test(text.slice(index + 3));
    if (!place || (isWord(code) && beside !== '()' && !pair)) return [];
    return [{ start: index, end: index + 3, candidates: plain([place]), isCode: true, text: code }];
  });
}

/** The longest run of words that is a town, where it stands as one end of a way. */
function townIn(text: string, at: number, words: string, townsOf: (name: string, behind: string) => Place[]): PlaceMark | null {
  const parts = [...words.matchAll(/[^\s]+/g)].map((part) => ({ from: part.index, to: part.index + part[0].length }));
  for (let first = 0; first < Math.min(parts.length, 4); first += 1)
    for (let last = Math.min(parts.length, first + 4) - 1; last >= first; last -= 1) {
      const [from, to] = [parts[first]?.from ?? 0, parts[last]?.to ?? 0];
      const name = words.slice(from, to).replace(/[.-]$/, '');
      const next = words.slice(to).trim().split(' ')[0] ?? '';
      if (name.length < 3 || COMPANY.test(next) || NO_TOWN.test(name)) continue;
      const before = text.slice(0, at + from);
      const end = at + from + name.length;
      if (!PLACE_BEFORE.test(before) && !/\d(?:\s?[ap]\.?m\.?)?(?:\s?\+\d)?[\s,|-]*$/i.test(before) && !PLACE_AFTER.test(text.slice(end)))
        continue;
      const candidates = townsOf(name, text.slice(end));
      if (candidates.length > 0) return { start: at + from, end, candidates, isCode: false, text: name };
    }
  return null;
}

const countries = new Intl.DisplayNames('en', { type: 'region' });

/** Whether words behind a town name its region or country. */
function isIn(place: Place, qualifier: string): boolean {
  const said = foldName(qualifier);
  const names = [regionCode(place.country, place.region) ?? '', place.country, place.region, countries.of(place.country) ?? ''].map(
    foldName,
  );
  return names.some((name) => name !== '' && (said === name || (name.length > 3 && said.startsWith(name))));
}
