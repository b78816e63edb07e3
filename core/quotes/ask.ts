/**
 * Open questions as they are put to a client.
 */
import type { FactName, Question } from '../contract/inquiries.ts';
import { joined } from '../words/lists.ts';

/** What is asked where a question has no words of its own for the client, to be followed by a choice where there is one. Facts without an entry are settled by me and never asked of a client. */
const ASKED: Partial<Record<FactName, string>> = {
  start: 'On which date does it begin?',
  end: 'On which date does it end?',
  firstCall: 'When shall I be there on the first day, load-in included?',
  lastWrap: 'Until when do you need me on the last day, strike included?',
  place: 'Where does it take place?',
  country: 'In which country does it take place?',
  role: 'What shall I do for you: film, mix, stream, or edit?',
  days: 'How many days is it?',
  budget: 'In which currency is your budget, and is it for a day or for the whole job?',
  contactName: 'Who is the person to talk to?',
  contactEmail: 'To which address shall I write?',
  contactPhone: 'Which phone number reaches you on the day?',
  organisation: 'To whom shall I make out the quote and the invoice?',
  deliverables: 'What shall I hand over afterwards, how long, and by when?',
};

/** The questions for a client, each once; two or more choices are named. */
export function questionsForClient(questions: readonly Question[]): string[] {
  const asked = questions.flatMap(({ field, put, choices }) => {
    const stem = put ?? ASKED[field];
    if (stem === undefined) return [];
    const labels = choices.map((choice) => choice.label.trim()).filter((label) => label !== '');
    return [labels.length > 1 ? `${stem} (${joined(labels, 'or')})` : stem];
  });
  return [...new Set(asked)];
}
