/**
 * A polite no, ready to copy.
 */
import { datesInWords } from '../words/dates.ts';

export type DeclineInput = { title: string; contactName: string; dates: readonly string[]; place: string | null; sender: string };

/**
 * Subject and plain text of a no. It gives no reason: none is owed, and a reason invites bargaining.
 */
export function declineReply({ title, contactName, dates, place, sender }: DeclineInput): { subject: string; text: string } {
  const givenName = contactName.trim().split(/\s+/)[0] ?? '';
  const when = dates.length > 0 ? ` for ${datesInWords(dates)}` : '';
  const where = place ? ` in ${place}` : '';
  const lines = [
    givenName ? `Hi ${givenName},` : 'Hello,',
    '',
    `Thank you for asking me${when}${where}. I cannot take this one, and would rather say so today than keep you waiting.`,
    '',
    'If the dates move, or for the next one, please ask again. I hope it goes well.',
    '',
    'Kind regards,',
    sender,
  ];
  return { subject: `Re: ${title}`, text: lines.join('\n').trimEnd() };
}
