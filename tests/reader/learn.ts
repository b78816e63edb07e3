/**
 * Learns the weights and the network of the reader from the messages that may be used for tuning, and writes them to assets/reader: half an hour.
 *   npm run --silent learn
 *   npm run --silent learn -- network    (or learned) only the one of the two
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { networkLines } from '../../core/inquiries/context/file.ts';
import type { Learned, Model } from '../../core/inquiries/learned/models.ts';
import { casesIn } from './cases.ts';
import { messages, type Message } from './corpus.ts';
import { fit } from './fit.ts';
import { examplesIn } from './network/examples.ts';
import { train } from './network/train.ts';
import { SAME, taught } from './ways.ts';

const ON_FILE = {
  learned: new URL('../../assets/reader/learned.tsv', import.meta.url),
  network: new URL('../../assets/reader/network.tsv', import.meta.url),
};
/** Where what is seen of a message is made, and how it is learned where that is a matter of its own. */
const FOLDERS = { learned: ['../../core/inquiries/learned'], network: ['../../core/inquiries/context', 'network'] };
/** Nothing is learned from these, and what is made of the chances shapes none of them. */
const UNLEARNED = {
  learned: /^(?:held-|seen-|(?:call|days|hours|reply|said|surest)\.ts$)/,
  network: /^(?:held-|seen-|(?:chances|doubtful)\.ts$)/,
};
type Of = keyof typeof ON_FILE;
/** The same lot and as many rounds give the same network. */
const PLAN = { seed: 1, rounds: 6 };

/** A hash of everything that the weights or the network are learned from and of what is seen of it, in the order of the names. */
export function stamp(of: Of): string {
  const hash = createHash('sha256');
  if (of === 'network') hash.update(`${JSON.stringify(PLAN)}\n${readFileSync(new URL('cases.ts', import.meta.url), 'utf8')}`);
  for (const folder of ['messages', 'ways', ...FOLDERS[of]]) {
    const from = new URL(`${folder}/`, import.meta.url);
    for (const name of readdirSync(from).toSorted())
      if (!UNLEARNED[of].test(name)) hash.update(`${name}\n${readFileSync(new URL(name, from), 'utf8')}`);
  }
  return hash.digest('hex');
}

/** The hash of what the weights or the network on file were learned from. */
export function learnedFrom(of: Of): string | undefined {
  return /^% (\S+)/.exec(readFileSync(ON_FILE[of], 'utf8'))?.[1];
}

/** Chosen by leaving out one writer's messages at a time. */
export function learn(from: readonly Message[]): Learned {
  const cases = casesIn(from);
  const ways = taught();
  const gala = casesIn(ways.gala, SAME);
  return {
    kind: fit([...cases.kind, ...casesIn(ways.kinds).kind], { trust: 60, balanced: true, seldom: 2 }),
    time: fit([...cases.time, ...gala.time], { trust: 8, balanced: false, seldom: 3 }),
    date: fit([...cases.date, ...gala.date], { trust: 5, balanced: false, seldom: 3 }),
    part: fit(cases.part, { trust: 5, balanced: false, seldom: 3 }),
    half: fit(cases.half, { trust: 8, balanced: false, seldom: 3 }),
    pay: fit(cases.pay, { trust: 10, balanced: false, seldom: 4 }),
    offer: fit(cases.offer, { trust: 6, balanced: false, seldom: 3 }),
    party: fit(cases.party, { trust: 5, balanced: false, seldom: 4 }),
    length: fit([...cases.length, ...casesIn(ways.lengths).length], { trust: 10, balanced: false, seldom: 4 }),
    town: fit(cases.town, { trust: 5, balanced: false, seldom: 4 }),
    role: fit(cases.role, { trust: 20, balanced: true, seldom: 6 }),
  };
}

function lines(name: string, { classes, weights }: Model): string[] {
  return [
    [`# ${name}`, ...classes].join('\t'),
    ...[...weights]
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([feature, row]) => [feature, ...row.map((one) => Math.round(one * 100))].join('\t')),
  ];
}

/** What is written to each file. */
const LEARN: Record<Of, (from: readonly Message[]) => string[]> = {
  learned: (from) => {
    const { network: _, ...models } = learn(from);
    for (const [name, { weights }] of Object.entries(models)) console.log(`${name}: ${weights.size} words`);
    return Object.entries(models).flatMap(([name, model]) => lines(name, model));
  },
  network: (from) => {
    const ways = taught();
    const examples = [...examplesIn(from), ...examplesIn(ways.gala, SAME), ...examplesIn(ways.lengths)];
    const report = (round: number, loss: number): void =>
      console.log(`network, round ${round + 1} of ${PLAN.rounds}: loss ${loss.toFixed(4)}`);
    return networkLines(train(examples, { ...PLAN, report }));
  },
};

if (process.argv[1] === import.meta.filename) {
  const [only] = process.argv.slice(2);
  if (only !== undefined && !Object.hasOwn(LEARN, only)) {
    console.error(`"${only}" is not learned; nothing was changed. There are: ${Object.keys(LEARN).join(', ')}.`);
    process.exit(1);
  }
  // By the seen ones it is found how much the chances speak for a doubt.
  const from = [...messages('tuned'), ...messages('opened')];
  for (const of of Object.keys(LEARN) as Of[]) {
    if (only !== undefined && of !== only) continue;
    writeFileSync(ON_FILE[of], `${[`% ${stamp(of)}`, ...LEARN[of](from)].join('\n')}\n`);
  }
}
