/**
 * The road between two dates at home: the stringline with the kit and the edit lane.
 */
import { EDIT_SETTINGS } from '../../core/deliverables/ground.ts';
import { editPlan } from '../../core/deliverables/plan.ts';
import { triedOn } from '../../core/fit/try-on.ts';
import { chooseCard } from '../../core/rates/choose.ts';
import { busyLane } from '../../core/road/busy-lane.ts';
import { datesTaken, editLane, editPieces, plannedPieces, type EditPiece } from '../../core/road/edit-lane.ts';
import { handsLane } from '../../core/road/hands-lane.ts';
import { kitLane } from '../../core/road/kit-lane.ts';
import { linesOf } from '../../core/road/lines.ts';
import { stringlineOf } from '../../core/road/stringline.ts';
import { epochOf, instantText } from '../../core/time/read.ts';
import { dateLater } from '../../core/time/wall.ts';
import { jobById } from '../../db/jobs.ts';
import { anyOpenEdit } from '../../db/open-edits.ts';
import { allCards } from '../../db/rates.ts';
import type { ReadableDb } from '../../db/store.ts';
import { asIfMoved, bookNear, jobOnBooks, midnight, ownSetup, spanOf } from './book.ts';
import { plannedNow, type Planned } from './edit-plan.ts';
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
    const planned = anyOpenEdit(db) ? plannedNow(db, context) : null;
    // Where it is known what is edited for a job, the plan says on which dates, and not the days that were sold.
    const known = new Set(planned?.ground.edits.filter(({ hoursSaid }) => hoursSaid).map(({ jobId }) => jobId));
    const sold = lines.lines.filter(({ job: { id } }) => id === null || !known.has(id)).flatMap((line) => editPieces(line.job));
    const pieces = [...sold, ...(planned ? piecesOfPlan(planned) : [])].filter(({ date }) => date >= input.from && date < until);
    return {
      stringline: stringlineOf({ book, candidate, ...span, now }, lines),
      busy: busyLane(book.imported ?? [], span.from, span.to),
      hands: handsLane(book.hands ?? [], span.from, span.to),
      kit: kitLane(book, candidate, lines, span.from, span.to),
      edit: editLane(pieces, editHoursADay(db, input.from, planned !== null), own ? datesTaken(own, zone) : [], zone),
      laidAt: laid && instantText(spanOf(laid.candidate.days).from),
    };
  }),
);

function piecesOfPlan({ ground, lying }: Planned): EditPiece[] {
  const { blocks } = editPlan(ground, lying);
  const titles = new Map(ground.edits.map(({ jobId, jobTitle }) => [jobId, jobTitle]));
  const stretches = blocks.map(({ jobId, start, end }) => ({ jobId, start: epochOf(start), end: epochOf(end) }));
  return plannedPieces(stretches, (id) => titles.get(id) ?? '', ground.zone);
}

/** As long as I say, else as the day that the card for it sells, else as the plan takes it; nothing where none of them says. */
function editHoursADay(db: ReadableDb, date: string, planned: boolean): number | null {
  const { editing } = ownSetup(db);
  if (editing) return editing.hoursADay;
  const chosen = chooseCard(allCards(db), 'edit only', date);
  if (chosen) return Number(chosen.card.dayHours);
  return planned ? EDIT_SETTINGS.hoursADay : null;
}

export const road = { see };
