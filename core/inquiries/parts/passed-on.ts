/**
 * Whether an old mail below a few words is passed on to the reader, to be read as the message, or only stands there because it is answered.
 */
import { ABROAD } from '../abroad.ts';
import { asksForWork } from '../asking.ts';
import { OCCASION } from '../occasions.ts';
import { HEADER } from './lines.ts';

/** So much of the words above a mail and of the mail is looked at. */
const MOST_READ = 3000;

/** The words above send the reader down to the mail. */
const POINTS_BELOW =
  /\bfwd?:|\b(?:fwd'?ing (?:this|it|on)|see (?:the )?(?:chain|thread)|forwarding|forwarded(?! (?:by|many)\b)|(?:thread|chain|exchange|conversation) below|below thread|(?:passing|sending) (?:this|it) (?:on|along|over)|see \p{Lu}\p{L}+'s (?:note|mail|message)|see (?:below|the (?:mail|message|email) below)|(?:the )?(?:e-?mail|message|request|enquiry|inquiry|details|note|confirmation|brief|reply|answer|original|specs?|thread) (?:is |are |it's )?(?:below|underneath|at the bottom)|at the (?:very )?bottom is (?:the|her|his|their)|below came in|came in below|(?:details|info) (?:are )?below|transf[èé]r\p{L}{1,4}|ci-dessous|reenv[ií]o|más abajo|weitergeleitet|anbei die (?:mail|anfrage|nachricht|bestätigung) (?:der|des|von|vom)|leite \p{L}+ weiter|siehe unten|inoltro|qui sotto|doorsturen|hieronder)(?!\p{L})/iu;
/** "Can you take this?" above a mail means what is in it only where nothing else is said. */
const HANDS_ON =
  /\b(?:(?:can|could|would|will) you (?:do|take|cover|help with|make|manage|handle) (?:this|it|these|that(?! (?:kind|sort))|one)|any (?:use|good|interest) to you|is this (?:one )?for you|one for you|up for (?:this|it)|fancy (?:this|it)|interested in this|free for this|up your street|want this(?: one)?|take this one)\b/iu;
/** "Over to you", "I'm swamped, client's in copy": whoever says so hands on what a stranger to these words asks for. */
const LEAVES =
  /(?<!\p{L})(?:over to you|(?:mail|message|e-?mail|note|thread|details?|it)(?: is|'s| are)? underneath|(?:passing|handing|giving|sending) (?:you|over|on) (?:my|this|the|a|one)|take over (?:from|for) me|(?:client|customer|she|he|they)(?:'s|'re| is| are)? (?:cc'?e?d|copied|in copy|on cc|in cc)|instead of me|in my place|i(?:'m| am) (?:swamped|double-booked|booked|away|abroad)|i (?:can't|cannot) (?:do|make|take)(?: it| this| that)?|kun jij|kannst du|hättest du|könntest du|ich kann (?:da )?nicht|ik kan (?:dan )?niet|peux-tu|tu peux|je ne peux pas|te interesa|puedes tú|yo no puedo)(?!\p{L})/iu;
/** "This one's all yours, talk to her straight", "pray write to her and not to me", "it isn't ours": theirs, whatever week the words name. */
const HANDS_OVER =
  /(?:(?:^|[.!?,;\n]\s*)(?:(?:please|pray|just|so|do) )?|\b(?:would|could|can|will) you (?:please |just )?)(?:talk|write|speak|reply|answer|respond|ring|call|e-?mail|text|get back|reach out)(?: (?:straight|directly|back))?(?: (?:to|with))? (?:her|him|them)(?! (?:know|that|your|the)\b)(?!\p{L})|(?<!\p{L})(?:all yours|yours if you|(?:isn't|is not) (?:for us|ours|mine|our thing)|recommended you)(?!\p{L})/iu;
/** A few words that name no day are about the mail below them. */
const MOST_ABOVE = 250;
const NAMES_DAY =
  /\d|(?<!\p{L})(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|mon|tues?|wed|thurs?|fri|sat|sun|today|tonight|tomorrow|weekend|week|month|january|february|march|april|june|july|august|september|october|november|december)(?!\p{L})/iu;

/** "No April fool", "I'm away this week": no day of the work. */
const NOT_WHEN = /(?<!\p{L})april fools?(?!\p{L})/giu;

/** Who wrote the mail, by its head or by the line that names its writer. */
const WRITERS = [
  /^\s{0,6}(?:from|von|de|da|van)\s?:\s*["']?(\p{Lu}[\p{L}'-]+)/imu,
  /(?:^|[\s,])(?!(?:AM|PM|On)\s)(\p{Lu}[\p{L}'-]+)(?:\s\p{Lu}[\p{L}'.-]*){0,3}(?:\s?[<([][^>)\]\n]{3,60}[>)\]])?,?\s(?:wrote|a écrit|escribió|ha scritto|escreveu)/u,
  /(?:schrieb|schreef)\s(\p{Lu}[\p{L}'-]+)/u,
];
export function writerOf(mail: string): string | undefined {
  const head = mail.slice(0, 400).split(/\n\s{0,6}\n/, 1)[0] ?? '';
  for (const pattern of WRITERS) {
    const name = pattern.exec(head)?.[1];
    if (name !== undefined) return name;
  }
  return undefined;
}

/** True when somebody is greeted or signs in a few words; "Write to Hamish." only names him. */
const isParty = (words: string, name: string): boolean =>
  new RegExp(`^\\W*(?:\\p{L}+\\s)?${name}(?!\\p{L})|(?:\\n|[.!?,]\\s+|[-–—]\\s?)${name}(?!\\p{L})[^.!?\\n]{0,40}$`, 'u').test(words);

/**
 * True when a mail is passed on by the words above it: they send the reader down, or they are few, name no day and ask for nothing themselves, and
 * somebody who is neither greeted nor signs in them asks for work in it or tells of an occasion.
 * @param above what is written above the mail, heads of mails in it too
 * @param mail the mail with its head
 * @param isFirst whether no mail above it was passed on: who stays out of one says so of that one
 */
export function passedOn(above: string, mail: string, isFirst: boolean): boolean {
  const lead = above.slice(0, MOST_READ);
  if (POINTS_BELOW.test(lead)) return true;
  const words = lead
    .split('\n')
    .filter((line) => !HEADER.test(line.trim().slice(0, 200)))
    .join('\n')
    .trim();
  const here = asksForWork(words);
  const over = isFirst && HANDS_OVER.test(words) && !here.film && !/\d/.test(words);
  if (words.length > MOST_ABOVE || (!over && NAMES_DAY.test(words.replace(NOT_WHEN, '')))) return false;
  if (HANDS_ON.test(words)) return true;
  const whole = mail.slice(0, MOST_READ).replace(/^[>\t ]+/gm, '');
  const writer = writerOf(whole);
  if (writer === undefined || words === '' || isParty(words, writer)) return false;
  const below = asksForWork(whole);
  if (over || LEAVES.test(words))
    return NAMES_DAY.test(whole) || below.time || below.work || below.film || ABROAD.test(whole) || OCCASION.test(whole);
  return (
    !here.work &&
    !here.film &&
    !OCCASION.test(words) &&
    (below.time || below.work || below.film || ABROAD.test(whole) || OCCASION.test(whole))
  );
}
