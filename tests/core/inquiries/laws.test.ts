import { fc, test as law } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import type { InquiryFields, Reading } from '../../../core/contract/inquiries.ts';
import { readInquiry } from '../../../core/inquiries/read.ts';
import { messages, type Message } from '../../reader/corpus.ts';
import { read } from '../../reader/scores.ts';
import { gazetteer, homeOf, learned } from './reading.ts';

const seed = 20261125;
const long = process.env['KITBOUND_LONG'] !== undefined;
/** Every fourth message, all of them in the long run. */
const asked = messages('tuned').filter((message, at) => message.isInquiry && (long || at % 4 === seed % 4));

/** What is said of the job; a signature may add who asks. */
function job(reading: Reading): InquiryFields {
  const { contactName: _name, contactEmail: _email, contactPhone: _phone, organisation: _organisation, ...fields } = reading.fields;
  return fields;
}
const unchanged = new Map(asked.map((message) => [message.id, job(read(message))]));
const changed = (message: Message, text: string): Reading => read({ ...message, text });

const signature = '\n\n-- \nAnn Leverett\nProducer, North Mill Cameras Ltd\n14 May Street, Oslo\n+1 612 555 0199 | ann@northmill.example';
const quoted =
  '\n\nOn Tue, 3 Nov 2026 at 09:00, Ann Leverett wrote:\n> Can you film on 9 May 2027 in Oslo, call 7am?\n> It pays 500 a day, reply by 1 December.\n';

const old = 'Can you film on 9 May 2027 in Oslo, call 7am? It pays 500 a day, reply by 1 December.\n\nAnn\n';
const headed = `\n\nFrom: Ann Leverett <ann@northmill.example>\nSent: Tuesday, 3 November 2026 09:00\nTo: Kit\nSubject: Cameras\n\n${old}`;
const named = `\n\nOn Tue, 3 Nov 2026 at 09:00, Ann Leverett <ann@northmill.example> wrote:\n\n${old}`;

describe('what is added around a message changes no fact', () => {
  test.each([
    ['a signature', (text: string) => text + signature],
    ['a quoted old mail', (text: string) => text + quoted],
    ['an old mail below its head', (text: string) => text + headed],
    ['an old mail below a line that names its writer', (text: string) => text + named],
    ['both', (text: string) => text + signature + quoted],
    ['blank lines before and after', (text: string) => `\n\n\n${text}\n\n\n`],
    ['more blank lines between paragraphs', (text: string) => text.replaceAll('\n\n', '\n\n\n\n')],
    ['line ends of another system', (text: string) => text.replaceAll('\n', '\r\n')],
    ['invisible marks', (text: string) => `\u200b\u202a${text}\u202c\ufeff`],
  ])('%s', (_, change) => {
    for (const message of asked)
      expect({ id: message.id, ...job(changed(message, change(message.text))) }).toEqual({ id: message.id, ...unchanged.get(message.id) });
  });
});

describe('spans', () => {
  test('every span is the text at its place, and every fact has one', () => {
    for (const message of asked) {
      const reading = read(message);
      for (const span of reading.spans) expect(message.text.slice(span.start, span.end)).toBe(span.text);
      for (const field of Object.keys(reading.fields))
        expect({ id: message.id, field, spans: reading.spans.filter((span) => span.field === field).length }).not.toHaveProperty(
          'spans',
          0,
        );
    }
  });

  test('names, mails, phones and things stand in their spans as they are stated', () => {
    for (const message of asked) {
      const { fields, spans } = read(message);
      for (const field of ['contactName', 'contactEmail', 'contactPhone', 'organisation'] as const) {
        if (fields[field] !== undefined) expect(spans.find((span) => span.field === field)?.text).toBe(fields[field]);
      }
      for (const thing of fields.deliverables ?? []) expect(spans.map(({ text }) => text)).toContain(thing);
    }
  });
});

describe('a week later', () => {
  const homePlace = { ...homeOf('duluth'), zone: 'Etc/GMT+6' };
  const relative = fc.constantFrom(
    'tomorrow',
    'this Saturday',
    'next week Tuesday',
    'in two days',
    'Thursday and Friday next week',
    'this weekend',
    'Saturday week',
    'in three weeks',
  );
  const deadline = fc.constantFrom('by midnight', 'by Friday noon', 'by tomorrow 5pm', 'within 24 hours', 'by Monday');
  const wall = fc.record({ day: fc.integer({ min: 0, max: 700 }), minute: fc.integer({ min: 0, max: 1439 }) });
  const later = (text: string | undefined): string | undefined => {
    if (text === undefined) return undefined;
    return text.includes('T')
      ? Temporal.PlainDateTime.from(text).add({ days: 7 }).toString({ smallestUnit: 'minute' })
      : Temporal.PlainDate.from(text).add({ days: 7 }).toString();
  };

  law.prop([relative, deadline, wall], { seed, numRuns: 200 })('relative dates and times move by a week', (when, until, at) => {
    const text = `Can you film ${when} in Fargo, call 8am, wrap 6pm? Let me know ${until}.`;
    const received = Temporal.PlainDateTime.from('2026-01-01T00:00').add({ days: at.day, minutes: at.minute }).toZonedDateTime('Etc/GMT+6');
    const fields = [received, received.add({ days: 7 })].map(
      (moment) => readInquiry({ text, receivedAt: moment.toString(), homeZone: 'Etc/GMT+6', homePlace, gazetteer, learned }).fields,
    );
    for (const field of ['start', 'end', 'firstCall', 'lastWrap', 'replyBy'] as const)
      expect(fields[1]?.[field]).toBe(later(fields[0]?.[field]));
  });
});
