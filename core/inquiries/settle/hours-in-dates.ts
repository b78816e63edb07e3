/**
 * Days each with its hour in one row, which are read as one run: "22.10. from 9h, 23.10. from 8h30, 24.10. from 8h30 until 16h".
 */
import type { DateMention } from './scene.ts';

/** True where hours stand between the days of a run; those behind it are of its last day. */
export const holdsHours = (text: string, { start, end }: DateMention): boolean => HOUR.test(text.slice(start, end));
const HOUR = /(?<!\p{L})(?:from|at|ab|um|von|dès|à|vanaf|om|desde|dalle)\s\d/iu;

/** The date with its last day alone. */
export const lastOfRun = (date: DateMention): DateMention => ({
  ...date,
  readings: date.readings.map((days) => days.slice(-1)),
});
