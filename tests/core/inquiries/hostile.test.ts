/**
 * Texts that nobody writes: an answer in under a second or a clear refusal.
 */
import { describe, expect, test } from 'vitest';
import { messages } from '../../reader/corpus.ts';
import { readAt } from './reading.ts';

const LENGTH = 200_000;
const SECOND = 1000;
/** The reader's patterns are built when they are first needed, and such a text needs nearly all of them: for the first time it may cost so many times the peer. */
const MOST_PEERS = 3;
const [PAGES, PATTERNS, WORDS] = [8000, 10, 60];
/** Milliseconds of computing since then: what other programs take of the machine does not count. */
const spent = (began: NodeJS.CpuUsage): number => process.cpuUsage(began).user / 1000;
/** The peer: what building ten patterns of sixty words each and running them once costs here. */
function buildingPatterns(text: string): number {
  const words = [...new Set(text.toLowerCase().match(/\p{L}{4,}/gu))];
  const began = process.cpuUsage();
  for (let at = 0; at < PATTERNS; at++) {
    const some = Array.from({ length: WORDS }, (_, index) => `${words[(at * WORDS + index) % words.length]}(?:s|ing)? \\p{L}{1,9}`);
    expect(new RegExp(`(?<!\\p{L})(?:${some.join('|')})(?!\\p{L})`, 'iu').test(text)).toBe(true);
  }
  return spent(began);
}
const filled = (piece: string): string => `can you film? ${piece.repeat(Math.ceil(LENGTH / piece.length))}`.slice(0, LENGTH);

const pieces: Record<string, string> = {
  'one letter': 'a',
  'one digit': '1',
  spaces: ' ',
  'line breaks': '\n',
  words: 'film ',
  numbers: '12, 13, ',
  fractions: '1/2/',
  thousands: '1 000 ',
  dates: '12 December, ',
  choices: '12-13 December or ',
  times: '8am to 9pm ',
  hours: 'call 8 ',
  colons: '12:30:',
  prices: '$1,200 a day ',
  phones: '0123 456 ',
  pluses: '+1 ',
  mails: 'a@b.',
  towns: 'in Fargo, ND ',
  'small towns': 'fargo duluth ',
  capitals: 'Ab Cd ',
  names: 'Ann Lee from ',
  farewells: 'Thanks,\nAnn\n',
  quotes: '> a\n',
  heads: 'From: a@b.example\nDate: x\n',
  attributions: 'On Mon wrote ',
  apostrophes: "a'",
  dashes: '-',
  brackets: '(',
  marks: 'e\u0301',
  'right to left': '\u202e\u202dabc \u2066',
  faces: '😀',
  halves: 'half ',
  weeks: 'next week ',
  many: 'many ',
  days: '3 days ',
  'lone surrogates': '\ud800',
  controls: '\u0001\u0007',
};

readAt('Can you film in Fargo on 12 December?');

describe('200,000 characters on one line or many', () => {
  test.each(Object.entries(pieces))('%s', (_, piece) => {
    const text = filled(piece);
    const began = process.cpuUsage();
    const reading = readAt(text);
    expect(spent(began)).toBeLessThan(SECOND);
    for (const span of reading.spans) expect(text.slice(span.start, span.end)).toBe(span.text);
  });

  test('every message of the corpus at once, on one line and on many', () => {
    const all = messages('tuned').map(({ text }) => text);
    const lines = [all.join(' ').replaceAll('\n', ' '), all.join('\n\n')].map((text) => text.repeat(10).slice(0, LENGTH));
    const peer = buildingPatterns(all.join(' ').slice(0, PAGES));
    for (const most of [MOST_PEERS * peer, SECOND])
      for (const text of lines) {
        const began = process.cpuUsage();
        readAt(text);
        expect(spent(began)).toBeLessThan(most);
      }
  });
});

describe('refusals', () => {
  test('more than 200,000 characters', () => expect(() => readAt('x'.repeat(LENGTH + 1))).toThrow('longer than 200,000 characters'));
  test('a moment without a zone', () => expect(() => readAt('Can you film?', '2026-11-25T09:12:00')).toThrow(RangeError));
  test.each(['', ' ', '\n\n', '\u200b', '?'])('nothing to read in %j', (text) =>
    expect(readAt(text)).toEqual({ isInquiry: false, fields: {}, questions: [], spans: [] }),
  );
});
