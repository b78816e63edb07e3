/**
 * Things that a heading or a sentence says are to be handed over: "Output:", "what we'd like to end up with is", "you'd give me".
 * What stands behind it is the list, whatever its nouns are.
 */
import { latin } from '../phrases.ts';

export type Handed = { start: number; end: number };

const WHO = String.raw`(?:we|i|she|he|they|you|(?:the |my |our )(?:\p{L}+ ){0,2}\p{L}{2,12})`;
const MODAL = String.raw`(?:'d|’d| would| should|'ll|’ll| will| do| shall)?`;
const WISH = String.raw`(?:want|need|like|love|wish|hope|expect|dream|ask|care)s?(?: (?:of|for))?`;
const GET = String.raw`(?:receive|have|get|keep|obtain|be given|be left with|be handed|end up with|take home|see)`;
const AT_END = String.raw`(?: (?:from you|to us|after(?:wards)?|(?:back )?(?:at|by|in) the end(?: of (?:it(?: all)?|the day))?|in return|out of (?:it|this|that)|from (?:it|this|that)|on the last day|please|for that|for this|to (?:us|me)|at the end of it all|in the end|back))?`;

/** Headings and sentences after which anything is a thing to hand over. */
const STRONG = new RegExp(
  latin(
    [
      String.raw`(?:^|\n)[ \t]*(?:[-•*–] ?)?(?:delivery|deliverables?|outputs?|product|(?:to )?hand(?:ed)? ?over|to give in(?: after(?:wards)?)?|(?:we|i)${MODAL} (?:receive|get)|what (?:we|i) (?:get|receive)|you${MODAL} (?:give|leave|send|hand|deliver)(?: (?:us|me|over))?|(?:to )?deliver(?: to us)?|op te leveren|abzuliefern|zu liefern|from you(?: we${MODAL} need)?|received at the end|livrables?|à livrer|entregas?|entregables?|leverans|levering|lieferung|gewünscht|da consegnare|consegna)(?: (?:is|are|wanted|expected))? ?[:=]`,
      String.raw`(?<!\p{L})what ${WHO}${MODAL} ${WISH}(?: to)?(?: ${GET})?${AT_END}${AT_END}(?: is| are|[ ]?:)`,
      String.raw`(?<!\p{L})(?:what (?:we|i)(?:'re|’re|'m|’m| are| am) (?:after|looking for|hoping for)(?: is| are|[ ]?:)|(?:we|i)${MODAL} want this:|out of the (?:material|footage|day) (?:we|i)${MODAL} ${WISH}(?: to ${GET})?|from you (?:comes?|come)|(?:it would be|is) important to have after(?:wards)?|wir (?:erwarten|wünschen uns|hätten gern|bekommen)(?: (?:dafür|dann|am ende|von ihnen|von dir|von euch))?|(?:to|like to) draw from it|ci serv(?:e|ono|irebbe(?:ro)?)|vorremmo (?:avere|ricevere)|il nous faudrait|nous (?:aimerions|souhaitons|voudrions) (?:avoir|recevoir)|nos gustaría (?:tener|recibir))`,
      String.raw`(?<!\p{L})what (?:comes back(?: to us)?|leaves your table|you(?:'d|’d| would|'ll|’ll)? (?:leave|hand over|owe|give|deliver|send)(?: (?:with|to))?(?: us| me)?|(?:we|she|he|they|i)(?:'d|’d| would)(?: like to)? be given|${WHO}${MODAL} (?:use|be given|end up with))[^.:\n]{0,30}(?: is| are|[ ]?:)`,
      String.raw`(?<!\p{L})(?:you(?:'d|’d) owe us|(?:would|will|to) be given to [^.:\n]{2,24}|received? at the end|the client demands[^.:\n]{0,30}|(?:asked|ask|want|like|need) (?:for )?(?:just |only )?(?:two|three|four|2|3|these) things(?: back)?|in (?:exchange|return),? please|(?:we|i)(?:'d|’d| would) be given|wat we (?:graag )?willen(?: hebben)?(?: is)?|ce que nous (?:souhaitons|voulons)|lo que (?:queremos|necesitamos)(?: es)?|was wir (?:brauchen|möchten)|(?:i|we) dream of) ?:`,
      String.raw`(?<!\p{L})(?:all|the only thing) ${WHO}${MODAL} ${WISH}(?: after(?:wards)?| to ${GET})?${AT_END} is`,
      String.raw`(?<!\p{L})${WHO}${MODAL} (?:(?:${WISH}) (?:to )?|expect to )${GET}:? (?!you |a (?:word|reply|answer|quote|call)|your )${AT_END}`,
      String.raw`(?<!\p{L})(?:out of (?:it|that|this)|(?:by|at|in) the end(?: of (?:it|that|the (?:week|day|job)))?|(?:for that|in return|in exchange|after(?:wards| the day)?)),? (?:we|i|she|he|they|there)${MODAL} (?:must exist|(?:${WISH})(?: to ${GET})?|${GET})(?: (?:two|three|four|these) things(?: back)?:)?`,
      String.raw`(?<!\p{L})(?:we|i|she|he|they)${MODAL} (?:end up with|be given)`,
      String.raw`(?<!\p{L})(?:you(?:'d|’d| would|'ll|’ll|)|please(?: also)?) (?:turn in|hand (?:in|over|us|me|her|him|them|the \p{L}{3,12})|leave (?:us|me|with us|with me)|send (?:us|me) (?=one |two |a |an |all |each |every |\d))`,
      String.raw`(?<!\p{L})(?:the (?:aim|result|outcome|product) (?:is|would be|should be))`,
    ].join('|'),
  ),
  'giu',
);

