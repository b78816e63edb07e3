import { describe, expect, test } from 'vitest';
import { moneyClocks, type HandToPay, type OpenBill, type UnbilledJob } from '../../../core/desk/money-clocks.ts';
import { money } from '../../../core/money/money.ts';

const at = (instant: string) => Temporal.Instant.from(instant).epochMilliseconds;
const HOME = 'America/Chicago';
/** Thu 3 December 2026, 21:10 at home. */
const NOW = at('2026-12-04T03:10:00Z');
const endOf = (date: string) => at(`${Temporal.PlainDate.from(date).add({ days: 1 }).toString()}T05:59:00Z`);
const usd = (minor: number) => money(minor, 'USD');
const job = { id: 'j', version: 3, title: 'Bakers’ congress' };

const unbilled = (given: Partial<UnbilledJob> = {}): UnbilledJob => ({
  job,
  inkedAt: at('2026-11-20T15:00:00Z'),
  lastWrapAt: at('2026-12-04T01:00:00Z'),
  toEnter: [],
  toEnterAt: null,
  deposit: null,
  total: usd(6_240_00),
  orderMissing: false,
  ...given,
});
const bill = (given: Partial<OpenBill> = {}): OpenBill => ({
  id: 'i',
  number: '2026-031',
  kind: 'final',
  billedTo: 'Harbour Dental',
  open: usd(1_840_00),
  state: 'late',
  job,
  dueAt: endOf('2026-12-01'),
  reminded: [],
  ...given,
});
const hand = (given: Partial<HandToPay> = {}): HandToPay => ({
  handId: 'h',
  name: 'Ana',
  open: usd(500_00),
  job,
  dueAt: endOf('2026-12-05'),
  ...given,
});
const said = (facts: { unbilled?: UnbilledJob[]; bills?: OpenBill[]; hands?: HandToPay[] }) =>
  moneyClocks({ unbilled: [], bills: [], hands: [], ...facts }, NOW, HOME).map(({ kind, late, sentence, second, action }) => [
    kind,
    late,
    sentence,
    second,
    action,
  ]);

describe('jobs that wait for their bill', () => {
  test('a deposit from the ink on, until the job is over', () => {
    const deposit = usd(3_100_00);
    const ahead = at('2026-12-10T01:00:00Z');
    expect(said({ unbilled: [unbilled({ deposit, lastWrapAt: ahead })] })).toEqual([
      ['deposit', true, 'Bakers’ congress: deposit of USD 3,100.00 to bill', 'inked Fri 20 Nov 09:00', 'bill-deposit'],
    ]);
    expect(said({ unbilled: [unbilled({ deposit })] }).map(([kind]) => kind)).toEqual(['bill']);
  });

  test('hours before the bill: it waits for them', () => {
    const toEnter = { toEnter: ['2026-12-02', '2026-12-03'], toEnterAt: at('2026-12-03T01:00:00Z') };
    expect(said({ unbilled: [unbilled(toEnter)] })).toEqual([
      ['hours', true, 'Bakers’ congress: hours of Wed 2 and Thu 3 December to enter', 'the bill waits for them', 'enter-hours'],
    ]);
    expect(said({ unbilled: [unbilled()] })).toEqual([
      ['bill', true, 'Bakers’ congress: invoice to send', 'wrapped 19:00; agreed USD 6,240.00 with tax', 'bill'],
    ]);
  });

  test('nothing to bill is no clock; a missing order number is one from two weeks before the wrap', () => {
    expect(said({ unbilled: [unbilled({ total: usd(0) })] })).toEqual([]);
    const far = { orderMissing: true, lastWrapAt: NOW + 15 * 86_400_000 };
    expect(said({ unbilled: [unbilled(far)] })).toEqual([]);
    expect(said({ unbilled: [unbilled({ ...far, lastWrapAt: NOW + 13 * 86_400_000 })] }).map(([kind, late]) => [kind, late])).toEqual([
      ['order', false],
    ]);
  });
});

describe('open bills', () => {
  test('due soon, and nothing that is far off', () => {
    expect(said({ bills: [bill({ state: 'open', dueAt: endOf('2026-12-11') })] })).toEqual([
      ['due', false, 'Harbour Dental, invoice 2026-031: USD 1,840.00', 'due by the end of Fri 11 Dec; Bakers’ congress', 'open-invoice'],
    ]);
    expect(said({ bills: [bill({ dueAt: endOf('2026-12-31') })] })).toEqual([]);
  });

  test('late: a reminder at once, then a week after each', () => {
    expect(said({ bills: [bill()] })).toEqual([
      ['reminder', true, 'Harbour Dental, invoice 2026-031: USD 1,840.00', 'was due by the end of Tue; no reminder sent yet', 'remind'],
    ]);
    const [clock] = moneyClocks(
      { unbilled: [], bills: [bill({ reminded: [{ tone: 'kind', at: at('2026-12-02T16:00:00Z') }] })], hands: [] },
      NOW,
      HOME,
    );
    expect(clock).toMatchObject({
      at: '2026-12-09T16:00:00Z',
      late: false,
      second: 'was due by the end of Tue; 1 reminder sent, the last Wed 10:00',
      invoiceId: 'i',
    });
  });

  test('what is disputed is not reminded; a bill that was due a year ago is still there', () => {
    expect(said({ bills: [bill({ state: 'disputed', dueAt: endOf('2025-11-01') })] })[0]?.slice(0, 2)).toEqual(['due', true]);
    expect(said({ bills: [bill({ dueAt: endOf('2025-11-01') })] })[0]?.[0]).toBe('reminder');
  });
});

test('a hand is to be paid from two weeks before it is due', () => {
  expect(said({ hands: [hand(), hand({ dueAt: NOW + 15 * 86_400_000 })] })).toEqual([
    ['pay hand', false, 'Pay Ana USD 500.00', 'due by the end of Sat; Bakers’ congress', 'pay-hand'],
  ]);
});
