/**
 * Of days on which different things happen that thing alone is asked for which is told of some of them: "heats on Saturday and finals on Sunday. Could you film the
 * finals?", "Monday arrive, Tuesday talks ... we want the talks filmed", "Sunday is race day, and that is when we want the film made". Whether it is those days alone is asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { askedDays, MOST_MENTIONS, namedAmong, OF_ELSE, union } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const FILM = String.raw`(?:film|record|cover|capture|shoot|stream|video|manage|do)(?:ing)?`;
const NOUN = String.raw`((?!(?:whole|event|events|film|video|camera|rest|day|days|weekend|date|dates|thing|both|entire|lot|first|last|second|price|work|job)\b)\p{L}{4,20})`;
/** "film the finals", "want the talks filmed", "needed for the dinner only" */
const THE = new RegExp(
  [
    String.raw`\b(?:${FILM}|film of|video of|recording of) (?:only |just )?(?:the|our) (?:\p{L}{3,12} )?${NOUN}(?=\s?(?:[.;!?,)\n]|$|for us|please|only|too))`,
    String.raw`\b(?:the|our) (?:\p{L}{3,12} )?${NOUN} (?:to be )?(?:filmed|recorded|covered|captured|streamed|on film|on video)\b`,
    String.raw`\b(?:needed|wanted|required|need you|want you|like you) (?:only |just )?(?:for|at) (?:the|our) (?:\p{L}{3,12} )?${NOUN} (?:only|alone)\b`,
  ].join('|'),
  'giu',
);
/** Behind the day that is meant. */
const THAT =
  /^[^.;!?\n]{0,60}\b(?:that(?:'s| is)|which is|and that's) (?:when|the (?:one|day|bit|part) (?:for you|we|that|which|i))\b|^,? (?:and|so) we(?:'d| would)? (?:want|like|need) (?:a )?(?:video|film|footage|recording) (?:from|of) (?:it|that|this)\b/i;
const ALL =
  /\b(?:both|all|each|every|throughout|whole|entire|as well|also|too|plus|besides|including|especially|apart|except)\b|,? (?:and|but)? ?not (?:the|our) /i;
const MOST = 8;

/** The days, or those of the thing that is asked for beside them as a question. */
export function heldAgainstParts({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  if (event.dates.length < 2 || event.dropped || event.counted) return event;
  const named = mentions.slice(0, MOST_MENTIONS).flatMap((mention) => {
    const days = mention.past || mention.by || OF_ELSE.has(mention.said) ? [] : namedAmong(mention, event.dates);
    return days.length > 0 && days.length < event.dates.length ? [{ mention, days }] : [];
  });
  const that = named.find(({ mention: { end } }) => THAT.test(text.slice(end, end + REACH)) && !ALL.test(text.slice(end, end + REACH)));
  if (that) return askedDays(event.where, [that.days, event.dates], 'open');
  for (const { index, 0: words, ...groups } of [...text.matchAll(THE)].slice(0, MOST)) {
    const noun = [groups[1], groups[2], groups[3]].find((one) => one !== undefined)?.toLowerCase();
    const asked = sentenceAround(text, index, index + words.length);
    // "We want our festival filmed, 3 and 4 July": that is what all the days are called.
    const ofAll = event.where.some(
      (one) =>
        !named.some(({ mention }) => mention.start <= one.start && mention.end >= one.end) &&
        ((one.start >= asked.start && one.end <= asked.end) || isToldOf(text, one, noun ?? '', { from: text.length, to: text.length })),
    );
    if (noun === undefined || ofAll || ALL.test(text.slice(asked.start, asked.end))) continue;
    const told = named
      .filter(({ mention: { start, end } }) => start >= index + words.length || end <= index)
      .filter(({ mention }) => isToldOf(text, mention, noun, { from: index, to: index + words.length }));
    const days = union(...told.map((one) => one.days));
    if (days.length > 0 && days.length < event.dates.length) return askedDays(event.where, [days, event.dates], 'open');
  }
  return event;
}
const REACH = 120;

/** Whether the clause of a day tells of the thing. */
export function isToldOf(
  text: string,
  { start, end }: { start: number; end: number },
  noun: string,
  but: { from: number; to: number },
): boolean {
  const sentence = sentenceAround(text, start, end);
  const from = but.to <= start ? Math.max(sentence.start, but.to) : sentence.start;
  const to = but.from >= end ? Math.min(sentence.end, but.from) : sentence.end;
  const lead = text.slice(from, start).split(CLAUSE).at(-1) ?? '';
  const rest = text.slice(end, to).split(CLAUSE)[0] ?? '';
  const stem = noun.replace(/s$/, '');
  return new RegExp(String.raw`(?<!\p{L})${stem}s?(?!\p{L})`, 'iu').test(`${lead} ${rest}`);
}
const CLAUSE = /[,;()]|\band\b|\s-\s/i;
