import type { Seen } from './read-road.ts';
import style from './road.module.css';

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** What clashes in the days that are shown, in words. @param findings whether the answer's own sentences stand above */
export function Clashes({ seen: { stringline, kit, edit }, findings }: { seen: Seen; findings: boolean }) {
  const title = (id: string): string => stringline.jobs.find((job) => job.jobId === id)?.title ?? 'the job';
  const lost = edit.days.some((day) => day.lost);
  const rows = [
    // Of what is laid on, the findings say it already.
    ...(findings ? [] : stringline.clashes.map((clash) => ({ short: clash.short, sentence: clash.sentence, jobIds: clash.jobIds }))),
    ...kit
      .filter((bar) => !findings || bar.firmness !== 'candidate')
      .flatMap((bar) =>
        bar.short.map(({ words, sentence }) => ({ short: words, sentence, jobIds: bar.jobId === null ? [] : [bar.jobId] })),
      ),
    ...(lost ? [{ short: 'edit days', sentence: edit.lost, jobIds: [] }] : []),
  ];
  if (rows.length === 0) return null;
  return (
    <ul className={style.clashes} aria-label="Clashes">
      {rows.map((row) => (
        <li key={row.sentence}>
          <strong className={style.short}>{`${capital(row.short)}. `}</strong>
          {row.sentence}
          {row.jobIds.map((id) => (
            <a key={id} href={`#/jobs/${id}`}>{`Open ${title(id)}`}</a>
          ))}
        </li>
      ))}
    </ul>
  );
}
