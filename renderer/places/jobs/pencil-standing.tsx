import { useQuery } from '@tanstack/react-query';
import type { Job } from '../../../core/contract/jobs.ts';
import { wallInWords } from '../../../core/words/dates.ts';
import { standingInWords } from '../../../core/words/ranks.ts';
import { ask } from '../../ask.ts';
import style from './jobs.module.css';

/** Where a live pencil stands among others, and what was asked of its holder. */
export function PencilStanding({ job }: { job: Job }) {
  const { data } = useQuery(ask.pencils.ranks.queryOptions({ input: { jobId: job.id } }));
  if (job.pencil?.state !== 'live' || !data) return null;
  const { ranks, challenge } = data;
  const asked = challenge
    ? `${challenge.unanswered ? 'No answer came by' : 'Asked for a yes or no by'} ${wallInWords(challenge.until.wall)}${challenge.unanswered ? ': it may be let go.' : '.'}`
    : '';
  const said = [standingInWords(ranks), asked].filter((part) => part !== '').join(' ');
  return said === '' ? null : <p className={style.standing}>{said}</p>;
}
