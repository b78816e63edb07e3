import type { Stringline } from '../../../core/contract/road.ts';
import { epochOf } from '../../../core/time/read.ts';
import type { Layout } from './layout.ts';
import style from './stringline.module.css';

type JobOnLine = Stringline['jobs'][number];
type Step = { start: number; end: number; startKey: string; endKey: string };

/** The stretches in which a job stays where it is: between one step's end and the next one's start at the same place. */
function standing(steps: readonly Step[]): { key: string; from: number; to: number }[] {
  return steps.flatMap((step, index) => {
    const next = steps[index + 1];
    return next && next.startKey === step.endKey && next.start > step.end ? [{ key: step.endKey, from: step.end, to: next.start }] : [];
  });
}

/** One job: its blocks of paid time, its ways, where it stands still and where it rests. */
export function JobLine({ job, layout, hatch }: { job: JobOnLine; layout: Layout; hatch: string }) {
  const { x, y, block } = layout;
  const seen = (part: { start: string; end: string }): boolean => epochOf(part.end) > layout.from && epochOf(part.start) < layout.to;
  const steps: Step[] = [
    ...job.blocks.map((each) => ({ start: epochOf(each.start), end: epochOf(each.end), startKey: each.placeKey, endKey: each.placeKey })),
    ...job.moves.map((each) => ({ start: epochOf(each.start), end: epochOf(each.end), startKey: each.fromKey, endKey: each.toKey })),
  ].sort((a, b) => a.start - b.start);
  return (
    <g className={style[job.firmness]}>
      <title>{`${job.title}, ${job.note}`}</title>
      {standing(steps).map((each) => (
        <line key={`s${each.from}`} className={style.way} x1={x(each.from)} x2={x(each.to)} y1={y(each.key)} y2={y(each.key)} />
      ))}
      {job.rests.filter(seen).map((each) => (
        <rect
          key={`r${each.start}`}
          className={style.rest}
          fill={`url(#${hatch})`}
          x={x(epochOf(each.start))}
          width={x(epochOf(each.end)) - x(epochOf(each.start))}
          y={y(each.placeKey) - 4}
          height={8}
        />
      ))}
      {job.moves.filter(seen).map((each) => (
        <Move key={`m${each.start}${each.fromKey}`} move={each} layout={layout} />
      ))}
      {job.blocks.filter(seen).map((each) => (
        <rect
          key={`b${each.start}`}
          className={style.block}
          x={x(epochOf(each.start))}
          width={Math.max(2, x(epochOf(each.end)) - x(epochOf(each.start)))}
          y={y(each.placeKey) - block / 2}
          height={block}
        />
      ))}
    </g>
  );
}

/** A way, cut where the strip begins and ends so that its slope stays true. */
function Move({ move, layout }: { move: JobOnLine['moves'][number]; layout: Layout }) {
  const [start, end] = [epochOf(move.start), epochOf(move.end)];
  const [low, high] = [layout.y(move.fromKey), layout.y(move.toKey)];
  const yAt = (at: number): number => low + ((high - low) * (at - start)) / Math.max(1, end - start);
  const [from, to] = [Math.max(start, layout.from), Math.min(end, layout.to)];
  return <line className={style.way} x1={layout.x(from)} y1={yAt(from)} x2={layout.x(to)} y2={yAt(to)} />;
}
