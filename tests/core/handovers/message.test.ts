import { expect, test } from 'vitest';
import { deliveryMessage } from '../../../core/handovers/message.ts';
import { toneOf } from '../../../core/quotes/tone.ts';

const delivery = {
  what: 'Highlight film',
  title: 'Curling championship',
  how: 'link',
  where: 'https://files.lakeline.example/curling',
  files: [{ bytes: 3_000_000_000 }, { bytes: 240_000_000 }],
  originals: { kind: 'kept until', until: '2027-03-01' },
  tone: toneOf('Hi there,\n\ncan you film?\n\nThanks,\nIlse', 'Ilse Marrow'),
  sender: { name: 'Lakeline Pictures', phone: '', email: 'post@lakeline.example' },
} as const;

test('the link stands alone on its line, with what it holds and what becomes of the originals', () => {
  const { subject, text } = deliveryMessage(delivery);
  expect(subject).toBe('Curling championship: Highlight film is delivered');
  expect(text.split('\n')).toContain('https://files.lakeline.example/curling');
  expect(text).toContain('Here is Highlight film (2 files, 3.24 GB):');
  expect(text).toContain('are kept until 1 March 2027');
  expect(text).toMatch(/^Hi Ilse,/);
  expect(text).toMatch(/Lakeline Pictures\npost@lakeline\.example$/);
});

test('a disk is on its way under its label', () =>
  expect(deliveryMessage({ ...delivery, how: 'disk', where: 'Curling 2 of 2' }).text).toContain(
    'Highlight film is on its way to you on a disk labelled "Curling 2 of 2"',
  ));
