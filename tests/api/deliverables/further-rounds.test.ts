/**
 * A round beyond those agreed on: its price, its line on the next bill, what a yes and a no change, and a bill after the last one.
 */
import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import type { DraftKind } from '../../../core/contract/invoices.ts';
import type { Round } from '../../../core/contract/rounds.ts';
import { stagesOf } from '../../../db/rounds.ts';
import { invoices } from '../../../electron/api/invoices.ts';
import { rounds } from '../../../electron/api/rounds.ts';
import { issued, worked } from '../invoices/agreed-job.ts';
import { refusal } from '../world.ts';
import { promised, type Promised } from './promised.ts';

const usd = (minor: number) => ({ minor, currency: 'USD' });
const stagesNow = ({ edit, at: { context } }: Promised) =>
  context.store.read((db) => stagesOf(db, edit).map(({ kind, halfHours }) => `${kind} ${halfHours}`));
const draft = async ({ job, at: { context } }: Promised, kind: DraftKind = 'final') =>
  (await call(invoices.draft, { jobId: job.id, kind }, { context })).draft;
const settle = ({ at: { context } }: Promised, { id, version }: Round, agreed: boolean, more: object = {}) =>
  call(rounds.settlePrice, { id, version, agreed, who: 'Ana Voss', how: 'mail', ...more }, { context });

/** A cut sent, with notes on it. */
async function round(p: Promised, what: string, text = 'shorter'): Promise<Round> {
  const { context } = p.at;
  const sent = await call(rounds.send, { deliverableId: p.edit, what }, { context });
  return (await call(rounds.notesIn, { id: sent.round.id, version: sent.round.version, text }, { context })).round;
}

/** One round agreed on, the second a further one: two hours at the card's edit hour. */
async function second(more: Parameters<typeof promised>[0] = {}): Promise<{ p: Promised; first: Round; further: Round }> {
  const p = await promised({ edit: { rounds: 1 }, card: { editHour: '85' }, ...more });
  p.at.at('2026-12-15T16:00:00Z');
  const first = await round(p, 'rough cut');
  return { p, first, further: await round(p, 'second cut') };
}

