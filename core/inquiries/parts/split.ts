/**
 * A pasted message taken apart by lines: what the sender wrote now, what was forwarded, what is only quoted, and who signed.
 */

import { asksForWork } from '../asking.ts';
import { onlyBids } from '../people/farewells.ts';
import { ORG_WORDS } from '../people/words.ts';
import { ATTRIBUTION, blank, HEADER, isWhen, linesOf, LONGEST_MARK, reaches, short, type Line, type Part, type PartKind } from './lines.ts';
import { passedOn } from './passed-on.ts';
import { bareName, isTitled, NAME_ONLY, signUnannounced } from './signing.ts';

const QUOTED_LINE = /^\s{0,3}>/;
const QUOTE_MARKS = /^\s{0,3}>[>\s]*/;
const FORWARD =
  /^[-\s]{0,20}(?:(?:[\p{L}']{1,8} ){0,2}(?:forwarded(?: message|(?=\s?[-–]))|weitergeleiteten? nachricht|message (?:transféré|réexpédié)|mensaje reenviado|messaggio inoltrato|doorgestuurd bericht))(?!\p{L}).{0,20}$/iu;
const ORIGINAL =
  /^[-_\s]{0,40}(?:original (?:message|appointment)|ursprüngliche nachricht|message d'origine|mensaje original|mensagem original|messaggio originale|oorspronkelijk bericht)[-_\s:]{0,40}$/i;
const MAIL_ONLY =
  /^(?:from|to|cc|sent|subject|reply-to|von|gesendet|betreff|envoyé|objet|asunto|enviado|oggetto|onderwerp|van|aan|verzonden|an|para)\s?:/i;
const FROM_ONE = /^from\s?:\s\p{Lu}[\p{L}'-]+(?: \p{Lu}[\p{L}'.-]*){1,2}$/iu;
const SUBJECT = /^(?:subject|betreff|objet|asunto|oggetto|onderwerp)\s?:\s*/i;
const SIGN_OFF =
  /^(?:(?:nice |friendly |kind |warm |many |best |with )*(?:greetings|greets)|(?:many |with |kind |best |warm |warmest |very |so |a big )*(?:thanks|thank you|thankyou|regards|wishes|thx|ta)(?: (?:so much|a lot|a million|again|very much|in advance|and (?:best|kind) (?:regards|wishes)|and regards|for your (?:time|help)|all))?|groete|atentamente|amitiés|amicalement|(?:viele |liebe |beste |schöne |freundliche |herzliche )*(?:gruss|grüsse|grüße)(?: aus [a-zà-ž]{2,12})?|servus|hälsningar|hilsen|terveisin|bises|bisous|(?:un )?abrazos?|beijos|slán|hwyl|mahalo|namaste|baci|cari saluti|saluti|cordialmente|cheers|kindly|(?:with |my |many |sincere )*apologies|hugs|blessings|bye(?: for now)?|ciao|until then|see you(?: soon)?|onwards|yours in \w+|warmest|best|all (?:the|my) best|sincerely|yours(?: (?:sincerely|truly|faithfully))?|warmly|with (?:gratitude|thanks)|gratefully|talk soon|speak soon|cordially|respectfully|take care|later|br|kr|rgds|xx?|mit (?:freundlichen|besten) grüßen|(?:viele|liebe|beste|herzliche) grüße|mfg|lg|vg|cordialement|bien (?:à vous|cordialement)|merci(?: d'avance)?|saludos(?: cordiales)?|un saludo|gracias|cordiali saluti|grazie|met vriendelijke groet|groeten|atenciosamente|obrigad[oa]|abraços|med vänliga hälsningar|mvh)\s*[,.!-]*\s*$/i;
const SIGN_OFF_AND_NAME =
  /^(?:(?:[mM]any )?[tT]hanks(?: so much| again| a lot| in advance)?|[tT]hank you(?: so much)?|[cC]heers|[bB]est|(?:[kK]ind |[bB]est |[wW]arm )?[rR]egards|(?:[fF]riendly |[kK]ind |[wW]arm )?[gG]reetings|[gG]roet(?:en|jes)?|[aA]braços?|[tT]hx|[tT]a|[tT]alk soon|[sS]peak soon|[aA]ll the best|[sS]incerely|[wW]armly)\s?[,!.-]{1,2}\s?((?:\p{Lu}[\p{L}'-]{0,20}\.?\s?){1,4})[,.!]?\s*$/u;
/** "Dear Sir or Madam:" before "Subject: ..." */
const SALUTES =
  /^(?:dear|to whom|hi|hello|hey|good \p{L}+|sehr geehrte\p{L}*|liebe\p{L}*|hallo|bonjour|madame|monsieur|beste|geachte|estimad\p{L}+|hola|gentile|egregio|caro|cara)(?= |,|:)[^.!?]{0,50}[,:!]?$/iu;
const POSTSCRIPT = /^\s*(?:p\.?\s?p?\.?\s?s\b\.?|update\b|edit:|one more thing)/i;
const FOOTER =
  /^(?:sent from (?:my|a)\b|confidential(?:[.:]|$)|get outlook\b|this (?:e-?mail|message|communication)\b.{0,60}\b(?:confidential|intended|privileged)|confidentiality notice|the information (?:contained )?in this|please consider the environment|unsubscribe|view (?:this email )?in (?:your )?browser|registered (?:office|in|company)|disclaimer\b|von meinem|envoyé de mon|company (?:no|number|registration))/i;
const CHAT_STAMP =
  /^\s*(?:\[[^\]\n]{4,30}\]|\d{1,2}[/.]\d{1,2}[/.]\d{2,4},? \d{1,2}[:.]\d\d(?:[:.]\d\d)?(?:\s?[ap]\.?m\.?)?\s?-|\(?\d{1,2}:\d\d(?::\d\d)?(?:\s?[ap]m)?\)?(?=\s+[\p{Lu}][\p{L}' ]{0,30}:))\s{0,3}([\p{L}+][\p{L}\p{N}'. ()+-]{0,40}?):\s/iu;
const CHAT_NAME = /^(me|you|myself)\s?:\s/i;
/** "You: second camera", "You: 07:30 at the gate": my line of a crew list, and no talk. */
const CREW_LINE =
  /^(?:me|you|myself)\s?:\s+(?:[^\w\s]{0,3}\d|(?:on |the |our |a |one |main |lead |first |second |third |roving |roaming |wide |tight |static |live |sole ){0,4}(?:cam(?:era)?s?|video\w*|film\w*|shooter|operator|op|sound|audio|boom|stream\w*|live ?stream\w*|vision|mix\w*|switch\w*|photo\w*|stills|edit\w*|drone|director|producer|lights?|lighting|presenter|host|interview\w*|questions)\b(?!\s+(?:is|was|are|still|or|and me|\?)))/i;
/** A line beside "When: ..." and "Fee: ..." is one of a form, whomever it begins with. */
const FORM_LABEL = /^\s*(?:when|where|dates?|day|days|fee|pay|rate|budget|venue|location|place|hours|times?|job|role|call|wrap|event)\s?:/i;
const FORM_FIELD =
  /^(?:(?:your |full |first |last )?name|e-?mail(?: address)?|(?:tele)?phone(?: number)?|tel|mobile|company|organi[sz]ation|message|your message|comments?|enquiry|inquiry|details)\s?:/i;
const inForm = (lines: readonly Line[], index: number): boolean =>
  [lines[index - 1], lines[index + 1]].some((line) => FORM_LABEL.test(line?.text.slice(0, 20) ?? ''));

type Flow = 'own' | 'forwarded' | 'quoted';

/** Cut a message into parts, in order, covering all of it line by line. */
export function split(text: string): Part[] {
  const lines = linesOf(text);
  const kinds: PartKind[] = [];
  const stamps = new Map<number, number>();
  let flow: Flow = 'own';
  let signing = false;
  /** Whether anything stands above. */
  let begun = false;
  let index = 0;
  // Only what stands right above a block can send the reader down to it, not what stood above an earlier one.
  let above = 0;
  /** A thread that its sender points down to is read like any other mail, without its marks of quoting. */
  let handed = false;
  /** The run of lines whose marks were taken off, and what it stands in. */
  let unquoted = { first: -1, next: Infinity, around: 'own' as Flow };
  const pointsBelow = (mail = index) => {
    const from = lines[mail]?.start ?? text.length;
    return passedOn(text.slice(above, from), text.slice(from), !kinds.includes('forwarded'));
  };
  while (index < lines.length) {
    const line = lines[index] as Line;
    const words = short(line);
    if (index >= unquoted.next) {
      flow = unquoted.around;
      signing = false;
      above = line.start;
      unquoted.next = Infinity;
    }
    const put = (kind: PartKind) => {
      kinds[index] = kind;
      index++;
    };
    // Deeper marks within a mail that is read are those of an older one.
    if (
      flow === 'forwarded' &&
      index > unquoted.first &&
      depth(text, line) > depth(text, lines[index - 1]) &&
      kinds[index - 1] !== 'header'
    ) {
      const { time, work, film } = asksForWork(text.slice(above, line.start));
      flow = !time && !work && !film && pointsBelow() ? 'forwarded' : 'quoted';
      signing = false;
    }
    if (QUOTED_LINE.test(line.text)) {
      if (kinds[index - 1] !== 'quoted' && kinds[index - 1] !== 'forwarded')
        handed ||= (flow !== 'quoted' && FORWARD.test(words.replace(QUOTE_MARKS, ''))) || pointsBelow();
      if (handed) {
        unquoted = { first: index, next: unquote(lines, index), around: flow };
        flow = 'forwarded';
        signing = false;
      } else {
        above = line.end;
        put('quoted');
      }
      continue;
    }
    const attribution = ATTRIBUTION.test(words)
      ? 1
      : ATTRIBUTION.test(`${words} ${short(lines[index + 1])}`) && /^(?:on|am|le|el)\b.*\d/i.test(words)
        ? 2
        : 0;
    if (attribution > 0) {
      const mail = index;
      for (let n = 0; n < attribution; n++) put('header');
      let next = index;
      while (blank(lines[next]) && next < lines.length) next++;
      signing = false;
      if (QUOTED_LINE.test(lines[next]?.text ?? '')) handed = flow !== 'quoted' && pointsBelow(mail);
      else if (next < lines.length && mail !== unquoted.first && (begun || flow !== 'own'))
        flow = flow !== 'quoted' && pointsBelow(mail) ? 'forwarded' : 'quoted';
      above = lines[index]?.start ?? above;
      continue;
    }
    if (FORWARD.test(words)) {
      flow = flow === 'quoted' ? 'quoted' : 'forwarded';
      handed = flow === 'forwarded';
      above = line.end;
      signing = false;
      put('header');
      continue;
    }
    if (ORIGINAL.test(words)) {
      if (begun || flow !== 'own') flow = flow !== 'quoted' && pointsBelow() ? 'forwarded' : 'quoted';
      above = lines[index]?.start ?? above;
      signing = false;
      put('header');
      continue;
    }
    const block = headerBlock(lines, index);
    if (block > 0) {
      // A word or two before it name the paper: "MEMO".
      const begins =
        lines.slice(0, index).every((line) => line.text.trim().split(/\s+/).length <= 2 || SALUTES.test(short(line))) &&
        lines.slice(0, index).filter((line) => !blank(line)).length <= 1;
      let before = index - 1;
      while (before >= 0 && blank(lines[before])) before--;
      if (!begins && index !== unquoted.first && kinds[before] !== 'header') {
        flow = flow !== 'quoted' && pointsBelow() ? 'forwarded' : 'quoted';
        handed = flow === 'forwarded';
      }
      above = lines[index]?.start ?? above;
      signing = false;
      for (let n = 0; n < block; n++) put(SUBJECT.test(short(lines[index])) && flow !== 'quoted' ? 'subject' : 'header');
      continue;
    }
    if (flow === 'quoted') {
      put('quoted');
      continue;
    }
    if (POSTSCRIPT.test(words)) {
      signing = false;
      put(flow);
      continue;
    }
    if (FOOTER.test(words)) {
      put('footer');
      continue;
    }
    if (/^--\s*$/.test(line.text) || /^_{5,}$/.test(words)) {
      signing = true;
      put('footer');
      continue;
    }
    if (
      !signing &&
      (words.split(' / ').some((half) => SIGN_OFF.test(half)) || SIGN_OFF_AND_NAME.test(words) || (begun && takesLeave(lines, index))) &&
      endsHere(lines, index)
    )
      signing = true;
    begun ||= !blank(line);
    if (signing && words.length > 90 && !reaches(words)) put(FOOTER.test(words) ? 'footer' : 'signature');
    else if (signing) put('signature');
    else {
      const stamp =
        CHAT_STAMP.exec(line.text.slice(0, LONGEST_MARK)) ??
        (inForm(lines, index) || CREW_LINE.test(line.text.slice(0, LONGEST_MARK)) ? null : CHAT_NAME.exec(line.text.slice(0, 20)));
      if (stamp) {
        if (/^(?:me|you|myself)$/i.test(stamp[1]?.trim() ?? '')) {
          put('quoted');
          continue;
        }
        stamps.set(index, stamp[0].length);
      }
      put(flow);
    }
  }
  signUnannounced(lines, kinds);
  return lines.flatMap((line, at): Part[] => {
    const kind = kinds[at] ?? 'own';
    const stamp = stamps.get(at) ?? 0;
    const label = kind === 'subject' ? (SUBJECT.exec(line.text)?.[0].length ?? 0) : 0;
    const mark: Part[] = line.marked === undefined ? [] : [{ kind: 'forwarded', start: line.marked, end: line.start }];
    if (stamp > 0)
      return [...mark, { kind: 'stamp', start: line.start, end: line.start + stamp }, { kind, start: line.start + stamp, end: line.end }];
    if (label > 0)
      return [...mark, { kind: 'header', start: line.start, end: line.start + label }, { kind, start: line.start + label, end: line.end }];
    return [...mark, { kind, start: line.start, end: line.end }];
  });
}

/** How many marks of quoting stood before a line from which they were taken. */
const depth = (text: string, line: Line | undefined): number =>
  line?.marked === undefined ? 0 : text.slice(line.marked, line.start).replaceAll(/[^>]/g, '').length;

/** Take the marks of quoting off a run of lines; gives the index of the line after it. */
function unquote(lines: Line[], from: number): number {
  let at = from;
  for (let line = lines[at]; line && QUOTED_LINE.test(line.text); line = lines[++at]) {
    const marks = QUOTE_MARKS.exec(line.text)?.[0].length ?? 0;
    lines[at] = { text: line.text.slice(marks), start: line.start + marks, end: line.end, marked: line.start };
  }
  return at;
}

/** How many lines from here on are the head of a mail; a form with "Date:" and "Name:" is none. */
function headerBlock(lines: readonly Line[], from: number): number {
  let at = from;
  let mailOnly = 0;
  while (at < lines.length && HEADER.test(short(lines[at])) && !isWhen(short(lines[at]))) {
    if (MAIL_ONLY.test(short(lines[at]))) mailOnly++;
    at++;
  }
  const size = at - from;
  if (size === 0 || mailOnly === 0) return 0;
  const first = short(lines[from]);
  // "From: Winona Blackstock" and below it "Re: Pueblo"
  if (size === 1 && from === 0 && FROM_ONE.test(first) && /^re\s?:/i.test(short(lines[1]))) return 1;
  // "Name:", "Email:", "Subject:", "Message:" are the fields of one form.
  if (size === 1 && SUBJECT.test(first) && [lines[from - 1], lines[from + 1]].some((line) => FORM_FIELD.test(short(line)))) return 0;
  if (size === 1) return SUBJECT.test(first) || (/^(?:from|von|de|van|da)\s?:/i.test(first) && first.includes('@')) ? 1 : 0;
  return mailOnly >= 2 || /@/.test(first) ? size : SUBJECT.test(first) ? 1 : 0;
}

/** Below a word of farewell a name of any kind is one. */
const NAMED_THERE = /^\p{Lu}[^.?!:\d]{1,50}$/u;

/** A farewell in any words and any language: a few of them on a line of their own, and the name of somebody below. */
function takesLeave(lines: readonly Line[], at: number): boolean {
  const words = short(lines[at]);
  const next = short(lines[at + 1]) || short(lines[at + 2]);
  if (onlyBids(words) && blank(lines[at - 1]) && (NAMED_THERE.test(bareName(next)) || isTitled(next))) return true;
  if (words.length > 40 || /[\d@:?/|]/.test(words) || !/^\p{Lu}[^.]*$/u.test(words) || words.split(/\s+/).length > 5) return false;
  const below = bareName(short(lines[at + 1]) || (words.endsWith(',') ? short(lines[at + 2]) : ''));
  if (!NAME_ONLY.test(below) || below.length > 40 || !below.includes(' ') || ORG_WORDS.test(below)) return false;
  if (/[,!]$/.test(words)) return !words.includes(' ') || !NAME_ONLY.test(words.slice(0, -1));
  return blank(lines[at - 1]) && /^\P{Lu}*$/u.test(words.slice(1));
}

/** A sign-off stands near the end of what its writer wrote: only short lines follow, until a quote, a postscript or nothing. */
function endsHere(lines: readonly Line[], from: number): boolean {
  let written = 0;
  for (let at = from + 1; at < lines.length; at++) {
    const words = lines[at]?.text.trim() ?? '';
    if (words === '') continue;
    if (
      QUOTED_LINE.test(words) ||
      POSTSCRIPT.test(words) ||
      FOOTER.test(words) ||
      FORWARD.test(words) ||
      ORIGINAL.test(words) ||
      HEADER.test(words)
    )
      return true;
    if (words.length <= LONGEST_MARK && ATTRIBUTION.test(words)) return true;
    written++;
    if (words.length > 90 && !reaches(words.slice(0, LONGEST_MARK)) && written <= 2) return false;
    if (written > 12) return true;
  }
  return true;
}

/** The text with all but some kinds of parts blanked: offsets stay, line breaks stay. */
export function only(text: string, parts: readonly Part[], ...kinds: PartKind[]): string {
  let at = 0;
  const pieces: string[] = [];
  const blanked = (from: number, to: number) => {
    for (let [start, end] = [from, from]; start < to; start = end) {
      const isBreak = text[start] === '\n';
      while (end < to && (text[end] === '\n') === isBreak) end++;
      pieces.push(isBreak ? text.slice(start, end) : ' '.repeat(end - start));
    }
  };
  for (const part of parts) {
    blanked(at, part.start);
    if (kinds.includes(part.kind)) pieces.push(text.slice(part.start, part.end));
    else blanked(part.start, part.end);
    at = part.end;
  }
  blanked(at, text.length);
  return pieces.join('');
}