const MADE = String.raw`(?:(?:film|video|vid|reel|clip|edit|cut|recap|teaser|trailer|promo|version|piece|master|file|stick|drive|wav|track|mix|portrait|loop|dvd|cd|souvenir|walkthrough|montage|summary|gallery|album|copy|report|package|packet|raw|still|photo|picture|pic|photograph|link|montaje|wide)s?|highlights?|footage|rushes|b-?roll|recordings?|copies|summaries|galleries|usb|thumb ?drive|after-?movie|\p{L}{0,14}films?|film(?:e|er|ar|es|s|ato|ati|pje)|clips?|klip|vídeos?|resumen|misa|messe|mitschnitt|fotos?|photos|galería|galerie|carpeta|fichiers?|lien|dateien|speicherstick|registratie|registration|registrazione|captation|grabación|opname|föredrag|foredrag)`;
const IS_MADE = new RegExp(latin(String.raw`(?<!\p{L})${MADE}(?!\p{L})`), 'iu');
/** "I need one videographer", "we want a reply": people, answers and what is done on the day. */
const NO_THING =
  /(?<!\p{L})(?:videographers?|camera(?! (?:cards?|files?|originals|masters|rolls))(?:s|man|men|person|people|woman| (?:op\w*|person|people|team|crew))?|operators?|shooters?|ops?|photographers?|editors?|mixers?|technicians?|persons?|people|someone|somebody|anyone|anybody|hands?(?! over)|crew|team|reply|replies|answers?|quotes?|quotation|call|word|idea|prices?|figures?|budget|rate|help|decision|confirm\w*|know|hear|taken|photographed|covered|on (?:video|film|camera|tape)|filmed|recorded|streamed|filming|streaming|film(?:ing)? (?:it|us|the|our|this)|record (?:it|us|the)|live ?streams?|webcast(?! on)|you|availability|invoice|contract|insurance|permits?|tickets?|meals?|lunch|room|hotel|chat|meeting|coffee|date|day(?= (?:of|on|in)\b)|time|place|man|men|woman|guy|lad|lass|kameramann|kamerafrau|quelqu'un|alguien|qualcuno|jemand\p{L}{0,2}|iemand|filmer|cámara|cameraman|vidéaste|videografen|nothing|anything|yes|no thanks|pleasure|chance|pro|professional|dep|body|pair of eyes|expert|tripods?|lens(?:es)?|drone|mics?|microphones?|lighting|angles?|setup|shoot|coverage|job|gig|option|hold|projector|screens?|show)(?!\p{L})/iu;
/** A clause, and no name of a thing. */
const CLAUSE =
  /(?<!\p{L})(?:will|are|is|was|were|owns?|has|have|him|it|who|being|kein\p{L}*|made|finished|documentation|its|it's|cams?|makers?|seulement|slides|opening|name)(?!\p{L})/iu;
/** All of something that happens on the day, as it is. */
const WHOLE =
  /(?<!\p{L})(?:in full|complete|uncut|entire|whole|start to finish|in (?:its|their) (?:totality|entirety)|in real time|without (?:cuts|a cut)|at full length|as (?:it|they) (?:was|were)|on (?:its|their) own|apart|kept separate|per (?:speaker|choir|piece|song)|every(?: single)? (?:speech|toast|song|dance|talk)|something|(?:single|one) take|ungekürzt|ungeschnitten|in voller länge|am stück|vollständig|completa|intégrale|sin cortes|ganze|por separado|var för sig)(?!\p{L})/iu;
const REFUSED =
  /(?<!\p{L})(?:not?|don't|doesn't|won't|wouldn't|without|nor|never|neither|n't|no need (?:of|for)|kein\w*|pas|geen|niet|nothing)(?: \p{L}{1,10}){0,2} ?$/iu;

/** Where a list ends: at the end of its sentence or line, at a remark. */
const ENDS =
  /[.!?]{1,3}(?=\s|$|["”)])|\n|\s[–—-]\s|,? (?:because|since|but|so (?:that|we|i)|although|which (?:is|we|i)|if (?:it|that|possible)|nothing (?:else|fancy|more)|for the work|by (?:the )?(?:end|mid|mon|tue|wed|thu|fri|sat|sun|\d))(?!\p{L})/iu;
const DETERMINED = String.raw`(?:also |separately,? |maybe |perhaps |then |if \p{L}+ \p{L}+ \p{L}+ \p{L}+, )?(?:an?|one|two|three|four|five|six|seven|eight|ten|twelve|\d{1,3}|the|all|every|each|our|my|their|some|something|any|un[ea]?|eine?n?|een|én|due|tre|sei|dos|tres|la|las|los|il|le|les|die|das|den|alla|all[ei]|todos?|losse)(?!\p{L})`;
const SPLIT = new RegExp(
  latin(
    String.raw`\s*;\s*|,? (?:and|plus),? (?:separately|besides|also|apart from that),? |\s\/\s|\s*\((?:\d|i{1,3}|iv|[a-d])\)\s*|,?\s(?:and|plus|as well as|\+|&|und|et|y|e|en(?= (?:een|de|het|losse|\d))|og|och|sowie|samt|along with|also)(?: also| separately,?)?\s(?=${DETERMINED}|[^,;.]{0,40}?(?<!\p{L})${MADE}(?!\p{L}))|,\s(?=${DETERMINED})`,
  ),
  'giu',
);
const BULLET = /^[ \t]*(?:[-•*–—·]|\d[.)]|\([a-z\d]{1,3}\))\s+(?=\S)/u;
const LEADS = /^(?:[\s:,–—-]|(?:also|please|maybe|perhaps|ideally|just|only|simply|and|separately,?|probably)\s)+/iu;
const [SHORTEST, LONGEST, MOST_ITEMS, REACH, MOST_LEADS] = [4, 90, 8, 260, 40];

/** The stretches of a list that begins at a place of the text. */
function itemsFrom(text: string, from: number, named: boolean): Handed[] {
  const rest = text.slice(from, from + REACH);
  // A heading with nothing behind it has its list below.
  if (named && /^[^\S\n]*\n/.test(rest)) {
    const items: Handed[] = [];
    let at = from + rest.indexOf('\n') + 1;
    for (const line of text.slice(at, at + REACH * 2).split('\n')) {
      const bullet = BULLET.exec(line);
      if (!bullet) break;
      items.push({ start: at + bullet[0].length, end: at + line.trimEnd().length });
      at += line.length + 1;
    }
    return items;
  }
  const stop = ENDS.exec(rest.replace(/^[\s:]+/, (blank) => 'x'.repeat(blank.length)));
  const list = rest.slice(0, stop?.index ?? rest.length);
  const items: Handed[] = [];
  let at = 0;
  for (const cut of [...list.matchAll(SPLIT), undefined]) {
    const end = cut?.index ?? list.length;
    items.push({ start: from + at, end: from + end });
    at = end + (cut?.[0].length ?? 0);
  }
  return items;
}

/** What is behind the thing itself: whom it is for, what is done with it, remarks. */
const REMARK =
  / (?:(?:they|we|you|i|she|he|people|everyone|everybody|parents|families)(?:'ll|'d)? (?:can|could|will|may|might|would|want|need)|(?:pulled|taken|cut|made|drawn|edited) (?:from|out of)|for|to|that|which|when|whenever|by|before|so|then|the next|or whatever|on (?:the \d|mon|tue|wed|thu|fri|sat|sun)\p{L}*|für|pour|para|voor|per il|from the) (?=\S)|,(?! (?:(?!need|please|by|first|not|believe|its|it's|sticks|copies|drives)[\p{L}\d-]{1,14} ?){1,3}$)| \((?![^)]{0,20}(?:min|sec|\ds|\d'))/iu;

/** An item without the small words before it and, where it names a thing, without the remarks behind. */
function trimmed(text: string, { start, end }: Handed): Handed {
  const written = text.slice(start, end);
  const lead = LEADS.exec(written)?.[0].length ?? 0;
  const last = start + written.replace(/(?:[\s,"”]| and)+$/, '').length;
  const words = text.slice(start + lead, last);
  const remark = REMARK.exec(words);
  const thing = remark === null ? words : words.slice(0, remark.index);
  return { start: start + lead, end: start + lead + (thing.length >= SHORTEST && IS_MADE.test(thing) ? thing : words).length };
}

/** "same-night montage, full recording": of a list under a heading every part between commas, where each names a thing. */
function byCommas(text: string, { start, end }: Handed): Handed[] {
  const parts: Handed[] = [];
  let at = start;
  for (const part of text.slice(start, end).split(',')) {
    parts.push({ start: at, end: at + part.length });
    at += part.length + 1;
  }
  return parts.length > 1 && parts.every((part) => IS_MADE.test(text.slice(part.start, part.end))) ? parts : [{ start, end }];
}

/** What a text says is to be handed over, in its order. */
export function handedOver(text: string): Handed[] {
  const found: Handed[] = [];
  const take = (lead: RegExpExecArray): void => {
    const from = lead.index + lead[0].length;
    if (
      REFUSED.test(
        text
          .slice(Math.max(0, lead.index - 24), lead.index)
          .split('\n')
          .at(-1) ?? '',
      ) ||
      REFUSED.test(`${lead[0].trim()} `)
    )
      return;
    const headed = /[:=]$/.test(lead[0]);
    const named = headed || (/(?:is|are)$/.test(lead[0]) && !/(?:after|looking for|hoping for) (?:is|are)$/i.test(lead[0]));
    const items = itemsFrom(text, from, headed)
      .flatMap((item) => (headed ? byCommas(text, item) : [item]))
      .slice(0, MOST_ITEMS)
      .map((item) => trimmed(text, item));
    for (const item of items) {
      const words = text.slice(item.start, item.end);
      if (words.length < SHORTEST || words.length > LONGEST || found.some(({ start, end }) => item.start < end && item.end > start))
        continue;
      // Where one is no thing, neither is what follows it.
      if (NO_THING.test(words) || CLAUSE.test(words) || /^(?:to|that|not?|if|when|be|it|this|as|in|on|for|of)(?!\p{L})/iu.test(words))
        return;
      if (!named && !IS_MADE.test(words) && !WHOLE.test(words)) return;
      if (/^(?:\S+ )?(?:minutes?|seconds?|mins?) (?:each|long)$|^(?:\d|two|three) (?:video|photo)$/iu.test(words)) continue;
      if (/^(?:separately|also|both|everything|something|all|some)$/iu.test(words)) continue;
      found.push(item);
    }
  };
  for (const lead of [...text.matchAll(STRONG)].slice(0, MOST_LEADS)) take(lead);
  return found.toSorted((a, b) => a.start - b.start);
}
