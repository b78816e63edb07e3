import { describe, expect, test } from 'vitest';
import { clientOf, handOf, troubleOf } from '../../../core/people/card.ts';
import { cardsFromCsv, TableError } from '../../../core/people/csv.ts';
import { doublesIn, plainName } from '../../../core/people/doubles.ts';
import { CardError, cardsFromVcard } from '../../../core/people/vcard.ts';

describe('a table of addresses', () => {
  test('with a head line in any order, a byte-order mark and semicolons', () => {
    const cards = cardsFromCsv(
      '\uFEFFE-Mail;Company;First name;Last name;Phone\r\nada@quay.example;Quay Hall;Ada;Meer;+1 218 555 0101\r\n\r\n;Loaf & Co;;;\r\n',
    );
    expect(cards).toEqual([
      {
        line: 2,
        name: 'Ada Meer',
        organisation: 'Quay Hall',
        email: 'ada@quay.example',
        phone: '+1 218 555 0101',
        address: '',
        taxId: '',
        closed: '',
        notes: '',
      },
      { line: 4, name: '', organisation: 'Loaf & Co', email: '', phone: '', address: '', taxId: '', closed: '', notes: '' },
    ]);
  });
  test('quoted cells hold commas and line ends', () => {
    expect(cardsFromCsv('Name,Address\n"Meer, Ada","1 Quay\nDuluth"\n')[0]).toMatchObject({ name: 'Meer, Ada', address: '1 Quay\nDuluth' });
  });
  test('a table without a name column is refused with what to do', () => {
    expect(() => cardsFromCsv('a,b\n1,2\n')).toThrow(TableError);
    expect(() => cardsFromCsv('')).toThrow(/head line/);
  });
});

describe('vCards', () => {
  test('version 3 with groups, folded lines and escapes', () => {
    const [card] = cardsFromVcard(
      'BEGIN:VCARD\r\nVERSION:3.0\r\nFN:Ada Meer\r\nORG:Quay Hall;Events\r\nitem1.EMAIL;TYPE=INTERNET:ada@quay.\r\n example\r\nTEL;TYPE=WORK,VOICE:+1 218 555 0101\r\nADR:;;1 Quay;Duluth;MN;55802;USA\r\nNOTE:door\\, left\\nthen up\r\nEND:VCARD\r\n',
    );
    expect(card).toEqual({
      line: 1,
      name: 'Ada Meer',
      organisation: 'Quay Hall',
      email: 'ada@quay.example',
      phone: '+1 218 555 0101',
      address: '1 Quay\n55802 Duluth MN\nUSA',
      taxId: '',
      closed: '',
      notes: 'door, left\nthen up',
    });
  });
  test('version 4 with a tel URI, version 2.1 with bare types, several in one file', () => {
    const cards = cardsFromVcard(
      'BEGIN:VCARD\nVERSION:4.0\nFN:Bo\nTEL;VALUE=uri:tel:+1-218-555-0102\nEND:VCARD\nBEGIN:VCARD\nVERSION:2.1\nN:Ek;Cy\nTEL;WORK;VOICE:218 555 0103\nEND:VCARD\n',
    );
    expect(cards.map(({ line, name, phone }) => ({ line, name, phone }))).toEqual([
      { line: 1, name: 'Bo', phone: '+1-218-555-0102' },
      { line: 6, name: 'Cy Ek', phone: '218 555 0103' },
    ]);
  });
  test('a file without a card is refused; a broken card does not take the others with it', () => {
    expect(() => cardsFromVcard('hello')).toThrow(CardError);
    const cards = cardsFromVcard('BEGIN:VCARD\nnonsense\nEND:VCARD\nBEGIN:VCARD\nVERSION:3.0\nFN:Bo\nEND:VCARD\n');
    expect(cards.map((card) => card.name)).toEqual(['', 'Bo']);
    expect(cards[0] && troubleOf(cards[0])).toMatch(/name/);
  });
});

test('a card becomes a client with a contact, or a hand', () => {
  const card = {
    line: 1,
    name: 'Ada Meer',
    organisation: 'Quay Hall',
    email: 'ada@quay.example',
    phone: '',
    address: '1 Quay',
    taxId: 'X1',
    closed: '',
    notes: '',
  };
  expect(clientOf(card)).toMatchObject({
    name: 'Quay Hall',
    contacts: [{ name: 'Ada Meer', email: 'ada@quay.example' }],
    billing: { address: '1 Quay' },
    taxId: 'X1',
  });
  expect(handOf(card)).toMatchObject({ name: 'Ada Meer', email: 'ada@quay.example', notes: 'Quay Hall\n1 Quay' });
  expect(troubleOf({ ...card, email: 'ada at quay' })).toMatch(/not a mail address/);
  expect(troubleOf({ ...card, name: 'x'.repeat(121) })).toMatch(/longer than 120/);
});

describe('doubles', () => {
  test('a name is the same without case, accents, order and legal form', () => {
    expect(plainName('The Café Norden, Ltd.')).toBe(plainName('norden cafe'));
    expect(plainName('Nordic Cafe')).not.toBe(plainName('Norden Cafe'));
  });
  test('by mail, phone, tax id or name, each pair once', () => {
    const one = (id: string, name: string, emails: string[] = [], phones: string[] = [], taxId = '') => ({
      id,
      name,
      emails,
      phones,
      taxId,
    });
    const pairs = doublesIn([
      one('1', 'Quay Hall', ['Ada@quay.example'], ['+1 (218) 555-0101']),
      one('2', 'Quay Hall Inc', ['ada@quay.example'], ['218 555 0101']),
      one('3', 'Loaf', [], ['101']),
      one('4', 'Bread', [], ['101'], 'de 123'),
      one('5', 'Crumb', [], [], 'DE123'),
    ]);
    expect(pairs.map(({ a, b, why }) => [a.id, b.id, why])).toEqual([
      ['1', '2', 'the same mail address, ada@quay.example'],
      ['4', '5', 'the same tax id, DE123'],
    ]);
  });
});
