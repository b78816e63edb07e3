import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import type { DocumentFields } from '../../../core/contract/documents.ts';
import { blankDocument } from '../../../core/documents/blank.ts';
import { router } from '../../../electron/api/router.ts';
import { refusal, SETUP, THUNDER_BAY, world, type World } from '../world.ts';

const { documents, fit, jobs, kit, papers } = router;
const NOW = '2026-11-25T15:00:00Z';
const days = [
  { date: '2026-12-09', kind: 'half' as const, call: '2026-12-09T12:00', wrap: '2026-12-09T18:00' },
  { date: '2026-12-10', kind: 'half' as const, call: '2026-12-10T09:00', wrap: '2026-12-10T15:00' },
];
const keep = (w: World, fields: DocumentFields) => call(documents.save, { fields }, w);
const curling = async (w: World) => (await call(jobs.add, { facts: { title: 'Curling', place: THUNDER_BAY, days } }, w)).job;

describe('the customs list of a job', () => {
  async function packed() {
    const w = await world(NOW);
    const camera = await call(
      kit.save,
      {
        fields: {
          name: 'Camera',
          owned: 3,
          units: [{ serial: 'A1' }, { serial: 'A2', value: { minor: 310_000, currency: 'USD' } }],
          grams: 1250,
          origin: 'JP',
          value: { minor: 299_995, currency: 'USD' },
        },
      },
      w,
    );
    const stand = await call(kit.save, { fields: { name: '=Stand', owned: 4, value: { minor: 10_050, currency: 'EUR' } } }, w);
    const job = await curling(w);
    await call(
      kit.setForJob,
      {
        jobId: job.id,
        needs: [
          { item: camera.item.id, count: 2 },
          { item: stand.item.id, count: 3 },
        ],
      },
      w,
    );
    return { w, job, camera: camera.item, stand: stand.item };
  }

  test('has a line for each unit, totals by currency, and says what is missing', async () => {
    const { w, job } = await packed();
    const { list, crosses, ask, carnet } = await call(documents.customs, { jobId: job.id }, w);
    expect(list.rows).toEqual([
      {
        number: 1,
        name: '=Stand',
        serial: '',
        count: 3,
        grams: null,
        origin: null,
        value: { minor: 30_150, currency: 'EUR' },
        missing: ['serial', 'weight', 'origin'],
      },
      {
        number: 2,
        name: 'Camera',
        serial: 'A1',
        count: 1,
        grams: 1250,
        origin: 'JP',
        value: { minor: 299_995, currency: 'USD' },
        missing: [],
      },
      {
        number: 3,
        name: 'Camera',
        serial: 'A2',
        count: 1,
        grams: 1250,
        origin: 'JP',
        value: { minor: 310_000, currency: 'USD' },
        missing: [],
      },
    ]);
    expect(list).toMatchObject({ pieces: 5, grams: 2500, total: null, packed: false });
    expect(list.values).toEqual([
      { minor: 30_150, currency: 'EUR' },
      { minor: 609_995, currency: 'USD' },
    ]);
    expect(list.missing).toContain('=Stand has no serial, weight or country of origin on the kit list.');
    expect([crosses, carnet]).toEqual([true, null]);
    expect(ask).toContain('Canada Border Services Agency');
  });

  test('a dated rate gives the value in all, and what a carnet of it costs', async () => {
    const { w, job } = await packed();
    const rates = [{ currency: 'EUR', rate: '1.1', date: '2026-11-24' }];
    const { list, carnet } = await call(documents.customs, { jobId: job.id, rates }, w);
    // 301.50 EUR x 1.1 = 331.65; with 6,099.95 it is 6,431.60.
    expect(list.total).toEqual({ minor: 643_160, currency: 'USD' });
    expect(carnet).toMatchObject({ fee: { minor: 25_500 }, security: { minor: 257_264 } });
  });

  test('names the units that were ticked out, once all that is needed was', async () => {
    const { w, job, camera, stand } = await packed();
    const tick = (item: string, serial: string, out: number) => ({ item, serial, out, back: 0, missing: 0 });
    await call(kit.pack, { jobId: job.id, ticks: [tick(camera.id, 'A2', 1)] }, w);
    expect((await call(documents.customs, { jobId: job.id }, w)).list.rows.map(({ serial }) => serial)).toEqual(['', 'A1', 'A2']);
    await call(kit.pack, { jobId: job.id, ticks: [tick(camera.id, '', 1), tick(stand.id, '', 3)] }, w);
    const { list } = await call(documents.customs, { jobId: job.id }, w);
    expect(list.rows.map(({ serial, count }) => [serial, count])).toEqual([
      ['', 3],
      ['A2', 1],
      ['', 1],
    ]);
    expect(list.packed).toBe(true);
  });

  test('is put on paper twice over, as PDF and CSV, is found whole, and lifts what was to be settled', async () => {
    const { w, job } = await packed();
    const kinds = async () =>
      (await call(fit.check, { jobId: job.id }, w)).result.findings.flatMap(({ kind, hardness }) => (kind === 'customs' ? [hardness] : []));
    expect(await kinds()).toEqual(['settle']);
    const made = await call(documents.makeCustoms, { id: job.id, version: job.version, key: crypto.randomUUID() }, w);
    expect(made.job.papers.map(({ name }) => name).sort((a, b) => (a < b ? -1 : 1))).toEqual([
      'Customs list 2026-11-25, Curling.csv',
      'Customs list 2026-11-25, Curling.pdf',
    ]);
    const csv = await call(papers.read, { id: made.csv.id }, w);
    expect(csv.type).toBe('text/csv');
    const text = Buffer.from(csv.base64, 'base64').toString('utf8');
    // A name that could begin a formula does not.
    expect(text.split('\r\n').slice(0, 3)).toEqual([
      '\ufeffNumber,Thing,Serial,Pieces,Weight kg,Country of origin,Value,Currency',
      "1,'=Stand,,3,,,301.50,EUR",
      '2,Camera,A1,1,1.25,JP,2999.95,USD',
    ]);
    expect((await call(papers.read, { id: made.pdf.id }, w)).type).toBe('application/pdf');
    expect(await call(papers.check, {}, w)).toMatchObject({ whole: 2, lost: [], orphans: [] });
    expect(await kinds()).toEqual(['know']);
  });

  test('a repeated making with its key makes no second paper', async () => {
    const { w, job } = await packed();
    const input = { id: job.id, version: job.version, key: crypto.randomUUID() };
    const first = await call(documents.makeCustoms, input, w);
    expect(await call(documents.makeCustoms, input, w)).toEqual(first);
  });

  test('is refused without kit, without a place, and for an old version', async () => {
    const w = await world(NOW);
    const job = await curling(w);
    expect(await refusal(call(documents.makeCustoms, { id: job.id, version: job.version }, w))).toMatchObject({
      code: 'REFUSED',
      what: expect.stringContaining('takes no kit'),
    });
    const bare = (await call(jobs.add, { facts: { title: 'Nowhere' } }, w)).job;
    expect(await refusal(call(documents.makeCustoms, { id: bare.id, version: bare.version }, w))).toMatchObject({ code: 'REFUSED' });
    expect(await refusal(call(documents.makeCustoms, { id: job.id, version: job.version + 1 }, w))).toMatchObject({ code: 'STALE' });
  });
});

