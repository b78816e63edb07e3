import { describe, expect, test } from 'vitest';
import { readAt } from './reading.ts';

describe('asks for work', () => {
  test.each([
    'Two day job, Mon 14 & Tues 15 Dec, Fargo. 0700 rig Mon, derig 1900 Tues. $375pd. Pencil or pass by 1700 tomorrow.',
    "Hey it's Lonnie at the curling club, our season opener is Saturday December 12, be there at noon. Call me back by Thursday.",
    'When: December 12\nWhere: Fargo\nWhat: ceilidh\nFee: $275',
    'Kit: Dec 12, proposal at the lighthouse. Need you there at 4:30pm. $200.',
    'The choir weekend moved: it is now 12-13 December. Still $500 for the weekend, still call at 9.30am. Does that suit?',
  ])('%s', (text) => expect(readAt(text).isInquiry).toBe(true));
});

describe('asks for none', () => {
  test.each([
    'Babysitter needed Saturday December 12, 5pm to 11pm. $20/hour. Let me know by Friday.',
    'Team, the all-hands is moved to Thursday 9 AM in the main conference room. Please bring your laptops.',
    'Are you hiring? I am a camera op with five years experience, free from December 4, day rate $450.',
    "We're closing the studio Dec 24 through Jan 2. If you need gear for a shoot, reserve it by Dec 20.",
    "Got the drive in the mail today, thanks. All 214 clips open fine. I'll pay the $300 on Friday.",
    'Hey man, long time! We should grab a beer Friday, I am in town shooting a film. 7pm at the usual?',
    'Crew: call sheet attached for tomorrow. Call is 6:30 AM at the north lot. See you all there.',
  ])('%s', (text) => expect(readAt(text)).toEqual({ isInquiry: false, fields: {}, questions: [], spans: [] }));
});
