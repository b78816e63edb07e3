/**
 * What is said of me where I am to come: "please come", "we'd want you there", "you should be with us". One list, for an hour before it or behind it.
 */

const COME = String.raw`(?:come(?: along| down| over| in)?|be (?:up |over |back |down )?(?:there|here|with us|with them|in|on site|on hand|around|present|set up|ready|inside|along)|arrive|turn up|show up|get (?:there|here|in|going)|join(?: us| them| him| her| in)?|meet(?: us| them| him| her)?|start|begin|set up|attend|report|rig up|present yourself|appear)`;
const MUST = String.raw`(?:(?:'re|'ll|'d|r| are| were| will| would| can| could| may| might| should| must| shall| have to| need to| ought to| want to| wanna| gotta| got to| get to| also| already| please| kindly| to| be| best| better| asked| expected| supposed| due| meant| welcome| invited){0,5})`;
/** Someone asks me to come. */
const WANTED = String.raw`(?:(?:we|i|they|he|she|it)(?:'d| would|'ll| will| do)?(?: also| really| all| very much)? (?:need|want|like|love|have|expect|await|ask|prefer|see|be expecting) (?:for )?(?:you|u)(?: to(?! know))?(?: (?:already|also))?(?: (?:${COME}|there|here|in|with us|on site|ready|inside|set|rolling))?)`;
/** A request that begins its clause. */
const ASKED = String.raw`(?:(?<=^\s?|[.;:,!?–(-]\s?|(?:so|but|and|just|please|kindly|do)\s)(?:(?:please|kindly|do|just|so|pls|plz) )*${COME})`;

/** I come or am to come; as the source of a pattern for the flag `i`. */
export const COMING = String.raw`(?<![\w\u00c0-\u024f'])(?:(?:you|u)${MUST} ${COME}|(?:you|u)(?:'re| are|'d be|r) (?:due|expected|needed|wanted|required)|expect(?:s|ing)? (?:you|u)|see you (?:there|here)|have (?:you|u) (?:there|here|in)|${WANTED}|${ASKED})(?![\w\u00c0-\u024f])`;
/** "needn't come", "don't have to be there", "without you". */
export const NOT_COMING =
  /(?:n't|\b(?:do|does|wo|need|ca|did|would|should)nt|\bnot|\bno need|\bnever|\bnot required|\bunless|\bif|\bwithout|\binstead)\b[^.;!?]{0,30}$/i;
