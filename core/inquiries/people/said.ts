/**
 * Who asks, as the running text says it: "I'm Odalys from the Harbor Bakers' Guild", "call Ruth on ...", a form's labels, a last word.
 */
import { closingOf } from './closing.ts';
import { introducedAbroad } from './elsewhere.ts';
import { emailIn, phonesIn } from './reach.ts';
import type { People } from './signature.ts';
import {
  mayBeOrganisation,
  namesArea,
  NAME,
  nameFrom,
  ORG_FOR_CERTAIN,
  ORG_OF,
  ORG_NAME,
  ORG_WORDS,
  TITLE_WORDS,
  trimmed,
  type PersonFact,
} from './words.ts';

const start = String.raw`(?:^|[\s,.!?(:-])`;
const INTRODUCED = new RegExp(
  String.raw`${start}(?:[Mm]y name is|[Mm]y name's|[Nn]ame is|[Nn]ame's|she is|he is|I am|I'm|[Tt]his is|[Ii]t's|[Ii]t is)\s{1,2}(?:(?:uh|um|er|erm),?\s)?(${NAME})(?=$|\n|[,.;!?)]|\s-|\s(?:here|from|at|with|of|again|and|over|speaking|calling)\b)`,
  'gu',
);
const HERE = new RegExp(String.raw`${start}(${NAME}) here\b`, 'gu');
const REACH = new RegExp(
  String.raw`${start}(?:[Cc]all|CALL|TEXT|PHONE|RING|[Cc]ontact|CONTACT|[Tt]ext|[Rr]ing|[Pp]hone|[Ee]-?mail|[Rr]each|[Aa]sk for|[Mm]essage|[Ss]ms|SMS)\s?:?\s(${NAME})(?=\s(?:at|on)\b|,?\s\(?\+?\d|\s?[,/|-]?\s\w[\w.+-]{0,60}@|,?\s?$)`,
  'gmu',
);
/** "Sally from Koala Lane Childcare here" */
const FROM_HERE = new RegExp(
  String.raw`${start}(\p{Lu}[\p{L}'-]{1,20}(?: \p{Lu}[\p{L}'-]{1,20})?)\s(?:from|at|of|with)\s(${ORG_NAME})\shere\b`,
  'u',
);
/** "Please respond by 10 September to Wren Castellanos" */
const ANSWER_TO = new RegExp(
  String.raw`(?:[Rr]eply|[Rr]espond|[Aa]nswer|[Cc]onfirm|RSVP|[Qq]uotes?|[Aa]nswers|[Rr]eplies)[^.;?!\n]{0,40} to (${NAME})(?=[,.\n]|$)`,
  'gmu',
);
const CALLED = new RegExp(
  String.raw`${start}(${NAME})\s(?:from|at|of|with)\s(${ORG_NAME})\s(?:called|rang|phoned|emailed|texted|wants|needs|asked|left|is looking)\b`,
  'gu',
);
const OF_ORG = new RegExp(String.raw`(?:^|[-,!]\s)(${NAME})\s(?:from|at|with)\s(${ORG_NAME})(?=[.!,])`, 'gu');
const BY_PHONE = new RegExp(String.raw`[.!?]\s(?:Ta|Cheers|Thanks|Thank you|Thx)?,?\s?(${NAME}),?\s\(?\+?\d[\d\s().-]{6,}\s*$`, 'u');
const AFTER_PHONE = new RegExp(String.raw`\d[\d\s().-]{6,},?\s-?\s?(${NAME})[.!]?\s*$`, 'u');
const FAREWELL = new RegExp(
  String.raw`(?:^|[\s,.!?-])(?:[Tt]hanks|[Tt]hank you|[Mm]erci|[Gg]racias|[Gg]razie|[Dd]anke|[Ll][Gg]|[Vv][Gg]|[Gg]ruß|[Gg]rüße|[Gg]roetjes|[Gg]roet|[Ss]olidarity|[Ss]aludos|[Nn]g[aā] mihi|[Tt]hx|[Cc]heers|[Bb]est|[Rr]egards|[Tt]a|[Rr]gds|[Xx][Oo]|xx)[\s,!.-]{1,3}(?:(?:in advance|again|so much|a lot|a million|a bunch|all)[\s,!.-]{1,3})?(${NAME})(?:\sx{1,3})?[\s.!]*$`,
  'u',
);
/** ". Sylvester Korn, Blue Hills Builders", "- Ximena @ Kelp & Clover PR" at the very end. */
const LAST_AND_ORG = new RegExp(
  String.raw`(?:[.!?)\d]\s+|\s-{1,2}\s?)(${NAME.replaceAll(String.raw`\s`, ' ')})(?:,| @| from| at| /| \|)\s(${ORG_NAME.replaceAll(String.raw`\s`, ' ')})(?:,\s[\w.+-]{1,60}@[\w.-]{3,80}|,\s\(?\+?\d[\d\s().-]{6,18})?[.]?\s*$`,
  'u',
);
const LAST_AND_TITLE = new RegExp(
  String.raw`[.!?]\s+(\p{Lu}[\p{L}'-]{1,20} \p{Lu}[\p{L}'-]{1,20}),\s(?:\p{L}+\s){0,3}(?:${TITLE_WORDS.source})\s*$`,
  'u',
);
const LAST_AND_MAIL = new RegExp(
  String.raw`[.!?]\s+(${NAME.replaceAll(String.raw`\s`, ' ')}),?\s\(?[\w.+-]{1,60}@[\w.-]{3,80}\)?\s*$`,
  'u',
);
const DASHED = new RegExp(String.raw`[\s.!?)](?:-{1,2}|~|x{1,2})\s?(${NAME})\s*$`, 'u');
/** A farewell in any language: "Go raibh maith agat, Donncha". */
const PARTING = new RegExp(String.raw`\p{L},\s(\p{Lu}[\p{L}'-]{1,20})[.!]?\s*$`, 'u');
const LAST_WORD = new RegExp(
  String.raw`[.!?)]\s{1,3}(\p{Lu}[\p{L}'-]{1,20}(?:\s(?:(?:van|von|de|du|der|den|da|di|del|la|le|al|ter)\s){0,2}\p{Lu}[\p{L}'-]{1,20}){0,2})(?:\sx{1,3})?[.!]?\s*$`,
  'u',
);
const LABEL_NAME = new RegExp(
  String.raw`(?:^[^\S\n]*|[.!?] )(?:(?:[Ff]ull |[Yy]our |[Cc]ontact )?[Nn]ame|[Cc]ontact(?: person)?|[Ww]ho(?: to call)?|[Aa]sk for|[Cc]aller|[Pp]roducer|[Oo]rgani[sz]er|[Bb]ooker|[Cc]oordinator|[Ee]nquiries|[Ii]nquiries|[Qq]ueries|[Aa]ttn|NAME|CONTACT)[^\S\n]?:[^\S\n]*(${NAME.replaceAll(String.raw`\s`, ' ')})`,
  'gmu',
);
/** "Caller: Petra Holm, Holm Heating & Stove." */
const LABEL_AND_ORG = new RegExp(String.raw`^,\s(${ORG_NAME})(?=\.?\s|\.?$)`, 'u');
const LABEL_ORG = /^[^\S\n]*(?:company|organi[sz]ation|client|organiser|organizer|company name|business)[^\S\n]?:[^\S\n]*([^\n]{2,60})$/gim;
const AFTER_NAME = new RegExp(
  String.raw`^,?\s?(?:here\s)?(?:from|with|at|of|for|on behalf of|representing|(?:and )?I (?:work (?:for|at|with)|do events (?:for|at)))\s(${ORG_NAME})`,
  'u',
);
const BEHALF = new RegExp(
  String.raw`\b(?:[Oo]n behalf of|I work (?:for|at|with)|I represent|I run|I manage|[Ww]e are|[Ww]e're|I do events (?:for|at)|I'm with|I am with|I(?:'m| am) (?:the |an? )?[\p{L} ]{3,40}? (?:for|at|with))\s(${ORG_NAME})`,
  'gu',
);
const CERTAIN = new RegExp(
  String.raw`(?:\b(?:for|from|at|with|of|by|our)\s|^|[.!?\n]\s?)([Tt]he\s)?((?:St\.? |Mt\.? )?\p{Lu}[\p{L}'&-]{1,30}(?: (?:(?:of|and|&|for|the) ){0,2}\p{Lu}[\p{L}'&-]{1,30}){1,5})`,
  'gmu',
);

