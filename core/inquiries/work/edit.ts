/**
 * An edit of pictures that exist: nothing is to be filmed.
 */
import { anyOf } from '../phrases.ts';
import type { RoleHit } from './role-words.ts';

/** An edit is asked for. */
const EDIT = anyOf(
  `
  {want} ... editor/cutter/edit/editing/re-edit/recut/re-cut/post/colourist/colorist/cutting_together/cut_together | {you} ... edit/re-edit/recut/re-cut/cut_together/cut_down/trim/cut_it/cut_them/cut_this/cut_our/cut_a/cut_my/cut_the/edit_it/splice/tidy_up | editing/edit/post/cut only/gig/job/work | edit of/on our/my/the/some/about | editing/post/edit on its/their own | editor/cutter needed/wanted/required/sought | post-only | {turn} it/them/this/that/these/everything/our_footage/the_footage/the_rushes/our/the into a/an/one/some/something | {turn} ... out_of it/them/this/our/the/what/that/clips/footage/videos/recordings/tapes/phone_clips/phone_footage | {turn} us/me? a/an ... film/video/something of/out_of/from it/them/this/that/footage/our_footage/the_footage | trimming | shorten a/an/the/our/my/it/this ... recording/recordings/film/video/footage/talk/talks | is editing something | offline/online/assistant/promo/freelance/remote editor | {want} it/them/this/that/everything/these ... edited/tidied_up/cut_into/cut_down/cut_together | subtitles/captions/titles and/& a? trim/trims/cut/edit/export/colour/color | put/cut/stitch/piece/string/pull/edit the/our/my/all/these? footage/clips/material/rushes/videos/recordings/films/vids together | post-production | do/doing the/all_the/some cutting/editing | somebody/someone/person/editor for assembly | they/them/these/those be? put/joined/cut/stitched together | montar el/un/nuestro resumen/vídeo/video | todo el montaje | footage/material/clips/rushes/recordings/tapes/tape/them/it/interviews ... put/cut/stitched/pieced/strung/edited together | wants/needs cutting/editing | cut/chopped/boiled into/down_to | nobody/no_one/none_of_us/nobody_here to/can/who_can/knows_how_to edit/cut | cut/edit what we/you/they/i shot/filmed/recorded/have | cutting ... into/down_to ... clips/films/videos/stand-alone/highlights/minutes | cut/cuts/made from it/them/this/that/footage/our/old/existing/last_year's | {you} ... chop/stitch/boil | könntest/könnten/kannst/können ... schneiden | schneidest/schneiden du/sie | zusammenschneid* | fehlt nur/noch der? schnitt | juste le montage | daraus/davon einen/ein/eine kurzen/kurzes/langen? film/video | make/made something of/out_of it/them/this/that | make/made/ad/film/video/clip/reel ... from/out_of that/it/them | made from/out_of the/our/old/some games/tapes/photos/footage/videos/clips | ad/film/video/reel/something out of it/them/this/that | to just cut/edit | {you} cut something | {seek} ... monteur/monteuse/montatore/montatrice/montador/montadora/cutterin | {want} them/it/this/everything made/turned/cut/edited into | for the edit | year-in-review cut | doco/documentary/film/video edit/editor | got/have/just/basically/simply/purely/mostly an? quick/small/short/simple? edit | job/gig/work ... edit | sync | stuck/lost/replac* ... editor | editor ... has/is/was/went/fell/quit/left/cancelled/retired | never/can't/cannot cut/edit/edited | nadie sabe/puede montar | für/mit/den/beim den/im? schnitt | geschnitten | te monteren | pour/à/de les/le/la? monter | {want} ... monter/montar/montare/monti/monteren | {want} ... montage de
`,
  {
    seek: `necesito | necesitamos | busco | buscamos | preciso | precisamos | cerco | cerchiamo | cherche | cherchons | recherche | recherchons | suche | suchen | zoek | zoeken`,
    want: `need | needs | want | wants | wanting | looking for | seeking | after | time for | time to | up for | quote for | quote on | price for | price to | interested in | require | requires | someone to | somebody to | someone who can | somebody who can | like | help | do | for | offer | take on | can | love | only | just`,
    you: `you | u | you'd | someone | somebody | who can | able to | available to | free to | time to | anyone | us to | quote to`,
    turn: `turn | make | turning | making | shape | cut | get | build | put | craft | pull | boil | create | produce | edit | trim | assemble | stitch`,
  },
  'gi',
);
/** Words that ask for the deed or its doer, and not for a film that may have to be shot first. */
const PLAINLY = anyOf(
  `{you} edit/re-edit/recut/re-cut/trim/splice | {you} do? editing | is editing something | offline/online/assistant/promo/freelance/remote editor | {seek} ... editor/cutter | editor/cutter needed/wanted/required/sought | re-cut/re-edit the/our/my/last/this/it | post-production | subtitles/captions/titles and/& a? trim | our/my/the/their usual? editor ... has/is/was/quit/left/fell/can't/went`,
  {
    you: `you | u | you'd | you please | you possibly | someone to | somebody to | who can | able to`,
    seek: `need | needs | want | looking for | seeking | after | hiring`,
  },
);
/** Pictures that exist, and nothing more to film. */
const EXISTS = anyOf(
  `
  no shoot/shooting/filming/new_filming/camera_work/camerawork involved/needed/required/this? time? | nothing to film/shoot | no filming | no new footage/filming | footage/rushes/material/clips/files/recordings/tapes/tape/recording/video is/are/was/were/has/have all/already/ready/been/on/in ... | footage ready/exists/supplied/provided/attached/uploaded | all the? footage/rushes/material/clips | {have} everything/it/them/all_of_it shot/filmed/recorded/in_the_can | {have} ... footage/rushes/tapes/tape/clips/recordings/home_movies/videos/camcorder_tapes/raw_files/raw_material/interviews_shot/in_the_can | {hours} of/worth_of raw/old/zoom/phone/drone/game? stuff/footage/tape/tapes/rushes/material/video/recordings/film/clips/vids/videos | already ... shot/filmed/recorded/digitized/digitised/taped | digitized | digitised | {filmed} it/this/everything/our/the/a/an/some/most/all/last/in/on/at/yesterday/already/ourselves/by ... | existing ... footage/rushes/recordings/material/video/videos/films/clips | in the can | alles/selbst/selber gefilmt/aufgenommen | haben/hat ... gefilmt | unser/unseren/unsere/den mitschnitt/aufnahmen | tout filmé | pas de tournage | images existantes | heures/ore de rushes/materiale | abbiamo già? girato | filmé nous-mêmes | from/of the? same/existing/old footage | {have} ... on a hard/thumb/usb? drive/disk/stick/card | on two/three/four/five/several cards/phones | you'd/you_would get the footage | {who} shot/filmed/recorded | {possessive} own footage | of our/the/my ... recording/footage/recordings/rushes | from/using what you/we shot/filmed/recorded | everything/it/footage/was is/was/'s/has_been already? been? shot/filmed/recorded
`,
  {
    have: `have | got | 've got | has | there's | there is | there are | sitting on | send you | give you | supply | provide | from | with | our | my | the`,
    hours: `hour | hours | hrs | minutes | gb | tb | terabytes | gigs | boxes | box | lots | loads | mountain | mountains | pile | piles | heaps | tons | folder | bunch | hundreds | dozens | reels | drive full | days | weeks | years | drive`,
    filmed: `we filmed | we shot | we recorded | us filmed | us shot | guides filmed | parents filmed | parish filmed | members filmed | parents recorded | parents already recorded | we have recorded ourselves | have recorded ourselves | we shot our | i filmed | i shot | i recorded | we've filmed | we've shot | we've recorded | i've filmed | i've shot | was filmed | was shot | was recorded | he shot | he filmed | she shot | she filmed | they shot | they filmed | volunteers filmed | volunteer filmed | students filmed | crew filmed | crew shot | colleague shot`,
    who: `had it | has already had it | staff member | staff | nephew | cousin | colleague | volunteers have | volunteers`,
    possessive: `our | my | their | his | her`,
  },
);
const ALONE = anyOf(`
  no shoot/shooting/filming/new_filming/camera_work | nothing to film/shoot | edit/editing only | only ... edit/editing/edited/editor | just ... edit/editing/edited/editor | post-only | edit/editing on its own | to just cut/edit
`);
/** The job is called so. */
const EDIT_ONLY = anyOf(`edit/editing only | post only | only the/an? edit/editing`);
/** One who films and edits. */
const FILMED_TOO = anyOf(`film/shoot/record/capture/filming/shooting/recording and/& edit/editing/cut`);
const EDITED_TOO = anyOf(`
  film/shoot/record/capture/filming/shooting/recording and/& edit/editing/cut | including the? edit/editing | edit/editing included | incl edit/editing | plus ... edit/editing | as well as ... edit/editing | also ... edit/editing/cut | edit/edited/editing after/afterwards/too/as_well/the_same | edit/cut/edited/editing on the_fly/site/the_spot/the_day/the_night | and ... edit/cut it/them/this | and an? edit | with an? edit
`);

