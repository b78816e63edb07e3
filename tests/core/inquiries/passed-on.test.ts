/**
 * Old mails below a few words: read where they are passed on, left alone where they are only answered.
 */
import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

const asked = 'Hi Ravi, we need our land fair filmed in Fargo on 12 December. Be here at 7am, done by 4pm. $600 for the day.';
const head = ['From: Annelise Brodeur <annelise@maplefair.example>', 'Sent: Tuesday, November 24, 2026 4:15 PM', 'To: Ravi'];
const marked = (lines: readonly string[], mark = '> '): string => lines.map((line) => mark + line).join('\n');
const whole = { start: '2026-12-12', firstCall: '2026-12-12T07:00', place: 'Fargo', contactEmail: 'annelise@maplefair.example' };

describe('passed on', () => {
  test.each([
    ['a mail below its head', `Kit, over to you, not my thing. Ravi\n\n${head.join('\n')}\n\n${asked}`],
    ['a mail with marks of quoting', `Kit, can you? My knee again.\nRavi\n\n${marked([...head, '', asked])}`],
    ['marks of any depth', `Kit, can you? My knee again.\nRavi\n\n${marked([...head, '', asked], '>'.repeat(40) + ' ')}`],
    [
      'by one who stays out of it, whatever week that is',
      `Kit, I'm slammed that week. All yours if you want it, talk to her straight. Ravi\n\n${marked([...head, '', asked])}`,
    ],
    ['of which nobody here is', `Kit, this came to our inbox and isn't ours. Would you write her? Ravi\n\n${marked([...head, '', asked])}`],
    [
      'below a line that names its writer',
      `Hi Kit, you are better at this than me so here. – Ravi\n\nOn Tue, Nov 24, 2026 at 4:15 PM Annelise Brodeur <annelise@maplefair.example> wrote:\n${marked([asked])}`,
    ],
  ])('%s', (_, text) => {
    expect(facts(text)).toMatchObject(whole);
    expect(facts(text).contactName).not.toBe('Ravi');
  });

  test('what is written below the quoted mail is the sender’s again', () => {
    const { fields } = readAt(
      `Begin forwarded message:\n\n${marked([...head, '', asked])}\n\nKit, please tell me by December 1 whether you can.\nRavi`,
    );
    expect(fields).toMatchObject({ start: '2026-12-12', replyBy: '2026-12-01T23:59' });
  });
});

describe('only answered', () => {
  const old = `On Mon, Nov 23, 2026 at 4:15 PM Annelise Brodeur <annelise@maplefair.example> wrote:\n${marked([asked])}`;
  test.each([
    ['who asks for another job', `Can you film our gala in Duluth? The date is open yet.\nRavi\n\n${old}`, undefined],
    ['who names another day', `Hi Kit, can you film our gala in Duluth on 19 December?\nRavi\n\n${old}`, '2026-12-19'],
    [
      'who asks to have it back',
      `Hi Kit, can you film our gala in Duluth on 19 December? Do call them if need be.\nRavi\n\n${old}`,
      '2026-12-19',
    ],
  ])('by one %s', (_, text, start) => expect(facts(text).start).toBe(start));
});

test('a day that this month does not have is in the next that has it', () => {
  const { replyBy } = facts('Can you film our fair in Fargo on 12 February 2027? Let me know by the 31st.\nAnn Leverett');
  expect(replyBy).toBe('2026-12-31T23:59');
});