function match(pattern: RegExp, text: string, group = 1): PersonFact | undefined {
  for (const found of pattern.global ? text.matchAll(pattern) : [pattern.exec(text)].filter((one) => one !== null)) {
    const written = found[group];
    if (!written) continue;
    const name = nameFrom(written, found.index + found[0].lastIndexOf(written));
    if (name) return name;
  }
  return undefined;
}

/** "Hana here": a person by one or two names; longer ones are a body of people. */
function hereIn(body: string): PersonFact | undefined {
  const name = match(HERE, body);
  return name && name.value.split(' ').length <= 2 ? name : undefined;
}

function organisation(written: string, at: number): PersonFact | undefined {
  // A sentence that begins after it is no part of its name.
  const plain = written
    .replace(/^the\s/i, '')
    .replace(/(?<!\b(?:St|Dr|Mt))\.\s.*$/s, '')
    .replace(/[.,]$/, '');
  const lead = written.length - written.replace(/^the\s/i, '').length;
  return plain.length < 2 ? undefined : { value: plain, start: at + lead, end: at + lead + plain.length };
}

function organisationAfter(text: string, from: number): PersonFact | undefined {
  const found = AFTER_NAME.exec(text.slice(from, from + 120));
  if (!found?.[1]) return undefined;
  const known = ORG_WORDS.test(found[1]) || found[1].includes(' ');
  return known ? organisation(found[1], from + found[0].length - found[1].length) : undefined;
}

