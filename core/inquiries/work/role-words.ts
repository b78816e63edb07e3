/**
 * The words for each kind of work: who does it, what is done, what comes of it.
 */
import type { Role } from '../../contract/parts.ts';
import { anyOf } from '../phrases.ts';

/** Somebody at a machine, whatever the machine. */
const hands = `op/ops/operator/operators/operateur/operador/tech/techs/technician/engineer/person/people/man/woman/man/woman/men/guy/girl/lad/lady/bod/hand/crew/specialist/chap/fella/dude/wrangler/body/human/bloke/handler`;

/** Words that name one kind of work wherever they stand. */
const plain: readonly (readonly [Role, string])[] = [
  [
    'second camera',
    `{second} {camera} {hands}? | b camera/cam/cams/shooter/op/operator {hands}? | bcam {hands}? | cam/camera/cams/cameras two/2/b {hands}? | second shoot/shooting | 2nd shoot | to/would_you/you/and second for me/us | second pair of hands/eyes on/behind? camera/the_camera | another/extra/second/2nd pair of hands/eyes on/behind/with camera/the_camera/a_camera
    cameraman/camerawoman/cameraperson/shooter/videographer/operator number/nr/no two/2 | as my/our/his/her/a/the? {second} {camera} {hands}? | as my/our/his/her/a? second | be/being my/our/his/her second | be/as my/our/his/her number/no two/2 | you'd/you/you're/u be? on? the? b | you'd/you/u/youd/you'll would? be the? second/number/no one/man/person/two/2 | {camera} #2/no_2/number_2 | on b | on cam/camera b/two/2 | on the b | the b | roving/roaming second
    zweite/zweiten/zweiter/2. kamera/kameramann/kamerafrau/mann_an_der_kamera | kamera 2/zwei/b | deuxième/second/seconde/2e/2ème caméra/cadreu*/cadre | caméra 2/b/deux | cámara 2/b/dos | segunda/segundo cámara/camara/operador/camarógrafo | seconda camera | camera due/twee | tweede camera/cameraman | 2e camera/cameraman`,
  ],
  [
    'vision mixing',
    `vision mix/mixer/mixers/mixing/mixes {hands}? | image/images/pictures mixer | mix/mixing of the? images/pictures/cameras/video/vision | visionmix* | video/picture/screen mix/mixer/mixing | switcher/switchers {hands}? | vision job/gig/role/position/engineer/op | technical/tech director/directing/direction | direct-switch* | td position/role/job/gig/spot/seat/chair/needed/wanted/required/on/the/for/a/an/our/who
    a/our/the/as/need/your/be/you/want/for/of/is/being/no td | switch/switching/cut/cutting the/a/an/our/my/your/their/her? show/shows/cameras/cams/feed/feeds/live_show/gig/pictures/event/sources/inputs/programme/program/live_stream/livestream/stream/webcast | switch/switching/cutting/mix/mixing between/live | cut live | cut/cuts/switches/mixes between the/our/them/cameras/cams/feeds/angles/sources/two/three/four | switch for/at/onto | switching for/at/onto/on | switch/switching the/it/them imag/screens/big_screen/output/onto/to | do/doing/does/handle/run the switching/mixing/vision | who/one_who/person_to switches/mixes | mix/mixing the/our/all? {count} cameras/cams/feeds/inputs | be/our/a/video mixer | call/calling the? shots and switch/cut | only the mixing | switch/switching/mix/mixing/cut/cutting {count}? cams/cameras/feeds/inputs | switch/switching a/an live | switch/switching/mix/mixing/cut/cutting a/the/our? {count} cam/camera/way/input | mix/mixing the/a/our/an/all? show/cameras/pictures/vision/cams/feeds/streams | live/camera/video/vision switching | camera/video switch | {count} camera/cam/way/input switch
    can/could/would/will/want/need you/u/ye to? switch/td | to switch the/a/our/for/live/between | to td | on/behind/operate/run/work/drive/man/at/handle/doing/running/driving/operating/manning the/our/a/an? switcher/switch/mixer/vision_desk/video_desk/video_mixer/vision_mixer/cutting_desk/desk_and_cut | cut live | cut/cutting it/them/this/these/the_two/both live | live cut/cutting | live-switch* | switch/switching/switched a/an/the/our/my/your ... {shows} | punch/punching the/a/our? show/cut/cuts/cameras | calling/call the cut/cuts | mixing job/gig
    bildmisch* | mistura/misturador de? vídeo/imagem | regie/bild mischen | live cut | videomisch* | bildregie | beeldmix | videoregie | à/en/pour la? régie | régie vidéo | schakeltechni* | mélangeur | mélangeuse | mixage vidéo | réalisateur | réalisatrice | realizador* | realización en directo | réalisation en direct | mezclador* | mezcla de vídeo | regia video | mixer video | regista | mesa/mesas de mezclas/mezcla de? vídeo? | operator/operators of/at/on/for the/a/our? video? mixer/switcher | mix/mixing of the/our/all/these/those/my? two/three/four/five/six/several/house/stage/live? house/stage/live? cameras/cams/feeds | mixpult | bildpult | bild-misch* | bild mischpult | videopult | regiepult | beeldmenger | beeldmixer | beeldregie | schakel* | am mischer`,
  ],
  [
    'livestream',
    `live stream/streams/streamed/streaming/streamer/streamers {hands}? | livestream* {hands}? | streamed | streaming {hands}? | stream {hands} | streamer | streamers | stream | streams | webcast* {hands}? | webdiffusion | webstream* | web-stream* | simulcast* | relay/relays/relayed/relaying it/this/the/our? live | live relay | live, on/over the? internet | live in internet | transmission in/on/over the? internet | see/watch/follow it/this/us by/on computer | live broadcast/feed/link/webcast/broadcasting/transmission | transmit/transmitted/transmitting/transmission live | join/joins/joining/joined by/via/over/through the? internet/zoom/teams/video_link | streamtechni* | broadcast/broadcasting/broadcasts ... live/online | broadcast/broadcasting it/this/the/our/them/its/their/his/her/your/every/each/all | out live | share/show/shown/shared it/this/them/everything live | internet/web/online as it/they happens/happen | watch/see/follow ... as it/they happens/happen | as it/they happens/happen on/over the internet/web | out on/over the web/internet/air | half online | online half | {wants} it/this/them/that/everything online for | follow it/along/this/us from home/afar/abroad/there | encoder | hybrid event/meeting/conference/session/agm/seminar/workshop/day | live transmission | want/wants/need/needs/have/has/show/get/get_it/put it/this/them/everything/these live | be/been/is sent ... live | emit/emitted/emitting/transmit it/this/them/the/our ... live/online | live in/into/over the net/web | shown/show/online live | on the internet as_it/for his/her/their/our/my/those/them/people/family/families/everyone/anyone/relatives/friends/grand*/parents/the/all/whoever | {put} it/this/them/us/him/her/the/our ... {service} on/onto/over the internet/web | {put} it/this/that/them/us/him/her/both/everything on/onto/over the internet/web | live on mobile/phone/phones/the_internet/internet/online | broadcast/broadcasted on/over/to the? internet/web | streem* | see/follow/watched live
    go/goes/going/went/put/putting/send/sending/sent/be/shown/show/showing/get/out it/this/them/him/us/the/everything? out/up/on/over? live on/to/over/via/onto/for | get/put/send/show/have/putting/sending/getting the/our/my/your/a/this/these ... live on/over/via/onto/to | live on/over/via/onto the/our/a? web/internet/website/page/channel/net | over/on/via the web live
    live im/ins internet/netz | transmit* ... em/en direto/directo | ins/übers internet | transmiti-la | transmiti-lo | live übertragen/übertragung/streamen/streamt | watch/watching/follow/following/see/tune_in/join it/along/this/us/them/everything/in? live/online/remotely/live_online/from_home/from_afar/from_abroad | übertragung | übertragen | livestream-* | streamtechni* | streamingtechni* | liveübertragung | streamen | gestreamt | en/in direct/directo/diretta | diffusion en direct | diffuser en direct | retransmi* | emisión en directo | diretta streaming | uitzenden | live uitzenden`,
  ],
  [
    'photo',
    `photograph/photographs/photographed/photographing | photographer/photographers/photography/photographic/photographe/photographes/photographi* | photo/photos/phots/foto's {hands}? | photo shoot/shoots/coverage/gig/job/session | photoshoot* | fotos/foto/fotó* | fotograf* | fotógraf* | fotograaf | fotografie | tog/togs/photog/photogs/snapper/snappers | stills {hands}? | stills camera/shooter/photos/photography | still photos/photography/photo/images/pictures/shots/ones/camera/photographer | pics/pix/snaps/headshots/headshot | portraits | pictures/images/shots of | take/taking the/our/a/one team/group/class/school/squad/club/staff/family picture/photo
    take/taking/takes/taken/grab/grabbing/get/getting/snap/snapping/have/had/do/doing/shoot/shooting some/a_few/the/our/their/nice/good/group/team/candid/proper/lots_of/lots/family/press/loads_of/us/event/our? pictures/portraits/snaps/shots/stills/images | snap/snapping away | snap/snapping the/our/a/some/it/us/them | want/wants/need/needs/like/after/wanting/for/with/and/is/it's/do/me/us/them/him/her/say/means/only/just/the/nice/good/some/few/proper/decent/lovely/professional/official/of/prefer/called pictures/images | pictures/images and/of/from/only/rather/not/instead/please/pls/needed/wanted/for`,
  ],
  [
    'audio',
    `sound/audio/boom recordist/mixer/mixing/recording/recordings/assistant/assist/utility/lead/recorder/supervisor/designer {hands}? | sound/audio/boom/pa/mic/foh/broadcast_audio/rf/radio_mic/wireless {hands} | soundie/soundies/soundo/soundos/soundman/soundguy/soundperson | recordist/recordists | sound/audio only | only/just/it's/its/purely the? sound/audio | location/live/field/production/event/corporate/broadcast sound/audio | foh | front of house sound/audio/mix/mixing/engineer | a1/a2/a3 | audio {hands} | boom | sound man/woman
    record/recording/mix/mixing/recorded/capture/capturing/capture/running/run/operate/do/doing/handle/handling/look_after/looking_after/cover/covering/take/taking/taking_care_of/take_care_of/man/manning/engineer/provide/providing/manage/managing/work/working the/our/your/my/all/live/some/their/two/three/four/six/eight? sound/audio/mics/microphones/pa/sound_desk/audio_desk | sound/audio recorded/captured/mixed/needed/wanted/required/missing | on/at/doing/behind/need/needs/want/wants/lack/lacking/missing/require/seeking the? sound/audio/mics/microphones/sound_desk/audio_desk/sound_board/mixing_desk | a good/decent/proper microphone/mic | mix/mixing the/our/a/two/three/some? band/bands/choir/music/set/concert/acts/orchestra/singers/quartet | mixing front of house | mic/mike/micing/miking/mic'ing up | multitrack* | stereo recording | mixing desk | sound/audio desk | sound/audio job/gig/day/role/position/shift/work/spot/slot/side/cover/booking/call
    prise de son | ingénieur du son | ingé son | preneur/preneuse/preneu* de son | au/le son | perchman | perchiste | sonidista | técnico de sonido | tonico | fonico | el sonido | geluidsman | geluidstechnicus | geluid | ton nur/aufnehmen/aufzeichnen/aufnahme/aufgenommen | nur/für/am/beim/den/der/bitte ton | tonaufnahme* | tonassistent* | tonmann | tonfrau | tonmeister* | tontechniker*`,
  ],
  [
    'other',
    `drone/drones/uav {hands}? | drone pilot/pilots/footage/shots/work/flying/filming/video/shoot | operate/run/running/operating/drive/driving/on the/our/your? graphics/prompter/autocue/teleprompter/slides/playback/lights/lighting/projection/drone/titles/captions | fly/flying a/the/your/our drone | aerials | aerial footage/shots/filming/video | prompter/teleprompter/teleprompters/autocue/prompteur/prompteurs/prompteuse {hands}? | call/calling the? show/cues | run/running the? cue_sheet/cues | oberbeleuchte* | beleuchter* | einleucht* | gaffer/sparks/spark/best_boy | lighting/lights/lx/graphics/gfx/playback/jib/replay/slides/crane/projection/led/powerpoint/media_server/cg/titles/caption/comms/evs {hands} | lighting designer/assistant/director | key grip | grip | production assistant | runner | focus puller | camera/video assistant | 1st/first/2nd/second ac | video {tech} | dit/digi {hands}? | dit work | data wrangler/loader | cable page/puller/basher | camera utility | drohnenaufnahme* | drohnenpilot* | aerial shots/pictures/photos/views | projectionist/projectionists | zuspieler | einspielung* | judge/teach/run/lead/give/hold/deliver/do/tutor a/our/the/one/some/two/hands-on? ... workshop/lesson/lessons/masterclass/class/course/tutorial/training | do you? teach/tutor/judge | be a/our/the? judge/tutor/mentor | data {hands} | lighting package/rig | rig ... lights/lighting | run/do/doing comms | playback | stage manager | shader/shaders | show caller | floor manager/director`,
  ],
];

