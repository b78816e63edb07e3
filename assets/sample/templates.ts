/** What is delivered: its numbers, by kind. */
import type { TemplateFields } from '../../core/contract/templates.ts';

const format = {
  width: 1920,
  height: 1080,
  rate: '29.97 drop',
  codec: 'H.264',
  loudness: '-16 LUFS, true peak -1 dBTP',
  captions: '',
  other: '',
};
const ofFilm = {
  editHoursPerMinute: '2.5',
  ingestHours: '1',
  rounds: 1,
  hoursPerRound: '1',
  windowDays: 2,
  internalDays: 1,
  format,
  sameDay: false,
};
const within = (days: number): TemplateFields['due'] => ({ days, count: 'business', from: 'last wrap' });

export const templates: readonly TemplateFields[] = [
  { ...ofFilm, name: 'Film', finishedMinutes: '3', due: within(15) },
  { ...ofFilm, name: 'Interview', finishedMinutes: '6', editHoursPerMinute: '1', due: within(15) },
  {
    ...ofFilm,
    name: 'Clip',
    finishedMinutes: '1',
    editHoursPerMinute: '3',
    ingestHours: '0.5',
    rounds: 0,
    hoursPerRound: '0',
    due: within(5),
  },
  { ...ofFilm, name: 'Trailer', finishedMinutes: '1', editHoursPerMinute: '4', due: within(10) },
  {
    ...ofFilm,
    name: 'Talk',
    finishedMinutes: '30',
    editHoursPerMinute: '0.07',
    rounds: 0,
    hoursPerRound: '0',
    format: { ...format, captions: 'SubRip, English' },
    due: within(10),
  },
  { ...ofFilm, name: 'Recording', finishedMinutes: '90', editHoursPerMinute: '0.01', rounds: 0, hoursPerRound: '0', due: within(5) },
  { ...ofFilm, name: 'Uncut', finishedMinutes: '90', editHoursPerMinute: '0.01', rounds: 0, hoursPerRound: '0', due: within(5) },
];
