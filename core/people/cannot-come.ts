/**
 * The message that tells a client that I cannot come, as a draft to copy. It promises nobody.
 */
import { dateInWords } from '../words/dates.ts';
import { joined } from '../words/lists.ts';

type CannotCome = {
  /** Who is written to; empty where no name is known. */
  contact: string;
  title: string;
  /** Dates that I would have done, and those that somebody else does in any case. */
  dates: readonly string[];
  othersDates: readonly string[];
  /** Somebody could take over, by what is on file. */
  somebody: boolean;
  inInk: boolean;
  from: string;
};

export function cannotComeText({ contact, title, dates, othersDates, somebody, inInk, from }: CannotCome): string {
  const days = joined(dates.map((date) => dateInWords(date)));
  const others = othersDates.map((date) => dateInWords(date));
  const stands = others.length > 0 ? ` ${joined(others)} ${others.length > 1 ? 'are' : 'is'} not touched by this.` : '';
  const instead = somebody
    ? 'I am asking a colleague now whether they can take over, and will tell you as soon as I have their answer.'
    : 'I am looking for somebody who can take over, and will tell you as soon as I know.';
  return [
    `Hello${contact === '' ? '' : ` ${contact.split(' ')[0] ?? contact}`},`,
    '',
    `I am sorry: I cannot come to ${title} on ${days}.${stands}`,
    '',
    inInk ? `${instead} If you would rather find somebody yourself, please tell me at once.` : instead,
    '',
    'Best regards,',
    from,
  ].join('\n');
}
