/**
 * Words beside a day that say whether the camera is wanted on it: of a row of a list, and of a sentence.
 */
import { anyOf } from '../phrases.ts';

/** Nobody films that day, or somebody else does. */
export const NOT_MINE = new RegExp(
  [
    anyOf(`
  no video/videos/videography/filming/camera/cameras/recording/film/footage/coverage | not filmed/recorded/needed/required/wanted/yours/covered/streamed/you | not be/to_be/being filmed/recorded/needed/required/covered/streamed | nil | nothing for_you/to_film | nobody wants ... filmed
  isn't/aren't/is_not/are_not/won't/needn't to? be? filmed/recorded/covered/needed/required/yours/streamed | don't/do_not/won't/needn't/wouldn't/wouldn't_be need/want/require/needed/wanted it/that/this/you/video/filming/filmed/a_camera/anything | you don't/won't/needn't need/have to? come/film/do | not need/want/require filmed
  which ... don't/do_not need/want | filmed/recorded/covered/done/shot/handled/streamed/video/filming/recording/footage/cameras by the/our/a/an/another/their/his/her/its/somebody/someone/staff | has/have his/her/its/their own camera/crew/team/gopro/photographer/film* | arrival/arrivals/departure/travel/departures/setup/set-up/rehearsal/registration/socials/networking/staff/private/members only | own crew/team/media/photographer/press | on a/the/her/his phone | a crew from
  audio/photo/photos/stills/photographer only | only photo/photos/audio/stills | rain/reserve/backup/weather/spare/contingency/rain-off date/day | only if it/we/the_weather | if needed/required/necessary/it_rains/wet | off, you're released | you rest | you may/can/could/will/would rest/relax/sightsee/be_off/have_off/visit | see gord | is a maybe | been taken | taken by | we've got ... camera/crew/team/operator | we have ... crew
  no ... allowed | is/was/were private | closed to_us/cameras/the_public/press | is/are closed | different/other/another crew/videographer/team/operator/cameraman | we've/we_have someone/somebody | someone/somebody else
  kein/keine/ohne film/video/kamera/medien/foto/aufnahme/aufzeichnung | nur foto | nichts für sie/dich | frei für sie/dich | nicht gefilmt | sans/pas_de captation/vidéo/tournage/caméra | no hace falta | sin vídeo/grabación/cámara | la graba nuestro/nuestra/la/el | geen video/opname/camera
`).source,
    String.raw`\b(?:is|are) off\b(?! (?:limits|at|by|around|about|the)\b)|:\s?(?:none|nil|no|blank|nothing|off)\b|\bno cameras?\b|[(|,\u2013-]\s?no(?:ne)?\s?(?:[,|)]|$)|\bV: blank|\bnot you\b|\bNo (?:Kits?|video)\b|"blank"`,
  ].join('|'),
  'im',
);
export const REFUSAL = new RegExp(`(?:${NOT_MINE.source})[^.;,\\n]{0,24}`, 'gim');
/** A row that begins with one of these is nobody's filming. */
export const OF_THE_DAY =
  /^\s?[\s|:,.\u2013-]*(?:(?:a )?(?:free|rest|dark|travel|day off|off|nil|arrivals?|departure)(?: day)?\b|(?:set|stage|stg|stand) (?:build|bld)|set-?up, (?:in-house|volunteers)|strike\b|bump-?out|get-?out|dismantl\w+|clean-?up|pack-?down|fly home|recce|cancelled|released(?! (?:by|at|around|from)\b)|(?:rain|spare) date|aufbau(?: b\p{L}+)?|abbau|rückbau|bühnenbau|d[ée]montage|montage|montaje|desmontaje|opbouw|afbouw)(?![^\n]{0,40}\b(?:video|camera|you|call)\b)/iu;