const lists = {
  wants: `need/needs/want/wants/like/have/having/get`,
  hands,
  second: `second/2nd/third/3rd/fourth/extra/additional/another/two_extra/spare/1_more/one_more/roaming_second/second_unit`,
  camera: `op/camera/cam/cameras/shooter/cameraman/camerawoman/cameraperson/camera_operator/videographer/operator/angle/camera_angle/video_shooter/video_person/video_guy/video_man/person_on_camera/person_on_video/camera_op/filmer/camera_person/cam_op/body_on_camera/videog/filmmaker/dop/dp/shooters/cameras/operators`,
  shows: `show/shows/slam/concert/conference/service/services/gala/tournament/awards/wedding/panel/debate/match/game/games/graduation/ceremony/summit/keynote/keynotes/session/sessions/festival/recital/musical/play/fight/wrestling/derby/final/finals/agm/congress/symposium/forum/banquet/pageant/event/events/meeting`,
  put: `put/get/like/want/have/show/send/need/see/putting/getting`,
  service: `mass/service/funeral/ceremony/wedding/talk/lecture/concert/meeting/event/show/game/match/memorial/graduation/recital/play/agm/half/thing`,
  count: `two/three/four/five/six/seven/eight/2/3/4/5/6/7/8/multi`,
  tech: `tech/techs/technician/technicians/engineer/engineers`,
} as const;

