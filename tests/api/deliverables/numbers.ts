/** Numbers of a highlight, which most tests begin with: 2 h of ingest, 12 h of cutting, two rounds of 2.5 h. */
import type { TemplateFields } from '../../../core/contract/templates.ts';

export const FORMAT = { width: 1920, height: 1080, rate: '29.97 drop', codec: '', loudness: '', captions: '', other: '' };
export const HIGHLIGHT: TemplateFields = {
  name: 'Highlight',
  finishedMinutes: '3',
  editHoursPerMinute: '4',
  ingestHours: '2',
  rounds: 2,
  hoursPerRound: '2.5',
  windowDays: 3,
  internalDays: 2,
  format: FORMAT,
  sameDay: false,
  due: { days: 20, count: 'business', from: 'last wrap' },
};
