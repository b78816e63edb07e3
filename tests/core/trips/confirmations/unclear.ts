/** Confirmations that leave something open, and texts that are none: what must be asked, and nothing else taken. */
import type { Confirmation } from './shape.ts';

export const unclear: readonly Confirmation[] = [
  {
    name: 'a date that is two, hours that may be of the evening',
    text: 'Flight: 7Q 21, 03/04/2027, Denver (DEN) 9:05 - Chicago (ORD) 12:30',
    legs: ['flight 7Q 21 | DEN > ORD | ? > ? | depart arrive'],
  },
  {
    name: 'a date that is two, settled by another that is one',
    text: `7Q 21, 03/04/2027, Denver (DEN) 09:05 - Chicago (ORD) 12:30
7Q 22, 17/04/2027, Chicago (ORD) 14:05 - Denver (DEN) 15:50`,
    legs: [
      'flight 7Q 21 | DEN > ORD | 2027-04-03T09:05 > 2027-04-03T12:30',
      'flight 7Q 22 | ORD > DEN | 2027-04-17T14:05 > 2027-04-17T15:50',
    ],
  },
  {
    name: 'it would arrive before it leaves: the day of arrival is asked',
    text: `Flight ZQ 700 Denver (DEN) - Frankfurt (FRA)
11 Dec 2026, departs 16:50, arrives 10:05`,
    legs: ['flight ZQ 700 | DEN > FRA | 2026-12-11T16:50 > ? | arrive'],
  },
  {
    name: 'a weekday on which the date does not fall',
    text: `Flight ZQ 412, Monday 15 December 2026, Duluth (DLH) 06:15, Chicago (ORD) 07:40`,
    legs: ['flight ZQ 412 | DLH > ORD | ? > ? | depart'],
  },
  {
    name: 'a town of many states, more than one of which could be reached in time',
    text: 'You leave Springfield on 14 December 2026 at 10:00 by train and arrive in Chicago at 14:00.',
    legs: ['rail | ? > Chicago | 2026-12-14T10:00 > 2026-12-14T14:00 | from'],
  },
  {
    name: 'a town of many countries, of which one could be reached in time',
    text: 'You leave Portland on 14 December 2026 at 10:00 by train and arrive in Seattle at 14:00.',
    legs: ['rail | Portland > Seattle | 2026-12-14T10:00 > 2026-12-14T14:00'],
  },
  {
    name: 'a town of many states, with its state beside it',
    text: 'Train from Springfield, IL to Chicago, IL on 14 December 2026: dep. 10:00, arr. 13:20.',
    legs: ['rail | Springfield > Chicago | 2026-12-14T10:00 > 2026-12-14T13:20'],
  },
  {
    name: 'no arrival',
    text: 'Flight ZQ 412 on 14 Dec 2026 from Duluth (DLH) to Chicago (ORD) departs at 06:15.',
    legs: ['flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > ? | arrive'],
  },
  {
    name: 'no date at all',
    text: 'Flight ZQ 412 from Duluth (DLH) 06:15 to Chicago (ORD) 07:40',
    legs: ['flight ZQ 412 | DLH > ORD | ? > ? | depart'],
  },
  {
    name: 'a second flight without a date: that of the first is not its date',
    text: `Flight ZQ 412, Monday 14 December 2026
Duluth (DLH) 06:15
Chicago (ORD) 07:40

Flight ZQ 415
Chicago (ORD) 17:55
Duluth (DLH) 19:30`,
    legs: ['flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40', 'flight ZQ 415 | ORD > DLH | ? > ? | depart'],
  },
  {
    name: 'the same with the date under the times of the first',
    text: `06:15 Duluth (DLH)
07:40 Chicago (ORD)
14 Dec 2026, ZQ 412

17:55 Chicago (ORD)
19:30 Duluth (DLH)
ZQ 415`,
    legs: ['flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40', 'flight ZQ 415 | ORD > DLH | ? > ? | depart'],
  },
  {
    name: 'neither year nor weekday',
    text: 'Flight ZQ 412 on 14 December, Duluth (DLH) 06:15, Chicago (ORD) 07:40',
    legs: ['flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40 | depart'],
  },
  {
    name: 'no year, but a weekday that says it',
    text: 'Flight ZQ 412 on Thursday 14 January, Duluth (DLH) 06:15, Chicago (ORD) 07:40',
    legs: ['flight ZQ 412 | DLH > ORD | 2027-01-14T06:15 > 2027-01-14T07:40'],
  },
  {
    name: 'times that do not agree with the length beside them',
    text: `Flight ZQ 412, 14 Dec 2026, Duluth (DLH) 06:15, Chicago (ORD) 07:40. Flight time 2 h 25 min.`,
    legs: ['flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > ? | arrive'],
  },
  {
    name: 'neither train nor ferry nor flight is said',
    text: 'Leipzig 18:31 to Munich 21:59, 18 December 2026',
    legs: ['? | Leipzig > Munich | 2026-12-18T18:31 > 2026-12-18T21:59 | mode'],
  },
  {
    name: 'a departure at a time that the clock skips',
    text: 'Flight ZQ 5, 14 March 2027, Chicago (ORD) 02:30, Denver (DEN) 04:05',
    legs: ['flight ZQ 5 | ORD > DEN | 2027-03-14T02:30 > 2027-03-14T04:05 | depart'],
  },
  { name: 'a mail without a journey', text: 'Hello Robin, thank you for the call on 14 December at 10:00. Best, Kim', legs: [] },
  { name: 'a receipt alone', text: 'Receipt 4471\nPaid on 2 Dec 2026 at 10:22\nTotal: EUR 44.00', legs: [], total: 'EUR 4400' },
  { name: 'nothing that is read', text: '????', legs: [] },
];