/** Nobody is to film at all, said of the whole job and not of an hour of it. */
const NO_SHOOT =
  /(?:^|[.!?\n;]) ?(?:and )?(?:no (?:new )?(?:shoot|shooting|filming)(?: (?:is |at all )?(?:needed|required|involved|necessary))?(?= ?(?:[.!?\n)]|$))|nothing (?:(?:remains|left|more|else|new|is left) )?to (?:be )?(?:film|shoot|filmed|shot)(?= ?(?:[.!?\n)]|$)))|(?<!\p{L})(?:no new (?:filming|shooting|footage)|nothing remains to be (?:filmed|shot)|(?:nobody|no one)(?:'s| is| needs| has)? to film anything|(?:don't|do not) need (?:anything|anyone|you) (?:filmed|to film anything)|no need to film anything|filming(?:'s| is) done(?! (?:at|by|around|about|from) (?:\d|noon|half|quarter|midnight))|(?:nobody|no one|none of us) needs you to (?:come (?:out )?(?:and|to) )?(?:film|shoot)|no hay que (?:rodar|grabar) nada|without (?:any )?(?:shooting|filming)|(?:nobody|no one|none of us|(?:we|i|they|you|she|he) (?:don't|do not|doesn't|does not|won't|will not|wouldn't))(?: really| actually)? (?:needs?|wants?|have|has|expects?)(?: you| anyone| anybody)? to (?:come (?:out |over |down |along |here )?(?:here |there )?(?:and |to )?)?(?:film|shoot|record) (?:anything|it|this|again|at all)|(?:nobody|no one) (?:needs|wants|expects) you to come and (?:film|shoot|record)|(?:don't|do not|won't|wouldn't) need you to come (?:out|over|down|here|all)|no hay que (?:rodar|grabar|filmar)(?: nada)?|no hace falta (?:rodar|grabar|filmar|venir)|(?:rien à|pas besoin de) (?:tourner|filmer|venir)(?= ?(?:[.,:;!?\n)]|$))|nichts (?:mehr )?zu (?:drehen|filmen)|(?:niente|nulla) da (?:girare|filmare|riprendere)|niets (?:meer )?te filmen)(?!\p{L})/iu;
