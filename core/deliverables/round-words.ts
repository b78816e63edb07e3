/**
 * Rounds in words: where one stands, what the client is told when a cut is sent, and what is said when late notes moved a date.
 */
import { formatMoney } from '../money/format.ts';
import { countInWords, ordinalInWords } from '../words/amounts.ts';
import { dateInWords } from '../words/dates.ts';
import { amountOfFurther, type FurtherPrice } from './further-round.ts';

/** A date that late notes moved. Dates are YYYY-MM-DD; `lost` are business days. */
export type Move = { cut: string; dueBack: string; came: string; lost: number; from: string; to: string };

/** "Notes on the rough cut were due on Fri 6 November 2026 and came on Wed 11 November 2026, 3 business days later. ..." */
export function moveInWords({ cut, dueBack, came, lost, from, to }: Move): string {
  return `Notes on the ${cut} were due on ${dateInWords(dueBack)} and came on ${dateInWords(came)}, ${countInWords(lost, 'business day')} later. Delivery moves by as many, from ${dateInWords(from)} to ${dateInWords(to)}.`;
}

export type Dates = {
  /** Name of the deliverable, and whom it is for. */
  what: string;
  title: string;
  /** The date that was promised first, and the one that holds now. */
  promised: string;
  due: string;
  moves: readonly Move[];
};

/** What the client is told of a date that moved: promised, notes due, notes came, the new date. */
export function datesForClient({ what, title, promised, due, moves }: Dates): { subject: string; text: string } {
  const sentences = [
    `${what} was promised for ${dateInWords(promised)}.`,
    ...moves.map(moveInWords),
    due === moves.at(-1)?.to ? '' : `It is now due on ${dateInWords(due)}.`,
  ].filter((sentence) => sentence !== '');
  return { subject: `${title}: new date for ${what}`, text: [...sentences, `Please plan with ${dateInWords(due)}.`].join('\n') };
}

export type Sending = {
  what: string;
  title: string;
  cut: string;
  /** Which pass of notes it asks for, and how many were agreed on. */
  pass: number;
  included: number;
  dueBack: string;
  /** Due date of the delivery; null where none is known. */
  due: string | null;
  /** What notes on this cut cost where they are a further round. */
  price: Pick<FurtherPrice, 'hours' | 'editHour' | 'currency'> | null;
};

/** The message that goes with a cut. */
export function sendingForClient({ what, title, cut, pass, included, dueBack, due, price }: Sending): { subject: string; text: string } {
  const round =
    pass <= included
      ? `This is the ${ordinalInWords(pass)} of ${countInWords(included, 'round')} of notes that ${included === 1 ? 'is' : 'are'} included.`
      : `${usedUp(included)}${
          price
            ? `: notes on this cut are a further round at ${formatMoney(amountOfFurther(price), { code: true })}. A yes without notes costs nothing`
            : ''
        }.`;
  return {
    subject: `${title}: ${cut} of ${what}`,
    text: [
      `Here is the ${cut} of ${what}.`,
      round,
      `Please send all notes together, each with its time code, by ${dateInWords(dueBack)}.`,
      due === null
        ? ''
        : `With notes by then, ${what} is delivered by ${dateInWords(due)}; later notes move that date by as many business days.`,
    ]
      .filter((line) => line !== '')
      .join('\n'),
  };
}

function usedUp(included: number): string {
  if (included === 0) return 'No round of notes is included';
  return `The ${countInWords(included, 'round')} of notes that ${included === 1 ? 'was included is' : 'were included are'} used up`;
}

export type Standing = {
  cut: string;
  dueBack: string;
  /** Date on which notes came, or null. */
  came: string | null;
  /** My business days past the window: until the notes came, or until today. */
  lost: number;
  notes: number;
  ticked: number;
};

/** Where a round stands, in a sentence. */
export function standingInWords({ cut, dueBack, came, lost, notes, ticked }: Standing): string {
  const head = capital(cut);
  if (came === null)
    return lost > 0
      ? `${head}: notes were due on ${dateInWords(dueBack)}, ${countInWords(lost, 'business day')} ago.`
      : `${head}: notes are due by ${dateInWords(dueBack)}.`;
  if (notes === 0) return `${head}: approved without notes on ${dateInWords(came)}.`;
  const late = lost > 0 ? `, ${countInWords(lost, 'business day')} late` : '';
  return `${head}: ${countInWords(notes, 'note')} came on ${dateInWords(came)}${late}; ${ticked === notes ? 'all done' : `${ticked} of ${notes} done`}.`;
}

/** How many rounds were used of those agreed on. @param used passes of notes that came */
export function leftInWords(included: number, used: number): string {
  const of = `${countInWords(included, 'round')} of notes ${included === 1 ? 'is' : 'are'} included`;
  if (used === 0) return `${capital(of)}.`;
  const far =
    used > included
      ? `, and there ${used - included === 1 ? 'was' : 'were'} ${countInWords(used - included, 'further round')}`
      : `, ${used} used`;
  return `${capital(of)}${far}.`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
