import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

const budget = (words: string, home = 'duluth', where = 'Fargo') =>
  facts(`Can you film in ${where} on 12 December 2026? ${words}`, undefined, home).budget;

describe('budget', () => {
  test.each([
    ['900 a day.', { amount: 900, currency: 'USD', per: 'day' }],
    ['$1,200/day.', { amount: 1200, currency: 'USD', per: 'day' }],
    ['Budget is 1.2k flat.', { amount: 1200, currency: 'USD', per: 'job' }],
    ['We pay CA$750 per day.', { amount: 750, currency: 'CAD', per: 'day' }],
    ['The fee is 3 500 € for the whole job.', { amount: 3500, currency: 'EUR', per: 'job' }],
    ["Day rate CHF 1'200.", { amount: 1200, currency: 'CHF', per: 'day' }],
    ['Our budget is 1.250,00 EUR.', { amount: 1250, currency: 'EUR', per: 'job' }],
    ['$625/10.', { amount: 625, currency: 'USD', per: 'day' }],
    ['R6 500 for the day.', { amount: 6500, currency: 'ZAR', per: 'day' }],
    ['Wir zahlen pauschal 550 €.', { amount: 550, currency: 'EUR', per: 'job' }],
    ['400 € la journée.', { amount: 400, currency: 'EUR', per: 'day' }],
    ['We have $1,100 set aside for the whole thing.', { amount: 1100, currency: 'USD', per: 'job' }],
    ['Work is 9 til 6 400/day.', { amount: 400, currency: 'USD', per: 'day' }],
    ['£450pd.', { amount: 450, currency: 'GBP', per: 'day' }],
    ['$75/hr.', { amount: 75, currency: 'USD', per: 'hour' }],
    ['Tickets are $45. Budget $2,000 all in.', { amount: 2000, currency: 'USD', per: 'job' }],
    ['We can pay $400.', { amount: 400, currency: 'USD', per: 'job' }],
    ['$450 a shift.', { amount: 450, currency: 'USD', per: 'job' }],
    ['The grant covers $800 for video.', { amount: 800, currency: 'USD', per: 'job' }],
    ['Would 400 do?', { amount: 400, currency: 'USD', per: 'job' }],
    ['Pays four fifty for the day.', { amount: 450, currency: 'USD', per: 'day' }],
    ['Last year we paid $400, this year it is $450.', { amount: 450, currency: 'USD', per: 'job' }],
    ['There is $75 per diem and $450 a day.', { amount: 450, currency: 'USD', per: 'day' }],
    ['They pay 600 Canadian for the night.', { amount: 600, currency: 'CAD', per: 'job' }],
    ['Hotel is $140 a night, we pay $900 a day.', { amount: 900, currency: 'USD', per: 'day' }],
  ])('%s', (words, said) => expect(budget(words)).toEqual(said));

  test('prices of other things are no offer', () => {
    expect(budget('We raised $40,000 and sold 300 tickets at $25 each.')).toBeUndefined();
    expect(budget('Last year’s video cost us $2,200.')).toBeUndefined();
  });
  test.each([
    'We have had one quote of $1,250.',
    'The cake alone is $300!',
    'The band is getting $1,500.',
    'We pay our stewards $15 an hour.',
    'Our whole event budget is $20,000.',
    'There is a $1,000 first prize.',
    'We charge $15 at the door.',
    'You can stay at the inn, $89 a night.',
    'We expect 1,500 people.',
  ])('%s', (words) => expect(budget(words)).toBeUndefined());

  test.each([
    ['$450 per night.', 'day', 450],
    ['2 days at $450.', 'day', 450],
    ['$450 x 2 days.', 'day', 450],
    ['450 a day, 900 in all.', 'day', 450],
    ['$900 to cover both days.', 'job', 900],
  ])('two days: %s', (words, per, amount) =>
    expect(facts(`Can you film in Fargo on 12 and 13 December? ${words}`).budget).toEqual({ amount, currency: 'USD', per }),
  );

  test('a part of a long row of digits is no amount', () => {
    expect(budget('Budget is 99999999999999999999 USD a day.')).toBeUndefined();
    expect(budget('Our budget, account 12345678901, is 900 USD a day.')).toEqual({ amount: 900, currency: 'USD', per: 'day' });
  });

  test('dollars over a border are asked, with the amount kept', () => {
    const reading = readAt('Can you film in Thunder Bay on 12 December? 900 a day.');
    expect(reading.fields.budget).toEqual({ amount: 900, per: 'day' });
    expect(reading.questions.find(({ field }) => field === 'budget')?.choices.map(({ value }) => value)).toEqual([
      { amount: 900, currency: 'USD', per: 'day' },
      { amount: 900, currency: 'CAD', per: 'day' },
    ]);
  });

  test('no unit of time is asked where there are several days', () => {
    const reading = readAt('Can you film in Fargo on 12 and 13 December? We can pay $400.');
    expect(reading.fields.budget).toEqual({ amount: 400, currency: 'USD' });
    expect(reading.questions.find(({ field }) => field === 'budget')?.choices.map(({ value }) => value)).toEqual([
      { amount: 400, currency: 'USD', per: 'day' },
      { amount: 400, currency: 'USD', per: 'job' },
    ]);
  });

  test('a range is asked', () => {
    const reading = readAt('Can you film in Fargo on 12 December? 800 to 900 a day.');
    expect(reading.fields.budget).toBeUndefined();
    expect(reading.questions.find(({ field }) => field === 'budget')?.choices).toHaveLength(2);
  });
});