/** Filming: a person or a deed that can be nothing else. */
const filming = `film/films/filming/filmed/filmer/filmin/filmin'/filmmaker/filmmakers/filmmaking | videographed/videograph | film maker/makers | videographer/videographers/videography/videog/videogs/vidgrapher/vgrapher/vidiographer/videogropher | camera/cam/cams/cameras/video/steadicam/gimbal/ptz/eng/handheld/long_lens {hands} | camera {hands} | cameraman/cameramen/camerawoman/camerawomen/cameraperson/camerapeople/cameraop/camerawork | camo/camos | video/film/vid shoot/team/coverage/production/recording/recordings/company/shooter/crew | video/videos/vid/vids/vidio/vidios/vidoes/videoed/videoing/videod/video'd/videotap* | taped | taping | tape of/our/the/this/it/a/my/them | to/you/and/please tape | b-roll | gimbal | ptz | cinematograph* | lighting camera* | dop/dops/dp/dps | cam/camera a/1/one | {wants} it/this/him/her/them/that/everything shot | on tape | in the can | hold a camera | crew/cam/camera op/ops | recaps/recap of/video/film/reel/in/by | highlights/highlight/sizzle/show reel/reels | after movie | aftermovie | sizzle
  kameramann | cameraploeg | filmploeg | kameracrew | kamerateam | équipe de tournage | equipo de grabación | kamerafrau | kameraleute | kamera | filmen | filmt | filmst | gefilmt | mitfilmen | aufnehmen | aufzeichnen | aufzunehmen | aufzeichnung | videograf* | videoaufnahme* | dreh | drehen | filmez | filmé | filmée | filmés | filmées | filmeren | gefilmd | rodaje | rodar | riprendere | riprenda | riprendano | riprenderlo | riprenderla | riprenderci | chi riprende | filmarlo | filmarla | filmarci | filmar | vidéaste | vidéo | cadreur | cadreuse | camarógraf* | videógraf* | operatore | riprese | tournage | captation | caméra | grabar | grabe | grabes | grabéis | grabarnos | grabarlo | grabarla | grabando | graba/grabe/grabas/graben la/el/todo/una/nuestra/nuestro | mitschnitt | videograaf | grabación | filmación | cámara | vídeo | videomaker | filmare | gravar | filmagem | cinegrafista`;

