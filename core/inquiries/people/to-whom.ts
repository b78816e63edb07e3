/**
 * Who asks, named beside "me" or as the one to whom questions go: "replies to me, B. Pomfret, on ...", "Queries to Gwen Pike, Procurement Officer",
 * "they call me Dana Pohl".
 */
import { RANK } from './ranks.ts';
import { NAME, nameFrom, TITLE_WORDS, type PersonFact } from './words.ts';

const NAMED = NAME.replaceAll(String.raw`\s`, ' ');
const PATTERNS = [
  // "reply to me, B. Pomfret, on 07700 ...", "I, Arne Folk, would"
  String.raw`(?<!\p{L})(?:(?:to|call|ring|text|contact|ask|reach|phone|email|mail|with|from|an|bei|à|a) (?:me|mich|mir|moi|mí|mij|myself|the undersigned)|I),? \(?(?:${RANK})?(${NAMED})(?=,|\)|\.(?:\s|$)| (?:on|at|under|unter|by|via) )`,
  String.raw`(?:[Qq]ueries|[Qq]uestions|[Ee]nquiries|[Ii]nquiries|[Rr]eplies|[Aa]nswers|[Qq]uotes|[Qq]uotations|[Rr]esponses|[Tt]enders|[Bb]ids|[Cc]orrespondence|[Rr]ückfragen|[Ff]ragen|[Aa]ntworten|[Vv]ragen) (?:please )?(?:go )?(?:to|an|bei|aan|via):? (?:my |our |the )?(?:\p{Ll}+ )?(?:${RANK})?(${NAMED})(?=,|\.(?:\s|$)|\n| \(| on | at |$)`,
  String.raw`(?<!\p{L})(?:calls?|named) me (${NAMED.replace(/\{0,3\}$/, '{1,3}')})(?=[,.)!]|$)`,
].map((pattern) => new RegExp(pattern, 'gu'));

export function toWhom(text: string): PersonFact | undefined {
  for (const pattern of PATTERNS)
    for (const found of text.matchAll(pattern)) {
      const written = found[1] ?? '';
      const name = nameFrom(written, found.index + found[0].lastIndexOf(written));
      if (name && !TITLE_WORDS.test(name.value)) return name;
    }
  return undefined;
}
