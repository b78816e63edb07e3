/**
 * What every procedure is given. Doors make it once at start.
 */
import type { Learned } from '../../core/inquiries/learned/models.ts';
import type { Gazetteer } from '../../core/places/gazetteer.ts';
import type { Store } from '../../db/store.ts';

export type Context = {
  store: Store;
  /** Epoch milliseconds; the only clock of the program. */
  now: () => number;
  /** Zone of this computer, offered at first set-up. */
  systemZone: string;
  gazetteer: () => Gazetteer;
  learned: () => Learned;
  /** Version of the program, from package.json. */
  programVersion: string;
};
