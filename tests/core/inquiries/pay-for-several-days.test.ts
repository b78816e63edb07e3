/**
 * What is paid for all days or for each of them, sums of prices of one, bare sums of a chat, and money of other countries.
 */
import { describe, expect, test } from 'vitest';
import { offerIn, ONE_DAY, TWO_DAYS } from './reading.ts';

describe('for two days', () => {
  test.each([
    ["We've $500 from the county and that's for the both days.", '500 USD job'],
    ['we have... $300. for the 2.', '300 USD job'],
    ['$500 covering both days.', '500 USD job'],
    ['$500 lumpsum both days.', '500 USD job'],
    ['$ 1,300 incl. both days, own meals', '1300 USD job'],
    ['$700, the two days together.', '700 USD job'],
    ['The grant has $700 in it for your two days.', '700 USD job'],
    ['$900 for your two days and a bed.', '900 USD job'],
    ["It's a $400 buyout a day.", '400 USD day'],
    ["It's a $400 fee per day.", '400 USD day'],
    ['We pay $400 flat a day.', '400 USD day'],
    ['Per day we can give $400 plus tax.', '400 USD day'],
    ['For each day we can offer $400.', '400 USD day'],
    ['Pro Tag zahlen wir 400 €.', '400 EUR day'],
    ['We will pay 600 US dollar for each day.', '600 USD day'],
    ['$290 per person per day, gross.', '290 USD day'],
    ['We pay NOK 9 000 pr. day + flights.', '9000 NOK day'],
    ['We can pay $400 and half a day of rest.', '400 USD -'],
  ])('%s', (words, offer) => expect(offerIn(TWO_DAYS, words)).toBe(offer));
});

describe('the sum of the price of one', () => {
  test.each([
    ["It's $225 an evening, so $450.", '450 USD job'],
    ['Do you still do two hundred a go, so $400?', '400 USD job'],
    ['$275 a house, so $1,100 for the four.', '1100 USD job'],
    ['We can pay $300 a day, $600 in all.', '300 USD day'],
  ])('%s', (words, offer) => expect(offerIn(TWO_DAYS, words)).toBe(offer));
});

describe('sums of a chat', () => {
  test.each([
    ['Let me know if 550 works', '550 USD job'],
    ['Tell me if 400 is ok.', '400 USD job'],
    ['And yes the 750 is grand', '750 USD job'],
    ['350 koha. doors 6', '350 USD job'],
    ['Can do 120 + guest list + couch.', '120 USD job'],
    ['15,000 ok? Pls confirm', '15000 USD job'],
    ['Sie zahlt 400 bar.', '400 USD job'],
    ['The 300 guests are fine with it.', 'none - -'],
    ['The club is a hundred this year, call me back.', 'none - -'],
    ['Gran turns a hundred.', 'none - -'],
  ])('%s', (words, offer) => expect(offerIn(ONE_DAY, words)).toBe(offer));
});

describe('what is offered and what is not', () => {
  test.each([
    ["The society offers $620. The member's fee ($85) doesn't concern you.", '620 USD job'],
    ['$310 is voted and minuted. ($1,900 went on paint.)', '310 USD job'],
    ['\n\nPaid: $280, sandwich included', '280 USD job'],
    ['We put $1,350 in the budget for you. Grandparents pay $10 for the link.', '1350 USD job'],
    ['\n\nHonorar: 600,-- EUR pauschal', '600 EUR job'],
  ])('%s', (words, offer) => expect(offerIn(ONE_DAY, words)).toBe(offer));
});

describe('money of other countries', () => {
  test.each([
    ['I have 1,600 Swiss francs for this, flat.', '1600 CHF job'],
    ['Podemos dar 500 francos.', '500 CHF job'],
    ['We dachten aan zo’n 1100 pond.', '1100 GBP job'],
    ['Fee 1,500,000 won (all in).', '1500000 KRW job'],
    ['From us: 1 500 GEL for filming.', '1500 GEL job'],
    ['I can pay 2 500 DT.', '2500 TND job'],
    ['Podemos ofrecerle S/ 2,500 por el trabajo.', '2500 PEN job'],
    ['Payment NRs. 60,000 for all.', '60000 NPR job'],
  ])('%s', (words, offer) => expect(offerIn(ONE_DAY, words)).toBe(offer));
});
