/**
 * Who asks: name, mail, phone and organisation, from the signature, the head of the mail and the words "I'm ... from ...".
 */
import { foldName } from '../../places/fold.ts';

export type PersonFact = { value: string; start: number; end: number };
export type People = { name?: PersonFact; email?: PersonFact; phone?: PersonFact; organisation?: PersonFact };

/** The layers of a message, each with all else blanked, offsets kept. */
export type Layers = { body: string; signature: string; header: string; stamp: string };

const EMAIL = /(?<![\w.+-])[\w][\w.+-]{0,60}@[\w-]{1,60}(?:\.[\w-]{1,40}){1,4}(?![\w-])/g;
const PHONE =
  /(?<![\w$£€.,/:@-])(?:\+\d{1,3}[\s.-]?)?(?:\(\d{1,5}\)[\s.-]?)?\d{2,5}(?:[\s.-]\d{2,5}){1,5}(?![\w@/:])|(?<![\w$£€.,/:@-])(?:\+\d{8,14}|0\d{8,11}|\d{10,11})(?![\w@/:,.]\d)/g;
const PHONE_LABEL =
  /(?:\b(?:tel|phone|ph|mob|mobile|cell|call|text|ring|reach me|reached|whatsapp|number|direct|m|t|p|c|contact|on|at|me)\b[\s.:]{0,3}(?:is |at |on |me at |me on )?)$/i;
const NAME = String.raw`\p{Lu}[\p{L}'-]{1,20}\.?(?:\s(?:(?:van|von|de|der|den|da|di|del|la|le|bin|al)\s){0,2}\p{Lu}[\p{L}'-]{0,20}\.?){0,3}`;
const NAME_LINE = new RegExp(`^(?:[-~\\s]{0,4})(${NAME})(?=\\s*(?:$|[,|(/]|\\s-\\s|[.!]?$|\\sx{1,3}$))`, 'u');
const ORG_WORDS =
  /\b(?:ltd|llc|llp|inc|gmbh|ag|sarl|sas|bv|plc|co|company|corp|corporation|group|events?|productions?|agency|media|studios?|films?|association|society|foundation|institute|university|college|school|council|chamber|club|league|federation|congress|committee|trust|hospital|clinic|museum|theat(?:er|re)|church|museum|partners|consulting|solutions|systems|services|hotel|festival|network|union|board|ministry|department|dept|marketing|communications|collective|alliance|centre|center|bank|labs?|software|foods|bakery|brewing|robotics|guild|cooperative|co-op|charity|gallery|library|orchestra|academy|team|rotary|conferences?|weddings?|works|industries|holdings|international|global|brothers|& sons|and sons)\b/i;
const TITLE_WORDS =
  /\b(?:manager|director|coordinator|co-ordinator|producer|planner|assistant|officer|head of|lead|executive|ceo|cfo|coo|cmo|founder|owner|president|secretary|chair(?:man|woman|person)?|specialist|consultant|associate|administrator|admin|organi[sz]er|editor|marketing|communications|comms|events team|curator|dean|professor|dr|teacher|treasurer|partner|he\/him|she\/her|they\/them|intern|vp|vice president|supervisor|stage manager|principal|pr)\b/i;
const NOT_NAME =
  /^(?:thanks?|thank you|many|cheers|best|kind|regards|warm|all|sent|hi|hello|hey|dear|yours|sincerely|with|looking|please|let|we|i|the|our|no|yes|ps|great|good|any|can|could|would|need|looking|location|date|budget|venue|event|role|call|wrap|speak|talk|love|later|the team|monday|tuesday|wednesday|thursday|friday|saturday|sunday|january|february|march|april|may|june|july|august|september|october|november|december|mit|viele|liebe|beste|cordialement|saludos|un|merci|gracias|grazie|tel|phone|mobile|office|email|from|to|subject|re|fwd?|ta|thx|xx?|br|kr|for|and|this|that|what|who|how|when|why|is|are|just|also|it)$/i;

const trimmed = (text: string, start: number): PersonFact => {
  const value = text.trim();
  const lead = text.length - text.trimStart().length;
  return { value, start: start + lead, end: start + lead + value.length };
};

function nameFrom(written: string, start: number): PersonFact | undefined {
  const fact = trimmed(written.replace(/[.,!]+$/, ''), start);
  const first = fact.value.split(/\s/)[0] ?? '';
  if (fact.value.length < 2 || fact.value.length > 50 || NOT_NAME.test(first.replace(/[.,]/g, ''))) return undefined;
  return fact;
}

function firstEmail(text: string): PersonFact | undefined {
  const match = text.matchAll(EMAIL).next().value;
  return match
    ? { value: match[0].replace(/\.$/, ''), start: match.index, end: match.index + match[0].replace(/\.$/, '').length }
    : undefined;
}

