import type { Layout } from './layout.ts';
import { inside } from './strands.tsx';
import { meets, type StripJob } from './strip.ts';
import style from './stringline.module.css';
import { fitted, textWidth } from './text-width.ts';

type Box = { left: number; right: number; top: number; bottom: number };
type Label = { key: string; title: string; whole: string; note: string; x: number; y: number; box: Box };

const LINE = 15;
/** Pixels that a name may be long, and where many stand beside each other. */
const LONGEST = 260;
const LONGEST_OF_MANY = 150;
const MANY = 12;
const TRIES = 3;

const touch = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Names above the first block of each job, moved up where two would touch, left out where there is no room. */
function labelsOf(jobs: readonly StripJob[], layout: Layout, taken: readonly Box[]): Label[] {
  const placed: Label[] = [];
  const obstacles: Box[] = [...taken];
  const shown = jobs.filter((job) => meets(job, layout));
  const longest = shown.length > MANY ? LONGEST_OF_MANY : LONGEST;
  for (const job of shown) {
    const first = job.blocks.find((block) => meets(block, layout));
    const last = job.blocks.findLast((block) => meets(block, layout));
    if (!first || !last) continue;
    const title = fitted(job.title, longest, 600);
    const width = textWidth(title, 600) + textWidth(` ${job.note}`) + 2;
    const start = inside(first, layout).left - 2;
    // Where it would run out of the drawing it ends with the job's last block, or with the drawing.
    const left = start + width <= layout.right ? start : Math.max(layout.left, Math.min(inside(last, layout).right, layout.right) - width);
    const baseline = layout.y(first.placeKey) - layout.block / 2 - 6;
    for (let line = 0; line <= TRIES; line += 1) {
      const y = baseline - line * LINE;
      const box = { left: left - 4, right: left + width + 4, top: y - 11, bottom: y + 2 };
      if (box.top < 22 || obstacles.some((other) => touch(box, other))) continue;
      placed.push({ key: `${job.key} ${first.start}`, title, whole: job.title, note: job.note, x: left, y, box });
      obstacles.push(box);
      break;
    }
  }
  return placed;
}

export function Labels({ jobs, layout, taken }: { jobs: readonly StripJob[]; layout: Layout; taken: readonly Box[] }) {
  return labelsOf(jobs, layout, taken).map((label) => (
    <text key={label.key} className={style.label} x={label.x} y={label.y}>
      {label.title === label.whole ? null : <title>{label.whole}</title>}
      <tspan className={style.bold}>{label.title}</tspan> {label.note}
    </text>
  ));
}
