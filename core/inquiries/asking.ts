/**
 * Ways to ask somebody for a day's work with a camera. Each list holds one idea; a message that has none of them is not taken for an inquiry by its words alone.
 */
import { anyOf } from './phrases.ts';

/** What is done on such a day. */
const deeds = `film | shoot | record | cover | run | switch | mix | work | tape | come | come along | come out | come over | come and ... | operate | be on the/our/a? camera/cam/cameras/gimbal/jib/desk/switcher | stream | livestream | live-stream | webcast | broadcast | capture | photograph | snap | video | videotape
  quote | join us | make it | take it | take this | take this on | take photographs/photos/pictures/stills/shots/some/a | take on | take the job/gig/desk/switcher/controls/second/third/other | fill in | step in | jump in | sub in | sub | stand in | dep | help | help out | help us | help us out | be there | be our | be part of | be on camera | cut a/an/the/our/this/them/something/together | knock up a | put together a | do sound | do audio | do video | do camera | do cameras
  do the/a/an/our/two/one/some | do that/this/it/these/those/both | do dec*/jan*/feb*/mar*/apr*/may/jun*/jul*/aug*/sep*/oct*/nov*/mon*/tue*/wed*/thu*/fri*/sat*/sun* | man | handle | direct | td | call | cut live | edit | crew | look after | spare | squeeze | fit | manage | drive | travel | pencil | hold | shadow
  bring a/your camera/cameras/kit/gear/rig/drone/mixer | set up a/the/your | give us/me a/your price/quote/rate/figure/estimate | send us/me a/your price/quote/quotation/rate/rates/estimate/figure/offer | price | cost this/it | put together a quote | let us/me know if/whether you'd/you/your | be available/free/interested/up for/able/open/around/willing/keen/tempted | consider`;

const roles = `videographer/videographers/videog/videomaker/videomakers/filmmaker/filmmakers/film-maker/cameraman/cameramen/camerawoman/cameraperson/camera-people/shooter/shooters | camera | cameras | cam | cams | photo/foto/camera/cam/jib/replay/drone/autocue/teleprompter/sound/audio/video/ptz/graphics/playback/steadicam/gimbal op/ops/operator/operators/guy/person/tech/pilot/people/crew/team/coverage | op | ops | operator | operators | dop | dp | eng crew | crew
  vision-mixer | switcher | streamer | live-stream* | livestream* | stream | streaming | webcast | td | technical director | sound-recordist | soundie | audio | a1 | a2 | photographer/photographers | film team | video team | camera team | photog | tog | editor | cutter | b-cam | second/2nd/extra/third/additional shooter/camera/cam/op/operator/angle/pair | body/hands/person/pair of hands ... with/on a? camera | someone/somebody/person/anyone/people to take/film/shoot/record/cover/run/operate/stream/video/switch/mix/edit/photograph/capture/tape/man/handle/do/help
  videography | video | film | recording | filming | coverage | photos | photography | photo coverage | vid | vids | drone | teleprompter | projectionist | gaffer | camera assistant | focus puller | colourist | colorist | colour/color grade/grading | ob/broadcast/live director | gimbal | jib`;

