/**
 * Learns the weights of the reader from the messages that may be used for tuning, and writes them to assets/reader/learned.tsv.
 *   npm run --silent learn
 */
import { writeFileSync } from 'node:fs';
import type { Learned, Model } from '../../core/inquiries/learned/models.ts';
import { casesIn } from './cases.ts';
import { messages, type Message } from './corpus.ts';
import { fit } from './fit.ts';
import { SAME, taught } from './ways.ts';

/** Chosen by leaving out one writer's messages at a time. */
export function learn(from: readonly Message[]): Learned {
  const cases = casesIn(from);
  const ways = taught();
  const gala = casesIn(ways.gala, SAME);
  return {
    kind: fit([...cases.kind, ...casesIn(ways.kinds).kind], { trust: 60, balanced: true, seldom: 2 }),
    time: fit([...cases.time, ...gala.time], { trust: 8, balanced: false, seldom: 3 }),
    date: fit([...cases.date, ...gala.date], { trust: 5, balanced: false, seldom: 3 }),
  };
}

function lines(name: string, { classes, weights }: Model): string[] {
  return [
    `# ${name} ${classes.join(' ')}`,
    ...[...weights]
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([feature, row]) => [feature, ...row.map((one) => Math.round(one * 100))].join('\t')),
  ];
}

if (process.argv[1] === import.meta.filename) {
  const learned = learn([...messages('tuned'), ...messages('opened')]);
  const text = Object.entries(learned)
    .flatMap(([name, model]) => lines(name, model))
    .join('\n');
  writeFileSync(new URL('../../assets/reader/learned.tsv', import.meta.url), `${text}\n`);
  for (const [name, { weights }] of Object.entries(learned)) console.log(`${name}: ${weights.size} words`);
}
