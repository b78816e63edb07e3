/**
 * Learns the weights of the reader from the messages that may be used for tuning, and writes them to assets/reader/learned.tsv.
 *   npm run --silent learn
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { Learned, Model } from '../../core/inquiries/learned/models.ts';
import { casesIn } from './cases.ts';
import { messages, type Message } from './corpus.ts';
import { fit } from './fit.ts';
import { SAME, taught } from './ways.ts';

const FILE = new URL('../../assets/reader/learned.tsv', import.meta.url);

/** A hash of everything that is learned from and of what is seen of it, in the order of the names. */
export function stamp(): string {
  const hash = createHash('sha256');
  for (const folder of ['messages', 'ways', '../../core/inquiries/learned']) {
    const from = new URL(`${folder}/`, import.meta.url);
    for (const name of readdirSync(from).toSorted())
      if (!/^(?:held|seen)-/.test(name)) hash.update(`${name}\n${readFileSync(new URL(name, from), 'utf8')}`);
  }
  return hash.digest('hex');
}

/** The hash of what the weights on file were learned from. */
export function learnedFrom(): string | undefined {
  return /^% (\S+)/.exec(readFileSync(FILE, 'utf8'))?.[1];
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

if (process.argv[1] === import.meta.filename) {
  const learned = learn([...messages('tuned'), ...messages('opened')]);
  const text = [`% ${stamp()}`, ...Object.entries(learned).flatMap(([name, model]) => lines(name, model))].join('\n');
  writeFileSync(FILE, `${text}\n`);
  for (const [name, { weights }] of Object.entries(learned)) console.log(`${name}: ${weights.size} words`);
}
