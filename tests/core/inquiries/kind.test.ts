import { describe, expect, test } from 'vitest';
import { readAt } from './reading.ts';

describe('asks for work', () => {
  test.each([
    'Two day job, Mon 14 & Tues 15 Dec, Fargo. 0700 rig Mon, derig 1900 Tues. $375pd. Pencil or pass by 1700 tomorrow.',
    "Hey it's Lonnie at the curling club, our season opener is Saturday December 12, be there at noon. Call me back by Thursday.",
    'When: December 12\nWhere: Fargo\nWhat: ceilidh\nFee: $275',
    'Kit: Dec 12, proposal at the lighthouse. Need you there at 4:30pm. $200.',
    'The choir weekend moved: it is now 12-13 December. Still $500 for the weekend, still call at 9.30am. Does that suit?',
    'Filming at the DECC in Duluth Dec 12. Available?',
    'Dec 12 free? Camera, Fargo.',
    'Got a wedding Dec 12. Want it?',
    'Would December 12 work for a shoot?',
    'Please hold December 12 for us. Shoot in Fargo.',
    'Keen for a shoot 12 dec?',
    "We're one camera short for Dec 12.",
    'Photographer for 12 December?',
    'I can offer you $400 for filming on December 12.',
    'Videographer needed, 12 December, Jaipur. Kindly confirm.',
    "I'd like to book you for December 12.",
    'Ruth called. Supper, Dec 12. Wants video. Call back.',
    'Vow renewal on December 12, two cameras from 3pm, can you quote?',
    'The film was a hit! Can we book you for next year, December 11?',
    'We have gone with another venue, so the date is now December 12. Are you still able to film?',
    'Könnten Sie am 12. Dezember unsere Tagung filmen?',
    'Pouvez-vous filmer le congrès à Lille le 12 décembre ?',
    '¿Puedes grabar una boda en Segovia el 12 de diciembre?',
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
    'Thanks so much Kit, the film is perfect. Talk soon!',
    'The sound on the gala film drops out at 2:10. Can you fix it by December 12?',
    'We have moved your filming in Winchester as agreed: it is now confirmed for Friday 18 June at 10:00. Nothing further is needed from you.',
    'Order 5531 has been refunded. You returned: one tripod plate, $38.00. We are open until 6 PM through December 23.',
    'Your parking at Pier Street expired at 4.15pm on 11 December. An infringement of $12 was issued. Photos of the vehicle are available online.',
    'Can I borrow your lights on December 12?',
    'Would you be free to babysit on December 12?',
    'Do you want to come to the show on December 12? I have a spare ticket.',
    'Hello, I am an editor from Manila. I can edit your wedding videos for $100. Are you interested?',
    'Available December 10-14 for camera work. Day rate $450. Reel in bio.',
    'Board meeting December 12, 6 PM. Please let me know if you can attend.',
    'Would you give a talk about filming at our club on December 12?',
    'We are looking for an officiant for our ceremony in Fargo on Saturday, December 12. Are you free that day and what do you charge?',
    'Are you available to play for our ceilidh on Friday December 11 in Fargo? What would the fee be?',
    'Could you do a cake for 120 for Saturday December 12? Ballpark $350?',
    "Hi, I'm a sound recordist based in Fargo, $650 a day. Sing out if you need a hand on December 12.",
  ])('%s', (text) => expect(readAt(text)).toEqual({ isInquiry: false, fields: {}, questions: [], spans: [] }));
});
