/**
 * Old mails that a program marks with a bar before each line ("| On 3 May you wrote:"), made those with the mark that is read everywhere: "> ".
 * Rows of a table, of a list or of a form are left as they are.
 */
import { ATTRIBUTION, HEADER, isWhen } from './lines.ts';

const BARRED = /^\s{0,3}\|(?![^|]*\|)/;
const GREETS =
  /^(?:hi|hello|hey|dear|good (?:morning|afternoon|evening|day)|hallo|guten (?:tag|morgen)|liebe\p{L}?|sehr geehrte\p{L}?|bonjour|hola|buen\p{L}s|beste|geachte|ciao|buongiorno)(?!\p{L})/iu;
/** Lines that a form has as well as a mail's head. */
const OF_A_FORM = /^(?:to|cc|bcc|date|datum|fecha|an|à|aan|para|reply-to)$/i;
/** "---- your message from 14:22 ----"; a rule above a form's lines is none. */
const RULED =
  /^\s*[-_=]{2,}.*(?<!\p{L})(?:message|e-?mail|mail|forwarded|original|wrote|nachricht|mensaje|messaggio|bericht)(?!\p{L}).*[-_=]{2,}\s*$/iu;
/** No line of a head is longer. */
const LONGEST = 240;

/** Who wrote when; "as I wrote:" tells no day. */
const isAttribution = (words: string): boolean => ATTRIBUTION.test(words) && /\d/.test(words);

/** Whether the first line of a block is that of a mail, or of the head that a program puts above one. */
function opensMail(line: string): boolean {
  const words = line.replace(BARRED, '').trim().slice(0, LONGEST);
  const label = HEADER.exec(words)?.[1];
  return GREETS.test(words) || isAttribution(words) || (label !== undefined && !OF_A_FORM.test(label) && !isWhen(words));
}

/** The text with such bars made marks of quoting, character for character. */
export function withoutBars(text: string): string {
  if (!text.includes('|')) return text;
  const lines = text.split('\n');
  // A mail that is barred from its first line to its last is the message itself.
  if (lines.every((line) => line.trim() === '' || BARRED.test(line))) return text;
  let above = '';
  let quotes = false;
  return lines
    .map((line, at) => {
      if (!BARRED.test(line)) {
        if (line.trim() !== '') above = line.trim().slice(0, LONGEST);
        return line;
      }
      if (at === 0 || !BARRED.test(lines[at - 1] ?? '')) quotes = isAttribution(above) || RULED.test(above) || opensMail(line);
      return quotes ? line.replace('|', '>') : line;
    })
    .join('\n');
}
