/**
 * How a client writes, so that the answer can be written the same way. Reads English greetings and closings; anything else is answered plainly.
 */

/** `greeting` and `closing` are whole lines; `formal` chooses the fuller sentence where there are two. */
export type Tone = { greeting: string; closing: string; formal: boolean };

const GREETING = /^\s*(hi|hiya|hey|howdy|hello|good (?:morning|afternoon|evening|day)|dear|to whom it may concern)\b/i;
const CLOSING =
  /^\s*(all the best|best wishes|best regards|best|kind regards|warm regards|regards|many thanks|thanks(?: again| so much| a lot)?|thank you|cheers|yours (?:sincerely|faithfully|truly)|sincerely|respectfully)\s*[,.!–-]*\s*(.*)$/i;
const FORMAL_CLOSING = /^(yours|sincerely|respectfully)/i;
const TITLED = /\b(?:mr|mrs|ms|mx|dr|prof|sir|madam)\b/i;
/** A name of one to four words that begin with a capital. */
const NAME = /^\p{Lu}[\p{L}\p{M}'’.-]*(?: \p{Lu}[\p{L}\p{M}'’.-]*){0,3}$/u;

/**
 * The tone of a message.
 * @param message as it came; null where the job was put in by hand
 * @param contactName full name on the books, may be empty
 */
export function toneOf(message: string | null, contactName: string): Tone {
  const lines = (message ?? '').split(/\r?\n/).map((line) => line.trim());
  const greetingLine = lines.find((line) => GREETING.test(line)) ?? '';
  const greeted = GREETING.exec(greetingLine)?.[1]?.toLowerCase() ?? '';
  const signed = signatureOf(lines);
  const formal =
    greeted === 'dear' || greeted === 'to whom it may concern' || FORMAL_CLOSING.test(signed.closing) || TITLED.test(greetingLine);
  const name = addressed(signed.name, contactName.trim(), formal);
  return { greeting: greetingFor(greeted, formal, name), closing: closingFor(signed.closing, formal), formal };
}

/** The last closing of the message and the name under or behind it. */
function signatureOf(lines: readonly string[]): { closing: string; name: string } {
  for (let index = lines.length - 1; index >= 0; index -= 1) {
    const found = CLOSING.exec(lines[index] ?? '');
    if (!found) continue;
    const below = lines.slice(index + 1).find((line) => line !== '') ?? '';
    const name = [found[2] ?? '', below].find((text) => NAME.test(text)) ?? '';
    const behind = found[2] ?? '';
    // "Thanks for your help with ..." is a sentence, not a closing.
    if (behind === '' || NAME.test(behind)) return { closing: (found[1] ?? '').toLowerCase(), name };
  }
  return { closing: '', name: '' };
}

/** Who signs with one name is called by it; formally the whole name, since neither title nor gender is known. */
function addressed(signed: string, contactName: string, formal: boolean): string {
  if (signed !== '' && !signed.includes(' ')) return signed;
  const whole = contactName || signed;
  return formal ? whole : (whole.split(/\s+/)[0] ?? '');
}

function greetingFor(greeted: string, formal: boolean, name: string): string {
  if (formal && name === '') return 'Dear Sir or Madam,';
  const word = formal ? 'Dear' : /^(hi|hiya|hey|howdy)$/.test(greeted) ? 'Hi' : 'Hello';
  return name === '' ? `${word},` : `${word} ${name},`;
}

function closingFor(closing: string, formal: boolean): string {
  if (formal) return 'Kind regards,';
  if (closing === 'cheers') return 'Cheers,';
  if (/^(best|all the best|best wishes)$/.test(closing)) return 'Best wishes,';
  return /^(thanks|many thanks|thank you)/.test(closing) ? 'Many thanks,' : 'Kind regards,';
}