/** The camera is wanted: words of a row. */
export const MINE =
  /\(video\)|\bvideo\b(?!\s(?:by|is with))|\bYOU\b|\(you\)|\(yours\)|\byes\b|\bfilmed\b|\bfilm it\b|\bFILM\b|\blivestream\w*\b|\brecorded?\b|\brecord\b|\bcameras?\b|\bfilming\b|\boperator\b|\byou(?:'d|'ll|'re)?\b|\byours\b|\battend\b|\bvid[ée]\w*|\bgefilmt\b|\bkamera\b|\bbuscamos\b|\bcaptation\b|\bcrew (?:in|ready|access|call)\b|\bK\s*$/im;
/** The same in a sentence, where "yes" and "you" say less. */
export const MINE_SAID =
  /\b(?:would|could|can) you (?:film|record|cover|shoot|stream|photograph)\b|\b(?:you'd|you'll|you would|you will|you're|you are) (?:be |need to be |come|film|record|cover|shoot|start|arrive)|\b(?:film|filmed|record|recorded|camera|livestream\w*|video) (?:please|it)\b|\bwe(?:'d| would) (?:like|love)\b|\bwe (?:want|need)\b/i;
/** The camera is wanted, without doubt. */
export const STRONG =
  /\(video\)|\bvideo\s?(?:please|call)|\bYOU\b|\(you\)|\(yours\)|\(FILM\)|[|:]\s?yes\b|\bYES\b|\brecord it\b|\*\s*$|\bvideo: ?\(?(?:you|yes|kit)\b|\bVIDEO\b|\(open\)|\bOPEN\b/m;
/** "(yours)" stands anywhere. */
export const BRACKETED = /\((?:yours|you|video|FILM)\)/;
/** "not the Friday", "nothing on Saturday" */
export const NOT_THE =
  /\b(?:not|nothing(?: at all)?|no (?:film\w*|video|camera|shoot\w*|work)|nobody|(?:don't|do not|won't|needn't) (?:need|want|come)(?: (?:you|it|to come|anything|there|in))?) (?:on |for )?(?:the )?$/i;
/** "Sat is covered" */
export const TAKEN =
  /^\)?(?:'s| is| are) (?:already |all )?(?:covered|sorted|staffed|crewed|filled|taken|spoken for)\b(?! (?:in|by (?:the|your) (?:fee|rate|price)))/i;
/** "nothing on Tuesday morning": the rest of the day may be wanted. */
export const PART_OF_DAY = /^ (?:morning|afternoon|evening|night|lunchtime)\b/i;
/** What counts beside a refusal: not that I am spoken to. */
export const STILL_MINE = /\(video\)|\bYOU\b|\bfilmed\b|\brecord it\b|\bvideo (?:please|call)\b|\bVIDEO\b|\bYES\b/;
/** What says "only" before a day, and of whom or what. */
export const ONLY_LEAD =
  /(?<!\bnot )\b(?:only|just|solely|merely|nur|lediglich|uniquement|seulement|s[oó]lo|solamente|únicamente|alleen|enkel|namely)\b[^.;:!?\n]{0,70}$/iu;
export const ONLY_OF_ME =
  /\b(?:you|you'd|yours?|part|bit|we|video|camera|film\w*|record\w*|need\w*|want\w*|please|sie|dich|brauchen|gebraucht|vidé\w+|cherchons|necesitamos|videógrafo|jij|kit|room|dinner|for us|short|stuck|missing)\b|^\s*(?:and |so |but )?(?:it's |that's |makes it )?(?:only|just|nur|solo|alleen)\b/iu;
export const ONLY_AFTER =
  /^\)?,?\s?(?:(?:the|am|le|el)\s)?(?:(?!(?:is|are|will|has|being|=)\s)\p{L}+\s){0,2}?(?:only|alone|uniquement|seulement|solamente|alleen)\b(?! (?:on |for |the )*(?:mon|tue|wed|thu|fri|sat|sun|\d))(?! (?:with|if|when|because|to|from|at|until|till)\b)|^\.? only that\b/iu;
/** "£450 for the Sunday" */
export const FEE_FOR =
  /(?:[£$€₹]|\b(?:R|Rs\.?|CHF|EUR|USD|NZD|AUD|CAD)\s?)\d[\d\s.,']{0,9}(?:k\b)?(?:\s(?:flat|fixed|total|all in|altogether))?\s(?:for|pour|für|por|voor)\s(?:(?:the|le|la|den|el|de)\s)?$|\d\s?(?:€|euros?|francs?|Franken|pounds|dollars)\s(?:for|pour|für|por|voor)\s(?:(?:the|le|la|den|el|de)\s)?$/iu;
/** "Your days:", "Video required:", "Dates (video):" */
export const LABEL =
  /(?:^|\n|[.;:]\s)[\s*+-]*(?:(?:your (?:days?|dates?|part|bit|shifts?)|the (?:days?|date|night|evening|one)(?: (?:we|i)(?:'d| would)? (?:want|need|like|have in mind)(?: you)?(?: for| on)?)?)(?: (?:is|are|would be|will be|'d be)(?: only| just| simply)?)?|what (?:we|i|they) need (?:from|of) you|video(?: is)?(?: required| needed| wanted| days?| dates?)?(?: on| for)?|(?:dates?|days?) \(video\)|for video|to be filmed|which of these is filmed|needed|you|you,? kit|for you)\s?(?::|-|\u2013|\s{2,})?\s*(?:the [\p{L}\s]{2,24}, )?$/iu;
/** "so it's the Saturday", "what's left for us is Sunday 19 March", "The part that's for you is" */
export const LEFT =
  /\b(?:as of (?:now|today|yesterday|last night|this morning),? it(?:'s| is)|(?:so|and so),? (?:for you )?(?:it's|it is|that's|one shooting day,? on)|(?:what's|what is|that|part that's|bit that's|all that's|the one) (?:left |still open |open |for you|yours|for us)[^.;]{0,16}\bis|makes it|leaves(?: us)?(?: with)?|you(?:'d|'ll) be (?:filming|with us|needed)(?: on| for)?|you're with us(?: on| for)?|(?:the )?(?:moment|part|bit|day|one|event|thing)s? (?:that's )?to be (?:filmed|recorded|covered)(?: is| are)|(?:filmed|recorded|on video|captured|covered) is|has chosen|have chosen|settled on|only runs on|only in use on)\s(?:only |just )?(?:on )?(?:(?:the|[\p{L}\s]{3,48} on) )?$/iu;
export const LEAD_WANTED =
  /\b(?:what|which|all|bit|part)\b[^.;!?\n]{0,50}\b(?:filmed|recorded|film|record|on video|captured|cover)\b[^.;!?\n]{0,12}\bis\b[^.;!?\n]{0,60}$/iu;
/** "that's where you come in", "is the one with" */
export const TAIL_WANTED =
  /^["')]?,?\s?(?:[-\u2013]\s)?(?:(?:and )?that(?:'s| is) (?:the one|where you|what we|yours|you(?! (?:done|finished|free|off|out|released|gone|home|wrapped)\b))\b|(?:\p{L}+)?(?:\s?is|'s) (?:the (?:one|bit|part)|yours|where you|what we)\b|(?:and )?that we'd (?:love|like)|is (?:the one )?(?:what |that )?(?:we|i)(?:'d| would) (?:like|love|want)\b(?! to)|, then\.)/iu;
/** "for Wednesday 12 April we need" */
export const FOR_DAY = /(?:^|[.;:!?,\n]\s?|\bso )for (?:the )?$/i;
export const WE_NEED = /^[^.;!?\n]{0,16}\b(?:we|i|they) (?:need|want|require|seek|look|'d|would)|^ i'd\b|^ we'd\b/i;
/** "except the Wednesday" */
export const EXCEPT =
  /(?<!\p{L})(?:except|excluding|apart from|other than|minus|but not|bar|außer|sauf|excepto|salvo|behalve)\s(?:for\s)?(?:on\s)?(?:(?:the|am|le|el|op)\s)?$/iu;
/** ", which is 7am", " when we start at 10.30", " (8am)": it is the hour that differs on that day. */
export const OTHER_HOUR =
  /^(?:[\s,;:]{0,2}\(|[\s,;:]{1,2}(?:when|which|where|then|it's|starting|at))(?: ?(?:it|is|it's|we|you|you'd|start|starts?|begin|begins?|at|from|then|would|be|will|for)\b){0,6} ?(?:\d{1,2} ?[ap]\.?m\b|\d{1,2}[.:h]\d\d(?!\d)|noon\b|(?<=(?:at|from|is) )\d{1,2}\b)(?! ?(?:to|-|–|until|till)(?!\p{L}))/iu;
/** "Early call on day two only: 6.30am" */
export const OF_AN_HOUR =
  /\b(?:call|start|set-?up|rig(?:ging)?|rehears\w*|finish|wrap|doors|parking|lunch|dinner|breakfast|drinks|drone|livestream|keynote)(?: time)?(?: (?:is|on|for|at|from|\d{1,2}[.:]?\d{0,2} ?[ap]?m?)){0,3} $/i;
export const NEITHER = /\bneither\b|\bnone of (?:them|these|those)\b/i;
