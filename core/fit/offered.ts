/**
 * Which lifts are offered: those that can still be done and make nothing worse, beside what is tried on already:
 * neither the answer, nor more to be settled for the same answer.
 */
import type { Finding, FitResult, Lift } from '../contract/fit.ts';
import type { TryOn } from '../contract/try-on.ts';
import { instantOf } from '../time/read.ts';
import { combined } from './combined.ts';
import { WORSE } from './findings.ts';

const MOST_LATER = 48 * 60;
const MOST_EARLIER = 24 * 60;

type Assessed = Pick<FitResult, 'answer' | 'findings'>;

/** @param assess what is found with changes tried on */
export function offered(result: FitResult, tried: TryOn, now: number, assess: (tryOn: TryOn) => Assessed): FitResult {
  // Several findings may offer the same; it is worked out once.
  const known = new Map<string, boolean>();
  const isNoWorse = (tryOn: TryOn): boolean => {
    const key = JSON.stringify(tryOn);
    const before = known.get(key);
    if (before !== undefined) return before;
    const noWorse = !isWorse(assess(combined([tried, tryOn])), result);
    known.set(key, noWorse);
    return noWorse;
  };
  const helps = (lift: Lift): Lift[] => {
    if (!lift.tryOn || onlyClears(lift.tryOn)) return [lift];
    const tryOn = asAWhole(lift.tryOn, tried);
    return canBeDone(tryOn, now) && isNoWorse(tryOn) ? [{ ...lift, tryOn }] : [];
  };
  return { ...result, findings: result.findings.map((finding) => ({ ...finding, lifts: finding.lifts.flatMap(helps) })) };
}

/** Time of other calendars that is moved away takes a finding away and makes none, so that it need not be worked out. */
function onlyClears(tryOn: TryOn): boolean {
  return Object.keys(tryOn).every((name) => name === 'withoutImported');
}

function isWorse(after: Assessed, before: Assessed): boolean {
  const worse = WORSE[after.answer] - WORSE[before.answer];
  return worse > 0 || (worse === 0 && hardOnes(after.findings) > hardOnes(before.findings));
}

function hardOnes(findings: readonly Finding[]): number {
  return findings.filter(({ hardness }) => hardness !== 'know').length;
}

/** A call that is later still than one that is tried on already is said from the call that was asked for, and so is a wrap. */
function asAWhole(lift: TryOn, tried: TryOn): TryOn {
  const { firstCallLaterMinutes: later, lastWrapEarlierMinutes: earlier, ...rest } = lift;
  return {
    ...rest,
    ...(later === undefined ? {} : { firstCallLaterMinutes: later + (tried.firstCallLaterMinutes ?? 0) }),
    ...(earlier === undefined ? {} : { lastWrapEarlierMinutes: earlier + (tried.lastWrapEarlierMinutes ?? 0) }),
  };
}

function canBeDone({ firstCallLaterMinutes = 0, lastWrapEarlierMinutes = 0, legs = [] }: TryOn, now: number): boolean {
  const ahead = legs.every(({ depart, from }) => instantOf(depart, from.zone).epochMilliseconds >= now);
  return ahead && firstCallLaterMinutes <= MOST_LATER && lastWrapEarlierMinutes <= MOST_EARLIER;
}
