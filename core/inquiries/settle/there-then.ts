/**
 * Words right behind an hour of anything that make it the one at which I come: "weigh-ins at 8, please be there for that", "(be there then)", "you
 * too please", "I'm there from 8.30 to let you in".
 */
const THERE_THEN =
  /^[^.;?!\d\n]{0,40}?\b(?:(?:be|come|(?:need|want|expect|like|have) (?:you|ya|ye|u)(?: to be)?) (?:there|here|in|along|down) (?:for (?:that|it|this)|then|too|as well)|(?:came|come) (?:to (?:that|it)|then)\b|(?:there|with us|around) for (?:that|it|this)\b|(?:which|that) you(?:'d| would| must|'ll| will| should)?(?: also)?(?: need| have| be (?:asked|expected))?(?: to)? (?:attend|be at|be there for|come to|join|come along to)|that's (?:when|where) (?:you|u)(?:'d|'ll| would| should| will)? (?:show|come|arrive|start|be (?:there|here|in))|you're on it\b|that's (?:also )?your (?:arrival|call|start|time|get-?in|slot|kick-?off|cue)\b|(?:zu dieser zeit|dann) (?:müssten|sollten|kommen|erwarten|brauchen) (?:sie|wir|du)|dan verwachten we|same time for you|you (?:the )?same time|(?:meet|join|find) us (?:then|there|for that)|you too|(?:so )?do you)\b/i;
/** "8 am weigh-ins (be there)", "06h30 crew breakfast, be there please", and not "doors 7pm, be there by 5". */
const BE_THERE =
  /^[^.;?!\d\n]{0,24}?(?:,|-|[([])\s?(?:please |pls )?be (?:there|here)(?:,? (?:then|please|pls|plz))?(?=\s?(?:[.;!?,)\]\n]|$))/i;
/** "that would be a good time for you too" */
const GOOD_TIME =
  /^[^.;?!\d\n]{0,32}?\b(?:(?:that|this|it) (?:would|might|could|should) be (?:a good|the best|the right|a sensible|an ideal) (?:time|moment) for (?:you|the camera)\b)/i;
/** Who opens for me: "from 8.30 to let you in", "and will unlock for you" */
const LETS_IN =
  /^,? (?:to|and|who|and (?:can|will|would|could)|who (?:can|will|would|could)|so (?:i|he|she|we|they) can|and (?:i|he|she|we|they)(?:'ll| will| can| could)) (?:lets? you (?:all )?(?:in|into)|(?:opens?|unlocks?)(?: up)?(?: [\p{L}']{2,12}){0,3} for you|lets? the (?:crew|camera \p{L}+) in|hands? (?:you|over) the keys?|gives? you (?:the|your) keys?|shows? you (?:in|round|around|where))(?!\p{L})/iu;

/** "3pm you get here", "10.00 meet us at the barn" in a list of what happens when. */
const COMES_NEXT =
  /^(?: ?(?:h|hrs|[ap]\.?m\.?))?[ \t]*(?:[-–:|][ \t]*)?(?:you (?:(?:both|all) )?(?:get|come|arrive|turn up|show up|land|drive up) ?(?:here|there|in|over)?(?=\s?(?:[.,;/|+&)\n]|$|and\b|with\b))|(?:please )?(?:meet|find|join) (?:us|me|\p{Lu}\p{Ll}+) (?:at|by|in|outside|on|near|behind|in front of) (?:the|our|my)\b)/u;

/** True where I am to come at an hour by what stands right behind it. */
export const isThereThen = (after: string): boolean =>
  [THERE_THEN, BE_THERE, GOOD_TIME, LETS_IN, COMES_NEXT].some((pattern) => pattern.test(after));
/** The same where what comes before that names somebody else whose hour it would be. */
export const isMineThen = (after: string): boolean => [BE_THERE, GOOD_TIME, LETS_IN, COMES_NEXT].some((pattern) => pattern.test(after));
