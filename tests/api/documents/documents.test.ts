import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import type { DocumentFields } from '../../../core/contract/documents.ts';
import { blankDocument } from '../../../core/documents/blank.ts';
import { router } from '../../../electron/api/router.ts';
import { DULUTH, refusal, THUNDER_BAY, world, type World } from '../world.ts';

const { documents, fit, jobs, kit, papers, people } = router;
const NOW = '2026-11-25T15:00:00Z';
const PASSPORT: DocumentFields = { ...blankDocument('passport'), number: 'X0192837', country: 'US', until: '2031-04-01' };
const PDF = Buffer.from('%PDF-1.7 scan').toString('base64');
const days = [
  { date: '2026-12-09', kind: 'half' as const, call: '2026-12-09T12:00', wrap: '2026-12-09T18:00' },
  { date: '2026-12-10', kind: 'half' as const, call: '2026-12-10T09:00', wrap: '2026-12-10T15:00' },
];
const keep = (w: World, fields: DocumentFields) => call(documents.save, { fields }, w);
const curling = async (w: World) => (await call(jobs.add, { facts: { title: 'Curling', place: THUNDER_BAY, days } }, w)).job;

describe('documents', () => {
  test('are kept, changed, listed by their last day and taken off', async () => {
    const w = await world(NOW);
    const { document } = await keep(w, PASSPORT);
    expect(document).toMatchObject({ ...PASSPORT, version: 1, scan: null });
    await keep(w, { ...blankDocument('driving licence'), until: '2027-02-03' });
    await keep(w, blankDocument('vehicle'));
    const listed = await call(documents.list, {}, w);
    expect(listed.documents.map(({ kind }) => kind)).toEqual(['driving licence', 'passport', 'vehicle']);
    const changed = await call(documents.save, { id: document.id, version: 1, fields: { ...PASSPORT, until: '2036-04-01' } }, w);
    expect(changed.document).toMatchObject({ version: 2, until: '2036-04-01' });
    expect(await refusal(call(documents.drop, { id: document.id, version: 1 }, w))).toMatchObject({
      code: 'STALE',
      what: expect.stringContaining('Passport'),
    });
    await call(documents.drop, { id: document.id, version: 2 }, w);
    expect((await call(documents.list, {}, w)).documents).toHaveLength(2);
    expect(await refusal(call(documents.drop, { id: document.id, version: 2 }, w))).toMatchObject({ code: 'NOT_FOUND' });
  });

  test('a number stands in no history, in no kept result, and is gone with its document', async () => {
    const w = await world(NOW);
    const { document } = await call(documents.save, { fields: PASSPORT, key: crypto.randomUUID() }, w);
    await call(documents.save, { id: document.id, version: 1, fields: { ...PASSPORT, note: 'renewed' }, key: crypto.randomUUID() }, w);
    await call(documents.drop, { id: document.id, version: 2, key: crypto.randomUUID() }, w);
    const all = w.context.store.read(({ $client }) =>
      $client
        .prepare<[], { name: string }>("select name from sqlite_schema where type = 'table' and name not like 'sqlite_%'")
        .all()
        .map(({ name }) => JSON.stringify($client.prepare(`select * from "${name}"`).all())),
    );
    expect(all.join('\n')).toContain('Passport, valid to');
    expect(all.join('\n')).not.toContain(PASSPORT.number);
  });

  test('a save that is repeated with its key answers with the same document', async () => {
    const w = await world(NOW);
    const key = crypto.randomUUID();
    const [one, again] = [
      await call(documents.save, { fields: PASSPORT, key }, w),
      await call(documents.save, { fields: PASSPORT, key }, w),
    ];
    expect(again).toEqual(one);
    expect((await call(documents.list, {}, w)).documents).toHaveLength(1);
  });

  test.each([
    ['ends before it begins', { ...PASSPORT, from: '2032-01-01' }, 'BAD_INPUT', 'The last day is before the first'],
    ['is for no country', blankDocument('right to work'), 'BAD_INPUT', 'Say which country'],
    ['is of no hand', { ...PASSPORT, handId: '01939b2c-0000-7000-8000-000000000000' }, 'NOT_FOUND', 'hand'],
  ])('what %s is refused', async (_, fields, code, what) => {
    const refused = await refusal(keep(await world(NOW), fields));
    expect(refused.code).toBe(code);
    expect(`${refused.what} ${JSON.stringify(refused.fields ?? [])}`).toContain(what);
  });

  test('a scan is put with it, taken from it and put back; only scans are', async () => {
    const w = await world(NOW);
    const { document } = await keep(w, PASSPORT);
    const one = { id: document.id, version: 1 };
    const scanned = (await call(documents.attach, { ...one, name: 'passport.pdf', base64: PDF }, w)).document;
    expect(scanned).toMatchObject({ version: 2, scan: { name: 'passport.pdf', type: 'application/pdf' } });
    expect((await call(papers.read, { id: scanned.scan?.id ?? '' }, w)).base64).toBe(PDF);
    const bare = (await call(documents.putScan, { id: document.id, version: 2, scanId: null }, w)).document;
    expect(bare).toMatchObject({ version: 3, scan: null });
    const back = (await call(documents.putScan, { id: document.id, version: 3, scanId: scanned.scan?.id ?? '' }, w)).document;
    expect(back.scan?.id).toBe(scanned.scan?.id);
    expect(await refusal(call(documents.attach, { id: document.id, version: 4, name: 'x', base64: 'aGFsbG8=' }, w))).toMatchObject({
      code: 'BAD_INPUT',
    });
    const job = await curling(w);
    await call(
      kit.setForJob,
      { jobId: job.id, needs: [{ item: (await call(kit.save, { fields: { name: 'Camera', owned: 1 } }, w)).item.id, count: 1 }] },
      w,
    );
    const { pdf } = await call(documents.makeCustoms, { id: job.id, version: job.version }, w);
    expect(await refusal(call(documents.putScan, { id: document.id, version: 4, scanId: pdf.id }, w))).toMatchObject({ code: 'NOT_FOUND' });
  });

  test('the answer to a job over the border looks at them, and at those of hands', async () => {
    const w = await world(NOW);
    const job = await curling(w);
    const kinds = async () =>
      (await call(fit.check, { jobId: job.id }, w)).result.findings.map(({ kind, hardness }) => `${kind}: ${hardness}`);
    expect(await kinds()).toEqual(['passport: settle', 'right to work: settle']);
    await keep(w, { ...blankDocument('passport'), until: '2026-12-09' });
    expect(await kinds()).toEqual(['passport: blocks', 'lead time: settle', 'right to work: settle']);
    const { hand } = await call(
      people.saveHand,
      {
        fields: {
          name: 'Ivo',
          email: '',
          phone: '',
          rates: [{ role: 'shoot', dayRate: '400', currency: 'USD', from: '2026-01-01' }],
          home: DULUTH,
          ownKit: '',
          taxForm: false,
          insuredUntil: null,
          payDays: 30,
          backup: false,
          notes: '',
        },
      },
      w,
    );
    const hands = [{ handId: hand.id, dates: days.map(({ date }) => date) }];
    const tried = async () =>
      (await call(fit.check, { jobId: job.id, tryOn: { hands } }, w)).result.findings.filter(({ sentence }) =>
        sentence.startsWith('For Ivo: The trip leaves'),
      );
    expect(await tried()).toMatchObject([{ kind: 'passport', hardness: 'know' }]);
    await keep(w, { ...PASSPORT, handId: hand.id });
    expect(await tried()).toEqual([]);
  });

  test('days that are left before the first call leave out the public holidays of home', async () => {
    const w = await world(NOW);
    const job = await curling(w);
    const found = (await call(fit.check, { jobId: job.id }, w)).result.findings.find(({ kind }) => kind === 'passport');
    // Wed 25 November to Wed 9 December: nine weekdays between, and Thanksgiving among them.
    expect(found?.numbers['left']).toBe(8);
  });
});
