/**
 * Books of eight months, told through the program's own procedures with its clock set to each day: bills that are paid, part paid, late,
 * disputed and in another currency, with hours, expenses and a hand. Counted back from today, so that ages are the same on every day.
 */
import { call } from '@orpc/server';
import type { DraftKind, Invoice } from '../../core/contract/invoices.ts';
import type { Money } from '../../core/contract/parts.ts';
import { blankClient } from '../../core/people/blank.ts';
import { openStore } from '../../db/open.ts';
import type { Context } from '../../electron/api/context.ts';
import { router } from '../../electron/api/router.ts';
import { FARGO, DULUTH, SETUP, THUNDER_BAY } from '../api/world.ts';
import { contextOn } from '../context.ts';
import { today } from './stage.ts';

const DAY = 86_400_000;

type Told = {
  title: string;
  client: string;
  /** Days before today of its only or first day; below zero for days to come. */
  ago: number;
  days?: number;
  place?: typeof DULUTH;
  currency?: string;
  hoursTo?: string;
};
type Teller = {
  at: (daysAgo: number) => void;
  inked: (told: Told) => Promise<string>;
  issue: (jobId: string, kind: DraftKind) => Promise<Invoice>;
  pay: (invoice: Invoice, amount: Money, daysAgo: number) => Promise<void>;
  context: Context;
};

/** Fill a store in a folder; nothing else may have it open. */
export async function fillBooks(folder: string): Promise<void> {
  const clock = { now: Date.now() };
  const store = await openStore({ folder, now: () => clock.now });
  const context = contextOn(store, () => clock.now);
  try {
    const teller = await tellerOf(context, clock);
    await story(teller);
  } finally {
    store.close();
  }
}

async function tellerOf(context: Context, clock: { now: number }): Promise<Teller> {
  const real = Date.now();
  const at = (daysAgo: number): void => {
    clock.now = real - daysAgo * DAY;
  };
  const run = { context };
  at(260);
  await call(router.setup.save, { fields: { ...SETUP, year: { costs: 1_840_000, pay: 5_200_000, setAsidePercent: '28', days: 95 } } }, run);
  for (const currency of ['USD', 'EUR']) {
    const validFrom = today().subtract({ days: 300 }).toString();
    const { fields } = await call(router.rates.defaults, { role: 'shoot', currency, validFrom }, run);
    await call(router.rates.save, { fields: { ...fields, dayRate: '1200' } }, run);
  }
  const clients = new Map<string, string>();
  const clientOf = async (name: string, currency?: string): Promise<string> => {
    const known = clients.get(name);
    if (known) return known;
    const { client } = await call(router.people.saveClient, { fields: { ...blankClient(name), ...(currency ? { currency } : {}) } }, run);
    clients.set(name, client.id);
    return client.id;
  };
  const inked = async ({ title, client, ago, days = 1, place = DULUTH, currency, hoursTo }: Told): Promise<string> => {
    at(ago + 20);
    const dates = Array.from({ length: days }, (_, index) =>
      today()
        .subtract({ days: ago - index })
        .toString(),
    );
    const planned = dates.map((date) => ({ date, kind: 'shoot' as const, call: `${date}T08:00`, wrap: `${date}T18:00` }));
    const added = await call(router.jobs.add, { facts: { title, role: 'shoot', place, days: planned } }, run);
    const clientId = await clientOf(client, currency);
    const { job } = await call(router.jobs.setClient, { id: added.job.id, version: added.job.version, clientId }, run);
    const made = await call(router.quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: true }, run);
    await call(router.jobs.ink, { id: job.id, version: made.job.version, who: 'Odile Fenn', how: 'mail' }, run);
    at(ago - days);
    if (ago > days && hoursTo)
      for (const date of dates) {
        const fields = {
          handId: null,
          kind: 'shoot' as const,
          zone: place.zone,
          call: `${date}T08:00`,
          wrap: `${date}T${hoursTo}`,
          unpaidBreakMinutes: 0,
          note: '',
        };
        await call(router.hours.save, { jobId: job.id, fields }, run);
      }
    return job.id;
  };
  const issue = async (jobId: string, kind: DraftKind): Promise<Invoice> => {
    const { draft } = await call(router.invoices.draft, { jobId, kind }, run);
    const rate = { op: 'rate' as const, rate: '1.1', date: draft.supply?.to ?? today().subtract({ days: 200 }).toString() };
    const changed =
      draft.currency === 'USD'
        ? draft
        : (await call(router.invoices.change, { jobId, kind, draftVersion: draft.draftVersion, changes: [rate] }, run)).draft;
    return (await call(router.invoices.issue, { jobId, kind, draftVersion: changed.draftVersion }, run)).invoice;
  };
  const pay = async ({ id, currency }: Invoice, amount: Money, daysAgo: number): Promise<void> => {
    at(daysAgo);
    const on = today().subtract({ days: daysAgo }).toString();
    const rate = currency === 'USD' ? {} : { rate: { rate: '1.12', date: on } };
    await call(
      router.payments.record,
      { on, how: 'transfer', note: '', amount, ...rate, parts: [{ invoiceId: id, amount }], toCredit: false },
      run,
    );
  };
  return { at, inked, issue, pay, context };
}

/** Numbers rise with the dates, so the story is told in order of time. */
async function story({ at, inked, issue, pay, context }: Teller): Promise<void> {
  const run = { context };
  const congress = await inked({
    title: 'Bakers’ trade congress',
    client: 'Guild of Lakeside Bakers',
    ago: 230,
    days: 2,
    place: FARGO,
    hoursTo: '19:00',
  });
  const first = await issue(congress, 'final');
  await pay(first, first.toPay, 200);

  const lecture = await inked({ title: 'Harbour lecture', client: 'Harbour Dental', ago: 190, hoursTo: '18:00' });
  const second = await issue(lecture, 'final');
  await pay(second, { minor: 40_000, currency: 'USD' }, 150);

  const regatta = await inked({ title: 'Regatta', client: 'Lakeshore Rowing', ago: 110, days: 2, place: THUNDER_BAY, hoursTo: '21:00' });
  const spent = {
    jobId: regatta,
    on: today().subtract({ days: 110 }).toString(),
    category: 'parking' as const,
    what: 'Parking at the dock',
    rate: null,
    markUpPercent: '0',
    untaxed: null,
    billed: false,
  };
  await call(router.expenses.save, { fields: { ...spent, amount: { minor: 6_400, currency: 'USD' } } }, run);
  const third = await issue(regatta, 'final');
  at(70);
  await call(router.invoices.dispute, { id: third.id, why: 'They count one day' }, run);

  const trade = await inked({ title: 'Tool fair', client: 'Werkbank Verein', ago: 60, currency: 'EUR', hoursTo: '18:00' });
  const fourth = await issue(trade, 'final');
  await pay(fourth, { minor: 50_000, currency: 'EUR' }, 40);

  const clinic = await inked({ title: 'Clinic opening', client: 'Harbour Dental', ago: 20, hoursTo: '18:00' });
  await issue(clinic, 'final');
  const supper = await inked({ title: 'Reading club supper', client: 'River Street Reading Club', ago: 5, hoursTo: '18:00' });
  await issue(supper, 'final');
  await inked({ title: 'Robotics league final', client: 'Robotics League', ago: 2, hoursTo: '18:00' });
  const ahead = await inked({ title: 'Curling championship', client: 'Curling Club', ago: -10, days: 2, place: THUNDER_BAY });
  at(0);
  await issue(ahead, 'deposit');
}
