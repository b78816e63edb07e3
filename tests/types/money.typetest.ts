/**
 * Read by the compiler only: amounts of two currencies must not mix. A line that would compile after all fails as an unused expectation.
 */
import { taxLines } from '../../core/money/taxes.ts';
import { add, compare, lineAmount, money, negate, subtract, sum, type Money } from '../../core/money/money.ts';
import { shareOut } from '../../core/money/share.ts';

const dollars = money(100, 'USD');
const euros = money(100, 'EUR');

const total: Money<'USD'> = add(dollars, subtract(dollars, negate(dollars)));
const line: Money<'JPY'> = lineAmount('2', '500', 'JPY');
const shares: Money<'USD'>[] = shareOut(total, [1, 2]);
const whole: Money<'USD'> = sum('USD', shares);
// Where the currency is only known at run time, mixing throws instead.
const loose: Money = whole;
add(loose, line as Money);

// @ts-expect-error dollars and euros
add(dollars, euros);
// @ts-expect-error dollars and euros
subtract(euros, dollars);
// @ts-expect-error dollars and euros
compare(dollars, euros);
// @ts-expect-error a sum of two currencies
sum('USD', [dollars, euros]);
// @ts-expect-error a sum named in another currency than its parts
sum('EUR', [dollars]);
// @ts-expect-error shares keep their currency
const wrong: Money<'EUR'>[] = shareOut(dollars, [1, 2]);
// @ts-expect-error a line in another currency than the paper
taxLines('EUR', [{ amount: dollars, taxes: [] }], false);
// @ts-expect-error an amount needs a currency
const bare: Money = { minor: 100 };

export const read = [wrong, bare];
