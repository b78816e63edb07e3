/**
 * What a quote is priced from.
 */
import type { Job } from '../contract/jobs.ts';
import type { DraftChange } from '../contract/quotes.ts';
import type { Hand } from '../contract/people.ts';
import type { RateCard } from '../contract/rates.ts';
import type { PublicHoliday, SetupFields } from '../contract/setup.ts';
import type { BookDay } from '../fit/book.ts';
import type { Wear } from './costs.ts';
import type { PricedLine } from './line.ts';
import type { QuotedTrip } from './trip.ts';

export type PriceInput = {
  job: Pick<Job, 'id' | 'role' | 'place' | 'budget' | 'received' | 'deliverables' | 'edits'>;
  /** Paid dates with their instants. */
  days: readonly BookDay[];
  /** First call as it was agreed, epoch milliseconds, where the days are those that were worked: notice and deposit go by it. */
  agreedCallAt?: number;
  /** Lines beside card and trip, such as expenses that are charged on. */
  more?: readonly PricedLine[];
  /** Public holidays at the place around those dates: a hint. */
  publicHolidays: readonly PublicHoliday[];
  card: RateCard;
  /** Why this card, where it is not quite the one asked for. */
  cardCaution: string | null;
  setup: SetupFields;
  /** Null when place or days are not known. */
  trip: QuotedTrip | null;
  /** Hands that the changes may name. */
  hands: readonly Hand[];
  /** The job's kit, with its wear. */
  wear: readonly Wear[];
  changes: readonly DraftChange[];
  draftVersion: number;
  /** Epoch milliseconds. */
  now: number;
};
