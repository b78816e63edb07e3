/**
 * What of a calendar does not count as busy, and why: counted, with one of them as an example.
 */
import { countInWords } from '../words/amounts.ts';

export const whys = [
  'own',
  'free',
  'cancelled',
  'no time',
  'outside',
  'broken',
  'too large',
  'too many',
  'too often',
  'not repeated',
  'rule',
  'zone',
] as const;
export type LeftOut = { why: (typeof whys)[number]; count: number; example: string };

/** Names that are told apart; a file that invents more of them is only counted. */
const MOST_NAMES = 1_000;

export class Tally {
  readonly #counts = new Map<LeftOut['why'], LeftOut>();
  readonly #noted = new Set<string>();

  add(why: LeftOut['why'], example: string): void {
    const before = this.#counts.get(why);
    if (before) before.count += 1;
    else this.#counts.set(why, { why, count: 1, example });
  }

  /** Count a name once, however often it is met. */
  note(why: LeftOut['why'], name: string): void {
    if (this.#noted.has(name) || this.#noted.size >= MOST_NAMES) return;
    this.#noted.add(name);
    this.add(why, name);
  }

  all(): LeftOut[] {
    return whys.flatMap((why) => this.#counts.get(why) ?? []);
  }
}

const ending: Readonly<Record<Exclude<LeftOut['why'], 'zone'>, string>> = {
  own: 'written by Kitbound itself',
  free: 'marked as free',
  cancelled: 'cancelled',
  'no time': 'without length',
  outside: 'too far from today',
  broken: 'that cannot be read',
  'too large': 'too large',
  'too many': 'beyond what is kept of one calendar',
  'too often': 'repeated too often to be kept whole',
  'not repeated': 'kept once only, because repeating it took too long',
  rule: 'kept once only, because its repetition cannot be read',
};
/** Where it matters which one. */
const NAMED: ReadonlySet<LeftOut['why']> = new Set(['broken', 'too large', 'too often', 'not repeated', 'rule']);

/** "3 events marked as free", "1 clock that nobody knows, as Foo, read on the clock of this calendar". */
export function leftOutInWords({ why, count, example }: LeftOut): string {
  if (why === 'zone') return `${countInWords(count, 'clock')} that nobody knows, as ${example}, read on the clock of this calendar`;
  const named = NAMED.has(why) && example !== '' ? `, as ${example}` : '';
  return `${countInWords(count, 'event')} ${ending[why]}${named}`;
}
