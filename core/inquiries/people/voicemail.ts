/**
 * Who rang, as the note of a call tells it: "Voicemail, 2:14p, Lorraine Pettibone (sp?), (310) ...", "Missed call. Lady named Gwen Pasternak".
 */
import { OCCASION } from '../occasions.ts';
import { RANK } from './ranks.ts';
import { nameFrom, ORG_WORDS, TITLE_WORDS, type PersonFact } from './words.ts';

/** What the note is of stands in its first words. */
const CALL =
  /^[^\n]{0,24}?(?<!\p{L})(?:voice ?mail|vm|missed call|phone message|phone call|telephone message|answer(?:ing )?(?:machine|phone)|mailbox|anrufbeantworter|messagerie|buzón)(?!\p{L})/iu;
/** Only two names and more are somebody for certain. */
const WHOLE = String.raw`\p{Lu}\p{Ll}[\p{L}'-]{0,20}(?: (?:van|von|de|der|den|da|di|del|la|le|al|ap|ter))?(?: (?:van |von |de |der |den |da |di |del |la |le )?\p{Lu}[\p{L}'-]{1,24}){1,2}`;
const CALLER = [
  // "from a Mr Joost Terhaar", "by a lady called Gwen Pasternak"
  String.raw`(?:from|by) (?:an? (?:\p{Ll}+ )?)?(?:${RANK})?(${WHOLE})(?=[,.;:(]| \(| (?:at|of|from|with|who|for|on|about)(?!\p{L}))`,
  // "Woman, Yolanda Brightwater", "Bloke, Clem Rutherglen, sounds about 70"
  String.raw`(?<!\p{L})(?:[Ll]ady|[Ww]oman|[Mm]an|[Bb]loke|[Gg]uy|[Gg]entleman|[Gg]ent|[Cc]hap|[Ff]ell(?:ow|a)|[Ll]ad|[Gg]irl|[Pp]erson|[Cc]aller)(?: (?:named|called|by the name of|is|was)|,|:)? (?:${RANK})?(${WHOLE})(?=[,.;:(]| \(| (?:at|of|from|with|who|wants|needs|would|has|is|calling)(?!\p{L}))`,
  // "Voicemail, 14:10. Mr Archie Dunsmore, he's the secretary", "2:14p, Lorraine Pettibone (sp?), (310)"
  String.raw`[\d apm][,.:;-] (?:${RANK})?(${WHOLE})(?: \((?:sp|spelling)\??\))?(?:, (?:he|she)(?:'s| is|'d)| (?:wants|needs|is looking|would like|has)(?!\p{L})|,? \(?\+?\d[\d ().-]{6})`,
].map((pattern) => new RegExp(pattern, 'gu'));
/** Who rang is said first. */
const REACH = 240;

export function callerIn(body: string, isTown: (name: string) => boolean): PersonFact | undefined {
  const text = body.slice(0, body.length - body.trimStart().length + REACH);
  if (!CALL.test(text.trimStart())) return undefined;
  for (const pattern of CALLER)
    for (const found of text.matchAll(pattern)) {
      const written = found[1] ?? '';
      const name = nameFrom(written, found.index + found[0].indexOf(written));
      if (name && !ORG_WORDS.test(name.value) && !TITLE_WORDS.test(name.value) && !OCCASION.test(name.value) && !isTown(name.value))
        return name;
    }
  return undefined;
}
