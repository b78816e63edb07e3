/**
 * What a rate card may not say. The contract checks each value by itself; here they are checked against one another.
 */
import type { RateCardFields } from '../contract/rates.ts';
import { exact } from '../money/exact.ts';

export type CardTrouble = { field: string; sentence: string };

const rising = (dates: readonly string[]): boolean => dates.every((date, order) => order === 0 || date > (dates[order - 1] ?? ''));

/** Everything about a card that contradicts itself, as field and sentence; none when it can be saved. */
export function checkCard(card: RateCardFields): CardTrouble[] {
  const troubles: CardTrouble[] = [];
  const say = (field: string, sentence: string): void => void troubles.push({ field, sentence });

  if (card.validTo !== null && card.validTo < card.validFrom) say('validTo', 'lies before the first date; give a later one or none');
  if (exact(card.dayHours).lte(0) || exact(card.dayHours).gt(24)) say('dayHours', 'must be more than 0 and at most 24 hours');
  if (exact(card.halfUpToHours).lte(0)) say('halfUpToHours', 'must be more than 0 hours');
  if (exact(card.halfUpToHours).gt(exact(card.dayHours))) say('halfUpToHours', 'is longer than the day; a half day ends before it');
  if (exact(card.halfPercent).gt(100)) say('halfPercent', 'makes a half day dearer than a day; give at most 100');
  checkOvertime(card, say);
  if (!rising(card.mileage.map((rate) => rate.from)))
    say('mileage', 'has two rates for one date or dates that do not rise; put them in order');
  checkSteps('rush', card.rush, say);
  checkSteps('terms.cancellation', card.terms.cancellation, say);
  const doubled = card.kit.find((fee, order) => card.kit.findIndex((other) => other.name === fee.name) !== order);
  if (doubled) say('kit', `names "${doubled.name}" twice; keep one`);
  return troubles;
}

/** Steps by notice: each number of hours once, and less notice never costs less. */
function checkSteps(field: string, steps: RateCardFields['rush'], say: (field: string, sentence: string) => void): void {
  const longestFirst = steps.toSorted((a, b) => b.underHours - a.underHours);
  longestFirst.forEach((step, order) => {
    const longer = longestFirst[order - 1];
    if (!longer) return;
    if (longer.underHours === step.underHours) say(field, `has two steps under ${step.underHours} h; keep one`);
    else if (exact(step.percent).lt(exact(longer.percent)))
      say(
        field,
        `asks ${step.percent} % under ${step.underHours} h but ${longer.percent} % under ${longer.underHours} h; less notice costs no less`,
      );
  });
}

function checkOvertime(card: RateCardFields, say: (field: string, sentence: string) => void): void {
  card.overtime.forEach((tier, order) => {
    const next = card.overtime[order + 1];
    if (tier.toHours !== null && exact(tier.toHours).lte(exact(tier.fromHours))) say(`overtime.${order}`, 'ends before it begins');
    if (tier.toHours === null && next) say(`overtime.${order}`, 'has no end though another follows; give it one');
    if (!next) return;
    if (tier.toHours !== null && exact(next.fromHours).lt(exact(tier.toHours)))
      say(`overtime.${order + 1}`, 'begins before the one above it ends');
    if (exact(next.times).lt(exact(tier.times))) say(`overtime.${order + 1}`, 'costs less than the one above it; overtime rises');
  });
}
