/**
 * A quote for a named client: their tax treatment, days to pay, deposit and currency are used, and what is said on the quote comes last.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import type { ClientFields } from '../../../core/contract/people.ts';
import { blankClient } from '../../../core/people/blank.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { people } from '../../../electron/api/people.ts';
import { quotes } from '../../../electron/api/quotes.ts';
import { rates } from '../../../electron/api/rates.ts';
import { FARGO, SETUP, world } from '../world.ts';

const REGISTERED = { ...SETUP, registered: true, tax: { name: 'Sales tax', percent: '7.25', included: false } };

async function jobFor(terms: Partial<ClientFields>) {
  const at = await world('2026-12-01T15:00:00Z', REGISTERED);
  const { fields } = await call(rates.defaults, { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' }, at);
  const card = (name: string, currency: string, dayRate: string) =>
    call(rates.save, { fields: { ...fields, name, currency, dayRate, mileage: [] } }, at);
  await card('Shooting at home', 'USD', '1000.00');
  await card('Shooting abroad', 'EUR', '900.00');
  const day = { date: '2026-12-22', kind: 'shoot' as const, call: '2026-12-22T08:00', wrap: '2026-12-22T18:00' };
  const { job } = await call(jobs.add, { facts: { title: 'League final', role: 'shoot', place: FARGO, days: [day] } }, at);
  const { client } = await call(people.saveClient, { fields: { ...blankClient('Quay Hall'), ...terms } }, at);
  await call(jobs.setClient, { id: job.id, version: job.version, clientId: client.id }, at);
  const draft = async () => (await call(quotes.draft, { jobId: job.id }, at)).draft;
  return { at, jobId: job.id, draft };
}

test('a client without terms of their own is quoted as the card and my taxes say', async () => {
  const { draft } = await jobFor({});
  const quote = await draft();
  expect(quote).toMatchObject({ currency: 'USD', cardName: 'Shooting at home' });
  expect(quote.totals.taxes).toMatchObject([{ name: 'Sales tax', percent: '7.25', state: 'rated' }]);
});

test('no tax is charged where it is reversed, and the paper gets the reason', async () => {
  const { at, jobId, draft } = await jobFor({ tax: 'reverse charge', taxReason: 'Reverse charge, registered as QH 12.' });
  const quote = await draft();
  expect(quote.totals.tax.minor).toBe(0);
  expect(quote.totals.taxes).toMatchObject([{ state: 'reverse charge', note: 'Reverse charge, registered as QH 12.' }]);
  await call(quotes.change, { jobId, draftVersion: 0, changes: [{ op: 'tax', state: 'rated' }] }, at);
  expect((await draft()).totals.taxes).toMatchObject([{ state: 'rated', percent: '7.25' }]);
});

test('days to pay and deposit are theirs until the quote says otherwise', async () => {
  const { at, jobId, draft } = await jobFor({ payDays: 60, depositPercent: '0' });
  expect(await draft()).toMatchObject({ deposit: null, terms: { payDays: 60, depositPercent: '0' } });
  await call(quotes.change, { jobId, draftVersion: 0, changes: [{ op: 'terms', terms: { payDays: 7 } }] }, at);
  expect((await draft()).terms).toMatchObject({ payDays: 7, depositPercent: '0' });
});

test('the card of their currency prices the job; without one, both currencies are named', async () => {
  expect(await (await jobFor({ currency: 'EUR' })).draft()).toMatchObject({ currency: 'EUR', cardName: 'Shooting abroad' });
  const other = await (await jobFor({ currency: 'SEK' })).draft();
  expect(other.cautions).toContain(
    `Quay Hall pays in SEK, and no rate card for shoot is in SEK; "${other.cardName}" is in ${other.currency}.`,
  );
});
