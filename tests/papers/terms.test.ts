/**
 * Terms as a paper: how they look, and what is read back from them.
 */
import { describe, expect, test } from 'vitest';
import type { TermsPaperInput } from '../../core/papers/terms.ts';
import { termsPaper } from '../../electron/papers/terms.ts';
import { bill } from './invoice-sample.ts';
import { expectSamePixels, expectWellSet } from './looks.ts';
import { pagesOfText } from './read-text.ts';

const SHORT =
  'What is agreed\nTwo days of filming.\n\nA paragraph that stands without a heading.\n\nCalling off\nHalf of the net\nunder seven days.';
const sentence = 'A sentence about what is agreed, and how it is done when it comes to it. ';

function terms(text: string): TermsPaperInput {
  return {
    sender: bill().sender,
    client: 'Bread & Butter Fair GmbH',
    job: 'Autumn bread fair',
    number: 2,
    date: '2026-12-03',
    madeAt: '2026-12-03T09:30:00Z',
    text,
  };
}
const long = terms(Array.from({ length: 30 }, (_, index) => `Part ${index + 1}\n${sentence.repeat((index % 6) + 2)}`).join('\n\n'));

describe.each([
  ['short terms', terms(SHORT)],
  ['terms of three pages', long],
  ['one paragraph of pages', terms(sentence.repeat(200))],
])('%s', (_, input) => {
  test.each(['A4', 'Letter'] as const)('are well set on %s', async (paper) =>
    expectWellSet(await termsPaper({ ...input, sender: { ...input.sender, paper } }), paper),
  );
  test('the subset draws what the whole typeface draws, to the pixel', async () =>
    expectSamePixels(await termsPaper(input), await termsPaper(input, { subset: false })));
  test('the same bytes for the same content', async () =>
    expect(Buffer.compare(await termsPaper(input), await termsPaper(structuredClone(input)))).toBe(0));
});

test('what it belongs to, the text as it was written, the caution and a place to sign for both', async () => {
  const pages = await pagesOfText(await termsPaper(terms(SHORT)));
  expect(pages).toHaveLength(1);
  for (const words of [
    'Terms 3 December 2026 with version 2 of the quote',
    'For Bread & Butter Fair GmbH Job Autumn bread fair Quote, version 2',
    'What is agreed Two days of filming. A paragraph that stands without a heading. Calling off Half of the net under seven days.',
    'not legal advice',
    'Agreed Signing agrees to these terms together with version 2 of the quote. For the client: name For the videographer: name',
  ])
    expect(pages[0]).toContain(words);
});

test('three pages, every part once, and no heading at the foot of a page', async () => {
  const pages = await pagesOfText(await termsPaper(long));
  expect(pages).toHaveLength(3);
  expect([...pages.join(' ').matchAll(/Part (\d+)/g)].map((found) => Number(found[1]))).toEqual(
    Array.from({ length: 30 }, (_, at) => at + 1),
  );
  for (const page of pages) expect(page).not.toMatch(/Part \d+ Northlight Pictures · Terms/);
});

test('a letter that cannot be drawn is refused with its field', async () =>
  expect(termsPaper(terms('面包节'))).rejects.toMatchObject({ field: 'the text of your terms' }));
