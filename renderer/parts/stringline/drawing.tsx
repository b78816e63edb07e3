import { useId } from 'react';
import { Calendar, Now } from './calendar.tsx';
import { Clashes, ringsOf, roomOf } from './clashes.tsx';
import { Labels } from './labels.tsx';
import type { Layout, Size } from './layout.ts';
import { Places } from './places.tsx';
import { Strands } from './strands.tsx';
import type { Strip } from './strip.ts';
import style from './stringline.module.css';

type DrawingProps = {
  strip: Strip;
  layout: Layout;
  size: Size;
  unit: 'mi' | 'km';
  /** How far down midnights go. */
  foot: number;
};

/** The time-distance diagram itself: only what lies between the two ends of the layout is drawn. */
export function Drawing({ strip, layout, size, unit, foot }: DrawingProps) {
  const hatch = useId();
  const ground = useId();
  const rings = ringsOf(strip.clashes, layout, size);
  return (
    <>
      <defs>
        <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line className={style.hatch} x1="0" x2="0" y1="0" y2="5" />
        </pattern>
        <clipPath id={ground}>
          <rect x={layout.left} y={0} width={layout.right - layout.left} height={layout.height} />
        </clipPath>
      </defs>
      <Calendar zone={strip.zone} layout={layout} size={size} foot={foot} />
      <Places places={strip.places} layout={layout} size={size} unit={unit} />
      <g clipPath={`url(#${ground})`}>
        <Strands jobs={strip.jobs} layout={layout} hatch={hatch} />
      </g>
      {size === 'large' ? <Labels jobs={strip.jobs} layout={layout} taken={roomOf(rings)} /> : null}
      <Clashes rings={rings} size={size} />
      <Now strip={strip} layout={layout} foot={foot} />
    </>
  );
}
