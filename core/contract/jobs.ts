import { z } from 'zod';
import { reads, writes, writesFile } from './base.ts';
import { Budget, Question, Remembered, Span } from './inquiries.ts';
import { Knows } from './knows.ts';
import {
  DateText,
  DayKind,
  DeedKey,
  FileBytes,
  Id,
  InstantText,
  Line,
  Moment,
  Money,
  Name,
  Note,
  Place,
  Positive,
  Role,
  Version,
  WallTime,
} from './parts.ts';

/** Where a job stands. "ran out" is derived: a pencil whose expiry has passed and that holds nothing any more. */
export const JobState = z.enum(['inquiry', 'quoted', 'pencilled', 'ran out', 'inked', 'let go', 'declined', 'cancelled']);
export type JobState = z.infer<typeof JobState>;

/** One paid date: call and wrap are wall times at the job's place; a wrap past midnight has the next date in it. */
export const JobDay = z.strictObject({ date: DateText.describe('the date of the call'), kind: DayKind, call: WallTime, wrap: WallTime });
export type JobDay = z.infer<typeof JobDay>;

/** The days of one job, or of what is asked for. */
export const JobDays = z.array(JobDay).max(366, 'are more than the 366 days that one job can have; make two jobs of them');

const Pencil = z.strictObject({
  id: Id,
  pencilledAt: InstantText,
  expires: Moment,
  state: z.enum(['live', 'ran out', 'let go', 'inked']),
});

const OfferNumber = z.int().min(1).max(3);
const Ink = z.strictObject({
  who: Name,
  at: InstantText,
  how: Name,
  quoteVersion: z.int().nullable(),
  offer: OfferNumber.nullable().describe('of that version; null where it has none'),
});

export const Paper = z.strictObject({
  id: Id,
  kind: z.enum([
    'quote',
    'terms',
    'invoice',
    'credit note',
    'statement',
    'receipt',
    'signed copy',
    'delivery note',
    'customs list',
    'scan',
  ]),
  name: z.string().describe('bare file name'),
  hash: z.string().describe('SHA-256, hex'),
  bytes: z.int(),
  madeAt: InstantText,
});
export type Paper = z.infer<typeof Paper>;

const Contact = z.strictObject({ name: Line, email: Line, phone: Line });

/** What is known of the editing of one deliverable. */
export const Edit = z.strictObject({
  what: z.string().trim().min(1).max(300).describe('the deliverable, as it stands among them'),
  due: DateText.nullable().describe('promised date; due at the end of it on the clock of home'),
  hours: Positive.nullable().describe('edit hours'),
});
export type Edit = z.infer<typeof Edit>;

/** The facts of a job that a person may change before it is inked. */
export const JobFacts = z.strictObject({
  title: Name,
  organisation: Line,
  contact: Contact,
  role: Role,
  place: Place.nullable(),
  days: JobDays,
  replyBy: Moment.nullable(),
  budget: Budget.nullable(),
  notes: Note,
  deliverables: z.array(z.string().trim().min(1).max(300)).max(50),
  edits: z.array(Edit).max(50).optional().describe('due dates and edit hours of deliverables, where they are known'),
});
export type JobFacts = z.infer<typeof JobFacts>;

export const Job = JobFacts.extend({
  id: Id,
  version: Version,
  state: JobState,
  message: z.string().nullable(),
  received: Moment,
  questions: z.array(Question).describe('still open'),
  spans: z.array(Span),
  remembered: z.array(Remembered).optional().describe('facts that stand as they were corrected before for this sender'),
  pencil: Pencil.nullable(),
  ink: Ink.nullable(),
  papers: z.array(Paper),
  total: Money.nullable().describe('gross of what was inked, else of the newest made quote'),
  client: z.strictObject({ id: Id, name: z.string() }).nullable(),
  knows: Knows,
  updatedAt: InstantText,
});
export type Job = z.infer<typeof Job>;

export const JobRow = z.strictObject({
  id: Id,
  title: z.string(),
  organisation: z.string(),
  state: JobState,
  place: z.string().nullable(),
  firstCall: Moment.nullable(),
  lastWrap: Moment.nullable(),
  total: Money.nullable(),
});
export type JobRow = z.infer<typeof JobRow>;

/** What was agreed after the written yes. */
export const Amendment = z.strictObject({
  id: Id,
  what: z.string(),
  who: z.string(),
  at: InstantText.describe('when it was agreed'),
  how: z.string(),
  madeAt: InstantText,
});
export type Amendment = z.infer<typeof Amendment>;

const JobAnswer = z.strictObject({ job: Job });
const OneJob = { id: Id, version: Version, key: DeedKey };

