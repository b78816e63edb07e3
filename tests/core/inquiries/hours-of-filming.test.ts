/**
 * Hours at which the wanted filming itself begins, how long it goes on, and hours beside it that are none of mine: each in a message that tells no other.
 */
import { describe, expect, it } from 'vitest';
import { facts, lines } from './reading.ts';

const DAY = '11-13';
/** Call and wrap of a job on Saturday 13 November 2027. */
function hours(told: string): string {
  const { firstCall, lastWrap } = facts(
    `Hi Kit,\n\nI am writing on behalf of the Larkfield Community Fair in Fargo. We would like somebody to film it for us on Saturday 13 November 2027, one person with a camera, and to give us a short film afterwards. ${told} Please let me know what you would charge and whether you are free.\n\nThanks,\nRobin Vane`,
    '2027-08-23T09:12:00-05:00[America/Chicago]',
  );
  const short = (wall: string | undefined): string => wall?.slice(5).replace(`${DAY}T`, '') ?? '-';
  return `${short(firstCall)} > ${short(lastWrap)}`;
}
const each = (list: string, want: string): void => it.each(lines(list))('%s', (told) => expect(hours(told)).toBe(want));
const call = (list: string, want: string): void => it.each(lines(list))('%s', (told) => expect(hours(told).split(' > ')[0]).toBe(want));

describe('when the filming begins', () => {
  call(
    `
    Filming starts at 7 am.
    The shoot begins at 7am.
    Shoot starts 7 am.
    We start filming at 7 am.
    We'd begin filming the interviews at 7 am.
    We start recording the talks at 7 am.
    Breakfast is at 6 am and we shoot from 7 am.
    Crew breakfast at 6 am, shooting from 7 am.
    You'd start by filming the bakers at 7 am.
    Your first job would be the bakers at 7 am.
    Be there for the bakers at 7 am.
    Can you make 7 am?
    Would a 7 am start be OK?
    Is 7 am OK for you to start?`,
    '07:00',
  );
  // An hour that is told before it is the call.
  call(
    `
    Filming starts at 9 am; please be there at 8 am.
    Load-in 8 am, filming starts at 9 am.
    Filming starts with the bakers at 9 am; please check in at the gate at 8 am.
    Load-in is from 8 am and we start filming at 9 am.
    You'd set up from 8 am. Six hours of filming from 9 am.
    Filming starts at 9 am, and please allow an hour to set up before that.`,
    '08:00',
  );
  call(
    `
    The TV crew starts filming at 7 am.
    Guests must be seated before filming starts at 9 am.
    Filming is not allowed before 9 am.
    No filming from 2 pm please.
    There is no filming from noon to 1 pm.
    Be there for the day if you like, the parade is at 4 pm.
    Is 7 am OK for you to talk?
    Would a 7 am call on Monday to discuss it be OK?
    The photo shoot is at 2 pm.
    TV coverage is from 1 pm to 3 pm.
    The clay shoot is from 1 pm to 3 pm.
    The hall booking is from 9am to 4pm.
    I have a job from 9 am to 5 pm.`,
    '-',
  );
});

describe('from and to', () => {
  each(
    `
    1-9pm coverage.
    1 to 9 pm coverage please.
    We're after 1pm to 9pm coverage.
    The job is 1 pm to 9 pm.
    The gig runs from 1 pm to 9 pm.
    This booking would be 1 pm to 9 pm.
    From 10 am to 9 pm there are stalls, but your hours are 1 pm to 9 pm.`,
    '13:00 > 21:00',
  );
});

