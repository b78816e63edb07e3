/**
 * Which taxes a line of a quote bears: mine, unless I am not registered or it was said that a line is exempt or reverse charged.
 */
import type { SetupFields } from '../contract/setup.ts';
import type { Tax } from '../money/taxes.ts';
import type { TaxChange } from './changes.ts';

const reasons = {
  exempt: 'Exempt from tax.',
  'reverse charge': 'Reverse charge: the recipient accounts for the tax.',
};

/** The taxes that my details put on every line; a sender who is not registered charges none. */
export function taxesOf(setup: Pick<SetupFields, 'registered' | 'tax' | 'moreTaxes'>): Tax[] {
  if (!setup.registered || !setup.tax) return [];
  return [setup.tax, ...(setup.moreTaxes ?? [])].map(({ name, percent, compound }) => ({
    name,
    percent,
    state: 'rated',
    reason: '',
    ...(compound ? { compound } : {}),
  }));
}

/** The taxes of one line; the last word about it counts. */
export function taxesOfLine(id: string, mine: readonly Tax[], changes: readonly TaxChange[]): Tax[] {
  const said = changes.findLast((change) => change.ids?.includes(id) ?? true);
  if (!said) return [...mine];
  const borne = mine.filter((tax) => said.names?.includes(tax.name) ?? true);
  const { state } = said;
  if (state === 'rated') return borne;
  return borne.map(({ name }) => ({ name, percent: '0', state, reason: said.reason || reasons[state] }));
}
