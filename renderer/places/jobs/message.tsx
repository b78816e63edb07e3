import { useState } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import { wallInWords } from '../../../core/words/dates.ts';
import { Button } from '../../parts/button.tsx';
import style from './message.module.css';
import { pieces } from './pieces.ts';

/** A message longer than this, or of more lines, is shown in part until the whole is asked for. */
const LONG = { letters: 700, lines: 14 };

/** The message as it came, with the words that were understood underlined. */
export function Message({ job }: { job: Job }) {
  const [whole, setWhole] = useState(false);
  if (!job.message) return null;
  const long = job.message.length > LONG.letters || job.message.split('\n').length > LONG.lines;
  return (
    <section aria-labelledby="as-it-came">
      <h2 id="as-it-came" className={style.head}>
        As it came <span className={style.second}>{wallInWords(job.received.wall)}</span>
      </h2>
      <p className={`${style.message} ${long && !whole ? style.short : ''}`}>
        {pieces(job.message, job.spans).map((piece) =>
          piece.meaning === null ? (
            piece.text
          ) : (
            <mark key={piece.at} className={style.understood} title={`read as ${piece.meaning}`}>
              {piece.text}
            </mark>
          ),
        )}
      </p>
      {long ? (
        <Button kind="quiet" onPress={() => setWhole(!whole)}>
          {whole ? 'Show its beginning' : 'Show the whole message'}
        </Button>
      ) : null}
    </section>
  );
}
