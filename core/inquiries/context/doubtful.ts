/**
 * Whether the days that were settled are to be asked about after all, by everything that was learned taken together: that they are those of the job,
 * that no other date is one, and that as many are asked for.
 */
import type { Page } from '../learned/features.ts';
import type { Learned } from '../learned/models.ts';
import { OF_ELSE } from '../settle/days-among.ts';
import type { EventDays } from '../settle/scene.ts';
import { dateChances, lengthChances } from './chances.ts';

/**
 * How much each chance speaks for days that are wrong, as logarithms of odds: logistic regression over the messages of the sets from 18 to 96 that
 * had taught neither weights nor network, of which 30 in 1,760 had other days than rules found.
 */
const SPEAKS = { theirs: -0.35, length: -0.6, other: 0.25 };
/** Above this the days are asked about: one in twenty of those that rules found in these sets, and every second of the wrong ones. */
const DOUBTFUL = -2.7;
/** "We only need you on the Saturday", "day one only", "only the brunch needs filming": that one is wanted is said in so many words. */
const ONLY =
  /\b(?:only|just) (?:(?:really )?(?:need|want|require|like)s? you|the \p{L}+ needs?)\b|\b(?:day|night|evening) (?:one|two|three|\d) (?:only|alone)\b/iu;
/** Of a day that no date in the words names. */
const UNNAMED = 0.2;
/** Nothing is surer than this. */
const LEAST = 2e-3;

/** The logarithm of the odds of a chance. */
const odds = (chance: number): number => Math.log((chance + LEAST) / (1 - chance + LEAST));

/** Days that are rather asked about than stated. */
export function areDoubtful({ dates: days, dropped }: EventDays, page: Page, learned: Learned): boolean {
  const { dates, received, text } = page.scene;
  // The words speak of the whole run, also where one of its days is wanted.
  if (dropped && ONLY.test(text)) return false;
  const [first = '', last = ''] = [days[0], days.at(-1)];
  const today = received.toPlainDate().toString();
  const weighed = dates.map((date) => ({ date, named: date.readings[0] ?? [], chance: dateChances(page, date, learned)['event'] ?? 0 }));
  const chance = (day: string): number => {
    const naming = weighed.filter(({ named }) => named.includes(day)).map((one) => one.chance);
    return naming.length > 0 ? Math.max(...naming) : UNNAMED;
  };
  const others = weighed.filter(
    ({ named, date }) =>
      !date.past &&
      date.readings.length === 1 &&
      !OF_ELSE.has(date.said) &&
      (named.at(-1) ?? '') >= today &&
      !named.some((day) => day >= first && day <= last),
  );
  const { one = 0, more = 0 } = lengthChances(page, learned);
  const theirs = odds(Math.min(chance(first), chance(last)));
  const length = odds(days.length === 1 ? one : more);
  const other = odds(Math.max(0, ...others.map((mention) => mention.chance)));
  return SPEAKS.theirs * theirs + SPEAKS.length * length + SPEAKS.other * other > DOUBTFUL;
}
