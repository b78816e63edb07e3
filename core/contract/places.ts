import { z } from 'zod';
import { reads } from './base.ts';
import { Country, Line, Place } from './parts.ts';

export const places = {
  search: reads(
    'Places of the gazetteer whose name begins with or contains the text, nearest to home first where names are equal.',
    z.strictObject({ text: Line, country: Country.optional(), limit: z.int().min(1).max(50).default(8) }),
    z.strictObject({ places: z.array(Place.extend({ kind: z.enum(['city', 'airport', 'own']), people: z.int().nullable() })) }),
  ),
};
