/**
 * What they can pay: the amount that is offered, not the price of a ticket, a hotel or last year's film.
 */
import type { z } from 'zod';
import type { Budget as BudgetSchema } from '../../contract/inquiries.ts';
import { currenciesFor, currenciesSaid, dollarsSaid } from '../money/currency.ts';
import type { Amount } from '../money/units.ts';
import { sentenceAround } from '../parts/sentences.ts';
import { isLoneOffer } from './lone-price.ts';
import { weighedOffer } from './offered.ts';
import { OUT_OF, standings } from './other-prices.ts';
import { isEither, isOr } from './price-choices.ts';
import { paidPer } from './paid-per.ts';
import type { Where } from './scene.ts';

type Budget = z.infer<typeof BudgetSchema>;
export type BudgetRead = {
  budget?: Budget;
  where: Where[];
  choices: Budget[];
  ask?: 'amount' | 'currency' | 'per';
};

/** More amounts than this are a price list. */
const MOST_AMOUNTS = 2000;
/** An amount that takes another's place stands no further from it. */
const NEAR = 70;
/** How far behind an amount is said in which money it is. */
const MONEY_REACH = 110;
/** More than that nobody offers one person with a camera, in the money of these countries, without saying that it is for the film. */
const MOST_FOR_A_JOB = 8000;
const DEAR: ReadonlySet<string> = new Set(['GBP', 'EUR', 'USD', 'CAD', 'AUD', 'NZD', 'CHF', 'SGD']);
const OF_FILM = /\b(?:film\w*|video\w*|camera\w*|for you|your|to you|edit\w*)\b/i;
/** Whether the sentence of an amount says that it is for the film. */
function isForFilm(text: string, where: Where): boolean {
  const { start, end } = sentenceAround(text, where.start, where.end);
  return OF_FILM.test(text.slice(start, end));
}
/** From these chances on an amount of which no rule makes an offer is asked about, and taken for it where it is the only one. */
const LIKELY = { asked: 0.5, taken: 0.96 };
/** What an amount gains that follows from others or stands in my row. */
const MEANT = 3;

/** "… is what we paid in 2024" */
const isYear = (amount: number): boolean => amount >= 1990 && amount < 2100;

