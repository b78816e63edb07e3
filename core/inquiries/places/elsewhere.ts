/**
 * Towns of which their own clause says that something else than the job is there: where somebody lives, sleeps or sits at a desk, where letters go, where
 * who writes is at home. They count only where no other town is told.
 */

/** What somebody does, or what is done with something, that is no job to film: "the crew sleeps in", "quotes are processed in". */
const GOES_ON = String.raw`sleep(?:s|ing)?|slept|stay(?:s|ed|ing)?|overnight(?:s|ing)?|lodg(?:e|es|ed|ing)|liv(?:e|es|ed|ing)|resid(?:e|es|ed|ing)|sits?|sitting|grew up|raised|born|stud(?:y|ies|ied|ying)|processed|handled|printed|sorted|billed|invoiced|administered|registered|headquartered|stored|parked|archived|practi[cs](?:e|es|ed|ing)|rehears(?:e|es|ed|ing)|(?:post|mail|letters?|parcels?) (?:is|are|gets?) (?:opened|sent|read|collected)|(?:post|mail|letters?|parcels?) goes? to an? \w+`;
const DOES_THERE = new RegExp(
  String.raw`(?<!\p{L})(?:${GOES_ON})(?: (?:over|up|down|out|back|all|still|mostly|now|here))? (?:in|at|near)\s$`,
  'iu',
);
/** "Food and bed: in Spiez" */
const LODGED =
  /(?<!\p{L})(?:beds?|hotels?|accommodation|lodgings?|digs|overnights?|unterkunft|übernachtung|zimmer|hébergement|logement|hôtel|alojamiento|alloggio|overnachting)\b[^.!?;\n]{0,16}(?<!\p{L})(?:in|at|near|à|en)\s$/iu;
/** Who or what is somewhere for good. */
const SEAT = String.raw`lab|laborator(?:y|ies)|offices?|head office|hq|headquarters|depot|warehouse|archive|workshop|bank|university|compan(?:y|ies)|firm|agency|funders?|sponsors?|publisher|boss|manager|director|producer|planner|lead|team|board|accountants?|accounts|bookkeeper|secretary|treasurer|editors?|brothers?|sisters?|parents|sons?|daughters?|cousins?|aunts?|uncles?|grandparents|address|letterbox|mailbox|postbox`;
const SEATED = new RegExp(
  String.raw`(?<!\p{L})(?:our|the|my|their|his|her|your) (?:[\p{L}-]+ ){0,2}(?:${SEAT})(?: (?:that|who|which) \p{L}+)?(?:'s| is| are|,)? (?:(?:all|both|still|now|based|located|over|up|down|out) )?(?:in|at|near)\s$`,
  'iu',
);
/** "I'm with a tool shop in", "I am Djamila from the seniors' house in", "I'm at head office in" */
const I_AM = new RegExp(
  String.raw`(?<!\p{L})(?:i am|i'm|we are|we're|this is|my name is|ich bin|wir sind|ik ben|je suis|soy|sono)(?: \p{Lu}[\p{L}'’-]+){0,3},? (?:with|at|from|of|von|vom|van|de|du|di) (?:(?:an?|the|our|my|der|dem|het|la|le|il) )?(?:[\p{L}'’&-]+ ){1,6}(?:in|near|à|en|a)\s$`,
  'iu',
);
/** "Te escribo desde", "wir schreiben Ihnen aus": where a letter is written. */
const WRITES =
  /(?<!\p{L})(?:(?:te|le|les|os) escrib(?:o|imos) (?:desde|de)|escrib(?:o|imos) desde|(?:je|nous) (?:vous |t'|te )?écri(?:s|vons) (?:de|depuis)|(?:ich schreibe|wir schreiben)(?: (?:dir|euch|ihnen))? aus|(?:vi|le|ti) scriv(?:o|iamo) da|scriv(?:o|iamo) da|(?:ik schrijf|wij schrijven|we schrijven)(?: (?:je|u|jullie))? (?:vanuit|uit)|escrev(?:o|emos)(?:-lhe|-te)? (?:de|desde)|(?:jeg|jag|vi) skriver fr[aå]n?)\s$/iu;
/** "Metz and in ": the next town is where the one before it is. */
const AND_IN = /(?:\p{Lu}[\p{L}'-]+(?: \p{Lu}[\p{L}'-]+)?(?:,|,? and| &| und| et| y)? (?:in |à |en )?)+$/u;

/** True where what stands before a name says that something else is there. */
export const isElsewhere = (lead: string): boolean => {
  const before = AND_IN.exec(lead);
  const whole =
    before && before.index > 0 && /(?:in|at|near|à|en) $/.test(lead.slice(0, before.index)) ? lead.slice(0, before.index) : lead;
  return [DOES_THERE, LODGED, SEATED, I_AM, WRITES].some((pattern) => pattern.test(whole));
};

/** "in our office in", "come to the studio in": where somebody is asked to come, and not where who writes sits. */
const TO_US =
  /(?<!\b(?:not|than|of) )\b(?:in|at|to) (?:our|the|my) (?:[\w-]+ )?(?:offices?|branch|hq|headquarters|studio|shop|plant|warehouse|factory) (?:in|near|at)\s$/i;
const SITS =
  /\b(?:i'm|i am|we're|we are|works?|working|sits?|sitting|based|who is|who's|is|are) (?:in|at) (?:our|the|my) (?:[\w-]+ )?\w+ (?:in|near|at)\s$/i;
export const isAtOurs = (lead: string): boolean => TO_US.test(lead) && !SITS.test(lead);

/** "the bus to Vienna is at 15:40": the way home, where home is there. */
const WAY_HOME =
  /\b(?:bus|train|ferry|flight|coach|plane|tram|lift|ride|taxi|zug|bahn)(?:s|es)?(?: (?:back|home|goes|leaves|runs|over|up|down))? (?:to|for|nach|into)\s$/i;
export const isWayHome = (lead: string): boolean => WAY_HOME.test(lead);
