import { v7 } from 'uuid';

/** A new id: UUIDv7, so that ids made later sort later. */
export function newId(): string {
  return v7();
}
