import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import type { DocumentFields } from '../../../core/contract/documents.ts';
import { router } from '../../../electron/api/router.ts';
import { DULUTH, refusal, SETUP, THUNDER_BAY, world, type World } from '../world.ts';

const { documents, fit, jobs, kit, papers, people } = router;
const NOW = '2026-11-25T15:00:00Z';
const blank: Omit<DocumentFields, 'kind'> = {
  title: '',
  handId: null,
  number: '',
  issuedBy: '',
  country: null,
  from: null,
  until: null,
  worldwide: false,
  countries: [],
  limit: null,
  leadDays: null,
  note: '',
};
const PASSPORT: DocumentFields = { ...blank, kind: 'passport', number: 'X0192837', country: 'US', until: '2031-04-01' };
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
    await keep(w, { ...blank, kind: 'driving licence', until: '2027-02-03' });
    await keep(w, { ...blank, kind: 'vehicle' });
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
    ['is for no country', { ...blank, kind: 'right to work' as const }, 'BAD_INPUT', 'Say which country'],
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
    await keep(w, { ...blank, kind: 'passport', until: '2026-12-09' });
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
      ...blank,
      kind: 'liability insurance',
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
