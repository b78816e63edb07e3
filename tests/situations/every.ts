import { cautions } from './cautions.ts';
import { clocksAbroad } from './clocks-abroad.ts';
import { editDays } from './edit-days.ts';
import { handsWhoSaidYes } from './hands-who-said-yes.ts';
import { kitAndChains } from './kit-and-chains.ts';
import { kitAndTickets } from './kit-and-tickets.ts';
import { liftsOfDaysAndPeople } from './lifts-of-days-and-people.ts';
import { liftsOnTheWay } from './lifts-on-the-way.ts';
import { leaving } from './leaving.ts';
import { more } from './more.ts';
import { neighbours } from './neighbours.ts';
import { ownTickets } from './own-tickets.ts';
import { papersOfKit } from './papers-of-kit.ts';
import { papers } from './papers.ts';
import { pencilsAndClocks } from './pencils-and-clocks.ts';
import { promisedEdits } from './promised-edits.ts';
import type { Situation } from './shape.ts';
import { waysHome } from './ways-home.ts';
import { zonesAndNights } from './zones-and-nights.ts';

export const everySituation: readonly Situation[] = [
  ...neighbours,
  ...zonesAndNights,
  ...pencilsAndClocks,
  ...kitAndTickets,
  ...cautions,
  ...liftsOnTheWay,
  ...liftsOfDaysAndPeople,
  ...more,
  ...clocksAbroad,
  ...ownTickets,
  ...kitAndChains,
  ...leaving,
  ...waysHome,
  ...editDays,
  ...papers,
  ...papersOfKit,
  ...promisedEdits,
  ...handsWhoSaidYes,
];
