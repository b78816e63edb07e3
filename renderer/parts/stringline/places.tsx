import { lengthInWords } from '../../../core/words/amounts.ts';
import { distanceInWords } from '../../../core/words/distance.ts';
import type { Layout, Size } from './layout.ts';
import type { Strip } from './strip.ts';
import style from './stringline.module.css';
import { fitted } from './text-width.ts';

/** A line for each place, with its name, its distance from home and how its clock differs from that at home. */
export function Places({ places, layout, size, unit }: { places: Strip['places']; layout: Layout; size: Size; unit: 'mi' | 'km' }) {
  return places.map(({ place, km, shiftMinutes, home }) => {
    const y = layout.y(place.key);
    const shift = shiftMinutes === 0 ? '' : `, ${shiftMinutes > 0 ? '+' : ''}${lengthInWords(shiftMinutes)}`;
    const name = fitted(place.name, layout.left - 14, home ? 600 : 400);
    const second = size === 'large' || home;
    return (
      <g key={place.key}>
        <line className={style.lane} x1={layout.left} x2={layout.right} y1={y} y2={y} />
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