/** Somebody's time is asked for. */
const TIME = anyOf(
  `
  are/r you/u ... free/available/around/open/booked/able/interested/keen/about/working/up/game/tempted/on/in/good/fixed/busy/doing/taken | you/u ... free/available/avail/keen/open/around/booked/busy/game/interested/up_for_it/up_for_this/up_for_one | you/u about/around on/for/this/next/in/the | you up for
  how are you/u fixed/placed/looking/set | got/have you/u anything/something/room/space/time/availability/capacity/a_gap/a_slot | have/got you any? room/space/time/availability/capacity/openings | got anything/something/room on/for/in | got a gap/slot/hole
  do you have ... open/free/available | have you ... open/free/available | is/are ... taken/open/free/available on? your? | your availability | availability for/on/in/check/request | avail check | checking/check availability | check/checking your/you availability/avails/diary/calendar | have you/u got ... time/room/space/availability/capacity
  what's/whats/what is your availability/diary/schedule/calendar | {will} ... you/u be free/available/around/about/able/interested/up_for/open/willing/game/keen/happy/tempted/in | are/r you/u doing anything | is that/it/this a date/day you | any availability | any chance | any interest | any use/good to you | any joy on | any good | any interest in | deal | works for you | ok with you | okay with you | are you open to | open to | on your radar | free that/then/still | still free/available/open | available? for hire | hire | have any/a? openings
  would/could/will/does/do ... suit/work for? you/u | does that still work | work/works/suit/suits on/at your end/side | which/what ... you/u can/could take/do/cover/make/manage | work/works/suit/suits for? you/u | {day} ... works/suits/any good | fancy | up for it/a/this/filming/shooting/another | free to film/shoot/record/work/cover/do/run | free/available on/for/that/those/this/next/from ...
  keep/hold/pencil/block/reserve the/that/those/this/these/us/me/you date/dates/day/days/in/for/out | pencil you/this/us/me | pencil | can/could i/we pencil | snap you up | put you/us/me down | put your name | in your diary/calendar/book
  want in | want this one | say you're/you_are/ur free/available | tell me you do | what say you | the one to ask | you in or | y/n | y or n | yes or no | yay or nay | one more for you | one for you | job for you | gig for you | work for you | something for you | a shift for you | date for you | bit of work | day's work | a day of work | days of work
  `,
  {
    will: `will | would | could | can | might | may`,
    day: `it | this | that | the date | the day | date | day | *day | dec* | jan* | feb* | mar* | apr* | may | jun* | jul* | aug* | sep* | oct* | nov* | \\d{1,2} | \\d{1,2}th`,
  },
);
/** Work is asked for. */
const WORK = anyOf(
  `
  can/could/would/will/might/may/cud/wud/wld/cld you/u/ye/your/kit ... {deed} | you/u could/can/might/would/will ... {deed} | you'd/you'll film/shoot/switch/mix/record/stream/run/operate/be_filming/be_shooting/photograph/cover | like/want/need you mixing/filming/shooting/recording/streaming/switching | are you/u able/willing to ... | able/willing to film/shoot/record/cover/come/help/do/stream/run | do you/u ever? ... {deed} | would/might/could/will you/u? ... consider/like_to/care_to/want_to/mind ... | whether/if you/u could/can/would/might/will/'d
  is/was/be it possible to/for/that ... {deed} | possible for you to ... {deed} | can/could/would/will you/u ... give/run/lead/teach/hold a/an/our/the/one ... workshop/masterclass/course | new/website enquiry/inquiry/lead via/from/through/on ... website/site/form/page
  hoping/hope/hoped you/u can/could/might/would/will/'d | hoping to book/hire/get/have/engage/find/secure you/someone/a/an | wonder/wondering/wondered if/whether you/u | ask/asking if/whether you/u | ask you/u to | asking you/u to | invite you to film/shoot/quote/tender/record/bid | invite/inviting you to/for ... crew/team | part/member of our/the/my/a crew/team | join our/the/my crew/team | like/love/want/need you/u to film/shoot/record/cover/run/do/come/stream/help/operate/mix/switch/edit/be/work/join/take/handle/tape
  like/love/want/need you/u on/for/there/back/again/in/at | love/like/want/need your help | have you/u on/back/again/for/film/shoot/do/along/there/with_us | someone/somebody/who ought/has/needs/should to? film/record/shoot/capture/cover/stream | take you as | you as our/the/my/a | do you want it | would you want it | you came to mind | does this appeal | is it for you | can you take | put you in | put you down | have you down | that would be you | this one is you | you up for | thought of you | your name came up | given your name | passed your name | your name was | recommended you
  book/hire/engage/contract/commission/get/secure/retain/use you | booking/hiring/engaging/getting/commissioning/using/having you | contacting/approaching/asking videographers/filmmakers/crews/operators/you/several/a_few/local | considering/thinking_of/planning filming/recording/streaming/livestreaming/having/hiring/getting | in a day's/one-day/two-day/half-day job/shoot | a one-day/two-day/half-day/short/small/quick/paid job/gig/shoot/film/video for/on/in | go about booking | can/could/may/might we/i book/hire/have/get/engage/use/borrow/add/extend/ask you/u? | add/extend ... day/days/camera/session
  `,
  { deed: deeds },
);
/** A person of the trade is wanted. */
const ROLE = anyOf(
  `
  you/u make/do/offer also? film*/video*/photo*/recording* | you/u do/offer wedding/event/portrait/sports/corporate photo*/video*/film* | nobody/no_one/no-one for/on the/our/my/her/his/their ... {role} | lack/lacks/lacking/missing is? ... {role} | no_one/nobody/no-one/person/anyone to film/shoot/record/tape/video/stream/photograph/run/work/operate/man | look/looking/need/want/like/seeking/after/find for? a? person/someone/somebody/anyone who/that can? film/films/record/records/shoot/shoots/stream/streams/photographs/covers | depute/send a/your ... {role} | enquiring/inquiring/enquiry/inquiry about/for/re ... {role} | someone/somebody to take/film/shoot/record/stream/photograph video/photos/photographs/pictures/stills/it/us/our/the/my/this | phoned/rang/called/calling/emailed/asked/asking about/re/regarding/for film*/video*/photo*/record*/stream* | {role} please/pls/plz | requirement/requirements for/of/is ... {role} | needed:/wanted:/requirement:/requirements:/required:/seeking: ... {role} | in search of ... {role} | search a {role} | short a {role} | one {role} short | line up ... {role} | spot/place/opening/space on my/our/the crew | crewing a/an/our/the
  need/needs/want/wants/require/requires/seek/seeks/seeking/need/needed/after/find/finding/hire/hiring/missing/lacking/short/wanting/needing/requesting/lost ... {role} | look/looking/searching/hunting/hoping/ask/asking/shopping for/to/after ... {role} | in need of ... {role} | could use/do with ... {role} | crew/crewing up
  {role} ... needed/wanted/required/sought/requested/missing/rqd/reqd/req'd/wntd | need/wanted/needed/required/requested/seeking/request/booking/job/role/position/gig/crew {role} | wanted ... {role} | slot/gap/hole/vacancy/opening/space/place for/on/to ... {role} | slot/gap/vacancy to fill | a body ... camera
  need/needs/want/wants/planning/after a/an ... shoot/promo/reel/interview/livestream | need/want/looking/after/seeking/find ... someone/somebody/a_body/one_more/another_body/extra_hands/another_pair/a_third/a_second | need/needs/want/could_use/could_do_with/do_with/after a/another/an_extra/some/extra/your hand/help/pair_of_hands/hands on/for/with/at/this/next/tomorrow/jan*/feb*/mar*/apr*/may/jun*/jul*/aug*/sep*/oct*/nov*/dec*/mon*/tue*/wed*/thu*/fri*/sat*/sun* | stuck for ... | stuck without ... | let down by ... | down a/one ... | short of a? ... | {role} gig/job/shift/work | gig for ... | gig going/available/on | job going/available/on | cover for our/my/the ... | {role}'s/is/has out/ill/sick/off/down/flu/covid/broken/pulled/dropped/cancelled/unwell
  `,
  { role: roles },
);
/** Work is there to be had. */
const JOB = anyOf(
  `
  have/got/there's/there_is/i've_got/we've_got ... work/job/gig/shoot/wedding ... you/interested | have/got work/a_job/a_gig/a_shoot for/on/in | have/got work {date} | job offer | work on offer | paid work | days'/day's/days work in/on/at
  can/could/will/would/'d/i'll/we'd offer/pay/give you | hold/pencil/reserve/block/keep the? {date} | let me/us know if/whether/when you/u/you're/your/ur | another/one/job/gig/shoot/wedding ... if you/u want/fancy it/this/one | same again/deal/as_last_time this/as/for/on | want it | want in
`,
  {
    date: `dec* | jan* | feb* | mar* | apr* | may | jun* | jul* | aug* | sep* | oct* | nov* | mon* | tue* | wed* | thu* | fri* | sat* | sun* | \\d{1,2} | \\d{1,2}th | \\d{1,2}st | \\d{1,2}nd | \\d{1,2}rd`,
  },
);
/** The end of a short question that is put to the reader: "Available?", "you free?", "Can you?", "Is that taken?" */
const PROMPT =
  /(?:^|[\s.,!?;:])(?:free|available|avail|avails|availability|open|booked|taken|busy|around|about|in|keen|interested|interest|game|up for (?:it|that|this|one)|working|doable|possible|tempted|yours|want (?:it|in)|(?:can|could|would|will) (?:you|u)(?: (?:do|make|manage|cover|take) (?:it|this|that|one|both|either|them))?|(?:are|r) (?:you|u)(?: (?:on|there))?|(?:you|u) (?:on|there)|deal|yes or no|y\/n|yay or nay|would it suit|how about it|what (?:do|d') ?you (?:say|think|reckon)|something you(?:'d| would)? do)\s?\?/i;
