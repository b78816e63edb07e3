import { useMemo } from 'react';
import type { Stringline as Data } from '../../../core/contract/road.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { useWidth } from '../use-width.ts';
import { Drawing } from './drawing.tsx';
import { layOut } from './layout.ts';
import { stripOf } from './strip.ts';
import style from './stringline.module.css';

/** What the drawing says, for those who cannot see it; the large one has its table beside it. */
export function inWords(data: Pick<Data, 'jobs' | 'clashes'>): string {
  const clashes = data.clashes.map((clash) => clash.sentence).join(' ');
  const jobs = data.jobs.map((job) => `${job.title}, ${job.note}`).join('; ');
  return `Stringline: time runs right, distance from home runs up. ${countInWords(data.jobs.length, 'job')}${jobs ? `: ${jobs}` : ''}. ${clashes || 'Nothing clashes.'}`;
}

/** The time-distance diagram as it stands small on the Desk and in the answer. */
export function Stringline({ data, unit }: { data: Data; unit: 'mi' | 'km' }) {
  const [box, width] = useWidth();
  const strip = useMemo(() => stripOf(data), [data]);
  const layout = layOut(strip, strip, width, 'small');
  return (
    <div ref={box} className={style.box}>
      {width > 0 ? (
        <svg
          role="img"
          aria-label={inWords(data)}
          width={width}
          height={layout.height}
          viewBox={`0 0 ${width} ${layout.height}`}
          className={style.small}
        >
          <Drawing strip={strip} layout={layout} size="small" unit={unit} foot={layout.bottom + 8} />
        </svg>
      ) : null}
    </div>
  );
}
