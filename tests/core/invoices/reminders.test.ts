import { describe, expect, test } from 'vitest';
import { reminderFor, type ReminderInput } from '../../../core/invoices/reminders.ts';
import { money } from '../../../core/money/money.ts';
import { toneOf } from '../../../core/quotes/tone.ts';

const usd = (minor: number) => money(minor, 'USD');
const input = (more: Partial<ReminderInput> = {}): ReminderInput => ({
  tone: 'kind',
  voice: toneOf('Hi there,\n\ncan you film?\n\nThanks,\nIlse', 'Ilse Marrow'),
  setup: {
    name: 'Lakeline Pictures',
    phone: '',
    email: 'post@lakeline.example',
    payTo: { name: 'Lakeline Pictures', iban: 'DE89370400440532013000', bic: '', words: '' },
    lateInterestPercent: '11.75',
  },
  invoice: { number: '2026-031', issueDate: '2026-03-01', dueDate: '2026-03-31', toPay: usd(300_000), open: usd(240_000), daysLate: 37 },
  title: 'Bakers congress',
  today: '2026-05-07',
  ...more,
});

describe('a reminder', () => {
  test('says what is open of what, since when, and how to pay, as the client writes', () => {
    const { subject, text } = reminderFor(input());
    expect(subject).toBe('Reminder: invoice 2026-031, Bakers congress');
    expect(text).toBe(
      [
        'Hi Ilse,',
        'Just a nudge about invoice 2026-031 of 1 March 2026 for Bakers congress? It may have slipped through.',
        'USD 2,400.00 of 3,000.00 is open and was due on 31 March 2026, 37 days ago.',
        'To pay, please give 2026-031 as the reference:\nIBAN DE89 3704 0044 0532 0130 00, Lakeline Pictures',
        'If it is on its way already, thank you, and please forget this note. If something is not right with it, tell me.',
        'Many thanks,\nLakeline Pictures\npost@lakeline.example',
      ].join('\n\n'),
    );
  });

  test('said firmly it names the interest by the terms, where my details have one: 2,400.00 at 11.75 % for 37 days is 28.59', () => {
    expect(reminderFor(input({ tone: 'firm' })).text).toContain(
      'By the terms, what is paid late bears simple interest of 11.75 % a year: 28.59 to date.',
    );
    const without = { ...input().setup, lateInterestPercent: null };
    for (const tone of ['kind', 'plain', 'firm'] as const) {
      expect(reminderFor(input({ tone, setup: without })).text).not.toContain('interest');
      if (tone !== 'firm') expect(reminderFor(input({ tone })).text).not.toContain('interest');
    }
  });

  test('never threatens, in none of the tones', () => {
    for (const tone of ['kind', 'plain', 'firm'] as const)
      expect(reminderFor(input({ tone })).text).not.toMatch(/lawyer|court|legal|collect|consequence|otherwise|last warning/i);
  });

  test('before the due date is a note, whatever the tone', () => {
    const early = { ...input().invoice, daysLate: 0, open: usd(300_000) };
    const { subject, text } = reminderFor(input({ tone: 'firm', invoice: early, today: '2026-03-20' }));
    expect(subject).toBe('Invoice 2026-031, Bakers congress');
    expect(text).toContain('which falls due on 31 March 2026');
    expect(text).toContain('USD 3,000.00 is open and is due on 31 March 2026.');
  });
});
