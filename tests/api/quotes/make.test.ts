/**
 * From an inquiry to a made quote, through the procedures on a real store.
 */
import { call } from '@orpc/server';
import { randomUUID } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import type { DraftChange } from '../../../core/contract/quotes.ts';
import type { RateCard } from '../../../core/contract/rates.ts';
import { blankHand } from '../../../core/people/blank.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { people } from '../../../electron/api/people.ts';
import { quotes } from '../../../electron/api/quotes.ts';
import { rates } from '../../../electron/api/rates.ts';
import { trips } from '../../../electron/api/trips.ts';
import { DULUTH, FARGO, refusal, world, type World } from '../world.ts';

async function withCard({ context }: World, changes: object = {}): Promise<RateCard> {
  const { fields } = await call(rates.defaults, { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' }, { context });
  const { card } = await call(rates.save, { fields: { ...fields, dayRate: '1000.00', ...changes } }, { context });
  return card;
}

async function inquiry({ context }: World) {
  const days = ['2026-12-12', '2026-12-13'].map((date) => ({ date, kind: 'shoot' as const, call: `${date}T08:00`, wrap: `${date}T18:00` }));
  const { job } = await call(jobs.add, { facts: { title: 'League final', role: 'shoot', place: FARGO, days } }, { context });
  return job;
}

describe('a quote from an inquiry', () => {
  test('is priced by card, trip and notice, made, numbered and pencilled', async () => {
    const at = await world('2026-12-01T15:00:00Z');
    await withCard(at);
    const job = await inquiry(at);
    const { draft } = await call(quotes.draft, { jobId: job.id }, at);
    expect(draft.missing).toEqual([]);
    expect(draft.lines.find((line) => line.id === 'days/shoot')).toMatchObject({
      what: 'Shooting',
      quantity: '2',
      amount: { minor: 200_000, currency: 'USD' },
    });
    expect(draft.totals.gross.minor).toBe(draft.lines.reduce((sum, line) => sum + line.amount.minor, 0));
    for (const line of draft.lines) expect(line.reason).not.toBe('');

    const input = { jobId: job.id, jobVersion: job.version, draftVersion: draft.draftVersion, pencil: true, key: randomUUID() };
    const made = await call(quotes.make, input, at);
    expect(made.version).toMatchObject({ number: 1, sentAt: null, draft: { totals: draft.totals } });
    expect(made.job).toMatchObject({ state: 'pencilled', total: draft.totals.gross });
    expect(made.job.pencil?.expires.at).toBe(draft.pencilUntil?.at);
    expect(await call(quotes.make, input, at)).toEqual(made);
    expect((await call(quotes.versions, { jobId: job.id }, at)).versions).toHaveLength(1);

    const sent = await call(quotes.sent, { id: made.version.id }, at);
    expect(sent.version.sentAt).toBe('2026-12-01T15:00:00Z');
  });

  test('keeps what was frozen when the card changes afterwards', async () => {
    const at = await world('2026-12-01T15:00:00Z');
    const card = await withCard(at);
    const job = await inquiry(at);
    const { version } = await call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false }, at);
    const { id, version: cardVersion, ...fields } = card;
    await call(rates.save, { id, version: cardVersion, fields: { ...fields, dayRate: '1500' } }, at);
    expect((await call(quotes.versions, { jobId: job.id }, at)).versions[0]).toEqual(version);
    expect((await call(quotes.draft, { jobId: job.id }, at)).draft.totals.gross.minor).toBeGreaterThan(version.draft.totals.gross.minor);
  });

  test('is refused while facts are missing, with what they are', async () => {
    const at = await world('2026-12-01T15:00:00Z');
    await withCard(at, { dayRate: '0' });
    const { job } = await call(jobs.add, { facts: { title: 'Unknown' } }, at);
    const said = await refusal(call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false }, at));
    expect(said).toMatchObject({ code: 'REFUSED', findings: ['Where it is: the job has no place.', 'When it is: the job has no days.'] });
  });

  test('is refused without a rate card, and says where to make one', async () => {
    const at = await world('2026-12-01T15:00:00Z');
    const job = await inquiry(at);
    expect(await refusal(call(quotes.draft, { jobId: job.id }, at))).toMatchObject({ code: 'REFUSED', what: 'There is no rate card.' });
  });

  test('is refused as stale against an old job or draft', async () => {
    const at = await world('2026-12-01T15:00:00Z');
    await withCard(at);
    const job = await inquiry(at);
    const old = { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false };
    await call(quotes.change, { jobId: job.id, draftVersion: 0, changes: [{ op: 'set', id: 'days/shoot', quantity: '3' }] }, at);
    expect(await refusal(call(quotes.make, old, at))).toMatchObject({ code: 'STALE' });
    await call(jobs.change, { id: job.id, version: job.version, changes: { title: 'League final, new hall' } }, at);
    expect(await refusal(call(quotes.make, { ...old, draftVersion: 1 }, at))).toMatchObject({ code: 'STALE' });
  });
});

