/**
 * What is asked of the reader, held against what the learned weights make of the whole message.
 */
import type { Role } from '../../contract/parts.ts';
import type { Where } from '../settle/scene.ts';
import { isChoice, isRefused } from '../work/role.ts';
import { wordsFeatures, type Page } from './features.ts';
import { chancesIn, type Learned, type Model } from './models.ts';

type Asked = Where & { role: Role };

/** A role below this chance is asked about beside one from there on. */
const HARDLY = 0.2;
const RIVAL = 0.4;
/** From here on the weights are believed where rules find none or several. */
const BELIEVED = 0.7;

const TOGETHER = /^s? ?(?:and|&|\+|plus|und|et|y|e|en) ?(?:an? |some )?$/i;

/** The roles that rules found: asked about beside another where the weights plainly speak for that, and theirs where the rules do not decide. */
export function agreedRole(found: readonly Asked[], page: Page, learned: Learned): readonly Asked[] {
  const chances = chancesIn(learned.role, wordsFeatures(page));
  const [best] = Object.entries(chances).toSorted(([, a], [, b]) => b - a);
  if (!best) return found;
  const [role, chance] = best as [Role, number];
  const own = found.find((hit) => hit.role === role);
  const [first] = found;
  const single = first !== undefined && found.length === 1;
  if (single ? own || (chances[first.role] ?? 0) >= HARDLY || chance < RIVAL : chance < BELIEVED) return found;
  // "photo and video": both are asked for in one breath.
  const [, second] = found;
  if (
    first &&
    second &&
    (isChoice(page.scene.text, found) ||
      TOGETHER.test(page.scene.text.slice(Math.min(first.end, second.end), Math.max(first.start, second.start))))
  )
    return found;
  if (first === undefined && role !== 'shoot' && isRefused(page.scene.text, role)) return found;
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
