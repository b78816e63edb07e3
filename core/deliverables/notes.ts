/**
 * A client's notes on a cut, pasted as text: one note for each line, with the frame that it is about where a time code stands before it.
 */
import { frameOf, labelOf, type FrameRate } from './timecode.ts';

export type CutNote = {
  /** Line of the text, from 1. */
  line: number;
  /** First and last frame that it is about; null where no time code was read. */
  from: number | null;
  to: number | null;
  text: string;
};
export type NotesRead = { notes: CutNote[]; troubles: { line: number; sentence: string }[] };

/** "00:01:02:03 - 00:01:05:00  text", "[01:02] text", "1. At 01:02 – text", "* text"; a bullet or a number before it is no part of the note. */
const BULLET = /^\s*(?:[-*•–]\s+|\d{1,3}[.)]\s+)?/;
/** Frames have one or two digits, thousandths of a second three. */
const CODE = String.raw`\d{1,3}:\d{2}(?::\d{2}(?:[.,]\d{3}|[:;.,]\d{1,2})?)?(?!\d)`;
/** What people write before a time: no part of it. */
const BEFORE = String.raw`(?:(?:at|from|around|about|tc|time ?code|@)\b[:\s]*|@\s*)?`;
const LINE = new RegExp(
  String.raw`^${BEFORE}[[(]?(${CODE})[\])]?(?:\s*(?:-|–|—|to|until)\s*[[(]?(${CODE})[\])]?)?\s*(?:[-–—:|,]\s*)?(.*)$`,
  'iu',
);

/**
 * Read pasted notes. A line without a time code is a note of its own; an empty line is none. A line whose time code cannot be is kept as a
 * note without one, and said.
 * @param rate the cut's frame rate; "mm:ss" is minutes and seconds
 */
export function readNotes(text: string, rate: FrameRate): NotesRead {
  const read: NotesRead = { notes: [], troubles: [] };
  text.split(/\r\n?|\n/).forEach((raw, index) => {
    const line = index + 1;
    const bare = raw.replace(BULLET, '').trim();
    if (bare === '') return;
    const found = LINE.exec(bare);
    const said = found?.[3]?.trim() ?? '';
    if (!found || said === '') {
      read.notes.push({ line, from: null, to: null, text: bare });
      return;
    }
    const ends = [found[1], found[2]].map((code) => (code === undefined ? null : frameOf(inFull(code, rate), rate)));
    const trouble = ends.find((end) => end !== null && 'trouble' in end);
    const [from, to] = ends.map((end) => (end && 'frame' in end ? end.frame : null));
    const backwards = from !== null && from !== undefined && to !== null && to !== undefined && to < from;
    if ((trouble && 'trouble' in trouble) || backwards) {
      const why = trouble && 'trouble' in trouble ? trouble.trouble : `${found[2]} comes before ${found[1]}.`;
      read.troubles.push({ line, sentence: `Line ${line}: ${why} The note is kept without a time.` });
      read.notes.push({ line, from: null, to: null, text: bare });
      return;
    }
    read.notes.push({ line, from: from ?? null, to: to ?? from ?? null, text: said });
  });
  return read;
}

/** "01:02" on a cut is one minute and two seconds, and "75:10" an hour and a quarter; thousandths are the frame that they lie in. */
function inFull(code: string, { labels }: FrameRate): string {
  const [, clock = code, thousandths] = /^(.*)[.,](\d{3})$/.exec(code) ?? [];
  const parts = clock.split(/[:;.,]/);
  const [minutes = '', seconds = ''] = parts;
  const whole = parts.length === 2 ? `${Math.floor(Number(minutes) / 60)}:${two(Number(minutes) % 60)}:${seconds}` : clock;
  return thousandths === undefined ? whole : `${whole}:${two(Math.floor((Number(thousandths) * labels) / 1000))}`;
}

const two = (value: number): string => String(value).padStart(2, '0');

/** Where a note stands, as a label of the cut; empty where it has no time. */
export function noteTime({ from, to }: CutNote, rate: FrameRate): string {
  if (from === null) return '';
  return to === null || to === from ? labelOf(from, rate) : `${labelOf(from, rate)} to ${labelOf(to, rate)}`;
}
