import type { Layout } from './layout.ts';
import { meets, type Span, type StripJob } from './strip.ts';
import style from './stringline.module.css';

/** Above this many jobs the lines of one firmness are drawn as one, so that a whole year moves smoothly. */
const APART = 40;
type Strand = { key: string; title: string; firmness: StripJob['firmness']; jobs: readonly StripJob[] };

/** The lines of all jobs that are shown, the candidate apart so that it can be taken hold of. */
export function Strands({ jobs, layout, hatch }: { jobs: readonly StripJob[]; layout: Layout; hatch: string }) {
  const shown = jobs.filter((job) => meets(job, layout));
  const strands: Strand[] =
    shown.length > APART
      ? [...Map.groupBy(shown, (job) => job.firmness)].map(([firmness, jobs]) => ({ key: firmness, title: '', firmness, jobs }))
      : shown.map((job) => ({ key: job.key, title: `${job.title}, ${job.note}`, firmness: job.firmness, jobs: [job] }));
  return strands.map((strand) => (
    <g key={strand.key} className={style[strand.firmness]}>
      {strand.title ? <title>{strand.title}</title> : null}
      <path className={style.way} d={waysPath(strand.jobs, layout)} />
      <path className={style.rest} fill={`url(#${hatch})`} d={restsPath(strand.jobs, layout)} />
      <path className={style.block} d={blocksPath(strand.jobs, layout, false)} />
      <path className={`${style.block} ${style.editing}`} d={blocksPath(strand.jobs, layout, true)} />
    </g>
  ));
}

const at = (pixels: number): string => pixels.toFixed(1);
const box = (left: number, right: number, top: number, height: number): string =>
  `M${at(left)} ${at(top)}H${at(right)}v${height}H${at(left)}z`;
const seen = <T extends Span>(parts: readonly T[], layout: Layout): T[] => parts.filter((part) => meets(part, layout));

function waysPath(jobs: readonly StripJob[], layout: Layout): string {
  const { x, y } = layout;
  return jobs
    .flatMap((job) => [
      ...seen(job.stands, layout).map((stand) => cut(stand, y(stand.placeKey), y(stand.placeKey), layout)),
      ...seen(job.ways, layout).map((way) => cut(way, y(way.fromKey), y(way.toKey), layout)),
    ])
    .map(([from, to]) => `M${at(x(from.at))} ${at(from.y)}L${at(x(to.at))} ${at(to.y)}`)
    .join('');
}

/** A line cut where the strip begins and ends, so that its slope stays true and its dashes are few. */
function cut({ start, end }: Span, low: number, high: number, layout: Layout) {
  const yAt = (at: number): number => low + ((high - low) * (at - start)) / Math.max(1, end - start);
  const [from, to] = [Math.max(start, layout.start), Math.min(end, layout.end)];
  return [
    { at: from, y: yAt(from) },
    { at: to, y: yAt(to) },
  ] as const;
}

function restsPath(jobs: readonly StripJob[], layout: Layout): string {
  return jobs
    .flatMap((job) => seen(job.rests, layout))
    .map((rest) => ({ ...inside(rest, layout), y: layout.y(rest.placeKey) }))
    .filter(({ left, right }) => right - left > 2)
    .map(({ left, right, y }) => box(left, right, y - 4, 8))
    .join('');
}

function blocksPath(jobs: readonly StripJob[], layout: Layout, editing: boolean): string {
  return jobs
    .flatMap((job) => seen(job.blocks, layout))
    .filter(({ kind }) => (kind === 'edit') === editing)
    .map((block) => ({ ...inside(block, layout), y: layout.y(block.placeKey) }))
    .map(({ left, right, y }) => box(left, Math.max(left + 2, right), y - layout.block / 2, layout.block))
    .join('');
}

/** The pixels of a span within the drawing. */
export function inside(span: Span, layout: Layout): { left: number; right: number } {
  return { left: Math.max(layout.left, layout.x(span.start)), right: Math.min(layout.right, layout.x(span.end)) };
}
