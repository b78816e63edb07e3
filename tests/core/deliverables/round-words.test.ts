import { expect, test } from 'vitest';
import { datesForClient, leftInWords, sendingForClient, standingInWords, type Move } from '../../../core/deliverables/round-words.ts';

const move: Move = { cut: 'rough cut', dueBack: '2026-11-06', came: '2026-11-11', lost: 3, from: '2026-11-20', to: '2026-11-25' };
const film = { what: 'Highlights', title: 'Bakers congress', promised: '2026-11-20' };

test('the client is told what was promised, when notes were due, when they came, and the new date', () =>
  expect(datesForClient({ ...film, due: '2026-11-25', moves: [move] })).toEqual({
    subject: 'Bakers congress: new date for Highlights',
    text: [
      'Highlights was promised for Fri 20 November 2026.',
      'Notes on the rough cut were due on Fri 6 November 2026 and came on Wed 11 November 2026, 3 business days later. Delivery moves by as many, from Fri 20 November 2026 to Wed 25 November 2026.',
      'Please plan with Wed 25 November 2026.',
    ].join('\n'),
  }));

test('a date that was moved by hand since is said too', () =>
  expect(datesForClient({ ...film, due: '2026-11-27', moves: [{ ...move, lost: 1 }] }).text).toContain(
    '1 business day later. Delivery moves by as many, from Fri 20 November 2026 to Wed 25 November 2026.\nIt is now due on Fri 27 November 2026.',
  ));

const sending = { ...film, cut: 'rough cut', pass: 1, included: 2, dueBack: '2026-11-06', due: '2026-11-20', price: null };

test('a cut goes out with the round, the last date for notes and what later notes mean', () =>
  expect(sendingForClient(sending)).toEqual({
    subject: 'Bakers congress: rough cut of Highlights',
    text: [
      'Here is the rough cut of Highlights.',
      'This is the first of 2 rounds of notes that are included.',
      'Please send all notes together, each with its time code, by Fri 6 November 2026.',
      'With notes by then, Highlights is delivered by Fri 20 November 2026; later notes move that date by as many business days.',
    ].join('\n'),
  }));

test('beyond what was agreed, the price of notes stands in it before they are given', () => {
  const { text } = sendingForClient({ ...sending, pass: 3, due: null, price: { hours: '2', editHour: '85', currency: 'USD' } });
  expect(text.split('\n')).toEqual([
    'Here is the rough cut of Highlights.',
    'The 2 rounds of notes that were included are used up: notes on this cut are a further round at USD 170.00. A yes without notes costs nothing.',
    'Please send all notes together, each with its time code, by Fri 6 November 2026.',
  ]);
});

test.each([
  [0, 'No round of notes is included.'],
  [1, 'The 1 round of notes that was included is used up.'],
])('beyond %d rounds, where no price is known', (included, said) =>
  expect(sendingForClient({ ...sending, included, pass: included + 1 }).text.split('\n')[1]).toBe(said),
);

const standing = { cut: 'rough cut', dueBack: '2026-11-06', came: null, lost: 0, notes: 0, ticked: 0 };
test.each([
  [standing, 'notes are due by Fri 6 November 2026.'],
  [{ ...standing, lost: 1 }, 'notes were due on Fri 6 November 2026, 1 business day ago.'],
  [{ ...standing, came: '2026-11-05' }, 'approved without notes on Thu 5 November 2026.'],
  [{ ...standing, came: '2026-11-05', notes: 1 }, '1 note came on Thu 5 November 2026; 0 of 1 done.'],
  [
    { ...standing, came: '2026-11-11', lost: 3, notes: 4, ticked: 4 },
    '4 notes came on Wed 11 November 2026, 3 business days late; all done.',
  ],
])('where a round stands', (given, said) => expect(standingInWords(given)).toBe(`Rough cut: ${said}`));

test.each([
  [2, 0, '2 rounds of notes are included.'],
  [1, 1, '1 round of notes is included, 1 used.'],
  [2, 3, '2 rounds of notes are included, and there was 1 further round.'],
])('of %d rounds %d used', (included, used, said) => expect(leftInWords(included, used)).toBe(said));