test('of two that make the same quote at once, one is refused as stale', async () => {
  const at = await world('2026-12-01T15:00:00Z');
  await withCard(at);
  const job = await inquiry(at);
  const input = { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false };
  const both = await Promise.allSettled([call(quotes.make, input, at), call(quotes.make, input, at)]);
  expect(both.map((one) => one.status).toSorted()).toEqual(['fulfilled', 'rejected']);
  expect((await call(quotes.versions, { jobId: job.id }, at)).versions.map((version) => version.number)).toEqual([1]);
});

test('a letter that no paper can hold is refused by its field, and nothing is numbered', async () => {
  const at = await world('2026-12-01T15:00:00Z');
  await withCard(at);
  const job = await inquiry(at);
  await call(quotes.change, { jobId: job.id, draftVersion: 0, changes: [{ op: 'set', id: 'days/shoot', what: 'Кино 映画' }] }, at);
  const said = await refusal(call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 1, pencil: true }, at));
  expect(said).toMatchObject({ code: 'REFUSED', what: expect.stringContaining('映') });
  expect((await call(quotes.versions, { jobId: job.id }, at)).versions).toEqual([]);
  expect((await call(jobs.get, { id: job.id }, at)).job.state).toBe('inquiry');
});

describe('a draft changed by hand', () => {
  test('is priced with the changes and taken back step by step', async () => {
    const at = await world('2026-12-01T15:00:00Z');
    await withCard(at);
    const { id: jobId } = await inquiry(at);
    const first = (await call(quotes.draft, { jobId }, at)).draft;
    const changed = (
      await call(
        quotes.change,
        {
          jobId,
          draftVersion: 0,
          changes: [
            { op: 'set', id: 'days/shoot', unitPrice: '900' },
            { op: 'add', section: 'extras', what: 'Music licence', quantity: '1', unit: 'track', unitPrice: '59.00' },
          ],
        },
        at,
      )
    ).draft;
    expect(changed.lines.find((line) => line.id === 'days/shoot')).toMatchObject({ amount: { minor: 180_000 }, changed: true });
    expect(changed.lines.find((line) => line.id === 'extras/added-1')).toMatchObject({ amount: { minor: 5_900 } });
    const dropped = (await call(quotes.change, { jobId, draftVersion: 1, changes: [{ op: 'drop', id: 'extras/added-1' }] }, at)).draft;
    expect(dropped.dropped).toEqual([{ id: 'extras/added-1', what: 'Music licence' }]);
    const back = (await call(quotes.undo, { jobId, draftVersion: 2 }, at)).draft;
    expect(back.lines).toEqual(changed.lines);
    const whole = (await call(quotes.undo, { jobId, draftVersion: 3 }, at)).draft;
    expect(whole).toEqual({ ...first, draftVersion: 4 });
    expect(await refusal(call(quotes.undo, { jobId, draftVersion: 4 }, at))).toMatchObject({ code: 'REFUSED' });
  });

  test('refuses a line that is not there, and an amount past all reason, and keeps what was', async () => {
    const at = await world('2026-12-01T15:00:00Z');
    await withCard(at);
    const { id: jobId } = await inquiry(at);
    const change = (changes: DraftChange[]) => call(quotes.change, { jobId, draftVersion: 0, changes }, at);
    expect(await refusal(change([{ op: 'drop', id: 'days/none' }]))).toMatchObject({ code: 'BAD_INPUT' });
    expect(await refusal(change([{ op: 'set', id: 'days/shoot', unitPrice: '999999999999' }]))).toMatchObject({ code: 'BAD_INPUT' });
    expect((await call(quotes.draft, { jobId }, at)).draft.draftVersion).toBe(0);
  });
});

