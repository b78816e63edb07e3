import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { dateInWords } from '../../../core/words/dates.ts';
import { leaveSample } from '../../actions/leave-sample.ts';
import { ask } from '../../ask.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { Button } from '../../parts/button.tsx';
import { useScenePart } from '../../scene.ts';
import style from './sample-line.module.css';

/** Says that what is on the books is the sample, and how to leave it. */
export function SampleLine() {
  const { data } = useQuery(ask.sample.state.queryOptions({ input: {} }));
  const [asked, setAsked] = useState(false);
  useScenePart('sample', data);
  if (!data?.loadedAt) return null;
  const date = dateInWords(wallAt(epochOf(data.loadedAt), Temporal.Now.timeZoneId()).slice(0, 10));
  return (
    <section aria-labelledby="sample" className={style.sample}>
      <h2 id="sample">This is the sample year</h2>
      <p className={style.second}>Loaded on {date} and told for that day. Everybody and every business in it is invented.</p>
      {asked ? (
        <>
          <p>Everything is taken out of the store, also what you added. A snapshot of it is written first.</p>
          <p className={style.buttons}>
            <ActionButton action={leaveSample} />
            <Button kind="quiet" onPress={() => setAsked(false)}>
              Keep it
            </Button>
          </p>
        </>
      ) : (
        <p>
          <Button kind="quiet" onPress={() => setAsked(true)}>
            Leave the sample …
          </Button>
        </p>
      )}
    </section>
  );
}
