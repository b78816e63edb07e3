/**
 * Money that is named beside a fee: it is no offer where none is made, and takes nothing from one that is.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

const ASKED = 'Could you film our gala in Ripon on Saturday 12 June';
const amountIn = (text: string): number | undefined => facts(`${text}\n\nThanks, Robin`, undefined, 'leeds').budget?.amount;

describe('no offer', () => {
  const ways = lines(`
    Tickets are £25.
    Tickets cost £25, £18 for members.
    We hope to raise £5,000.
    Last year we raised £4,200.
    The prize is £1,000.
    First prize is £500.
    The hall costs us £800.
    The band gets £600.
    The caterer charges £35 a head.
    Dinner is £45 a head.
    The whole budget for the evening is £12,000.
    Our turnover is £2m.
    Parking is £6 a day.
    Parking costs £2 an hour.
    The train is about £40.
    Your hotel is paid up to £90 a night.
    We cover travel up to £60.
    Mileage is 45p a mile.
    You get a £10 meal voucher.
    There's a £20 allowance for lunch.
    Last year's film cost £700.
    Our last filmer took £450.
    The other quote was £900.
    Somebody offered to do it for £200.
    A friend says it should cost £300.
    I read that it costs £1,000 a day.
    We can't pay £1,500 like the firm next door.
    The deposit for the hall is £150.
    Entry is free, a programme is £2.
    The raffle brings in £400 or so.
    The cake is £120.
    Flowers are £250.
    The dress cost £1,800.
    The marquee was £2,300.
    The PA hire is £180.
    The insurance must cover £5m.
    Public liability of £10m is needed.
    There is a fine of £100 for late cars.
    Late files cost us £50 a day.
    The fee for the music licence is £80.
    VAT is 20 %.
    We are 250 people.
    There are 1,200 seats.
    It's 1,500 words.
    The room is number 1200.
    My extension is 450.
    The postcode is HG4 1QW.
    We're at 1500 Mill Road.
    The auction starts at £50.
    The car in the raffle is worth £18,000.
    Members pay £30 a year.
    The course costs £200.
    Stalls are £40 each.
    The choir was paid £500.
    Donations so far: £3,450.
    The roof will cost £80,000.
    You'd get two tickets worth £50.
    A pint is £5.
    The council gives us £2,000.
    Our sponsor puts in £1,500.
    A sponsor pays £750 for the drinks.
    There's £30 for your dinner.
    You get £25 for food.
    Petrol up to £40 is paid.
    There's a £15 per diem.
    A cousin would do it for £100.
    The student we asked wanted £150.
    We were quoted £1,100 elsewhere.
    £2,000 is beyond us.
    We could never pay £2,000.
    We don't have £2,000.
    The licence fee for the songs is £60.
    The entrance fee is £12.
    The membership fee is £35.
    A cleaning fee of £100 is ours.
    There's a £50 deposit on the key.
    The damage deposit is £200.
    The winner takes £250 home.
    We auction a painting worth £4,000.
    They want to raise £10,000 for the hospice.
    The new roof is £45,000.
    The bar has to make £900.
    The coach cost £650.
    The magician asks £380.
    The hire of the lights comes to £210.
    Speakers get £100 each.
    Singers are paid £80.
    The photographer gets £350.
    The photographer's fee is £350.
    We paid the photographer £350.
    A table for ten is £400.
    A copy of the film is sold for £10.
    We sell the film for £10 a copy.
    Each family pays £15 for the film.
  `);
  test.each(ways)('%s', (way) => expect(amountIn(`${ASKED}? ${way}`)).toBeUndefined());
  test.each(ways)('beside an offer: %s', (way) => expect(amountIn(`${ASKED} for £420? ${way}`) ?? 420).toBe(420));
});

describe('an offer all the same', () => {
  test.each([
    [300, 'The parish pays £300.'],
    [450, 'The council pays £450 for the day.'],
    [500, 'The foundation gives £500 for the filming.'],
    [600, 'We got a grant and can pay £600.'],
    [700, 'The whole budget for the film is £700.'],
    [400, "We can't pay more than £400."],
    [400, "We can't go above £400."],
    [350, 'We could not do more than £350, sorry.'],
    [300, "We don't have more than £300."],
    [400, 'The fee is £400.'],
    [400, 'The fee for the day is £400.'],
    [400, 'The fee for filming is £400.'],
    [400, 'The price for both would be £400.'],
    [400, '£400 plus travel.'],
    [400, '£400 plus £30 for your dinner.'],
    [400, '£400 and a £20 meal allowance.'],
    [400, 'Travel is paid on top, and £400 for you.'],
    [400, 'We pay £400, petrol included.'],
    [400, '£400 including your train.'],
    [400, 'All in £400, with travel.'],
    [400, '£400 a day plus hotel.'],
    [750, 'A sponsor pays £750 for the video.'],
    [750, 'Our sponsor has put up £750 for the filming.'],
    [400, 'You would get £400.'],
    [400, "We've £400 for you."],
    [400, "There's £400 for it."],
    [400, "There's £400 in the pot for the film."],
    [400, "You'd be paid £400."],
    [400, 'Is £400 enough?'],
    [400, 'Would £400 do?'],
    [400, 'Could you do it for £400?'],
    [400, 'Would you do it for £400?'],
    [450, "We'd be quoted £500 elsewhere, but we'd rather have you at £450."],
    [500, 'Somebody else asked £600; we can pay £500.'],
    [400, 'Each of you gets £400.'],
    [400, 'The evening pays £400.'],
    [400, 'Our treasurer has found £400.'],
    [400, 'The committee has £400.'],
    [400, 'The PTA gives us £400 for the filming.'],
    [400, 'We raised £400 for the film.'],
    [400, 'The school has put in £400 for a film.'],
    [400, "We've collected £400 for you."],
    [900, "The couple's parents pay £900 for the film."],
    [400, 'An allowance of £400 is there for you.'],
    [400, 'You get £400 and food.'],
    [400, 'Food and £400.'],
    [400, 'Lunch, petrol and £400.'],
    [400, 'Hotel is paid, £400 a day.'],
    [400, 'Hotel and £400 a day.'],
    [450, 'The company pays £450 a day.'],
    [450, 'A firm in town pays, £450 for the day.'],
    [600, 'We cannot pay you £1,000, but £600 we can.'],
    [600, '£1,000 is too much for us, £600 would be fine.'],
  ])('%i: %s', (amount, way) => expect(amountIn(`${ASKED}? ${way}`)).toBe(amount));
});
