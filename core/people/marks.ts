/**
 * What tells one person or business from another, taken from how they are kept.
 */
import type { Client, Hand } from '../contract/people.ts';
import type { Somebody } from './doubles.ts';

export const clientMarks = (one: Client): Somebody => ({
  id: one.id,
  name: one.name,
  emails: [one.billing.email, ...one.contacts.map((contact) => contact.email)],
  phones: one.contacts.map((contact) => contact.phone),
  taxId: one.taxId,
});
export const handMarks = (one: Hand): Somebody => ({ id: one.id, name: one.name, emails: [one.email], phones: [one.phone], taxId: '' });