/** A question of a few words that names a day or somebody of the trade, or asks for one: "Dec 12 free?", "Photographer for 12 December?" */
const SHORT_QUESTION = /(?:^|[.!?\n])[ \t]{0,3}([^.!?\n]{3,70})\?/g;
const ABOUT_ME = anyOf(`
  free | available | avail | avails | open | booked | taken | busy | keen | you/u ... working/around/about/free/up_for | fancy | up for | suit | work for a/the/us | same again/deal | do you/u ever/also/still? do/cover/film/shoot/photograph/take ... | pencil you/u | any chance on #
 something you'd do | something you could help/do | would you | could you use
  focus puller | gaffer | graphics/playback/replay/prompter/jib/gimbal/ptz op/operator | videomaker | videographer | cameraman | cameraperson | camera op/operator/guy/person | photographer | photog | drone pilot | shooter | cam op | filmmaker | streamer | switcher | vision-mixer | sound-recordist
`);
/** What is asked of a reader who is no crew: to come, to eat, to send or to lend. */
const OTHERWISE = anyOf(`
  coming | dinner | lunch | coffee | beer | pint | drink | drinks | breakfast | call | chat | zoom | meeting | send | borrow | rent | lend | know | recommend | invoice | expect | when | change | party | birthday | did you/u | who was/were | mail | email | survey | i'm | i am | my cv | do you need | need anyone
`);
function prompts(body: string): boolean {
  if (PROMPT.test(body)) return true;
  for (const [, question = ''] of body.matchAll(SHORT_QUESTION)) if (ABOUT_ME.test(question) && !OTHERWISE.test(question)) return true;
  return false;
}

