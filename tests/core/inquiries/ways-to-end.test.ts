/**
 * Ways of saying one thing: whatever the words, the hour of the wrap and the time to answer by are found, and no other time is taken for them.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const lines = (list: string): string[] => list.trim().split(/\n\s*/);
const message = (way: string): string =>
  `Hi Kit,\nCan you film our annual gala on Saturday 12 December in Fargo? ${way}\nThanks,\nAnn Leverett`;

describe('wrap at five', () => {
  const ways = lines(`
    Wrap 5pm.
    We wrap at 5pm.
    Wrap is around 5pm.
    Finished by 5pm.
    We finish at 5pm.
    You'd be finished by 5pm.
    All done by 5pm.
    It's all over by 5pm.
    It'll be over by 5pm.
    Everything ends at 5pm.
    The day ends at 5pm.
    End of day is 5pm.
    End time 5pm.
    End: 5pm
    You can leave at 5pm.
    You can pack up at 5pm.
    You can head home at 5pm.
    You can head off at 5pm.
    You're released at 5pm.
    You'll be away by 5pm.
    You'd be on the road by 5pm.
    You're free from 5pm.
    Free to leave at 5pm.
    You'd be off the clock at 5pm.
    Out by 5pm.
    Out of the building by 5pm.
    We have to be out by 5pm.
    We must vacate by 5pm.
    The hall must be empty by 5pm.
    The room has to be clear by 5pm.
    Venue locks up at 5pm.
    They lock the doors at 5pm.
    The caretaker locks up at 5pm.
    De-rig complete by 5pm.
    Strike done by 5pm.
    Load-out 5pm.
    Get-out by 5pm.
    Tear down finished by 5pm.
    Packed up by 5pm.
    Packed away by 5pm.
    Pack-down done by 5pm.
    Hard stop at 5pm.
    Hard finish 5pm.
    Curfew is 5pm.
    We close at 5pm.
    Closes at 5pm.
    Things wind up at 5pm.
    It winds down at 5pm.
    Should wrap up by 5pm.
    Until 5pm.
    It goes until 5pm.
    It runs to 5pm.
    We'd need you till 5pm.
    Stay until 5pm please.
    Cover until 5pm.
    Coverage through 5pm.
    Gone by 5pm.
    Home by 5pm.
    Done at 5pm.
    Done and dusted by 5pm.
    Finish time 5pm.
    Finishing at 5pm.
    Expected finish 5pm.
    Estimated wrap: 5pm.
    Est. wrap 1700.
    5pm finish.
    5pm wrap.
    5pm out.
    Knock off at 5pm.
    Clock off at 5pm.
    Down tools at 5pm.
    Shift ends 5pm.
    Your day is done at 5pm.
    Lights out at 5pm.
    We call it a day at 5pm.
    Conclude at 5pm.
    The programme concludes at 5pm.
    It should all be wrapped by 5pm.
    You should be clear by 5pm.
    You'd be clear of the site by 5pm.
    Off site by 5pm.
    Off-site 1700.
    We let you go at 5pm.
    You'll be let go at 5pm.
    Departure 5pm.
    Depart at 5pm.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(`Call 9am. ${way}`)).lastWrap).toBe('2026-12-12T17:00'));
});

describe('an answer by 1 December', () => {
  const ways = lines(`
    Let me know by 1 December.
    Please reply by 1 December.
    Please get back to me by 1 December.
    I need to know by 1 December.
    We need an answer by 1 December.
    Can you answer by 1 December?
    Could you confirm by 1 December?
    Please respond no later than 1 December.
    Reply before the end of 1 December.
    RSVP 1 December.
    RSVP by 1 December.
    Deadline for quotes is 1 December.
    Quotes due 1 December.
    Quote by 1 December please.
    Could you quote by 1 December?
    Send a price by 1 December.
    Send us your rate by 1 December.
    We're deciding on 1 December.
    We decide on 1 December.
    We'll decide on 1 December.
    I have to tell my boss by 1 December.
    I have to tell the client by 1 December.
    I must book someone by 1 December.
    We have to book by 1 December.
    We want to lock crew by 1 December.
    We need to lock this in by 1 December.
    We're confirming crew on 1 December.
    We're finalising crew by 1 December.
    I'm holding the slot until 1 December.
    I'll hold it for you until 1 December.
    I can hold the date until 1 December.
    The offer stands until 1 December.
    Answer by 1 December please.
    Answers by 1 December.
    An answer by 1 December would be great.
    A reply by 1 December would be appreciated.
    A yes or no by 1 December would help.
    A quick yes/no by 1 December would be ace.
    Your answer by 1 December helps us a lot.
    I'd appreciate a reply by 1 December.
    I'd be grateful for an answer by 1 December.
    I would be glad to hear by 1 December.
    Looking forward to your reply by 1 December.
    Hoping to hear by 1 December.
    Hope to hear from you by 1 December.
    We'd love to hear by 1 December.
    Drop me a line by 1 December.
    Give me a shout by 1 December.
    Give me a ring by 1 December.
    Give us a call by 1 December.
    Call me by 1 December.
    Text me by 1 December.
    Ping me by 1 December.
    Shoot me a message by 1 December.
    Write back by 1 December.
    Write to me by 1 December.
    Email me by 1 December.
    Message me by 1 December.
    Tell me by 1 December.
    Tell us by 1 December if you can.
    Say yes or no by 1 December.
    Say by 1 December.
    Shout by 1 December.
    Holler by 1 December.
    Advise by 1 December.
    Please advise by 1 December.
    Kindly revert by 1 December.
    Kindly confirm your availability by 1 December.
    Confirm availability by 1 December.
    Availability by 1 December please.
    Need to hear by 1 December.
    Need a yes by 1 December.
    Need your OK by 1 December.
    Need your decision by 1 December.
    Decision needed by 1 December.
    Decision by 1 December.
    Reply needed by 1 December.
    Response required by 1 December.
    Respond by: 1 December
    Reply by: 1 December
    Answer by: 1 December
    Please indicate interest by 1 December.
    Express interest by 1 December.
    Register your interest by 1 December.
    Proposals by 1 December.
    Submit your quote by 1 December.
    Bids close 1 December.
    Tenders close on 1 December.
    Please return your quote by 1 December.
    We'd need your quote by 1 December.
    We'd want a firm answer by 1 December.
    I'd need a firm yes by 1 December.
    If I don't hear by 1 December I'll ask someone else.
    If I haven't heard by 1 December I'll move on.
    Client wants names by 1 December.
    The client needs a name by 1 December.
    Are you in? I need to know by 1 December.
    Could we have your answer by 1 December?
    May I have a reply by 1 December?
    May we hear from you by 1 December?
    We have to sign off crew by 1 December.
    Any chance of an answer by 1 December?
    Can I get a yes by 1 December?
    Can you let me know either way by 1 December?
    Just let me know either way by 1 December.
    Yes or no by 1 December?
    Reply by 1 December latest.
    Last day to answer: 1 December.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).replyBy).toBe('2026-12-01T23:59'));
});

describe('a time that is no time to answer by', () => {
  const ways = lines(`
    We need the edit by 1 December.
    The invoice is due by 1 December.
    We announce the line-up on 1 December.
    Tickets go on sale 1 December.
    I'm away until 1 December.
    The posters go to print by 1 December.
    We pay by 1 December.
    Early bird closes 1 December.
    Speakers must register by 1 December.
    The hall is booked until 1 December.
    Our board meets on 1 December.
    On the last day we are done at 21:00.
    The last day is 1 December for tickets.
    The final call for the band is at 9pm.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).replyBy).toBeUndefined());
});
