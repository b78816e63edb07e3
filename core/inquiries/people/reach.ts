/**
 * Mail addresses and telephone numbers.
 */
import type { PersonFact } from './words.ts';

const EMAIL = /(?<![\w.+-])\w[\w.+-]{0,60}@[\w-]{1,60}(?:\.[\w-]{1,40}){1,4}(?![\w-])/g;
const PHONE =
  /(?<![\w$£€.,/:@-])(?:\+\d{1,3}[ .-]?|00\d{2} - |1[ .-](?=\(?\d{3}\)?[ .-]\d{3}[ .-]))?(?:\(\d{1,5}\)[ .-]?)?\d{2,6}(?:[ .-]\d{2,6}){1,5}(?:[ -]\d(?=[.,)]?[ \t]*(?:\n|$)))?(?![\w@/]|:\S)|(?<![\w$£€.,/:@-])(?:\+\d{1,3}(?:[ .-]\d{1,5}){3,6}(?!\d)|\+\d{1,3}[ .-](?:\(0\)[ .-]?)?(?:\d{1,4}[ .-]\d{5,9}|\d{7,12})(?!\d)|\+\d{8,14}|0\d{1,4}[ -]\d{6,9}|0\d{8,11}|\d{10,11})(?![\w@/]|:\S|[,.]\d)/g;
const LABEL =
  /(?:\b(?:tel|phone|ph|mob|mobile|cell|call|text|ring|reach me|reached|whatsapp|number|direct|m|t|p|c|contact|on|at|me|back|al|hp|natel|nummer|handy|gsm|tél|tlf|teléfono|móvil|número|numéro|numero)\b[\s.:]{0,3}(?:is |at |on |me at |me on )?)$/i;
/** "text Hafiz 9555 0168" */
const ASKED_FOR =
  /(?<!\p{L})(?:[Tt]ext|[Cc]all|[Rr]ing|[Pp]hone|[Ww]hats[Aa]pp|SMS|[Ss]ms|[Pp]m|PM|[Cc]ontact|[Mm]essage) \p{Lu}[\p{L}'-]{1,20}(?: \p{Lu}[\p{L}'-]{1,20})?,?(?: (?:on|at))?[\s:]{1,2}$/u;
const OTHER_NUMBER =
  /(?:\b(?:iban|order|ref(?:erence)?|invoice|account|acct|vat|reg|abn|acn|siret|siren|rcs|hrb|cif|nif|kvk|btw|gstin?|ein|bsb|uen|nzbn|zvr|steuernummer|ust-?id(?:-?nr)?|(?:company|charity|registration|licen[cs]e|permit|booking|confirmation|ticket) (?:no|number)|po|no|id|meeting id|passcode|fax|f)\b[\s.:#]{0,3}|#)$/i;
/** National writings that are a phone also without a label. */
const UNMISTAKABLE =
  /^(?:\+|\d{5} \d{5}$|0\d[\s-]\d{3,4}[\s-]\d{4}$|0\d(?:[\s.]\d\d){4}$|0\d{1,3}[\s-]\d{6,9}$|[6-9]\d{9}$|\(?\d{3}\)?[\s.-]\d{3}[\s.-]\d{4}$|0\d{2,4}[\s-]\d|0\d{9,10}$|[679]\d\d \d{3} \d{3}$|\(0\d{1,4}\))/;

/** "Invoices to accounts@": where bills go. */
const FOR_BILLS = /\b(?:invoic\w*|bills?|billing|receipts?|payments?)\b[^.;!?\n]{0,24}$/i;
const BILLS = /^(?:accounts?|billing|invoic\w*|ap|no-?reply)@/i;
/** A number with its area. */
const LEAST_IN_FULL = 9;
/** "Gonzalo Arranz, " */
const NAME_BEFORE = /(?:^|[.!?,]\s|\n)(?!(?:[Oo]rder|[Aa]ccount|[Ss]ort|IBAN|[Rr]ef))\p{Lu}[\p{L}'-]+(?: \p{Lu}[\p{L}'-]+){1,2},\s$/u;
/** Nothing more stands behind the last words. */
const ENDING = 40;
/** More addresses than this are a list. */
const MOST_ADDRESSES = 20;

/** The first mail address; one that bills go to only where there is no other, one that is not the asker's never. */
export function emailIn(text: string, isOthers: (found: PersonFact) => boolean = () => false): PersonFact | undefined {
  const matches = [...text.matchAll(EMAIL).take(MOST_ADDRESSES)].filter(
    ({ 0: value, index }) => !isOthers({ value, start: index, end: index + value.length }),
  );
  const match =
    matches.find(({ 0: address, index }) => !BILLS.test(address) && !FOR_BILLS.test(text.slice(Math.max(0, index - 40), index))) ??
    matches[0];
  if (!match) return undefined;
  const value = match[0].replace(/[.-]+$/, '');
  return { value, start: match.index, end: match.index + value.length };
}

/** A text without its mail addresses. */
export function withoutEmails(text: string): string {
  return text.replace(EMAIL, '');
}

function isDateOrHours(written: string): boolean {
  return /^\d{4}[-.\s]\d{2}[-.\s]\d{2}$|^\d{1,2}[-.\s]\d{1,2}[-.\s](?:19|20)\d\d$|^[0-2]\d[0-5]\d\s?-\s?[0-2]\d[0-5]\d$/.test(written);
}

/**
 * Runs of digits that are phones and not dates, hours, order numbers or amounts.
 * @param labelled true in running text, where a number needs a word for it or an unmistakable writing
 */
export function phonesIn(text: string, labelled: boolean): PersonFact[] {
  const phones: PersonFact[] = [];
  for (const match of text.matchAll(PHONE)) {
    const written = match[0];
    const digits = written.replace(/\D/g, '');
    if (digits.length < 7 || digits.length > 15 || isDateOrHours(written)) continue;
    if (/^\d{1,3}(?: \d{3})+$/.test(written) && digits.length < 9) continue;
    const lead = text.slice(Math.max(0, match.index - 30), match.index);
    if (OTHER_NUMBER.test(lead)) continue;
    const ends = /^[.!)]?\s*$/.test(text.slice(match.index + written.length, match.index + written.length + ENDING));
    const last =
      ends &&
      ((/^\d{4} \d{4}$/.test(written) && /(?:\p{Lu}\p{Ll}+,?|[.!?])\s$/u.test(lead)) ||
        (digits.length >= LEAST_IN_FULL && NAME_BEFORE.test(lead)) ||
        /@[\w.-]+ ?[/|,] ?$/.test(lead));
    if (labelled && !last && !LABEL.test(lead) && !ASKED_FOR.test(lead) && !UNMISTAKABLE.test(written)) continue;
    phones.push({ value: written, start: match.index, end: match.index + written.length });
  }
  return phones;
}

