/**
 * The message that asks a hand for dates, as a draft to copy.
 */
import type { JobDay } from '../contract/jobs.ts';
import type { Hand } from '../contract/people.ts';
import type { Place, Role } from '../contract/parts.ts';
import { formatPrice } from '../money/format.ts';
import { dateInWords, zoneInWords } from '../words/dates.ts';
import { rolesInWords } from '../words/roles.ts';
import { ratesOn } from './hand-rates.ts';

type AskHand = {
  hand: Pick<Hand, 'name' | 'rates'>;
  role: Role;
  place: Place;
  /** Those that they would cover, wall times at the place. */
  days: readonly JobDay[];
  /** Who asks. */
  from: string;
};

/** Each day with its hours and what it pays by the rate of its date; a day without a rate asks for it. */
export function askHandText({ hand, role, place, days, from }: AskHand): string {
  const lines = days.map(({ date, call, wrap }) => {
    const rate = ratesOn(hand.rates, date).find((each) => each.role === role);
    const pay = rate ? `, ${rate.currency} ${formatPrice(rate.dayRate, rate.currency)} for the day` : ', please name your price';
    const nextDate = wrap.slice(0, 10) === call.slice(0, 10) ? '' : ' on the next date';
    return `- ${dateInWords(date)}, ${call.slice(11)} to ${wrap.slice(11)}${nextDate}${pay}`;
  });
  return [
    `Hello ${hand.name.split(' ')[0] ?? hand.name},`,
    '',
    `could you cover ${rolesInWords[role]} in ${place.name} for me?`,
    '',
    ...lines,
    '',
    `The hours are by the clock of ${zoneInWords(place.zone)}. Please tell me yes or no; nothing is booked until then.`,
    '',
    'Best regards,',
    from,
  ].join('\n');
}
