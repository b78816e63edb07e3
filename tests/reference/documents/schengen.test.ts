/**
 * A passport of a third country: valid three months beyond leaving, and not older than ten years on coming in.
 * @source European Parliament and Council, Regulation (EU) 2016/399 (Schengen Borders Code), Article 6(1)(a)(i) and (ii), 2016
 */
import { expect, test } from 'vitest';
import { passportRule } from '../../../core/documents/rules.ts';
import { checkFit } from '../../../core/fit/check.ts';
import { inputOf } from '../../situations/shape.ts';
import { duluth, paris } from '../../core/trips/places.ts';

const found = (from: string, until: string) =>
  checkFit(
    inputOf({
      name: '',
      home: duluth,
      documents: [
        { kind: 'passport', country: 'US', from, until },
        { kind: 'right to work', countries: ['FR'] },
      ],
      booked: [],
      candidate: {
        place: paris,
        days: ['2027-03-10 09:00-18:00'],
        tickets: [
          { mode: 'flight', from: duluth, to: paris, depart: '2027-03-08T12:00', arrive: '2027-03-09T08:00' },
          { mode: 'flight', from: paris, to: duluth, depart: '2027-03-11T10:00', arrive: '2027-03-11T18:00' },
        ],
      },
      answer: 'free',
      findings: [],
    }),
  ).findings.flatMap(({ kind }) => (kind.startsWith('passport') ? [kind] : []));

test('three months beyond the day of leaving, 11 March 2027', () => {
  expect(found('2018-01-01', '2027-06-11')).toEqual([]);
  expect(found('2018-01-01', '2027-06-10')).toEqual(['passport validity']);
});

test('issued within ten years of coming in, on 9 March 2027', () => {
  expect(found('2017-03-09', '2028-03-09')).toEqual([]);
  expect(found('2017-03-08', '2028-03-08')).toEqual(['passport age']);
});

test('neither is asked of who moves freely', () => expect(passportRule('FR', 'DE')?.months).toBe(0));
