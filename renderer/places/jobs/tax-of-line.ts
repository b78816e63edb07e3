/** How a line stands to my taxes, as it is chosen in a form. */
import type { DraftChange, QuoteLine } from '../../../core/contract/quotes.ts';
import { joined } from '../../../core/words/lists.ts';

/** `names` is null for all of my taxes. */
type TaxChosen = { state: 'rated' | 'exempt' | 'reverse charge'; names: readonly string[] | null };
type TaxOption = { value: string; label: string; chosen: TaxChosen };

const keyOf = (names: readonly string[]): string => `only ${joined(names)}`;

/** All taxes, each alone where there are more, or none with its reason; and what stands now, where it is something else. */
export function taxOptions(mine: readonly string[], bears?: QuoteLine['bears']): TaxOption[] {
  const alone = mine.length > 1 ? mine.map((name) => [name]) : [];
  const now = bears?.names ?? mine;
  const other = now.length > 1 && now.length < mine.length ? [now] : [];
  return [
    { value: 'taxed', label: mine.length > 1 ? `taxed: ${joined(mine)}` : 'taxed', chosen: { state: 'rated', names: null } },
    ...[...alone, ...other].map((names) => ({ value: keyOf(names), label: keyOf(names), chosen: { state: 'rated' as const, names } })),
    { value: 'exempt', label: 'exempt', chosen: { state: 'exempt', names: null } },
    { value: 'reverse charge', label: 'reverse charge', chosen: { state: 'reverse charge', names: null } },
  ];
}

/** The option that a line stands on now. */
export function taxNow(mine: readonly string[], bears: QuoteLine['bears']): string {
  if (bears?.state === 'exempt' || bears?.state === 'reverse charge') return bears.state;
  return bears && bears.names.length < mine.length ? keyOf(bears.names) : 'taxed';
}

/** The change that puts lines, or all of them, on an option. */
export function taxChange(option: TaxOption | undefined, reason: string, ids?: string[]): DraftChange[] {
  if (!option) return [];
  const { state, names } = option.chosen;
  return [
    {
      op: 'tax',
      state,
      ...(ids ? { ids } : {}),
      ...(names ? { names: [...names] } : {}),
      ...(state !== 'rated' && reason.trim() !== '' ? { reason } : {}),
    },
  ];
}
