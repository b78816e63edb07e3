import type { LegAsk } from '../../contract/trips.ts';

/** Puts a question about a leg; of each field the first stands. */
export type Ask = (field: LegAsk['field'], question: string) => void;
