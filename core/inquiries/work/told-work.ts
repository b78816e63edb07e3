/**
 * Work that is told by what it does and not by its name: pictures that reach somebody who cannot come, a hand that picks the picture for the
 * screen, a camera beside the sender's own, a sound without a picture.
 */
import type { Role } from '../../contract/parts.ts';
import type { RoleHit } from './role-words.ts';

/** Somebody cannot be there, or is far away. */
const FAR =
  /(?<!\p{L})(?:(?:can't|can ?not|cant|couldn't|could not|unable to|not able to|won't(?: be able to)?|(?:isn't|aren't) (?:able|allowed) to|(?:is|are) not (?:able|allowed) to|too (?:old|ill|frail|far|poorly|sick|weak|young|busy) to|not allowed to)(?: (?:all|even|any longer|any more|now|always|really|physically|just|possibly))? (?:come|travel|be (?:there|with|moved|present|here|at)|get (?:there|here|to|out|away|down|up|over|home|leave)|leave|make (?:it|the)|attend|fly|drive|go|join|sail|cross|reach)|(?:without|instead of) (?:having to )?(?:leav|travel|com|driv|fly|go)\p{L}*|abroad|overseas|back home|far away|housebound|bedbound|bedridden|in (?:the )?hospital|in (?:a|the|their) (?:hospice|care home|nursing home)|at sea|(?:on|from) the other side of|hours? away|from (?:home|afar|bed)|(?:stuck|stationed|posted|stranded|scattered|spread|deployed|in quarantine) (?:in|on|at|over|across|all over|out)|(?:is|'s|are|'re|lives?|works?) (?:out |down |up |over )?(?:in|on|at) (?!the (?:hall|church|school|venue|room|stage|back|front|building|afternoon|morning|evening|same)(?!\p{L}))\p{Lu}\p{L}+(?! (?:hall|church|park|road|street|house|hotel|castle|school|club|barn)(?!\p{L})))(?!\p{L})/giu;
/** At the moment at which it happens; "people who live there" is nothing of it. */
const NOW = String.raw`(?:(?<!(?:who|they|we|i|you|people|parents|family|relatives|that|where|also|all|still|to) )live(?! (?:in|at|near|on (?:a|an|the) (?!web|net|internet)|abroad|far|away|there|here|alone|too|with|nearby|band|bands|music|act|acts|set|audience|show|performance)(?!\p{L}))|as (?:it|they|he|she)(?:'s| is|'re| are)? (?:happen|go|being|unfold|sing|sung|speak|spoken|play|said|say|read|happening|given|done|held)\p{L}*|as (?:the|our|their|his|her|my) \p{L}+(?: is| are)? (?:sing|play|speak|happen|unfold|perform|compete|race|walk|danc|say|said|read|go)\p{L}*|while (?:it|they|he|she)(?:'s| is|'re| are) (?:going|happening|being|still|sung|singing|playing|speaking|on)(?! away)|in real time|there and then|then and there|at the (?:same|very) (?:time|moment|instant)|the (?:very )?(?:moment|minute|second|instant) (?:it|they|he|she) |simultaneously)(?!\p{L})`;
/** To have it seen by somebody at that moment. */
const SEEN_NOW = new RegExp(
  String.raw`(?<!\p{L})(?:watch\p{L}*|see|sees|follow\p{L}*|hear|attend|join|witness|share|enjoy|experience|get|getting|send|sending|sent|bring|bringing|brought|show|showing|shown|put|putting|beam\p{L}*|pip(?:e|es|ed|ing)|carry|carried|reach|have|come|be|part of)(?!\p{L})[^.;!?\n]{0,90}?(?<!\p{L})${NOW}|(?<!\p{L})(?:an?|some) (?:(?:proper|decent|simple|good|real|little|small|live|reliable) )?broadcast(?!er|ing|[ -]quality|\p{L})`,
  'giu',
);
/** What is seen when it is over is a film. */
const SEEN_LATER = /(?<!\p{L})(?:later|afterwards?|recording to|on dvd|by post)(?!\p{L})/iu;
/** So far apart may be who cannot come and how it reaches them. */
const NEAR = 260;

const IMAGE = String.raw`(?:pictures?|cameras?|cams?|shots?|images?|angles?|feeds?|views?|sources?|faces?)`;
const PICKS = String.raw`(?<!\p{L})(?:choos(?:e|es|ing)|pick(?:s|ing)?(?: out)?|select(?:s|ing)?|decid(?:e|es|ing)|determin(?:e|es|ing)|judg(?:e|es|ing)|jump(?:s|ing)?|flip(?:s|ping)?|swap(?:s|ping)?|toggl(?:e|es|ing))(?!\p{L})`;
const ON_SCREEN = String.raw`(?:screens?|(?:for|in|into) the (?:stream|broadcast|webcast|transmission)|(?:on|onto) the wall|monitors?|projector|(?:room|hall|audience|public|viewers?|crowd|people|folk|guests|everyone|everybody) (?:sees?|gets? to see|watch(?:es)?|looks? at)|go(?:es|ing)? (?:out|up|on|to|live|onto|through)|desk|console|control panel|on air|output|buttons|recorder|in the (?:van|truck|booth))`;
/** A hand that picks the picture: "choosing which camera goes to the screens", "decides whose picture the room sees", "deciding what goes up on the wall". */
const PICKS_PICTURE = new RegExp(
  [
    String.raw`${PICKS}[^.;!?\n]{0,40}?(?<!\p{L})${IMAGE}(?!\p{L})[^.;!?\n]{0,60}?(?<!\p{L})${ON_SCREEN}(?!\p{L})`,
    String.raw`(?<!\p{L})${ON_SCREEN}(?!\p{L})[^.;!?\n]{0,60}?${PICKS}[^.;!?\n]{0,40}?(?<!\p{L})${IMAGE}(?!\p{L})(?: (?:for|on|onto|to|in|into) the \p{L}+)?`,
    String.raw`${PICKS} (?:what|who|whose \p{L}+|which(?: one| \p{L}+)?) (?:goes|gets|comes|appears|is|shows|we see|they see) (?:[^.;!?\n]{0,20} )?(?:up|on|onto|to|out)(?!\p{L})[^.;!?\n]{0,24}?(?<!\p{L})(?:screens?|wall|monitors?|air|projector|display)(?!\p{L})`,
  ].join('|'),
  'giu',
);
/** Pictures for a book or a site are picked too. */
const FOR_PRINT = /(?<!\p{L})(?:album|book|website|brochure|leaflet|poster|print|gallery)(?!\p{L})/iu;

/** The sender or somebody by name is behind a camera already. */
const FILMER =
  /(?<!\p{L})(?:i(?:'m| am|'ll be) (?:the )?(?:lead|main (?:camera|cam|shooter)|on (?:the )?(?:main|stage|front|wides?|close-?ups?|a-?cam)|filming it|shooting it|covering it|behind (?:the )?(?:main|my))(?!\p{L})|i(?: have|'ve got|'ve|'ll have|'ll take|'ll do|'ll cover| film| shoot| cover| do| take) (?:the |all the )?(?:stage|front|altar|close (?:work|stuff|ones)|close-?ups|main (?:camera|cam|angle)|bride(?: prep|'s side)?|weddings)(?!\p{L})|(?:bride|groom|bridal)(?:'s)? prep (?:for|is) me(?!\p{L})|(?:i've|we've|i have|we have) (?:sold|promised|quoted) (?:them|him|her|the \p{L}+) (?:two|2) (?:angles|cameras|shooters|cams)|(?:we|i|they)(?: have|'ve got| got) (?:a|one|1|the) camera on (?:him|her|them|it|the)(?!\p{L})|(?:an?|one) (?:operator|shooter|camera|cameraman|camera op) (?:short|down)(?!\p{L})|(?:he|she|i|they) (?:can't|cannot) be in two places|(?:only )?(?:got |have )?(?:the )?(?:just )?one (?:pair of (?:legs|hands|eyes)|of me)(?!\p{L}))/iu;
const FILMER_BY_NAME =
  /(?<!\p{L})(?!(?:You|Who|That|It|There|What|Which|Nobody|Someone|Kit)(?!\p{L}))\p{Lu}[\p{L}'-]{1,14}(?: \p{Lu}[\p{L}'-]{1,14})?(?:'s| is| will be) (?:filming|shooting|on (?:the )?main (?:camera|cam))(?!\p{L})/u;
/** What is left for me: a side, a place, what the other does not see. */
const MY_SHARE =
  /(?<!\p{L})(?:you(?:'d| would|'ll| will)(?: be)? (?:have|get|take|cover|do|hold|up|down|under|beside|next to|roaming|floating)|(?:want|like|need|have)(?: is)? you (?:up|down|over|in|on|at|roaming|floating|picking|holding)|(?:prep|side|aisle|end) (?:for|is) you|(?:haven't|have not|don't have|do not have) (?:got )?(?:is )?(?:someone|somebody|anyone|one)(?: on| beside| at|$)?|next to me|alongside me)(?!\p{L})/iu;
/** "I'm told you don't mind being the other one", "whatever I'm not pointing at" */
const THE_OTHER =
  /(?<!\p{L})(?:be(?:ing)? (?:the |t'|my )?other (?:one|angle|camera|shooter|pair of (?:eyes|hands))|(?:whatever|everything|anything|wherever|what) (?:i'm|i am|he's|she's|we're) not (?:pointing|filming|shooting|covering|looking|getting)|(?:whatever|everything|anything|what) (?:i|he|she|we) (?:can't|cannot|don't|miss(?:es)?)(?: (?:see|get|catch|cover|reach))?(?= ?[.,;!?)]|$))(?!\p{L})/giu;

/** No picture at all is wanted, said of the whole job: the sentence ends there. */
const NO_PICTURE =
  /(?<!\p{L})(?:(?:no (?:cameras?|pictures?|filming|video|images?)(?: work| at all| of any (?:kind|sort)| whatsoever| needed| required| involved| wanted| necessary| allowed| please| for this| here)*|there (?:is|'s|will be) (?:to be )?no camera|(?:not to|not) (?:film|shoot|filming|shooting)(?: anything| it| this)?|(?:don't|do not|won't|needn't) (?:need|want|have) (?:any )?(?:to (?:film|shoot)(?: anything)?|cameras?|pictures?|video|filming))(?= ?(?:[.,;:!?()\n–-]|$|and (?:no|nothing|not)(?!\p{L})))|a camera would be (?:a |an )?\p{L}+|(?:nothing|little|not much|nowt) (?:at all |much |really )?(?:there |being )?to (?:look at|see|watch)|only have ears)(?!\p{L})/giu;
/** Sound by any of its names. */
const OF_SOUND =
  /(?<!\p{L})(?:for sound|the sound|sound only|audio(?! guide)|microphones?|mics?|voice|voices|tracks?|podcast|talking book|acoustics?|reverb)(?!\p{L})/iu;
/** "to be recorded for sound", "his voice taken down" */
const TAKEN_AS_SOUND =
  /(?<!\p{L})(?:(?:record|tape|capture|take|get|keep|preserve)(?:ed|d|s|n|ing)?(?: \p{L}+){0,4} (?:for|as|in|on) (?:sound|audio)(?! (?:and|&|or) (?:video|picture|vision|film|image))|(?:voices?|singing|reading|bells?|organ|choir|instruments?)(?: \p{L}+)? (?:to be )?(?:taken down|recorded|captured|preserved)[^.;!?\n]{0,30}(?<!\p{L})microphones?)(?!\p{L})/giu;

/** "a person who backs everything up", "needs a lamp person": hands that no camera has. */
const HANDS =
  /(?<!\p{L})(?:(?:somebody|someone|a person|a body|anyone|one|a pair of hands|a helper)(?: [^.;!?\n,]{0,40}?)? (?:to|who|that|can|will) (?:just |only |simply )?(?:(?:backs? up|cop(?:y|ies)|offloads?|ingests?|wrangles?) (?:[^.;!?\n,]{0,16} )?(?:cards?|drives?|footage|media|files|data|everything|rushes|disks?)(?!\p{L})|(?:holds?|sets?(?: up)?|places?|moves?|rigs?) (?:the |a |my |our |some )?(?:lights?|lamps?|reflector|umbrella)|pulls? focus|pulls? cables?|carr(?:y|ies) (?:the )?(?:gear|kit|bags|tripods?)|dims? the lights|runs? the slides|clicks? the slides)|(?:lamp|cable|slides|reflector) (?:person|hand|hands|man|woman|bod|lad|lass|wrangler|holder))(?!\p{L})/giu;

type Told = { role: Role; found: RegExpMatchArray };

const first = (role: Role, text: string, pattern: RegExp, holds: (found: RegExpMatchArray) => boolean = () => true): Told[] => {
  const found = [...text.matchAll(pattern)].find((one) => holds(one));
  return found ? [{ role, found }] : [];
};

/** Whether no picture at all is wanted. */
export const noPicture = (text: string): boolean => text.search(NO_PICTURE) >= 0;

/** Kinds of work that are told by what they do. */
export function workTold(text: string): RoleHit[] {
  const far = [...text.matchAll(FAR)].map(({ index }) => index);
  const live = first(
    'livestream',
    text,
    SEEN_NOW,
    ({ index = 0, 0: { length } }) =>
      far.some((at) => Math.abs(at - index) <= NEAR) && !SEEN_LATER.test(text.slice(index, index + length + 40).split(/[.!?\n]/)[0] ?? ''),
  );
  const mixing = first('vision mixing', text, PICKS_PICTURE, ({ 0: hit }) => !FOR_PRINT.test(hit));
  const other = first('second camera', text, THE_OTHER);
  const share = MY_SHARE.exec(text);
  const filmer = FILMER.exec(text) ?? FILMER_BY_NAME.exec(text);
  const beside = other.length === 0 && share && filmer ? [{ role: 'second camera' as const, found: share }] : other;
  const sound =
    noPicture(text) && OF_SOUND.test(text)
      ? [{ role: 'audio' as const, found: OF_SOUND.exec(text) as RegExpMatchArray }]
      : first('audio', text, TAKEN_AS_SOUND);
  const hands = first('other', text, HANDS);
  return [...live, ...mixing, ...hands, ...sound, ...beside].map(({ role, found }) => {
    const start = found.index ?? 0;
    return { role, start, end: start + found[0].length, text: found[0], plainly: true };
  });
}
