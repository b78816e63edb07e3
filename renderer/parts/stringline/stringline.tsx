import { useId } from 'react';
import type { Stringline as Data } from '../../../core/contract/road.ts';
import { epochOf } from '../../../core/time/read.ts';
import { countInWords, lengthInWords } from '../../../core/words/amounts.ts';
import { distanceInWords } from '../../../core/words/distance.ts';
import { useWidth } from '../use-width.ts';
import { Clashes } from './clashes.tsx';
import { JobLine } from './job-line.tsx';
import { Labels } from './labels.tsx';
import { layOut, type Layout, type Size } from './layout.ts';
import style from './stringline.module.css';
import { ticks, weekends } from './ticks.ts';

/** What the drawing says, for those who cannot see it; the large one has its table beside it. */
function summary(data: Data): string {
  const clashes = data.clashes.map((clash) => clash.sentence).join(' ');
  const jobs = data.jobs.map((job) => `${job.title}, ${job.note}`).join('; ');
  return `Stringline: time runs right, distance from home runs up. ${countInWords(data.jobs.length, 'job')}${jobs ? `: ${jobs}` : ''}. ${clashes || 'Nothing clashes.'}`;
}

/** The time-distance diagram, small on the Desk and in the answer, large on the Road. */
export function Stringline({ data, size, unit, room }: { data: Data; size: Size; unit: 'mi' | 'km'; room?: number }) {
  const [box, width] = useWidth();
  const hatch = useId();
  const layout = layOut(data, width, size, room);
  return (
    <div ref={box} className={style.box}>
      {width > 0 ? (
        <svg role="img" aria-label={summary(data)} width={width} height={layout.height} className={style[size]}>
          <defs>
            <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
              <line className={style.hatch} x1="0" x2="0" y1="0" y2="5" />
            </pattern>
          </defs>
          <Calendar data={data} layout={layout} size={size} />
          <Places data={data} layout={layout} size={size} unit={unit} />
          {data.jobs.map((job) => (
            <JobLine key={job.jobId ?? 'candidate'} job={job} layout={layout} hatch={hatch} />
          ))}
          {size === 'large' ? <Labels data={data} layout={layout} /> : null}
          <Clashes data={data} layout={layout} size={size} />
          <Now data={data} layout={layout} />
        </svg>
      ) : null}
    </div>
  );
}

function Calendar({ data, layout, size }: { data: Data; layout: Layout; size: Size }) {
  const all = ticks(layout.from, layout.to, data.zone);
  const room = (layout.width - layout.left) / Math.max(1, all.length);
  const step = Math.max(1, Math.ceil((size === 'large' ? 52 : 22) / room));
  const wide = room * step > 62;
  return (
    <>
      {weekends(layout.from, layout.to, data.zone).map((shade) => (
        <rect
          key={shade.from}
          className={style.weekend}
          x={layout.x(shade.from)}
          width={layout.x(shade.to) - layout.x(shade.from)}
          y={layout.top - 8}
          height={layout.bottom - layout.top + 16}
        />
      ))}
      {all.map((tick, index) => (
        <g key={tick.at}>
          <line
            className={tick.major ? style.midnight : style.hour}
            x1={layout.x(tick.at)}
            x2={layout.x(tick.at)}
            y1={layout.top - 8}
            y2={layout.bottom + 8}
          />
          {index % step === 0 && layout.x(tick.at) < layout.width - (size === 'large' ? 48 : 18) ? (
            <text className={style.tick} x={layout.x(tick.at) + 4} y={size === 'large' ? 18 : 12}>
              {size === 'large' && wide ? `${tick.before} ` : ''}
              <tspan className={style.bold}>{tick.bold}</tspan>
              {size === 'large' && wide ? ` ${tick.after}` : ''}
            </text>
          ) : null}
        </g>
      ))}
    </>
  );
}

function Places({ data, layout, size, unit }: { data: Data; layout: Layout; size: Size; unit: 'mi' | 'km' }) {
  return data.places.map(({ place, km, shiftMinutes, home }) => {
    const y = layout.y(place.key);
    const shift = shiftMinutes === 0 ? '' : `, ${shiftMinutes > 0 ? '+' : ''}${lengthInWords(shiftMinutes)}`;
    const name = place.name.length > 17 ? `${place.name.slice(0, 16)}…` : place.name;
    const second = size === 'large' || home;
    return (
      <g key={place.key}>
        <line className={style.lane} x1={layout.left} x2={layout.width} y1={y} y2={y} />
        <text
          className={`${style.place} ${home ? style.bold : ''}`}
          x={layout.left - 10}
          y={second && size === 'large' ? y - 1 : y + 4}
          textAnchor="end"
        >
          {place.name === name ? null : <title>{place.name}</title>}
          {name}
        </text>
        {second ? (
          <text className={style.second} x={layout.left - 10} y={size === 'large' ? y + 12 : y + 17} textAnchor="end">
            {home ? 'home' : `${distanceInWords(km, unit)}${shift}`}
          </text>
        ) : null}
      </g>
    );
  });
}

function Now({ data, layout }: { data: Data; layout: Layout }) {
  const now = epochOf(data.now);
  if (now < layout.from || now > layout.to) return null;
  const x = layout.x(now);
  return (
    <g className={style.now}>
      <line x1={x} x2={x} y1={layout.top - 10} y2={layout.bottom + 10} />
      <text x={x + 4} y={layout.bottom + 20}>
        now
      </text>
    </g>
  );
}
