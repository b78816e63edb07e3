/**
 * Hours of what goes on beside the work: when I am fed, when my room is free, until when somebody can be reached, when a street or a lift is closed, when those who filmed before came.
 * A clause in which I am told to come, to film or to go is never one of these.
 */
import { clauseBefore, clauseBehind } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';

/** What makes a clause one of the work, whatever else it speaks of. */
const OF_WORK = anyOf(
  `
  come/comes/coming/arrive/arrives/arriving/arrival/start/starts/starting/begin/begins/report/meet/meets/load/loads/loading/rig/rigs/rigging/wrap/wraps/finish/finished/leave/leaving/stop/film/films/filming/filmed/shoot/shooting/record/recording/cover/covering/stream/streaming/work/working/call_time/set_up/setting_up/pack/packed/packing
  you/u/you're/you'd/you'll/crew/everyone are/will/would/can/should? be? then? {gone} | be {gone} | be in place | be on site/hand/board/deck | be with us | join us | need you | want you | like you | expect you | have you in/there/here/from/on_site | get in | get there | get-in | bump-in | off you go | knock off | you/u/video/crew can/could/may go/leave/head/split/scarper | let you go/in | let/cut/set/turn you/u/youse loose/free/go | see you
  contractors/suppliers/vendors/crew/technicians are/get/will_be let/allowed/admitted | be at/on/by/inside/outside the/our/my | call's | the call is | open/opens/opened/unlocked/unlocks for/to you/contractors/suppliers/vendors/crew/technicians
`,
  { gone: `there | here | ready | needed | wanted | off | done | free | out | gone | away | home | finished | released | excused` },
);
/** Meals of the crew. */
const FED = anyOf(
  `
  you/u ... eat/dine/fed/lunch/dinner/supper/breakfast/meal/plate/buffet/sandwiches/pizza/curry | feed you/u/the_crew/crew | {meal} ... for/with you/u/the_crew/crew/helpers | crew ... {meal} | list for {meal} | {meal} for/is/are on us
`,
  { meal: `meal/meals/lunch/dinner/supper/breakfast/tea/plate/food/catering/buffet/seat/sandwiches/bite/eats` },
);
/** Where I sleep. */
const LODGED = anyOf(`
  check-in/check-out/checkout/checkin/checking_in/checking_out ... hotel/inn/room/hostel/b&b/airbnb/flat/apartment/lodge/guest_house/cottage | hotel/inn/room/hostel/b&b/airbnb/flat/apartment/lodge/cottage ... check-in/check-out/checkout | check-in/check-out is/from/by/until/time/opens/closes
  your hotel/inn? room/rooms/bed/flat/apartment/cabin/chalet/cottage ... is/are/be/will/'ll ready/free/yours/available | your room/bed/flat/apartment/cabin ... free/ready/available/yours | keys/key to/for your/the room/flat/apartment/cabin | your room/bed/flat/apartment/cabin ... from/until/by/be_had | guests/guest in by | hotel reception/desk/bar/breakfast
`);
/** By whom and when somebody can be reached. */
const REACHED = anyOf(`
  ring/phone/call/text/reach/message/speak_to/talk_to/get_hold_of/get me/us/him/her/them | ring/phone/call/text/message/speak_to/talk_to the_venue/the_hall/the_office/the_hotel/the_theatre/the_manager/the_box_office/my_office/our_office | answers/answer the phone/phones/calls | if you/u/you're/ur are? at_home/about/around/up/awake/near_a_phone | if you/u/you're/ur are? in at/by/around/before/after/from
  my phone is off/on | i'm/i_am at_work/at_my_desk/in_the_office/at_home/in_a_meeting/in_class/teaching/travelling/on_a_train/on_a_plane/at_the_dentist/asleep | phone lines/line/calls | have/has a/another look at/round | caretaker/janitor/porter/concierge sleeps/is_in/is_away | you'll/you_will get my call/mail/message/text
`);
/** What is open, shut, on or off by hours of its own. */
const OPEN_OR_SHUT = anyOf(
  `
  {thing} ... is/are/'s/was/will/goes/go/comes/works/work/runs/run/stays/stay ... closed/open/shut/locked/blocked/on/off/free/best/down/up/available/valid/one-way/private/booked/let | {thing} closed/shut/blocked/locked from? | {thing} works/runs/opens/closes/shuts/stops/locks/ends | {thing} is/are/until/till/til/from | you/u can/could/may/can't? park | parking is/from/until | licence/license/permit is/until/runs/ends/valid
  another/other/a_different group/club/class/party/wedding/event ... room/hall/venue/space/stage | market/markets in/on the square/street/green | yoga/pilates/zumba/bingo/choir_practice/band_practice
`,
  {
    thing: `internet/wifi/wi-fi/power/electricity/electric/heating/boiler/air_con/water/gas/lift/lifts/elevator/escalator/street/streets/road/roads/lane/bridge/motorway/tunnel/square/market/gate/gates/barrier/alarm/generator/signal/toilets/cloakroom/shop/shops/supermarket/chemist/bank/pool/sauna/library/museum/car_park/bus_lane/light_in_the_hall/natural_light/church_bells`,
  },
);
/** Those who decide, meet without me to do so. */
const DECIDED = anyOf(`
  committee/board/council/trustees/panel/jury/planning/parish/production/team/staff? meeting/meet/meets/sits/sit ... to/and decide/discuss/choose/vote/settle/plan/talk/finalise | meeting/zoom/call to decide/discuss/choose/plan | tender/bidding/bids/submissions/applications/nominations/entries/slides/talks/voting close/closes/closing/have_to_be_in/must_be_in/due/open/opened
`);
/** Who filmed before, and how it was then. */
const BEFORE = anyOf(`
  our/the/my last/previous/old/former/other videographer/photographer/cameraman/film-maker/filmmaker/crew/guy/chap/bloke/firm/company/one | the man/woman/chap/bloke/guy/people/lot/firm we had/used | who/whoever filmed/did_it last/before
`);
/** What I need not stay for. */
const SPARED = anyOf(`no need to stay/film/cover for ... | dancing/disco/dinner/rest after/at/from ... needs/need no filming`);
const KINDS = [FED, LODGED, REACHED, OPEN_OR_SHUT, DECIDED, BEFORE, SPARED];
const [REACH, REACH_BEHIND] = [80, 40];

/** True where the clause of an hour tells of something beside the work. */
export function besideTheWork(text: string, { start, end }: { start: number; end: number }): boolean {
  const before =
    clauseBefore(text, start, REACH)
      .split(/\b(?:and|so|then|but)\s(?=(?:you|u|we|i|please|the|video|crew|cameras?)\b)/i)
      .at(-1) ?? '';
  const behind = clauseBehind(text, end, REACH_BEHIND).split(/\b(?:and|so|then|but)\b/i)[0] ?? '';
  const clause = `${before} ${behind}`;
  // "Call - 06h30 crew breakfast"
  if (CALL_ROW.test(text.slice(Math.max(0, start - ROW_REACH), start))) return false;
  // "Crew breakfast and call at 7:30"
  if (/\b(?:call|call time)(?: is)?(?: at)?:? ?$/i.test(before) && !/\b(?:phone|zoom|video|conference|my|ring)\b/i.test(before))
    return false;
  return !OF_WORK.test(clause) && KINDS.some((kind) => kind.test(clause));
}
const CALL_ROW = /(?:^|\n|[.;] )[\s*•-]*(?:\d{1,2}[.)] ?)?(?:crew |your )?call(?: time)? ?[:–-] ?$/i;
const ROW_REACH = 32;
