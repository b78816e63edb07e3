/**
 * What is offered to me and what is another amount, and what an offer is paid for; sentences of common practice.
 */
import { describe, expect, test } from 'vitest';
import { offerIn, ONE_DAY, TWO_DAYS } from './reading.ts';

describe('for all of several days', () => {
  test.each([
    ['For both days together we have $900.', '900 USD job'],
    ['For these two evenings the guild gives $700.', '700 USD job'],
    ['For the weekend we thought of $800.', '800 USD job'],
    ['$850 the two days, ferry paid by us.', '850 USD job'],
    ['£320 for the 2.', '320 GBP job'],
    ['$1,900 is for the camera person, both days.', '1900 USD job'],
    ["Budget CHF 2'300.– excl. VAT all in all.", '2300 CHF job'],
    ['1700€ alles drin.', '1700 EUR job'],
    ['We have $900 for the film.', '900 USD job'],
    ['$750 for the day and the edit.', '750 USD job'],
    ['We have $900 for video.', '900 USD -'],
    ['For the two days we pay $400 a day.', '400 USD day'],
    ['For the two days we pay $400 each.', '400 USD -'],
  ])('%s', (words, offer) => expect(offerIn(TWO_DAYS, words)).toBe(offer));
});

describe('for a day or an hour', () => {
  test.each([
    ['Money: 360 eur / racing day, bed on the boat.', '360 EUR day'],
    ['Tarif : 330 € brut par jour.', '330 EUR day'],
    ['CHF 650 for each of the two days; the train we pay (2nd class, 44 francs).', '650 CHF day'],
    ['We can 300 € by day, not more.', '300 EUR day'],
    ['Each day is paid $540.', '540 USD day'],
    ['We work with an hour tariff of € 80.', '80 EUR hour'],
    ['Stundensatz 80 €.', '80 EUR hour'],
    ['By the hour we pay $80.', '80 USD hour'],
  ])('%s', (words, offer) => expect(offerIn(TWO_DAYS, words)).toBe(offer));
});

describe('beside other amounts', () => {
  test.each([
    ['The marquee people charge $2,450. Would $1,200 be near it?', '1200 USD job'],
    ["I've got $900 total. There's also a hotel rate of $139, which we'd pick up.", '900 USD job'],
    ["We've budgeted $1,200 for video (the relay's whole budget is $15,000).", '1200 USD job'],
    ['The fee is $1,250. The jubilee has a budget of $40,000 in all but most goes to flowers.', '1250 USD job'],
    ['Each family gives 20 dollars so you receive from the parish 640 dollars.', '640 USD job'],
    ['The grant is $12,000, of which $900 is for the camera.', '900 USD job'],
    ['The fee has been raised from $520 to $580.', '580 USD job'],
    ['The fee is unchanged from last year at $980.', '980 USD job'],
    ['The fee stays as last year, $980.', '980 USD job'],
    ["The client's budget is $1,250.", '1250 USD job'],
    ['Our budget for the video is $1,250.', '1250 USD job'],
    ['We raised $260 selling popcorn. Is that enough?', '260 USD job'],
  ])('%s', (words, offer) => expect(offerIn(ONE_DAY, words)).toBe(offer));
});

describe('written otherwise', () => {
  test.each([
    ['My limit is 2 thousand dollars.', '2000 USD job'],
    ['12 hundred dollars is the fee.', '1200 USD job'],
    ['The sum which we can give is 3.100 lei.', '3100 RON job'],
    ['Avevamo pensato a 900 euro IVA compresa.', '900 EUR job'],
    ['Wir haben an 900 Euro gedacht.', '900 EUR job'],
    ['350 ok?', '350 USD job'],
    ['450?', '450 USD job'],
    ['700 for that?', '700 USD job'],
    ['its 200 and a board', '200 USD job'],
    ["He's got 500 for it and wants ten clips.", '500 USD job'],
    ['Is 500 enough?', '500 USD job'],
  ])('%s', (words, offer) => expect(offerIn(ONE_DAY, words)).toBe(offer));
});

describe('a number that is no money', () => {
  test.each([
    'About 300 guests.',
    "It's 200 km from you.",
    'Room 450.',
    'The hall holds 350.',
    'Hall 275.',
    "It's 300 of us.",
    'We got 550 RSVPs.',
    'Ring 450.',
  ])('%s', (words) => expect(offerIn(ONE_DAY, words)).toBe('none - -'));
});