describe('rate cards', () => {
  test('a card that contradicts itself is refused by field', async () => {
    const at = await world('2026-12-01T15:00:00Z');
    const said = await refusal(
      withCard(at, {
        halfUpToHours: '11',
        overtime: [
          { fromHours: '0', toHours: null, times: '2' },
          { fromHours: '1', toHours: null, times: '1.5' },
        ],
      }),
    );
    expect(said.code).toBe('BAD_INPUT');
    expect(said.fields?.map((field) => field.field)).toEqual(['fields.halfUpToHours', 'fields.overtime.0', 'fields.overtime.1']);
  });

  test('an old version is refused with both states', async () => {
    const at = await world('2026-12-01T15:00:00Z');
    const { id, version, ...fields } = await withCard(at);
    await call(rates.save, { id, version, fields: { ...fields, dayRate: '1100' } }, at);
    const said = await refusal(call(rates.save, { id, version, fields: { ...fields, dayRate: '1200' } }, at));
    expect(said).toMatchObject({ code: 'STALE', current: { dayRate: '1100', version: 2 }, mine: { dayRate: '1200', version: 1 } });
  });
});

test('a quote of two offers is made whole; the cheapest counts for its total', async () => {
  const at = await world('2026-12-01T15:00:00Z');
  await withCard(at);
  const job = await inquiry(at);
  const { draft } = await call(
    quotes.change,
    {
      jobId: job.id,
      draftVersion: 0,
      changes: [
        { op: 'offers', names: ['With a crane', 'Plain'] },
        { op: 'add', section: 'kit', what: 'Crane', quantity: '2', unit: 'days', unitPrice: '400', offer: 1 },
      ],
    },
    at,
  );
  const made = await call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 1, pencil: true }, at);
  expect(made.version.draft.offers.map((offer) => [offer.name, offer.forMoney, offer.forTime])).toEqual([
    ['With a crane', false, true],
    ['Plain', true, false],
  ]);
  expect(made.job.total).toEqual(draft.offers[1]?.totals.gross);
  expect(made.version.reply.text).toContain('2 offers to choose from');
});

describe('after a quote was made', () => {
  async function made() {
    const at = await world('2026-12-01T15:00:00Z');
    const card = await withCard(at);
    const job = await inquiry(at);
    const { version } = await call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false }, at);
    return { at, card, jobId: job.id, version };
  }

  test('its differences from the draft, and from the next version, are said in words', async () => {
    const { at, jobId } = await made();
    await call(quotes.change, { jobId, draftVersion: 0, changes: [{ op: 'set', id: 'days/shoot', quantity: '3' }] }, at);
    const { sentences } = await call(quotes.differences, { jobId, from: 1, to: null }, at);
    expect(sentences).toContain('Shooting: 3 instead of 2 days: 3,000.00 instead of 2,000.00.');
    const job = (await call(jobs.get, { id: jobId }, at)).job;
    const { version } = await call(quotes.make, { jobId, jobVersion: job.version, draftVersion: 1, pencil: true }, at);
    expect(version.number).toBe(2);
    expect((await call(quotes.differences, { jobId, from: 1, to: 2 }, at)).sentences).toEqual(sentences);
    expect(await refusal(call(quotes.differences, { jobId, from: 3, to: 2 }, at))).toMatchObject({ code: 'NOT_FOUND' });
  });

  test('a cancellation owes the frozen scale, whatever the card says later', async () => {
    const { at, card, jobId } = await made();
    const { id, version, ...fields } = card;
    await call(rates.save, { id, version, fields: { ...fields, terms: { ...fields.terms, cancellation: [] } } }, at);
    const owed = await call(quotes.cancellation, { jobId, at: '2026-12-11T14:00:00Z', depositPaid: '500' }, at);
    expect(owed).toMatchObject({ version: 1, cancellation: { percent: '100', noticeHours: 24, owed: { currency: 'USD' } } });
    expect(owed.cancellation.owed.minor).toBe(owed.cancellation.fee.minor - 50_000);
  });

  test('a preview says what a dearer day would do to it, and saves nothing', async () => {
    const { at, card } = await made();
    const { id, version: _version, ...fields } = card;
    const { rows, sentence } = await call(rates.preview, { id, fields: { ...fields, dayRate: '1100' } }, at);
    expect(rows).toMatchObject([{ title: 'League final', number: 1 }]);
    expect(rows[0]?.difference.minor).toBeGreaterThanOrEqual(20_000);
    expect(sentence).toMatch(/^The last quote would come to USD .* more together\.$/);
    expect((await call(rates.list, {}, at)).cards).toEqual([card]);
  });

  test('a preview in another currency says which quotes cannot be compared, and mixes nothing', async () => {
    const { at, card, jobId } = await made();
    const { id, version, ...fields } = card;
    const asked = await call(rates.preview, { id, fields: { ...fields, currency: 'EUR' } }, at);
    expect(asked).toEqual({
      rows: [],
      apart: [{ jobId, title: 'League final', number: 1, why: 'It was made in USD, and the card would be in EUR.' }],
      sentence: 'The last quote cannot be compared.',
    });
    await call(rates.save, { id, version, fields: { ...fields, currency: 'EUR' } }, at);
    const later = await call(rates.preview, { id, fields: { ...fields, currency: 'EUR', dayRate: '1100' } }, at);
    expect(later.rows).toEqual([]);
    expect(later.apart[0]?.why).toBe('It was made in USD, and the card is in EUR now.');
  });

  test('terms can be started from a preset', async () => {
    const { at, jobId } = await made();
    const { presets } = await call(rates.presets, {}, at);
    const company = presets.find((preset) => preset.name === 'Company that pays late');
    const { draft } = await call(quotes.change, { jobId, draftVersion: 0, changes: [{ op: 'terms', terms: company?.terms ?? {} }] }, at);
    expect(draft).toMatchObject({ deposit: null, terms: { payDays: 30 } });
  });
});