/** Words that are another thing more often than work: they count only where somebody is asked for them in so many words. */
const loose: readonly (readonly [Role, string])[] = [
  ['audio', 'sound | audio | pa | ton | son | mic | mics | microphone | microphones'],
  ['vision mixing', 'switch | switching | td | vision'],
  ['photo', 'pictures | images | shots | snaps'],
];

/** Words that go with filming, and with other work as well. */
const general = `a camera | camera | cameras | cam | cams | cover/covers/covered/covering our/the/a/an/my/it/this/some/that/these/us/for/one/two/them/all | covered | coverage | shoot/shoots/shooting/shooter/shooters | record/records/recorded/recording/recordings | capture/captured/captures/capturing | ops/operators | operator | an/one/two/another/need op | operating | footage | long lens | eng | interviews | talking heads | vox pops | reel/reels | content | highlights | promo | documented | document our/the/it/this`;

/** How much a word says by itself: what it names, filming among other work, or little. */
type Weight = 'plain' | 'general' | 'loose';
/** A kind of work and the words that name it; `plainly` where other work than filming is asked of me in so many words, `unsaid` where only an occasion is named. */
export type RoleHit = { role: Role; start: number; end: number; text: string; plainly?: boolean; unsaid?: boolean };
export type Word = RoleHit & { weight: Weight };

