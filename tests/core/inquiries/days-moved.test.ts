/** Days that were going to be it and others in their place, days told by their number in answer to an old mail, and lists that say what each day is for. */
import { describe, expect, test } from 'vitest';
import { daysOf, facts } from './reading.ts';

describe('another day takes the place of the one that was told', () => {
  test.each([
    ['02-12', 'Hi Kit, would you film our gala? The hall couldn’t do 5 February so we’re going with the 12th.'],
    ['02-12', 'Hi Kit, can you film our gala on 5 February? Sorry, the hall is taken so it’ll be a week later, the 12th.'],
    ['02-19', 'Hi Kit, we need a videographer for our gala on 5 February. It has now been moved to a fortnight later, the 19th.'],
    ['02-12', 'Subject: Re: Sat 5 February?\n\nHi, the 5th is off I’m afraid. Would the 12th work for the shoot? Same place, 9am.'],
    ['ask', 'Hi Kit, our gala on 5 February has been postponed by a week. Can you still film it? From 2pm.'],
    ['ask', 'Hi Kit, would you film our gala? The hall couldn’t do 5 February after all. It’s the following Saturday now.'],
  ])('%s: %s', (days, text) => expect(daysOf(text)).toBe(days));

  test.each([
    ['04-17', 'hiya are you free 10 april to film our do\nactually its the 17th of april, need you to film from 12'],
    ['ask', 'Could you film the kids’ circus? They rehearse all week from Wed 19 July, 9 to 12, and show it on the Friday at 4.'],
    [
      'ask',
      'We need a film of a bar mitzvah. The service itself is on 29 January and isn’t filmed. The party’s the next day, you would come at 11.',
    ],
    [
      '06-03',
      'Could you film our wedding on 3 June? In the church there is no filming, then lunch. We fly out the next day. Come at 11am.',
    ],
    ['07-19', 'Could you film our workshop on Wednesday 19 July, 9am to 12? Please let me know by Friday. Be there 8.30.'],
  ])('%s: %s', (days, text) => expect(daysOf(text)).toBe(days));

  test.each([
    ['02-05', 'Hi Kit, filming needed on Saturday 5 February. Our chairman couldn’t do the 5th at first but now he can. 2pm start.'],
    ['02-05', 'Hi Kit, would you film the gala on 5 February? The photographer is not available on the 4th so stills are on the 6th.'],
    ['02-12', 'Hi Kit, can you do 12 February for me? I can’t do the 12th as I’m away. You’d film from 1pm. I’m back on the 19th.'],
  ])('the day holds, %s: %s', (days, text) => expect(daysOf(text)).toBe(days));
});

describe('a number in answer to a quoted mail is of the month of that', () => {
  test.each([
    ['02-09', 'Hi Kit,\n\n> Which day suits for the shoot, the 8th or the 9th of February?\n\nThe 9th please, from 9am.\n\nThanks, Orla'],
    ['05-10', '> so is that the 3rd of May?\nNo, the 10th. We start filming at 10am and would like you there at 9.'],
  ])('%s: %s', (days, text) => expect(daysOf(text)).toBe(days));
});

describe('a list says what each day is for', () => {
  test.each([
    [
      '01-18',
      'Avail check for a videographer:\nShoot: Tuesday 18 January\nCall: 08:00\nWrap: 17:00\nNext shoot: Thu 27 January (other crew)',
    ],
    ['03-14', 'Period of hire: 1 March to 31 March 2028\nShoot day: 14 March 2028\nCall: 8am\nCan you do it as camera operator?'],
    [
      '01-19',
      'CALL SHEET\nDate: Wed 19 Jan 2028\nCamera: you, call 08:30\nTomorrow: Thu 20 Jan, call 06:00 (main unit)\nPlease confirm you can do this one.',
    ],
    ['ask', 'Desired date: 20.03.2028\nAlternative date: 27.03.2028\nTime: 13:00 - 18:00\nOccasion: Christening, videographer wanted'],
    ['03-20,03-27', 'First date: 20.03.2028\nSecond date: 27.03.2028\nOccasion: two christenings, videographer wanted for both'],
    ['05-09..05-10', 'Can you film these?\nTue 9 May - choirs, 10am\nWed 10 May - brass, 9am\nThu 11 May - service, no videography'],
    [
      'ask',
      'We would like a videographer.\nRehearsal: Thursday 8 June 6pm\nWedding day: Saturday 10 June 2pm\nBrunch: Sunday 11 June 10am',
    ],
    ['06-08..06-09', 'We would like a videographer both days.\nRegistration: Thursday 8 June 6pm\nMain event: Friday 9 June 2pm'],
  ])('%s: %s', (days, text) => expect(daysOf(text)).toBe(days));
});

test.each([
  ['2027-03-05T21:00', 'Need a videographer for our club night Friday 5 March, 10 til 4. come at 9'],
  ['2027-03-06T19:00', 'Can you film our 40th on Saturday 6 March? band on at 8, dj til 1. you can come 7'],
  ['2027-03-06T09:00', 'Can you film our rowing club open day on Saturday 6 March? 10 till 3, come at 9'],
  ['2027-03-05T17:00', 'Could you film the school disco on Friday 5 March, 6 till 8? Get there 5.'],
])('what is held at night begins in the evening, %s: %s', (call, text) => expect(facts(text, undefined, 'leeds').firstCall).toBe(call));
