/**
 * What every paper is made of, as data: strings in their places, nothing about points or fonts.
 */
import type { Logo, SetupFields } from '../contract/setup.ts';
import { formatMoney } from '../money/format.ts';
import type { Money } from '../money/money.ts';
import { paperLines, paperText, type TypedText } from '../words/letters.ts';

/** Who sends a paper, and what it wears. */
export type Sender = Pick<SetupFields, 'name' | 'address' | 'email' | 'phone' | 'registered' | 'taxId' | 'paper' | 'logo' | 'accent'>;

/** What stands around a paper's matter: its head, foot and properties. */
export type PaperFrame = {
  size: SetupFields['paper'];
  title: string;
  sender: { name: string; lines: string[]; logo: Logo | null };
  /** `#rrggbb` of the strong rules, null for ink. */
  accent: string | null;
  head: string;
  about: string[];
  foot: string;
  page: (page: number, of: number) => string;
};

/** A heading with the lines under it. */
export type PaperFact = { label: string; lines: string[] };
/** Facts in two columns. */
export type PaperFacts = { left: PaperFact[]; right: PaperFact[] };
/** `note` stands small under what; `tax` only where the columns have it. */
export type PaperRow = { what: string; note?: string; quantity: string; unit: string; price: string; tax?: string; amount: string };
export type PaperSection = { head: string; rows: PaperRow[] };
/** Heads over the columns of a table; a column without a head is not there. */
type PaperColumns = { what: string; quantity: string; price: string; tax?: string; amount: string };
export type PaperTable = { columns: PaperColumns; sections: PaperSection[] };
/** A line of the sum: what, how much, and a small remark under it. */
export type PaperSum = { label: string; amount: string; note: string; weight: 'plain' | 'total' };
/** A place to sign: a sentence and what is to be written. */
export type PaperSign = { head: string; sentence: string; fields: string[] };
/** How a paper is paid: labelled lines, words under them, and the text of a payment code where there is one. */
export type PaperPay = { head: string; rows: { label: string; text: string }[]; words: string[]; code: string | null; caption: string };

/**
 * The frame of a paper.
 * @param head what it is, large; `named` is the same with its number, for the foot and the document's title
 * @param about lines under the head
 * @param subject what it is about; empty where nothing is
 */
export function frameOf(sender: Sender, head: string, named: string, about: string[], subject: string): PaperFrame {
  const name = paperText(sender.name);
  const matter = paperText(subject);
  return {
    size: sender.paper,
    title: matter === '' ? named : `${named}: ${matter}`,
    sender: { name, lines: senderLines(sender), logo: sender.logo ?? null },
    accent: sender.accent ?? null,
    head,
    about,
    foot: [name, named, matter].filter((part) => part !== '').join(' · '),
    page: (page, of) => `page ${page} of ${of}`,
  };
}

function senderLines(sender: Sender): string[] {
  const reach = [sender.email, sender.phone].map(paperText).filter((text) => text !== '');
  return [
    paperLines(sender.address).join(', '),
    reach.join(' · '),
    sender.registered && sender.taxId !== '' ? `Tax id ${paperText(sender.taxId)}` : '',
  ].filter((line) => line !== '');
}

/** Texts of the sender that stand on every paper. */
export function typedBySender(sender: Sender): TypedText[] {
  return [
    { field: 'your name', text: sender.name },
    { field: 'your address', text: sender.address },
    { field: 'your email', text: sender.email },
    { field: 'your phone', text: sender.phone },
    { field: 'your tax id', text: sender.taxId },
  ];
}

/** Texts made ready for paper under a heading; lines without anything are left out. */
export function factOf(label: string, lines: readonly string[]): PaperFact {
  return { label, lines: lines.map(paperText).filter((line) => line !== '') };
}

/** A fact with something to say. */
export function isKnown({ lines }: PaperFact): boolean {
  return lines.length > 0;
}

/** A true minus sign before figures, as wide as a digit. */
export function signed(figures: string): string {
  return figures.replace('-', '−');
}

/** An amount as papers write it. @param options.code with its currency before it */
export function onPaper(amount: Money, options: { code?: boolean } = {}): string {
  return signed(formatMoney(amount, options));
}
