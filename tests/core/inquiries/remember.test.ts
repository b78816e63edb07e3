import { fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../core/contract/inquiries.ts';
import { jobOf } from '../../../core/inquiries/to-job.ts';
import { type Correction, type KeptCorrection, learned, senderOf, stillRemembered, withMemory } from '../../../core/inquiries/remember.ts';
import { type FactChanges, type Facts, withChanges } from '../../../core/jobs/facts.ts';
import { gazetteer, homeOf, readAt } from './reading.ts';

const USUAL = { homeZone: 'America/Chicago', dayMinutes: 600, halfMinutes: 300 };
const AT = '2026-11-12T10:00:00Z';
const message = (dates: string, money = '$900 a day') => `Hi, can you run cameras in Springfield on ${dates}? ${money}.

Ada Byrd
Northfield Seed Co-op
ada@northfield.example
`;

const factsOf = (reading: Reading): Facts => jobOf(reading, '', 'Sales meeting', USUAL).facts;
const taught = (reading: Reading, changes: FactChanges): Correction[] => {
  const before = factsOf(reading);
  return learned(reading, before, withChanges(before, changes)).keep;
};
const kept = (corrections: Correction[]): KeptCorrection[] =>
  corrections.map((one, index) => ({ ...one, id: `correction ${index}`, at: AT }));

function springfields() {
  return gazetteer.filter(({ name }) => name === 'Springfield').map(({ kind: _kind, people: _people, ...place }) => place);
}

describe('who wrote', () => {
  test.each([
    [{ contactEmail: 'Ada@Northfield.example', contactPhone: '555' }, 'mail ada@northfield.example'],
    [{ contactPhone: '+1 218 555 0100', contactName: 'Ada' }, 'phone 12185550100'],
    [{ contactName: 'Ada  Byrd', organisation: 'Northfield' }, 'name ada byrd, northfield'],
    [{ contactName: 'Ada' }, null],
    [{}, null],
  ])('%o is %s', (fields, sender) => {
    expect(senderOf({ isInquiry: true, fields, questions: [], spans: [] })).toBe(sender);
  });
});

describe('the same words, read the same way', () => {
  const first = readAt(message('12 December'));
  const second = readAt(message('19 January', '$1,100 a day'));

  test('a town of several is the one that was chosen, and is asked no more', () => {
    for (const place of springfields()) {
      const read = withMemory(second, kept(taught(first, { place })));
      if (place.key === second.placeFound?.key) continue;
      expect(read.placeFound).toEqual(place);
      expect(read.fields).toEqual({ ...second.fields, place: 'Springfield', country: place.country });
      expect(read.questions.filter(({ field }) => field === 'place' || field === 'country')).toEqual([]);
      expect(read.remembered).toEqual([{ id: 'correction 0', fact: 'place', at: AT }]);
    }
  });

  test('"cameras" is the second camera', () => {
    const read = withMemory(second, kept(taught(first, { role: 'second camera' })));
    expect(read.fields.role).toBe('second camera');
  });

  test('"$" is the Canadian dollar, whatever the number', () => {
    const read = withMemory(second, kept(taught(first, { budget: { amount: 900, currency: 'CAD', per: 'day' } })));
    expect(read.fields.budget).toEqual({ amount: 1100, currency: 'CAD', per: 'day' });
    expect(read.remembered?.map(({ fact }) => fact)).toEqual(['currency']);
  });

  test('the unit of an amount without one, where that was asked', () => {
    const bare = readAt(message('12 December', 'Budget $900'));
    const later = readAt(message('19 January', 'Budget $1,100'));
    const per = bare.fields.budget?.per === 'job' ? 'day' : 'job';
    const read = withMemory(later, kept(taught(bare, { budget: { amount: 900, currency: 'USD', per } })));
    expect(read.fields.budget).toEqual({ amount: 1100, currency: 'USD', per });
    expect(read.questions.filter(({ field }) => field === 'budget')).toEqual([]);
  });

  test('a currency that was asked is asked no more', () => {
    const asked = readAt('Can you film on 12 December in Thunder Bay? $900 a day.\nada@northfield.example');
    expect(asked.questions.map(({ field }) => field)).toContain('budget');
    const read = withMemory(asked, kept(taught(asked, { budget: { amount: 900, currency: 'CAD', per: 'day' } })));
    expect(read.fields.budget?.currency).toBe('CAD');
    expect(read.questions.map(({ field }) => field)).not.toContain('budget');
  });

  test('a name and an organisation, also when there is none', () => {
    const corrections = taught(first, { organisation: '', contact: { ...factsOf(first).contact, name: 'Ada Byrd-Olsen' } });
    const read = withMemory(second, kept(corrections));
    expect(read.fields.contactName).toBe('Ada Byrd-Olsen');
    expect(read.fields.organisation).toBeUndefined();
  });
});

describe('what is not remembered', () => {
  const reading = readAt(message('12 December'));
  test('days, reply-by, notes and what to deliver', () => {
    expect(taught(reading, { days: [], replyBy: null, notes: 'Ring first.', deliverables: ['A short film'], title: 'Other' })).toEqual([]);
  });
  test('another amount, which is another offer', () => {
    expect(taught(reading, { budget: { amount: 1000, currency: 'CAD', per: 'job' } })).toEqual([]);
  });
  test('a fact that no words of the message stand for', () => {
    const silent = readAt('Are you free on 12 December? ada@northfield.example');
    expect(taught(silent, { place: homeOf('duluth'), role: 'audio', organisation: 'Northfield' })).toEqual([]);
  });
  test('a value put back to what was read: its correction is dropped', () => {
    const read = factsOf(reading);
    const { keep, drop } = learned(reading, { ...read, role: 'audio' }, read);
    expect(keep).toEqual([]);
    expect(drop).toMatchObject([{ fact: 'role', words: 'cameras', read: 'shoot' }]);
  });
  test('other words, or the same read another way', () => {
    const corrections = kept(taught(reading, { role: 'second camera' }));
    const stream = readAt('Can you livestream on 12 December in Fargo? ada@northfield.example');
    expect(withMemory(stream, corrections)).toEqual(stream);
    const apart = { ...reading, fields: { ...reading.fields, role: 'photo' as const } };
    expect(withMemory(apart, corrections)).toEqual(apart);
  });
});

test('a note goes with the fact that it stands at', () => {
  const facts = factsOf(readAt(message('12 December')));
  const notes = [
    { id: 'a', fact: 'role' as const, at: AT },
    { id: 'b', fact: 'currency' as const, at: AT },
  ];
  expect(stillRemembered(notes, facts, { ...facts, role: 'audio', notes: 'Ring first.' })).toEqual([notes[1]]);
});

test('laws: memory changes no date, and what was learned from a message corrects that message', () => {
  const reading = readAt(message('12 December'));
  const before = factsOf(reading);
  const changes = fc.record(
    {
      place: fc.constantFrom(...springfields(), homeOf('duluth')),
      role: fc.constantFrom('shoot' as const, 'audio' as const, 'other' as const),
      organisation: fc.constantFrom('', 'Northfield Seed', 'Seeds'),
      budget: fc.record({
        amount: fc.constant(900),
        currency: fc.constantFrom('USD', 'CAD'),
        per: fc.constantFrom('day' as const, 'job' as const),
      }),
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(changes, (change) => {
      const read = withMemory(reading, kept(taught(reading, change)));
      const facts = factsOf(read);
      expect({ ...facts, days: [] }).toEqual({ ...withChanges(before, change), days: [] });
      const { start, end, firstCall, lastWrap, replyBy } = read.fields;
      expect({ start, end, firstCall, lastWrap, replyBy }).toEqual({
        start: reading.fields.start,
        end: reading.fields.end,
        firstCall: reading.fields.firstCall,
        lastWrap: reading.fields.lastWrap,
        replyBy: reading.fields.replyBy,
      });
    }),
    { seed: 20261125, numRuns: 100 },
  );
});
