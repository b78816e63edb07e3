/**
 * What they can pay: the amount that is offered, not the price of a ticket, a hotel or last year's film.
 */
import type { z } from 'zod';
import type { Budget as BudgetSchema } from '../../contract/inquiries.ts';
import { currenciesFor } from '../money/currency.ts';
import type { Amount } from '../money/find.ts';
import { sentenceAround } from '../parts/sentences.ts';
import type { Where } from './scene.ts';

type Budget = z.infer<typeof BudgetSchema>;
type BudgetRead = { budget?: Budget; where: Where[]; choices: Budget[]; ask?: 'amount' | 'currency' | 'per' };

const OFFERED =
  /\b(?:budget(?:ed)?|rate|day rate|pay(?:ing|s)?|fee|offer(?:ing)?|can (?:do|go|stretch|offer|afford)|could (?:do|go|stretch)|up to|max(?:imum)?|cap(?:ped)?|we have|i have|we've got|got|around|about|roughly|approx|quote|cost|charge|price|happy with|allocated|set aside|spend|total|flat|all[- ]in|money|honorarium|work for you|ok with|okay with|is that ok)\b/gi;
const STRONG =
  /\b(?:budget(?:ed)?|day rate|our rate|the rate|rate is|rate of|rate:|pays?|paying|fee|honorarium|offer(?:ing)?|can (?:do|go|offer|afford)|allocated|set aside)\b/i;
const JOB_WORDS = /\b(?:pauschal|forfait|budget(?:ed)?|total|flat|all[- ]in|fee|lump|whole|honorarium|allocated|set aside)\b/i;
const JOB_AFTER =
  /^[^.;?!]{0,30}?\b(?:budget|total|flat|fee|all[- ]in|in all|all up|inclusive|set aside|budgeted|altogether|honorarium|for the (?:whole|entire|lot|job|edit|morning|afternoon|evening|night|weekend|set|pair|series)|for (?:all|both|the) (?:\w+ )?(?:days|shifts|nights|evenings))\b/i;
const RATE_WORDS = /\b(?:day[- ]rate|daily rate|tagessatz|tagesgage|tarif journalier|tarifa diaria|dagtarief|tariffa giornaliera)\b/i;
const HOUR_WORDS = /\b(?:hourly(?: rate)?)\b/i;
const ELSE =
  /\b(?:tickets?|admission|entry|registration|parking|hotel|rooms?|raised?|raising|prize|donat\w*|fundrais\w*|revenue|turnover|worth|valued|insurance|liability|cover of|deposit|invoice|last year|last time|previous\w*|paid|per diem|travel|mileage|flights?|meals?|catering|venue hire|venue|dinner|lunch|seats?|plates?|members?|members|equipment|rental|hire of|sponsor\w*|grant|capacity|attend\w*|people|guests|delegates|runners|square|sq|model|serial|order|zip|postcode|box|suite|street|road|avenue|drive|highway|channel|fps|iso|resolution|px|kbps|mbps|watts?|volts?|charged|other (?:guy|videographer|company)|someone else|competitor|extra|additional|on top|plus expenses of|kit fee|expenses?|photographer (?:is|at|was)|fine)\b/gi;

const PAST_PRICE = /\b(?:last (?:year|time|month)|previous\w*|used to|cost us|charged us|we paid|paid)\b/gi;

/** The word for money and the word for something else that stand nearest before an amount. */
function lastIndex(pattern: RegExp, text: string): number {
  let last = -1;
  for (const match of text.matchAll(pattern)) last = match.index + match[0].length;
  return last;
}

function weigh(text: string, amount: Amount, previous: number): number {
  if (amount.per === 'other') return -1;
  const sentence = sentenceAround(text, amount.start, amount.end);
  const before = text.slice(Math.max(sentence.start, amount.start - 110, previous), amount.start);
  const after = text.slice(amount.end, Math.min(sentence.end, amount.end + 40));
  const offered = lastIndex(OFFERED, before);
  const otherwise = lastIndex(ELSE, before);
  const past = lastIndex(PAST_PRICE, before);
  if (past >= 0 && !/\bcan (?:do|go|offer|pay)\b/i.test(before.slice(past)) && !/\b(?:this year|now|same|again)\b/i.test(before)) return -1;
  const afterElse =
    /^(?:[\s,-]{0,3}(?:(?:for|in|of|per|a|an|the|each|worth)\s){1,2}|[\s-]{0,2})(?:tickets?|people|guests|deposit|entry|prize|attend\w*|delegates|parking|hotel|travel|mileage|expenses|seats|insurance|liability|members|students|runners|sq|fps|px|w\b|watts|gb|tb|mb|miles|km|kg|lbs?|feet|ft|metres|meters|hours|minutes|years?|for (?:the )?(?:travel|hotel|flights|parking|mileage|expenses|kit|gear))/i.test(
      after,
    );
  if (afterElse) return -1;
  // "kit fee" ends with a word for an offer and is none.
  if (otherwise >= 0 && otherwise >= offered) return -1;
  const daily = amount.per === 'day' || amount.per === 'hour';
  const strong = STRONG.test(before) || /^[\s,]{0,2}(?:budget|is (?:our|the|my) (?:budget|max\w*|limit|rate)|day rate)/i.test(after);
  if (amount.mark === undefined && amount.per === undefined && !strong) return -1;
  let score = 0;
  if (daily) score += 2;
  if (amount.per === 'job') score += 1.5;
  if (amount.mark !== undefined) score += 0.5;
  if (offered >= 0) score += 1;
  if (strong) score += 1.5;
  return score;
}

/**
 * Decide on the offer. Two amounts, two currencies or no unit of time are asked; for a job of one day an amount without a unit is for the job.
 * @param days how many days the job has, where that is known
 */
export function budgetOf(
  text: string,
  amounts: readonly Amount[],
  taken: (where: Where) => boolean,
  { days, ...currencies }: { days: number | undefined; home: string | undefined; place: string | undefined },
): BudgetRead {
  const marked = amounts.filter((amount) => amount.mark !== undefined && amount.per !== 'other');
  const offers: { amount: Amount; score: number }[] = [];
  let previous = 0;
  for (const amount of amounts) {
    if (taken(amount) && amount.mark === undefined && amount.per === undefined) continue;
    const score = weigh(text, amount, previous);
    previous = amount.end;
    // The only price in a message is the offer, unless its words say otherwise.
    const only = marked.length === 1 && marked[0] === amount && score >= 0.5;
    if (score >= 1.5 || only) offers.push({ amount, score });
  }
  const best = offers.toSorted((a, b) => b.score - a.score)[0];
  if (!best) return { where: [], choices: [] };
  const { amount } = best;
  const where = [{ start: amount.start, end: amount.end }];
  const per = perOf(text, amount, days);
  const found = currenciesFor(amount.mark, currencies.home, currencies.place);
  const shaped = (value: number, currency: string | undefined): Budget => ({
    amount: value,
    ...(currency ? { currency } : {}),
    ...(per ? { per } : {}),
  });
  const single = found.length === 1 ? found[0] : undefined;
  const joined = (other: Amount): boolean =>
    /^,?\s?or\s(?:maybe )?$/i.test(text.slice(amount.end, other.start)) ||
    /^,?\s?or\s(?:maybe )?$/i.test(text.slice(other.end, amount.start));
  const rivals = [
    ...offers.filter((other) => other.amount.amount !== amount.amount && other.score >= best.score - 0.5),
    ...amounts
      .filter(
        (other) =>
          other !== amount &&
          other.mark !== undefined &&
          joined(other) &&
          !offers.some((offer) => offer.amount === other && offer.score >= best.score - 0.5),
      )
      .map((other) => ({ amount: other, score: 0 })),
  ];
  if (amount.upTo !== undefined && amount.upTo > amount.amount)
    return { where, choices: [shaped(amount.amount, single), shaped(amount.upTo, single)], ask: 'amount' };
  if (rivals.length > 0)
    return {
      where,
      choices: [amount, ...rivals.map((rival) => rival.amount)].slice(0, 4).map((one) => ({
        ...shaped(one.amount, currenciesFor(one.mark, currencies.home, currencies.place)[0]),
        ...perPart(text, one, days),
      })),
      ask: 'amount',
    };
  const budget = shaped(amount.amount, single);
  if (found.length > 1) return { budget, where, choices: found.map((currency) => shaped(amount.amount, currency)), ask: 'currency' };
  if (!per) return { budget, where, choices: (['day', 'job'] as const).map((unit) => ({ ...budget, per: unit })), ask: 'per' };
  return { budget, where, choices: [] };
}

/** The unit of time of one of several amounts, where it has one. */
function perPart(text: string, amount: Amount, days: number | undefined): Pick<Budget, 'per'> {
  const per = perOf(text, amount, days);
  return per ? { per } : {};
}

function perOf(text: string, amount: Amount, days: number | undefined): 'day' | 'job' | 'hour' | undefined {
  if (amount.per === 'day' || amount.per === 'job' || amount.per === 'hour') return amount.per;
  const sentence = sentenceAround(text, amount.start, amount.end);
  const around = text.slice(Math.max(sentence.start, amount.start - 60), amount.start);
  const after = text.slice(amount.end, Math.min(sentence.end, amount.end + 50));
  if (RATE_WORDS.test(around) || /^\s(?:as a )?day rate|^[^.;?!]{0,42}\bfor the day\b/i.test(after)) return 'day';
  if (HOUR_WORDS.test(around)) return 'hour';
  return JOB_WORDS.test(around) || JOB_AFTER.test(after) || days === 1 ? 'job' : undefined;
}
