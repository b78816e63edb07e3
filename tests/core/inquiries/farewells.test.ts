/**
 * Who signs below or behind a farewell of any language: the farewell is no name, and the one below it is one, with for whom.
 */
import { describe, expect, test } from 'vitest';
import { farewellAt, onlyBids } from '../../../core/inquiries/people/farewells.ts';
import { facts } from './reading.ts';

const read = (text: string) => facts(text, '2027-04-12T09:12:00+01:00[Europe/London]', 'leeds');
const asked = 'Could you film our concert in Leeds on Friday 14 May 2027? We can pay 250 euros.';

describe('a farewell', () => {
  test.each([
    ['Besos, Nuria', 'Besos, '],
    ['A+ Loïc', 'A+ '],
    ['Sonnige Grüße aus Kiel, Jana', 'Sonnige Grüße aus Kiel, '],
    ['Met hartelijke groet Jan', 'Met hartelijke groet '],
    ['Thanks so much Anna Reed', 'Thanks '],
    ['Cordiali saluti. Ugo', 'Cordiali saluti. '],
    ['Leopold Asante-Grieg', ''],
    ['We sing, all of us, with thanks', ''],
  ])('%j', (words, bye) => expect(words.slice(0, farewellAt(words))).toBe(bye));

  test.each([
    ['With friendly greetings from Hessen', true],
    ['S pozdravem', true],
    ['Gott befohlen', true],
    ['Merci beaucoup,', true],
    ['Kram!', true],
    ['Thanks Anna', false],
    ['Thanks for 2027', false],
    ['Anna Reed', false],
  ])('alone: %j', (line, alone) => expect(onlyBids(line)).toBe(alone));
});

describe('who signs', () => {
  test.each([
    ['Besos\nFiammetta\nfiammetta@correo.example', 'Fiammetta', undefined],
    ['Besitos\nNuria Pajares', 'Nuria Pajares', undefined],
    ['Kram\nAnnika', 'Annika', undefined],
    ['Sonnige Grüße\nFranziska Nagel\nElbtal Bildungswerk gGmbH', 'Franziska Nagel', 'Elbtal Bildungswerk gGmbH'],
    ['Z poważaniem\nEwa Lis\nWrzosowe Studio', 'Ewa Lis', 'Wrzosowe Studio'],
    ['Petons, Mireia', 'Mireia', undefined],
    ['A+ Loïc', 'Loïc', undefined],
    ['Groete, Elmarie Adams\n076 555 0135', 'Elmarie Adams', undefined],
    ['Med vänliga hälsningar\nLars Ek, kyrkokören', 'Lars Ek', undefined],
    ['Agur!', undefined, undefined],
    ['Yours,\nI. Drummond', 'I. Drummond', undefined],
    ['Yours,\nThaddeus W. Crane III', 'Thaddeus W. Crane III', undefined],
    ['Sister of the bride, by the way', undefined, undefined],
  ])('%j', (foot, name, organisation) => {
    const { contactName, organisation: body } = read(`Hello, ${asked}\n\n${foot}`);
    expect([contactName, body]).toEqual([name, organisation]);
  });
});
