/**
 * An hour that is told of others, of what is not filmed, or of something with hours of its own: "no filming from noon to 1", "TV coverage is from 1",
 * "the hall booking is 9 to 4", "there are stalls from 10 to 6", "we'll be there from 8 to decorate", "we set up the chairs at 9".
 */
import { CLAUSE_BEGINS } from '../parts/sentences.ts';
import type { Where } from './scene.ts';

const AT = String.raw`(?:(?:at|from|between|around|about|before|after|until|till) ){0,2}`;
/** "no filming from", "filming is not allowed before": a call is not told by it. */
const NO_FILMING = new RegExp(
  String.raw`\b(?:no (?:filming|shooting|recording|photography|cameras?)(?: (?:is|are))?(?: (?:allowed|permitted|possible|wanted|needed))?|(?:filming|shooting|recording|cameras?) (?:is|are) (?:not|n't|forbidden|banned|prohibited)(?: (?:allowed|permitted|possible|wanted|needed))?|(?:can't|cannot|mustn't|may not|must not|needn't|don't|do not need to) (?:film|shoot|record)) (?:[\p{L}']+ ){0,3}?${AT}$`,
  'iu',
);
/** "TV coverage is from", "the clay shoot is", "the hall booking is", "I have a job from" */
const OF_ELSE = new RegExp(
  String.raw`\b(?:(?:tv|radio|press|media|photo|clay|pheasant|game|grouse|penalty|turkey) (?:coverage|shoot|shooting|recording)|(?:hall|room|venue|table|hotel|church|court|pitch|van|car|restaurant) (?:booking|hire|rental)|(?:booking|hire) of the [\p{L}-]+|(?:i|he|she|they|my \p{L}+)(?:'ve got|'ve| have| has| got) (?:an? |another |my |their |his |her )?(?:job|shift|gig|booking|class|lesson|meeting|appointment))(?: (?:is|are|runs?|lasts?|goes|would be|will be))? ${AT}$`,
  'iu',
);
/** "and we'd want you for the entire booking" */
const FOR_ME = /^[^.;!?\n]{0,80}\b(?:you|u)\b/i;
/** "From 10 to 6 there are stalls, and" */
const THERE_ARE = /^,? there(?:'s| is| are| will be|'ll be)\b(?![^.,;!?\n]{0,60}\b(?:film\w*|record\w*|cover\w*|video\w*|you|u)\b)/i;
const FROM = /(?:^|[.;:!?\n]\s*)from $/i;
/** What who asks makes ready themselves. */
const THEIR_WORK = String.raw`(?:decorat\w*|bak\w+|cook\w*|lay (?:the )?tables?|put (?:up|out) (?:the |our )?(?:bunting|chairs|tables|stalls|gazebos?|tents?|marquees?|signs?|decorations)|hang (?:the )?(?:bunting|decorations|banners)|blow up (?:the )?balloons|ice the cake|make (?:the )?sandwiches|clean(?: up)?|sweep|do the flowers|arrange (?:the )?flowers)`;
const TO_DO = new RegExp(String.raw`^ (?:to|and) (?:(?:help|start|begin) )?${THEIR_WORK}\b`, 'i');
const WE_SET_UP = new RegExp(
  String.raw`${CLAUSE_BEGINS}(?:we|i|they|the (?:committee|helpers|volunteers))(?:'re|'ll|'d| are| will| would)?(?: be)? (?:set(?:ting)? up|put(?:ting)? (?:up|out)) (?:the |our |all the )?(?:chairs?|tables?|stalls?|marquees?|gazebos?|tents?|bunting|decorations|room|hall|bar|kitchen|barbecue|bbq|tombola|raffle|bouncy castle|exhibition|displays?|buffet) ${AT}$`,
  'iu',
);
/** "Parking costs $3 for two hours from" */
const PAID_FOR = /\b(?:parking|car park|tickets?|entry|admission|meter)\b[^.;!?\n]{0,30}\b(?:costs?|free|charged|paid)\b[^.;!?\n]{0,40}$/i;
const LEAD = 110;

/** True where the words around an hour tell of something that is neither my coming nor my going. */
export function hourOfTheirs(text: string, { start, end, to }: Where & { to?: unknown }): boolean {
  const lead = text.slice(Math.max(0, start - LEAD), start);
  const after = text.slice(end, end + LEAD);
  if (NO_FILMING.test(lead) || (OF_ELSE.test(lead) && !FOR_ME.test(after)) || WE_SET_UP.test(lead) || PAID_FOR.test(lead)) return true;
  return (
    (to !== undefined && FROM.test(lead) && THERE_ARE.test(after)) || (TO_DO.test(after) && !/\b(?:you|u)\b[^.;!?\n]{0,60}$/i.test(lead))
  );
}
