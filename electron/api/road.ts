/**
 * The road between two dates at home: the stringline with the kit and the edit lane.
 */
import { triedOn } from '../../core/fit/try-on.ts';
import { chooseCard } from '../../core/rates/choose.ts';
import { busyLane } from '../../core/road/busy-lane.ts';
import { datesTaken, editLane, editPieces } from '../../core/road/edit-lane.ts';
import { handsLane } from '../../core/road/hands-lane.ts';
import { kitLane } from '../../core/road/kit-lane.ts';
import { linesOf } from '../../core/road/lines.ts';
import { stringlineOf } from '../../core/road/stringline.ts';
import { instantText } from '../../core/time/read.ts';
import { dateLater } from '../../core/time/wall.ts';
import { jobById } from '../../db/jobs.ts';
import { allCards } from '../../db/rates.ts';
import type { ReadableDb } from '../../db/store.ts';
import { asIfMoved, bookNear, jobOnBooks, midnight, ownSetup, spanOf } from './book.ts';
import { os } from './os.ts';
import { notFound } from './trouble.ts';

const see = os.road.see.handler(({ input, context }) =>
  context.store.read((db) => {
    const now = context.now();
    const { zone } = ownSetup(db).home;
    const until = dateLater(input.from, input.days);
    const span = { from: midnight(input.from, zone), to: midnight(until, zone) };
    const job = input.candidate === undefined ? null : jobById(db, input.candidate, now);
    if (job === undefined) throw notFound('This job');
    const near = bookNear(db, { ...span, now, leaveOutJob: job?.id ?? null });
    const stored = job && jobOnBooks(db, job);
    const laid = stored && asIfMoved(stored, input.shiftDays ?? 0);
    const book = { ...near, ways: [...(laid?.ways ?? []), ...near.ways] };
    // Dates that a hand does are not on my line.
    const candidate = laid ? triedOn(book, laid.candidate).mine : null;
    const lines = linesOf({ book, candidate });
    const own = lines.lines.find((line) => line.job === candidate);
    const pieces = lines.lines.flatMap((line) => editPieces(line.job)).filter(({ date }) => date >= input.from && date < until);
    return {
      stringline: stringlineOf({ book, candidate, ...span, now }, lines),
      busy: busyLane(book.imported ?? [], span.from, span.to),
      hands: handsLane(book.hands ?? [], span.from, span.to),
      kit: kitLane(book, candidate, lines, span.from, span.to),
      edit: editLane(pieces, editHoursADay(db, input.from), own ? datesTaken(own, zone) : [], zone),
      laidAt: laid && instantText(spanOf(laid.candidate.days).from),
    };
  }),
);

/** A day of editing is as long as the day that the card for it sells; nothing where there is no card. */
function editHoursADay(db: ReadableDb, date: string): number | null {
  const chosen = chooseCard(allCards(db), 'edit only', date);
  return chosen ? Number(chosen.card.dayHours) : null;
}

export const road = { see };
