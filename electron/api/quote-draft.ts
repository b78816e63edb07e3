/**
 * A job's quote as it is priced now: what the store knows, joined with the rules of `core/quotes`.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { Place } from '../../core/contract/parts.ts';
import type { Client } from '../../core/contract/people.ts';
import type { DraftChange, QuoteDraft } from '../../core/contract/quotes.ts';
import type { RateCard } from '../../core/contract/rates.ts';
import type { PublicHoliday, SetupFields } from '../../core/contract/setup.ts';
import type { BookDay } from '../../core/fit/book.ts';
import { defaultExpiry } from '../../core/jobs/pencil.ts';
import { momentAt } from '../../core/quotes/deadlines.ts';
import type { FrozenInputs } from '../../core/quotes/frozen.ts';
import type { PriceInput } from '../../core/quotes/input.ts';
import { priceQuote } from '../../core/quotes/price.ts';
import { closedBetween } from '../../core/people/closed.ts';
import { cardFor, changesFor } from '../../core/people/terms.ts';
import { quotedTrip, type QuotedTrip } from '../../core/quotes/trip.ts';
import { epochOf, wallAt } from '../../core/time/read.ts';
import { drivenLegs } from '../../core/trips/driven.ts';
import { ticketsAndWays } from '../../core/trips/legs.ts';
import { planTrip } from '../../core/trips/plan.ts';
import { wayFinder } from '../../core/trips/ways.ts';
import type { Wear } from '../../core/quotes/costs.ts';
import type { Hand } from '../../core/contract/people.ts';
import { belongingsOf } from '../../db/book.ts';
import { daysOf } from '../../db/job-days.ts';
import { jobById } from '../../db/jobs.ts';
import { allItems, kitOfJob } from '../../db/kit.ts';
import { clientById, handById } from '../../db/people.ts';
import { changesOf, type KeptChanges } from '../../db/quotes.ts';
import { allCards } from '../../db/rates.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { bookWays } from '../../db/trips.ts';
import { holidaysOf } from './holidays.ts';
import { badInput, notFound, refused } from './trouble.ts';

/** Everything that a quote is made from. */
export type QuoteFacts = {
  job: Job;
  /** Who gave the job, where that is known. */
  client: Client | undefined;
  days: readonly BookDay[];
  setup: SetupFields;
  kept: KeptChanges;
  trip: QuotedTrip | null;
  hands: readonly Hand[];
  wear: readonly Wear[];
  draft: QuoteDraft;
  /** What the draft is priced from, to be frozen with a version. */
  inputs: FrozenInputs;
};

/**
 * Load and price the quote of a job.
 * @param now epoch milliseconds
 * @throws NOT_FOUND without the job, REFUSED without my details or a rate card, BAD_INPUT when an amount is past what is reckoned with
 */
export function quoteFacts(db: ReadableDb, jobId: string, now: number): QuoteFacts {
  const job = jobById(db, jobId, now);
  if (!job) throw notFound('This job');
  const setup = setupRow(db)?.fields;
  if (!setup) throw refused('My details are not set up.', 'Fill in Setup first: a quote needs a home and a currency.');
  const days = daysOf(db, jobId);
  const client = job.client ? clientById(db, job.client.id) : undefined;
  const date = days[0]?.date ?? wallAt(now, setup.home.zone).slice(0, 10);
  const chosen = cardFor(allCards(db), job.role, date, setup.currency, client);
  if (!chosen) throw refused('There is no rate card.', 'Make one under Rates: a role and what a day costs are enough.');
  const trip = tripOf(db, job, days, setup);
  const kept = changesOf(db, jobId);
  const known = { job, client, days, setup, kept, trip, hands: handsNamed(db, kept), wear: wearOf(db, jobId) };
  const { card } = chosen;
  return {
    ...known,
    draft: draftOf({ ...known, card, cardCaution: chosen.caution, now }),
    inputs: { card, changes: allChanges(client, kept), days, trip, publicHolidays: holidaysAt(job.place ?? setup.home, days, card) },
  };
}

/** What was said by hand on this quote comes after the client's own terms, and so has the last word. */
export function allChanges(client: Client | undefined, { batches }: KeptChanges): DraftChange[] {
  return [...(client ? changesFor(client) : []), ...batches.flat()];
}

/** A job's quote as another card would price it at an instant, with the facts and changes that stand now. */
export function quoteAt(db: ReadableDb, jobId: string, card: RateCard, at: number): QuoteDraft {
  return draftOf({ ...quoteFacts(db, jobId, at), card, cardCaution: null, now: at });
}