function organisationSaid(body: string): PersonFact | undefined {
  for (const found of body.matchAll(LABEL_ORG)) {
    const written = found[1] ?? '';
    return trimmed(written, found.index + found[0].length - written.length);
  }
  for (const found of body.matchAll(BEHALF)) {
    const written = found[1] ?? '';
    if (!ORG_WORDS.test(written) && !/behalf|represent|\bI(?:'m| am) (?:the|an?)\b/.test(found[0])) continue;
    return organisation(written, found.index + found[0].length - written.length);
  }
  for (const found of body.matchAll(CERTAIN)) {
    const written = found[2] ?? '';
    if (!ORG_FOR_CERTAIN.test(written) && !ORG_OF.test(written)) continue;
    return organisation(written, found.index + found[0].length - written.length);
  }
  return undefined;
}

/** The organisation after a name that a label leads. */
function besideLabel(body: string): PersonFact | undefined {
  const named = match(LABEL_NAME, body);
  if (!named) return undefined;
  const found = LABEL_AND_ORG.exec(body.slice(named.end, named.end + 80));
  return found?.[1] && mayBeOrganisation(found[1]) ? organisation(found[1], named.end + found[0].lastIndexOf(found[1])) : undefined;
}

/** A message without capitals: "hey its wes from the brewery", "thx joanne" at its end. */
function smallName(body: string): PersonFact | undefined {
  if (/\p{Lu}\p{Ll}+ \p{Lu}/u.test(body)) return undefined;
  const introduced =
    /^\s*(?:(?:hi|hey|hello|hiya|yo|alright|morning|afternoon|evening|kit|there|mate|again|m8|bud|man|oi)[\s,.!]+){0,3}(?:its|it's|this is)\s(\p{Ll}{3,12})(?=[\s,.!])/iu.exec(
      body,
    );
  const closing =
    /(?:[\s.,!?](?:x{1,3}|[:;]-?\)|-{1,2}|ty|thx|ta|tx|cheers|thanks|regards)[\s,.!]{0,3}|[.!?]\s)(\p{Ll}{3,12})[.!]?(?:\sx{1,3})?\s*$/iu.exec(
      body,
    );
  const end = body.trimEnd().length;
  const from = Math.max(0, end - LONGEST_CLOSING);
  const full =
    /(?:(?<!\p{L})(?:ty|thx|ta|tx|cheers|thanks|regards)[\s,.!]{1,3}|\n[^\S\n]{0,4})(\p{Ll}{2,12} \p{Ll}{3,14}|(?<=\n[^\S\n]{0,4})\p{Ll}{3,12})[.!]?(?:\sx{1,3})?$/u.exec(
      body.slice(from, end),
    );
  for (const [found, at] of [
    [introduced, 0],
    [full, from],
    [closing, 0],
  ] as const) {
    const word = found?.[1];
    if (found && word && word.split(' ').every((part) => !NO_SMALL_NAME.test(part))) {
      const start = at + found.index + found[0].lastIndexOf(word);
      return { value: word, start, end: start + word.length };
    }
  }
  return undefined;
}
const LONGEST_CLOSING = 80;
const NO_SMALL_NAME =
  /^(?:the|just|about|been|not|only|short|urgent|for|our|your|kit|all|lots|again|much|soon|asap|please|pls|plz|thanks|thank|cheers|later|bye|lmk|thx|tomorrow|today|tonight|you|mate|man|pal|dude|everyone|interested|keen|deal|good|cool|great|okay|sure|maybe|yes|yeah|nope|free|paid|cash|flat|total|max|week|weekend|day|days|hours|call|text|food|beer|lunch|included|inclusive|advance|\p{L}+day)$/iu;

/**
 * What the text says of its writer.
 * @param isTown true for a name that is a town's: a last word may be where the job is
 */
export function fromText(body: string, isTown: (name: string) => boolean): People {
  const people: People = {};
  const called = body.matchAll(CALLED).next().value;
  const last = body.trimEnd();
  const foot = last.slice(-120);
  const shift = (fact: PersonFact | undefined): PersonFact | undefined => {
    const by = last.length - foot.length;
    return fact && { ...fact, start: fact.start + by, end: fact.end + by };
  };
  const ending = LAST_AND_ORG.exec(foot);
  const endingOrg =
    ending?.[1] &&
    ending[2] &&
    nameFrom(ending[1], 0) &&
    (mayBeOrganisation(ending[2]) || (ending[1].includes(' ') && /^\p{Lu}\p{Ll}{3,}$/u.test(ending[2]))) &&
    !isTown(ending[2]) &&
    !namesArea(ending[2])
      ? shift(organisation(ending[2], ending.index + ending[0].lastIndexOf(ending[2])))
      : undefined;
  const lastWord = shift(match(LAST_WORD, foot));
  const closing = closingOf(body, isTown);
  const abroad = introducedAbroad(body);
  const name =
    match(LABEL_NAME, body) ??
    match(INTRODUCED, body) ??
    match(FROM_HERE, body) ??
    hereIn(body) ??
    match(CALLED, body) ??
    abroad?.name ??
    (endingOrg && shift(match(LAST_AND_ORG, foot))) ??
    shift(match(LAST_AND_MAIL, foot)) ??
    shift(match(LAST_AND_TITLE, foot)) ??
    closing?.name ??
    match(OF_ORG, body.slice(0, 200)) ??
    shift(match(BY_PHONE, foot)) ??
    shift(match(AFTER_PHONE, foot)) ??
    match(REACH, body) ??
    match(ANSWER_TO, body) ??
    shift(match(FAREWELL, foot)) ??
    shift(match(DASHED, foot)) ??
    [lastWord, shift(match(PARTING, foot))].find((one) => one && !isTown(one.value) && !namesArea(one.value)) ??
    smallName(body);
  if (name) people.name = name;
  const introduced = match(INTRODUCED, body) ?? hereIn(body);
  const after = introduced && organisationAfter(body, introduced.end + (body.startsWith(' here', introduced.end) ? 5 : 0));
  const byCall = called?.[2] ? organisation(called[2], called.index + called[0].lastIndexOf(called[2])) : undefined;
  const fromHere = FROM_HERE.exec(body);
  const byHere =
    fromHere?.[2] && fromHere[2].includes(' ')
      ? organisation(fromHere[2], fromHere.index + fromHere[0].lastIndexOf(fromHere[2]))
      : undefined;
  const short = body.slice(0, 200).matchAll(OF_ORG).next().value;
  const byShort =
    short?.[1] && short[2] && nameFrom(short[1], 0) && (ORG_WORDS.test(short[2]) || short[2].includes(' '))
      ? organisation(short[2], short.index + short[0].lastIndexOf(short[2]))
      : undefined;
  const org =
    byHere ??
    after ??
    besideLabel(body) ??
    byCall ??
    byShort ??
    abroad?.organisation ??
    endingOrg ??
    closing?.organisation ??
    organisationSaid(body);
  if (org) people.organisation = org;
  const email = emailIn(body);
  if (email) people.email = email;
  const phone = phonesIn(body, true)[0];
  if (phone) people.phone = phone;
  return people;
}
