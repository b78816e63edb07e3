/**
 * Who signs with the last words, behind a dash, before a number or beside what they are; and who is named beside "me" or behind a label.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const read = (text: string) => facts(text, '2027-04-12T09:12:00+01:00[Europe/London]', 'leeds');
const asked = 'Could you film our concert in Leeds on Friday 14 May 2027? We can pay £250.';

describe('the last words', () => {
  test.each([
    ['- Dorothea Pell, Unit 14B, 720-555-0121', 'Dorothea Pell', undefined],
    ['Vinny D / Vinny D Studios 914-555-0141', 'Vinny D', 'Vinny D Studios'],
    ['Roz T / 0491 570 156', 'Roz T', undefined],
    ['Sorry again, Lotte Lachs, +49 30 23125 268', 'Lotte Lachs', undefined],
    ['Sorry for the long message, Greta, club mom', 'Greta', undefined],
    ['Text me back by tomorrow - Priya S., 805-555-0119', 'Priya S', undefined],
    ['Tell us by Friday our kid. Donna 07700 900772', 'Donna', undefined],
    ['Ping me! Anders (Pebble Works), anders@pebble.example', 'Anders', 'Pebble Works'],
    ['Let me know :) Marit Holm | 020 7946 0321', 'Marit Holm', undefined],
    ['Hope so 🙏 Kiri Tane 021 555 0127', 'Kiri Tane', undefined],
    ['Ring the office, 020 7946 0321', undefined, undefined],
    ['Reception 020 7946 0321', undefined, undefined],
    ['My number is 07700 900318', undefined, undefined],
    ['Total, deposit included, 020 7946 0321', undefined, undefined],
    ['DM or 07700 900318', undefined, undefined],
  ])('%j', (foot, name, organisation) => {
    const { contactName, organisation: body } = read(`Hello, ${asked} ${foot}`);
    expect([contactName, body]).toEqual([name, organisation]);
  });

  test('who begins with less of a name has it in full there', () => {
    expect(read(`Kit - Gav. ${asked} Gavin Ollers, Steamlight AV, 07700 900377`).contactName).toBe('Gavin Ollers');
  });
});

describe('who is named beside "me" or behind a label', () => {
  test.each([
    ['Replies to me, B. Pomfret, on 07700 900 318 please.', 'B. Pomfret'],
    ['Questions to me, Arne Folk, Tel. 030 23125 200', 'Arne Folk'],
    ['Queries to Gwendolyn Pell, Procurement Officer, 020 7946 0331.', 'Gwendolyn Pell'],
    ['Quotations to Mr Tom Ash, quoting the number above.', 'Tom Ash'],
    ['Rückfragen an Jana Kiel, Tel. 030 23125 200', 'Jana Kiel'],
    ['\nEnquiries: Lachie Penn, 0491 570 159', 'Lachie Penn'],
    ['\nNombre: Remedios Agua', 'Remedios Agua'],
    ['\nAnrufer: Herr Dalibor Simm', 'Dalibor Simm'],
    ['Ask for Pavithra 🙏', 'Pavithra'],
    ['Captain Thunder here (mom calls me Dana Pohl).', 'Dana Pohl'],
    ["It's Ayanda hey, Ayanda Brink, we met.", 'Ayanda Brink'],
    ['This is Donal Crean out in Granard.', 'Donal Crean'],
    ['Invoices to me, Monday, on paper.', undefined],
    ['Questions to the Events Manager, please.', undefined],
  ])('%j', (words, name) => expect(read(`${asked} ${words}`).contactName).toBe(name));
});
