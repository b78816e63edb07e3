/**
 * Rounds as they are met: what the store knows of them, joined with the rules of `core/deliverables`.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { DeliverableRounds, Round } from '../../core/contract/rounds.ts';
import { cutsOf } from '../../core/deliverables/cuts.ts';
import { amountOfFurther, furtherPrice, type FurtherPrice } from '../../core/deliverables/further-round.ts';
import { datesForClient, leftInWords, sendingForClient, standingInWords, type Move } from '../../core/deliverables/round-words.ts';
import { businessDaysLate, notesDue, passOf, type RoundCalendars } from '../../core/deliverables/rounds.ts';
import { frameRates } from '../../core/deliverables/timecode.ts';
import { exact } from '../../core/money/exact.ts';
import { closedDates } from '../../core/people/closed.ts';
import { instantText } from '../../core/time/read.ts';
import { dateIn, dateLater } from '../../core/time/wall.ts';
import { clientById } from '../../db/people.ts';
import { editById, notesOf, roundsOf, stagesOf, type EditRow, type RoundRow } from '../../db/rounds.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { agreedTerms } from './agreed-terms.ts';
import type { Context } from './context.ts';
import { holidayDates } from './holidays.ts';
import { whole } from './job-deed.ts';
import { homeZone } from './job-facts.ts';
import { notFound } from './trouble.ts';

/** The longest window is 120 business days; twice as many dates hold it with every holiday. */
const AHEAD_DAYS = 400;

/** Everything that is known of the rounds of one deliverable. */
export type RoundFacts = { job: Job; edit: EditRow; rounds: RoundRow[]; calendars: RoundCalendars; now: number };

/** @throws NOT_FOUND without the deliverable */
export function roundFacts(db: ReadableDb, context: Context, deliverableId: string): RoundFacts {
  const edit = editById(db, deliverableId);
  if (!edit) throw notFound('This deliverable');
  const now = context.now();
  const job = whole(db, edit.jobId, now);
  const rounds = roundsOf(db, edit.id);
  const from = Math.min(now, ...rounds.map(({ sentAt }) => sentAt));
  return { job, edit, rounds, calendars: calendarsOf(db, context, job.client?.id ?? null, from), now };
}

/** The calendars of both of us from an instant on (epoch milliseconds): a client's own closed dates, and the holidays of their country. */
export function calendarsOf(db: ReadableDb, context: Context, clientId: string | null, from: number): RoundCalendars {
  const zone = homeZone(db, context);
  const home = setupRow(db)?.fields.home;
  const client = clientId === null ? undefined : clientById(db, clientId);
  const first = dateIn(zone, from);
  const last = dateLater(dateIn(zone, context.now()), AHEAD_DAYS);
  const own = closedDates(client?.closed ?? []);
  const theirs = client?.country ? own.union(holidayDates({ country: client.country, region: '' }, first, last)) : own;
  return { zone, mine: home ? holidayDates(home, first, last) : new Set(), theirs };
}

/** What the notes of a further round cost by the card that was agreed on; null where that is not known or nothing. */
export function priceOfFurther(db: ReadableDb, { job, edit }: Pick<RoundFacts, 'job' | 'edit'>): FurtherPrice | null {
  const card = agreedTerms(db, job)?.card;
  return card && exact(edit.hoursPerRound).gt(0) && exact(card.editHour).gt(0) ? furtherPrice(edit.hoursPerRound, card) : null;
}

/** One round as the contract shows it. */
export function roundAsMet(db: ReadableDb, facts: RoundFacts, row: RoundRow): Round {
  const { job, edit, calendars, now } = facts;
  const { stageId, number, what, windowDays, dueBack, notesAt, included, notes, moved } = row;
  const items = notesOf(db, row.id);
  const lost = businessDaysLate(dueBack, notesAt ?? now, calendars);
  const ticked = items.filter(({ doneAt }) => doneAt !== null).length;
  const came = notesAt === null ? null : dateIn(calendars.zone, notesAt);
  const price = row.price ?? (included ? null : priceOfFurther(db, facts));
  return {
    id: row.id,
    version: row.version,
    deliverableId: edit.id,
    stageId,
    number,
    what,
    sentAt: instantText(row.sentAt),
    windowDays,
    dueBack,
    notesAt: notesAt === null ? null : instantText(notesAt),
    included,
    lost,
    sentence: standingInWords({ cut: what, dueBack, came, lost, notes: items.length, ticked }),
    notes,
    items: items.map(({ roundId: _round, toFrame: _to, doneAt, ...item }) => ({
      ...item,
      doneAt: doneAt === null ? null : instantText(doneAt),
    })),
    price: row.price && { ...row.price, amount: amountOfFurther(row.price) },
    moved,
    message: sendingForClient({
      what: edit.name,
      title: job.title,
      cut: what,
      pass: passOf(facts.rounds.filter((earlier) => earlier.number < number)),
      included: edit.rounds,
      dueBack,
      due: moved?.from ?? edit.dueDate,
      price,
    }),
  };
}

/** All rounds of a deliverable, and the next. */
export function roundsAsMet(db: ReadableDb, facts: RoundFacts): DeliverableRounds {
  const { job, edit, rounds, calendars, now } = facts;
  const included = passOf(rounds) <= edit.rounds;
  const price = included ? null : priceOfFurther(db, facts);
  const moves = movesOf(facts);
  return {
    now: instantText(now),
    rounds: rounds.map((row) => roundAsMet(db, facts, row)),
    next: rounds.some(({ notesAt }) => notesAt === null)
      ? null
      : {
          included,
          windowDays: edit.windowDays,
          dueBack: notesDue(now, edit.windowDays, calendars),
          price: price && amountOfFurther(price),
          cuts: cutsOf(stagesOf(db, edit.id)),
        },
    sentence: leftInWords(edit.rounds, passOf(rounds) - 1),
    rate: edit.format.rate,
    rates: frameRates.map(({ name }) => name),
    dates:
      moves[0] && edit.dueDate !== null
        ? datesForClient({ what: edit.name, title: job.title, promised: edit.agreedDueDate ?? moves[0].from, due: edit.dueDate, moves })
        : null,
    cautions: job.client ? [] : [`${job.title} names no client: their own holidays are not left out of the window.`],
  };
}

/** The dates of a deliverable that late notes moved, first to last: what a delivery note says of them. */
export function movesOf({ rounds, calendars }: Pick<RoundFacts, 'rounds' | 'calendars'>): Move[] {
  return rounds.flatMap(({ what, dueBack, notesAt, moved }) =>
    moved && notesAt !== null
      ? [{ cut: what, dueBack, came: dateIn(calendars.zone, notesAt), lost: moved.lost, from: moved.from, to: moved.to }]
      : [],
  );
}