describe('a further round', () => {
  test('is priced when its notes come, stands on the next bill, and says that nobody said yes yet', async () => {
    const { p, first, further } = await second();
    expect(first.price).toBeNull();
    expect(further.price).toMatchObject({ hours: '2', state: 'asked', amount: usd(17_000) });
    const { lines, cautions, totals } = await draft(p);
    expect(lines.at(-1)).toMatchObject({
      section: 'editing',
      what: 'Second round of notes: Highlights',
      quantity: '2',
      amount: usd(17_000),
      unapproved: true,
      reason: '1 round was included; this is number 2, 2 edit hours at 85.00.',
    });
    expect(totals.net).toEqual(usd(257_000));
    expect(cautions).toContain('Nobody has agreed to the further round on the second cut of Highlights, 2 h: note a yes or a no.');
  });
  test('is no round of the client before its notes: a yes without notes costs nothing', async () => {
    const p = await promised({ edit: { rounds: 0 }, card: { editHour: '85' } });
    const sent = await call(rounds.send, { deliverableId: p.edit, what: 'rough cut' }, { context: p.at.context });
    expect(sent.round).toMatchObject({ included: false, price: null });
    expect(sent.round.message.text).toContain('notes on this cut are a further round at USD 170.00');
    const { id, version } = sent.round;
    const yes = await call(rounds.notesIn, { id, version, text: '' }, { context: p.at.context });
    expect(yes.round.price).toBeNull();
    expect((await draft(p)).lines).toHaveLength(1);
  });
  test('is counted by passes of notes: a cut that was approved used up none', async () => {
    const p = await promised({ edit: { rounds: 1 }, card: { editHour: '85' } });
    await round(p, 'rough cut', '');
    const first = await round(p, 'fine cut');
    expect(first).toMatchObject({ included: true, price: null, stageId: p.stage('round') });
    await round(p, 'third cut', '');
    const further = await round(p, 'fourth cut');
    expect(further).toMatchObject({ included: false, number: 4 });
    expect((await draft(p)).lines.at(-1)).toMatchObject({ what: 'Second round of notes: Highlights' });
  });
  test('agreed: the line stands without a caution, and what was said is kept', async () => {
    const { p, further } = await second();
    const { round: yes } = await settle(p, further, true);
    expect(yes.price).toMatchObject({ state: 'agreed', who: 'Ana Voss', how: 'mail', at: '2026-12-15T16:00:00Z' });
    const { lines, cautions } = await draft(p);
    expect(lines.at(-1)?.unapproved).toBeUndefined();
    expect(cautions.join(' ')).not.toContain('Nobody has agreed');
  });
  test('bears no part of a discount: its price was said on its own', async () => {
    const { p, further } = await second({ changes: [{ op: 'discount', percent: '10', fixed: '0' }] });
    const { totals } = await draft(p);
    expect(totals.net.minor).toBe(240_000 - 24_000 + (further.price?.amount.minor ?? 0));
  });
  test('declined: no line, and the answer can be taken back', async () => {
    const { p, further } = await second();
    const { round: no } = await settle(p, further, false);
    expect((await draft(p)).lines).toHaveLength(1);
    expect(await refusal(settle(p, no, true))).toMatchObject({ code: 'REFUSED', what: 'It was declined by Ana Voss.' });
    const again = await call(rounds.openPrice, { id: no.id, version: no.version }, { context: p.at.context });
    expect(again.round.price).toMatchObject({ state: 'asked', who: '' });
    expect((await draft(p)).lines).toHaveLength(2);
  });
  test('beyond the rounds of the plan: a stage of its own before the picture is locked, and a no takes it out', async () => {
    const { p } = await second();
    const third = await round(p, 'third cut');
    const stages = stagesNow(p);
    expect(stages).toEqual([
      'ingest 2',
      'selects 8',
      'rough cut 12',
      'round 4',
      'fine cut 4',
      'round 4',
      'round 4',
      'picture lock 2',
      'delivered 0',
      'approved 0',
    ]);
    const { round: no } = await settle(p, third, false);
    expect(stagesNow(p)).toHaveLength(9);
    expect(no.stageId).toBeNull();
    const back = await call(rounds.openPrice, { id: no.id, version: no.version }, { context: p.at.context });
    expect(back.round.stageId).not.toBeNull();
    expect(stagesNow(p)).toEqual(stages);
  });
  test('that comes after the bill at wrap is billed by itself, once', async () => {
    const p = await promised({ edit: { rounds: 1 }, card: { editHour: '85' } });
    p.at.at('2026-12-14T16:00:00Z');
    await worked(p, '2026-12-12T08:00', '2026-12-12T18:00');
    await worked(p, '2026-12-13T08:00', '2026-12-13T18:00');
    const wrap = await issued(p, 'final');
    await round(p, 'rough cut');
    expect((await draft(p)).missing[0]).toContain(`${wrap.number} of `);
    const further = await round(p, 'second cut');
    const later = await draft(p);
    expect(later).toMatchObject({ later: true, missing: [], lines: [{ what: 'Second round of notes: Highlights' }], credited: [] });
    expect(later.totals.net).toEqual(further.price?.amount);
    const bill = await issued(p, 'final');
    expect(bill.net).toEqual(further.price?.amount);
    expect((await draft(p)).missing).toHaveLength(1);
    const { id, version } = further;
    const { context } = p.at;
    expect(await refusal(call(rounds.notesBack, { id, version }, { context }))).toMatchObject({
      what: `The further round on the second cut stands on the bill ${bill.number}.`,
    });
    expect(await refusal(settle(p, further, false))).toMatchObject({
      what: `The further round on the second cut stands on the bill ${bill.number}.`,
    });
  });
  test('without a price on the card has none until it is said, and another may be said than the card has', async () => {
    const { p, first, further } = await second({ card: {} });
    expect(further.price).toBeNull();
    const set = ({ id, version }: Round, more: object = {}) =>
      call(rounds.setPrice, { id, version, hours: '1.5', editHour: '90', ...more }, { context: p.at.context });
    expect(await refusal(set(first))).toMatchObject({ code: 'REFUSED', what: 'Notes on the rough cut are not billed.' });
    expect((await refusal(set(further, { hours: '0' }))).code).toBe('BAD_REQUEST');
    const { round: said } = await set(further);
    expect(said.price).toMatchObject({ state: 'asked', amount: usd(13_500) });
    expect((await draft(p)).lines.at(-1)?.amount).toEqual(usd(13_500));
  });
  test('an answer dated after now, or to a round without a price, is refused', async () => {
    const { p, first, further } = await second();
    expect(await refusal(settle(p, further, true, { at: '2027-01-01T00:00:00Z' }))).toMatchObject({ code: 'BAD_INPUT' });
    expect(await refusal(settle(p, first, true))).toMatchObject({ code: 'REFUSED', what: 'Notes on the rough cut have no price.' });
  });
});
