/**
 * Hours of several people in a row of one line: "kitchen 2pm, AV 3pm, video 4.30pm, guests 7pm", "14:00 staging, 16:00 cameras, 19:00 doors".
 */
import { anyOf } from '../phrases.ts';
import type { Where } from './scene.ts';

/** Hours with what is said beside them. */
export type Row<T> = { times: T[]; label: string; from: number; end: number };

const MINE = anyOf(`you | your | video | videographer | camera | cameras | cam | film crew | camera crew | crew | operator | video team`);
const THEIRS = anyOf(`
  staging | stage | riggers | rigging | lighting | lights | lx | sound | audio | av | pa | catering | caterers | kitchen | florist | flowers | band | dj | choir | talent | cast | director | speakers | guests | doors | photographer | make-up | makeup | hair | security | volunteers | set | decor | staff | exhibitors | traders | public
`);
const FEWEST = 3;
const LONGEST_LABEL = 32;
/** "you're free at": a sentence, which is read as one. */
const SAID =
  /(?<!\p{L})(?:you|u|you'\p{L}+|we|is|are|was|but|until|till?|please|come|be|i|they)(?!\p{L})(?! ?(?:in|out|at|from|on)?\s*$)/iu;
/** "you are free 21h00", "15:00 you arrive", "(you finish)": what I do may be a sentence. */
const MY_DEED =
  /^\s*\(?(?:you|u|you're)(?: (?:are |can |may |to )?(?:be )?(?:free|done|finished|released|off|out|go|leave|finish|stop|home|go home|pack up|arrive|come|start|begin|set up|come in|in|there|here|on site|report))?(?: at| by)?\)?\s*$/i;
/** More than this between two hours is no list. */
const LONGEST_GAP = 48;

/** "a crew of one" is no hour of a list. */
const WRITTEN = /\d|noon|midnight/i;
/** What parts one hour of a list from the next; the rest is said of the hour before it or after it. */
const PARTED = /^([^,;|/.!?\n]*)(?:[,;|/]|\.(?=\s))\s*([^,;|/.!?\n]*)$/;
const PLAIN_LABEL = /^[\p{L}\s/()'&+:-]*$/u;

/** The rows of the lists in a text that name me beside others. */
export function inlineRows<T extends Where>(text: string, times: readonly T[]): Row<T>[] {
  const rows: Row<T>[] = [];
  let run: T[] = [];
  const close = (): void => {
    rows.push(...listOf(text, run));
    run = [];
  };
  for (const time of times) {
    const last = run.at(-1);
    const between = last && time.start - last.end <= LONGEST_GAP ? text.slice(last.end, time.start) : '';
    if (last && !PARTED.test(between)) close();
    if (WRITTEN.test(text.slice(time.start, time.end))) run.push(time);
    else close();
  }
  close();
  return rows;
}

function listOf<T extends Where>(text: string, run: readonly T[]): Row<T>[] {
  const [first, last] = [run[0], run.at(-1)];
  if (run.length < FEWEST || !first || !last) return [];
  const lead =
    text
      .slice(Math.max(0, first.start - LONGEST_LABEL), first.start)
      .split(/[,;|.!?:\n]/)
      .at(-1) ?? '';
  const tail = text.slice(last.end, last.end + LONGEST_LABEL).split(/[,;|.!?\n]/)[0] ?? '';
  const between = run.slice(1).map((time, at) => PARTED.exec(text.slice(run[at]?.end, time.start)) ?? ['', '', '']);
  const behind = [...between.map(([, after = '']) => after), tail];
  const before = [lead, ...between.map(([, , ahead = '']) => ahead)];
  const alone = (labels: readonly string[]): boolean => labels.every((label) => label.trim() === '');
  const labels = alone(behind.slice(0, -1)) ? before : alone(before.slice(1)) ? behind : [];
  if (
    labels.length === 0 ||
    labels.some((label) => label.length > LONGEST_LABEL || !PLAIN_LABEL.test(label) || (SAID.test(label) && !MY_DEED.test(label)))
  )
    return [];
  if (
    !labels.some((label) => MINE.test(label)) ||
    !labels.some((label) => THEIRS.test(label.replace(/sound ?check/i, '')) && !MINE.test(label))
  )
    return [];
  return run.map((time, at) => ({ times: [time], label: labels[at] ?? '', from: time.start, end: time.end }));
}
