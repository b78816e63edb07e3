/**
 * Whose inquiry it is: of the one who writes, or of the one whose mail is passed on by somebody who stays out of it.
 */
import { FIRST_PAGES, type Part, type PartKind } from '../parts/lines.ts';
import { only } from '../parts/split.ts';
import { directedTo } from './directed.ts';
import { elsewhereInFull, peopleIn, type Layers } from './find.ts';
import { emailIn } from './reach.ts';
import type { People } from './signature.ts';
import { nameFrom } from './words.ts';

/** "Talk to her, not me", "please reply to Annika, she's the client", "over to you". */
const NOT_ME =
  /(?<!\p{L})(?:not (?:to )?me|directly|direct to (?:her|him|them)|deal with|over to you|leave me out|i'm out|(?:she|he)'s the client|take it up with|directement|directamente|direkt|rechtstreeks|direttamente)(?!\p{L})/iu;

/** Who says what they want beside what they pass on is who asks. */
const WANTS = /\b(?:we|i)(?:'d| would) (?:like|love|want)\b|\b(?:we|i) (?:need|want)\b/i;
/** "On Tue, Nov 24, 2026 at 4:15 PM Annelise Brodeur <annelise@maplefair.example> wrote:" */
const ATTRIBUTED = /(?<=^|[\s,])(?!(?:AM|PM)\s)(\p{Lu}[\p{L}'-]+(?:\s\p{Lu}[\p{L}'.-]*){0,3})\s?[<(]\S{3,60}@\S{3,60}[>)]/u;

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

/** A line that names who wrote a mail, in a thread of any depth. */
const WROTE = /^[> \t]{0,12}(?:(?:on|am|le|el|op|il|em)\b[^\n]{4,160}|(?:from|von|de|van|da)\s?:[^\n]{2,160})$/gim;

/** Who asks, in full where a head below says more of the name; who is to be answered instead of the writer goes before the writer. */
export function askerOf(text: string, parts: readonly Part[], isTown: (name: string) => boolean): People {
  const { name, organisation, ...reach } = partyOf(text, parts, isTown);
  const other = directedTo(only(text, parts, 'own', 'forwarded').slice(0, FIRST_PAGES), name?.value);
  if (other) return { ...reach, ...(other.name ? { name: other.name } : {}) };
  const heads = text
    .slice(0, FIRST_PAGES)
    .replace(/[^\n]+/g, (line) => (line.length < 190 && line.match(WROTE) ? line : ' '.repeat(line.length)));
  const fuller = name && elsewhereInFull(heads, name.value, () => false);
  return { ...reach, ...(name ? { name: fuller ?? name } : {}), ...(organisation ? { organisation } : {}) };
}

/** The one who writes, or whose mail is passed on; `isTown` is true for a name that is a town's. */
function partyOf(text: string, parts: readonly Part[], isTown: (name: string) => boolean): People {
  const layers = (within: readonly Part[]): Layers => ({
    body: only(text, within, 'own', 'forwarded', 'subject'),
    signature: only(text, within, 'signature'),
    header: only(text, within, 'header'),
    stamp: only(text, within, 'stamp'),
  });
  const passed = parts.findIndex(({ kind }) => kind === 'forwarded');
  let from = passed;
  const heads: readonly PartKind[] = ['header', 'subject'];
  while (from > 0 && heads.includes((parts[from - 1] as Part).kind)) from--;
  if (from > 0) {
    const above = only(text, parts.slice(0, from), 'own');
    const head = only(text, parts.slice(from, passed), 'header');
    // Below the mail that is passed on stand older ones.
    const older = parts.findIndex(({ kind }, at) => at > passed && kind === 'quoted');
    let end = older === -1 ? parts.length : older;
    while (end < parts.length && heads.includes((parts[end - 1] as Part).kind)) end--;
    const client =
      !/\d/.test(above) || NOT_ME.test(above)
        ? { ...(WANTS.test(above) ? {} : attributed(head)), ...peopleIn(layers(parts.slice(from, end)), isTown) }
        : {};
    if (client.name) return client;
    const writer = peopleIn(layers(parts.slice(0, from)), isTown);
    if (writer.name) return { ...peopleIn(layers(parts), isTown), ...writer };
  }
  return peopleIn(layers(parts), isTown);
}
