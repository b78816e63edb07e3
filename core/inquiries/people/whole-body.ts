/**
 * The whole name of a body where less of it was found: "Hobart, Quill & Stanza LLP", "St. Brendan's School", "Casa Serena seniors' choir"; and without what is
 * none of it: "Harvest Committee of", what somebody says while thinking.
 */
import { withForm } from './legal-forms.ts';
import { ORG_WORDS, type PersonFact } from './words.ts';

/** Partners of a firm before an "&" or its legal form. */
const PARTNERS =
  /^(?:, \p{Lu}[\p{L}'-]{1,24}){0,3}(?:,? & \p{Lu}[\p{L}'-]{1,24}|, \p{Lu}[\p{L}'-]{1,24}(?= (?:LLP|Ltd|LLC|Inc)(?!\p{L})))(?: (?:LLP|Ltd|LLC|Inc|PLC)(?!\p{L}))?/u;
/** A full stop that ends no sentence. */
const SAINT = /(?:^|\s)(?:St|Ste|Mt|Ft)$/u;
const AFTER_SAINT = /^\. ?\p{Lu}[\p{L}'-]{1,24}(?: (?:(?:of|and|the) ){0,2}\p{Lu}[\p{L}'-]{1,24}){0,4}/u;
/** What it is, in small letters behind its name. */
const KIND =
  /^(?: (?:seniors'?|senior|junior|youth|community|children's|ladies'?|men's|women's|primary|high|secondary|middle|dance|drama|music|film|tennis|rugby|football|cricket|rowing|squash|chess))?(?:'s)? (?:school|college|choir|club|society|orchestra|troupe|nursery|preschool|kindergarten|academy|association)(?!\p{L}|'s| (?:hall|room|night|dinner|final|show|house|concert|gala|fair|play|run|day|trip|field|gym|grounds?|band|reunion|prom|musical|disco|production|leavers)s?(?!\p{L}))/u;
/** "the Harvest Committee of Mount Tabor Assembly" */
const COMMITTEE =
  /^(?:the )?\p{Lu}\p{Ll}+(?: (?:and|&) \p{Lu}\p{Ll}+)? (?:Committee|Team|Department|Section|Group|Desk) of (?:the )?(?=\p{Lu}\p{L}+ \p{Lu})/u;
/** "Credit Union em it's about" */
const THINKING = /\s(?:em|um|uh|er|eh|erm|ehm|äh|ähm|euh|out of)(?:\s.*)?$/u;

/** The body as it is called in full in the text that names it. */
export function wholeBody(text: string, found: PersonFact): PersonFact {
  const lead = COMMITTEE.exec(found.value)?.[0].length ?? 0;
  const value = found.value.slice(lead).replace(THINKING, '');
  let fact = { value, start: found.start + lead, end: found.start + lead + value.length };
  const grow = (pattern: RegExp): void => {
    const more = pattern.exec(text.slice(fact.end, fact.end + 100))?.[0] ?? '';
    fact = { value: fact.value + more, start: fact.start, end: fact.end + more.length };
  };
  if (SAINT.test(fact.value)) grow(AFTER_SAINT);
  grow(PARTNERS);
  if (!ORG_WORDS.test(fact.value)) grow(KIND);
  return withForm(text, fact);
}
