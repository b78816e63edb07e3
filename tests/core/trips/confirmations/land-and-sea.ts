/** Invented confirmations of trains, ferries and buses. */
import type { Confirmation } from './shape.ts';

export const landAndSea: readonly Confirmation[] = [
  {
    name: 'a train in one sentence',
    text: 'Train 305 from Milwaukee to Chicago leaves on 13 December 2026 at 17:05 and arrives at 18:34. Carriage 4, seat 12A.',
    legs: ['rail 305 | Milwaukee > Chicago | 2026-12-13T17:05 > 2026-12-13T18:34'],
  },
  {
    name: 'a train by station names and twelve hours',
    text: `Rail ticket
Milwaukee Intermodal Station to Chicago Union Station
Sunday, December 13, 2026
Depart 5:05 PM
Arrive 6:34 PM
Train 340
Total charged: USD 27.00`,
    legs: ['rail 340 | Milwaukee > Chicago | 2026-12-13T17:05 > 2026-12-13T18:34'],
    total: 'USD 2700',
  },
  {
    name: 'a ferry with a passage of check-in times',
    text: `Ferry booking
Sailing: Dover - Calais, Sat 12 Dec 2026, dep. 08:15, arr. 10:50; check-in closes 45 minutes before (07:30).
Paid: total £84.50`,
    legs: ['ferry | Dover > Calais | 2026-12-12T08:15 > 2026-12-12T10:50'],
    total: 'GBP 8450',
  },
  {
    name: 'a night train, German, with its arrival dated and a bed',
    text: `Zug 471
ab Zürich HB 20.12.2026 19:59
an Hamburg Hbf 21.12.2026 08:01
Schlafwagen, Wagen 302`,
    legs: ['rail 471 | Zürich > Hamburg | 2026-12-20T19:59 > 2026-12-21T08:01 | berth'],
  },
  {
    name: 'French, with the hour written by an h',
    text: `Train 6607 Paris Gare de Lyon - Lyon Part Dieu
mardi 15 décembre 2026
Départ 06h58
Arrivée 08h56
Voiture 12, place 44`,
    legs: ['rail 6607 | Paris > Lyon | 2026-12-15T06:58 > 2026-12-15T08:56'],
  },
  {
    name: 'two trains with a change',
    text: `Journey on 17 December 2026
08:04 Hamburg Hbf - 09:48 Berlin Hbf, train 177
10:28 Berlin Hbf - 12:51 Leipzig Hbf, train 1607`,
    legs: [
      'rail 177 | Hamburg > Berlin | 2026-12-17T08:04 > 2026-12-17T09:48',
      'rail 1607 | Berlin > Leipzig | 2026-12-17T10:28 > 2026-12-17T12:51',
    ],
  },
  {
    name: 'a night ferry that says next day, with a cabin',
    text: `Crossing confirmed
Kiel 18:45 to Oslo 10:00 (next day)
2026-12-11
Inside cabin for one`,
    legs: ['ferry | Kiel > Oslo | 2026-12-11T18:45 > 2026-12-12T10:00 | berth'],
  },
  {
    name: 'a bus between airport and town',
    text: `Shuttle ticket
Departs Denver (DEN) 14 Dec 2026 13:45
Arrives Boulder 14:55`,
    legs: ['ride | DEN > Boulder | 2026-12-14T13:45 > 2026-12-14T14:55'],
  },
  {
    name: 'the date after the times, in brackets with its weekday',
    text: `Train no. 12: Leipzig 18:31 to Munich 21:59 (18/12/2026, Friday)`,
    legs: ['rail 12 | Leipzig > Munich | 2026-12-18T18:31 > 2026-12-18T21:59'],
  },
];