/** "you'd be the second", "our second's got covid", "I need a second": the second camera by its number alone. */
const SECOND =
  /(?<![\p{L}\d])(?:2nd|second) (?:to|on|under|behind|next to|alongside) (?:my|our|the|his|her) (?:main |own |lead |A[ -]?|first )?cam(?:era)?(?!\p{L})|(?<![\p{L}\d])(?:(?:be|as|is|'d be|'ll be) (?:the|my|our|her|his|their)|(?:want|wants|need|needs|looking for|missing|lost|after|find) (?:a|my|our)|our|my|shooting) second(?= ?(?:[.,;!?)]|$|'s |(?:for|on|at|to me|to us|got|is|has|was|had|can't|cancelled|dropped|pulled|fell|today|tomorrow)(?!\p{L})))/giu;

/** "My aunt can't come, so it has to be live" */
const FROM_AFAR =
  /(?<!\p{L})(?:can'?t|cannot|unable to|not able to) (?:come|be there|travel|make it|attend|fly)[^.;!?\n]{0,50}(?<!\p{L})live(?!,? (?:by|from|in|at|here|there|abroad|far|too|music|band)(?!\p{L}))(?!\p{L})/giu;

/** "I have the lead camera and am permitted a second one", "I've the first camera and they pay for a second" */
const SECOND_ONE =
  /(?<=(?<!\p{L})i(?:'m|'ve| have| am| do| take)(?: got)?(?: on)? (?:the |my )?(?:first|lead|main|number one|a) cam(?:era)?(?! (?:bag|battery|body|kit|lens))(?!\p{L})[^.;!?\n]{0,70}(?<!\p{L})(?:need|want|permitted|allowed|pay(?:s|ing)? for|budget for|money for|afford|looking for|find|after|could use|could do with|like) )a second(?: one)?(?= ?(?:[.,;!?)\n]|$))/giu;
