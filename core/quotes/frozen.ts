/**
 * What a made quote was priced from, frozen with it: the bill at wrap is the same pricing on the hours that were worked.
 */
import type { DraftChange } from '../contract/quotes.ts';
import type { RateCard } from '../contract/rates.ts';
import type { PublicHoliday } from '../contract/setup.ts';
import type { BookDay } from '../fit/book.ts';
import type { QuotedTrip } from './trip.ts';

export type FrozenInputs = {
  card: RateCard;
  /** The client's own terms first, then what was changed by hand. */
  changes: readonly DraftChange[];
  days: readonly BookDay[];
  trip: QuotedTrip | null;
  publicHolidays: readonly PublicHoliday[];
};
