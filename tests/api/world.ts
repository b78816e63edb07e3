/**
 * A set-up store with a clock that the test moves, and the facts that most tests begin with.
 */
import type { Place } from '../../core/contract/parts.ts';
import type { SetupFields } from '../../core/contract/setup.ts';
import type { Context } from '../../electron/api/context.ts';
import { blankDocument } from '../../core/documents/blank.ts';
import { keepDocument } from '../../db/documents.ts';
import { saveSetup } from '../../db/setup.ts';
import { contextOn, gazetteer } from '../context.ts';
import { temporaryStore } from '../store.ts';

/** A place of the gazetteer by its key. */
export function placeByKey(key: string): Place {
  const found = gazetteer().find((place) => place.key === key);
  if (!found) throw new Error(`no place ${key}`);
  const { kind: _kind, people: _people, ...place } = found;
  return place;
}

export const DULUTH = placeByKey('geonames:5024719');
export const THUNDER_BAY = placeByKey('geonames:6166142');
export const FARGO = placeByKey('geonames:5059163');

export const SETUP: SetupFields = {
  name: 'Lakeline Pictures',
  address: '12 Harbor Street\nDuluth, MN 55802',
  email: 'post@lakeline.example',
  phone: '+1 218 555 0114',
  home: DULUTH,
  currency: 'USD',
  paper: 'Letter',
  distance: 'mi',
  registered: false,
  taxId: '',
  tax: null,
  restHours: '8',
  year: null,
};

export type World = { context: Context; at: (instant: string) => void };

/** @param instant the first "now" */
export async function world(instant: string, fields: SetupFields | null = SETUP): Promise<World> {
  let now = Temporal.Instant.from(instant).epochMilliseconds;
  const store = await temporaryStore(() => now);
  if (fields) store.write((db) => saveSetup(db, fields, now));
  return {
    context: contextOn(store, () => now),
    at: (later) => {
      now = Temporal.Instant.from(later).epochMilliseconds;
    },
  };
}

/** What a person who crosses a border has on file, so that a test of something else finds nothing to settle there. */
export function withPapers(w: World): World {
  const fields = [
    { ...blankDocument('passport'), country: 'US', until: '2035-01-01' },
    { ...blankDocument('right to work'), country: 'CA', until: '2035-01-01', countries: ['CA'] },
    { ...blankDocument('carnet'), country: 'US', until: '2035-01-01', countries: ['CA'] },
  ];
  w.context.store.write((db) => fields.forEach((one) => keepDocument(db, undefined, one, 0)));
  return w;
}

/** What a call was refused with: its code and its trouble. */
export async function refusal(call: Promise<unknown>): Promise<{
  code: string;
  what: string;
  todo: string;
  kept: string;
  findings?: string[];
  fields?: { field: string; sentence: string }[];
  current?: unknown;
  mine?: unknown;
}> {
  try {
    await call;
  } catch (error) {
    const { code, data } = error as { code: string; data: { what: string; todo: string; kept: string } };
    return { code, ...data };
  }
  throw new Error('was not refused');
}
