/**
 * Days that everything learned speaks against are doubted, and what is learned is pooled from the weights and the network.
 */
import { expect, test } from 'vitest';
import { dateChances } from '../../../core/inquiries/context/chances.ts';
import { areDoubtful } from '../../../core/inquiries/context/doubtful.ts';
import { dateFeatures, pageOf, type Page } from '../../../core/inquiries/learned/features.ts';
import { chancesIn } from '../../../core/inquiries/learned/models.ts';
import { lookAt } from '../../../core/inquiries/look.ts';
import type { DateMention } from '../../../core/inquiries/settle/scene.ts';
import { gazetteer, homeOf } from '../../reader/corpus.ts';
import { learned } from '../../reader/shipped.ts';

const pageFor = (text: string): Page => {
  const homePlace = homeOf('duluth');
  const receivedAt = '2026-11-25T09:12:00-06:00[America/Chicago]';
  const { scene, phones, head } = lookAt({ text, receivedAt, homeZone: homePlace.zone, homePlace, gazetteer });
  return pageOf(scene, phones, head);
};
const page = pageFor(
  'Hi Kit,\n\nour gala is on Saturday 12 December in Fargo and we would love to have it filmed. Call is 5pm and you are done by 11pm. Your invoice is paid on 18 January. The budget is $600, tell me by Friday.\n\nAnn Leverett',
);
const days = (...dates: string[]) => ({ dates, where: [], choices: [] });

test.each([
  ['that of the job', days('2026-12-12'), false],
  ['that of an invoice', days('2027-01-18'), true],
  ['both, and all between them', days('2026-12-12', '2027-01-18'), true],
  ['one that nothing names', days('2026-12-20'), true],
])('%s', (_, event, doubted) => expect(areDoubtful(event, page, learned)).toBe(doubted));

test('a day that is wanted alone of those that are told is not doubted for the length of the whole', () => {
  const run = pageFor(
    'Hi Kit, our fair in Fargo runs for three days, 11 to 13 December, all three of them long ones. We only need you on the 12th. $400.\n\nAnn',
  );
  expect(areDoubtful({ ...days('2026-12-12'), dropped: ['2026-12-11', '2026-12-13'] }, run, learned)).toBe(false);
});

test('without a network the weights answer alone; with it the chances are still one together', () => {
  const date = page.scene.dates[0] as DateMention;
  const { network: _, ...weights } = learned;
  expect(dateChances(page, date, weights)).toEqual(chancesIn(learned.date, dateFeatures(page, date)));
  const pooled = dateChances(page, date, learned);
  expect(pooled).not.toEqual(dateChances(page, date, weights));
  expect(Object.values(pooled).reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
});
