/**
 * Part 6 of the check: the edits that are promised, laid anew without the days that the candidate takes. Those that become late, or later,
 * are to be settled; the sentence names what takes their time.
 */
import type { Finding, Lift } from '../contract/fit.ts';
import type { EditTryOn } from '../contract/deliverables.ts';
import type { TryOn } from '../contract/try-on.ts';
import { triedEdits } from '../deliverables/edit-try-on.ts';
import { businessDays, hoursOf } from '../deliverables/edit-words.ts';
import { dateOfEnd } from '../deliverables/chain.ts';
import { isOut, type EditGround, type OpenEdit, type TakenDate } from '../deliverables/ground.ts';
import { laid, type Laid, type LaidEdit } from '../deliverables/lay.ts';
import { takersOfEdit } from '../deliverables/plan.ts';
import { takersInWords } from '../deliverables/takers.ts';
import { takenDates } from '../road/taken-dates.ts';
import { countInWords } from '../words/amounts.ts';
import { dateInWords, withoutYear } from '../words/dates.ts';
import type { Book, BookJob } from './book.ts';
import type { Move } from './moves.ts';
import type { Work } from './work.ts';

type EditInput = {
  book: Book;
  /** The candidate as far as I do it myself, and its ways. */
  mine: BookJob;
  moves: readonly Move[];
  tryOn: TryOn | undefined;
  /** Lifts are asked for: dates that would hold must be searched for. */
  searched: boolean;
};

/** A name for the candidate among what takes the time. */
const THIS_JOB = 'this job';
/** Before the ids of what it promises itself. */
const OWN = 'own';

/** One finding for each edit that the candidate makes late, or later; none where the book does not know what is promised. */
export function editFindings({ book, mine, moves, tryOn, searched }: EditInput): Finding[] {
  if (!book.edits) return [];
  const { without, withIt } = grounds(book.edits, book, mine, moves, tryOn);
  const before = new Map(laidOnce(without).edits.map((each) => [each.edit.id, each]));
  const lying = laidOnce(withIt);
  const byHow = (each: LaidEdit): number => each.lateDays - (before.get(each.edit.id)?.lateDays ?? 0);
  const worse = lying.edits.filter((each) => isWorse(each, before.get(each.edit.id)));
  const told = new Set(worse.toSorted((one, other) => byHow(other) - byHow(one)).slice(0, MOST_TOLD));
  const rest = worse.filter((each) => !told.has(each));
  const lifted = new Set([...told].toSorted((one, other) => (one.due ?? '').localeCompare(other.due ?? '')).slice(0, LIFTED));
  return [
    ...worse
      .filter((each) => told.has(each))
      .map((each) => finding(each, before.get(each.edit.id), lying, withIt, mine, searched && lifted.has(each))),
    ...(rest.length > 0 ? [theRest(rest, Math.max(...rest.map(byHow)))] : []),
  ];
}

const WEEK = 168 * 3_600_000;

/** Planned editing at home within a week of the candidate, with it and without it: it counts among the hours of a week. */
export function plannedWork({ book, mine, moves, tryOn }: Omit<EditInput, 'searched'>): { without: Work[]; withIt: Work[] } {
  if (!book.edits || mine.days.length === 0) return { without: [], withIt: [] };
  const { without, withIt } = grounds(book.edits, book, mine, moves, tryOn);
  const from = Math.min(...mine.days.map(({ callAt }) => callAt)) - WEEK;
  const to = Math.max(...mine.days.map(({ wrapAt }) => wrapAt)) + WEEK;
  const worked = (ground: EditGround): Work[] =>
    joinedUp([...laidOnce(ground).plan.blocks, ...ground.pins].filter(({ start, end }) => end > from && start < to)).map(
      ({ start, end }) => ({
        startAt: start,
        endAt: end,
        place: book.home,
        to: book.home,
        own: false,
        date: null,
        counts: true,
        stands: true,
        estimated: false,
      }),
    );
  return { without: worked(without), withIt: worked(withIt) };
}

type Stretch = { start: number; end: number };

/** Stretches that follow one another at once are one. */
function joinedUp(blocks: readonly Stretch[]): Stretch[] {
  const joined: Stretch[] = [];
  for (const { start, end } of blocks.toSorted((a, b) => a.start - b.start)) {
    const last = joined.at(-1);
    if (last && start <= last.end) last.end = Math.max(last.end, end);
    else joined.push({ start, end });
  }
  return joined;
}

/** So many edits are told by themselves, those that it makes latest; of the others only how many there are. */
const MOST_TOLD = 5;
/** Each lift is tried, which lays everything anew: the edits that are due first are given theirs, and what helps them helps those behind. */
const LIFTED = 3;

