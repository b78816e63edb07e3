import type { JobState } from '../../core/contract/jobs.ts';
import style from './state-mark.module.css';

const marks: Record<JobState, 'open' | 'dashed' | 'solid' | 'gone' | 'late'> = {
  inquiry: 'open',
  quoted: 'open',
  pencilled: 'dashed',
  'ran out': 'late',
  inked: 'solid',
  'let go': 'gone',
  declined: 'gone',
  cancelled: 'gone',
};

/** Where a job stands: graphite dashes for pencil, solid for ink, always with the word. */
export function StateMark({ state }: { state: JobState }) {
  return (
    <span className={style.state}>
      <svg className={style[marks[state]]} viewBox="0 0 18 12" aria-hidden>
        <rect x="1" y="1" width="16" height="10" />
        {marks[state] === 'gone' ? <path d="M1 11 17 1" /> : null}
      </svg>
      {state}
    </span>
  );
}
