/**
 * Which rate card prices a job: by role and by the date of its first call.
 */
import type { RateCardFields } from '../contract/rates.ts';
import type { Role } from '../contract/parts.ts';

/** A card that was found, and a caution where it is not quite the one asked for. */
export type ChosenCard<T> = { card: T; caution: string | null };

/**
 * The card of a role that is valid on a date: the newest that begins on or before it and has not ended.
 * Without one, the nearest card of that role, else the newest for shooting, else the newest of any role, each with a caution that says so.
 * @param date first call of the job, YYYY-MM-DD
 */
export function chooseCard<T extends Pick<RateCardFields, 'name' | 'role' | 'validFrom' | 'validTo'>>(
  cards: readonly T[],
  role: Role,
  date: string,
): ChosenCard<T> | undefined {
  const newestFirst = cards.toSorted((a, b) => (a.validFrom < b.validFrom ? 1 : a.validFrom > b.validFrom ? -1 : 0));
  const valid = (card: T): boolean => card.validFrom <= date && (card.validTo === null || card.validTo >= date);
  const ofRole = newestFirst.filter((card) => card.role === role);

  const right = ofRole.find(valid);
  if (right) return { card: right, caution: null };
  const near = ofRole.find((card) => card.validFrom <= date) ?? ofRole.at(-1);
  if (near)
    return {
      card: near,
      caution: `No rate card for ${role} is valid on ${date}; "${near.name}" is used, valid from ${near.validFrom}${near.validTo ? ` to ${near.validTo}` : ''}.`,
    };
  // Running a camera is priced nearest to shooting, and so are most roles that have no card of their own.
  const stand = newestFirst.filter((card) => card.role === 'shoot');
  const other = stand.find(valid) ?? newestFirst.find(valid) ?? stand[0] ?? newestFirst[0];
  return other && { card: other, caution: `There is no rate card for ${role}; "${other.name}" is used, which is for ${other.role}.` };
}
