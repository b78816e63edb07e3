import type { Stringline } from '../../../core/contract/road.ts';
import { epochOf } from '../../../core/time/read.ts';
import type { Layout } from './layout.ts';
import style from './stringline.module.css';

type Label = { key: string; title: string; note: string; x: number; y: number; width: number; end: boolean };

const LETTER = 6.4;
const LINE = 15;
const LONGEST = 34;
const shorten = (text: string): string => (text.length > LONGEST ? `${text.slice(0, LONGEST - 1).trimEnd()}…` : text);

/** Names above the first block of each job, moved up where two would touch, left out where there is no room. */
function place(data: Stringline, layout: Layout): Label[] {
  const placed: Label[] = [];
  for (const job of data.jobs) {
    const first = job.blocks.find((block) => epochOf(block.end) > layout.from && epochOf(block.start) < layout.to);
    if (!first) continue;
    const title = shorten(job.title);
    const width = (title.length + job.note.length + 1) * LETTER;
    const start = layout.x(epochOf(first.start)) - 2;
    const end = start + width > layout.width;
    const x = end
      ? Math.min(layout.width - 2, Math.max(layout.left + width, layout.x(epochOf(job.blocks.at(-1)?.end ?? first.end))))
      : start;
    const left = end ? x - width : x;
    let y = layout.y(first.placeKey) - layout.block / 2 - 6;
    const touches = (other: Label): boolean => {
      const otherLeft = other.end ? other.x - other.width : other.x;
      return Math.abs(other.y - y) < LINE - 2 && left < otherLeft + other.width + 8 && otherLeft < left + width + 8;
    };
    let tries = 0;
    while (placed.some(touches) && tries < 3) {
      y -= LINE;
      tries += 1;
    }
    if (!placed.some(touches)) placed.push({ key: `${job.jobId ?? 'candidate'} ${first.start}`, title, note: job.note, x, y, width, end });
  }
  return placed;
}

export function Labels({ data, layout }: { data: Stringline; layout: Layout }) {
  return place(data, layout).map((label) => (
    <text key={label.key} className={style.label} x={label.x} y={label.y} textAnchor={label.end ? 'end' : 'start'}>
      <tspan className={style.bold}>{label.title}</tspan> {label.note}
    </text>
  ));
}
