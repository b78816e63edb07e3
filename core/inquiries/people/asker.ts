/**
 * Whose inquiry it is: of the one who writes, or of the one whose mail is passed on by somebody who stays out of it.
 */
import { foldName } from '../../places/fold.ts';
import { FIRST_PAGES, type Part, type PartKind } from '../parts/lines.ts';
import { only } from '../parts/split.ts';
import { directedTo } from './directed.ts';
import { earlierOf, isSamePerson } from './earlier.ts';
import { elsewhereInFull, peopleIn, type Layers } from './find.ts';
import { emailIn, phonesIn } from './reach.ts';
import type { People } from './signature.ts';
import { nameFrom, type PersonFact } from './words.ts';

/** "Talk to her, not me", "please reply to Annika, she's the client", "over to you". */
const NOT_ME =
  /(?<!\p{L})(?:not (?:to )?me|(?<!you in |me |us )directly|direct to (?:her|him|them)|deal with|over to you|leave me out|be in touch with (?:her|him|them)|drop (?:her|him|them) a (?:line|note|mail|text)|give (?:her|him|them) a (?:ring|call|shout|bell)|(?:client|customer|couple|bride|organi[sz]er) (?:wrote|sent|says)|i'm out|(?:she|he)'s the client|take it up with|directement|directamente|direkt|rechtstreeks|direttamente)(?!\p{L})/iu;

/** Who says what they want beside what they pass on is who asks, and so is who asks for an answer. */
const WANTS =
  /\b(?:we|i)(?:'d| would) (?:like|love|want)\b|\b(?:we|i) (?:need|want)\b|\b(?:can|could|would|will) you (?:please |pls )?(?:send|let|tell|give|hold|confirm|quote|reply)\b/i;
/** "Reply to me and I'll link you up", "get back to me rather than her" */
const TO_ME =
  /(?<!\b(?:not|n't|never|need to|don't|instead of|rather than) )\b(?:answer|reply|respond|write|get back|come back|revert|replies|answers)(?: back| directly| please)? to me(?!\p{L}| know)/iu;
/** "Please answer me, not the client", "can you take this over from us" */
const ANSWER_ME =
  /\b(?:answer|reply|write|respond|ring|call|come back|get back|let)(?: back)?(?: to)? (?:me|us)(?:,| directly| and)? not\b|\bnot (?:to )?(?:the )?(?:client|customer)\b|\btake (?:it|this|that) (?:over|on|off)\b/i;
/** "what came in through our form": a form's own name goes before the name of who passes it on. */
const CAME_IN =
  /\bforward(?:ing|ed)?\b|\bcame (?:in|through)\b|\bpass(?:ing|ed)\b[^.!?\n]{0,30}\b(?:on|along)\b|\b(?:web|contact|enquiry|inquiry) ?form\b/i;
const FORM_NAME = /^[ \t]*(?:your |full |client |customer |contact )?name\s?:[ \t]*\p{Lu}/imu;
/** "On Tue, Nov 24, 2026 at 4:15 PM Annelise Brodeur <annelise@maplefair.example> wrote:" */
const ATTRIBUTED = /(?<=^|[\s,])(?!(?:AM|PM)\s)(\p{Lu}[\p{L}'-]+(?:\s\p{Lu}[\p{L}'.-]*){0,3})\s?[<(]\S{3,60}@\S{3,60}[>)]/u;

