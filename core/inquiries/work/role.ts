/**
 * What is asked of me: cameras, second camera, mixing, streaming, photographs, sound, an edit of pictures that exist.
 */
import { changesArranged } from './arranged.ts';
import { OCCASION } from '../occasions.ts';
import { anyOf } from '../phrases.ts';
import { editAsked } from './edit.ts';
import { Standing, standingOf } from './role-asked.ts';
import { workWords, type RoleHit } from './role-words.ts';
import { noPicture, workTold } from './told-work.ts';

type Asked = RoleHit & { standing: number; lost: boolean; general: boolean };

const JOINED = /^,? ?(?:and|or|&|\+|\/|und|et|y|oder|ou|o)(?: (?:also|to|take|taking|some|a|do|maybe|perhaps|the|it))* ?$/i;

/** What an edit makes. */
const RESULT = /^(?:films?|videos?|vids?|highlights? reels?|sizzle reels?)$/i;
/** "Could you film our gala": the deed, and no film that exists. */
const BEFORE_DEED = /(?<!\p{L})(?:you|u|to|please|pls|just|also|and) $/iu;
const AFTER_DEED =
  /^ (?:our|the|my|your|his|her|their|it|this|that|these|those|next|a|an|some|all|both|one|two|us|me|them|him|at)(?!\p{L})/iu;
const isResult = (text: string, { text: word, start, end }: RoleHit): boolean =>
  RESULT.test(word) && !(BEFORE_DEED.test(text.slice(Math.max(0, start - 10), start)) && AFTER_DEED.test(text.slice(end, end + 10)));
/** What is edited, and what it shows. */
const MADE_OF =
  /^(?:footage|recordings?|reels?|highlights?|interviews|content|promo|talking heads|filmed|recorded|captured|covered|recaps?.*|sizzle.*)$/i;
const BOTH =
  /(?<!\p{L})(?:or|and|need|want|take|do|like) both(?! (?:days|nights|evenings|mornings|dates|of (?:the|us|them|those)|sessions|shows|performances|games|matches|halves|on|in|at|\d))(?!\p{L})/iu;
