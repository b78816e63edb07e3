/**
 * Two towns in one message: one of two that nobody has chosen yet is asked about, a sender's own and that of another job give way.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const ASK = 'Hi Kit, are you free? We need a second camera operator. ';

describe('nobody has chosen yet', () => {
  test.each([
    ['denver', "It's on 12 June, in Boulder or, if it snows, in Golden. $900."],
    ['denver', "It's on 12 June, in Boulder or, if it snows, Golden. $900."],
    ['leeds', 'It is on 12 June, in Hull (the usual hall) or we hire something in Beverley. £300.'],
    ['auckland', "Prizegiving on 12 June, either Nelson or Picton, the club can't decide. $450."],
    ['auckland', 'A regatta on 12 June. Options: A) Nelson, or B) Picton. $500.'],
    ['halifax', 'The council is split between Moncton and Charlottetown for 12 June. $900.'],
    ['vancouver', 'A dinner in Kelowna on 12 June, or we move it to Penticton the same night. $900.'],
    ['melbourne', 'A grand final on 12 June, and the venue is one of two: Ballarat if the Herons get up, Geelong if not. $550.'],
    ['sydney', 'Can you do 12 June in Orange? Or Bathurst, it depends on the weather. $720.'],
    ['denver', 'its in either boulder or fort collins on 12 june, park ppl havent signed. 450 for u.'],
    ['london', 'The couple cannot agree between Marbella and the Algarve. It is on 12 June. A price please.'],
    ['toronto', 'Two cities are shortlisted, Kingston and Belleville, for 12 June. $900.'],
    ['toronto', 'One or the other:\nA) 12 June, Kitchener, camera 1, $700\nB) Same date, Sarnia, stream op, $740'],
    ['leeds', 'Film a gala on 12 june in otley. or ilkley if the town hall is double booked. £220.'],
    ['vienna', 'Am 12. Juni in Innsbruck oder, falls es regnet, in Hall. 400 Euro.'],
  ])('%s: %s', (home, text) => expect(facts(ASK + text, undefined, home).place).toBeUndefined());
});

describe('one of them is where the job is', () => {
  test.each([
    ['toronto', 'I work out of Ottawa but the conference is in Kingston on 12 June.', 'Kingston'],
    ['leeds', 'We were at the Harrogate show last month. Our open day is in Skipton on 12 June.', 'Skipton'],
    ['edinburgh', "The funeral is in Falkirk on 12 June, and my uncle in Perth, Australia, can't fly.", 'Falkirk'],
    ['zurich', 'Nicht in Bern, sondern in Thun findet das Fest am 12. Juni statt.', 'Thun'],
    ['vancouver', "I'm with a conference firm in Ottawa and we're taking a group to Whistler on 12 June.", 'Whistler'],
    [
      'halifax',
      "I got your name from the venue in Moncton. We're a Toronto publisher and want our sales day there filmed on 12 June.",
      'Moncton',
    ],
    [
      'dublin',
      "Forget Athlone on 5 June, that's gone to a crowd from Galway. What I'd like you for instead is Waterford on 12 June.",
      'Waterford',
    ],
    ['madrid', 'Perdona, puse Gijón y es Avilés, el 12 de junio. 220 € en total.', 'Avilés'],
    ['edinburgh', 'Amendment: the AGM on 12 June moves from Aberdeen to Elgin.', 'Elgin'],
    ['halifax', "We're touring: Truro on 11 June, and Amherst on 12 June. We can only film one and it's the Amherst one.", 'Amherst'],
    ['london', 'Book launch, Lewes, 12 June, £350.\nOld brief for comparison, struck out: Brighton, 17 October, £300.', 'Lewes'],
    ['toronto', 'It is in Moncton on 12 June. A yes by Friday at 3 p.m. Halifax time, please.', 'Moncton'],
  ])('%s: %s', (home, text, place) => expect(facts(ASK + text, undefined, home).place).toBe(place));
});

describe('what it is paid', () => {
  test.each([
    ['leeds', 'A wedding in Malton on a Saturday in June, date to be fixed. £400.', { amount: 400, currency: 'GBP', per: 'job' }],
    ['leeds', 'A wedding in Malton on 12 June. I would rather pay by the day, £280.', { amount: 280, currency: 'GBP', per: 'day' }],
    ['leeds', 'A fair in Malton on 12 and 13 June, £500 for the festival.', { amount: 500, currency: 'GBP', per: 'job' }],
    ['leeds', 'An inquiry in Malton on 12 and 13 June, £210 per sitting day.', { amount: 210, currency: 'GBP', per: 'day' }],
    ['leeds', 'A wedding in Malton on 12 June. The photographer is getting £700.', undefined],
    [
      'leeds',
      'A gala in Malton on 12 June. I am authorised to offer £850 inclusive of travel.',
      { amount: 850, currency: 'GBP', per: 'job' },
    ],
    ['toronto', 'A gala in Buffalo on June 12. $900 flat, we pay in US dollars.', { amount: 900, currency: 'USD', per: 'job' }],
    ['capetown', 'An opening in Windhoek on 12 June. N$12 000 for the shoot day.', { amount: 12_000, currency: 'NAD', per: 'day' }],
    ['sydney', "A wedding in Orange on 12 June. They're paying me $3,200, you take $2,000.", { amount: 2000, currency: 'AUD', per: 'job' }],
    [
      'sydney',
      "A wedding in Orange on 12 June. They're paying me $3,200, all of it is yours.",
      { amount: 3200, currency: 'AUD', per: 'job' },
    ],
    [
      'duluth',
      'A fair in Fargo on June 12-14. Load in is a half day at $300. Show days are $600 each.',
      { amount: 600, currency: 'USD', per: 'day' },
    ],
    ['zurich', 'A gala in Lugano on 12 June. Budget: 900 (francs or euros, the board decides).', { amount: 900, per: 'job' }],
    ['toronto', 'A race in Detroit on June 12. $600 US or Canadian, your pick.', { amount: 600, per: 'job' }],
    ['toronto', 'A gala in Barrie on June 12. The price of the guy they called was $2,400.', undefined],
    ['halifax', 'A gala in Truro on June 12, they approved twenty two hundred dollars.', { amount: 2200, currency: 'CAD', per: 'job' }],
    ['sydney', 'Gigs in Orange on 12 and 19 June, $480 a date.', { amount: 480, currency: 'AUD', per: 'day' }],
    [
      'leeds',
      'A gala in York on 12 June. The sponsor has put in £2,000, the band costs £700, that leaves £400 for film.',
      { amount: 400, currency: 'GBP', per: 'job' },
    ],
    ['toronto', 'A fair in Barrie on June 12-14. $2,100 covers all three.', { amount: 2100, currency: 'CAD', per: 'job' }],
    ['melbourne', "A fair in Geelong on 12 June. It's not a paid thing but there's a $50 voucher.", undefined],
    ['vancouver', 'A fair in Kelowna on June 12. We have $3k between you and the sound guy.', undefined],
    [
      'vienna',
      'A fair in Graz on 12 June. 600 incl. USt for up to 8 hours, 60 each hour after that.',
      { amount: 600, currency: 'EUR', per: 'job' },
    ],
    [
      'paris',
      'Four hundred for the day in Reims on 12 June; pounds or euros, my accountant will decide (call it 400).',
      { amount: 400, per: 'day' },
    ],
    ['paris', 'Un gala à Reims le 12 juin, 380 balles.', { amount: 380, currency: 'EUR', per: 'job' }],
  ])('%s: %s', (home, text, budget) => expect(facts(ASK + text, undefined, home).budget).toEqual(budget));
});
