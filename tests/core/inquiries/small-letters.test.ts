/**
 * Who asks in small letters, by a last word behind a request or a first one with from where; and who is told with a number of their own.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const read = (text: string) => facts(text, '2027-04-12T09:12:00+01:00[Europe/London]', 'leeds');
const asked = 'can u film our show in leeds on fri 14 may? £250.';

describe('in small letters', () => {
  test.each([
    [`${asked} pls let me know soon, rhea`, 'rhea'],
    [`${asked} need a yes by tmrw midnight, jonah`, 'jonah'],
    [`${asked} call me anytime 416-555-0172 nadia`, 'nadia'],
    [`yo kit what's good, tucker from gravel and grits. ${asked}`, 'tucker'],
    [`hi kit! lila from bushwick again. ${asked}`, 'lila'],
    [`hey, back from holiday. ${asked}`, undefined],
    [`hi kit, message from mum. ${asked}`, undefined],
    [`${asked} let me know by friday, thanks`, undefined],
    [`${asked} pls reply by text, asap`, undefined],
    [`${asked} pls call or text, please`, undefined],
  ])('%j', (text, name) => expect(read(text).contactName).toBe(name));
});

const wanted = 'Could you film our concert in Leeds on Friday 14 May 2027? We can pay £250.';

describe('who says more of themselves', () => {
  test.each([
    ["Hey Kit this is Troy, my kid's in the team.", 'Troy'],
    ['Hey Kit, Momo, I run the tours.', 'Momo'],
    ['Hi Kit, this side Harpreet, tour manager.', 'Harpreet'],
    ['Kit,\n\nStan Kowal, the guy with the bridges.', 'Stan Kowal'],
    ['Name - Harpreet Sodd\nMobile - 07700 900318\n', 'Harpreet Sodd'],
    ['Voicemail: "Uh, yes, hello."', undefined],
    ['Hi Kit, this is Troy, New York.', undefined],
  ])('%j', (words, name) => expect(read(`${words} ${wanted}`).contactName).toBe(name));

  test('the number behind who is to be answered', () => {
    const { contactName, contactPhone } = read(`${wanted} Please ring her, not me: Bernadette Quill, 0491 570 158.\n\nHugh\n0491 570 006`);
    expect([contactName, contactPhone]).toEqual(['Bernadette Quill', '0491 570 158']);
  });

  test.each([
    ['The Cork Harbour Swimmers are doing a charity dip.', 'Cork Harbour Swimmers'],
    ['The Broken Hill Memorial Band will play the sun down.', 'Broken Hill Memorial Band'],
    ['The doors will open at seven.', undefined],
  ])('a body that does something: %j', (words, body) => expect(read(`Dear Kit,\n\n${words} ${wanted}`).organisation).toBe(body));
});
