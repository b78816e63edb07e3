/**
 * Towns that a sentence only mentions: none is where the job is, also where no other town is told.
 */
import { describe, expect, it } from 'vitest';
import { facts, lines } from './reading.ts';

const placeOf = (words: string, where = ''): string =>
  facts(`Hi Kit,\n\nCould you film our gala on Saturday 12 December${where}? ${words}\n\nThanks,\nRobin Farley`, undefined, 'leeds')
    .place ?? '-';

describe('A town that is only mentioned', () => {
  const mentioned = lines(`
    Last year we did it in Whitby and it was a washout.
    My partner grew up in Cork and still has the accent.
    Our usual videographer has moved to Bristol.
    We found you through a friend in Otley.
    The cake is from a bakery in Whitby.
    The money goes to a hospital in Kampala.
    The crew hotel is in Knaresborough.
    We have $1,500 in Singapore dollars.
    The nearest station is Thirsk, twenty minutes by taxi.
    Follow signs for Pateley Bridge and then turn right.
    The best man is called Preston.
    The theme is Casablanca.
    The Bishop of Durham gives the blessing.
    We're up against St Albans in the final.
    We're doing the honeymoon in Florence.
    I'm in Lisbon this week so replies may be slow.
    I know you're in Hull so it isn't far.
    We looked at Bristol but it was all booked.
    Please post the stick to Grandma in Aberdeen.
    Invoice address: Tarn Valley Housing, 12 High Street, Bradford BD1 2AB.
    There'll be a Cheddar board at ten.
    We have a film shot in Morocco that we like.
    Go past the Malton turning.
    We can't afford Harrogate prices.
    Harrogate had a lovely film of theirs.
    Come off at the services on the Wetherby road.
    The venue is Lancaster House.`);
  it.each(mentioned)('%s', (words) => {
    expect(placeOf(words)).toBe('-');
    expect(placeOf(words, ' in Ripon')).toBe('Ripon');
  });
});

describe('How a town is told', () => {
  const told: [words: string, place: string][] = [
    ['The venue is about 20 min from Whitby.', 'Whitby'],
    ['It is not far from Kirkby Lonsdale.', 'Kirkby Lonsdale'],
    ['It is about 20 min from Leeds.', '-'],
    ['We live ten minutes from Skipton.', '-'],
    ["It's at a hotel in the centre of Chester.", 'Chester'],
    ['The party is in a village called Grewelthorpe.', 'Grewelthorpe'],
    ['We are getting together in Burnsall village hall.', 'Burnsall'],
    ['The tent will be in a field at Hutton-le-Hole.', 'Hutton-le-Hole'],
    ['Reading is where it happens.', 'Reading'],
    ['this year it is in hexham btw', 'Hexham'],
    ['The last one was good, and this time we are doing it in Hawick.', 'Hawick'],
    ['The show moved to Bath this year.', 'Bath'],
    ['This is the Hexham gig we talked of.', 'Hexham'],
    ['Is Buxton too far for you?', 'Buxton'],
  ];
  it.each(told)('%s', (words, place) => expect(placeOf(words)).toBe(place));
});
