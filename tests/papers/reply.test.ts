import { describe, expect, test } from 'vitest';
import type { Question } from '../../core/contract/inquiries.ts';
import { quotePaperName } from '../../core/quotes/paper-name.ts';
import { declineFor, replyFor } from '../../core/quotes/reply.ts';
import { toneOf } from '../../core/quotes/tone.ts';
import { curlingQuote } from './sample.ts';

const { setup, job, draft, number } = curlingQuote();
const tone = toneOf('Hi, could you run the mixer?\n\nThanks,\nMaren', 'Maren Oikarinen');
const questions: Question[] = [
  {
    field: 'budget',
    ask: 'US or Canadian dollars?',
    choices: [
      { label: 'USD', value: 'USD' },
      { label: 'CAD', value: 'CAD' },
    ],
  },
  { field: 'replyBy', ask: 'By when?', choices: [] },
  { field: 'firstCall', ask: 'When is the first call?', choices: [] },
  { field: 'firstCall', ask: 'When is the first call?', choices: [] },
];
const given = { setup, job, draft, number, pencil: draft.pencilUntil, questions, payer: null, tone };

describe('the reply to a quote', () => {
  test('dates, total, deposit, validity, pencil, what is open, and who writes', () => {
    expect(replyFor(given)).toEqual({
      subject: 'Quote: Provincial curling championship, Sat 5 to Thu 10 December 2026',
      text: `Hi Maren,

Thanks for asking. Attached is my quote for Provincial curling championship: Sat 5 to Thu 10 December 2026 in Thunder Bay.

It comes to USD 9,040.50. A deposit of USD 4,520.25 is due to ink the dates.

The quote is valid until Fri 4 December 2026, 18:30, Chicago time, and I have pencilled the dates for you until then; a written yes confirms them.

Some things are still open:
- In which currency is your budget, and is it for a day or for the whole job? (USD or CAD)
- When shall I be there on the first day, load-in included?

Questions? Just ask.

Many thanks,
Northlight Pictures
+1 218 555 0142
hello@northlight.example`,
    });
  });

  test('a pencil that ends before the quote does says so', () => {
    const pencil = { wall: '2026-12-04T06:00', zone: 'America/Chicago', at: '2026-12-04T12:00:00Z' };
    expect(replyFor({ ...given, pencil }).text).toContain(
      'until Fri 4 December 2026, 18:30, Chicago time. I have pencilled the dates for you until Fri 4 December 2026, 06:00, Chicago time; a written yes',
    );
  });

  test('dates that are not pencilled are not said to be held', () => {
    const { text } = replyFor({ ...given, pencil: null });
    expect(text).toContain('The dates are not held yet');
    expect(text).not.toContain('pencilled');
  });

  test('nothing open, no deposit, tax, a later version, a formal letter', () => {
    const taxed = { ...draft, deposit: null, totals: { ...draft.totals, tax: { minor: 12_345, currency: 'USD' } } };
    const { text } = replyFor({ ...given, draft: taxed, number: 3, questions: [], tone: toneOf('Dear Mr Beck,', 'Maren Oikarinen') });
    expect(text).toContain('Dear Maren Oikarinen,\n\nThank you for your inquiry. Attached is version 3 of my quote');
    expect(text).toContain('USD 9,040.50, 123.45 of it tax.\n');
    expect(text).not.toMatch(/deposit|open/);
  });

  test('somebody else who pays is named with their address; one that is not known is asked for', () => {
    const fund = { name: 'Northshore Sports Fund', address: '9 Pier Road,\nDuluth' };
    expect(replyFor({ ...given, payer: fund }).text).toContain(
      'ink the dates. The invoices go to Northshore Sports Fund, 9 Pier Road, Duluth.\n',
    );
    expect(replyFor({ ...given, payer: { name: 'Pier & Co.', address: '' } }).text).toContain('go to Pier & Co.\n');
    const unknown = replyFor({ ...given, payer: { ...fund, address: '' }, questions: [] }).text;
    expect(unknown).toContain('The invoices go to Northshore Sports Fund.\n');
    expect(unknown).toContain('One thing is still open:\n- To which address shall I bill Northshore Sports Fund?');
  });

  test('what rests, drives and earns stays with me', () => expect(replyFor(given).text).not.toMatch(/rest|floor|kept|drive/i));
});

test('a no gives no reason and leaves the door open', () => {
  expect(declineFor({ setup, job, tone })).toEqual({
    subject: 'Re: Provincial curling championship, Sat 5 to Thu 10 December 2026',
    text: `Hi Maren,

Thanks for thinking of me for Provincial curling championship, Sat 5 to Thu 10 December 2026 in Thunder Bay. I cannot take it on, and would rather tell you now than keep you waiting.

I hope that it goes well. If the dates move, or for the next one, ask me again.

Many thanks,
Northlight Pictures
+1 218 555 0142
hello@northlight.example`,
  });
  expect(declineFor({ setup, job: { ...job, days: [], place: null }, tone }).text).toContain(
    'for Provincial curling championship. I cannot',
  );
});

test.each([
  ['Provincial curling championship', 1, 'Quote 1, Provincial curling championship.pdf'],
  ['../etc: a/b\\c?', 2, 'Quote 2, .. etc a b c.pdf'],
  ['Ends with dots...', 3, 'Quote 3, Ends with dots.pdf'],
  ['???', 4, 'Quote 4.pdf'],
  ['Å'.repeat(120), 5, `Quote 5, ${'Å'.repeat(60)}.pdf`],
])('a file name for %j', (title, version, name) => expect(quotePaperName(title, version)).toBe(name));
