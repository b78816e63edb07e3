/**
 * What the screens' tests stand on: a store of their own with invented jobs around today, and a page that is watched while it is used.
 */
import type { Page } from 'playwright/test';
import type { Place } from '../../core/contract/parts.ts';
import type { Job } from '../../core/contract/jobs.ts';
import type { TestHost } from '../host.ts';

const HOME_ZONE = 'America/Chicago';
/** A name as long as sixty characters, as people do give. */
const LONG_NAME = 'Northern lake harbour masters’ yearly gathering and supper';

export const today = (): Temporal.PlainDate => Temporal.Now.plainDateISO(HOME_ZONE);

async function place(host: TestHost, text: string, country: string): Promise<Place> {
  const { places } = (await host.call('places.search', { text, country, limit: 1 })) as {
    places: (Place & { kind: string; people: number | null })[];
  };
  const found = places[0];
  if (!found) throw new Error(`${text} is not in the gazetteer`);
  const { kind: _kind, people: _people, ...rest } = found;
  return rest;
}

/** My details and one rate card. */
export async function setUp(host: TestHost): Promise<void> {
  const home = await place(host, 'Duluth', 'US');
  await host.call('setup.save', {
    fields: {
      name: 'Slate & Tally Pictures',
      address: '12 Harbor Lane\nDuluth, Minnesota',
      email: 'hello@slate.example',
      phone: '+1 218 555 0142',
      home,
      currency: 'USD',
      paper: 'Letter',
      distance: 'mi',
      registered: false,
      taxId: '',
      tax: null,
      restHours: '8',
      year: { costs: 1_840_000, pay: 5_200_000, setAsidePercent: '28', days: 95 },
    },
  });
  const { fields } = (await host.call('rates.defaults', {
    role: 'shoot',
    currency: 'USD',
    validFrom: today().subtract({ months: 1 }).toString(),
  })) as { fields: object };
  await host.call('rates.save', { fields: { ...fields, dayRate: '1000.00' } });
}

type Days = { from: number; count: number; call?: string; wrap?: string };

async function job(host: TestHost, title: string, where: Place | null, days: Days | null, organisation = ''): Promise<Job> {
  const dates = days
    ? Array.from({ length: days.count }, (_, index) =>
        today()
          .add({ days: days.from + index })
          .toString(),
      )
    : [];
  const facts = {
    title,
    organisation,
    contact: { name: 'Odile Fenn', email: '', phone: '' },
    role: 'shoot',
    place: where,
    days: dates.map((date) => ({
      date,
      kind: 'shoot',
      call: `${date}T${days?.call ?? '09:00'}`,
      wrap: `${date}T${days?.wrap ?? '18:00'}`,
    })),
    replyBy: null,
    budget: { amount: 900, currency: 'USD', per: 'day' },
    notes: '',
    deliverables: ['a ninety-second highlight'],
  };
  return ((await host.call('jobs.add', { facts })) as { job: Job }).job;
}

async function quoted(host: TestHost, { id }: Job): Promise<Job> {
  const { job: before } = (await host.call('jobs.get', { id })) as { job: Job };
  const { draft } = (await host.call('quotes.draft', { jobId: id })) as { draft: { draftVersion: number } };
  const made = (await host.call('quotes.make', {
    jobId: id,
    jobVersion: before.version,
    draftVersion: draft.draftVersion,
    pencil: true,
  })) as { job: Job };
  return made.job;
}

/** A full desk: one job in ink, one in pencil, an inquiry that collides with it, and one of which little is known. */
export async function fill(host: TestHost): Promise<{ ink: Job; pencil: Job; inquiry: Job; bare: Job }> {
  const [milwaukee, fargo, thunderBay] = [
    await place(host, 'Milwaukee', 'US'),
    await place(host, 'Fargo', 'US'),
    await place(host, 'Thunder Bay', 'CA'),
  ];
  const first = await quoted(
    host,
    await job(host, 'Bakers’ trade congress', milwaukee, { from: 5, count: 4, wrap: '22:30' }, 'Guild of Lakeside Bakers'),
  );
  const { job: ink } = (await host.call('jobs.ink', { id: first.id, version: first.version, who: 'Odile Fenn', how: 'mail' })) as {
    job: Job;
  };
  const pencil = await quoted(host, await job(host, 'Robotics league final', fargo, { from: 16, count: 2 }));
  // What is asked for at the border is on file, so that the inquiry shows what it collides with.
  for (const fields of [
    { kind: 'passport', country: 'US', until: today().add({ years: 6 }).toString() },
    { kind: 'right to work', countries: ['CA'], until: today().add({ years: 2 }).toString() },
    { kind: 'carnet', countries: ['CA'], until: today().add({ months: 11 }).toString() },
  ])
    await host.call('documents.save', { fields });
  const inquiry = await job(host, 'Curling championship', thunderBay, { from: 9, count: 5, call: '08:00' });
  const bare = await job(host, LONG_NAME, null, null);
  return { ink, pencil, inquiry, bare };
}

/** An ordinary message, three weeks ahead, with everything in it. */
export function ordinaryMessage(): string {
  const day = today().add({ days: 21 });
  const words = day.toLocaleString('en-US', { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' });
  return `Hello,\n\nCould you film our members' evening in Fargo on ${words}, from 10:00 to 18:00? One camera is enough. Our budget is USD 1,400 for the job.\n\nMany thanks,\nIlse Marrow\nRiver Street Reading Club\nilse@reading.example`;
}

/** What the page complained of while it was used: errors, policy violations, refused answers. */
export function watch(page: Page): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  return complaints;
}

/** Go to a place by its address within the page, without loading it again. */
export async function goTo(page: Page, path: string): Promise<void> {
  // The page before has gone two frames after the address changed; the new one has its heading once its data are there.
  await page.evaluate(async (hash) => {
    location.hash = hash;
    for (const _ of [1, 2]) await new Promise(requestAnimationFrame);
  }, path);
  await page.getByRole('heading', { level: 1 }).first().waitFor({ state: 'attached' });
  await page.waitForLoadState('networkidle');
}
