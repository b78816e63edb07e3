/**
 * The edit plan over all jobs: what the store knows, laid by the rules of `core/deliverables`. It is laid anew whenever it is asked for; the
 * plan before settles ties only.
 */
import type { EditPlan, EditTryOn } from '../../core/contract/deliverables.ts';
import { triedEdits, whatChanged } from '../../core/deliverables/edit-try-on.ts';
import { EDIT_SETTINGS, type EditGround, type OpenEdit, type TakenDate, type TakenTime } from '../../core/deliverables/ground.ts';
import { laidFewestLate } from '../../core/deliverables/fewest-late-lay.ts';
import { datesAhead, laid, type Laid } from '../../core/deliverables/lay.ts';
import { editPlan } from '../../core/deliverables/plan.ts';
import type { Block } from '../../core/deliverables/schedule.ts';
import { halfHoursLeft } from '../../core/deliverables/spent.ts';
import { stageNames } from '../../core/deliverables/make-stages.ts';
import { takenDates } from '../../core/road/taken-dates.ts';
import { linesOf } from '../../core/road/lines.ts';
import { instantText } from '../../core/time/read.ts';
import type { Book, BookJob } from '../../core/fit/book.ts';
import { anyOpenEdit, openEdits, pinsAhead, soldEditDays, type StoredEdit } from '../../db/open-edits.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { bookNear, midnight, ownSetup } from './book.ts';
import type { Context } from './context.ts';
import { editSettings, holidaysOfClients, homeHolidays } from './edit-dates.ts';
import { deliverableById } from '../../db/deliverables.ts';
import { os } from './os.ts';
import { notFound } from './trouble.ts';

/** The plan that each store was last laid by. */
const plansBefore = new WeakMap<Context['store'], readonly Block[]>();

/**
 * What the plan is laid on now.
 * @param now epoch milliseconds
 * @param leaveOutJob a job whose dates are not counted, because they are asked about
 * @throws REFUSED before the first set-up
 */
function editGround(db: ReadableDb, context: Context, now: number, leaveOutJob: string | null = null): EditGround {
  const setup = ownSetup(db);
  const { zone } = setup.home;
  const { from, to } = datesAhead(now, zone);
  const theirs = holidaysOfClients(db, context);
  const book = bookNear(db, { from: now, to: midnight(to, zone), now, leaveOutJob });
  const ink = { ...book, jobs: book.jobs.filter(({ firmness }) => firmness === 'ink') };
  const dates = linesOf({ book: ink, candidate: null }).lines.flatMap((line): TakenDate[] => takenDates(line, zone));
  const times: TakenTime[] = [
    ...(book.personal ?? []).map(({ id, startAt, endAt, title }) => ({
      start: startAt,
      end: endAt,
      jobId: null,
      title,
      editing: false,
      ...(id === null ? {} : { personalId: id }),
    })),
    ...(book.imported ?? [])
      .filter(({ hardness }) => hardness !== 'know')
      .map(({ startAt, endAt, title }) => ({ start: startAt, end: endAt, jobId: null, title, editing: false })),
    ...soldEditDays(db, now)
      .filter(({ jobId }) => jobId !== leaveOutJob)
      .map((day) => ({ ...day, editing: true })),
  ];
  return {
    now,
    zone,
    settings: editSettings(setup),
    holidays: homeHolidays(setup, from, to),
    edits: openEdits(db, now).map((edit) => openEdit(edit, theirs(edit.clientId))),
    dates: dates.filter(({ date }) => date >= from),
    times,
    pins: pinsAhead(db, now),
    previous: plansBefore.get(context.store) ?? [],
  };
}

function openEdit({ stages, filesAt, sameDay, clientId: _clientId, ...edit }: StoredEdit, theirs: OpenEdit['theirs']): OpenEdit {
  const names = stageNames(stages.map(({ kind }) => kind));
  return {
    ...edit,
    sameDay: sameDay === 1,
    filesAt: filesAt ?? 0,
    theirs,
    hoursSaid: stages.some(({ halfHours }) => halfHours > 0),
    stages: stages.flatMap(({ id, kind, done, halfHours, releaseDate, spentMs, sentAt, dueBack, notesAt }, order) =>
      done === 1
        ? []
        : [
            {
              id,
              kind,
              name: names[order] ?? kind,
              halfHours: halfHoursLeft(halfHours, Math.floor(spentMs / 60_000)),
              releaseDate,
              sent: sentAt === null || dueBack === null ? null : { dueBack, notesAt },
            },
          ],
    ),
  };
}

/** What is promised and when I can edit, for the check of a candidate; nothing where no edit is promised on either side. `now` in epoch ms. */
export function editsBeside(db: ReadableDb, context: Context, now: number, candidate: BookJob): Pick<Book, 'edits'> {
  if (!candidate.edits && !anyOpenEdit(db)) return {};
  return { edits: editGround(db, context, now, candidate.id) };
}

export type Planned = { ground: EditGround; lying: Laid };

/** The plan as it is now; it is what the next one settles its ties by. */
export function plannedNow(db: ReadableDb, context: Context): Planned {
  const ground = editGround(db, context, context.now());
  const lying = laid(ground);
  plansBefore.set(context.store, lying.plan.blocks);
  return { ground, lying };
}

const nothingPlanned = ({ now, systemZone }: Context): EditPlan => ({
  at: instantText(now()),
  zone: systemZone,
  hoursADay: EDIT_SETTINGS.hoursADay,
  edits: [],
  blocks: [],
  troubles: [],
  sentence: 'No edit is open.',
});

export const plan = os.deliverables.plan.handler(({ context }) =>
  context.store.read((db) => {
    // Before the first set-up, and when the sample was just left, nothing is promised.
    if (!setupRow(db)) return { plan: nothingPlanned(context) };
    const { ground, lying } = plannedNow(db, context);
    return { plan: editPlan(ground, lying) };
  }),
);

export const tryOn = os.deliverables.tryOn.handler(({ input, context }) =>
  context.store.read((db) => {
    refuseUnknown(db, input.tryOn);
    const { ground, lying } = plannedNow(db, context);
    const before = editPlan(ground, lying);
    const tried = triedEdits(ground, input.tryOn);
    if (input.tryOn.order === undefined) {
      const after = editPlan(tried);
      return { plan: after, ...whatChanged(before, after) };
    }
    const { lying: fewest, proven } = laidFewestLate(tried);
    const after = editPlan(tried, fewest);
    const { changed, sentence } = whatChanged(before, after);
    return {
      plan: after,
      changed,
      sentence: `${sentence} ${proven ? 'No order of the work leaves fewer late.' : 'Best found: fewer may be possible.'}`,
    };
  }),
);

function refuseUnknown(db: ReadableDb, { hired = [], moved = [] }: EditTryOn): void {
  for (const id of [...hired, ...moved.map(({ deliverableId }) => deliverableId)])
    if (!deliverableById(db, id)) throw notFound('A deliverable that is tried on');
}