/** "The $500 is per day": said of an amount wherever else it stands. */
const IS_DAILY =
  /^ (?:is|was|'s|means?|would be|was meant)(?: meant)?(?: as| to be)? (?:per|a|for each|for every|each) (?:\p{L}+ )?day\b/iu;
/** An amount that no longer holds was pay, too: "65 an hour was last year's". */
const WAS_MINE =
  /\b(?:last (?:year|time|month)|was|were|used to|previous\w*|instead|not|no longer|old|before|earlier|paid|wrong|ignore|forget|sorry|raised|too|than)\b/i;
/** What extra hours are paid by says nothing of the rest. */
const OVERTIME =
  /\b(?:overtime|ot|over(?:run|s)?|extra hours?|after (?:ten|eight|twelve|\d{1,2})(?: hours| h)?|überstunden?|(?:heures? )?sup(?:plémentaires?)?)\b/i;

/**
 * Decide on the offer. Two amounts, two currencies or no unit of time are asked; for a job of one day an amount without a unit is for the job.
 * @param days how many days the job has, where its days are known; without them an amount without a unit is only asked about
 * @param chance how likely an amount is the offer, from 0 to 1, by the words around it
 * @param least an offer that rules find and that is less likely is asked about
 */
export function budgetOf(
  text: string,
  amounts: readonly Amount[],
  taken: (where: Where) => boolean,
  {
    days,
    chance,
    least,
    ...currencies
  }: {
    days: number | undefined;
    home: string | undefined;
    places: readonly string[];
    chance: (amount: Amount) => number;
    least: number;
  },
): BudgetRead {
  if (amounts.length > MOST_AMOUNTS) return { where: [], choices: [] };
  let previous = 0;
  const paid = amounts.filter((amount) => !taken(amount) || amount.mark !== undefined || amount.per !== undefined);
  const standing = standings(text, paid);
  let rejected = false;
  const weighed = paid.map((written, index) => {
    // "65 an hour was last year's, it's 75 now": the unit stays.
    const replaced = paid[index - 1];
    const kept =
      replaced !== undefined &&
      (standing[index - 1] === 'aside' ||
        (rejected &&
          WAS_MINE.test(text.slice(Math.max(0, replaced.start - NEAR), written.start)) &&
          !OVERTIME.test(text.slice(Math.max(0, replaced.start - NEAR), replaced.end + NEAR)))) &&
      written.start - replaced.end < NEAR &&
      !OUT_OF.test(text.slice(replaced.end, written.start)) &&
      !(written.mark === undefined && isYear(written.amount))
        ? replaced.per
        : undefined;
    const per = written.per ?? (standing[index] === 'sum' ? 'job' : kept === 'day' || kept === 'hour' ? kept : undefined);
    // "It cost 900 euros then, this time it may be 1,300"
    const mark = written.mark ?? (standing[index] === 'meant' && written.per === undefined ? replaced?.mark : undefined);
    const amount = {
      ...written,
      ...(per === undefined ? {} : { per }),
      ...(mark === undefined ? {} : { mark }),
    };
    const score = weighedOffer(text, amount, previous);
    rejected = score < 0;
    previous = amount.end;
    return {
      amount,
      written,
      score: standing[index] === 'aside' ? -1 : standing[index] === undefined ? score : Math.max(score, 0) + MEANT,
    };
  });
  // The only price in a message is the offer, unless its words say otherwise; beside prices of other things it must be no small one.
  const prices = weighed.filter(({ amount }) => amount.mark !== undefined);
  const open = prices.filter(({ amount, score }) => score >= 0 && (prices.length === 1 || amount.amount >= 100));
  const offers = weighed.filter(
    (one) =>
      one.score >= 1.5 ||
      (one.score >= 0.5 &&
        open[0] === one &&
        isLoneOffer(text, one.amount) &&
        open.every(({ amount }) => amount.amount === one.amount.amount)),
  );
  // Of two that are told as one or the other, neither is surer.
  const ruled =
    offers.toSorted((a, b) => b.score - a.score)[0] ?? open.find((one) => open.some((other) => isEither(text, one.amount, other.amount)));
  const [likely, ...others] = ruled
    ? []
    : weighed
        .filter(({ score }) => score >= 0)
        .map((one) => ({ ...one, chance: chance(one.written) }))
        .filter((one) => one.chance >= LIKELY.asked)
        .toSorted((a, b) => b.chance - a.chance);
  const best = ruled ?? likely;
  if (!best) return { where: [], choices: [] };
  const { amount } = best;
  const where = [{ start: amount.start, end: amount.end }];
  // "Four hundred for the day (call it 400)"
  const again = paid.find((other) => other.amount === amount.amount && other.per !== undefined);
  const daily = paid.some((other) => other.amount === amount.amount && IS_DAILY.test(text.slice(other.end, other.end + NEAR)));
  const per = daily ? 'day' : paidPer(text, again && amount.per === undefined ? again : amount, days);
  const said = amount.mark === '$' || amount.mark?.startsWith('DOLLAR') ? dollarsSaid(text) : undefined;
  const left = currenciesSaid(
    text.slice(Math.max(0, amount.start - MONEY_REACH), amount.start),
    text.slice(amount.end, amount.end + MONEY_REACH),
    amount.mark,
  );
  const found = left ?? (said === undefined ? currenciesFor(amount.mark, currencies.home, currencies.places) : [said]);
  const shaped = (value: number, currency: string | undefined): Budget => ({
    amount: value,
    ...(currency ? { currency } : {}),
    ...(per ? { per } : {}),
  });
  const single = found.length === 1 ? found[0] : undefined;
  // Equally likely ones; those that are told as the other of two; and other money beside an "or".
  const near = weighed.filter((other) => offers.includes(other) && other.score >= best.score - 0.5);
  const rivals = weighed.filter(
    (other) =>
      other.amount.amount !== amount.amount &&
      !sums(amount, other.amount, days) &&
      (near.includes(other) || (other.score >= 0 && isEither(text, amount, other.amount)) || isOr(text, amount, other.amount)),
  );
  if (amount.upTo !== undefined && amount.upTo > amount.amount)
    return {
      where,
      choices: [shaped(amount.amount, single), shaped(amount.upTo, single)],
      ask: 'amount',
    };
  // So much is rather what the whole occasion costs.
  if (
    amount.amount > MOST_FOR_A_JOB &&
    (amount.mark !== undefined || amount.paid) &&
    single !== undefined &&
    DEAR.has(single) &&
    !isForFilm(text, amount)
  )
    return { where, choices: [shaped(amount.amount, single)], ask: 'amount' };
  if (rivals.length > 0)
    return {
      where,
      choices: [amount, ...rivals.map((rival) => rival.amount)].slice(0, 4).map((one) => ({
        ...shaped(one.amount, currenciesFor(one.mark, currencies.home, currencies.places)[0]),
        ...perPart(text, one, days),
      })),
      ask: 'amount',
    };
  const budget = shaped(amount.amount, single);
  if (likely ? others.length > 0 || likely.chance < LIKELY.taken : chance(best.written) < least)
    return {
      where,
      choices: [best, ...others].slice(0, 4).map((one) => ({ ...budget, amount: one.amount.amount, ...perPart(text, one.amount, days) })),
      ask: 'amount',
    };
  if (found.length > 1 || (left && single === undefined))
    return {
      budget,
      where,
      choices: found.map((currency) => shaped(amount.amount, currency)),
      ask: 'currency',
    };
  if (!per) {
    const choices = (['day', 'job'] as const).map((unit) => ({ ...budget, per: unit }));
    return { ...(days === undefined ? {} : { budget }), where, choices, ask: 'per' };
  }
  return { budget, where, choices: [] };
}

/** "450 a day, 900 in all": two amounts that say the same. */
const sums = (one: Amount, other: Amount, days: number | undefined): boolean =>
  one.per === 'day' && days !== undefined && days > 1 && other.amount === one.amount * days;

/** The unit of time of one of several amounts, where it has one. */
function perPart(text: string, amount: Amount, days: number | undefined): Pick<Budget, 'per'> {
  const per = paidPer(text, amount, days);
  return per ? { per } : {};
}
