/**
 * Hours from and to that are told of the occasion alone: "brunch 11 til 2", "gallery opening on Friday, 5-8", "free ice cream for the kids from 2 to 5",
 * or of something beside it: "road closures are from 6am to 4pm", "the priest only has an hour, from 1 to 2".
 */
import { sentenceAround } from '../parts/sentences.ts';
import { tellsOfElse } from '../said/tells-of.ts';
import { ofRunningOrder } from './running-order.ts';
import type { Where } from './scene.ts';

const OCCASION =
  /(?<!\p{L})(?:brunch|lunch|luncheon|dinner|supper|opening|formal|prom|vernissage|reception|banquet|barbecue|bbq|picnic|cocktails|drinks|open house|open day|for (?:the |our )?(?:kids|children|guests|public|families|visitors|members))(?!\p{L})/iu;
/** Who films, or what is wanted of me. */
const OF_ME =
  /(?<!\p{L})(?:you|u|your|shoot\w*|film\w*|video\w*|photograph\w*|cam|cameras?|camera\w*|cover\w*|operator|need\w*|want\w*|looking|someone|somebody|coverage|book|hire|stream\w*)(?!\p{L})/iu;
const REACH = 70;
/** A question or a remark that stands between belongs to another thought. */
const LAST_CLAUSE = /[?!]\s|:\s/;

/** True where what leads to the hours names an occasion and nothing of my work. */
export function ofOccasion(text: string, { start, end }: Where): boolean {
  if (ofRunningOrder(text, { start, end })) return true;
  const sentence = sentenceAround(text, start, end);
  const lead =
    text
      .slice(Math.max(sentence.start, start - REACH), start)
      .split(LAST_CLAUSE)
      .at(-1) ?? '';
  return (
    (OCCASION.test(lead) || tellsOfElse(text, start)) &&
    !OF_ME.test(lead) &&
    !OF_ME.test(/^[^,;.?!]*/.exec(text.slice(end, Math.min(sentence.end, end + AFTER)))?.[0] ?? '')
  );
}
const AFTER = 16;
