import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Currency, DateText, DeedKey, Id, InstantText, Line, Money, Name, Nothing, Positive, Version } from './parts.ts';
import { Reply } from './quotes.ts';

/** Notes as they were pasted. */
const Pasted = z
  .string('must be text')
  .max(100_000, 'is longer than 100,000 characters; paste the notes in parts')
  .refine(
    (text) => !/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/.test(text),
    'holds bytes that are not text; copy the words, not the file',
  );

const NoteItem = z.strictObject({
  id: Id,
  position: z.int(),
  timecode: z.string().describe('one label of the cut, or "first to last"; empty where the note has none'),
  frame: z.int().nullable().describe('counted from 0 at the rate that the notes were read by'),
  text: z.string(),
  doneAt: InstantText.nullable(),
});

/** What a round beyond those agreed on costs, as it was priced when its notes came. */
const RoundPrice = z.strictObject({
  hours: Positive,
  editHour: Positive,
  currency: Currency,
  state: z.enum(['asked', 'agreed', 'declined']),
  who: z.string(),
  at: InstantText.nullable(),
  how: z.string(),
  amount: Money,
});

const Moved = z.strictObject({
  lost: z.int(),
  from: DateText,
  to: DateText,
  internalFrom: DateText.nullable(),
  internalTo: DateText.nullable(),
});

export const Round = z.strictObject({
  id: Id,
  version: Version,
  deliverableId: Id,
  stageId: Id.nullable().describe('the work on its notes'),
  number: z.int().describe('in order of sending'),
  what: z.string().describe('which cut'),
  sentAt: InstantText,
  windowDays: z.int(),
  dueBack: DateText.describe('last date for notes, at home'),
  notesAt: InstantText.nullable(),
  included: z.boolean(),
  lost: z.int().describe('business days past that date: until the notes came, or until now'),
  sentence: z.string(),
  notes: z.string().describe('as they were pasted; empty for a yes without notes'),
  items: z.array(NoteItem),
  price: RoundPrice.nullable(),
  moved: Moved.nullable().describe('the dates that its late notes moved'),
  message: Reply.describe('what goes with the cut'),
});
export type Round = z.infer<typeof Round>;

const OneRound = { id: Id, version: Version, key: DeedKey };
const RoundAnswer = z.strictObject({ round: Round });

const DeliverableRounds = z.strictObject({
  now: InstantText,
  rounds: z.array(Round).describe('in order of their numbers'),
  next: z
    .strictObject({
      included: z.boolean(),
      windowDays: z.int(),
      dueBack: DateText.describe('if it were sent now'),
      price: Money.nullable().describe('of its notes, where it is beyond those agreed on and a price is known'),
      cuts: z.array(z.strictObject({ what: z.string(), closes: Id })).describe('open stages that end in a cut, the likely one first'),
    })
    .nullable()
    .describe('null while a cut waits for its notes'),
  sentence: z.string().describe('how many rounds are left'),
  rate: z.string().describe('frame rate by which time codes are read, as the format says it; empty where it says none'),
  rates: z.array(z.string()),
  dates: Reply.nullable().describe('words for the client where late notes moved the date'),
  cautions: z.array(z.string()),
});
export type DeliverableRounds = z.infer<typeof DeliverableRounds>;

export const rounds = {
  of: reads('Rounds of notes on a deliverable, and what the next one would be.', z.strictObject({ deliverableId: Id }), DeliverableRounds),
  send: writes(
    "A cut is sent: the client's window for notes begins. `closes` names the stage that it ends; that and those before it are done.",
    z.strictObject({
      deliverableId: Id,
      what: Name,
      closes: Id.nullable().optional(),
      at: InstantText.optional().describe('now, if not given'),
      windowDays: z.int('must be whole days').min(0, 'is below zero').max(120, 'is more than 120').optional(),
      key: DeedKey,
    }),
    RoundAnswer,
  ),
  unsend: writes('A cut was not sent after all: the newest round goes, while no notes are in.', z.strictObject(OneRound), Nothing),
  notesIn: writes(
    'Notes came: pasted text becomes a list; none is a yes without notes. Late ones move the due date, unless `keepDate`. Notes that come again are added.',
    z.strictObject({
      ...OneRound,
      text: Pasted,
      rate: Line.optional().describe("by its name; the format's, if not given"),
      at: InstantText.optional().describe('now, if not given'),
      keepDate: z.boolean().optional().describe('the date stays, as a courtesy'),
    }),
    z.strictObject({
      round: Round,
      troubles: z.array(z.strictObject({ line: z.int(), sentence: z.string() })).describe('time codes that cannot be, with what was kept'),
    }),
  ),
  notesBack: writes(
    'Notes were taken in by mistake: they go, and a date that they moved is put back.',
    z.strictObject(OneRound),
    RoundAnswer,
  ),
  tick: writes('Tick a note off, or open it again.', z.strictObject({ note: Id, done: z.boolean(), key: DeedKey }), RoundAnswer),
  setPrice: writes(
    'Say what a further round costs, where the card does not say it or it is another. It is asked anew.',
    z.strictObject({
      ...OneRound,
      hours: Positive.refine((hours) => Number(hours) > 0, 'is nothing; a round that costs nothing is declined instead'),
      editHour: Positive,
    }),
    RoundAnswer,
  ),
  settlePrice: writes(
    'Note who said yes or no to the price of a further round, when and how. A no takes it off the bill and out of the plan.',
    z.strictObject({ ...OneRound, agreed: z.boolean(), who: Name, at: InstantText.optional(), how: Line }),
    RoundAnswer,
  ),
  openPrice: writes('An answer to a price that was noted by mistake is open again.', z.strictObject(OneRound), RoundAnswer),
};
