/**
 * What a date, an hour or a message is, as the linear weights and the network make of it together: the product of both chances, each to its share
 * (a logarithmic opinion pool: Genest and Zidek, Combining Probability Distributions, Statistical Science 1, 1986, section 3).
 */
import { dateFeatures, timeFeatures, type Page } from '../learned/features.ts';
import { lengthFeatures } from '../learned/length.ts';
import { chancesIn, type Learned } from '../learned/models.ts';
import type { DateMention, SaidTime } from '../settle/scene.ts';
import { CLASSES, type Context } from './network.ts';

/** How much the network counts beside the weights: found by the logarithmic loss of sets that taught neither. */
const SHARE = { date: 0.6, time: 0.4, length: 0.5 };
/** What neither has ever seen is not ruled out by one of them. */
const LEAST = 1e-6;

type Chances = Record<string, number>;

function pooled(weights: Chances, kind: keyof typeof CLASSES, network: readonly number[] | undefined): Chances {
  if (!network || network.length === 0) return weights;
  const share = SHARE[kind];
  const products = CLASSES[kind].map(
    (name, at) => [name, ((weights[name] ?? 0) + LEAST) ** (1 - share) * ((network[at] ?? 0) + LEAST) ** share] as const,
  );
  const total = products.reduce((sum, [, product]) => sum + product, 0);
  return Object.fromEntries(products.map(([name, product]) => [name, product / total]));
}

const contextOf = (page: Page, { network }: Learned): Context | undefined => (network ? page.context(network) : undefined);

/** The chances of one date. */
export const dateChances = (page: Page, date: DateMention, learned: Learned): Chances =>
  pooled(chancesIn(learned.date, dateFeatures(page, date)), 'date', contextOf(page, learned)?.dates.get(date.start));

/** The chances of one hour, or of a number that might be one. */
export const timeChances = (page: Page, time: SaidTime, learned: Learned): Chances =>
  pooled(chancesIn(learned.time, timeFeatures(page, time)), 'time', contextOf(page, learned)?.times.get(time.start));

/** The chances that one day is asked for, or more, or that the days are open. */
export const lengthChances = (page: Page, learned: Learned): Chances =>
  pooled(chancesIn(learned.length, lengthFeatures(page.scene)), 'length', contextOf(page, learned)?.length);
