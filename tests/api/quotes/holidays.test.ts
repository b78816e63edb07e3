/**
 * Public holidays in a quote: proposed for the place of the job, taken off by hand, frozen with the version; and the notice that counts them.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import type { RateCardFields } from '../../../core/contract/rates.ts';
import { blankClient } from '../../../core/people/blank.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { people } from '../../../electron/api/people.ts';
import { quotes } from '../../../electron/api/quotes.ts';
import { rates } from '../../../electron/api/rates.ts';
import { setup } from '../../../electron/api/setup.ts';
import { FARGO, THUNDER_BAY, world } from '../world.ts';

/** A job over Labor Day and the day after. */
async function quoted(place = FARGO, terms: Partial<RateCardFields['terms']> = {}) {
  const at = await world('2026-08-03T15:00:00Z');
  const { fields } = await call(rates.defaults, { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' }, at);
  await call(rates.save, { fields: { ...fields, dayRate: '1000.00', terms: { ...fields.terms, ...terms } } }, at);
  const days = ['2026-09-07', '2026-09-08'].map((date) => ({
    date,
    kind: 'shoot' as const,
    call: `${date}T08:00`,
    wrap: `${date}T18:00`,
  }));
  const { job } = await call(jobs.add, { facts: { title: 'League final', role: 'shoot', place, days } }, at);
  const draft = async () => (await call(quotes.draft, { jobId: job.id }, at)).draft;
  const make = async (jobVersion = job.version) => {
    const { draftVersion } = await draft();
    return call(quotes.make, { jobId: job.id, jobVersion, draftVersion, pencil: false }, at);
  };
  return { at, jobId: job.id, draft, make };
}

test('the uplift is proposed with the name of the day, and a made version keeps it when it is taken off later', async () => {
  const { at, jobId, draft, make } = await quoted();
  const proposed = await draft();
  expect(proposed).toMatchObject({ holidays: ['2026-09-07'], publicHolidays: [{ date: '2026-09-07', name: 'Labor Day' }] });
  expect(proposed.lines.find(({ id }) => id === 'days/holiday-uplift')?.reason).toContain('Labor Day');

  const { version } = await make();
  await call(quotes.change, { jobId, draftVersion: 0, changes: [{ op: 'holidays', dates: [] }] }, at);
  expect((await draft()).holidays).toEqual([]);
  const [kept] = (await call(quotes.versions, { jobId }, at)).versions;
  expect(kept?.draft).toEqual(version.draft);
  expect(kept?.draft.holidays).toEqual(['2026-09-07']);
});

test('the place decides, not my home', async () => {
  expect((await (await quoted(THUNDER_BAY)).draft()).publicHolidays).toEqual([{ date: '2026-09-07', name: 'Labour Day' }]);
});

test('notice in business days leaves out the holidays at home', async () => {
  const { at, jobId, make } = await quoted(FARGO, { cancelBy: 'business days' });
  await make();
  const { cancellation } = await call(quotes.cancellation, { jobId, at: '2026-07-02T15:00:00Z' }, at);
  // 2 July to 4 September are 47 weekdays; Independence Day is kept on Friday the 3rd
  expect(cancellation.reason).toContain('46 business days before first call');
});

test("a client's own holidays are frozen with the version: what is typed later does not change what it owes", async () => {
  const { at, jobId, make } = await quoted(FARGO, { cancelBy: 'business days' });
  const closed = [
    { from: '2026-08-24', to: '2026-08-28', name: 'Fair week' },
    { from: '2026-10-01', to: '2026-10-02', name: 'after the job' },
  ];
  const { client } = await call(people.saveClient, { fields: { ...blankClient('Gear League'), closed } }, at);
  const { job } = await call(jobs.get, { id: jobId }, at);
  const named = await call(jobs.setClient, { id: jobId, version: job.version, clientId: client.id }, at);
  const { version } = await make(named.job.version);
  expect(version.draft.clientClosed).toEqual([closed[0]]);
  const reason = async () => (await call(quotes.cancellation, { jobId, at: '2026-08-21T15:00:00Z' }, at)).cancellation.reason;
  // Friday, 21 August and the five days from Monday the 31st: the week between is theirs
  expect(await reason()).toContain(
    "6 business days before first call, the day of notice counted and that of the call not, 5 days of the client's",
  );
  const fields = { ...blankClient('Gear League'), closed: [] };
  await call(people.saveClient, { id: client.id, version: client.version, fields }, at);
  expect(await reason()).toContain('6 business days before first call');
});

test('holidays are asked for by country, region and years', async () => {
  const at = await world('2026-08-03T15:00:00Z');
  const { holidays, hint } = await call(setup.holidays, { country: 'CA', region: 'Ontario', years: [2026] }, at);
  expect(holidays).toContainEqual({ date: '2026-02-16', name: 'Family Day' });
  expect(hint).toContain('Ontario, Canada');
});