function theRest(rest: readonly LaidEdit[], most: number): Finding {
  return {
    kind: 'edits late',
    hardness: 'settle',
    concerns: [],
    numbers: { edits: rest.length, most },
    sentence: `${countInWords(rest.length, 'more edit')} would be late, or later, by up to ${businessDays(most)}.`,
    lifts: [],
  };
}

function isWorse(after: LaidEdit, before: LaidEdit | undefined): boolean {
  return after.lateDays > (before?.lateDays ?? 0) || after.unplaced > (before?.unplaced ?? 0);
}

/** The ground without the candidate and with it, both as it is tried on. */
function grounds(
  stored: EditGround,
  { jobs }: Book,
  mine: BookJob,
  moves: readonly Move[],
  tryOn: TryOn = {},
): Record<'without' | 'withIt', EditGround> {
  const asIf = changedGround(stored, jobs, tryOn);
  const ownEdits = mine.id === null ? [] : asIf.edits.filter(({ jobId }) => jobId === mine.id);
  const without = once(asIf, 'without', () =>
    ownEdits.length === 0 ? asIf : { ...asIf, edits: asIf.edits.filter((edit) => !ownEdits.includes(edit)) },
  );
  const promised = ownEdits.length > 0 ? [] : editsOfCandidate(mine, asIf.zone);
  const dates = takenDates({ job: { ...mine, title: THIS_JOB }, blocks: blocksOf(mine), moves: [...moves], rests: [] }, asIf.zone);
  const key = JSON.stringify([dates, promised, soldDays(mine, promised)]);
  const withIt = once(asIf, `with ${key}`, () => ({
    ...asIf,
    edits: [...asIf.edits, ...promised],
    dates: [...asIf.dates, ...dates.map((date) => ({ ...date, jobId: mine.id ?? OWN }))],
    times: [...asIf.times, ...soldDays(mine, promised)],
  }));
  return { without, withIt };
}

/** What is tried on of jobs on the books and of the edits themselves. */
function changedGround(stored: EditGround, jobs: readonly BookJob[], tryOn: TryOn): EditGround {
  const { withoutJobs = [], withoutPersonal = [], daysMoved = [], edits } = tryOn;
  const moved = daysMoved.filter(({ jobId }) => jobId !== null);
  const added = jobs.filter(({ id }) => id === null);
  if (withoutJobs.length + withoutPersonal.length + moved.length + added.length === 0 && !edits) return stored;
  return once(stored, JSON.stringify([withoutJobs, withoutPersonal, moved, edits, added.map(({ days }) => days)]), () => {
    const movedTo = (date: TakenDate): TakenDate[] => {
      const move = moved.find((each) => each.jobId === date.jobId && each.date === date.date);
      if (!move) return [date];
      return move.to === null ? [] : [{ ...date, date: move.to }];
    };
    const ground: EditGround = {
      ...stored,
      edits: stored.edits.filter(({ jobId }) => !withoutJobs.includes(jobId)),
      dates: [
        ...stored.dates.filter(({ jobId }) => jobId === null || !withoutJobs.includes(jobId)).flatMap(movedTo),
        ...added.flatMap((job) => takenDates({ job, blocks: blocksOf(job), moves: [], rests: [] }, stored.zone)),
      ],
      times: stored.times.filter(({ personalId }) => personalId === undefined || !withoutPersonal.includes(personalId)),
    };
    return edits ? triedEdits(ground, edits) : ground;
  });
}

const blocksOf = ({ days, place }: BookJob) =>
  days.map((day) => ({ placeKey: place.key, start: day.callAt, end: day.wrapAt, kind: day.kind }));

/** What the candidate promises itself, as far as its hours are known: one stage each, once its files are there. */
function editsOfCandidate({ id, days, edits = [] }: BookJob, zone: string): OpenEdit[] {
  const wraps = days.filter(({ kind }) => kind !== 'edit' && kind !== 'travel').map(({ wrapAt }) => wrapAt);
  return edits.flatMap(({ what, due, halfHours }, order): OpenEdit[] => {
    const own = `${OWN}/${order}`;
    const stage = { id: `${own}/cut`, kind: 'fine cut' as const, name: 'Cut', halfHours, releaseDate: null, sent: null };
    const filesAt = Math.max(0, ...wraps);
    const said = { name: what, due, internalDate: null, sameDay: due !== null && due === dateOfEnd(filesAt, zone), filesAt };
    return [
      {
        id: own,
        jobId: id ?? OWN,
        jobTitle: THIS_JOB,
        ...said,
        windowDays: 0,
        editor: null,
        theirs: new Set(),
        hoursSaid: true,
        stages: [stage],
      },
    ];
  });
}

