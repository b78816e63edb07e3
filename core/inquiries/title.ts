/**
 * A name for a job that has none yet.
 */
import type { InquiryFields } from '../contract/inquiries.ts';
import type { Place } from '../contract/parts.ts';
import { oneLine } from '../words/visible.ts';

const LONGEST = 60;

/** Who asks and where; else what for and where; else how the message begins. */
export function titleOf(fields: InquiryFields, place: Place | null, message: string): string {
  const where = place?.name ?? fields.place;
  const parts = fields.organisation ? [fields.organisation, where] : where ? [capital(fields.role ?? 'job'), where] : [];
  const words = parts.filter((part) => part !== undefined && part !== '').join(', ');
  return shortened(oneLine(words || firstWords(message))) || 'Inquiry';
}

/** The first line with words, without the marks of mail headers and quoting. */
function firstWords(message: string): string {
  const line = message.split('\n').find((one) => /\p{L}/u.test(one)) ?? '';
  return line.replace(/^[\s>*#-]*(?:(?:subject|betreff|re|fwd?)\s*:\s*)*/i, '');
}

function shortened(text: string): string {
  if (text.length <= LONGEST) return text;
  const head = text.slice(0, LONGEST);
  return `${head.slice(0, Math.max(head.lastIndexOf(' '), LONGEST / 2)).replace(/[\s,;:.–-]+$/, '')} …`;
}

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);
