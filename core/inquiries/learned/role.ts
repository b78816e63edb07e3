/**
 * What is asked of the reader, held against what the learned weights make of the whole message.
 */
import type { Role } from '../../contract/parts.ts';
import type { Where } from '../settle/scene.ts';
import { OCCASION } from '../occasions.ts';
import { isChoice, isRefused } from '../work/role.ts';
import { changesArranged } from '../work/arranged.ts';
import { Standing, standingOf } from '../work/role-asked.ts';
import { workWords } from '../work/role-words.ts';
import { isBrief, wordsFeatures, type Page } from './features.ts';
import { chancesIn, type Learned, type Model } from './models.ts';

type Asked = Where & { role: Role; plainly?: boolean; unsaid?: boolean; general?: boolean; standing?: number };

/** A role below the first chance is asked about beside one from the second on. */
const LEAST = 0.5;
const RIVAL = 0.3;
/** Below this a role other than filming is asked about: in a brief message where it is not said in so many words, and in any other. */
const HARDLY = 0.04;
const UNLIKELY: Readonly<Partial<Record<Role, number>>> = { audio: 0.5, photo: 0.5, livestream: 0.65, 'edit only': 0.6, other: 0.2 };
const hardly = (role: Role, page: Page): number => (isBrief(page) ? HARDLY : (UNLIKELY[role] ?? HARDLY));
/** Roles that are often only named beside the work. */
const OFTEN_NAMED: readonly Role[] = ['other', 'edit only'];
/** From here on the weights are believed where rules find none or several, and sooner for filming where a message can mean that. */
const BELIEVED = 0.7;
const MEANT = 0.5;
const SURE = 0.9;
/** Where only an occasion is named, "are you free?" says nothing of what: the weights must speak plainly for filming. */
const OF_OCCASION = 0.9;
/** Whether a message can mean filming that finds no other word for it: its words of work are of filming, or it names an occasion and does not change what was arranged. */
function meansFilming(text: string, chance: number): boolean {
  const named = workWords(text);
  if (named.length > 0) return chance >= MEANT && named.every(({ role }) => role === 'shoot');
  return chance >= OF_OCCASION && OCCASION.test(text) && !changesArranged(text);
}

/** "Two cameras", "the recording" go with other work as well: below this chance that is asked about. */
const OF_GENERAL_WORD = 0.5;
/** "Single cam with a reporter", "a recording of each evening": where no word of other work stands beside it. */
const OF_GENERAL_WORD_ALONE = 0.3;
/** Whether filming is only to be concluded from words that go with other work, and the weights do not lean to it. */
const isDoubtful = ({ role, general, standing }: Asked, chance: number, alone: boolean): boolean =>
  role === 'shoot' && general === true && (standing ?? 0) <= Standing.wanted && chance < (alone ? OF_GENERAL_WORD_ALONE : OF_GENERAL_WORD);

/** Without any of these nobody asks for an edit. */
const EDITS = /edit|cut|footage|schn[ie]tt|schneid|mont|rushes|post|grad|trim|splic|tapes?|clips|material|digit/i;

const TOGETHER = /^s?(?: (?:it|this|them|both|(?:the|our) \w+))?,? ?(?:and|&|\+|plus|und|et|y|e|en) ?(?:also )?(?:an? |some |to )?$/i;

/** The roles that rules found: asked about beside another where the weights plainly speak for that, and theirs where the rules do not decide. */
export function agreedRole(found: readonly Asked[], page: Page, learned: Learned): readonly Asked[] {
  const chances = chancesIn(learned.role, wordsFeatures(page));
  const agreed = likelierRole(found, page, learned, chances);
  const [only] = agreed;
  const [best] = Object.entries(chances).toSorted(([, a], [, b]) => b - a);
  if (!only || !best || agreed.length > 1 || only.role === 'shoot' || best[0] === only.role) return agreed;
  if ((only.plainly && isBrief(page)) || (chances[only.role] ?? 0) >= hardly(only.role, page)) return agreed;
  // Who doubts another role asks whether it is filming, too.
  return [...new Set<Role>([only.role, 'shoot', best[0] as Role])].map((role) => ({ ...only, role }));
}