/** A thing is to be filmed. */
const MADE = anyOf(`
  want/need/like/love/get/getting/have/having/wants/needs ... filmed/recorded/taped/streamed/livestreamed/videoed/captured/covered/photographed/documented/webcast/on_film/on_camera/on_video/on_tape/filming/recording | needs/need/wants/want ... recording/filming/streaming/covering/capturing/documenting
  to be filmed/recorded/streamed/livestreamed/taped/videoed/captured/covered/broadcast/webcast | like/love/want/need/hope/hoping/wanting/plan/planning/keen/intend to film/record/stream/livestream/capture/video/document/webcast/broadcast/tape/cover | want/wants/like/love a/an/the/some/our short/small/little/brief/simple/live? film/video/recording/livestream/stream/footage/clip/highlights/coverage/documentary/transmission/photographs | want it on film/video/camera/tape
  glad/grateful/pleased/happy of/for/to have a film/recording/video | pay to have ... | have it filmed/recorded/streamed/on film | film our/my/the/us | must/should be filmed/recorded/streamed/photographed/captured | filmed/recorded/streamed/videoed/photographed please | please film/record/livestream/photograph | filming our/my/the/of_our/of_the/of_my | record our/my | stream our/my | cover our/my | shoot our/my | video our/my | filming/recording/streaming/coverage/livestream/video of/for our/my/a/the/one | get/getting ... filmed/recorded/streamed/covered/captured/documented/photographed | film our/my | ... captured/filmed/recorded/streamed/covered properly/professionally | price/quote/cost/figure/estimate/rate/ballpark for/to/on film*/record*/stream*/cover*/video*/a/one/two/three/our/the/this/that
`);
/** My price is asked for. */
const PRICE = anyOf(`
  what/how ... you/u/ye ... charge/cost/ask/bill/want_for/quote/need_for | what/whats/what's ... your rate/rates/price/prices/fee/fees/day-rate/cost/charge/going_rate/usual_rate | what/how ... ... set_us_back/come_to/it_cost/cost/be_the_damage | what's/whats the damage | how much | how mch | howmuch | your day-rate | your best/lowest rate/rates/price/prices/quote/charges/offer | your charges/fees | your rate | your rates | your price | your quote | your fee | day-rate
  quote for | quote me | quote us | a quote | quotation | quotations | soliciting/inviting bids/quotes/tenders/proposals | rfq | rfp | request for quote/quotation/proposal/proposals/tender | tender for | bid for | a bid | a price | price for | price up | ballpark | an estimate | send quote | quote please | quote pls | need quote | need a price | need a number | cost of ... filming/recording/streaming/coverage/hiring
`);

/** Ways to ask that are used: for time alone, for work, a person or a price, or only for a thing that is to be filmed; a question put to the reader is for time. */
export function asksForWork(body: string): { time: boolean; work: boolean; prompted: boolean; film: boolean } {
  const prompted = prompts(body);
  const work = [WORK, ROLE, PRICE, JOB].some((way) => way.test(body));
  return { time: TIME.test(body) || prompted, work, prompted, film: MADE.test(body) };
}
