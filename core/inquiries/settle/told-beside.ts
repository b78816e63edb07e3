/**
 * Days that are told of something beside the work, where the message names another day for it: when the finished film is shown, when the school breaks up,
 * when the couple fly off, when a marquee goes up, what somebody else films, what is over. Alone in a message such a day may be the one of the job after all.
 */
import { clauseBefore, lineStart, sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { daysSaid } from './days.ts';
import { OF_ELSE, union } from './days-among.ts';
import { isOfOthers } from './of-others.ts';
import type { DateMention, Where } from './scene.ts';

/** Words up to a day right behind what is told of it: "on", "from the", "on Sunday the". */
const TO_DAY = String.raw`(?:,?\s(?:[^\s.;:!?,]{1,14}\s){0,5}?(?:(?:on|from|at|in|is|by|of|until|till|for|around|about)\s)?(?:the\s)?|\s)$`;
const toDay = (list: string, lists: Readonly<Record<string, string>> = {}): RegExp => new RegExp(anyOf(list, lists).source + TO_DAY, 'i');

const folk = `my/our/his/her/their/the/some ... parents/mum/mom/dad/mother/father/brother/sister/family/families/relatives/in-laws/grandparents/guests/people/couple/bride/groom/aunt/uncle/cousins | my/our/his/her/their/the parents/mum/mom/dad/mother/father/brother/sister/family/relatives/in-laws/grandparents/couple/bride/groom/newlyweds/honeymooners | guests/people/relatives/everyone/everybody/they/he/she/we`;
/** What happens to the film once there is one: it needs a day after that of the work. */
const SHOWN = toDay(
  `
  {film} ... is/are/be/being/gets ... shown/screened/aired/broadcast/televised/premiered/unveiled/presented/published/posted/played/released | it/they/this/which/that is/are/will/to/would/'ll? be? to_be? shown/screened/aired/televised/premiered/unveiled/published/posted
  show/showing/screen/screening/play/playing/present/presenting/unveil/unveiling/premiere/premiering it/them ... | show/showing/screen/screening/play/playing/present/presenting/unveil/unveiling the/your/our {film}
  goes/go/going out ... on/over ... tv/television/telly/radio/air | on ... tv/television/telly/radio | radio/television/tv/channel/station ... broadcast/broadcasts/airs/air/shows/carries
  premiere/première/screening/broadcast of_the_film/of_it? is/will_be/takes_place/follows | {film} ... premieres/airs/launches | goes_live/go_live/going_live | judges/jury/panel/client/clients/board/sponsors/members/students/parents ... view/views/watch/watches/see/sees/review/reviews ... {film}
  hand/handing/hands/send/sending/submit/submitting/enter/entering/put ... {film} ... in/to/at/into | release/releasing/launch/launching it/them/this | in ... shops/paper/papers/newspaper/press/cinemas/archive | {film} ... ready/due ... for | {film} ... ready/done/finished/complete/needed/due/wanted on/by | need/needs/want/wants the/your {film} on/by/for
  client/board/final/sponsor presentation is | competition/festival/contest/entry/submission deadline/date ... is/for | has/have its/their deadline | competition/contest/entries closes/close ... | a/the/one/short trailer/teaser/taster/clip
`,
  { film: `film/films/video/videos/movie/footage/edit/recording/recordings/result/results/clip/clips/trailer/teaser/cut/piece` },
);
/** The next of its kind, more than half a year on. */
const NEXT_ONE = toDay(`next_year's ... is/falls/will_be/takes_place | next_year's | the year after/following_year`);
const HALF_A_YEAR = 180;
/** What goes on without me. */
const GOES_ON = toDay(
  `
  school/schools/college/colleges/university/nursery/kids/children/pupils ... break_up/breaks_up/breaks/finish/finishes/go_back/goes_back/return/returns/reopens/closes | new/next/summer/autumn/spring/winter/school? term starts/start/begins/ends/finishes/is | exams/exam_season/lessons/classes/lectures start/starts/begin/finish/end/run/are
  year_end/year-end/tax_year/financial_year/fiscal_year/budget_year is/ends/closes/starts/begins/runs
  {folk} ... land/lands/fly_in/flies_in/fly_home/flies_home/fly_out/flies_out/fly_back/flies_back/fly_off/jet_off/set_off/drive_up/drive_down | {folk} leave/leaves/leaving/fly/flies/go/goes/are_off/is_off/depart/departs for/on/to ... | {folk} return/returns/come_back/comes_back/get_back/gets_back/fly_home/are_back/is_back from ... honeymoon/holiday/holidays/trip/cruise/tour/travels | {folk} move/moves/'s_moving/is_moving/are_moving/'re_moving to/house/into/abroad/in/out | mum's/mom's/dad's/he's/she's/they're/who's moving/emigrating/retiring | honeymoon is/starts/begins
  my/his/her/our ... birthday/anniversary is/falls | {folk} turn/turns/turning/turned ... | mum/mom/dad/gran/grandma/grandpa/grandad turns/is_turning/retires/is/will_be ...
  bursar/head/headteacher/teacher/director/manager/boss/caretaker/colleague/chairman/vicar retires/leaves/goes | tour/show/production/exhibition/circus/company/caravan ... moves/goes/travels/transfers/heads on/off? to ... on | {cover} ... covers/cover ... | polling_day/election_day is | marquee/marquees/tent/tents/scaffold/scaffolding/staging/stage/bunting/decorations/barriers/toilets ... goes_up/go_up/comes_down/come_down/goes_down/goes_in/come_out/is_built/are_built/gets_built/is_put_up/are_put_up/is_delivered/are_delivered/is_collected/are_collected/arrives/arrive/leaves
  licence/license/lease/permit/visa/passport/contract/insurance/warranty/subscription/tenancy ... runs_out/ends/expires/is_up/starts/begins/lapses | rsvp/rsvps/replies date/deadline/is/are ... | cast_list/shortlist/line-up/programme is/goes ...
  trains/buses/trams/ferries ... run/running | no trains/buses/trams/ferries ... | engineering works/work are/is/planned/scheduled ... | engineering_works/roadworks/rail_strike/strike/strikes/road_closures/diversions on/from/is/are | election/elections/referendum/ramadan/lent/advent/hanukkah/diwali/world_cup/euros/olympics ... is/are/starts/start/begins/begin/falls/kicks_off
  audition/auditions/casting/castings is/are/take_place/takes_place/held | your/their prices/rates/price_list/fees from/of/as_of | decorators/painters/builders/plumbers/electricians are/come/start/finish ... | being painted/decorated/renovated/refurbished/cleaned/repaired
`,
  { folk, cover: `licence/license/insurance/permit/policy/pass/passes/ticket/tickets/parking` },
);
/** What is over, though its day has no year. */
const OVER = toDay(`
  our/the members/board/committee/council/trustees/parents voted/agreed/approved/decided ... | passed_away/died/lost_him/lost_her | he/she/they/it was/were born | got/were/was married/engaged/hitched/divorced/christened/baptised ... | stills/pictures/photos/photographs/portraits/interviews/exteriors/aerials/footage were/was taken/shot/done/filmed/recorded/made
  saw/liked/loved/enjoyed/watched/admired your/the film/video/clip/work/reel/showreel/post/piece ... | the one in 20*/19* ... fell/was/took_place/ran | we/i/they launched/founded/opened/started/began/met/signed/bought ...
`);
/** Numbers that only look like dates. */
const NUMBERED =
  /\b(?:(?:order|reference|invoice|account|po|case|booking|contract|policy|file|purchase order) (?:number|no\.?|nr\.?|ref\.?|id|code)(?: is|:)?|(?:your |our )?ref(?:erence)?(?: is|:)?|room|flat|suite) $/i;
/** "on 2 May himself", "on 18 July which somebody else films", "on 3 July is covered by the students", "for which we have a crew" */
const OTHERS = String.raw`(?:somebody|someone|another|other|others|others'|my|our|his|her|their|a|an|the|one of)(?: else)?`;
const BY_OTHERS = new RegExp(
  String.raw`^,?\s?[(–-]?\s?(?:(?:but|and|though|,)\s)?(?:(?:which|that|this|it)(?:'s| is| will be| gets| has been)?|is|are|will be|has been|has|have been)\s(?:already |all |being |going to be )?(?:(?:covered|filmed|recorded|shot|done|taken care of|handled|looked after|sorted)(?: by (?!you\b|u\b)|\s?[.,;!)\n])|${OTHERS} (?:\p{L}+ ){0,3}?(?:films?|filming|covers?|covering|shoots?|shooting|does|do|doing|records?|recording|has|have got|handles?|looks? after|takes? care of|is filming|will film|is doing)(?![^.;!?\n]{0,20}\b(?:you|u)\b))|^,?\s?(?:,\s?)?(?:for which we (?:already )?have|with|using) (?:an?|our|another|a different|our own) (?:\p{L}+ )?(?:crew|team|videographer|cameraman|operator|film-?maker)|^,?\s(?:himself|herself|themselves|ourselves)\b`,
  'iu',
);
const AS_WELL = /\b(?:as well|too|also|you|u)\b/i;
const FILMS = toDay(
  `{who} films/is_filming/will_film/covers/is_covering/shoots/is_shooting/records/is_recording/will_be_filming ... on/of`,
  {
    who: `my/our/his/her/their/the/a ... brother/sister/uncle/aunt/cousin/friend/mate/dad/mum/mom/son/daughter/nephew/niece/colleague/colleagues/students/pupils/intern/volunteer/volunteers/caretaker/teacher | my/our/his/her/their brother/sister/uncle/aunt/cousin/friend/mate/dad/mum/mom/son/daughter/nephew/niece/colleague/students/pupils/intern/volunteers | somebody/someone/somebody_else/someone_else/another_firm/another_crew/another_videographer/a_different_crew/a_friend/a_colleague/the_students`,
  },
);
/** "For the shoot on 3 October I'll send a separate mail": work of which this message is not. */
const SEPARATE =
  /^[^.;!?\n]{0,40}\b(?:separate(?:ly)?|another time|(?:another|different|separate) (?:e-?mail|mail|message|quote|letter|inquiry|enquiry))\b/i;
const NO_FILMING =
  /^[^.;!?\n]{0,24}(?:,|\bbut\b|[(–-])\s?(?:that |it |this )?(?:there's |there is |is |with )?(?:no (?:filming|video|camera|film|need for you|need of you)|needs no (?:filming|video|camera|film)|not for you|nothing for you|don't need (?:you|it|that) (?:there|filmed|for)|won't need (?:you|it|that) (?:there|filmed|for)|you (?:do not|don't|needn't) (?:need to )?be)\b/i;

/** "19 June was full", "on Sunday 13 June, not ours", "there was talk of 19 June but it came to nothing" */
const NOT_IT =
  /^,?\s(?:(?:was|were) (?:already )?(?:full|taken|gone|fully booked|no good|out|not possible|not free|impossible)\b|(?:and is |which is |is )?not (?:ours|us|mine)\b|[^.;!?\n]{0,12}\b(?:came to nothing|fell through|did not work out|didn't work out|was dropped))/i;
/** "After 15 June mail me at home", "From 20 June nobody is in the office" */
const REACH_ME =
  /^,? (?:please )?(?:nobody|no-?one|mail me|email me|e-mail me|call me|ring me|text me|write to me|reach me|use (?:this|my|the) (?:address|number|phone|mail|e-?mail)|we're called|we are called|my (?:number|address|e-?mail))\b/i;

/** "Next shoot: Wed 27 January", "Period of hire: 1 to 31 March": a line of its own of another job, or of all the time in which this one lies. */
export const LINE_OF_ELSE =
  /^[\s*+•–-]*(?:(?:next|prev(?:ious)?|prior|following|last|previously|other|subsequent)\.? (?:\p{L}+ )?(?:shoots?|shows?|jobs?|gigs?|dates?|events?|concerts?|performances?|editions?|meetings?|bookings?|fixtures?|match(?:es)?)|(?:(?:contract|hire|rental|performance|project|validity|season|term|festival|policy|booking) (?:period|dates?|window)|period of (?:\p{L}+ )?(?:performance|hire|contract|validity|engagement|rental))|(?:today's date|tomorrow|yesterday|next day|day after|date of (?:issue|order|birth|enquiry|inquiry|request|call)|issued|printed|submitted|last updated|version|revised))\s?(?:[:=]|\s[–-])\s*$/iu;

/** "I can't do this one as I'm in Malaga 6-10 May": when somebody is away who hands it on. */
const AWAY_THEN =
  /\b(?:i|we)(?:'m| am| are|'re)? (?:can't|cannot|can not|couldn't|unable|not able|not free|not available|busy|tied up)\b[^.;!?\n\d]{0,40}\b(?:as|because|since|cos|coz|when)\b[^.;!?\n\d]{0,50}$/i;

const REACH = 110;
const BEHIND = 90;
type Kind = 'beside' | 'after' | 'long after';

/** What makes a day one beside the work, as far as its sentence tells; `after` where it also has to lie behind that of the work. */
function kindOf(text: string, { start, end }: Where): Kind | undefined {
  const lead = clauseBefore(text, start, REACH);
  const tail = text.slice(end, Math.min(sentenceAround(text, start, end).end, end + BEHIND));
  if (GOES_ON.test(lead) || OVER.test(lead) || NUMBERED.test(lead) || FILMS.test(lead)) return 'beside';
  if (isOfOthers(text, { start, end })) return 'beside';
  if (AWAY_THEN.test(text.slice(Math.max(lineStart(text, start), start - REACH), start))) return 'beside';
  if (LINE_OF_ELSE.test(text.slice(lineStart(text, start), start))) return 'beside';
  // What a row of days says of itself is weighed with the other rows.
  const inRow = /^[\s*+•–-]*(?:\p{L}{2,10}[.,]? )?$/u.test(text.slice(lineStart(text, start), start));
  if (!inRow && ((BY_OTHERS.test(tail) && !AS_WELL.test(tail)) || NO_FILMING.test(tail))) return 'beside';
  if (SEPARATE.test(tail) || NOT_IT.test(tail) || REACH_ME.test(tail)) return 'beside';
  if (NEXT_ONE.test(lead)) return 'long after';
  return SHOWN.test(lead) && !ALIVE.test(lead) ? 'after' : undefined;
}
/** "will be streamed live", "we show our garden" */
const ALIVE = /\b(?:live(?! on (?:the|our) (?:site|website|page|channel))|livestream\w*)\b(?<!goes? live|going live)/i;

const BOTH = /\bboth (?:days|nights|evenings|dates|shows|performances|weddings|events)\b|\bboth\b(?=\s?[.,;!?]|$)/i;

/** The same dates, of which those beside the work are of something else; only where another day is told for it. */
export function toldBeside(text: string, said: readonly DateMention[]): DateMention[] {
  const open = (mention: DateMention): boolean =>
    !mention.past && !(mention.by && mention.said !== 'event') && !OF_ELSE.has(mention.said) && mention.said !== 'call';
  const kinds = said.map((mention) => (open(mention) ? kindOf(text, mention) : undefined));
  if (kinds.every((kind) => kind === undefined)) return [...said];
  const days = union(
    ...said
      .filter((mention, at) => kinds[at] === undefined && open(mention) && mention.explicit && mention.said !== 'wrap')
      .flatMap(({ readings }) => readings),
  );
  const last = days.at(-1);
  if (last === undefined) return [...said];
  const counts = new Set([...daysSaid(text).map((one) => one.days), ...(BOTH.test(text) ? [2] : [])]);
  return said.map((mention, at) => {
    const [kind, first] = [kinds[at], mention.readings[0]?.[0]];
    if (kind === undefined || (first !== undefined && days.includes(first) && mention.readings[0]?.length === 1)) return mention;
    // "Auditions are on the 5th and 6th, the final is on the 7th ... all three days": who counts it wants it.
    if (counts.has(union(days, mention.readings[0] ?? []).length)) return mention;
    if (kind !== 'beside' && first === undefined) return mention;
    if (kind === 'after' && (first ?? '') <= last) return mention;
    if (kind === 'long after' && Temporal.PlainDate.from(last).until(Temporal.PlainDate.from(first as string)).days < HALF_A_YEAR)
      return mention;
    return { ...mention, said: 'other' };
  });
}
