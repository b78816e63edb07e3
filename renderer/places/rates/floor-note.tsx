import type { Setup } from '../../../core/contract/setup.ts';
import { floorInWords } from '../../../core/quotes/scale.ts';
import style from '../../parts/sheet.module.css';

/** What a day must bring so that my year pays, and where the figures stand. */
export function FloorNote({ mine }: { mine: Setup | null | undefined }) {
  if (!mine) return null;
  return (
    <p className={style.second}>
      {mine.year ? floorInWords(mine.year, mine.currency) : 'Your floor is not known yet: what a day must bring so that your year pays.'}{' '}
      <a href="#/setup">{mine.year ? 'Change it under Setup.' : 'Say under Setup what your year costs and should pay.'}</a>
    </p>
  );
}
