/**
 * Weights learned from messages that people labelled: how much each word near a date, or anywhere in a message, speaks for each reading.
 * A model is multinomial logistic regression: the chance of a class is the softmax of the sums of its words' weights
 * (Hastie, Tibshirani and Friedman, The Elements of Statistical Learning, 2nd edition, section 4.4, 2009).
 */

import type { Network } from '../context/network.ts';

export type Model = { classes: readonly string[]; weights: ReadonlyMap<string, readonly number[]> };
const modelNames = ['kind', 'time', 'date', 'part', 'half', 'role', 'pay', 'offer', 'party', 'length', 'town'] as const;
export type ModelName = (typeof modelNames)[number];
/** The models, and the network that reads a message in its order. */
export type Learned = Readonly<Record<ModelName, Model>> & { readonly network?: Network };

/** The feature that every case has. */
export const ALWAYS = '*';

/**
 * Read the list of weights: `% ` says what they were learned from, `# name class class ...` begins a model, then one line a feature with its weight for each class, in
 * hundredths; all parted by tabs. The list ships with the program, so a broken line is a mistake of ours.
 * @throws RangeError naming the line that is not whole, or the model that is missing
 */
export function readLearned(text: string): Learned {
  const models = new Map<string, { classes: string[]; weights: Map<string, number[]> }>();
  let model: { classes: string[]; weights: Map<string, number[]> } | undefined;
  for (const [index, line] of text.split('\n').entries()) {
    if (line === '' || line.startsWith('% ')) continue;
    if (line.startsWith('# ')) {
      const [name = '', ...classes] = line.slice(2).split('\t');
      model = { classes, weights: new Map() };
      models.set(name, model);
      continue;
    }
    const [feature = '', ...rest] = line.split('\t');
    const weights = rest.map((one) => Number(one) / 100);
    if (!model || weights.length !== model.classes.length || weights.some((one) => !Number.isFinite(one)))
      throw new RangeError(`line ${index + 1} of the learned weights is not whole`);
    model.weights.set(feature, weights);
  }
  const named = (name: ModelName): Model => {
    const found = models.get(name);
    if (!found) throw new RangeError(`the learned weights have no model of ${name}`);
    return found;
  };
  return Object.fromEntries(modelNames.map((name) => [name, named(name)])) as Record<ModelName, Model>;
}

/** The chance of each class, from 0 to 1, in the order of the model's classes. However many features a case has, together they count the same. */
function chancesOf({ classes, weights }: Model, features: Iterable<string>): number[] {
  const known = [...features].flatMap((feature) => [weights.get(feature) ?? []]).filter((weight) => weight.length > 0);
  const scale = 1 / Math.sqrt(Math.max(1, known.length));
  const sums = classes.map((_, at) => known.reduce((sum, weight) => sum + (weight[at] as number) * scale, weights.get(ALWAYS)?.[at] ?? 0));
  const most = Math.max(...sums);
  const powers = sums.map((sum) => Math.exp(sum - most));
  const total = powers.reduce((sum, power) => sum + power, 0);
  return powers.map((power) => power / total);
}

/** The chance of each class by its name. */
export function chancesIn(model: Model, features: Iterable<string>): Record<string, number> {
  const chances = chancesOf(model, features);
  return Object.fromEntries(model.classes.map((name, at) => [name, chances[at] ?? 0]));
}

/** The likeliest class and its chance. */
export function likeliest(model: Model, features: Iterable<string>): { is: string; chance: number } {
  const chances = chancesOf(model, features);
  const best = chances.reduce((top, chance, at) => (chance > (chances[top] as number) ? at : top), 0);
  return { is: model.classes[best] ?? '', chance: chances[best] ?? 0 };
}
