/**
 * What a quote that was agreed on promises, as deliverables.
 */
import { describe, expect, test } from 'vitest';
import type { Template } from '../../../core/contract/templates.ts';
import { fromQuote, templateFor, type Agreed } from '../../../core/deliverables/from-quote.ts';
import { remade } from '../../../core/deliverables/remake.ts';
import { stagesFrom } from '../../../core/deliverables/make-stages.ts';
import { HIGHLIGHT } from '../../api/deliverables/numbers.ts';

const template = (name: string, given: Partial<Template> = {}): Template => ({
  ...HIGHLIGHT,
  name,
  id: `template ${name}`,
  version: 1,
  uses: 0,
  ...given,
});
const agreed = (given: Partial<Agreed> = {}): Agreed => ({
  job: { deliverables: ['A three-minute highlight'] },
  lines: [],
  rounds: 2,
  templates: [template('Highlight')],
  lastWrap: '2026-12-13',
  holidays: new Set(['2026-12-25']),
  ...given,
});

describe('what a quote promises', () => {
  test('takes its numbers and its date from the template that its words name', () => {
    expect(fromQuote(agreed())).toEqual([
      {
        ...Object.fromEntries(Object.entries(HIGHLIGHT).filter(([key]) => key !== 'due')),
        name: 'A three-minute highlight',
        madeFrom: 'promised/a-three-minute-highlight',
        templateId: 'template Highlight',
        finishedMinutes: '3',
        editHours: null,
        due: '2027-01-11',
        internalDate: '2027-01-07',
      },
    ]);
  });
  test('a date and hours that were said stand in their place; the hours hold ingest and rounds too', () => {
    const job = { deliverables: ['Highlight, 90 seconds'], edits: [{ what: 'Highlight, 90 seconds', due: '2026-12-21', hours: '12.5' }] };
    expect(fromQuote(agreed({ job }))).toMatchObject([
      { finishedMinutes: '1.5', editHours: '5.5', due: '2026-12-21', internalDate: '2026-12-17' },
    ]);
  });
  test('hours that were changed on the quote are those that count', () => {
    const job = { deliverables: ['Talks'], edits: [{ what: 'Talks', due: null, hours: '10' }] };
    const line = { id: 'editing/of-talks', section: 'editing' as const, what: 'Editing: Talks', quantity: '20', unit: 'hours' };
    const made = fromQuote(agreed({ job, lines: [line] }));
    // Without a template a round takes a tenth of them.
    expect(made).toMatchObject([{ templateId: null, rounds: 2, hoursPerRound: '2', editHours: '16', due: null, internalDate: null }]);
    expect(stagesFrom(made[0] as (typeof made)[number]).reduce((sum, { halfHours }) => sum + halfHours, 0)).toBe(40);
  });
  test('a line of editing that was written by hand is one too, in hours alone', () => {
    const line = (id: string, unit: string, section: 'editing' | 'extras' = 'editing') => ({
      id,
      section,
      what: 'Subtitles',
      quantity: '4',
      unit,
    });
    const lines = [
      line('editing/added-1', 'hours'),
      line('editing/days', 'hours'),
      line('editing/added-2', 'piece'),
      line('extras/added-3', 'hours', 'extras'),
    ];
    expect(fromQuote(agreed({ job: { deliverables: [] }, lines }))).toMatchObject([
      { name: 'Subtitles', madeFrom: 'editing/added-1', editHours: '3' },
    ]);
  });
  test('two of the same words are two', () => {
    expect(fromQuote(agreed({ job: { deliverables: ['Talk', 'Talk'] } })).map(({ madeFrom }) => madeFrom)).toEqual([
      'promised/talk',
      'promised/talk-2',
    ]);
  });
  test('what is for the same day is cut on site, due on the day of the last wrap', () => {
    expect(fromQuote(agreed({ job: { deliverables: ['Same-day highlight'] } }))).toMatchObject([
      { sameDay: true, rounds: 0, due: '2026-12-13', internalDate: '2026-12-13' },
    ]);
  });
  test('nothing more than the words is known without a template', () => {
    expect(fromQuote(agreed({ templates: [] }))).toMatchObject([{ templateId: null, editHours: null, editHoursPerMinute: '0', due: null }]);
  });
  test.each([
    ['2.5 min teaser', '2.5'],
    ['two to three minutes', '3'],
    ['3-5 minutes', '3'],
    ['a reel', '3'],
    ['ninety-second reel', '1.5'],
    ['12 minutes', '12'],
  ])('%s is so many minutes, or those of the template', (words, minutes) => {
    const made = fromQuote(agreed({ job: { deliverables: [words] }, templates: [template(words)] }));
    expect(made[0]?.finishedMinutes).toBe(minutes);
  });
});

test('a template is named by its whole name, in the singular or not, the longest that is', () => {
  const all = [template('Talk'), template('Long talk'), template('Reels')];
  const named = (words: string) => templateFor(words, all)?.name ?? null;
  expect([named('Twelve long talks'), named('The talks'), named('A reel'), named('Talkshow'), named('')]).toEqual([
    'Long talk',
    'Talk',
    'Reels',
    null,
    null,
  ]);
});

describe('stages made anew', () => {
  const stages = (done: number) =>
    stagesFrom(HIGHLIGHT).map((work, order) => ({ ...work, id: `${order}`, doneAt: order < done ? 7 : null }));
  const shown = (all: ReturnType<typeof remade>) =>
    all.map(({ id, kind, halfHours, doneAt }) => `${id} ${kind} ${halfHours}${doneAt === null ? '' : ' done'}`);

  test('what is done keeps its hours, what is open gets the new ones, a round more is new', () => {
    expect(shown(remade(stages(2), 2, stagesFrom({ ...HIGHLIGHT, finishedMinutes: '6', rounds: 3 })))).toEqual([
      '0 ingest 4 done',
      '1 selects 5 done',
      '2 rough cut 19',
      '3 fine cut 14',
      '4 round 5',
      '5 round 5',
      'null round 5',
      '6 picture lock 5',
      '7 delivered 0',
      '8 approved 0',
    ]);
  });
  test('a round that was added for the client stays when the included ones change', () => {
    const extra = stages(0).toSpliced(6, 0, { id: 'x', kind: 'round', halfHours: 8, doneAt: null });
    expect(shown(remade(extra, 2, stagesFrom({ ...HIGHLIGHT, rounds: 1 }))).filter((stage) => stage.includes('round'))).toEqual([
      '4 round 5',
      '5 round 8',
    ]);
  });
  test('done work that the new numbers do not ask for stays done, and what is new before it is done too', () => {
    const before = stages(4).filter(({ kind }) => kind !== 'ingest');
    expect(shown(remade(before, 2, stagesFrom({ ...HIGHLIGHT, finishedMinutes: '0' }))).slice(0, 4)).toEqual([
      '1 selects 5 done',
      '2 rough cut 10 done',
      '3 fine cut 7 done',
      'null ingest 4',
    ]);
  });
});