export const jobs = {
  list: reads(
    'Every job, next first call first; text narrows by title, organisation and place.',
    z.strictObject({ text: Line.optional(), states: z.array(JobState).optional() }),
    z.strictObject({ jobs: z.array(JobRow) }),
  ),
  get: reads('One job, whole.', z.strictObject({ id: Id }), JobAnswer),
  add: writes(
    'Put a job on the books by hand, as an inquiry.',
    z.strictObject({ facts: JobFacts.partial().required({ title: true }), received: InstantText.optional(), key: DeedKey }),
    JobAnswer,
  ),
  change: writes(
    'Change facts of a job. Questions about a changed fact are settled with it, or only those that `settled` names of them; it can name others that were answered too.',
    z.strictObject({ ...OneJob, changes: JobFacts.partial(), settled: z.array(z.string()).optional() }),
    JobAnswer,
  ),
  chooseDays: writes(
    'Take one of the sets of days that the message leaves open: it is read again for them, so that their hours are known or asked.',
    z.strictObject({ ...OneJob, days: z.array(DateText).min(1).max(366) }),
    JobAnswer,
  ),
  openDays: writes(
    'Take back the days that were chosen of those that the message leaves open: they are asked about again.',
    z.strictObject(OneJob),
    JobAnswer,
  ),
  pencil: writes(
    'Pencil the dates, or renew a pencil that ran out (it goes last). Without `expires` the default of the house holds.',
    z.strictObject({ ...OneJob, expires: InstantText.optional() }),
    JobAnswer,
  ),
  letGo: writes('Let a pencil go. The dates are free at once.', z.strictObject(OneJob), JobAnswer),
  ink: writes(
    'The written yes: who said it, when and how, to which offer of which version. Refused without a made quote version, and while it is open which offer is meant.',
    z.strictObject({
      ...OneJob,
      who: Name,
      at: InstantText.optional(),
      how: Name,
      quoteVersion: z.int().min(1).optional().describe('the newest made version, if not given'),
      offer: OfferNumber.optional().describe('of that version; the ticked one, if not given'),
    }),
    JobAnswer,
  ),
  terms: writes(
    'Put my terms on paper to be signed, their gaps filled from the version agreed on, else from the newest.',
    z.strictObject(OneJob),
    z.strictObject({ job: Job, paper: Paper }),
  ),
  signed: writesFile(
    'Keep the copy that came back signed: a PDF or a JPEG, PNG, WebP or HEIC picture of up to 8 MB.',
    z.strictObject({ ...OneJob, name: Name, base64: FileBytes }),
    z.strictObject({ job: Job, paper: Paper }),
  ),
  amend: writes(
    'Note what was agreed after the written yes: what, with whom, when and how. It stays as it was noted.',
    z.strictObject({
      ...OneJob,
      what: Note.refine((text) => text.trim() !== '', 'is empty; say what was agreed'),
      who: Name,
      at: InstantText.optional(),
      how: Name,
    }),
    z.strictObject({ job: Job, amendment: Amendment }),
  ),
  amendments: reads(
    'What was agreed of a job after the written yes, in that order.',
    z.strictObject({ id: Id }),
    z.strictObject({ amendments: z.array(Amendment) }),
  ),
  decline: writes(
    'Say no kindly: the inquiry is closed and a reply stands ready to copy.',
    z.strictObject(OneJob),
    z.strictObject({ job: Job, reply: z.strictObject({ subject: z.string(), text: z.string() }) }),
  ),
  setClient: writes(
    'Name the client of a job, or none. What they always ask for is asked on the job too.',
    z.strictObject({ ...OneJob, clientId: Id.nullable() }),
    JobAnswer,
  ),
  saveKnows: writes(
    'Save what a job knows: who pays, papers asked for, people on site, the place, what must be filmed.',
    z.strictObject({ ...OneJob, knows: Knows }),
    JobAnswer,
  ),
  forget: writes(
    'Forget what was corrected for the sender of this inquiry. The fact stays as it is; the next message is read as it stands.',
    z.strictObject({ ...OneJob, correction: Id }),
    JobAnswer,
  ),
  reopen: writes(
    'Take back a decline or a letting go: the job is an inquiry again (or quoted, if a quote was made).',
    z.strictObject(OneJob),
    JobAnswer,
  ),
  history: reads(
    'What was done to a job, newest first.',
    z.strictObject({ id: Id }),
    z.strictObject({ entries: z.array(z.strictObject({ id: Id, at: InstantText, deed: z.string(), sentence: z.string() })) }),
  ),
};