/** Edit days that are sold leave no time for other edits; where the hours of what is promised are known, those count instead. */
function soldDays({ days }: BookJob, promised: readonly OpenEdit[]): EditGround['times'] {
  if (promised.length > 0) return [];
  return days
    .filter(({ kind }) => kind === 'edit')
    .map(({ callAt, wrapAt }) => ({ start: callAt, end: wrapAt, jobId: null, title: THIS_JOB, editing: true }));
}

function finding(each: LaidEdit, before: LaidEdit | undefined, lying: Laid, ground: EditGround, mine: BookJob, searched: boolean): Finding {
  const { edit, due, finish, lateDays, unplaced, halfHoursLeft } = each;
  const own = edit.id.startsWith(OWN);
  const was = before?.lateDays ?? 0;
  const whose = own || edit.jobId === mine.id ? `its own ${edit.name}` : `${edit.name} of ${edit.jobTitle}`;
  const said = `${whose}${due === null ? '' : `, due ${dateInWords(due)},`}`;
  const done =
    unplaced > 0 || finish === null
      ? `would find no place for ${hoursOf(unplaced)} of its ${hoursOf(halfHoursLeft)}`
      : `would be done ${withoutYear(dateInWords(dateOfEnd(finish, ground.zone)))}, ${businessDays(lateDays)} late${was > 0 ? ` where it is ${was} now` : ''}`;
  const takers = takersInWords(takersOfEdit(each, ground, lying));
  return {
    kind: 'edit late',
    hardness: 'settle',
    concerns: own ? [] : [{ jobId: edit.jobId, title: edit.jobTitle }],
    numbers: { lateDays, lateDaysBefore: was, hoursLeft: halfHoursLeft / 2 },
    sentence: `With this job ${said} ${done}.${takers === '' ? '' : ` What takes its time: ${takers}.`}`,
    lifts: searched ? liftsOf(each, ground, own) : [],
  };
}

/** The longest day that is offered, hours, and how much longer than now. */
const LONGEST_DAY = 12;
const LONGER = 2;

function liftsOf({ edit, finish, lateDays }: LaidEdit, ground: EditGround, own: boolean): Lift[] {
  const lift = (kind: string, label: string, edits: EditTryOn): Lift => ({
    kind,
    label,
    tryOn: { edits },
    ...(own ? {} : { jobId: edit.jobId }),
  });
  const lifts: Lift[] = [];
  if (!own && finish !== null) {
    const date = dateThatWouldHold(edit, dateOfEnd(finish, ground.zone), ground);
    const asked = `Ask for ${edit.name} on ${withoutYear(dateInWords(date))}`;
    lifts.push(lift('later date', asked, { moved: [{ deliverableId: edit.id, due: date }] }));
  }
  if (!own) lifts.push(lift('hire editor', `Hire an editor for ${edit.name}`, { hired: [edit.id] }));
  const helps = (edits: EditTryOn): boolean => {
    const tried = once(ground, JSON.stringify(edits), () => triedEdits(ground, edits));
    return (laidOnce(tried).edits.find((other) => other.edit.id === edit.id)?.lateDays ?? 0) < lateDays;
  };
  const { settings } = ground;
  if (
    !settings.onTravelDays &&
    ground.dates.some((date) => date.how === 'travel' && isOut(date, settings)) &&
    helps({ onTravelDays: true })
  )
    lifts.push(lift('edit on travel days', 'Edit on travel days too', { onTravelDays: true }));
  const hoursADay = Math.min(LONGEST_DAY, settings.hoursADay + LONGER);
  if (hoursADay > settings.hoursADay && settings.hoursADay > 0 && helps({ hoursADay }))
    lifts.push(lift('longer day', `Edit ${hoursADay} h a day instead of ${settings.hoursADay}`, { hoursADay }));
  return lifts;
}

/** With a later date other edits go before it, so that it may end later again; the first date that it then meets. */
function dateThatWouldHold({ id }: OpenEdit, from: string, ground: EditGround): string {
  let due = from;
  for (;;) {
    const asked = { moved: [{ deliverableId: id, due }] };
    const finish = laidOnce(triedEdits(ground, asked)).edits.find(({ edit }) => edit.id === id)?.finish ?? null;
    const date = finish === null ? due : dateOfEnd(finish, ground.zone);
    if (date <= due) return due;
    due = date;
  }
}

/** A ground that is made from another one, and what is laid on it: most changes that are tried on leave the edits as they are. */
const made = new WeakMap<EditGround, Map<string, EditGround>>();
const lain = new WeakMap<EditGround, Laid>();

function once(from: EditGround, key: string, make: () => EditGround): EditGround {
  const known = made.get(from) ?? new Map<string, EditGround>();
  made.set(from, known);
  const ground = known.get(key) ?? make();
  known.set(key, ground);
  return ground;
}

function laidOnce(ground: EditGround): Laid {
  const known = lain.get(ground) ?? laid(ground);
  lain.set(ground, known);
  return known;
}
