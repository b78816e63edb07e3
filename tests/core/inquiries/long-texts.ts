/**
 * Texts that nobody writes, as long as the reader takes them: one piece over and over, and every message of the corpus at once.
 */
import { TEXT_LENGTH } from '../../../core/contract/parts.ts';
import { messages } from '../../reader/corpus.ts';

const filled = (piece: string): string => `can you film? ${piece.repeat(Math.ceil(TEXT_LENGTH / piece.length))}`.slice(0, TEXT_LENGTH);

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

/** Each as the name of its piece and its text. */
export const ONE_PIECE_OVER_AND_OVER: readonly (readonly [string, string])[] = Object.entries(pieces).map(([name, piece]) => [
  name,
  filled(piece),
]);

/** Every tuned message, on one line and on many. */
export function everyMessageAtOnce(): readonly [string, string] {
  const all = messages('tuned').map(({ text }) => text);
  const long = (text: string): string => text.repeat(10).slice(0, TEXT_LENGTH);
  return [long(all.join(' ').replaceAll('\n', ' ')), long(all.join('\n\n'))];
}
