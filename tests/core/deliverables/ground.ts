/** Grounds of the edit plan for tests: Monday 7 December 2026, 08:00 in Chicago, six hours a day from 09:00. */
import { EDIT_SETTINGS, type EditGround, type OpenEdit, type OpenStage } from '../../../core/deliverables/ground.ts';

export const ZONE = 'America/Chicago';
export const at = (wall: string, zone = ZONE): number => Temporal.PlainDateTime.from(wall).toZonedDateTime(zone).epochMilliseconds;
export const MONDAY = at('2026-12-07T08:00');

export const stage = (id: string, hours: number, given: Partial<OpenStage> = {}): OpenStage => ({
  id,
  kind: 'fine cut',
  name: 'Fine cut',
  halfHours: hours * 2,
  releaseDate: null,
  sent: null,
  ...given,
});
export const edit = (id: string, due: string | null, hours: number, given: Partial<OpenEdit> = {}): OpenEdit => ({
  id,
  jobId: `job of ${id}`,
  jobTitle: `Job ${id}`,
  name: `Film ${id}`,
  due,
  internalDate: due,
  sameDay: false,
  filesAt: at('2026-12-01T18:00'),
  windowDays: 2,
  editor: null,
  theirs: new Set(),
  hoursSaid: true,
  stages: [stage(`${id} cut`, hours)],
  ...given,
});
export const ground = (edits: readonly OpenEdit[], given: Partial<EditGround> = {}): EditGround => ({
  now: MONDAY,
  zone: ZONE,
  settings: EDIT_SETTINGS,
  holidays: new Set(),
  edits,
  dates: [],
  times: [],
  pins: [],
  previous: [],
  ...given,
});
export const away = (dates: readonly string[], title = 'Congress', how: 'shoot' | 'travel' = 'shoot') =>
  dates.map((date) => ({ date, jobId: title.toLowerCase(), title, how }));
