/**
 * Who asks: name, mail, phone and organisation, from the signature, the head of the mail and what the text says.
 */
import { foldName } from '../../places/fold.ts';
import { FIRST_PAGES } from '../parts/lines.ts';
import { closingOf } from './closing.ts';
import { withoutDoorkeepers } from './doorkeepers.ts';
import { DEPARTMENT, OFFICE, WHOLLY_PART } from './bodies.ts';
import { bodyOfDomain, isNotOfDomain } from './domain.ts';
import { isHouseOf, isLastResort } from './houses.ts';
import { isForOthers, withoutOthersLines } from './others-reach.ts';
import { anothersPhone, emailIn, isMine, ownPhone, phonesIn } from './reach.ts';
import { inFull } from './nickname.ts';
import { lastWordsOf } from './last-words.ts';
import { fromText } from './said.ts';
import { fromSignature, type People } from './signature.ts';
import { smallName } from './small.ts';
import { RANK } from './ranks.ts';
import { speakerIn } from './speakers.ts';
import { wholeBody } from './whole-body.ts';
import { nameFrom, ORG_WORDS, type PersonFact } from './words.ts';

/** The layers of a message, each with all else blanked, offsets kept. */
export type Layers = { body: string; signature: string; header: string; stamp: string };

const FROM_LINE = /^[ \t]*(?:from|von|de|reply-to)\s?:[^\n]{0,160}$/gim;
const FROM_NAME = new RegExp(String.raw`^\s*\w[\w-]{0,9}\s?:\s*"?((?:${RANK}){0,3}[^"<\n@[(,|]{2,50})`);
const PLAIN_NAME = /^\p{Lu}[\p{L}'. -]+$/u;

/** The last sender in the heads: the one who wrote first. */
function fromHeader(header: string): People {
  const people: People = {};
  const line = [...header.matchAll(FROM_LINE)].at(-1);
  if (!line) return people;
  const email = emailIn(line[0]);
  if (email) people.email = { ...email, start: email.start + line.index, end: email.end + line.index };
  const written = FROM_NAME.exec(line[0])?.[1];
  const name = written ? nameFrom(written.trim(), line.index + line[0].indexOf(written.trim(), line[0].indexOf(':') + 1)) : undefined;
  if (name && PLAIN_NAME.test(name.value)) people.name = name;
  return people;
}

const STAMP_NAME =
  /(?:^|[\]\-)]|\d{1,2}:\d\d(?::\d\d)?(?:\s?[apAP][mM])?)\s{0,3}(\p{Lu}[\p{L}'. -]{1,40}?)(?:\s\([^()\n]{1,30}\))?:\s*$/gmu;

/** The name before the words of a chat line, where only one other person writes. */
function fromStamp(stamp: string): People {
  const names = new Map<string, PersonFact>();
  for (const match of stamp.matchAll(STAMP_NAME)) {
    const found = match[1] ? nameFrom(match[1], match.index + match[0].indexOf(match[1])) : undefined;
    if (found) names.set(found.value, found);
  }
  const only = names.size === 1 ? [...names.values()][0] : undefined;
  return only ? { name: only } : {};
}

const isInitials = (name: string): boolean => /^[\p{Lu}.\s]{1,5}$/u.test(name);

/** "Thaddeus Brill" is more of "Thad", "Bernard Tipping" of "B. Tipping", any name of "W.B.". */
function isMoreOf(name: string, written: string): boolean {
  const [whole, less] = [foldName(name), foldName(written)];
  if (isInitials(written)) return !isInitials(name);
  if (!whole.includes(' ') || whole === less) return false;
  const initials = /^(\p{Ll})\.?(?: ?\p{Ll}\.?)* (?=\p{L}{2})/u.exec(less);
  return initials
    ? whole.length > less.length && whole[0] === less[0] && whole.endsWith(` ${less.slice(initials[0].length)}`)
    : whole.startsWith(less) && less.length > 2;
}

/** "Seun" of a mail from "Oluwaseun Bankole", "Barney" of one from "Barnaby Fitzalan-Crewe". */
function isCalled(written: string, whole: string): boolean {
  const [less, more] = [foldName(written), foldName(whole)];
  const [first = '', ...rest] = more.split(' ');
  return !less.includes(' ') && rest.length > 0 && less.length > 2 && (first.includes(less) || first.slice(0, 3) === less.slice(0, 3));
}

/** The one of a single name, told with a second one elsewhere: "Estate agent, Dundee, Struan Geekie, we spoke". */
export function elsewhereInFull(body: string, written: string, isTown: (name: string) => boolean): PersonFact | undefined {
  if (!/^\p{Lu}\p{Ll}{2,20}$/u.test(written)) return undefined;
  for (const match of body.matchAll(
    new RegExp(String.raw`(?<![\p{L}'-])${written} \p{Lu}\p{Ll}[\p{L}-]{1,20}(?=[,.;:)\n]| (?:\p{Ll}|[(<[])|$)`, 'gu'),
  )) {
    const name = nameFrom(match[0], match.index);
    if (name && !isTown(name.value.slice(written.length + 1))) return name;
  }
  return undefined;
}

/** "Mme Delaporte-Vey" is nobody's employer. */
const RANKED = new RegExp(String.raw`^${RANK}\p{Lu}`, 'u');

/** "Friederike & Lutz", of whom nobody else signs. */
const COUPLE = /^\p{Lu}\p{Ll}+ [&+] \p{Lu}\p{Ll}+$/u;

/** "Corporate Affairs"; a firm of three words or more may end like a part of a house: "Switchback Show Services". */
const isOnlyPart = (name: string): boolean =>
  DEPARTMENT.test(name) && (WHOLLY_PART.test(name) || OFFICE.test(name) || !/^(?:\p{Lu}\S* ){2,}\p{Lu}/u.test(name));

/** The signature goes before the text, the text before the head; a fuller name wins over its first part or its initials. */
export function peopleIn(layers: Layers, isTown: (name: string) => boolean): People {
  const [signature, header, said, stamp] = [
    fromSignature(withoutOthersLines(layers.signature), isTown),
    fromHeader(layers.header),
    fromText(layers.body.slice(0, FIRST_PAGES), isTown),
    fromStamp(layers.stamp),
  ];
  const signed = signature.name ? undefined : (closingOf(layers.signature, isTown) ?? lastWordsOf(layers.signature, isTown));
  const speaker = speakerIn(layers.body.slice(0, FIRST_PAGES)) ?? speakerIn(layers.stamp.slice(0, FIRST_PAGES));
  const small = smallName(layers.signature, isTown);
  const asker = signature.name ?? signed?.name ?? said.name ?? header.name;
  const mail = emailIn(layers.body.slice(0, FIRST_PAGES), (found) => isForOthers(layers.body, found, asker?.value));
  const [box = '', host = ''] = (signature.email ?? mail ?? header.email)?.value.split('@') ?? [];
  const isHouse = ({ value }: PersonFact): boolean => isHouseOf(value, box, host);
  const signs = [signature.name, signed?.name, said.name, header.name, stamp.name ?? speaker, small].filter((name) => name !== undefined);
  const names = signs.filter((name) => !WHOLLY_PART.test(name.value) && !isHouse(name));
  const first = names[0];
  const fuller = first
    ? (names.find((name) => isMoreOf(name.value, first.value)) ??
      (header.name && isCalled(first.value, header.name.value) ? header.name : undefined) ??
      [layers.body, layers.signature, layers.header]
        .map((text) => elsewhereInFull(text.slice(0, FIRST_PAGES), first.value, isTown))
        .find((name) => name !== undefined))
    : undefined;
  const name = fuller ?? first;
  const department = signature.organisation && isOnlyPart(signature.organisation.value);
  const email = signature.email ?? mail ?? header.email;
  const stated =
    (department ? (said.organisation ?? signature.organisation) : (signature.organisation ?? signed?.organisation ?? said.organisation)) ??
    signs.find(isHouse);
  // "Export Dept, Finch Tools" of export@finchtools.example: of two names the address tells whose it is.
  const told = stated && !isNotOfDomain(stated.value, email?.value);
  const spelt = (told ? [] : stated ? [layers.signature, layers.body] : [layers.body]).flatMap(
    (text) => bodyOfDomain(text.slice(0, FIRST_PAGES), email?.value, name?.value, isTown) ?? [],
  );
  const organisation = spelt[0] ?? stated;
  // "Colonel Ash", or "Rhona, Zeb and Ash", of whom the first one signs.
  const isCouple = organisation !== undefined && COUPLE.test(organisation.value) && (!name || organisation.value.startsWith(name.value));
  const isSomebody =
    organisation !== undefined &&
    (RANKED.test(organisation.value) || organisation.value.startsWith(`${name?.value},`) || isCouple) &&
    !ORG_WORDS.test(organisation.value);
  const text =
    organisation &&
    [layers.body, layers.signature].find((layer) => layer.slice(organisation.start, organisation.end) === organisation.value);
  const mine = `${name?.value ?? ''} ${organisation?.value ?? ''}`;
  const inWords = ownPhone(
    layers.body,
    phonesIn(withoutDoorkeepers(layers.body), true).filter(
      (phone) => !anothersPhone(layers.body, phone, signature.name && mine) && !isForOthers(layers.body, phone, name?.value),
    ),
  );
  const full = name && organisation && text && inFull(text, name, organisation);
  const facts = {
    name: full ? organisation : name,
    email,
    phone:
      signature.phone && !(inWords && isMine(layers.body, inWords) && isLastResort(layers.signature, signature.phone))
        ? signature.phone
        : inWords,
    organisation: isSomebody || full ? undefined : organisation && text ? wholeBody(text, organisation) : organisation,
  };
  return Object.fromEntries(Object.entries(facts).filter(([, fact]) => fact !== undefined));
}
