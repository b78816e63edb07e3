import { z } from 'zod';
import { reads, writes } from './base.ts';
import { Id, Name, Nothing, Note, Version, WallTime, Zone } from './parts.ts';

/** Time of my own: days or hours off. A whole day runs from 00:00 to 00:00 of the next date. */
export const PersonalFields = z.strictObject({
  title: Name,
  from: WallTime,
  to: WallTime,
  zone: Zone,
  hardness: z.enum(['never', 'settle']).describe('"never" blocks a job, "settle" can be talked about'),
  note: Note.default(''),
});
export type PersonalFields = z.infer<typeof PersonalFields>;
export const Personal = PersonalFields.extend({ id: Id, version: Version });
export type Personal = z.infer<typeof Personal>;

export const personal = {
  list: reads('Time of my own, in order of time.', Nothing, z.strictObject({ personal: z.array(Personal) })),
  save: writes(
    'Save time of my own: without an id new, with id and version a change.',
    z.strictObject({ id: Id.optional(), version: Version.optional(), fields: PersonalFields }),
    z.strictObject({ personal: Personal }),
  ),
  drop: writes('Take time of my own off the books.', z.strictObject({ id: Id, version: Version }), Nothing),
};
