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
 * How much each chance speaks for days that are wrong, as logarithms of odds: logistic regression over the messages of the sets from 91 to 106, which
 * taught neither weights nor network, of which 68 in 1,215 had other days than rules found; rounded towards what the sets before them said when they
 * had taught neither.
 */
const SPEAKS = { theirs: -0.57, length: -0.45, other: 0.23 };
/** Above this the days are asked about: one in twenty of those that rules found in these sets, and four in five of the wrong ones. */
const DOUBTFUL = -2.6;
/** From this chance on the days are not known yet. */
const OPEN = 0.5;
/** Below this chance one day is asked about however it was found; and below that one, where rules took it out of a run. */
const ONE = 0.7;
const ONE_OF_RUN = 0.2;
/** "We only need you on the Saturday", "just the last night": that one is wanted is said in so many words. */
const ONE_ONLY =
  /\b(?:only|just) (?:(?:really )?(?:need|want|require|like)s? )?(?:you|it|this|that|the|on|for)\b|\b(?:day|night|evening) (?:one|two|three|\d) (?:only|alone)\b/i;
/** "We only need you on the Saturday", "day one only", "only the brunch needs filming". */
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
  // "The fair is on 12 November. I am away from 11 December.": no other is left, and of this one rules know the words.
  if (others.length === 0 && weighed.every(({ named, date }) => date.said === 'event' || !named.some((day) => days.includes(day))))
    return false;
  const { one = 0, more = 0 } = lengthChances(page, learned);
  const theirs = odds(Math.min(chance(first), chance(last)));
  const length = odds(days.length === 1 ? one : more);
  const other = odds(Math.max(0, ...others.map((mention) => mention.chance)));
  return SPEAKS.theirs * theirs + SPEAKS.length * length + SPEAKS.other * other > DOUBTFUL;
}

/** True where the words of a message leave its days open, or hardly speak of the one day that was found. */
export function isOtherLength({ dates, dropped }: EventDays, page: Page, learned: Learned): boolean {
  const { one = 0, open = 0 } = lengthChances(page, learned);
  // The words speak of the whole run, also where one of its days is wanted.
  if (dropped) return dates.length === 1 && one < ONE_OF_RUN && !ONE_ONLY.test(page.scene.text);
  return open >= OPEN || (dates.length === 1 && one < ONE);
}
