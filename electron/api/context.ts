/**
 * What every procedure is given. Doors make it once at start.
 */
import type { Reading } from '../../core/contract/inquiries.ts';
import type { ToRead } from '../../core/inquiries/read.ts';
import type { Gazetteer } from '../../core/places/gazetteer.ts';
import type { Store } from '../../db/store.ts';

export type Context = {
  store: Store;
  /** Epoch milliseconds; the only clock of the program. */
  now: () => number;
  /** Zone of this computer, offered at first set-up. */
  systemZone: string;
  gazetteer: () => Gazetteer;
  /** Read a message; refused where that takes too long. */
  readMessage: (message: ToRead) => Promise<Reading>;
  /** Version of the program, from package.json. */
  programVersion: string;
};
