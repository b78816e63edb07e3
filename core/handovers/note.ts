/**
 * What stands on the paper that goes with a delivery, as data.
 */
import type { HandedFile } from '../contract/handovers.ts';
import type { Format } from '../contract/templates.ts';
import { formatInWords } from '../deliverables/format-words.ts';
import { moveInWords, type Move } from '../deliverables/round-words.ts';
import {
  frameOf,
  factOf,
  isKnown,
  typedBySender,
  type PaperFacts,
  type PaperFrame,
  type PaperSum,
  type Sender,
} from '../papers/content.ts';
import type { Term } from '../quotes/terms.ts';
import { countInWords } from '../words/amounts.ts';
import { byteFigures, bytesInWords } from '../words/bytes.ts';
import { paperDate } from '../words/dates.ts';
import { paperLines, paperText, type TypedText } from '../words/letters.ts';
import { handOverCautions } from './cautions.ts';
import { originalsOnPaper, type Originals } from './originals.ts';

/** Dates at home, YYYY-MM-DD; `madeAt` is an instant, UTC with Z. */
export type DeliveryNoteInput = {
  sender: Sender;
  client: { name: string; contact: string };
  /** The job's title, and where and when it was: one line each. */
  job: { title: string; lines: readonly string[] };
  deliverable: { name: string; format: Format; agreedDue: string | null; due: string | null };
  handOver: { how: 'link' | 'disk'; where: string; on: string; files: readonly HandedFile[]; originals: Originals; note: string };
  /** Dates that late notes moved, first to last. */
  moves: readonly Move[];
  madeAt: string;
};

/** A file as a row: name, checksum in full, bytes. */
type FileRow = { name: string; hash: string; bytes: string };
export type DeliveryNote = PaperFrame & {
  facts: PaperFacts;
  columns: { name: string; hash: string; bytes: string };
  files: FileRow[];
  sums: PaperSum[];
  terms: Term[];
  notes: string[];
};

/**
 * The whole content of the paper.
 * @param drawn a name with whatever letters the typeface has not put in another way
 */
export function deliveryNoteContent(
  { sender, client, job, deliverable, handOver, moves }: DeliveryNoteInput,
  drawn: (text: string) => string = (text) => text,
): DeliveryNote {
  const { how, where, on, files, originals, note } = handOver;
  const date = paperDate(on);
  const total = files.reduce((sum, { bytes }) => sum + bytes, 0);
  const names = files.map(({ name }) => drawn(paperText(name)));
  return {
    ...frameOf(sender, 'Delivery note', `Delivery note of ${date}`, [date], `${deliverable.name}, ${job.title}`),
    facts: {
      left: [factOf('For', [client.name, client.contact]), factOf('What', [deliverable.name])].filter(isKnown),
      right: [factOf('Job', [job.title, ...job.lines]), factOf(how === 'link' ? 'Link' : 'On the disk labelled', [where])].filter(isKnown),
    },
    columns: { name: 'File', hash: 'Checksum, XXH128', bytes: 'Bytes' },
    files: files.map(({ hash, bytes }, at) => ({ name: names[at] ?? '', hash, bytes: byteFigures(bytes) })),
    sums: [
      { label: `${countInWords(files.length, 'file')}, ${bytesInWords(total)}`, amount: byteFigures(total), note: '', weight: 'total' },
    ],
    terms: [
      { label: 'Format', text: paperText(formatInWords(deliverable.format)) },
      { label: 'Date', text: dates(deliverable, on, moves) },
      { label: 'Originals', text: originalsOnPaper(originals) },
      { label: 'Remark', text: paperLines(note).join('\n') },
      { label: 'Checksums', text: CHECKSUMS },
    ].filter(({ text }) => text !== ''),
    notes: [
      ...(names.some((name, at) => name !== paperText(files[at]?.name ?? ''))
        ? ['A letter that this typeface does not have stands as its number, such as [U+6620]; the checksum tells which file is meant.']
        : []),
      ...handOverCautions(how),
    ],
  };
}

const CHECKSUMS =
  'A copy that is whole has the same bytes and the same checksum (XXH128, seed 0). It finds damage and mix-ups; it is no proof against files altered on purpose.';

/** When it was promised and delivered, and what late notes did to the date. */
function dates({ agreedDue, due }: DeliveryNoteInput['deliverable'], on: string, moves: readonly Move[]): string {
  const promised = agreedDue ?? due;
  if (promised === null) return `Delivered on ${paperDate(on)}.`;
  const moved = moves.map(moveInWords);
  const now = due !== null && due !== promised && moves.at(-1)?.to !== due ? [`The date that holds is ${paperDate(due)}.`] : [];
  return [`Promised for ${paperDate(promised)}, delivered on ${paperDate(on)}.`, ...moved, ...now].join(' ');
}

/** Every text on it that somebody typed, but for the names of files, which are drawn in any case. */
export function typedOnDeliveryNote({ sender, client, job, deliverable, handOver }: DeliveryNoteInput): TypedText[] {
  return [
    ...typedBySender(sender),
    { field: "the client's name", text: client.name },
    { field: "the contact's name", text: client.contact },
    { field: "the job's title", text: job.title },
    ...job.lines.map((text) => ({ field: 'the place of the job', text })),
    { field: 'the name of the deliverable', text: deliverable.name },
    { field: 'the format', text: formatInWords(deliverable.format) },
    { field: handOver.how === 'link' ? 'the link' : 'the label of the disk', text: handOver.where },
    { field: 'the remark', text: handOver.note },
  ];
}
