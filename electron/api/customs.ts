/**
 * The customs list of a job: read with what is missing, and put on paper as a PDF and as a CSV.
 */
import type { CustomsList, ListRate } from '../../core/contract/documents.ts';
import type { Job, Paper } from '../../core/contract/jobs.ts';
import type { SetupFields } from '../../core/contract/setup.ts';
import { carnetCost } from '../../core/documents/carnet.ts';
import { customsList } from '../../core/documents/customs.ts';
import { customsTable } from '../../core/documents/customs-paper.ts';
import { customsBorder, sourceInWords, whomToAsk } from '../../core/documents/rules.ts';
import { csvText } from '../../core/ledger/csv.ts';
import { paperName } from '../../core/quotes/paper-name.ts';
import { instantText, wallAt } from '../../core/time/read.ts';
import { countryInWords } from '../../core/words/countries.ts';
import { countInWords } from '../../core/words/amounts.ts';
import { paperDate } from '../../core/words/dates.ts';
import { deedByKey } from '../../db/keeping.ts';
import { allItems, kitOfJob } from '../../db/kit.ts';
import { packsOf } from '../../db/packs.ts';
import { insertPaper } from '../../db/papers.ts';
import type { ReadableDb } from '../../db/store.ts';
import { customsPaper } from '../papers/customs.ts';
import { keepPaper } from '../papers/keep.ts';
import { ownSetup } from './book.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { note, opened, whole } from './job-deed.ts';
import { os } from './os.ts';
import { tripOf } from './trip-of.ts';
import { notFound, refused, stale } from './trouble.ts';
import { written } from './written.ts';

export const customs = os.documents.customs.handler(({ input, context }) =>
  context.store.read((db) => {
    const job = whole(db, input.jobId, context.now());
    const setup = ownSetup(db);
    const list = listOf(db, job, setup, input.rates);
    const country = job.place?.country ?? setup.home.country;
    const cost = list.total && carnetCost(list.total, setup.home.country, country);
    return {
      list,
      crosses: customsBorder(setup.home.country, country),
      ask: whomToAsk(country, countryInWords(country), 'customs'),
      carnet: cost && { fee: cost.fee, security: cost.security, source: sourceInWords(cost.source, paperDate(cost.source.on)) },
    };
  }),
);

function listOf(db: ReadableDb, job: Job, { currency }: SetupFields, rates: readonly ListRate[]): CustomsList {
  return customsList({ needs: kitOfJob(db, job.id), items: allItems(db), packed: packsOf(db, job.id), rates, currency });
}

type Asked = { id: string; version: number; rates: ListRate[]; key?: string | undefined };

export const makeCustoms = os.documents.makeCustoms.handler(({ input, context }) => make(context, input));

/** Like every paper it is written before the books speak of it. */
async function make(context: Context, input: Asked): Promise<{ job: Job; pdf: Paper; csv: Paper }> {
  const { store } = context;
  const { key } = input;
  if (key !== undefined && store.read((db) => deedByKey(db, key)))
    return deed(context, 'documents.makeCustoms', input, () => {
      throw notFound('The result of this deed');
    });
  const now = context.now();
  const said = store.read((db) => matterOf(db, input, now));
  const pdf = keepPaper(store.papers, await written(customsPaper(said)));
  const csv = keepPaper(store.papers, new TextEncoder().encode(csvText(customsTable(said.list))), 'text/csv');
  return deed(context, 'documents.makeCustoms', input, (db) => {
    const again = matterOf(db, input, now);
    if (JSON.stringify(again) !== JSON.stringify(said)) throw stale('The customs list', again.list, said.list);
    const job = opened(db, input, 'know', now);
    const name = paperName(`Customs list ${said.date}`, job.title);
    const row = { jobId: job.id, kind: 'customs list' as const, madeAt: now };
    const papers = {
      pdf: insertPaper(db, { ...row, name, type: 'application/pdf', ...pdf }),
      csv: insertPaper(db, { ...row, name: name.replace(/pdf$/, 'csv'), type: 'text/csv', ...csv }),
    };
    const pieces = countInWords(said.list.pieces, 'piece');
    note(db, job, 'documents.makeCustoms', `The customs list was put on paper: ${pieces}.`, now);
    return { job: whole(db, job.id, now), ...papers };
  });
}

/** What stands on the paper. @throws REFUSED without place, dates, kit or my details */
function matterOf(db: ReadableDb, input: Asked, now: number): Parameters<typeof customsPaper>[0] {
  const job = opened(db, input, 'know', now);
  const setup = ownSetup(db);
  const trip = tripOf(db, job);
  if (!job.place || !trip)
    throw refused(`${job.title} has no place or no dates yet.`, 'Give both first: the list says where it goes and when.');
  const list = listOf(db, job, setup, input.rates);
  if (list.rows.length === 0) throw refused(`${job.title} takes no kit along.`, 'Say what kit it needs first.');
  const { home } = setup;
  const dateAt = (at: number) => wallAt(at, home.zone).slice(0, 10);
  const { name, region, country } = job.place;
  return {
    sender: setup,
    job: job.title,
    goesTo: [name, region, countryInWords(country)].filter((part) => part !== '').join(', '),
    homeCountry: home.country,
    leaves: dateAt(trip.doorOutAt),
    homeOn: dateAt(trip.doorInAt),
    date: dateAt(now),
    madeAt: instantText(now),
    list,
  };
}
