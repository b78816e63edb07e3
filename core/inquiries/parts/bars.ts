/**
 * Old mails that a program marks with a bar before each line ("| On 3 May you wrote:"), made those with the mark that is read everywhere: "> ".
 * Rows of a table or of a list are left as they are.
 */

const BARRED = /^\s{0,3}\|(?![^|]*\|)/;
/** The first words of a mail, or of the head that a program puts above it; "From: Fri 14 May" is the line of a form. */
const OPENS =
  /^(?:(?:from|von|de|van)\s?:(?!\s*(?:\d|(?:mon|tue|wed|thu|fri|sat|sun)\p{L}*\.?,? \d))|(?:sent|subject|gesendet|betreff|envoyé|objet|verzonden|onderwerp)\s?:|(?:on|am|le|el|op|il|em)\b.{4,160}(?:wrote|schrieb|écrit|escribió|schreef|ha scritto|escreveu)|(?:hi|hello|hey|dear|good (?:morning|afternoon|evening|day)|hallo|guten (?:tag|morgen)|liebe\p{L}?|sehr geehrte\p{L}?|bonjour|hola|buen\p{L}s|beste|geachte|ciao|buongiorno)\b)/iu;
/** What stands above it: "On 3 May 2027, Ailsa wrote:", "---- your message ----"; a rule above a form's lines is none. */
const LEADS =
  /^\s*(?:on|am|le|el|op|il|em)\b(?=.*\d).{4,160}(?:wrote|schrieb\b.{0,60}|écrit|escribió|schreef\b.{0,60}|scritto|escreveu)\s?:\s*$|^\s*[-_=]{2,}.*(?<!\p{L})(?:message|e-?mail|mail|forwarded|original|wrote|nachricht|mensaje|messaggio|bericht)(?!\p{L}).*[-_=]{2,}\s*$/iu;
/** No line of a head is longer. */
const LONGEST = 240;

const words = (line: string): string => line.replace(BARRED, '').trim().slice(0, LONGEST);

/** The text with such bars made marks of quoting, character for character. */
export function withoutBars(text: string): string {
  if (!text.includes('|')) return text;
  const lines = text.split('\n');
  // A mail that is barred from its first line to its last is the message itself.
  if (lines.every((line) => line.trim() === '' || BARRED.test(line))) return text;
  let above = '';
  for (let at = 0; at < lines.length; at++) {
    const line = lines[at] ?? '';
    if (!BARRED.test(line)) {
      if (line.trim() !== '') above = line.slice(0, LONGEST);
      continue;
    }
    let next = at;
    while (next < lines.length && BARRED.test(lines[next] ?? '')) next++;
    if (LEADS.test(above) || OPENS.test(words(line))) for (let of = at; of < next; of++) lines[of] = (lines[of] ?? '').replace('|', '>');
    above = '';
    at = next - 1;
  }
  return lines.join('\n');
}