/** The same, a role that the weights hardly know not yet in doubt. */
function likelierRole(found: readonly Asked[], page: Page, learned: Learned, chances: Readonly<Record<string, number>>): readonly Asked[] {
  const [best] = Object.entries(chances).toSorted(([, a], [, b]) => b - a);
  if (!best) return found;
  const [role, chance] = best as [Role, number];
  const own = found.find((hit) => hit.role === role);
  const [first] = found;
  const single = first !== undefined && found.length === 1;
  if (first?.unsaid && (chances['shoot'] ?? 0) < OF_OCCASION) return [];
  const { text } = page.scene;
  const named = new Set(
    workWords(text)
      .filter((word, at, all) => !all.slice(0, at).some(({ start, end }) => word.start >= start && word.end <= end))
      .filter((word) => standingOf(text, word) !== Standing.none)
      .map((word) => word.role),
  );
  // "You'd be second cameraman": said in so many words, no weight speaks against it.
  if (first && found.every(({ plainly }) => plainly)) return found;
  // "We don't want the stream any more": what is refused is no rival.
  if (single && (isRefused(text, role) || (role === 'edit only' && chance < SURE && !EDITS.test(text)))) return found;
  if (single) {
    // "Want a second video person": wanted by its own name, a rival must be sure.
    const wanted = first.general === false && (first.standing ?? 0) >= Standing.wanted && !OFTEN_NAMED.includes(first.role);
    const rival = wanted ? SURE : RIVAL;
    if (isDoubtful(first, chances['shoot'] ?? 0, named.size === 1)) {
      const [, rivalOf] = Object.entries(chances).toSorted(([, a], [, b]) => b - a);
      const beside = role === 'shoot' ? (rivalOf?.[0] as Role | undefined) : role;
      return beside ? [first, wordFor(beside, page, learned.role) ?? { ...first, role: beside }] : found;
    }
    // No word of the message names the rival: the weights know the manner of the letter and not the work.
    if (!own && role !== 'edit only' && !OFTEN_NAMED.includes(first.role) && !named.has(role)) return found;
    if (own || (chances[first.role] ?? 0) >= LEAST || chance < rival) return found;
  } else if (first === undefined && role === 'shoot') {
    if (!meansFilming(text, chance)) return found;
  } else if (chance < BELIEVED || (first === undefined && !named.has(role)) || (first === undefined && isRefused(text, role))) return found;
  // "photo and video": both are asked for in one breath.
  const [, second] = found;
  if (
    first &&
    second &&
    (isChoice(text, found) || TOGETHER.test(text.slice(Math.min(first.end, second.end), Math.max(first.start, second.start))))
  )
    return found;
  const told = own ?? wordFor(role, page, learned.role);
  if (!told) return found;
  return single ? [first, told] : [told];
}

/** The word of the message that speaks most for a role. */
function wordFor(role: Role, { scene: { text }, words }: Page, { classes, weights }: Model): Asked | undefined {
  const at = classes.indexOf(role);
  const weigh = (word: string): number => weights.get(word)?.[at] ?? 0;
  const named = words.filter(({ word }) => /^\p{L}/u.test(word));
  const most = named.reduce<(typeof named)[number] | undefined>(
    (top, one) => (!top || weigh(one.word) > weigh(top.word) ? one : top),
    undefined,
  );
  if (!most || weigh(most.word) <= 0) return undefined;
  const whole = /^[\p{L}\p{M}'’]+/u.exec(text.slice(most.start, most.start + 60))?.[0] ?? '';
  return { role, start: most.start, end: most.start + whole.length };
}
