import { useMemo } from 'react';
import type { JobHours } from '../../../core/contract/hours.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import { onSite } from '../../../core/hours/on-site.ts';
import { callNow } from '../../actions/call-now.ts';
import { wrapNow } from '../../actions/wrap-now.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { useScenePart } from '../../scene.ts';
import style from './hours.module.css';

/** The sign for use on site: large, dark at night and by day, one thing to press. */
export function SiteSign({ job, hours }: { job: Job; hours: JobHours }) {
  const sign = onSite(hours, job.days);
  const shown = sign !== null;
  const { id, version } = sign?.running ?? { id: null, version: 0 };
  // What is said on the sign changes by the minute; what can be done with it does not.
  const site = useMemo(
    () => (shown ? { jobId: job.id, running: id === null ? null : { id, version } } : undefined),
    [job.id, shown, id, version],
  );
  useScenePart('site', site);
  if (!sign) return null;
  return (
    <div className={style.sign}>
      <div role="status">
        <p className={style.said}>{sign.said}</p>
        <p className={style.plan}>{sign.plan}</p>
        {sign.caution ? <p className={style.caution}>{sign.caution}</p> : null}
      </div>
      <div className={style.press}>
        <ActionButton action={sign.running ? wrapNow : callNow} />
      </div>
    </div>
  );
}
