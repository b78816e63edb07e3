/**
 * Who asks, as the running text says it: "I'm Odalys from the Harbor Bakers' Guild", "call Ruth on ...", a form's labels, a last word.
 */
import { WHOLLY_PART } from './bodies.ts';
import { closingOf, isFarewell } from './closing.ts';
import { introducedAbroad } from './elsewhere.ts';
import { farewellAt } from './farewells.ts';
import { inTwo } from './form-name.ts';
import { firstSubject } from './first-subject.ts';
import { introducedIn } from './introduced.ts';
import { lastWordsOf } from './last-words.ts';
import { openingOf } from './opening.ts';
import { besideName } from './beside.ts';
import { houseOf, NO_ORG, organisation, organisationSaid } from './organisation.ts';
import { withoutDoorkeepers } from './doorkeepers.ts';
import { RANK } from './ranks.ts';
import { toWhom } from './to-whom.ts';
import { introducedSmall, smallName } from './small.ts';
import { labelledFor, saysFor } from './says-for.ts';
import { spokenFor } from './spoken-for.ts';
import { callerIn } from './voicemail.ts';
import type { People } from './signature.ts';
import { KIN_WORDS, mayBeOrganisation, namesArea, NAME, nameFrom, ORG_NAME, ORG_WORDS, TITLE_WORDS, type PersonFact } from './words.ts';