describe('the insurance certificate', () => {
  test('what does not fit is told, and the text names what was asked for', async () => {
    const w = await world(NOW);
    const job = await curling(w);
    const none = await call(documents.certificate, { jobId: job.id }, w);
    expect(none.troubles).toEqual([]);
    const insurance = {
      ...job.knows.insurance,
      asked: true,
      named: 'Northern Ice Hall',
      limit: { minor: 500_000_000, currency: 'CAD' },
      due: '2026-12-04',
    };
    await call(jobs.saveKnows, { id: job.id, version: job.version, knows: { ...job.knows, insurance } }, w);
    expect((await call(documents.certificate, { jobId: job.id }, w)).troubles).toEqual([
      'No liability insurance is on file: note it in Setup, under Documents.',
    ]);
    await keep(w, {
      ...blankDocument('liability insurance'),
      number: 'LP-7',
      until: '2026-12-09',
      countries: ['US'],
      limit: { minor: 200_000_000, currency: 'CAD' },
    });
    const { troubles, text } = await call(documents.certificate, { jobId: job.id }, w);
    expect(troubles).toEqual([
      'The insurance on file runs out on Wed 9 December 2026, before the last day of the job, Thu 10 December 2026.',
      'The insurance on file does not say that it holds in Canada.',
      'They ask for CAD 5,000,000.00; CAD 2,000,000.00 is on file.',
    ]);
    expect(text.subject).toBe('Certificate of insurance for Curling');
    for (const line of [
      'Policy: LP-7',
      'To be named: Northern Ice Hall',
      'Limit at least: CAD 5,000,000.00',
      'Needed by: Fri 4 December 2026',
      SETUP.name,
    ])
      expect(text.text).toContain(line);
    const answer = await call(fit.check, { jobId: job.id }, w);
    expect(answer.result.findings.filter(({ kind }) => kind === 'insurance').map(({ hardness }) => hardness)).toEqual(['blocks', 'settle']);
  });
});
