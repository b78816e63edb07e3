import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Paper } from './jobs.ts';
import { CONTROL, DateText, DeedKey, Id, InstantText, Line, Note, Version } from './parts.ts';

/** The checksum that files are handed over with: XXH128, seed 0, 32 lower case hexadecimal digits, high half first. */
export const HASH_KIND = 'xxh128';

export const HandedFile = z.strictObject({
  name: z.string().describe('from inside what was given, "/" between folders'),
  bytes: z.int(),
  hash: z.string(),
});
export type HandedFile = z.infer<typeof HandedFile>;

/** A sentence about a file, to be read behind its name. */
const Named = z.strictObject({ name: z.string(), sentence: z.string() });

/** Files or folders as they are typed: a whole path, "~" for my own folder, or an address that begins with file:. */
const Paths = z
  .array(z.string('must be text').min(1, 'is empty; type where the file or folder lies').max(4096, 'is longer than 4,096 characters'))
  .min(1, 'are missing; say which files or which folder')
  .max(200, 'are more than 200; put the files into one folder and give that');

/** Files being read for their checksums. It is forgotten when the program ends; nothing was written then. */
export const Reading = z.strictObject({
  run: Id,
  deliverableId: Id,
  compares: Id.nullable().describe('the hand-over that it is to be held against; null where it is to be handed over'),
  state: z.enum(['reading', 'stopped', 'refused', 'incomplete', 'done']),
  bytes: z.int().describe('read so far'),
  of: z.int().describe('0 while the folders are still walked'),
  files: z.int(),
  ofFiles: z.int(),
  name: z.string().describe('of the file that is being read'),
  seconds: z.number().describe('since it began'),
  list: z.array(HandedFile).describe('what was read whole; the whole list only when it is done'),
  leftOut: z.array(Named).describe('what is no part of the delivery, and why'),
  troubles: z.array(Named).describe('what could not be read; a list with troubles cannot be kept'),
  sentence: z.string(),
});
export type Reading = z.infer<typeof Reading>;

const originalsKinds = ['kept until', 'handed over', 'never kept'] as const;
const Originals = z.enum(originalsKinds);
export type OriginalsKind = z.infer<typeof Originals>;

/** Where it can be had or what is written on the disk. A link is only text and never opened by the program. */
const Where = z
  .string('must be text')
  .trim()
  .min(1, 'is empty; give the link, or what is written on the disk')
  .max(2000, 'is longer than 2,000 characters')
  .refine((text) => !CONTROL.test(text), 'holds characters that cannot be seen; type it anew');

export const HandOver = z.strictObject({
  id: Id,
  version: Version,
  deliverableId: Id,
  how: z.enum(['link', 'disk']),
  where: z.string(),
  at: InstantText,
  files: z.array(HandedFile),
  bytes: z.int().describe('of all files'),
  hashKind: z.string(),
  originals: z.strictObject({
    kind: Originals,
    until: DateText.nullable().describe('the last date on which they are kept; null where it is not agreed on, or they are not kept'),
    goneAt: InstantText.nullable(),
    goneWhy: z.string(),
    mayGo: z.boolean().describe('that date is past, and they are not gone yet'),
    sentence: z.string(),
  }),
  note: z.string(),
  paper: Paper.nullable(),
  message: z.strictObject({ to: z.string().describe('address of the contact; may be empty'), subject: z.string(), text: z.string() }),
  takenBack: z.strictObject({ at: InstantText, why: z.string() }).nullable(),
  sentence: z.string(),
});
export type HandOver = z.infer<typeof HandOver>;

const From = z.union([z.strictObject({ run: Id }), z.strictObject({ paths: Paths })]);
const Which = { id: Id, version: Version, key: DeedKey };
const One = z.strictObject({ handOver: HandOver });
const Run = z.strictObject({ run: Id });
const Read = z.strictObject({ reading: Reading });

export const handovers = {
  of: reads(
    'How a deliverable was handed over, the newest first, and what is proposed for the next time.',
    z.strictObject({ deliverableId: Id }),
    z.strictObject({
      handOvers: z.array(HandOver),
      reading: Reading.nullable().describe('files that are being read for it, or were read last'),
      proposed: z.strictObject({
        originals: Originals,
        until: DateText.nullable(),
        sentence: z.string().describe('where it comes from'),
      }),
      moved: z.array(z.string()).describe('what late notes did to the date; it stands on the paper'),
    }),
  ),
  begin: reads(
    'Begin to read files for their checksums; answers at once. One reading runs at a time. Nothing is written, and a link inside a folder is not followed.',
    z.strictObject({ deliverableId: Id, paths: Paths, compares: Id.optional() }),
    Read,
  ),
  progress: reads('How far a reading is, and its list once it is done.', Run, Read),
  stop: reads('Stop a reading. Nothing was written.', Run, Read),
  keep: writes(
    'A deliverable is handed over: writes the delivery note, marks it as delivered, and keeps the list of files. From a reading that is done, or from paths that are read first.',
    z.strictObject({
      deliverableId: Id,
      from: From,
      how: z.enum(['link', 'disk']),
      where: Where,
      at: InstantText.optional().describe('when; now if not given'),
      originals: Originals,
      originalsUntil: DateText.nullable().describe('the last date on which originals are kept; null where it must still be asked'),
      note: Note.default(''),
      key: DeedKey,
    }),
    One,
  ),
  compare: reads(
    'Hold a copy against the list that was handed over: from a reading that is done, or from paths that are read first.',
    z.strictObject({ id: Id, from: From }),
    z.strictObject({
      sentence: z.string(),
      whole: z.boolean().describe('everything that was handed over is there, unchanged'),
      equal: z.int(),
      changed: z.array(z.string()),
      missing: z.array(z.string()),
      extra: z.array(z.string()).describe('not on the list'),
      moved: z.array(z.strictObject({ from: z.string(), to: z.string() })).describe('the same bytes under another name'),
    }),
  ),
  setOriginals: writes(
    'Agree anew on what becomes of the originals. The delivery note that was written does not change.',
    z.strictObject({ ...Which, originals: Originals, originalsUntil: DateText.nullable() }),
    One,
  ),
  originalsGone: writes(
    'The originals were deleted. Before the date to which they are kept it asks for the reason.',
    z.strictObject({ ...Which, at: InstantText.optional(), why: Line.default('') }),
    One,
  ),
  originalsThere: writes('The originals are there after all: it was noted by mistake that they were deleted.', z.strictObject(Which), One),
  takeBack: writes(
    'A hand-over was a mistake: it stays on the books with the reason. Without another one the deliverable is not delivered any more.',
    z.strictObject({ ...Which, why: Line.min(1, 'is empty; say why it is taken back') }),
    One,
  ),
  standAgain: writes('A hand-over that was taken back stands again.', z.strictObject(Which), One),
};
