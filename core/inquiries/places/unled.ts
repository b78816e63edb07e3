/**
 * Names of towns before which no "in" or "at" stands: what follows or leads them tells whether the job is meant ("the Tamworth gig", "still Ilkley") or
 * something else that bears the name ("the Malton turning", "Harrogate prices", "the film Skipton made").
 */

/** "still Ilkley", "it's Whitby", "could you do Otley", "the friends of the organ of Cuenca" */
const LEADS =
  /(?:^|[\n.,:;!?([–—-]\s?|(?<![\p{L}'’])(?:still|both|also|now|again|actually|it's|its|it is|it was|it'll be|that's|we're|they're|(?:place|town|venue|base|location|city|site) (?:is|was)|play|plays|playing|do|does|doing|go|visit|visits|visiting|of|de|di|von|van|der|by|nr|location|through|door|durch|im|aus|vanuit|fra|från|till?|für|pour|para|nach|zu|voor|i|på|is|would|will|between|either|us|offer you|offer|about|on|re|for|with|and|or|around|round|to|from|said|mean|meant|moved|film|cover|shoot|chose|choose|picked|only|just|until|since|\d\w*)\s)$/iu;
/** What is filmed, or where that is. */
const JOB =
  /^['’]?s?(?: [\p{L}'’&,-]+){0,4} (?:jobs?|gigs?|banquets?|shoots?|bookings?|shows?|openings?|meetings?|reunions?|events?|things?|dates?|legs?|stops?|ends?|days?|weekends?|nights?|parties|party|wedding|gala|ball|dinners?|lunch|awards?|expo|exhibitions?|fairs?|festivals?|festival|carnival|parades?|races?|marathon|cup|finals?|tournament|competition|eisteddfod|regatta|rodeo|trots|hop|carols?|concerts?|gigs?|tours?|roadshow|conference|congress|summit|forum|seminar|workshop|session|launch|briefing|bakery|clubs?|societ(?:y|ies)|chapter|choirs?|band|orchestra|theatre|theater|museum|gallery|hall|church|school|college|university|hospital|library|office|offices|branch|plant|factory|depot|store|shop|showroom|site|warehouse|quarry|mill|farm|centre|center|campus|arena|stadium|showgrounds?|fairgrounds?|racecourse|harbour|market|traders|team|squad|swap|threshers|lifeboat|premiere|ceremony|service|funeral|anniversary|play|musical|pantomime|panto|swim|run|walk|trial|trials|match|game|derby|sale|auction|pull|interviews?|film|video|series|project|production|stream|version|date|one|trip|visit|retreat|camp|course|training|delegates?|members|community|council|mayor|residents|kids|students|celebrates?|organises?|organizes?|invites?|hosts?|holds?|fête|fete|feis|fleadh|ceilidh)(?![\p{L}])/iu;
/** "the Malton turning": a small word follows and a name is not at an end. */
const GOES_ON = /^(?:['’]s)? (?!(?:and|or|und|oder|et|ou|y|o|e|on|at|in|am|le|el|für|this|next|then|again)(?![\p{L}]))\p{Ll}/u;

/**
 * True where a name that nothing leads is no town of a job.
 * @param lead what stands before the name
 * @param behind what stands behind it
 */
export const isUnled = (lead: string, behind: string): boolean =>
  GOES_ON.test(behind) && !LEADS.test(lead) && !JOB.test(behind.slice(0, 70));

/** "Harrogate had a lovely film", "Wakefield beat us to it", "Leeds are at home": the town does something. */
const DOES =
  /^ (?:had|has|did|beat|made|won|lost|got|used|are|were|play(?:s|ed)?)(?! (?:an?|our|its|the) (?:gala|wedding|show|festival|fair|reunion))(?![\p{L}])/u;
const SENTENCE_START = /(?:^|\n|[.!?]\s)$/;
export const isActing = (lead: string, behind: string): boolean => SENTENCE_START.test(lead) && DOES.test(behind);
