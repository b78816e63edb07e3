/**
 * The days that were settled, held against everything else in a message that may speak against them, one after another.
 */
import { heldAgainstBounds } from './bounded.ts';
import { heldAgainstCount } from './counted-with.ts';
import { heldAgainstDayBeforeFilmed } from './day-before-filmed.ts';
import { heldAgainstDecision } from './decided-then.ts';
import { heldAgainstDayOfRun } from './day-of-run.ts';
import { heldAgainstDaysBeside } from './days-beside.ts';
import { heldAgainstWishes } from './days-wished.ts';
import { heldAgainstWhatGoesOn } from './goes-on.ts';
import { heldAgainstHours } from './hours-outside.ts';
import { heldAgainstLabels } from './labelled-days.ts';
import { heldAgainstOtherDay } from './other-day.ts';
import { heldAgainstAlternatives } from './or-others.ts';
import { heldAgainstLeftOut } from './left-out.ts';
import { heldAgainstMaybe } from './may-be.ts';
import { heldAgainstOthersDays } from './of-others.ts';
import { heldAgainstOneThing } from './one-thing.ts';
import { heldAgainstChoice } from './on-offer.ts';
import { heldAgainstParts } from './part-of-run.ts';
import { heldAgainstNotFilmed } from './not-filmed.ts';
import { heldAgainstNumberBehind } from './number-behind.ts';
import { heldAgainstPutOff } from './put-off.ts';
import { heldAgainstRehearsals } from './rehearsed-first.ts';
import { heldAgainstRows } from './rows-wanted.ts';
import type { EventDays, Scene } from './scene.ts';
import { heldAgainstTheSecond } from './second-day.ts';
import { heldAgainstSomebodyElse } from './somebody-else.ts';
import { heldAgainstOthers } from './the-one.ts';
import { heldAgainstUnfixed } from './unfixed.ts';
import { heldAgainstSomeOfIt } from './not-all-of-it.ts';
import { heldAgainstWantedToo } from './wanted-too.ts';
import { heldAgainstWindow } from './window.ts';

const ALL = [
  heldAgainstWantedToo,
  heldAgainstSomeOfIt,
  heldAgainstCount,
  heldAgainstOthers,
  heldAgainstHours,
  heldAgainstDaysBeside,
  heldAgainstWhatGoesOn,
  heldAgainstWishes,
  heldAgainstTheSecond,
  heldAgainstOtherDay,
  heldAgainstDayOfRun,
  heldAgainstParts,
  heldAgainstDayBeforeFilmed,
  heldAgainstPutOff,
  heldAgainstLabels,
  heldAgainstRehearsals,
  heldAgainstNotFilmed,
  heldAgainstRows,
  heldAgainstSomebodyElse,
  heldAgainstAlternatives,
  heldAgainstOthersDays,
  heldAgainstLeftOut,
  heldAgainstOneThing,
  heldAgainstMaybe,
  heldAgainstChoice,
  heldAgainstWindow,
  heldAgainstNumberBehind,
  heldAgainstUnfixed,
  heldAgainstDecision,
  heldAgainstBounds,
];

/** The days, or with what speaks against them as a question. */
export const heldAgainstAll = (scene: Scene, event: EventDays): EventDays => ALL.reduce((held, against) => against(scene, held), event);
