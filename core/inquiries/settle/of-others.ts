/**
 * Days that are told of what the sender or somebody else does then, and not of the work: "I am away from 2 to 9 October", "the hall is shut on the 3rd", "booking opens on
 * 4 October", "can we talk on 2 September?", "the judges arrive on the 10th". Beside the day of the job they are none of it; alone in a message it is asked whether
 * they are.
 */
import { clauseBefore, sentenceAround } from '../parts/sentences.ts';
import { anyOf } from '../phrases.ts';
import { askedDays, MOST_MENTIONS } from './days-among.ts';
import type { EventDays, Scene, Where } from './scene.ts';

/** Up to a day: "on", "from the", "on Sunday the". */
const TO_DAY = String.raw`,?\s(?:[^\s.;:!?,]{1,14}\s){0,3}?(?:(?:on|from|at|in|is|by|of|until|till|for|around|about|between)\s)?(?:the\s)?$`;
const toDay = (list: string, lists: Readonly<Record<string, string>> = {}): RegExp => new RegExp(anyOf(list, lists).source + TO_DAY, 'i');

const be = `am | 'm | is | 's | are | 're | will be | 'll be | be`;
/** Who is away, what is shut, what is sold or handed in, what comes out, what goes on elsewhere. */
const GOES_ON = toDay(
  `
  i/we/he/she/they/i'm/we're/he's/she's/they're/i'll/we'll {be}? away/abroad/on_holiday/on_holidays/on_leave/on_annual_leave/on_vacation/out_of_the_office/off_work/out_of_town/unavailable/travelling/traveling
  my/our wife/husband/partner/boss/colleague/manager/team/office/chair/director {be} away/abroad/on_holiday/on_leave/on_vacation/out_of_the_office
  {house} {be} shut/closed/unavailable/not_available/not_free/taken/occupied/booked_by/in_use/closed_for_repairs | {house} closes/shuts for? ... | {house} has/have another/other/a_different event/events/function/booking/wedding/party/show
  booking/bookings/ticket_sales/sales/registration/registrations/entries/entry/rehearsals/nominations/applications/submissions/enrolment/enrollment/voting/box_office opens/open/closes/close/ends/end/starts/start/begins/begin
  deadline/closing_date/cut-off for entries/nominations/applications/tickets/registration/submissions is
  programme/program/brochure/catalogue/poster/posters/flyer/flyers/leaflet/leaflets/line-up/timetable/schedule/newsletter/press_release/booklet comes_out/come_out/goes_up/go_up/goes_out/go_out/goes_live/is_out/are_out/appears/is_published/is_released/is_printed/are_printed
  ferry/ferries/boat/boats/train/trains/bus/buses/lift/cable_car/shuttle does_not/doesn't/do_not/don't/isn't/aren't/won't run/running/sail/go
  we/i/they move/are_moving/'re_moving house/office/offices | clocks go back/forward | funding/grant/money/sponsorship/budget runs_out/ends/expires/must_be_spent/has_to_be_spent/needs_to_be_spent
  photographer/band/dj/caterer/florist/celebrant is/are only? free/available/away
  {they} arrive/arrives/fly_in/flies_in/travel_up/travels_up/check_in/checks_in/move_in/moves_in
  volunteers/helpers/stewards/organisers/organizers/exhibitors/stallholders/parents/players/teams meet/meets/gather | tents/tent/marquee/marquees/chairs/tables/toilets/fences/stage/flowers {be} delivered/collected/put_up/taken_down
  ticket_holders/members/children/students/pensioners/residents get_in/go/enter/come_in free/for_free/half_price | {be} paid/payable/due ... | payment/invoice/balance/deposit is
  sponsor/sponsors/client/clients/board/funder/funders/judges want/wants to see/have it/them/something | publish/post/upload/use/release/share it/them/this | it goes/will_go/is_going on/onto/up_on/out_on our/the website/channel/site/page/tv
`,
  {
    be,
    house: `hall/venue/house/church/barn/library/museum/office/offices/school/theatre/theater/building/centre/center/club/hotel/restaurant/town_hall/road/street/bridge/car_park/site/ground/grounds/park/room/rooms/shop/factory/studio`,
    they: `guests/judges/speakers/teams/players/artists/performers/delegates/visitors/families/parents/relatives/crew_members/sponsors`,
  },
);
/** What opens or begins then: as often as not it is what is filmed. */
const BEGINS = toDay(`
  website/site/page/shop/app/campaign goes_live/is_live/launches/opens/starts | launch/launching/start/starting the/our/a campaign/appeal/website/fundraiser/ticket_sale
  school/term/college/university/semester/schools/lessons/classes/half-term starts/start/begins/begin/ends/finishes/breaks_up/break_up
  the? new/next/summer/winter/coming? season starts/begins/opens/ends/finishes | move/moving/moves into/to a/the/our new ...
`);
/** When it is talked over, seen, signed or decided. */
const TALKED_OVER = toDay(
  `
  can/could/shall/may/might/would/let's/lets ... we/i/us ... talk/speak/chat/meet/catch_up/call | can/could/would/shall you/we/i ... call/ring/phone/zoom/meet/talk/speak/chat | free/available/around/time for/to a/an/have? quick/short/brief? call/chat/talk/zoom/meeting/meet/word
  talk/speak/chat/meet it/this? over? with_you/to_you/about_it/about_this/at_the_hall/at_the_venue/there/on_site/on_zoom/by_phone/on_the_phone
  show you around/round/the_ground/the_grounds/the_hall/the_venue/the_site/the_place/the_room/the_house | come/pop/drop over/by/in? and? to? look/see/view the ... | have/take a_look_at/a_walk_round the ... | site_visit/recce/walk-through/walk-round/viewing {is}? planned/possible/booked/arranged/fixed/set?
  we'd/i'd/we/i/we'll/i'll would? sign/send/return/email/post the? contract/agreement/paperwork/invoice/deposit?
  next/planning/committee/board/council/team/production/pre-production/staff/first/kick-off meeting is/'s/takes_place | there's/there_is a/our/the? planning/committee/team/production/briefing meeting/call
  committee/board/council/trustees/governors/panel/jury/directors meets/meet/sits/decides/decide/votes/vote next/again/on_it/about_it/about_this?
  announce/announcing/announced the/our ... | draw/drawing/pick/picking/choose/choosing the/our winner/winners/line-up ...
`,
  { is: be },
);
/** What was or will be in another year. */
const ANOTHER_YEAR = toDay(`
  last_year's/previous_year's/next_year's edition/one/fair/festival/event/gala/show? was/is/will_be | last/previous edition/one/fair/festival/event was/took_place/fell | next_year/last_year/the_year_before/the_year_after/in_20* it/we/ours/they was/will_be/is/took_place/were/had_it/held_it/ran/'ll_be/did_it
  the? 20* edition/one/fair/festival/event/gala/show was/took_place/fell | it/this took_place/was_held/happened/was_on
  you/your_colleague/your_team filmed/covered/shot/recorded/did our/my/the/a ... | we/i met/worked/spoke/talked you/together/with_you/at ... | we/i have worked/met/talked/spoken with_you/together | i/we saw/watched/found/got/read your/you ... | i/we wrote/emailed/mailed/called/rang/phoned/texted to_you/you
  winner/winners/jury/judges/sponsor was/were chosen/picked/announced/drawn | registration/registration_desk/booking/bookings/sale opened/closed/started/began
`);
/** When the finished film is shown. */
const SHOWN = toDay(`
  the/your/our/this/finished film/video/movie/result/recording is/will_be/gets/to_be/would_be shown/screened/premiered/unveiled/broadcast/aired | premiere/screening/broadcast/first_showing of_the_film/of_the_video/of_it is/'s/will_be/takes_place | we/i/they/we'd/we'll would/will? show/screen/premiere it/the_film/the_video/the_finished_film at ... | we/i/they/we'd/we'll would/will? show/screen/premiere it/the_film/the_video/the_finished_film
`);
const ALIVE = /\b(?:live|livestream\w*)\b/i;
const ASKED_FOR =
  /\b(?:filmed|filming|recorded|covered|captured|need you|want you|like you|you(?:'d| would) be|evening|screening itself)\b/i;
const REACH = 90;
/** What a camera is wanted for after all. */
const WANTED =
  /\b(?:film(?:ed|ing)?|record(?:ed|ing)?|cover(?:ed|age|ing)?|stream(?:ed|ing)?|captur(?:e|ed|ing)|on (?:video|camera)|video(?:ed|graphed)?|need you|want you|like you|you(?:'d| would) be|camera)\b/i;
const OF_THE_WORK = /\b(?:you(?:'d|'ll)? (?:arrive|meet|come|film)|shoot(?:ing)?|filming|crew call|load[- ]in|get[- ]in|call time)\b/i;

/** True for a date that its clause tells of something else than the work. */
export function isOfOthers(text: string, { start, end }: Where): boolean {
  const lead = clauseBefore(text, start, REACH);
  const rest = text.slice(end, sentenceAround(text, start, end).end);
  if (ANOTHER_YEAR.test(lead)) return !/\b(?:again|and (?:this|next) (?:year|time))\b/i.test(rest);
  if (SHOWN.test(lead)) return !ALIVE.test(lead) && !ASKED_FOR.test(rest);
  if (WANTED.test(lead) || WANTED.test(rest) || OF_THE_WORK.test(lead)) return false;
  return GOES_ON.test(lead) || TALKED_OVER.test(lead);
}

/** True for a date on which something opens or begins, where nothing is said of filming it. */
function beginsThen(text: string, { start, end }: Where): boolean {
  const lead = clauseBefore(text, start, REACH);
  const rest = text.slice(end, sentenceAround(text, start, end).end);
  return BEGINS.test(lead) && !WANTED.test(lead) && !WANTED.test(rest) && !OF_THE_WORK.test(lead);
}

/** The days, or as a question where every one of them is told of something else. */
export function heldAgainstOthersDays({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  if (event.dates.length === 0 || event.dropped || event.counted) return event;
  const named = mentions
    .slice(0, MOST_MENTIONS)
    .filter(({ past, readings }) => !past && readings.some((days) => days.some((day) => event.dates.includes(day))));
  const theirs = named.length > 0 && named.every((mention) => isOfOthers(text, mention) || beginsThen(text, mention));
  return theirs ? askedDays(event.where, [event.dates], 'open') : event;
}
