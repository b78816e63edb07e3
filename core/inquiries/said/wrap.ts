/**
 * Words for the end of my work that the older list does not have.
 */
import { phrases } from '../phrases.ts';

/** Short words that end a day only at the beginning of their clause: "come 9, go 3", "in at 9, out at 5". */
const short = String.raw`(?=[glhaosy])(?<=(?:^|[,;.:\n|]|\band)\s{0,2})(?:go|leave|home|away|out|off|stop|you stop|you finish|you leave|you go)\b(?=\s?[:=]?\s?(?:(?:at|by|around|about|for|is)\s)?~?(?:\d|noon|midnight|half))`;

/** The label of an hour: "In: 5:30a Out: 1p". */
/** "Video away 10.30pm", "Videographer leaves: 9:30 PM" */
const ours = String.raw`(?<=(?:^|[\n.;,|–])\s{0,2})(?:video\w*|cameras?|crew|kit|you) (?:leaves?|departs?|out|off|away|released|done|finish(?:es|ed)?|home|goes)\s?[:=]?(?=\s?(?:(?:at|by|around)\s)?~?(?:\d|noon|midnight))`;
const label = String.raw`(?<![\w\u00c0-\u024f-])(?<!\b(?:check|call|time|sign|sold|days?|half)[- ])(?:out|off|fin)\s?[:=](?=\s?~?(?:\d|noon|midnight))`;

export const wrapNamed = `${short}|${ours}|${label}|${phrases(
  `
  last day # | all over bar/but the shouting # | we're/we_are/you're/you_are/you'd_be/you'll_be/everyone's/everybody's off the/our? * by/at/before/around/about # | off stage/set/air by/at/before/around? # | needs/need/wants/want us/you/everyone/everybody gone/out/clear/away/off # | all over by/at/around/about # | all over # | free man/woman/person # | liberated/dispensed at/by/from? # | final day # | packed/packing up/down/away # | adjourn* # | gets/get/got over # | locks/lock/locked # | ashore and finished # | coming off # | done and home #
  end of the? day # | down by # | comes down # | free/gone/away by/from # | gone/away for # | on your way by # | on your way home by # | need/want/keep/keeping you after/beyond/past # | {goes} at/by/around/about/after/from # | {back} back at/by # | {return} back ... at/by # | {return} ... back at/by # | back by/at/for/around # | back # | we/you stop at # | stop filming at # | everyone/everybody finishes/leaves # | everything done # | cut loose # | cut at # | kit off # | all off # | out again by # | finito #
  end/close of your/the/our? day/shift/show/service/duty/work/job/engagement/mission/assignment/filming/recording is? # | liberation/knocking-off/quitting/knock-off # | knock-off/knocking-off/quitting/home time is? # | just/honestly/please/simply/do go/leave/head_off/head_home at/by/around # | not/won't/wouldn't be needed/needing/wanted/wanting you/u? after/past/beyond # | hard stop/finish/end # | wind/winds/winding/wound up/down # | lock/locks/locked/locking up? the? doors? # | lock-up # | empty # | on the road # | done and dusted #
  de-rig complete/done/over/finished? # | strike/load-out/get-out/derig/teardown/tear-down/pack-down/packdown complete/done/over/finished? # | down tools # | call it a day # | calling it a day # | off-site # | let you/u/us go # | letting you/us go # | lets/let you/us go at/by/around # | be let go # | {out} you/u/us/everyone/everybody/us_all/you_all out/off/home at/by/around # | you're/youre/you'll_be/you'd_be/you_are right/welcome/good/fine/okay/ok to leave/go/head_off/head_home/head_out/shoot_through/shoot_off/push_off/clear_off/get_away/pack_up at/by/from/after? #
  keep/keeping/have/need/want/got/get you/u there/here? until/till/til/to # | runs/run/goes/go/lasts/last/carries/carry on? to/until/till/til # | finish-time # | finishing/finished # | est/estimated/expected/planned/latest finish/wrap/end #
  back in your car # | back on the road # | your evening is your own # | you're/you gone/out/off/away # | last orders # | clear-out # | clear/cleared # | out the door # | time to leave # | everything packed/loaded # | vans/van loaded/packed # | loaded up? #
  turn/set/cut you/u loose at/by/around # | turn/set/cut you/u loose ... # | outta there/here # | quit/quits # | last out # |
  empty/vacated by/at/before # | free at/from/by # | closed at/by # | departure from site/venue # | everybody/everyone is? out by/at? # | everything ends/finishes/is_over # |
  leaving # | done/finished/through with you/us at/by # | out for # | on the road again by/at/around # | back on the road by/at # | lingers/stays/linger/remain/remains past/beyond/after # | kill/cut the power/lights/sound at # |
  turn/turns out/off the lights at # | lights out # | in the van by/at/for # | sweep up at # | we/you/u/everyone rise/rises at # | shut_up_shop at # | take/takes/taking/get/gets/getting you/us to #| dark by/at # | empty by/at # | must be empty by/at # |
  music/band/dancing/disco/bar stops/ends/finishes at # | head/heads/heading home/off/away/out at/by/around # | hit/hits the road at/by/around # | kit out by/at # | be back there/at_the_hotel/in_town/home by/at/for # | down at/by # | through the gate again by/at # |
  you/u are/'re/r free after # | you're/youre/ur free after # | be through at/by # | struck by/at # | you out # | you off # | stay/stop/linger/wait/hang_about/hang_around/detain_you past/beyond/after # | back alongside/ashore/docked/moored at/by/for/around? # | back in/at/on the? port/harbour/harbor/marina/quay/dock/jetty/pier/slipway/mooring/land/shore at/by/for/around? # |
  leave # | be away by/for/at/before/around/from # | away for/by # | on your way at/by/from/around/after # | departure # | relieved/excused/discharged at/by/from # | gets/get/will_get/be over by/at/around # | keys back at/by # | shut by/at # | close # | last shot # | cameras/camera down # | packed at/by #
  clear/clears/clearing the building/site/house/place/premises/ground/field/park # | close/closes/closing it/up/everything at/by # | say/saying/said goodnight/good_night/goodbye/farewell to? you? on? at # | turns/turn over at # | ready to leave/go # |
  hall/room/church/stage/venue/place/house/floor bare/empty/vacated/clear/cleared by/at # | everybody/everyone/everything home/out/off/gone by/at # | stay/stays/staying until/till/til/to # | back on land/shore/dry_land/the_quay/the_pier by/at # |
  relieved/excused/discharged/relieving # | out/off/away/gone/clear/done/finished/packed no_later_than/before #  | tear-down/strike/load-out/get-out/packing shall/must/to/should be complete/completed/done by # | pens down # | house closed # | all clear # | goodbye/goodbyes/cheerio/farewells at/by/around # | shut/shuts/shutting the? doors?/up/down # | call time on it #
`,
  {
    out: `throw/throws/chuck/chucks/kick/kicks/boot/boots/turf/turfs/sling/slings/shoo/shoos/usher/ushers`,
    goes: `you/u/you'd/we can/could/may/might/will/'ll just? bail/split/scoot/slip_away/slip_off/slip_out/push_off/clear_off/shoot_off/head/head_off/head_home/head_out/head_back/run/disappear/vanish/duck_out/bow_out/clock_off/make_tracks/be_gone/be_off/be_away/get_away/get_off/sneak_off/drop_out/drive_home/set_off/go/leave`,
    back: `want/wants/need/needs/have/get/gets/take/takes/has the/their/its room/hall/venue/space/building/keys/church/stage/studio/theatre/place`,
    return: `hand/handing/give/giving/hand_over/return/returning`,
  },
)}`;