/** "Which would you rather?", "you can have either": one of several. */
const EITHER =
  /(?<!\p{L})(?:which(?:ever)?(?: (?:one|of (?:them|these|those|the two)))? (?:you'd|would you|you would|do you|you) (?:rather|prefer|like|fancy|want)|take your pick|(?:your choice|you choose)|(?:have|take|do) either)(?!\p{L})/iu;
/** Between several of them the reader may choose, as it is said right behind them. */
export function isChoice(text: string, hits: readonly { start: number; end: number }[]): boolean {
  const end = Math.max(...hits.map((hit) => hit.end));
  const start = Math.min(...hits.map((hit) => hit.start));
  return (
    hits.length > 1 &&
    (EITHER.test(text.slice(end, end + CHOICE_REACH)) || EITHER_OF.test(text.slice(Math.max(0, start - EITHER_REACH), start)))
  );
}
/** "either vision mixing or camera 2" */
const EITHER_OF = /(?<!\p{L})(?:either|entweder|soit|ofwel|o bien)(?: \p{L}+){0,4} $/iu;
const EITHER_REACH = 40;
const CHOICE_REACH = 120;
/** "Actually no, scratch that": what stands before it is taken back. */
const TAKEN_BACK =
  /(?<!\p{L})(?:scra(?:tch|p) that|strike that|make that|ignore that|forget that|no wait|actually no|change of plan|correction|on second thoughts?)(?!\p{L})/giu;
/** "a drone... no, scrap that" */
const JUST_TAKEN_BACK =
  /^[\s.,–—-]{1,6}(?:(?:no|oh|actually|sorry|wait|well),? ){0,3}(?:scra(?:tch|p)|strike|ignore|forget) that(?!\p{L})/iu;
const WHERE =
  /^ ?(?:for|at|on|during|while|für|pour|para|per|voor) (?:a|an|our|the|my|their|his|her|one|two|\d+|un|une|una|eine|einen|een|unsere|unseren|notre)(?: [^.;!?\n]{0,50})?$/i;

/** Each kind of work that is named and not another's, where it is asked for most plainly. */
function standings(text: string): Asked[] {
  const taken: RoleHit[] = [];
  const stands: Asked[] = [];
  for (const word of workWords(text)) {
    if (taken.some((other) => word.start < other.end && word.end > other.start)) continue;
    taken.push(word);
    const said = standingOf(text, word);
    const lost = said === Standing.lacked;
    const standing = lost ? Standing.wanted : said;
    stands.push({
      ...word,
      plainly: word.role !== 'shoot' && word.weight === 'plain' && said >= Standing.mine,
      standing,
      lost,
      general: word.weight !== 'plain' && !(word.weight === 'loose' && standing >= Standing.wanted),
    });
  }
  stands.sort((a, b) => a.start - b.start);
  // "Our mixer is ill ... the mixer's desk": what was asked for first is not taken back by what is said of it later.
  const refused = new Set(
    stands
      .filter((one, at) => one.standing === Standing.not && !stands.slice(0, at).some(({ role, lost }) => role === one.role && lost))
      .map(({ role }) => role),
  );
  const named = stands.filter(({ standing }) => standing > Standing.none);
  for (const [at, hit] of named.entries()) {
    const next = named[at + 1];
    if (!next || next.role === hit.role) continue;
    const between = text.slice(hit.end, next.start);
    // "film or take photos", "photo and video": what is said of one is said of both.
    if (JOINED.test(between)) hit.standing = next.standing = Math.max(hit.standing, next.standing);
    // "an audio person for a taping": the one is wanted, the other is where.
    else if (hit.standing >= Standing.wanted && !hit.general && WHERE.test(between))
      next.standing = Math.min(next.standing, Standing.named);
    // "stills camera", "one-camera livestream": one thing.
    else if (/^[ -]$/.test(between)) for (const one of [hit, next]) if (one.role === 'shoot') one.general = true;
  }
  const back = [...text.matchAll(TAKEN_BACK)].at(-1)?.index ?? -1;
  const hits = new Map<string, Asked>();
  for (const hit of named) {
    const retracted =
      JUST_TAKEN_BACK.test(text.slice(hit.end, hit.end + 40)) ||
      (hit.start < back && stands.some((one) => one.start > back && one.role === hit.role && one.standing === Standing.not));
    if (retracted || (refused.has(hit.role) && hit.role !== 'shoot' && hit.role !== 'second camera' && hit.standing < Standing.mine))
      continue;
    const key = `${hit.role} ${hit.general}`;
    const known = hits.get(key);
    if (!known || hit.standing > known.standing) hits.set(key, hit);
  }
  return [...hits.values()];
}

/** "I don't need you behind a camera", "no camera this time" */
const NO_CAMERA =
  /(?<!\p{L})(?:(?:don't|do not|won't) (?:need|want) you (?:behind|on|with|at) (?:a|any|the|your) camera|no (?:camera|filming)(?: work)?(?: for you)? this time)(?!\p{L})/iu;
/** Whether a kind of work is named only as another's or as not wanted. */
export function isRefused(text: string, role: RoleHit['role']): boolean {
  if (role === 'shoot' && NO_CAMERA.test(text)) return true;
  const said = workWords(text)
    .filter((word) => word.role === role && word.weight === 'plain')
    .map((word) => standingOf(text, word));
  return said.length > 0 && said.every((standing) => standing === Standing.not);
}

/** Kinds of work that are asked for or named, each once. */
export function rolesIn(text: string): RoleHit[] {
  const edit = editAsked(text);
  const roles = new Map([...(edit ? [edit.hit] : []), ...standings(text)].map((hit) => [hit.role, hit]));
  return [...roles.values()];
}

/** What is to be handed over says little of who is asked for. */
const HANDED_OVER = /\bdeliverables?\s?[:=-][^\n.]*/gi;

/** A drone "and one ground camera", "2 cameras, 1" drone: one of the cameras. */
const AND_CAMERA = /^ (?:and|&|\+|plus) [^.;!?\n]{0,20}(?<!\p{L})(?:cam(?:era)?s?|videographer|camera (?:op|person))(?!\p{L})/iu;
const CAMERA_AND =
  /(?<!\p{L})(?:cam(?:era)?s?|videographers?),? (?:(?:and|&|\+|plus|with|mit|et|y) )?(?:\d |an? |one |ein(?:e|er)? |une? |the )?$/iu;
/** To record is to record sound where sound is what is asked for. */
const RECORDS = /^record/i;
/** "one more camera operator", "an extra shooter" */
const MORE = /^(?:an? )?(?:extra|additional|spare|(?:one|1) more)[ -]/iu;
/** Whoever films asks for one beside them. */
const SENDER_FILMS =
  /(?<!\p{L})(?:i(?:'m| am|'ll be| will be)?(?: \p{L}+)? (?:main|lead|a-?cam|shooting|filming|shoot|film|cover)|my (?:own |main )?(?:camera|a-?cam)|(?:second|2nd|b) (?:camera|cam|shooter|angle)|multi-?cam|you'd be (?:the|our|an?) (?:extra|additional)|(?:next to|alongside|beside|with) (?:me|us|our|my)|join (?:me|us|our|my)|already (?:have |has |got )?(?:a|an|our|the) [^.;!?\n]{0,30}(?:doing|on|covering|filming|shooting)|main (?:video|camera|cam|film))(?!\p{L})/iu;
/** "two fixed" cameras */
const COUNTED = /(?<![\p{L}\d])(?:\d|one|two|three|four|five|single|eine|zwei|drei|vier|une|deux|trois)(?:[ -]fixed)?[ -]$/iu;

/** "photos and a bit of video", "video + photo": both are meant. */
const beside = (text: string, one: Asked, other: Asked): boolean => {
  const between = text.slice(Math.min(one.end, other.end), Math.max(one.start, other.start));
  return between.length < 30 && /^[^.;!?\n]*(?:\+|&|\/|\b(?:and|or|plus|und|oder|et|ou|y|o|en|of)\b)[^.;!?\n]*$/i.test(between);
};

/**
 * The one role that a message asks for; more than one where it cannot be told. Work that is told by what it does stands where no other than
 * filming is named, and beside filming that is asked of me in so many words.
 */
export function roleAsked(message: string): RoleHit[] {
  const text = message.replace(HANDED_OVER, (listed) => ' '.repeat(listed.length));
  const others = workWords(text).filter((word) => word.weight === 'plain' && standingOf(text, word) <= Standing.none);
  // "The university's media team will put it out live": another does it.
  const told = workTold(text).filter(
    (one) => !others.some(({ role, start, end }) => role === one.role && start < one.end && end > one.start),
  );
  // "choose the pictures for the stream": no other work than that.
  const named = roleNamed(text).filter((hit) => !told.some(({ start, end }) => hit.start >= start && hit.end <= end));
  if (named.some(({ role }) => role !== 'shoot') && !named.every(({ general }) => general))
    return named.map((hit) => (told.some(({ role }) => role === hit.role) ? { ...hit, plainly: true } : hit));
  if (told.length > 0) return [...named.filter(({ standing }) => (standing ?? 0) >= Standing.lacked), ...told];
  return noPicture(text) ? named.filter(({ standing }) => (standing ?? 0) > Standing.named) : named;
}

/** The roles that are asked for by a name. */
function roleNamed(text: string): (RoleHit & Partial<Asked>)[] {
  const asked = standings(text);
  const plain = asked.filter(({ general }) => !general);
  const edit = editAsked(text);
  const filming = plain.filter(
    ({ role, text: word }) => role === 'vision mixing' || (role === 'shoot' && !(edit?.plainly && RESULT.test(word))),
  );
  const others = plain.filter(({ role }) => role !== 'shoot');
  // "You'd mix audio": what I am to do is said, and an edit is only named.
  const done = others.some(({ standing }) => standing >= Standing.mine);
  const shooting = asked.some(
    (hit) => hit.role === 'shoot' && hit.standing >= Standing.wanted && !isResult(text, hit) && !MADE_OF.test(hit.text),
  );
  if (
    edit &&
    (edit.unsaid
      ? others.length === 0 && (edit.alone || !shooting)
      : edit.alone || (edit.filmed && !shooting) || (filming.length === 0 && !done && (edit.plainly || !shooting)))
  )
    return [edit.hit];
  // A second camera or a mixer stands for the filming that is named beside it.
  // "video, photography or both"
  if ((BOTH.test(text) || isChoice(text, plain)) && plain.length > 1) return plain;
  const most = (hits: readonly Asked[]): Asked[] => {
    const best = Math.max(...hits.map(({ standing }) => standing));
    return hits.filter(({ standing }) => standing === best);
  };
  const first = most(others);
  const filmed = Math.max(0, ...plain.filter(({ role }) => role === 'shoot').map(({ standing }) => standing));
  const strong = first.filter(
    ({ role, standing }) =>
      (role === 'vision mixing' || role === 'second camera') && (standing > Standing.context || filmed < Standing.wanted),
  );
  // "one more camera": the second one or any.
  const [more] = strong;
  if (more && strong.length === 1 && MORE.test(more.text) && !SENDER_FILMS.test(text)) return [more, { ...more, role: 'shoot' }];
  if (strong.length > 0) return strong;
  const best = most(plain.length > 0 ? plain : asked);
  // "Livestream (1 camera)": how large it is.
  const streamed = best.find(({ role }) => role === 'livestream');
  if (
    streamed &&
    best.every((hit) => hit === streamed || (hit.role === 'shoot' && COUNTED.test(text.slice(Math.max(0, hit.start - 20), hit.start))))
  )
    return [streamed];
  const shot = best.find(({ role }) => role === 'shoot');
  // Who shoots video is asked to, where other work is only named and not beside it.
  if (shot && best.length > 1 && shot.standing <= Standing.named && !best.some((hit) => hit !== shot && beside(text, shot, hit)))
    return [shot];
  const sound = best.every(({ role }) => role === 'audio');
  const general = asked.find((hit) => hit.general && hit.role === 'shoot' && !(sound && RECORDS.test(hit.text)));
  if (
    general &&
    best.every(({ role, standing }) => role !== 'shoot' && standing <= (role === 'photo' ? Standing.context : Standing.named)) &&
    best.every((hit) => hit.standing < general.standing)
  )
    return [general];
  // "coverage with drone and one ground camera": the drone is one of the cameras.
  const only = best.find(({ role, text: word }) => role === 'other' && /^drones?$/i.test(word));
  if (only && best.every((hit) => hit === only || hit.role === 'shoot')) {
    const ground = asked.find(
      (hit) =>
        hit.role === 'shoot' &&
        hit.standing >= Math.min(only.standing, Standing.wanted) &&
        (beside(text, only, hit) ||
          AND_CAMERA.test(text.slice(only.end, only.end + 40)) ||
          CAMERA_AND.test(text.slice(Math.max(0, only.start - 40), only.start))),
    );
    if (ground) return [ground];
  }
  return best;
}

/** I am asked for by what I am: free, booked, wanted there. */
const ASKED_FOR = anyOf(
  `are/r you/u/ya ... free/available/about/around/open/good/right/up_for | {you} free/available/about/around/open | free/available for/on/to | availability | book/booking/hire/have/get/like/love/want/wants/need/needs/engage/pencil/use you | you back | do {you} still? do | could/can/would/will {you} ... come/be/do/cover/make/consider | you'd/you_would be/come/arrive/start | fancy | interested | keen | come for`,
  { you: `you | u | ya` },
);
/** Words of work other than filming that no list tells apart: nothing is taken for granted beside them. */
const OTHER_WORK = anyOf(
  `host | hosting | mc | emcee | compere | speak at/to/on/for | give/giving a/the/our talk/speech/lecture/keynote | sit/be/sitting on a/our/the panel | panellist | panelist | as a/our? guest/speaker | drive/driving a/the/our | lend | rent | borrow | your/his/her camera/cameras/gear/kit/drone/van/lens/lenses/tripod | invite/inviting/invited you | volunteer/volunteers to/for/who | teach* | judge | judging panel | tutor* | lesson/lessons | mentor* | consult* | advise us | internet | online | live on/to | web | watch from/along | lights | lighting | graphics | playback | slides | chat | monitor* | no video/filming/camera/recording | not camera/filming/video | position | role | montage | montar | monter | draaien`,
);
/** "We need a rigger": somebody by a name that says nothing of filming. */
const SOMEBODY =
  /(?<!\p{L})(?:need|needs|want|wants|looking for|seeking|require|find|short of) (?:an?|someone|somebody|anyone|two|another) (?!(?:answer|yes|no|quote|price|name|reply|response|decision|few|couple|bit|copy|record\p{L}*|link|pro|real|proper|person|firm|clear|quick|ballpark|rough|final|definite|simple|good|nice|short)(?!\p{L}))/iu;
/** Beside these only who is asked for by name is asked to film. */
const OTHER_MAYBE = anyOf(`edit* | cut | subtitle* | sound | rig | rigging | desk | screens | crew | tech* | op | ops | second | live`);

/**
 * Who wants a videographer at an occasion, and says no more, wants it filmed.
 * @param whole the text with all that is quoted in it, where other work may be named
 */
export function filmedUnsaid(text: string, whole: string): RoleHit[] {
  const occasion = OCCASION.exec(text);
  if (
    !occasion ||
    changesArranged(text) ||
    OTHER_WORK.test(whole) ||
    SOMEBODY.test(whole) ||
    workWords(whole).some(({ role }) => role !== 'shoot')
  )
    return [];
  if (OTHER_MAYBE.test(text) && !ASKED_FOR.test(text)) return [];
  return [{ role: 'shoot', start: occasion.index, end: occasion.index + occasion[0].length, text: occasion[0], unsaid: true }];
}
