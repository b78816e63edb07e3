import { describe, expect, test } from 'vitest';
import { chosenChanges, daysBehind } from '../../../core/inquiries/chosen.ts';
import { newFacts } from '../../../core/jobs/facts.ts';

const day = (date: string) => ({ date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T19:00` });
const facts = newFacts({
  title: 'Choir evening',
  days: [day('2026-12-12'), day('2026-12-13')],
  contact: { name: '', email: 'a@choir.example', phone: '' },
});
const chosen = (field: Parameters<typeof chosenChanges>[1], value: unknown) => chosenChanges(facts, field, value, 'America/Chicago');

describe('a chosen answer as changes of the facts', () => {
  test('role, budget and people', () => {
    expect(chosen('role', 'audio')).toEqual({ role: 'audio' });
    expect(chosen('budget', { amount: 900, currency: 'CAD', per: 'day' })).toEqual({
      budget: { amount: 900, currency: 'CAD', per: 'day' },
    });
    expect(chosen('contactName', 'Ilse Marrow')).toEqual({ contact: { name: 'Ilse Marrow', email: 'a@choir.example', phone: '' } });
    expect(chosen('organisation', 'Choir')).toEqual({ organisation: 'Choir' });
  });

  test('another first day moves all days; another last day cuts or fills them', () => {
    expect(chosen('start', '2026-12-19')?.days?.map(({ call }) => call)).toEqual(['2026-12-19T09:00', '2026-12-20T09:00']);
    expect(chosen('end', '2026-12-12')?.days?.map(({ date }) => date)).toEqual(['2026-12-12']);
    expect(chosen('end', '2026-12-15')?.days?.map(({ wrap }) => wrap)).toEqual([
      '2026-12-12T19:00',
      '2026-12-13T19:00',
      '2026-12-14T19:00',
      '2026-12-15T19:00',
    ]);
    expect(chosen('end', '2026-12-01')?.days).toEqual(facts.days);
  });

  test('a day keeps its length where its wrap is not known, or would lie before the chosen call', () => {
    const open = { ...facts, questions: [{ field: 'lastWrap' as const, ask: 'At what time is wrap?', choices: [] }] };
    expect(chosenChanges(open, 'firstCall', '2026-12-12T07:30', 'America/Chicago')?.days?.[0]?.wrap).toBe('2026-12-12T17:30');
    expect(chosen('firstCall', '2026-12-12T19:00')?.days?.[0]).toMatchObject({ call: '2026-12-12T19:00', wrap: '2026-12-13T05:00' });
  });

  test('call and wrap touch the first and the last day', () => {
    expect(chosen('firstCall', '2026-12-12T07:30')?.days?.[0]).toEqual({ ...day('2026-12-12'), call: '2026-12-12T07:30' });
    expect(chosen('lastWrap', '2026-12-14T01:00')?.days?.[1]).toEqual({ ...day('2026-12-13'), wrap: '2026-12-14T01:00' });
  });

  test('reply-by is placed on the clock of home, and left to be typed where that clock skips it', () => {
    expect(chosen('replyBy', '2026-12-03T23:59')).toEqual({
      replyBy: { wall: '2026-12-03T23:59', zone: 'America/Chicago', at: '2026-12-04T05:59:00Z' },
    });
    expect(chosen('replyBy', '2026-03-08T02:30')).toBeNull();
  });

  test('what is not of the expected form changes nothing', () => {
    expect(chosen('role', 'juggler')).toBeNull();
    expect(chosen('place', 'Fargo')).toBeNull();
    expect(chosen('days', 3)).toBeNull();
    expect(chosenChanges(newFacts({ title: 'No days' }), 'start', '2026-12-19', 'America/Chicago')).toBeNull();
  });

  test('a choice of days carries all of them, or is one day', () => {
    expect(daysBehind(['2026-12-12', '2026-12-13'])).toEqual(['2026-12-12', '2026-12-13']);
    expect(daysBehind('2026-12-12')).toEqual(['2026-12-12']);
    for (const other of ['soon', [], ['soon'], null, 12]) expect(daysBehind(other)).toBeUndefined();
  });
});
