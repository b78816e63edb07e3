/**
 * Words for the first call that the older list does not have: what it is called, what the crew does then, who lets them in.
 */
import { phrases } from '../phrases.ts';

/** Where to be, at the beginning of a sentence: "On the sand at 5.30am", "Crew on the green at 5". */
const placed = String.raw`(?=[cyoai])(?<=(?:^|[.;!?:\n]|,|,? (?:so|please))\s{0,3})(?:(?:crew|cameras?|you|you're|you'd be|we're|all) )?(?:on|at|in|aboard) the (?!\w*(?:day|morning|evening|night|end|start|moment|meantime|past|same|first|last|second|summer|winter|spring|autumn|event|afternoon|road|way|clock|dot|phone|hour|house|side|home)\b)[\w' -]{2,24}? (?:at|by|for|from)(?=\s(?:about |around )?(?:\d|half|quarter|noon))`;

/** "nothing to rig until 07:45", "we don't roll till 9", but not "we're not done until 9". */
const notBefore = String.raw`(?<![\w'])(?:nothing|nobody|no[- ]one|no need|no rush|not|dont|wont|\w{2,8}n't)(?:(?! (?:happens?|starts?|begins?|opens?|kicks|let|go|leave|stop|finish|end|close|done|finished|over|out|home|free|away|clear|know|sure|decide|confirm|off|answer|reply|hear|call|ring)\b) [\w']{1,14}){0,5} (?:until|till|til|before)(?=\s(?:about |around )?(?:\d|half|quarter|noon|six|seven|eight|nine|ten|eleven))`;
/** "There for 9, starts 10" */
const thereFor = String.raw`(?=t)(?<=(?:^|[.;!?,\n]|\n-)\s{0,2})there (?:for|by|from|at)(?=\s(?:\d|half|quarter|noon|six|seven|eight|nine|ten|eleven|twelve|one|two|three|four|five))`;

/** "the driver picks you up at the hotel at 6:15" */
const fetched = String.raw`\b(?:picks?|picking|picked|collects?|collected|fetch(?:es)?) you(?: up)?(?: [\w']{1,14}){0,7} (?:at|from|by)(?=\s\d)`;

/** "The vendor shall be present by 8"; whose team it is that is to be present nobody can tell. */
const present = String.raw`(?<!\bteams? (?:to|must|should) )be present (?:no later than|not later than|by|at|from|for)(?=\s(?:about |around )?(?:\d|half|quarter|noon))`;

/** "you'd be hiding with your camera by 3:30", "you'll be filming from 10", but not "you'll be leaving by 5". */
const doingBy = String.raw`\b(?:you|u)(?:'d|d|'ll|ll| would| will| should| must)? be (?!leav|finish|pack|head|driv|go|wrap|travel|eat|clear|coil|return)(?:\w{2,10}ing|hidden|set|ready|rigged)(?: [\w']{1,12}){0,4} (?:by|from|at)(?=\s(?:about |around )?(?:\d|half|quarter|noon|six|seven|eight|nine|ten|eleven))`;

