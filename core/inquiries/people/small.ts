/**
 * Who writes without capitals: "hey its wes from the brewery", "thx joanne" at the end, "kit / the gong was great / mags".
 */
import { NOT_NAME, type PersonFact } from './words.ts';

const LONGEST_CLOSING = 80;
const LONGEST_GREETING = 200;
const NO_SMALL_NAME =
  /^(?:message|note|hello|greetings|fresh|straight|away|home|hi|hey|heaps|muchly|awfully|loads|tons|bye|xmas|food|parking|travel|lunch|the|just|about|been|not|only|short|urgent|for|our|your|kit|all|lots|again|much|soon|asap|please|pls|plz|thanks|thank|cheers|hmu|later|bye|lmk|me|fine|done|on|ok|so|now|time|gonna|going|getting|here|happening|happy|bit|one|two|been|that|this|what|when|where|a|an|my|his|her|their|in|at|to|of|up|down|off|out|over|back|gone|been|mum|mom|dad|us|we|urgent|cool|last|next|late|early|still|set|old|new|big|small|long|hoping|looking|writing|calling|after|trying|doing|putting|running|organising|organizing|shooting|filming|making|needing|wondering|sorry|glad|free|busy|lmk|thx|tomorrow|today|tonight|you|mate|man|pal|dude|everyone|interested|keen|deal|good|cool|great|okay|sure|maybe|yes|yeah|nope|free|paid|cash|flat|total|max|week|weekend|day|days|hours|call|text|food|beer|lunch|included|inclusive|advance|\p{L}+day|\p{L}{3,}ing)$/iu;

/** Who begins in small letters writes names so. */
const writesSmall = (body: string): boolean => !/\p{Lu}\p{Ll}+ \p{Lu}/u.test(body) || /^\s*\p{Ll}/u.test(body);
const isNameSmall = (word: string): boolean => word.split(' ').every((part) => !NO_SMALL_NAME.test(part) && !NOT_NAME.test(part));

/** Who says who they are in small letters: "its robin", "wes from the brewery". */
export function introducedSmall(body: string): PersonFact | undefined {
  if (!writesSmall(body)) return undefined;
  const opening = body.slice(0, LONGEST_GREETING);
  const found =
    /^[^\S\n]{0,4}(?:\p{L}{2,12}[ ,.!]{1,3}){0,4}?(?:its|it's|this is|im|i'm)\s(\p{Ll}[\p{Ll}-]{1,11})(?=\s(?:from|frm|w\/|with|at|of|here|again|im|i'm)\s|[.,!]\s)/imu.exec(
      opening,
    ) ??
    /(?<!\p{L})(?:my name is|name is|name's|my name's) (\p{Ll}[\p{Ll}-]{2,11})(?!\p{L})/iu.exec(body) ??
    /^\s{0,4}(?:(?:\p{L}{2,12}[ ,!]{1,3}){0,3}?\p{L}{2,12}[,.!] )?(\p{Ll}[\p{Ll}-]{2,11}) from (?:the (?=\p{L})|(?=\p{Lu}))/u.exec(
      opening,
    ) ??
    /^\s{0,4}(?:[\p{L}']{2,12}[ ,.!]{1,3}){0,4}?(?<=[,.!] )(\p{Ll}[\p{Ll}-]{2,11}) (?:from|@) (?!(?:noon|about|around|half|early|late|lunch|now|then|when|morning|mid\p{L}+)(?!\p{L}))\p{L}{3,}/u.exec(
      opening,
    ) ??
    /^\s{0,4}(?:\p{L}{2,12}[ ,.!]{1,3}){0,3}?(\p{Ll}[\p{Ll}-]{1,11}) (?:here(?:\s|[,.!])|again(?:\s(?:lol|haha|x)|[,.!])|\((?:from|we)\s)/iu.exec(
      opening,
    );
  const word = found?.[1];
  if (!found || !word || !isNameSmall(word)) return undefined;
  const start = found.index + found[0].lastIndexOf(word);
  return { value: word, start, end: start + word.length };
}

/**
 * The name in small letters.
 * @param isTown true for a name that is a town's: a last word may be where the job is
 */
export function smallName(body: string, isTown: (name: string) => boolean): PersonFact | undefined {
  // "Could you do Otley? ... Ron": where it is has been said.
  const townBeside = (word: string): boolean =>
    [...body.slice(0, 1000).matchAll(/(?<!\p{L})\p{Lu}\p{Ll}{3,}|(?<=(?<!\p{L})in )\p{Ll}{4,}/gu)].some(
      ([other]) => other !== word && isTown(other),
    );
  if (!writesSmall(body)) return undefined;
  const introduced = introducedSmall(body);
  if (introduced) return introduced;
  const closing =
    /(?:[\s.,!?](?:x{1,3}|[:;]-?\)|-{1,2}|ty|thx|ta|tx|cheers|thanks|regards)(?: a (?:bunch|lot|million|mil)(?!\p{L})| so much| again| mate| heaps)?[\s,.!]{1,3}|[.!?]\s)(\p{Ll}{3,12}(?:-\p{Ll}{2,10})?(?: [b-hjlmo-tvwz])?)(?:[,.!]?|,? \(?\+?\d[\d\s().-]{6,18})(?:\sx{1,3})?\s*$/iu.exec(
      body,
    );
  const end = body.trimEnd().length;
  const from = Math.max(0, end - LONGEST_CLOSING);
  const full =
    /(?:(?<!\p{L})(?:ty|thx|ta|tx|cheers|thanks|regards)[\s,.!]{1,3}|(?<!(?<!\p{L})(?:an?|the|of|to|for|and|or|in|at|on|with|is|are|my|our|your|by|from) ?)\n[^\S\n]{0,4})(\p{Ll}{2,12} \p{Ll}{3,14}|(?<=\n[^\S\n]{0,4})\p{Ll}{2,12})(?:[.!]?|,? \(?\+?\d[\d\s().-]{6,18}| \([\p{Ll} ]{3,30}\))(?:\sx{1,3})?$/u.exec(
      body.slice(from, end),
    );
  // "let me know soon, rhea", "call me anytime 416-555-0172 nadia"
  const asking =
    /(?:(?<!\p{L})(?:know|lmk|text|call|reply|answer|tell|hmu|yes|please|pls|plz)(?!\p{L})[^.?!\n]{0,50},|(?:call|text|ring|hmu|msg|whatsapp)(?!\p{L})[^.?!\n]{0,24}\d[\d\s().-]{6,18})\s(\p{Ll}{3,12})[.!]?$/u.exec(
      body.slice(from, end),
    );
  // "kit / your gong was great / june pell": a stroke between all that is said.
  const stroked = body.split(' / ').length > 3 ? / \/ (\p{Ll}{3,12}(?: \p{Ll}{3,14})?)[.!]?$/u.exec(body.slice(from, end)) : null;
  for (const [found, at] of [
    [full, from],
    [stroked, from],
    [asking, from],
    [closing, 0],
  ] as const) {
    const word = found?.[1];
    if (found && word && (/^\p{Lu}|\d{3}/u.test(word + found[0]) || !isTown(word) || townBeside(word)) && isNameSmall(word)) {
      const start = at + found.index + found[0].lastIndexOf(word);
      return { value: word, start, end: start + word.length };
    }
  }
  return undefined;
}
