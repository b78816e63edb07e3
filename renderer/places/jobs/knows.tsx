import { useState } from 'react';
import type { Job } from '../../../core/contract/jobs.ts';
import { Button } from '../../parts/button.tsx';
import { KnowsForm } from './knows-form.tsx';
import { filled, knowsInWords } from './knows-words.ts';
import style from './knows.module.css';

/** What the job knows beside dates and money: one line while it is empty, read as text once it is filled. */
export function KnownSection({ job }: { job: Job }) {
  const [changing, setChanging] = useState(false);
  const groups = filled(knowsInWords(job.knows));
  const verb = groups.length === 0 ? 'Fill in' : 'Change';
  return (
    <section className={style.section} aria-labelledby="knows">
      <div className={style.head}>
        <h2 id="knows">What the job knows</h2>
        {changing ? null : (
          <>
            {groups.length === 0 ? (
              <span className={style.second}>Nothing yet: who pays, papers, people on site, the place, what must be filmed, rights.</span>
            ) : null}
            <Button kind="quiet" onPress={() => setChanging(true)} aria-label={`${verb} what the job knows`}>
              {verb}
            </Button>
          </>
        )}
      </div>
      {changing ? (
        <KnowsForm job={job} onDone={() => setChanging(false)} />
      ) : groups.length > 0 ? (
        <div className={style.groups}>
          {groups.map((group) => (
            <div key={group.title} className={style.group}>
              <h3>{group.title}</h3>
              <dl className={style.said}>
                {group.said.map(({ label, text }) => (
                  <div key={label}>
                    <dt>{label}</dt>
                    <dd>{text}</dd>
                  </div>
                ))}
              </dl>
            </div>
          ))}
        </div>
      ) : null}
    </section>
  );
}
