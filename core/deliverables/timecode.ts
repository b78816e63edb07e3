/**
 * Time codes: labels of frames as they are counted on a timeline (SMPTE ST 12-1). Drop-frame leaves out labels, never frames: at 29.97 the
 * labels 00 and 01 of each minute but those divisible by ten, at 59.94 the first four.
 */

/** Frames a second as they are labelled, and how many labels a minute drops. */
export type FrameRate = { name: string; labels: number; drops: number };

/** The rates that edits are delivered in. Fractional rates count their whole labels; without drop their clock runs slow by a thousandth. */
export const frameRates: readonly FrameRate[] = [
  { name: '23.976', labels: 24, drops: 0 },
  { name: '24', labels: 24, drops: 0 },
  { name: '25', labels: 25, drops: 0 },
  { name: '29.97 drop', labels: 30, drops: 2 },
  { name: '29.97', labels: 30, drops: 0 },
  { name: '30', labels: 30, drops: 0 },
  { name: '50', labels: 50, drops: 0 },
  { name: '59.94 drop', labels: 60, drops: 4 },
  { name: '59.94', labels: 60, drops: 0 },
  { name: '60', labels: 60, drops: 0 },
];

const DAY_HOURS = 24;
const TIMECODE = /^(\d{1,2}):([0-5]\d):([0-5]\d)(?:[:;.,](\d{1,2}))?$/;

/** The number of a frame, or why the label is none. */
export type ReadTimecode = { frame: number } | { trouble: string };

/**
 * The frame of a label "hh:mm:ss:ff"; a semicolon before the frames is the custom for drop-frame, and any separator is read.
 * Without frames the first frame of the second, or of the first label there is in it.
 */
export function frameOf(label: string, rate: FrameRate): ReadTimecode {
  const found = TIMECODE.exec(label.trim());
  if (!found) return { trouble: `"${label}" is not a time code; write it as 00:01:02:03.` };
  const [hours, minutes, seconds] = [found[1], found[2], found[3]].map(Number) as [number, number, number];
  if (hours >= DAY_HOURS) return { trouble: `${label} is past the 24 hours that a time code can count.` };
  const minute = hours * 60 + minutes;
  const dropped = seconds === 0 && minute % 10 !== 0 ? rate.drops : 0;
  const frames = found[4] === undefined ? dropped : Number(found[4]);
  if (frames >= rate.labels) return { trouble: `${label} has no frame ${found[4]}: at ${rate.name} a second has ${rate.labels}.` };
  if (frames < dropped) return { trouble: `${label} does not exist: ${rate.name} leaves that label out.` };
  const counted = (minute * 60 + seconds) * rate.labels + frames;
  return { frame: counted - rate.drops * (minute - Math.floor(minute / 10)) };
}

/** The label of a frame, counted from 0; after 24 hours it begins anew. A semicolon stands before the frames where labels are dropped. */
export function labelOf(frame: number, rate: FrameRate): string {
  const { labels, drops } = rate;
  const inTen = labels * 600 - drops * 9;
  const inMinute = labels * 60 - drops;
  const wrapped = frame % (inTen * 6 * DAY_HOURS);
  const tens = Math.floor(wrapped / inTen);
  const rest = wrapped % inTen;
  const counted = wrapped + drops * 9 * tens + (rest >= drops ? drops * Math.floor((rest - drops) / inMinute) : 0);
  const two = (value: number) => String(value).padStart(2, '0');
  const seconds = Math.floor(counted / labels);
  const clock = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60].map(two).join(':');
  return `${clock}${drops > 0 ? ';' : ':'}${two(counted % labels)}`;
}
