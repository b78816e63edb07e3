/**
 * Who looks for work with the reader, sells to them or complains asks for no work; who hires in the same words does.
 */
import { describe, expect, test } from 'vitest';
import { lines, readAt } from './reading.ts';

const seekers = `
  Hi Kit, I am a final year media student and I am looking for work as a camera assistant from 17 May. I can offer my services at $90 per day.
  Dear Kit, I'm a recent graduate and I would love to assist you on shoots. I am available any weekend in March. My day rate as an assistant is $180.
  My name is Dorian, I am 23 and have finished the film school in June. I am searching an entry as camera assistant and could begin with you on 1 March, also by the day for $150.
  I am a trainee and would like to shadow you on jobs. Would you have anything for me in May, at $80 a day? I have my own tripod and would film whatever you need filmed.
  Hello, I graduated in media this summer. May I send you my reel? I could film for you on 12 March for $100 a day.
`;
const sellers = `
  My team turns raw event footage into finished films in 48 hours, from only $79 per project. Can I book you a 15-minute call on Thursday at 2pm or Friday at 11am?
  Can I book you in for a quick demo on Thursday at 2pm? We cut films for videographers from $79 each.
  I clear out my storage and thought of you: a drone, two years old. New it was $2,200, I give it away for 900. You can look at it on Saturday 13 March from 10 o'clock.
  I'm letting it go for $900: a gimbal and two lights to film with. Have a look on Saturday 13 March at 10am.
  We offer rural houses, perfect for wedding couples and film teams. In May we have free weekends (8-9 May) from $180 a night. If you bring us a couple as a client you receive 5 %. Can we count on you?
`;
const complaints = `
  I'm sorry but we were a bit disappointed. The film that arrived on Friday cuts off before the bouquet, and you were there till 10 on 29 May. We paid $900. Could you please have a look and ring me?
  I was very disappointed with the wedding film. It cuts off after the speech on 12 June. Could you please ring me tomorrow?
`;
const hires = `
  I'm a student in Fargo and we need our graduation show filmed on 12 June in Fargo. Can you do it? We have $300.
  I am a final year student and we are looking for a camera operator for our short film in Fargo on 12 and 13 March, $150 a day.
  I'm looking for camera work on Saturday 12 June in Fargo, a wedding. Could you film it? $500
  I run a small film school in Fargo and want our open day filmed on 12 June, 10 to 4. $400.
  Could we book you for a call-in show we livestream on 12 June in Fargo? $500.
  My team of 12 dancers performs in Fargo on 12 June, could you film us? $300, be there at 5pm.
  Hi, I'm 23 and getting married on 12 June in Fargo. Would you film it? We have $600.
  I was disappointed with our last filmer, so could you film our gala on 12 June in Fargo? $400
  Do you have a price list? We get married in Fargo on 12 June and want the ceremony filmed.
  We've a conference in Fargo on Friday 12 March and I'm a cameraman short for the plenary. Delegates are in from 9. $340/day as usual. Any good to you?
  I'm a photographer down for Saturday 13 March in Fargo. $300, call 8am. Any good?
  Slight change of plan for your shoot with us on Saturday 12 December: the hall has flooded so we've moved the lot to Fargo. Shout if that's a problem.
`;

describe('asks for no work', () => {
  test.each(lines(`${seekers.trim()}\n${sellers.trim()}\n${complaints.trim()}`))('%s', (text) =>
    expect(readAt(text).isInquiry).toBe(false),
  );
});
describe('asks for work', () => {
  test.each(lines(hires))('%s', (text) => expect(readAt(text).isInquiry).toBe(true));
});
