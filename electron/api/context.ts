/**
 * What every procedure is given. Doors make it once at start.
 */
import type { Place } from '../../core/contract/parts.ts';
import type { Store } from '../../db/store.ts';

/** The gazetteer as it lies in assets/, loaded at first use. */
export type Gazetteer = readonly GazetteerPlace[];
export type GazetteerPlace = Place & { kind: 'city' | 'airport'; people: number | null };

export type Context = {
  store: Store;
  /** Epoch milliseconds; the only clock of the program. */
  now: () => number;
  /** Zone of this computer, offered at first set-up. */
  systemZone: string;
  gazetteer: () => Gazetteer;
  /** Version of the program, from package.json. */
  programVersion: string;
};
