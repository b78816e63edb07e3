/**
 * How well the reader did: for each field how many stated facts are right, and how many facts of the message were stated.
 */
import { factNames, type FactName, type InquiryFields, type Reading } from '../../core/contract/inquiries.ts';
import { readInquiry } from '../../core/inquiries/read.ts';
import { foldName } from '../../core/places/fold.ts';
import type { Learned } from '../../core/inquiries/learned/models.ts';
import { lower } from './compared.ts';
import { gazetteer, type Message } from './corpus.ts';
import { learned as shipped } from './shipped.ts';

export type Count = { right: number; stated: number; there: number };
type Miss = { id: string; field: FactName | 'isInquiry' | 'questions'; want: unknown; got: unknown; wrong: boolean };
export type Score = { counts: Map<FactName | 'isInquiry' | 'questions', Count>; misses: Miss[] };

export function read(message: Message, learned: Learned = shipped): Reading {
  const { text, receivedAt, homeZone, homePlace } = message;
  return readInquiry({ text, receivedAt, homeZone, homePlace, gazetteer, learned });
}

function same(field: FactName, want: InquiryFields[FactName], got: InquiryFields[FactName]): boolean {
  if (field === 'budget') {
    const [a, b] = [want, got] as { amount: number; currency?: string; per?: string }[];
    return a?.amount === b?.amount && a?.currency === b?.currency && a?.per === b?.per;
  }
  if (typeof want !== 'string' || typeof got !== 'string') return want === got;
  if (field === 'place') return foldName(want) === foldName(got);
  if (field === 'contactPhone') return want.replace(/\D/g, '') === got.replace(/\D/g, '');
  return lower(want) === lower(got);
}

/** Deliverables count one by one; one that says the same in more or fewer words is right. */
function sameThing(a: string, b: string): boolean {
  return lower(a).includes(lower(b)) || lower(b).includes(lower(a));
}

/** Compare what was read with what is there. */
export function score(messages: readonly Message[], learned?: Learned): Score {
  const counts: Score['counts'] = new Map();
  const misses: Miss[] = [];
  const add = (field: FactName | 'isInquiry' | 'questions', right: number, stated: number, there: number): void => {
    const count = counts.get(field) ?? { right: 0, stated: 0, there: 0 };
    counts.set(field, { right: count.right + right, stated: count.stated + stated, there: count.there + there });
  };
  for (const message of messages) {
    const reading = read(message, learned);
    const verdict = reading.isInquiry === message.isInquiry;
    add('isInquiry', verdict ? 1 : 0, 1, 1);
    if (!verdict) misses.push({ id: message.id, field: 'isInquiry', want: message.isInquiry, got: reading.isInquiry, wrong: true });
    for (const field of factNames) {
      if (message.open.has(field)) continue;
      const [want, got] = [message.fields[field], reading.fields[field]];
      if (field === 'deliverables') {
        const [wanted, given] = [message.fields.deliverables ?? [], reading.fields.deliverables ?? []];
        const right = given.filter((thing) => wanted.some((other) => sameThing(thing, other))).length;
        const found = wanted.filter((thing) => given.some((other) => sameThing(thing, other))).length;
        add(field, Math.min(right, found), given.length, wanted.length);
        if (right < given.length || found < wanted.length)
          misses.push({ id: message.id, field, want: wanted, got: given, wrong: right < given.length });
        continue;
      }
      const right = want !== undefined && got !== undefined && same(field, want, got);
      add(field, right ? 1 : 0, got === undefined ? 0 : 1, want === undefined ? 0 : 1);
      if (!right && (want !== undefined || got !== undefined)) misses.push({ id: message.id, field, want, got, wrong: got !== undefined });
    }
    for (const field of message.asked) {
      const asked = reading.questions.some((question) => question.field === field);
      add('questions', asked ? 1 : 0, asked ? 1 : 0, 1);
      if (!asked)
        misses.push({ id: message.id, field: 'questions', want: field, got: reading.questions.map((one) => one.field), wrong: false });
    }
  }
  return { counts, misses };
}

/** 95 % interval of a share, after Wilson, "Probable inference, the law of succession, and statistical inference" (1927). */
export function interval(right: number, of: number): [low: number, high: number] {
  if (of === 0) return [0, 1];
  const z = 1.959964;
  const share = right / of;
  const middle = (share + (z * z) / (2 * of)) / (1 + (z * z) / of);
  const spread = (z * Math.sqrt((share * (1 - share)) / of + (z * z) / (4 * of * of))) / (1 + (z * z) / of);
  return [Math.max(0, middle - spread), Math.min(1, middle + spread)];
}
