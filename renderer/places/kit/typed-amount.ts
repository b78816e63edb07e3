import type { Money } from '../../../core/contract/parts.ts';
import { exponentOf } from '../../../core/money/currencies.ts';
import { fixedText } from '../../../core/money/exact.ts';
import { majorOf } from '../../../core/money/money.ts';

/** An amount as it is typed, without its currency; nothing where it is not known. */
export const amountText = (amount: Money | null): string => (amount ? fixedText(majorOf(amount), exponentOf(amount.currency)) : '');
