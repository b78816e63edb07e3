/**
 * Whether a name of a town is that of the job, as the learned weights make it of the words, the lines and the signs around it: one that surely is
 * it is taken where rules find none, and asked about beside another that they find.
 */
import type { GazetteerPlace } from '../../places/gazetteer.ts';
import type { Place } from '../../contract/parts.ts';
import { foldName } from '../../places/fold.ts';
import type { AreaHit, PlaceHit } from '../places/hits.ts';
import { commonWords } from '../places/names.ts';
import { ranked, type Hints } from '../places/rank.ts';
import type { PersonFact } from '../people/words.ts';
import { isBrief, type Page } from './features.ts';
import { chancesIn, type Learned } from './models.ts';
import { namesIn, partyFeatures, type Letter } from './party.ts';

/** From these chances on a name is taken where there is no other, and asked about beside another. */
const TAKEN = 0.9;
const RIVAL = 0.95;

/** What the sender wrote, and the parts of the whole message. */
type Own = { page: Page; parts: Letter['parts'] };
type Find = (name: string) => readonly GazetteerPlace[];

/** The names of a message that towns bear. */
export const townsNamed = ({ page }: Own, find: Find): PersonFact[] =>
  namesIn(page.scene.text).filter(({ value }) => find(value).length > 0);

/** Of one name: what is seen of any, whether it is that of home, and how many towns bear it. */
export const townFeatures = (own: Own, town: PersonFact, home: Pick<Place, 'name'> | undefined, find: Find): Set<string> =>
  partyFeatures({ ...own, emails: [] }, town)
    .add(`home:${home !== undefined && foldName(town.value) === foldName(home.name)}`)
    .add(`gaz:${Math.min(3, find(town.value).length)}`);

/** Towns as rules found them, with the one that the weights are sure of where it is none of theirs. */
export function agreedTowns(
  towns: readonly PlaceHit[],
  areas: readonly AreaHit[],
  own: Own,
  { home, find, hints, learned }: { home: Place | undefined; find: Find; hints: Hints; learned: Learned },
): readonly PlaceHit[] {
  const best = towns.toSorted((a, b) => b.score - a.score)[0];
  if (best?.open || isBrief(own.page)) return towns;
  const [likely] = townsNamed(own, find)
    .filter(
      (one) =>
        (best === undefined || !isSame(one.value, best, find)) &&
        // "Wedding, Tulbagh, 11 December" is what is filmed, and not the part of Berlin.
        !(commonWords.has(foldName(one.value)) && find(one.value).every(({ country }) => country !== hints.homeCountry)) &&
        areas.every(({ start, end }) => end <= one.start || start >= one.end),
    )
    .map((town) => ({ town, chance: chancesIn(learned.town, townFeatures(own, town, home, find))['place'] ?? 0 }))
    .toSorted((a, b) => b.chance - a.chance);
  if (!likely || likely.chance < (best ? RIVAL : TAKEN)) return towns;
  const { value, start, end } = likely.town;
  const hit = { start, end, name: value, ...ranked(find(value), hints), score: best?.score ?? 1 };
  return [...towns.filter(({ name }) => foldName(name) !== foldName(value)), hit];
}

/** "Southend" and "Southend-on-Sea", "NYC" and "New York City" */
const isSame = (value: string, { name, candidates }: PlaceHit, find: Find): boolean =>
  foldName(name).includes(foldName(value)) ||
  foldName(value).includes(foldName(name)) ||
  find(value).some(({ key }) => candidates.some((one) => one.key === key));
