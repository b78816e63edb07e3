import { expect, test } from 'vitest';
import { toneOf } from '../../core/quotes/tone.ts';

test.each([
  ['Hi, can you film on Friday?\n\nThanks,\nMaren', 'Maren Oikarinen', 'Hi Maren,', 'Many thanks,', false],
  ['Hey there! Are you free?\nCheers, Tobi', 'Tobias Renn', 'Hi Tobi,', 'Cheers,', false],
  ['Hello,\nwe need a second camera.\n\nBest wishes\nIda Solberg\nEvents', 'Ida Solberg', 'Hello Ida,', 'Best wishes,', false],
  [
    'Dear Mr Beck,\n\nwe are looking for ...\n\nYours sincerely,\nMaren Oikarinen',
    'Maren Oikarinen',
    'Dear Maren Oikarinen,',
    'Kind regards,',
    true,
  ],
  ['Dear Sir or Madam,\nplease quote.', '', 'Dear Sir or Madam,', 'Kind regards,', true],
  ['Good morning\nWe run a trade fair.\nKind regards\nLinh', 'Nguyễn Thị Linh', 'Hello Linh,', 'Kind regards,', false],
  ['Need a camera in Fargo on Saturday, who is free?', '', 'Hello,', 'Kind regards,', false],
  ['Thanks for your help last year, can we have you again?', 'Bo Lind', 'Hello Bo,', 'Kind regards,', false],
  ['Bonjour,\nnous cherchons une caméra.\nMerci', 'Anaïs Brun', 'Hello Anaïs,', 'Kind regards,', false],
  [null, '', 'Hello,', 'Kind regards,', false],
  ['', 'Δημήτρης Παππάς', 'Hello Δημήτρης,', 'Kind regards,', false],
])('%j', (message, name, greeting, closing, formal) => expect(toneOf(message, name)).toEqual({ greeting, closing, formal }));
