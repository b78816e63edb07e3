/**
 * A mail that its writer takes up again: what the new words do not say stands in the old one, and what they change is changed.
 */
import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

const asked = 'Hi Kit, could you film our land fair in Fargo on Saturday 12 December? Be here at 7am, done by 4pm. We have $600.';
const marked = (text: string, mark = '> '): string =>
  text
    .split('\n')
    .map((line) => mark + line)
    .join('\n');
const wrote = 'On Mon, Nov 23, 2026 at 4:15 PM Annelise Brodeur <annelise@maplefair.example> wrote:';
const old = `${wrote}\n${marked(`${asked}\nAnnelise Brodeur, Maple Fair Society`)}`;
const whole = {
  start: '2026-12-12',
  end: '2026-12-12',
  firstCall: '2026-12-12T07:00',
  lastWrap: '2026-12-12T16:00',
  place: 'Fargo',
  role: 'shoot',
  budget: { amount: 600, currency: 'USD', per: 'job' },
};

describe('taken up again', () => {
  test.each([
    ['to remind of it', 'Hi Kit, any news?\nAnnelise', {}],
    ['to ask whether it came', 'Did you get my mail? I have heard nothing.\nAnnelise', {}],
    ['to push it up', 'Bumping this up in case you missed it.\n\nAnnelise', {}],
    ['with a day by which to answer', 'Just checking in. I would need to know by Friday.\nAnnelise', { replyBy: '2026-11-27T23:59' }],
    ['to mend the day', "Sorry, wrong Saturday! It's December 19, not the 12th. The rest stands.\nAnnelise", days('2026-12-19')],
    [
      'to mend the offer',
      'Typo! We have $680, not $600. Everything else is right.\nAnnelise',
      { budget: { ...whole.budget, amount: 680 } },
    ],
    ['to mend the hour', "Ignore my last note, the call's 6:30am. Rest of it stands.\nAnnelise", { firstCall: '2026-12-12T06:30' }],
    ['to mend the town', "Small change: it's now in Moorhead, same day, same times.\nAnnelise", { place: 'Moorhead' }],
    ['to move it', "We've had to push this back to December 19. Are you still free?\nAnnelise", days('2026-12-19')],
    [
      'to answer what was asked',
      'To answer your questions: it is indoors, and yes we can go to $700.\nAnnelise',
      { budget: { ...whole.budget, amount: 700 } },
    ],
    [
      'by nobody who signs',
      'Oh dear, a slip of the finger: $680 I meant!',
      { budget: { ...whole.budget, amount: 680 }, contactName: 'Annelise Brodeur' },
    ],
    ['to take on', "Happy with $650. Let's book it.\nAnnelise", { budget: { ...whole.budget, amount: 650 } }],
  ])('%s', (_, words, changed) => expect(facts(`${words}\n\n${old}`)).toMatchObject({ ...whole, ...changed }));

  test.each([
    ['a head without marks', `From: Annelise Brodeur\nSent: Monday, November 23, 2026 4:15 PM\nTo: Kit\n\n${asked}`],
    ['a head with marks', marked(`From: Annelise Brodeur\nSent: Monday, November 23, 2026 4:15 PM\n\n${asked}`)],
    ['a line of an original', `-----Original Message-----\nFrom: Annelise Brodeur\nSent: Monday, November 23, 2026\n\n${asked}`],
    ['marks alone', marked(asked)],
  ])('below %s', (_, mail) => expect(facts(`Any news on this?\n\nAnnelise\n\n${mail}`)).toMatchObject(whole));

  test('by a colleague who says that it holds', () => {
    const words =
      'Hi Kit, my colleague wrote to you, it went under I think. The date is the same as below, the fee is now $650.\n\nThanks\nRobin Karsh';
    expect(facts(`${words}\n\n${old}`)).toMatchObject({ ...whole, budget: { ...whole.budget, amount: 650 }, contactName: 'Robin Karsh' });
  });
  test('what was told of other days is told of those to which they moved', () => {
    const days2 = asked.replace('Saturday 12 December', '12 and 13 December');
    expect(facts(`We are a week later: 19 and 20 December. Rest as below.\nAnnelise\n\n${wrote}\n${marked(days2)}`)).toMatchObject({
      start: '2026-12-19',
      firstCall: '2026-12-19T07:00',
      lastWrap: '2026-12-20T16:00',
    });
  });
});

function days(day: string) {
  return { start: day, end: day, firstCall: `${day}T07:00`, lastWrap: `${day}T16:00` };
}

describe('left open', () => {
  test('an hour that is moved by so much', () => {
    const fields = facts(`It is an hour earlier than I told you, all else as below.\nAnnelise\n\n${old}`);
    expect(fields).toMatchObject({ start: '2026-12-12', place: 'Fargo' });
    expect(fields.firstCall).toBeUndefined();
  });
  test('a day that is added', () => {
    const { fields, questions } = readAt(`We have added 13 December, so it would be two days.\nAnnelise\n\n${old}`);
    expect(fields.start).toBeUndefined();
    expect(questions.map(({ field }) => field)).toContain('start');
  });
  test('another weekday', () => {
    const { fields } = readAt(`Could we make it the Sunday instead? Everything else is the same.\nAnnelise\n\n${old}`);
    expect(fields.start).toBeUndefined();
    expect(fields).toMatchObject({ place: 'Fargo', role: 'shoot' });
  });
});

describe('not taken up', () => {
  test.each([
    ['thanks for the film', 'Thanks so much for the film, everyone loved it!'],
    ['somebody else was found', 'Sorry Kit, we have found somebody else now. Thanks anyway for your reply.'],
    ['the deposit', 'Could you send me your bank details for the deposit?'],
    ['it is booked', 'All confirmed then, see you on the 12th!'],
    ['when the film comes', 'Any idea when the film will be ready?'],
    ['what I eat', "Great, I've put you down. One more thing: what do you eat?"],
    ['a no', 'No problem at all, thanks for letting me know so quickly. Next time!'],
    ['called off', 'Sorry, change of plan, the fair is cancelled this year.'],
  ])('%s', (_, words) => expect(readAt(`${words}\nAnnelise\n\n${old}`).isInquiry).toBe(false));

  test.each([
    [
      'my own mail',
      `Any news?\n\nOn Mon, Nov 23, 2026 Kit wrote:\n${marked('Happy to film on 12 December in Fargo for $900. Let me know by Friday.')}`,
    ],
    ['a mail of last year', `Any news?\nAnnelise\n\n${old.replace('2026', '2025')}`],
  ])('%s', (_, text) => expect(facts(text).start).toBeUndefined());

  test('another job of the same writer', () => {
    const fields = facts(`A different one this time: can you film our quiz night in Duluth on 5 March 2027?\nAnnelise\n\n${old}`);
    expect(fields).toMatchObject({ start: '2027-03-05', place: 'Duluth' });
    expect(fields.firstCall).toBeUndefined();
    expect(fields.budget).toBeUndefined();
  });
});

test('deeper marks within a mail that is passed on are those of an older one', () => {
  const older = 'From: Tamsin Beck\nWe paid $900 to Ravi for the film of 12 November. Tamsin Beck, 218-555-0119';
  const text = `Kit, one for you? I can't.\nRavi\n\n> Begin forwarded message:\n> From: Annelise Brodeur <annelise@maplefair.example>\n>\n${marked(`${asked}\nAnnelise Brodeur`)}\n>\n${marked(older, '>> ')}`;
  expect(facts(text)).toMatchObject({ ...whole, contactName: 'Annelise Brodeur', contactEmail: 'annelise@maplefair.example' });
});
