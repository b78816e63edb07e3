/**
 * What stands on the paper of the terms, as data: the text as it was edited and filled in, and a place to sign for both.
 */
import { paperDate } from '../words/dates.ts';
import { paperText, type TypedText } from '../words/letters.ts';
import { factOf, frameOf, isKnown, typedBySender, type PaperFacts, type PaperFrame, type PaperSign, type Sender } from './content.ts';
import { TERMS_CAUTION } from './terms-default.ts';

/** `number` is the quote's version, `date` the paper's at home, `madeAt` its instant (UTC with Z), `text` has no gaps any more. */
export type TermsPaperInput = {
  sender: Sender;
  client: string;
  job: string;
  number: number;
  date: string;
  madeAt: string;
  text: string;
};

/** A heading, empty where there is none, with its paragraphs. */
export type TermsPart = { head: string; text: string };
type TermsPaper = PaperFrame & { facts: PaperFacts; parts: TermsPart[]; notes: string[]; sign: PaperSign };

/** The whole content of the paper. */
export function termsPaperContent({ sender, client, job, number, date, text }: TermsPaperInput): TermsPaper {
  const version = `Quote, version ${number}`;
  return {
    ...frameOf(sender, 'Terms', `Terms, quote version ${number}`, [paperDate(date), `with version ${number} of the quote`], job),
    facts: { left: [factOf('For', [client])].filter(isKnown), right: [factOf('Job', [job, version])] },
    parts: partsOf(text),
    notes: [TERMS_CAUTION],
    sign: {
      head: 'Agreed',
      sentence: `Signing agrees to these terms together with version ${number} of the quote.`,
      fields: ['For the client: name', 'For the videographer: name', 'Signature', 'Signature', 'Date', 'Date'],
    },
  };
}

/** The longest line that is taken for a heading. */
const LONGEST_HEAD = 60;

/** Paragraphs stand apart by an empty line. The first of several lines is a heading when it is short and does not end like a sentence. */
function partsOf(text: string): TermsPart[] {
  return paperText(text)
    .split(/\n\s*\n/)
    .map((paragraph) => paragraph.trim())
    .filter((paragraph) => paragraph !== '')
    .map((paragraph) => {
      const [first = '', ...rest] = paragraph.split('\n').map((line) => line.trim());
      const isHead = rest.length > 0 && first.length <= LONGEST_HEAD && !/[.,;:!?]$/.test(first);
      return isHead ? { head: first, text: rest.join('\n') } : { head: '', text: [first, ...rest].join('\n') };
    });
}

/** Every text on it that somebody typed. */
export function typedOnTerms({ sender, client, job, text }: TermsPaperInput): TypedText[] {
  return [
    ...typedBySender(sender),
    { field: "the client's organisation", text: client },
    { field: "the job's title", text: job },
    { field: 'the text of your terms', text },
  ];
}