type DraftInput = Omit<QuoteFacts, 'draft' | 'inputs'> & { card: RateCard; cardCaution: string | null; now: number };

function draftOf({ job, client, days, card, cardCaution, setup, trip, hands, wear, kept, now }: DraftInput): QuoteDraft {
  const changes = allChanges(client, kept);
  const publicHolidays = holidaysAt(job.place ?? setup.home, days, card);
  const asPriced = priced(
    { job, days, publicHolidays, card, cardCaution, setup, trip, hands, wear, changes, draftVersion: kept.draftVersion, now },
    changes,
  );
  const draft = {
    ...asPriced,
    undoable: kept.batches.length,
    ...closedOf(asPriced, client, days, wallAt(now, setup.home.zone).slice(0, 10)),
  };
  const lastWrap = days.at(-1)?.wrapAt;
  if (lastWrap === undefined || lastWrap <= now) return draft;
  const expiry = defaultExpiry({
    now,
    validUntil: epochOf(draft.validUntil.at),
    doorOut: trip?.doorOutAt ?? days[0]?.callAt ?? null,
    replyBy: job.replyBy ? epochOf(job.replyBy.at) : null,
    zone: setup.home.zone,
  });
  return {
    ...draft,
    pencilUntil: momentAt(expiry.at, setup.home.zone),
    cautions: expiry.caution ? [...draft.cautions, expiry.caution] : draft.cautions,
  };
}

/** The client's own holidays from today to first call, where the terms count business days: they are frozen with the version. */
function closedOf(
  { terms }: QuoteDraft,
  client: Client | undefined,
  days: readonly BookDay[],
  today: string,
): Pick<QuoteDraft, 'clientClosed'> {
  const firstDate = days[0]?.date;
  if (terms.cancelBy !== 'business days' || !client?.closed || firstDate === undefined) return {};
  const clientClosed = closedBetween(client.closed, today, firstDate);
  return clientClosed.length > 0 ? { clientClosed } : {};
}

function priced(input: PriceInput, changes: readonly DraftChange[]): QuoteDraft {
  try {
    return priceQuote(input);
  } catch (error) {
    if (error instanceof RangeError)
      throw badInput([{ field: `changes.${Math.max(0, changes.length - 1)}`, sentence: `cannot be reckoned with. ${error.message}` }]);
    throw error;
  }
}

/** Public holidays at the place; they are not asked for where a holiday costs nothing more. */
function holidaysAt(place: Place, days: readonly BookDay[], { holidayPercent }: RateCard): PublicHoliday[] {
  if (Number(holidayPercent) === 0) return [];
  return holidaysOf({ country: place.country, region: place.region, years: days.map(({ date }) => Number(date.slice(0, 4))) });
}

/** Hands that the changes name, put away or not. */
function handsNamed(db: ReadableDb, { batches }: KeptChanges): Hand[] {
  const ids = batches.flat().flatMap((change) => (change.op === 'hand' ? [change.handId] : []));
  return [...new Set(ids)].flatMap((id) => handById(db, id) ?? []);
}

/** The kit of a job with what a shoot day wears off it. */
function wearOf(db: ReadableDb, jobId: string): Wear[] {
  const needs = kitOfJob(db, jobId);
  const items = needs.length > 0 ? allItems(db) : [];
  return needs.map(({ item, name, count }) => ({ id: item, name, count, perDay: items.find(({ id }) => id === item)?.wearPerDay ?? null }));
}

/** The trip from home to home: by its tickets, else by the way that was typed, else by the long end of the estimate. */
export function tripOf(db: ReadableDb, job: Job, days: readonly BookDay[], setup: SetupFields): QuotedTrip | null {
  const { place } = job;
  if (!place || days.length === 0) return null;
  const { legs } = belongingsOf(db, [job.id])(job.id);
  const { tickets, ways: typed } = ticketsAndWays(legs);
  const ways = [...typed, ...bookWays(db, setup.distance)];
  const restMinutes = Math.round(Number(setup.restHours) * 60);
  const plan = planTrip({ home: setup.home, place, days, ways, restMinutes, tickets });
  const { mode } = wayFinder(ways)(setup.home, place);
  const driven = drivenLegs(legs, place, days, setup.distance);
  const trip = quotedTrip({ plan, mode, days, homeZone: setup.home.zone, placeZone: place.zone, restMinutes });
  return driven.length > 0 ? { ...trip, driven } : trip;
}
