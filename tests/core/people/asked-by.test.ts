import { expect, test } from 'vitest';
import { clientFrom, knownAs } from '../../../core/people/asked-by.ts';
import { blankClient } from '../../../core/people/blank.ts';

const contact = { name: 'Ilse Marrow', email: 'ilse@reading.example', phone: '' };
const known = (name: string, email: string) => ({
  ...blankClient(name),
  contacts: [{ name: '', email, phone: '', what: '' }],
  id: crypto.randomUUID(),
  version: 1,
});

test('a client from an inquiry: the organisation with its contact, else the person, else nobody', () => {
  expect(clientFrom({ organisation: 'Reading Club', contact })).toMatchObject({
    name: 'Reading Club',
    contacts: [{ ...contact, what: '' }],
  });
  expect(clientFrom({ organisation: '', contact })).toMatchObject({ name: 'Ilse Marrow', contacts: [{ email: contact.email }] });
  expect(clientFrom({ organisation: '', contact: { name: 'Ilse', email: '', phone: '' } })).toMatchObject({ name: 'Ilse', contacts: [] });
  expect(clientFrom({ organisation: '', contact: { name: '', email: 'a@b.example', phone: '' } })).toBeNull();
});

test('who asked is known by mail address or name, however it is written', () => {
  const clients = [known('Other Hall', 'x@hall.example'), known('Club', 'ILSE@reading.example'), known('The Reading Club, Inc', '')];
  expect(knownAs({ organisation: 'Nobody', contact }, clients)?.name).toBe('Club');
  expect(knownAs({ organisation: 'Reading club', contact: { ...contact, email: '' } }, clients)?.name).toBe('The Reading Club, Inc');
  expect(knownAs({ organisation: '', contact: { name: '', email: '', phone: '' } }, clients)).toBeUndefined();
});
