/** More invented confirmations, written after the reader could read the others: layouts that it had not been made for. */
import type { Confirmation } from './shape.ts';

export const later: readonly Confirmation[] = [
  {
    name: 'a traveller named like a town, a code that is a word, the number under the times',
    text: `Your e-ticket itinerary
Traveler: LINCOLN MADISON    Confirmation code: BOSDEN

DEPART  Sun 13 Dec 2026
8:05 PM  MSP  Minneapolis
9:31 PM  DEN  Denver
ZQ 1187  Economy (V)  Seat 23F  1 stop: none
RETURN  Thu 17 Dec 2026
6:00 AM  DEN  Denver
8:52 AM  MSP  Minneapolis
ZQ 1190
Base fare 188.00 USD, taxes 31.20 USD, Total 219.20 USD`,
    legs: [
      'flight ZQ 1187 | MSP > DEN | 2026-12-13T20:05 > 2026-12-13T21:31',
      'flight ZQ 1190 | DEN > MSP | 2026-12-17T06:00 > 2026-12-17T08:52',
    ],
    total: 'USD 21920',
  },
  {
    name: 'flights that are counted before their numbers',
    text: `Trip ID 88123-4471
Flight 1: 1X 5520 - Thu, 10 Dec - 11:35 MUC to 12:40 LHR (Terminal 2)
Flight 2: 1X 5521 - Mon, 14 Dec - 19:10 LHR to 22:00 MUC`,
    legs: [
      'flight 1X 5520 | MUC > LHR | 2026-12-10T11:35 > 2026-12-10T12:40',
      'flight 1X 5521 | LHR > MUC | 2026-12-14T19:10 > 2026-12-14T22:00',
    ],
  },
  {
    name: 'a crossing of two days that never says ferry',
    text: `Reservation: 4 passengers, 1 car
Outward: Portsmouth to Santander, departing Fri 18 Dec 2026 at 17:15, arriving Sat 19 Dec 2026 at 18:15 local time
Total £311.00`,
    legs: ['? | ? > Santander | 2026-12-18T17:15 > 2026-12-19T18:15 | mode from'],
    total: 'GBP 31100',
  },
  {
    name: 'capitals and slashes',
    text: `DATE 14DEC26 FLT ZQ412 DLH/ORD DEP 0615 ARR 0740
DATE 14DEC26 FLT ZQ088 ORD/DEN DEP 0905 ARR 1055`,
    legs: [
      'flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40',
      'flight ZQ 088 | ORD > DEN | 2026-12-14T09:05 > 2026-12-14T10:55',
    ],
  },
  {
    name: 'the date behind each end',
    text: `Departing from: Oslo Gardermoen (OSL) at 07:10 on 12/12/2026
Arriving in: Copenhagen (CPH) at 08:20 on 12/12/2026`,
    legs: ['flight | OSL > CPH | 2026-12-12T07:10 > 2026-12-12T08:20'],
  },
  {
    name: 'a sleeper in three sentences',
    text: 'Sleeper ticket. Vienna Hbf, dep. 22:43 on 11 Dec 2026. Rome Termini, arr. 10:05 on 12 Dec 2026. Train NJ 40233.',
    legs: ['rail NJ 40233 | Vienna > Rome | 2026-12-11T22:43 > 2026-12-12T10:05 | berth'],
  },
  {
    name: 'a coach from a coach station',
    text: 'Coach 412 Leeds Coach Station 09:30 → York 10:40 | Sat 12 Dec 2026',
    legs: ['ride 412 | Leeds > York | 2026-12-12T09:30 > 2026-12-12T10:40'],
  },
  {
    name: 'times that were and times that are: both are asked',
    text: 'Dear guest, we moved your flight ZQ 88 of 14 December 2026. Old time: ORD 09:05 - DEN 10:55. New time: ORD 12:20 - DEN 14:10.',
    legs: ['flight ZQ 88 | ORD > DEN | ? > ? | depart', 'flight | ORD > DEN | ? > ? | depart'],
  },
  {
    name: 'a hired car is no leg',
    text: 'Mietwagen: Abholung Frankfurt Flughafen 12.12.2026 20:00, Rückgabe 19.12.2026 18:00',
    legs: [],
  },
  { name: 'nor is a hotel', text: 'Hotel: Grand Lake, check in 14 Dec 2026 15:00, check out 16 Dec 2026 11:00', legs: [] },
  {
    name: 'the length without a word for it, a weekday without a year',
    text: `14:05 Toronto Pearson (YYZ), Mon, Nov 30
15:50 Thunder Bay (YQT)
1h 45m, ZQ 7901, nonstop`,
    legs: ['flight ZQ 7901 | YYZ > YQT | 2026-11-30T14:05 > 2026-11-30T15:50'],
  },
  {
    name: 'over the date line westward, two days later by the calendar',
    text: 'Flight ZQ3 LAX-SYD Departs 22:30 Sat 12 Dec 2026 Arrives 08:40 Mon 14 Dec 2026',
    legs: ['flight ZQ 3 | LAX > SYD | 2026-12-12T22:30 > 2026-12-14T08:40'],
  },
  {
    name: 'a night train, to a town of many states of which several are near enough',
    text: `Train 66
Boston South Station 9:30 PM Thu 10 Dec 2026
Washington Union Station 6:15 AM Fri 11 Dec 2026`,
    legs: ['rail 66 | Boston > ? | 2026-12-10T21:30 > 2026-12-11T06:15 | to'],
  },
  {
    name: 'a place on the way is no end',
    text: `E-TICKET RECEIPT
ISSUED: 02 NOV 2026  10:11
FROM  DULUTH (DLH)      TO  DENVER (DEN)
VIA   CHICAGO (ORD)
DEPARTS 14 DEC 2026 06:15   ARRIVES 14 DEC 2026 10:55`,
    legs: ['flight | DLH > DEN | 2026-12-14T06:15 > 2026-12-14T10:55'],
  },
  {
    name: 'hours that count to 24 by their letter, in the middle of the day',
    text: 'Vol 1X 330 Paris CDG 10h15 - Montréal YUL 11h50, le 15 décembre 2026, durée 7h35',
    legs: ['flight 1X 330 | CDG > YUL | 2026-12-15T10:15 > 2026-12-15T11:50'],
  },
  {
    name: 'the date above the times, the way back three days later',
    text: `Outbound flight   Sat, 12 Dec 2026
10:30 - 13:45     London (LGW) - Malaga (AGP)   1X 2301
Inbound flight    Tue, 15 Dec 2026
14:30 - 16:20     Malaga (AGP) - London (LGW)   1X 2302`,
    legs: [
      'flight 1X 2301 | LGW > AGP | 2026-12-12T10:30 > 2026-12-12T13:45',
      'flight 1X 2302 | AGP > LGW | 2026-12-15T14:30 > 2026-12-15T16:20',
    ],
  },
  {
    name: 'harbours that no list has are asked',
    text: 'Ihre Fähre: Gelbhafen - Rotdamm, 13.12.2026, Abfahrt 14:15 Uhr, Ankunft 15:00 Uhr. Check-in bis 13:45 Uhr.',
    legs: ['ferry | ? > ? | 2026-12-13T14:15 > 2026-12-13T15:00 | from to'],
  },
  {
    name: 'tomorrow is no date',
    text: 'Reminder: your train leaves tomorrow at 08:15 from Berlin Hbf to Dresden Hbf, arriving 10:04.',
    legs: ['rail | Berlin > Dresden | ? > ? | depart'],
  },
  {
    name: 'months and days that can be turned round, in the way of writing of one country or the other',
    text: `Bus 9 from Fargo to Winnipeg
Leaves 12/10/2026 8:00 AM
Arrives 12/10/2026 11:55 AM`,
    legs: ['ride 9 | Fargo > Winnipeg | ? > ? | depart'],
  },
  {
    name: 'an arrival dated by its own bracket',
    text: `ZQ 21
Thu 10 Dec 2026
YVR 23:40 Vancouver
YYZ 07:05 Toronto (Fri 11 Dec)`,
    legs: ['flight ZQ 21 | YVR > YYZ | 2026-12-10T23:40 > 2026-12-11T07:05'],
  },
  {
    name: 'where it says by when to be at the port',
    text: 'Ferry: Cairnryan 11:30 -> Larne 13:30 on 2026-12-12. Be at the port by 10:30.',
    legs: ['ferry | Cairnryan > Larne | 2026-12-12T11:30 > 2026-12-12T13:30'],
  },
  {
    name: 'a shuttle from an airport to a town in one sentence, with a price behind it',
    text: 'Your shuttle is booked: from Denver Airport (DEN) to Boulder on 14 Dec 2026, pickup at 15:30, drop-off about 16:45. Price USD 38.00',
    legs: ['? | DEN > Boulder | 2026-12-14T15:30 > 2026-12-14T16:45 | mode'],
    total: 'USD 3800',
  },
  {
    name: 'a flight that is cancelled is asked about, the one in its place is not',
    text: 'We are sorry: flight ZQ 412 Duluth (DLH) - Chicago (ORD) on 14 December 2026, 06:15 - 07:40, is cancelled. You are rebooked on ZQ 414, 14 December 2026, Duluth (DLH) 11:05 - Chicago (ORD) 12:30.',
    legs: [
      'flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40 | depart',
      'flight ZQ 414 | DLH > ORD | 2026-12-14T11:05 > 2026-12-14T12:30',
    ],
  },
  {
    name: 'a cabin by day is no bed',
    text: `Depart Holyhead 20:15 Thu 10 December 2026 Arrive Dublin 23:30
Depart Dublin 08:05 Sun 13 December 2026 Arrive Holyhead 11:20
ferry, with a cabin`,
    legs: [
      'ferry | Holyhead > Dublin | 2026-12-10T20:15 > 2026-12-10T23:30',
      'ferry | Dublin > Holyhead | 2026-12-13T08:05 > 2026-12-13T11:20',
    ],
  },
];
