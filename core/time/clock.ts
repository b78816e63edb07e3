/** Times of day as people type them into a small box. */

/**
 * "9", "9:30", "930", "14.00", "2pm", "2:15 p.m.", "24:00" (midnight, written 00:00) as `HH:MM`.
 * @returns undefined for what is not a time of day
 */
export function parseClock(typed: string): string | undefined {
  const match = /^(\d{1,2})(?:[:.h]?(\d\d))? ?(?:([ap])\.?m\.?)?$/.exec(typed.trim().toLowerCase());
  if (!match) return undefined;
  const [, hourText = '', minuteText = '00', half] = match;
  const minute = Number(minuteText);
  const hour = hourOf(Number(hourText), half);
  if (hour === undefined || minute > 59 || (hour === 24 && minute > 0)) return undefined;
  return `${String(hour % 24).padStart(2, '0')}:${minuteText}`;
}

/** The hour of the day, with twelve in the morning as 0 and in the afternoon as 12. */
function hourOf(hour: number, half: string | undefined): number | undefined {
  if (half === undefined) return hour <= 24 ? hour : undefined;
  if (hour < 1 || hour > 12) return undefined;
  return (hour % 12) + (half === 'p' ? 12 : 0);
}
