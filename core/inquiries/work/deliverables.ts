/**
 * What is to be handed over: the phrase as written, without its article.
 */

export type Thing = { value: string; start: number; end: number };

const COUNT = String.raw`(?:(?:an?|one|two|three|four|five|six|seven|eight|ten|twelve|\d{1,3}|some|several|few|couple of|the|all(?: the)?|all of the|full|your)\s)`;
const SIZE = String.raw`(?:(?:\d{1,3}|one|two|three|four|five|ten|thirty|sixty|ninety)(?:\s?-\s?\d{1,3})?[\s-]?(?:second|sec|s|minute|min|m|hour|hr)s?\b[\s-]?|short\s|quick\s|vertical\s|square\s|long\s|edited\s|final\s|full[- ]length\s|full\s|raw\s|unedited\s|social(?: media)?\s|promotional\s|promo\s|highlights?\s|recap\s|teaser\s|same[- ]day\s|daily\s|nightly\s|cinematic\s|simple\s|subtitled\s|captioned\s|event\s|clean\s|multicam\s|individual\s|separate\s|polished\s|horizontal\s|landscape\s|portrait\s|nice\s|whole[- ]day\s)`;
const NOUN = String.raw`(?:highlights?(?: (?:reel|video|film|edit|clip|cut)s?)?|recaps?(?: (?:video|film|reel|edit)s?)?|sizzle(?: reel)?s?|trailers?|teasers?|promos?|after-?movies?|reels?|clips?|cut-?downs?|montage|cut(?! (?:to|from|of|the|a)\b)|edits?|social (?:cuts?|edits?|videos?)|recordings? of (?:each|every|all(?: the)?) (?:talk|session|speaker|speech|match|game|performance|presentation|set|panel)s?|recordings?|footage|rushes|talking-head interviews?|testimonials?|documentar(?:y|ies)|photo gallery|gallery|videos?|films?|stories)`;
const THING = new RegExp(
  String.raw`(?<![\p{L}\p{N}-])(?<count>${COUNT}{0,2})(?<size>${SIZE}{0,4})(?<noun>${NOUN})(?![\p{L}\p{N}-])(?<more> (?:every|each) (?:day|evening|night|morning)| (?:of|from|for) (?:each|every) (?:talk|session|speaker|day|match|game|team|performance|panel|set|presentation)| the same (?:day|night|evening))?`,
  'giu',
);
/** Words that promise a thing by themselves; the rest need a count, a length or an adjective. */
const PLAIN =
  /^(?:videos?|films?|edits?|recordings?|footage|clips?|reels?|stories|gallery|trailers?|promos?|recaps?|highlights?|cut|montage|documentar(?:y|ies))$/i;
const NOT_ASKED =
  /\b(?:no|not|without|saw|seen|watched|loved|liked|enjoyed|last year'?s|previous|don't need|won't need|skip|for example|like the|similar to|than|showreel|on your (?:site|website)|screening of)\b[^.;!?]{0,24}$|\b(?:existing|already|old|linked|attached|your|show|play|screen)\s(?:the |our |my |an? )?$/i;

const LIST = /\bdeliverables?(?: are| would be| include)?\s?[:=-]/i;

/** Things that the sender asks for, each once, in order. */
export function deliverablesIn(text: string): Thing[] {
  const things: Thing[] = [];
  const listed = LIST.exec(text);
  for (const match of text.matchAll(THING)) {
    const groups = match.groups ?? {};
    const size = groups['size'] ?? '';
    const count = (groups['count'] ?? '').trim();
    const noun = groups['noun'] ?? '';
    if (PLAIN.test(noun) && size.trim() === '') continue;
    if (/^(?:your|the)$/i.test(count) && PLAIN.test(noun)) continue;
    const lead =
      text
        .slice(Math.max(0, match.index - 60), match.index)
        .split(/[.;!?\n]/)
        .at(-1) ?? '';
    if (NOT_ASKED.test(lead) || /^your\b/i.test(count)) continue;
    if (
      /^event (?:videos?|films?)$/i.test(`${size}${noun}`.trim()) ||
      /^\s?(?:card|wall|op\b|operator|crew|production|shoot)/i.test(
        text.slice(match.index + match[0].length, match.index + match[0].length + 12),
      )
    )
      continue;
    const article = /^(?:an?|the|some)\s/i.exec(match[0])?.[0].length ?? 0;
    const value = match[0].slice(article).trim();
    const start = match.index + article;
    if (!things.some((thing) => thing.value.toLowerCase() === value.toLowerCase()))
      things.push({ value, start, end: start + value.length });
  }
  // A list under its own name says better what is wanted than the words before it.
  const named = listed ? things.filter(({ start }) => start > listed.index) : [];
  return (named.length > 0 ? named : things).slice(0, 12);
}