describe('how long', () => {
  each(
    `
    Six hours from noon.
    It's six hours from noon.
    We'd want six hours of filming, beginning at noon.
    From noon for six hours.
    We need you from noon for six hours.
    You'd be there for six hours from noon.
    Please be there at noon for six hours.`,
    '12:00 > 18:00',
  );
  // Told roughly, it has no end.
  each(
    `
    About six hours from noon.
    We need about six hours, from noon.
    Six hours should do it, say from noon.
    Half a day, from noon.
    From noon on, for about six hours.
    A six-hour day starting at noon.
    6 hour day, noon call.`,
    '12:00 > -',
  );
  call(
    `
    The exhibition lasts six hours from noon.
    Parking costs $3 for two hours from 9 am.
    The power is off for two hours from 9 am.
    It takes an hour from the depot, leaving at 8 am.`,
    '-',
  );
});

describe('only one part is wanted', () => {
  call(
    `
    We would need you for the raffle only, which starts at 4 pm.
    We only need the raffle, which starts at 4 pm.
    Only the raffle needs filming; it starts at 4 pm and is over at 5 pm.
    Just the raffle, from 4 pm to 5 pm.
    We just need the raffle filmed at 4 pm.
    The bit we want filmed is the raffle at 4 pm.
    All we need is the raffle at 4 pm.
    Nothing else but the raffle at 4 pm is to be filmed.
    Could you film only the raffle? It's at 4 pm.
    You'd film the raffle only, at 4 pm.
    The raffle at 4 pm is all we need.
    The raffle is the only thing we need filmed. It is at 4 pm.`,
    '16:00',
  );
  call('We only need the raffle, which starts at 4 pm, but do come at 3 pm to set up.', '15:00');
  call(
    `
    We only need the speeches, not the dinner at 7 pm.
    We only need the speeches. Dinner is at 7 pm.
    Only the mayor arrives at 4 pm.
    Only the café opens at 8 am.
    All we need is a price, and the fair opens at 10 am.
    Is it possible to film just the raffle (around 4 pm) and the finale?`,
    '-',
  );
  // A price, a place or what follows is no other part.
  call(
    `
    We only want the raffle filmed at 4 pm and the fee is $200.
    We only need the raffle filmed, at 4 pm and the venue is the Grand.
    We just want the raffle filmed at 4 pm and then the car leaving.`,
    '16:00',
  );
});

describe('hours that are not settled are asked about', () => {
  call(
    `
    Call time TBC, likely 8am.
    Arrival is at 8 am if we get the hall early, otherwise 10 am.
    Your call is 8 am (to be confirmed).
    Please come at 8 am, but we still have to confirm that.`,
    '-',
  );
  call(
    `
    We'd need you at 8 am, and you'll probably film the stalls first.
    We'd need you at 8 am, I think.
    Call time is probably 8 am.
    Please be there at 8 am if you can.
    Come at around 8 am.`,
    '08:00',
  );
});

describe('an hour that takes the place of another', () => {
  call(
    `
    Please arrive at 8 am. Sorry, make that 9 am.
    Please arrive at 8 am. Correction: 9 am.
    Please arrive at 8 am, or rather 9 am.
    The call moves from 8 am to 9 am.
    The call has been pushed back from 8 am to 9 am.
    The call was 8 am but is 9 am now.
    We had planned on you arriving at 8 am; it is 9 am now.`,
    '09:00',
  );
});

describe('hours of others', () => {
  call(
    `
    Stewards need to be on site by 8 am.
    My colleague Jo will be at the venue from 1.
    We will be there from 8 to decorate.
    We set up the chairs at 9.
    There is a rehearsal at 11, which you do not need to attend.`,
    '-',
  );
  each(
    `
    Come at 9 am. The bar shuts at 11 pm.
    Come at 9 am. The children leave at 3 pm.
    Come at 9 am. Lunch is until 2 pm.
    Come at 9 am. My colleague stays till 6 pm.
    Come at 9 am. The photographer stays till 6 pm.`,
    '09:00 > -',
  );
  each('Come at 9 am. The show ends at 10 pm and the load-out takes an hour.', '09:00 > 23:00');
  call('Please be pitch-side by 2:15 pm.', '14:15');
});