const NAMED = /(?<!\p{L})\p{Lu}\p{Ll}[\p{L}'-]*/gu;
const NO_NAMES =
  /^(?:call|text|ring|phone|ph|tel|mob|mobile|cell|whatsapp|number|my|me|mine|i|i'm|we|our|us|kit|please|pls|plz|kindly|also|just|so|then|contact|or|and|reach|thanks|thank|cheers|ta|best|regards|hi|hey|hello|on|at|is|the|this|it|if|to|just|give|drop|any|questions|reply|answer|sms|message|direct|office|email|mail|yes|no|from|by|you|transcribed|transcript|voicemail|missed|incoming|caller|received|can|could|would|will|for|let|monday|tuesday|wednesday|thursday|friday|saturday|sunday|january|february|march|april|may|june|july|august|september|october|november|december|rückruf|rückmeldung|rückmeldungen|antwort|antworten|anruf|anrufe|telefon|bitte|unter|montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag|réponse|rappel|tél|teléfono|respuesta|m|móvil|tél|number's|natel|handy)$/i;

/**
 * Whose a number is: of another, where a name or an office that is not the writer's stands before it in its sentence and nothing leads back to the writer.
 * @param mine the writer's names; undefined where nobody signs: then only the number of a house is another's
 */
export function anothersPhone(text: string, phone: PersonFact, mine: string | undefined): boolean {
  const lead =
    text
      .slice(Math.max(0, phone.start - 60), phone.start)
      .split(/(?<!\b(?:ph|tel|mob))[.;!?](?=\s)|\n/i)
      .at(-1) ?? '';
  const last = (pattern: RegExp, counts: (word: string) => boolean): number =>
    [...lead.matchAll(pattern)].filter(([word]) => counts(word.replace(/'s$/, '').toLowerCase())).at(-1)?.index ?? -1;
  const house = last(PLACES, () => true);
  if (mine === undefined) return house >= 0 && !OWN.test(lead.slice(house));
  const known = mine.toLowerCase().split(/[\s'-]+/);
  const other = last(NAMED, (word) => !NO_NAMES.test(word) && !word.split(/['-]/).every((part) => known.includes(part)));
  return Math.max(other, house) > last(WRITER, () => true);
}
const WRITER = /(?<!\p{L})(?:me|mine|my|i'm|us|mi|mein|meine|moi)(?!\p{L})/giu;
/** Where nobody signs these may be the writer's own. */
const OWN = /^(?:office|planner)/i;
/** A number of a house or of somebody on the day. */
const PLACES =
  /(?<!\p{L}|\b(?:not|than) (?:the |a )?(?:\p{L}{1,15} )?)(?:office|venue|reception|facilities|hotel|hall|planner)(?:'s)?(?:,? (?:number|phone|line|tel|ph)\b\.?){0,2}(?: is)?[,:]?\s?\(?$/giu;

/** The words of its clause before a number. */
const leadOf = (text: string, { start }: PersonFact): string =>
  text
    .slice(Math.max(0, start - 50), start)
    .split(/[\d;]|[.!?]\s/)
    .at(-1) ?? '';
const MINE = /(?<!\p{L})(?:me|my|mine|I'm)(?!\p{L})/iu;
const OTHERS = /(?<!\p{L})(?:her|his|their|\p{L}+'s) (?:cell|mobile|phone|number|no|line)(?!\p{L})/iu;

/** "My mobile is best, I'm hardly ever at my desk: 07700 ..." */
export const isMine = (text: string, phone: PersonFact): boolean => MINE.test(leadOf(text, phone)) && !OTHERS.test(leadOf(text, phone));

/** "Her cell is 555-0143 but text me instead: 555-0144": of several numbers the one by which the writer says to be reached. */
export function ownPhone(text: string, phones: readonly PersonFact[]): PersonFact | undefined {
  const [first, ...more] = phones;
  return (first && OTHERS.test(leadOf(text, first)) ? more.find((phone) => isMine(text, phone)) : undefined) ?? first;
}

/** "Crew planning | Kanaal Producties | 020 555 0186": what stands between strokes or commas, without numbers and addresses. */
export const withoutReach = (line: string): string => {
  const marks = /[|·]/.test(line) ? /[^|·]+/g : /[^,|·]+/g;
  const left = line.replace(marks, (piece) => (/\S@\S|\d{3}|www\.|https?:/i.test(piece) ? ' '.repeat(piece.length) : piece));
  return /\p{L}{3}/u.test(left) ? left : line;
};
