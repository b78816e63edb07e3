/**
 * Whose an hour, a day and a closing date are: mine by who stands before them, in whatever words; those of others are left alone.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

const message = (way: string): string => `Hi Kit,\nCan you film our gala on Saturday 12 December in Fargo? ${way}\nThanks,\nAnn Leverett`;

describe('from half past four until nine', () => {
  const ways = lines(`
    Arrive 4:30 PM, leave 9:00 PM.
    Come 4:30pm, go 9pm.
    get there 4:30p leave 9p.
    In at 4:30pm, out at 9pm.
    Doors at 5:30pm, you at 4:30pm, and you'd be away by 9pm.
    The choir comes at 3pm, but for you it'd be 4:30pm until 9pm.
    4:30 p.m. to 9 p.m. for you.
    Your day would run from 4:30 p.m. to 9 p.m.
    Gate at 4:30 PM, out at 9 PM.
    Report at 4.30 pm, relieved at 9 pm.
    We would expect you at 4:30 p.m.; departure is at 9 p.m.
    Open evening, 4:30pm to 9pm.
    4:30pm start for u, 9 finish.
    Please reach the venue by 4:30 pm, it will get over by 9 pm.
    Please plan to arrive at 4:30 pm; we close the doors at 9 pm and that's when you're done.
    First shot 4:30pm, last shot around 9pm.
    Graphics op is Shaz, her call is 3pm. Your call is 4:30pm, wrap 9pm.
    Call 4:30pm. The caretaker locks up at 9pm.
    Our presenter Maya comes along. Her call is 5 pm and yours is 4:30 pm. Done by 9pm.
    Dana is producing, her call time is 4:30pm for everyone incl. you. Out by 9pm.
    You'd come at 4:30pm for an author talk and leave at 9pm.
    Start 4:30pm, and we wrap at 9pm. The marquee contractor leaves an hour before.
    You're there from 4:30pm until 9pm. Could you make 3 pm for a quick phone call?
  `);
  test.each(ways)('%s', (way) =>
    expect(facts(message(way))).toMatchObject({ firstCall: '2026-12-12T16:30', lastWrap: '2026-12-12T21:00' }),
  );
});

test('the call of a job is told from the hour that it is not', () => {
  expect(facts(message('B-cam call for the Fargo job is 1 PM, not 11 AM.')).firstCall).toBe('2026-12-12T13:00');
});

test('a morning hour is told by an end that lies before its evening', () => {
  expect(facts(message("Nine o'clock start for you, home by six.")).firstCall).toBe('2026-12-12T09:00');
  expect(facts(message('Come for nine.')).firstCall).toBeUndefined();
});

test('columns under call and wrap are those', () => {
  const table = '\nDate | Where | Call | Wrap\nDec 11 | Fargo | 3:00 PM | 7:30 PM\nDec 12 | Fargo | 1:00 PM | 8:00 PM';
  expect(facts(`Kit, can you film our fair in Fargo, both days?${table}`)).toMatchObject({
    start: '2026-12-11',
    end: '2026-12-12',
    firstCall: '2026-12-11T15:00',
    lastWrap: '2026-12-12T20:00',
  });
});

test('hours of the first and the last day are the ends of all', () => {
  const days = 'Kit, can you film our fair in Fargo on 11 and 12 December?';
  for (const hours of ['8 AM first day, 5:30 PM last day.', 'On at 8:00 AM the first day and wrapped at 5:30 PM the second.'])
    expect(facts(`${days} ${hours}`)).toMatchObject({ firstCall: '2026-12-11T08:00', lastWrap: '2026-12-12T17:30' });
});

describe('hours of others', () => {
  const ways = lines(`
    The museum is open to the public from 10am to 5pm.
    Our usual guy comes at 10am and stays till 4pm.
    I'll be on site from 6am myself.
    The brass meets at 1:30pm.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).firstCall).toBeUndefined());
});

describe('an answer by 4 December', () => {
  const ways = lines(`
    I'd like to know by 4 December.
    Kindly share your charges by 4 December.
    Please acknowledge by 4 December 2026.
    I can wait until 4 December.
    Acceptance to be communicated by 4 December.
    Let me know asap, ideally by 4 December.
    4 December is our cut-off for replies.
    My deadline for crew is 4 December.
    I'm confirming crew on 5 December, so please let me know by 4 December.
    When do I need to know: 4 December.
    I'd love your thoughts by 4 December.
    Tell her by a week from Friday, 4 December.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).replyBy).toBe('2026-12-04T23:59'));
});

test('hours beside today and tomorrow, ends of months and weeks from today', () => {
  expect(facts(message('Need an answer today by 5pm really.')).replyBy).toBe('2026-11-25T17:00');
  expect(facts(message('Let me know tomorrow by 5 p.m.')).replyBy).toBe('2026-11-26T17:00');
  expect(facts(message('Tell me tomorrow morning by 10.')).replyBy).toBe('2026-11-26T10:00');
  expect(facts(message('Let me know by the end of November.')).replyBy).toBe('2026-11-30T23:59');
  expect(facts(message('Let me know by the end of the month.')).replyBy).toBe('2026-11-30T23:59');
  expect(facts(message('Tell her by a week today.')).replyBy).toBe('2026-12-02T23:59');
  expect(facts(message('Answer by the 3rd if you can, the 4th at the very latest.')).replyBy).toBeUndefined();
});

describe('a closing date of others', () => {
  const ways = lines(`
    We will confirm the venue by 4 December.
    I'll let you know by 4 December whether the board agrees.
    We'll send you the running order by 4 December.
    Speakers must confirm by 4 December.
    Tell the caterers by 4 December if you have any allergies.
    The venue needs the numbers by 4 December.
    Book your train by 4 December, it's cheaper.
    The deposit is payable by 4 December.
    We'd order the catering by 4 December.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).replyBy).toBeUndefined());
});

describe('days that are not mine', () => {
  const ways = lines(`
    Hi Kit, the flyer says 5 December, that's wrong, it's 12 December. Can you shoot our fun run in Fargo?
    Hi Kit, as you can't do 5 December we've moved the shoot to 12 December. Are you free? Fargo.
    Hi Kit, we have someone for 5 December already. For 12 December we still need a videographer in Fargo.
    Hi Kit, I'm filming the wedding on 5 December myself. Could you cover 12 December in Fargo?
    Hi Kit, could you film our gala in Fargo on 12 December? If it rains it'll be 19 December.
    Hi Kit, could you film our gala in Fargo on 12 December? The venue visit is planned for 4 December.
    Hi Kit, need a camera op in Fargo, Sat 12 December. Travel on Friday 11 December, paid half.
    Hi Kit, can you be in Fargo by 8am on Saturday 12 December to film our regatta?
  `);
  test.each(ways)('%s', (way) => expect(facts(way)).toMatchObject({ start: '2026-12-12', end: '2026-12-12', days: 1 }));
  test('the date of a letter', () => {
    const letter = '25 November 2026\n\nDear Kit, would you film our fun run in Fargo on Saturday 12 December 2026?';
    expect(facts(letter).start).toBe('2026-12-12');
  });
  test('two things on two days are not one run', () => {
    expect(facts('Hi Kit, we open on 1 December and the launch party is 12 December, could you film that in Fargo?').start).toBeUndefined();
  });
  test('a weekday after a day belongs to the run', () => {
    expect(facts('Hi Kit, can you film our fair in Fargo on 12 December, which is a Saturday, and the Sunday too?').end).toBe('2026-12-13');
  });
});

describe('of a row of hours of several people mine, from half past four until eleven', () => {
  const ways = lines(`
    Kitchen 2pm, AV 3pm, video 4.30pm, guests 7pm, video out 11pm, AV out midnight.
    14:00 staging, 15:00 lighting, 16:30 cameras, 19:00 doors, 23:00 camera out.
    The band loads in at 3pm and sound checks at 5pm. You're in at 4:30pm, band finishes at midnight but you can leave at 11pm.
    The AV firm loads in at 1pm and out at 1am. You: 4:30pm-11pm.
    We have the hall from 1pm to midnight. Please be there at 4:30pm; all over by 11pm.
    Talent call is 2pm; please come at 4:30pm; our usual crew derigs until 1am but you're free at 11pm.
  `);
  test.each(ways)('%s', (way) =>
    expect(facts(message(way))).toMatchObject({ firstCall: '2026-12-12T16:30', lastWrap: '2026-12-12T23:00' }),
  );
});

test('an hour before doors in brackets is of the doors or of the call, and asked about', () => {
  expect(facts(message('Load-in 3 hours prior to doors (7pm). Out by midnight.')).firstCall).toBeUndefined();
});

test('what is told of others and then of me in short is the same for me', () => {
  expect(facts(message("You'd be with our MC from 8am; she'll leave at 6pm, you at 4pm."))).toMatchObject({
    firstCall: '2026-12-12T08:00',
    lastWrap: '2026-12-12T16:00',
  });
});

test('an hour ahead of the hours of the filming is the call; an hour ahead of me by the clock is not', () => {
  expect(facts(message('Filming 11am-2pm; get there an hour ahead.')).firstCall).toBe('2026-12-12T10:00');
  expect(facts(message('Start 10am. Set-up time needed: 1 hour before.')).firstCall).toBeUndefined();
  expect(facts(message('Call 8 am. Our clocks are an hour ahead of you.')).firstCall).toBe('2026-12-12T08:00');
});
