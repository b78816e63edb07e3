import { describe, expect, test } from 'vitest';
import type { Document } from '../../../core/contract/documents.ts';
import type { Finding } from '../../../core/contract/fit.ts';
import { certificateClock, documentClocks, papersClock } from '../../../core/desk/paper-clocks.ts';
import { blankDocument } from '../../../core/documents/blank.ts';
import { blankKnows } from '../../../core/jobs/knows.ts';
import { instantOf } from '../../../core/time/read.ts';

const ZONE = 'America/Chicago';
const at = (wall: string) => instantOf(wall, ZONE).epochMilliseconds;
const NOW = at('2026-11-25T09:00');
const job = { id: 'j', version: 3, title: 'Curling' };
const document = (fields: Partial<Document>): Document => ({
  id: 'd',
  version: 1,
  ...blankDocument('passport'),
  scan: null,
  ...fields,
});
const clocks = (...documents: Document[]) => documentClocks(documents, () => 'Ivo', NOW, ZONE);

describe('what runs out', () => {
  test.each([
    ['sixty days ahead', '2027-01-24', 1],
    ['a day later', '2027-01-25', 0],
    ['today', '2026-11-25', 1],
    ['thirteen days ago', '2026-11-12', 1],
    ['a month ago', '2026-10-20', 0],
    ['never, as far as is noted', null, 0],
  ])('%s', (_, until, count) => expect(clocks(document({ until }))).toHaveLength(count));

  test('says when, and whose it is', () => {
    expect(clocks(document({ until: '2026-12-12' }))).toMatchObject([
      { sentence: 'Passport runs out at the end of Sat 12 Dec', late: false, jobId: null, at: '2026-12-13T06:00:00Z' },
    ]);
    expect(clocks(document({ until: '2026-11-20', handId: 'h', leadDays: 30 }))).toMatchObject([
      { sentence: 'Ivo: Passport ran out at the end of Fri', late: true, second: 'a new one takes about 30 business days' },
    ]);
  });

  test('one that was renewed is not told of; one of another hand, or for less, renews nothing', () => {
    const old = document({ kind: 'right to work', countries: ['CA'], until: '2026-12-12' });
    expect(clocks(old, document({ id: 'e', kind: 'right to work', countries: ['CA', 'MX'], until: '2028-01-01' }))).toEqual([]);
    expect(clocks(old, document({ id: 'e', kind: 'right to work', countries: ['MX'], until: '2028-01-01' }))).toHaveLength(1);
    expect(clocks(old, document({ id: 'e', kind: 'right to work', countries: ['CA'], handId: 'h', until: '2028-01-01' }))).toHaveLength(1);
  });
});

describe('the papers of a trip', () => {
  const finding = (kind: string, numbers: Finding['numbers'], hardness: Finding['hardness'] = 'settle'): Finding => ({
    kind,
    hardness,
    concerns: [],
    numbers,
    sentence: '',
    lifts: [],
  });
  const callAt = at('2026-12-09T12:00');
  const clock = (findings: Finding[], now = NOW) =>
    papersClock({ job, callAt, findings, holidays: () => new Set(['2026-11-26']) }, now, ZONE);

  test('run out on the last date on which what takes longest can be asked for', () => {
    // Eight business days before Wed 9 December, without Thanksgiving: Fri 27 November; to be asked for the day before that.
    expect(clock([finding('passport', { lead: 8 }), finding('right to work', {})])).toMatchObject({
      sentence: 'Curling: passport and right to work not settled',
      second: 'ask by Thu, or it may come too late; first call Wed 9 Dec 12:00',
      at: '2026-11-27T06:00:00Z',
      late: false,
    });
    expect(clock([finding('customs', { lead: 3 })])?.sentence).toBe('Curling: customs list or carnet not settled');
  });

  test('are late once it may come too late, and are over with the call', () => {
    expect(clock([finding('passport', { lead: 30 })])).toMatchObject({
      late: true,
      second: expect.stringContaining('asked for now it may come too late'),
    });
    expect(clock([finding('passport', { lead: 30 })], callAt)).toBeNull();
  });

  test('without a lead time on file they run to first call; what is good to know is no clock', () => {
    expect(clock([finding('licence', { what: 'remote pilot licence' })])).toMatchObject({
      at: '2026-12-09T18:00:00Z',
      sentence: 'Curling: remote pilot licence not settled',
    });
    expect(clock([finding('passport validity', {}, 'know')])).toBeNull();
  });
});

describe('an insurance certificate', () => {
  const callAt = at('2026-12-09T12:00');
  const asked = { ...blankKnows().insurance, asked: true };
  const clock = (insurance: Partial<typeof asked>, now = NOW) =>
    certificateClock({ job, insurance: { ...asked, ...insurance }, callAt }, now, ZONE);

  test('is a clock from being asked for until it is sent', () => {
    expect(clock({ due: '2026-12-04', named: 'Ice Hall' })).toMatchObject({
      sentence: 'Curling: insurance certificate due by the end of Fri 4 Dec',
      second: 'the insurer is not asked yet; names Ice Hall',
      late: false,
    });
    expect(clock({ due: '2026-11-24', askedOn: '2026-11-23' })).toMatchObject({
      late: true,
      sentence: expect.stringContaining('was due'),
      second: 'the insurer was asked Mon',
    });
    expect(clock({})?.at).toBe('2026-12-09T18:00:00Z');
    expect(clock({ sentOn: '2026-11-24' })).toBeNull();
    expect(clock({ asked: false })).toBeNull();
    expect(clock({}, callAt)).toBeNull();
  });
});