/** True where the sender says that nothing is to be filmed. */
export const nothingToFilm = (text: string): boolean => NO_SHOOT.test(text) || NO_MORE.test(text);

/** The sender's side filmed something: who, when done, and what. */
const THEY_FILMED =
  /(?<=\p{L} )(?<!(?<!\p{L})(?:you|you've|you have|to|be|being|been|is|are|was|were|get|getting|having|want|need|like|and|not|who|us|it|them|that|which|never|(?:you|you've|you have|to|want|need|like) \p{L}{1,12}) )(?:filmed|shot|recorded|taped|videoed) (?:it|this one|everything|all of|some|most|hours|(?:its|their|his|her|our|my) (?:own )?(?:\p{L}+)|(?:the|a|an) \p{L}+(?: \p{L}+){0,3}|(?:\d{1,3}|two|three|four|five|six|eight|ten|twelve|twenty) \p{L}+)(?!\p{L})|(?<!\p{L})(?:filmed|shot|recorded|taped|filming|shooting) (?:it |them |all |everything )?(?:on (?:a |an |two |three |our |my |their |some(?:body|one)'s )?(?:\p{L}+ )?(?:phones?|iphones?|camcorders?|tablets?|gopros?|zoom)|(?:back )?in (?:january|february|march|april|may|june|july|august|september|october|november|december)(?: and| but|,))(?!\p{L})|(?<!\p{L})(?:heures?|hours?|hrs|stunden|horas|ore|uur)\.? (?:of |de |d'|di |an )?(?:rushes|footage|tape|tapes|rohmaterial|material|interviews|entrevues|girato)|(?<!\p{L})rohmaterial (?:ist|liegt|ca|vorhanden)|(?<!\p{L})(?:grabamos|avons tourné|ai tourné|abbiamo girato|hemos (?:grabado|filmado|rodado)|haben [^.;!?\n]{0,40} (?:gefilmt|gedreht|aufgenommen))(?!\p{L})|(?<!\p{L})(?:box|boxes|bag|pile|stack|drive|thumb drive|hard drive) (?:of|with|full of) (?:\p{L}+ )?(?:minidv|mini-dv|tapes?|vhs|footage|clips|rushes|hi8|cassettes|cards)(?!\p{L})/iu;
/** Nothing more to film, with the deed at the end: "not to film anything", "no new pictures", "drehen müssen Sie nichts mehr". */
const NO_MORE =
  /(?<!\p{L})(?:(?:not|nothing) (?:(?:here |there )?(?:is |has )?(?:left |more )?to (?:be )?)(?:film|shoot|filmed|shot|recorded)(?: anything| any of it)?(?= ?[.,;:!?)\n]|$)|nothing(?:'s| is)? left to be (?:filmed|shot|recorded)|no (?:new|more|further|extra) (?:pictures|images|shots|filming|shooting|footage)|not (?:a )?(?:shooting|filming|shoot),? (?:but )?(?:cutting|editing|an? edit)|(?:drehen|filmen|aufnehmen)(?: \p{L}+){0,2} nichts(?: mehr)?|(?:nichts|gar nichts)(?: mehr)? (?:gedreht|gefilmt|aufgenommen) werden|(?:nulla|niente)(?: altro)? da (?:girare|riprendere|filmare)|solo (?:il )?montaggio|(?:sólo|solo|solamente) (?:el )?montaje|(?:seulement|uniquement|que) (?:le |du )?montage|alleen (?:de )?montage|nur (?:der |den |um den )?schnitt)(?!\p{L})/iu;
/** Who filmed it, said after it: "filmed by three nephews", "everything has been filmed", "all on one hard drive". */
const FILMED_BEFORE =
  /(?<!\p{L})(?:(?:(?<!(?:be|being|get|getting|have it|want it|is|are|gets|always|usually|normally) )(?:filmed|shot|recorded|taped) by (?!you(?!\p{L})|a (?:pro|professional|proper)|someone|somebody)(?:my|our|his|her|their|two|three|four|five|several|various|some|the|everyone|\p{Lu}\p{L}+)|(?:everything|all of it|it all|the lot|all) (?:has|have|is|was|'s)(?: already)?(?: been)? (?:filmed|shot|recorded|digiti[sz]ed|taped)|(?:we|i)(?:'ve| have) (?:already )?(?:shot|filmed|recorded|taped) (?:it|this|that|them|everything|all)(?: all)? already|all (?:of (?:it|our|my|the) [^.;!?\n]{0,24})?(?:is |are |sits? |sitting |lives? )?on (?:one|a|two|three|several) (?:hard )?(?:drives?|disks?|cards?|sticks?)|all digiti[sz]ed|finished (?:shooting|filming) (?:my|our|the|his|her|a)|(?:the )?(?:rushes|tapes|footage|recordings|clips) (?:from|of) [^.;!?\n]{0,30} (?:is|are) (?:lying|sitting|waiting|sorted|safe|here|with|at|on)|(?:they|we|he|she|shooters|crew) uploads? (?:the |all |their )?(?:footage|rushes|cards|clips)|(?:abbiamo|ho|hanno) già (?:girato|filmato|ripreso)|(?:ya|lo) (?:hemos|tenemos|está|han) (?:todo )?(?:grabado|filmado|rodado)|(?:avons|ai|est|ont) déjà (?:tout )?(?:tourné|filmé)|(?:ist|sind|wurde|haben|habe)(?: \p{L}+){0,3} (?:schon|bereits|alles)(?: \p{L}+)? (?:gedreht|gefilmt|aufgenommen|abgedreht)|(?:stunden|std) [^.;!?\n]{0,12}(?:videos?|aufnahmen|material|film)))(?!\p{L})/iu;
/** The deed in so many words: "cut it with us", "to cut it", "daraus etwas schneidet", "do the montage". */
const CUT_IT =
  /(?<!\p{L})(?:(?:cut|edit|assemble|montage) (?:it|this|that|them|all this|all that) (?:with|for|together|into|down|up|in)|to (?:cut|edit|assemble) (?:it|this|that|them)(?= ?[.,;:!?)\n]|$)|(?:someone|somebody|person|hands|anyone)[^.;!?\n]{0,60}(?<!\p{L})to (?:cut|edit|assemble) (?:it|this|that|them)|(?:edit|cut) with (?:me|us|our|my|his|her)(?!\p{L})|do(?:ing)? the (?:montage|edit|cut|editing)(?!\p{L})|(?:daraus|davon)[^.;!?\n]{0,40}(?:schneide\p{L}*|mach(?:t|en)|zusammen\p{L}*)|(?:our|my|the|their) (?:usual |regular )?(?:editor|cutter)[^.;!?\n]{0,30}(?:is|has|got|was|left|can't|fell)|(?:nostro|nostra) montat(?:ore|rice)|(?:il|solo|per il|un) montaggio|(?:sit down with|go through|make something (?:with|of|from|out of)|do something with) (?:them|that|it|this|these|those|all that|all this)|turn (?:it|this|that|them|these|those) into|cutting only|editing only|only needs? (?:cutting|editing|an? edit)|an editor)(?!\p{L})/giu;
/** What is made of pictures. */
const MADE = anyOf(
  `film/films/clip/clips/reel/reels/video/videos/recap/recaps/highlights/documentary/ad/ads/recordings/montage/trailer/something`,
);

/** "the 90 sec edit": a thing that is to be handed over, whoever shoots it. */
const MEASURED = /\d\s?-?(?:s|sec|secs|seconds?|m|mins?|minutes?)(?!\p{L})/iu;
/** "our own editing", "editing ourselves": theirs. */
const OWN_BEFORE = /(?<!\p{L})(?:own|in-house|(?:our|my) editors?)(?!\p{L})[^.;!?\n]{0,24}$/iu;
const THEY_EDIT =
  /(?<!\p{L})(?:i|we|they|he|she)(?:'ll| will|'m| am|'re| are)(?: \p{L}+)? (?:do(?:ing)?|handl(?:e|ing)|tak(?:e|ing) care of|edit(?:ing)?|cut(?:ting)?)(?: (?:all|the|my|our|it|own)){0,3}(?: edit(?:ing)?| cut(?:ting)?)?$|(?<!\p{L})(?:i|we|they|he|she) (?:do|does) (?:all )?(?:the|my|our) (?:cutting|editing|edit|cut)$/iu;
/** "shooter/editor": one who films and edits. */
const SHOOTS_TOO =
  /(?<!\p{L})(?:shooter|videographer|camera(?:man|person| op)?|filmmaker|shoot|film) ?(?:\/|&|\+|-) ?edit(?:or|s)?(?!\p{L})/iu;
/** "we do not need it edited", "you don't edit" */
const NOT_EDITED =
  /(?<!\p{L})(?:(?:don't|do not|doesn't|does not|won't|needn't|no need to|not to|without|never|not) (?:[\p{L}']+ ){0,3}(?:edit(?:ed|ing)?|cut(?:ting)?|trimm?(?:ed|ing)?)|no (?:edit|editing|cutting))$/iu;
/** "no camera needed": nobody is to film. */
const NOBODY_FILMS =
  /(?<!\p{L})no camera(?: work)? (?:is )?(?:needed|required|necessary|involved)(?! (?:then|there|during|for|at|in|before|after|on))(?!\p{L})/iu;
const OWN_AFTER = /^[^.;!?\n]{0,12} (?:ourselves|myself|in-house)(?!\p{L})/iu;

/**
 * Where an edit is asked for.
 * @returns `alone` where pictures exist or nothing is to be filmed, `filmed` where the sender's side filmed them,
 * `plainly` where the deed or its doer is asked for, `unsaid` where only what comes of it is named
 */
export function editAsked(text: string): { hit: RoleHit; alone: boolean; filmed: boolean; plainly: boolean; unsaid: boolean } | undefined {
  const unshot = nothingToFilm(text);
  const exists = EXISTS.test(text);
  const before = FILMED_BEFORE.test(text) || (exists && NOBODY_FILMS.test(text));
  const filmed = (before || THEY_FILMED.test(text)) && !FILMED_TOO.test(text);
  const hits = [...text.matchAll(EDIT), ...(unshot || before || exists ? text.matchAll(CUT_IT) : [])].filter(({ index, 0: { length } }) => {
    const end = index + length;
    return (
      !OWN_BEFORE.test(text.slice(Math.max(0, end - 60), end)) &&
      !THEY_EDIT.test(text.slice(Math.max(0, end - 60), end)) &&
      !OWN_AFTER.test(text.slice(end, end + 40)) &&
      !NOT_EDITED.test(text.slice(Math.max(0, index - 40), end))
    );
  });
  const said = hits.find(({ 0: hit }) => unshot || exists || filmed || !MEASURED.test(hit));
  const found = said ?? (unshot || filmed ? MADE.exec(text) : null);
  if (!found) return undefined;
  const too = EDITED_TOO.test(text) || SHOOTS_TOO.test(text);
  const alone = unshot || ALONE.test(text) || (!too && exists);
  if (!alone && !filmed && too) return undefined;
  const [start, end] = [found.index, found.index + found[0].length];
  return {
    hit: { role: 'edit only', start, end, text: found[0], plainly: EDIT_ONLY.test(text) || (!!said && (unshot || before)) },
    alone,
    filmed,
    plainly: PLAINLY.test(text) || (before && text.search(CUT_IT) >= 0),
    unsaid: !said,
  };
}
