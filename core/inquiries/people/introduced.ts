/**
 * Who says who they are: "I'm Odalys from the Harbor Bakers' Guild", "this is Troy, my kid's in the team", "it's Mei from Pear Tree Nursery".
 */
import { RANK } from './ranks.ts';
import { NAME, nameFrom, TITLE_WORDS, trimmed, type PersonFact } from './words.ts';

const start = String.raw`(?:^|[\s,.!?(:-])`;
/** A name on one line. */
const NAME_HERE = NAME.replaceAll(String.raw`\s`, ' ');
const INTRODUCED = new RegExp(
  String.raw`${start}(?:[Mm]y name is|[Mm]y name's|[Nn]ame is|[Nn]ame's|[Nn]ame of|named|[Mm]yself|[Ss]elf|[Cc]ontact(?: \p{L}+){0,6} is|she is|he is|she's|he's|I am|I'm|[Tt]his is|[Tt]his side|[Ii]t'?s|[Ii]t is|[Yy]ours from|(?<=[,.!]\s{1,3})[Hh]ere(?: is)?|[Ii]t'?s your (?:[\p{L}']+ ){1,4})\s{0,2}(?<=\s)(?:(?:uh|um|er|erm),?\s|(?:${RANK})?(?:deacon|pastor|brother|sister|father|mother|professor|doctor|teacher|coach|captain|auntie|aunty|uncle|nurse|chef)\s|${RANK}{1,2}(?=\p{Lu}[\p{L}'-]+\s\p{Lu}\p{L}))?(${NAME_HERE})(?=$|\n|[,.;!?)]|\s-|\s[(\d]|\s(?:here|from|fae|frae|at|with|w/|of|off|out|up|down|hey|ja|hello|hi|in|again|and|&|over|speaking|calling|called|who|again|I'm|im|i'm|I|we)(?!\p{L}))`,
  'gu',
);

const GOES_ON =
  /^\s(?:here|from|at|with|again|speaking|calling|of|off|in (?:crew|bookings?|production|events|accounts|\p{Ll}{4,}ing)(?: at| here|[.,]))(?!\p{L})/u;
/** "this is Troy, my kid's in the team" */
const TELLS_MORE = /^, (?:my|I|I'm|we)(?!\p{L})/u;
/** "It's Mei from Pear Tree Nursery": who is called as a month. */
const MONTH = /^(?:Mei|May|April|June|Avril|Abril|Mai|Marzia|Augusta|Juni|Julij?)$/u;
const IS_SOMEBODY = /^ (?:speaking|calling|here,? (?:from|at|with)|from \p{Lu}\p{Ll}+ \p{Lu})/u;
/** The first words of a message or of the paper that it is typed on. */
const OPENING = 120;

/** "It's Bjorn": a person at the beginning, or where it goes on with where from; later it may be anything. */
export function introducedIn(body: string, isTown: (name: string) => boolean): PersonFact | undefined {
  const begins = body.length - body.trimStart().length + OPENING;
  for (const found of body.matchAll(INTRODUCED)) {
    const written = found[1] ?? '';
    const at = found.index + found[0].lastIndexOf(written);
    const month = MONTH.test(written) && IS_SOMEBODY.test(body.slice(at + written.length)) ? trimmed(written, at) : undefined;
    const name = nameFrom(written, at) ?? month;
    // "I am Sub-Librarian at" says what somebody is.
    if (!name || TITLE_WORDS.test(name.value)) continue;
    if (GOES_ON.test(body.slice(name.end, name.end + 24))) return name;
    const loosely = /(?:[Ii]t(?:'?s| is)|[Tt]his is)\s*$/.test(body.slice(Math.max(0, name.start - 9), name.start));
    if (/name(?:'s| is)\s*$/i.test(body.slice(Math.max(0, name.start - 9), name.start))) return name;
    if (
      (!isTown(name.value) || TELLS_MORE.test(body.slice(name.end, name.end + 8))) &&
      (!loosely || (name.start < begins && !/^\p{Lu}{3,}$/u.test(name.value)))
    )
      return name;
  }
  return undefined;
}
