/**
 * Towns of which their own clause says that the job is there ("the party's in Lewes", "you'd film the interviews in Keighley"), and towns that are
 * only on the way ("you are picked up in Bern").
 */

const OCCASION = String.raw`(?:wedding|party|do|gala|show|concert|gig|game|match|race|festival|conference|congress|seminar|symposium|workshop|reunion|funeral|ceremony|shoot|filming|job|event|meeting|launch|opening|contest|final|tournament|awards?|dinner|ball|retreat|offsite|camp|exhibition|fair|parade|play|musical|recital|christening|one (?:i|we) want \w+|mariage|fête|concert|tournage|spectacle|hochzeit|feier|konzert|dreh|boda|fiesta|concierto|rodaje|matrimonio|bruiloft|feest)`;
const HELD = new RegExp(
  String.raw`(?<!\p{L}|\b(?:hen|stag|previous) )${OCCASION}s?(?:'s| is| are| will be| would be| takes? place| happens?| est| ist| es| será| sera| findet)(?: (?:being|now|all|to be|going to be|be)){0,2}(?: (?:held|hosted|played|staged|run|happening|taking place|put on))?(?: again| (?:over|up|down|out|back))? (?:in|at|near|à|en|a|te) $`,
  'iu',
);
/** "it's being held in", "this year it's taking place in" */
const IT_IS =
  /\b(?:it|this|that|everything|all)(?:'s| is|'ll be| will be)(?: (?:all|being|now|to be|going to be|actually)){0,2} (?:held|hosted|played|staged|happening|taking place|put on)(?: again| (?:over|up|down|out|back))? (?:in|at|near) $|\b(?:it|this|that|everything|all)(?: all)? (?:happens|takes place) (?:in|at|near) $/i;
const FILMED =
  /\b(?:(?:you(?:'d|'ll| would| will| could| can)?|(?:need|want|like|have) you to) (?:just |only )?(?:shoot|film|record|stream|cover|interview|be (?:shooting|filming|recording|streaming|covering))\b(?:(?!\b(?:as|like|did|than|who|where)\b)[^.?!;\n]){0,45}?|gedreht wird(?: \S+){0,3}|wir drehen(?: \S+){0,3}|on tourne(?: \S+){0,2}|rodamos(?: \S+){0,2})\s(?:in|at|near|à|en|a)\s$/i;

/** True where what stands before a name says that the job is there. */
export const isHeldThere = (lead: string): boolean => HELD.test(lead) || IT_IS.test(lead) || FILMED.test(lead);

/** Where a way begins or is broken: counts only where no other town is told. */
export const isOnTheWay = (lead: string): boolean => ON_THE_WAY.test(lead);
const ON_THE_WAY =
  /\b(?:(?:picked|pick you|collect(?:ed)?(?: you)?) (?:up )?|pick-?up(?: point)?(?: is)? |meeting point(?: is)? |treffpunkt(?: ist)? |abfahrt(?: ist)? |abgeholt |rendez-vous |chang(?:e|ing) (?:trains )?|stopover |overnight )(?:at \S{1,12} )?(?:in|at|from|à|en)\s$/i;