test('the trip of a quote is that of the legs of its job', async () => {
  const at = await world('2026-12-01T15:00:00Z');
  await withCard(at, { allowanceNight: '60' });
  const { id: jobId } = await inquiry(at);
  const ticket = { mode: 'rail' as const, source: 'ticketed' as const, berth: false, cost: '', note: '', before: null, after: null };
  const leg = (from: typeof FARGO, to: typeof FARGO, depart: string, arrive: string) =>
    call(trips.setLeg, { jobId, fields: { ...ticket, from, to, depart, arrive } }, at);
  await leg(DULUTH, FARGO, '2026-12-10T09:00', '2026-12-10T15:00');
  await leg(FARGO, DULUTH, '2026-12-14T09:00', '2026-12-14T15:00');
  const { draft } = await call(quotes.draft, { jobId }, at);
  expect(draft.lines.find(({ id }) => id === 'allowances/night')).toMatchObject({ quantity: '4', estimated: false });
  expect(draft.lines.some(({ id }) => id.startsWith('travel/mileage'))).toBe(false);
  expect(draft.cautions).toContain('The way is by rail: its fare is not in the quote. Add it as a line.');
});

test('a hand named on a quote costs their day rate in People, in this job a day and nowhere on the price', async () => {
  const at = await world('2026-12-01T15:00:00Z');
  await withCard(at);
  const { id: jobId } = await inquiry(at);
  const rates300 = [{ role: 'shoot' as const, dayRate: '300', currency: 'USD', from: '2026-01-01' }];
  const { hand } = await call(people.saveHand, { fields: { ...blankHand('Ana Berg'), rates: rates300 } }, at);
  const before = (await call(quotes.draft, { jobId }, at)).draft;
  const named = (handId: string, draftVersion: number) =>
    call(quotes.change, { jobId, draftVersion, changes: [{ op: 'hand', handId }] }, at);
  expect(await refusal(named(jobId, 0))).toMatchObject({ code: 'NOT_FOUND' });
  const { draft } = await named(hand.id, 0);
  expect(draft.costs).toMatchObject([{ kind: 'hand', what: 'Ana Berg', amount: { minor: 60_000, currency: 'USD' } }]);
  expect(draft.scale.thisJob.minor).toBeLessThan(before.scale.thisJob.minor);
  expect(draft.totals).toEqual(before.totals);
  expect((await call(quotes.undo, { jobId, draftVersion: 1 }, at)).draft.costs).toEqual([]);
});
