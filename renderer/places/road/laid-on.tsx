import { useQuery } from '@tanstack/react-query';
import type { FitResult } from '../../../core/contract/fit.ts';
import { daysMoved } from '../../../core/fit/moved.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { datesInWords } from '../../../core/words/dates.ts';
import { roadDayEarlier } from '../../actions/road-day-earlier.ts';
import { roadDayLater } from '../../actions/road-day-later.ts';
import { roadKeepDays } from '../../actions/road-keep-days.ts';
import { roadPutBack } from '../../actions/road-put-back.ts';
import { ask } from '../../ask.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { TroubleNote } from '../../parts/trouble-note.tsx';
import { troubleOf } from '../../trouble.ts';
import style from './laid-on.module.css';
import type { Laid } from './use-laid.ts';

const heads: Record<FitResult['answer'], string> = { free: 'Free', 'free if': 'Free if …', 'not possible': 'Not possible' };

function useAnswer({ job, asked }: Laid) {
  return useQuery(ask.fit.check.queryOptions({ input: { jobId: job.id, shiftDays: asked }, placeholderData: (before) => before }));
}

const shiftInWords = (shift: number): string =>
  shift === 0 ? 'as asked for' : `${countInWords(Math.abs(shift), 'day')} ${shift < 0 ? 'earlier' : 'later'}, not saved`;

/** The answer for what is laid on, its days, and what moves them. */
export function LaidOn({ laid }: { laid: Laid }) {
  const { data } = useAnswer(laid);
  const dates = datesInWords(daysMoved(laid.job.days, laid.shift).map(({ date }) => date));
  return (
    <section className={style.laid} aria-label="Laid on">
      <p className={style.answer} aria-live="polite">
        {data ? <strong className={data.result.answer === 'not possible' ? style.no : ''}>{heads[data.result.answer]}</strong> : null}
        <span>
          <a href={`#/jobs/${laid.job.id}`}>{laid.job.title}</a> {dates}, <span className={style.second}>{shiftInWords(laid.shift)}</span>
        </span>
      </p>
      <div className={style.acts}>
        <ActionButton action={roadDayEarlier} />
        <ActionButton action={roadDayLater} />
        <ActionButton action={roadPutBack} />
        <ActionButton action={roadKeepDays} kind={laid.shift === 0 ? 'plain' : 'black'} />
      </div>
    </section>
  );
}

const hardnessWords = { blocks: 'stands against it', settle: 'must be settled', know: 'good to know' };

/** What the answer says, numbered, for the days that are tried on. */
export function LaidFindings({ laid }: { laid: Laid }) {
  const asked = useAnswer(laid);
  if (asked.error) return <TroubleNote trouble={troubleOf(asked.error)} />;
  if (!asked.data) return null;
  const { findings, fine } = asked.data.result;
  return (
    <div>
      <ol className={style.findings} aria-label="What the answer says">
        {findings.map((finding) => (
          <li key={`${finding.kind} ${finding.sentence}`} className={style[finding.hardness]}>
            <span className={style.second}>{hardnessWords[finding.hardness]}: </span>
            {finding.sentence}
          </li>
        ))}
      </ol>
      {fine ? <p className={style.second}>{fine}</p> : null}
    </div>
  );
}
