/**
 * Dates that are told for another reason than the job: when those who decide meet, when the sender is away, when the film is wanted, what an older mail said.
 * They count only where no other date is told.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { MOST_MENTIONS } from './days-among.ts';
import type { DateMention, Scene } from './scene.ts';

/** The end of what leads to a date. */
const endsIn = (list: string, lists: Readonly<Record<string, string>> = {}): RegExp =>
  new RegExp(
    String.raw`${anyOf(list, lists).source}(?:[^.;!?\n]{0,24}\s)?(?:(?:on|in|at|from|until|till|is|by|for|to|with|am|le|el|op)\s)?(?:(?:the|le|el)\s)?$`,
    'i',
  );

const people = `committee | board | director | manager | head | secretary | treasurer | council | owners | trustees | governors | panel | directors | heads | court | trust | client | boss | chair | members | group | rector | stage manager | vestry | i | we | he | she | they`;
/** Those who decide meet or decide. */
const DECIDE = endsIn(
  `
  {people} ... meet/meets/sit/sits/vote/votes/decide/decides/choose/chooses/pick/picks | {people} must/have_to/will/to decide/choose/report | present/presents/presenting/submit/put/take ... {people} | signs/sign off ... | report back | our/their/the next meeting | meeting of | after their/our/the meeting | meeting's | decision | to report | have a name for
`,
  { people },
);
/** The sender or somebody is away, or a thing of the office happens. */
const AWAY = endsIn(`
  i'm/i_am/we're/we_are/i'll_be/we'll_be/he's/she's/they're away/off/out/closed/walking/travelling/traveling/abroad/busy/flying/unreachable ... | on holiday/leave/vacation | back | no signal/phone | no longer/reachable | locks | goes/go/going out | expires | printed | goes to print | is printed | announced | on sale
`);
const CLOSED =
  /^\)?,? (?:nous sommes fermés|we(?:'re| are) (?:closed|away|off)|i(?:'m| am) (?:away|off|out)|is (?:the |a )?(?:public|bank|national) holiday|ist (?:bei uns |hier )?(?:ein )?feiertag|ya no\b)/i;
/** It was so before. */
const BEFORE = endsIn(`
  earlier/previous/old/older/first note/mail/e-mail/email/message/version/poster/date/plan ... | can't/cannot/couldn't/can_no_longer do/make/manage/host/have | was/were going to_be/for | used to_be | originally
`);
const BIRTHDAY = endsIn(`
  turns/turned ... | birthday/anniversary/name_day is/itself?
`);
/** "Briefing:", "Closing of quotations:" */
const LABEL =
  /(?:^|\n|[.;]\s)[^:\n]{0,24}\b(?:briefing|closing|deadline|delivery|responses?|replies|answers?|quotes?|invoice|rough cut|first cut|call sheet|locked|site visit|recce|payment|handover|edit|milestone)\b[^:\n]{0,30}:\s?(?:[\d.:]+ ?(?:am|pm)?,? )?$/i;
/** "Hotel: night of 3 November, on us" */
const LODGED = /\b(?:hotel|rooms?|accommodation|accom|lodging|bed)\b[^.;!?\n]{0,30}\bnights? (?:of|before)(?: the)? $/i;
const FILM =
  /\b(?:film|films|clips?|cut|recap|edit|edits|edited|teaser|videos?|reel|highlights|recordings?|pictures|photos|files?|captation|vídeo|schnitt|mitschnitt)\b/i;
/** "which we'd want on", "pour le", "online by" */
const WANTED_ON =
  /\b(?:want|wants|need|needs|have|get|ready|out|online|posted|uploaded|delivered|live|due|falta|livrer)\b[^.;!?\n]{0,30}\b(?:on|by|before|for|pour|para)\s(?:the\s|le\s|el\s|la \p{L}+ del\s)?$|\bpour le\s$/iu;

/** True for a date that is told for another reason; `others` are the first days of what is told beside it. */
function isAside({ text, dates }: Scene, { start, end, readings }: DateMention, others: readonly string[]): boolean {
  const sentence = sentenceAround(text, start, end);
  const previous = dates.findLast((date) => date.end <= start)?.end ?? 0;
  const lead = text.slice(Math.max(sentence.start, start - 110, previous), start);
  if (DECIDE.test(lead) || AWAY.test(lead) || BEFORE.test(lead) || BIRTHDAY.test(lead) || CLOSED.test(text.slice(end, end + 40)))
    return true;
  if (LABEL.test(text.slice(Math.max(0, start - 80), start)) || LODGED.test(lead)) return true;
  const first = readings[0]?.[0] ?? '';
  return FILM.test(lead) && WANTED_ON.test(lead) && others.some((other) => other < first);
}

/** "we emailed in January", "you bought a wedge off us at Christmas": a month or a feast in which something was, and no time of the job. */
const WAS_THEN =
  /\b(?:e-?mailed|mailed|wrote|spoke|met|talked|chatted|bought|gave|been in touch|were in touch)\b(?:(?!\b(?:about|for|re|regarding)\b)[^.;!?\n]){0,70}$/i;
export const wasThen = (text: string, { start, end }: DateMention): boolean =>
  WAS_THEN.test(text.slice(sentenceAround(text, start, end).start, start));

/** True where every date is told for another reason. */
export const allAside = (scene: Scene, candidates: readonly DateMention[]): boolean =>
  candidates.length > 0 && candidates.every((mention) => isAside(scene, mention, []));

/** Days that hold no more, as days of a month or as whole runs: "the bishop can't do the 12th" takes "12 August" away, "Nov 5-8 is off" the same run in the mail below. */
function goneDays({ text, dates }: Scene): string[] {
  return dates.slice(0, MOST_MENTIONS).flatMap(({ said, past, start, readings, sequence, explicit }) => {
    const before = BEFORE.test(text.slice(Math.max(0, start - 60), start));
    if (!before && !(past && said === 'past')) return [];
    if (explicit) return [readings.join()];
    const [only, ...more] = sequence.items;
    return only?.atom.day !== undefined && more.length === 0 ? [String(only.atom.day).padStart(2, '0')] : [];
  });
}
/** The dates without those that are told for another reason, where dates with a day of the month are left. */
export function withoutAsides(scene: Scene, candidates: readonly DateMention[]): DateMention[] {
  const numbered = candidates.filter(({ explicit, sequence }) => explicit || sequence.items.some(({ atom }) => atom.day !== undefined));
  if (numbered.length < 2 || new Set(numbered.map(({ readings }) => readings.join())).size < 2) return [...candidates];
  const firsts = numbered.flatMap(({ readings }) => readings[0]?.slice(0, 1) ?? []);
  const gone = goneDays(scene);
  const asides = numbered.filter(
    (mention) =>
      isAside(scene, mention, firsts) ||
      (mention.readings[0]?.length === 1 && gone.includes(mention.readings[0][0]?.slice(8) ?? '')) ||
      gone.includes(mention.readings.join()),
  );
  return asides.length < numbered.length ? candidates.filter((mention) => !asides.includes(mention)) : [...candidates];
}