describe('place', () => {
  test.each([
    ['in Superior, Wisconsin', 'duluth', 'Superior', 'US'],
    ['in London, Ontario', 'toronto', 'London', 'CA'],
    ['in London', 'leeds', 'London', 'GB'],
    ['in Newcastle NSW', 'sydney', 'Newcastle', 'AU'],
    ['in Köln', 'berlin', 'Köln', 'DE'],
    ['at the Bismarck library', 'duluth', 'Bismarck', 'US'],
    ['in Bayfield, WI', 'duluth', 'Bayfield', 'US'],
    ['the Harrogate flower show', 'leeds', 'Harrogate', 'GB'],
    ['the Hibbing hockey banquet', 'duluth', 'Hibbing', 'US'],
    ['a dinner in Hull', 'leeds', 'Hull', 'GB'],
    ['for our office in Wakefield', 'leeds', 'Wakefield', 'GB'],
    ["at St Mary's, Beverley", 'leeds', 'Beverley', 'GB'],
    ["la ville d'Angers", 'paris', 'Angers', 'FR'],
  ])('%s from %s', (where, home, name, country) =>
    expect(facts(`Can you film ${where} on 12 December 2026?`, undefined, home)).toMatchObject({ place: name, country }),
  );

  test('a name that could be two towns is asked, with both', () => {
    const reading = readAt('Can you film in London on 17 June?', undefined, 'toronto');
    expect(reading.fields.country).toBeUndefined();
    const choices = reading.questions.find(({ field }) => field === 'place')?.choices ?? [];
    expect(choices.map(({ place }) => place?.country)).toEqual(expect.arrayContaining(['CA', 'GB']));
  });

  test('where people come from is not where the job is', () => {
    expect(facts('We are based in Chicago. Can you film in Fargo on 12 December?').place).toBe('Fargo');
    expect(facts('You filmed for us in Bristol last year. Can you film in Cardiff on 12 December 2026?', undefined, 'leeds').place).toBe(
      'Cardiff',
    );
  });

  test.each([
    ["We're a Leeds charity and our gala's in Sheffield on 12 December; could you film it?", 'Sheffield'],
    ['The venue moved from Halifax to Huddersfield. Still 12 December, can you still film?', 'Huddersfield'],
    ['Can you film our gala in Ripon, no, wait, in Selby on 12 December?', 'Selby'],
    ['I run a bakery in Otley and the wedding is in Whitby on 12 December, can you film it?', 'Whitby'],
    ['Could you come and film us in Reeth? It is on 12 December.', 'Reeth'],
  ])('%s', (text, place) => expect(facts(text, undefined, 'leeds').place).toBe(place));

  test.each([
    ['Harrogate or Ilkley, not sure yet. 12 December, a two-camera shoot. Are you free?'],
    ['Hi Casey, are you free on 12 December to film?'],
    ['Can you film our match on 12 December? Cheers, Chester'],
  ])('none is stated: %s', (text) => expect(facts(text, undefined, 'leeds').place).toBeUndefined());
});

describe('no inquiry', () => {
  test.each([
    'Thank you so much for the video! We all loved it.',
    'I am out of the office until 30 November and will answer camera requests then.',
    'Invoice #2231 is 10 days past due. Please pay by 4 December.',
    'Register now for our video summit on 3 March. Unsubscribe here.',
    'We have decided to go with another videographer for 12 December.',
  ])('%s', (text) => expect(readAt(text)).toEqual({ isInquiry: false, fields: {}, questions: [], spans: [] }));
});
