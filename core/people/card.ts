/**
 * One person as a file of addresses knows them, before they become a client or a hand.
 */
import { Line, NAME_LENGTH, Name, Note } from '../contract/parts.ts';
import { ClientFields, type HandFields } from '../contract/people.ts';
import { blankClient, blankHand } from './blank.ts';
import { readClosed } from './closed.ts';

export type AddressCard = {
  line: number;
  name: string;
  organisation: string;
  email: string;
  phone: string;
  address: string;
  taxId: string;
  /** Own holidays as written. */
  closed: string;
  notes: string;
};

/** What is wrong with a card, in words; nothing when it can be kept. */
export function troubleOf(card: AddressCard): string | null {
  const name = Name.safeParse(card.organisation || card.name);
  if (!name.success) return `The name ${name.error.issues[0]?.message ?? 'cannot be kept'}.`;
  for (const [what, value] of [
    ['The person', card.name],
    ['The mail address', card.email],
    ['The phone', card.phone],
    ['The tax id', card.taxId],
  ] as const) {
    const line = Line.safeParse(value);
    if (!line.success) return `${what} ${line.error.issues[0]?.message ?? 'cannot be kept'}.`;
  }
  for (const [what, value] of [
    ['The address', card.address],
    ['The note', card.notes],
  ] as const) {
    const note = Note.safeParse(value);
    if (!note.success) return `${what} ${note.error.issues[0]?.message ?? 'cannot be kept'}.`;
  }
  const closed = readClosed(card.closed);
  if (typeof closed === 'string') return closed;
  const kept = ClientFields.shape.closed.safeParse(closed);
  if (!kept.success) return `Of their own holidays something ${kept.error.issues[0]?.message ?? 'cannot be kept'}.`;
  if (card.email && !/^[^@\s]{1,64}@[^@\s]{1,190}$/.test(card.email)) return `"${card.email.slice(0, NAME_LENGTH)}" is not a mail address.`;
  return null;
}

/** A client from a card: the organisation if it names one, with the person as its contact; else the person. */
export function clientOf(card: AddressCard): ClientFields {
  const closed = readClosed(card.closed);
  const reachable = card.email !== '' || card.phone !== '' || card.organisation !== '';
  return {
    ...blankClient(card.organisation || card.name),
    contacts: reachable && card.name ? [{ name: card.name, email: card.email, phone: card.phone, what: '' }] : [],
    billing: { name: '', address: card.address, email: '' },
    taxId: card.taxId,
    ...(typeof closed === 'string' || closed.length === 0 ? {} : { closed }),
    notes: card.notes,
  };
}

/** A hand from a card: the person; an organisation is kept as a note. */
export function handOf(card: AddressCard): HandFields {
  const notes = [card.name ? card.organisation : '', card.address, card.notes].filter(Boolean).join('\n');
  return { ...blankHand(card.name || card.organisation), email: card.email, phone: card.phone, notes };
}