/** "the live mixing of the main stage, three cameras plus slides" */
const MIXED_LIVE =
  /(?<!\p{L})live mix(?:ing)? (?:of|from|between|with)(?= [^.;!?\n]{0,50}(?<!\p{L})(?:\d|two|three|four|five|six|several) (?:cameras|cams|camera feeds)(?!\p{L}))/giu;

const patterns: readonly (readonly [Role, Weight, RegExp])[] = [
  ['shoot', 'plain', /(?<!\p{L})moving (?:images?|pictures?)(?!\p{L})/giu],
  ...plain.map(([role, list]) => [role, 'plain', anyOf(list, lists, 'gi')] as const),
  ['second camera', 'plain', SECOND],
  ['second camera', 'plain', SECOND_ONE],
  ['vision mixing', 'plain', MIXED_LIVE],
  ['livestream', 'plain', FROM_AFAR],
  ['shoot', 'plain', anyOf(filming, lists, 'gi')],
  ['shoot', 'general', anyOf(general, lists, 'gi')],
  ...loose.map(([role, list]) => [role, 'loose', anyOf(list, lists, 'gi')] as const),
];

/** Every word for a kind of work, the particular before the general; a stretch of text counts once. */
export function workWords(text: string): Word[] {
  const words: Word[] = [];
  const plainly = text.replaceAll('-', ' ');
  for (const [role, weight, pattern] of patterns)
    for (const match of plainly.matchAll(pattern)) {
      if (NO_WORK.some(([word, next]) => word.test(match[0]) && next.test(plainly.slice(match.index + match[0].length)))) continue;
      const [start, end] = [match.index, match.index + match[0].length];
      if (role === 'vision mixing' && FLICKED.test(plainly.slice(Math.max(0, start - LEAD), start))) continue;
      if (role === 'photo' && PICKED.test(plainly.slice(Math.max(0, start - LEAD), start))) continue;
      words.push({ role, start, end, text: match[0], weight });
      if (words.length >= MOST_WORDS) return words;
    }
  return words;
}
/** "choose the pictures for the stream", "aerial shots of": those of cameras that run. */
const PICKED =
  /(?<!\p{L})(?:choos|chose|pick|select|switch|decid|cut(?:s|ting)? between|mix|find|plan|work(?:ing)? out|line (?:up )?|frame)\p{L}* (?:(?:between|among|from|which|what|of) )?(?:(?:the|your) )?$|(?<!\p{L})(?:aerial|drone|video|moving|tracking|gimbal) $/iu;
/** "We flick the switch at six": that of a lamp. */
const FLICKED = /(?<!\p{L})(?:flick|flip|throw|hit|pull|press|push)(?:s|ing|ping)? (?:the|a|that|its) (?:big |old )?$/iu;
const LEAD = 30;
/** "camera op de finish" in Dutch, "una foto de familia" at the end of a performance: what follows makes the word something else. */
const NO_WORK: readonly (readonly [word: RegExp, next: RegExp])[] = [
  [/^cam(?:era)? op$/i, /^ (?:de|het|een|elk|zijn|\p{Ll}{3,6}dag)(?!\p{L})/iu],
  [/^boom$/i, /^ arms?(?!\p{L})/iu],
  [/^(?:foto|photo)$/i, /^ (?:de (?:familia|famille|grupo|groupe)|di (?:gruppo|famiglia))(?!\p{L})/iu],
];
/** More than a message has; a list of prices or a bulletin is not read to its end. */
const MOST_WORDS = 400;
