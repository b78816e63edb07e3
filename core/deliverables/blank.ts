/**
 * What a new template begins with. Hours for a finished minute, rounds and days are defaults of the trade (common practice); past work says better.
 */
import type { EditNumbers, TemplateFields } from '../contract/templates.ts';
import { exact } from '../money/exact.ts';
import { stagesFrom, type Numbers } from './make-stages.ts';

const blankNumbers: EditNumbers = {
  finishedMinutes: '3',
  editHoursPerMinute: '4',
  ingestHours: '1',
  rounds: 2,
  hoursPerRound: '2',
  windowDays: 5,
  internalDays: 2,
  format: { width: 1920, height: 1080, rate: '', codec: '', loudness: '', captions: '', other: '' },
  sameDay: false,
};

export function blankTemplate(): TemplateFields {
  return { ...blankNumbers, name: '', due: { days: 15, count: 'business', from: 'last wrap' } };
}

/** Edit hours of all stages together, in halves, as exact text. */
export function hoursTogether(numbers: Numbers): string {
  const halfHours = stagesFrom(numbers).reduce((sum, stage) => sum + stage.halfHours, 0);
  return String(exact(halfHours).div(2n).valueOf());
}