/** A run of digits that is long enough for a phone and is not a date, an order number or an amount. */
export function phonesIn(text: string, labelled: boolean): PersonFact[] {
  const phones: PersonFact[] = [];
  for (const match of text.matchAll(PHONE)) {
    const digits = match[0].replace(/\D/g, '');
    if (digits.length < 7 || digits.length > 15) continue;
    if (/^\d{4}[-.\s]\d{2}[-.\s]\d{2}$/.test(match[0]) || /^\d{1,2}[-.\s]\d{1,2}[-.\s](?:19|20)\d\d$/.test(match[0])) continue;
    if (/^\d{1,3}(?: \d{3})+$/.test(match[0]) && digits.length < 9) continue;
    const lead = text.slice(Math.max(0, match.index - 30), match.index);
    if (/(?:\b(?:iban|order|ref(?:erence)?|invoice|account|acct|vat|reg|po|no|id|meeting id|passcode|fax|f)\b[\s.:#]{0,3}|#)$/i.test(lead))
      continue;
    if (
      labelled &&
      !match[0].startsWith('+') &&
      !PHONE_LABEL.test(lead) &&
      !/^\(?\d{3}\)?[\s.-]\d{3}[\s.-]\d{4}$/.test(match[0]) &&
      !/^0\d{2,4}[\s-]\d/.test(match[0]) &&
      !/^0\d{9,10}$/.test(match[0])
    )
      continue;
    phones.push({ value: match[0], start: match.index, end: match.index + match[0].length });
  }
  return phones;
}

type Line = { text: string; start: number };
function linesOf(text: string): Line[] {
  const lines: Line[] = [];
  let start = 0;
  for (const line of text.split('\n')) {
    if (line.trim() !== '' && line.length <= 200) lines.push({ text: line, start });
    start += line.length + 1;
  }
  return lines;
}

const FAREWELL =
  /^\s*(?:(?:many |with |kind |best |warm |warmest |so |a big )*(?:thanks|thank you|thankyou|regards|wishes|thx|ta)[\w ]{0,30}|cheers|best|all (?:the|my) best|sincerely|yours(?: \w+)?|warmly|talk soon|speak soon|cordially|respectfully|take care|later|br|kr|rgds|xx?|[\p{L} ]{0,20}(?:grüßen?|grüße)|mfg|lg|vg|cordialement|bien à vous|merci|saludos(?: cordiales)?|un saludo|gracias|cordiali saluti|grazie|met vriendelijke groet|groeten|atenciosamente|obrigad[oa]|abraços|mvh)\s?[,.!:-]*\s*/iu;

/** The lines of a signature: name, title, organisation, mail, phone. */
function fromSignature(signature: string): People {
  const people: People = {};
  const lines = linesOf(signature).slice(0, 14);
  for (const [index, line] of lines.entries()) {
    const farewell = index <= 1 || people.name === undefined ? FAREWELL.exec(line.text) : null;
    const skip = farewell && /^\s*(?:$|\p{Lu})/u.test(line.text.slice(farewell[0].length)) ? farewell[0].length : 0;
    const text = line.text.slice(skip);
    const start = line.start + skip;
    if (text.trim() === '') continue;
    const bare = text.replace(EMAIL, '');
    if (!people.name && !/[@\d]/.test(text.split(/[,|(]/)[0] ?? '')) {
      const match = NAME_LINE.exec(text);
      const found = match?.[1] ? nameFrom(match[1], start + (match[0].length - match[1].length)) : undefined;
      if (found && !(ORG_WORDS.test(found.value) && found.value.includes(' ')) && !TITLE_WORDS.test(found.value)) {
        people.name = found;
        const rest = text.slice(match?.[0].length ?? 0);
        const org = organisationIn(rest, start + (match?.[0].length ?? 0));
        if (org) people.organisation ??= org;
        continue;
      }
    }
    if (!people.organisation && !/^\s*(?:tel|phone|mob|cell|www|http|m|t|p|e|w|o|c)\b[\s.:]/i.test(text) && !/www\.|https?:/.test(text)) {
      const org = organisationIn(bare === text ? text : '', start);
      if (org && (people.name || ORG_WORDS.test(org.value))) people.organisation = org;
    }
  }
  const email = firstEmail(signature);
  if (email) people.email = email;
  const phone = phonesIn(signature, false)[0];
  if (phone) people.phone = phone;
  return people;
}

/** The organisation in a line such as "Events Manager, Northgate Bakers' Guild | Leeds". */
function organisationIn(line: string, start: number): PersonFact | undefined {
  const pieces: { text: string; at: number }[] = [];
  let at = 0;
  for (const piece of line.split(/(\s*[|,/]\s*|\s-\s|\bat\b|@\s)/)) {
    pieces.push({ text: piece, at });
    at += piece.length;
  }
  for (const piece of pieces) {
    const words = piece.text.trim().replace(/^[(\s-]+|[)\s.]+$/g, '');
    if (words.length < 2 || words.length > 60 || /[@\d?!:]/.test(words) || !/^\p{Lu}|^the /u.test(words)) continue;
    const title = TITLE_WORDS.test(words);
    const org = ORG_WORDS.test(words);
    if (title && !(org && /\b(?:ltd|llc|inc|gmbh|group|agency|association|society|foundation|university)\b/i.test(words))) continue;
    if (!org) continue;
    const lead = piece.text.indexOf(words);
    return { value: words, start: start + piece.at + lead, end: start + piece.at + lead + words.length };
  }
  return undefined;
}

const ORG_NAME = String.raw`(?:the\s)?(?:\p{Lu}[\p{L}\p{N}'&.-]{0,30}|\p{Lu}&\p{Lu})(?:\s(?:(?:of|and|&|for|the|de|la|du|für|und)\s){0,2}(?:\p{Lu}[\p{L}\p{N}'&-]{0,30}|\d{2,4})){0,6}`;
const INTRODUCTION = new RegExp(
  String.raw`\b(?:my name is|my name's|i am|i'm|this is|it's|it is|here is|name:|contact:|contact name:|your name:|full name:)\s{1,2}(${NAME})(?=$|[\s,.;!?)-])`,
  'giu',
);
const FROM_ORG = new RegExp(
  String.raw`(?:\b(?:from|with|at|for|of|on behalf of|representing|work(?:ing)? (?:for|at|with)|here at|organi[sz]ing (?:the|a) \w+ for|, )\s{1,2})(${ORG_NAME})`,
  'gu',
);
const ORG_LABEL = /^\s*(?:company|organi[sz]ation|client|organiser|organizer|company name|business)\s?:\s*(.{2,60}?)\s*$/gim;
const NAME_LABEL = /^\s*(?:name|contact|contact name|full name|your name|from)\s?:\s*([^\n@<\d]{2,50}?)\s*$/gim;

function fromBody(body: string): People {
  const people: People = {};
  const label = body.matchAll(NAME_LABEL).next().value;
  if (label?.[1]) {
    const found = nameFrom(label[1], label.index + label[0].lastIndexOf(label[1]));
    if (found && /^\p{L}/u.test(found.value)) people.name = found;
  }
  for (const match of body.matchAll(INTRODUCTION)) {
    if (!match[1] || !/^\p{Lu}/u.test(match[1])) continue;
    const at = match.index + match[0].length - match[1].length;
    const found = nameFrom(match[1], at);
    if (!found) continue;
    const after = body.slice(found.end, found.end + 160).split(/[.!?\n]/)[0] ?? '';
    const here = /^\s?(?:here|,|from|at|with|and|-|\(|$)/i.test(after) || /\b(?:name)/i.test(match[0]);
    if (ORG_WORDS.test(found.value) && found.value.split(' ').length > 1) {
      people.organisation ??= found;
      continue;
    }
    if (!here) continue;
    people.name ??= found;
    const org = organisationAfter(after, found.end);
    if (org) people.organisation ??= org;
    break;
  }
  const here = new RegExp(
    String.raw`(?:^|\n|[,!.]\s)\s*(?:(?:hi|hello|hey|good (?:morning|afternoon|evening))(?: there| team| all)?[,! -]{1,3})?(${NAME}) here\b`,
    'giu',
  );
  for (const match of body.matchAll(here)) {
    if (!match[1] || !/^\p{Lu}/u.test(match[1])) continue;
    const found = nameFrom(match[1], match.index + match[0].indexOf(match[1]));
    if (!found) continue;
    people.name ??= found;
    const after = body.slice(match.index + match[0].length, match.index + match[0].length + 120).split(/[.!?\n]/)[0] ?? '';
    const org = organisationAfter(after, match.index + match[0].length);
    if (org) people.organisation ??= org;
    break;
  }
  const farewell = new RegExp(
    String.raw`(?:^|[\s,.!?-])(?:thanks|thank you|thx|cheers|best|regards|ta)[\s,!.-]{1,3}(?:in advance[\s,!.-]{1,3}|again[\s,!.-]{1,3}|so much[\s,!.-]{1,3})?(${NAME})[\s.!]*$`,
    'iu',
  ).exec(body.slice(-120).trimEnd());
  if (farewell?.[1] && /^\p{Lu}/u.test(farewell[1])) {
    const trimmedEnd = body.trimEnd().length;
    const at = trimmedEnd - body.slice(-120).trimEnd().length + farewell.index + farewell[0].lastIndexOf(farewell[1]);
    const found = nameFrom(farewell[1], at);
    if (found) people.name ??= found;
  }
  const orgLabel = body.matchAll(ORG_LABEL).next().value;
  if (orgLabel?.[1]) {
    const at = orgLabel.index + orgLabel[0].lastIndexOf(orgLabel[1]);
    people.organisation = trimmed(orgLabel[1], at);
  }
  if (!people.organisation) {
    const behalf = new RegExp(
      String.raw`\b(?:on behalf of|i work (?:for|at|with)|we are|we're|i represent|writing from|organi[sz]er (?:of|for)|i run|i look after events (?:for|at))\s{1,2}(${ORG_NAME})`,
      'gu',
    );
    for (const match of body.matchAll(behalf)) {
      const value = match[1] ?? '';
      if (!ORG_WORDS.test(value) && !/behalf|work|represent/.test(match[0])) continue;
      const at = match.index + match[0].length - value.length;
      people.organisation = { value: value.replace(/[.,]$/, ''), start: at, end: at + value.replace(/[.,]$/, '').length };
      break;
    }
  }
  const email = firstEmail(body);
  if (email) people.email = email;
  const phone = phonesIn(body, true)[0];
  if (phone) people.phone = phone;
  return people;
}

/** "from the Harbour Bakers' Guild", "at Northgate Events" right after a name. */
function organisationAfter(after: string, start: number): PersonFact | undefined {
  for (const match of after.matchAll(FROM_ORG)) {
    const value = (match[1] ?? '').replace(/[.,]$/, '');
    if (value.length < 2 || match.index > 60) continue;
    const plain = value.replace(/^the\s/, '');
    const lead = match[0].trimStart();
    if (lead.startsWith(',') && !ORG_WORDS.test(value)) continue;
    const many = plain.split(' ').length > 1;
    if (!many && !ORG_WORDS.test(plain)) continue;
    const at = start + match.index + match[0].lastIndexOf(plain);
    return { value: plain, start: at, end: at + plain.length };
  }
  return undefined;
}

const FROM_LINE = /^(?:from|von|de)\s?:\s*"?([^"<\n@]{2,50}?)"?\s*(?:<|\[mailto:|\(|$)/gim;

function fromHeader(header: string): People {
  const people: People = {};
  const lines = [...header.matchAll(/^[ \t]*(?:from|von|de|reply-to)\s?:[^\n]{0,160}$/gim)];
  const line = lines.at(-1);
  if (!line) return people;
  const email = firstEmail(line[0]);
  if (email) people.email = { ...email, start: email.start + line.index, end: email.end + line.index };
  const written = line[0].matchAll(FROM_LINE).next().value;
  if (written?.[1]) {
    const found = nameFrom(written[1], line.index + line[0].indexOf(written[1]));
    if (found && /^\p{Lu}[\p{L}'. -]+$/u.test(found.value) && !(ORG_WORDS.test(found.value) && found.value.includes(' ')))
      people.name = found;
  }
  return people;
}

/** The name before the words of a chat line. */
function fromStamp(stamp: string): People {
  const names = new Map<string, PersonFact>();
  for (const match of stamp.matchAll(/(?:^|[\]\-)]|\d{1,2}:\d\d(?::\d\d)?(?:\s?[ap]m)?)\s{0,3}(\p{Lu}[\p{L}'. -]{1,40}?):\s*$/gimu)) {
    const found = match[1] ? nameFrom(match[1], match.index + match[0].indexOf(match[1])) : undefined;
    if (found) names.set(found.value, found);
  }
  const only = names.size === 1 ? [...names.values()][0] : undefined;
  return only ? { name: only } : {};
}

/** Who asks. The signature goes before the head, the head before what is said in the text, but a fuller name wins over its first part. */
export function peopleIn(layers: Layers): People {
  const [signature, header, body, stamp] = [
    fromSignature(layers.signature),
    fromHeader(layers.header),
    fromBody(layers.body),
    fromStamp(layers.stamp),
  ];
  const names = [signature.name, body.name, header.name, stamp.name].filter((name) => name !== undefined);
  const first = names[0];
  const fuller = first ? names.find((name) => foldName(name.value).startsWith(`${foldName(first.value)} `)) : undefined;
  const name = fuller ?? first;
  const email = signature.email ?? body.email ?? header.email;
  const phone = signature.phone ?? body.phone;
  const organisation = body.organisation ?? signature.organisation;
  return { ...(name ? { name } : {}), ...(email ? { email } : {}), ...(phone ? { phone } : {}), ...(organisation ? { organisation } : {}) };
}