/** What the hour of the crew is called, and who may be in then. */
export const callNamed = `${placed}|${notBefore}|${doingBy}|${thereFor}|${present}|${fetched}|${phrases(
  `
  call/calls both/each/every/all days/mornings/day/morning # | {is} called at/for/from # | plan on/for # | convocation/call/arrival/presence/meeting/gathering of/for the? crew/team/technicians/technique/video/cameras # | tech/technical/technicians/technicians'/suppliers/suppliers' entrance/entry/access # | doors/door for you/u/crew # | plan/planning on being ... at/by/from/for # | land in/over/up/down at/by/for/around # | come on/this ... to/into/at the/our/my ... at/by/for # | beginning of your/the work/shift/assignment/job is? # | {we} see you/u there/here/then? at/from/by/for # | {we} meet you/u #
  meeting point/place is? ... # | if you/u arrived/came/come/arrive at/by/for/around # | stage/artist/crew/loading door/entrance at/from/by # | come from/for # | come in_the morning/afternoon/evening from/at # | rolling/we_roll at/from/by # | video/camera dept/department/people/team/crew # | reach/reaching the? venue/site/hall/location/place/spot by/at/before/latest # | reach by/at # | pick up your pass/badge/lanyard/keys # | first shot # | cameras/camera rolling/roll at/from/by # | get-ready by/at/from # | start/starts/starting for you/u/crew # | set-up for #
  open/opens/open_up/opened/unlocks/unlocked for/to/up_for you/us/crew # | get/gets/have/has/getting/collect/pick_up the keys ... at/from/by # | needn't/don't_need_to/no_need_to/not_have_to show/come/arrive/be_there/turn_up until/till/til/before # | aboard by/at/for # | on board by/at/for # | please come on/this ... at/by/for # |
  call on/at set/site/location is? at? # | crew/safety/technical/production/camera/team briefing # | briefing for crew/you # | line-check # | stand-by from | stand by from | standby #
  shift starts/begins/start/from # | your shift is from? # | shift # | your day starts/begins #
  work starts/begins # | enter from/at/by # | ready to shoot/film/record/roll/go by/at/for #
  coverage required/needed/wanted? from # | dock/room/hall/place/space/venue/church/stage/floor/chapel/theatre/theater is ours/yours/free/available/open/empty from #
  yours/ours from # | yours is at? # | keys from # | key from # | {door} unlock/unlocks/unlocked/open/opens/opened up? for/to us/you/crew/contractors/suppliers/vendors # | open/opens to/for {supply} #
  let you/us in # | letting you/us in # | let you/us into ... # | lets you/us in # | unlock for you/us # | meet you/u at/in/by/outside/on/near ... # | meets you at/in/by ... #
  expect you/u there/here? # | expecting you # | have you there/here/in? # | you/u with us # | with us by/for/from/at # | expected from/at/by #
   cameras/camera/kit/gear/rig/everything up/ready/set/live/rigged by/for/from # | needn't/needn't_come/don't_come until/before # | you needn't come until/before # | not needed until/before # | wanted only? from # | first paid minute # | clock starts #
  get/gets/got/getting yourself/yourselves there/here/down/in/over/up at/for/by # | get/got/getting ... kit/gear/cameras/camera/equipment in at/from/by # | get/getting ... kit/gear/cameras/camera/equipment in on ... from/at # |
  start of the/your/our job/work/shift/shoot ... at # | in place/position no_later_than # | took/take/taking over at/from # | room/hall/church/venue/chapel/place/theatre/theater/stage unlocked for/by/at/from # |
  you'd/you_would/you'll/you_will/you have ... chapel/hall/room/church/venue/stage/place/space/theatre from # | the verger/caretaker/janitor opens/unlocks for_you at/from # | somebody/someone there/here/in at/by/from # | muster is/at # | you: at/in/by/outside ... # |
  first thing is/we/i/you ... # | first thing # | join/joining/joins at/from/by # | met us/me # | met us/me at/in/by/outside/on ... at/by/for # | getting/gets there/here at/by/for/before # |
  ask/asking/asks for? you/u for? at/from/by/to_be_there # | site/safety/health_and_safety induction is? # | caretaker/janitor/verger/porter/custodian/sexton/steward unlocks/opens/lets_us_in up? at/from/by #
  come/came/coming/arriving for # | coming/arriving at/by/from # | be/get in/at the/our/your ... for # | meet/meeting *day/us/you at/for # | be there/here/on_site for # | show/turn up for # | dock at/by/for # |
  meet/board/catch/join the bus/coach/boat/ferry/train/van at/by # | accessible at/from/by # | meet the ... at/by # | meet hotel/venue/stage ... # | meeting in/at the ... at # |
  {is} there/here/inside/in_place/in_position/on_site/on_set at/by/from # | get yourself/yourselves behind/to/into/inside/over/down/up/round/on/here/there ... by/at/for # | be inside # | beginning/begin/begins/start for you # | presence ...? for? everybody/everyone/you/crew/all? # | bums on seats # | {has} to be ... at/by/from/for # |
  earliest access # | vendor/supplier/contractor/crew entry # | reporting time # | report-time # | muster # | crew parking from # | time on site # |
  {shown} # | doors/door/gates/gate/entrance/access/entry/parking for {supply} # | doors/door/gates/gate/entrance/access/entry/parking for {supply} open/opens/starts/begins/is_open/are_open #
  {supply} are/get/will_be let/allowed/admitted in/inside/onto/into/through # | {supply} are/get/will_be let/allowed/admitted in/inside/onto/into/through the/our ... at/from/by #
  everyone/everybody/all/the_crew/crew in the ... by/at/for # | want/need/like/ask/expect for? everyone/everybody/all/the_crew there/here/in/on_site/on_set/set/ready by/at/for/from # |
  bum/bums/arse/arses/backside/backsides/boots/feet on the? seat/seats/ground/floor/deck/chair # | time for you/u/crew/the_crew/the_camera # | technicians from # | be hiding/hidden/hid ...? by # | you're/you_are/youre/ur on at/from #
`,
  {
    we: `we'd | we'll | we would | we will | i'd | i'll | i would | i will | he'd | he'll | she'd | she'll | they'd | they'll`,
    is: `you're | you are | youre | ur | u r | you were`,
    shown: `be admitted | you be admitted | you are admitted | you're admitted | you will be admitted`,
    supply: `contractors | suppliers | vendors | crew | crews | technicians | the technicians | the crew | the suppliers | external crew | outside crew`,
    has: `you've got | you have | you need | you'd have | you'd need | you would have | you would need | you'll have | you'll need | u need | u have | youd need`,
    door: 'door | doors | gate | gates | parking | car park | building | venue | hall | church | the hall | dock | loading dock | stage door',
  },
)}`;

/** Words that make an hour my call and say nothing of a date: "film from 10". */
export const callOfHours = phrases(`
  in for # | first day # | video/photos/photographer/stills/cameraman/shooter/filming from # | want/wants/need/needs ... video/photos/stills/camera/coverage/filming from #
  filming/coverage/recording/camera/cameras/shoot/shooting/streaming/operator/videographer from # | film/cover/record/shoot/streaming it? from # | film/cover/record/shoot/stream ... from # | cover/coverage #
  someone/somebody/you/operator/videographer/cameraman/person there/here? from # | operator/videographer/cameraman/camerawoman/person there/here/in at/by/for # | you in/at/on the ... at/by/from # | video/filming/coverage/recording starting/beginning at/from # | needed/required/wanted/booked/hired from #
`);

/** What the crew does at its call: to be asked whose doing it is. */
export const callDone = phrases(`
  report* in? to the? reception/desk/office/security/gate/me/us/stage/door/foyer/lobby/venue/manager # | report* in? # | check-in with/at/to # | check-in at/with/by the/our ... at/by/for # | sign-in at/with # | check in # | sign in #
  unload* # | pull/roll/rock/pitch/turn/show/pop up/in/over/down # | swing/come/drop by/along/over/round/in/down/to # | pop in # | get started # | get going # | kick you off # | muster* #
  gather* # | assemble* # | plug in # | be with us # | be with me # | be at ... # | get to ... # | come to ... # | arrive at ... # | plug-in # | park up # | land # | join us # | join me # | meet us/me #
`);
