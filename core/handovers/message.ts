/**
 * The message that goes with a delivery: plain text, to copy or to put in a mail.
 */
import type { Tone } from '../quotes/tone.ts';
import { countInWords } from '../words/amounts.ts';
import { bytesInWords } from '../words/bytes.ts';
import { originalsOnPaper, type Originals } from './originals.ts';

export type Delivery = {
  /** Name of the deliverable, and of the job. */
  what: string;
  title: string;
  how: 'link' | 'disk';
  where: string;
  files: readonly { bytes: number }[];
  originals: Originals;
  /** From `toneOf(message, contactName)`. */
  tone: Tone;
  sender: { name: string; phone: string; email: string };
};

/** Where the files are, how many, how a copy is checked, and how long the originals are kept. */
export function deliveryMessage({ what, title, how, where, files, originals, tone, sender }: Delivery): { subject: string; text: string } {
  const total = bytesInWords(files.reduce((sum, { bytes }) => sum + bytes, 0));
  const count = `${countInWords(files.length, 'file')}, ${total}`;
  const paragraphs = [
    tone.greeting,
    how === 'link' ? `Here is ${what} (${count}):\n${where}` : `${what} is on its way to you on a disk labelled "${where}" (${count}).`,
    'The delivery note with the list of files and their checksums is attached: please copy the files, look at them, and tell me that they are good.',
    originalsOnPaper(originals),
    [tone.closing, sender.name, sender.phone, sender.email].filter((line) => line !== '').join('\n'),
  ];
  return { subject: `${title}: ${what} is delivered`, text: paragraphs.join('\n\n') };
}
