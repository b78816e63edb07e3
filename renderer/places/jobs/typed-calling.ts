/**
 * A calling off as typed, turned into what the contract asks for. What cannot be read names its input; what is still empty is only missing.
 */
import type { Trouble } from '../../../core/contract/base.ts';
import { exponentOf } from '../../../core/money/currencies.ts';
import { parseAmount } from '../../../core/money/parse.ts';
import { Reader } from '../../parts/reader.ts';
import { typedMoment } from '../../parts/typed-moment.ts';

/** `told` is a wall time at home. */
export type TypedCalling = { how: 'cancel' | 'postpone'; to: string; told: string; bound: string; depositPaid: string };
type Asked = { postponeTo: string | null; told?: string; bound?: string; depositPaid?: string };

/** @returns `asked` with what could be read, so that the sum can be shown while the rest is typed */
export function callingOf(
  typed: TypedCalling,
  homeZone: string,
  currency: string,
): { asked: Asked; trouble: Trouble | null; missing: Trouble | null } {
  const [reader, empty] = [new Reader(), new Reader()];
  const asked: Asked = { postponeTo: typed.how === 'cancel' || typed.to === '' ? null : typed.to };
  if (typed.how === 'postpone' && typed.to === '') empty.refuse('postponeTo', 'is missing; without an agreed date the job is cancelled');
  for (const name of ['bound', 'depositPaid'] as const) {
    if (typed[name].trim() === '') continue;
    const amount = reader.take(name, parseAmount(typed[name], exponentOf(currency)));
    if (amount?.startsWith('-')) reader.refuse(name, 'is below zero; give zero or more');
    else if (amount !== undefined) asked[name] = amount;
  }
  const told = reader.take('told', typedMoment(typed.told, homeZone));
  if (told !== undefined) asked.told = told;
  return { asked, trouble: reader.trouble, missing: empty.trouble };
}