const start = String.raw`(?:^|[\s,.!?(:-])`;
/** A name on one line. */
const NAME_HERE = NAME.replaceAll(String.raw`\s`, ' ');
/** "I'm the bride's sister Naomi", "I'm their press person, Tess Wynn" */
const AS_KIN = new RegExp(
  String.raw`(?<!\p{L})[Ii](?:'m| am) (?:[\p{L}'-]+ ){1,3}?(?:${KIN_WORDS}|person),? (${NAME_HERE})(?=[.,!;]| (?:here|from)(?!\p{L}))`,
  'gu',
);
const HERE = new RegExp(
  String.raw`${start}(?<!(?<!\p{L})(?:to|of|for) (?:\p{Lu}\p{L}+ )?|\p{Lu}\p{L}+ \/ )(${NAME_HERE})(?: (?:here|speaking)|(?:'s| is) (?:my|the) name)\b`,
  'gu',
);
/** "a quick one from Monica at Pipe Rock Road", "Voicemail from Pania, Sunday" */
const FROM = new RegExp(
  String.raw`(?:[Oo]ne|[Vv]oice ?mail|VOICEMAIL|[Mm]essage|[Cc]all|[Nn]ote|[Rr]equest|[Ee]nquiry|[Ii]nquiry|[Ll]ine|[Hh]ello) from (${NAME_HERE})(?=[,.:;!]|\s(?:at|from|of|with|on)\s|\s?\(|$)`,
  'gmu',
);
const REACH = new RegExp(
  String.raw`${start}(?<!(?<!\p{L})(?:I|[Ww]e|I'll|I'd|[Ww]e'll|I will|[Hh]e|[Ss]he|[Tt]hey) )(?:[Cc]all|CALL|TEXT|PHONE|RING|DM|[Qq]uestions to|[Aa]nswers? to|[Qq]uotes to|[Rr]eply to|[Aa]sk(?= [\p{L} '-]{2,40} on \+?\d)|[Ww]rite to|[Rr]espond to|[Aa]pply to|[Tt]ell|[Cc]ontact|CONTACT|[Tt]ext|[Rr]ing|[Pp]hone|[Ee]-?mail|[Rr]each|[Aa]sk for|[Mm]essage|[Ss]ms|SMS)\s?:?\s(${NAME})(?=\s(?:at|on)\s|,?\s\(?\+?\d|\s?[,/|-]?\s\w[\w.+-]{0,60}@|,?\s?(?:\p{Extended_Pictographic}|$))`,
  'gmu',
);
/** "Sally from Koala Lane Childcare here" */
const FROM_HERE = new RegExp(
  String.raw`${start}(\p{Lu}[\p{L}'-]{1,20}(?: \p{Lu}[\p{L}'-]{1,20})?)\s(?:from|at|of|with)\s(${ORG_NAME})\shere\b`,
  'u',
);
/** "Please respond by 10 September to Wren Castellanos" */
const ANSWER_TO = new RegExp(
  String.raw`(?:[Rr]eply|[Rr]esp|[Rr]esponse|[Rr]espond|[Aa]nswer|[Cc]onfirm|RSVP|[Qq]uotes?|[Aa]nswers|[Rr]eplies)[^.;?!\n]{0,40} to:? (${NAME_HERE})(?=[,.:\n]|\s\(?\+?\d|$)`,
  'gmu',
);
const CALLED = new RegExp(
  String.raw`${start}(${NAME})\s(?:from|at|of|with)\s(${ORG_NAME})\s(?:called|rang|phoned|emailed|texted|wants|needs|asked(?! (?:me|us) to (?:contact|ring|call|e-?mail|write|get|reach|message|try|ask|text|approach)(?!\p{L}))|left|is looking)\b`,
  'gu',
);
const OF_ORG = new RegExp(String.raw`(?:^|[-,!]\s)(${NAME})\s(?:from|at|with)\s(${ORG_NAME})(?=[.!,])`, 'gu');
const BY_PHONE = new RegExp(
  String.raw`(?:[.!?,;)]|\n|\s-|\d[ap]m?|^)\s{0,2}(?:(?:[Tt]a|[Cc]heers|[Tt]hanks|[Tt]hank you|[Tt]hx|[LV]G|MfG|[Gg]ruß|[Gg]rüße|[Gg]roet(?:jes)?|[Ss]aludos|[Bb]ises|[Mm]erci|[Dd]anke|[Rr]egards|[Bb]est|[Ll]ove|x{1,3}|xo),?\s)?(${NAME_HERE})(?:\sx{1,3})?,?\s(?:(?:[Tt]el|[Tt]él|[Pp]h|[Pp]hone|[Mm]ob|[Mm]obile|[Cc]ell|[Hh]andy|[Nn]atel|[Tt]lf|GSM|[Ww]hats[Aa]pp|[TtMm])(?:\.?:?\s|[.:]))?[([]?\+?\d[\d\s().-]{6,}[)\]]?(?:\s*$|[.,]\s[^\d\n]{0,50}$)`,
  'u',
);
/** "ring me asap Yaz 07700 900871", "Text me. Bo, 250-555-0188" */
const RING_ME = new RegExp(
  String.raw`(?<!\p{L})(?:[Cc]all|[Rr]ing|[Tt]ext|[Pp]hone|[Mm]essage|[Mm]sg|[Ww]hats[Aa]pp|[Pp]ing|[Rr]each|[Bb]ell|[Bb]uzz|[Tt]ry) (?:me|us)(?: (?:back|asap|on|at|now|please|pls|plz|anytime|any time|today|tonight|later|tomorrow)){0,3}[.,!:-]?\s{1,2}(?:(?:[Tt]a|[Cc]heers|[Tt]hanks|[Tt]hx),?\s)?(${NAME_HERE}),?\s[([]?\+?\d[\d\s().-]{6,18}[.]?\s*$`,
  'u',
);
const AFTER_PHONE = new RegExp(String.raw`\d[\d\s().-]{6,},?\s-?\s?(${NAME})[.!]?\s*$`, 'u');
const FAREWELL = new RegExp(
  String.raw`(?:^|[\s,.!?-])(?:[Tt]hanks|[Tt]hank you|[Mm]erci|[Gg]racias|[Gg]razie|[Dd]anke|[Ll][Gg]|[Vv][Gg]|[Gg]ruß|[Gg]rüße|[Gg]roetjes|[Gg]roet|[Ss]olidarity|[Ss]aludos|[Gg]reet(?:s|ings)|[Gg]rüsse|[Nn]g[aā] mihi|[Tt]hx|[Tt]hks|[Tt]hanx|[Tt]hnx|[Tt]ks|[Cc]heers|[Bb]est|[Rr]egards|[Tt]a|[Rr]gds|[Ll]uv|[Ll]ove|[Xx][Oo]|xx)[\s,!.-]{1,3}(?:(?:in advance|again|so much|a lot|a million|a bunch|all)[\s,!.-]{1,3})?(${NAME})(?:\sx{1,3})?[\s.!]*$`,
  'u',
);
/** ". Sylvester Korn, Blue Hills Builders", "- Ximena @ Kelp & Clover PR" at the very end. */
const LAST_AND_ORG = new RegExp(
  String.raw`(?:[.!?)\d]\s+|\s(?:-{1,2}|\/{1,2}|\|)\s?)(${NAME_HERE})(?:,| @| from| at| /| \|| -{1,2}| –)\s(${ORG_NAME.replaceAll(String.raw`\s`, ' ')})(?:,?\s[\w.+-]{1,60}@[\w.-]{3,80}|,?\s\(?\+?\d[\d\s().-]{6,18})?[.]?\s*$`,
  'u',
);
/** "Aoife, FettleHouse", "Grant, Southlift House Movers 021 555 0127": one name and, after a comma, two capitalised words or capitals within one. */
const LAST_AND_BODY =
  /(?:[.!?)]\s{1,3}|\n)(\p{Lu}\p{Ll}{2,14}(?: \p{Lu}\.?)?),\s((?:\p{Lu}\p{Ll}+\p{Lu}\p{Ll}+|(?:\p{Lu}[\p{Ll}'-]+ ){1,3}\p{Lu}[\p{Ll}'-]+))(?:,? \(?\+?\d[\d\s().-]{6,18})?[.!]?\s*$/u;
const LAST_AND_TITLE = new RegExp(
  String.raw`[.!?]\s+(\p{Lu}[\p{L}'-]{1,20} \p{Lu}[\p{L}'-]{1,20}),\s(?:\p{L}+\s){0,3}(?:${TITLE_WORDS.source})\s*$`,
  'u',
);
const LAST_AND_MAIL = new RegExp(
  String.raw`(?:[.!?:]|\s(?:to|or)|[Tt]hank(?:s| you)[\p{L} ]{0,20},)\s+(${NAME_HERE}),?\s\(?[\w.+-]{1,60}@[\w.-]{3,80}\)?\s*$`,
  'u',
);
/** "Sandra Micklethwaite, Ward 12, ext. 2230, sandra@..." */
const LAST_AND_DETAILS = new RegExp(
  String.raw`[.!?]\s+(\p{Lu}[\p{L}'-]{1,20} \p{Lu}[\p{L}'-]{1,20})(?:,\s[^,\n!?]{2,30}){1,3},\s(?:[\w.+-]{1,60}@[\w.-]{3,80}|\(?\+?\d[\d\s().-]{6,18})\s*$`,
  'u',
);
const DASHED = new RegExp(
  String.raw`[\s.!?)](?:-{1,2}|~|x{1,2}|(?:(?:\p{Extended_Pictographic}\ufe0f?){1,3}|\\m/)(?=\s?\p{Lu}[\p{L}'-]+\s*$))\s?(${NAME})\s*$`,
  'u',
);
/** A farewell in any language: "Go raibh maith agat, Donncha". */
const PARTING = new RegExp(String.raw`\p{L},\s(\p{Lu}[\p{L}'-]{1,20})(?:\sx{1,3})?[.!]?\s*$`, 'u');
/** A few words of farewell of any kind and a name: "Yours in bridges, Thaddea Crowe", "Warmly (ha), Charmaine". */
const ANY_FAREWELL = new RegExp(
  String.raw`(?:[.!?)]\s{1,3}|\n\s{0,3})(?!(?:[Ii]n|[Aa]t|[Oo]n|[Ff]rom|[Nn]ear|[Tt]he|[Aa]n?|[Ww]e|[Ii]|[Ii]t|[Ii]t's|[Vv]enue|[Pp]lace|[Ll]ocation|[Hh]all|[Tt]own)\b)[\p{L}'-]{2,16}(?:\s[\p{L}'()-]{1,16}){0,3},\s(?:[Yy]ours \p{L}{2,12},\s)?(${NAME_HERE})(?:\sx{1,3})?[.!]?\s*$`,
  'u',
);
/** "Blake, Numerant", "Ingrid S, SM": capitals before the comma that bid no farewell are somebody, and what follows is of whom. */
const NAME_AND = /(?:^|[.!?)]\s{1,3}|\n\s{0,3}|\s[-–—]\s?)((?:\p{Lu}[\p{L}'.-]*\s?){1,3}),\s\p{Lu}[^,\n]{1,40}$/u;
const bids = (foot: string): boolean => {
  const lead = NAME_AND.exec(foot.trimEnd())?.[1];
  return lead === undefined || isFarewell(lead) || farewellAt(`${lead},`) > lead.length || /^(?:\p{L}{3,14}ly|\p{L}{3,14}ty)$/u.test(lead);
};

/** "Bree (PTA)", "Alphonse Gillis, club secretary", "Lucinda at the visitor center" as the last words. */
const LAST_AND_WHO = new RegExp(
  String.raw`(?:[.!?)]\s{1,3}|\n\s{0,3}|(?<!\d)\sx{1,3}\s(?=\p{Lu}\p{Ll}+ \())(?:[\p{L}' ]{2,24},\s(?=[^,]{2,40}\())?(${NAME_HERE})(?:\s\((?:[^()\d]{2,40}|(?:[Nn]r|[Nn]o|[Nn]umber|[Ff]lat|[Hh]ouse|[Hh]uisnummer|[Uu]nit|[Aa]pt)\.? ?\d{1,4}\p{Ll}?)\)|,(?!\s(?:will|is|has|can|who|would|and|or|please|thanks|by|with|but|for|from|was|did|does|next|same)\b)(?:\s[\p{Ll}'-]{3,16}){1,3}|\s(?:at|from|with|for|of)\sthe(?:\s[\p{L}'-]{2,16}){1,4})[.!]?\s*$`,
  'u',
);
const LAST_WORD = new RegExp(
  String.raw`[.!?)]\s{1,3}(\p{Lu}[\p{L}'-]{1,20}(?:\s(?:(?:van|von|de|du|der|den|da|di|del|la|le|al|ter|ap|ab)\s){0,2}\p{Lu}[\p{L}'-]{1,20}){0,2}(?:\s\p{Lu}(?:-\p{Lu})?\.?)?)(?:\sx{1,3})?[.!]?\s*$`,
  'u',
);
const LABEL_NAME = new RegExp(
  String.raw`(?:^[^\S\n]*|[.!?] )(?:(?:[Ff]ull |[Yy]our |[Cc]ontact |FULL |YOUR |CONTACT )?(?:[Nn]ame|NAME)|[Cc]ontact(?:o|person| person)?|[Kk]ontakt|[Cc]ontatto|[Aa]nsprechpartner(?:in)?|[Ww]ho(?: to call)?|[Aa]sk for|[Cc]aller|[Aa]nrufer(?:in)?|[Aa]ppelante?|[Bb]eller|[Nn]ombre(?: (?:y apellidos?|completo))?|[Nn]om(?: et prénom)?|[Nn]aam|[Nn]ome(?: e cognome| completo)?|[Pp]roducer|[Oo]rgani[sz]er|[Bb]ooker|[Cc]oordinator|[Ee]nquiries|[Ii]nquiries|[Qq]ueries|[Aa]ttn|\p{L}{2,12} contact|[Ff]rom the desk of|[Rr]eply to|[Rr]esponses? to|[Cc]ontact \p{L}+|[Rr]ang|[Cc]alled|NAME|CONTACT|WHO|CALLER|PRODUCER|ORGANI[SZ]ER|BOOKER)(?:[^\S\n]?[:=?]|[^\S\n]-(?=[^\S\n])|\.{2,}|\t)[^\S\n]*(?:an? )?(?:${RANK})?(${NAME_HERE})`,
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

/** "E. Pattullo" where a sentence seems to end after the letter. */
function withInitials(body: string, name: PersonFact): PersonFact {
  const initials =
    /(?<=[\p{L}\d)]{2}[.!?,]\s?|\)\s?|\n|^)(?:\p{Lu}\.[^\S\n]?){1,3}$/u.exec(body.slice(Math.max(0, name.start - 12), name.start))?.[0] ??
    '';
  return { value: initials + name.value, start: name.start - initials.length, end: name.end };
}
/** "Gavin Ollerenshaw" of "Gav" */
const isLongerForm = (name: string, less: string): boolean =>
  name.toLowerCase().startsWith(`${less.toLowerCase()} `) ||
  (less.length > 2 && !less.includes(' ') && name.startsWith(less) && / \p{Lu}/u.test(name));
const LONGEST_GREETING = 200;
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
  // "Nic @ Cinder Block Video 0491 570 737": the number is none of its name.
  const ended = ending?.[2]?.replace(/,?(?: \d{2,5}){2,}$/, '');
  const endingOrg =
    ending?.[1] &&
    ended &&
    nameFrom(ending[1], 0) &&
    (mayBeOrganisation(ended) || ((ending[1].includes(' ') || ending[0].includes(' @ ')) && /^\p{Lu}\p{Ll}{3,}$/u.test(ended))) &&
    !isTown(ended) &&
    !WHOLLY_PART.test(ended) &&
    !(TITLE_WORDS.test(ended) && !ended.includes(' ')) &&
    !namesArea(ended)
      ? shift(organisation(ended, ending.index + ending[0].lastIndexOf(ended)))
      : undefined;
  const beside = LAST_AND_BODY.exec(foot);
  const bodyAfter =
    beside?.[1] &&
    beside[2] &&
    !beside[1].endsWith('ly') &&
    !isTown(beside[1]) &&
    !isTown(beside[2]) &&
    nameFrom(beside[1], 0) &&
    !TITLE_WORDS.test(beside[2])
      ? shift(organisation(beside[2], beside.index + beside[0].lastIndexOf(beside[2])))
      : undefined;
  const lastWord = shift(match(LAST_WORD, foot));
  const closing = closingOf(body, isTown);
  const signed = lastWordsOf(body, isTown);
  const abroad = introducedAbroad(body);
  const opening = openingOf(body, isTown);
  const noTown = (fact: PersonFact | undefined): PersonFact | undefined =>
    fact && !isTown(fact.value) && !namesArea(fact.value) ? fact : undefined;
  const said = [
    inTwo(body),
    match(LABEL_NAME, body),
    callerIn(body, isTown),
    introducedSmall(body),
    introducedIn(body, isTown),
    toWhom(withoutDoorkeepers(body)),
    match(AS_KIN, body.slice(0, LONGEST_GREETING * 2)),
    match(FROM_HERE, body),
    opening?.name,
    hereIn(body),
    match(CALLED, body),
    abroad?.name,
    noTown(match(FROM, body)),
    endingOrg ? shift(match(LAST_AND_ORG, foot)) : undefined,
    bodyAfter ? shift(match(LAST_AND_BODY, foot)) : undefined,
    shift(match(LAST_AND_MAIL, foot)),
    shift(match(LAST_AND_TITLE, foot)),
    noTown(shift(match(LAST_AND_DETAILS, foot))),
    closing?.name,
    signed?.name,
    match(OF_ORG, body.slice(0, LONGEST_GREETING)),
    shift(match(RING_ME, foot)),
    noTown(shift(match(BY_PHONE, foot))),
    shift(match(AFTER_PHONE, foot)),
    match(REACH, withoutDoorkeepers(body)),
    match(ANSWER_TO, body),
    shift(match(FAREWELL, foot)),
    noTown(shift(match(DASHED, foot))),
    bids(foot) ? noTown(shift(match(ANY_FAREWELL, foot))) : undefined,
    noTown(lastWord),
    noTown(shift(match(LAST_AND_WHO, foot))),
    bids(foot) ? noTown(shift(match(PARTING, foot))) : undefined,
  ].filter((fact) => fact !== undefined);
  // Who is Declan at the top is Declan Furlong at the bottom.
  const introduced = introducedIn(body, isTown) ?? hereIn(body);
  const label = match(LABEL_NAME, body);
  const after = [introduced, label, abroad?.name].map((one) => one && besideName(body, one.end, isTown)?.organisation).find((one) => one);
  const byCall =
    called?.[1] && called[2] && nameFrom(called[1], 0)
      ? organisation(called[2], called.index + called[0].lastIndexOf(called[2]))
      : undefined;
  const fromHere = FROM_HERE.exec(body);
  const byHere =
    fromHere?.[2] && fromHere[2].includes(' ') && !NO_ORG.test(fromHere[2])
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
    byCall ??
    abroad?.organisation ??
    opening?.organisation ??
    byShort ??
    endingOrg ??
    closing?.organisation ??
    signed?.organisation ??
    bodyAfter ??
    organisationSaid(body, isTown) ??
    spokenFor(body, isTown) ??
    saysFor(body, introduced ?? opening?.name ?? said[0] ?? smallName(body, isTown), isTown) ??
    labelledFor(body, isTown) ??
    firstSubject(body, isTown);
  if (org) people.organisation = houseOf(body, org, isTown);
  // "Te Whare Kōrero (oral history trust) here": who is a body is nobody.
  const persons = said.filter(({ value }) => (value !== org?.value || value.split(' ').length < 3) && !WHOLLY_PART.test(value));
  const [first] = persons;
  const name = persons.find(({ value }) => isLongerForm(value, first?.value ?? '')) ?? first ?? smallName(body, isTown);
  // "its doug again ... doug whitteker"
  const small =
    name && /^\p{Ll}+$/u.test(name.value)
      ? new RegExp(String.raw`(?<!\p{L})${name.value} \p{Ll}{3,14}(?=[.!]?\s*$)`, 'u').exec(foot)
      : null;
  const whole = small && shift({ value: small[0], start: small.index, end: small.index + small[0].length });
  if (name) people.name = whole && !/ (?:here|again|speaking|please|thanks|cheers)$/.test(whole.value) ? whole : withInitials(body, name);
  return people;
}
