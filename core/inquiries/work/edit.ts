/**
 * An edit of pictures that exist: nothing is to be filmed.
 */
import { anyOf } from '../phrases.ts';
import type { RoleHit } from './role-words.ts';

/** An edit is asked for. */
const EDIT = anyOf(
  `
  {want} ... editor/cutter/edit/editing/re-edit/recut/re-cut/post/colourist/colorist/cutting_together/cut_together | {you} ... edit/re-edit/recut/re-cut/cut_together/cut_down/trim/cut_it/cut_them/cut_this/cut_our/cut_a/cut_my/cut_the/edit_it/splice/tidy_up | editing/edit/post/cut only/gig/job/work | edit of/on our/my/the/some/about | editing/post/edit on its/their own | editor/cutter needed/wanted/required/sought | post-only | {turn} it/them/this/that/these/everything/our_footage/the_footage/the_rushes/our/the into a/an/one/some/something | {turn} ... out_of it/them/this/our/the/what/that | {turn} a/an ... film/video/something of/out_of/from it/them/this/that/footage/our_footage/the_footage | trimming | is editing something | offline/online/assistant/promo/freelance/remote editor | {want} it/them/this/that/everything/these ... edited/tidied_up/cut_into/cut_down/cut_together | subtitles/captions/titles and/& a? trim/trims/cut/edit/export/colour/color | put/cut/stitch/piece/string/pull/edit the/our/my/all/these? footage/clips/material/rushes/videos/recordings/films/vids together | post-production | footage/material/clips/rushes/recordings/tapes/tape/them/it/interviews ... put/cut/stitched/pieced/strung/edited together | {want} them/it/this/everything made/turned/cut/edited into | for the edit | year-in-review cut | doco/documentary/film/video edit/editor
`,
  {
    want: `need | needs | want | wants | wanting | looking for | seeking | after | time for | time to | up for | quote for | quote on | price for | price to | interested in | require | requires | someone to | somebody to | someone who can | somebody who can | like | help | do | for | offer | take on | can | love | only | just`,
    you: `you | u | you'd | someone | somebody | who can | able to | available to | free to | time to | anyone | us to | quote to`,
    turn: `turn | make | turning | making | shape | cut | get | build | put | craft | pull | boil | create | produce | edit | trim | assemble | stitch`,
  },
  'gi',
);
/** Words that ask for the deed or its doer, and not for a film that may have to be shot first. */
const PLAINLY = anyOf(
  `{you} edit/re-edit/recut/re-cut/trim/splice | {you} do? editing | is editing something | offline/online/assistant/promo/freelance/remote editor | {seek} ... editor/cutter | editor/cutter needed/wanted/required/sought | re-cut/re-edit the/our/my/last/this/it | post-production | subtitles/captions/titles and/& a? trim`,
  {
    you: `you | u | you'd | you please | you possibly | someone to | somebody to | who can | able to`,
    seek: `need | needs | want | looking for | seeking | after | hiring`,
  },
);
/** Pictures that exist, and nothing more to film. */
const EXISTS = anyOf(
  `
  no shoot/shooting/filming/new_filming/camera_work/camerawork involved/needed/required/this? time? | nothing to film/shoot | no filming | no new footage/filming | footage/rushes/material/clips/files/recordings/tapes/tape/recording/video is/are/was/were/has/have all/already/ready/been/on/in ... | footage ready/exists/supplied/provided/attached/uploaded | all the? footage/rushes/material/clips | {have} everything/it/them/all_of_it shot/filmed/recorded/in_the_can | {have} ... footage/rushes/tapes/tape/clips/recordings/home_movies/videos/camcorder_tapes/raw_files/raw_material/interviews_shot/in_the_can | {hours} of/worth_of raw/old/zoom/phone/drone? footage/tape/tapes/rushes/material/video/recordings/film/clips/vids/videos | already ... shot/filmed/recorded/digitized/digitised/taped | digitized | digitised | {filmed} it/this/everything/our/the/a/an/some/most/all/last/in/on/at/yesterday/already/ourselves/by ... | existing ... footage/rushes/recordings/material/video/videos/films/clips | in the can | {possessive} own footage | of our/the/my ... recording/footage/recordings/rushes | from what you shot/filmed/recorded | everything/it/footage/was is/was/'s/has_been already? been? shot/filmed/recorded
`,
  {
    have: `have | got | 've got | has | there's | there is | there are | sitting on | send you | give you | supply | provide | from | with | our | my | the`,
    hours: `hour | hours | hrs | minutes | gb | tb | terabytes | gigs | boxes | box | lots | loads | reels | drive full | days | weeks | years | drive`,
    filmed: `we filmed | we shot | we recorded | i filmed | i shot | i recorded | we've filmed | we've shot | we've recorded | i've filmed | i've shot | was filmed | was shot | was recorded | he shot | he filmed | she shot | she filmed | they shot | they filmed | volunteers filmed | volunteer filmed | students filmed | crew filmed | crew shot | colleague shot`,
    possessive: `our | my | their | his | her`,
  },
);
const ALONE = anyOf(`
  no shoot/shooting/filming/new_filming/camera_work | nothing to film/shoot | edit/editing only | only ... edit/editing/edited/editor | just ... edit/editing/edited/editor | post-only | edit/editing on its own
`);
/** "no filming needed then": of another hour, not of the job. */
const EDITED_TOO = anyOf(`
  film/shoot/record/capture/filming/shooting/recording and/& edit/editing/cut | including the? edit/editing | edit/editing included | incl edit/editing | plus ... edit/editing | as well as ... edit/editing | also ... edit/editing/cut | edit/edited/editing after/afterwards/too/as_well/the_same | and ... edit/cut it/them/this | and an? edit | with an? edit
`);

/**
 * Where an edit is asked for.
 * @returns `alone` where pictures exist or nothing is to be filmed, `plainly` where the deed or its doer is asked for
 */
export function editAsked(text: string): { hit: RoleHit; alone: boolean; plainly: boolean } | undefined {
  const found = text.matchAll(EDIT).next().value;
  if (!found) return undefined;
  const too = EDITED_TOO.test(text);
  const alone = ALONE.test(text) || (!too && EXISTS.test(text));
  if (!alone && too) return undefined;
  const [start, end] = [found.index, found.index + found[0].length];
  return { hit: { role: 'edit only', start, end, text: found[0] }, alone, plainly: PLAINLY.test(text) };
}
