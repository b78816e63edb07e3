import type { Job } from '../../../core/contract/jobs.ts';
import { wallInWords } from '../../../core/words/dates.ts';
import style from './message.module.css';
import { pieces } from './pieces.ts';

/** The message as it came, with the words that were understood underlined. */
export function Message({ job }: { job: Job }) {
  if (!job.message) return null;
  return (
    <section aria-labelledby="as-it-came">
      <h2 id="as-it-came" className={style.head}>
        As it came <span className={style.second}>{wallInWords(job.received.wall)}</span>
      </h2>
      <p className={style.message} tabIndex={0}>
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
    </section>
  );
}