/** The title of the mail stands among its words. */
const TITLE = /^[ \t]*(?:fwd?|re|aw|wg|tr|rv)\s?:[^\n]*/gim;
/** A message within a message. */
const IN_QUOTES = /"(?=[^"]{0,400}\d)[^"]{60,1500}"/;
/** Who wrote a mail, by the line that names its writer with an address. */
function attributed(head: string): People {
  const found = ATTRIBUTED.exec(head);
  if (!found) return {};
  const name = nameFrom(found[1] ?? '', found.index);
  const email = emailIn(found[0]);
  return {
    ...(name ? { name } : {}),
    ...(email ? { email: { ...email, start: email.start + found.index, end: email.end + found.index } } : {}),
  };
}

/** The last words of a mail are so long. */
const MOST_SIGNED = 40;
/** A line that names who wrote a mail, in a thread of any depth. */
const WROTE = /^[> \t]{0,12}(?:(?:on|am|le|el|op|il|em)\b[^\n]{4,160}|(?:from|von|de|van|da|to|an|aan|à|para)\s?:[^\n]{2,160})$/gim;

/** Who asks, in full where a head below says more of the name; who is to be answered instead of the writer goes before the writer. */
export function askerOf(text: string, parts: readonly Part[], isTown: (name: string) => boolean): People {
  const { name, organisation, email: reached, ...numbers } = partyOf(text, parts, isTown);
  const other = directedTo(only(text, parts, 'own', 'forwarded').slice(0, FIRST_PAGES), name?.value);
  const heads = text
    .slice(0, FIRST_PAGES)
    .replace(/[^\n]+/g, (line) => (line.length < 190 && line.match(WROTE) ? line : ' '.repeat(line.length)));
  const asker = other ? other.name : name;
  const fuller = asker && elsewhereInFull(heads, asker.value, () => false);
  // Who signs with less below signed the mail before in full.
  const before = only(text, parts, 'quoted').slice(0, FIRST_PAGES).trimEnd();
  const signedInFull = asker && elsewhereInFull(before.slice(-MOST_SIGNED), asker.value, isTown);
  const whole =
    fuller ??
    (signedInFull && {
      ...signedInFull,
      start: signedInFull.start + Math.max(0, before.length - MOST_SIGNED),
      end: signedInFull.end + Math.max(0, before.length - MOST_SIGNED),
    }) ??
    asker;
  // Who sends a mail again stands at the head of the first one.
  const mine = reached && whole && isAnothers(text, parts, reached, whole.value) ? undefined : reached;
  const email = mine ?? (other ? undefined : writtenBy(heads, whole?.value));
  const phone = other?.name && phoneBehind(text, other.name);
  const earlier = whole && !other ? earlierOf(only(text, parts, 'quoted', 'header').slice(0, FIRST_PAGES), whole.value, isTown) : {};
  const named = earlier.name && whole && earlier.name.value.length > whole.value.length ? earlier.name : whole;
  return {
    ...earlier,
    ...numbers,
    ...(phone ? { phone } : {}),
    ...(named ? { name: named } : {}),
    ...(email ? { email } : {}),
    ...(organisation && !other ? { organisation } : {}),
  };
}

/** The number right behind a name, in its sentence. */
function phoneBehind(text: string, { end }: PersonFact): PersonFact | undefined {
  const phone = phonesIn(text.slice(end, end + NEAR_NAME), true)[0];
  const between = text.slice(end, end + (phone?.start ?? 0));
  return phone && !/[.!?\n]/.test(between) ? { ...phone, start: phone.start + end, end: phone.end + end } : undefined;
}

/** Whether an address stands in the head of a mail below that somebody of another name wrote: of the one who is asked, most often. */
function isAnothers(text: string, parts: readonly Part[], email: PersonFact, asker: string): boolean {
  const at = parts.findIndex(({ start, end }) => start <= email.start && email.start < end);
  const begun = parts.findIndex(({ kind, start, end }) => kind === 'own' && text.slice(start, end).trim() !== '');
  const part = parts[at];
  if (part?.kind !== 'header' || begun < 0 || at < begun) return false;
  const writer = ATTRIBUTED.exec(text.slice(part.start, part.end))?.[1];
  const box = foldName(email.value.split('@')[0] ?? '');
  return (
    writer !== undefined &&
    writer.includes(' ') &&
    !isSamePerson(asker, writer) &&
    !foldName(asker)
      .split(' ')
      .some((word) => word.length > 2 && (box.includes(word) || foldName(writer).split(' ').includes(word)))
  );
}

/** The address beside a name in the head of a mail. */
function writtenBy(heads: string, name: string | undefined): PersonFact | undefined {
  if (name === undefined || !name.includes(' ')) return undefined;
  const at = Math.max(heads.indexOf(`${name} <`), heads.indexOf(`${name} (`));
  const email = at < 0 ? undefined : emailIn(heads.slice(at, at + name.length + 90));
  return email && { ...email, start: email.start + at, end: email.end + at };
}

/** How far behind a name its number stands. */
const NEAR_NAME = 60;
const HEADS: readonly PartKind[] = ['header', 'subject'];

/** The one who writes, or whose mail is passed on; `isTown` is true for a name that is a town's. */
function partyOf(text: string, parts: readonly Part[], isTown: (name: string) => boolean): People {
  const layers = (within: readonly Part[]): Layers => ({
    body: only(text, within, 'own', 'forwarded', 'subject'),
    signature: only(text, within, 'signature'),
    header: only(text, within, 'header'),
    stamp: only(text, within, 'stamp'),
  });
  const own = only(text, parts, 'own').slice(0, FIRST_PAGES);
  if (FORM_NAME.test(own) && NOT_ME.test(own) && CAME_IN.test(own))
    return peopleIn(layers(parts.filter(({ kind }) => kind !== 'signature')), isTown);
  // "Over to you. From the boss: '...'": who is quoted asks.
  const words = NOT_ME.test(own) ? IN_QUOTES.exec(own) : null;
  if (words) {
    const [from, to] = [words.index + 1, words.index + words[0].length - 1];
    const body = own.slice(0, to).replace(/[^\n]/g, (mark, at: number) => (at < from ? ' ' : mark));
    const quoted = peopleIn({ body, signature: '', header: '', stamp: '' }, isTown);
    if (quoted.name) return quoted;
  }
  // Below the head that the message itself begins with stands what its writer wrote.
  const begun = parts.findIndex(({ kind, start, end }) => !HEADS.includes(kind) && text.slice(start, end).trim() !== '');
  const head = parts.findIndex(({ kind }, at) => at > begun && HEADS.includes(kind));
  const headed = HEADS.includes(parts[0]?.kind ?? 'own');
  const passed = parts.findIndex(({ kind }, at) => kind === 'forwarded' && (!headed || (head > 0 && at > head)));
  let from = passed;
  while (from > 0 && HEADS.includes((parts[from - 1] as Part).kind)) from--;
  if (from > 0) {
    const above = only(text, parts.slice(0, from), 'own', 'forwarded');
    const below = only(text, parts.slice(from, passed), 'header');
    // Below the mail that is passed on stand older ones.
    const older = parts.findIndex(({ kind }, at) => at > passed && kind === 'quoted');
    let end = older === -1 ? parts.length : older;
    while (end < parts.length && HEADS.includes((parts[end - 1] as Part).kind)) end--;
    const asks = WANTS.test(above) || ANSWER_ME.test(above) || TO_ME.test(above);
    const client =
      NOT_ME.test(above) || !(/\d/.test(above.replace(TITLE, '')) || asks)
        ? { ...(asks ? {} : attributed(below)), ...peopleIn(layers(parts.slice(from, end)), isTown) }
        : {};
    if (client.name) return client;
    const writer = peopleIn(layers(parts.slice(0, from)), isTown);
    // How to reach somebody below is another's.
    if (writer.name)
      return TO_ME.test(above)
        ? writer
        : { ...peopleIn({ ...layers(parts), header: only(text, parts.slice(0, from), 'header') }, isTown), ...writer };
  }
  return peopleIn(layers(parts), isTown);
}
