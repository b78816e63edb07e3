/**
 * The one contract. Loopback, IPC, command line, preload, the screens' client and the coverage test are all derived from this object.
 */
import { calendars } from './calendars.ts';
import { callings } from './callings.ts';
import { deliverables } from './deliverables.ts';
import { desk } from './desk.ts';
import { documents } from './documents.ts';
import { expenses } from './expenses.ts';
import { find } from './find.ts';
import { fit } from './fit.ts';
import { hands } from './hands.ts';
import { handovers } from './handovers.ts';
import { hours } from './hours.ts';
import { inquiries } from './inquiries.ts';
import { invoices } from './invoices.ts';
import { jobs } from './jobs.ts';
import { kit } from './kit.ts';
import { ledger } from './ledger.ts';
import { papers } from './papers.ts';
import { payments } from './payments.ts';
import { pencils } from './pencils.ts';
import { people } from './people.ts';
import { personal } from './personal.ts';
import { places } from './places.ts';
import { quotes } from './quotes.ts';
import { rates } from './rates.ts';
import { road } from './road.ts';
import { rounds } from './rounds.ts';
import { sample } from './sample.ts';
import { setup } from './setup.ts';
import { spent } from './spent.ts';
import { store } from './store.ts';
import { templates } from './templates.ts';
import { trips } from './trips.ts';

export const contract = {
  calendars,
  callings,
  deliverables,
  desk,
  documents,
  expenses,
  find,
  fit,
  hands,
  handovers,
  hours,
  inquiries,
  invoices,
  jobs,
  kit,
  ledger,
  papers,
  payments,
  pencils,
  people,
  personal,
  places,
  quotes,
  rates,
  road,
  rounds,
  sample,
  setup,
  spent,
  store,
  templates,
  trips,
};
export type Contract = typeof contract;
