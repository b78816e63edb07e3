/** Invented confirmations of flights, in the layouts that carriers and agents use. A leg: mode, number, from > to, departure > arrival, what is asked. */
import type { Confirmation } from './shape.ts';

export const air: readonly Confirmation[] = [
  {
    name: 'labels and sentences',
    text: `Your booking is confirmed. Reference: K7Q2XM
Passenger: ROBIN AAS
Flight ZQ 412
Duluth (DLH) to Chicago (ORD)
Monday 14 December 2026
Departs 06:15, arrives 07:40
Check-in closes 05:30
Total paid: USD 212.60`,
    legs: ['flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40'],
    total: 'USD 21260',
  },
  {
    name: 'one line a flight, there and back, with short dates and times without a colon',
    text: `Outbound
ZQ 412  DLH-ORD  14DEC26  0615-0740
ZQ 88   ORD-DEN  14DEC26  0905-1055
Return
ZQ 91 DEN-ORD 18DEC26 1310-1640
ZQ 415 ORD-DLH 18DEC26 1755-1930
Fare USD 618.20`,
    legs: [
      'flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40',
      'flight ZQ 88 | ORD > DEN | 2026-12-14T09:05 > 2026-12-14T10:55',
      'flight ZQ 91 | DEN > ORD | 2026-12-18T13:10 > 2026-12-18T16:40',
      'flight ZQ 415 | ORD > DLH | 2026-12-18T17:55 > 2026-12-18T19:30',
    ],
    total: 'USD 61820',
  },
  {
    name: 'blocks with twelve hours, the number last, sold under another number',
    text: `Departure
Mon, Dec 14, 2026 6:15 AM
Duluth International (DLH)

Arrival
Mon, Dec 14, 2026 7:40 AM
Chicago O'Hare (ORD)

Flight ZQ412 operated by 1X 5012
Travel time: 1 h 25 min`,
    legs: ['flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40'],
  },
  {
    name: 'a table',
    text: `| Date | Flight | From | To | Dep | Arr |
| 14 Dec 2026 | ZQ 412 | DLH | ORD | 06:15 | 07:40 |
| 14 Dec 2026 | ZQ 88 | ORD | DEN | 09:05 | 10:55 |`,
    legs: [
      'flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40',
      'flight ZQ 88 | ORD > DEN | 2026-12-14T09:05 > 2026-12-14T10:55',
    ],
  },
  {
    name: 'time before place, date and number under them',
    text: `06:15 Duluth, MN (DLH)
07:40 Chicago, IL (ORD)
Tue 15 Dec 2026
ZQ412

09:05 Chicago, IL (ORD)
10:55 Denver, CO (DEN)
Tue 15 Dec 2026
ZQ88`,
    legs: [
      'flight ZQ 412 | DLH > ORD | 2026-12-15T06:15 > 2026-12-15T07:40',
      'flight ZQ 88 | ORD > DEN | 2026-12-15T09:05 > 2026-12-15T10:55',
    ],
  },
  {
    name: 'German, with arrows, the arrival a day later',
    text: `Buchungsbestätigung
Flug 1X 430 FRA → ORD 12.12.2026 17:05 → 19:25
Rückflug 1X 431 ORD → FRA 19.12.2026 22:30 → 13:45 +1
Gesamtpreis 812,40 EUR`,
    legs: [
      'flight 1X 430 | FRA > ORD | 2026-12-12T17:05 > 2026-12-12T19:25',
      'flight 1X 431 | ORD > FRA | 2026-12-19T22:30 > 2026-12-20T13:45',
    ],
    total: 'EUR 81240',
  },
  {
    name: 'over the date line, arriving before it left on the same date, with the length beside it',
    text: `Flight ZQ 9 leaves Auckland (AKL) 14 Feb 2027 at 23:55 and lands in Honolulu (HNL) 14 Feb 2027 at 09:40. Flight time 8 h 45 min.`,
    legs: ['flight ZQ 9 | AKL > HNL | 2027-02-14T23:55 > 2027-02-14T09:40'],
  },
  {
    name: 'the heading has the date of both, and the names of the towns come twice',
    text: `Duluth to Denver
Wednesday, 16 December 2026

Flight ZQ 412
DLH 06:15
ORD 07:40
Layover in Chicago 1 h 25 min
Flight ZQ 88
ORD 09:05
DEN 10:55`,
    legs: [
      'flight ZQ 412 | DLH > ORD | 2026-12-16T06:15 > 2026-12-16T07:40',
      'flight ZQ 88 | ORD > DEN | 2026-12-16T09:05 > 2026-12-16T10:55',
    ],
  },
  {
    name: 'a length settles that it arrives the next day',
    text: `ZQ 700 Denver (DEN) - Frankfurt (FRA)
Fri 11 Dec 2026, departs 16:50, arrives 10:05
Duration 9 h 15 min`,
    legs: ['flight ZQ 700 | DEN > FRA | 2026-12-11T16:50 > 2026-12-12T10:05'],
  },
  {
    name: 'two dates say that it arrives the next day',
    text: `ZQ 700
Depart: Denver (DEN), 11 Dec 2026, 16:50
Arrive: Frankfurt (FRA), 12 Dec 2026, 10:05`,
    legs: ['flight ZQ 700 | DEN > FRA | 2026-12-11T16:50 > 2026-12-12T10:05'],
  },
  {
    name: 'the arrival named first',
    text: `Flight ZQ 412, 14 December 2026
Arrives Chicago (ORD) 07:40
Departs Duluth (DLH) 06:15`,
    legs: ['flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40'],
  },
  {
    name: 'forwarded, with the times of mails and offices around it',
    text: `From: Travel desk
Sent: Thursday, 19 November 2026 14:02
Subject: your flights

Hi, booked on 19 Nov 2026 at 13:58, see below. Our office is open 08:00 to 17:00, phone +1 218 555 0142.

ZQ 412 on Monday 14 December 2026: Duluth (DLH) 06:15, Chicago (ORD) 07:40. Gate closes 06:00.`,
    legs: ['flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40'],
  },
  {
    name: 'the same flights twice, as a summary and in full',
    text: `Summary: ZQ 412 DLH-ORD 14 Dec 2026 06:15-07:40

Details
Flight ZQ 412
From Duluth (DLH), 14 Dec 2026 06:15
To Chicago (ORD), 14 Dec 2026 07:40`,
    legs: ['flight ZQ 412 | DLH > ORD | 2026-12-14T06:15 > 2026-12-14T07:40'],
  },
  {
    name: 'towns without codes',
    text: `Flight ZQ 88
Chicago 09:05 - Denver 10:55
15/12/2026`,
    legs: ['flight ZQ 88 | Chicago > Denver | 2026-12-15T09:05 > 2026-12-15T10:55'],
  },
  {
    name: 'a code that is a word, in brackets and in a pair',
    text: `ZQ 31, 14 Dec 2026, San Antonio (SAT) 13:10 to Denver (DEN) 14:25
ZQ 32, 18 Dec 2026, DEN-SAT, dep. 15:30, arr. 18:35`,
    legs: [
      'flight ZQ 31 | SAT > DEN | 2026-12-14T13:10 > 2026-12-14T14:25',
      'flight ZQ 32 | DEN > SAT | 2026-12-18T15:30 > 2026-12-18T18:35',
    ],
  },
];
