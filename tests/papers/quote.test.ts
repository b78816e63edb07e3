import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import type { TaxGroup } from '../../core/contract/quotes.ts';
import type { QuotePaperInput } from '../../core/quotes/paper.ts';
import { quotePaper } from '../../electron/papers/quote.ts';
import { PaperError } from '../../electron/papers/trouble.ts';
import { expectSamePixels, expectWellSet } from './looks.ts';
import { pagesOfText, propertiesOf } from './read-text.ts';
import { curlingQuote, draftOf, line, longQuote } from './sample.ts';

/** A PNG of one red pixel. */
const DOT = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR4nGP4z8AAAAMBAQDJ/pLvAAAAAElFTkSuQmCC';
function changed(change: (input: QuotePaperInput) => void, base = curlingQuote()): QuotePaperInput {
  change(base);
  return base;
}

const names: Record<string, QuotePaperInput> = {
  short: curlingQuote(),
  '40 lines': longQuote(40),
  '400 lines': longQuote(400),
  'Vietnamese, Greek, Cyrillic': changed(({ job }) => {
    job.title = 'Hội nghị Tiếng Việt về bánh mì';
    job.organisation = 'Σύλλογος Αρτοποιών «Ωμέγα» ΑΕ, Ελλάδα';
    job.contact.name = 'Їжакевич Ґанна, Ọ̀ṣun Ẹ̀kọ́';
  }),
  'names of 120 letters without a space': changed(({ setup, job }) => {
    setup.name = 'W'.repeat(120);
    job.title = 'Æ'.repeat(120);
    job.organisation = 'M'.repeat(120);
    job.contact = { name: 'm'.repeat(120), email: `${'w'.repeat(106)}@bread.example`, phone: '5'.repeat(120) };
  }),
  'terms of several pages': changed(({ draft }) => {
    draft.terms.illness = 'A sentence about being ill. '.repeat(140);
    draft.terms.usage = 'Q'.repeat(4000);
  }),
  'a date on every second day of a year': changed(({ job }) => {
    job.days = Array.from({ length: 183 }, (_, index) => {
      const date = Temporal.PlainDate.from('2026-01-01')
        .add({ days: 2 * index })
        .toString();
      return { date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T${17 + (index % 3)}:00` };
    });
  }),
  'deliverables of a page': changed(({ job }) => {
    job.deliverables = Array.from({ length: 50 }, (_, index) => `${index + 1}: ${'a long thing to hand over '.repeat(11)}`);
  }),
  'units of 120 letters': changed((input) => {
    input.draft = draftOf([
      line('extras', 'N'.repeat(120), '1234567.8901', 'u'.repeat(120), '0.0001'),
      line('extras', 'Tape', '1', 'roll', '9.00'),
    ]);
  }),
  'a logo and an accent': changed(({ setup }) => {
    setup.logo = { type: 'image/png', base64: DOT };
    setup.accent = '#2f5877';
  }),
  'the largest amounts': changed((input) => {
    input.draft = draftOf([
      line('days', 'Everything', '999', 'days', '10009009.01'),
      line('extras', 'Kilometres of cable', '123456.789', 'kilometres', '0.0001'),
    ]);
  }),
};

describe.each(Object.entries(names))('%s', (_, input) => {
  test.each(['A4', 'Letter'] as const)('no word outside the margins of %s, none over another, every page numbered', async (paper) => {
    const sized = { ...input, setup: { ...input.setup, paper } };
    expectWellSet(await quotePaper(sized), paper);
  });

  test('the subset draws what the whole typeface draws, to the pixel', async () => {
    expectSamePixels(await quotePaper(input), await quotePaper(input, { subset: false }));
  });

  test('the same bytes for the same version, nothing of the program in them', async () => {
    const bytes = await quotePaper(input);
    expect(Buffer.compare(bytes, await quotePaper(structuredClone(input)))).toBe(0);
    const properties = await propertiesOf(bytes);
    expect(properties).toMatchObject({ CreationDate: 'D:20261204031200Z', ModDate: 'D:20261204031200Z' });
    expect(Object.keys(properties)).not.toContain('Producer');
    expect(Object.keys(properties)).not.toContain('Creator');
    expect(Buffer.from(bytes).toString('latin1')).not.toMatch(/kitbound|pdf-lib|cantoo|fontkit/i);
  });
});

describe('pages', () => {
  test('an ordinary quote takes one page on either paper', async () => {
    for (const paper of ['A4', 'Letter'] as const) {
      const input = curlingQuote();
      expect(await pagesOfText(await quotePaper({ ...input, setup: { ...input.setup, paper } }))).toHaveLength(1);
    }
  });

  test('heads stand again on every page with lines, and every line is there once', async () => {
    const pages = await pagesOfText(await quotePaper(longQuote(400)));
    expect(pages.length).toBeGreaterThan(8);
    const withLines = pages.filter((page) => /Position \d/.test(page));
    for (const page of withLines) expect(page).toContain('What Quantity Price Amount, USD');
    for (const page of pages.slice(1)) expect(page).toContain('Northlight Pictures · Quote, version 1 · Provincial curling championship');
    const numbers = [...pages.join(' ').matchAll(/Position (\d+)/g)].map((found) => Number(found[1]));
    expect(numbers).toEqual(Array.from({ length: 400 }, (_, index) => index + 1));
  });
});

describe('what stands on it', () => {
  test('sender, client, dates, place, lines, sums, terms, cautions, a place to sign', async () => {
    const [text = ''] = await pagesOfText(await quotePaper(curlingQuote()));
    for (const words of [
      'Northlight Pictures',
      '14 Harbor Row, Duluth, MN 55802',
      'Version 1, 3 December 2026',
      'valid until Fri 4 December 2026, 18:30, Chicago time',
      'Lakehead Stone & Broom Society',
      'Sat 5 to Thu 10 December 2026',
      'Sun 6 to Thu 10: 09:00 to 19:00',
      'Thunder Bay, Ontario, Canada',
      'Mileage, estimated 380 mi 0.725 275.50',
      'Estimated lines are billed as what they come to at wrap.',
      'Total USD 9,040.50',
      'Deposit, due to ink the dates 4,520.25',
      'under 14 days 25 %, under 7 days 50 %, under 48 hours 100 %',
      '2 rounds included in editing.',
      'consent or a licence',
      'The job crosses a border',
      'not legal or tax advice',
      'Signature',
      'page 1 of 1',
    ])
      expect(text).toContain(words);
    expect(text).not.toContain('Rest is short');
  });

  const group = (name: string, percent: string, net: number, tax: number, note = ''): z.infer<typeof TaxGroup> => ({
    name,
    percent,
    net: { minor: net, currency: 'EUR' },
    tax: { minor: tax, currency: 'EUR' },
    note,
  });

  test('three tax groups, each on its net, and their sum', async () => {
    const input = curlingQuote();
    const draft = draftOf([line('days', 'Filming', '1', 'day', '1000.00', 'EUR'), line('kit', 'Kit', '1', 'day', '500.00', 'EUR')], 'EUR');
    draft.totals.taxes = [
      group('VAT', '20', 100_000, 20_000),
      group('VAT', '5.5', 30_000, 1650),
      group('VAT', '0', 20_000, 0, 'Reverse charge: the customer accounts for the tax.'),
    ];
    draft.totals.tax = { minor: 21_650, currency: 'EUR' };
    draft.totals.gross = { minor: 171_650, currency: 'EUR' };
    const [text = ''] = await pagesOfText(
      await quotePaper({ ...input, setup: { ...input.setup, registered: true, taxId: 'XX123456789' }, draft }),
    );
    expect(text).toContain(
      'Net 1,500.00 VAT 20 % on 1,000.00 200.00 VAT 5.5 % on 300.00 16.50 VAT 0 % on 200.00 0.00 Reverse charge: the customer accounts for the tax. Total EUR 1,716.50',
    );
    expect(text).toContain('Tax id XX123456789');
  });

  test('prices with tax inside say "of which"', async () => {
    const input = curlingQuote();
    const draft = draftOf([line('days', 'Filming', '1', 'day', '1000.01', 'EUR')], 'EUR');
    draft.totals = {
      net: { minor: 84_034, currency: 'EUR' },
      taxes: [group('VAT', '19', 84_034, 15_967)],
      tax: { minor: 15_967, currency: 'EUR' },
      gross: { minor: 100_001, currency: 'EUR' },
    };
    const [text = ''] = await pagesOfText(await quotePaper({ ...input, draft }));
    expect(text).toContain('Total EUR 1,000.01 Of which net 840.34 Of which VAT 19 % on 840.34 159.67');
  });

  test.each([
    ['JPY', '120000', '120,000', 'Total JPY 240,000'],
    ['KWD', '350.125', '350.125', 'Total KWD 700.250'],
  ])('%s has its own places', async (currency, price, shown, total) => {
    const [text = ''] = await pagesOfText(
      await quotePaper({ ...curlingQuote(), draft: draftOf([line('days', 'Filming', '2', 'days', price, currency)], currency) }),
    );
    expect(text).toContain(`2 days ${shown}`);
    expect(text).toContain(total);
  });

  test('a discount carries a true minus sign', async () => {
    const lines = [line('days', 'Filming', '1', 'day', '1000.00'), line('discount', 'For the second year', '1', '', '-100.00')];
    const [text = ''] = await pagesOfText(await quotePaper({ ...curlingQuote(), draft: draftOf(lines) }));
    expect(text).toContain('For the second year −100.00');
  });
});

describe('letters that the typefaces do not have', () => {
  test.each([
    ['a Hebrew organisation', (input: QuotePaperInput) => void (input.job.organisation = 'מאפייה'), "the client's organisation", 'מ'],
    ['an Arabic contact', (input: QuotePaperInput) => void (input.job.contact.name = 'ليلى'), "the contact's name", 'ل'],
    ['a Chinese title', (input: QuotePaperInput) => void (input.job.title = '面包节'), "the job's title", '面'],
    [
      'an emoji in a line',
      (input: QuotePaperInput) => void (input.draft.lines[1] = line('days', 'Party 🎬', '1', 'day', '1.00')),
      'line 2 of the quote',
      '🎬',
    ],
    ['polytonic Greek terms', (input: QuotePaperInput) => void (input.draft.terms.usage = 'Ἀθῆναι'), 'the terms on usage', 'Ἀ'],
  ])('%s is refused with field and letters', async (_, change, field, letter) => {
    const refused = await quotePaper(changed(change)).then(
      () => undefined,
      (error: unknown) => error,
    );
    expect(refused).toBeInstanceOf(PaperError);
    const error = refused as PaperError;
    expect(error.field).toBe(field);
    expect(error.letters).toContain(letter);
    expect(error.message).toContain(`(in ${field})`);
  });

  test('an address that is no letterhead is refused', async () => {
    const input = changed(({ setup }) => void (setup.address = 'Somewhere long and far away, '.repeat(60)));
    await expect(quotePaper(input)).rejects.toThrow(/Your address takes \d+ lines on paper; a letterhead has 10\./);
  });

  test.each([
    ['no picture', 'image/png', 'bm90aGluZw==', 'Your logo cannot be read as a picture.'],
    ['a picture of another type', 'image/jpeg', DOT, 'Your logo cannot be read as a picture.'],
    ['a picture of 100,000 pixels', 'image/png', hugePng(), 'Your logo is more than 3000 pixels long.'],
  ] as const)('%s as a logo is refused', async (_, type, base64, sentence) => {
    await expect(quotePaper(changed(({ setup }) => void (setup.logo = { type, base64 })))).rejects.toThrow(sentence);
  });
});

/** The one pixel, claiming to be 100,000 wide. */
function hugePng(): string {
  const bytes = Buffer.from(DOT, 'base64');
  bytes.writeUInt32BE(100_000, 16);
  return bytes.toString('base64');
}
