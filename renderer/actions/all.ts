/** Every action, in the order in which the find box offers them. */
import type { Action } from './action.ts';
import { askForYes } from './challenge.ts';
import { bringKit } from './bring-kit.ts';
import { bringPeople } from './bring-people.ts';
import { callNow } from './call-now.ts';
import { cannotCome } from './cannot-come.ts';
import { copyReply } from './copy-reply.ts';
import { decline } from './decline.ts';
import { find } from './find.ts';
import { goDesk } from './go-desk.ts';
import { goJobs } from './go-jobs.ts';
import { goKit } from './go-kit.ts';
import { goLedger } from './go-ledger.ts';
import { goPeople } from './go-people.ts';
import { goRates } from './go-rates.ts';
import { goRoad } from './go-road.ts';
import { goSetup } from './go-setup.ts';
import { ink } from './ink.ts';
import { issueBill } from './issue-bill.ts';
import { jobPrint } from './job-print.ts';
import { leaveSample } from './leave-sample.ts';
import { letGo } from './let-go.ts';
import { loadSample } from './load-sample.ts';
import { makeQuote } from './make-quote.ts';
import { newCard } from './new-card.ts';
import { newClient } from './new-client.ts';
import { newHand } from './new-hand.ts';
import { newJob } from './new-job.ts';
import { newPreset } from './new-preset.ts';
import { newThing } from './new-thing.ts';
import { readMessage } from './read-message.ts';
import { renew } from './renew.ts';
import { reopen } from './reopen.ts';
import { roadCloser } from './road-closer.ts';
import { roadDayEarlier } from './road-day-earlier.ts';
import { roadDayLater } from './road-day-later.ts';
import { roadEarlier } from './road-earlier.ts';
import { roadKeepDays } from './road-keep-days.ts';
import { roadLater } from './road-later.ts';
import { roadPrint } from './road-print.ts';
import { roadPutBack } from './road-put-back.ts';
import { roadToday } from './road-today.ts';
import { roadWider } from './road-wider.ts';
import { savePaper } from './save-paper.ts';
import { snapshot } from './snapshot.ts';
import { undoQuote } from './undo-quote.ts';
import { wrapNow } from './wrap-now.ts';

export const actions: readonly Action[] = [
  readMessage,
  makeQuote,
  copyReply,
  savePaper,
  ink,
  issueBill,
  callNow,
  wrapNow,
  renew,
  askForYes,
  letGo,
  decline,
  reopen,
  jobPrint,
  undoQuote,
  roadEarlier,
  roadLater,
  roadToday,
  roadCloser,
  roadWider,
  roadDayEarlier,
  roadDayLater,
  roadKeepDays,
  roadPutBack,
  roadPrint,
  cannotCome,
  goDesk,
  goRoad,
  goJobs,
  goPeople,
  goKit,
  goRates,
  goLedger,
  goSetup,
  newJob,
  newCard,
  newClient,
  newHand,
  bringPeople,
  newThing,
  newPreset,
  bringKit,
  snapshot,
  loadSample,
  leaveSample,
  find,
];
