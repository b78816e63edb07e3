/**
 * Prints precision and recall of the reader for each field, with 95 % intervals, for each part of the messages.
 *   npm run --silent reader [-- --misses tuned|opened|seen|held]
 */
import { messages, type Half } from './corpus.ts';
import { interval, score, type Count } from './scores.ts';

const args = process.argv.slice(2);
const shown = args[0] === '--misses' ? (args[1] ?? 'tuned') : undefined;
const only = args.includes('--only') ? args[args.indexOf('--only') + 1] : undefined;

function share(right: number, of: number): string {
  if (of === 0) return '-'.padEnd(22);
  const [low, high] = interval(right, of);
  return `${(right / of).toFixed(3)} (${low.toFixed(3)} to ${high.toFixed(3)})`;
}

function line(name: string, { right, stated, there }: Count): string {
  return `${name.padEnd(14)} ${String(right).padStart(5)} ${String(stated).padStart(6)} ${String(there).padStart(6)}   ${share(right, stated)}   ${share(right, there)}`;
}

const titles: Record<Half, string> = {
  tuned: 'Messages used for tuning',
  opened: 'Messages of harder hands, mended by in part',
  seen: 'Messages mended by, of which no weights were learned',
  held: 'Messages held out',
};

for (const half of ['tuned', 'opened', 'seen', 'held'] as const satisfies Half[]) {
  if (only !== undefined && only !== half) continue;
  const all = messages(half);
  const { counts, misses } = score(all);
  console.log(`\n${titles[half]}: ${all.length}`);
  console.log(`${'field'.padEnd(14)} right stated  there   precision (95 %)         recall (95 %)`);
  const total = { right: 0, stated: 0, there: 0 };
  for (const [field, count] of counts) {
    console.log(line(field, count));
    if (field === 'isInquiry' || field === 'questions') continue;
    total.right += count.right;
    total.stated += count.stated;
    total.there += count.there;
  }
  console.log(line('all fields', total));
  const grave = misses.filter(({ field, wrong }) => wrong && ['start', 'end', 'firstCall'].includes(field));
  console.log(`wrong start, end or first call: ${grave.length}`);
  if (shown !== half) continue;
  for (const { id, field, want, got, wrong } of misses)
    console.log(`${wrong ? 'WRONG ' : 'missed'} ${id} ${field}: want ${JSON.stringify(want)} got ${JSON.stringify(got)}`);
}
